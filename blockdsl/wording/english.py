"""Articles, plurals and lists of English, for names that no message file can know: patches, units, a maker's own."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.wording.grammar import Article, Lookup

_LETTERS_WITH_AN = frozenset("AEFHILMNORSX")
_NUMBERS_WITH_AN = ("8", "11", "18")
_SOUNDED_Y = ("uni", "use", "eu", "one-")
_SILENT_H = ("hour", "heir", "honest")
_IRREGULAR = {"goose": "geese", "geese": "geese", "half": "halves", "leaf": "leaves", "foot": "feet"}
_JOINTS = (" made ", " of ", " in a ", " from ", " with ")


def an(name: str) -> str:
    """The name with `a` or `an` before it, by its sound: `an A`, `a B`, `an hourglass`, `a unit`, `an 8 in strip`."""
    return f"{'an' if sounds_open(name) else 'a'} {name}"


def sounds_open(name: str) -> bool:
    """Whether a name begins with the sound of a vowel; a letter that stands alone by the sound of its name."""
    first = name.split(" ", maxsplit=1)[0].strip("(“\"'")
    letter = first.rstrip("0123456789")
    if (len(letter) == 1 and letter.isupper()) or (len(letter) == 2 and letter[0].isupper() and letter[1] == "r"):
        return letter[0] in _LETTERS_WITH_AN
    if first[:1].isdigit():
        number = "".join(sign for sign in first if sign.isdigit())
        return number.startswith("8") or number in _NUMBERS_WITH_AN
    low = first.lower()
    if low.startswith(_SILENT_H):
        return True
    return low[:1] in "aeiou" and not low.startswith(_SOUNDED_Y)


def plural(name: str) -> str:
    """More than one of it: `beams`, `halves`, `segments of set 1`, `half-square triangles`, `flying geese`.

    The head noun of a compound takes the ending.
    """
    head, _, letter = name.partition(" ")
    if head == "section" and letter.isupper():
        return f"sections {letter}"
    for joint in _JOINTS:
        head, found, rest = name.partition(joint)
        if found:
            return f"{plural(head)}{found}{rest}"
    low = name.lower()
    for one, several in _IRREGULAR.items():
        if low.endswith(one):
            return name[: -len(one)] + several
    if low.endswith(("ss", "x", "z", "ch", "sh")):
        return f"{name}es"
    if low.endswith("y") and low[-2:-1] not in set("aeiou"):
        return f"{name[:-1]}ies"
    return name if low.endswith("s") else f"{name}s"


class English:
    """English, American and British: they differ in their messages alone."""

    decimal = "."
    endings = "(?:s|es)?"
    thousands = ","

    def listed(self, items: Sequence[str], words: Lookup) -> str:
        """`A`, `A and B`, `A, B, and C`, `rows 1 and 3, and A`; without the last comma in British English."""
        if len(items) < 2:
            return "".join(items)
        if len(items) == 2 and " and " not in items[0]:
            return words("list-pair", first=items[0], last=items[1])
        return words("list-more", first=words("list-comma").join(items[:-1]), last=items[-1])

    def plural(self, name: str) -> str:
        """By the ending of the head noun."""
        return plural(name)

    def with_article(self, name: str, article: Article, words: Lookup) -> str:
        """With `the`, `one`, `the other` …, or with `a` or `an` by the sound of the name."""
        if not article:
            return name
        return an(name) if article == "a" else words(article, name=name)

    def contracted(self, text: str) -> str:
        """As it is."""
        return text


GRAMMAR: Final = English()
