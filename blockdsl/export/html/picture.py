"""A picture inside a web page: drawn in place, in the page's own font, with its words for those who cannot see it."""

from __future__ import annotations

from typing import Final

from blockdsl.document.content import Picture
from blockdsl.export.html.elements import element, plain_fractions
from blockdsl.export.printable import check_page
from blockdsl.export.svg import inner_markup, number
from blockdsl.marks.display_list import Figure, Mark, Page
from blockdsl.marks.further_letters import with_letters_drawn
from blockdsl.marks.theme import Box

_PIXELS_PER_POINT: Final = 96 / 72
_EDGE_PT: Final = 1.0  # room for half of an outline


def picture_markup(picture: Picture, *, unseen: bool = False) -> str:
    """The picture as an `svg` element; `unseen` leaves it out for those who hear the page, where words say the same.

    Errors: Unprintable for a picture that cannot be painted.
    """
    marks, filled = picture.draw(Box(_EDGE_PT, _EDGE_PT, picture.width_pt, picture.height_pt))
    page = Page(filled.right_pt + _EDGE_PT, filled.bottom_pt + _EDGE_PT, marks)
    return page_markup(page, unseen=unseen or picture.repeats)


def page_markup(page: Page, *, unseen: bool = False) -> str:
    """A page of marks as an `svg` element, as `picture_markup` is for a picture."""
    page = with_letters_drawn(page)
    check_page(page)
    width, height = number(page.width_pt), number(page.height_pt)
    size = {"viewBox": f"0 0 {width} {height}"} | {
        side: number(length * _PIXELS_PER_POINT)
        for side, length in (("width", page.width_pt), ("height", page.height_pt))
    }
    told = {"aria_hidden": "true"} if unseen else {"role": "img", "aria_label": plain_fractions(_alternative(page))}
    return element("svg", inner_markup(_laid_bare(page.marks)), **size, **told)


def _alternative(page: Page) -> str:
    return " ".join(mark.alternative for mark in page.marks if isinstance(mark, Figure))


def _laid_bare(marks: tuple[Mark, ...]) -> tuple[Mark, ...]:
    """The marks without the figures around them: the words of those are the picture's own."""
    return tuple(inner for mark in marks for inner in (_laid_bare(mark.marks) if isinstance(mark, Figure) else (mark,)))
