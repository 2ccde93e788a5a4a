"""The commands that a quilter types: each file that has the name of a command runs it.

Takes:    arguments and files.
Gives:    files, problems on standard error, an exit status.
Measures: nothing.
Reports:  files that cannot be read or written.
Does not know: how anything is worked out.

A tour: `entry` reads `arguments` and runs the command's file. `build` has a file for each of its steps: `planning`
what is made (`outputs`, `jobs`), `workers` who makes it, `run` and `writing` where it is written, with `depfile`;
`cache`, `cache_keys`, `plan_memory`, `remembering` and `stored_pages` keep what was made. `supposed` reads what is
supposed, `problem_printer` shows problems, `saying` and `status` the rest.
"""

from blockdsl.cli.entry import main

__all__ = ["main"]
