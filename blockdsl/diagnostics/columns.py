"""How wide text stands on a screen whose letters are all of one width."""

from __future__ import annotations

import unicodedata
from typing import Final

TAB: Final = 4


def display_width(text: str) -> int:
    """Columns that `text` takes; it holds no tabs and no control characters.

    Units:  columns of a terminal. Wide and full-width letters take two, marks on other letters none.
    """
    if text.isascii():
        return len(text)
    return sum(_letter_width(letter) for letter in text)


def _letter_width(letter: str) -> int:
    if unicodedata.combining(letter) or unicodedata.category(letter) in {"Mn", "Me", "Cf"}:
        return 0
    return 2 if unicodedata.east_asian_width(letter) in "WF" else 1


def shown(text: str) -> str:
    """The text made safe for a screen: a tab as spaces, any other control as its picture or as U+FFFD."""
    if text.isprintable():
        return text
    return "".join(_shown_letter(letter) for letter in text)


def _shown_letter(letter: str) -> str:
    if letter == "\t":
        return " " * TAB
    if letter < " ":
        return chr(0x2400 + ord(letter))
    if letter == "\x7f":
        return "␡"
    if unicodedata.category(letter) == "Zs":
        return " "
    # Direction overrides, halves of characters and the like could change what the rest of the line looks like.
    # The joiners are left: they belong inside words of some scripts, and take no column.
    return letter if letter.isprintable() or letter in "\u200c\u200d" else "\ufffd"
