"""Large stars of many small diamonds, their rows cut from strip sets at 45°.

The steps tell no sizes but the seam allowance: they suit stars of any number of rows, and the cutting table has theirs.
Shown is one of three rows.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction

from blockdsl.geometry import Exact, Polygon
from blockdsl.model import Filling
from blockdsl.sewing.techniques.cloth import ZERO, at, cutting_pair, outline
from blockdsl.sewing.techniques.measures import ROOT_TWO, Measures
from blockdsl.sewing.techniques.scene import Cloth, Item, Line, Measured, Picture, Press, Step
from blockdsl.units import SHAPES
from blockdsl.units.star45 import POINTS

STAR_SETS = "Sew a set for each row"
"""The title of the step to which the facts of a block add which fabrics each set takes."""
ROWS = 3
GROUND = ROWS
DRAWN = (*((i + j) % ROWS for _ in range(POINTS) for i in range(ROWS) for j in range(ROWS)), *(GROUND,) * POINTS)
"""The role of each patch of the star that is shown: the fabrics in turn from the middle outward, then the ground."""


def _set(measures: Measures, width: Exact, length: Exact) -> tuple[tuple[Cloth, ...], list[Exact]]:
    """The set pressed open, each strip begun further in by its finished width; and where its seams are."""
    cloths, seams = [], []
    band = width - 2 * measures.seam
    y: Exact = ZERO
    for place in range(ROWS):
        outer = (place == 0) + (place == ROWS - 1)
        height, x = band + outer * measures.seam, band * place
        cloths.append(Cloth(place, outline((x, y), (x + length, y), (x + length, y + height), (x, y + height))))
        y = y + height
        seams.append(y)
    return tuple(cloths), seams[:-1]


def _star(side: Exact) -> list[Cloth]:
    """The finished star, patch by patch, those of a point together."""
    fabrics = tuple(str(role) for role in (*range(ROWS), GROUND, GROUND))
    patches = SHAPES["star45"].draw(Filling("star45", fabrics, (Fraction(ROWS),)), side, side)
    return [Cloth(int(fabric), patch) for fabric, patch in patches]


def _aside(cloths: Iterable[Cloth], dx: Exact, dy: Exact) -> list[Cloth]:
    def shifted(shape: Polygon) -> Polygon:
        return tuple(at(corner.x + dx, corner.y + dy) for corner in shape)

    return [Cloth(cloth.role, shifted(cloth.outline), cloth.side) for cloth in cloths]


def many_diamonds(measures: Measures) -> tuple[Step, ...]:
    """Strips, sets, segments, large diamonds, the star, its ground."""
    width, seam, side = measures.cut(0)[0], measures.seam, measures.width
    band, along = width - 2 * seam, width * ROOT_TWO
    length = 3 * along + 2 * width
    cloths, seams = _set(measures, width, length)
    whole = ROWS * band + 2 * seam
    arrows = tuple(
        Press(at(length / 2 + band * place, y - band / 3), at(length / 2 + band * place, y + band / 3))
        for place, y in enumerate(seams)
    )
    # The first cut runs through the upper corners of all strips, where they begin.
    ways = [(at(along * n, ZERO), at(along * n + whole, whole)) for n in range(3)]
    drawn = [Line("drawn", start, end) for start, end in (ways[0], ways[2])]
    star = _star(side)
    many = ROWS * ROWS
    return (
        Step(
            "Cut strips",
            "Cut the strips of the cutting table across the fabric, after cutting its end straight (squaring up). Cut "
            "off the selvages (its firm woven edges).",
            (Picture(_strips(width), f"Strips of each fabric, all {measures.say(width)} wide."),),
        ),
        Step(
            STAR_SETS,
            "Every row of a large diamond has a strip set of its own, with that row's fabrics from the middle outward: "
            "the first begins with the fabric in the middle of the star, the second with the next one, and so on. Lay "
            "each strip right sides together on the last, but begin it further along, by a strip's width less two seam "
            f"allowances, so that the ends step down at 45°. Sew {measures.say_seam} from the edge. Press one set's "
            "allowances one way, the next set's the other way: so they lock later.",
            (Picture((*cloths, *arrows), "Three strips sewn and pressed, each begun further along than the last."),),
        ),
        Step(
            "Cut at 45°",
            "Lay the 45° line of the ruler on a seam and cut off the stepped ends. Then cut segments as wide as the "
            "strips were cut, measured square to the cut: eight of each set for one star. Hold the ruler down with the "
            "flat hand and roll away from yourself. Lay the 45° line on a seam again for each cut. What is cut now "
            "stretches: handle it gently.",
            cutting_pair((*cloths, *drawn), Line("cut", *ways[1]), "The set cut at 45 degrees", (1, 1)),
        ),
        Step(
            "Join the rows",
            "Lay the segments of a large diamond side by side, the first set's at the middle of the star. Lay two "
            f"right sides together so that their seams cross {measures.say_seam} from the edge, not at it: pin through "
            "both there. Sew the rows together, and press. Make eight large diamonds.",
            (Picture(_rows(star, side), "Three rows of three small diamonds, apart, and the large diamond."),),
        ),
        Step(
            "Join the points",
            "Sew the large diamonds in pairs, the pairs to halves, the halves to a star, always from the middle "
            f"outward. Stop {measures.say_seam} from the edge at the outer end, with a few stitches back: the ground "
            "is set in there.",
            (Picture(tuple(star[: POINTS * many]), "Eight large diamonds joined to a star."),),
        ),
        Step(
            "Set in the ground",
            "Cut the large square twice corner to corner: four triangles. Set one in at the top, the bottom and each "
            "side: sew to the dot, a seam allowance from both edges of the inner corner, stop with the needle down, "
            "turn the work until the next edges are level, and sew on. Set the squares into the corners in the same "
            "way. Press toward the ground.",
            (Picture(tuple(star), "The star with its triangles and squares."),),
        ),
    )


def _strips(width: Exact) -> tuple[Item, ...]:
    items: list[Item] = []
    for place in range(ROWS):
        y = place * width * Fraction(4, 3)
        corners = outline((0, y), (width * 6, y), (width * 6, y + width), (0, y + width))
        items += [Cloth(place, corners), Measured(at(ZERO, y), at(ZERO, y + width), width)]
    return tuple(items)


def _rows(star: Sequence[Cloth], side: Exact) -> tuple[Item, ...]:
    """The rows of the third point, which has one edge level, each a little apart; beside them the whole of it."""
    first, many = 2 * ROWS * ROWS, ROWS * ROWS
    point = star[first : first + many]
    gap = side / 24
    apart = [cloth for row in range(ROWS) for cloth in _aside(point[row * ROWS : (row + 1) * ROWS], row * gap, ZERO)]
    return (*apart, *_aside(point, side * Fraction(3, 5), ZERO))
