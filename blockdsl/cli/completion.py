"""`blockdsl completion`: a script with which a shell completes commands, options and files."""

from __future__ import annotations

from argparse import Action, Namespace
from typing import Final

import shtab

from blockdsl.cli.arguments import parser
from blockdsl.cli.saying import write_out
from blockdsl.cli.status import FINE

_FILES: Final = ("FILE", "FILE.pdf")
_FOLDERS: Final = ("DIR",)


def run(arguments: Namespace) -> int:
    """Print the script for the shell."""
    whole = parser()
    for action in whole.actions_of_all():
        _complete(action)
    write_out(f"{shtab.complete(whole, shell=arguments.shell)}\n")
    return FINE


def _complete(action: Action) -> None:
    """Say where a file or a folder stands: shtab reads that off the action."""
    if action.metavar in _FILES:
        action.complete = shtab.FILE  # type: ignore[attr-defined]
    elif action.metavar in _FOLDERS:
        action.complete = shtab.DIRECTORY  # type: ignore[attr-defined]
