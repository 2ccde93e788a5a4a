"""What a PDF says about itself."""

from datetime import UTC, datetime, timedelta, timezone
from io import BytesIO
from typing import Any

import pytest
from pypdf import PdfReader

from blockdsl.export import cairo_library
from blockdsl.export.cairo_library import CairoMissing, load_cairosvg
from blockdsl.export.pdf import write_pdf
from blockdsl.export.printable import Unprintable
from blockdsl.marks.display_list import Document, Figure, Page, Path, TextMark

SQUARE = Path((((9.0, 9.0), (18.0, 9.0), (18.0, 18.0)),), fill="#e0a030")
PAGE = Page(612, 792, (TextMark(72, 72, "Harbour Light", 12), Figure("The block", (SQUARE, TextMark(20, 20, "A", 8)))))


def read(document: Document, created: datetime | None = None) -> PdfReader:
    return PdfReader(BytesIO(write_pdf(document, created=created)))


def test_viewers_are_asked_to_print_at_real_size_and_told_title_and_language() -> None:
    reader = read(Document("Harbour Light", (PAGE,), language="en-GB", author="The maker", subject="A block"))
    assert reader.root_object["/ViewerPreferences"]["/PrintScaling"] == "/None"  # type: ignore[index]
    assert str(reader.root_object["/Lang"]) == "en-GB"
    assert reader.metadata is not None
    assert {name: str(value) for name, value in reader.metadata.items()} == {
        "/Title": "Harbour Light",
        "/Author": "The maker",
        "/Subject": "A block",
        "/Producer": "blockdsl",
    }


def test_a_moment_given_is_the_files_date_in_universal_time() -> None:
    reader = read(Document("T", (PAGE,)), datetime(2026, 3, 1, 1, 30, tzinfo=timezone(timedelta(hours=2))))
    assert reader.metadata is not None
    dates = {name: f"{reader.metadata[name]}" for name in ("/CreationDate", "/ModDate")}
    assert dates == {"/CreationDate": "D:20260228233000Z", "/ModDate": "D:20260228233000Z"}


def test_the_same_document_gives_the_same_bytes() -> None:
    document = Document("T", (PAGE, PAGE))
    moment = datetime(2026, 1, 1, tzinfo=UTC)
    assert write_pdf(document) == write_pdf(document)
    assert write_pdf(document, created=moment) == write_pdf(document, created=moment)


def test_files_that_differ_have_different_ids() -> None:
    ids = {str(read(Document(title, (PAGE,))).trailer["/ID"]) for title in ("One", "Two", "Two")}
    assert len(ids) == 2


def test_each_page_keeps_its_own_size() -> None:
    reader = read(Document("T", (Page(612, 792, ()), Page(792, 612, ()), Page(595.28, 841.89, ()))))
    sizes = [(float(page.mediabox.width), float(page.mediabox.height)) for page in reader.pages]
    assert sizes == [pytest.approx(size, abs=0.01) for size in ((612, 792), (792, 612), (595.28, 841.89))]


def test_figures_are_tagged_with_their_alternative_text_and_texts_as_paragraphs() -> None:
    second = Page(612, 792, (Figure("Outer", (Figure("Inner", (SQUARE,)),)), TextMark(9, 9, "End", 9)))
    tree = read(Document("T", (PAGE, second))).root_object["/StructTreeRoot"]
    assert tagged(tree) == [("/P", None), ("/Figure", "The block"), ("/Figure", "Outer"), ("/P", None)]


def tagged(node: Any) -> list[tuple[str, str | None]]:
    kids = node["/K"]
    found: list[tuple[str, str | None]] = []
    for kid in kids if isinstance(kids, list) else [kids]:
        element = kid.get_object()
        if element["/S"] in {"/Document", "/Sect"}:
            found += tagged(element)
        else:
            found.append((element["/S"], element.get("/Alt")))
    return found


def test_a_font_is_embedded_once_for_the_whole_file() -> None:
    pages = tuple(Page(612, 792, (TextMark(72, 72, f"Page {number}", 12),)) for number in range(20))
    reader = read(Document("T", pages))
    fonts = {id(font.get_object()) for page in reader.pages for font in page["/Resources"]["/Font"].values()}  # type: ignore[index]
    assert len(fonts) == 1


def test_a_document_without_pages_is_refused() -> None:
    with pytest.raises(Unprintable, match="without pages"):
        write_pdf(Document("T", ()))


@pytest.mark.parametrize(
    ("fault", "told"),
    [
        (OSError("no library called cairo was found"), "apt install libcairo2"),
        (ModuleNotFoundError("No module named 'cairosvg'"), "pip install cairosvg"),
    ],
)
def test_without_the_package_or_the_library_the_message_says_how_to_get_it(
    fault: Exception, told: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    def missing(name: str, *rest: Any) -> object:
        if name == "cairosvg":
            raise fault
        return original(name, *rest)

    original = __import__
    load_cairosvg.cache_clear()
    try:
        with monkeypatch.context() as patched:
            patched.setattr("builtins.__import__", missing)
            with pytest.raises(CairoMissing, match=told):
                cairo_library.load_cairosvg()
    finally:
        load_cairosvg.cache_clear()
    assert load_cairosvg()
