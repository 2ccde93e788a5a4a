"""The printed book as other readers of PDF see it."""

from __future__ import annotations

import re
import subprocess
import sys
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader

from blockdsl.export.pdf import write_pdf
from blockdsl.page.book.book import book_document
from tests.unit.page import books


@pytest.fixture(scope="module")
def printed() -> bytes:
    return write_pdf(book_document(books.shores()))


@pytest.fixture(scope="module")
def reader(printed: bytes) -> PdfReader:
    return PdfReader(BytesIO(printed))


def links(reader: PdfReader) -> list[tuple[int, str]]:
    """Each link: the page on which it stands, from 0, and the name that it leads to."""
    found = []
    for number, page in enumerate(reader.pages):
        annotations: Any = page.get("/Annots", ())
        for annotation in annotations:
            link = annotation.get_object()
            assert link["/Subtype"] == "/Link"
            found.append((number, str(link["/Dest"])))
    return found


def test_every_link_leads_to_a_destination_that_is_there(reader: PdfReader) -> None:
    targets = {target for _, target in links(reader)}
    assert targets
    assert targets <= set(reader.named_destinations)


def test_the_contents_tell_the_page_that_the_link_leads_to(reader: PdfReader) -> None:
    lines = reader.pages[1].extract_text().splitlines()
    for title in ("Welcome", "Before you begin", "Lights", "Light", "Kite", "Tides", "Tide", "Techniques", "Index"):
        line = next(line for line in lines if re.match(rf"(Chapter \d )?{title}\b", line))
        told = line.split()[-1]
        places = [number for number, label in enumerate(reader.page_labels) if label == told]
        assert title in reader.pages[places[-1]].extract_text().splitlines()


def test_pages_are_called_as_their_feet_say(reader: PdfReader) -> None:
    for page, label in list(zip(reader.pages, reader.page_labels, strict=True))[1:]:
        assert page.extract_text().split()[-1] == label


def test_a_link_lies_on_its_page(reader: PdfReader) -> None:
    for page in reader.pages:
        annotations: Any = page.get("/Annots", ())
        for annotation in annotations:
            left, bottom, right, top = (float(side) for side in annotation.get_object()["/Rect"])
            assert 0 <= left < right <= page.mediabox.width
            assert 0 <= bottom < top <= page.mediabox.height


def test_the_bookmarks_are_a_tree_with_the_blocks_below_their_chapters(reader: PdfReader) -> None:
    outline: list[Any] = reader.outline
    place = next(number for number, mark in enumerate(outline) if not isinstance(mark, list) and "Lights" in mark.title)
    assert [mark.title for mark in outline[place + 1]] == ["Light", "Kite"]
    for mark in outline[place + 1]:
        page = reader.get_destination_page_number(mark)
        assert page is not None
        assert mark.title in reader.pages[page].extract_text().splitlines()


def test_the_book_says_who_made_it_and_in_which_language(reader: PdfReader) -> None:
    assert reader.metadata is not None
    assert (reader.metadata.title, reader.metadata.author) == ("Shores", "The maker")
    assert str(reader.root_object["/Lang"]) == "en-US"


def test_each_weight_of_the_font_is_embedded_once_for_the_whole_book(reader: PdfReader) -> None:
    fonts: dict[str, set[int]] = {}
    for page in reader.pages:
        resources: Any = page["/Resources"]
        for font in resources.get("/Font", {}).values():
            fonts.setdefault(str(font["/BaseFont"]).partition("+")[2], set()).add(font.indirect_reference.idnum)
    assert set(fonts) == {"FiraGO-Regular", "FiraGO-SemiBold"}
    assert all(len(objects) == 1 for objects in fonts.values())


def test_fractions_are_taken_out_as_they_were_meant(reader: PdfReader) -> None:
    assert "Cut 2 ⁷⁄₈ in" in reader.pages[2].extract_text().replace("\n", " ")


def test_the_same_book_gives_the_same_bytes(printed: bytes) -> None:
    assert write_pdf(book_document(books.shores())) == printed


def test_other_readers_find_nothing_wrong(printed: bytes, tmp_path: Path) -> None:
    path = tmp_path / "book.pdf"
    path.write_bytes(printed)
    told = subprocess.run(("qpdf", "--check", path), capture_output=True, text=True, timeout=60, check=False)
    assert (told.returncode, told.stderr) == (0, "")
    words = subprocess.run(("pdftotext", "-layout", path, "-"), capture_output=True, text=True, timeout=60, check=False)
    assert words.stderr == ""
    assert "2 ⁷⁄₈" in words.stdout


MEASURE = """
import resource, sys
from pathlib import Path
from blockdsl.page.book.book import book_document
from blockdsl.export.pdf import write_pdf
from tests.unit.page import books
write_pdf(book_document(books.many()))
status = Path("/proc/self/status")
if status.exists():  # the other figure begins with that of the process that started this one
    (peak,) = [line.split()[1] for line in status.read_text().splitlines() if line.startswith("VmHWM")]
    print(int(peak) * 1024)
else:
    print(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * (1 if sys.platform == "darwin" else 1024))
"""


def test_a_book_of_more_than_150_pages_takes_less_than_200_mb(project: Path) -> None:
    told = subprocess.run(
        (sys.executable, "-c", MEASURE), cwd=project, capture_output=True, text=True, timeout=120, check=True
    )
    assert 20_000_000 < int(told.stdout) < 200_000_000
