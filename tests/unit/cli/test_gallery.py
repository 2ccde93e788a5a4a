"""`gallery`: all blocks of the files on one contact sheet."""

import re
from io import BytesIO
from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.unit.cli.pinwheel import Run, spoil

TWO_FAMILIES = """
use "palette.block"

block "Nine"
  size 6 in
  row fog    slate  fog
  row slate  fog    slate
  row fog    slate  fog

block "Four"
  size 6 in
  family checker
  source "Everybody's, and nobody's."
  row fog    slate
  row slate  fog
"""


@pytest.fixture
def shown(folder: Path, run: Run) -> Path:
    """The folder with the contact sheet of three blocks."""
    (folder / "more.block").write_text(TWO_FAMILIES, encoding="utf-8")
    ended = run("gallery", "pinwheel.block", "more.block", "-o", "shown", "--title", "Three of us")
    assert ended.out.startswith("3 blocks shown, ")
    return folder / "shown"


def test_the_pdf_names_every_block_below_its_family(shown: Path) -> None:
    words = PdfReader(BytesIO((shown / "three-of-us.pdf").read_bytes())).pages[0].extract_text()
    places = [words.index(name) for name in ("Four-patch", "Pinwheel", "Nine-patch", "Nine\n", "Checker", "Four\n")]
    assert places == sorted(places)


def test_every_picture_of_the_web_page_says_in_words_what_it_shows(shown: Path) -> None:
    page = (shown / "three-of-us.web" / "index.html").read_text(encoding="utf-8")
    pictures = re.findall(r"<svg[^>]*>", page)
    assert len(pictures) == 3
    assert all(re.search(r'aria-label="[^"]{20,}"', picture) for picture in pictures)
    assert "Everybody's, and nobody's." in page.replace("&#x27;", "'").replace("’", "'")


def test_the_svg_holds_all_blocks_on_one_page(shown: Path) -> None:
    drawing = (shown / "three-of-us.svg").read_text(encoding="utf-8")
    assert all(f">{name}<" in drawing for name in ("Pinwheel", "Nine", "Four"))


def test_of_a_file_with_errors_no_contact_sheet_is_made(folder: Path, run: Run) -> None:
    spoil(folder / "pinwheel.block")
    assert run("gallery", "pinwheel.block", "-o", "shown").status == 1
    assert not (folder / "shown").exists()
