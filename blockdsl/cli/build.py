"""`blockdsl build`: everything that the files declare, written whole or not at all."""

from __future__ import annotations

import os
from argparse import Namespace
from collections.abc import Generator, Iterable, Iterator, Mapping, Sequence
from contextlib import closing, suppress
from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from stat import S_ISREG
from typing import Final

from blockdsl.analysis.override import WhatIf
from blockdsl.cli.cache import Cache, usual_folder
from blockdsl.cli.cache_keys import content_of, key_of
from blockdsl.cli.depfile import make_rules
from blockdsl.cli.inputs import Input, open_inputs
from blockdsl.cli.jobs import WORTH_SHARING, Job, Made, do, is_kept
from blockdsl.cli.outputs import KINDS, Print, book_bytes, check_print_bytes
from blockdsl.cli.planning import USUAL_PAPER, Asked, Planned, plan
from blockdsl.cli.progress import progress
from blockdsl.cli.saying import in_words, many, write_out
from blockdsl.cli.status import ERRORS, FINE, USAGE, CannotGoOn
from blockdsl.cli.supposed import refuse_without_quilts, what_if_of
from blockdsl.cli.telling import Teller
from blockdsl.cli.workers import processors, run_all
from blockdsl.cli.working import Worked, work_through
from blockdsl.export.files import clear_leftovers, write_all
from blockdsl.facts import book_of
from blockdsl.facts.finishing import QuiltFinishing

_DATE: Final = "SOURCE_DATE_EPOCH"
_WORTH_SHARING_FILES: Final = 150
"""To look at a file takes a small part of what it takes to draw its blocks."""
_NOTHING: Final = "nothing to write: there is no block in these files\n"


def build(arguments: Namespace) -> int:
    """Run the command: look at all files first, tell their problems, then draw and write."""
    kinds = frozenset(arguments.only or KINDS)
    if arguments.title is not None and arguments.book is None:
        raise CannotGoOn("--title needs --book FILE.pdf, the book that has the title", USAGE)
    asked = Asked(arguments.paper, creation_date(os.environ), arguments.margin)
    cache = _cache(arguments)
    processes = arguments.jobs or processors()
    faults: list[Exception] = []
    what_if = what_if_of(arguments)
    works = _look(open_inputs(arguments.files), cache, processes, faults, what_if)
    refuse_without_quilts(works, [what_if])
    if arguments.only and "book" in kinds and arguments.book is None and not any(map(_may_have_book, works)):
        raise CannotGoOn("--only book: no file declares a book; --book FILE.pdf makes one of all blocks", USAGE)
    teller = Teller(arguments.message_format)
    planned = plan(works, kinds, asked)
    for worked in works:
        teller.tell(worked.origin.problems)
    # Closed at once, even for a fault: processes that wait for work would be torn down noisily at the very end.
    with closing(_done([job for work in planned for job in work.jobs], cache, processes)) as done:
        written = _write(planned, Path(arguments.output), done, faults)
    failed = teller.sum_up()
    if faults:  # told last, so that no other file's messages and outputs are lost for it
        raise faults[0]
    if arguments.check_print and not failed:
        written.append(_write_check(Path(arguments.output), asked.on(USUAL_PAPER)))
    if arguments.book is not None and not failed:
        written.append(_write_book(planned, arguments, asked.on(USUAL_PAPER), cache))
    _tidy(cache, {Path(arguments.output), *(path.parent for path in written)})
    if failed:
        return ERRORS
    if arguments.depfile is not None:
        _write_depfile(Path(arguments.depfile), written, works)
    if arguments.message_format == "text":
        write_out(f"{many(len(written), 'file')} written to {arguments.output}\n" if written else _NOTHING)
    return FINE


def _tidy(cache: Cache, folders: Iterable[Path]) -> None:
    """Leave the cache in bounds, and nothing of killed builds where we have written."""
    cache.tidy()
    for folder in folders:
        clear_leftovers(folder)


def _may_have_book(worked: Worked) -> bool:
    return bool(worked.facts.books) or worked.has_errors


def creation_date(environment: Mapping[str, str]) -> datetime | None:
    """The date that outputs tell, from SOURCE_DATE_EPOCH; without it they have none.

    Errors: CannotGoOn when it is not a number of seconds.
    """
    given = environment.get(_DATE, "")
    if not given:
        return None
    try:
        return datetime.fromtimestamp(int(given), UTC)
    except (ValueError, OverflowError, OSError):
        raise CannotGoOn(f"{_DATE} is {given!r}: it must be a whole number of seconds", USAGE) from None


def _cache(arguments: Namespace) -> Cache:
    if arguments.no_cache:
        return Cache(None)
    return Cache(Path(arguments.cache) if arguments.cache else usual_folder())


def _look(
    inputs: Sequence[Input], cache: Cache, processes: int, faults: list[Exception], what_if: WhatIf | None
) -> list[Worked]:
    """Every file worked through, its problems in its own collector. Should blockdsl itself fail, that is a fault."""
    works: list[Worked] = []
    look = partial(work_through, folder=cache.folder, what_if=what_if)
    for found in run_all(look, inputs, processes, _WORTH_SHARING_FILES):
        if isinstance(found, Exception):
            faults.append(found)
        else:
            works.append(found)
    return works


def _write(
    planned: Sequence[Planned], folder: Path, done: Iterator[Made | Exception], faults: list[Exception]
) -> list[Path]:
    """Write file by file: all that comes of one file, or nothing of it where blockdsl itself fails."""
    written: list[Path] = []
    with progress(sum(len(work.jobs) for work in planned)) as next_is:
        for work in planned:
            made: dict[Path, bytes] = {}
            before = len(faults)
            for job in work.jobs:
                next_is(job.stem)
                result = next(done)
                if isinstance(result, Exception):
                    faults.append(result)
                else:
                    made.update((folder / name, data) for name, data in result.items())
            if len(faults) == before:
                put(made)
                written += made
    return written


def _done(jobs: Sequence[Job], cache: Cache, processes: int) -> Generator[Made | Exception, None, None]:
    """The files of every job, in order: from the cache where they are kept, made by several processes where not."""
    make = partial(do, folder=cache.folder)
    kept = [is_kept(job, cache) for job in jobs]
    missing = [job for job, is_there in zip(jobs, kept, strict=True) if not is_there]
    _plan_cloth(missing)
    with closing(run_all(make, missing, processes, WORTH_SHARING)) as others:
        for job, is_there in zip(jobs, kept, strict=True):
            yield next(run_all(make, [job], 1, 1)) if is_there else next(others)


def _plan_cloth(jobs: Sequence[Job]) -> None:
    """Work out here, once, the cloth of each quilt that several jobs tell of, and not in every process anew."""
    alike: dict[str, list[QuiltFinishing]] = {}
    for job in jobs:
        for quilt in job.quilts:
            if quilt.finishing is not None:
                alike.setdefault(content_of(quilt), []).append(quilt.finishing)
    for first, *others in alike.values():
        with suppress(Exception):  # the job that asks again tells whose work it was
            if others:
                found = first.facts
                for other in others:
                    other.take(found)


def put(files: Mapping[Path, bytes]) -> None:
    """Write all the files or none. Of a file that is the same as before only the time is set anew, for make.

    Errors: CannotGoOn in plain words when the system refuses.
    """
    try:
        same = [path for path, data in files.items() if _holds(path, data)]
        write_all({path: data for path, data in files.items() if path not in same})
        for path in same:
            os.utime(path)
    except OSError as fault:
        where = fault.filename or next(iter(files))
        raise CannotGoOn(f"{where} cannot be written: {in_words(fault)}") from fault


def _holds(path: Path, data: bytes) -> bool:
    """Whether the file is there with these very bytes; a link is not looked behind."""
    try:
        known = path.lstat()
        return S_ISREG(known.st_mode) and known.st_size == len(data) and path.read_bytes() == data
    except OSError:
        return False


def _write_book(planned: Sequence[Planned], arguments: Namespace, printed: Print, cache: Cache) -> Path:
    path = Path(arguments.book)
    blocks = [block for made in planned for block in made.blocks]
    quilts = [quilt for made in planned for quilt in made.quilts]
    if not blocks and not quilts:
        raise CannotGoOn("there is no block to make a book of")
    title = arguments.title or path.stem
    book = book_of(blocks, title, printed.paper, quilts)
    key = key_of("book", content_of(book), printed) if cache.folder else ""
    put({path: cache.made(key, partial(book_bytes, book, printed, cache))})
    return path


def _write_check(folder: Path, printed: Print) -> Path:
    path = folder / "check-print.pdf"
    put({path: check_print_bytes(printed)})
    return path


def _write_depfile(path: Path, written: Sequence[Path], works: Sequence[Worked]) -> None:
    """The rules come last: where they are, all is there. The file itself is among the targets, to be asked for."""
    sources = [place for worked in works for place in (worked.origin.path, *worked.used) if place is not None]
    put({path: make_rules([path, *written], sources).encode("utf-8", "surrogateescape")})
