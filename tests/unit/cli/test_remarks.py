"""A designer's own notes and addresses, in the steps where they belong."""

from pathlib import Path

import pypdfium2
import pytest
import zxingcpp
from pypdf import PdfReader

from tests.unit.cli.pinwheel import Run

ADDRESS = "https://marsh-street.example/corner?quality=high&start=45"
LONGEST = "https://marsh-street.example/" + "a" * 471
BLOCK = f"""fabric fog "Fog" #dddddd
fabric lantern "Lantern" #e0a030
fabric slate "Slate" #445566

unit corner
  note "chain-piece All four."
  row fog          fog/lantern
  row fog/lantern  slate

block "Harbour Light"
  size 12 in
  columns 1 2 1
  heights 1 2 1
  level "Confident beginner"
  time "About 2 hours"
  make half as two at a time
  row corner   (geese lantern on fog)  corner>
  row fog      slate                   fog
  row corner<  fog                     corner>>
  note "Trim them to the thread." at half
  note "Lay the whole block out." at rows
  note "Hurray!" at last
  expect no symmetry
  note "The corners look inward."
  see "https://marsh-street.example/light" "The whole block sewn"
  see "{ADDRESS}" "How the corner is sewn" at corner
  see "{LONGEST}" "A long one" at half

book "Shores"
  subtitle "One block to begin with"
  block "Harbour Light"
"""


@pytest.fixture
def built(folder: Path, run: Run) -> Path:
    """The outputs of a block with remarks, and of a book of it."""
    (folder / "light.block").write_text(BLOCK, encoding="utf-8")
    ended = run("build", "light.block", "-o", "out")
    assert (ended.status, ended.told) == (0, "")
    return folder / "out"


def test_each_note_stands_in_its_step_as_it_was_written(built: Path) -> None:
    pages = PdfReader(built / "harbour-light.sheet.pdf").pages
    text = " ".join(" ".join(page.extract_text() for page in pages).split())
    in_order = (
        "Confident beginner · About 2 hours",
        "The corners look inward.",
        "The whole block sewn",
        "1 Half-square triangles",
        "Trim them to the thread.",
        "A long one",
        "3 Corners",
        "chain-piece All four.",
        "How the corner is sewn",
        "4 Columns 1 and 3",
        "Lay the whole block out.",
        "6 Block",
        "Hurray!",
    )
    places = [text.index(words) for words in in_order]
    assert places == sorted(places)
    assert "a" * 30 not in text  # nobody types so long an address
    assert all(text.count(words) == 1 for words in in_order if words[1] != " ")


def test_the_codes_are_read_from_the_printed_pages(built: Path) -> None:
    """By zxing-cpp, from pages that PDFium paints at 300 dots to the inch."""
    found = []
    for page in pypdfium2.PdfDocument(built / "harbour-light.sheet.pdf"):
        found += [code.text for code in zxingcpp.read_barcodes(page.render(scale=300 / 72).to_pil())]
    assert sorted(found) == sorted(["https://marsh-street.example/light", ADDRESS, LONGEST])


def test_a_click_follows_each_address_and_a_code_keeps_its_white_edge(built: Path) -> None:
    """ISO/IEC 18004: four modules of white on each side; they are not under 0.4 mm here."""
    links = {}
    for page in PdfReader(built / "harbour-light.sheet.pdf").pages:
        for annotation in (found.get_object() for found in page.get("/Annots", ())):
            if "/A" in annotation:
                links[annotation["/A"]["/URI"]] = [float(side) for side in annotation["/Rect"]]
    assert set(links) == {"https://marsh-street.example/light", ADDRESS, LONGEST}
    left, bottom, right, top = links[LONGEST]
    assert top - bottom >= 93 * 0.4 / 25.4 * 72  # 85 modules, and 4 of white at either side
    assert right - left > top - bottom


def test_a_site_has_the_notes_and_the_links(built: Path) -> None:
    page = (built / "shores.web" / "harbour-light.html").read_text("utf-8")
    assert f'<a href="{ADDRESS.replace("&", "&amp;")}">How the corner is sewn</a>' in page
    for note in ("Trim them to the thread.", "chain-piece All four.", "Lay the whole block out.", "Hurray!"):
        assert f'<p class="note" dir="auto">{note}</p>' in page
    assert "One block to begin with" in (built / "shores.web" / "index.html").read_text("utf-8")


def test_a_title_page_has_the_subtitle(built: Path) -> None:
    assert "One block to begin with" in PdfReader(built / "shores.pdf").pages[0].extract_text()


def test_what_is_wrong_with_a_block_is_told_once_however_many_sizes_are_printed(folder: Path, run: Run) -> None:
    text = 'fabric fog "Fog" #dddddd\nfabric slate "Slate" #445566\n\nblock "Lights"\n  size 6 in\n  sizes 9 in\n'
    text += '  row fog/slate  fog\n  row fog        fog/slate\n  note "Trim." at halves\n  picture "no.png" "Words"\n'
    text += '  expect symmetric left to right\n\nbook "Shores"\n  block "Lights" sizes 6 12 in\n'
    (folder / "lights.block").write_text(text, encoding="utf-8")
    ended = run("check", "lights.block")
    assert ended.told.count("error[") == 3, ended.told


def test_a_note_at_a_unit_without_a_step_stands_with_the_block(folder: Path, run: Run) -> None:
    text = """fabric fog "Fog" #dddddd
fabric slate "Slate" #445566

unit plain
  note "A plain square."
  row fog

block "Lights"
  size 6 in
  row plain  slate
  row slate  plain
"""
    (folder / "lights.block").write_text(text, encoding="utf-8")
    assert run("build", "lights.block", "-o", "out", "--only", "sheet").status == 0
    text = " ".join(page.extract_text() for page in PdfReader(folder / "out" / "lights.sheet.pdf").pages)
    assert text.count("A plain square.") == 1


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ('note "Trim." at halves', "name-unknown"),
        ('note "Trim." at', "line-ends-early"),
        ('note "Trim." at half half', "word-unexpected"),
        ('note "Trim." by half', "word-unexpected"),
        ('see "https://marsh-street.example"', "line-ends-early"),
        ('see "marsh-street" "Words"', "link-not-web"),
        ('see "javascript:alert(1)" "Words"', "link-not-web"),
        (f'see "{LONGEST}a" "Words"', "link-not-web"),
        ('see "https://marsh-street.example" "Words" at fog', "name-unknown"),
        ('level "One"\n  level "Two"', "setting-twice"),
        ('time "One"\n  time "Two"', "setting-twice"),
        ("time 2", "word-unexpected"),
        ('subtitle "One"', "line-does-not-belong"),
    ],
)
def test_a_remark_that_cannot_be_is_told_once_and_nothing_is_written(
    folder: Path, run: Run, line: str, code: str
) -> None:
    text = 'fabric fog "Fog" #dddddd\nfabric slate "Slate" #445566\n\nblock "Lights"\n  size 6 in\n'
    text += "  row fog/slate  fog\n  row fog        fog/slate\n"
    (folder / "lights.block").write_text(f"{text}  {line}\n", encoding="utf-8")
    ended = run("build", "lights.block", "-o", "out")
    assert ended.status == 1
    assert ended.told.count("error[") == 1
    assert f"error[{code}]" in ended.told, ended.told
    assert not (folder / "out").exists()
