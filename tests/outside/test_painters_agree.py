"""The PDF and the SVG of a page show the same picture, on every page of the demo book.

The judges are two renderers that are none of ours: pdfium for the PDF, CairoSVG for the drawing. CairoSVG knows no
kerning and takes fonts from the system, so it is given the place of every letter and our fonts alone, with the figures
of fractions where typesetting has them. What is compared is then letters, lines and colours in their places.

A pixel agrees when the other picture has its tone at this place or at a neighbour's: two renderers share out the grey
of an edge differently.
"""

import os
import subprocess
import sys
from io import BytesIO
from pathlib import Path

import numpy as np
import pypdfium2
import pytest
from fontTools.ttLib import TTFont
from PIL import Image

from blockdsl import pipeline
from blockdsl.analysis import FileReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.export.pdf import write_pdf
from blockdsl.export.svg import write_svg
from blockdsl.fonts import FontWeight, font_bytes
from blockdsl.marks.display_list import Document, Page
from blockdsl.page.book.book import book_document
from tests.fonts.make_core import set_fraction_figures

SCALE = 2
STEP = 2
"""Every second page, and all kinds of pages are still among them: drawing one takes half a second."""
TONES = 64
"""Of 255: so much two renderers may differ at the edge of a letter."""
MOST = 0.01
"""Of a page's pixels. A quilt's picture is mostly hair lines, which each renderer thickens in its own way."""
RENDER = """
import sys, cairosvg
from pathlib import Path
for drawing in sorted(Path(sys.argv[1]).glob("*.svg")):
    cairosvg.svg2png(url=str(drawing), write_to=str(drawing.with_suffix(".png")), dpi=72, scale=float(sys.argv[2]))
"""


@pytest.fixture(scope="module")
def pages(project: Path) -> list[Page]:
    path = project / "library" / "demo" / "book.block"
    problems = Problems()
    (book,) = pipeline.run(
        Source(str(path), path.read_text(encoding="utf-8")), FileReader(project), problems
    ).facts.books
    return list(book_document(book).pages)


@pytest.fixture(scope="module")
def drawn(pages: list[Page], tmp_path_factory: pytest.TempPathFactory) -> list[np.ndarray]:
    """The pages as CairoSVG draws them, in a process of its own, for fontconfig reads its settings once."""
    folder = tmp_path_factory.mktemp("drawn")
    weights: tuple[FontWeight, ...] = ("regular", "bold")
    for weight in weights:
        font = TTFont(BytesIO(font_bytes(weight)))
        set_fraction_figures(font)
        font.save(folder / f"{weight}.ttf")
    settings = folder / "fonts.conf"
    settings.write_text(f"<fontconfig><dir>{folder}</dir><cachedir>{folder}</cachedir></fontconfig>", encoding="utf-8")
    for place, page in enumerate(pages[::STEP]):
        (folder / f"{place:03}.svg").write_bytes(write_svg(page, title="Page", place_letters=True))
    environment = {**os.environ, "FONTCONFIG_FILE": str(settings)}
    command = [sys.executable, "-c", RENDER, str(folder), str(SCALE)]
    subprocess.run(command, check=True, capture_output=True, env=environment)
    return [tones(Image.open(path)) for path in sorted(folder.glob("*.png"))]


def tones(image: Image.Image) -> np.ndarray:
    paper = Image.new("RGBA", image.size, "white")
    return np.asarray(Image.alpha_composite(paper, image.convert("RGBA")).convert("RGB")).astype(np.int16)


def beyond(one: np.ndarray, other: np.ndarray) -> np.ndarray:
    """Where a pixel of one picture has a tone that the other has neither there nor around it."""
    low, high = spread(other, np.minimum), spread(other, np.maximum)
    return np.asarray(((one < low - TONES) | (one > high + TONES)).any(axis=-1))


def spread(image: np.ndarray, choose: np.ufunc) -> np.ndarray:
    """The darkest or the lightest tone of each pixel and its eight neighbours."""
    down = np.pad(image, ((1, 1), (0, 0), (0, 0)), mode="edge")
    rows = choose(choose(down[:-2], down[1:-1]), down[2:])
    across = np.pad(rows, ((0, 0), (1, 1), (0, 0)), mode="edge")
    found: np.ndarray = choose(choose(across[:, :-2], across[:, 1:-1]), across[:, 2:])
    return found


def test_pdf_and_drawing_of_every_page_of_the_book_show_the_same(pages: list[Page], drawn: list[np.ndarray]) -> None:
    printed = pypdfium2.PdfDocument(write_pdf(Document("Book", tuple(pages), labels=(), outline=())))
    assert len(printed) == len(pages) > 20
    assert len(drawn) == len(pages[::STEP])
    shares = {}
    for place, theirs in enumerate(drawn):
        ours = tones(printed[place * STEP].render(scale=SCALE).to_pil())
        assert ours.shape == theirs.shape
        assert (ours < 250).any()  # there is something to compare
        shares[place * STEP + 1] = float((beyond(ours, theirs) | beyond(theirs, ours)).mean())
    assert {number: share for number, share in shares.items() if share > MOST} == {}


def test_a_letter_out_of_place_would_be_seen() -> None:
    one = np.full((40, 40, 3), 255, dtype=np.int16)
    other = one.copy()
    one[10:20, 10:14] = 0
    other[10:20, 13:17] = 0
    assert beyond(one, other).mean() > MOST
