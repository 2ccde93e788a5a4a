"""Pieces cut from strips at an angle: widths, spacing and counts worked out by hand, slanted ends and all.

With a seam s a strip for a triangle of 60° is its height + 3s, for a diamond its height + 2s: the moved edges lie s
outside, and above the tip of a triangle of 60° they meet s / sin 30° = 2s further out.
"""

from __future__ import annotations

import pytest

from blockdsl.cutting.angled import length_of, most_in, slanted, turned
from blockdsl.facts.blockfacts import BlockFacts, CutFacts
from blockdsl.facts.expect import told_size
from blockdsl.geometry import square_root
from blockdsl.geometry.fraction import Fraction, read_fraction
from blockdsl.geometry.polygon import Point
from tests.unit.model.blocks import block, cut_lines, one_error

ROOT_TWO, ROOT_THREE = square_root(Fraction(2)), square_root(Fraction(3))
LEVEL = Point(Fraction(1), Fraction(0))


def the_cut(facts: BlockFacts, piece: str) -> CutFacts:
    (cut,) = [cut for cut in facts.cutting if cut.piece == piece]
    return cut


def diamond_block(*lines: str) -> BlockFacts:
    """A diamond of 45° that is 2 in high, in a band."""
    return block(
        "grid 6 x 2",
        "patch fog at 0,0 2,0 0,2",
        "patch slate at 2,0 2+2r2,0 2r2,2 0,2",
        "patch moss at 2+2r2,0 6,0 6,2 2r2,2",
        *lines,
        size="6 x 2 in",
    )


def test_a_diamond_of_45_degrees_2_in_high_is_cut_every_2_1_2_from_a_strip_of_2_1_2() -> None:
    # https://chrisandbarbaraquilts.wordpress.com/2015/08/27/rotary-cutting-part-7/: strip 2 1/2, cuts 2 1/2 apart
    strip = the_cut(diamond_block(), "diamond").strip
    assert strip is not None
    assert (strip.form, strip.width, strip.every, strip.angles) == (
        "side by side",
        Fraction(5, 2),
        Fraction(5, 2),
        (45, 45),
    )
    assert strip.exact == (Fraction(5, 2), Fraction(5, 2))


def test_ten_diamonds_come_out_of_40_in_and_their_slanted_ends_are_counted() -> None:
    # along the strip each takes 2 1/2 × √2 = 3.5355 in, and the slanted end 2 1/2 in: ten take 37.855 in, eleven 41.39
    way = slanted(Fraction(5, 2), Fraction(5, 2), 45, "rising", LEVEL)
    assert length_of(way, 10) == Fraction(5, 2) + 25 * ROOT_TWO
    assert most_in(way, Fraction(40)) == 10
    # without the slanted end eleven would seem to fit: 38.891 in
    assert 11 * way.pitch < 40


def test_a_triangle_of_60_degrees_3_in_high_is_cut_from_a_strip_of_3_3_4() -> None:
    # https://chrisandbarbaraquilts.wordpress.com/2015/08/20/rotary-cutting-part-6/: height + 3/4
    facts = block(
        "grid 4 x 3",
        "patch fog at 0,0 r3,0 0,3",
        "patch slate at r3,0 2r3,3 0,3",
        "patch fog at r3,0 4,0 4,3 2r3,3",
        size="4 x 3 in",
    )
    cut = next(cut for cut in facts.cutting if cut.fabric == "slate")
    assert cut.strip is not None
    assert (cut.piece, cut.strip.form, cut.strip.width, cut.strip.every) == (
        "triangle",
        "turned",
        Fraction(15, 4),
        None,
    )
    assert cut.strip.exact[0] == Fraction(15, 4)


def test_seventeen_triangles_of_60_degrees_come_out_of_40_in() -> None:
    # edges of 3 3/4 × 2/√3 = 4.3301 in: n triangles that take turns cover (n + 1) halves of one, 17 of them 38.971 in
    way = turned(Fraction(15, 4), None, (60, 60), None, LEVEL)
    assert length_of(way, 17) == 9 * way.run
    assert length_of(way, 18) == Fraction(19, 2) * way.run
    assert most_in(way, Fraction(40)) == 17


def test_halves_of_a_60_degree_triangle_take_two_to_a_rectangle() -> None:
    # the longer leg is the strip's width: two halves cover width / tan 60°, and one alone no less
    way = turned(Fraction(4), None, (60, 90), "rising", LEVEL)
    assert length_of(way, 1) == length_of(way, 2) == 4 / ROOT_THREE
    assert length_of(way, 5) == length_of(way, 6) == 12 / ROOT_THREE


def test_trapezoids_that_take_turns_share_their_slanted_ends() -> None:
    # strip 2 in, longer edge 10 1/4, shorter 6 1/4, of 45°: one takes 10 1/4, two 10 1/4 + 6 1/4 + 2, three 26 3/4
    way = turned(Fraction(2), Fraction(41, 4), (45, 45), None, LEVEL)
    assert [length_of(way, count) for count in (1, 2, 3)] == [Fraction(41, 4), Fraction(37, 2), Fraction(107, 4)]
    assert most_in(way, Fraction(40)) == 4
    assert length_of(way, 4) == 35


def test_a_hexagon_of_2_3_4_in_from_flat_to_flat_is_a_diamond_without_its_points() -> None:
    # https://slaneyquiltingstudio.com/how-to-cut-the-hexagon-shape/: strip 3 1/4
    facts = block(
        "grid 16 x 11",
        "patch fog at 0,0 11/6r3,0 0,11/2",
        "patch fog at 0,11/2 11/6r3,11 0,11",
        "patch slate at 11/6r3,0 11/2r3,0 22/3r3,11/2 11/2r3,11 11/6r3,11 0,11/2",
        "patch fog at 11/2r3,0 16,0 16,11/2 22/3r3,11/2",
        "patch fog at 22/3r3,11/2 16,11/2 16,11 11/2r3,11",
        size="4 x 2 3/4 in",
    )
    strip = the_cut(facts, "hexagon").strip
    assert strip is not None
    assert (strip.form, strip.angles) == ("points off", (60, 60))
    assert (strip.width, strip.every, strip.across) == (Fraction(13, 4), Fraction(13, 4), Fraction(13, 4))
    # 3 1/4 / sin 60° = 3.7528 in each, the slanted end 3 1/4 / tan 60° = 1.8764: ten take 39.404 in, eleven 43.16
    assert strip.each == 10


def test_a_right_trapezoid_has_one_end_square() -> None:
    # a band 2 in wide, 5 in along its longer edge: 5 + 1/4 (1 + (1 + √2)) = 5.8536 with its seams
    facts = block("grid 5 x 2", "patch fog at 0,0 5,0 3,2 0,2", "patch slate at 5,0 5,2 3,2", size="5 x 2 in")
    cut = the_cut(facts, "trapezoid")
    assert cut.strip is not None
    assert (cut.strip.form, cut.strip.angles, cut.strip.slant) == ("turned", (45, 90), "rising")
    assert (cut.strip.width, cut.strip.every) == (Fraction(5, 2), Fraction(47, 8))
    assert cut.strip.exact[1] == 5 + (2 + ROOT_TWO) / 4


def test_the_mirror_image_of_a_parallelogram_is_cut_at_the_other_slant() -> None:
    facts = block(
        "grid 8 x 4",
        "patch fog at 0,0 2,0 0,2", "patch slate at 2,0 6,0 4,2 0,2", "patch fog at 6,0 8,0 8,2 4,2",
        "patch fog at 0,2 2,4 0,4", "patch slate at 0,2 4,2 6,4 2,4", "patch fog at 4,2 8,2 8,4 6,4",
        size="8 x 4 in",
    )  # fmt: skip
    slants = {cut.label: cut.strip.slant for cut in facts.cutting if cut.piece == "parallelogram" and cut.strip}
    assert slants == {"B": "rising", "Br": "falling"}


def test_other_angles_are_cut_by_template_in_a_strip_between_two_edges() -> None:
    # a tumbler 4 in high, 3 in and 2 in wide: the strip is 4 1/2 in wide
    facts = block(
        "grid 3 x 4", "patch fog at 1/2,0 5/2,0 3,4 0,4",
        "patch slate at 0,0 1/2,0 0,4", "patch slate at 5/2,0 3,0 3,4",
        size="3 x 4 in",
    )  # fmt: skip
    cut = the_cut(facts, "template")
    assert cut.strip is not None
    assert (cut.strip.form, cut.strip.width, cut.strip.angles) == ("template", Fraction(9, 2), ())


def test_a_kite_has_no_parallel_edges_and_no_strip() -> None:
    facts = block(
        "grid 4 x 4", "patch fog at 0,0 4,0 3,3 0,4", "patch slate at 4,0 4,4 0,4 3,3", size="4 in",
    )  # fmt: skip
    cut = next(cut for cut in facts.cutting if cut.fabric == "fog")
    assert (cut.piece, cut.strip) == ("template", None)


def test_more_pieces_than_one_strip_gives_take_another() -> None:
    band = ["patch fog at 0,0 2,0 0,2", "patch slate at 2,0 2+2r2,0 2r2,2 0,2", "patch moss at 2+2r2,0 6,0 6,2 2r2,2"]
    unit = "\n".join(["unit band", "  grid 6 x 2", *(f"  {line}" for line in band)])
    rows = ["row band band"] * 6
    cut = the_cut(block(*rows, size="12 x 12 in", above=unit), "diamond")
    assert cut.strip is not None
    assert (cut.count, cut.strip.each, cut.strip.strips) == (12, 10, 2)


def test_a_piece_that_is_longer_than_the_fabric_is_wide_is_told_by_its_cloth_alone() -> None:
    facts = block("grid 25 x 1", "patch fog at 0,0 25,0 24,1 0,1", "patch slate at 25,0 25,1 24,1", size="50 x 2 in")
    cut = the_cut(facts, "trapezoid")
    assert cut.strip is None
    assert cut.cut[0] == Fraction(5, 2)


def test_a_rounded_strip_is_never_narrower_than_the_exact_one() -> None:
    for size in ("6 x 2 in", "5 1/4 x 1 3/4 in", "15 x 5 cm", "21.9 x 7.3 cm"):
        facts = block(
            "grid 6 x 2",
            "patch fog at 0,0 2,0 0,2",
            "patch slate at 2,0 2+2r2,0 2r2,2 0,2",
            "patch moss at 2+2r2,0 6,0 6,2 2r2,2",
            size=size,
        )
        for cut in facts.cutting:
            if cut.strip is not None:
                for side, exact in zip(told_size(cut), cut.strip.exact, strict=True):
                    assert exact <= side < exact + facts.measure


def test_a_designer_may_expect_what_comes_from_strips() -> None:
    diamond_block("expect cut slate 1 diamonds 2 1/2")
    assert one_error(
        "grid 5 x 2", "patch fog at 0,0 5,0 3,2 0,2", "patch slate at 5,0 5,2 3,2",
        "expect cut fog 1 trapezoids 2 1/2 x 6", size="5 x 2 in",
    ).help == "of `fog` the block cuts 1 trapezoid 2 1/2 x 5 7/8"  # fmt: skip


# --- half rectangles -------------------------------------------------------------------------------


def side_triangles(*lines: str, size: str = "4 in") -> BlockFacts:
    """A triangle in a square: a tall one in the middle, two halves of rectangles at its sides."""
    rows = ("patch fog at 0,0 2,0 0,4", "patch slate at 2,0 4,4 0,4", "patch fog at 2,0 4,0 4,4")
    return block("grid 4 x 4", *rows, *lines, size=size)


def test_the_side_triangles_of_a_4_in_unit_need_legs_of_5_309_and_2_655() -> None:
    # with d = u√5/2 the long edge: u + 1/4 (1 + (u + d)/(u/2)) = u + (3 + √5)/4 = u + 1.3090, u/2 + 0.6545 likewise
    ours = [cut for cut in side_triangles().cutting if cut.fabric == "fog"]
    root_five = square_root(Fraction(5))
    assert [cut.exact for cut in ours] == [(2 + (3 + root_five) / 8, 4 + (3 + root_five) / 4)] * 2
    assert [(cut.piece, cut.cut, cut.subcut) for cut in ours] == [
        ("rectangle", (Fraction(11, 4), Fraction(43, 8)), "once")
    ] * 2


def test_a_side_triangle_and_its_mirror_image_are_cut_the_two_ways() -> None:
    # the left one has its long edge from bottom left to top right: so is the cut in a rectangle on its short side
    slants = {cut.label: cut.slant for cut in side_triangles().cutting if cut.fabric == "fog"}
    assert slants == {"A": "rising", "Ar": "falling"}


@pytest.mark.parametrize("size", ["4 in", "3 1/4 in", "6 in", "10 cm", "7.3 cm"])
def test_a_rounded_rectangle_leaves_the_whole_seam_on_the_slanted_cut(size: str) -> None:
    # The finished triangle lies a seam inside both legs: its two far corners must be a seam inside the cut as well.
    facts = side_triangles(size=size)
    seam, unit = facts.seam, facts.finished[0]
    for cut in (cut for cut in facts.cutting if cut.fabric == "fog"):
        short, long = cut.cut
        for x, y in ((seam + unit / 2, seam), (seam, seam + unit)):
            # from the line x/short + y/long = 1; both sides squared, so that no root is needed
            inside = short * long - x * long - y * short
            assert inside > 0
            assert inside * inside >= seam * seam * (short * short + long * long)


def test_the_published_shortcut_leaves_less_than_the_seam() -> None:
    # (u + 1 1/4) × (u/2 + 5/8), https://chrisandbarbaraquilts.wordpress.com/2015/09/03/rotary-cutting-part-8/
    short, long, seam = Fraction(21, 8), Fraction(21, 4), Fraction(1, 4)
    inside = short * long - (seam + 2) * long - seam * short
    # 1.3125 / 5.8697 = 0.2236
    assert read_fraction("0.2236") ** 2 < inside * inside / (short * short + long * long) < read_fraction("0.2237") ** 2
    assert cut_lines(side_triangles(), "fog")[0] == "fog: 1 rectangle 2 3/4 x 5 3/8 once for 2, 1 spare"
