"""How a command ends."""

from __future__ import annotations

from typing import Final

FINE: Final = 0
"""All is well, warnings included."""

ERRORS: Final = 1
"""A file has errors, or something could not be written."""

USAGE: Final = 2
"""The command was mistyped."""

OUR_FAULT: Final = 3
"""blockdsl itself went wrong."""


class CannotGoOn(Exception):
    """Something outside the block files stops the command; its words are for the user."""

    def __init__(self, words: str, status: int = ERRORS) -> None:
        """Keep the words and how the command ends."""
        super().__init__(words)
        self.status = status
