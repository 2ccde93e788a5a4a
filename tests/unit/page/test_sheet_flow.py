"""Flowables over pages."""

from blockdsl.marks.display_list import Figure, Mark, Path, TextMark, moved
from blockdsl.marks.theme import Box
from blockdsl.page.flow import Flowable, run_over_pages, stacked

PAGE = Box(10, 20, 100, 100)


def words(
    text: str, height_pt: float, *, before_pt: float = 0, keep_with_next: bool = False, head: tuple[Flowable, ...] = ()
) -> Flowable:
    return Flowable(height_pt, (TextMark(0, 0, text, 9),), before_pt, keep_with_next, head)


def said(page: tuple[Mark, ...]) -> list[tuple[str, float]]:
    return [(mark.text, mark.y_pt) for mark in page if isinstance(mark, TextMark)]


def test_flowables_follow_each_other_down_the_page_with_their_white_space() -> None:
    (page,) = run_over_pages([words("a", 30), words("b", 30, before_pt=5)], PAGE)
    assert said(page) == [("a", 20), ("b", 55)]


def test_white_space_is_left_out_at_the_top_of_a_page() -> None:
    first, second = run_over_pages([words("a", 80), words("b", 30, before_pt=5)], PAGE)
    assert said(first) == [("a", 20)]
    assert said(second) == [("b", 20)]


def test_a_heading_goes_to_the_next_page_with_its_first_row() -> None:
    first, second = run_over_pages([words("a", 60), words("heading", 20, keep_with_next=True), words("row", 30)], PAGE)
    assert said(first) == [("a", 20)]
    assert said(second) == [("heading", 20), ("row", 40)]


def test_a_table_says_its_head_again_on_each_new_page() -> None:
    head = words("head", 10)
    rows = [words(f"row {place}", 40, head=(head,)) for place in range(5)]
    pages = run_over_pages([words("head", 10, keep_with_next=True), *rows], PAGE)
    assert [said(page) for page in pages] == [
        [("head", 20), ("row 0", 30), ("row 1", 70)],
        [("head", 20), ("row 2", 30), ("row 3", 70)],
        [("head", 20), ("row 4", 30)],
    ]


def test_a_chain_longer_than_a_page_still_breaks() -> None:
    chain = [words(str(place), 40, keep_with_next=True) for place in range(3)]
    assert [said(page) for page in run_over_pages(chain, PAGE)] == [[("0", 20), ("1", 60)], [("2", 20)]]


def test_marks_inside_a_figure_move_with_it() -> None:
    figure = Figure("a line", (Path((((0, 0), (1, 2)),), closed=False, dash=(1.0, 2.0)),))
    assert moved([figure], 10, 20) == (
        Figure("a line", (Path((((10, 20), (11, 22)),), closed=False, dash=(1.0, 2.0)),)),
    )


def test_flowables_can_be_stacked_without_pages() -> None:
    height, marks = stacked([words("a", 30, before_pt=7), words("b", 500, before_pt=5)])
    assert height == 535
    assert said(marks) == [("a", 0), ("b", 35)]
