"""The commands that a quilter types: each file that has the name of a command runs it.

Takes:    arguments and files.
Gives:    files, problems on standard error, an exit status.
Measures: nothing.
Reports:  files that cannot be read or written.
Does not know: how anything is worked out.

A tour: `entry` reads `arguments` and runs the command's file. `build` has a file for each of its steps: `planning`
what is made (`outputs`, `jobs`), `workers` who makes it, `run` and `writing` where it is written, with `depfile`;
`watching` does it again;
`cache`, `cache_keys`, `plan_memory`, `remembering` and `stored_pages` keep what was made. `overrides` reads the
options that override a file, `problem_printer` shows problems and `settings` which warnings count, `saying` and
`status` the rest.
"""

from __future__ import annotations

import gc
import os
import sys
from typing import TYPE_CHECKING, NoReturn

if TYPE_CHECKING:
    from collections.abc import Sequence

__all__ = ["command", "main"]


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command; `argv` are the words after `blockdsl`, those of this process when None.

    Python's search for rings of objects is off meanwhile, also while our own files are loaded: a command makes next to
    none, and looking takes half of its time.

    Gives the exit status: 0 fine, 1 errors in the files, 2 wrong usage, 3 a fault of ours.
    """
    was_on = gc.isenabled()
    gc.disable()
    try:
        from blockdsl.cli.entry import run

        return run(argv)
    finally:
        if was_on:
            gc.enable()


def command() -> NoReturn:
    """Be the command `blockdsl`: run what was typed and end the process with its status.

    The process ends at once, without taking apart what it has built, which is a sixth of the time of a check. Whatever
    could not be written is left to Python, which says so.
    """
    status = main()
    try:
        sys.stdout.flush()
        sys.stderr.flush()
    except OSError:
        sys.exit(status)
    os._exit(status)
