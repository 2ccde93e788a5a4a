"""Real size, judged by pypdfium2 (what a printer would rasterise) and pypdf (what the file says)."""

import re
from io import BytesIO

import numpy as np
import pypdfium2
import pytest
from pypdf import PdfReader

from blockdsl.export.pdf import write_pdf
from blockdsl.marks.display_list import Document, Page, Path

DPI = 600
TOLERANCE_MM = 0.05
PAPERS = {"letter": (612.0, 792.0), "a4": (595.2756, 841.8898), "tabloid": (792.0, 1224.0)}


def square(left: float, top: float, side: float) -> tuple[tuple[float, float], ...]:
    return ((left, top), (left + side, top), (left + side, top + side), (left, top + side))


@pytest.mark.parametrize("paper", PAPERS)
def test_an_inch_square_measures_an_inch_on_paper_and_lies_where_it_should(paper: str) -> None:
    page = Page(*PAPERS[paper], (Path((square(100, 150, 72),), fill="#000000"),))
    image = pypdfium2.PdfDocument(write_pdf(Document("T", (page,))))[0].render(scale=DPI / 72, grayscale=True)
    ink = 1 - np.asarray(image.to_numpy()).reshape(image.height, image.width) / 255
    rows, columns = ink.sum(axis=1), ink.sum(axis=0)
    millimetre = 25.4 / DPI
    assert columns.max() * millimetre == pytest.approx(25.4, abs=TOLERANCE_MM)
    assert rows.max() * millimetre == pytest.approx(25.4, abs=TOLERANCE_MM)
    assert int(np.argmax(columns > 0)) * millimetre == pytest.approx(100 / 72 * 25.4, abs=TOLERANCE_MM)
    assert int(np.argmax(rows > 0)) * millimetre == pytest.approx(150 / 72 * 25.4, abs=TOLERANCE_MM)


def test_the_content_stream_says_72_units_for_an_inch_and_no_scale_but_the_turn_of_the_y_axis() -> None:
    page = Page(612, 792, (Path((square(100.25, 150, 72),), stroke="#000000"),))
    content = PdfReader(BytesIO(write_pdf(Document("T", (page,))))).pages[0].get_contents()
    assert content is not None
    stream = content.get_data().decode("latin-1")
    assert re.findall(r"^(.*) cm$", stream, re.MULTILINE) == ["1 0 0 -1 0 792"]
    found = re.search(r"([\d.]+) ([\d.]+) ([\d.]+) ([\d.]+) re", stream)
    assert found is not None
    assert [float(number) for number in found.groups()] == pytest.approx([100.25, 150, 72, 72], abs=0.002)
