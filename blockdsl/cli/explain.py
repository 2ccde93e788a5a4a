"""`blockdsl explain`: what a problem means, with a bad example and how to fix it."""

from __future__ import annotations

import sys
from argparse import Namespace

from blockdsl.cli.problem_printer import wants_colour
from blockdsl.cli.saying import in_columns, write_out
from blockdsl.cli.status import FINE, USAGE, CannotGoOn
from blockdsl.diagnostics import CATALOGUE, nearest_word
from blockdsl.resources import problem_page


def run(arguments: Namespace) -> int:
    """The page of each problem that is named; of none, all problems in a line each."""
    if not arguments.codes:
        rows = [(code, entry.severity, entry.meaning) for code, entry in sorted(CATALOGUE.items())]
        write_out("\n".join(in_columns(rows)) + "\n")
        return FINE
    for code in arguments.codes:
        if code not in CATALOGUE:
            near = nearest_word(code, CATALOGUE)
            hint = f"did you mean {near!r}?" if near else "`blockdsl explain` lists them all"
            raise CannotGoOn(f"there is no problem {code!r}; {hint}", USAGE)
    pages = "\n".join(problem_page(code) for code in arguments.codes)
    if wants_colour(sys.stdout, arguments.color):
        from rich.console import Console
        from rich.markdown import Markdown

        Console(force_terminal=True).print(Markdown(pages))
    else:
        write_out(pages)
    return FINE
