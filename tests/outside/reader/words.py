"""Numbers, lengths, lists, names and places as they are written in steps, in American and in British English."""

from __future__ import annotations

import re
from fractions import Fraction
from typing import Final

VULGAR: Final = {
    "½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8", "⅓": "1/3", "⅔": "2/3",
    "⅙": "1/6", "⅚": "5/6",
}  # fmt: skip
SMALL: Final = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉⁄", "01234567890123456789/")
WORDS: Final = {
    "one": 1, "two": 2, "both": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9,
    "ten": 10, "twelve": 12, "once": 1, "twice": 2,
}  # fmt: skip
ORDINALS: Final = (
    "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth",
)  # fmt: skip
LENGTH: Final = r"\d+(?: \d+/\d+|/\d+|\.\d+)?"
"""A length once `plain` has been over it."""
PLACES: Final[dict[str, complex]] = {
    "top": -1j, "bottom": 1j, "left": -1, "right": 1,
    "upper left": -1 - 1j, "upper right": 1 - 1j, "lower left": -1 + 1j, "lower right": 1 + 1j,
}  # fmt: skip
PLACE: Final = "(?:(?:upper|lower) (?:left|right)|top|bottom|left|right)"
_BRITISH: Final = (
    ("towards", "toward"), ("centre", "center"), ("colour", "color"), ("grey", "gray"), ("turned half round",
    "rotated a half turn"), ("turned a quarter round", "rotated a quarter turn"), ("mitre", "miter"),
    ("wadding", "batting"), ("selvedge", "selvage"),
    ("tacking", "basting"), ("tack them", "baste them"), ("Tack the", "Baste the"),
)  # fmt: skip


class Refused(Exception):
    """Words that cannot be followed, or that can be followed in two ways."""


class Unreadable(Refused):
    """A sentence or part of one that the reader does not know."""


def plain(text: str) -> str:
    """Text with fractions as 3/8, one kind of space and of dash."""
    for sign, written in VULGAR.items():
        text = re.sub(rf"(\d){sign}", rf"\1 {written}", text).replace(sign, written)
    text = re.sub(r"(\d)([⁰¹²³⁴⁵⁶⁷⁸⁹]+⁄)", r"\1 \2", text).translate(SMALL)
    return re.sub(r"\s+", " ", text).strip()


def american(text: str) -> str:
    """British words in their American form; `top left` becomes upper left."""
    for british, form in _BRITISH:
        text = text.replace(british, form)
    text = re.sub(r"\btop (left|right)\b", r"upper \1", text)
    return re.sub(r"\bbottom (left|right)\b", r"lower \1", text)


def length(text: str) -> Fraction:
    """A length as written: 3 1/2, 3/8, 16.5."""
    try:
        return sum(map(Fraction, text.split()), Fraction(0))
    except ValueError:
        raise Unreadable(f"no length: {text!r}") from None


def number(text: str) -> int:
    """A count in figures or in words."""
    if text.isdigit():
        return int(text)
    if text in WORDS:
        return WORDS[text]
    raise Unreadable(f"no number: {text!r}")


def stem(name: str) -> str:
    """A name that is the same for one and for several: flying geese and goose, rows and row."""
    words = " ".join(_stem(word) for word in re.split(r"[\s\u00a0]+", name.strip().lower()))
    # One of several flying geese is a flying geese unit.
    return words.replace("flying goose unit", "flying goose")


def _stem(word: str) -> str:
    parts = word.split("-")
    last = parts[-1]
    for plural, one in (("geese", "goose"), ("halves", "half"), ("feet", "foot"), ("leaves", "leaf")):
        if last == plural:
            last = one
    if last.endswith("ies") and len(last) > 4:
        last = last[:-3] + "y"
    elif last.endswith(("ses", "xes", "zes", "ches", "shes")):
        last = last[:-2]
    elif last.endswith("s") and not last.endswith(("ss", "us")):
        last = last[:-1]
    return "-".join([*parts[:-1], last])


def listed(text: str) -> list[str]:
    """The parts of a list: a, b, and c; brackets are not cut through."""
    parts, depth, start = [], 0, 0
    for found in re.finditer(r"[()]|, and |, | and ", text):
        if found[0] == "(":
            depth += 1
        elif found[0] == ")":
            depth -= 1
        elif depth == 0:
            parts.append(text[start : found.start()])
            start = found.end()
    return [part.strip() for part in (*parts, text[start:]) if part.strip()]
