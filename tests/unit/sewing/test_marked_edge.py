"""To which edge a mark is pinned. Expected edges were read off drawings by hand."""

from blockdsl.geometry import Point
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.steps import Variant
from blockdsl.sewing.steps.upright import marked_edge


def _made(*corners: tuple[int, int]) -> Variant:
    outline = tuple(Point(Fraction(x), Fraction(y)) for x, y in corners)
    extent = (max(point.x for point in outline), max(point.y for point in outline))
    return Variant(1, extent, outline, (), (), (), (), ())


def test_a_rectangle_is_marked_at_its_top() -> None:
    place, way = marked_edge(_made((0, 0), (6, 0), (6, 3), (0, 3)))
    assert place == "top"
    assert not way.x
    assert way.y < 0


def test_a_rhomboid_without_an_edge_at_the_top_is_marked_at_one_that_it_has() -> None:
    """Its long edges are upright, the others fall by 45 degrees: none of the four faces the top."""
    place, way = marked_edge(_made((0, 0), (5, 5), (5, 12), (0, 7)))
    assert place == "left"
    assert way.x < 0
    assert not way.y
