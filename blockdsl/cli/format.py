"""`blockdsl format`: files laid out neatly, words and comments kept."""

from __future__ import annotations

from argparse import Namespace

from blockdsl.analysis.inputs import Input, open_inputs
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.rewriting import rewrite
from blockdsl.cli.saying import write_out
from blockdsl.cli.settings import levels_asked
from blockdsl.cli.status import ERRORS, FINE
from blockdsl.pipeline import about
from blockdsl.shapes.listed import FORMER_NAMES
from blockdsl.syntax.format import format_text
from blockdsl.syntax.parse import parse


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
            rewrite(origin.path, text)
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
