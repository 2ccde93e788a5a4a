"""Squares of four quarters, made two at a time: two half-square triangles are crossed, or one and a square."""

from __future__ import annotations

from collections.abc import Callable

from blockdsl.sewing.message import Message, PieceList, PieceName, PlaceArgument, Position, message
from blockdsl.sewing.method_steps.common import (
    marked_and_under,
    measure,
    method_step,
    opened_size,
    press,
    press_word,
    sew_both_sides,
    take,
)
from blockdsl.sewing.method_steps.parts import MethodPart, MethodStep, MethodUnit
from blockdsl.sewing.techniques import quarters as scenes
from blockdsl.sewing.techniques.halves import darker, marked, sewn
from blockdsl.sewing.techniques.quarters import HOURGLASS, SPLIT, Roles, pairs_of


def two_at_a_time(roles: Roles) -> Callable[[MethodUnit], MethodStep]:
    """The step for one of the three kinds of unit."""
    if roles == HOURGLASS:
        return _hourglass
    return _split if roles == SPLIT else _quarters


def _hourglass(unit: MethodUnit) -> MethodStep:
    """Both half-square triangles of one pair of squares are crossed: two alike."""
    measures = unit.measures
    top, under = marked_and_under(unit, 0, 1)
    place = message("method-place-pair", piece=PieceName(under, "the"))
    toward = darker(measures, 0, 1)
    facing = message("method-cross-halves", first=PieceName(top, "fabric"), second=PieceName(under, "fabric"))
    return method_step(
        unit,
        ("pair", 2),
        (
            MethodPart(
                (take("pair", unit, 0, 1), message("method-mark-diagonal", piece=PieceName(top, "the"))),
                marked(measures.side(0), top),
            ),
            MethodPart(
                (place, sew_both_sides(unit), message("method-cut-on-line", lines=1), press(unit, 2, toward)),
                sewn(measures),
                message("method-measure", size=opened_size(unit, 0)),
            ),
            MethodPart(
                (
                    message("method-mark-across-one"),
                    facing,
                    _meet(unit),
                    sew_both_sides(unit),
                    message("method-cut-on-line", lines=1),
                    message("method-press-open" if unit.measures.open_seams else "method-press-either", seams=2),
                ),
                scenes.crossed(measures, HOURGLASS),
            ),
            _trim(unit, HOURGLASS),
        ),
        ("crossed pairs",),
        message(
            "method-again-pair", marked=PieceName(top), toward=PieceName(darker(measures, 0, 1)), press=press_word(unit)
        ),
    )


def _quarters(unit: MethodUnit) -> MethodStep:
    """Half-square triangles of two pairs are crossed: of every two units one is the mirror image of the other.

    Derived: the first half-square triangle is top and left, the second right and bottom; sewn on both sides of a line
    across their seams, top facing right, one side of the line gives top, right, bottom, left clockwise, the other
    side the same counter-clockwise.
    """
    measures = unit.measures
    roles: Roles = (0, 1, 2, 3)
    first, second = marked_and_under(unit, 0, 3), marked_and_under(unit, 1, 2)
    mark = message("method-mark-two-diagonals", first=PieceName(first[0], "the"), second=PieceName(second[0], "the"))
    place = message(
        "method-place-pairs",
        first=PieceName(first[0], "the"),
        first_under=PieceName(first[1], "the"),
        second=PieceName(second[0], "the"),
        second_under=PieceName(second[1], "the"),
    )
    facing = message(
        "method-cross-pairs",
        first=PieceName(0, "fabric"),
        over=PieceList((0, 3), "fabric"),
        under=PieceList((1, 2), "fabric"),
        second=PieceName(1, "fabric"),
    )
    toward = (
        (message("method-press-open", seams=4),)
        if measures.open_seams
        else (message("method-press-two-pairs", first=PieceName(0, "fabric"), second=PieceName(2, "fabric")),)
    )
    return method_step(
        unit,
        ("set", 4),
        (
            MethodPart((take("set", unit, 0, 1, 2, 3), mark), marked(measures.side(0), first[0])),
            MethodPart(
                (place, sew_both_sides(unit, 2), message("method-cut-on-line", lines=2), *toward),
                scenes.halves_opened(measures, pairs_of(roles)),
                message("method-measure", size=opened_size(unit, 0)),
            ),
            MethodPart(
                (
                    message("method-mark-across", piece=PieceList((0, 3), "fabric")),
                    facing,
                    _meet(unit),
                    sew_both_sides(unit),
                    message("method-cut-on-line", lines=1),
                    _press_last(unit),
                ),
                scenes.crossed(measures, roles),
            ),
            _trim(unit, roles, _which_of_quarters(unit)),
        ),
        ("crossed halves", *(unit.pieces[role].fabric for role in roles)),
        message("method-again"),
    )


def _split(unit: MethodUnit) -> MethodStep:
    """Half-square triangles of the small squares are crossed with the large ones: half of the units are mirrored."""
    measures = unit.measures
    top, under = marked_and_under(unit, 1, 2)
    return method_step(
        unit,
        ("set", 4),
        (
            MethodPart(
                (take("set", unit, 0, 1, 2), message("method-mark-diagonal", piece=PieceName(top, "the"))),
                marked(measures.side(1), top),
            ),
            MethodPart(
                (
                    message("method-place-pair", piece=PieceName(under, "the")),
                    sew_both_sides(unit),
                    message("method-cut-on-line", lines=1),
                    press(unit, 2, darker(measures, 1, 2)),
                ),
                scenes.halves_opened(measures, pairs_of(SPLIT)),
                message("method-measure", size=opened_size(unit, 1)),
            ),
            MethodPart(
                (
                    message("method-mark-across-each"),
                    message("method-cross-with", piece=PieceName(0, "a")),
                    sew_both_sides(unit),
                    message("method-cut-on-line", lines=1),
                    press(unit, 4, 0),
                ),
                scenes.crossed(measures, SPLIT),
            ),
            _trim(unit, SPLIT, _which_of_split(unit)),
        ),
        ("crossed with a half", *(unit.pieces[role].fabric for role in range(3))),
        message("method-again"),
    )


def _meet(unit: MethodUnit) -> Message:
    return message("method-match-seams" if unit.measures.open_seams else "method-nest-seams")


def _press_last(unit: MethodUnit) -> Message:
    """Away from a fabric that lies on one side of the last seam alone."""
    if unit.measures.open_seams:
        return message("method-press-open", seams=4)
    alone = next((role for role in (1, 2) if not any(unit.same(role, other) for other in (0, 3))), None)
    if alone is not None:
        return message("method-press-away", seams=4, piece=PieceName(alone, "fabric"))
    return message("method-press-one-way", seams=4)


def _trim(unit: MethodUnit, roles: Roles, which: tuple[Message, ...] = ()) -> MethodPart:
    size = unit.measures.size
    return MethodPart(
        (message("method-trim-ears"), message("method-trim-quarters", size=size)),
        scenes.checked(unit.measures, roles),
        measure(unit),
        which,
    )


def _which_of_quarters(unit: MethodUnit) -> tuple[Message, ...]:
    """With one fabric at its side, where a neighbour of it lies; nothing when the unit is its own mirror image.

    Both are fabrics of one quarter alone. No such two neighbours: then the unit is its own mirror image.
    """
    sides: tuple[Position, ...] = ("top", "right", "bottom", "left")
    alone = [role for role in range(4) if not any(unit.same(role, other) for other in range(4) if other != role)]
    for role in alone:
        for step in (1, 3):
            if (role + step) % 4 in alone:
                here, there = sides[(role + step) % 4], sides[(role - step) % 4]
                told = PieceName((role + step) % 4, "fabric")
                return sort_out(unit, PieceName(role, "fabric"), sides[role], told, here, there)
    return ()


def _which_of_split(unit: MethodUnit) -> tuple[Message, ...]:
    if unit.same(1, 2):
        return ()
    return sort_out(unit, PieceName(0), "upper-left", PieceName(1, "fabric"), "right", "bottom")


def sort_out(
    unit: MethodUnit,
    landmark: PieceName | None,
    lies: Position,
    told: PieceName,
    as_drawn: Position,
    mirrored: Position,
) -> tuple[Message, ...]:
    """Which of the units of a batch are mirror images, and which of them to keep; without a landmark by the point."""
    here, there = (as_drawn, mirrored) if unit.drawn else (mirrored, as_drawn)
    key = "method-sort-both" if unit.mirrored else "method-sort-one"
    return (
        message(
            key,
            landmark="point" if landmark is None else landmark,
            lies=PlaceArgument(lies),
            told=told,
            here=PlaceArgument(here),
            there=PlaceArgument(there),
            count=unit.count,
            mirrored=unit.mirrored,
        ),
    )
