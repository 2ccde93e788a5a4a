"""How every printed page looks: papers, the box that prints everywhere, the type scale, the colours, the spacing.

All numbers are points (1/72 in). Pages are for light paper alone; colours are chosen so that a greyscale print
keeps its order: ink, then grey words, then rules, then tints.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

POINTS_PER_INCH: Final = 72.0
POINTS_PER_CENTIMETRE: Final = 72.0 / 2.54
POINTS_PER_MILLIMETRE: Final = 72.0 / 25.4


@dataclass(frozen=True, slots=True)
class Box:
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


@dataclass(frozen=True, slots=True)
class Paper:
    """A sheet of paper, upright."""

    name: str
    title: str
    width_pt: float
    height_pt: float

    @property
    def content(self) -> Box:
        """184 × 254 mm in the middle: what prints on Letter and on A4 alike, so that all pages break the same."""
        return Box(
            (self.width_pt - CONTENT_WIDTH_PT) / 2,
            (self.height_pt - CONTENT_HEIGHT_PT) / 2,
            CONTENT_WIDTH_PT,
            CONTENT_HEIGHT_PT,
        )


PAPERS: Final[dict[str, Paper]] = {
    "letter": Paper("letter", "Letter", 612.0, 792.0),
    "a4": Paper("a4", "A4", 210 * POINTS_PER_MILLIMETRE, 297 * POINTS_PER_MILLIMETRE),
    "legal": Paper("legal", "Legal", 612.0, 1008.0),
    "tabloid": Paper("tabloid", "Tabloid", 792.0, 1224.0),
    "a3": Paper("a3", "A3", 297 * POINTS_PER_MILLIMETRE, 420 * POINTS_PER_MILLIMETRE),
}

# Colours. The accent is the one colour of the page that is not the quilter's own.
INK: Final = "#1d1d1b"
QUIET: Final = "#5c5b57"
RULE: Final = "#b9b6ae"
TINT: Final = "#f3f1ec"
ACCENT: Final = "#8a3b2a"
WHITE: Final = "#ffffff"

# The type scale: each step about a fifth to a quarter larger, the title apart from all of them.
SMALL_PT: Final = 7.5
BODY_PT: Final = 9.0
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


def paper_named(name: str) -> Paper:
    """The paper of that name.

    Errors: ValueError for an unknown name (reported earlier, where the name is read).
    """
    paper = PAPERS.get(name.lower())
    if paper is None:
        raise ValueError(f"unknown paper {name!r}; known are {', '.join(PAPERS)}")
    return paper
