"""Letters that the font of the pages lacks are printed from the maker's own."""

import subprocess
from io import BytesIO
from pathlib import Path

import pypdfium2
import pytest
from fontTools.ttLib import TTFont

from blockdsl.fonts import font_bytes
from tests.unit.cli.pinwheel import PINWHEEL, Run

SNOW = "\u96ea"
MAKER = 'maker "Marsh Street"\n  font "snow.ttf"\n\n'


@pytest.fixture
def snow(folder: Path) -> Path:
    """A font in which the Chinese letter for snow looks like a capital H, and a block that is called so."""
    font = TTFont(BytesIO(font_bytes("regular")))
    glyph = font.getBestCmap()[ord("H")]
    for table in font["cmap"].tables:
        table.cmap = {ord(SNOW): glyph}
    font.save(folder / "snow.ttf")
    text = MAKER + PINWHEEL.replace('"Pinwheel"', f'"{SNOW} Mill"')
    (folder / "pinwheel.block").write_text(text, encoding="utf-8")
    return folder


def black(folder: Path, name: str) -> int:
    """How many pixels of the title are dark, as pdfium draws it."""
    page = pypdfium2.PdfDocument(folder / "out" / name)[0]
    image = page.render(scale=2).to_pil().convert("L").crop((70, 70, 150, 140))
    return sum(image.histogram()[:100])


def test_a_letter_of_the_makers_font_is_printed_and_no_warning_is_told(snow: Path, run: Run) -> None:
    ended = run("build", "pinwheel.block", "-o", "out", "--no-cache")

    assert (ended.status, ended.told) == (0, "")
    drawn = black(snow, f"{SNOW}-mill.sheet.pdf")
    (snow / "pinwheel.block").write_text(PINWHEEL.replace('"Pinwheel"', '"H Mill"'), encoding="utf-8")
    run("build", "pinwheel.block", "-o", "out", "--no-cache")
    assert drawn == pytest.approx(black(snow, "h-mill.sheet.pdf"), rel=0.25)  # our own title is bolder


def test_without_the_font_a_letter_that_is_not_in_ours_is_a_warning(snow: Path, run: Run) -> None:
    text = (snow / "pinwheel.block").read_text(encoding="utf-8").removeprefix(MAKER)
    (snow / "pinwheel.block").write_text(text, encoding="utf-8")

    ended = run("build", "pinwheel.block", "-o", "out", "--no-cache")

    assert ended.status == 0
    assert f"warning[letter-not-in-font]: the page font has no “{SNOW}”" in ended.told
    assert 'font "My.ttf"' in ended.told


def test_another_font_in_the_same_file_makes_the_pages_anew(snow: Path, run: Run) -> None:
    build = ("build", "pinwheel.block", "-o", "out", "--cache", "kept")
    run(*build)
    before = (snow / "out" / f"{SNOW}-mill.sheet.pdf").read_bytes()
    font = TTFont(snow / "snow.ttf")
    glyph = next(name for name in font.getGlyphOrder() if name == "I")
    for table in font["cmap"].tables:
        table.cmap = {ord(SNOW): glyph}
    font.save(snow / "snow.ttf")

    run(*build)

    assert (snow / "out" / f"{SNOW}-mill.sheet.pdf").read_bytes() != before


def test_the_pdf_is_sound_and_still_tells_the_letter(snow: Path, run: Run) -> None:
    run("build", "pinwheel.block", "-o", "out", "--no-cache", "--only", "sheet")

    ended = subprocess.run(
        ("qpdf", "--check", str(snow / "out" / f"{SNOW}-mill.sheet.pdf")), capture_output=True, text=True, check=False
    )
    assert ended.returncode == 0, ended.stdout
