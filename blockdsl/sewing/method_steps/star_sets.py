"""Stars of many small diamonds: a step for each row's strip set, then large diamonds, pairs, quarters, halves, star.

Large diamonds are all alike, and their rows are symmetrical: the fabric of the middle of the star is the first one of
the first set. What is measured of diamonds and pairs follows from their strips as these are cut, what is measured from
the middle of the star from its finished size.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Final

from msgspec import Struct

from blockdsl.geometry import Exact
from blockdsl.geometry.polygon import bounding_box
from blockdsl.sewing.message import (
    Length,
    Message,
    MessageList,
    PieceList,
    PieceName,
    PlaceArgument,
    Position,
    SizeArgument,
    message,
)
from blockdsl.sewing.method_steps.parts import MethodPart, MethodPiece, MethodStep
from blockdsl.sewing.method_steps.strip_sets import StripSetUnit
from blockdsl.sewing.techniques import stars as scenes
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import SceneCloth, ScenePicture, show
from blockdsl.shapes.star45 import POINTS

PAIR: Final = (POINTS - 1, 0)
HALF: Final = (POINTS - 1, 0, 1, 2)
HALF_GROUND: Final = (0, 1, 5)
"""Points of the star and patches of its ground, as they are drawn: the pair at the top, the half at the upper right."""

AGAIN: Final = 3
"""After so many segments the ruler is laid on a seam again."""


class StarUnit(Struct, frozen=True):
    """A star: its measures, its strip sets from the middle outward, the ground's squares, its patches by role.

    `triangles` is the square that gives the side triangles, `corners` the corner squares, both by their roles in
    `pieces`. `first` is the number of its first strip set, `count` how many stars are made.
    """

    measures: Measures
    sets: tuple[StripSetUnit, ...]
    pieces: Mapping[int, MethodPiece]
    triangles: int
    corners: int
    patches: tuple[SceneCloth, ...]
    first: int
    count: int

    @property
    def rows(self) -> int:
        """Rows of a large diamond."""
        return len(self.sets)

    def some(self, points: Iterable[int], ground: Sequence[int] = ()) -> tuple[SceneCloth, ...]:
        """Some points and some patches of the ground, triangles first, then squares, finished."""
        many = self.rows * self.rows
        patches = [cloth for point in points for cloth in self.patches[point * many : (point + 1) * many]]
        return (*patches, *(self.patches[POINTS * many + place] for place in ground))

    def extent(self, points: Iterable[int], ground: Sequence[int] = ()) -> tuple[Exact, Exact]:
        """Width and height of these, finished, as they lie in the star."""
        boxes = [bounding_box(cloth.outline) for cloth in self.some(points, ground)]
        width = max(each[2] for each in boxes) - min(each[0] for each in boxes)
        return width, max(each[3] for each in boxes) - min(each[1] for each in boxes)


def segments_of(star: StarUnit, place: int) -> MethodStep:
    """The stepped strip set of a row, cut at 45°."""
    unit = star.sets[place]
    seams = star.rows - 1
    press: Message
    if star.measures.open_seams:
        press = message("method-press-open", seams=seams)
    else:
        # Sets are pressed opposite ways in turn, so that the rows nest.
        way: Position = "top" if place % 2 else "bottom"
        press = message("method-press-side", seams=seams, position=PlaceArgument(way))
    first, *rest = unit.lengths
    kind = "one" if unit.sets == 1 else "first" if rest else "each"
    take = message(
        "method-take-strip-set",
        kind=kind,
        pieces=PieceList(tuple(sorted(unit.pieces)), "take"),
        size=SizeArgument(unit.strip_width, first.length),
    )
    more = tuple(message("method-take-last-set", size=SizeArgument(unit.strip_width, each.length)) for each in rest)
    sew = message("method-star-set", pieces=PieceList(unit.roles), step=Length(unit.band))
    cut = message(
        "method-star-cut",
        sets=unit.sets,
        segments=first.segments,
        width=Length(unit.segment),
        last=rest[0].segments if rest else 0,
    )
    again = (message("method-star-again"),) if first.segments > AGAIN else ()
    parts = (
        MethodPart(
            (take, *more, sew, press),
            scenes.stepped_set(star.measures, unit.roles, unit.strip_width),
            message("method-measure-across", length=Length(unit.across)),
        ),
        MethodPart(
            (cut, *again),
            scenes.slanted_cut(star.measures, unit.roles, unit.strip_width),
            message("method-measure-across", length=Length(unit.segment)),
        ),
    )
    return MethodStep("strips", unit.sets, first.segments, unit.pieces, parts, (repr(unit.roles), place), parts[0])


def _step(star: StarUnit, key: str, *parts: MethodPart) -> MethodStep:
    return MethodStep("each", star.count, 1, star.pieces, parts, (key, star.first), parts[0])


def large_diamonds(star: StarUnit) -> MethodStep:
    """The segments of all sets, one of each."""
    numbers = range(star.first, star.first + star.rows)
    press = message("method-press-open" if star.measures.open_seams else "method-press-one-way", seams=star.rows - 1)
    segments = MessageList(tuple(message("method-star-segment", set=number) for number in numbers))
    return _step(
        star,
        "large diamond",
        MethodPart(
            (
                message("method-star-take-segments", segments=segments),
                message("method-star-lay-rows", piece=PieceName(star.sets[0].roles[0], "fabric"), set=star.first),
                message("method-star-sew-rows", seam=star.measures.allowance, rows=star.rows),
                press,
            ),
            _shown(star, "star-large-diamond", (0,)),
            message("method-star-across-both", length=Length(star.sets[0].across)),
        ),
    )


def pairs(star: StarUnit) -> MethodStep:
    """Two large diamonds, sewn to the dot."""
    seam = star.measures.allowance
    middle = PieceName(star.sets[0].roles[0], "fabric")
    # A diamond of 45° is √2 times as long on a side as it is across, and a pair √2 times as wide as that.
    between = 2 * (star.sets[0].across - 2 * star.measures.seam)
    press = message("method-press-open", seams=1) if star.measures.open_seams else message("method-star-press-pair")
    return _step(
        star,
        "star pair",
        MethodPart(
            (
                message(
                    "method-star-triangles", piece=PieceName(star.triangles), squares=star.count, count=4 * star.count
                ),
                message("method-star-dots", seam=seam),
            ),
            _shown(star, "star-large-diamond", (0,)),
        ),
        MethodPart(
            (message("method-star-place-pair", piece=middle, set=star.first), message("method-star-sew-pair"), press),
            _shown(star, "star-pair-opened", PAIR),
            message("method-star-between-dots", length=Length(between)),
        ),
    )


def quarters(star: StarUnit) -> MethodStep:
    """A triangle set into each pair."""
    reach = _reach(star)
    letter = PieceName(star.triangles, "letter")
    return _step(
        star,
        "star quarter",
        MethodPart(
            (
                message("method-star-take-quarter", piece=letter),
                message("method-star-set-triangle", piece=letter),
                message("method-star-swing", piece=letter),
                message("method-star-press-diamonds", seams=2),
                message("method-trim-ears"),
            ),
            _shown(star, "star-quarter", PAIR, (0,)),
            message("method-star-center-to-top", length=reach),
        ),
    )


def halves(star: StarUnit, number: int) -> MethodStep:
    """Two quarters and a square; `number` is the step that teaches setting in."""
    triangle, square = PieceName(star.triangles, "letter"), PieceName(star.corners, "letter")
    press = message("method-press-open", seams=1) if star.measures.open_seams else message("method-star-press-around")
    return _step(
        star,
        "star half",
        MethodPart(
            (
                message("method-star-take-half", piece=square),
                message("method-star-lay-quarters", piece=triangle),
                message("method-star-sew-half"),
                press,
            ),
            _shown(star, "star-half", HALF, (0, 1)),
        ),
        MethodPart(
            (
                message("method-star-set-square", piece=square, other=triangle, number=number),
                message("method-star-press-diamonds", seams=2),
            ),
            _shown(star, "star-half", HALF, HALF_GROUND),
            message("method-star-center-to-edges", length=_reach(star)),
        ),
    )


def whole(star: StarUnit, number: int) -> MethodStep:
    """Two halves and two squares."""
    triangle, square = PieceName(star.triangles, "letter"), PieceName(star.corners, "letter")
    measures = star.measures
    join = message("method-star-join-open" if measures.open_seams else "method-star-join")
    key = "method-star-take-halves-each" if star.count > 1 else "method-star-take-halves"
    sides = tuple(range(8))
    return _step(
        star,
        "star",
        MethodPart((message(key, piece=square), join), _shown(star, "star-joined", range(POINTS), (0, 1, 2, 3))),
        MethodPart(
            (
                message("method-star-set-squares", piece=square, other=triangle, number=number),
                message("method-star-press-diamonds", seams=4),
            ),
            _shown(star, "star-ground", range(POINTS), sides),
            message("method-measure-points", size=measures.size, seam=measures.allowance),
        ),
    )


def _reach(star: StarUnit) -> Length:
    """From the dot in the middle to the raw edge."""
    half: Exact = star.measures.width / 2 + star.measures.seam
    return Length(half)


def _shown(star: StarUnit, key: str, points: Iterable[int], ground: Sequence[int] = ()) -> ScenePicture:
    return show(key, *star.some(points, ground))
