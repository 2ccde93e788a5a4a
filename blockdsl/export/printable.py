"""What no painter may paint: numbers that are none, letters that no file may hold, colours that are none.

One check for all painters, so that a page is refused or accepted by SVG, PDF and PNG alike.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from math import isfinite
from typing import Final

from blockdsl.marks.display_list import (
    Anchor,
    Figure,
    Kept,
    Link,
    Mark,
    Page,
    Path,
    RasterMark,
    Stamp,
    TextMark,
    leads_out,
)

LARGEST_PAGE_PT: Final = 14_400
"""Pages with a longer side are not valid PDF (ISO 32000-1, annex C)."""

_FORBIDDEN: Final = re.compile("[\x00-\x1f\x7f-\x9f\ud800-\udfff\ufffe\uffff]")
_NAME: Final = re.compile(r"[A-Za-z0-9-]+")
_COLOUR: Final = re.compile(r"#[0-9a-f]{6}", re.IGNORECASE)


class Unprintable(ValueError):
    """A page holds something that cannot be painted. Earlier layers should have kept it away: a fault of ours."""


def check_page(page: Page) -> None:
    """Accept a page or say what is wrong with it.

    Errors: Unprintable for a size that is not positive and at most 14,400 pt, a number that is not finite, a control
            character, half of a surrogate pair or a non-character in a text, a colour that is not `#rrggbb`.
    """
    for side in (page.width_pt, page.height_pt):
        if not 0 < side <= LARGEST_PAGE_PT:  # false for NaN also
            message = f"a page side of {side} pt: it must be more than 0 and at most {LARGEST_PAGE_PT} pt"
            raise Unprintable(message)
    _check_marks(page.marks)


def check_text(text: str) -> str:
    """The text itself.

    Errors: Unprintable for a control character, half of a surrogate pair or a non-character.
    """
    found = _FORBIDDEN.search(text)
    if found:
        message = f"U+{ord(found[0]):04X} in a text: it is not a letter that can be printed"
        raise Unprintable(message)
    return text


def _check_marks(marks: Iterable[Mark]) -> None:  # noqa: C901 - one line for each mark there is
    for mark in marks:
        match mark:
            case Path():
                _check_path(mark)
            case TextMark():
                check_text(mark.text)
                _check_numbers((mark.x_pt, mark.y_pt, mark.size_pt, mark.turn_degrees))
                _check_colour(mark.colour)
            case RasterMark():
                _check_numbers((mark.x_pt, mark.y_pt, mark.width_pt, mark.height_pt))
            case Figure():
                check_text(mark.alternative)
                _check_marks(mark.marks)
            case Stamp():
                _check_name(mark.name)
                _check_marks(mark.marks)
                for place in mark.places:
                    _check_numbers(place)
            case Link():
                _check_target(mark.target)
                _check_numbers((mark.x_pt, mark.y_pt, mark.width_pt, mark.height_pt))
                _check_marks(mark.marks)
            case Kept():
                check_text(mark.words)
            case Anchor():
                _check_name(mark.name)
                _check_numbers((mark.x_pt, mark.y_pt))


def _check_name(name: str) -> None:
    """The name of an anchor stands between quotation marks in a file of its own rules."""
    if not _NAME.fullmatch(name):
        message = f"{name!r} as an anchor: its name must be of letters, digits and hyphens"
        raise Unprintable(message)


def _check_target(target: str) -> None:
    """An anchor's name, or an address of the web, which is of ASCII letters without spaces."""
    if not leads_out(target):
        _check_name(target)
    elif not (target.isascii() and target.isprintable()) or " " in target:
        message = f"{target!r} as an address of the web: it must be of ASCII letters without spaces"
        raise Unprintable(message)


def _check_path(path: Path) -> None:
    for ring in path.rings:
        for x, y in ring:
            if not (isfinite(x) and isfinite(y)):
                _check_numbers((x, y))
    _check_numbers((path.stroke_width_pt, *path.dash))
    if path.dash and (min(path.dash) < 0 or sum(path.dash) == 0):
        message = f"a dash of {path.dash}: its lengths must not be negative, nor all of them nothing"
        raise Unprintable(message)
    for colour in (path.fill, path.stroke):
        if colour is not None:
            _check_colour(colour)


def _check_numbers(numbers: Iterable[float]) -> None:
    for number in numbers:
        if not isfinite(number):
            message = f"{number} as a measure: it is not a number that can be drawn"
            raise Unprintable(message)


def _check_colour(colour: str) -> None:
    if not _COLOUR.fullmatch(colour):
        message = f"{colour!r} as a colour: it must be # and six hex digits"
        raise Unprintable(message)
