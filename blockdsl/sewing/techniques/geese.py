"""Flying geese: four from five squares, or from single triangles. Roles: goose 0, left sky 1, right sky 2."""

from __future__ import annotations

from msgspec.structs import replace

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
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
    pressed,
    rising,
)
from blockdsl.sewing.techniques.halves import GAP
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import (
    Gap,
    Item,
    LessonStep,
    Line,
    Measured,
    PressArrow,
    SceneCloth,
    ScenePicture,
    lesson_step,
    show,
)


def sky_role(measures: Measures) -> int:
    """The right sky's role, which is the left one's when both are of one fabric."""
    return 2 if 2 in measures.cuts else 1


def opened_goose(measures: Measures, skies: int = 2) -> tuple[SceneCloth, ...]:
    """A goose with its first sky, or both, pressed open toward the sky; finished corner at (0, 0)."""
    w, h, seam = measures.width, measures.height, measures.seam
    point = at(w / 2, ZERO)
    goose = SceneCloth(0, cut_outline((point, at(w, h), at(ZERO, h)), seam))
    left = SceneCloth(1, clipped(cut_outline(outline((0, 0), (w / 2, 0), (0, h)), seam), (point, at(ZERO, h))))
    right = SceneCloth(
        sky_role(measures), clipped(cut_outline(outline((w / 2, 0), (w, 0), (w, h)), seam), (at(w, h), point))
    )
    return (goose, left, right)[: 1 + skies]


def over_left(measures: Measures) -> tuple[PressArrow, ...]:
    """Across the left seam toward the sky, or both ways."""
    seam = (at(ZERO, measures.height), at(measures.width / 2, ZERO))
    return pressed(seam, at(ZERO, ZERO), Fraction(1, 3), open_seams=measures.open_seams)


def checked(measures: Measures) -> ScenePicture:
    """The unit with what it should measure, and the allowance above the point."""
    w, seam = measures.width, measures.seam
    picture = last_check(opened_goose(measures), measures, "goose-measured")
    return replace(picture, items=(*picture.items, Gap(at(w / 2, ZERO), at(w / 2, -seam), seam)))


# --- four from five squares ------------------------------------------------------------------------


def first_squares(measures: Measures) -> tuple[Item, ...]:
    """Two small squares on opposite corners of the large one, and the seams."""
    g, s, slant = measures.side(0), measures.side(1), measures.slant
    return (
        SceneCloth(0, box(g, g)),
        SceneCloth(1, box(s, s, ZERO, g - s), "wrong"),
        SceneCloth(1, box(s, s, g - s, ZERO), "wrong"),
        rising("drawn", g),
        rising("sewn", g, -slant),
        rising("sewn", g, slant),
    )


def marked(measures: Measures) -> ScenePicture:
    """The five squares, the small ones with a line."""
    g, s = measures.side(0), measures.side(1)
    return show("five-squares", *_squares(g, s, sky_role(measures)))


def two_on(measures: Measures) -> ScenePicture:
    """Two small squares sewn on."""
    return show("two-small-squares", *first_squares(measures))


def heart(measures: Measures) -> ScenePicture:
    """A half of it, pressed."""
    return show("heart", *_heart(measures), *_outward(measures), turn=5)


def third_on(measures: Measures) -> ScenePicture:
    """A small square on the square corner of a half."""
    s, slant, other = measures.side(1), measures.slant, sky_role(measures)
    last = (
        SceneCloth(other, box(s, s), "wrong"),
        falling("drawn", s),
        falling("sewn", s, -slant),
        falling("sewn", s, slant),
    )
    return show("third-small-square", *_heart(measures), *last, falling("cut", s), turn=5)


def four_at_a_time(measures: Measures) -> tuple[LessonStep, ...]:
    """One large square and four small ones give four units."""
    seam, press = measures.allowance, "open" if measures.open_seams else "side"
    cloth = first_squares(measures)
    cut = cutting_pair(cloth, rising("cut", measures.side(0)), "large-square-cut", (-1, -1))
    return (
        lesson_step(
            "geese-four-cut",
            marked(measures),
            large=measures.piece(0),
            small=measures.piece(1),
            skies=sky_role(measures),
        ),
        lesson_step("geese-four-sew", two_on(measures), seam=seam),
        lesson_step("geese-four-cut-apart", *cut),
        lesson_step("geese-four-press", heart(measures), press=press),
        lesson_step("geese-four-last", third_on(measures), seam=seam),
        lesson_step("geese-four-press-last", show("goose-opened", *opened_goose(measures)), press=press),
        lesson_step("geese-measure", checked(measures), made="four", size=measures.size, seam=seam),
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
            items += [SceneCloth(1 if row == 0 else other, box(s, s, x, y), "wrong"), rising("drawn", s, ZERO, x, y)]
    return tuple(items)


def _heart(measures: Measures) -> tuple[SceneCloth, ...]:
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
    return SceneCloth(0, half), SceneCloth(1, lower), SceneCloth(1, upper)


def _outward(measures: Measures) -> tuple[PressArrow, ...]:
    g, slant = measures.side(0), measures.slant
    near, far = g / 8, g * Fraction(7, 8)
    edge = g - slant
    low = pressed((at(ZERO, edge), at(edge / 2, edge / 2)), at(near, far + g / 8), Fraction(1, 3), open_seams=False)
    high = pressed((at(edge, ZERO), at(edge / 2, edge / 2)), at(far + g / 8, near), Fraction(1, 3), open_seams=False)
    return (*low, *high)


# --- from single triangles -------------------------------------------------------------------------


def from_triangles(measures: Measures) -> tuple[LessonStep, ...]:
    """A goose from a square cut twice corner to corner, skies from squares cut once."""
    w, h, seam = measures.width, measures.height, measures.seam
    g, s = measures.side(0), measures.side(1)
    other = sky_role(measures)
    point = at(w / 2, ZERO)
    goose = SceneCloth(0, (point, at(w, h), at(ZERO, h)))
    left = SceneCloth(1, outline((0, 0), (w / 2, 0), (0, h)))
    right = SceneCloth(other, outline((w / 2, 0), (w, 0), (w, h)))
    first = patches_together(goose, left, seam, (at(ZERO, h), point))
    folded = patches_together(goose, right, seam, (point, at(w, h)))[1]
    sewn_left = Line("sewn", at(-seam, h + seam), at(w / 2 + seam, -seam))
    sewn_right = Line("sewn", at(w / 2 - seam, -seam), at(w + seam, h + seam))
    cut: tuple[Item, ...] = (SceneCloth(0, box(g, g)), Line("cut", at(ZERO, ZERO), at(g, g)))
    press = "open" if measures.open_seams else "side"
    allowance = measures.allowance
    squares = show("large-and-small-square", *laid_out([(0, g, g), (1, s, s)], g * GAP))
    half = opened_goose(measures, 1)
    return (
        lesson_step("geese-triangles-cut", squares, large=measures.piece(0), small=measures.piece(1)),
        lesson_step("geese-triangles-apart", *cutting_pair(cut, rising("cut", g), "cut-twice", (-1, -1))),
        lesson_step("geese-triangles-first", show("first-sky", *first, sewn_left), seam=allowance),
        lesson_step("geese-triangles-press", show("first-sky-opened", *half, *over_left(measures)), press=press),
        lesson_step("geese-triangles-second", show("second-sky", *half, folded, sewn_right), press=press),
        lesson_step("geese-measure", checked(measures), made="one", size=measures.size, seam=allowance),
    )
