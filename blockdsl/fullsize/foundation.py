"""Foundation papers at full size: every unit that is sewn to papers, mirrored, as often as the block needs it.

They are laid out as templates are: small papers many to a page, large ones over tiles, the means to check the scale
on every page.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.fullsize.foundation_head import foundation_footer, foundation_head
from blockdsl.fullsize.foundation_marks import allowance_marks
from blockdsl.fullsize.foundation_paper import PaperDrawings, beside_words, inner_marks, patch_words, seam_lines
from blockdsl.fullsize.foundation_pattern import PaperPattern, paper_patterns, turned
from blockdsl.fullsize.foundation_table import table_pages
from blockdsl.fullsize.layout import PageGeometry, PageLayout, lay_out
from blockdsl.fullsize.packing import PackedItem, page_count
from blockdsl.fullsize.pattern import POINTS_PER_UNIT
from blockdsl.fullsize.tiles import tile_marks
from blockdsl.fullsize.tiling import Tile, Tiling
from blockdsl.geometry import to_float
from blockdsl.geometry.polygon import bounding_box
from blockdsl.marks.clip import area, clip_line, clip_ring
from blockdsl.marks.display_list import Contour, Document, Figure, Mark, Page, Path, TextMark, moved
from blockdsl.marks.theme import CONTENT_WIDTH_PT, LONGEST_PAGE_PT, MARGIN_PT, Box, paper_named
from blockdsl.page.scale_check import square_and_bar
from blockdsl.wording.grammar import in_clauses
from blockdsl.wording.messages import words_of

MOST_COPIES: Final = 48
"""Papers of a block that are printed as often as they are needed; of more than that each is printed once."""

_INSIDE_TILE_PT: Final = 6.0
_ASIDE: Final = 0.41
"""Where words stand along the sides of a paper in tiles: clear of where two or three of them meet."""


def foundation_pages(facts: BlockFacts, *, paper: str, margin_pt: float = MARGIN_PT) -> Document:
    """The papers of all units of a block that are sewn to foundations, at full size.

    Units:  points on the page; pages as for templates (see `template_pages`).
    Errors: ValueError for a block without foundations, an unknown paper, a margin too wide for it, or a paper longer
            than 14,400 pt (`foundations_too_large` names those; ask it first).
    """
    if not facts.foundations:
        raise ValueError("no unit of the block is made as foundation")
    if foundations_too_large(facts):
        raise ValueError(f"too large to print: {', '.join(foundations_too_large(facts))}")
    needed = sum(each.count * len(each.papers) for each in facts.foundations)
    papers = tuple(
        pattern
        for each in facts.foundations
        for pattern in paper_patterns(each, facts, each.count if needed <= MOST_COPIES else 1)
    )
    drawings = PaperDrawings(papers)
    _, head_pt = foundation_head(facts, Box(0.0, 0.0, CONTENT_WIDTH_PT, 0.0))
    layout = lay_out([each.pattern for each in papers], drawings, paper_named(paper), margin_pt, head_pt)
    geometry = layout.geometry
    top, below = foundation_head(facts, Box(geometry.box.x_pt, geometry.box.y_pt, CONTENT_WIDTH_PT, 0.0))
    pages = _shared_pages(layout, drawings)
    pages += [_own_page(drawings.paper(number, turns), geometry) for number, turns in layout.alone]
    tiled = [_as_tiled(papers, pattern) for pattern, _ in layout.tiles]
    for paper_in_tiles, (_, tiling) in zip(tiled, layout.tiles, strict=True):
        pages += _tile_pages(paper_in_tiles, tiling, geometry)
    large = [each for each in (*(drawings.paper(number, 0) for number, _ in layout.alone), *tiled) if each.listed]
    first, tables = table_pages(large, geometry.room, None if pages[0] else below)
    pages[0] = (*top, *pages[0], *first)
    pages[1:1] = tables
    return _document(facts, geometry, pages)


def foundations_too_large(facts: BlockFacts) -> tuple[str, ...]:
    """The units with a paper that is longer or wider than 14,400 pt (200 in), and cannot be printed."""
    scale = POINTS_PER_UNIT[facts.unit]
    found = []
    for foundation in facts.foundations:
        for paper in foundation.papers:
            left, top, right, bottom = bounding_box(paper.cutting)
            if max(to_float(right - left), to_float(bottom - top)) * scale > LONGEST_PAGE_PT:
                found.append(foundation.name)
                break
    return tuple(found)


def _shared_pages(layout: PageLayout, drawings: PaperDrawings) -> list[tuple[Mark, ...]]:
    """The pages of those papers that share one; at least one page."""
    pages: list[list[Mark]] = [[] for _ in range(max(1, page_count(layout.shared)))]
    for place in _copies_in_order(layout.shared, drawings):
        marks = moved(drawings.drawn(place.item, place.turns).marks, place.x_pt, place.y_pt)
        pages[place.page].append(Figure(_alternative(drawings.paper(place.item, 0)), marks))
    return [tuple(page) for page in pages]


def _copies_in_order(places: Sequence[PackedItem], drawings: PaperDrawings) -> list[PackedItem]:
    """The same places, the copies of one paper counted from page to page, down each and across."""
    alike: dict[object, list[PackedItem]] = {}
    for place in places:
        paper = drawings.paper(place.item, 0)
        words = paper.pattern.words
        alike.setdefault((words.letter, words.title, paper.listed, paper.pattern.cutting), []).append(place)
    ordered = []
    for group in alike.values():
        items = sorted(place.item for place in group)
        across = sorted(group, key=lambda place: (place.page, place.y_pt, place.x_pt))
        ordered += [replace(place, item=item) for item, place in zip(items, across, strict=True)]
    return sorted(ordered, key=lambda place: (place.page, place.y_pt, place.x_pt))


def _alternative(paper: PaperPattern) -> str:
    words = paper.pattern.words
    said = ". ".join((words.title, *words.lines))
    spoken = paper.pattern.messages
    patches = in_clauses((f"{line.number} {line.fabric}, {line.cut}" for line in paper.table), spoken)
    return spoken("foundation-alternative", letter=words.letter, lines=said, order=patches)


def _own_page(paper: PaperPattern, geometry: PageGeometry) -> tuple[Mark, ...]:
    room, strip = geometry.room, geometry.strip
    words, _, _ = beside_words(replace(paper, listed=False), strip.width_pt - 30.0)
    marks = (*moved(inner_marks(paper), room.x_pt, room.y_pt), *moved(words, strip.x_pt, strip.y_pt))
    return (Figure(_alternative(paper), marks),)


def _as_tiled(papers: tuple[PaperPattern, ...], pattern: object) -> PaperPattern:
    """The paper that a tiled pattern belongs to, turned as the pattern was turned."""
    for paper in papers:
        if paper.pattern is pattern:
            return paper
    return next(turned(paper) for paper in papers if turned(paper).pattern == pattern)


def _tile_pages(paper: PaperPattern, tiling: Tiling, geometry: PageGeometry) -> list[tuple[Mark, ...]]:
    def inside(own: Tile, taken: list[Contour]) -> tuple[Mark, ...]:
        core = own.core
        inset = _INSIDE_TILE_PT
        clear = Box(core.x_pt + inset, core.y_pt + inset, core.width_pt - 2 * inset, core.height_pt - 2 * inset)
        beyond = [mark for mark in allowance_marks(paper, _ASIDE) if _is_within(mark, own.core)]
        lines = [line for seam in paper.seams if (line := clip_line(seam, own.window)) and line[0] != line[1]]
        words: list[Mark] = []
        for patch in paper.patches:
            share = clip_ring(patch.sewing, clear)
            if len(share) > 2 and abs(area(share)) > 200.0:
                words += patch_words(patch, share, taken)
        return (*seam_lines(lines), *words, *beyond)

    return [
        tile_marks(paper.pattern, tiling, number, geometry.room, geometry.strip, inside)
        for number in range(len(tiling.tiles))
    ]


def _is_within(mark: Mark, box: Box) -> bool:
    """Whether a mark of the allowance begins in a tile's own part."""
    if isinstance(mark, TextMark):
        x, y = mark.x_pt, mark.y_pt
    elif isinstance(mark, Path):
        x, y = mark.rings[0][0]
    else:
        return False
    return box.x_pt <= x <= box.right_pt and box.y_pt <= y <= box.bottom_pt


def _document(facts: BlockFacts, geometry: PageGeometry, pages: list[tuple[Mark, ...]]) -> Document:
    check = square_and_bar(geometry.box.x_pt, geometry.check_y_pt, words_of(facts))
    finished = tuple(
        Page(
            geometry.paper.width_pt,
            geometry.paper.height_pt,
            (*page, *check, *foundation_footer(facts, geometry.box, number, len(pages))),
        )
        for number, page in enumerate(pages, 1)
    )
    words = words_of(facts)
    title, subject = words("foundation-title", block=facts.name), words("foundation-document")
    return Document(title, finished, facts.language, facts.maker.name, subject, rights=facts.maker.rights)
