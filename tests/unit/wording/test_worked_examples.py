"""More of the worked examples of the design of the steps, sentence by sentence: strip sets, partial and set-in seams.

Expected texts are those that were worked out by hand before the program wrote any (tests/outside/reader/worked has
them whole). Where ours says the same in another way, the test says so.
"""

from tests.unit.model.blocks import block_of
from tests.unit.wording.said import texts
from tests.unit.wording.test_joining import CLOTH

LOCK_GATES = """
block "Lock Gates"
  size 9 in
  grid 3 x 3
  patch slate at 0,0 2,0 2,1 0,1
  patch tide at 2,0 3,0 3,2 2,2
  patch lantern at 1,2 3,2 3,3 1,3
  patch buoy at 0,1 1,1 1,3 0,3
  patch foam at 1,1 2,1 2,2 1,2
"""
DOUBLE_NINE = """
unit nine = checker 3 x 3 tide foam
block "Double Nine"
  size 9 in
  make nine as strip set
  row nine foam nine
  row foam nine foam
  row nine foam nine
"""
HALF_SQUARES_ON_POINT = """
block "Pair"
  size 3 in
  grid 2 x 2
  patch foam at 0,0 2,0 0,2
  patch buoy at 2,0 2,2 0,2
"""


def said(text: str) -> list[str]:
    return texts(block_of(CLOTH + text))


def test_a_partial_seam_is_measured_before_it_is_closed() -> None:
    """Lock Gates: 6 1/2 in and 9 1/2 in along the right edge, then the whole; worked in three steps, ours in one."""
    (whole,) = said(LOCK_GATES)
    first, rest = whole.split(" (b) ")
    second, third = rest.split(" (c) ")
    assert first.endswith(
        "right sides together, a 6 1/2 in edge of A (Wet slate) on the top edge of B, right ends even. The left end of "
        "A (Wet slate) extends beyond B. Sew the first 1 3/4 in from the right end; backstitch. Leave the rest open. "
        "Press the sewn part toward A. ☐ 6 1/2 in along the right edge"
    )
    assert second == (
        "Sew A (Tide) to the right edge of A (Wet slate) and B, right sides together. Press the seam toward Tide. Sew "
        "A (Lantern) to the bottom edge of B and A (Tide). Press the seam toward Lantern. Fold the loose end of A (Wet "
        "slate) out of the way. Sew A (Buoy red) to the left edge of B and A (Lantern). Press the seam toward Buoy "
        "red. ☐ 9 1/2 in along the right edge"
    )
    assert third == (
        "Place the loose end of A (Wet slate) on the top edge of A (Buoy red) and B, right sides together, edges even. "
        "Sew from 1/2 in before the stop to the left end. Press the seam toward A (Wet slate). ☐ 9 1/2 × 9 1/2 in"
    )


def test_two_strip_sets_make_the_nine_patches_of_double_nine() -> None:
    """Ours sews a nine-patch to both edges of B in one sentence."""
    first, second, nine, rows, middle, whole = said(DOUBLE_NINE)
    assert first == (
        "(a) Take 2 A strips (Tide) and 1 A strip (Foam), 1 1/2 × 17 1/2 in. Sew a Tide strip to each long edge of "
        "Foam, right sides together, starting the second seam at the opposite end. Press both seams toward Tide. ☐ 3 "
        "1/2 in across (b) Square up one end. Cut 10 segments 1 1/2 in wide. Square up again after every third. ☐ 1 "
        "1/2 × 3 1/2 in"
    )
    assert "1 1/2 × 9 in" in second
    assert "Cut 5 segments 1 1/2 in wide. Square up again after the third." in second
    assert nine == (
        "For each, take 2 segments of set 1 and 1 segment of set 2. Sew a segment of set 1 to each long edge of the "
        "segment of set 2, nesting the seams. Press both seams away from set 2. ☐ 3 1/2 × 3 1/2 in"
    )
    assert rows.endswith("Press both seams toward B. ☐ 9 1/2 × 3 1/2 in")
    assert middle.endswith("Press both seams toward B. ☐ 9 1/2 × 3 1/2 in")
    assert whole == (
        "Take rows 1, 2, and 3. Sew row 1 to the top edge of row 2, nesting the seams. Sew row 3 to its bottom edge in "
        "the same way. Press both seams toward row 2. ☐ 9 1/2 × 9 1/2 in"
    )


def test_a_half_square_of_two_triangles_is_trimmed_to_its_size() -> None:
    """Sea Mark, step 1, here a single one of 3 in: trimmed with the seam from corner to corner."""
    (only,) = said(HALF_SQUARES_ON_POINT)
    assert only.endswith(
        "Trim the dog-ears. Trim it to 3 1/2 × 3 1/2 in, with the seam from corner to corner. ☐ 3 1/2 × 3 1/2 in"
    )
