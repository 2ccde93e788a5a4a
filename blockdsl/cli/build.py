"""`blockdsl build`: everything that the files declare, written whole or not at all."""

from __future__ import annotations

import os
from argparse import Namespace
from collections.abc import Generator, Iterator, Mapping, Sequence
from contextlib import closing, suppress
from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from typing import Final

from blockdsl.analysis.override import WhatIf
from blockdsl.cli.cache import Cache, usual_folder
from blockdsl.cli.cache_keys import content_of, key_of
from blockdsl.cli.depfile import make_rules
from blockdsl.cli.inputs import Input, open_inputs
from blockdsl.cli.jobs import WORTH_SHARING, Job, Made, Outlook, do, outlook
from blockdsl.cli.outputs import KINDS, Print, book_bytes, check_print_bytes, kind_of
from blockdsl.cli.planning import USUAL_PAPER, Asked, Planned, plan, where_declared
from blockdsl.cli.progress import progress
from blockdsl.cli.saying import many, write_out
from blockdsl.cli.status import ERRORS, FINE, USAGE, CannotGoOn
from blockdsl.cli.supposed import refuse_without_quilts, what_if_of
from blockdsl.cli.telling import Teller
from blockdsl.cli.workers import processors, run_all
from blockdsl.cli.working import Worked, sources_of, work_through
from blockdsl.cli.writing import BOOK, CHECK_PRINT, RULES, Writer, maker
from blockdsl.facts import book_of
from blockdsl.facts.finishing import QuiltFinishing

_DATE: Final = "SOURCE_DATE_EPOCH"
_WORTH_SHARING_FILES: Final = 150
"""To look at a file takes a small part of what it takes to draw its blocks."""
_MOST_NAMED: Final = 6
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
    run = _Run(arguments, planned, cache, teller)
    # Closed at once, even for a fault: processes that wait for work would be torn down noisily at the very end.
    with closing(_done(run.jobs, run.outlooks, cache, processes)) as done:
        run.write(done, faults)
    failed = teller.sum_up()
    if faults:  # told last, so that no other file's messages and outputs are lost for it
        raise faults[0]
    if not failed:
        run.write_the_rest(asked.on(USUAL_PAPER))
        if what_if is None:
            run.remove_what_is_no_longer_made(kinds)
    cache.tidy()
    if failed:
        return ERRORS
    run.write_rules(works)
    if arguments.message_format == "text":
        run.sum_up()
    return FINE


class _Run:
    """What one build writes, in its order: the outputs of each file, the check print, the book, the rules for make."""

    def __init__(self, arguments: Namespace, planned: Sequence[Planned], cache: Cache, teller: Teller) -> None:
        """Look at all that will be written, before anything is.

        Errors: CannotGoOn where an output would replace an input, a file that is not ours, or another output.
        """
        self._arguments = arguments
        self._folder = Path(arguments.output)
        self._planned = planned
        self._cache = cache
        self._teller = teller
        self._removed: list[Path] = []
        self._left: list[Path] = []
        self.jobs = [job for work in planned for job in work.jobs]
        self.outlooks = [outlook(job, cache) for job in self.jobs]
        self._writer = Writer(sources_of([work.worked for work in planned]))
        paths: dict[Path, str] = {}
        for job, seen in zip(self.jobs, self.outlooks, strict=True):
            paths |= {self._folder / name: f"an output of {job.source}" for name in seen.names}
        for path, what in paths.items():
            self._writer.plan(path, what)
        for path, what in _asked_for_by_name(arguments):
            self._writer.plan(path, what)
            paths[path] = what
        self._writer.refuse_strangers(paths)

    def write(self, done: Iterator[Made | Exception], faults: list[Exception]) -> None:
        """Write file by file: all that comes of one file, or nothing of it where blockdsl itself fails."""
        with progress(len(self.jobs)) as next_is:
            for work in self._planned:
                made: dict[str, bytes] = {}
                of: dict[str, str] = {}
                before = len(faults)
                for job in work.jobs:
                    next_is(job.stem)
                    result = next(done)
                    if isinstance(result, Exception):
                        faults.append(result)
                    else:
                        made |= result
                        of |= dict.fromkeys(result, self._declared_in(work, job))
                if len(faults) == before:
                    self._put(work, made, of)

    def _declared_in(self, work: Planned, job: Job) -> str:
        """The file that declares what the job shows, as the record of the folder tells it."""
        place = self._writer.folder(self._folder)
        named = work.declared.get(job.stem)
        if named is None or named == work.worked.origin.source.name:
            return maker(place, work.worked.origin.path)
        return place.told(Path(named)) if Path(named).exists() else named

    def _put(self, work: Planned, made: Mapping[str, bytes], of: Mapping[str, str]) -> None:
        origin = work.worked.origin
        clashes, left = self._writer.clashes(self._folder, made, origin.path, of)
        if clashes:
            first = clashes[0]
            origin.problems.report(
                "output-taken",
                where_declared(work, first.path.name),
                path=str(first.path),
                other=os.path.relpath(first.other),
                help="give one of them another title, or build them into two folders with -o",
            )
            self._teller.tell(origin.problems)
            return
        self._left += [self._folder / name for name in sorted(left)]
        self._writer.put(self._folder, {name: data for name, data in made.items() if name not in left}, origin.path, of)

    def write_the_rest(self, printed: Print) -> None:
        """The check print and the book of all blocks, where they are asked for."""
        if self._arguments.check_print:
            self._writer.put(self._folder, {"check-print.pdf": check_print_bytes(printed)}, CHECK_PRINT)
        if self._arguments.book is not None:
            path = Path(self._arguments.book)
            self._writer.put(path.parent, {path.name: self._book(path, printed)}, BOOK)

    def _book(self, path: Path, printed: Print) -> bytes:
        blocks = [block for made in self._planned for block in made.blocks]
        quilts = [quilt for made in self._planned for quilt in made.quilts]
        if not blocks and not quilts:
            raise CannotGoOn("there is no block to make a book of")
        book = book_of(blocks, self._arguments.title or path.stem, printed.paper, quilts)
        key = key_of("book", content_of(book), printed) if self._cache.folder else ""
        return self._cache.made(key, partial(book_bytes, book, printed, self._cache))

    def remove_what_is_no_longer_made(self, kinds: frozenset[str]) -> None:
        """Take away what earlier builds of the same files wrote, of the kinds asked for, and this one does not make."""
        place = self._writer.folder(self._folder)
        made = {os.path.realpath(path) for path in (*self._writer.written, *self._left)}
        for by in [maker(place, work.worked.origin.path) for work in self._planned]:
            stale = [
                name
                for name, entry in place.known().items()
                if by in entry.by and kind_of(name) in kinds and os.path.realpath(self._folder / name) not in made
            ]
            if stale:
                self._removed += [self._folder / name for name in place.remove(stale, by)]

    def write_rules(self, works: Sequence[Worked]) -> None:
        """The rules come last: where they are, all is there. The file itself is among the targets, to be asked for."""
        if self._arguments.depfile is None:
            return
        path = Path(self._arguments.depfile)
        rules = make_rules([path, *self._writer.written], sources_of(works))
        self._writer.put(path.parent, {path.name: rules.encode("utf-8", "surrogateescape")}, RULES)
        self._writer.written.remove(path)

    def sum_up(self) -> None:
        """How many files were written, and which were taken away."""
        count = len(self._writer.written)
        write_out(f"{many(count, 'file')} written to {self._arguments.output}\n" if count else _NOTHING)
        if self._left:
            write_out(f"{_some(self._left)}: left as the file that declares the block makes it\n")
        if self._removed:
            write_out(f"{_some(self._removed)}: no longer made, so removed\n")


def _some(paths: Sequence[Path]) -> str:
    """How many files, and the first of them by name."""
    names = ", ".join(map(str, paths[:_MOST_NAMED]))
    more = f" and {len(paths) - _MOST_NAMED} more" if len(paths) > _MOST_NAMED else ""
    return f"{many(len(paths), 'file')} ({names}{more})"


def _asked_for_by_name(arguments: Namespace) -> Iterator[tuple[Path, str]]:
    """The outputs that no file declares, and what they are."""
    if arguments.book is not None:
        yield Path(arguments.book), "the book"
    if arguments.check_print:
        yield Path(arguments.output) / "check-print.pdf", "the check print"
    if arguments.depfile is not None:
        yield Path(arguments.depfile), "the rules for make"


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


def _done(
    jobs: Sequence[Job], outlooks: Sequence[Outlook], cache: Cache, processes: int
) -> Generator[Made | Exception, None, None]:
    """The files of every job, in order: from the cache where they are kept, made by several processes where not."""
    make = partial(do, folder=cache.folder)
    kept = [seen.is_kept for seen in outlooks]
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
