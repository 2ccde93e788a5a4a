"""Logs are sewn round by round in the order of the trade, on the table and on papers; slanted ends lie as is told.

Sizes were worked out by hand. The order of the logs is that of the words; pressing away from the centre is common
practice, no source.
"""

import pytest

from blockdsl.facts import BlockFacts
from blockdsl.geometry import Exact, Point, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import Polygon
from blockdsl.sewing.steps.ends import overhang
from tests.unit.model.blocks import block
from tests.unit.wording.said import texts

CABIN = "(log centre lantern with fog moss slate fog fog moss slate fog)"
"""Two rounds, 5 in: a centre and logs of 1 in."""


def pressed_toward(facts: BlockFacts) -> list[list[str]]:
    """For each step the fabrics of the single patches that its seams are pressed toward, or `-`."""
    found = []
    for step in facts.steps:
        hand = step.hands[0]
        toward = [seam.parts[seam.toward] for stage in hand.stages for seam in stage.seams if seam.toward is not None]
        parts = hand.ingredients
        found.append([(parts[part].fabric or "-") if part < len(parts) else "-" for part in toward])
    return found


# --- log cabins ----------------------------------------------------------------------------------------


def test_a_log_cabin_is_a_step_for_each_round_named_by_its_number() -> None:
    assert [step.makes for step in block(f"row {CABIN}", size="5 in").steps] == ["round 1", "block"]


def test_each_log_is_told_with_its_side_and_what_lies_along_it() -> None:
    first, second = texts(block(f"row {CABIN}", size="5 in"))
    for words in (
        "Sew A (Harbour fog) to the top edge of A (Lantern), right sides together.",
        "Sew B (Moss) to the right edge of A (Harbour fog) and A (Lantern).",
        "Sew B (Wet slate) to the bottom edge of A (Lantern) and B (Moss).",
        "Sew C to the left edge of A (Harbour fog), A (Lantern), and B (Wet slate).",
    ):
        assert words in first
        first = first[first.index(words) :]
    assert "Lay round 1 with Harbour fog at the left. Sew C to its top edge." in second
    assert "Press each seam toward the piece just added." in second


def test_what_a_round_takes_is_listed_in_the_order_in_which_it_is_sewn() -> None:
    first, second = block(f"row {CABIN}", size="5 in").steps
    assert [(join.name, join.fabric) for join in first.joins] == [
        ("A", "fog"), ("A", "lantern"), ("B", "moss"), ("B", "slate"), ("C", "fog"),
    ]  # fmt: skip
    assert [join.name for join in second.joins] == ["C", "round 1", "D", "D", "E"]


def test_every_round_of_a_log_cabin_is_measured() -> None:
    first, second = texts(block(f"row {CABIN}", size="5 in"))
    assert first.endswith("☐ 3 1/2 × 3 1/2 in")
    assert second.endswith("☐ 5 1/2 × 5 1/2 in")


@pytest.mark.parametrize("centre", ["fog", "slate"])
def test_logs_are_pressed_away_from_the_centre_be_it_light_or_dark(centre: str) -> None:
    facts = block(f"row (log centre {centre} with lantern moss lantern moss lantern moss lantern moss)", size="5 in")
    assert pressed_toward(facts) == [["lantern", "moss", "lantern", "moss"]] * 2


def test_a_mirrored_log_cabin_goes_round_the_other_way() -> None:
    first = texts(block(f"row {CABIN}~", size="5 in"))[0]
    assert "Sew B (Moss) to the left edge" in first
    assert "Sew C to the right edge" in first


def test_four_log_cabins_alike_are_made_round_by_round_together() -> None:
    above = f"unit cabin = {CABIN[1:-1]}"
    facts = block("row cabin cabin>", "row cabin< cabin>>", size="10 in", above=above)
    assert [(step.makes, step.count) for step in facts.steps[:2]] == [("round 1", 4), ("cabin", 4)]


def test_logs_on_two_sides_are_added_at_the_top_and_on_the_right_by_turns() -> None:
    facts = block("row (log centre lantern with fog moss slate fog on two sides)", size="3 in")
    assert [step.makes for step in facts.steps] == ["round 1", "block"]
    first, second = texts(facts)
    assert "Sew B to the right edge" in first
    assert "Sew B to its top edge." in second


def test_an_unfinished_round_is_a_step_of_its_own() -> None:
    facts = block("row (log centre lantern with fog moss slate fog fog)", size="6 x 8 in")
    assert [step.makes for step in facts.steps] == ["round 1", "block"]


def test_a_log_cabin_has_no_more_seams_than_logs() -> None:
    seams = block(f"row {CABIN}", size="5 in").seams
    assert seams is not None
    assert (seams.straight, seams.partial, seams.set_in) == (8, 0, 0)


# --- pairs of logs ---------------------------------------------------------------------------------------


def test_courthouse_steps_are_sewn_in_pairs_the_top_and_the_bottom_first() -> None:
    facts = block("row (courthouse centre lantern with fog fog slate slate rounds 2)", size="5 in")
    first, second = texts(facts)
    assert "Sew 2 A (Harbour fog) to the top and bottom edges of A (Lantern), right sides together." in first
    assert "Sew 2 B to the left and right edges of the joined pieces." in first
    assert "Lay round 1 with Wet slate at the left and right. Sew 2 B to its top and bottom edges." in second
    assert pressed_toward(facts) == [["fog", "fog", "slate", "slate"]] * 2


def test_a_pineapple_is_sewn_in_rounds_of_straight_and_of_diagonal_logs() -> None:
    facts = block("row (pineapple centre lantern with straight fog diagonal slate rounds 2)", size="6 in")
    made = [step.makes for step in facts.steps]
    assert made == ["straight round 1", "diagonal round 1", "straight round 2", "block"]
    assert pressed_toward(facts) == [["fog"] * 4, ["slate"] * 4, ["fog"] * 4, ["slate"] * 4]
    second = texts(facts)[1]
    assert "Sew 2 C by their long edges to the left and right edges of straight round 1, creases matched." in second
    assert "Sew 2 C by their long edges to the top and bottom edges of straight round 1, creases matched." in second


def test_a_round_of_a_pineapple_is_measured_between_its_straight_edges() -> None:
    # 6 in: a centre of 2 with four triangles of height 1: a square on point, 2 times r2, and half an inch for the seams
    first = texts(block("row (pineapple centre lantern with straight fog diagonal slate rounds 2)", size="6 in"))[0]
    assert first.endswith("☐ about 3 3/8 × 3 3/8 in")


# --- papers ------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("shape", "size"),
    [
        (CABIN, "5 in"),
        ("(log centre lantern with fog moss slate fog slate on two sides)", "6 x 8 in"),
        ("(courthouse centre lantern with fog fog slate slate rounds 2)", "5 in"),
        ("(pineapple centre lantern with straight fog diagonal slate rounds 3)", "8 in"),
    ],
)
def test_papers_of_logs_are_numbered_from_the_centre_in_the_order_of_adding(shape: str, size: str) -> None:
    facts = block(f"row {shape}", f"make {shape[1:].split(maxsplit=1)[0]} as foundation", size=size)
    (paper,) = facts.foundations[0].papers
    # The patches of the block are drawn in the order of adding.
    assert [patch.outline for patch in paper.patches] == [patch.outline for patch in facts.placed]
    assert paper.patches[0].number == "A1"
    assert paper.patches[0].fabric == "lantern"


# --- ends ----------------------------------------------------------------------------------------------------


def shape(*corners: tuple[Exact | int, Exact | int]) -> Polygon:
    return tuple(Point(Fraction(0) + x, Fraction(0) + y) for x, y in corners)


R2 = 2**0.5
ACUTE = 1 + R2
"""The cotangent of half of 45 degrees; of half of 135 degrees it is r2 - 1, of half a square corner 1."""


@pytest.mark.parametrize(
    ("one", "other", "beyond"),
    [
        # two squares side by side
        (((0, 0), (4, 0), (4, 4), (0, 4)), ((4, 0), (8, 0), (8, 4), (4, 4)), (0, 0)),
        # a square on a triangle: 90 degrees on 45 at both ends
        (((0, 0), (4, 0), (4, 4), (0, 4)), ((4, 0), (6, 2), (4, 4)), (-R2, -R2)),
        # two slanted strips end to end: 45 degrees on 135 at one end, the other way round at the other
        (((0, 0), (4, 0), (0, 4), (-4, 4)), ((4, 0), (8, 0), (4, 4), (0, 4)), (-2, 2)),
        # the first sky of a goose: even at its base, 90 degrees on 45 at its point
        (((4, 0), (8, 4), (0, 4)), ((0, 0), (4, 0), (0, 4)), (0, 1 - ACUTE)),
        # a flat roof on a steeper one: a rise of 1 in 2 on a rise of 1 in 1, (1 + cosine) / sine of the first is 2 + √5
        (((0, 0), (4, 0), (2, -1)), ((4, 0), (0, 0), (2, 2)), (2 + 5**0.5 - ACUTE, 2 + 5**0.5 - ACUTE)),
    ],
)
def test_what_extends_beyond_an_end_goes_by_the_corners_that_meet(
    one: tuple[tuple[int, int], ...], other: tuple[tuple[int, int], ...], beyond: tuple[float, float]
) -> None:
    line = shape(*sorted(set(one) & set(other)))
    found = overhang(line, [shape(*one)], [shape(*other)])
    assert sorted(found) == pytest.approx(sorted(beyond))


def test_the_corner_of_what_is_joined_is_that_of_all_its_patches() -> None:
    # a goose with its first sky has 135 degrees at the point, and the second sky 45; both have 45 at the base
    goose, left, right = shape((4, 0), (8, 4), (0, 4)), shape((0, 0), (4, 0), (0, 4)), shape((4, 0), (8, 0), (8, 4))
    found = overhang(shape((4, 0), (8, 4)), [right], [goose, left])
    assert found == pytest.approx((ACUTE - (R2 - 1), 0))


def test_roots_are_no_hindrance_to_telling_ends() -> None:
    # an octagon of side 2 and one of its corners: 45 degrees on 135 at both ends
    far = 2 + square_root(2)
    corner = shape((0, 0), (square_root(2), 0), (0, square_root(2)))
    octagon = shape((square_root(2), 0), (far, 0), (far + square_root(2), far), (0, far), (0, square_root(2)))
    assert overhang((octagon[0], octagon[-1]), [corner], [octagon]) == pytest.approx((2, 2))


def test_tumblers_are_sewn_from_one_end_of_the_row_to_the_other_in_one_go() -> None:
    facts = block("row (tumblers fog slate fog slate fog)", size="8 x 2 in")
    (step,) = facts.steps
    assert [len(stage.parts) for stage in step.hands[0].stages] == [5]
    assert (
        "Sew them together from left to right, right sides together: A, B (Wet slate) (long edge at the bottom), "
        "B (Harbour fog) (long edge at the top)" in texts(facts)[0]
    )
