"""Templates at full size: every different patch once, on pages that print alike on Letter and A4.

Small templates are packed many to a page, large ones run over tiles, and every page has the means to check its scale.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from blockdsl.drawing.flow import moved
from blockdsl.drawing.marks import Document, Figure, Mark, Page
from blockdsl.drawing.packing import Item, fits, pack_fewest
from blockdsl.drawing.scale_check import TEST_SQUARE_PT, square_and_bar
from blockdsl.drawing.template_marks import cutting_lines, sewing_lines
from blockdsl.drawing.templates_beside import Drawn, words_beside
from blockdsl.drawing.templates_head import contents, foot, head
from blockdsl.drawing.templates_pattern import POINTS_PER_UNIT, Pattern, pattern_of, quarter_turn
from blockdsl.drawing.templates_tiles import tile_marks, tiled
from blockdsl.drawing.templates_words import letter_inside, set_words, words_inside
from blockdsl.drawing.theme import FOOTER_HEIGHT_PT, SMALL_PT, Box, Paper, paper_named
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.geometry import to_float
from blockdsl.geometry.polygon import bounding_box

LARGEST_PT: Final = 14_400.0
"""The greatest length that a page of a PDF may have (200 in); no template is larger."""

_GAP_PT: Final = 14.0
_STRIP_GAP_PT: Final = 10.0
_STRIP_START_PT: Final = 252.0

# Strokes lie half outside their outline; this keeps them, and the marks' ends, on the page.
_INSET_PT: Final = 0.5


def template_pages(facts: BlockFacts, *, paper: str) -> Document:
    """All templates of a block at full size.

    Units:  points on the page; every page of the document has the size of `paper`, upright.
    Errors: ValueError for an unknown paper, or a template longer than 14,400 pt
            (`templates_too_large` names those; ask it first).
    """
    refused = templates_too_large(facts)
    if refused:
        raise ValueError(f"too large to print as a template: {', '.join(refused)}")
    sheet = paper_named(paper)
    top, first_y = head(facts, sheet.content)
    room = _room(sheet)
    first = Box(room.x_pt, first_y, room.width_pt, room.bottom_pt - first_y)
    patterns = [pattern_of(template, facts) for template in facts.templates]
    pages = _packed([pattern for pattern in patterns if _fits_a_page(pattern, room)], first, room, _strip(sheet))
    for pattern in patterns:
        if not _fits_a_page(pattern, room):
            pages += _tile_pages(pattern, room, _strip(sheet))
    pages[0] = _Sheet((*top, *pages[0].marks, *contents([page.letters for page in pages], _strip(sheet))))
    return _document(facts, sheet, pages)


@dataclass(frozen=True, slots=True)
class _Sheet:
    """A page before its scale check and foot, and the letters that the contents name for it."""

    marks: tuple[Mark, ...]
    letters: tuple[str, ...] = ()


def templates_too_large(facts: BlockFacts) -> tuple[str, ...]:
    """The letters of the templates that are longer or wider than 14,400 pt (200 in), and cannot be printed."""
    scale = POINTS_PER_UNIT[facts.unit]
    found = []
    for template in facts.templates:
        left, top, right, bottom = bounding_box(template.cutting)
        if max(to_float(right - left), to_float(bottom - top)) * scale > LARGEST_PT:
            found.append(template.label)
    return tuple(found)


def _room(sheet: Paper) -> Box:
    """Where templates go: the content box above the strip with the scale check and the foot."""
    box = sheet.content
    height = box.height_pt - FOOTER_HEIGHT_PT - TEST_SQUARE_PT - _STRIP_GAP_PT
    return Box(box.x_pt + _INSET_PT, box.y_pt + _INSET_PT, box.width_pt - 2 * _INSET_PT, height - _INSET_PT)


def _strip(sheet: Paper) -> Box:
    """What is free beside the scale check."""
    box = sheet.content
    return Box(
        box.x_pt + _STRIP_START_PT,
        box.bottom_pt - FOOTER_HEIGHT_PT - TEST_SQUARE_PT,
        box.width_pt - _STRIP_START_PT,
        TEST_SQUARE_PT,
    )


def _fits_a_page(pattern: Pattern, room: Box) -> bool:
    width, height = pattern.width_pt, pattern.height_pt
    return fits((width, height), room) or fits((height, width), room)


def _outlines(pattern: Pattern) -> tuple[Mark, ...]:
    return cutting_lines((pattern.cutting,), closed=True), sewing_lines((pattern.sewing,), closed=True)


def _drawn(pattern: Pattern) -> Drawn:
    """A template with its words, wherever those go."""
    outlines = _outlines(pattern)
    inside = words_inside(pattern, pattern.sewing)
    if inside is None:
        return words_beside(pattern, outlines)
    return Drawn(pattern.width_pt, pattern.height_pt, (*outlines, *inside))


def _packed(patterns: Sequence[Pattern], first: Box, room: Box, strip: Box) -> list[_Sheet]:
    """The pages of those templates that fit one; at least one page."""
    ways = [(_drawn(pattern), _drawn(quarter_turn(pattern))) for pattern in patterns]
    items = [Item((a.width_pt, a.height_pt), (b.width_pt, b.height_pt)) for a, b in ways]
    # A template that all but fills the page and has no room inside leaves its words to the foot of a page of its own.
    shared = [number for number, item in enumerate(items) if fits(item.upright, room) or fits(item.turned, room)]
    alone = sorted(set(range(len(items))).difference(shared))
    places = pack_fewest([items[number] for number in shared], first, room, _GAP_PT)
    pages: list[list[tuple[str, Mark]]] = [[] for _ in range(max((place.page for place in places), default=0) + 1)]
    for place in places:
        number = shared[place.item]
        marks = moved(ways[number][place.turned].marks, place.x_pt, place.y_pt)
        pages[place.page].append((patterns[number].letter, Figure(patterns[number].alternative, marks)))
    sheets = [_Sheet(tuple(mark for _, mark in page), tuple(sorted(letter for letter, _ in page))) for page in pages]
    return sheets + [_own_page(patterns[number], room, strip) for number in alone]


def _own_page(pattern: Pattern, room: Box, strip: Box) -> _Sheet:
    stood = pattern if fits((pattern.width_pt, pattern.height_pt), room) else quarter_turn(pattern)
    shape = (*_outlines(stood), *(letter_inside(stood, stood.sewing) or ()))
    words = set_words(stood.words, 20.0, SMALL_PT, strip.width_pt - 30.0, stacked=False)
    figure = Figure(
        stood.alternative, (*moved(shape, room.x_pt, room.y_pt), *moved(words.marks, strip.x_pt, strip.y_pt))
    )
    return _Sheet((figure,), (stood.letter,))


def _tile_pages(pattern: Pattern, room: Box, strip: Box) -> list[_Sheet]:
    stood, tiling = tiled(pattern, room.width_pt, room.height_pt)
    return [
        _Sheet(tile_marks(stood, tiling, number, room, strip), (f"{stood.letter} (tile {number + 1})",))
        for number in range(len(tiling.tiles))
    ]


def _document(facts: BlockFacts, sheet: Paper, pages: Sequence[_Sheet]) -> Document:
    box = sheet.content
    check = square_and_bar(box.x_pt, box.bottom_pt - FOOTER_HEIGHT_PT - TEST_SQUARE_PT)
    finished = tuple(
        Page(sheet.width_pt, sheet.height_pt, (*page.marks, *check, *foot(facts, box, number, len(pages))))
        for number, page in enumerate(pages, 1)
    )
    return Document(f"{facts.name}: templates", finished, subject="Patchwork templates at full size")
