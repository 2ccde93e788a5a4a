"""The steps as pictures: on the sheet, and each on a page of its own."""

from collections.abc import Iterable, Iterator

import pytest

from blockdsl.marks.display_list import Figure, Mark, Path, TextMark
from blockdsl.marks.theme import paper_named
from blockdsl.marks.typeset import measure
from blockdsl.page.sheet import block_sheet
from blockdsl.page.step_slide import HEIGHT_PT, WIDTH_PT, StepSlides
from blockdsl.pictures.step import part_moves
from tests.unit.model.blocks import block

CORNER = "unit corner\n  row fog fog/slate\n  row fog/slate moss"
BLOCKS = {
    "corners": block("row corner corner>", "row corner< corner>>", "make half as two at a time", above=CORNER),
    "mirrored": block("row corner corner~", above="unit corner\n  row fog slate\n  row moss moss", size="8 x 4 in"),
    "a row of twelve": block("row " + "fog slate " * 6, size="24 x 2 in"),
    "pinwheel of rectangles": block(
        "grid 3 x 3",
        "patch fog at 0,0 2,0 2,1 0,1",
        "patch moss at 2,0 3,0 3,2 2,2",
        "patch fog at 1,2 3,2 3,3 1,3",
        "patch moss at 0,1 1,1 1,3 0,3",
        "patch slate at 1,1 2,1 2,2 1,2",
    ),
    "strips": block("row (rails fog slate moss)", "make rails as strip set", size="6 in"),
    "strip sets sewn as an earlier one": block(
        "row (checker 3 x 3 fog slate)  (checker 3 x 3 slate fog)",
        "row (checker 3 x 3 slate fog) fog",
        "make checker as strip set",
    ),
}


def every(marks: Iterable[Mark]) -> Iterator[TextMark | Path]:
    for mark in marks:
        if isinstance(mark, Figure):
            yield from every(mark.marks)
        elif isinstance(mark, TextMark | Path):
            yield mark


def extent(marks: Iterable[Mark]) -> tuple[float, float, float, float]:
    xs: list[float] = []
    ys: list[float] = []
    for mark in every(marks):
        if isinstance(mark, TextMark):
            xs += [mark.x_pt, mark.x_pt + measure(mark.text, mark.size_pt, mark.weight)]
            ys += [mark.y_pt - mark.size_pt * 0.7, mark.y_pt + mark.size_pt * 0.25]
        else:
            xs += [x for ring in mark.rings for x, _ in ring]
            ys += [y for ring in mark.rings for _, y in ring]
    return min(xs), min(ys), max(xs), max(ys)


@pytest.mark.parametrize("name", BLOCKS)
def test_nothing_of_the_steps_leaves_the_box_that_prints_everywhere(name: str) -> None:
    box = paper_named("letter").content
    for page in block_sheet(BLOCKS[name]).pages:
        left, top, right, bottom = extent(page.marks)
        assert left >= box.x_pt - 1.5
        assert right <= box.right_pt + 1.5
        assert top >= box.y_pt - 1.5
        assert bottom <= box.bottom_pt + 3.0


@pytest.mark.parametrize("name", BLOCKS)
def test_every_step_has_a_page_16_to_9_that_holds_all_of_it(name: str) -> None:
    facts = BLOCKS[name]
    assert facts.steps
    slides = StepSlides(facts)
    for step in facts.steps:
        page = slides.page(step.number)
        assert (page.width_pt, page.height_pt) == (WIDTH_PT, HEIGHT_PT)
        assert page.width_pt * 9 == page.height_pt * 16
        left, top, right, bottom = extent(page.marks)
        assert min(left, top) > 0
        assert right < WIDTH_PT
        assert bottom < HEIGHT_PT


def test_a_step_that_is_not_there_is_refused_by_number() -> None:
    with pytest.raises(ValueError, match="has no step 9; it has 4"):
        StepSlides(BLOCKS["corners"]).page(9)


def test_every_picture_of_a_step_says_what_it_shows() -> None:
    said = [
        figure.alternative
        for page in block_sheet(BLOCKS["mirrored"]).pages
        for figure in page.marks
        if isinstance(figure, Figure)
    ]
    assert any("the parts apart, 1 A (Harbour fog)" in words for words in said)
    assert any("arrows show the way to press" in words for words in said)


def test_parts_that_are_joined_from_left_to_right_stand_apart_from_left_to_right() -> None:
    step = BLOCKS["a row of twelve"].steps[-1]
    moves = part_moves(step.hands[0])
    assert [x for x, _ in moves] == sorted(x for x, _ in moves)
    assert {round(y, 9) for _, y in moves} == {0.0}
    assert abs(sum(x for x, _ in moves)) < 1e-9
