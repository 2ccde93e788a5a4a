"""Names of output files, made from what the quilter calls things."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable
from typing import Final

_KEPT: Final = "LMN"
"""Letters, the marks that belong to letters, and numbers, of any script."""

_MOST_BYTES: Final = 120
"""Most systems allow a file's name 255 bytes; endings and the word for what it shows come behind this."""


_RESERVED: Final = frozenset(
    {"con", "prn", "aux", "nul", *(f"{port}{number}" for port in ("com", "lpt") for number in "123456789¹²³")}
)
"""Names that Windows keeps for devices, whatever ending follows. Source: its documentation (from memory)."""


def slug(words: str) -> str:
    """The words as a part of a file's name: lower case, with `-` for what is neither letter nor number.

    `Harbour Light` is `harbour-light`; words without a letter or number are `block`, and `Con` is `con-block`, since
    no file can be called `con.svg` everywhere.
    """
    small = unicodedata.normalize("NFC", words).lower()
    spaced = "".join(letter if unicodedata.category(letter)[0] in _KEPT else " " for letter in small)
    short = "-".join(spaced.split()).encode("utf-8")[:_MOST_BYTES].decode("utf-8", "ignore")
    name = short.strip("-") or "block"
    return f"{name}-block" if name in _RESERVED else name


class Taken:
    """Names that are gone: what comes later under the same name gets `-2`, `-3` and so on."""

    def __init__(self, names: Iterable[str] = ()) -> None:
        """Start with `names` taken."""
        self._names = set(names)

    def take(self, words: str) -> str:
        """The slug of the words, free until now."""
        first = slug(words)
        name, number = first, 1
        while name in self._names:
            number += 1
            name = f"{first}-{number}"
        self._names.add(name)
        return name
