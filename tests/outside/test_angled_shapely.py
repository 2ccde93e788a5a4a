"""Shapely as judge of pieces cut at an angle: each holds its patch with the allowance that shapely's own buffer draws.

The strips are cut by the virtual sewing machine, with its own trigonometry.
"""

from __future__ import annotations

from itertools import pairwise
from math import atan2, degrees
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import affinity
from shapely.geometry import Polygon

from blockdsl.facts import BlockFacts
from blockdsl.geometry import to_float
from tests.outside.virtual.angles import pieces_of_strip, standing_rectangle
from tests.outside.virtual.plan import Line, plan_of
from tests.unit.model.blocks import block

NEAR = 1e-9

SHAPES = {
    "diamond": (
        "6 x 2",
        "patch fog at 0,0 2,0 0,2",
        "patch slate at 2,0 2+2r2,0 2r2,2 0,2",
        "patch moss at 2+2r2,0 6,0 6,2 2r2,2",
    ),
    "parallelogram": (
        "6 x 2",
        "patch fog at 0,0 2,0 0,2",
        "patch slate at 2,0 5,0 3,2 0,2",
        "patch moss at 5,0 6,0 6,2 3,2",
    ),
    "trapezoid": ("6 x 2", "patch fog at 0,0 2,0 0,2", "patch slate at 2,0 4,0 6,2 0,2", "patch moss at 4,0 6,0 6,2"),
    "right trapezoid": ("6 x 2", "patch slate at 0,0 6,0 4,2 0,2", "patch fog at 6,0 6,2 4,2"),
    "60 degree triangle": (
        "4 x 3",
        "patch fog at 0,0 r3,0 0,3",
        "patch slate at r3,0 2r3,3 0,3",
        "patch moss at r3,0 4,0 4,3 2r3,3",
    ),
    "half of it": ("2 x 3", "patch slate at 0,0 r3,3 0,3", "patch fog at 0,0 2,0 2,3 r3,3"),
    "half hexagon": (
        "8 x 3",
        "patch fog at 0,0 r3,0 0,3",
        "patch slate at r3,0 3r3,0 4r3,3 0,3",
        "patch moss at 3r3,0 8,0 8,3 4r3,3",
    ),
    "hexagon": (
        "16 x 12",
        "patch fog at 0,0 2r3,0 0,6",
        "patch fog at 0,6 2r3,12 0,12",
        "patch slate at 2r3,0 6r3,0 8r3,6 6r3,12 2r3,12 0,6",
        "patch moss at 6r3,0 16,0 16,6 8r3,6",
        "patch moss at 8r3,6 16,6 16,12 6r3,12",
    ),
    "half rectangle": ("2 x 4", "patch slate at 0,0 2,0 0,4", "patch fog at 2,0 2,4 0,4"),
}


def outline(corners: object) -> Polygon:
    return Polygon([(to_float(corner.x), to_float(corner.y)) for corner in corners])  # type: ignore[attr-defined]


def pieces_of(line: Line) -> list[Any]:
    """Two pieces that lie beside each other: all others of the line are like one of them."""
    if line.strip is None:
        return standing_rectangle(line.cut, line.slant)
    return pieces_of_strip(line.strip, 3 * line.cut[1])[:2]


def holds(piece: Any, wanted: Any) -> bool:
    """Whether the piece, turned but not turned over, holds what is wanted: some edge of both lies the same way."""
    for one in _directions(wanted):
        for other in _directions(piece):
            laid = affinity.rotate(piece, one - other, origin=(0, 0))
            room = None
            for x, y in wanted.exterior.coords:
                around = laid.buffer(NEAR / 2, join_style="mitre", mitre_limit=100)
                slides = affinity.scale(affinity.translate(around, -x, -y), -1, -1, origin=(0, 0))
                room = slides if room is None else room.intersection(slides)
            if room is not None and not room.is_empty:
                placed = affinity.translate(laid, room.centroid.x, room.centroid.y)
                if placed.buffer(NEAR, join_style="mitre", mitre_limit=100).covers(wanted):
                    return True
    return False


def _directions(shape: Any) -> list[float]:
    corners = list(shape.exterior.coords)
    if not shape.exterior.is_ccw:
        corners.reverse()
    return [degrees(atan2(y - b, x - a)) for (a, b), (x, y) in pairwise(corners)]


def facts_of(shape: str, size: str, seam: str, measure: str) -> BlockFacts:
    extent, *patches = SHAPES[shape]
    wide, high = (int(part) for part in extent.split(" x "))
    number, unit = size.split()
    lines = [f"grid {extent}", *patches, f"seam {seam}", f"measure {measure}"]
    return block(*lines, size=f"{int(number) * wide}/{high} x {number} {unit}")


SETTINGS = st.sampled_from([("4 in", "1/4 in", "1/8 in"), ("3 in", "3/8 in", "1/16 in"), ("10 cm", "0.75 cm", "1 mm")])


@pytest.mark.parametrize("shape", SHAPES)
@given(SETTINGS)
@settings(max_examples=3)
def test_every_piece_cut_at_an_angle_holds_its_patch_with_the_whole_allowance(
    shape: str, chosen: tuple[str, str, str]
) -> None:
    facts = facts_of(shape, *chosen)
    seam = to_float(facts.seam)
    patch = next(each for each in facts.placed if each.fabric == "slate")
    wanted = outline(patch.outline).buffer(seam, join_style="mitre", mitre_limit=100)
    (line,) = [line for line in plan_of(facts).cutting if line.fabric == "slate"]
    assert line.piece != "template"
    for piece in pieces_of(line):
        assert holds(piece, wanted)


@pytest.mark.parametrize("shape", SHAPES)
def test_pieces_of_one_strip_do_not_lie_over_one_another(shape: str) -> None:
    (line,) = [line for line in plan_of(facts_of(shape, "4 in", "1/4 in", "1/8 in")).cutting if line.fabric == "slate"]
    one, other = pieces_of(line)
    assert one.intersection(other).area < NEAR
