"""The public way in, `import blockdsl`: what came of a file, looked at, drawn and written."""

from __future__ import annotations

import json
import subprocess
import sys
from io import BytesIO
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest
from pypdf import PdfReader

import blockdsl
from blockdsl.cli import main
from tests.unit.model.blocks import exactly

CLOTH = 'fabric fog "Harbour fog" #dfe3e0\nfabric slate "Wet slate" #3a4750\n'
PINWHEEL = r"""
block "Pinwheel"
  size 6 in
  row fog\slate  fog/slate
  row slate/fog  slate\fog
  colourway "At night" fog=slate slate=fog
"""
FOUR = 'block "Four Patch"\n  size 4 in\n  row fog slate\n  row slate fog\n'
QUILT = 'quilt "Shore"\n  set straight 2 x 2 of "Pinwheel"\n'
BOOK = 'book "All of it"\n  by "The maker"\n  paper a4\n  block "Pinwheel"\n'


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A maker's folder with one file, where she works."""
    (tmp_path / "pinwheel.block").write_text(CLOTH + PINWHEEL, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    monkeypatch.delenv("SOURCE_DATE_EPOCH", raising=False)
    return tmp_path


def title(svg: str | bytes) -> str | None:
    return ET.fromstring(svg).findtext("{http://www.w3.org/2000/svg}title")  # noqa: S314 - our own drawing


def pdf_title(path: Path) -> str | None:
    told = PdfReader(BytesIO(path.read_bytes())).metadata
    return told.title if told is not None else None


# --- reading -----------------------------------------------------------------------------------


def test_importing_the_package_loads_nothing_else_of_it() -> None:
    words = "import sys, blockdsl; print(sorted(name for name in sys.modules if name.startswith('blockdsl')))"
    told = subprocess.run((sys.executable, "-c", words), capture_output=True, text=True, check=True).stdout
    assert told == "['blockdsl']\n"


def test_every_public_name_is_there_and_another_is_told_as_missing() -> None:
    assert set(dir(blockdsl)) == set(blockdsl.__all__)
    assert [name for name in blockdsl.__all__ if not hasattr(blockdsl, name)] == []
    with pytest.raises(AttributeError, match="has no attribute 'lode'"):
        blockdsl.lode  # type: ignore[attr-defined]  # noqa: B018 - on purpose


@pytest.mark.parametrize("given", ["pinwheel.block", Path("pinwheel.block"), CLOTH + PINWHEEL])
@pytest.mark.usefixtures("folder")
def test_a_file_is_named_by_its_path_or_given_as_text(given: str | Path) -> None:
    result = blockdsl.load(given)

    assert (result.has_errors, result.problems) == (False, ())
    assert result.blocks.names == ("Pinwheel",)
    assert result.blocks["Pinwheel"] is result.blocks[0]
    assert exactly(result.blocks[0].facts.finished) == (6, 6)
    assert result.facts.blocks[0] is result.blocks[0].facts


def test_a_text_uses_files_of_the_current_folder(folder: Path) -> None:
    assert folder == Path.cwd()
    result = blockdsl.load(f'use "pinwheel.block"\n{QUILT}')
    assert (result.problems, result.quilts.names, result.blocks.names) == ((), ("Shore",), ("Pinwheel",))


def test_a_name_that_is_not_there_is_told_with_the_nearest_one() -> None:
    with pytest.raises(KeyError, match="there is no block 'Pinwhel'; did you mean 'Pinwheel'"):
        blockdsl.load(CLOTH + PINWHEEL).blocks["Pinwhel"]


def test_the_numbers_are_those_of_the_command(folder: Path, capfdbinary: pytest.CaptureFixture[bytes]) -> None:
    assert folder == Path.cwd()
    assert main(["facts", "pinwheel.block"]) == 0
    assert json.loads(blockdsl.load("pinwheel.block").to_json()) == json.loads(capfdbinary.readouterr().out)


def test_pages_are_in_the_language_that_is_asked_for() -> None:
    assert blockdsl.load(CLOTH + PINWHEEL, language="en-GB").blocks[0].facts.language == "en-GB"


# --- what is wrong -----------------------------------------------------------------------------


def test_mistakes_are_told_and_nothing_is_written_of_them(folder: Path) -> None:
    result = blockdsl.load(CLOTH + PINWHEEL.replace(r"slate\fog", r"salte\fog"))

    assert result.has_errors
    assert [(problem.code, problem.span.line) for problem in result.problems] == [("name-unknown", 7)]
    assert "help: did you mean `slate`?" in result.report()
    assert result.report() in repr(result)
    assert result._repr_svg_() is None
    for write in (result.write_pdf, result.write_svg, result.write_site):
        with pytest.raises(blockdsl.HasErrors, match="did you mean `slate`"):
            write(folder / "out")
    assert not (folder / "out").exists()


def test_a_file_that_cannot_be_read_is_a_problem_like_others() -> None:
    result = blockdsl.load("no-such.block")
    assert [problem.code for problem in result.problems] == ["file-unreadable"]


# --- writing -----------------------------------------------------------------------------------


def test_a_file_with_one_block_is_written_as_its_sheet_its_picture_and_its_site(folder: Path) -> None:
    result = blockdsl.load("pinwheel.block")

    assert pdf_title(result.write_pdf("out/sheet.pdf")) == "Pinwheel, 6 × 6 in"
    assert title(result.write_svg("out/picture.svg").read_bytes()) == "Pinwheel"
    assert title(result.svg()) == "Pinwheel"
    assert result._repr_svg_() == result.blocks[0]._repr_svg_() == result.svg()
    assert result.write_site(folder / "site") == folder / "site" / "index.html"
    assert "Pinwheel" in (folder / "site" / "index.html").read_text(encoding="utf-8")


def test_what_is_written_is_what_the_command_builds(folder: Path) -> None:
    assert (
        main(
            [
                "build",
                "pinwheel.block",
                "-o",
                "built",
                "--no-cache",
                "--only",
                "sheet,templates,diagrams",
                "--all-templates",
            ]
        )
        == 0
    )
    block = blockdsl.load("pinwheel.block").blocks["Pinwheel"]
    block.write_pdf("made/pinwheel.sheet.pdf")
    block.write_pdf("made/pinwheel.templates.pdf", "templates")
    block.write_svg("made/pinwheel.svg")
    block.write_svg("made/pinwheel.at-night.svg", colourway="At night")
    block.write_svg("made/pinwheel.letters.svg", "letters")
    block.write_svg("made/pinwheel.grid.svg", "grid")

    built = {path.name: path.read_bytes() for path in (folder / "built").iterdir() if path.is_file()}
    assert built == {path.name: path.read_bytes() for path in (folder / "made").iterdir() if path.is_file()}


def test_several_blocks_are_shown_side_by_side_and_bound_as_a_plain_book(folder: Path) -> None:
    result = blockdsl.load(CLOTH + PINWHEEL + FOUR)

    assert all(name in result.svg() for name in ("Pinwheel", "Four Patch"))
    assert len(PdfReader(result.write_pdf(folder / "both.pdf")).pages) > 2


def test_a_quilt_comes_before_its_blocks_and_a_book_before_both(folder: Path) -> None:
    quilt = blockdsl.load(CLOTH + PINWHEEL + QUILT)
    assert (title(quilt.svg()), pdf_title(quilt.write_pdf(folder / "shore.pdf"))) == ("Shore", "Shore, 12 × 12 in")
    assert title(quilt.quilts["Shore"].svg("rows")) == "Shore, rows"

    book = blockdsl.load(CLOTH + PINWHEEL + QUILT + BOOK)
    assert pdf_title(book.write_pdf(folder / "book.pdf")) == "All of it"
    page = PdfReader(folder / "book.pdf").pages[0].mediabox
    assert round(float(page.width) / 72 * 25.4) == 210  # A4, as the book says: ISO 216


def test_what_cannot_be_printed_is_refused_in_words(folder: Path) -> None:
    block = blockdsl.load("pinwheel.block").blocks[0]
    with pytest.raises(ValueError, match="nothing in Pinwheel is made with foundation"):
        block.write_pdf("papers.pdf", "foundation")
    with pytest.raises(ValueError, match="unknown paper 'a5'"):
        block.write_pdf("sheet.pdf", paper="a5")
    with pytest.raises(KeyError, match="no colourway 'At nite'; did you mean 'At night'"):
        block.write_svg("night.svg", colourway="At nite")
    with pytest.raises(ValueError, match="there is no block in this file"):
        blockdsl.load(CLOTH).write_pdf("nothing.pdf")
    assert [path.name for path in folder.iterdir()] == ["pinwheel.block"]


# --- what lies there already -------------------------------------------------------------------


def test_what_blockdsl_wrote_is_replaced_and_nothing_else(folder: Path) -> None:
    result = blockdsl.load("pinwheel.block")
    result.write_svg("out/picture.svg")
    result.write_svg("out/picture.svg")

    mine = folder / "out" / "mine.svg"
    mine.write_text("a drawing of my own", encoding="utf-8")
    with pytest.raises(blockdsl.Refused, match="was not written by blockdsl"):
        result.write_svg(mine)
    assert mine.read_text(encoding="utf-8") == "a drawing of my own"

    (folder / "out" / "picture.svg").write_text("changed by hand", encoding="utf-8")
    with pytest.raises(blockdsl.Refused, match="was changed after blockdsl wrote it"):
        result.write_svg("out/picture.svg")


def test_a_file_that_was_read_is_never_written_over(folder: Path) -> None:
    (folder / "other.svg").symlink_to("pinwheel.block")
    result = blockdsl.load("pinwheel.block")
    for name in ("pinwheel.block", "other.svg"):
        with pytest.raises(blockdsl.Refused, match="is one of the files that were read"):
            result.write_svg(name)
    assert (folder / "pinwheel.block").read_text(encoding="utf-8") == CLOTH + PINWHEEL


def test_a_site_loses_the_pages_that_it_no_longer_has_and_keeps_what_is_not_its_own(folder: Path) -> None:
    site = folder / "site"
    blockdsl.load(CLOTH + PINWHEEL + FOUR).write_site(site)
    assert (site / "four-patch.html").exists()
    (site / "notes.txt").write_text("my notes", encoding="utf-8")

    blockdsl.load(CLOTH + PINWHEEL).write_site(site)

    assert not (site / "four-patch.html").exists()
    assert (site / "pinwheel.html").exists()
    assert (site / "notes.txt").exists()


def test_a_build_into_the_same_folder_leaves_what_was_written_by_name(folder: Path) -> None:
    blockdsl.load("pinwheel.block").write_pdf("out/for-the-class.sheet.pdf")
    assert main(["build", "pinwheel.block", "-o", "out", "--no-cache"]) == 0
    assert (folder / "out" / "for-the-class.sheet.pdf").exists()


def test_a_date_is_told_only_where_the_environment_has_one(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    result = blockdsl.load("pinwheel.block")
    plain = PdfReader(result.write_pdf(folder / "plain.pdf")).metadata
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "0")
    dated = PdfReader(result.write_pdf(folder / "dated.pdf")).metadata
    assert plain is not None
    assert dated is not None
    assert plain.creation_date is None
    assert str(dated.creation_date) == "1970-01-01 00:00:00+00:00"
