"""`python -m blockdsl` is the command `blockdsl`."""

from blockdsl.cli import command

command()
