"""Strip sets: a step for each kind of set, which makes segments, and one that joins segments to a checkerboard."""

from __future__ import annotations

from collections.abc import Mapping

from msgspec import Struct

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.message import (
    Argument,
    Length,
    Message,
    Names,
    PieceList,
    PieceName,
    PlaceArgument,
    SizeArgument,
    message,
)
from blockdsl.sewing.method_steps.parts import MethodPart, MethodPiece, MethodStep
from blockdsl.sewing.techniques import strips as scenes
from blockdsl.sewing.techniques.measures import Extent, Measures


class SetLength(Struct, frozen=True):
    """`sets` strip sets of one length, each cut into so many segments and squared up again so many times."""

    sets: int
    length: Fraction
    segments: int
    squared_again: int


class StripSetUnit(Struct, frozen=True):
    """One kind of strip set: the roles of its strips from the first edge to the other, and the pieces by role.

    `strip_width` and `segment` are cut widths, `across` is what the set measures, unfinished. `lengths` are long
    before short. `trimmed` is what the finished unit is trimmed to, unfinished (the set across, where each segment is
    a unit); None where strips that the ruler shows exactly need no trimming.
    """

    measures: Measures
    pieces: Mapping[int, MethodPiece]
    roles: tuple[int, ...]
    strip_width: Fraction
    segment: Fraction
    across: Exact
    lengths: tuple[SetLength, ...]
    trimmed: Extent | None = None

    @property
    def band(self) -> Exact:
        """Finished width of a strip."""
        return self.strip_width - 2 * self.measures.seam

    @property
    def sets(self) -> int:
        """How many sets are sewn."""
        return sum(each.sets for each in self.lengths)


def segments_of(unit: StripSetUnit) -> MethodStep:
    """Sew the strips, press, cut across."""
    measures = unit.measures
    down, press = _pressing(unit)
    across = unit.trimmed[0] if unit.trimmed else unit.across
    trim = (message("method-trim-set", length=Length(across)),) if unit.trimmed else ()
    parts = (
        MethodPart(
            (*_takes(unit), *_sewing(unit), *((press,) if down else ())),
            scenes.pressed_set(measures, unit.roles, unit.band, unit.segment, down),
            message("method-measure-across", length=Length(unit.across)),
        ),
        MethodPart(
            (*trim, *_cutting(unit)),
            scenes.cut_across(measures, unit.roles, unit.band, unit.segment)[0],
            message("method-measure", size=SizeArgument(unit.segment, across)),
        ),
    )
    # Sets differ in too much to be explained as others are.
    way: tuple[Argument, ...] = (
        "strip set",
        *(unit.pieces[role].fabric for role in unit.roles),
        str(unit.lengths),
        str(unit.segment),
        str(unit.trimmed),
    )
    again = MethodPart((*_takes(unit), message("method-again")), parts[-1].pictures[0], parts[-1].measure)
    return MethodStep("strips", unit.sets, unit.lengths[0].segments, unit.pieces, parts, way, again)


def _takes(unit: StripSetUnit) -> tuple[Message, ...]:
    first, *rest = unit.lengths
    pieces = PieceList(tuple(sorted(unit.pieces)), "take")
    size = SizeArgument(unit.strip_width, first.length)
    kind = "one" if unit.sets == 1 else "first" if rest else "each"
    taken = message("method-take-strip-set", kind=kind, pieces=pieces, size=size)
    return (
        taken,
        *(message("method-take-last-set", size=SizeArgument(unit.strip_width, each.length)) for each in rest),
    )


def _sewing(unit: StripSetUnit) -> tuple[Message, ...]:
    roles = unit.roles
    first, last = roles[0], roles[-1]
    if len(roles) == 1:
        return ()
    if len(roles) == 2:
        return (message("method-set-two", first=PieceName(first), base=PieceName(last)),)
    if len(roles) == 3 and first == last and first != roles[1]:
        return (message("method-set-sides", piece=PieceName(first, "a"), base=PieceName(roles[1])),)
    if len(set(roles)) == 3 == len(roles):
        names = {"first": PieceName(first), "base": PieceName(roles[1]), "last": PieceName(last)}
        return (message("method-set-three", **names),)
    return (message("method-set-many", pieces=PieceList(roles)),)


def _pressing(unit: StripSetUnit) -> tuple[tuple[bool, ...], Message]:
    """For each seam whether it is pressed down the picture, and how that is said.

    Toward the darker fabric where that has one name for all seams, else all the same way.
    """
    roles, measures = unit.roles, unit.measures
    seams = len(roles) - 1
    down = scenes.presses_down(measures, roles)
    toward = {roles[place + 1] if is_down else roles[place] for place, is_down in enumerate(down)}
    away = {roles[place] if is_down else roles[place + 1] for place, is_down in enumerate(down)}
    if measures.open_seams:
        return down, message("method-press-open", seams=seams)
    if len(toward) == 1 and not toward & away:
        return down, message("method-press-toward", seams=seams, piece=PieceName(toward.pop()))
    if len(away) == 1 and not toward & away:
        return down, message("method-press-away", seams=seams, piece=PieceName(away.pop()))
    return (True,) * seams, message("method-press-side", seams=seams, position=PlaceArgument("bottom"))


def _cutting(unit: StripSetUnit) -> tuple[Message, ...]:
    first, *rest = unit.lengths
    width = Length(unit.segment)
    last = rest[0].segments if rest else 0
    cut = message("method-set-cut", sets=unit.sets, segments=first.segments, width=width, last=last)
    again = (message("method-set-square-again", times=first.squared_again),) if first.squared_again else ()
    return (cut, *again)


# --- joining segments ------------------------------------------------------------------------------


def joined(unit: StripSetUnit, sets: tuple[int, ...], count: int) -> MethodStep:
    """Segments of one set, every other one turned, or of two sets in turn, sewn to a checkerboard.

    `sets` are the numbers of the sets; none for a single one that has no number. `count` are made.
    """
    measures = unit.measures
    rows = measures.counts[0]
    size = message("method-measure", size=SizeArgument(*unit.trimmed) if unit.trimmed else measures.size)
    trim = (message("method-trim-joined", count=count, size=SizeArgument(*unit.trimmed)),) if unit.trimmed else ()
    take, body = _rows_of_two_sets(rows, sets, measures) if len(sets) == 2 else _rows_of_one_set(unit, rows, sets)
    start = message("method-take-each" if count > 1 else "method-take", pieces=take)
    parts = (MethodPart((start, *body, *trim), scenes.checker_checked(measures), size),)
    way: tuple[Argument, ...] = ("checkerboard", rows, *sets, *(unit.pieces[role].fabric for role in unit.roles))
    return MethodStep("each", count, 1, unit.pieces, parts, way, parts[0])


def _meet(measures: Measures) -> str:
    return "match" if measures.open_seams else "nest"


def _rows_of_one_set(unit: StripSetUnit, rows: int, sets: tuple[int, ...]) -> tuple[Message, tuple[Message, ...]]:
    measures = unit.measures
    left, right = PieceName(unit.roles[0], "fabric"), PieceName(unit.roles[-1], "fabric")
    take = message("method-segments", count=rows, set=sets[0] if sets else 0)
    if rows == 2:
        return take, (
            message("method-lay-two", first=left, second=right, position=PlaceArgument("left")),
            message("method-sew-second-below", meet=_meet(measures)),
            _press(measures, 1, "method-press-toward-second"),
        )
    return take, (
        message("method-lay-turned", first=left, second=right, position=PlaceArgument("left")),
        message("method-sew-rows", meet=_meet(measures)),
        _press_down(measures, rows - 1),
    )


def _rows_of_two_sets(rows: int, sets: tuple[int, ...], measures: Measures) -> tuple[Message, tuple[Message, ...]]:
    first, second = (rows + 1) // 2, rows // 2
    one, other = sets
    take = message("method-segments-of-two", first=first, one=one, second=second, other=other)
    meet = _meet(measures)
    if rows == 2:
        return take, (
            message("method-sew-one-to-other", one=one, other=other, meet=meet),
            _press(measures, 1, "method-press-toward-set", set=other),
        )
    if rows == 3:
        return take, (
            message("method-sew-two-to-other", one=one, other=other, meet=meet),
            _press(measures, 2, "method-press-away-from-set", set=other),
        )
    return take, (
        message(
            "method-sew-sets-in-turn",
            meet=meet,
            sets=Names(tuple(f"set {sets[row % 2]}" for row in range(rows))),
        ),
        _press_down(measures, rows - 1),
    )


def _press(measures: Measures, seams: int, key: str, **more: int) -> Message:
    return message("method-press-open", seams=seams) if measures.open_seams else message(key, **more)


def _press_down(measures: Measures, seams: int) -> Message:
    if measures.open_seams:
        return message("method-press-open", seams=seams)
    return message("method-press-side", seams=seams, position=PlaceArgument("bottom"))
