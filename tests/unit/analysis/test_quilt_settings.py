"""How blocks are set: sizes worked out by hand, places counted by hand."""

import pytest

from blockdsl.geometry import square_root, to_float
from blockdsl.geometry.fraction import Fraction as F  # noqa: N817 - they stand in tables of sizes
from blockdsl.geometry.symmetry import HALF_TURN, IDENTITY, MIRROR, QUARTER_ANTICLOCKWISE, QUARTER_CLOCKWISE
from tests.unit.model.blocks import exactly
from tests.unit.model.quilts import design, one_told, quilt, roles, told

ROOT = square_root(F(2))


def test_straight_rows_are_as_long_as_their_blocks() -> None:
    facts = quilt('set straight 3 x 4 of "Four"')
    assert exactly(facts.finished) == (18, 24)
    assert facts.unfinished == (F(37, 2), F(49, 2))
    assert facts.blocks == (("Four", 12),)
    assert [len(row.members) for row in facts.rows] == [3, 3, 3, 3]


def test_an_alternate_block_stands_on_every_second_place_of_every_row() -> None:
    laid = design('set straight 3 x 3 of "Four"', 'alternate "Chain"')
    names = [laid.kinds[place.kind].name for place in laid.blocks]
    assert names == ["Four", "Chain", "Four", "Chain", "Four", "Chain", "Four", "Chain", "Four"]


def test_plain_squares_take_the_size_of_a_block() -> None:
    # 11 x 15 places, every second one plain: 83 blocks and 82 squares, as in Nine Patch with Setting Blocks,
    # Karen Says Sew - http://karensayssew.blogspot.com/2010/08/nine-patch-with-setting-blocks.html (66 x 90, 6 in)
    facts = quilt('set straight 11 x 15 of "Four"', "alternate fog")
    assert exactly(facts.finished) == (66, 90)
    assert facts.blocks == (("Four", 83),)
    (squares,) = facts.pieces
    assert (squares.count, squares.cut) == (82, (F(13, 2), F(13, 2)))


def test_sashing_lies_between_blocks_and_posts_where_it_crosses() -> None:
    facts = quilt('set straight 3 x 4 of "Four"', "sash 1 1/2 in slate posts lantern")
    # two sashes of 1 1/2 in beside three blocks of 6 in; three beside four
    assert exactly(facts.finished) == (21, F(57, 2))
    # beside the blocks 2 in each of 4 rows, below them 3 in each of 3 rows of sashes; 2 posts in each of those
    assert roles(facts) == {"sash": 8 + 9, "post": 6}


def test_outer_sashing_goes_all_round() -> None:
    facts = quilt('set straight 3 x 4 of "Four"', "sash 1 1/2 in slate posts lantern outer")
    assert exactly(facts.finished) == (24, F(63, 2))
    assert roles(facts) == {"sash": 4 * 4 + 3 * 5, "post": 4 * 5}


def test_without_posts_one_strip_runs_between_two_rows() -> None:
    facts = quilt('set straight 3 x 4 of "Four"', "sash 1 1/2 in slate")
    assert roles(facts) == {"sash": 8, "sash strip": 3}
    strip = next(piece for piece in facts.pieces if piece.role == "sash strip")
    # 21 1/2 in with its seam allowances, and 2 in to spare
    assert exactly((strip.finished, strip.cut)) == ((F(3, 2), 21), (2, F(47, 2)))


def test_every_second_column_is_dropped_by_half_a_block() -> None:
    facts = quilt('set dropped columns 4 x 6 of "Four"', "fill fog")
    assert exactly(facts.finished) == (24, 36)
    # two whole columns of 6, two dropped ones of 5 with a half at both ends
    assert facts.blocks == (("Four", 22),)
    assert roles(facts) == {"half block": 4}
    dropped = [place.y for place in facts.placed if place.column == 1]
    assert dropped == [3, 9, 15, 21, 27]


def test_a_dropped_column_with_sashing_is_as_long_as_its_neighbours() -> None:
    facts = quilt('set dropped columns 2 x 3 of "Four"', "fill fog", "sash 1 in slate posts lantern")
    # 3 blocks and 2 sashes are 20 in; 2 blocks and 3 sashes are 15 in, which leaves 2 1/2 in for each half
    assert exactly(facts.finished) == (13, 20)
    half = next(piece for piece in facts.pieces if piece.role == "half block")
    assert exactly((half.finished, half.count)) == ((F(5, 2), 6), 2)
    # 2 + 3 sashes in the columns; the strip between them has 5 posts, beside the ends of 2 + 3 sashes, and 6 sashes
    assert roles(facts) == {"half block": 2, "sash": 5 + 6, "post": 5}


def test_halves_of_a_dropped_column_are_the_lower_part_at_the_top_and_the_upper_part_at_the_bottom() -> None:
    laid = design('set dropped columns 2 x 2 of "Small"')
    halves = {laid.kinds[place.kind].name: (place.x, place.y) for place in laid.blocks if place.column == 1}
    assert exactly(halves) == {"Small, lower half": (3, 0), "Small": (3, F(3, 2)), "Small, upper half": (3, F(9, 2))}
    lower = next(kind.design for kind in laid.kinds if kind.name == "Small, lower half")
    assert exactly((lower.width, lower.height)) == (3, F(3, 2))
    assert [patch.fabric for patch in lower.patches] == ["lantern", "fog"]


def test_strips_stand_between_the_columns_of_a_strippy_quilt() -> None:
    facts = quilt('set strippy 4 x 6 of "Four"', "sash 4 in slate")
    assert exactly(facts.finished) == (4 * 6 + 3 * 4, 36)
    assert roles(facts) == {"strip": 3}
    assert exactly(quilt('set strippy 4 x 6 of "Four"', "fill fog").finished) == (7 * 6, 36)
    assert exactly(quilt('set strippy 4 x 6 of "Four"', "sash 4 in slate outer").finished) == (44, 36)


@pytest.mark.parametrize(("across", "down", "blocks", "triangles"), [(3, 4, 18, 10), (5, 6, 50, 18), (1, 1, 1, 0)])
def test_blocks_on_point_stand_between_blocks_and_triangles_at_the_edge(
    across: int, down: int, blocks: int, triangles: int
) -> None:
    # across × down, and one between every four; a triangle between two of the outer ones: counted by hand
    facts = quilt(f'set on point {across} x {down} of "Four"', "fill fog")
    assert facts.blocks == (("Four", blocks),)
    assert roles(facts).get("side triangle", 0) == triangles
    assert roles(facts)["corner triangle"] == 4
    assert facts.finished == (across * 6 * ROOT, down * 6 * ROOT)


def test_an_alternate_on_point_stands_between_the_others() -> None:
    # To the Point, Karen Says Sew - http://karensayssew.blogspot.com/2010/08/to-point.html: 68 x 85, 6 in blocks,
    # 8 x 10 on point: 80 nine-patches, and by count 63 setting squares and 32 side triangles
    facts = quilt('set on point 8 x 10 of "Four"', "alternate fog")
    assert facts.blocks == (("Four", 80),)
    assert roles(facts) == {"plain square": 63, "side triangle": 32, "corner triangle": 4}
    assert F(67) < F(int(100 * float(facts.finished[0])), 100) < 68
    assert F(84) < F(int(100 * float(facts.finished[1])), 100) < 85


def test_on_point_the_topmost_corner_of_the_first_block_is_in_the_middle_of_its_diagonal() -> None:
    laid = design('set on point 2 x 2 of "Four"', "fill fog")
    first = laid.blocks[0]
    assert exactly((first.x, first.y, first.on_point)) == (3 * ROOT, 0, True)


def test_diagonal_rows_run_up_from_the_lower_left_with_a_triangle_at_each_end_but_for_the_corners() -> None:
    laid = design('set on point 2 x 2 of "Four"', "fill fog")
    told = [[laid.cloth[m.index].role if m.what == "cloth" else "block" for m in row.members] for row in laid.rows]
    assert told == [
        ["side triangle", "block", "side triangle"],
        ["block", "block", "block"],
        ["side triangle", "block", "side triangle"],
    ]


def test_places_named_in_rows_stand_as_they_are_named_and_turned() -> None:
    laid = design('row "Pin" fog "Pin"<', 'row fog "Pin>>" fog')
    turns = [(place.row, place.column, place.symmetry) for place in laid.blocks]
    assert turns == [(0, 0, IDENTITY), (0, 2, QUARTER_ANTICLOCKWISE), (1, 1, HALF_TURN)]
    assert [cloth.role for cloth in laid.cloth] == ["plain square"] * 3
    assert exactly((laid.width, laid.height)) == (18, 12)


def test_rules_turn_and_recolour_the_places_that_they_name_one_after_the_other() -> None:
    laid = design(
        'set straight 2 x 2 of "Pin"',
        "turn >> on even rows",
        "turn > on every second",
        'colourway "Night" on odd columns',
    )
    turned = [place.symmetry for place in laid.blocks]
    assert turned == [IDENTITY, QUARTER_CLOCKWISE, HALF_TURN.then(QUARTER_CLOCKWISE), HALF_TURN]
    assert [place.colourway for place in laid.blocks] == ["Night", "", "Night", ""]


def test_a_mirrored_block_is_another_block_to_sew_unless_it_looks_the_same_in_the_mirror() -> None:
    pin = design('row "Pin" "Pin"~')
    assert [kind.name for kind in pin.kinds] == ["Pin", "Pin, mirror image"]
    assert pin.blocks[1].symmetry == IDENTITY
    four = design('row "Four" "Four"~')
    assert [kind.name for kind in four.kinds] == ["Four"]
    assert four.blocks[1].symmetry == MIRROR


@pytest.mark.parametrize(
    ("lines", "word"),
    [
        (['set straight 2 x 2 of "Four"', "fill fog"], "fill"),
        (['set strippy 2 x 2 of "Four"', "sash 2 in fog", "fill slate"], "fill"),
        (['set strippy 2 x 2 of "Four"', "sash 2 in fog posts slate"], "posts"),
        (['row "Four" fog', "alternate slate"], "alternate"),
        (['set on point 1 x 3 of "Four"', "fill fog", "alternate slate"], "alternate"),
        (['set straight 1 x 1 of "Four"', "sash 2 in fog"], "sash"),
        (['set dropped columns 1 x 3 of "Four"'], "dropped columns"),
        (['set straight 2 x 2 of "Four"', "scraps moss from 4 fat quarters"], "scraps"),
        (['set straight 2 x 2 of "Four"', "border 2 in pieced beam corners fog along length"], "along length"),
    ],
)
def test_a_line_that_changes_nothing_is_pointed_out(lines: list[str], word: str) -> None:
    problem = one_told(*lines)
    assert (problem.code, problem.severity) == ("line-idle", "warning")
    assert f"`{word}`" in problem.message


@pytest.mark.parametrize(
    ("lines", "advice"),
    [
        (['set straight 2 x 2 of "Four"', "sash 1/3 in fog"], "make it 1/4 in or 3/8 in"),
        (['set straight 2 x 2 of "Four"', "border 2.3 in fog"], "make it 2 1/4 in or 2 3/8 in"),
        (['set strippy 2 x 2 of "Four"', "sash 1/16 in fog"], "make it 1/8 in"),
        # (6 - 7/8)/2 = 2 9/16; 2 1/2 and 2 5/8 leave sashes of 1 in and 3/4 in
        (['set dropped columns 2 x 2 of "Four"', "fill fog", "sash 7/8 in fog"], "a sash of 3/4 in or 1 in"),
    ],
)
def test_what_the_ruler_does_not_show_is_told_with_the_nearest_that_it_does(lines: list[str], advice: str) -> None:
    problem = one_told(*lines)
    assert problem.code == "quilt-off-ruler"
    assert advice in str(problem.help)


CURVED = """
block "Curved"
  size 6 in
  row (curve lantern in fog)
"""


def test_a_curve_is_not_cut_in_two() -> None:
    problem = one_told('set dropped columns 2 x 2 of "Curved"', above=CURVED)
    assert problem.code == "block-does-not-fit"
    assert "fill fog" in str(problem.help)
    assert told('set dropped columns 2 x 2 of "Curved"', "fill fog", above=CURVED) == []


def test_a_curve_beside_the_cut_stays_whole() -> None:
    four = CURVED.replace("row (curve lantern in fog)", "row (curve lantern in fog) slate\n  row slate fog")
    laid = design('set dropped columns 2 x 2 of "Curved"', above=four)
    upper = next(kind.design for kind in laid.kinds if kind.name == "Curved, upper half")
    assert [patch.curved is not None for patch in upper.patches] == [True, True, False]
    assert [unit.filling.shape for unit in upper.units if unit.filling] == ["curve"]


def test_applique_is_mirrored_with_its_block_and_never_cut_in_two() -> None:
    laid_on = 'block "Leaf"\n size 6 in\n row fog\n applique slate "M1 1 h1 v4 z"'
    mirrored = design('row "Leaf" "Leaf"~', above=laid_on.replace("M1 1 h1 v4 z", "M0.1 0.1 h0.2 v0.5 z"))
    assert [kind.name for kind in mirrored.kinds] == ["Leaf", "Leaf, mirror image"]
    cut = laid_on.replace("M1 1 h1 v4 z", "M0.1 0.1 h0.2 v0.8 z")
    assert one_told('set dropped columns 2 x 2 of "Leaf"', above=cut).code == "block-does-not-fit"


def test_blocks_may_all_be_made_at_another_size() -> None:
    facts = quilt('set straight 2 x 2 of "Four"', 'alternate "Small"', "blocks 9 in")
    assert exactly(facts.finished) == (18, 18)
    assert exactly([kind.block.finished for kind in facts.kinds]) == [(9, 9), (9, 9)]


def test_a_quilt_in_centimetres_has_the_seam_of_its_blocks() -> None:
    facts = quilt('set straight 2 x 2 of "Metric"', above='block "Metric"\n size 20 cm\n row fog')
    assert exactly((facts.unit, facts.seam, facts.finished)) == ("cm", F(3, 4), (40, 40))


def test_the_columns_of_a_mirrored_block_run_the_other_way_and_its_rows_do_not() -> None:
    uneven = (
        '\nblock "Uneven"\n  size 6 in\n  columns 1 2 3\n  heights 3 2 1\n'
        "  row fog slate moss\n  row slate fog fog\n  row moss fog slate\n"
    )
    laid = design('row "Uneven" "Uneven"~', above=uneven)
    own, mirrored = (kind.design for kind in laid.kinds)
    assert [list(own.columns), list(own.heights)] == [[1, 2, 3], [3, 2, 1]]
    assert [list(mirrored.columns), list(mirrored.heights)] == [[3, 2, 1], [3, 2, 1]]
    # moss at the lower left, 1 in wide, comes to lie at the lower right
    moss = [
        sorted(to_float(min(corner.x for corner in patch.outline)) for patch in each.patches if patch.fabric == "moss")
        for each in (own, mirrored)
    ]
    assert moss == [[0, 3], [0, 5]]
