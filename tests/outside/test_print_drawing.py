"""An image shows what the PDF of its page shows, judged by pdfium, and its words lie where a font sets them."""

import os
import subprocess
import sys
from io import BytesIO
from pathlib import Path as FilePath

import numpy as np
import pypdfium2
import pytest
from PIL import Image

from blockdsl.export.pdf import write_pdf
from blockdsl.export.png import write_png
from blockdsl.export.svg import write_svg
from blockdsl.marks.display_list import Document, Figure, Mark, Page, Path, TextMark
from blockdsl.marks.hatch import HATCHES, hatch

FONTS = FilePath(__file__).parents[2] / "blockdsl" / "fonts"
RENDER = "import sys, cairosvg; cairosvg.svg2png(sys.stdin.buffer.read(), write_to=sys.stdout.buffer, dpi=72, scale=2)"


def render(drawing: bytes, folder: FilePath) -> np.ndarray:
    """Rendered in a process of its own, for fontconfig reads its settings once."""
    settings = folder / "fonts.conf"
    settings.write_text(f"<fontconfig><dir>{FONTS}</dir><cachedir>{folder}</cachedir></fontconfig>", encoding="utf-8")
    found = subprocess.run(
        [sys.executable, "-c", RENDER],
        input=drawing,
        capture_output=True,
        check=True,
        env={**os.environ, "FONTCONFIG_FILE": str(settings)},
    )
    return pixels(found.stdout)


def pixels(image: bytes) -> np.ndarray:
    with Image.open(BytesIO(image)) as opened:
        paper = Image.new("RGBA", opened.size, "white")
        return np.asarray(Image.alpha_composite(paper, opened.convert("RGBA")).convert("L")).astype(int)


def printed(page: Page) -> np.ndarray:
    """The PDF of a page as pdfium draws it, 144 dots to the inch."""
    bitmap = pypdfium2.PdfDocument(write_pdf(Document("T", (page,))))[0].render(scale=2)
    return np.asarray(bitmap.to_pil().convert("L")).astype(int)


def quilt_of_hatches() -> tuple[Mark, ...]:
    marks: list[Mark] = []
    for number in range(1, len(HATCHES) + 1):
        left, top = 20 + (number - 1) % 4 * 80, 20 + (number - 1) // 4 * 80
        patch = ((left, top), (left + 70, top + 10), (left + 60, top + 70), (left + 30, top + 20))
        fill = ("#dfe3e0", "#e0a030", "#3a4750")[number % 3]
        marks += [Path((patch,), fill=fill), *hatch(patch, number, fill), Path((patch,), stroke="#1d1d1b")]
    marks.append(Path((((20, 270), (320, 270)),), closed=False, stroke="#c02020", stroke_width_pt=2, dash=(6, 3)))
    hollow = (((20, 280), (80, 280), (80, 290), (20, 290)), ((30, 282), (70, 282), (70, 288), (30, 288)))
    return (Figure("Hatches", tuple(marks)), Path(hollow, fill="#123456"))


def test_shapes_of_an_image_are_those_that_are_printed() -> None:
    page = Page(340, 300, quilt_of_hatches())
    ours, theirs = pixels(write_png(page, dpi=144)), printed(page)
    assert ours.shape == theirs.shape == (600, 680)
    # Each renderer smooths edges in its own way.
    assert (np.abs(ours - theirs) > 32).mean() < 0.002
    assert (ours < 250).mean() > 0.1  # there is something to compare


@pytest.mark.parametrize("weight", ["regular", "bold"])
def test_words_of_an_image_stand_where_a_font_sets_them(tmp_path: FilePath, weight: str) -> None:
    words = TextMark(20, 40, "Harbour Light", 24, "bold" if weight == "bold" else "regular")
    page = Page(240, 60, (words,))
    ours, theirs = pixels(write_png(page, dpi=144)), render(write_svg(page, title="T"), tmp_path)
    assert box(ours) == pytest.approx(box(theirs), abs=3)  # 1.5 pt


def box(image: np.ndarray) -> tuple[int, ...]:
    rows, columns = np.nonzero(image < 128)
    return int(rows.min()), int(rows.max()), int(columns.min()), int(columns.max())
