"""`build`: which files it writes, and what it leaves alone."""

import csv
import signal
import subprocess
import sys
from io import BytesIO
from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.outputs import bytes_below
from tests.unit.cli.pinwheel import PALETTE, PINWHEEL, Run, spoil

NO_TEMPLATES = (
    "no file written: a ruler cuts every patch, so no templates are needed; --all-templates prints them all the same\n"
)
ALL_OF_THE_PINWHEEL = {
    "pinwheel.sheet.pdf",
    "pinwheel.svg",
    "pinwheel.letters.svg",
    "pinwheel.grid.svg",
    "pinwheel.cutting.svg",
    "pinwheel.cutting.md",
    "pinwheel.cutting.csv",
    "pinwheel.cutting.xlsx",
}


def test_everything_that_a_block_gives_is_written_under_its_name(folder: Path, run: Run) -> None:
    ended = run("build", "pinwheel.block", "-o", "out")

    written = bytes_below(folder / "out")
    assert (ended.status, ended.told) == (0, "")
    assert ended.out == "8 files written to out\n"
    assert set(written) == ALL_OF_THE_PINWHEEL
    assert all(data.startswith(b"%PDF-") for name, data in written.items() if name.endswith(".pdf"))


def test_the_cutting_table_as_csv_says_what_to_cut(folder: Path, run: Run) -> None:
    """By hand: 3 in finished + 7/8 in, and two squares of each fabric give its four triangles."""
    run("build", "pinwheel.block", "-o", "out")

    data = (folder / "out" / "pinwheel.cutting.csv").read_bytes()
    assert data.startswith(b"\xef\xbb\xbf")  # by which a spreadsheet knows that it is UTF-8
    rows = list(csv.DictReader(data.decode("utf-8-sig").splitlines()))
    assert [(row["fabric"], row["cut"], row["size"]) for row in rows] == [
        ("Harbour fog", "2", "3 7/8 in"),
        ("Wet slate", "2", "3 7/8 in"),
    ]


def test_each_colourway_has_its_picture_and_none_takes_the_name_of_another(folder: Path, run: Run) -> None:
    night = '  colourway "Night" fog=slate slate=fog\n  colourway "Letters" fog=slate slate=fog\n'
    (folder / "pinwheel.block").write_text(PINWHEEL + night, encoding="utf-8")

    run("build", "pinwheel.block", "-o", "out", "--only", "diagrams")

    assert set(bytes_below(folder / "out")) == {
        "pinwheel.svg",
        "pinwheel.letters.svg",
        "pinwheel.grid.svg",
        "pinwheel.night.svg",
        "pinwheel.letters-2.svg",
    }


def test_templates_are_of_patches_that_a_ruler_does_not_cut(folder: Path, run: Run) -> None:
    """A kite is cut by template; a pinwheel's triangles are halves of squares, which a ruler cuts."""
    kite = """
block "Kite"
  size 4 in
  grid 4 x 4
  patch fog at 0,0 4,0 4,1
  patch slate at 0,0 4,1 4,4 1,4
  patch fog at 0,0 1,4 0,4
"""
    (folder / "kite.block").write_text(f'use "palette.block"\n{kite}', encoding="utf-8")
    told = ("-o", "out", "--only", "templates")

    nothing = run("build", "pinwheel.block", *told)
    assert (nothing.status, nothing.out) == (0, NO_TEMPLATES)
    assert run("build", "kite.block", *told).status == 0
    assert set(bytes_below(folder / "out")) == {"kite.templates.pdf"}
    assert run("build", "pinwheel.block", *told, "--all-templates").status == 0
    assert set(bytes_below(folder / "out")) == {"kite.templates.pdf", "pinwheel.templates.pdf"}


@pytest.mark.parametrize(
    ("only", "endings"),
    [
        ("sheet", {"sheet.pdf"}),
        ("templates", {"templates.pdf"}),
        ("table", {"cutting.svg", "cutting.md", "cutting.csv", "cutting.xlsx"}),
        ("sheet,templates", {"sheet.pdf", "templates.pdf"}),
    ],
)
def test_only_what_is_named_is_written(folder: Path, run: Run, only: str, endings: set[str]) -> None:
    assert run("build", "pinwheel.block", "-o", "out", "--only", only, "--all-templates").status == 0

    assert {name.partition(".")[2] for name in bytes_below(folder / "out")} == endings


@pytest.mark.parametrize(
    "words",
    [
        ("--only", "sheets"),
        ("--only", ","),
        ("--only", "book"),
        ("--title", "A book"),
        ("--paper", "foolscap"),
    ],
)
def test_a_wish_that_cannot_be_meant_is_wrong_usage_and_nothing_is_written(
    folder: Path, run: Run, words: tuple[str, ...]
) -> None:
    ended = run("build", "pinwheel.block", "-o", "out", *words)

    assert ended.status == 2
    assert ended.told
    assert not (folder / "out").exists()


@pytest.mark.parametrize(("paper", "width_pt", "height_pt"), [("letter", 612.0, 792.0), ("A4", 595.28, 841.89)])
def test_sheets_and_templates_have_the_size_of_the_paper(
    folder: Path, run: Run, paper: str, width_pt: float, height_pt: float
) -> None:
    """Letter is 8.5 x 11 in; A4 is 210 x 297 mm (ISO 216), at 72 points to the inch."""
    run("build", "pinwheel.block", "-o", "out", "--paper", paper, "--only", "sheet,templates", "--all-templates")

    for name in ("pinwheel.sheet.pdf", "pinwheel.templates.pdf"):
        for page in PdfReader(folder / "out" / name).pages:
            assert float(page.mediabox.width) == pytest.approx(width_pt, abs=0.01)
            assert float(page.mediabox.height) == pytest.approx(height_pt, abs=0.01)


def test_of_a_file_with_errors_nothing_is_written_and_its_old_outputs_stay(folder: Path, run: Run) -> None:
    (folder / "second.block").write_text(PINWHEEL.replace("Pinwheel", "Second"), encoding="utf-8")
    run("build", "pinwheel.block", "second.block", "-o", "out")
    before = bytes_below(folder / "out")
    spoil(folder / "second.block")
    (folder / "pinwheel.block").write_text(PINWHEEL.replace("6 in", "8 in"), encoding="utf-8")

    ended = run("build", "pinwheel.block", "second.block", "-o", "out", "--depfile", "rules.d", "--book", "book.pdf")

    after = bytes_below(folder / "out")
    assert ended.status == 1
    assert ended.told.endswith("1 error\n")
    assert set(after) == set(before)
    assert {name for name in before if name.startswith("second.") and after[name] != before[name]} == set()
    assert b"4 7/8" in after["pinwheel.cutting.csv"]
    assert not (folder / "rules.d").exists()
    assert not (folder / "book.pdf").exists()


def test_one_bad_block_keeps_the_good_ones_of_its_file_from_being_written(folder: Path, run: Run) -> None:
    (folder / "two.block").write_text(PINWHEEL + '\nblock "Bad"\n  size 6 in\n  row nothing\n', encoding="utf-8")

    assert run("build", "two.block", "-o", "out").status == 1
    assert not (folder / "out").exists()


def test_blocks_of_one_name_in_two_files_do_not_write_over_each_other_even_when_one_fails(
    folder: Path, run: Run
) -> None:
    (folder / "other.block").write_text(PINWHEEL.replace("6 in", "12 in"), encoding="utf-8")
    run("build", "pinwheel.block", "other.block", "-o", "out", "--only", "table")
    first = (folder / "out" / "pinwheel.cutting.csv").read_bytes()
    second = (folder / "out" / "pinwheel-2.cutting.csv").read_bytes()
    spoil(folder / "pinwheel.block")

    run("build", "pinwheel.block", "other.block", "-o", "out", "--only", "table")

    assert b"3 7/8" in first
    assert b"6 7/8" in second
    assert (folder / "out" / "pinwheel.cutting.csv").read_bytes() == first


def test_a_folder_that_cannot_be_written_is_told_in_plain_words(folder: Path, run: Run) -> None:
    (folder / "out").write_text("a file is in the way", encoding="utf-8")

    ended = run("build", "pinwheel.block", "-o", "out")

    assert ended.status == 1
    assert ended.told.startswith("blockdsl: ")
    assert "cannot be written: " in ended.told
    assert set(bytes_below(folder)) == {"out", "palette.block", "pinwheel.block"}


def test_standard_input_is_built_too(folder: Path, run: Run) -> None:
    assert run("build", "-", "-o", "out", typed=PINWHEEL).status == 0
    assert set(bytes_below(folder / "out")) == ALL_OF_THE_PINWHEEL


def test_a_palette_alone_gives_nothing_and_says_so(folder: Path, run: Run) -> None:
    ended = run("build", "palette.block", "-o", "out")

    assert ended.status == 0
    assert ended.out == "there are no blocks in these files\n"


def test_a_template_longer_than_any_page_can_be_is_left_out_with_a_warning(folder: Path, run: Run) -> None:
    """A page of a PDF is at most 14,400 units, which is 200 in (ISO 32000-1, annex C)."""
    (folder / "wall.block").write_text(
        PALETTE + 'block "Wall"\n  size 300 in x 20 in\n  row fog\n  row slate\n', encoding="utf-8"
    )

    ended = run("build", "wall.block", "-o", "out", "--only", "templates,table", "--all-templates")

    assert ended.status == 0
    assert "wall.block:3:7: warning[template-too-large]" in ended.told
    assert "wall.templates.pdf" not in bytes_below(folder / "out")


def test_without_source_date_epoch_a_pdf_has_no_date_and_with_it_that_date(
    folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    """1,000,000,000 seconds after the start of 1970 it was 2001-09-09 01:46:40 in universal time."""
    run("build", "pinwheel.block", "-o", "plain", "--only", "sheet")
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1000000000")
    run("build", "pinwheel.block", "-o", "dated", "--only", "sheet")

    plain, dated = (
        PdfReader(BytesIO((folder / name / "pinwheel.sheet.pdf").read_bytes())).metadata for name in ("plain", "dated")
    )
    assert plain is not None
    assert dated is not None
    assert "/CreationDate" not in plain
    assert str(dated["/CreationDate"]) == "D:20010909014640Z"


@pytest.mark.parametrize("words", ["yesterday", "1e9", "99999999999999999999"])
def test_a_source_date_epoch_that_is_no_date_is_wrong_usage(
    folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch, words: str
) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", words)

    ended = run("build", "pinwheel.block", "-o", "out")

    assert ended.status == 2
    assert "SOURCE_DATE_EPOCH" in ended.told
    assert not (folder / "out").exists()


def test_two_builds_at_once_in_one_folder_leave_whole_files_and_nothing_else(
    folder: Path, run: Run, blockdsl_command: str
) -> None:
    run("build", "pinwheel.block", "-o", "alone")
    command = (blockdsl_command, "build", "pinwheel.block", "-o", "out")

    running = [subprocess.Popen(command, cwd=folder, stdout=subprocess.DEVNULL) for _ in range(2)]

    assert [process.wait(timeout=60) for process in running] == [0, 0]
    assert bytes_below(folder / "out") == bytes_below(folder / "alone")


def test_a_block_with_units_on_papers_has_them_in_a_file_of_their_own(folder: Path, run: Run) -> None:
    (folder / "pinwheel.block").write_text(PINWHEEL + "  make half as foundation\n", encoding="utf-8")

    run("build", "pinwheel.block", "-o", "out", "--only", "templates")

    assert set(bytes_below(folder / "out")) == {"pinwheel.foundation.pdf"}
    pages = PdfReader(folder / "out" / "pinwheel.foundation.pdf").pages
    assert sum("copy 4 of 4" in page.extract_text() for page in pages) == 1


# --- what a build never costs a maker --------------------------------------------------------------

OTHER = (
    'use "palette.block"\n\nblock "Pinwheel"\n  size 8 in\n  row fog\\slate  fog/slate\n  row slate/fog  slate\\fog\n'
)


@pytest.mark.parametrize("option", ["--depfile", "--book"])
def test_a_file_that_is_read_is_never_written_over(folder: Path, run: Run, option: str) -> None:
    for name in ("pinwheel.block", "palette.block"):
        ended = run("build", "pinwheel.block", "-o", "out", option, name)

        assert (ended.status, ended.told.count("\n")) == (1, 1)
        assert ended.told.startswith(f"blockdsl: {name} is read by this build")
    assert (folder / "pinwheel.block").read_text(encoding="utf-8") == PINWHEEL
    assert (folder / "palette.block").read_text(encoding="utf-8") == PALETTE
    assert not bytes_below(folder / "out")


def test_the_words_of_a_book_are_not_written_over_by_a_table_of_the_same_name(folder: Path, run: Run) -> None:
    (folder / "pinwheel.cutting.md").write_text("My own words.\n", encoding="utf-8")
    book = 'book "Mills"\n  text "pinwheel.cutting.md"\n  chapter "All"\n    block "Pinwheel"\n'
    (folder / "pinwheel.block").write_text(f"{PINWHEEL}\n{book}", encoding="utf-8")

    ended = run("build", "pinwheel.block", "-o", ".")

    assert (ended.status, ended.out) == (1, "")
    assert "pinwheel.cutting.md is read by this build" in ended.told
    assert (folder / "pinwheel.cutting.md").read_text(encoding="utf-8") == "My own words.\n"
    assert not list(folder.glob("*.pdf"))


def test_a_file_of_the_makers_own_in_the_folder_is_refused_by_name_before_anything_is_written(
    folder: Path, run: Run
) -> None:
    (folder / "out").mkdir()
    (folder / "out" / "pinwheel.sheet.pdf").write_bytes(b"%PDF-1.4 by another program")

    ended = run("build", "pinwheel.block", "-o", "out")

    assert (ended.status, ended.out) == (1, "")
    assert ended.told.startswith("blockdsl: out/pinwheel.sheet.pdf was not written by blockdsl")
    assert set(bytes_below(folder / "out")) == {"pinwheel.sheet.pdf"}


def test_two_outputs_of_one_run_never_share_a_name(folder: Path, run: Run) -> None:
    book = '\nbook "Check print"\n  chapter "All"\n    block "Pinwheel"\n'
    (folder / "pinwheel.block").write_text(f"{PINWHEEL}{book}", encoding="utf-8")

    ended = run("build", "pinwheel.block", "-o", "out", "--check-print")

    assert (ended.status, ended.out) == (1, "")
    assert "out/check-print.pdf would be written twice" in ended.told


def test_a_title_that_another_file_has_too_is_an_error_that_names_both(folder: Path, run: Run) -> None:
    (folder / "other.block").write_text(OTHER, encoding="utf-8")
    run("build", "pinwheel.block", "-o", "out")
    before = bytes_below(folder / "out")

    ended = run("build", "other.block", "-o", "out")

    assert ended.status == 1
    assert (
        "other.block:3:7: error[output-taken]: out/pinwheel.sheet.pdf already comes from pinwheel.block" in ended.told
    )
    assert bytes_below(folder / "out") == before

    (folder / "pinwheel.block").unlink()
    assert run("build", "other.block", "-o", "out").status == 0


def test_what_a_file_no_longer_makes_is_removed_and_nothing_of_its_neighbours(folder: Path, run: Run) -> None:
    (folder / "mill.block").write_text(PINWHEEL.replace("Pinwheel", "Mill"), encoding="utf-8")
    night = '  colourway "Night" fog=slate slate=fog\n'
    (folder / "pinwheel.block").write_text(PINWHEEL + night, encoding="utf-8")
    run("build", "mill.block", "-o", "out")
    run("build", "pinwheel.block", "-o", "out")
    (folder / "out" / "notes.txt").write_text("mine", encoding="utf-8")
    (folder / "pinwheel.block").write_text(PINWHEEL, encoding="utf-8")

    of_tables = run("build", "pinwheel.block", "-o", "out", "--only", "table")
    ended = run("build", "pinwheel.block", "-o", "out")

    assert of_tables.out == "4 files written to out\n"
    assert ended.out.splitlines()[1] == "1 file (out/pinwheel.night.svg): no longer made, so removed"
    mill = {name.replace("pinwheel", "mill") for name in ALL_OF_THE_PINWHEEL}
    assert set(bytes_below(folder / "out")) == {*ALL_OF_THE_PINWHEEL, *mill, "notes.txt"}


def test_a_supposed_size_removes_nothing(folder: Path, run: Run) -> None:
    run("build", "pinwheel.block", "-o", "out", "--only", "steps,sheet")
    before = set(bytes_below(folder / "out"))

    ended = run("build", "pinwheel.block", "-o", "out", "--only", "sheet", "--size", "9 in")

    assert ended.status == 0
    assert set(bytes_below(folder / "out")) == before


def test_a_block_that_a_book_recolours_is_left_as_its_own_file_makes_it(folder: Path, run: Run) -> None:
    book = 'fabric slate "Slate" #801010\nuse "pinwheel.block"\nbook "Mills"\n  chapter "All"\n    block "Pinwheel"\n'
    (folder / "mills.block").write_text(book, encoding="utf-8")
    run("build", "pinwheel.block", "-o", "out")
    before = bytes_below(folder / "out")

    ended = run("build", "mills.block", "-o", "out")

    assert "left as the file that declares the block makes it" in ended.out
    after = bytes_below(folder / "out")
    assert {name: after[name] for name in before} == before
    assert "mills.pdf" in after


@pytest.mark.parametrize("title", ["", "  ", "a\x07b", "a\ufffeb"])
def test_a_title_that_cannot_be_printed_is_refused(folder: Path, run: Run, title: str) -> None:
    ended = run("build", "pinwheel.block", "-o", "out", "--book", "book.pdf", "--title", title)

    assert ended.status == 2
    assert not (folder / "out").exists()


@pytest.mark.parametrize("name", ["", "-"])
def test_a_folder_for_the_outputs_has_a_name(folder: Path, run: Run, name: str) -> None:
    ended = run("build", "pinwheel.block", "-o", name)

    assert ended.status == 2
    assert "name a folder" in ended.told


def test_a_tab_or_a_letter_in_two_parts_is_printed_as_usual(folder: Path, run: Run) -> None:
    text = PINWHEEL.replace('"Pinwheel"', '"Cafe\u0301\tmill"')
    (folder / "pinwheel.block").write_text(text, encoding="utf-8")

    assert run("build", "pinwheel.block", "-o", "out").status == 0
    assert "café-mill.sheet.pdf" in bytes_below(folder / "out")


def test_scraps_of_a_fabric_that_no_block_has_change_nothing(folder: Path, run: Run) -> None:
    quilt = 'quilt "Mills"\n  set straight 2 x 2 of "Pinwheel"\n  scraps lamp from 4 fat quarters\n'
    (folder / "pinwheel.block").write_text(f'{PINWHEEL}\nfabric lamp "Lamp" #caa750\n{quilt}', encoding="utf-8")

    ended = run("build", "pinwheel.block", "-o", "out")

    assert ended.status == 0
    assert "warning[line-idle]" in ended.told


def test_a_cutting_table_of_hundreds_of_rows_is_set_in_columns(folder: Path, run: Run) -> None:
    fabrics = "".join(f'fabric f{number} "Fabric {number}" #{number * 7919:06x}\n' for number in range(400))
    rows = "".join("  row " + " ".join(f"f{row * 40 + column}" for column in range(40)) + "\n" for row in range(10))
    (folder / "many.block").write_text(f'{fabrics}block "Many"\n  size 80 x 20 in\n{rows}', encoding="utf-8")

    ended = run("build", "many.block", "-o", "out", "--only", "table")

    assert ended.status == 0
    head = (folder / "out" / "many.cutting.svg").read_text(encoding="utf-8")[:400]
    width, height = (float(side) for side in head.split('viewBox="0 0 ')[1].split('"')[0].split())
    assert height < 7_300
    assert width > 1_000


def test_words_of_pictures_may_be_outlines_and_a_cache_keeps_the_two_apart(folder: Path, run: Run) -> None:
    told = ("build", "pinwheel.block", "--only", "diagrams,table", "--cache", "kept")
    for out, more in (("words", ("--no-outline-words",)), ("outlines", ()), ("again", ("--no-outline-words",))):
        assert run(*told, "-o", out, *more).status == 0
    words, outlines = bytes_below(folder / "words"), bytes_below(folder / "outlines")
    assert words == bytes_below(folder / "again")
    assert words.keys() == outlines.keys()
    assert b"<text" in words["pinwheel.cutting.svg"]
    for name in words:
        if name.endswith(".svg"):
            assert b"<text" not in outlines[name]
            assert b"font-face" not in outlines[name]
        else:
            assert words[name] == outlines[name]


def test_a_watched_file_is_built_again_when_it_is_saved_even_after_a_slip(folder: Path) -> None:
    words = [sys.executable, "-m", "blockdsl", "build", "pinwheel.block", "-o", "out", "--only", "table", "--watch"]
    file = folder / "pinwheel.block"
    text = file.read_text("utf-8")
    with subprocess.Popen(words, cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True) as process:
        assert process.stdout is not None
        assert process.stdout.readline() == "4 files written to out\n"
        file.write_text(text.replace("fog/slate", "frog/slate"), encoding="utf-8")
        assert "error[name-unknown]" in process.stdout.readline()
        while process.stdout.readline() != "1 error\n":
            pass
        saved = folder / "pinwheel.new"
        saved.write_text(text.replace("6 in", "9 in"), encoding="utf-8")
        saved.replace(file)
        assert process.stdout.readline() == "4 files written to out\n"
        process.send_signal(signal.SIGINT)
        assert process.wait(timeout=60) == 0
    # A 9 in pinwheel has half squares of 4 1/2 in: squares of 4 1/2 + 7/8 in.
    assert "5 3/8 in" in (folder / "out" / "pinwheel.cutting.md").read_text("utf-8")


def test_standard_input_cannot_be_watched(folder: Path, run: Run) -> None:
    ended = run("build", "-", "-o", "out", "--watch", typed=PINWHEEL)

    assert ended.status == 2
    assert "standard input cannot be watched" in ended.told
