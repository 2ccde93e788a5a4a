"""The door: the commands that a quilter types.

Takes:    arguments and files.
Gives:    files, problems on standard error, an exit status.
Measures: nothing.
Reports:  files that cannot be read or written.
Does not know: how anything is worked out.
"""

from blockdsl.cli.door import main

__all__ = ["main"]
