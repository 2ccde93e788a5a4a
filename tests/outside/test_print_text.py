"""Text taken out of a PDF, judged by pypdfium2: what is meant is what is found, copied and read aloud."""

import pypdfium2
import pytest

from blockdsl.export.pdf import write_pdf
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Document, Page, TextMark


def taken_out(*texts: TextMark) -> str:
    document = pypdfium2.PdfDocument(write_pdf(Document("T", (Page(612, 792, texts),))))
    return str(document[0].get_textpage().get_text_bounded())


@pytest.mark.parametrize("weight", ["regular", "bold"])
@pytest.mark.parametrize(
    "words",
    [
        "Harbour Light",
        "Cut 4 squares 2 ⁷⁄₈ in × 12 ¹⁄₂ in",
        "Moss & <Fern> \"best\" 'b'",
        "Fine fluffy waffle office",
        "Æbleskål Žluťoučký Łódź 5 − 3 ≈ 2 → √2",
        "Ελληνικά Кириллица",
        "שלום",
        "שלום עולם",
        "Fabric שלום for corners",
    ],
)
def test_words_come_out_of_the_pdf_as_they_were_meant(words: str, weight: str) -> None:
    assert taken_out(TextMark(72, 72, words, 12, "bold" if weight == "bold" else "regular")) == words


def test_a_fraction_written_plainly_comes_out_as_a_fraction() -> None:
    assert taken_out(TextMark(72, 72, fraction_text("2 7/8 in"), 9)) == "2 ⁷⁄₈ in"


def test_turned_words_come_out_too() -> None:
    assert taken_out(TextMark(300, 300, "Straight grain", 9, turn_degrees=90)) == "Straight grain"


def test_arabic_letters_come_out_whole() -> None:
    assert sorted(taken_out(TextMark(72, 72, "سلام", 12))) == sorted("سلام")
