"""Squares of four quarters: hourglass, quarter-square unit and split square."""

from __future__ import annotations

from collections.abc import Callable

from msgspec import Struct

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.message import Length
from blockdsl.sewing.techniques.cloth import (
    ZERO,
    at,
    both_sides,
    box,
    clipped,
    cut_outline,
    cutting_pair,
    laid_out,
    last_check,
    outline,
    patches_together,
    pressed,
    rising,
    squares_together,
    turned_corner,
)
from blockdsl.sewing.techniques.halves import GAP, darker, light_on_dark
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Item, LessonStep, Line, SceneCloth, ScenePicture, lesson_step, show
from blockdsl.shapes import hourglass, quarters, split

Roles = tuple[int, int, int, int]
"""Fabrics of the top, right, bottom and left quarter; a split square has its half at top and left."""

HOURGLASS: Roles = (0, 1, 0, 1)
QUARTERS: Roles = (0, 1, 2, 3)
SPLIT: Roles = (0, 1, 2, 0)


def opened_quarters(measures: Measures, roles: Roles) -> tuple[SceneCloth, ...]:
    """The unit pressed open with its dog-ears: two halves, joined last along the rising seam."""
    f, seam, middle = measures.width, measures.seam, measures.width / 2
    top, right, bottom, left = (
        cut_outline(outline(*corners), seam)
        for corners in (
            ((0, 0), (f, 0), (middle, middle)),
            ((f, 0), (f, f), (middle, middle)),
            ((f, f), (0, f), (middle, middle)),
            ((0, f), (0, 0), (middle, middle)),
        )
    )
    falling, rising_seam = (at(ZERO, ZERO), at(f, f)), (at(ZERO, f), at(f, ZERO))
    if roles[0] == roles[3]:
        first = [(roles[0], cut_outline(outline((0, 0), (f, 0), (0, f)), seam))]
    else:
        first = [(roles[0], top), (roles[3], clipped(left, falling))]
    second = [(roles[2], bottom), (roles[1], clipped(right, falling[::-1]))]
    joined = [(role, clipped(shape, rising_seam)) for role, shape in second]
    return tuple(SceneCloth(role, shape) for role, shape in (*first, *joined))


def _crossed(side: Exact, top: tuple[int, int], under: tuple[int, int]) -> tuple[SceneCloth, ...]:
    """Two half-square units right sides together, seams one on the other, the lower right corner folded back.

    Of each pair the first lies at the upper right of the seam that falls from the upper left corner.
    """
    fold = turned_corner(side)
    rest, half = side - fold, side - fold / 2
    return (
        SceneCloth(under[0], outline((0, 0), (side, 0), (side, side))),
        SceneCloth(under[1], outline((0, 0), (side, side), (0, side))),
        SceneCloth(top[0], outline((0, 0), (side, 0), (side, rest), (half, half)), "wrong"),
        SceneCloth(top[1], outline((0, 0), (half, half), (rest, side), (0, side)), "wrong"),
        SceneCloth(top[0], outline((side, rest), (half, half), (rest, rest))),
        SceneCloth(top[1], outline((half, half), (rest, side), (rest, rest))),
    )


def _half_unit(side: Exact, pair: tuple[int, int], slant: Exact, x: Exact = ZERO) -> tuple[SceneCloth, ...]:
    """A half-square unit cut from squares of `side`, opened, its seam falling."""
    left = side - slant
    upper, lower = ((x, 0), (x + left, 0), (x + left, left)), ((x, 0), (x + left, left), (x, left))
    return SceneCloth(pair[0], outline(*upper)), SceneCloth(pair[1], outline(*lower))


class Pairs(Struct, frozen=True):
    """Which squares are sewn in pairs: `first`, and `second` or none when both pairs are alike or one is a square.

    `whole` is the role of the large triangle of a split square, or None.
    """

    first: tuple[int, int]
    second: tuple[int, int] | None
    whole: int | None


def pairs_of(roles: Roles) -> Pairs:
    """The two pairs of neighbours that share the falling seam; both times the upper right one first."""
    above, below = (roles[0], roles[3]), (roles[1], roles[2])
    if roles[0] == roles[3]:
        return Pairs(below, None, roles[0])
    return Pairs(above, None if set(above) == set(below) else below, None)


# --- pictures --------------------------------------------------------------------------------------


def squares(measures: Measures, pairs: Pairs) -> ScenePicture:
    """All squares that are cut."""
    pieces = [(role, *measures.cut(role)) for role in (*pairs.first, *(pairs.second or ()))]
    if pairs.whole is not None:
        pieces = [(pairs.whole, *measures.cut(pairs.whole))] * 2 + pieces
    return show("squares", *laid_out(pieces, measures.side(pairs.first[0]) * GAP))


def halves_opened(measures: Measures, pairs: Pairs) -> ScenePicture:
    """Two half-square units, pressed."""
    side, slant, first = measures.side(pairs.first[0]), measures.slant, pairs.first
    gap = side * Fraction(1, 4)
    second = pairs.second or first
    units = (*_half_unit(side, first, slant), *_half_unit(side, second, slant, side - slant + gap))
    left = side - slant
    upper, lower = at(left, ZERO), at(ZERO, left)
    toward = upper if darker(measures, first[1], first[0]) == first[0] else lower
    seam = (at(ZERO, ZERO), at(left, left))
    arrows = pressed(seam, toward, Fraction(1, 4), open_seams=measures.open_seams)
    return show("two-halves-opened", *units, *arrows)


def crossed(measures: Measures, roles: Roles) -> ScenePicture:
    """Two units, or a unit and a square, right sides together, sewn on both sides of a line across the seam."""
    pairs = pairs_of(roles)
    slant, first = measures.slant, pairs.first
    side = measures.side(first[0]) - slant
    if pairs.whole is not None:
        under = _crossed(side, first, (pairs.whole, pairs.whole))
    else:
        under = _crossed(side, first, pairs.second or first[::-1])
    return show("crossed", *under, *both_sides(side, slant), rising("cut", side))


def opened(measures: Measures, roles: Roles) -> ScenePicture:
    """The unit, dog-ears still on it."""
    return show("quarters-opened", *opened_quarters(measures, roles))


def checked(measures: Measures, roles: Roles) -> ScenePicture:
    """The unit with what it should measure."""
    return last_check(opened_quarters(measures, roles), measures, "quarters-measured")


# --- lessons ---------------------------------------------------------------------------------------


def two_at_a_time(roles: Roles) -> Callable[[Measures], tuple[LessonStep, ...]]:
    """The steps for one of the three kinds of unit."""

    def steps(measures: Measures) -> tuple[LessonStep, ...]:
        pairs = pairs_of(roles)
        first, slant = pairs.first, measures.slant
        side = measures.side(first[0])
        light, _ = light_on_dark(measures, *first)
        together: tuple[Item, ...] = (
            *squares_together(*light_on_dark(measures, *first), side),
            *both_sides(side, slant),
        )
        lying: tuple[Item, ...] = (SceneCloth(light, box(side, side), "wrong"), *both_sides(side, slant))
        made = split if pairs.whole is not None else hourglass if pairs.second is None else quarters
        kind = made.SHAPE.name
        opened_side = Length(side - slant)
        press = "open" if measures.open_seams else "side"
        size = measures.size
        large = {"large": measures.piece(pairs.whole)} if pairs.whole is not None else {}
        return (
            lesson_step(f"{kind}-cut", squares(measures, pairs), piece=measures.piece(first[0]), **large),
            lesson_step("quarters-sew", show("sewn-both-sides", *together), kind=kind, seam=measures.allowance),
            lesson_step("quarters-cut-apart", *cutting_pair(lying, rising("cut", side), "cut-on-line", (-1, -1))),
            lesson_step("quarters-press", halves_opened(measures, pairs), press=press, side=opened_side),
            lesson_step(f"{kind}-cross", crossed(measures, roles), seam=measures.allowance, press=press),
            lesson_step("quarters-trim", opened(measures, roles), half=Length(measures.unfinished[0] / 2)),
            lesson_step("quarters-measure", checked(measures, roles), kind=kind, size=size),
        )

    return steps


def from_triangles(roles: Roles) -> Callable[[Measures], tuple[LessonStep, ...]]:
    """The steps for single triangles: two pairs (or a pair and a large triangle), then the long seam."""

    def steps(measures: Measures) -> tuple[LessonStep, ...]:
        f, seam, slant = measures.width, measures.seam, measures.slant
        middle = f / 2
        right = SceneCloth(roles[1], outline((f, 0), (f, f), (middle, middle)))
        bottom = SceneCloth(roles[2], outline((f, f), (0, f), (middle, middle)))
        line = (at(middle, middle), at(f, f))
        short = patches_together(bottom, right, seam, line)
        sewn = Line("sewn", at(middle - slant / 2, middle - slant / 2), at(f + seam, f + seam))
        pieces = [(role, *measures.cut(role)) for role in dict.fromkeys(roles)]
        half = opened_quarters(measures, roles)[-2:]
        toward = at(f, middle) if darker(measures, roles[2], roles[1]) == roles[1] else at(middle, f)
        arrows = pressed(line, toward, Fraction(1, 3), open_seams=measures.open_seams)
        square = measures.side(roles[1])
        cut: tuple[Item, ...] = (
            SceneCloth(roles[1], box(square, square)),
            Line("cut", at(ZERO, ZERO), at(square, square)),
        )
        press = "open" if measures.open_seams else "side"
        kind = (split if roles[0] == roles[3] else quarters).SHAPE.name
        large = {"large": measures.piece(roles[0])} if roles[0] == roles[3] else {}
        return (
            lesson_step(
                f"{kind}-triangles-cut",
                show("squares", *laid_out(pieces, f * GAP)),
                small=measures.piece(roles[1]),
                **large,
            ),
            lesson_step("quarters-triangles-apart", *cutting_pair(cut, rising("cut", square), "cut-twice", (-1, -1))),
            lesson_step("quarters-triangles-pairs", show("quarters-short-seam", *short, sewn), seam=measures.allowance),
            lesson_step("quarters-triangles-press", show("pair-opened", *half, *arrows), press=press),
            lesson_step("quarters-triangles-long", opened(measures, roles), kind=kind, press=press),
            lesson_step("quarters-measure", checked(measures, roles), kind="one", size=measures.size),
        )

    return steps
