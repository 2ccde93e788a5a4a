"""The steps of four blocks, sentence by sentence.

Expected texts were worked out by hand before the program wrote any, as examples for the design of the steps. Where
seams are pressed is left to the plan of pressing, which has tests of its own.
"""

import re

import pytest

from tests.unit.model.blocks import block, block_of
from tests.unit.wording.said import texts, titles

CLOTH = """
fabric fog     "Harbour fog"  #dfe3e0 light
fabric foam    "Foam"         #f6f2e6 light
fabric lantern "Lantern"      #e0a030 medium
fabric buoy    "Buoy red"     #b93a2b medium
fabric tide    "Tide"         #4f93a0 medium
fabric slate   "Wet slate"    #3a4750 dark
fabric night   "Night water"  #17293f dark
"""
HARBOUR_LIGHT = """
unit beam = geese lantern on fog
unit corner
  row fog          fog/lantern
  row fog/lantern  slate
block "Harbour Light"
  size 12 in
  columns 1 2 1
  heights 1 2 1
  make beam as four at a time
  make half as two at a time
  row corner   beam                     corner>
  row beam<    (hourglass lantern fog)  beam>
  row corner<  beam>>                   corner>>
"""
SWALLOW = """
unit wing
  columns 2
  heights 1 1
  row (half-rectangle night lantern)
  row fog
block "Swallow"
  size 8 in
  row wing wing~
  row wing~>> wing>>
"""
HARBOUR_WATCH = """
block "Harbour Watch"
  size 8 in
  grid 4 x 4
  patch slate at 0,0 2,0 0,2
  patch slate at 2,0 4,0 4,2
  patch slate at 4,2 4,4 2,4
  patch slate at 2,4 0,4 0,2
  patch fog at 2,0 3,1 1,1
  patch fog at 3,1 4,2 3,3
  patch fog at 3,3 2,4 1,3
  patch fog at 1,3 0,2 1,1
  patch lantern at 1,1 3,1 3,3 1,3
"""
FOUR_COVES = """
unit cove = curve tide in foam radius 3/4
block "Four Coves"
  size 8 in
  row cove< cove
  row cove< cove
"""
_PRESS = re.compile(r"Press [^.]*\. ")


def unpressed(text: str) -> str:
    return _PRESS.sub("", text)


def said(text: str) -> list[str]:
    return [unpressed(each) for each in texts(block_of(CLOTH + text))]


def test_rows_and_corners_of_harbour_light_are_told_as_worked_out() -> None:
    _, _, _, _, corners, rows, middle, whole = said(HARBOUR_LIGHT)
    assert corners == (
        "For each, take 1 A (Harbour fog), 2 half-square triangles, and 1 A (Wet slate). Lay both half-square "
        "triangles with Harbour fog at the upper left. Sew A (Harbour fog) to the left edge of the first, right "
        "sides together. Sew A (Wet slate) to the right edge of the second. Sew the first row to the top edge of "
        "the second, nesting the seams. ☐ 3 1/2 × 3 1/2 in"
    )
    assert rows == (
        "For each, take 2 corners and 1 beam. Lay the beam with its point at the top. Sew a corner to its left "
        "edge, with Wet slate at the lower right. Sew a corner to its right edge, with Wet slate at the lower left. "
        "☐ 12 1/2 × 3 1/2 in"
    )
    assert middle == (
        "Take 2 beams and the hourglass. Lay the hourglass with Lantern at the top and bottom. Sew a beam to its "
        "left edge, with its point at the left. Sew a beam to its right edge, with its point at the right. ☐ 12 1/2 "
        "× 6 1/2 in"
    )
    assert whole == (
        "Take rows 1, 2, and 3. Lay row 1 with its point at the top. Row 3 is row 1 rotated a half turn. Sew row 1 "
        "to the top edge of row 2, nesting the seams. Sew row 3 to its bottom edge in the same way. ☐ 12 1/2 × 12 "
        "1/2 in, with 1/4 in beyond each point"
    )


def test_titles_tell_how_many_and_how_large() -> None:
    assert titles(block_of(CLOTH + HARBOUR_LIGHT))[4:] == [
        "Corners · make 4 · 3 × 3 in finished",
        "Rows 1 and 3 · make 2 · 12 × 3 in finished",
        "Row 2 · 12 × 6 in finished",
        "Block · 12 × 12 in finished",
    ]


def test_british_words_are_british() -> None:
    rows = texts(block_of(CLOTH + HARBOUR_LIGHT.replace("12 in", "30 cm")))[5]
    assert unpressed(rows) == (
        "For each, take 2 corners and 1 beam. Lay the beam with its point at the top. Sew a corner to its left "
        "edge, with Wet slate at the bottom right. Sew a corner to its right edge, with Wet slate at the bottom "
        "left. ☐ 31.5 × 9 cm"
    )


def test_pressed_open_nothing_nests() -> None:
    whole = texts(block_of(CLOTH + HARBOUR_LIGHT.replace("  make half", "  press open\n  make half")))[-1]
    assert "matching the seams" in whole
    assert "Press both seams open." in whole
    assert "nesting" not in whole


def test_halves_of_an_oblong_are_matched_at_dots_and_their_mirror_images_kept_apart() -> None:
    first, second, wing, reversed_wing, *_ = said(SWALLOW)
    assert first == (
        "(a) For each, take 1 A (Night water) and 1 A (Lantern). On the wrong side of each A, mark a dot 1/4 in from "
        "both edges at each end of its long edge. Place Lantern on Night water, right sides together, long edges "
        "even. Match the dots, so that the narrow corner of each extends beyond the wide corner of the other; pin. "
        "Sew the long edge. (b) Trim the dog-ears. Trim each to 4 1/2 × 2 1/2 in, with the seam 1/4 in inside two "
        "opposite corners. ☐ 4 1/2 × 2 1/2 in"
    )
    assert second.startswith("For each, take 1 Ar (Night water) and 1 Ar (Lantern).")
    assert "sew the long edge as in step 1. Trim as in step 1. " in second
    assert wing.startswith(
        "For each, take 1 half-rectangle triangle and 1 B (Harbour fog). Lay the half-rectangle triangle with Night "
        "water at the upper left. Sew B to its bottom edge"
    )
    assert reversed_wing.startswith(
        "For each, take 1 reversed half-rectangle triangle and 1 B (Harbour fog). Lay the reversed half-rectangle "
        "triangle with Night water at the upper right. Sew B to its bottom edge"
    )


def test_a_middle_on_point_is_added_in_rounds() -> None:
    middle, whole = said(HARBOUR_WATCH)
    assert middle == (
        "(a) Take 4 B (Harbour fog) and 1 C (Lantern). Crease the middle of each edge of C and of each long edge of "
        "B. Sew 2 B by their long edges to the left and right edges of C, right sides together, creases matched. "
        "Their points extend 3/8 in at both ends. Trim the dog-ears. (b) Sew 2 B by their long edges to the top and "
        "bottom edges of C, creases matched. Their points extend about 1/2 in. Trim the dog-ears. ☐ about 6 1/8 × 6 "
        "1/8 in"
    )
    assert whole.startswith(
        "(a) Take 4 A (Wet slate) and the middle. Lay the middle on point. Crease the middle of each edge of the "
        "middle and of each long edge of A. Sew 2 A by their long edges to the upper left and lower right edges of "
        "the middle, creases matched."
    )
    assert whole.endswith("☐ 8 1/2 × 8 1/2 in, with 1/4 in beyond each point")


def test_coves_are_pinned_at_the_middle_the_ends_and_the_marks() -> None:
    cove, rows, whole = said(FOUR_COVES)
    assert cove == (
        "For each, take 1 A (Foam) and 1 B (Tide). Crease the middle of each curved edge. Place A on B, right sides "
        "together, curved edges even, middles matched; pin. Bring the straight ends even and pin both, then the "
        "marks between. Sew the curved edge with A on top, easing it to lie flat under the needle. ☐ 4 1/2 × 4 1/2 "
        "in"
    )
    assert rows == (
        "For each, take 2 coves. Lay the first with Tide at the lower right. Lay the second with Tide at the lower "
        "left. Sew the second to the right edge of the first, right sides together, matching the seams. ☐ 8 1/2 × 4 "
        "1/2 in"
    )
    assert whole.startswith("Take rows 1 and 2. Lay both with Tide in the middle of their bottom edges.")


@pytest.mark.parametrize("text", [HARBOUR_LIGHT, SWALLOW, HARBOUR_WATCH, FOUR_COVES])
def test_every_step_ends_with_a_measure_and_names_no_numbered_unit(text: str) -> None:
    for each in texts(block_of(CLOTH + text)):
        assert "☐ " in each
        assert not re.search(r"\bunit \d", each)


def test_three_rows_alike_are_listed_and_four_are_counted_from_the_first_to_the_last() -> None:
    for rows, said in ((3, "Rows 1, 2, and 3 · make 3"), (4, "Rows 1 to 4 · make 4")):
        title = titles(block(*["row fog slate moss"] * rows))[0]
        assert title.startswith(said)
