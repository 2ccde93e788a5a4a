"""Templates at full size: every different patch once, on pages that print alike on Letter and A4, or on larger paper.

Small templates are packed many to a page, large ones run over tiles, and every page has the means to check its scale.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec import Struct

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.fullsize.head import TILE, contents, footer, head
from blockdsl.fullsize.layout import PageGeometry, PageLayout, lay_out
from blockdsl.fullsize.packing import page_count
from blockdsl.fullsize.pattern import POINTS_PER_UNIT, TemplatePattern, pattern_of
from blockdsl.fullsize.template import Drawings, outlines
from blockdsl.fullsize.tiles import tile_marks
from blockdsl.fullsize.tiling import Tiling
from blockdsl.fullsize.words_inside import letter_inside, set_words
from blockdsl.geometry import Point, to_float
from blockdsl.geometry.arc import reach
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.display_list import Document, Figure, Mark, Page, moved
from blockdsl.marks.theme import CONTENT_WIDTH_PT, LONGEST_PAGE_PT, MARGIN_PT, SMALL_PT, Box, paper_named
from blockdsl.page.scale_check import square_and_bar
from blockdsl.wording.messages import words_of

_AXES: Final = (Point(Fraction(1), Fraction(0)), Point(Fraction(0), Fraction(1)))


def template_pages(facts: BlockFacts, *, paper: str, margin_pt: float = MARGIN_PT) -> Document:
    """All templates of a block at full size.

    Units:  points on the page. All pages have the size of `paper`, upright or on its side, whichever needs fewer
            of them; a roll is as long as its fullest page needs. Letter and A4 keep the box that prints on both, other
            papers are filled up to `margin_pt` from their edges.
    Errors: ValueError for an unknown paper, a margin too wide for it, or a template longer than 14,400 pt
            (`templates_too_large` names those; ask it first).
    """
    refused = templates_too_large(facts)
    if refused:
        raise ValueError(f"too large to print as a template: {', '.join(refused)}")
    patterns = tuple(pattern_of(template, facts) for template in facts.templates)
    drawings = Drawings(patterns)
    _, head_pt = head(facts, Box(0.0, 0.0, CONTENT_WIDTH_PT, 0.0))
    layout = lay_out(patterns, drawings, paper_named(paper), margin_pt, head_pt)
    geometry = layout.geometry
    top, _ = head(facts, Box(geometry.box.x_pt, geometry.box.y_pt, CONTENT_WIDTH_PT, 0.0))
    pages = _shared_pages(layout, drawings)
    pages += [_own_page(drawings.pattern(number, turns), geometry) for number, turns in layout.alone]
    for pattern, tiling in layout.tiles:
        pages += _tile_pages(pattern, tiling, geometry)
    pages[0] = _Sheet(
        (*top, *pages[0].marks, *contents([page.letters for page in pages], geometry.strip, words_of(facts)))
    )
    return _document(facts, geometry, pages)


class _Sheet(Struct, frozen=True):
    """A page before its scale check and foot, and the letters that the contents name for it."""

    marks: tuple[Mark, ...]
    letters: tuple[str, ...] = ()


def templates_too_large(facts: BlockFacts) -> tuple[str, ...]:
    """The letters of the templates that are longer or wider than 14,400 pt (200 in), and cannot be printed."""
    scale = POINTS_PER_UNIT[facts.unit]
    found = []
    for template in facts.templates:
        outline = template.curved[1] if template.curved else template.cutting
        sides = (most - least for least, most in (reach(outline, way) for way in _AXES))
        if max(to_float(side) for side in sides) * scale > LONGEST_PAGE_PT:
            found.append(template.label)
    return tuple(found)


def _shared_pages(layout: PageLayout, drawings: Drawings) -> list[_Sheet]:
    """The pages of those templates that share one; at least one page."""
    pages: list[list[tuple[str, Mark]]] = [[] for _ in range(max(1, page_count(layout.shared)))]
    for place in layout.shared:
        pattern = drawings.pattern(place.item, 0)
        marks = moved(drawings.drawn(place.item, place.turns).marks, place.x_pt, place.y_pt)
        pages[place.page].append((pattern.letter, Figure(pattern.alternative, marks)))
    return [_Sheet(tuple(mark for _, mark in page), tuple(sorted(letter for letter, _ in page))) for page in pages]


def _own_page(stood: TemplatePattern, geometry: PageGeometry) -> _Sheet:
    room, strip = geometry.room, geometry.strip
    shape = (*outlines(stood), *(letter_inside(stood, stood.sewing) or ()))
    words = set_words(stood.words, 20.0, SMALL_PT, strip.width_pt - 30.0, stacked=False)
    figure = Figure(
        stood.alternative, (*moved(shape, room.x_pt, room.y_pt), *moved(words.marks, strip.x_pt, strip.y_pt))
    )
    return _Sheet((figure,), (stood.letter,))


def _tile_pages(pattern: TemplatePattern, tiling: Tiling, geometry: PageGeometry) -> list[_Sheet]:
    room, strip = geometry.room, geometry.strip
    return [
        _Sheet(tile_marks(pattern, tiling, number, room, strip), (f"{pattern.letter}{TILE}{number + 1}",))
        for number in range(len(tiling.tiles))
    ]


def _document(facts: BlockFacts, geometry: PageGeometry, pages: Sequence[_Sheet]) -> Document:
    check = square_and_bar(geometry.box.x_pt, geometry.check_y_pt, words_of(facts))
    paper = geometry.paper
    finished = tuple(
        Page(paper.width_pt, paper.height_pt, (*page.marks, *check, *footer(facts, geometry.box, number, len(pages))))
        for number, page in enumerate(pages, 1)
    )
    words = words_of(facts)
    title, subject = words("templates-title", block=facts.name), words("templates-document")
    return Document(title, finished, facts.language, facts.maker.name, subject, rights=facts.maker.rights)
