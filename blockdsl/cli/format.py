"""`blockdsl format`: files laid out neatly, words and comments kept."""

from __future__ import annotations

from argparse import Namespace
from contextlib import suppress
from pathlib import Path
from typing import Final

from blockdsl.analysis.inputs import Input, open_inputs
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.saying import in_words, write_out
from blockdsl.cli.settings import levels_asked
from blockdsl.cli.status import ERRORS, FINE, CannotGoOn
from blockdsl.export.files import write_whole
from blockdsl.pipeline import about
from blockdsl.shapes.listed import FORMER_NAMES
from blockdsl.syntax.format import format_text
from blockdsl.syntax.parse import parse

_WRITABLE: Final = 0o222


def run(arguments: Namespace) -> int:
    """Run the command. With `--check` the names of files that would change go to standard output."""
    printer = ProblemPrinter(arguments)
    changed = False
    for origin in open_inputs(arguments.files, levels_asked(arguments)):
        text = _laid_out(origin)
        printer.show(origin.problems)
        if text is None:
            continue
        differs = text != origin.source.text
        changed = changed or differs
        if arguments.check:
            if differs:
                write_out(f"{origin.source.name}\n")
        elif origin.path is None:
            write_out(text)
        elif differs:
            _replace(origin.path, text)
    failed = printer.sum_up()
    return ERRORS if failed or (arguments.check and changed) else FINE


def _laid_out(origin: Input) -> str | None:
    """The text in its usual form; None, and the slips reported, when it cannot be read."""
    if not origin.readable:
        return None
    with about(origin.source.name):
        text = format_text(origin.source, FORMER_NAMES)
        if text is None:
            parse(origin.source, origin.problems)
    return text


def _replace(path: Path, text: str) -> None:
    """Write the file anew where it really lies, with the permissions that it had."""
    real = path.resolve()
    try:
        mode = real.stat().st_mode
        if not mode & _WRITABLE:  # replacing it would be possible, and would not be what was meant
            raise CannotGoOn(f"{path} is write-protected and left as it is")
        write_whole(real, text.encode("utf-8"))
        with suppress(OSError):
            real.chmod(mode & 0o7777)
    except OSError as fault:
        raise CannotGoOn(f"{path} cannot be written: {in_words(fault)}") from fault
