"""Stars of 45° diamonds, rows of 60° triangles, honeycombs: where their corners lie, worked out by hand."""

from __future__ import annotations

from collections import Counter

import pytest

from blockdsl.facts import BlockFacts
from blockdsl.geometry import Exact, Point, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import area, bounding_box, dot, edges, step
from blockdsl.shapes import SHAPES
from tests.unit.model.blocks import block, cloth_at, corners, errors, exactly, one_error, warnings
from tests.unit.wording.said import texts

ROOT_2, ROOT_3 = square_root(2), square_root(3)
STAR = "star45 points slate lantern ground fog"


def shapes(facts: BlockFacts) -> list[tuple[str, str, int]]:
    return [(patch.shape, patch.fabric, patch.count) for patch in facts.patches]


def sides(facts: BlockFacts, number: int) -> list[Exact]:
    outline = facts.placed[number].outline
    return [square_root(dot(step(a, b), step(a, b))) for a, b in edges(outline)]


# --- eight-point stars --------------------------------------------------------------------------------


def test_a_star_has_eight_diamonds_four_triangles_and_four_squares() -> None:
    found = Counter({shape: 0 for shape, _, _ in shapes(block(f"row ({STAR})"))})
    for shape, _, count in shapes(block(f"row ({STAR})")):
        found[shape] += count
    assert found == {"diamond": 8, "quarter-square triangle": 4, "square": 4}


def test_the_side_of_a_diamond_times_3_41_is_the_block() -> None:
    # Formulas for Quilters — https://karencombs.com/page.php?ID=31:
    # diamond side × 3.41 = block; exactly 2 + √2 = 3.4142
    facts = block(f"row ({STAR})", size="12 in")
    for side in sides(facts, 0):
        assert side * (2 + ROOT_2) == 12
        assert abs(float(side) * 3.41 - 12) < 0.02


def test_a_corner_square_is_as_wide_as_a_diamond_and_the_triangles_fill_the_rest_of_the_edge() -> None:
    # 8 in: 8(1 - √2/2) = 8 - 4√2 = 2.3431; between two corners 8 - 2(8 - 4√2) = 8√2 - 8 = 3.3137
    facts = block(f"row ({STAR})", size="8 in")
    by_shape = {patch.shape: patch.finished for patch in facts.patches if patch.fabric == "fog"}
    assert by_shape["square"] == (8 - 4 * ROOT_2, 8 - 4 * ROOT_2)
    assert by_shape["quarter-square triangle"] == (8 * ROOT_2 - 8, 4 * ROOT_2 - 4)


def test_the_points_of_a_star_take_their_fabrics_in_turn_clockwise_from_the_one_right_of_the_top() -> None:
    # The tips of a 12 in star lie at 12(1 - √2/2) = 3.51 and 8.49 on each edge; 1/8 in inside of them:
    facts = block("row (star45 points fog slate lantern moss ground fog)")
    tips = "8.4,0.5 11.5,3.6 11.5,8.4 8.4,11.5 3.6,11.5 0.5,8.4 0.5,3.6 3.6,0.5"
    found = [cloth_at(facts, *tip.split(",")) for tip in tips.split()]
    assert found == ["fog", "slate", "lantern", "moss"] * 2


def test_corner_squares_may_have_a_fabric_of_their_own() -> None:
    assert corners(block("row (star45 points slate ground fog corners moss)")) == "moss moss moss moss"


def test_rows_of_small_diamonds_take_their_fabrics_from_the_middle_outward() -> None:
    # Three rows of three: 1, 2, 3, 2 and 1 diamonds at the five distances from the middle, in each of eight points.
    facts = block("row (star45 points slate lantern moss rows 3 ground fog)")
    counts = {fabric: count for shape, fabric, count in shapes(facts) if shape == "diamond"}
    assert counts == {"slate": 8 * (1 + 2), "lantern": 8 * (2 + 1), "moss": 8 * 3}
    # A small diamond's side is 12(1 - √2/2)/3 = 1.17; along the middle of the first point, 22.5° from upright, lie the
    # first, third and fifth, their middles 1, 3 and 5 times 1.17 · cos 22.5° = 1.08 from the star's.
    found = [cloth_at(facts, *place.split(",")) for place in ("6.4,5", "7.2,3", "8.1,1")]
    assert found == ["slate", "moss", "lantern"]


def test_a_split_star_has_sixteen_triangles_that_meet_in_the_middle() -> None:
    facts = block("row (star45 split slate lantern ground fog)")
    middle = Point(Fraction(6), Fraction(6))
    points = [patch for patch in facts.placed if patch.fabric != "fog"]
    assert len(points) == 16
    assert all(middle in patch.outline for patch in points)


def test_a_star_stands_in_a_square_only() -> None:
    assert one_error(f"row ({STAR})", size="12 x 6 in").code == "unit-does-not-fit"


def test_rows_of_small_diamonds_come_out_of_a_strip_set_for_each_row() -> None:
    # 16 in, three rows: a small diamond's side is 16(1 - √2/2)/3 = 1.5621, its height that × √1/2 = 1.1046 and with two
    # seams 1.6046: strips of 1 5/8. Eight segments of 1 5/8, along the strip 1 5/8 × √2 = 2.2981 each, and once 1 5/8
    # for the slanted end: 20.0098; squaring up takes (1 + 2 × 1/2) × √2 = 2.8284 besides: 22.8382, so 22 7/8. Each
    # fabric has one strip in each of the three sets.
    facts = block("row (star45 points slate lantern moss rows 3 ground fog)", "make star45 as strip set", size="16 in")
    strips = [cut for cut in facts.cutting if cut.piece == "strip"]
    assert {cut.fabric for cut in strips} == {"slate", "lantern", "moss"}
    for cut in strips:
        assert exactly([cut.cut, cut.count, cut.yields]) == [(Fraction(13, 8), Fraction(183, 8)), 3, 24]
        assert cut.exact[0] == (16 - 8 * ROOT_2) / 3 * ROOT_2 / 2 + Fraction(1, 2)
    ground = sorted((cut.cut[0], cut.count) for cut in facts.cutting if cut.fabric == "fog")
    # 16(1 - √2/2) + 1/2 = 5.1863; 16(√2 - 1) + (1 + √2)/2 = 7.8345
    assert ground == [(Fraction(21, 4), 4), (Fraction(63, 8), 1)]


def test_strips_of_a_set_are_no_longer_than_the_fabric_is_wide() -> None:
    # Of 40 in usable, strips of 1 5/8 give 14 segments: 14 × 2.2981 + 1.625 + (1 + 4 × 1/2) × √2 = 38.0408; 15 would
    # take 40.3389. Three stars have 24 segments of each row, so ten are left: 10 × 2.2981 + 1.625 + 2.5 × √2 = 28.1415.
    row = "row " + " ".join(["(star45 points slate lantern moss rows 3 ground fog)"] * 3)
    facts = block(row, "make star45 as strip set", size="48 x 16 in")
    strips = {cut.cut[1]: (cut.count, cut.yields) for cut in facts.cutting if cut.fabric == "slate"}
    assert strips == {Fraction(305, 8): (3, 42), Fraction(113, 4): (3, 30)}


def test_a_star_of_single_diamonds_has_no_rows_to_sew_as_strips() -> None:
    problem = one_error(f"row ({STAR})", "make star45 as strip set")
    assert problem.code == "method-does-not-fit"
    assert "`cut patches`, `foundation`" in problem.message


def test_a_seam_stops_short_where_something_is_set_in_later() -> None:
    # The seam of a pair ends where the triangle's seam turns; the seam of two pairs where a corner square's does.
    facts = block(f"row ({STAR})", size="8 in")
    first, second, _ = texts(facts)
    assert "Stop at the dot at the top end; backstitch." in first
    assert "Stop at the dot at the upper right end." in second  # step 1 says to backstitch at dots


# --- rows of triangles --------------------------------------------------------------------------------


def test_whole_triangles_of_a_row_are_equilateral_and_as_high_as_the_row() -> None:
    # Three rows in 9 in: 3 in high, sides 2 · 3/√3 = 2√3 = 3.46
    facts = block("row (triangles60 slate fog rows 3)", size="12 x 9 in")
    whole = [number for number, patch in enumerate(facts.placed) if len(patch.outline) == 3 and patch.fabric == "slate"]
    equal = [number for number in whole if sides(facts, number) == [2 * ROOT_3] * 3]
    assert len(equal) >= 3 * 2
    for number in equal:
        _, top, _, bottom = bounding_box(facts.placed[number].outline)
        assert bottom - top == 3


def test_with_two_fabrics_all_triangles_that_point_up_are_of_the_first() -> None:
    facts = block("row (triangles60 slate fog rows 3)", size="12 x 9 in")
    for patch in facts.placed:
        xs_by_level = Counter(corner.y for corner in patch.outline)
        left, top, right, bottom = bounding_box(patch.outline)
        if len(patch.outline) == 3 and left > 0 and right < 12:
            assert patch.fabric == ("slate" if xs_by_level[bottom] == 2 else "fog")
            assert bottom - top == 3


@pytest.mark.parametrize(
    ("size", "rows"), [("12 in", 1), ("12 in", 4), ("7 x 9 in", 2), ("10 x 3 in", 3), ("1 x 9 in", 2)]
)
def test_a_row_of_triangles_is_trimmed_straight_and_no_sliver_is_left_at_its_ends(size: str, rows: int) -> None:
    # Steps along a row are h/√3; what is cut off at the ends leaves at least half a step.
    facts = block(f"row (triangles60 slate fog rows {rows})", size=size)
    width, height = facts.finished
    pitch = height / rows / ROOT_3
    at_the_edge = [patch for patch in facts.placed if bounding_box(patch.outline)[0] == 0]
    assert sum(bounding_box(patch.outline)[2] for patch in at_the_edge) > 0
    assert all(bounding_box(patch.outline)[2] >= min(pitch / 2, width) for patch in at_the_edge)


# --- honeycombs -----------------------------------------------------------------------------------------


def test_a_hexagon_is_1_7321_of_its_sides_from_flat_to_flat() -> None:
    # Hexagons are named by their side: flat to flat = side × 1.7321, exactly √3 (softsolder.com, 2020/07/27,
    # Quilting hexagon template). Four across 12 in are 3 in from flat to flat, so that the side is 3/√3 = √3.
    facts = block("row (hexagons slate fog lantern across 4)")
    # Rows are 3/2 √3 = 2.6 in apart and reach √3 up and down, so three of them are whole: 3 and two halves in the
    # middle one, 4 in its neighbours.
    whole = [number for number, patch in enumerate(facts.placed) if len(patch.outline) == 6]
    assert len(whole) == 11
    for number in whole:
        assert sides(facts, number) == [ROOT_3] * 6
        left, top, right, bottom = bounding_box(facts.placed[number].outline)
        assert right - left == 3
        assert bottom - top == 2 * ROOT_3


def test_with_three_fabrics_no_two_hexagons_alike_touch() -> None:
    facts = block("row (hexagons slate fog lantern across 5)")
    by_side: dict[frozenset[Point], list[str]] = {}
    for patch in facts.placed:
        for ends in edges(patch.outline):
            by_side.setdefault(frozenset(ends), []).append(patch.fabric)
    shared = [fabrics for fabrics in by_side.values() if len(fabrics) == 2]
    assert len(shared) > 40
    assert all(one != other for one, other in shared)


@pytest.mark.parametrize("across", [4, 5, 7])
def test_rings_go_round_one_hexagon_in_the_middle(across: int) -> None:
    # One in the middle, six round it, twelve round those: all of them whole where they are far from the edges.
    facts = block(f"row (hexagons rings slate lantern fog moss across {across})")
    assert cloth_at(facts, 6, 6) == "slate"
    hexagon = [patch for patch in facts.placed if patch.fabric == "slate"]
    assert len(hexagon) == 1
    assert sum(patch.fabric == "lantern" for patch in facts.placed) == 6
    assert area(hexagon[0].outline) * 6 == sum(area(p.outline) for p in facts.placed if p.fabric == "lantern")


def test_half_hexagons_are_the_hexagons_parted_from_point_to_point() -> None:
    whole, halves = (block(f"row (hexagons slate fog lantern across 4{word})") for word in ("", " halves"))
    assert dict(whole.area_by_fabric) == dict(halves.area_by_fabric)
    assert {len(patch.outline) for patch in halves.placed} <= {3, 4}
    assert any(patch.shape == "trapezoid" for patch in halves.patches)


@pytest.mark.parametrize("size", ["12 in", "12 x 5 in", "6 x 13 in", "9 x 1 in"])
def test_a_honeycomb_shows_at_least_half_of_what_it_could_at_top_and_bottom(size: str) -> None:
    # A row shows at most 1 1/2 sides beyond the row before it; the field is set so that it is at least 3/4 of one.
    facts = block("row (hexagons slate fog lantern across 3)", size=size)
    width, height = facts.finished
    side = width / 3 / ROOT_3
    at_the_top = [patch for patch in facts.placed if bounding_box(patch.outline)[1] == 0]
    reach = max(bounding_box(patch.outline)[3] for patch in at_the_top)
    assert reach >= min(side * Fraction(3, 4), height)


def test_a_box_is_three_equal_diamonds_that_meet_in_the_middle_of_a_hexagon() -> None:
    # Four across 12 in: sides √3; a hexagon's middle lies in the middle of the block.
    facts = block("row (cubes fog lantern slate across 4)")
    middle = Point(Fraction(6), Fraction(6))
    three = [number for number, patch in enumerate(facts.placed) if middle in patch.outline]
    assert [facts.placed[number].fabric for number in three] == ["fog", "lantern", "slate"]
    assert all(sides(facts, number) == [ROOT_3] * 4 for number in three)
    top, left, right = (bounding_box(facts.placed[number].outline) for number in three)
    assert top[3] == 6
    assert left[2] == right[0] == 6


# --- words ----------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "words",
    [
        "star45 slate ground fog",
        "star45 points ground fog",
        "star45 points slate",
        "star45 points slate ground",
        "star45 points slate ground fog corners",
        "star45 points slate rows 1 ground fog",
        "star45 points slate rows 2 1/2 ground fog",
        "star45 points slate rows 21 ground fog",
        "star45 points slate rows 2 rows 3 ground fog",
        "star45 split slate ground fog",
        "star45 split slate moss rows 2 ground fog",
        "triangles60 slate fog",
        "triangles60 rows 3",
        "triangles60 slate rows 0",
        "triangles60 slate rows 41",
        "triangles60 slate rows 3 fog",
        "hexagons slate fog",
        "hexagons across 4",
        "hexagons slate across 1 1/2",
        "hexagons slate across 41",
        "hexagons slate across 4 quarters",
        "cubes fog slate across 4",
        "cubes fog slate moss",
        "cubes fog slate moss across 0",
    ],
)
def test_words_that_a_star_or_a_field_cannot_read_are_answered_with_how_it_is_written(words: str) -> None:
    problem = one_error(f"row ({words})")
    assert problem.code == "shape-words"
    assert f"`{SHAPES[words.split(maxsplit=1)[0]].usage}`" in problem.message


@pytest.mark.parametrize(
    "words", ["triangles60 slate fog rows 3", "hexagons slate fog across 3", "cubes fog slate moss across 3"]
)
def test_fields_fill_any_box(words: str) -> None:
    assert errors(f"row ({words})", size="12 x 5 in") == []


@pytest.mark.parametrize("words", ["triangles60 slate fog rows 40", "hexagons slate fog across 40"])
def test_a_field_of_too_many_patches_is_refused_before_it_is_drawn(words: str) -> None:
    # 40 rows of 1/20 in: of triangles with sides of 0.058 in there are 3,460 in each row of 100 in.
    size = "100 x 2 in" if "rows" in words else "2 x 100 in"
    assert "too-many-patches" in {problem.code for problem in errors(f"row ({words})", size=size)}


@pytest.mark.parametrize(
    ("words", "size", "better"),
    [
        ("hexagons slate fog across 5", "12 in", "10 in or 15 in"),  # 12/5 = 2 2/5 from flat to flat
        # ten diamonds across: steps of 10/8, in whole inches of 5
        ("cubes slate fog moss across 5", "15 1/4 in", "15 in or 20 in"),
        ("triangles60 slate fog rows 5", "12 in", "10 in or 15 in"),
        ("hexagons slate fog across 4 halves", "11 1/2 in", ""),  # 11 1/2 / 8 = 1 7/16
    ],
)
def test_patches_of_a_field_that_fall_between_the_marks_are_warned_of(words: str, size: str, better: str) -> None:
    (problem,) = warnings(f"row ({words})", size=size)
    assert problem.code == "size-off-ruler"
    assert better in (problem.help or "")


def test_a_honeycomb_on_the_marks_is_not_warned_of() -> None:
    assert warnings("row (hexagons slate fog across 5)", size="15 in") == []


def test_a_field_of_one_fabric_covers_the_box_exactly() -> None:
    facts = block("row (hexagons slate across 3) (triangles60 slate rows 3)", size="10 x 5 in")
    assert exactly([facts.cover.area, dict(facts.area_by_fabric)["slate"]]) == [50, 50]


def test_the_step_of_a_large_star_lists_what_each_strip_set_takes() -> None:
    # rows of three fabrics in turn, each beginning one further out: the middle of the star is moss
    facts = block("row (star45 points moss slate lantern rows 3 ground fog)", "make star45 as strip set", size="16 in")
    sets = [told.partition("right sides together: ")[2].partition(". Start")[0] for told in texts(facts)[:3]]
    assert sets == [
        "Moss, Wet slate, and Lantern", "Wet slate, Lantern, and Moss", "Lantern, Moss, and Wet slate",
    ]  # fmt: skip
