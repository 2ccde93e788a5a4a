"""A picture inside a web page: drawn in place, in the page's own font, with its words for those who cannot see it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from msgspec import structs

from blockdsl.document.content import Picture
from blockdsl.export.html.elements import element, plain_fractions, words
from blockdsl.export.printable import check_page
from blockdsl.export.svg import inner_markup, number
from blockdsl.marks.display_list import Figure, Mark, Page, TextMark
from blockdsl.marks.further_letters import with_letters_drawn
from blockdsl.marks.theme import Box

_PIXELS_PER_POINT: Final = 96 / 72
_EDGE_PT: Final = 1.0  # room for half of an outline
_NARROW_PT: Final = 240.0
_READ_PT: Final = 7.5
"""A phone's column: a picture with words is drawn no wider, so that they can be read, and shown larger elsewhere."""


Enlarging = str
"""What a picture's switch is called that shows it across the whole of a narrow screen, and larger."""


def figure_markup(picture: Picture, enlarging: Enlarging) -> str:
    """The picture with its caption; on a narrow screen it can be enlarged, by keys too."""
    drawing = picture_markup(picture)
    if not picture.repeats:
        larger = element("input", type="checkbox", class_="larger", aria_label=enlarging)
        drawing = element("label", larger, drawing, class_="picture")
    if not picture.caption:
        return drawing
    return element("figure", drawing, element("figcaption", words(picture.caption)))


def picture_markup(picture: Picture, *, unseen: bool = False) -> str:
    """The picture as an `svg` element; `unseen` leaves it out for those who hear the page, where words say the same.

    Errors: Unprintable for a picture that cannot be painted.
    """
    page, scale = _drawn(picture), 1.0
    least = min(_sizes(page.marks), default=0.0)
    narrow = _NARROW_PT * min(1.0, least / _READ_PT)
    if 0 < narrow < picture.width_pt:
        scale = picture.width_pt / narrow
        page = _drawn(structs.replace(picture, width_pt=narrow, height_pt=picture.height_pt / scale))
    return page_markup(page, unseen=unseen or picture.repeats, scale=scale)


def _drawn(picture: Picture) -> Page:
    marks, filled = picture.draw(Box(_EDGE_PT, _EDGE_PT, picture.width_pt, picture.height_pt))
    return Page(filled.right_pt + _EDGE_PT, filled.bottom_pt + _EDGE_PT, marks)


def _sizes(marks: tuple[Mark, ...]) -> Iterator[float]:
    """The sizes of the words in a picture, in points."""
    for mark in marks:
        if isinstance(mark, TextMark):
            yield mark.size_pt
        elif isinstance(mark, Figure):
            yield from _sizes(mark.marks)


def page_markup(page: Page, *, unseen: bool = False, scale: float = 1.0) -> str:
    """A page of marks as an `svg` element, as `picture_markup` is for a picture; `scale` shows it larger."""
    page = with_letters_drawn(page)
    check_page(page)
    width, height = number(page.width_pt), number(page.height_pt)
    size = {"viewBox": f"0 0 {width} {height}"} | {
        side: number(length * scale * _PIXELS_PER_POINT)
        for side, length in (("width", page.width_pt), ("height", page.height_pt))
    }
    told = {"aria_hidden": "true"} if unseen else {"role": "img", "aria_label": plain_fractions(_alternative(page))}
    return element("svg", inner_markup(_laid_bare(page.marks)), **size, **told)


def _alternative(page: Page) -> str:
    return " ".join(mark.alternative for mark in page.marks if isinstance(mark, Figure))


def _laid_bare(marks: tuple[Mark, ...]) -> tuple[Mark, ...]:
    """The marks without the figures around them: the words of those are the picture's own."""
    return tuple(inner for mark in marks for inner in (_laid_bare(mark.marks) if isinstance(mark, Figure) else (mark,)))
