"""`blockdsl build`: everything that the files declare, written whole or not at all."""

from __future__ import annotations

import os
from argparse import Namespace
from collections.abc import Callable, Mapping, Sequence
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

from blockdsl.cli.depfile import make_rules
from blockdsl.cli.inputs import open_inputs
from blockdsl.cli.outputs import KINDS, Output, Print, book_bytes
from blockdsl.cli.planning import USUAL_PAPER, Planned, plan
from blockdsl.cli.progress import progress
from blockdsl.cli.saying import in_words, many, write_out
from blockdsl.cli.status import ERRORS, FINE, USAGE, CannotGoOn
from blockdsl.cli.telling import Teller
from blockdsl.cli.working import Worked, about, work_through
from blockdsl.export.files import write_all
from blockdsl.facts import book_of

_DATE: Final = "SOURCE_DATE_EPOCH"
_NOTHING: Final = "nothing to write: there is no block in these files\n"


def build(arguments: Namespace) -> int:
    """Run the command: look at all files first, tell their problems, then draw and write."""
    kinds = frozenset(arguments.only or KINDS)
    if arguments.title is not None and arguments.book is None:
        raise CannotGoOn("--title needs --book FILE.pdf, the book that has the title", USAGE)
    created = creation_date(os.environ)
    works = [work_through(origin) for origin in open_inputs(arguments.files)]
    if arguments.only and "book" in kinds and arguments.book is None and not any(map(_may_have_book, works)):
        raise CannotGoOn("--only book: no file declares a book; --book FILE.pdf makes one of all blocks", USAGE)
    teller = Teller(arguments.message_format)
    planned = plan(works, kinds, arguments.paper, created)
    for worked in works:
        teller.tell(worked.origin.problems)
    written = _write(planned, Path(arguments.output), sum(len(work.outputs) for work in planned))
    failed = teller.sum_up()
    if arguments.book is not None and not failed:
        written.append(_write_book(planned, arguments, Print(arguments.paper or USUAL_PAPER, created)))
    if failed:
        return ERRORS
    if arguments.depfile is not None:
        _write_depfile(Path(arguments.depfile), written, works)
    if arguments.message_format == "text":
        write_out(f"{many(len(written), 'file')} written to {arguments.output}\n" if written else _NOTHING)
    return FINE


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


def _write(planned: Sequence[Planned], folder: Path, total: int) -> list[Path]:
    """Draw and write, file by file: all that comes of one file, or nothing of it."""
    written: list[Path] = []
    with progress(total) as next_is:
        for work in planned:
            with about(work.worked.origin.source.name):
                made = {folder / output.name: _made(output, next_is) for output in work.outputs}
            _put(made)
            written += made
    return written


def _made(output: Output, next_is: Callable[[str], None]) -> bytes:
    next_is(output.name)
    return output.make()


def _put(files: Mapping[Path, bytes]) -> None:
    """Write all the files or none.

    Errors: CannotGoOn in plain words when the system refuses.
    """
    try:
        write_all(files)
    except OSError as fault:
        where = fault.filename or next(iter(files))
        raise CannotGoOn(f"{where} cannot be written: {in_words(fault)}") from fault


def _write_book(planned: Sequence[Planned], arguments: Namespace, printed: Print) -> Path:
    path = Path(arguments.book)
    blocks = [block for made in planned for block in made.blocks]
    if not blocks:
        raise CannotGoOn("there is no block to make a book of")
    title = arguments.title or path.stem
    _put({path: book_bytes(book_of(blocks, title, printed.paper), printed)})
    return path


def _write_depfile(path: Path, written: Sequence[Path], works: Sequence[Worked]) -> None:
    """The rules come last: where they are, all is there. The file itself is among the targets, to be asked for."""
    sources = [place for worked in works for place in (worked.origin.path, *worked.used) if place is not None]
    _put({path: make_rules([path, *written], sources).encode("utf-8", "surrogateescape")})
