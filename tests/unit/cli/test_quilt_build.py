"""`blockdsl build` of files with quilts: what is written, under which names, and what it was made from."""

import json
from pathlib import Path

from pypdf import PdfReader

from tests.outputs import in_folder
from tests.unit.cli.pinwheel import Run

BLOCK = """fabric fog   "Harbour fog" #dfe3e0
fabric slate "Wet slate"   #3a4750

block "Pin"
  size 6 in
  row fog\\slate  fog/slate
  row slate/fog  slate\\fog
"""
QUILT = """use "pin.block"

quilt "Shore"
  set straight 2 x 3 of "Pin"
  border 2 in slate
"""
KITES = """fabric fog   "Harbour fog" #dfe3e0
fabric slate "Wet slate"   #3a4750

block "Kite"
  size 6 in
  grid 4 x 4
  patch fog at 0,0 4,0 4,1
  patch slate at 0,0 4,1 4,4 1,4
  patch fog at 0,0 1,4 0,4

quilt "Kites"
  set straight 2 x 2 of "Kite"
  blocks 9 in
"""


def written(folder: Path) -> list[str]:
    return sorted(path.name for path in in_folder(folder / "out"))


def lay(folder: Path, quilt: str = QUILT) -> None:
    (folder / "pin.block").write_text(BLOCK, encoding="utf-8")
    (folder / "shore.block").write_text(quilt, encoding="utf-8")


def test_a_quilt_has_a_sheet_pictures_and_a_cutting_table(folder: Path, run: Run) -> None:
    lay(folder)
    run("build", "shore.block", "-o", "out")
    of_quilt = [name for name in written(folder) if name.startswith("shore")]
    assert of_quilt == ["shore.cutting.csv", "shore.cutting.md", "shore.quilt.pdf", "shore.rows.svg", "shore.svg"]


def test_a_medallion_has_no_rows_to_be_drawn_apart(folder: Path, run: Run) -> None:
    lay(folder, QUILT.replace("straight 2 x 3", "medallion"))
    run("build", "shore.block", "-o", "out", "--only", "diagrams")
    assert [name for name in written(folder) if name.startswith("shore")] == ["shore.svg"]


def test_only_the_kinds_that_are_asked_for_are_written(folder: Path, run: Run) -> None:
    lay(folder)
    run("build", "shore.block", "-o", "out", "--only", "sheet")
    assert [name for name in written(folder) if name.startswith("shore")] == ["shore.quilt.pdf"]


def test_the_cutting_table_tells_the_border_with_its_seams(folder: Path, run: Run) -> None:
    """12 × 18 in and a border of 2 in: sides of 18 in, then top and bottom of 16 in; 2 in to spare."""
    lay(folder)
    run("build", "shore.block", "-o", "out", "--only", "table")
    table = (folder / "out/shore.cutting.md").read_text(encoding="utf-8")
    assert "2 1/2 × 20 1/2 in" in table
    assert "2 1/2 × 18 1/2 in" in table


def test_a_quilt_and_a_block_of_one_name_both_find_a_name(folder: Path, run: Run) -> None:
    lay(folder, QUILT.replace('"Shore"', '"Pin"'))
    run("build", "shore.block", "-o", "out", "--only", "diagrams")
    assert {"pin.svg", "pin-2.svg", "pin-2.rows.svg"} <= set(written(folder))


def test_the_rules_name_the_quilts_files_and_the_file_of_its_blocks(folder: Path, run: Run) -> None:
    lay(folder)
    run("build", "shore.block", "-o", "out", "--only", "sheet", "--depfile", "rules.d")
    rules = (folder / "rules.d").read_text(encoding="utf-8")
    assert "out/shore.quilt.pdf" in rules
    assert "\npin.block:\n" in rules


def test_a_quilt_that_differs_in_its_binding_alone_is_another_quilt(folder: Path, run: Run) -> None:
    lay(folder)
    (folder / "again.block").write_text(QUILT, encoding="utf-8")
    (folder / "bound.block").write_text(QUILT + "  binding 2 1/4 in slate straight\n", encoding="utf-8")
    run("build", "shore.block", "again.block", "bound.block", "-o", "out", "--only", "table")
    tables = [name for name in written(folder) if name.startswith("shore") and name.endswith(".md")]
    assert tables == ["shore-2.cutting.md", "shore.cutting.md"]
    assert "binding" in (folder / "out/shore-2.cutting.md").read_text(encoding="utf-8")


def test_a_change_of_the_binding_is_seen_though_the_cache_knows_the_quilt(folder: Path, run: Run) -> None:
    lay(folder)
    run("build", "shore.block", "-o", "out", "--only", "table", "--cache", "kept")
    before = (folder / "out/shore.cutting.md").read_text(encoding="utf-8")
    lay(folder, QUILT + "  binding 2 1/4 in slate straight\n")
    run("build", "shore.block", "-o", "out", "--only", "table", "--cache", "kept")
    assert "binding" not in before
    assert "binding" in (folder / "out/shore.cutting.md").read_text(encoding="utf-8")


def test_blocks_that_a_quilt_makes_larger_have_templates_of_that_size(folder: Path, run: Run) -> None:
    (folder / "kites.block").write_text(KITES, encoding="utf-8")
    run("build", "kites.block", "-o", "out", "--only", "templates")
    assert written(folder) == ["kite-9-in.templates.pdf", "kite.templates.pdf"]


def test_a_file_with_a_quilt_has_a_web_site_when_it_is_asked_for(folder: Path, run: Run) -> None:
    lay(folder)
    run("build", "shore.block", "-o", "out", "--only", "web")
    assert {"pin.html", "shore.html", "index.html"} <= {path.name for path in (folder / "out/shore.web").iterdir()}


def test_a_book_of_all_that_the_files_declare_has_their_quilts(folder: Path, run: Run) -> None:
    lay(folder)
    run("build", "shore.block", "-o", "out", "--only", "book", "--book", "all.pdf")
    words = PdfReader(folder / "all.pdf").pages[0].extract_text()
    assert "1 patchwork block and 1 quilt" in words


def test_of_a_quilt_with_an_error_nothing_is_written(folder: Path, run: Run) -> None:
    lay(folder, QUILT.replace("2 x 3", "0 x 3"))
    run("build", "shore.block", "-o", "out")
    assert not (folder / "out").exists() or written(folder) == []


def test_numbers_without_the_cloth_or_of_a_file_with_an_error_tell_of_the_top_alone(folder: Path, run: Run) -> None:
    lay(folder, QUILT + "  backing fog overage 4 in\n  binding 2 1/4 in slate straight\n")
    whole = json.loads(run("facts", "shore.block").out)["quilts"][0]
    top = json.loads(run("facts", "shore.block", "--no-cloth").out)["quilts"][0]
    assert "backing" in whole
    assert "backing" not in top
    assert len(top["steps"]) < len(whole["steps"])

    ended = run("facts", "shore.block", "--no-cloth", "--size", "9 in", "--colourway", "Night")
    assert (ended.status, "a fault of ours" in ended.told) == (1, False)
