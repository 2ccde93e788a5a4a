"""What a ruler measures in a block: the two sides of rectangles that lie level, whichever corner comes first."""

import pytest

from blockdsl.analysis.ruler import _is_upright
from blockdsl.geometry import Point
from blockdsl.geometry.fraction import Fraction


@pytest.mark.parametrize(
    ("corners", "upright"),
    [
        (((0, 0), (6, 0), (6, 4), (0, 4)), True),
        (((0, 4), (0, 0), (6, 0), (6, 4)), True),
        # Three square sides and one that slants, first the last of them and then the first.
        (((0, 4), (0, 0), (6, 0), (6, 2)), False),
        (((0, 4), (1, 0), (6, 0), (6, 4)), False),
        # A square on its corner.
        (((2, 0), (4, 2), (2, 4), (0, 2)), False),
    ],
)
def test_a_rectangle_that_lies_level_is_told_from_other_shapes_of_four_sides(
    corners: tuple[tuple[int, int], ...], *, upright: bool
) -> None:
    assert _is_upright(tuple(Point(Fraction(x), Fraction(y)) for x, y in corners)) == upright
