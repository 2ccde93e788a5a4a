"""What is written of a page in a PDF, and pages that were painted before."""

import pickle
import re
import zlib
from io import BytesIO

import pytest
from pypdf import PdfReader

from blockdsl.export.pdf import write_pdf
from blockdsl.export.pdf_page import paint_page
from blockdsl.export.pdf_text import shown
from blockdsl.export.printable import Unprintable
from blockdsl.marks.display_list import Anchor, Bookmark, Document, Figure, Kept, Link, Page, PageLabels, Path, TextMark

SQUARE = Path((((9.0, 9.0), (81.0, 9.0), (81.0, 81.0), (9.0, 81.0)),), fill="#ff0000")


def operators(*marks: Path | TextMark | Figure | Link | Anchor) -> str:
    (stream,) = paint_page(Page(612, 792, marks)).operators
    return zlib.decompress(stream).decode("ascii")


def test_a_square_of_an_inch_is_72_units_to_the_hundredth() -> None:
    assert "9 9 72 72 re\nf*\n" in operators(SQUARE)


def test_a_setting_is_written_once_for_marks_that_share_it() -> None:
    assert operators(SQUARE, SQUARE).count("1 0 0 rg") == 1


def test_a_line_without_colour_or_corners_leaves_nothing() -> None:
    assert paint_page(Page(612, 792, (Path((((0, 0), (1, 1)),)), Path((), stroke="#000000")))).operators == ()


def test_rules_and_boxes_beside_the_text_are_not_read_aloud() -> None:
    written = operators(SQUARE, TextMark(9, 9, "Fog", 9), SQUARE)

    assert re.findall(r"(/\w+) ?(?:BMC|<</MCID)", written) == ["/Artifact", "/P", "/Artifact"]
    assert written.count("EMC") == 3


def test_dots_are_dashes_with_round_ends_and_the_next_line_has_straight_ones_again() -> None:
    row = (((0.0, 0.0), (9.0, 0.0)),)
    dotted = Path(row, closed=False, stroke="#000000", dash=(0.05, 5.45), round_ends=True)

    written = operators(dotted, Path(row, closed=False, stroke="#000000"))

    assert "[0.05 5.45] 0 d\n1 J\n" in written
    assert "[] 0 d\n0 J\n" in written


def test_words_that_are_kerned_are_moved_together_and_shown_as_one() -> None:
    assert re.fullmatch(rb"\[<[0-9a-f]{4}>\d+<[0-9a-f]{4}>\]TJ\n", shown("AV", "regular", 9).operators)


def test_the_same_words_are_the_same_bytes_whatever_else_is_in_the_file() -> None:
    words = TextMark(72, 72, "Harbour Light 2 ⁷⁄₈", 9)
    alone, among = (
        PdfReader(BytesIO(write_pdf(Document("T", pages)))).pages[0].get_contents()
        for pages in (
            (Page(612, 792, (words,)),),
            (Page(612, 792, (words,)), Page(612, 792, (TextMark(9, 9, "Ω", 9),))),
        )
    )

    assert alone is not None
    assert among is not None
    assert alone.get_data() == among.get_data()


def test_letters_that_join_stand_in_the_page_as_they_are_written() -> None:
    assert b"/ActualText" in shown("سلام", "regular", 9).operators
    assert b"/ActualText" not in shown("Harbour 2 ⁷⁄₈ in", "bold", 9).operators


def test_a_page_that_was_painted_before_is_the_same_page_with_a_foot() -> None:
    body = (
        Figure("The block", (SQUARE,)),
        TextMark(72, 72, "Fog", 9),
        Link("end", 9, 9, 20, 20, (TextMark(9, 20, "on", 9),)),
    )
    foot, end = TextMark(72, 700, "page 1", 7), Anchor("end", 9, 9)
    kept = {"one": pickle.loads(pickle.dumps(paint_page(Page(612, 792, body))))}  # noqa: S301 - as the cache does it

    again = PdfReader(
        BytesIO(write_pdf(Document("T", (Page(612, 792, (end, Kept("one", "Fog on"), foot)),)), kept=kept))
    )
    anew = PdfReader(BytesIO(write_pdf(Document("T", (Page(612, 792, (end, *body, foot)),)))))

    assert again.pages[0].extract_text() == anew.pages[0].extract_text()
    assert tags(again) == tags(anew) == [("/Figure", 0), ("/P", 1), ("/Link", 2), ("/P", 3)]
    assert len(again.pages[0].annotations or ()) == 1
    assert list(again.named_destinations) == ["end"]


def tags(reader: PdfReader) -> list[tuple[str, int]]:
    """What the page's parts are, with the numbers that they have in it."""
    tree = reader.root_object["/StructTreeRoot"]
    section = tree["/K"]["/K"][0].get_object()  # type: ignore[index]
    found = [kid.get_object() for kid in section["/K"]]
    # A link stands in a paragraph, and leads where its annotation does.
    inner = [kid["/K"][0].get_object() if not isinstance(kid["/K"][0], int) else kid for kid in found]
    return [(kid["/S"], int(kid["/K"][0])) for kid in inner]


def test_links_lead_to_their_anchor_and_one_without_is_refused() -> None:
    link = Link("end", 10, 20, 30, 40, (TextMark(10, 50, "to the end", 9),))
    pages = (Page(612, 792, (link,)), Page(612, 792, (Anchor("end", 72, 100),)))
    reader = PdfReader(BytesIO(write_pdf(Document("T", pages))))

    (annotation,) = list(reader.pages[0].annotations or [])
    assert [float(side) for side in annotation.get_object()["/Rect"]] == [10, 732, 40, 772]
    destination = reader.named_destinations["end"]
    assert reader.get_destination_page_number(destination) == 1
    assert float(destination.top or 0) == 692
    with pytest.raises(Unprintable, match="no such anchor"):
        write_pdf(Document("T", pages[:1]))


def test_bookmarks_are_a_tree_and_pages_have_their_own_names() -> None:
    marks = (Bookmark("One", 0, (Bookmark("Within (é)", 1),)), Bookmark("Two", 2))
    labels = (PageLabels(0, "roman"), PageLabels(1, "decimal"))
    document = Document("T", (Page(612, 792, ()),) * 3, outline=marks, labels=labels)
    reader = PdfReader(BytesIO(write_pdf(document)))

    one, within, two = reader.outline
    assert isinstance(within, list)
    assert [str(item["/Title"]) for item in (one, *within, two)] == ["One", "Within (é)", "Two"]  # type: ignore[call-overload]
    assert reader.page_labels == ["i", "1", "2"]
