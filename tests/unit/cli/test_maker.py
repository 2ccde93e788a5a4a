"""What a maker prints at the foot of her pages, as `build` writes it."""

from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.unit.cli.pinwheel import PALETTE, PINWHEEL, Run

LINES = ("© 2026 Marsh Street Patterns", "For your own use")
LINK = "https://marsh-street.example/patterns/"
MAKER = f"""maker "Marsh Street Patterns"
  line "{LINES[0]}"
  line "{LINES[1]}"
  link "{LINK}"
"""
MORE = """
quilt "Pier"
  set straight 2 x 2 of "Pinwheel"

book "Shores"
  block "Pinwheel"
  quilt "Pier"
  techniques
"""


@pytest.fixture
def built(folder: Path, run: Run) -> Path:
    """The outputs of a file with a maker, a block, a quilt and a book."""
    (folder / "pinwheel.block").write_text(MAKER + PINWHEEL + MORE, encoding="utf-8")
    ended = run("build", "pinwheel.block", "-o", "out", "--all-templates")
    assert (ended.status, ended.told) == (0, "")
    return folder / "out"


def test_every_page_has_the_makers_lines_and_a_link_to_her_page(built: Path) -> None:
    documents = {place.name: PdfReader(place) for place in built.glob("*.pdf")}
    assert set(documents) == {"pinwheel.sheet.pdf", "pinwheel.templates.pdf", "pier.quilt.pdf", "shores.pdf"}
    for name, document in documents.items():
        for number, page in enumerate(document.pages):
            if name == "shores.pdf" and number == 0:
                continue  # the cover has no foot
            text = " ".join(page.extract_text().split())
            assert f"{LINES[0]} · {LINES[1]} · marsh-street.example/patterns" in text, (name, number)
            annotations = [found.get_object() for found in page.get("/Annots", ())]
            led_out = [found for found in annotations if "/A" in found]
            assert [found["/A"]["/URI"] for found in led_out] == [LINK], (name, number)
            left, bottom, right, top = (float(side) for side in led_out[0]["/Rect"])
            assert 0 < left < right < float(page.mediabox.width)
            assert 0 < bottom < top < 60


def test_a_file_tells_programs_who_made_it_and_what_may_be_done_with_it(built: Path) -> None:
    """The fields are Dublin Core's, in the packet that ISO 16684-1 describes; pypdf reads them."""
    for place in built.glob("*.pdf"):
        document = PdfReader(place)
        assert document.metadata is not None
        assert document.metadata.author == "Marsh Street Patterns"
        told = document.xmp_metadata
        assert told is not None
        assert told.dc_creator == ["Marsh Street Patterns"]
        assert told.dc_rights == {"x-default": " · ".join(LINES)}


def test_every_page_of_a_site_ends_with_the_makers_lines(built: Path) -> None:
    pages = list((built / "shores.web").glob("*.html"))
    assert len(pages) > 3
    for page in pages:
        foot = page.read_text("utf-8").partition("<footer")[2]
        assert all(line in foot for line in LINES), page.name
        assert f'<a href="{LINK}">marsh-street.example/patterns</a>' in foot


def test_without_a_maker_no_page_has_a_foot_of_hers(folder: Path, run: Run) -> None:
    assert run("build", "pinwheel.block", "-o", "out", "--only", "sheet").status == 0
    document = PdfReader(folder / "out" / "pinwheel.sheet.pdf")
    told = document.xmp_metadata
    assert told is not None
    assert (told.dc_creator, told.dc_rights) == ([], {})
    assert "·" not in document.pages[0].extract_text().splitlines()[-1]


def test_an_inner_line_takes_the_place_of_the_makers(folder: Path, run: Run) -> None:
    inner = PINWHEEL.rstrip("\n") + '\n  line "A gift: copy it as you like"\n'
    (folder / "pinwheel.block").write_text(MAKER + inner, encoding="utf-8")
    assert run("build", "pinwheel.block", "-o", "out", "--only", "sheet").status == 0
    text = " ".join(PdfReader(folder / "out" / "pinwheel.sheet.pdf").pages[0].extract_text().split())
    assert "A gift: copy it as you like · marsh-street.example/patterns" in text
    assert LINES[0] not in text


def test_the_makers_colour_takes_the_place_of_ours_everywhere_and_no_fabrics(folder: Path, run: Run) -> None:
    """Ours is #8a3b2a; a fabric of that very colour keeps it."""
    text = MAKER + "  colour #1F5C4D\n" + PINWHEEL + MORE
    (folder / "palette.block").write_text(PALETTE.replace("#3a4750", "#8a3b2a"), encoding="utf-8")
    (folder / "pinwheel.block").write_text(text, encoding="utf-8")
    for cache in ("--no-cache", "--cache=kept", "--cache=kept"):
        assert run("build", "pinwheel.block", "-o", "out", cache).status == 0
        letters = (folder / "out" / "pinwheel.letters.svg").read_text("utf-8")
        assert "#1f5c4d" in letters
        assert "#8a3b2a" not in letters.lower()
        assert "#8a3b2a" in (folder / "out" / "pinwheel.svg").read_text("utf-8")
        style = (folder / "out" / "shores.web" / "style.css").read_text("utf-8")
        assert "--accent:#1f5c4d" in style
        for name in ("pinwheel.sheet.pdf", "shores.pdf"):
            contents = (page.get_contents() for page in PdfReader(folder / "out" / name).pages)
            drawn = b"".join(stream.get_data() for stream in contents if stream is not None)
            assert b"0.1216 0.3608 0.302 rg" in drawn  # 1f, 5c, and 4d over ff
            assert b"0.5412 0.2314 0.1647 RG" not in drawn  # ours, as seams are drawn


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ('link "marsh-street.example"', "link-not-web"),
        ('link "javascript:alert(1)"', "link-not-web"),
        ('link "file:///home/ann/patterns"', "link-not-web"),
        ('link "https://"', "link-not-web"),
        ('link "https://marsh street.example"', "link-not-web"),
        ('link "https://marsh-street..example"', "link-not-web"),
        ('link "https://[marsh"', "link-not-web"),
        ('link "https://marsh-street.example/<b>"', "link-not-web"),
        ('link "https://mårsh.example"', "link-not-web"),
        (f'link "https://{"a" * 60}.example"', "foot-too-long"),
        (f'line "{"© " * 40}"', "foot-too-long"),
        ("colour #ffee99", "accent-too-pale"),
        ("color #123", "comment-needs-space"),
        ("line © 2026 Marsh Street Patterns", "word-unexpected"),
        (f'link "{LINK}"\n  link "{LINK}"', "setting-twice"),
    ],
)
def test_a_foot_that_cannot_be_printed_is_told_once_and_nothing_is_written(
    folder: Path, run: Run, line: str, code: str
) -> None:
    (folder / "pinwheel.block").write_text(f'maker "Ann"\n  {line}\n' + PINWHEEL, encoding="utf-8")
    ended = run("build", "pinwheel.block", "-o", "out")
    assert ended.status == 1
    assert ended.told.count("error[") == 1
    assert f"error[{code}]" in ended.told
    assert not (folder / "out").exists()


def test_an_address_without_its_beginning_is_put_right(folder: Path, run: Run) -> None:
    (folder / "pinwheel.block").write_text('maker "Ann"\n  link "ann.example"\n' + PINWHEEL, encoding="utf-8")
    assert run("check", "--fix", "pinwheel.block").status == 0
    assert 'link "https://ann.example"' in (folder / "pinwheel.block").read_text("utf-8")
