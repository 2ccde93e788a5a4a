"""Half-square triangles: two or eight from a pair of squares, or from single triangles."""

from __future__ import annotations

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
    falling,
    laid_out,
    last_check,
    outline,
    patches_together,
    rising,
    squares_together,
)
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Cloth, Gap, Item, Line, Picture, Press, Step

GAP = Fraction(1, 5)
SET_AND_OPEN = (
    "Press the seam once as it was sewn, then open the unit and press the seam allowances toward the darker fabric. "
    "Set the iron down and lift it; pushing it about stretches the cloth."
)
EARS = (
    "Snip off the two small points (dog ears) that stand out. If the unit is larger than it should be, lay the ruler's "
    "45° line on the seam and trim all four sides."
)


def darker(measures: Measures, first: int, second: int) -> int:
    """Which of two roles the allowances are pressed toward: the darker fabric, the second when they are alike."""
    return first if first in measures.dark and second not in measures.dark else second


def light_on_dark(measures: Measures, first: int = 0, second: int = 1) -> tuple[int, int]:
    """Which of two squares lies on top, to be drawn on, and which underneath."""
    return (second, first) if darker(measures, first, second) == first else (first, second)


def opened_half(measures: Measures, first: int = 0, second: int = 1) -> tuple[Cloth, ...]:
    """A half-square unit pressed open with its dog ears, `first` at the upper left; finished corner at (0, 0)."""
    f = measures.width
    upper = Cloth(first, cut_outline(outline((0, 0), (f, 0), (0, f)), measures.seam))
    lower = Cloth(second, cut_outline(outline((f, 0), (f, f), (0, f)), measures.seam))
    seam = (at(ZERO, f), at(f, ZERO))
    if darker(measures, first, second) == second:
        return upper, Cloth(second, clipped(lower.outline, seam))
    return lower, Cloth(first, clipped(upper.outline, seam[::-1]))


def press_arrow(measures: Measures, first: int = 0, second: int = 1) -> Press:
    """Across the seam toward the darker fabric."""
    f = measures.width
    low, high = at(f * Fraction(3, 8), f * Fraction(3, 8)), at(f * Fraction(5, 8), f * Fraction(5, 8))
    return Press(low, high) if darker(measures, first, second) == second else Press(high, low)


def finish(measures: Measures, makes: str) -> tuple[Step, ...]:
    """Press, trim, measure."""
    f, slant = measures.width, measures.slant
    opened = opened_half(measures)
    edge = f + measures.seam
    if darker(measures, 0, 1) == 1:
        ears: tuple[Item, ...] = (
            Line("cut", at(edge, -2 * slant), at(edge, slant)),
            Line("cut", at(-2 * slant, edge), at(slant, edge)),
        )
    else:
        ears = (
            Line("cut", at(f - slant, -measures.seam), at(f + 2 * slant, -measures.seam)),
            Line("cut", at(-measures.seam, f - slant), at(-measures.seam, f + 2 * slant)),
        )
    unit = "A half-square triangle unit"
    pressed = Picture((*opened, press_arrow(measures)), f"{unit} opened; an arrow points to the darker fabric.")
    snipped = Picture((*opened, *ears), f"{unit} with cuts across the two points that stand out.")
    checked = last_check(opened, measures, f"{unit}, {measures.say_unfinished}.")
    return (
        Step("Press", SET_AND_OPEN, (pressed,)),
        Step("Trim", EARS, (snipped,)),
        Step("Measure", f"{makes} {measures.say_unfinished}.", (checked,)),
    )


def two_at_a_time(measures: Measures) -> tuple[Step, ...]:
    """A square of each fabric gives two units."""
    side, slant = measures.side(0), measures.slant
    size, light = measures.say(side), light_on_dark(measures)[0]
    together = squares_together(*light_on_dark(measures), side)
    sewn: tuple[Item, ...] = (*together, *both_sides(side, slant))
    flat: tuple[Item, ...] = (Cloth(light, box(side, side), "wrong"), *both_sides(side, slant))
    halves = "Two squares right sides together, to be cut corner to corner between the two seams"
    return (
        Step(
            "Cut",
            f"Cut one {size} square of each fabric for every two units.",
            (Picture(laid_out([(0, side, side), (1, side, side)], side * GAP), f"Two squares of {size}."),),
        ),
        Step(
            "Draw a line",
            "Turn the lighter square wrong side up. Draw a thin pencil line from corner to corner. This line is for "
            "cutting, not for sewing.",
            (
                Picture(
                    (Cloth(light, box(side, side), "wrong"), rising("drawn", side)), "A square with a diagonal line."
                ),
            ),
        ),
        Step(
            "Sew two seams",
            f"Lay it on the other square, right sides together (the printed faces inside), edges level, and pin. "
            f"Sew {measures.say_seam} from the "
            "line along one side of it, turn, and sew along the other side. (The corner is turned back only to show "
            "the layers.)",
            (Picture((*sewn, _gap(measures, side)), "Seams on both sides of the drawn line."),),
        ),
        Step(
            "Cut on the line",
            "Turn the squares so that the line leads straight away from you. Hold the ruler down on it with the flat "
            "hand, finger tips away from the edge, and roll the cutter along it away from yourself. Each half becomes "
            "a unit.",
            cutting_pair(flat, rising("cut", side), halves, (-1, -1)),
        ),
        *finish(measures, "Each of the two units should now measure"),
    )


def _gap(measures: Measures, side: Exact) -> Gap:
    """Square to the drawn line, near its upper end."""
    x = side * Fraction(3, 4)
    y = side - x
    return Gap(at(x, y), at(x - measures.slant / 2, y - measures.slant / 2), measures.seam)


def eight_at_a_time(measures: Measures) -> tuple[Step, ...]:
    """A square of each fabric gives eight units."""
    side, slant = measures.side(0), measures.slant
    size, half, light = measures.say(side), side / 2, light_on_dark(measures)[0]
    together = squares_together(*light_on_dark(measures), side)
    lines = (rising("drawn", side), falling("drawn", side))
    seams = tuple(line("sewn", side, shift) for line in (rising, falling) for shift in (-slant, slant))
    sewn: tuple[Item, ...] = (*together, *lines, *seams)
    upright = Line("cut", at(half, side), at(half, ZERO))
    level = Line("cut", at(ZERO, half), at(side, half))
    quarter: tuple[Item, ...] = (Cloth(light, box(half, half), "wrong"), *both_sides(half, slant))
    return (
        Step(
            "Cut",
            f"Cut one {size} square of each fabric for every eight units.",
            (Picture(laid_out([(0, side, side), (1, side, side)], side * GAP), f"Two squares of {size}."),),
        ),
        Step(
            "Draw two lines",
            "Turn the lighter square wrong side up. Draw a thin pencil line from corner to corner both ways, so that "
            "they cross in the middle. They are for cutting, not for sewing.",
            (Picture((Cloth(light, box(side, side), "wrong"), *lines), "A square with both diagonals drawn."),),
        ),
        Step(
            "Sew four seams",
            f"Lay it on the other square, right sides together (the printed faces inside), edges level, and pin. "
            f"Sew {measures.say_seam} from "
            "each line on both sides of it: four seams, straight through the crossing. (The corner is turned back "
            "only to show the layers.)",
            (Picture((*sewn, _gap(measures, side)), "Two seams beside each of the two lines."),),
        ),
        Step(
            "Cut into quarters",
            f"Without moving the cloth cut through the middle upright and level: {measures.say(half)} from each edge. "
            "Hold the ruler down with the flat hand, finger tips away from its edge, and roll the cutter away from "
            "yourself. For the level cut walk round the table or turn the mat.",
            cutting_pair(
                (Cloth(light, box(side, side), "wrong"), *lines, *seams, level),
                upright,
                "The squares cut through the middle",
                (0, 0),
            ),
        ),
        Step(
            "Cut on the lines",
            "Cut each quarter on its drawn line, between the two seams: eight halves.",
            (Picture((*quarter, rising("cut", half)), "A quarter cut between its two seams."),),
        ),
        *finish(measures, "Each of the eight units should now measure"),
    )


def from_triangles(measures: Measures) -> tuple[Step, ...]:
    """Single triangles, cut from squares, sewn in pairs."""
    f, seam, side = measures.width, measures.seam, measures.side(0)
    size = measures.say(side)
    line = (at(ZERO, f), at(f, ZERO))
    upper = Cloth(0, outline((0, 0), (f, 0), (0, f)))
    lower = Cloth(1, outline((f, 0), (f, f), (0, f)))
    together = patches_together(lower, upper, seam, line)
    sewn = Line("sewn", at(-seam, f + seam), at(f + seam, -seam))
    return (
        Step(
            "Cut",
            f"Cut one {size} square of each fabric for every two units.",
            (Picture(laid_out([(0, side, side), (1, side, side)], side * GAP), f"Two squares of {size}."),),
        ),
        Step(
            "Cut corner to corner",
            "Turn the square so that its corner points at you. Hold the ruler down from corner to corner with the flat "
            "hand and roll the cutter along it away from yourself: two triangles. Their long edges stretch; handle "
            "them as little as you can.",
            cutting_pair((Cloth(0, box(side, side)),), rising("cut", side), "A square cut corner to corner", (-1, -1)),
        ),
        Step(
            "Sew the long edges",
            f"Lay a triangle of each fabric right sides together (the printed faces inside), all edges level. Sew "
            f"{measures.say_seam} from the "
            "long edge. Do not pull: let the machine feed the cloth.",
            (Picture((*together, sewn), "Two triangles together with a seam along the long edge."),),
        ),
        *finish(measures, "The unit should now measure"),
    )
