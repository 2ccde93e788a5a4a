"""The pattern sheet as a whole: nothing overlaps, nothing leaves the page, everything is said."""

from collections.abc import Iterable, Iterator

import pytest
from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.marks.display_list import Document, Figure, Mark, TextMark
from blockdsl.marks.theme import PAPERS, paper_named
from blockdsl.marks.typeset import CAP_HEIGHT, measure
from blockdsl.model.maker import Maker
from blockdsl.page.sheet import block_sheet
from blockdsl.page.single import colour_page, cutting_page, grid_page, letters_page
from tests.unit.pictures import sample

BLOCKS = {
    "Harbour Light": sample.harbour_light(),
    "in centimetres": sample.in_centimetres(),
    "long names": sample.strained(),
    "one patch": sample.checker(1, 1),
    "six fabrics": sample.checker(6, 6),
    "400 patches of 12 fabrics": sample.checker(20),
    "900 patches": sample.checker(30),
    "400 patches with long labels": sample.checker(20, label=sample.LONG_NAME),
    "rounds of logs": sample.log_rounds(),
    "slivers": sample.slivers(),
    "wide": sample.oblong(24, 6),
    "tall": sample.oblong(6, 18),
    "nothing to cut": replace(sample.harbour_light(), cutting=(), units=(), colourways=(), notes=()),
    "a long source": replace(sample.harbour_light(), sources=("A list of 1915, " * 30, "Our own."), family="star"),
    "a name without a space": replace(sample.harbour_light(), name="Leuchtturmwärterstochter" * 6),
}


def texts(marks: Iterable[Mark]) -> Iterator[TextMark]:
    for mark in marks:
        if isinstance(mark, TextMark):
            yield mark
        elif isinstance(mark, Figure):
            yield from texts(mark.marks)


def figures(marks: Iterable[Mark]) -> Iterator[Figure]:
    return (mark for mark in marks if isinstance(mark, Figure))


def said(document: Document) -> str:
    return "\n".join(text.text for page in document.pages for text in texts(page.marks))


def boxes(marks: Iterable[Mark]) -> list[tuple[float, float, float, float, str]]:
    """What each run of words covers, from its capitals' height to its baseline."""
    return [
        (t.x_pt, t.y_pt - CAP_HEIGHT * t.size_pt, t.x_pt + measure(t.text, t.size_pt, t.weight), t.y_pt, t.text)
        for t in texts(marks)
    ]


@pytest.mark.parametrize("facts", BLOCKS.values(), ids=BLOCKS.keys())
def test_no_words_lie_on_other_words(facts: BlockFacts) -> None:
    for page in block_sheet(facts).pages:
        covered = sorted(boxes(page.marks))
        for place, (_, top, right, bottom, words) in enumerate(covered):
            for left2, top2, _, bottom2, words2 in covered[place + 1 :]:
                if left2 >= right - 0.3:
                    break
                assert bottom2 <= top + 0.3 or top2 >= bottom - 0.3, f"{words!r} lies on {words2!r}"


@pytest.mark.parametrize("facts", BLOCKS.values(), ids=BLOCKS.keys())
def test_all_words_lie_in_the_box_that_prints_on_letter_and_a4(facts: BlockFacts) -> None:
    box = paper_named("letter").content
    for page in block_sheet(facts).pages:
        for left, top, right, bottom, words in boxes(page.marks):
            assert left >= box.x_pt - 1.5, words  # large capitals stand out a hair to look flush
            assert right <= box.right_pt + 0.1, words
            assert top >= box.y_pt, words
            assert bottom <= box.bottom_pt, words


def test_where_the_block_comes_from_stands_after_the_notes_in_small_type() -> None:
    facts = replace(sample.harbour_light(), sources=("Listed in 1915.",), family="star")
    words = [text for page in block_sheet(facts).pages for text in texts(page.marks)]
    note, source, family = (
        next(place for place, text in enumerate(words) if text.text.startswith(start))
        for start in ("The beams point", "Listed in 1915.", "Family: star.")
    )
    assert note < source < family
    assert words[source].size_pt < words[note].size_pt
    assert "Source" in said(block_sheet(facts)).splitlines()
    assert "Source" not in said(block_sheet(sample.harbour_light())).splitlines()


@pytest.mark.parametrize("paper", PAPERS)
def test_every_page_of_a_file_has_the_size_of_its_paper(paper: str) -> None:
    document = block_sheet(sample.checker(20), paper=paper)
    sizes = {(page.width_pt, page.height_pt) for page in document.pages}
    assert sizes == {(PAPERS[paper].width_pt, PAPERS[paper].height_pt)}


def test_letter_and_a4_break_the_pages_at_the_same_places() -> None:
    letter, a4 = (block_sheet(sample.strained(), paper=paper) for paper in ("letter", "a4"))
    assert [[t.text for t in texts(page.marks)] for page in letter.pages] == [
        [t.text for t in texts(page.marks)] for page in a4.pages
    ]


def test_an_unknown_paper_is_refused_by_name() -> None:
    with pytest.raises(ValueError, match="unknown paper 'napkin'"):
        block_sheet(sample.harbour_light(), paper="napkin")


def test_the_sheet_of_harbour_light_takes_two_pages() -> None:
    assert len(block_sheet(sample.harbour_light()).pages) == 2


def test_the_sheet_says_name_sizes_grid_cuts_units_and_cautions() -> None:
    words = said(block_sheet(sample.harbour_light()))
    for expected in (
        "Harbour Light",
        "12 × 12 in",
        "12 ¹⁄₂ × 12 ¹⁄₂ in",
        "4 × 4 squares of 3 in",
        "cut once corner to corner → 8 triangles",
        "Make 4",
        "Should measure 6 ¹⁄₂ × 3 ¹⁄₂ in",
        "Night",
        "The beams point outward; the slate squares meet the centre.",
        "Take care",
        "page 2 of 2",
    ):
        assert expected in words


def test_a_table_that_runs_over_pages_names_its_columns_and_its_fabric_again() -> None:
    pages = block_sheet(sample.checker(20, 1)).pages + block_sheet(sample.checker(20)).pages
    later = [[t.text for t in texts(page.marks)] for page in pages[1:]]
    assert any("Cutting, continued" in words and "piece" in words for words in later)


def test_every_picture_says_what_it_shows() -> None:
    document = block_sheet(sample.harbour_light())
    alternatives = [figure.alternative for page in document.pages for figure in figures(page.marks)]
    assert alternatives[0] == (
        "Harbour Light in color: 12 × 12 in finished, 40 patches of Harbour fog (light), Lantern (medium), "
        "Wet slate (dark)."
    )
    assert len(alternatives) == 6  # colour, letters, three units, the other colourway
    assert all(len(alternative) > 20 for alternative in alternatives)


def test_the_document_says_what_it_is() -> None:
    document = block_sheet(replace(sample.harbour_light(), maker=Maker("The maker", ("© 2026 The maker",))))
    assert document.title == "Harbour Light, 12 × 12 in"
    assert document.author == "The maker"
    assert document.rights == "© 2026 The maker"


@pytest.mark.parametrize("facts", BLOCKS.values(), ids=BLOCKS.keys())
def test_the_pictures_that_stand_alone_hold_all_their_words(facts: BlockFacts) -> None:
    pages = [colour_page(facts), letters_page(facts), grid_page(facts), cutting_page(facts)]
    for page in pages:
        for left, top, right, bottom, words in boxes(page.marks):
            assert left >= 0, words
            assert top >= 0, words
            assert right <= page.width_pt, words
            assert bottom <= page.height_pt, words
