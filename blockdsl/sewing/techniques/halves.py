"""Half-square triangles: two or eight from a pair of squares, or from single triangles."""

from __future__ import annotations

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
    falling,
    laid_out,
    last_check,
    outline,
    patches_together,
    pressed,
    rising,
    squares_together,
)
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import Gap, Item, LessonStep, Line, SceneCloth, ScenePicture, lesson_step, show

GAP = Fraction(1, 5)


def darker(measures: Measures, first: int, second: int) -> int:
    """Which of two roles the allowances are pressed toward: the darker fabric, the second when they are alike."""
    return first if first in measures.dark and second not in measures.dark else second


def light_on_dark(measures: Measures, first: int = 0, second: int = 1) -> tuple[int, int]:
    """Which of two squares lies on top, to be drawn on, and which underneath."""
    return (second, first) if darker(measures, first, second) == first else (first, second)


def opened_half(measures: Measures, first: int = 0, second: int = 1) -> tuple[SceneCloth, ...]:
    """A half-square unit pressed open with its dog-ears, `first` at the upper left; finished corner at (0, 0)."""
    f = measures.width
    upper = SceneCloth(first, cut_outline(outline((0, 0), (f, 0), (0, f)), measures.seam))
    lower = SceneCloth(second, cut_outline(outline((f, 0), (f, f), (0, f)), measures.seam))
    seam = (at(ZERO, f), at(f, ZERO))
    if darker(measures, first, second) == second:
        return upper, SceneCloth(second, clipped(lower.outline, seam))
    return lower, SceneCloth(first, clipped(upper.outline, seam[::-1]))


# --- pictures --------------------------------------------------------------------------------------


def two_squares(measures: Measures) -> ScenePicture:
    """The pair of squares that is cut."""
    side = measures.side(0)
    return show("squares", *laid_out([(0, side, side), (1, side, side)], side * GAP))


def marked(side: Exact, role: int, *, both: bool = False) -> ScenePicture:
    """A square, wrong side up, with one diagonal or both."""
    lines = (rising("drawn", side), falling("drawn", side)) if both else (rising("drawn", side),)
    return show("square-marked-twice" if both else "square-marked", SceneCloth(role, box(side, side), "wrong"), *lines)


def sewn(measures: Measures, first: int = 0, second: int = 1) -> ScenePicture:
    """The pair right sides together, a seam on both sides of the line."""
    side = measures.side(first)
    together = squares_together(*light_on_dark(measures, first, second), side)
    return show("sewn-both-sides", *together, *both_sides(side, measures.slant), gap_beside(measures, side))


def sewn_four_times(measures: Measures) -> ScenePicture:
    """The pair right sides together, a seam on both sides of both diagonals."""
    side, slant = measures.side(0), measures.slant
    lines = (rising("drawn", side), falling("drawn", side))
    seams = tuple(line("sewn", side, shift) for line in (rising, falling) for shift in (-slant, slant))
    together = squares_together(*light_on_dark(measures), side)
    return show("sewn-four-times", *together, *lines, *seams, gap_beside(measures, side))


def quartered(measures: Measures) -> tuple[ScenePicture, ScenePicture]:
    """The pair cut in half both ways."""
    side, slant = measures.side(0), measures.slant
    half, light = side / 2, light_on_dark(measures)[0]
    lines = (rising("drawn", side), falling("drawn", side))
    seams = tuple(line("sewn", side, shift) for line in (rising, falling) for shift in (-slant, slant))
    upright = Line("cut", at(half, side), at(half, ZERO))
    level = Line("cut", at(ZERO, half), at(side, half))
    cloth: tuple[Item, ...] = (SceneCloth(light, box(side, side), "wrong"), *lines, *seams, level)
    return cutting_pair(cloth, upright, "cut-quarters", (0, 0))


def cut_apart(measures: Measures, first: int = 0, second: int = 1) -> tuple[ScenePicture, ScenePicture]:
    """The pair cut on its line, between the seams."""
    side = measures.side(first)
    light = light_on_dark(measures, first, second)[0]
    flat: tuple[Item, ...] = (SceneCloth(light, box(side, side), "wrong"), *both_sides(side, measures.slant))
    return cutting_pair(flat, rising("cut", side), "cut-on-line", (-1, -1))


def opened(measures: Measures) -> ScenePicture:
    """The unit pressed, its dog-ears still on it."""
    f = measures.width
    corner = at(f, f) if darker(measures, 0, 1) == 1 else at(ZERO, ZERO)
    seam = (at(ZERO, f), at(f, ZERO))
    arrows = pressed(seam, corner, Fraction(1, 4), open_seams=measures.open_seams)
    return show("half-opened", *opened_half(measures), *arrows)


def ears(measures: Measures) -> ScenePicture:
    """Where the dog-ears are cut off."""
    f, slant, edge = measures.width, measures.slant, measures.width + measures.seam
    if darker(measures, 0, 1) == 1:
        cuts: tuple[Item, ...] = (
            Line("cut", at(edge, -2 * slant), at(edge, slant)),
            Line("cut", at(-2 * slant, edge), at(slant, edge)),
        )
    else:
        cuts = (
            Line("cut", at(f - slant, -measures.seam), at(f + 2 * slant, -measures.seam)),
            Line("cut", at(-measures.seam, f - slant), at(-measures.seam, f + 2 * slant)),
        )
    return show("half-ears", *opened_half(measures), *cuts)


def checked(measures: Measures) -> ScenePicture:
    """The unit with what it should measure."""
    return last_check(opened_half(measures), measures, "half-measured")


def gap_beside(measures: Measures, side: Exact) -> Gap:
    """Square to the drawn line, near its upper end."""
    x = side * Fraction(3, 4)
    y = side - x
    return Gap(at(x, y), at(x - measures.slant / 2, y - measures.slant / 2), measures.seam)


# --- lessons ---------------------------------------------------------------------------------------


def two_at_a_time(measures: Measures) -> tuple[LessonStep, ...]:
    """A square of each fabric gives two units."""
    return (
        lesson_step("half-cut", two_squares(measures), piece=measures.piece(0), count=2),
        lesson_step("half-mark", marked(measures.side(0), light_on_dark(measures)[0])),
        lesson_step("half-two-sew", sewn(measures), seam=measures.allowance),
        lesson_step("half-two-cut-apart", *cut_apart(measures)),
        *_finish(measures, 2),
    )


def eight_at_a_time(measures: Measures) -> tuple[LessonStep, ...]:
    """A square of each fabric gives eight units."""
    side = measures.side(0)
    quarter = (SceneCloth(light_on_dark(measures)[0], box(side / 2, side / 2), "wrong"),)
    cut = show("quarter-cut", *quarter, *both_sides(side / 2, measures.slant), rising("cut", side / 2))
    return (
        lesson_step("half-cut", two_squares(measures), piece=measures.piece(0), count=8),
        lesson_step("half-eight-mark", marked(side, light_on_dark(measures)[0], both=True)),
        lesson_step("half-eight-sew", sewn_four_times(measures), seam=measures.allowance),
        lesson_step("half-eight-quarter", *quartered(measures), half=Length(side / 2)),
        lesson_step("half-eight-cut-apart", cut),
        *_finish(measures, 8),
    )


def from_triangles(measures: Measures) -> tuple[LessonStep, ...]:
    """Single triangles, cut from squares, sewn in pairs."""
    f, seam, side = measures.width, measures.seam, measures.side(0)
    line = (at(ZERO, f), at(f, ZERO))
    upper = SceneCloth(0, outline((0, 0), (f, 0), (0, f)))
    lower = SceneCloth(1, outline((f, 0), (f, f), (0, f)))
    together = patches_together(lower, upper, seam, line)
    long_seam = Line("sewn", at(-seam, f + seam), at(f + seam, -seam))
    square = (SceneCloth(0, box(side, side)),)
    return (
        lesson_step("half-cut", two_squares(measures), piece=measures.piece(0), count=2),
        lesson_step("half-triangles-cut", *cutting_pair(square, rising("cut", side), "cut-once", (-1, -1))),
        lesson_step("half-triangles-sew", show("half-long-seam", *together, long_seam), seam=measures.allowance),
        *_finish(measures, 1),
    )


def _finish(measures: Measures, count: int) -> tuple[LessonStep, ...]:
    """Press, trim, measure."""
    return (
        lesson_step("half-press", opened(measures), press="open" if measures.open_seams else "side"),
        lesson_step("half-trim", ears(measures)),
        lesson_step("half-measure", checked(measures), count=count, size=measures.size),
    )
