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


def test_each_block_of_the_web_site_leads_to_a_page_of_its_own(shown: Path) -> None:
    site = shown / "three-of-us.web"
    home = (site / "index.html").read_text(encoding="utf-8")
    assert re.findall(r'<li><a href="([a-z]+\.html)"><svg', home) == ["pinwheel.html", "nine.html", "four.html"]
    assert re.findall(r'href="index\.html#([^"]+)"', home) == re.findall(r'<h2 id="([^"]+)"', home)


def test_every_picture_of_a_blocks_page_says_in_words_what_it_shows(shown: Path) -> None:
    page = (shown / "three-of-us.web" / "four.html").read_text(encoding="utf-8")
    pictures = re.findall(r"<svg[^>]*role[^>]*>", page)
    assert len(pictures) == 2
    assert all(re.search(r'aria-label="[^"]{20,}"', picture) for picture in pictures)
    assert "Everybody's, and nobody's." in page.replace("&#x27;", "'").replace("’", "'")


def test_the_svg_holds_all_blocks_on_one_page(shown: Path) -> None:
    drawing = (shown / "three-of-us.svg").read_text(encoding="utf-8")
    assert all(f">{name}<" in drawing for name in ("Pinwheel", "Nine", "Four"))


def test_of_a_file_with_errors_no_contact_sheet_is_made(folder: Path, run: Run) -> None:
    spoil(folder / "pinwheel.block")
    assert run("gallery", "pinwheel.block", "-o", "shown").status == 1
    assert not (folder / "shown").exists()


# --- all that one block can become -------------------------------------------------------------------

SAIL = """
use "palette.block"

block "Sail"
  size 6 in
  row slate/fog  fog
  row fog        fog
  colourway "Night" fog=slate slate=fog
"""


def _declared(run: Run, *numbers: int) -> str:
    return run("gallery", "sail.block", "--of", "Sail", "--declare", *map(str, numbers)).out


@pytest.fixture
def settings(folder: Path, run: Run) -> Path:
    """The folder with the page of possibilities of a block that looks the same only over its diagonal."""
    (folder / "sail.block").write_text(SAIL, encoding="utf-8")
    ended = run("gallery", "sail.block", "--of", "Sail", "-o", "settings")
    assert ended.status == 0, ended.told
    return folder / "settings"


def test_each_setting_is_numbered_with_its_size_and_its_fabric(settings: Path) -> None:
    page = (
        (settings / "settings-for-sail.web" / "index.html")
        .read_text(encoding="utf-8")
        .replace("\N{NO-BREAK SPACE}", " ")
    )
    assert "1. Straight setting, 8 × 8" in page
    assert "48 × 48 in; 64 blocks" in page
    assert all(word in page for word in ("turned", "sashing and cornerstones", "some in Night", "plain squares of"))
    assert (settings / "settings-for-sail.pdf").stat().st_size > 10_000


def test_every_quilt_that_is_shown_builds_as_it_is_declared(settings: Path, folder: Path, run: Run) -> None:
    page = (settings / "settings-for-sail.web" / "index.html").read_text(encoding="utf-8")
    last = max(int(number) for number in re.findall(r">(\d+)\. ", page))
    assert last > 30
    lines = _declared(run, *range(1, last + 1))
    assert len(set(lines.split('\nquilt "Sail ')[1:])) == last - 1
    (folder / "all.block").write_text(SAIL + lines, encoding="utf-8")
    assert run("check", "all.block").status == 0


def test_a_block_that_looks_the_same_however_it_is_turned_is_not_shown_turned(folder: Path, run: Run) -> None:
    (folder / "sail.block").write_text(
        'use "palette.block"\nblock "Sail"\n  size 6 in\n  row (diamond slate on fog)\n', encoding="utf-8"
    )
    run("gallery", "sail.block", "--of", "Sail", "-o", "settings")
    page = (folder / "settings" / "settings-for-sail.web" / "index.html").read_text(encoding="utf-8")
    assert "turned" not in page
    assert "Dropped columns" in page


def test_a_block_that_is_not_there_is_answered_with_the_nearest(settings: Path, run: Run) -> None:
    assert settings.is_dir()
    ended = run("gallery", "sail.block", "--of", "Sial", "-o", "elsewhere")
    assert ended.status == 1
    assert "did you mean Sail?" in ended.told
    assert run("gallery", "sail.block", "--of", "Sail", "--declare", "99").status == 2
    assert run("gallery", "sail.block", "--declare", "1").status == 2
    assert run("gallery", "sail.block").status == 2


def test_a_block_too_large_for_any_quilt_is_told(settings: Path, folder: Path, run: Run) -> None:
    assert settings.is_dir()
    (folder / "sail.block").write_text(SAIL.replace("6 in", "390 in"), encoding="utf-8")
    ended = run("gallery", "sail.block", "--of", "Sail", "-o", "elsewhere")
    assert ended.status == 1
    assert "no quilt can be set of Sail" in ended.told
