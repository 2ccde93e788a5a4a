"""The steps of methods against texts written by hand.

WORKED: the worked examples of the design, whose texts were written before the program and read back by a reader.
By hand: worked out from the batches and the geometry beside the text.
"""

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.wording.steps import step_texts
from blockdsl.wording.steptext import StepText
from tests.unit.model.blocks import block


def step(facts: BlockFacts, number: int = 1) -> StepText:
    return step_texts(facts)[number - 1]


HALVES = ("row fog/lantern fog/lantern fog/lantern fog/lantern", "row lantern/fog lantern/fog lantern/fog lantern/fog")


def test_half_square_triangles_two_at_a_time_read_as_in_the_worked_example() -> None:
    """WORKED, 1.1: eight of 1 1/2 in, four pairs of squares of 2 3/8 in; the letter is A in this block."""
    text = step(block(*HALVES, "make half as two at a time", size="6 x 3 in"))
    assert text.title == "Half-square triangles · make 8, 2 from each pair of squares · 1 1/2 × 1 1/2 in finished"
    assert text.text == (
        "(a) For each pair of squares, take 1 A square (Harbour fog) and 1 A square (Lantern). On the wrong side of "
        "the Harbour fog square, draw a line from corner to corner. "
        "(b) Place it on the Lantern square, right sides together, edges even, and pin. Sew 1/4 in from the line on "
        "both sides of it. "
        "(c) Cut on the line. Press both seams toward Lantern. "
        "(d) Trim the dog-ears. ☐ 2 × 2 in. If it is larger, lay the 45° line of the ruler on the seam and trim all "
        "four edges."
    )


def test_pressed_open_only_the_pressing_differs() -> None:
    """WORKED, 1.1 pressed open: "Cut on the line. Press both seams open."."""
    text = step(block(*HALVES, "make half as two at a time", "press open", size="6 x 3 in"))
    assert "(c) Cut on the line. Press both seams open. (d)" in text.text
    assert "toward" not in text.text


GEESE = (
    "row fog (geese lantern on fog) fog",
    "row (geese lantern on fog)< slate (geese lantern on fog)>",
    "row fog (geese lantern on fog)>> fog",
    "columns 1 2 1",
    "heights 1 2 1",
)


def test_flying_geese_four_at_a_time_read_as_in_the_worked_example() -> None:
    """WORKED, 1.2: four beams of 6 × 3 in from five squares; C and B here are D and C there."""
    text = step(block(*GEESE, "make geese as four at a time", size="12 in"))
    assert text.title == "Flying geese · make 4 from 5 squares · 6 × 3 in finished"
    assert text.text == (
        "(a) Take 1 C square (Lantern) and 4 B squares (Harbour fog). On the wrong side of each B, draw a line from "
        "corner to corner. "
        "(b) Place a B on each of two opposite corners of C, right sides together, edges even. Turn both so that their "
        "lines make one line across C; pin. Sew 1/4 in from the line on both sides of it. Cut on the line. Press all "
        "seams toward B. "
        "(c) On each half, place a B on the square corner of C, right sides together, edges even. Turn it so that its "
        "line runs into the notch between the other two B; pin. Sew 1/4 in from the line on both sides of it. Cut on "
        "the line. Press all seams toward B. "
        "(d) Trim the dog-ears. Trim each to 6 1/2 × 3 1/2 in, with 1/4 in beyond the point. ☐ 6 1/2 × 3 1/2 in"
    )


def test_stitch_and_flip_geese_with_two_skies_read_as_in_the_worked_example() -> None:
    """WORKED, 2a.1: crests of 6 × 3 in with another fabric on each end."""
    text = step(block("row (geese fog on slate moss)", "row (geese fog on slate moss)",
                      "make geese as stitch and flip", size="6 in"))  # fmt: skip
    assert text.title == "Flying geese · make 2 · 6 × 3 in finished"
    assert text.text == (
        "(a) For each, take 1 B rectangle (Harbour fog), 1 A square (Wet slate), and 1 A square (Moss). On the wrong "
        "side of each A, draw a line from corner to corner. "
        "(b) Lay B with a long edge at the top. Place A (Wet slate) on its left end, right sides together, edges even. "
        "Turn A so that its line runs from lower left to upper right; pin. Sew just outside the line, toward the upper "
        "left. Cut 1/4 in outside the seam. Press A over the corner. "
        "(c) Place A (Moss) on the right end in the same way, its line from lower right to upper left. Sew, cut, and "
        "press in the same way, toward the upper right. ☐ 6 1/2 × 3 1/2 in, with 1/4 in beyond the point"
    )


def test_british_steps_have_british_words_and_no_comma_before_and() -> None:
    """WORKED, UK forms: top left, towards, no comma before *and*."""
    text = step(block("row (geese fog on slate moss)", "row (geese fog on slate moss)",
                      "make geese as stitch and flip", size="12 cm")).text  # fmt: skip
    assert "1 A square (Wet slate) and 1 A square (Moss)" in text
    assert "from bottom left to top right" in text
    assert "Sew just outside the line, towards the top left. Cut 0.75 cm outside the seam." in text
    assert "Sew, cut and press in the same way, towards the top right." in text


def test_hourglasses_two_at_a_time_say_the_size_after_the_first_stage() -> None:
    """By hand: squares of 7 1/4 in open to 7 1/4 - √2/4 = 6.896 in, about 6 7/8."""
    text = step(block("row (hourglass fog slate) (hourglass fog slate)", "row fog fog",
                      "make hourglass as two at a time", size="12 in"))  # fmt: skip
    assert text.title == "Hourglasses · make 2 from 2 squares · 6 × 6 in finished"
    first, second = text.parts[1], text.parts[2]
    assert first.measure == "about 6 7/8 × 6 7/8 in"
    assert second.sentences[:3] == (
        "On the wrong side of one half-square triangle, draw a line from corner to corner, across the seam.",
        "Place it on the other, right sides together, edges even, Harbour fog on Wet slate.",
        "Nest the seams and pin.",
    )


QUARTERS = ("row (quarters fog lantern slate moss) (quarters fog lantern slate moss)", "row fog fog")


def test_mixed_quarter_squares_say_which_ones_to_keep() -> None:
    """By hand: clockwise the fabrics are fog, lantern, slate, moss; in a mirror image lantern comes at the left."""
    facts = block(*QUARTERS, "make quarters as two at a time", size="12 in")
    text = step(facts)
    assert text.title == "Quarter-square units · make 2 from 4 squares, 2 spare · 6 × 6 in finished"
    assert text.text.endswith(
        "Lay each with Harbour fog at the top. Keep those with Lantern at the right; the others are reversed, "
        "and spare."
    )


def test_mixed_quarter_squares_of_both_kinds_are_kept_apart() -> None:
    facts = block(
        "row (quarters fog lantern slate moss) (quarters fog lantern slate moss)~",
        "row fog fog",
        "make quarters as two at a time",
        size="12 in",
    )
    text = step(facts)
    assert "make 1 and 1 reversed from 4 squares, 2 spare" in text.title
    assert "are reversed. Keep the two kinds apart." in text.text


def test_quarter_squares_that_are_their_own_mirror_images_are_not_sorted() -> None:
    """By hand: fog at top and bottom, so that left and right change places by half a turn."""
    facts = block("row (quarters fog lantern fog slate) fog", "row fog fog", "make quarters as two at a time")
    assert "mirror" not in step(facts).text


def test_eight_at_a_time_draws_both_lines_and_cuts_through_the_middle() -> None:
    """By hand: 3 in finished, 2 (3 7/8) = 7 3/4 in squares, cut 3 7/8 in from the edges."""
    rows = ("row fog/slate fog/slate fog/slate fog/slate", "row slate/fog slate/fog slate/fog slate/fog")
    text = step(block(*rows, "make half as eight at a time", size="12 x 6 in"))
    assert text.title == "Half-square triangles · make 8 from 2 squares · 3 × 3 in finished"
    assert "On the wrong side of the Harbour fog square, draw both lines from corner to corner." in text.text
    assert "Cut in half both ways through the middle, 3 7/8 in from the edges. Cut on the lines." in text.text


def test_a_method_is_taught_once_and_then_referred_to() -> None:
    rows = ("row fog/slate fog/moss", "row slate/fog moss/fog")
    first, second = step_texts(block(*rows, "make half as two at a time", size="6 in"))[:2]
    assert first.parts[1].sentences[0].startswith("Place it on")
    assert second.text == (
        "Take 1 A square (Harbour fog) and 1 A square (Moss). Sew them as in step 1; draw the line on Harbour fog and "
        "press toward Moss. ☐ 3 1/2 × 3 1/2 in"
    )


def test_snowball_corners_are_flipped_one_after_the_other() -> None:
    facts = block("row (snowball fog with slate) (snowball fog with slate)", "row fog fog",
                  "make snowball as stitch and flip", size="12 in")  # fmt: skip
    text = step(facts)
    assert text.parts[1].sentences[0] == ("Place a B on the upper left corner of A, right sides together, edges even.")
    assert text.parts[2].sentences == (
        (
            "Flip a B onto each of the other three corners in the same way, the opposite corner first, its line "
            "cutting off the corner."
        ),
    )


def test_a_strip_set_that_gives_the_unit_reads_as_in_the_worked_example() -> None:
    """WORKED, 2a.2: four runs of 6 × 3 in, three strips of 1 1/2 × 27 1/2 in; four segments, squared up again once."""
    rows = ("row (rails moss fog slate) (rails moss fog slate)",) * 2
    text = step(block(*rows, "make rails as strip set", "heights 3 3", "columns 6 6", size="12 x 6 in"))
    assert text.title == "Rail units · make 4 from 1 strip set · 6 × 3 in finished"
    assert text.text == (
        "(a) Take 1 A strip (Moss), 1 A strip (Harbour fog), and 1 A strip (Wet slate), 1 1/2 × 27 1/2 in. Sew "
        "Moss to the top edge of Harbour fog, right sides together. Sew Wet slate to its bottom edge, starting at "
        "the opposite end. Press both seams away from Harbour fog. ☐ 3 1/2 in across "
        "(b) Square up one end. Cut 4 segments 6 1/2 in wide. Square up again after the third. ☐ 6 1/2 × 3 1/2 in"
    )


def test_a_set_of_strips_that_are_rounded_up_is_measured_as_it_comes_out_and_trimmed() -> None:
    """By hand: 9 in by five are 1 4/5 in and 2 3/10 in cut, 2 3/8 in on the ruler: 5 × 1 7/8 + 1/2 = 9 7/8 in."""
    text = step(block("row (rails slate fog slate fog slate)", "make rails as strip set", size="9 in")).text
    assert "2 3/8 × 10 1/2 in" in text
    assert text.endswith(
        "☐ 9 7/8 in across (b) Trim the set to 9 1/2 in across, the same amount off each long edge. Square up one end. "
        "Cut 1 segment 9 1/2 in wide. ☐ 9 1/2 × 9 1/2 in"
    )


def test_a_unit_of_segments_that_are_rounded_up_is_trimmed_when_they_are_joined() -> None:
    """By hand: 2 in by three are 1 1/6 in cut, 1 1/4 in on the ruler: 3 × 3/4 + 1/2 = 2 3/4 in, for 2 1/2 in."""
    first, _, joined = step_texts(block(*NINE, size="6 in"))[:3]
    assert first.title == "Segments of set 1 · make 10 from 1 strip set · 3/4 × 2 1/4 in finished"
    assert first.text.endswith("☐ 1 1/4 × 2 3/4 in")
    assert joined.text.endswith("Trim each to 2 1/2 × 2 1/2 in, the same amount off opposite edges. ☐ 2 1/2 × 2 1/2 in")


NINE = ("row (checker 3 x 3 slate fog) fog (checker 3 x 3 slate fog)", "row fog (checker 3 x 3 slate fog) fog",
        "row (checker 3 x 3 slate fog) fog (checker 3 x 3 slate fog)", "make checker as strip set")  # fmt: skip


def test_two_different_strip_sets_are_two_steps_and_their_segments_are_joined_in_a_third() -> None:
    """WORKED, 2b.1 to 2b.3: five nine-patches of 3 in; slate is tide, fog is foam there."""
    first, second, third = step_texts(block(*NINE, size="9 in"))[:3]
    assert first.title == "Segments of set 1 · make 10 from 1 strip set · 1 × 3 in finished"
    assert first.text == (
        "(a) Take 2 A strips (Wet slate) and 1 A strip (Harbour fog), 1 1/2 × 17 1/2 in. Sew a Wet slate strip to each "
        "long edge of Harbour fog, right sides together, starting the second seam at the opposite end. Press both "
        "seams toward Wet slate. ☐ 3 1/2 in across "
        "(b) Square up one end. Cut 10 segments 1 1/2 in wide. Square up again after every third. ☐ 1 1/2 × 3 1/2 in"
    )
    assert second.title == "Segments of set 2 · make 5 from 1 strip set · 1 × 3 in finished"
    assert "1 1/2 × 9 in." in second.text
    assert "Cut 5 segments 1 1/2 in wide. Square up again after the third." in second.text
    assert third.text == (
        "For each, take 2 segments of set 1 and 1 segment of set 2. Sew a segment of set 1 to each long edge of the "
        "segment of set 2, nesting the seams. Press both seams away from set 2. ☐ 3 1/2 × 3 1/2 in"
    )


def test_steps_that_segments_take_are_counted_in_the_numbers_of_those_after_them() -> None:
    steps = block(*NINE, size="9 in").steps
    assert [each.number for each in steps] == list(range(1, len(steps) + 1))
    rows = steps[3]
    assert {join.step for join in rows.joins} == {0, 3}


def test_segments_of_one_set_are_turned_for_every_other_row() -> None:
    """By hand: a four-patch is two segments of one set, one the other way around."""
    facts = block("row (checker 2 x 2 slate fog) fog", "row fog fog", "make checker as strip set", size="8 in")
    text = step(facts, 2)
    assert text.text == (
        "Take 2 segments. Lay the first with Wet slate at the left. Lay the second with Harbour fog at the left. Sew "
        "the second to the bottom edge of the first, nesting the seams. Press the seam toward the second. "
        "☐ 4 1/2 × 4 1/2 in"
    )


def test_what_is_flipped_larger_for_trimming_is_trimmed_to_size() -> None:
    """By hand: with trim the base and its squares are cut larger by 1/8 in, so the unit is trimmed before joining."""
    geese = ("row (geese lantern on fog) (geese lantern on fog)", "make geese as stitch and flip")
    trimmed = step(block(*geese, "trim 1/8 in", size="12 x 3 in"))
    assert "Trim each to 6 1/2 × 3 1/2 in, with 1/4 in beyond the point. ☐ 6 1/2 × 3 1/2 in" in trimmed.text
    assert "Trim each" not in step(block(*geese, size="12 x 3 in")).text
    ball = ("row (snowball fog with slate at tl br cut 1/4)", "make snowball as stitch and flip", "trim 1/8 in")
    said = step(block(*ball, size="6 in")).text
    assert "Trim each to 6 1/2 × 6 1/2 in, as much on one side as on the other. ☐ 6 1/2 × 6 1/2 in" in said


def test_a_star_of_strip_sets_is_made_row_by_row_and_each_step_says_its_size() -> None:
    """By hand, 18 in, three rows: 9 + 1/4 from the middle out; strips of 1.743 in are cut 1 3/4 in wide, so three of
    them are 3 × 1 1/4 + 1/2 = 4 1/4 in across, and a pair is √2 × √2 times the 3 3/4 in that they finish at.
    """
    facts = block("row (star45 points fog lantern slate rows 3 ground moss)", "make star45 as strip set", size="18 in")
    texts = step_texts(facts)
    assert [text.name for text in texts] == [
        "Segments of set 1", "Segments of set 2", "Segments of set 3", "Large diamonds", "Pairs", "Quarters", "Halves",
        "Block",
    ]  # fmt: skip
    assert [text.parts[-1].measure for text in texts[3:]] == [
        "4 1/4 in across, between both pairs of edges",
        "7 1/2 in between the side dots",
        "9 1/4 in from the bottom dot to the top edge",
        "9 1/4 in from the center dot to each outer edge",
        "18 1/2 × 18 1/2 in, with 1/4 in beyond each point",
    ]
    assert "Sew them together from top to bottom, right sides together: Lantern, Wet slate, and Harbour fog." in (
        texts[1].text
    )
    assert all(part.measure for text in texts for part in text.parts[-1:])


def test_rows_of_a_star_nest_because_their_sets_are_pressed_opposite_ways() -> None:
    facts = block("row (star45 points fog lantern slate rows 3 ground moss)", "make star45 as strip set", size="18 in")
    pressed = [" ".join(text.parts[0].sentences) for text in step_texts(facts)[:3]]
    assert ["toward the bottom" in words for words in pressed] == [True, False, True]
    assert "toward the top" in pressed[1]


def test_squares_that_overlap_at_opposite_corners_make_no_point() -> None:
    """By hand: corners of half the block at upper left and lower right do not share an edge; four of them do."""
    make = "make snowball as stitch and flip"
    two = step(block("row (snowball fog with slate at tl br cut 1/2)", make, size="6 in"))
    four = step(block("row (snowball fog with slate cut 1/2)", make, size="6 in"))
    assert two.parts[-1].measure == "6 1/2 × 6 1/2 in"
    assert four.parts[-1].measure == "6 1/2 × 6 1/2 in, with 1/4 in beyond each point"
