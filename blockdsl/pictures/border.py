"""A border drawn round the top before it is sewn on: its strips a little away from it, numbered in order."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.quiltfacts import QuiltFacts, RingFacts
from blockdsl.geometry import to_float
from blockdsl.marks.display_list import Contour, Figure, Mark, Path
from blockdsl.marks.hatch import hatch_all
from blockdsl.marks.prose import TextStyle, line, line_centred, rectangle
from blockdsl.marks.theme import ACCENT, BODY_PT, INK, QUIET, RULE, SMALL_PT, TINT, WHITE, Box
from blockdsl.pictures.placing import Placing
from blockdsl.pictures.quilt import QuiltPainter
from blockdsl.wording.messages import Messages, words_of

_NUMBER: Final = TextStyle(BODY_PT, "bold", INK)
_QUIET: Final = TextStyle(SMALL_PT, "regular", QUIET)
_STRIP: Final = "#d9d4c8"
_APART: Final = 0.05
_LEAST_STRIP: Final = 0.07
"""A strip is drawn no narrower than this share of the top, so that it can be seen."""
_OUTWARD: Final = ((0, -1), (1, 0), (0, 1), (-1, 0))


def ring_picture(facts: QuiltFacts, ring: RingFacts, box: Box) -> tuple[Figure, Box]:
    """The top as a pale rectangle, the four sides of the border around it, numbered as they are sewn."""
    width, height = (to_float(side) for side in ring.before)
    strip = to_float(ring.width)
    if not ring.unit:
        strip = max(strip, _LEAST_STRIP * max(width, height))
    gap = _APART * max(width, height)
    scale = min(box.width_pt / (width + 2 * (strip + gap)), box.height_pt / (height + 2 * (strip + gap)))
    inner = Box(box.x_pt + (strip + gap) * scale, box.y_pt + (strip + gap) * scale, width * scale, height * scale)
    fabric = next((fabric for fabric in facts.fabrics_used if fabric.name == ring.fabric), None)
    words = words_of(facts)
    marks: list[Mark] = [
        rectangle(inner.x_pt, inner.y_pt, inner.width_pt, inner.height_pt, fill=TINT, stroke=RULE, stroke_width_pt=0.6),
        *line_centred(words("border-top"), inner.x_pt + inner.width_pt / 2, inner.y_pt + inner.height_pt / 2, _QUIET),
    ]
    if ring.unit:
        marks += _units(facts, ring, inner, scale, gap)
    elif ring.corners == "squares":
        marks += _squares(facts, ring, inner, strip * scale, gap * scale)
    order = _order(ring)
    for number, outline in zip(order, _sides(ring, inner, strip * scale, gap * scale), strict=True):
        if fabric is not None:
            marks += (Path((outline,), fill=fabric.colour), *hatch_all([outline], fabric.number, fabric.colour))
        if not ring.unit:
            marks.append(Path((outline,), stroke=INK, stroke_width_pt=0.6))
        x = sum(x for x, _ in outline) / len(outline)
        y = sum(y for _, y in outline) / len(outline)
        marks.append(rectangle(x - 5, y - 5.5, 10, 11, fill="#ffffff"))
        marks += line_centred(number, x, y, _NUMBER)
    total = 2 * (strip + gap)
    filled = Box(box.x_pt, box.y_pt, (width + total) * scale, (height + total) * scale)
    return Figure(_said(facts, ring), tuple(marks)), filled


def _units(facts: QuiltFacts, ring: RingFacts, inner: Box, scale: float, gap: float) -> list[Mark]:
    """The units of a pieced border and its corner squares where they lie, each side moved outward."""
    middle = [
        (to_float(whole) - to_float(before)) / 2 for whole, before in zip(facts.finished, ring.before, strict=True)
    ]
    placing = Placing(scale, inner.x_pt - middle[0] * scale, inner.y_pt - middle[1] * scale)
    painter = QuiltPainter(facts, placing, f"ring-{ring.number}")
    blocks = [
        (place, (_OUTWARD[block.row][0] * gap, _OUTWARD[block.row][1] * gap))
        for place, block in enumerate(facts.placed)
        if block.ring == ring.number
    ]
    corners = []
    for place, cloth in enumerate(facts.cloth):
        if facts.pieces[cloth.piece].ring == ring.number:
            x, y = (to_float(cloth.outline[0][axis]) - to_float(facts.finished[axis]) / 2 for axis in (0, 1))
            up = (0.0, gap if y > 0 else -gap) if ring.sides_first else (gap if x > 0 else -gap, 0.0)
            corners.append((place, up))
    return [*painter.cloth(corners), *painter.blocks(blocks)]


def _squares(facts: QuiltFacts, ring: RingFacts, inner: Box, strip: float, gap: float) -> list[Mark]:
    """The corner squares of a plain border, at the ends of the strips that are sewn on last."""
    fabric = next(piece.fabric for piece in facts.pieces if piece.ring == ring.number and piece.role == "border corner")
    colour = next(seen.colour for seen in facts.fabrics_used if seen.name == fabric)
    outward = gap + strip
    across, down = (0.0, outward) if ring.sides_first else (outward, 0.0)
    inward = strip if ring.sides_first else 0.0
    xs = (inner.x_pt - across - inward, inner.right_pt + across - (strip - inward))
    ys = (inner.y_pt - down - (strip - inward), inner.bottom_pt + down - inward)
    return [rectangle(x, y, strip, strip, fill=colour, stroke=INK, stroke_width_pt=0.6) for x in xs for y in ys]


def mitre_picture(box: Box, words: Messages) -> Figure:
    """A mitred corner in three steps: sewn to the dot, folded on the diagonal and sewn on the line, pressed open."""
    top, wide, step = 40.0, 14.0, box.width_pt / 3
    end, tail = top + wide, top + wide + 8.0
    marks: list[Mark] = []
    for place, what in enumerate(("dot", "fold", "trim")):
        marks += _mitre_step(place, box.x_pt + place * step, box.y_pt, (top, end, tail))
        marks += line(words(f"miter-{what}"), box.x_pt + place * step, box.y_pt + tail + 9.0, _QUIET)
    return Figure(words("miter-picture"), tuple(marks))


def _mitre_step(place: int, x: float, y: float, sizes: tuple[float, float, float]) -> list[Mark]:
    """One of the three, its top left corner at (x, y): the top, the outer edge of the strips, their loose ends."""
    top, end, tail = sizes

    def area(fill: str, *points: tuple[float, float]) -> Path:
        return Path((tuple((x + px, y + py) for px, py in points),), fill=fill, stroke=INK, stroke_width_pt=0.6)

    def seam(*points: tuple[float, float]) -> Path:
        ring = tuple((x + px, y + py) for px, py in points)
        return Path((ring,), closed=False, stroke=ACCENT, stroke_width_pt=1.0, dash=(3.0, 2.0))

    if place == 1:
        folded = area(TINT, (0, 0), (top, top), (0, top))
        return [folded, area(_STRIP, (0, top), (tail, top), (tail, end), (0, end)), seam((top, top), (end, end))]
    square = area(TINT, (0, 0), (top, 0), (top, top), (0, top))
    if place == 0:
        right = area(_STRIP, (top, 0), (end, 0), (end, tail), (top, tail))
        lower = area(WHITE, (0, top), (tail, top), (tail, end), (0, end))
        point = ((x + top, y + top), (x + top + 0.01, y + top))
        dot = Path((point,), closed=False, stroke=ACCENT, stroke_width_pt=4.5, round_ends=True)
        return [square, right, lower, seam((top, 0), (top, top)), seam((0, top), (top, top)), dot]
    right = area(_STRIP, (top, 0), (end, 0), (end, end), (top, top))
    return [square, right, area(WHITE, (0, top), (top, top), (end, end), (0, end))]


def _order(ring: RingFacts) -> tuple[str, str, str, str]:
    """Numbers of the top, right, bottom and left side as they are sewn."""
    if ring.corners == "mitred":
        return "1", "2", "3", "4"
    return ("2", "1", "2", "1") if ring.sides_first else ("1", "2", "1", "2")


def _sides(ring: RingFacts, inner: Box, strip: float, gap: float) -> tuple[Contour, Contour, Contour, Contour]:
    """Top, right, bottom, left: butted ones as long as what they are sewn to, mitred ones with slanted ends."""
    left, top, right, bottom = inner.x_pt, inner.y_pt, inner.right_pt, inner.bottom_pt
    if ring.corners == "mitred":
        one, two, three, four = (_mitred(inner, place, strip, gap) for place in range(4))
        return one, two, three, four
    over = 0.0 if ring.corners == "squares" else strip
    across, down = (over, 0.0) if ring.sides_first else (0.0, over)
    return (
        _rectangle(left - across, top - gap - strip, right + across, top - gap),
        _rectangle(right + gap, top - down, right + gap + strip, bottom + down),
        _rectangle(left - across, bottom + gap, right + across, bottom + gap + strip),
        _rectangle(left - gap - strip, top - down, left - gap, bottom + down),
    )


def _mitred(inner: Box, side: int, strip: float, gap: float) -> Contour:
    """The top (0), right, bottom or left strip, its ends at 45°."""
    left, top, right, bottom = inner.x_pt, inner.y_pt, inner.right_pt, inner.bottom_pt
    corners = ((left, top), (right, top), (right, bottom), (left, bottom))
    (ax, ay), (bx, by) = corners[side], corners[(side + 1) % 4]
    out_x, out_y = _OUTWARD[side]
    along_x, along_y = -out_y, out_x
    far = gap + strip
    return (
        (ax + out_x * gap, ay + out_y * gap),
        (bx + out_x * gap, by + out_y * gap),
        (bx + out_x * far + along_x * strip, by + out_y * far + along_y * strip),
        (ax + out_x * far - along_x * strip, ay + out_y * far - along_y * strip),
    )


def _rectangle(left: float, top: float, right: float, bottom: float) -> Contour:
    return ((left, top), (right, top), (right, bottom), (left, bottom))


def _said(facts: QuiltFacts, ring: RingFacts) -> str:
    way = "sides-first" if ring.sides_first else "ends-first"
    ways = {"mitred": "mitered", "squares": f"squares-{way}", "butted": way}
    order = "only" if len(facts.rings) == 1 else "one"
    return words_of(facts)(f"border-picture-{ways[ring.corners]}", number=ring.number, order=order)
