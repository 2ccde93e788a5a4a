"""The pictures of a step: the parts a little apart, then joined, with the seams and the way they are pressed."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import hypot
from typing import Final

from msgspec.structs import replace

from blockdsl.facts.stepfacts import StepSeam, Variant
from blockdsl.geometry import Point, Polygon, to_float
from blockdsl.marks.display_list import Contour, Figure, Mark, PagePoint, Path
from blockdsl.marks.hatch import hatch_all
from blockdsl.marks.prose import TextStyle, line_centred, width_of
from blockdsl.marks.theme import ACCENT, INK, SMALL_PT, WHITE, Box
from blockdsl.pictures.block import Fabrics
from blockdsl.pictures.placing import Placing, middle
from blockdsl.sewing.steps.step import ByRow

_GAP: Final = 0.13
"""Of the longer side: how far two parts stand apart."""
_MOST_GAPS: Final = 0.42
"""Of the longer side: what all the gaps of a row may take together."""
_ARROW_PT: Final = 15.0
_LEAST_ARROW_PT: Final = 7.0
_SMALL_ARROW_PT: Final = 11.0
_MANY: Final = 6
"""So many seams in one step need smaller arrows."""
STRAIGHT: Final = 2
"""The ends of a seam without corners."""
_DOT_PT: Final = 2.2
_SEAM: Final = (3.2, 2.0)
_SECTION: Final = "section "
"""What a section of foundation papers is called before its letter."""
_OPEN: Final = (0.8, 2.4)


def apart_picture(hand: Variant, fabrics: Fabrics, box: Box, says: str, size: float = 1.0) -> tuple[Figure, Box]:
    """The parts apart, each moved along the seams that will join it; in the middle of the box.

    `size` is how much larger than on a sheet signs and letters are.
    """
    moves = part_moves(hand)
    placing, filled = _fitted(_moved_corners(hand, moves), box)
    return Figure(says, _parts(hand, moves, fabrics, placing, size)), filled


def seam_picture(hand: Variant, fabrics: Fabrics, box: Box, says: str, sewn: int, size: float = 1.0) -> Figure:
    """The work after so many of its seams: what they join lies together, the rest apart; the last seam is marked.

    All pictures of one hand are drawn at the scale of the first, in which everything lies apart.
    """
    placing, _ = _fitted(_moved_corners(hand, part_moves(hand)), box)
    moves = part_moves(hand, sewn)
    marks = list(_parts(hand, moves, fabrics, placing, size))
    seams = [seam for stage in hand.stages for seam in stage.seams]
    if sewn:
        seam = seams[sewn - 1]
        inside = _patches_inside(hand)
        dx, dy = moves[inside[seam.parts[0]][0]]
        here = Placing(placing.scale, placing.x_pt + dx * placing.scale, placing.y_pt + dy * placing.scale)
        marks += [*_seam(seam, here, size), *_pressed(seam, here, 1, size)]
        if sewn == len(seams):
            for start, end in (stretch for stage in hand.stages for stretch in stage.closes):
                marks += _stitches(here.ring((start, end)), _SEAM, size, ACCENT)
    return Figure(says, tuple(marks))


def _moved_corners(hand: Variant, moves: Sequence[PagePoint]) -> list[PagePoint]:
    return [
        (to_float(x) + moves[place][0], to_float(y) + moves[place][1])
        for place, part in enumerate(hand.ingredients)
        for patch in part.picture
        for x, y in patch.corners
    ]


def _parts(
    hand: Variant, moves: Sequence[PagePoint], fabrics: Fabrics, placing: Placing, size: float
) -> tuple[Mark, ...]:
    """Each part moved, with its letter."""
    marks: list[Mark] = []
    for place, part in enumerate(hand.ingredients):
        dx, dy = (move * placing.scale for move in moves[place])
        here = Placing(placing.scale, placing.x_pt + dx, placing.y_pt + dy)
        rings = [here.ring(patch.shown) for patch in part.picture]
        marks += _cloth([patch.fabric for patch in part.picture], rings, fabrics)
        if part.fabric is not None:
            marks += _letter(part.name, rings[0], size)
        elif part.name.startswith(_SECTION):
            marks += _section_letter(part.name.removeprefix(_SECTION), here, part.outline, size)
    return tuple(marks)


def joined_picture(
    hand: Variant, fabrics: Fabrics, box: Box, says: str, size: float = 1.0, numbers: Sequence[str] = ()
) -> tuple[Figure, Box]:
    """What is made, with its new seams dashed and an arrow over each for the way it is pressed.

    `numbers` are what its patches are called, where they have numbers of their own.
    """
    points = [(to_float(x), to_float(y)) for patch in hand.picture for x, y in patch.corners]
    placing, filled = _fitted(points, box)
    rings = [placing.ring(patch.shown) for patch in hand.picture]
    marks = _cloth([patch.fabric for patch in hand.picture], rings, fabrics)
    for number, ring in zip(numbers, rings, strict=False):
        marks += _letter(number, ring, size)
    seams = [seam for stage in hand.stages for seam in stage.seams]
    for seam in seams:
        marks += _seam(seam, placing, size)
    for stage in hand.stages:
        for start, end in stage.closes:
            marks += _stitches(placing.ring((start, end)), _SEAM, size, ACCENT)
    marks += [dot(*place, size) for place in placing.ring(tuple(end for seam in seams for end in seam.dots))]
    for seam in seams:
        marks += _pressed(seam, placing, len(seams), size)
    return Figure(says, tuple(marks)), filled


def _fitted(points: Sequence[PagePoint], box: Box) -> tuple[Placing, Box]:
    left, top = min(x for x, _ in points), min(y for _, y in points)
    width, height = max(x for x, _ in points) - left, max(y for _, y in points) - top
    scale = min(box.width_pt / width, box.height_pt / height)
    x = box.x_pt + (box.width_pt - width * scale) / 2
    y = box.y_pt + (box.height_pt - height * scale) / 2
    return Placing(scale, x - left * scale, y - top * scale), Box(x, y, width * scale, height * scale)


# --- parts apart -----------------------------------------------------------------------------------


def _patches_inside(hand: Variant) -> list[list[int]]:
    """For each part, and then for what each stage makes, the ingredients that it is made of."""
    inside: list[list[int]] = [[place] for place in range(len(hand.ingredients))]
    for stage in hand.stages:
        inside.append([place for part in stage.parts for place in inside[part]])
    return inside


def part_moves(hand: Variant, sewn: int = 0) -> list[PagePoint]:
    """How far each part is moved, in units of length: outward along the seams that join it, after the first `sewn`."""
    moves = [(0.0, 0.0)] * len(hand.ingredients)
    longest = max(to_float(side) for side in hand.extent)
    inside = _patches_inside(hand)
    done = 0
    for stage in hand.stages:
        gap = min(_GAP, _MOST_GAPS / len(stage.parts)) * longest
        run = [(0.0, 0.0)]
        for seam in stage.seams:
            dx, dy = (0.0, 0.0) if done < sewn else _unit(seam)
            done += 1
            run.append((run[-1][0] + dx * gap, run[-1][1] + dy * gap))
        mean = sum(x for x, _ in run) / len(run), sum(y for _, y in run) / len(run)
        for part, (x, y) in zip(stage.parts, run, strict=True):
            for place in inside[part]:
                moves[place] = moves[place][0] + x - mean[0], moves[place][1] + y - mean[1]
    return moves


def _unit(seam: StepSeam) -> PagePoint:
    """The direction from the first part of a seam to the second."""
    x, y = to_float(seam.arrow.x), to_float(seam.arrow.y)
    length = hypot(x, y) or 1.0
    sense = 1.0 if seam.toward else -1.0
    return sense * x / length, sense * y / length


# --- marks -----------------------------------------------------------------------------------------


def _cloth(names: Sequence[str], rings: Sequence[Contour], fabrics: Fabrics) -> list[Mark]:
    marks: list[Mark] = []
    by_fabric: dict[str, list[Contour]] = {}
    for name, ring in zip(names, rings, strict=True):
        by_fabric.setdefault(name, []).append(ring)
    for name, group in by_fabric.items():
        fabric = fabrics[name]
        marks.append(Path(tuple(group), fill=fabric.colour))
        marks += hatch_all(group, fabric.number, fabric.colour)
    marks.append(Path(tuple(rings), stroke=INK, stroke_width_pt=0.5))
    return marks


def _letter(letter: str, ring: Contour, size: float) -> tuple[Mark, ...]:
    """A single patch's letter on a white ground, where it fits."""
    x, y, radius = middle(ring)
    style = TextStyle((SMALL_PT + 0.5) * size, "bold", INK)
    reach = max(width_of(letter, style) / 2 + 1.4, style.capitals_pt / 2 + 1.6)
    if radius < reach * 0.8:
        return ()
    return letter_mark(letter, x, y, size)


def _section_letter(letter: str, placing: Placing, outline: Polygon | None, size: float) -> tuple[Mark, ...]:
    """The letter of a section of papers, in its middle."""
    ring = placing.ring(outline or ())
    if not ring:
        return ()
    x, y, _ = middle(ring)
    return letter_mark(letter, x, y, 1.3 * size)


_CIRCLE: Final = tuple(
    (c, s)
    for c, s in (
        (1.0, 0.0), (0.924, 0.383), (0.707, 0.707), (0.383, 0.924), (0.0, 1.0), (-0.383, 0.924), (-0.707, 0.707),
        (-0.924, 0.383), (-1.0, 0.0), (-0.924, -0.383), (-0.707, -0.707), (-0.383, -0.924), (0.0, -1.0),
        (0.383, -0.924), (0.707, -0.707), (0.924, -0.383),
    )
)  # fmt: skip


def letter_mark(letter: str, x: float, y: float, size: float = 1.0) -> tuple[Mark, ...]:
    """A patch's letter on a white ground."""
    style = TextStyle((SMALL_PT + 0.5) * size, "bold", INK)
    reach = max(width_of(letter, style) / 2 + 1.4, style.capitals_pt / 2 + 1.6)
    ground = tuple((x + reach * dx, y + reach * dy) for dx, dy in _CIRCLE)
    return (Path((ground,), fill=WHITE), *line_centred(letter, x, y, style))


def stitches(start: PagePoint, end: PagePoint) -> tuple[Mark, ...]:
    """A seam as the pictures show it."""
    return _stitches((start, end), _SEAM, 1.0)


def _stitches(line: Contour, dash: tuple[float, ...], size: float, colour: str = INK) -> tuple[Mark, ...]:
    return (
        Path((line,), closed=False, stroke=WHITE, stroke_width_pt=2.4 * size),
        Path(
            (line,), closed=False, stroke=colour, stroke_width_pt=1.1 * size, dash=tuple(each * size for each in dash)
        ),
    )


def _seam(seam: StepSeam, placing: Placing, size: float) -> list[Mark]:
    """The seam dashed; what a partial seam leaves open dotted, with a bar where sewing stops."""
    points = list(seam.line)
    marks: list[Mark] = []
    if seam.bend is not None:
        return list(_stitches(placing.arc(points[0], points[-1], seam.bend), _SEAM, size))
    if seam.stop is not None:
        marks += _stitches(placing.ring((seam.stop, points[-1])), _OPEN, size, ACCENT)
        points[-1] = seam.stop
    if seam.begin is not None:
        marks += _stitches(placing.ring((points[0], seam.begin)), _OPEN, size, ACCENT)
        points[0] = seam.begin
    marks += _stitches(placing.ring(tuple(points)), _SEAM, size)
    for place in (seam.stop, seam.begin):
        if place is not None:
            marks += _bar(placing.ring((place, seam.line[0])))
    return marks


def dot(x: float, y: float, size: float = 1.0) -> Mark:
    """Where a seam stops a seam allowance from the edge, because something is set in there later."""
    ring = tuple((x + _DOT_PT * size * dx, y + _DOT_PT * size * dy) for dx, dy in _CIRCLE)
    return Path((ring,), fill=ACCENT, stroke=WHITE, stroke_width_pt=0.5)


def _bar(way: Contour) -> tuple[Mark, ...]:
    (x, y), (tx, ty) = way
    length = hypot(tx - x, ty - y) or 1.0
    ux, uy = (tx - x) / length * 4.5, (ty - y) / length * 4.5
    return (Path((((x - uy, y + ux), (x + uy, y - ux)),), closed=False, stroke=ACCENT, stroke_width_pt=1.8),)


def _pressed(seam: StepSeam, placing: Placing, many: int, size: float) -> tuple[Mark, ...]:
    """An arrow across the middle of the seam's longest stretch; of a seam that is fanned one across either half.

    Where rows that one step makes are pressed opposite ways, there is one for either, with the numbers of its rows.
    """
    if seam.toward is None:
        return ()
    if seam.by_row is not None and seam.bend is None and len(seam.line) == STRAIGHT:
        return _pressed_by_row(seam, seam.by_row, placing, many, size)
    if seam.fan is not None:
        back = Point(-seam.arrow.x, -seam.arrow.y)
        one = replace(seam, line=(seam.line[0], seam.fan.place), fan=None)
        other = replace(seam, line=(seam.fan.place, seam.line[-1]), fan=None, arrow=back)
        return (*_pressed(one, placing, many, size), *_pressed(other, placing, many, size))
    line = placing.ring(seam.line)
    middle_of_arc = None if seam.bend is None else placing.arc(seam.line[0], seam.line[-1], seam.bend)
    (ax, ay), (bx, by) = max(pairwise(line), key=lambda s: hypot(s[1][0] - s[0][0], s[1][1] - s[0][1]))
    dx, dy = to_float(seam.arrow.x), to_float(seam.arrow.y)
    if (ax, ay) != line[0]:  # the arrow of a later stretch lies on the same hand of the line
        hand = (line[1][0] - line[0][0]) * dy - (line[1][1] - line[0][1]) * dx
        dx, dy = (-(by - ay), bx - ax) if hand > 0 else (by - ay, -(bx - ax))
    length = hypot(dx, dy) or 1.0
    ux, uy = dx / length, dy / length
    most = size * (_ARROW_PT if many < _MANY else _SMALL_ARROW_PT)
    long = max(_LEAST_ARROW_PT, min(most, hypot(bx - ax, by - ay) * 0.45))
    x, y = (ax + bx) / 2, (ay + by) / 2
    if middle_of_arc is not None:
        x, y = middle_of_arc[len(middle_of_arc) // 2]
    return arrow((x - ux * long / 2, y - uy * long / 2), (x + ux * long / 2, y + uy * long / 2), long)


def _pressed_by_row(seam: StepSeam, by_row: ByRow, placing: Placing, many: int, size: float) -> tuple[Mark, ...]:
    """Two arrows, each across a half of the seam, and beside the shaft of each the rows that are pressed so."""
    start, end = seam.line
    between = Point((start.x + end.x) / 2, (start.y + end.y) / 2)
    back = Point(-seam.arrow.x, -seam.arrow.y)
    marks: tuple[Mark, ...] = ()
    for line, way, rows in (((start, between), seam.arrow, by_row.rows), ((between, end), back, by_row.others)):
        half = replace(seam, line=line, arrow=way, by_row=None)
        marks += _pressed(half, placing, many, size)
        (ax, ay), (bx, by) = placing.ring(line)
        length = hypot(bx - ax, by - ay) or 1.0
        beside = 0.3 * length
        x, y = (ax + bx) / 2 + (bx - ax) / length * beside, (ay + by) / 2 + (by - ay) / length * beside
        marks += letter_mark(", ".join(map(str, rows)), x, y, 0.8 * size)
    return marks


def arrow(start: PagePoint, end: PagePoint, size: float) -> tuple[Mark, ...]:
    """A small stout arrow on a white rim."""
    length = hypot(end[0] - start[0], end[1] - start[1]) or 1.0
    ux, uy = (end[0] - start[0]) / length, (end[1] - start[1]) / length
    head, wide, thin = size * 0.5, size * 0.3, size * 0.1
    neck = end[0] - head * ux, end[1] - head * uy

    def beside(place: PagePoint, by: float) -> PagePoint:
        return place[0] - uy * by, place[1] + ux * by

    ring = (
        beside(start, thin), beside(neck, thin), beside(neck, wide), end,
        beside(neck, -wide), beside(neck, -thin), beside(start, -thin),
    )  # fmt: skip
    return (Path((ring,), stroke=WHITE, stroke_width_pt=1.8), Path((ring,), fill=INK))
