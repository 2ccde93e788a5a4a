"""Templates measured in the PDF itself: in its content streams, and in its pixels as another program paints them."""

from __future__ import annotations

from io import BytesIO
from itertools import pairwise, permutations
from math import hypot
from typing import Any

import numpy as np
import pypdfium2
import pytest
from pypdf import PdfReader
from shapely.geometry import LineString, MultiLineString, Polygon
from shapely.ops import unary_union

from blockdsl.export.pdf import write_pdf
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.fullsize.pattern import TemplatePattern, pattern_of
from blockdsl.fullsize.templates import template_pages
from blockdsl.marks.display_list import Document
from blockdsl.marks.theme import PAPERS
from blockdsl.page.scale_check_page import check_print_page
from tests.unit.fullsize.sample_templates import block_of, half_square, sample_block, small_templates

MILLIMETRE = 72 / 25.4
DPI = 600
Dot = tuple[float, float]


SMALL = ("A", "B", "C", "D", "E", "Er", "F", "G")


@pytest.fixture(scope="module", params=[*PAPERS, "roll 24 in", "roll 36 in", "roll 90 cm"])
def paper(request: pytest.FixtureRequest) -> str:
    return str(request.param)


@pytest.fixture(scope="module")
def block(paper: str) -> BlockFacts:
    """A to G fit every paper; H needs tiles: 20 in on sheets, 40 in on rolls."""
    return block_of((*small_templates(), half_square("H", 40))) if paper.startswith("roll") else sample_block()


@pytest.fixture(scope="module")
def printed(block: BlockFacts, paper: str) -> bytes:
    return write_pdf(template_pages(block, paper=paper))


@pytest.fixture(scope="module")
def drawings(printed: bytes) -> list[list[list[Dot]]]:
    return [lines_of(page) for page in PdfReader(BytesIO(printed)).pages]


@pytest.fixture(scope="module")
def patterns(block: BlockFacts) -> dict[str, TemplatePattern]:
    return {template.label: pattern_of(template, block) for template in block.templates}


def lines_of(page: Any) -> list[list[Dot]]:
    """Every open or closed line that a page draws, in points from its top left corner."""
    height = float(page.mediabox.height)
    matrices = [(1.0, 0.0, 0.0, 1.0, 0.0, 0.0)]
    found: list[list[Dot]] = []

    def placed(x: float, y: float) -> Dot:
        a, b, c, d, e, f = matrices[-1]
        return a * x + c * y + e, height - (b * x + d * y + f)

    for operands, operator in page.get_contents().operations:
        numbers = [float(value) for value in operands] if operator in {b"cm", b"m", b"l", b"re"} else []
        if operator == b"q":
            matrices.append(matrices[-1])
        elif operator == b"Q":
            matrices.pop()
        elif operator == b"cm":
            matrices[-1] = multiplied(numbers, matrices[-1])
        elif operator == b"m":
            found.append([placed(*numbers)])
        elif operator == b"l":
            found[-1].append(placed(*numbers))
        elif operator == b"h" and found:
            found[-1].append(found[-1][0])
        elif operator == b"re":
            x, y, w, h = numbers
            corners = ((x, y), (x + w, y), (x + w, y + h), (x, y + h), (x, y))
            found.append([placed(*corner) for corner in corners])
    return found


def multiplied(first: list[float], second: tuple[float, ...]) -> tuple[float, float, float, float, float, float]:
    a, b, c, d, e, f = first
    p, q, r, s, t, u = second
    return (a * p + b * r, a * q + b * s, c * p + d * r, c * q + d * s, e * p + f * r + t, e * q + f * s + u)


def sides(line: list[Dot]) -> list[float]:
    return [hypot(x1 - x0, y1 - y0) for (x0, y0), (x1, y1) in pairwise(line)]


def rings(lines: list[list[Dot]], corners: int) -> list[list[Dot]]:
    return [line for line in lines if len(line) == corners + 1 and line[0] == line[-1]]


def inch_square_of(lines: list[list[Dot]]) -> list[Dot]:
    """The lowest ring of about an inch; the half-inch square F, which is cut an inch wide, stands above it."""
    inches = [line for line in lines if len(line) == 5 and all(abs(side - 72) < 1.5 for side in sides(line))]
    return max(inches, key=lambda line: line[0][1])


def of_length(lines: list[list[Dot]], wanted: float) -> int:
    """How many straight lines have that length, to 0.004 mm: the file's numbers are good to about 0.002 pt."""
    return sum(len(line) == 2 and abs(sides(line)[0] - wanted) < 0.01 for line in lines)


def test_every_page_has_the_test_square_as_72_units(drawings: list[list[list[Dot]]]) -> None:
    for lines in drawings:
        assert [round(side, 3) for side in sides(inch_square_of(lines))] == [72.0] * 4


def test_every_page_has_the_5_cm_bar_as_141_732_units(drawings: list[list[list[Dot]]]) -> None:
    assert [of_length(lines, 141.732) for lines in drawings] == [1] * len(drawings)


def test_the_first_page_has_the_6_in_and_the_15_cm_bar_at_their_length(drawings: list[list[list[Dot]]]) -> None:
    assert (of_length(drawings[0], 432.0), of_length(drawings[0], 425.197)) == (1, 1)


def same_shape(line: list[Dot], wanted: tuple[Dot, ...]) -> bool:
    """Whether a drawn ring is the wanted one, moved and perhaps turned, each side to a twentieth of a millimetre."""
    got, want = sides(line), sides([*wanted, wanted[0]])
    turns = [got[k:] + got[:k] for k in range(len(got))]
    alike = any(all(abs(a - b) < 0.05 * MILLIMETRE for a, b in zip(turn, want, strict=True)) for turn in turns)
    drawn, meant = Polygon(line), Polygon(wanted)
    return alike and abs(drawn.area - meant.area) < 0.05 * MILLIMETRE * meant.length


def test_both_outlines_of_every_template_are_printed_to_a_twentieth_of_a_millimetre(
    patterns: dict[str, TemplatePattern], drawings: list[list[list[Dot]]]
) -> None:
    every = [line for lines in drawings for line in lines]
    for letter in SMALL:
        for outline in (patterns[letter].cutting, patterns[letter].sewing):
            assert any(same_shape(line, outline) for line in rings(every, len(outline))), letter


def test_the_allowance_between_the_outlines_of_a_template_is_a_quarter_inch_everywhere(
    drawings: list[list[list[Dot]]],
) -> None:
    # The square A: 3 in to sew, 3 1/2 in to cut; by hand 216 and 252 pt.
    every = [line for lines in drawings for line in rings(lines, 4)]
    sewn = [Polygon(line) for line in every if all(abs(side - 216) < 0.14 for side in sides(line))]
    cut = [Polygon(line) for line in every if all(abs(side - 252) < 0.14 for side in sides(line))]
    assert len(sewn) == len(cut) == 1
    assert sewn[0].distance(cut[0].exterior) == pytest.approx(18.0, abs=0.05 * MILLIMETRE)
    assert sewn[0].hausdorff_distance(cut[0]) == pytest.approx(18.0 * 2**0.5, abs=0.05 * MILLIMETRE)


def test_tiles_laid_over_one_another_at_their_marks_give_back_the_template(
    printed: bytes, patterns: dict[str, TemplatePattern], drawings: list[list[list[Dot]]]
) -> None:
    """Each tile is put in place by the letters of its marks alone, as taped paper is."""
    pattern = patterns["H"]
    pages = [page for page, lines in enumerate(drawings) if any(is_diamond(line) for line in lines)]
    assert len(pages) > 1
    marks = {page: marks_on(printed, page, drawings[page]) for page in pages}
    shifts: dict[int, Dot] = {pages[0]: (0.0, 0.0)}
    for _ in pages:
        for here, there in permutations(pages, 2):
            shared = sorted(marks[here].keys() & marks[there].keys())
            if here in shifts and there not in shifts and shared:
                moves = [moved_onto(marks[here][letter], marks[there][letter], shifts[here]) for letter in shared]
                assert len(shared) >= 2
                assert all(move == pytest.approx(moves[0], abs=0.02) for move in moves)
                shifts[there] = moves[0]
    assert set(shifts) == set(pages)
    laid = [
        [(x + shifts[page][0], y + shifts[page][1]) for x, y in line]
        for page in pages
        for line in template_lines(drawings[page])
    ]
    left, top = min(x for line in laid for x, _ in line), min(y for line in laid for _, y in line)
    found = MultiLineString([[(x - left, y - top) for x, y in line] for line in laid])
    wanted = unary_union([LineString((*ring, ring[0])) for ring in (pattern.cutting, pattern.sewing)])
    tenth = 0.1 * MILLIMETRE
    assert found.difference(wanted.buffer(tenth)).length == 0
    assert wanted.difference(found.buffer(tenth)).length == 0


def moved_onto(here: Dot, there: Dot, shift: Dot) -> Dot:
    return here[0] - there[0] + shift[0], here[1] - there[1] + shift[1]


def marks_on(printed: bytes, page: int, lines: list[list[Dot]]) -> dict[str, Dot]:
    """The middles of a tile's diamonds (four equal sides of 6√2 pt) by the letter that stands on both sides of each."""
    opened = pypdfium2.PdfDocument(printed)[page]
    text, height = opened.get_textpage(), opened.get_height()
    letters = []
    for number in range(text.count_chars()):
        x0, y0, x1, y1 = text.get_charbox(number)
        letters.append((text.get_text_range(number, 1), (x0 + x1) / 2, height - (y0 + y1) / 2))
    found: dict[str, Dot] = {}
    for line in rings(lines, 4):
        if is_diamond(line):
            x, y = sum(x for x, _ in line[:4]) / 4, sum(y for _, y in line[:4]) / 4
            near = sorted((hypot(cx - x, cy - y), letter) for letter, cx, cy in letters if letter.strip())[:2]
            assert near[0][1] == near[1][1]
            assert near[1][0] < 18
            found[near[0][1]] = (x, y)
    return found


def template_lines(lines: list[list[Dot]]) -> list[list[Dot]]:
    """A tile's cutting and sewing lines, which its page draws first: all before the first join line and its marks."""
    count = next(number for number, line in enumerate(lines) if is_diamond(line)) - 1
    return lines[:count]


def is_diamond(line: list[Dot]) -> bool:
    return len(line) == 5 and all(abs(side - 6 * 2**0.5) < 0.01 for side in sides(line))


def test_the_test_square_and_the_bar_measure_right_in_pixels_of_another_program(
    printed: bytes, drawings: list[list[list[Dot]]]
) -> None:
    left, top = min(inch_square_of(drawings[-1]))
    page = pypdfium2.PdfDocument(printed)[len(drawings) - 1]
    # Only the corner with the square and the bar: a roll's page would have hundreds of millions of pixels.
    crop = (0.0, 0.0, page.get_width() - left - 240.0, top - 10.0)
    image = np.asarray(page.render(scale=DPI / 72, grayscale=True, crop=crop).to_numpy()).squeeze()
    dark = np.flatnonzero(image[pixel(10.0 + 66.0), : pixel(left + 80.0)] < 128)
    measured = (middle_of_last(dark) - middle_of_first(dark)) / DPI * 25.4
    assert measured == pytest.approx(25.4, abs=0.05)
    # The bar stands 20 pt above the foot of the square; its end strokes alone reach 4.5 pt above it.
    start = pixel(left + 76.0)
    dark = np.flatnonzero(image[pixel(10.0 + 72.0 - 20.0 - 4.5), start : pixel(left + 240.0)] < 128)
    measured = (middle_of_last(dark) - middle_of_first(dark)) / DPI * 25.4
    assert measured == pytest.approx(50.0, abs=0.05)


def pixel(points: float) -> int:
    return round(points * DPI / 72)


def middle_of_first(dark: np.ndarray[Any, Any]) -> float:
    run = [dark[0]]
    for column in dark[1:]:
        if column != run[-1] + 1:
            break
        run.append(column)
    return float(np.mean(run))


def middle_of_last(dark: np.ndarray[Any, Any]) -> float:
    return -middle_of_first(-dark[::-1])


@pytest.mark.parametrize("checked", [*PAPERS, "roll 24 in"])
def test_the_page_that_checks_the_print_has_its_bars_at_their_length_across_and_down(checked: str) -> None:
    written = write_pdf(Document("check", (check_print_page(checked),)))
    lines = lines_of(PdfReader(BytesIO(written)).pages[0])
    assert [round(side, 3) for side in sides(inch_square_of(lines))] == [72.0] * 4
    across = [line for line in lines if len(line) == 2 and abs(line[0][1] - line[1][1]) < 0.001]
    down = [line for line in lines if len(line) == 2 and abs(line[0][0] - line[1][0]) < 0.001]
    assert [of_length(across, length) for length in (432.0, 425.197, 141.732)] == [1, 1, 1]  # 6 in, 15 cm, 5 cm
    assert [of_length(down, length) for length in (576.0, 566.929)] == [1, 1]  # 8 in, 20 cm
