"""Cut patches: each piece of cloth cut by itself, sewn in pairs and rows; and squares with corners."""

from __future__ import annotations

from fractions import Fraction

from blockdsl.sewing.techniques.cloth import (
    ZERO,
    at,
    box,
    clipped,
    cut_outline,
    cutting_pair,
    dimensions,
    laid_out,
    last_check,
    outline,
    patches_together,
    rising,
    squares_together,
)
from blockdsl.sewing.techniques.halves import GAP
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Cloth, Item, Line, Measured, Picture, Press, Step


def squares(measures: Measures) -> tuple[Step, ...]:
    """Plain squares and rectangles, sewn edge to edge: shown with two squares."""
    side, seam = measures.side(0), measures.seam
    inner = side - seam
    sewn = Line("sewn", at(inner, ZERO), at(inner, side))
    opened = (Cloth(0, box(inner, side)), Cloth(1, box(inner, side, inner)))
    strip = side * Fraction(8, 5)
    cut = Line("cut", at(side, side), at(side, ZERO))
    cloth: tuple[Item, ...] = (Cloth(0, box(strip, side)), Measured(at(ZERO, side), at(side, side), side))
    dark_right = 1 in measures.dark or 0 not in measures.dark
    reach = side / 6 if dark_right else -side / 6
    arrow = Press(at(inner - reach, side / 2), at(inner + reach, side / 2))
    return (
        Step(
            "Cut",
            "Square up the end of the strip and cut off a piece of the size in the cutting table. Hold the ruler down "
            "with the flat hand, finger tips away from its edge, and roll the cutter away from yourself.",
            cutting_pair(cloth, cut, "A square cut from a strip", (0, 4)),
        ),
        Step(
            "Lay together",
            "Lay two patches right sides together (the printed faces inside), edges level. Pin across the seam; "
            "take each pin out before the "
            "needle reaches it.",
            (Picture(squares_together(1, 0, side), "Two squares right sides together."),),
        ),
        Step(
            "Sew",
            f"Sew {measures.say_seam} from the edge, from end to end, with small stitches. Try it first on two "
            f"{measures.say(side)} squares: sewn together they must measure {measures.say_size((2 * inner, side))}.",
            (Picture((*squares_together(1, 0, side), sewn), "A seam along the right edge of two squares."),),
        ),
        Step(
            "Press",
            "Press the seam once as it was sewn, then open the patches and press the allowances toward the darker one. "
            "In rows press every other row the other way.",
            (Picture((*opened, arrow), "Two squares opened; an arrow points to the darker one."),),
        ),
        Step(
            "Measure",
            "Measure before you sew on. In the middle of a row a patch shows its finished size; only the ends still "
            "have their allowance.",
            (Picture((*opened, *dimensions(2 * inner, side)), "Two squares joined, with their measures."),),
        ),
    )


def diamond(measures: Measures) -> tuple[Step, ...]:
    """A square on its point with a triangle on each side. Roles: centre 0, corners 1 to 4 from the upper left."""
    f, seam = measures.width, measures.seam
    m = f / 2
    top, right, bottom, left = at(m, ZERO), at(f, m), at(m, f), at(ZERO, m)
    centre = Cloth(0, (top, right, bottom, left))
    roles = [place if place in measures.cuts else 1 for place in (1, 2, 3, 4)]
    shapes = (
        (outline((0, 0), (m, 0), (0, m)), (top, left)),
        (outline((m, 0), (f, 0), (f, m)), (right, top)),
        (outline((f, m), (f, f), (m, f)), (bottom, right)),
        (outline((0, m), (m, f), (0, f)), (left, bottom)),
    )
    corners = [
        Cloth(role, clipped(cut_outline(shape, seam), line)) for role, (shape, line) in zip(roles, shapes, strict=True)
    ]
    whole = Cloth(0, cut_outline(centre.outline, seam))
    upper_left = Cloth(roles[0], shapes[0][0])
    laid = patches_together(centre, upper_left, seam, (left, top))
    reach = measures.slant
    sewn = Line("sewn", at(-reach / 2, m + reach / 2), at(m + reach / 2, -reach / 2))
    third = patches_together(centre, Cloth(roles[1], shapes[1][0]), seam, (top, right))[1]
    sewn_third = Line("sewn", at(m - reach, -reach), at(f + reach, m + reach))
    s = measures.side(1)
    width, height = measures.cut(0)
    opposite = (whole, corners[0], corners[2])
    near, far = f * Fraction(5, 16), f * Fraction(1, 8)
    arrows = (Press(at(near, near), at(far, far)), Press(at(f - near, f - near), at(f - far, f - far)))
    opened = (*opposite, corners[1], corners[3])
    return (
        Step(
            "Cut",
            f"Cut one {measures.say_piece(0)} for the middle and two {measures.say(s)} squares for the corners."
            if measures.cuts[0][0][0] == measures.cuts[0][0][1]
            else "Cut the middle and the squares for the corners.",
            (Picture(laid_out([(0, width, height), (roles[0], s, s)], s * GAP), "The squares to cut."),),
        ),
        Step(
            "Cut corner to corner",
            "Turn a corner square so that its corner points at you and cut it once from corner to corner, rolling away "
            "from yourself: two triangles from each, four in all.",
            cutting_pair(
                (Cloth(roles[0], box(s, s)),), rising("cut", s), "A corner square cut corner to corner", (-1, -1)
            ),
        ),
        Step(
            "Sew two sides",
            "Fold the middle square and each triangle's long edge in half and finger-press a crease. Lay a triangle on "
            f"one side, right sides together, crease on crease, and sew {measures.say_seam} from the edge. Sew the "
            "opposite triangle too.",
            (Picture((*laid, sewn), "A triangle on one side of the middle square, sewn."),),
        ),
        Step(
            "Press and trim",
            "Press the allowances toward the triangles and snip off the points that stand out.",
            (Picture((*opposite, *arrows), "The middle square with two opposite triangles opened."),),
        ),
        Step(
            "Sew the others",
            "Sew the other two triangles on in the same way, crease on crease, and press toward them.",
            (Picture((*opposite, third, sewn_third), "A third triangle laid on and sewn."),),
        ),
        Step(
            "Measure",
            f"The unit should now measure {measures.say_unfinished}, a seam allowance of {measures.say_seam} beyond "
            "each point of the middle square.",
            (last_check(opened, measures, f"The unit, {measures.say_unfinished}."),),
        ),
    )
