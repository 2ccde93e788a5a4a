"""Every kind of PDF that is written opens in four other programs, none of which has anything to say against it.

Judges: qpdf (the file's structure), poppler's pdfinfo and pdftotext (what is in it), Ghostscript (what a printer's
interpreter makes of it) and pypdfium2 (what a browser shows). They are Debian's qpdf, poppler-utils and ghostscript.
"""

from __future__ import annotations

import re
import shutil
import subprocess
from collections import Counter
from functools import cache
from io import BytesIO
from pathlib import Path
from typing import Any

import pypdfium2
import pytest
from pypdf import PdfReader

from blockdsl.export.pdf import write_pdf
from blockdsl.fullsize.templates import template_pages
from blockdsl.marks.display_list import Document
from blockdsl.marks.theme import PAPERS, paper_named
from blockdsl.page.scale_check_page import check_print_page
from blockdsl.page.sheet import block_sheet, quilt_sheet
from tests.unit.fullsize.sample_templates import block_of, half_square, small_templates
from tests.unit.page.quilts import harbour_quilt
from tests.unit.pictures.sample import harbour_light

ROLLS = ("roll 24 in", "roll 36 in", "roll 90 cm")
SHEETS = [f"sheet on {paper}" for paper in PAPERS]
TEMPLATES = [f"templates on {paper}" for paper in (*PAPERS, *ROLLS)]
TILED = [f"tiles on {paper}" for paper in (*PAPERS, "roll 24 in")]
CHECKS = [f"check on {paper}" for paper in ("letter", "a4", "roll 24 in")]
QUILTS = [f"quilt on {paper}" for paper in ("letter", "a4", "tabloid")]
KINDS = [*SHEETS, *TEMPLATES, *TILED, *CHECKS, *QUILTS]


def document_of(kind: str) -> Document:
    what, paper = kind.split(" on ")
    if what == "sheet":
        return block_sheet(harbour_light(), paper=paper)
    if what == "quilt":
        return quilt_sheet(harbour_quilt(), paper=paper)
    if what == "check":
        return Document("Does this printer print at actual size?", (check_print_page(paper),))
    # No paper, and no roll of 24 in, holds a triangle of 30 in.
    block = block_of(small_templates()) if what == "templates" else block_of([half_square("H", 30)])
    return template_pages(block, paper=paper)


@cache
def written(kind: str) -> bytes:
    return write_pdf(document_of(kind))


@pytest.fixture(params=KINDS)
def kind(request: pytest.FixtureRequest) -> str:
    return str(request.param)


@pytest.fixture
def printed(kind: str, tmp_path: Path) -> Path:
    path = tmp_path / "printed.pdf"
    path.write_bytes(written(kind))
    return path


def said_by(program: str, *arguments: str) -> str:
    """What a program says on both its channels; it must be there and end well."""
    if shutil.which(program) is None:
        pytest.fail(f"{program} is missing: sudo apt-get install qpdf poppler-utils ghostscript")
    done = subprocess.run([program, *arguments], capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout + done.stderr


def test_qpdf_finds_nothing_wrong_in_the_file(printed: Path) -> None:
    said = said_by("qpdf", "--check", str(printed))
    assert "No syntax or stream encoding errors found" in said
    assert "WARNING" not in said


def test_ghostscript_interprets_every_page_and_says_nothing_else(printed: Path, kind: str) -> None:
    said = said_by("gs", "-dNOPAUSE", "-dBATCH", "-dSAFER", "-sDEVICE=nullpage", str(printed))
    pages = len(document_of(kind).pages)
    lines = [line for line in said.splitlines() if line and not line.startswith(("GPL", "Copyright", "This software"))]
    told = "see the file COPYING for details."
    assert [line for line in lines if line != told] == [
        f"Processing pages 1 through {pages}.",
        *(f"Page {number}" for number in range(1, pages + 1)),
    ]


def test_poppler_tells_the_pages_and_their_size_without_a_warning(printed: Path, kind: str) -> None:
    document = document_of(kind)
    said = said_by("pdfinfo", "-f", "1", "-l", "-1", str(printed))
    assert not re.search("warning|error", said, re.IGNORECASE), said
    told = dict(line.split(":", 1) for line in said.splitlines() if ":" in line)
    assert int(told["Pages"]) == len(document.pages)
    assert told["Title"].strip() == document.title
    sizes = re.findall(r"^Page +\d+ size: +([\d.]+) x ([\d.]+) pts", said, re.MULTILINE)
    assert len(sizes) == len(document.pages)
    for size, page in zip(sizes, document.pages, strict=True):
        assert [float(side) for side in size] == pytest.approx([page.width_pt, page.height_pt], abs=0.01)


def test_poppler_reads_the_words_without_a_warning(printed: Path, kind: str) -> None:
    words = said_by("pdftotext", "-layout", str(printed), "-")
    assert not re.search("Syntax (Warning|Error)", words)
    assert ("Does this printer print at actual size?" if kind.startswith("check") else "Harbour Light") in words


def test_a_browsers_reader_paints_every_page(printed: Path, kind: str, capfd: pytest.CaptureFixture[str]) -> None:
    document = pypdfium2.PdfDocument(printed)
    assert len(document) == len(document_of(kind).pages)
    for page in document:
        pixels = page.render(scale=0.1, grayscale=True).to_numpy()
        assert pixels.min() < pixels.max()
    document.close()
    assert capfd.readouterr() == ("", "")


def test_viewers_are_asked_not_to_scale(kind: str) -> None:
    root: Any = PdfReader(BytesIO(written(kind))).trailer["/Root"]
    assert root["/ViewerPreferences"]["/PrintScaling"] == "/None"


def test_all_pages_of_a_file_are_alike_in_size_and_lie_alike(kind: str) -> None:
    pages = PdfReader(BytesIO(written(kind))).pages
    assert len({(float(page.mediabox.width), float(page.mediabox.height)) for page in pages}) == 1
    assert {int(page.get("/Rotate", 0)) for page in pages} == {0}


def test_the_page_is_the_paper_upright_or_on_its_side(kind: str) -> None:
    page = PdfReader(BytesIO(written(kind))).pages[0].mediabox
    paper = paper_named(kind.split(" on ")[1])
    sides = (float(page.width), float(page.height))
    if paper.roll:
        assert sides[0] == pytest.approx(paper.width_pt, abs=0.01)
        assert sides[1] <= 14_400
    else:
        assert sorted(sides) == pytest.approx(sorted((paper.width_pt, paper.height_pt)), abs=0.01)


def test_each_font_is_embedded_once(kind: str) -> None:
    """Cairo parts a face in two, Latin letters (TrueType) and all others (Type0); each part is there at most once."""
    fonts: dict[int, tuple[str, str]] = {}
    for page in PdfReader(BytesIO(written(kind))).pages:
        resources: Any = page["/Resources"]
        for reference in resources.get("/Font", {}).values():
            font = reference.get_object()
            fonts[font.indirect_reference.idnum] = (str(font["/BaseFont"]), str(font["/Subtype"]))
    names = Counter(name for name, _ in fonts.values())
    parts = Counter((name.partition("+")[2], part) for name, part in fonts.values())
    assert parts
    assert {part for _, part in parts} <= {"/TrueType", "/Type0"}
    assert set(names.values()) == {1}, names
    assert set(parts.values()) == {1}, parts
