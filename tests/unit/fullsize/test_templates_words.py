"""The words of a template: all there, and touching nothing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations
from math import cos, radians, sin

import pytest
from msgspec.structs import replace
from shapely.geometry import LineString, Polygon

from blockdsl.facts.blockfacts import BlockFacts, TemplateFacts
from blockdsl.fullsize.templates import template_pages
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.display_list import Document, Figure, Link, Mark, Path, TextMark
from blockdsl.marks.typeset import measure
from tests.unit.fullsize.sample_templates import block_of, half_square, outline, sample_block, square, template


def flat(marks: Sequence[Mark]) -> Iterator[Path | TextMark]:
    for mark in marks:
        if isinstance(mark, Path | TextMark):
            yield mark
        elif isinstance(mark, Figure | Link):
            yield from flat(mark.marks)


def texts(document: Document) -> list[str]:
    return [mark.text for page in document.pages for mark in flat(page.marks) if isinstance(mark, TextMark)]


def box_of(text: TextMark) -> Polygon:
    """The box of a run from a little below its baseline to the height of its capitals."""
    width, rise, drop = measure(text.text, text.size_pt, text.weight), text.size_pt * 0.66, text.size_pt * 0.02
    angle = radians(text.turn_degrees)
    c, s = cos(angle), sin(angle)
    corners = ((0.0, drop), (width, drop), (width, -rise), (0.0, -rise))
    return Polygon([(text.x_pt + c * x - s * y, text.y_pt + s * x + c * y) for x, y in corners])


def strained_block() -> BlockFacts:
    """Long names, names from the right, many fabrics, slivers, hollow shapes."""
    arrowhead = outline((0, 0), (5, 2), (0, 4), (2, 2))
    sliver = outline((0, 0), (6, 0), (6, 1))
    uses = tuple(("fog", count) for count in range(1, 13))
    templates: list[TemplateFacts] = [
        *sample_block().templates,
        template("J", "polygon", (5, 4), arrowhead, (1, 0), uses),
        template("K", "triangle", (6, 1), sliver, (1, 0), uses),
        template("M", "parallelogram", (3, Fraction(1, 4)), outline((1, 0), (3, 0), (2, 1), (0, 1)), (1, 1), uses),
        *(square(f"N{number}", Fraction(number, 8)) for number in range(1, 12)),
        *(half_square(f"O{number}", Fraction(number, 4)) for number in range(1, 14)),
    ]
    block = block_of(templates, name="The Long Way Home Around the Harbour on a Wet November Night")
    labels = ("A very long name for a fabric that was bought at a fair", "בד כחול כהה", "شاطئ")
    fabrics = tuple(replace(fabric, label=label) for fabric, label in zip(block.fabrics, labels, strict=True))
    return replace(block, fabrics=fabrics)


PAPERS = ("letter", "legal", "tabloid", "roll 24 in")


@pytest.fixture(params=[(block, paper) for block in ("sample", "strained") for paper in PAPERS], ids=" on ".join)
def document(request: pytest.FixtureRequest) -> Document:
    block, paper = request.param
    return template_pages(sample_block() if block == "sample" else strained_block(), paper=paper)


def test_no_words_overlap_other_words(document: Document) -> None:
    for number, page in enumerate(document.pages, 1):
        boxes = [(mark.text, box_of(mark)) for mark in flat(page.marks) if isinstance(mark, TextMark)]
        for (one, first), (two, second) in combinations(boxes, 2):
            assert first.intersection(second).area < 0.01, f"page {number}: {one!r} over {two!r}"


def test_no_line_runs_through_words(document: Document) -> None:
    for number, page in enumerate(document.pages, 1):
        marks = list(flat(page.marks))
        # The small map of the tiles has its numbers in its boxes, over the light shape of the template.
        lines = [
            LineString((*ring, ring[0]) if mark.closed else ring)
            for mark in marks
            if isinstance(mark, Path) and mark.fill is None
            for ring in mark.rings
        ]
        for text in (mark for mark in marks if isinstance(mark, TextMark)):
            box = box_of(text)
            crossed = [line for line in lines if line.intersects(box)]
            assert not crossed, f"page {number}: a line runs through {text.text!r}"


def test_all_marks_stay_on_the_part_of_the_page_that_its_printer_prints(document: Document) -> None:
    # On Letter 184 × 254 mm in the middle of 612 × 792 pt; elsewhere all but 12 mm at each edge; half a stroke may
    # reach over.
    wide, tall = document.pages[0].width_pt, document.pages[0].height_pt
    millimetre = 72 / 25.4
    left, top = ((612 - 184 * millimetre) / 2, (792 - 254 * millimetre) / 2) if tall == 792 else (12 * millimetre,) * 2
    left, top = left - 0.5, top - 0.5
    printed = Polygon([(left, top), (wide - left, top), (wide - left, tall - top), (left, tall - top)])
    for page in document.pages:
        for mark in flat(page.marks):
            if isinstance(mark, TextMark):
                assert printed.contains(box_of(mark)), mark.text
            else:
                assert all(printed.covers(LineString((*ring, ring[0]))) for ring in mark.rings)


def test_a_template_says_what_it_is_and_how_many_to_cut_of_which_fabric() -> None:
    words = texts(template_pages(block_of([half_square("B", 3)]), paper="letter"))
    for said in ("B", "Half-square triangle", "finished 3 in, short sides", "cut 4 Lantern, 2 Wet slate", "grain"):
        assert words.count(said) == 1
    assert words.count("Harbour Light") == 2  # the page's title, and the template's own


def test_a_mirror_image_is_a_template_of_its_own_and_says_so() -> None:
    words = texts(template_pages(sample_block(), paper="letter"))
    assert words.count("E") == 1
    assert words.count("Er") == 1
    assert words.count("mirror image of E") == 1


def test_a_half_inch_square_has_its_letter_inside_and_its_words_beside_it() -> None:
    document = template_pages(block_of([square("F", Fraction(1, 2))]), paper="letter")
    (figure,) = (
        mark for mark in document.pages[0].marks if isinstance(mark, Figure) and "Template F" in mark.alternative
    )
    marks = list(flat(figure.marks))
    sewing = next(mark for mark in marks if isinstance(mark, Path) and mark.dash)
    seen = Polygon(sewing.rings[0])
    assert seen.area == pytest.approx(36.0**2)
    letters = [box_of(mark) for mark in marks if isinstance(mark, TextMark) and mark.text == "F"]
    assert [seen.contains(letter) for letter in letters].count(True) == 1
    beside = [box_of(mark) for mark in marks if isinstance(mark, TextMark) and mark.text != "F"]
    assert len(beside) == 4
    assert not any(seen.buffer(18).intersects(words) for words in beside)


def test_the_grain_arrow_of_a_square_on_point_runs_along_its_sides() -> None:
    document = template_pages(sample_block(), paper="letter")
    (grain,) = (
        mark
        for page in document.pages
        for figure in page.marks
        if isinstance(figure, Figure) and figure.alternative.startswith("Template D:")
        for mark in flat(figure.marks)
        if isinstance(mark, TextMark) and mark.text == "grain"
    )
    assert abs(grain.turn_degrees) == pytest.approx(45.0)


def test_a_strip_too_narrow_for_its_words_says_at_the_foot_of_each_tile_what_it_is() -> None:
    half = Fraction(1, 2)
    strip = template("W", "rectangle", (half, 12), outline((0, 0), (half, 0), (half, 12), (0, 12)))
    words = texts(template_pages(block_of([strip]), paper="letter"))
    assert words.count("W") == 2
    assert sum(word.startswith("Rectangle · finished") for word in words) == 2


def test_a_fabric_named_from_the_right_does_not_swallow_the_next_number() -> None:
    block = block_of([half_square("B", 3)])
    fabrics = tuple(replace(fabric, label="כחול") for fabric in block.fabrics)
    words = texts(template_pages(replace(block, fabrics=fabrics), paper="letter"))
    assert "cut 4 כחול\N{LEFT-TO-RIGHT MARK}, 2 כחול\N{LEFT-TO-RIGHT MARK}" in words
