"""The steps of a quilt in words: each row can be laid from its sentence; sentences as they were worked out by hand."""

from __future__ import annotations

import re

import pytest

from blockdsl.wording import StepText, quilt_step_texts
from tests.unit.model.quilts import quilt

WING = 'block "Wing"\n  size 6 in\n  row slate/fog\n  colourway "Night" fog=slate slate=lantern\n'
FLAG = 'block "Flag"\n  size 6 in\n  row lantern slate slate\n  row slate slate slate\n  row fog fog fog\n'


def steps(*lines: str, above: str = "") -> dict[str, StepText]:
    """The steps by their names."""
    return {text.name: text for text in quilt_step_texts(quilt(*lines, above=above))}


def laid(text: StepText) -> list[str]:
    """What a row is, part by part, from the sentence alone."""
    found = re.search(r"Sew them together [^:.]*(?:: ([^.]*))?\.", text.text)
    assert found is not None, text.text
    if found[1] is None:
        taken = re.search(r"[Tt]ake (\d+) (\w.*?)\.", text.text)
        assert taken is not None
        return [re.sub(r"s$", "", taken[2])] * int(taken[1])
    row: list[str] = []
    for group in found[1].split(", then "):
        times = re.search(r" (?:(twice)|(\d+) times)$", group)
        often = 1 if times is None else 2 if times[1] else int(times[2])
        parts = re.split(r", and |, | and (?=an? )", re.sub(r" (twice|\d+ times)$", "", group))
        unit: list[str] = []
        for part in parts:
            number, _, name = part.partition(" ")
            unit += [re.sub(r"s$", "", name)] * int(number) if number.isdigit() else [name]
        row += unit * often
    return row


SIDE = "side triangle (square corner at the"
DROPPED = ("sash 1 1/2 in slate posts lantern", "fill fog")
ROWS = [
    # three blocks and two sashes between them; four with sashes outside too
    (('set straight 3 x 4 of "Four"', "sash 1 in slate"), "Rows 1, 2, 3, and 4", ["block", *["sash", "block"] * 2]),
    (
        ('set straight 3 x 4 of "Four"', "sash 1 in slate posts lantern outer"),
        "Rows 1, 2, 3, and 4",
        [*["sash", "block"] * 3, "sash"],
    ),
    (
        ('set straight 3 x 4 of "Four"', "sash 1 in slate posts lantern outer"),
        "Sashing strips",
        [*["cornerstone", "sash"] * 3, "cornerstone"],
    ),
    # a dropped column has one block less, a half at both ends, and one sash more
    (('set dropped columns 4 x 6 of "Four"', *DROPPED), "Columns 1 and 3", ["block", *["long sash", "block"] * 5]),
    (
        ('set dropped columns 4 x 6 of "Four"', *DROPPED),
        "Columns 2 and 4",
        ["half block", *["long sash", "block"] * 5, "long sash", "half block"],
    ),
    (
        ('set dropped columns 4 x 6 of "Four"', *DROPPED),
        "Sashing strips",
        ["short sash", *["cornerstone", "short sash"] * 11],
    ),
    (('set straight 3 x 3 of "Four"', "alternate fog"), "Rows 1 and 3", ["block", "plain square", "block"]),
    (('set straight 3 x 3 of "Four"', "alternate fog"), "Row 2", ["plain square", "block", "plain square"]),
    (('set straight 2 x 3 of "Four"', 'alternate "Chain"'), "Rows 1 and 3", ["Four block", "Chain block"]),
    (('set strippy 4 x 6 of "Four"', "sash 4 in lantern"), "Columns 1, 2, 3, and 4", ["block"] * 6),
    # on point 2 x 2: one block, three, one; the middle row runs from corner to corner
    (('set on point 2 x 2 of "Four"', "fill fog"), "Diagonal row 2", ["block"] * 3),
    (
        ('set on point 2 x 2 of "Four"', "fill fog"),
        "Diagonal row 1",
        [
            "side triangle (square corner at the lower right)",
            "block",
            "side triangle (square corner at the lower left)",
        ],
    ),
    (
        ('set on point 2 x 2 of "Four"', "fill fog"),
        "Diagonal row 3",
        [
            "side triangle (square corner at the upper right)",
            "block",
            "side triangle (square corner at the upper left)",
        ],
    ),
]


@pytest.mark.parametrize(("lines", "name", "row"), ROWS)
def test_a_row_can_be_laid_from_its_sentence(lines: tuple[str, ...], name: str, row: list[str]) -> None:
    assert laid(steps(*lines)[name]) == row


def test_the_columns_of_a_dropped_quilt_are_told_in_full() -> None:
    # 6 in blocks, sashes of 1 1/2 in: 6 x 6 + 5 x 1 1/2 = 43 1/2 in; the block looks the same turned a quarter
    told = steps('set dropped columns 4 x 6 of "Pin"', *DROPPED)
    assert told["Columns 2 and 4"].title == "Columns 2 and 4 · make 2 · 6 × 43 1/2 in finished"
    assert told["Columns 2 and 4"].text == (
        "For each, take 5 blocks, 6 long sashes, and 2 half blocks. Sew them together from top to bottom: a half "
        "block, then a long sash and a block 5 times, then a long sash and a half block. Press all seams toward "
        "the sashes. ☐ 6 1/2 × 44 in"
    )
    assert told["Quilt center"].text == (
        "Take columns 1, 2, 3, and 4, and 3 sashing strips. Arrange them from left to right, a sashing strip "
        "between each two columns. Pin the cornerstones to the ends of the long sashes, nesting the seams: "
        "cornerstones 1, 3, 5, 7, 9, and 11 to columns 2 and 4, and cornerstones 2, 4, 6, 8, and 10 to columns 1 "
        "and 3. Sew the long edges. Press all long seams toward the sashing strips. ☐ 29 × 44 in"
    )


@pytest.mark.parametrize(
    ("sashes", "points"),
    [((), "the points of the blocks"), (("sash 1 1/2 in slate posts lantern",), "the points of the sashes")],
)
def test_a_center_on_point_is_trimmed_by_what_reaches_its_edge(sashes: tuple[str, ...], points: str) -> None:
    # By hand: sashes go round every block, so their corners lie on the finished edge and the blocks' points inside it.
    told = steps('set on point 2 x 3 of "Pin"', "fill fog", *sashes)
    assert f"Trim the edges 1/4 in outside {points}, corners square." in told["Quilt center"].text


def test_blocks_that_are_turned_are_laid_by_what_is_seen_of_them() -> None:
    # slate/fog as it is drawn has slate at the upper left: whole edges at the top and the left. A quarter turn
    # clockwise brings the left edge to the top and the top edge to the right.
    told = steps('set straight 4 x 4 of "Wing"', "turn > on every second", above=WING)
    assert (
        laid(told["Rows 1 and 3"])
        == [
            "block (Wet slate at the top and left)",
            "block (Wet slate at the top and right)",
        ]
        * 2
    )
    assert (
        laid(told["Rows 2 and 4"])
        == [
            "block (Wet slate at the top and right)",
            "block (Wet slate at the top and left)",
        ]
        * 2
    )


def test_colourways_are_told_row_by_row() -> None:
    told = steps('set straight 2 x 2 of "Wing"', 'colourway "Night" on odd rows', above=WING)
    assert "2 Wing blocks in Night" in told["Row 1"].text
    # in Night the slate half is of lantern, the fog half of slate
    assert "Lay each Wing block in Night with Lantern at the top and left." in told["Row 1"].text
    assert "Lay each Wing block with Wet slate at the top and left." in told["Row 2"].text


def test_a_block_is_laid_by_the_first_landmark_that_leaves_one_way() -> None:
    # the bottom edge is all of fog, and only that one
    assert (
        "Lay each block with Harbour fog at the bottom."
        in steps('set straight 2 x 2 of "Flag"', above=FLAG)["Rows 1 and 2"].text
    )


def test_a_border_says_what_to_measure_to_trim_and_to_sew() -> None:
    # 18 x 24 in: sides 24 1/2 in, then 18 + 4 + 1/2 in across
    told = steps('set straight 3 x 4 of "Pin"', "border 2 in slate")
    assert told["Border"].title == "Border · 22 × 28 in finished"
    assert told["Border"].text == (
        "(a) Measure the quilt center through the middle from top to bottom, about 24 1/2 in. Trim 2 strips (Wet "
        "slate) to that length. Mark the middle and quarters of each strip and of each side edge. Sew a strip to "
        "the left edge and a strip to the right edge, marks matched. Press both seams toward the border. (b) "
        "Measure through the middle from side to side, border included, about 22 1/2 in. Trim 2 strips (Wet "
        "slate) to that length. Sew them to the top edge and the bottom edge in the same way. Press both seams "
        "toward the border. ☐ 22 1/2 × 28 1/2 in"
    )


def test_top_first_turns_the_order_of_a_border_round() -> None:
    # 18 1/2 in across first, then 24 + 4 + 1/2 in down
    text = steps('set straight 3 x 4 of "Pin"', "border 2 in slate top first")["Border"].text
    assert text.index("from side to side, about 18 1/2 in") < text.index(
        "from top to bottom, border included, about 28 1/2"
    )
    assert "each top and bottom edge" in text


def test_a_mitred_border_is_as_long_as_its_outer_edge_and_two_inches() -> None:
    # 18 x 24 in and 2 x 4 in: 26 1/2 and 32 1/2 in raw, 28 1/2 and 34 1/2 in cut; (34 1/2 - 24 1/2) / 2 = 5 in beyond
    text = steps('set straight 3 x 4 of "Pin"', "border 4 in slate mitred")["Border"].text
    assert "2 strips (Wet slate) 4 1/2 × 34 1/2 in for the sides and 2 strips (Wet slate) 4 1/2 × 28 1/2 in" in text
    assert "Both ends extend equally, about 5 in." in text
    assert text.endswith("Press the seam open. ☐ 26 1/2 × 32 1/2 in")


def test_a_pieced_border_says_how_many_units_each_side_has_and_how_they_lie() -> None:
    # geese of 6 x 3 in round 18 x 24 in: 4 at the sides, 3 above and below; the base of each lies inside
    text = steps('set straight 3 x 4 of "Pin"', "border 3 in pieced beam corners slate")["Border"].text
    assert "Take 14 beams and 4 corner squares. Lay each beam with Lantern at the bottom" in text
    assert "4 in each of 2 strips for the sides, 3 in each of 2 strips for the top and bottom." in text


def test_rows_on_point_say_how_each_lies_to_the_one_above() -> None:
    # 3 across and 4 down: rows of 1, 3, 5, 5, 3 and 1 blocks
    text = steps('set on point 3 x 4 of "Four"', "fill fog")["Quilt center"].text
    assert "Rows 2 and 3 each extend one block beyond the row above at both ends." in text
    assert (
        "Row 4 begins one block beyond the row above at the left and ends one block short of it at the right." in text
    )
    assert "Rows 5 and 6 each end one block short of the row above at both ends." in text


def test_seams_pressed_open_are_matched_and_not_nested() -> None:
    told = steps('set straight 3 x 4 of "Pin"', "press open", "border 2 in slate corners lantern")
    assert "Press all seams open." in told["Rows 1, 2, 3, and 4"].text
    assert "matching the seams. Press all long seams open." in told["Quilt center"].text
    assert all("nest" not in text.text and "toward" not in text.text for text in told.values())


def test_the_sleeve_is_basted_on_before_the_binding_holds_it_and_hemmed_down_after() -> None:
    texts = quilt_step_texts(quilt('set straight 3 x 4 of "Pin"', "binding 2 1/4 in slate", "sleeve 4 in fog"))
    names = [text.name for text in texts]
    assert names.index("Hanging sleeve") == names.index("Binding") - 1
    assert "The binding will cover the raw edges." in texts[names.index("Hanging sleeve")].text
    assert "sew it down by hand through backing and batting only." in texts[names.index("Binding")].text


def test_the_binding_says_what_its_strips_measure_and_what_the_edge_takes() -> None:
    # 18 1/2 x 24 1/2 in raw: 86 in; with 10 in and three joins of 2 1/4 in three strips of 40 in: 115 1/2 in end to end
    text = {
        each.name: each for each in quilt_step_texts(quilt('set straight 3 x 4 of "Pin"', "binding 2 1/4 in slate"))
    }
    assert text["Binding"].title == "Binding · 86 in around"
    assert "The strip is about 115 1/2 in long; the edge of the quilt takes 86 in." in text["Binding"].text


def test_a_quilt_in_centimetres_is_told_in_british_english() -> None:
    above = 'block "Metric"\n  size 15 cm\n  row fog lantern\n'
    lines = ('set straight 2 x 2 of "Metric"', "sash 3 cm slate posts lantern", "backing fog")
    told = " ".join(text.text for text in quilt_step_texts(quilt(*lines, above=above)))
    for word in ("towards the sashes", "post", "selvedges", "wadding", "Tack"):
        assert word in told
    for word in ("toward the", "cornerstone", "selvages", "batting", "Baste", "center"):
        assert word not in told


def test_no_sentence_of_a_quilt_keeps_a_size_written_with_a_letter_x() -> None:
    above = 'block "Kiss x Hug"\n  size 6 in\n  row fog lantern\n'
    lines = ('set straight 2 x 2 of "Kiss x Hug"', 'alternate "Four"', "border 2 in slate")
    texts = quilt_step_texts(quilt(*lines, above=above))
    assert "1 Kiss x Hug block" in texts[0].text
    assert not any(re.search(r"\d x \d", text.text) for text in texts)
