"""The steps of units on foundation papers, word for word."""

from blockdsl.wording.steps import step_texts
from tests.unit.model.blocks import block
from tests.unit.sewing.test_foundation import TERN

ROWS = ("row tern tern>", "row tern< tern>>", "make tern as foundation")


def steps(*lines: str, size: str, above: str = "") -> list[tuple[str, str]]:
    """Title and text of each step."""
    return [(text.title, text.text) for text in step_texts(block(*lines, size=size, above=above))]


def test_sections_are_steps_that_are_joined_by_another() -> None:
    """The worked example of a unit in two sections: every word of its first three steps."""
    first, second, third, *_ = steps(*ROWS, size="12 in", above=TERN)
    assert first == (
        "Sections A · make 4 · 3 × 6 in finished",
        (
            "(a) Print 4 papers A at actual size and check the test square. Cut them apart outside the solid line. "
            "Set a short stitch, about 15 to the inch. "
            "(b) For each, take 1 A1 (Wet slate), 1 A2 (Harbour fog), and 1 A3 (Harbour fog). Place A1 on the blank "
            "side of the paper, right side up, over area A1 and at least 1/4 in beyond it all around; pin. "
            "(c) Place A2 on A1, right sides together, a long edge 1/4 in beyond the line between the two areas. Fold "
            "A2 back along the line. It must cover area A2 and 1/4 in beyond it all around; shift it if it does not, "
            "then fold it forward and pin. "
            "(d) Turn the paper over. Sew on the line, from 1/4 in before it to 1/4 in beyond it. Fold the paper back "
            "along the line and trim the seam to 1/4 in. Press A2 over its area. "
            "(e) Add A3 in the same way, on the line between A1 and A3. "
            "(f) Cut paper and fabric on the solid line. Leave the paper in. ☐ 3 1/2 × 6 1/2 in"
        ),
    )
    assert second == (
        "Sections B · make 4 · 3 × 6 in finished",
        (
            "For each, take 1 paper B, 1 B1 (Harbour fog), and 1 B2 (Moss). Sew them as in step 1: B1 first, then B2 "
            "on the line between B1 and B2. ☐ 3 1/2 × 6 1/2 in"
        ),
    )
    assert third == (
        "Terns · make 4 · 6 × 6 in finished",
        (
            "For each, take 1 section A and 1 section B. Place section A on section B, right sides together, the edges "
            "marked A–B even, the TOP marks at the same end; pin. Sew on the dashed line. Remove the paper from the "
            "seam allowance. Press the seam toward section A. ☐ 6 1/2 × 6 1/2 in"
        ),
    )


def test_the_papers_come_out_at_the_end_of_the_block() -> None:
    *before, (_, last) = steps(*ROWS, size="12 in", above=TERN)
    assert "Remove the papers. ☐ 12 1/2 × 12 1/2 in" in last
    assert not any("Remove the papers" in text for _, text in before)


def test_a_block_that_is_one_unit_on_papers_keeps_them_until_it_is_sewn_to_others() -> None:
    ((title, text),) = steps("row (geese lantern on fog)", "make geese as foundation", size="4 x 2 in")
    assert title == "Block · 4 × 2 in finished"
    assert "Print 1 paper A at actual size" in text
    assert "Place A2 on A1, right sides together, its long edge 1/4 in beyond" in text
    assert text.endswith(
        "Leave the paper in. Remove the papers when the edges of the block are sewn to others. ☐ 4 1/2 × 2 1/2 in"
    )


def test_a_unit_and_its_mirror_image_have_papers_and_steps_of_their_own() -> None:
    above = "unit one = geese fog on lantern slate"
    told = steps("row one one~", "make one as foundation", size="12 x 3 in", above=above)
    assert "paper A" in told[0][1]
    assert "1 paper B" in told[1][1]
    assert len(told) == 3


def test_more_than_two_sections_are_joined_one_by_one_and_level_seams_by_dots() -> None:
    told = steps("row (checker 3 x 3 fog slate)", "make checker as foundation", size="6 in")
    title, text = told[-1]
    assert title == "Block · 6 × 6 in finished"
    assert text.startswith(
        "(a) Take 1 section A, 1 section B, and 1 section C. Place section A on section B, right sides together, the "
        "edges marked A–B even, the dots at the same end. Match the seams and pin."
    )
    # both rows are pressed toward the piece added last, the same way: matched, and not nested
    assert (
        "(b) Place sections A and B, joined, on section C, right sides together, the edges marked AB–C even, the dots "
        "at the same end. Match the seams and pin. Sew on the dashed line. Remove the paper from the seam allowance. "
        "Press the seam away from section C."
    ) in text


def test_joins_nest_where_the_allowances_of_both_sections_lie_opposite_ways() -> None:
    """Each row is sewn from its narrow end, and pressed away from it: 1, 2, 3 to the right; 3, 2, 1 to the left."""
    above = """unit steps
  grid 6 x 2
  patch fog at 0,0 1,0 1,1 0,1
  patch slate at 1,0 3,0 3,1 1,1
  patch moss at 3,0 6,0 6,1 3,1
  patch fog at 0,1 3,1 3,2 0,2
  patch slate at 3,1 5,1 5,2 3,2
  patch moss at 5,1 6,1 6,2 5,2"""
    told = steps("row steps", "make steps as foundation", size="12 x 4 in", above=above)
    assert "the dots at the same end. Nest the seams and pin. Sew on the dashed line." in told[-1][1]


def test_a_section_that_is_no_rectangle_is_measured_along_a_marked_edge() -> None:
    """By hand: half of 4 in square, its long edge 5.66 in. Each point is trimmed 1/4 in beyond the corner, square to
    the leg: on the long edge's cutting line that is 1/4 (root 2 - 1) = 0.10 in beyond the corner. 5.86 in.
    """
    first, *_ = steps("row (hourglass fog slate)", "make hourglass as foundation", size="4 in")
    assert "☐ about 5 7/8 in along the edge marked A–B" in first[1]


def test_british_papers_are_told_in_centimetres() -> None:
    first, _, third, *_ = steps(*ROWS, size="30 cm", above=TERN)
    assert "Set a short stitch, about 6 to the centimetre." in first[1]
    assert "Press the seam towards section A. ☐ 16.5 × 16.5 cm" in third[1]


def test_many_areas_are_told_by_their_table() -> None:
    rows = "row (rails fog slate fog slate fog slate fog slate)"
    ((_, text),) = steps(rows, "make rails as foundation", size="8 in")
    assert "(b) Take the pieces A1 to A8 of its table." in text
    assert (
        "Add A3 to A8 in the same way, in the order of their numbers, each on the line between it and those before it."
    ) in text
