"""`blockdsl build`: everything that the files declare, written whole or not at all."""

from __future__ import annotations

import os
from argparse import Namespace
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

from blockdsl.cli.depfile import make_rules
from blockdsl.cli.inputs import open_inputs
from blockdsl.cli.naming import Taken
from blockdsl.cli.outputs import KINDS, Output, Print, block_outputs, pdf_bytes, too_large
from blockdsl.cli.progress import progress
from blockdsl.cli.saying import in_words, many, write_out
from blockdsl.cli.status import ERRORS, FINE, USAGE, CannotGoOn
from blockdsl.cli.telling import Teller
from blockdsl.cli.working import Worked, about, work_through
from blockdsl.export.files import write_all

_DATE: Final = "SOURCE_DATE_EPOCH"
_NOTHING: Final = "nothing to write: there is no block in these files\n"


@dataclass(frozen=True, slots=True)
class _Planned:
    """A file with what will be made of it."""

    worked: Worked
    outputs: tuple[Output, ...]


def build(arguments: Namespace) -> int:
    """Run the command: look at all files first, tell their problems, then draw and write."""
    kinds = frozenset(arguments.only or KINDS)
    if arguments.only and "book" in kinds and arguments.book is None:
        raise CannotGoOn("--only book needs --book FILE.pdf, the book's name", USAGE)
    if arguments.title is not None and arguments.book is None:
        raise CannotGoOn("--title needs --book FILE.pdf, the book that has the title", USAGE)
    printed = Print(arguments.paper, creation_date(os.environ))
    works = [work_through(origin) for origin in open_inputs(arguments.files)]
    teller = Teller(arguments.message_format)
    planned = _plan(works, kinds, printed)
    for worked in works:
        teller.tell(worked.origin.problems)
    written = _write(planned, Path(arguments.output), sum(len(plan.outputs) for plan in planned))
    failed = teller.sum_up()
    if arguments.book is not None and not failed:
        written.append(_write_book(planned, arguments, printed))
    if failed:
        return ERRORS
    if arguments.depfile is not None:
        _write_depfile(Path(arguments.depfile), written, works)
    if arguments.message_format == "text":
        write_out(f"{many(len(written), 'file')} written to {arguments.output}\n" if written else _NOTHING)
    return FINE


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


def _plan(works: Sequence[Worked], kinds: frozenset[str], printed: Print) -> list[_Planned]:
    """The outputs of each file that has no errors.

    A file with errors keeps the names of its blocks, so that what was made of it earlier is not written over.
    """
    taken = Taken()
    planned = []
    for worked in works:
        if worked.has_errors or worked.program is None:
            _keep_names(worked, taken)
            continue
        outputs: list[Output] = []
        for design, block in zip(worked.program.blocks, worked.facts.blocks, strict=True):
            outputs += block_outputs(block, taken.take(block.name), kinds, printed)
            letters = too_large(block) if "templates" in kinds else ()
            if letters:
                worked.origin.problems.report("template-too-large", design.span, letters=", ".join(letters))
        planned.append(_Planned(worked, tuple(outputs)))
    return planned


def _keep_names(worked: Worked, taken: Taken) -> None:
    from blockdsl.diagnostics import Problems
    from blockdsl.syntax.ast import BlockDeclaration
    from blockdsl.syntax.parse import parse

    for declaration in parse(worked.origin.source, Problems()).declarations:
        if isinstance(declaration, BlockDeclaration):
            taken.take(declaration.name.text)


def _write(planned: Sequence[_Planned], folder: Path, total: int) -> list[Path]:
    """Draw and write, file by file: all that comes of one file, or nothing of it."""
    written: list[Path] = []
    with progress(total) as next_is:
        for plan in planned:
            with about(plan.worked.origin.source.name):
                made = {folder / output.name: _made(output, next_is) for output in plan.outputs}
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


def _write_book(planned: Sequence[_Planned], arguments: Namespace, printed: Print) -> Path:
    from blockdsl.drawing.book import book_pages

    path = Path(arguments.book)
    blocks = [block for plan in planned for block in plan.worked.facts.blocks]
    if not blocks:
        raise CannotGoOn("there is no block to make a book of")
    title = arguments.title or path.stem
    _put({path: pdf_bytes(book_pages(blocks, title=title, paper=printed.paper), printed)})
    return path


def _write_depfile(path: Path, written: Sequence[Path], works: Sequence[Worked]) -> None:
    """The rules come last: where they are, all is there. The file itself is among the targets, to be asked for."""
    sources = [place for worked in works for place in (worked.origin.path, *worked.used) if place is not None]
    _put({path: make_rules([path, *written], sources).encode("utf-8", "surrogateescape")})
