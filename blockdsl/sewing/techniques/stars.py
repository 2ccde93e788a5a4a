"""Large stars of many small diamonds, their rows cut from strip sets at 45°.

The steps tell no sizes but the seam allowance: they suit stars of any number of rows, and the cutting table has theirs.
Shown is one of three rows.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.sewing.message import Length
from blockdsl.sewing.techniques.cloth import ZERO, at, cutting_pair, outline, pressed
from blockdsl.sewing.techniques.measures import ROOT_TWO, Measures
from blockdsl.sewing.techniques.scene import (
    Item,
    LessonStep,
    Line,
    Measured,
    SceneCloth,
    ScenePicture,
    lesson_step,
    show,
)
from blockdsl.shapes import star45
from blockdsl.shapes.star45 import POINTS

ROWS = 3
GROUND = ROWS
DRAWN = (*((i + j) % ROWS for _ in range(POINTS) for i in range(ROWS) for j in range(ROWS)), *(GROUND,) * POINTS)
"""The role of each patch of the star that is shown: the fabrics in turn from the middle outward, then the ground."""


def _set(
    measures: Measures, roles: Sequence[int], width: Exact, length: Exact
) -> tuple[tuple[SceneCloth, ...], list[Exact]]:
    """The set pressed, each strip begun further in by its finished width; and where its seams are."""
    cloths, seams = [], []
    band = width - 2 * measures.seam
    y: Exact = ZERO
    for place, role in enumerate(roles):
        outer = (place == 0) + (place == len(roles) - 1)
        height, x = band + outer * measures.seam, band * place
        cloths.append(SceneCloth(role, outline((x, y), (x + length, y), (x + length, y + height), (x, y + height))))
        y = y + height
        seams.append(y)
    return tuple(cloths), seams[:-1]


def _star(side: Exact) -> list[SceneCloth]:
    """The finished star, patch by patch, those of a point together."""
    fabrics = tuple(str(role) for role in (*range(ROWS), GROUND, GROUND))
    patches = star45.SHAPE.draw(ShapeUse(star45.SHAPE.name, fabrics, (Fraction(ROWS),)), side, side)
    return [SceneCloth(int(fabric), patch) for fabric, patch in patches]


def _aside(cloths: Iterable[SceneCloth], dx: Exact, dy: Exact) -> list[SceneCloth]:
    def shifted(shape: Polygon) -> Polygon:
        return tuple(at(corner.x + dx, corner.y + dy) for corner in shape)

    return [SceneCloth(cloth.role, shifted(cloth.outline), cloth.side) for cloth in cloths]


def stepped_set(measures: Measures, roles: Sequence[int], width: Exact) -> ScenePicture:
    """The strips sewn and pressed, the ends stepping down at 45 degrees."""
    band, length = width - 2 * measures.seam, _length(width)
    cloths, seams = _set(measures, roles, width, length)
    arrows: list[Item] = []
    for place, y in enumerate(seams):
        x = length / 2 + band * place
        arrows += pressed((at(x, y), at(x, y)), at(x, y + band), Fraction(1, 3), open_seams=measures.open_seams)
    return show("stepped-set", *cloths, *arrows)


def slanted_cut(measures: Measures, roles: Sequence[int], width: Exact) -> ScenePicture:
    """The set cut at 45 degrees, for the right hand."""
    return cut_at_45(measures, roles, width)[0]


def cut_at_45(measures: Measures, roles: Sequence[int], width: Exact) -> tuple[ScenePicture, ScenePicture]:
    """The set cut into segments; the first cut runs through the upper corners of all strips, where they begin."""
    along, whole = width * ROOT_TWO, len(roles) * (width - 2 * measures.seam) + 2 * measures.seam
    cloths, _ = _set(measures, roles, width, _length(width))
    ways = [Line("cut", at(along * n, ZERO), at(along * n + whole, whole)) for n in range(3)]
    drawn = [Line("drawn", way.start, way.end) for way in (ways[0], ways[2])]
    return cutting_pair((*cloths, *drawn), ways[1], "cut-at-45", (1, 1))


def _length(width: Exact) -> Exact:
    """How much of a set is shown."""
    return width * (3 * ROOT_TWO + 2)


def many_diamonds(measures: Measures) -> tuple[LessonStep, ...]:
    """Strips, sets, segments, large diamonds, the star, its ground."""
    width, seam, side = measures.cut(0)[0], measures.seam, measures.width
    roles = range(ROWS)
    star = _star(side)
    join = show("star-rows", *_rows(star, side))
    return (
        lesson_step("star-strips-cut", show("strips", *_strips(width)), width=Length(width)),
        lesson_step(
            "star-strips-sew",
            stepped_set(measures, roles, width),
            step=Length(width - 2 * seam),
            seam=measures.allowance,
        ),
        lesson_step("star-segments", *cut_at_45(measures, roles, width), width=Length(width)),
        lesson_step("star-rows", join, seam=measures.allowance),
        lesson_step(
            "star-points",
            show("star-points", *star[: POINTS * ROWS * ROWS]),
            seam=measures.allowance,
        ),
        lesson_step("star-ground", show("star-ground", *star)),
    )


def _strips(width: Exact) -> tuple[Item, ...]:
    items: list[Item] = []
    for place in range(ROWS):
        y = place * width * Fraction(4, 3)
        corners = outline((0, y), (width * 6, y), (width * 6, y + width), (0, y + width))
        items += [SceneCloth(place, corners), Measured(at(ZERO, y), at(ZERO, y + width), width)]
    return tuple(items)


def _rows(star: Sequence[SceneCloth], side: Exact) -> tuple[Item, ...]:
    """The rows of the third point, which has one edge level, each a little apart; beside them the whole of it."""
    first, many = 2 * ROWS * ROWS, ROWS * ROWS
    point = star[first : first + many]
    gap = side / 24
    apart = [cloth for row in range(ROWS) for cloth in _aside(point[row * ROWS : (row + 1) * ROWS], row * gap, ZERO)]
    return (*apart, *_aside(point, side * Fraction(3, 5), ZERO))
