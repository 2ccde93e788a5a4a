"""The heading of a section, and its name said again at the top of a new page."""

from __future__ import annotations

from typing import Final

from blockdsl.marks.display_list import Element, Mark, Role, moved, tagged
from blockdsl.marks.prose import TextStyle, fitted, line, line_ending, paragraph, rule, width_of
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, HEADING_PT, LEAD_PT, QUIET, STEP_PT
from blockdsl.page.flow import Flowable
from blockdsl.wording.messages import Messages

_LEVELS: Final[tuple[Role, ...]] = ("H1", "H2", "H3", "H4", "H5", "H6")


def heading(text: str, width_pt: float = CONTENT_WIDTH_PT, aside: str = "", level: int = 2) -> Flowable:
    """A section's heading under a rule, with a quiet remark at its right end, or below it; bound to what follows."""
    style = TextStyle(HEADING_PT if level <= 3 else LEAD_PT, "bold")
    baseline = 2 * STEP_PT + style.baseline_pt
    quiet = TextStyle(BODY_PT, "regular", QUIET)
    text = fitted(text, width_pt, style)
    named = tagged(line(text, 0.0, baseline, style), heading_element(level))
    marks: list[Mark] = [rule(0.0, width_pt), *named]
    y = 2 * STEP_PT + style.line_pt
    if aside and width_of(aside, quiet) <= width_pt - width_of(text, style) - 4 * STEP_PT:
        marks += line_ending(aside, width_pt, baseline, quiet)
    elif aside:
        tall, below = paragraph(aside, width_pt, quiet)
        marks += moved(below, 0.0, y)
        y += tall
    return Flowable(y + STEP_PT, tuple(marks), before_pt=5 * STEP_PT, keep_with_next=True)


def heading_element(level: int) -> Element:
    """What a heading of that level is read as."""
    return Element(_LEVELS[min(level, len(_LEVELS)) - 1])


def continued(text: str, words: Messages) -> Flowable:
    """A section's name as it is said again at the top of a new page."""
    style = TextStyle(LEAD_PT, "bold")
    return Flowable(
        style.line_pt + 2 * STEP_PT,
        tagged(line(words("sheet-continued", title=text), 0.0, style.baseline_pt, style), Element("Artifact")),
        keep_with_next=True,
    )
