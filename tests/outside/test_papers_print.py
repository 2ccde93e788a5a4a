"""Papers for English paper piecing measured in the PDF itself: finished size, mirrored, as many as the block needs."""

from __future__ import annotations

from collections import Counter
from io import BytesIO
from itertools import combinations

import pytest
from pypdf import PdfReader
from shapely.affinity import rotate, translate
from shapely.geometry import Polygon

from blockdsl.export.pdf import write_pdf
from blockdsl.facts import BlockFacts
from blockdsl.fullsize.papers import MOST_PAPERS, paper_pages
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


def pages_of(facts: BlockFacts, paper: str = "letter") -> list[list[list[Dot]]]:
    data = write_pdf(paper_pages(facts, paper=paper))
    return [lines_of(page) for page in PdfReader(BytesIO(data)).pages]


def rings(lines: list[list[Dot]]) -> list[Polygon]:
    """Closed outlines that are large enough to be papers: no heads of arrows, no test square."""
    closed = [Polygon(line) for line in lines if len(line) > 3 and line[0] == line[-1]]
    return [ring for ring in closed if ring.area > 150 and not is_test_square(ring)]


def is_test_square(ring: Polygon) -> bool:
    left, top, right, bottom = ring.bounds
    whole = abs(ring.area - 72 * 72) < 1
    return bool(whole and abs(right - left - 72) < CLOSE and abs(bottom - top - 72) < CLOSE)


def wanted_of(facts: BlockFacts) -> list[tuple[str, Polygon, int]]:
    """Each letter's patch as placed in the block, seen in the mirror; and how many of them."""
    scale = 72.0 if facts.unit == "in" else 72 / 2.54
    counted = Counter(patch.label for patch in facts.placed)
    shapes = {
        patch.label: Polygon([(-to_float(c.x) * scale, to_float(c.y) * scale) for c in patch.outline])
        for patch in facts.placed
    }
    return [(label, shapes[label], count) for label, count in counted.items()]


def lies_on(one: Polygon, other: Polygon) -> bool:
    """Whether it is the other in one of the four turns of the page, to a twentieth of a millimetre; never turned over.

    Patches of one letter may lie in the block at any turn that their shape allows; sixty degrees too.
    """
    x, y = other.centroid.x, other.centroid.y
    for turn in range(0, 360, 15):
        turned = rotate(one, turn, origin="centroid")
        laid = translate(turned, x - turned.centroid.x, y - turned.centroid.y)
        if laid.hausdorff_distance(other) < CLOSE:
            return True
    return False


BLOCKS = {
    "sail": (("row sail", "make sail as over papers"), "4 in", SAIL),
    "metric sail": (("row sail", "make sail as over papers"), "10 cm", SAIL),
    "hexagons": (("row (hexagons lantern slate across 8)", "make hexagons as over papers"), "8 in", ""),
    "star": (("row (star45 points slate lantern ground fog)", "make star45 as over papers"), "6 in", ""),
    "triangles": (("row (triangles60 slate fog rows 4)", "make triangles60 as over papers"), "12 cm", ""),
}


@pytest.mark.parametrize("name", BLOCKS)
def test_every_patch_has_a_paper_of_its_finished_size_to_a_twentieth_of_a_millimetre_mirrored(name: str) -> None:
    lines, size, above = BLOCKS[name]
    facts = block(*lines, size=size, above=above)
    drawn = [ring for page in pages_of(facts) for ring in rings(page)]
    assert len(drawn) == len(facts.placed)
    left = list(drawn)
    for label, shape, count in wanted_of(facts):
        found = [ring for ring in left if abs(ring.area - shape.area) < 3 and lies_on(shape, ring)]
        assert len(found) == count, label
        left = [ring for ring in left if ring not in found]
    assert not left


@pytest.mark.parametrize("name", BLOCKS)
def test_papers_lie_beside_one_another_and_inside_the_page(name: str) -> None:
    lines, size, above = BLOCKS[name]
    for page in pages_of(block(*lines, size=size, above=above)):
        drawn = rings(page)
        for one, other in combinations(drawn, 2):
            assert one.distance(other) > 0.5
        for ring in drawn:
            left, _, right, _ = ring.bounds
            assert left > 36
            assert right < 612 - 36


def test_every_page_has_the_test_square() -> None:
    for page in pages_of(block(*BLOCKS["hexagons"][0], size="8 in")):
        assert any(len(line) > 3 and is_test_square(Polygon(line)) for line in page if line[0] == line[-1])


def test_hexagons_of_an_inch_across_lie_in_rows_like_bricks() -> None:
    """Above the scale check 7.2 × 8.5 in are free. Hexagons of 1 in from side to side take boxes of 1 × 1.155 in:
    box by box six lie in a row, in seven rows, or on their sides six in eight; each row in the gaps of the last,
    0.92 in below it with the gap between them, six lie in nine."""
    facts = block("row (hexagons lantern slate across 12)", "make hexagons as over papers", size="12 in")
    fullest = max(len(rings(page)) for page in pages_of(facts))
    assert fullest == 54


def test_of_very_many_papers_each_letter_is_printed_once() -> None:
    rows = ["row " + "fog/slate " * 24] * 24
    facts = block(*rows, "make half as over papers", size="24 in")
    assert sum(paper.count for paper in facts.papers) > MOST_PAPERS
    assert sum(len(rings(page)) for page in pages_of(facts)) == 1


def test_a_paper_larger_than_the_page_runs_over_tiles_on_letter_and_lies_whole_on_a_roll() -> None:
    facts = block("row (octagon lantern with fog)", "make octagon as over papers", size="20 in")
    assert len(pages_of(facts)) > 4
    (page,) = pages_of(facts, "roll 36 in")
    assert len(rings(page)) == 5
