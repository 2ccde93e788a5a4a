"""Squares of four quarters: hourglass, quarter-square unit and split square."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from blockdsl.geometry import Exact
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
    rising,
    squares_together,
    turned_corner,
)
from blockdsl.sewing.techniques.halves import EARS, GAP, darker, light_on_dark
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Cloth, Item, Line, Picture, Press, Step

Roles = tuple[int, int, int, int]
"""Fabrics of the top, right, bottom and left quarter; a split square has its half at top and left."""

HOURGLASS: Roles = (0, 1, 0, 1)
QUARTERS: Roles = (0, 1, 2, 3)
SPLIT: Roles = (0, 1, 2, 0)


def opened_quarters(measures: Measures, roles: Roles) -> tuple[Cloth, ...]:
    """The unit pressed open with its dog ears: two halves, joined last along the rising seam."""
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
    return tuple(Cloth(role, shape) for role, shape in (*first, *joined))


def _crossed(side: Exact, top: tuple[int, int], under: tuple[int, int]) -> tuple[Cloth, ...]:
    """Two half-square units right sides together, seams one on the other, the lower right corner folded back.

    Of each pair the first lies at the upper right of the seam that falls from the upper left corner.
    """
    fold = turned_corner(side)
    rest, half = side - fold, side - fold / 2
    return (
        Cloth(under[0], outline((0, 0), (side, 0), (side, side))),
        Cloth(under[1], outline((0, 0), (side, side), (0, side))),
        Cloth(top[0], outline((0, 0), (side, 0), (side, rest), (half, half)), "wrong"),
        Cloth(top[1], outline((0, 0), (half, half), (rest, side), (0, side)), "wrong"),
        Cloth(top[0], outline((side, rest), (half, half), (rest, rest))),
        Cloth(top[1], outline((half, half), (rest, side), (rest, rest))),
    )


def _half_unit(side: Exact, pair: tuple[int, int], slant: Exact, x: Exact = ZERO) -> tuple[Cloth, ...]:
    """A half-square unit cut from squares of `side`, opened, its seam falling."""
    left = side - slant
    upper, lower = ((x, 0), (x + left, 0), (x + left, left)), ((x, 0), (x + left, left), (x, left))
    return Cloth(pair[0], outline(*upper)), Cloth(pair[1], outline(*lower))


def _pair_steps(
    measures: Measures, first: tuple[int, int], second: tuple[int, int] | None, whole: int | None
) -> tuple[Step, ...]:
    """From squares to half-square units: cut, draw and sew, cut apart, press. `whole` has a large triangle."""
    side, slant = measures.side(first[0]), measures.slant
    light, under = light_on_dark(measures, *first)
    lying = Cloth(light, box(side, side), "wrong")
    sewn: tuple[Item, ...] = (*squares_together(light, under, side), *both_sides(side, slant))
    pairs = "" if second is None else " Do the same with the other pair."
    pieces = [(role, *measures.cut(role)) for role in (*first, *(second or ()))]
    cut = f"Cut one {measures.say_piece(first[0])} of each fabric."
    if whole is not None:
        pieces = [(whole, *measures.cut(whole))] * 2 + pieces
        cut = (
            f"For four units cut two {measures.say_piece(whole)}s for the large triangles and one "
            f"{measures.say_piece(first[0])} of each fabric of the small ones."
        )
    unit_gap = side * Fraction(1, 4)
    units = (*_half_unit(side, first, slant), *_half_unit(side, second or first, slant, side - slant + unit_gap))
    middle, reach = (side - slant) / 2, (side - slant) / 8
    low, high = at(middle - reach, middle + reach), at(middle + reach, middle - reach)
    arrow = Press(low, high) if darker(measures, first[1], first[0]) == first[0] else Press(high, low)
    return (
        Step("Cut", cut, (Picture(laid_out(pieces, side * GAP), "The squares to cut."),)),
        Step(
            "Draw and sew",
            "Draw a line from corner to corner on the wrong side of the lighter square. Lay the squares right sides "
            f"together (the printed faces inside) and sew {measures.say_seam} from the line on each side of it.{pairs}",
            (Picture(sewn, "Two squares together with a seam on each side of a diagonal line."),),
        ),
        Step(
            "Cut on the line",
            "Turn the squares so that the line leads straight away from you. Hold the ruler down with the flat hand, "
            "finger tips away from its edge, and roll the cutter away from yourself.",
            cutting_pair(
                (lying, *both_sides(side, slant)), rising("cut", side), "Two squares cut between the seams", (-1, -1)
            ),
        ),
        Step(
            "Press",
            "Open each half and press the seam allowances toward the darker fabric, the same way in all. "
            "You have two units of two triangles; do not trim them yet.",
            (Picture((*units, arrow), "Two half-square units, pressed open."),),
        ),
    )


def two_at_a_time(roles: Roles) -> Callable[[Measures], tuple[Step, ...]]:
    """The steps for one of the three kinds of unit."""

    def steps(measures: Measures) -> tuple[Step, ...]:
        whole = roles[0] == roles[3]
        pair_above, pair_below = (roles[0], roles[3]), (roles[1], roles[2])
        alike = set(pair_above) == set(pair_below)
        first = pair_below if whole else pair_above
        made = _pair_steps(measures, first, None if whole or alike else pair_below, roles[0] if whole else None)
        return (*made, *_crossing(measures, roles, first, whole=whole, alike=alike))

    return steps


def _crossing(
    measures: Measures, roles: Roles, first: tuple[int, int], *, whole: bool, alike: bool
) -> tuple[Step, ...]:
    """Two units, or a unit and a square, crossed; opened, trimmed, measured."""
    slant = measures.slant
    side = measures.side(first[0]) - slant
    under: tuple[Cloth, ...]
    if whole:
        laid = "one unit on each large square"
        under = _crossed(side, first, (roles[0], roles[0]))
    elif alike:
        laid = "the two units on each other, each fabric on the other one"
        under = _crossed(side, first, first[::-1])
    else:
        laid = "a unit of one pair on a unit of the other"
        under = _crossed(side, first, (roles[1], roles[2]))
    nested = "." if whole else "; the seams lie on each other and their allowances point opposite ways, so they lock."
    opened = opened_quarters(measures, roles)
    hand = " Two are mirror images of the other two." if len(set(roles)) > 2 else ""
    count = "Each of the four units" if len(set(roles)) > 2 else "Each of the two units"
    return (
        Step(
            "Cross them",
            f"Lay {laid}, right sides together{nested} Draw a line from corner to corner across the seam. Sew "
            f"{measures.say_seam} from it on each side and cut on the line, as before.",
            (
                Picture(
                    (*under, *both_sides(side, slant), rising("cut", side)),
                    "Two units together, sewn on both sides of a line that crosses the seam, and cut on it.",
                ),
            ),
        ),
        Step(
            "Press and trim",
            "Open, press, and snip off the points that stand out. To trim, lay the ruler's 45° line on one seam, the "
            f"crossing {measures.say(measures.unfinished[0] / 2)} from both its edges.",
            (Picture(opened, "The unit opened, with points that stand out at its corners."),),
        ),
        Step(
            "Measure",
            f"{count} should now measure {measures.say_unfinished}, the seams running into the corners.{hand}",
            (last_check(opened, measures, f"The unit, {measures.say_unfinished}."),),
        ),
    )


def from_triangles(roles: Roles) -> Callable[[Measures], tuple[Step, ...]]:
    """The steps for single triangles: two pairs (or a pair and a large triangle), then the long seam."""

    def steps(measures: Measures) -> tuple[Step, ...]:
        f, seam, slant = measures.width, measures.seam, measures.slant
        middle = f / 2
        right = Cloth(roles[1], outline((f, 0), (f, f), (middle, middle)))
        bottom = Cloth(roles[2], outline((f, f), (0, f), (middle, middle)))
        line = (at(middle, middle), at(f, f))
        short = patches_together(bottom, right, seam, line)
        sewn = Line("sewn", at(middle - slant / 2, middle - slant / 2), at(f + seam, f + seam))
        pieces = [(role, *measures.cut(role)) for role in dict.fromkeys(roles)]
        opened = opened_quarters(measures, roles)
        half = opened[-2:]
        place, reach = f * Fraction(3, 4), f / 10
        low, high = at(place - reach, place + reach), at(place + reach, place - reach)
        arrow = Press(low, high) if darker(measures, roles[2], roles[1]) == roles[1] else Press(high, low)
        words = _triangle_words(measures, roles)
        square = measures.side(roles[1])
        cut: tuple[Item, ...] = (Cloth(roles[1], box(square, square)), Line("cut", at(ZERO, ZERO), at(square, square)))
        other = "the large triangle" if roles[0] == roles[3] else "the other pair"
        return (
            Step("Cut", words, (Picture(laid_out(pieces, f * GAP), "The squares to cut."),)),
            Step(
                "Cut corner to corner",
                "Turn a square so that its corner points at you and cut from corner to corner, rolling away from "
                "yourself. For the small triangles cut once more the other way without moving the pieces: four. Their "
                "long edges lie on the straight grain and come to the outside of the unit.",
                cutting_pair(cut, rising("cut", square), "A square cut both ways corner to corner", (-1, -1)),
            ),
            Step(
                "Sew pairs",
                f"Lay two small triangles right sides together and sew {measures.say_seam} from one short edge. Sew "
                "from the square corner outward and always keep the same fabric on top, or the pairs come "
                "out mirrored.",
                (Picture((*short, sewn), "Two triangles together with a seam along a short edge."),),
            ),
            Step(
                "Press",
                "Open each pair and press the allowances toward the darker fabric.",
                (Picture((*half, arrow), "A pair of triangles, pressed open."),),
            ),
            Step(
                "Sew the long seam",
                f"Lay the pair on {other}, right sides together, points and middle matched, and sew along the long "
                f"edge. Press. {EARS.split('. ')[0]}.",
                (Picture(opened, "The unit opened, with points that stand out."),),
            ),
            Step(
                "Measure",
                f"The unit should now measure {measures.say_unfinished}, the seams running into the corners.",
                (last_check(opened, measures, f"The unit, {measures.say_unfinished}."),),
            ),
        )

    return steps


def _triangle_words(measures: Measures, roles: Roles) -> str:
    small = f"Cut {measures.say_piece(roles[1])}s twice corner to corner: each gives four small triangles"
    if roles[0] != roles[3]:
        return f"{small}. A unit takes four, one for each quarter."
    large = f"Cut {measures.say_piece(roles[0])}s once: each gives two large triangles"
    return f"{small}. {large}. A unit takes one large and two small ones."
