"""Setting triangles, borders and whole quilts against what quilt teachers and magazines print, each with its source."""

import pytest

from blockdsl.facts import QuiltFacts
from blockdsl.geometry.fraction import Fraction as F  # noqa: N817 - they stand in tables of sizes
from blockdsl.geometry.fraction import read_fraction
from tests.unit.model.blocks import exactly
from tests.unit.model.quilts import quilt, roles

CHART = "On-point chart, lukas.is-a-geek.org/tani/chart.htm"
SETTING_MATH = "Quilty Math — https://christaquilts.com/quilty-math/"
POINT_CHART = "Piecing a Quilt on Point — phoebemoon.com/tutorials/on-point.htm (rounded to 1/4 in)"

# finished block, side square (cut twice), corner square (cut once), the exact sizes to four places, source
ON_POINT = [
    ("6", "9 3/4", "5 1/8", 9.6924, 5.0962, CHART),
    ("7", "11 1/4", "5 7/8", 11.1066, 5.8033, CHART),
    ("8", "12 5/8", "6 5/8", 12.5208, 6.5105, CHART),
    ("10", "15 1/2", "8", 15.3492, 7.9247, CHART),
    ("12", "18 1/4", "9 3/8", 18.1777, 9.3389, CHART),
    ("13", "19 3/4", "10 1/8", 19.5919, 10.0460, CHART),
    ("15", "22 1/2", "11 1/2", 22.4203, 11.4602, CHART),
    ("16", "23 7/8", "12 1/4", 23.8345, 12.1673, CHART),
    ("3", "5 1/2", "3", 5.4497, 2.9749, SETTING_MATH),
    ("4", "7", "3 3/4", 6.8640, 3.6820, SETTING_MATH),
    ("5 1/2", "9 1/8", "4 7/8", 8.9853, 4.7427, SETTING_MATH),
    ("6 1/2", "10 1/2", "5 1/2", 10.3995, 5.4498, SETTING_MATH),
    ("7 1/2", "11 7/8", "6 1/4", 11.8137, 6.1569, SETTING_MATH),
    ("8 1/2", "13 3/8", "7", 13.2279, 6.8640, SETTING_MATH),
    ("10 1/2", "16 1/8", "8 3/8", 16.0563, 8.2782, SETTING_MATH),
    ("11 1/2", "17 5/8", "9 1/8", 17.4706, 8.9853, SETTING_MATH),
    ("17", "25 1/4", "13", 25.2487, 12.8744, POINT_CHART),
    ("18", "26 3/4", "13 3/4", 26.6629, 13.5815, POINT_CHART),
]
EIGHTH = F(1, 8)


def inches(text: str) -> F:
    """`9 3/4` as a number."""
    return sum((read_fraction(part) for part in text.split()), F(0))


def square_of(facts: QuiltFacts, role: str) -> tuple[F, F]:
    """The square that triangles of a role are cut from, before rounding and on the ruler."""
    piece = next(piece for piece in facts.pieces if piece.role == role)
    assert piece.cut[0] == piece.cut[1]
    return F(float(piece.exact[0])), piece.cut[0]


@pytest.mark.parametrize(("block", "side", "corner", "exact_side", "exact_corner", "source"), ON_POINT)
def test_setting_triangles_are_as_large_as_the_charts_print_and_never_short(
    block: str, side: str, corner: str, exact_side: float, exact_corner: float, source: str
) -> None:
    facts = quilt('set on point 2 x 2 of "Four"', "fill fog", f"blocks {block} in")
    for role, printed, exact in (("side triangle", side, exact_side), ("corner triangle", corner, exact_corner)):
        ours, cut = square_of(facts, role)
        assert abs(ours - F(exact)) < F(1, 10_000), source
        assert ours <= cut < ours + EIGHTH
        assert cut <= inches(printed), source


def test_the_on_point_quilt_with_sashing_of_candy_cobblestones() -> None:
    # Candy Cobblestones - https://www.allpeoplequilt.com/quilt-patterns/quilt-throws/candy-cobblestones
    # 61 1/4 x 76 3/4; 9 in blocks, 3 x 4 on point with 2 in sashing, borders of 2 in and 5 in with corner squares:
    # 48 sashes 2 1/2 x 9 1/2; 7 squares 2 7/8 cut once for 14 triangles at the edge; 21 squares 2 1/2 (17 posts and 4
    # corners); 3 squares 14 cut twice, 10 triangles used; 2 squares 7 1/4 cut once; 4 squares 5 1/2
    facts = quilt(
        'set on point 3 x 4 of "Four"',
        "blocks 9 in",
        "fill fog",
        "sash 2 in slate posts lantern",
        "border 2 in moss corners lantern",
        "border 5 in fog corners slate",
    )
    assert facts.blocks == (("Four", 18),)
    pieces = {(piece.role, piece.ring): (piece.cut, piece.count, piece.pieces) for piece in facts.pieces}
    assert pieces["sash", 0] == ((F(5, 2), F(19, 2)), 48, 48)
    assert exactly(pieces["side triangle", 0]) == ((14, 14), 10, 3)
    assert pieces["corner triangle", 0] == ((F(29, 4), F(29, 4)), 4, 2)
    assert pieces["post", 0] == ((F(5, 2), F(5, 2)), 17, 17)
    assert pieces["border corner", 1] == ((F(5, 2), F(5, 2)), 4, 4)
    assert pieces["border corner", 2] == ((F(11, 2), F(11, 2)), 4, 4)
    # The half posts have their long edge on the straight grain, so they are quarters of a square: exactly
    # 2√2 + 1.2071 = 4.0355. The pattern cuts halves of a square of 2 7/8, whose long edge is on the bias.
    assert pieces["edge post", 0] == ((F(33, 8), F(33, 8)), 14, 4)
    width, height = (float(side) for side in facts.unfinished)
    assert abs(width - 61.25) < 0.125
    assert abs(height - 76.75) < 0.125


def borders(facts: QuiltFacts) -> list[tuple[F, F, int]]:
    """Cut width, length and how many, ring by ring, the shorter first.

    The magazines print the lengths that the borders will have. Ours are cut 2 in longer and trimmed to what the top
    measures: those 2 in are taken off here, so that the lengths can be compared.
    """
    found = [
        (piece.ring, piece.cut[0], piece.cut[1] - 2, piece.count) for piece in facts.pieces if piece.role == "border"
    ]
    assert all(piece.to_spare == 2 for piece in facts.pieces if piece.role == "border")
    return [(width, length, count) for _, width, length, count in sorted(found)]


def test_the_borders_of_striking_stars() -> None:
    # Striking Stars - https://www.allpeoplequilt.com/quilt-patterns/wall-quilts/striking-stars
    # 46 1/2 square, 8 in blocks; green stripe 2 @ 1 1/2 x 34 1/2, 2 @ 1 1/2 x 32 1/2; large floral 2 @ 6 1/2 x 34 1/2
    # and 3 @ 6 1/2 x 42 for the two that are 46 1/2 long
    facts = quilt('set straight 4 x 4 of "Four"', "blocks 8 in", "border 1 in moss", "border 6 in slate")
    assert facts.unfinished == (F(93, 2), F(93, 2))
    assert borders(facts) == [
        (F(3, 2), F(65, 2), 2),
        (F(3, 2), F(69, 2), 2),
        (F(13, 2), F(69, 2), 2),
        (F(13, 2), F(93, 2), 2),
    ]


def test_the_borders_of_garden_paths() -> None:
    # Garden Paths - https://www.allpeoplequilt.com/quilt-patterns/quilt-throws/garden-paths
    # 70 1/2 square, 10 in blocks, three borders; black floral 2 @ 4 x 59 1/2, 2 @ 4 x 52 1/2; damask 2 @ 6 x 70 1/2,
    # 2 @ 6 x 59 1/2; dark green 6 @ 1 1/2 x 42 for the first
    lines = ("border 1 in moss", "border 3 1/2 in slate", "border 5 1/2 in lantern")
    facts = quilt('set straight 5 x 5 of "Four"', "blocks 10 in", *lines)
    assert facts.unfinished == (F(141, 2), F(141, 2))
    assert exactly(borders(facts)[2:]) == [
        (4, F(105, 2), 2),
        (4, F(119, 2), 2),
        (6, F(119, 2), 2),
        (6, F(141, 2), 2),
    ]


def test_the_sashing_and_border_of_the_shoofly_stars_tabletop() -> None:
    # Shoofly Stars tabletop -
    # https://www.allpeoplequilt.com/quilt-patterns/table-runners/shoofly-stars-tabletop-quilt
    # 22 1/2 square; 8 in blocks, 2 x 2, 2 in sashing and border of one brown: 2 @ 2 1/2 x 22 1/2, 3 @ 2 1/2 x 18 1/2,
    # 2 @ 2 1/2 x 8 1/2
    facts = quilt('set straight 2 x 2 of "Four"', "blocks 8 in", "sash 2 in moss", "border 2 in moss")
    assert facts.unfinished == (F(45, 2), F(45, 2))
    brown = {cut.cut: cut.count for cut in facts.cutting if cut.fabric == "moss"}
    # the border and the strip between the rows are cut 2 in longer than printed, and trimmed to what is measured
    assert exactly(brown) == {(F(5, 2), F(45, 2) + 2): 2, (F(5, 2), F(37, 2) + 2): 3, (F(5, 2), F(17, 2)): 2}


def test_an_irish_chain_of_two_blocks_has_as_many_of_each_as_its_places_give() -> None:
    # Nine Patch with Setting Blocks, Karen Says Sew, 13 x 13 version: 85 and 84
    # http://karensayssew.blogspot.com/2010/08/nine-patch-with-setting-blocks.html
    facts = quilt('set straight 13 x 13 of "Four"', 'alternate "Chain"')
    assert dict(facts.blocks) == {"Four": 85, "Chain": 84}
    assert roles(facts) == {}
