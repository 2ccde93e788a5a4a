"""Foundation papers measured in the PDF itself: the allowance ring, the seams, and that all of it is mirrored."""

from __future__ import annotations

import re
from io import BytesIO

import pytest
from pypdf import PdfReader
from shapely.geometry import LineString, Polygon

from blockdsl.export.pdf import write_pdf
from blockdsl.facts import BlockFacts
from blockdsl.fullsize.foundation import foundation_pages
from blockdsl.geometry import to_float
from tests.outside.test_templates_print import Dot, lines_of
from tests.unit.model.blocks import block

MILLIMETRE = 72 / 25.4
CLOSE = 0.05 * MILLIMETRE

SAIL = """unit sail
  grid 4 x 4
  patch slate at 0,0 4,0 0,1
  patch fog at 0,1 4,0 4,1 0,3
  patch lantern at 0,3 4,1 4,4 0,4"""


@pytest.fixture(scope="module", params=["in", "cm"])
def sail(request: pytest.FixtureRequest) -> BlockFacts:
    """One paper of three patches, nowhere its own mirror image: 4 in, or 10 cm."""
    size = {"in": "4 in", "cm": "10 cm"}[request.param]
    return block("row sail", "make sail as foundation", size=size, above=SAIL)


@pytest.fixture(scope="module")
def drawn(sail: BlockFacts) -> list[list[Dot]]:
    pages = PdfReader(BytesIO(write_pdf(foundation_pages(sail, paper="letter")))).pages
    # the first page has the head, and no room for a paper of that size below it
    return lines_of(pages[-1])


def scale(facts: BlockFacts) -> float:
    return 72.0 if facts.unit == "in" else 72 / 2.54


def rings_of_side(drawn: list[list[Dot]], side: float) -> list[list[Dot]]:
    """Upright squares of that side, in points."""
    found = []
    for line in drawn:
        xs, ys = [x for x, _ in line], [y for _, y in line]
        square = len(line) == 5 and line[0] == line[-1]
        if square and abs(max(xs) - min(xs) - side) < CLOSE and abs(max(ys) - min(ys) - side) < CLOSE:
            found.append(line)
    return found


def test_the_cutting_line_is_the_allowance_outside_the_sewing_line_to_a_twentieth_of_a_millimetre(
    sail: BlockFacts, drawn: list[list[Dot]]
) -> None:
    """1/4 in is 18 pt; 0.75 cm is 21.26 pt."""
    allowance = {"in": 18.0, "cm": 7.5 * MILLIMETRE}[sail.unit]
    side = to_float(sail.finished[0]) * scale(sail)
    (sewing,) = rings_of_side(drawn, side)
    (cutting,) = rings_of_side(drawn, side + 2 * allowance)
    inner, outer = Polygon(sewing), Polygon(cutting)
    for corner in inner.exterior.coords[:4]:
        left, top, right, bottom = outer.bounds
        gaps = sorted((corner[0] - left, right - corner[0]))[:1] + sorted((corner[1] - top, bottom - corner[1]))[:1]
        assert all(abs(gap - allowance) < CLOSE for gap in gaps)


def test_the_seams_lie_where_the_unit_has_them_in_the_mirror(sail: BlockFacts, drawn: list[list[Dot]]) -> None:
    """As drawn one seam runs from (0, 1) to (4, 0), the other from (0, 3) to (4, 1), in quarters of the side."""
    side = to_float(sail.finished[0]) * scale(sail)
    (sewing,) = rings_of_side(drawn, side)
    left, top, right, _ = Polygon(sewing).bounds
    step = side / 4
    for (x0, y0), (x1, y1) in (((0, 1), (4, 0)), ((0, 3), (4, 1))):
        wanted = LineString([(right - x0 * step, top + y0 * step), (right - x1 * step, top + y1 * step)])
        unmirrored = LineString([(left + x0 * step, top + y0 * step), (left + x1 * step, top + y1 * step)])
        lines = [LineString(line) for line in drawn if len(line) == 2]
        assert [line for line in lines if line.hausdorff_distance(wanted) < CLOSE]
        assert not [line for line in lines if line.hausdorff_distance(unmirrored) < CLOSE]


def test_all_ink_of_a_paper_is_on_the_page(sail: BlockFacts, drawn: list[list[Dot]]) -> None:
    for line in drawn:
        assert all(0 <= x <= 612 and 0 <= y <= 792 for x, y in line)


TERN = """unit tern
  grid 6 x 6
  patch fog at 0,0 3,0 3,2 0,1
  patch slate at 0,1 3,2 3,4 0,5
  patch fog at 0,5 3,4 3,6 0,6
  patch fog at 3,0 6,0 6,3 3,1
  patch lantern at 3,1 6,3 6,6 3,6"""


def test_every_area_of_every_paper_has_its_fabric_letter_and_size_in_a_table_of_the_printed_file() -> None:
    """Read back by another program, line by line: number, fabric, letter, size."""
    facts = block("row tern tern>", "row tern< tern>>", "make tern as foundation", size="12 in", above=TERN)
    pages = PdfReader(BytesIO(write_pdf(foundation_pages(facts, paper="letter")))).pages
    lines = [line.strip() for page in pages for line in page.extract_text().splitlines()]
    words = " ".join(lines)
    for number, fabric, letter, size in (
        ("A1", "Wet slate", "B", "4 × 5 in"),
        ("A2", "Harbour fog", "A", "3 × 4 ¹⁄₂ in"),
        ("A3", "Harbour fog", "Ar", "3 × 4 ¹⁄₂ in"),
        ("B1", "Harbour fog", "C", "4 × 4 in"),
        ("B2", "Lantern", "D", "5 ¹⁄₂ × 6 ¹⁄₂ in"),
    ):
        # in the area itself the word "cut" stands before the size
        assert len(re.findall(rf"{number} ?{fabric} ?{letter} ?{size}", words)) == 1
