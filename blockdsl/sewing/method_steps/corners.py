"""Stitch and flip: a square laid on each corner, sewn across it, trimmed and pressed over.

Corners are flipped one after the other, opposite ones first where their squares overlap: so the seams cross at the
middle of an edge and not at a corner.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.geometry import Exact, sign
from blockdsl.sewing.message import Message, PieceName, PlaceArgument, Position, Style, message
from blockdsl.sewing.method_steps.common import measure, method_step, take
from blockdsl.sewing.method_steps.parts import MethodPart, MethodStep, MethodUnit
from blockdsl.sewing.techniques import corners as scenes

CORNERS: Final[dict[str, tuple[Position, Position, Position]]] = {
    "tl": ("upper-left", "lower-left", "upper-right"),
    "tr": ("upper-right", "lower-right", "upper-left"),
    "br": ("lower-right", "upper-right", "lower-left"),
    "bl": ("lower-left", "upper-left", "lower-right"),
}
"""Each corner, and where the line that cuts it off begins and ends."""


_OPPOSITE: Final = {"tl": "br", "tr": "bl", "br": "tl", "bl": "tr"}


def geese(unit: MethodUnit) -> MethodStep:
    """A rectangle, a square at its left end, a square at its right end."""
    measures = unit.measures
    left, right = (1, 2) if unit.drawn else (2, 1)
    same = unit.same(left, right)
    first, second = (PieceName(role, "a" if same else "both") for role in (left, right))
    letter, seam = PieceName(left, "letter"), measures.allowance
    start, end = PlaceArgument("lower-right"), PlaceArgument("upper-left")
    lay = message("method-flip-lay-base", base=PieceName(0), position=PlaceArgument("top"))
    place = message("method-flip-place-end", piece=first, end=PlaceArgument("left"))
    other = message("method-flip-other-end", piece=second, end=PlaceArgument("right"), start=start, stop=end)
    same_way = message("method-flip-same-way", position=PlaceArgument("upper-right"))
    return method_step(
        unit,
        ("each", 1),
        (
            MethodPart(
                (take("each", unit, 0, left, right), message("method-mark-each", letter=letter)),
                scenes.marked(measures),
            ),
            MethodPart((lay, place, *_flip(unit, "tl", letter)), scenes.sewn_on(measures, 0)),
            MethodPart(
                (other, same_way, *_trimmed(unit, geese=True), *_mirrored(unit)),
                scenes.checked(measures),
                message("method-measure-point", size=measures.size, seam=seam),
            ),
        ),
        ("flip geese",),
        message("method-again-flip-geese", first=first, second=second, same="yes" if same else "no"),
        *_mirrored(unit),
    )


def half(unit: MethodUnit) -> MethodStep:
    """A square on a square of the same size."""
    measures = unit.measures
    upper, lower = PieceName(1, "the"), PieceName(0, "the")
    turn = message("method-flip-lay-both", start=PlaceArgument("lower-left"), end=PlaceArgument("upper-right"))
    return method_step(
        unit,
        ("each", 1),
        (
            MethodPart(
                (take("each", unit, 0, 1), message("method-mark-diagonal", piece=upper)),
                scenes.marked(measures),
            ),
            MethodPart(
                (
                    message("method-flip-place-whole", base=lower),
                    turn,
                    message("method-flip-sew", position=PlaceArgument("lower-right")),
                    message("method-cut-outside", seam=measures.allowance),
                    message("method-press-over-other", piece=PieceName(1)),
                    *_trimmed(unit),
                ),
                scenes.sewn_on(measures, 0),
                measure(unit),
            ),
        ),
        ("flip half",),
        message("method-again-flip-half", upper=upper, base=lower),
    )


def snowball(unit: MethodUnit) -> MethodStep:
    """Corners of one fabric, one to four of them; opposite ones first."""
    found = unit.measures.corners
    first = found[0]
    order = sorted(found, key=lambda place: (place != first, place != _OPPOSITE[first]))
    return _corners(unit, order, [1] * len(order))


def diamond(unit: MethodUnit) -> MethodStep:
    """Four corners whose squares meet: opposite ones first. Roles 1 to 4 from the upper left, clockwise."""
    return _corners(unit, ("tl", "br", "tr", "bl"), (1, 3, 2, 4) if unit.drawn else (2, 4, 1, 3))


def _corners(unit: MethodUnit, places: Sequence[str], roles: Sequence[int]) -> MethodStep:
    measures = unit.measures
    letter = PieceName(1, "letter")
    alike = all(unit.same(roles[0], role) for role in roles)
    count = len(places)
    style: Style = "a" if alike and count > 1 else "both"
    mark = message("method-mark-each" if count > 1 else "method-mark-the", letter=letter)
    wide, high = measures.finished
    long_edge: Position = "top" if sign(wide - high) > 0 else "left"
    lay = message("method-flip-lay-base", base=PieceName(0), position=PlaceArgument(long_edge))
    place = message(
        "method-flip-place-corner",
        piece=PieceName(roles[0], style),
        corner=PlaceArgument(CORNERS[places[0]][0]),
        base=PieceName(0),
    )
    parts = [
        MethodPart((take("each", unit, 0, *dict.fromkeys(roles)), mark), scenes.marked(measures)),
        MethodPart(
            (
                *((lay,) if wide != high else ()),
                place,
                *_flip(unit, places[0], letter),
                *(_trimmed(unit) if count == 1 else ()),
            ),
            scenes.sewn_on(measures, 0),
            measure(unit) if count == 1 else None,
        ),
    ]
    if count > 1:
        others = (
            (message("method-flip-rest", piece=PieceName(1, "a")),)
            if alike and count == len(CORNERS)
            else tuple(_next(place, PieceName(role, style)) for place, role in zip(places[1:], roles[1:], strict=True))
        )
        last = (*others, *_trimmed(unit), *_mirrored(unit))
        parts.append(MethodPart(last, scenes.checked(measures), _measure(unit)))
    fabrics = () if alike else tuple(unit.pieces[role].fabric for role in roles)
    way = ("flip", *places, *fabrics)
    return method_step(unit, ("each", 1), tuple(parts), way, message("method-again"), *_mirrored(unit))


def _measure(unit: MethodUnit) -> Message:
    """With an allowance beyond the points where flipped corners of one edge meet."""
    measures = unit.measures
    if scenes.has_points(measures):
        return message("method-measure-points", size=measures.size, seam=measures.allowance)
    return measure(unit)


def _over(unit: MethodUnit) -> Exact:
    """How much larger than the unit its base is cut, to be trimmed off."""
    return max(unit.measures.cut(0)) - max(unit.measures.unfinished)


def _trimmed(unit: MethodUnit, *, geese: bool = False) -> tuple[Message, ...]:
    """That what was cut larger is trimmed; nothing where nothing was."""
    measures = unit.measures
    if sign(_over(unit)) <= 0:
        return ()
    if geese:
        return (message("method-trim-geese", size=measures.size, seam=measures.allowance, count=unit.count),)
    return (message("method-trim-evenly", size=measures.size),)


def _mirrored(unit: MethodUnit) -> tuple[Message, ...]:
    return (message("method-flip-mirrored", count=unit.mirrored),) if unit.mirrored else ()


def _flip(unit: MethodUnit, place: str, letter: PieceName) -> tuple[Message, ...]:
    """Turn, sew, cut and press a square that lies on a corner."""
    corner, start, end = CORNERS[place]
    return (
        message("method-flip-turn", piece=letter, start=PlaceArgument(start), end=PlaceArgument(end)),
        message("method-flip-sew", position=PlaceArgument(corner)),
        message("method-cut-outside", seam=unit.measures.allowance),
        message("method-press-over-corner", piece=letter),
    )


def _next(place: str, piece: PieceName) -> Message:
    corner, start, end = CORNERS[place]
    return message(
        "method-flip-next-corner",
        piece=piece,
        corner=PlaceArgument(corner),
        start=PlaceArgument(start),
        end=PlaceArgument(end),
    )
