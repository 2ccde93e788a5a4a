"""Every kind of PDF is tagged as PDF/UA-1 wants it, and read in the order of the page. The judge is pikepdf."""

from __future__ import annotations

import subprocess
from collections import Counter
from collections.abc import Iterator
from io import BytesIO
from itertools import pairwise
from pathlib import Path

import pikepdf
import pytest

from tests.outside.pdf_tags import HEADINGS, Node, Piece, Tagged

NAMES = """
fabric ground "بيت الزهرة" #f6f2e6 light
fabric main "שושנת הים" #17293f dark
block "ורד אדום"
  size 9 in
  row main/ground ground main/ground
  row ground main ground
  row main/ground ground main/ground
  note "שלום לכולם. زهرة البيت."
  link "https://example.org/wide"
"""
FOUNDATION = """
fabric ground "Sand" #f6f2e6 light
fabric main   "Sea"  #17293f dark
unit beam = geese main on ground
block "Beacon"
  size 8 x 4 in
  row beam beam
  row beam beam
  make beam as foundation
block "Folded"
  size 8 x 4 in
  row beam beam
  row beam beam
  make beam as over papers
"""


@pytest.fixture(scope="module")
def printed(project: Path, blockdsl_command: str, tmp_path_factory: pytest.TempPathFactory) -> dict[str, Tagged]:
    """One file of each kind and more, by name."""
    folder = tmp_path_factory.mktemp("tags")

    def run(*words: str) -> None:
        done = subprocess.run(
            [blockdsl_command, *words], cwd=project / "library/demo", check=False, capture_output=True, text=True
        )
        assert done.returncode == 0, done.stdout + done.stderr

    run("build", "book.block", "-o", str(folder), "--only", "sheet,templates,book", "--check-print")
    for name, text in (("names", NAMES), ("beacon", FOUNDATION)):
        (folder / f"{name}.block").write_text(text, encoding="utf-8")
        run("build", str(folder / f"{name}.block"), "-o", str(folder), "--only", "sheet,templates")
    run("gallery", "harbour-light.block", "net-floats.block", "-o", str(folder / "all"))
    run("gallery", "harbour-light.block", "--of", "Harbour Light", "-o", str(folder / "settings"))
    return {path.stem: Tagged(pikepdf.open(path)) for path in sorted(folder.rglob("*.pdf"))}


def test_there_is_a_file_of_every_kind(printed: dict[str, Tagged]) -> None:
    kinds = {name.rpartition(".")[2] for name in printed}
    assert {
        "sheet",
        "quilt",
        "templates",
        "foundation",
        "papers",
        "a-harbour-sampler",
        "check-print",
        "gallery",
    } <= kinds
    assert sum(len(tagged.pdf.pages) for tagged in printed.values()) > 100


def test_every_kind_of_file_is_tagged_as_it_says(printed: dict[str, Tagged]) -> None:
    assert {name: Counter(tagged.faults) for name, tagged in printed.items() if tagged.faults} == {}


def test_sheets_and_books_have_headings_tables_lists_and_captions(printed: dict[str, Tagged]) -> None:
    wanted = {"H1", "H2", "H3", "Table", "TH", "TD", "L", "LI", "LBody", "Figure", "Caption", "P"}
    for name in ("harbour-light.sheet", "breakwater.quilt", "a-harbour-sampler"):
        assert wanted <= {node.role for node in printed[name].tree.walk()}, name
    assert "Link" in {node.role for node in printed["a-harbour-sampler"].tree.walk()}


def test_a_cutting_table_is_read_row_by_row_under_its_heads(printed: dict[str, Tagged]) -> None:
    """12 in: geese of 6 by 3 in take squares of 6 + 1 1/4 and 3 + 7/8 in; the published formulas."""
    sheet = printed["harbour-light.sheet"]
    table = next(node for node in sheet.tree.walk() if node.role == "Table")
    rows = [
        [sheet.read(cell) for cell in row.kids if isinstance(cell, Node)] for row in table.kids if isinstance(row, Node)
    ]
    assert rows[0] == ["", "cut", "piece", "size", "then", "patch", "for", "spare"]
    assert rows[1] == ["Harbour fog 13 pieces to cut"]
    assert [cell.replace("\N{THIN SPACE}", " ") for cell in rows[2][:4]] == ["", "1", "square", "7 ¹⁄₄"]


def test_a_paragraph_of_several_lines_is_one(printed: dict[str, Tagged]) -> None:
    sheet = printed["harbour-light.sheet"]
    said = [sheet.read(node) for node in sheet.tree.walk() if node.role == "P"]
    assert any(text.startswith("Cut sizes include") and text.endswith("without seam allowances.") for text in said)


def test_what_stands_on_every_page_is_not_read(printed: dict[str, Tagged]) -> None:
    for tagged in printed.values():
        assert not any("Page 1 of" in piece.words for piece in tagged.pieces.values())
    book = printed["a-harbour-sampler"]
    assert sum("A Harbour Sampler" in piece.words for piece in book.pieces.values()) < 5


def leads_back(first: Piece, second: Piece) -> bool:
    """Whether what is read next lies above what was read, and no further right; turned lines are read upward."""
    return second.y > first.y + 2 and second.x <= first.x + 2 and not first.turned


def test_pages_are_read_as_they_lie(printed: dict[str, Tagged]) -> None:
    """What is read next stands lower or further right: nobody is led back to what lies above and left of it."""
    kinds = [
        name
        for name in printed
        if name.endswith((".sheet", ".quilt")) or name in {"a-harbour-sampler", "gallery", "check-print"}
    ]
    led_back = [
        (name, page + 1, sheet.read(one)[:30], sheet.read(other)[:30])
        for name in kinds
        for sheet in (printed[name],)
        for page in range(len(sheet.pdf.pages))
        for (one, first), (other, second) in pairwise(sheet.blocks(page))
        if leads_back(first, second)
    ]
    assert led_back == []


def test_a_step_is_headed_by_its_name_before_its_pictures(printed: dict[str, Tagged]) -> None:
    sheet = printed["harbour-light.sheet"]
    order = [
        (node.role, sheet.read(node))
        for node in sheet.tree.walk()
        if node.role in (*HEADINGS, "Figure", "P") and sheet.read(node)
    ]
    names = [said for _, said in order]
    pairs = next(place for place, (role, said) in enumerate(order) if role == "H3" and said.endswith("Triangle pairs"))
    assert "Place Lantern on Harbour fog" in " ".join(names[pairs : pairs + 4])
    assert order[pairs + 2][0] in ("P", "Figure")


def test_hebrew_and_arabic_are_read_in_the_order_of_speech(printed: dict[str, Tagged]) -> None:
    sheet = printed["ורד-אדום.sheet"]
    said = sheet.read(sheet.tree)
    assert all(name in said for name in ("ורד אדום", "שושנת הים", "بيت الزهرة"))
    assert "שלום לכולם" in said


# --- the judge -------------------------------------------------------------------------------------


def spoiled(tagged: Tagged) -> Iterator[tuple[str, pikepdf.Pdf]]:
    """The file with one thing wrong at a time, and a part of what must be said of it."""

    def copy() -> pikepdf.Pdf:
        data = BytesIO()
        tagged.pdf.save(data)
        return pikepdf.open(data)

    def first(pdf: pikepdf.Pdf, role: str) -> pikepdf.Dictionary:
        return next(
            each
            for each in pdf.objects
            if isinstance(each, pikepdf.Dictionary) and each.get("/S") == f"/{role}" and "/P" in each
        )

    for role, wrong, fault in (
        ("H1", "H3", "after a heading of level"),
        ("LBody", "TD", "TD in LI"),
        ("TR", "P", "P in Table"),
        ("P", "Words", "no such element"),
    ):
        pdf = copy()
        first(pdf, role).S = pikepdf.Name(f"/{wrong}")
        yield fault, pdf
    pdf = copy()
    del first(pdf, "Figure").Alt
    yield "a figure without words", pdf
    pdf = copy()
    del first(pdf, "TH").A
    yield "does not say what it heads", pdf
    pdf = copy()
    row = first(pdf, "TR")
    row.K = pikepdf.Array(list(row.K)[:-1])
    yield "a table with rows of", pdf
    pdf = copy()
    pdf.pages[0].contents_add(b"BT (unread) Tj ET 0 0 m 9 9 l S")
    yield "outside of tags and artifacts", pdf
    for entry in ("Lang", "MarkInfo", "Metadata"):
        pdf = copy()
        del pdf.Root[f"/{entry}"]
        yield {"Lang": "no language", "MarkInfo": "is tagged", "Metadata": "not claimed"}[entry], pdf


def test_the_judge_finds_what_is_wrong(printed: dict[str, Tagged]) -> None:
    found = {fault: Tagged(pdf).faults for fault, pdf in spoiled(printed["harbour-light.sheet"])}
    assert len(found) == 11
    assert {fault: faults for fault, faults in found.items() if not any(fault in each for each in faults)} == {}


def test_a_page_read_in_the_wrong_order_would_be_seen(printed: dict[str, Tagged]) -> None:
    sheet = printed["harbour-light.sheet"]
    backward = list(sheet.blocks(0))[::-1]
    assert any(leads_back(first, second) for (_, first), (_, second) in pairwise(backward))
