"""How every printed page looks: papers, the box that prints everywhere, the type scale, the colours, the spacing.

All numbers are points (1/72 in). Pages are for light paper alone; colours are chosen so that a greyscale print
keeps its order: ink, then grey words, then rules, then tints.
"""

from __future__ import annotations

import re
from typing import Final

from msgspec import Struct

POINTS_PER_INCH: Final = 72.0
POINTS_PER_CENTIMETRE: Final = 72.0 / 2.54
POINTS_PER_MILLIMETRE: Final = 72.0 / 25.4


class Box(Struct, frozen=True):
    """A rectangle on the page, from its top left corner."""

    x_pt: float
    y_pt: float
    width_pt: float
    height_pt: float

    @property
    def right_pt(self) -> float:
        """The x of its right edge."""
        return self.x_pt + self.width_pt

    @property
    def bottom_pt(self) -> float:
        """The y of its lower edge."""
        return self.y_pt + self.height_pt


CONTENT_WIDTH_PT: Final = 184 * POINTS_PER_MILLIMETRE
CONTENT_HEIGHT_PT: Final = 254 * POINTS_PER_MILLIMETRE


MARGIN_PT: Final = 12 * POINTS_PER_MILLIMETRE
"""What a printer may need for itself at each edge of the paper, when the user does not say otherwise."""

LONGEST_PAGE_PT: Final = 14_400.0
"""The greatest length that a page of a PDF may have (200 in)."""


class PaperSize(Struct, frozen=True):
    """A sheet of paper, upright unless it was turned.

    Of a roll the width alone is given: `height_pt` is then the shortest page, and templates make it longer.
    """

    name: str
    title: str
    width_pt: float
    height_pt: float
    roll: bool = False

    @property
    def content(self) -> Box:
        """184 × 254 mm in the middle: what prints on Letter and on A4 alike, so that all pages break the same."""
        width, height = CONTENT_WIDTH_PT, CONTENT_HEIGHT_PT
        if self.width_pt > self.height_pt and not self.roll:
            width, height = height, width
        return Box((self.width_pt - width) / 2, (self.height_pt - height) / 2, width, height)

    @property
    def landscape(self) -> PaperSize:
        """The same paper with its long side across."""
        return PaperSize(self.name, self.title, self.height_pt, self.width_pt)

    def cut_at(self, height_pt: float) -> PaperSize:
        """A roll's page of that length."""
        return PaperSize(self.name, self.title, self.width_pt, height_pt, roll=True)

    def printable(self, margin_pt: float = MARGIN_PT) -> Box:
        """Where full-size templates may stand: the shared box on Letter and A4, else the paper less the margin.

        Errors: ValueError when the margin is negative or leaves less than the shared box (Letter and A4 have no say).
        """
        if self.name in _SHARED:
            return self.content
        box = Box(margin_pt, margin_pt, self.width_pt - 2 * margin_pt, self.height_pt - 2 * margin_pt)
        content = self.content
        across, down = content.width_pt, content.height_pt
        if margin_pt < 0 or box.width_pt < across - 1e-6 or (box.height_pt < down - 1e-6 and not self.roll):
            millimetres = round(margin_pt / POINTS_PER_MILLIMETRE, 1)
            raise ValueError(f"a margin of {millimetres:g} mm does not leave 184 × 254 mm of {self.title}")
        return box


_SHARED: Final = frozenset({"letter", "a4"})


PAPERS: Final[dict[str, PaperSize]] = {
    "letter": PaperSize("letter", "Letter", 612.0, 792.0),
    "a4": PaperSize("a4", "A4", 210 * POINTS_PER_MILLIMETRE, 297 * POINTS_PER_MILLIMETRE),
    "legal": PaperSize("legal", "Legal", 612.0, 1008.0),
    "tabloid": PaperSize("tabloid", "Tabloid", 792.0, 1224.0),
    "a3": PaperSize("a3", "A3", 297 * POINTS_PER_MILLIMETRE, 420 * POINTS_PER_MILLIMETRE),
}

# Colours. The accent is the one colour of the page that is not the quilter's own.
INK: Final = "#1d1d1b"
QUIET: Final = "#5c5b57"
RULE: Final = "#b9b6ae"
TINT: Final = "#f3f1ec"
ACCENT: Final = "#8A3B2A"
"""In capitals, as no fabric's colour is: where a maker has an accent of her own, painters put it in place of this."""
WHITE: Final = "#ffffff"

# The type scale: each step about a fifth to a quarter larger, the title apart from all of them.
SMALL_PT: Final = 8.5
BODY_PT: Final = 10.0
LEAD_PT: Final = 11.0
HEADING_PT: Final = 13.0
TITLE_PT: Final = 28.0
LEADING: Final = 1.36

# Everything stands on multiples of one small step; twelve columns divide the content box.
STEP_PT: Final = 4.0
GUTTER_PT: Final = 12.0
COLUMNS: Final = 12
COLUMN_PT: Final = (CONTENT_WIDTH_PT - (COLUMNS - 1) * GUTTER_PT) / COLUMNS

HAIRLINE_PT: Final = 0.4
THIN_PT: Final = 0.6
BOLD_RULE_PT: Final = 1.4

FOOTER_HEIGHT_PT: Final = 20.0


def span_pt(columns: int) -> float:
    """Width of so many columns of the page with the gutters between them."""
    return columns * COLUMN_PT + (columns - 1) * GUTTER_PT


_ROLL: Final = re.compile(r"roll (\d{1,4}(?:\.\d{1,3})?) ?(in|cm)")
_SHORTEST_ROLL_PAGE_PT: Final = CONTENT_HEIGHT_PT + 2 * MARGIN_PT


def paper_named(name: str) -> PaperSize:
    """The paper of that name: one of `PAPERS`, or a copy shop's roll by its width, `roll 36 in`, `roll 90 cm`.

    Errors: ValueError for an unknown name or a roll that is too narrow or too wide, in words for the user.
    """
    words = " ".join(name.lower().split())
    paper = PAPERS.get(words)
    if paper is not None:
        return paper
    roll = _ROLL.fullmatch(words)
    if roll is None:
        raise ValueError(f"unknown paper {name!r}; known are {', '.join(PAPERS)} and rolls such as 'roll 36 in'")
    width_pt = float(roll[1]) * (POINTS_PER_INCH if roll[2] == "in" else POINTS_PER_CENTIMETRE)
    if not CONTENT_WIDTH_PT + 2 * MARGIN_PT <= width_pt <= LONGEST_PAGE_PT:
        raise ValueError(f"{words!r}: a roll is from 8.2 in (20.8 cm) to 200 in (508 cm) wide")
    title = f"roll {float(roll[1]):g} {roll[2]} wide"
    return PaperSize(f"roll {float(roll[1]):g} {roll[2]}", title, width_pt, _SHORTEST_ROLL_PAGE_PT, roll=True)
