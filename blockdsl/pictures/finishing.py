"""Small pictures of finishing: the back with its seams, the layers, strips joined, a corner turned, a sleeve."""

from __future__ import annotations

from typing import Final

from blockdsl.cutting.finishing import BackingPlan
from blockdsl.facts.blockfacts import Extent
from blockdsl.geometry import to_float
from blockdsl.marks.display_list import Figure, Mark, Path
from blockdsl.marks.prose import TextStyle, line, line_centred, rectangle
from blockdsl.marks.theme import ACCENT, INK, QUIET, RULE, SMALL_PT, TINT, WHITE, Box
from blockdsl.wording.messages import Messages

_SMALL: Final = TextStyle(SMALL_PT, "regular", QUIET)
_NUMBER: Final = TextStyle(SMALL_PT, "bold", ACCENT)
_SEAM: Final = (4.0, 2.5)
_FOLD: Final = "#d9d4c8"
Points = tuple[tuple[float, float], ...]


def _area(points: Points, fill: str) -> Path:
    return Path((points,), fill=fill, stroke=INK, stroke_width_pt=0.6)


def _seam(*points: tuple[float, float]) -> Path:
    return Path((points,), closed=False, stroke=INK, stroke_width_pt=0.9, dash=_SEAM)


def backing_picture(plan: BackingPlan, quilt: Extent, box: Box, words: Messages) -> Figure:
    """The back to scale with its seams, the quilt's place on it dotted."""
    width, height = (to_float(side) for side in plan.sewn)
    scale = min(box.width_pt / width, (box.height_pt - 12) / height)
    back = Box(box.x_pt, box.y_pt, width * scale, height * scale)
    marks: list[Mark] = [
        rectangle(back.x_pt, back.y_pt, back.width_pt, back.height_pt, fill=TINT, stroke=INK, stroke_width_pt=0.7)
    ]
    for place in range(1, plan.widths):
        share = place / plan.widths
        if plan.seams == "vertical":
            x = back.x_pt + share * back.width_pt
            marks.append(_seam((x, back.y_pt), (x, back.bottom_pt)))
        else:
            y = back.y_pt + share * back.height_pt
            marks.append(_seam((back.x_pt, y), (back.right_pt, y)))
    across, down = (to_float(side) * scale for side in quilt)
    left, top = back.x_pt + (back.width_pt - across) / 2, back.y_pt + (back.height_pt - down) / 2
    edge = rectangle(left, top, across, down, stroke=ACCENT, stroke_width_pt=0.8)
    marks.append(Path(edge.rings, stroke=ACCENT, stroke_width_pt=0.8, dash=(1.0, 2.0)))
    marks += line(words("backing-key"), box.x_pt, back.bottom_pt + 10, _SMALL)
    key = "backing-picture" if plan.seams == "none" else f"backing-picture-{plan.seams}"
    return Figure(words(key, widths=plan.widths), tuple(marks))


def layers_picture(box: Box, names: tuple[str, str, str], words: Messages) -> Figure:
    """Back, batting and top lying on one another, each a little smaller; `names` are theirs, from the top down."""
    marks: list[Mark] = []
    for place, (name, fill) in enumerate(zip(reversed(names), (_FOLD, WHITE, TINT), strict=True)):
        inset = 12.0 * place
        y = box.y_pt + 54.0 - 22.0 * place
        width = box.width_pt - 2 * inset
        left = box.x_pt + inset
        lean = 26.0
        points = ((left + lean, y), (left + width, y), (left + width - lean, y + 40.0), (left, y + 40.0))
        marks.append(_area(points, fill))
        marks += line_centred(name, left + width / 2, y + 33.0, _SMALL)
    first, second, third = names
    return Figure(words("layers-picture", first=first, second=second, third=third), tuple(marks))


def join_picture(box: Box, words: Messages) -> Figure:
    """Two strips across each other at a right angle, the seam from corner to corner, then pressed open."""
    x, y, wide = box.x_pt, box.y_pt + 8.0, 22.0
    under = _area(((x, y), (x + 74.0, y), (x + 74.0, y + wide), (x, y + wide)), TINT)
    corner = x + 74.0 - wide
    over = _area(((corner, y), (corner + wide, y), (corner + wide, y + 66.0), (corner, y + 66.0)), _FOLD)
    seam = _seam((corner, y), (corner + wide, y + wide))
    right = x + 88.0
    open_left = _area(((right, y + 22.0), (right + 44.0, y + 22.0), (right + 22.0, y + 44.0), (right, y + 44.0)), TINT)
    open_right = _area(
        ((right + 44.0, y + 22.0), (right + 78.0, y + 22.0), (right + 78.0, y + 44.0), (right + 22.0, y + 44.0)), _FOLD
    )
    said = (
        *line(words("join-corner"), x, y + 82.0, _SMALL),
        *line(words("join-trim-open"), right, y + 60.0, _SMALL),
    )
    return Figure(words("join-picture"), (under, over, seam, open_left, open_right, *said))


def corner_picture(box: Box, words: Messages) -> Figure:
    """The binding turned at a corner in three steps."""
    marks: list[Mark] = []
    size, gap = 42.0, 10.0
    for place in range(3):
        x, y = box.x_pt + place * (size + gap), box.y_pt + 34.0
        marks.append(rectangle(x, y, size, size, fill=TINT, stroke=RULE, stroke_width_pt=0.6))
        marks += _strip_at(place, x, y, size)
        marks += line_centred(f"({place + 1})", x + size / 2, y + size + 10.0, _NUMBER)
    return Figure(words("corner-picture"), tuple(marks))


def _strip_at(place: int, x: float, y: float, size: float) -> list[Mark]:
    """The strip along the upper edge, from the left; it turns down along the right edge."""
    wide = 12.0
    right = x + size
    if place == 0:
        strip = _area(((x, y), (right + 16.0, y), (right + 16.0, y + wide), (x, y + wide)), _FOLD)
        return [strip, _seam((x, y + 5.0), (right - 5.0, y + 5.0))]
    if place == 1:
        along = _area(((x, y), (right, y), (right - wide, y + wide), (x, y + wide)), _FOLD)
        up = _area(((right - wide, y + wide), (right, y), (right, y - 24.0), (right - wide, y - 24.0)), WHITE)
        return [along, up, _seam((x, y + 5.0), (right - 5.0, y + 5.0))]
    along = _area(((x, y), (right, y), (right, y + wide), (x, y + wide)), _FOLD)
    down = _area(((right - wide, y), (right, y), (right, y + size), (right - wide, y + size)), WHITE)
    return [along, down, _seam((right - 5.0, y), (right - 5.0, y + size))]


def sleeve_picture(box: Box, words: Messages) -> Figure:
    """The sleeve along the upper edge of the back."""
    x, y = box.x_pt, box.y_pt + 4.0
    quilt = rectangle(x, y, box.width_pt, 92.0, fill=TINT, stroke=INK, stroke_width_pt=0.7)
    tube = rectangle(x + 6.0, y + 3.0, box.width_pt - 12.0, 20.0, fill=WHITE, stroke=INK, stroke_width_pt=0.6)
    seam = _seam((x + 6.0, y + 20.0), (x + box.width_pt - 6.0, y + 20.0))
    said = line_centred(words("sleeve-back"), x + box.width_pt / 2, y + 58.0, _SMALL)
    return Figure(words("sleeve-picture"), (quilt, tube, seam, *said))
