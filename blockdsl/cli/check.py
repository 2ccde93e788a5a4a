"""`blockdsl check`: the problems of files, and nothing else."""

from __future__ import annotations

from argparse import Namespace

from blockdsl.analysis.inputs import open_inputs
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.settings import levels_asked
from blockdsl.cli.status import ERRORS, FINE
from blockdsl.pipeline import work_through


def run(arguments: Namespace) -> int:
    """Tell the problems of the files, and nothing else."""
    printer = ProblemPrinter(arguments)
    for origin in open_inputs(arguments.files, levels_asked(arguments)):
        printer.show(work_through(origin).origin.problems)
    return ERRORS if printer.sum_up() else FINE
