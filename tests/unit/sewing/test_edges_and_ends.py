"""Edges, corners and ends of seams, each read off a drawing by hand."""

from __future__ import annotations

import pytest

from blockdsl.geometry import Point, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.order import Joined
from blockdsl.sewing.order.subunits import subunits
from blockdsl.sewing.pressing_frames import Frames
from blockdsl.sewing.pressing_seams import UnitSeams
from blockdsl.sewing.steps import StepSeam
from blockdsl.sewing.steps.edges import edge_kind
from blockdsl.sewing.steps.landmarks import _form
from blockdsl.sewing.steps.plan import across
from tests.unit.sewing.order_sample import drawn, order_of


def shape(*corners: tuple[int, int]) -> Polygon:
    return tuple(Point(Fraction(x), Fraction(y)) for x, y in corners)


TRAPEZOID = (0, 0), (6, 0), (4, 2), (2, 2)
RHOMBOID = (0, 0), (4, 0), (6, 2), (2, 2)
RIGHT_TRAPEZOID = (0, 0), (6, 0), (4, 2), (0, 2)


@pytest.mark.parametrize(
    ("corners", "edge", "kind"),
    [
        (TRAPEZOID, ((0, 0), (6, 0)), "long"),
        (TRAPEZOID, ((4, 2), (2, 2)), "short"),
        (TRAPEZOID, ((6, 0), (4, 2)), ""),  # a leg: its partner lies another way
        (RHOMBOID, ((0, 0), (4, 0)), ""),  # both pairs lie the same way, so neither names one edge
        (RHOMBOID, ((4, 0), (6, 2)), ""),
    ],
)
def test_only_the_two_edges_of_a_trapezoid_that_lie_the_same_way_are_called_long_and_short(
    corners: tuple[tuple[int, int], ...], edge: tuple[tuple[int, int], tuple[int, int]], kind: str
) -> None:
    assert edge_kind(shape(*corners), shape(*edge)) == kind


def test_a_right_trapezoid_has_one_sharp_corner_and_a_square_none() -> None:
    """45 degrees at the right of its long edge; its other corners have 90, 90 and 135."""
    (sharp,) = [mark for mark in _form(shape(*RIGHT_TRAPEZOID)) if "sharp" in mark.kind]
    assert (sharp.kind, sharp.places) == ("sharp-corner", ("upper-right",))
    assert [mark for mark in _form(shape((0, 0), (4, 0), (4, 4), (0, 4))) if "sharp" in mark.kind] == []


@pytest.mark.parametrize(
    ("line", "over", "side"),
    [
        # From the upper left down to the middle and up to the upper right: what is set into the V lies above.
        (((0, 0), (2, 2), (4, 0)), (1, -1), "top"),
        (((0, 0), (2, 2), (4, 0)), (-1, 1), "bottom"),
        # The same V on its side, its second corner left of its first: what is set into it lies at the right.
        (((4, 0), (2, 2), (4, 4)), (1, 1), "right"),
        (((4, 0), (2, 2), (4, 4)), (-1, -1), "left"),
    ],
)
def test_what_is_set_into_a_v_lies_where_the_v_is_open(
    line: tuple[tuple[int, int], ...], over: tuple[int, int], side: str
) -> None:
    (way,) = shape(over)
    assert across(StepSeam(shape(*line), way, "set-in", None, None, (0, 1), 0, way, 0, 0)) == side


def test_a_seam_that_turns_ends_at_the_outline_and_not_at_its_corner() -> None:
    """A square set into an L: its seam runs down the square's right edge, turns, and runs along its bottom edge."""
    grid, square = "grid 4 x 4", "patch fog at 0,0 2,0 2,2 0,2"
    design = drawn(grid, square, "patch slate at 2,0 4,0 4,4 0,4 0,2 2,2", size="4 in")
    order = order_of(design)
    assert isinstance(order, Joined)
    seams = UnitSeams(design, Frames(subunits(order, design)))
    ends = {(end.place, end.inward) for end in seams.ends(0)}
    assert ends == {shape((2, 0), (0, 2)), shape((0, 2), (2, 0))}
