"""Flying geese: four from five squares, or from single triangles. Roles: goose 0, left sky 1, right sky 2."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from blockdsl.geometry import Exact
from blockdsl.sewing.techniques.cloth import (
    ZERO,
    at,
    box,
    clipped,
    cut_outline,
    cutting_pair,
    falling,
    laid_out,
    last_check,
    outline,
    patches_together,
    rising,
)
from blockdsl.sewing.techniques.halves import GAP
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Cloth, Gap, Item, Line, Measured, Picture, Press, Step

POINT = "Keep a seam allowance of {seam} between the goose's point and the edge, or the point is sewn away."


def sky_role(measures: Measures) -> int:
    """The right sky's role, which is the left one's when both are of one fabric."""
    return 2 if 2 in measures.cuts else 1


def opened_goose(measures: Measures, skies: int = 2) -> tuple[Cloth, ...]:
    """A goose with its first sky, or both, pressed open toward the sky; finished corner at (0, 0)."""
    w, h, seam = measures.width, measures.height, measures.seam
    point = at(w / 2, ZERO)
    goose = Cloth(0, cut_outline((point, at(w, h), at(ZERO, h)), seam))
    left = Cloth(1, clipped(cut_outline(outline((0, 0), (w / 2, 0), (0, h)), seam), (point, at(ZERO, h))))
    right = Cloth(
        sky_role(measures), clipped(cut_outline(outline((w / 2, 0), (w, 0), (w, h)), seam), (at(w, h), point))
    )
    return (goose, left, right)[: 1 + skies]


def over_left(measures: Measures) -> Press:
    """Across the left seam toward the sky."""
    x, y, reach = measures.width / 4, measures.height / 2, measures.height / 6
    return Press(at(x + reach, y + reach), at(x - reach, y - reach))


def _measure(measures: Measures, first: str) -> Step:
    """Trim and measure, with the allowance above the point."""
    w, seam = measures.width, measures.seam
    picture = last_check(opened_goose(measures), measures, f"A flying geese unit, {measures.say_unfinished}.")
    gap = Gap(at(w / 2, ZERO), at(w / 2, -seam), seam)
    return Step(
        "Trim and measure",
        f"{first} {measures.say_unfinished}, the lower seams running into the corners. "
        f"{POINT.format(seam=measures.say_seam)}",
        (replace(picture, items=(*picture.items, gap)),),
    )


# --- four from five squares ------------------------------------------------------------------------


def four_at_a_time(measures: Measures) -> tuple[Step, ...]:
    """One large square and four small ones give four units."""
    g, s, slant = measures.side(0), measures.side(1), measures.slant
    other = sky_role(measures)
    large, small = measures.say(g), measures.say(s)
    skies = f"four {small} squares of the sky" if other == 1 else f"two {small} squares of each sky"
    first = (Cloth(0, box(g, g)), Cloth(1, box(s, s, ZERO, g - s), "wrong"), Cloth(1, box(s, s, g - s, ZERO), "wrong"))
    seams = (rising("drawn", g), rising("sewn", g, -slant), rising("sewn", g, slant))
    heart = _heart(measures)
    last = (
        Cloth(other, box(s, s), "wrong"),
        falling("drawn", s),
        falling("sewn", s, -slant),
        falling("sewn", s, slant),
    )
    return (
        Step(
            "Cut",
            f"For four geese cut one {large} square of the goose and {skies}. Draw a pencil line from corner to corner "
            "on the wrong side of each small square.",
            (Picture(_squares(g, s, other), "A large square and four small ones with a drawn line."),),
        ),
        Step(
            "Sew two small squares",
            "Lay two small squares right sides down on opposite corners of the large one; they overlap a little in the "
            f"middle, and their lines make one. Sew {measures.say_seam} from the line on each side of it.",
            (Picture((*first, *seams), "Two small squares on opposite corners, two seams from corner to corner."),),
        ),
        Step(
            "Cut on the line",
            "Turn the square so that the line leads straight away from you. Hold the ruler down with the flat hand, "
            "finger tips away from its edge, and roll the cutter away from yourself.",
            cutting_pair((*first, *seams), rising("cut", g), "The large square cut between the seams", (-1, -1)),
        ),
        Step(
            "Press",
            "Press the small triangles away from the large one. Each half looks like a heart.",
            (Picture((*heart, *_outward(measures)), "A large triangle with two small ones pressed outward.", 5),),
        ),
        Step(
            "Sew the last squares",
            "Lay a small square right sides down on the free corner of each heart, its line leading from the corner to "
            f"the notch between the two small triangles. Sew {measures.say_seam} from the line on both sides, then "
            "cut on the line.",
            (
                Picture(
                    (*heart, *last, falling("cut", s)),
                    "A small square on the free corner, sewn on both sides and cut.",
                    5,
                ),
            ),
        ),
        Step(
            "Press again",
            "Press the last triangles outward too: four geese. Snip off the small points that stand out.",
            (Picture(opened_goose(measures), "A flying geese unit opened, with points that stand out."),),
        ),
        _measure(measures, "Trim each of the four geese, if need be, to"),
    )


def _squares(g: Exact, s: Exact, other: int) -> tuple[Item, ...]:
    """The large square, and the small ones in two rows beside it."""
    gap = g * GAP
    items: list[Item] = [*laid_out([(0, g, g)], gap)]
    for row in range(2):
        for column in range(2):
            x, y = g + gap + column * (s + gap / 2), row * (s + gap / 2) + g / 2 - s - gap / 4
            if row:
                items.append(Measured(at(x, y + s), at(x + s, y + s), s))
            items += [Cloth(1 if row == 0 else other, box(s, s, x, y), "wrong"), rising("drawn", s, ZERO, x, y)]
    return tuple(items)


def _heart(measures: Measures) -> tuple[Cloth, ...]:
    """One half of the large square, its square corner at (0, 0), the small triangles pressed outward.

    Derived: the cut edge is x + y = g, the seam x + y = g - a√2 for an allowance a; folding over the seam takes
    (x, y) to (g - a√2 - y, g - a√2 - x).
    """
    g, s, slant = measures.side(0), measures.side(1), measures.slant
    half = outline((0, 0), (g, 0), (0, g))
    seam = (at(ZERO, g - slant), at(g - slant, ZERO))
    edge = g - slant
    lower = clipped(outline((-slant, edge), (s - slant, edge - s), (s - slant, edge)), seam)
    upper = clipped(outline((edge, -slant), (edge, s - slant), (edge - s, s - slant)), seam)
    return Cloth(0, half), Cloth(1, lower), Cloth(1, upper)


def _outward(measures: Measures) -> tuple[Press, ...]:
    g, s = measures.side(0), measures.side(1)
    reach, inward = s / 6, s / 8
    low, high = g / 4, g * Fraction(3, 4)
    return (
        Press(at(low - inward, high - inward - reach), at(low + reach, high)),
        Press(at(high - inward - reach, low - inward), at(high, low + reach)),
    )


# --- from single triangles -------------------------------------------------------------------------


def from_triangles(measures: Measures) -> tuple[Step, ...]:
    """A goose from a square cut twice corner to corner, skies from squares cut once."""
    w, h, seam = measures.width, measures.height, measures.seam
    g, s = measures.side(0), measures.side(1)
    other = sky_role(measures)
    point = at(w / 2, ZERO)
    goose = Cloth(0, (point, at(w, h), at(ZERO, h)))
    left = Cloth(1, outline((0, 0), (w / 2, 0), (0, h)))
    right = Cloth(other, outline((w / 2, 0), (w, 0), (w, h)))
    first = patches_together(goose, left, seam, (at(ZERO, h), point))
    folded = patches_together(goose, right, seam, (point, at(w, h)))[1]
    sewn_left = Line("sewn", at(-seam, h + seam), at(w / 2 + seam, -seam))
    sewn_right = Line("sewn", at(w / 2 - seam, -seam), at(w + seam, h + seam))
    cut: tuple[Item, ...] = (Cloth(0, box(g, g)), Line("cut", at(ZERO, ZERO), at(g, g)))
    return (
        Step(
            "Cut",
            f"Cut {measures.say(g)} squares of the goose and {measures.say(s)} squares of the sky. A goose takes a "
            "quarter of a large square and two halves of small ones.",
            (Picture(laid_out([(0, g, g), (1, s, s)], g * GAP), "A large and a small square."),),
        ),
        Step(
            "Cut corner to corner",
            "Turn the square so that its corner points at you, hold the ruler down with the flat hand and roll the "
            "cutter away from yourself. Cut the large square both ways without moving the pieces: four. Cut the small "
            "one once: two.",
            cutting_pair(cut, rising("cut", g), "The large square cut both ways corner to corner", (-1, -1)),
        ),
        Step(
            "Sew the first sky",
            "Lay a sky triangle on the left short edge of the goose, right sides together, the lower corners matched; "
            f"its tip stands out at the goose's point. Sew {measures.say_seam} from the edge.",
            (Picture((*first, sewn_left), "A sky triangle on the goose's left edge, sewn."),),
        ),
        Step(
            "Press",
            "Open and press the allowances toward the sky. Snip off the points.",
            (Picture((*opened_goose(measures, 1), over_left(measures)), "The goose with its left sky opened."),),
        ),
        Step(
            "Sew the second sky",
            "Lay the second sky triangle on the other edge in the same way. Its seam crosses the first one right "
            "above the goose's point. Press toward the sky.",
            (Picture((*opened_goose(measures, 1), folded, sewn_right), "The second sky triangle laid on and sewn."),),
        ),
        _measure(measures, "The unit should now measure"),
    )
