"""Foundation papers: how many are printed, what they say, and which way round they are drawn."""

from collections.abc import Iterable, Iterator

import pytest

from blockdsl.facts import BlockFacts
from blockdsl.fullsize.foundation import MOST_COPIES, foundation_pages, foundations_too_large
from blockdsl.fullsize.foundation_pattern import paper_patterns, turned
from blockdsl.marks.display_list import Document, Figure, Mark, TextMark
from blockdsl.marks.theme import PAPERS
from tests.unit.model.blocks import block
from tests.unit.sewing.test_foundation import TERN


def words_of(document: Document) -> list[list[str]]:
    return [[text.text for text in texts(page.marks)] for page in document.pages]


def texts(marks: Iterable[Mark]) -> Iterator[TextMark]:
    for mark in marks:
        if isinstance(mark, TextMark):
            yield mark
        elif isinstance(mark, Figure):
            yield from texts(mark.marks)


def figures(document: Document) -> list[str]:
    return [mark.alternative for page in document.pages for mark in page.marks if isinstance(mark, Figure)]


def beams(count: int, size: str = "6 x 3") -> BlockFacts:
    width, height = (int(side) for side in size.split(" x "))
    rows = ("row " + "beam " * count, "make beam as foundation")
    return block(*rows, size=f"{width * count} x {height} in", above="unit beam = geese lantern on fog slate")


def test_a_paper_is_printed_for_each_unit_that_the_block_needs() -> None:
    document = foundation_pages(beams(4), paper="letter")
    assert len(figures(document)) == 4
    assert sorted(word for page in words_of(document) for word in page if word.startswith("copy")) == [
        f"copy {number} of 4" for number in range(1, 5)
    ]


def test_of_very_many_papers_each_is_printed_once_and_says_how_many_to_print() -> None:
    count = MOST_COPIES + 1
    rows = ["row " + "beam " * 7] * 7
    facts = block(*rows, "make beam as foundation", size="28 x 14 in", above="unit beam = geese lantern on fog")
    document = foundation_pages(facts, paper="letter")
    assert len(figures(document)) == 1
    assert f"print {count}" in " ".join(" ".join(page) for page in words_of(document))


def test_the_first_copy_alone_lists_fabrics_and_roomy_sizes() -> None:
    """By hand: the goose of 6 x 3 in 4 x 7 1/2 (see test_foundation.py); a sky's legs of 3 in + 0.354 + 1: 4 1/2."""
    said = [word for page in words_of(foundation_pages(beams(2), paper="letter")) for word in page]
    # in the areas of both papers with the word "cut" before it, in the table of the first without
    assert (said.count("4 × 7 ¹⁄₂ in"), said.count("cut 4 × 7 ¹⁄₂ in")) == (1, 2)
    assert (said.count("½ of 4 ¹⁄₂ × 4 ¹⁄₂ in"), said.count("cut ½ of 4 ¹⁄₂ × 4 ¹⁄₂ in")) == (2, 4)
    assert [said.count(head) for head in ("Area", "Fabric", "Patch", "Cut")] == [1, 1, 1, 1]


def test_the_papers_are_the_mirror_image_of_the_unit() -> None:
    """As drawn the fog sky is at the left and the slate sky at the right; on the printed back the other way round."""
    (found,) = beams(1).foundations
    (paper,) = paper_patterns(found, beams(1), 1)
    middles = {patch.words.title: sum(x for x, _ in patch.sewing) / len(patch.sewing) for patch in paper.patches}
    assert middles["Wet slate"] < middles["Lantern"] < middles["Harbour fog"]


def test_a_paper_keeps_its_seams_where_its_patches_meet_however_it_is_turned() -> None:
    (found,) = beams(1).foundations
    (paper,) = paper_patterns(found, beams(1), 1)
    for _ in range(4):
        corners = {(round(x, 6), round(y, 6)) for patch in paper.patches for x, y in patch.sewing}
        ends = {(round(x, 6), round(y, 6)) for seam in paper.seams for x, y in seam}
        assert len(ends) == 3
        assert ends <= corners
        paper = turned(paper)


def test_a_unit_of_several_papers_says_how_they_are_joined() -> None:
    facts = block("row (checker 3 x 3 fog slate)", "make checker as foundation", size="6 in")
    said = [word for page in words_of(foundation_pages(facts, paper="a4")) for word in page]
    assert "section A" in said
    assert [word for word in said if "join A–B, then AB–C" in word]
    # once on each of the two papers that meet; the second seam is level, too, and has dots for TOP
    assert [said.count(mark) for mark in ("A–B", "AB–C")] == [2, 2]


def test_every_patch_has_its_number_on_the_paper_however_small_it_is() -> None:
    facts = block("row (rails fog slate fog slate fog slate fog slate)", "make rails as foundation", size="1 in")
    said = [text.text for page in foundation_pages(facts, paper="letter").pages for text in texts(page.marks)]
    # once in the patch and once in the list beside it
    assert all(said.count(f"A{number}") == 2 for number in range(1, 9))


@pytest.mark.parametrize("paper", [*PAPERS, "roll 36 in"])
def test_large_papers_run_over_tiles_and_number_their_patches_there(paper: str) -> None:
    document = foundation_pages(beams(1, "100 x 50"), paper=paper)
    tiles = [alternative for alternative in figures(document) if "Tile" in alternative]
    assert len(tiles) > 1
    said = [word for page in words_of(document) for word in page]
    assert {"A1", "A2", "A3"} <= set(said)


def test_a_paper_longer_than_a_page_can_be_is_named() -> None:
    facts = beams(1, "300 x 150")
    assert foundations_too_large(facts) == ("beam",)
    with pytest.raises(ValueError, match="beam"):
        foundation_pages(facts, paper="letter")


def test_a_block_without_papers_has_none_to_print() -> None:
    with pytest.raises(ValueError, match="no unit"):
        foundation_pages(block("row fog/slate"), paper="letter")


TERN_ROWS = ("row tern tern>", "row tern< tern>>", "make tern as foundation")


def test_edges_that_meet_are_marked_and_both_papers_say_which_end_is_the_top() -> None:
    document = foundation_pages(block(*TERN_ROWS, size="12 in", above=TERN), paper="letter")
    said = [word for page in words_of(document) for word in page]
    # four copies of A and four of B, each with its own TOP and that of the seam
    assert said.count("A–B") == 8
    assert said.count("TOP") == 16


def test_the_marks_of_two_papers_lie_on_one_line_when_they_are_laid_side_by_side() -> None:
    """Both run from the top of the seam: at the finished height of the unit, 6 in, 432 pt."""
    facts = block(*TERN_ROWS, size="12 in", above=TERN)
    one, other = paper_patterns(facts.foundations[0], facts, 1)
    (mine,), (theirs,) = one.marks, other.marks
    assert (mine.name, mine.end) == (theirs.name, theirs.end) == ("A–B", "TOP")
    for mark in (mine, theirs):
        (_, top), (_, bottom) = mark.line
        assert bottom - top == pytest.approx(432)
    # section A is left of the seam as the unit is drawn, so on its mirrored paper the seam is at its left
    assert mine.line[0][0] == min(x for x, _ in one.pattern.sewing)
    assert theirs.line[0][0] == max(x for x, _ in other.pattern.sewing)


@pytest.mark.parametrize("size", ["8 in", "16 in"])
def test_papers_that_are_too_large_for_a_page_have_their_table_on_a_page_before(size: str) -> None:
    pineapple = "(pineapple centre lantern with straight fog diagonal moss rounds 3 strip 1/2)"
    facts = block(f"row {pineapple}", "make pineapple as foundation", size=size)
    pages = words_of(foundation_pages(facts, paper="letter"))
    areas = [patch.number for patch in facts.foundations[0].papers[0].patches]
    assert len(areas) == 25
    tables = [word for page in pages for word in page if "tile" not in " ".join(page)]
    assert [number for number in areas if number not in tables] == []
    assert tables.count("Area") == 2


def test_pieces_that_lie_with_a_short_edge_along_the_line_are_named_below_the_table() -> None:
    above = "unit step\n  grid 6 x 1\n  patch fog at 0,0 1,0 1,1 0,1\n  patch slate at 1,0 6,0 6,1 1,1"
    facts = block("row step", "make step as foundation", size="6 x 1 in", above=above)
    said = [word for page in words_of(foundation_pages(facts, paper="letter")) for word in page]
    assert "A2: a short edge along the line." in said
