"""Curved patches judged by Shapely, whose circles are polygons of many sides, and in the printed PDF."""

from __future__ import annotations

from io import BytesIO
from itertools import pairwise
from math import hypot

import numpy as np
import pytest
import shapely
from pypdf import PdfReader

from blockdsl.export.pdf import write_pdf
from blockdsl.fullsize.templates import template_pages
from blockdsl.geometry import Point, to_float
from blockdsl.geometry.arc import Curved, CurvedArea
from blockdsl.geometry.arc_offset import offset_curved
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.pictures.arcs import outline_places
from blockdsl.shapes import SHAPES
from tests.outside.test_templates_print import lines_of
from tests.unit.model.blocks import block_of

F = Fraction
PI = 3.141592653589793
SIDES = 1 << 14
TWENTIETH_PT = 0.05 * 72 / 25.4


def disc(centre: Point, radius: float) -> shapely.Polygon:
    """A circle as a polygon of very many sides, as large as the circle."""
    grown = (2 * PI / SIDES / shapely.Point(0, 0).buffer(1, quad_segs=SIDES // 4).area * SIDES / 2) ** 0.5
    return shapely.Point(to_float(centre.x), to_float(centre.y)).buffer(radius * grown, quad_segs=SIDES // 4)


def floats(area: CurvedArea) -> float:
    return to_float(area.straight) + to_float(area.round) * PI


def shapes() -> list[Curved]:
    """Curved patches of every kind, in a box of 6."""
    found: list[Curved] = []
    for filling in (
        ShapeUse("curve", ("g", "p"), (F(2, 3),)),
        ShapeUse("fan", ("g", "a", "b", "h"), (F(3, 4), F(1, 4))),
        ShapeUse("fan", ("g", "a", "b", "c"), (F(7, 8), F(0))),
        ShapeUse("fan", ("g", *"abcdef", "h"), (F(3, 4), F(1, 3))),
    ):
        bend = SHAPES[filling.shape].bend
        assert bend is not None
        found += [curved for curved in bend(filling, F(6), F(6)) if curved is not None]
    return found


def judged(outline: Curved) -> shapely.Polygon:
    """The corners' polygon with a circle cut off or put on at each bend."""
    whole = shapely.Polygon([(to_float(x), to_float(y)) for x, y in outline.corners])
    for start, end, bend in outline.sides():
        if bend is None:
            continue
        ends = [(to_float(place.x), to_float(place.y)) for place in (start, end)]
        centre = (to_float(bend.centre.x), to_float(bend.centre.y))
        far = [(c + 3 * (a - c), d + 3 * (b - d)) for (a, b), (c, d) in ((each, centre) for each in ends)]
        wedge = shapely.Polygon([centre, far[0], far[1]])
        round_part = disc(bend.centre, to_float(bend.radius)).intersection(wedge)
        sliver = round_part.difference(shapely.Polygon([centre, *ends]))
        whole = whole.difference(sliver) if bend.hollow else whole.union(sliver)
    return whole


@pytest.mark.parametrize("outline", shapes())
def test_shapely_finds_the_same_area_within_a_millionth(outline: Curved) -> None:
    assert judged(outline).area == pytest.approx(floats(outline.area), rel=1e-6)


def test_a_quarter_circle_has_the_area_of_the_formula_within_a_milliardth() -> None:
    pie = shapes()[1]
    assert floats(pie.area) == pytest.approx(PI * 16 / 4, rel=1e-9)


@pytest.mark.parametrize("outline", shapes())
def test_the_cutting_line_lies_the_allowance_outside_everywhere(outline: Curved) -> None:
    """Shapely's own offset of a fine outline, with sharp corners; it leaves out corners flatter than a hundredth."""
    fine = shapely.Polygon(outline_places(outline, 72.0))
    cut = shapely.Polygon(outline_places(offset_curved(outline, F(1, 4)), 72.0))
    assert cut.is_valid
    assert cut.covers(fine)
    assert fine.exterior.distance(cut.exterior) == pytest.approx(0.25, abs=2e-4)
    grown = fine.buffer(0.25, join_style="mitre", mitre_limit=1000)
    assert grown.symmetric_difference(cut).area < 2e-3 * cut.exterior.length


def test_the_radii_of_printed_templates_are_right_to_a_twentieth_of_a_millimetre() -> None:
    """A unit of 4 in with a radius of 3 in: both are sewn at 3 in, and cut at 2 3/4 in and at 3 1/4 in."""
    facts = block_of(
        'fabric fog "Fog" #dfe3e0\nfabric slate "Slate" #3a4750\n'
        'block "One"\nsize 4 in\nrow (curve slate in fog radius 3/4)\n'
    )
    pages = PdfReader(BytesIO(write_pdf(template_pages(facts, paper="letter")))).pages
    found = sorted(_circle(ring) for page in pages for ring in lines_of(page) if len(ring) > 40)
    assert [radius for radius, _ in found] == pytest.approx([2.75 * 72, 3 * 72, 3 * 72, 3.25 * 72], abs=TWENTIETH_PT)
    assert max(off for _, off in found) < TWENTIETH_PT


def _circle(ring: list[tuple[float, float]]) -> tuple[float, float]:
    """The circle through the fine steps of an outline: its radius, and how far a step lies from it at most."""
    fine = [b for a, b in pairwise(ring) if hypot(b[0] - a[0], b[1] - a[1]) < 12][1:]
    # x² + y² = 2ax + 2by + c, by least squares
    table = np.array([(2 * x, 2 * y, 1) for x, y in fine])
    (a, b, c), *_ = np.linalg.lstsq(table, np.array([x * x + y * y for x, y in fine]), rcond=None)
    radius = float((c + a * a + b * b) ** 0.5)
    return radius, max(abs(hypot(x - a, y - b) - radius) for x, y in fine)
