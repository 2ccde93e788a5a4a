"""The commands that a quilter types: each file that has the name of a command runs it.

Takes:    arguments and files.
Gives:    files, problems on standard error, an exit status.
Measures: nothing.
Reports:  files that cannot be read or written.
Does not know: how anything is worked out.
"""

from blockdsl.cli.entry import main

__all__ = ["main"]
