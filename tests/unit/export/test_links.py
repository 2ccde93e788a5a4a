"""Links, anchors, bookmarks and page labels in a PDF; a drawing has none of them."""

from io import BytesIO
from typing import Any

import pytest
from pypdf import PdfReader

from blockdsl.export.pdf import write_pdf
from blockdsl.export.png import write_png
from blockdsl.export.printable import Unprintable
from blockdsl.export.svg import write_svg
from blockdsl.marks.display_list import Anchor, Bookmark, Figure, Link, Page, PageLabels, Path, Publication, TextMark

SQUARE = Path((((80.0, 80.0), (90.0, 80.0), (90.0, 90.0)),), fill="#e0a030")
HERE = Page(
    612, 792, (Link("there", 72, 60, 100, 20, (TextMark(72, 72, "go there", 12),)), Figure("A corner", (SQUARE,)))
)
THERE = Page(612, 792, (Anchor("there", 72, 300), TextMark(72, 310, "there", 12)))
OUTLINE = (Bookmark("All", 0, (Bookmark("There", 1, (Bookmark("Deep", 1),)),)), Bookmark("End", 1))


def read(*pages: Page, outline: tuple[Bookmark, ...] = (), labels: tuple[PageLabels, ...] = ()) -> PdfReader:
    return PdfReader(BytesIO(write_pdf(Publication("T", iter(pages), outline=outline, labels=labels))))


def test_a_link_leads_to_the_place_of_its_anchor_and_can_be_clicked_in_its_box() -> None:
    reader = read(HERE, THERE)
    annotations: Any = reader.pages[0]["/Annots"]
    (annotation,) = annotations
    link = annotation.get_object()
    assert [float(side) for side in link["/Rect"]] == [72, 712, 172, 732]  # upward from the foot of a page of 792
    place = reader.named_destinations[str(link["/Dest"])]
    assert reader.get_destination_page_number(place) == 1
    assert (float(place.left or 0), float(place.top or 0)) == (72, 492)
    assert "go there" in reader.pages[0].extract_text()


def test_a_link_to_nowhere_is_refused_by_name() -> None:
    with pytest.raises(Unprintable, match="there"):
        read(HERE)


@pytest.mark.parametrize("name", ["", "a b", "it's", "ü"])
def test_an_anchor_whose_name_a_file_cannot_hold_is_refused(name: str) -> None:
    with pytest.raises(Unprintable, match="anchor"):
        read(Page(612, 792, (Anchor(name, 0, 0),)))


def test_bookmarks_make_a_tree() -> None:
    reader = read(HERE, THERE, outline=OUTLINE)
    outline: list[Any] = reader.outline
    assert outline[0].title == "All"
    assert outline[1][0].title == "There"
    assert [mark.title for mark in outline[1][1]] == ["Deep"]
    assert outline[2].title == "End"
    assert [reader.get_destination_page_number(mark) for mark in (outline[0], outline[1][0], outline[2])] == [0, 1, 1]


def test_pages_are_called_by_roman_figures_and_then_by_numbers() -> None:
    page = Page(612, 792, (TextMark(72, 72, "A", 12),))
    labels = (PageLabels(0, "roman"), PageLabels(2, "decimal"))
    assert read(page, page, page, page, labels=labels).page_labels == ["i", "ii", "1", "2"]


def test_pages_are_taken_one_by_one() -> None:
    taken: list[int] = []

    def pages() -> Any:
        for number in range(3):
            taken.append(number)
            yield Page(612, 792, (TextMark(72, 72, f"Page {number}", 12),))

    write_pdf(Publication("T", pages()))
    assert taken == [0, 1, 2]


def test_a_drawing_and_an_image_show_what_a_link_holds_and_no_link() -> None:
    page = Page(612, 792, (*HERE.marks, *THERE.marks))
    drawing = write_svg(page, title="T").decode()
    assert "go there" in drawing
    assert "<a" not in drawing
    assert write_png(page) == write_png(Page(612, 792, (*HERE.marks[0].marks, *HERE.marks[1:], *THERE.marks[1:])))  # type: ignore[union-attr]
