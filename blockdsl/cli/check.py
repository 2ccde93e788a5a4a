"""`blockdsl check`: the problems of files, and with `--fix` or `--diff` what puts them right."""

from __future__ import annotations

from argparse import Namespace
from difflib import unified_diff
from pathlib import Path

from msgspec.structs import replace

from blockdsl.analysis.inputs import Input, RememberingReader, open_inputs, project_folder
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.rewriting import rewrite
from blockdsl.cli.saying import write_out
from blockdsl.cli.settings import levels_asked
from blockdsl.cli.status import ERRORS, FINE
from blockdsl.diagnostics import Problems, Source
from blockdsl.pipeline import about, work_through


def run(arguments: Namespace) -> int:
    """Tell the problems of the files; with `--fix` those that are left when the files are put right."""
    printer = ProblemPrinter(arguments)
    levels = levels_asked(arguments)
    for origin in open_inputs(arguments.files, levels):
        if origin.path is None and arguments.stdin_filename is not None:
            path = Path(arguments.stdin_filename)
            # It is read as if it lay there, and nothing is written there.
            named = replace(origin, source=Source(str(path), origin.source.text), path=path)
            looked_at = replace(named, problems=Problems(levels(path))) if origin.readable else origin
        else:
            looked_at = origin
        if looked_at.readable and (arguments.fix or arguments.diff):
            looked_at = _put_right(looked_at, arguments, is_stdin=origin.path is None)
        printer.show(work_through(looked_at).origin.problems)
    return ERRORS if printer.sum_up() else FINE


def _put_right(origin: Input, arguments: Namespace, *, is_stdin: bool) -> Input:
    """The file with the fixes made that need no choice; with `--diff` as it is, and what would change is shown."""
    from blockdsl.fixing import fixed

    before = origin.source
    with about(before.name):
        text = fixed(before, RememberingReader(project_folder(origin.path)))
    if arguments.diff:
        lines = unified_diff(
            before.text.splitlines(keepends=True), text.splitlines(keepends=True), before.name, f"{before.name} (fixed)"
        )
        write_out("".join(line if line.endswith("\n") else f"{line}\n" for line in lines))
        return origin
    if is_stdin:
        write_out(text)
    elif text != before.text and origin.path is not None:
        rewrite(origin.path, text)
    return replace(origin, source=Source(before.name, text))
