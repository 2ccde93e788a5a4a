"""Papers to fold cloth round, at exactly the finished size: every patch that is made over papers, as often as needed.

A paper has no allowance. It is printed as the mirror image of its patch, for it lies on the wrong side of the cloth
with its letter upward. Papers lie close in rows, those that no page holds run over tiles, and every page has the means
to check its scale.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.papers import PaperOfPatch
from blockdsl.fullsize.head import Guide, footer, headed
from blockdsl.fullsize.layout import PageGeometry
from blockdsl.fullsize.packing import PackedItem, Room, page_count
from blockdsl.fullsize.packing_rows import RepeatedShape, pack_rows
from blockdsl.fullsize.pattern import POINTS_PER_UNIT, TemplatePattern, TemplateWords, quarter_turn
from blockdsl.fullsize.room import centroid
from blockdsl.fullsize.template_marks import centred, cutting_lines
from blockdsl.fullsize.tiles import tile_marks, tiled
from blockdsl.fullsize.tiling import Tiling
from blockdsl.fullsize.words_inside import letter_inside
from blockdsl.geometry import to_float
from blockdsl.geometry.polygon import bounding_box
from blockdsl.marks.clip import bounds
from blockdsl.marks.display_list import Contour, Document, Figure, Mark, Page, TextMark, moved
from blockdsl.marks.theme import (
    BODY_PT,
    CONTENT_WIDTH_PT,
    LEADING,
    LONGEST_PAGE_PT,
    MARGIN_PT,
    SMALL_PT,
    Box,
    PaperSize,
    paper_named,
)
from blockdsl.marks.typeset import wrap
from blockdsl.page.scale_check import square_and_bar
from blockdsl.wording.lengths import show_extent, show_measure
from blockdsl.wording.messages import words_of

MOST_PAPERS: Final = 1000
"""Papers of a block that are printed as often as they are needed; of more than that each is printed once."""

_GAP_PT: Final = 4.0
_BELOW_HEAD_PT: Final = 8.0
_LEAST_LETTER_PT: Final = 4.5


def paper_pages(facts: BlockFacts, *, paper: str, margin_pt: float = MARGIN_PT) -> Document:
    """The papers of all patches of a block that are made over papers.

    Units:  points on the page; pages as for templates (see `template_pages`), always upright.
    Errors: ValueError for a block without such papers, an unknown kind of page, a margin too wide for it, or a paper
            longer than 14,400 pt (`papers_too_large` names those; ask it first).
    """
    if not facts.papers:
        raise ValueError("no unit of the block is made over papers")
    if papers_too_large(facts):
        raise ValueError(f"too large to print: {', '.join(papers_too_large(facts))}")
    page = paper_named(paper)
    if page.roll:
        page = page.cut_at(LONGEST_PAGE_PT)
    geometry = PageGeometry(page, page.printable(margin_pt))
    turned = [_turns(_pattern(each, facts)) for each in facts.papers]
    whole = [number for number, each in enumerate(turned) if _ways(each, geometry.room)]
    counts = _printed(facts)
    _, head_pt = _head(facts, Box(0.0, 0.0, CONTENT_WIDTH_PT, 0.0))
    room = Room(
        geometry.room, Box(geometry.room.x_pt, geometry.room.y_pt, geometry.room.width_pt, head_pt + _BELOW_HEAD_PT)
    )
    places = _closest(whole, turned, counts, room)
    large = [
        tiled(turned[number][0], geometry.room.width_pt, geometry.room.height_pt)
        for number in range(len(turned))
        if number not in whole
    ]
    if page.roll:
        geometry = _cut_roll(geometry, places, turned, large, geometry.room.y_pt + head_pt)
    pages = _shared_pages(places, turned)
    for pattern, tiling in large:
        pages += [
            tile_marks(pattern, tiling, number, geometry.room, geometry.strip) for number in range(len(tiling.tiles))
        ]
    top, _ = _head(facts, Box(geometry.box.x_pt, geometry.box.y_pt, CONTENT_WIDTH_PT, 0.0))
    return _document(facts, geometry, [(*top, *pages[0]), *pages[1:]])


def papers_too_large(facts: BlockFacts) -> tuple[str, ...]:
    """The letters of the papers that are longer or wider than 14,400 pt (200 in), and cannot be printed."""
    scale = POINTS_PER_UNIT[facts.unit]
    found = []
    for paper in facts.papers:
        left, top, right, bottom = bounding_box(paper.outline)
        if max(to_float(right - left), to_float(bottom - top)) * scale > LONGEST_PAGE_PT:
            found.append(paper.label)
    return tuple(found)


# --- papers ----------------------------------------------------------------------------------------


def _pattern(paper: PaperOfPatch, facts: BlockFacts) -> TemplatePattern:
    """The paper in points, as seen from the back; here the exact numbers become floats, once."""
    scale = POINTS_PER_UNIT[facts.unit]
    _, _, right, _ = bounding_box(paper.outline)
    ring = tuple((to_float(right - corner.x) * scale, to_float(corner.y) * scale) for corner in reversed(paper.outline))
    words = words_of(facts)
    size = words("templates-finished", size=show_extent(paper.finished, facts.unit, words))
    said = TemplateWords(
        paper.label, words("over-papers-paper"), (size, words("over-papers-needed", count=paper.count))
    )
    grain = (-to_float(paper.grain[0]), to_float(paper.grain[1]))
    return TemplatePattern(said, ring, ring, grain, language=facts.language)


Turned = tuple[TemplatePattern, TemplatePattern, TemplatePattern, TemplatePattern]


def _turns(pattern: TemplatePattern) -> Turned:
    first = quarter_turn(pattern)
    second = quarter_turn(first)
    return pattern, first, second, quarter_turn(second)


def _ways(turned: Turned, box: Box, *, on_side: bool = False) -> tuple[int, ...]:
    """The two turns in which it fits the page, those wanted first; none when neither fits."""
    for turns in ((1, 3), (0, 2)) if on_side else ((0, 2), (1, 3)):
        pattern = turned[turns[0]]
        if pattern.width_pt <= box.width_pt and pattern.height_pt <= box.height_pt:
            return turns
    return ()


def _printed(facts: BlockFacts) -> tuple[int, ...]:
    """How many of each are printed."""
    counts = tuple(paper.count for paper in facts.papers)
    return counts if sum(counts) <= MOST_PAPERS else (1,) * len(counts)


def _closest(
    whole: Sequence[int], turned: Sequence[Turned], counts: Sequence[int], room: Room
) -> tuple[PackedItem, ...]:
    """The places of all copies, as drawn or all on their sides, whichever takes fewer pages, or less of the last."""
    found = []
    for side in (0, 1):
        order = [(number, _ways(turned[number], room.box, on_side=bool(side))) for number in whole]
        order.sort(key=lambda each: (-turned[each[0]][each[1][0]].height_pt, each[0]))
        kinds = [RepeatedShape(_rings(turned[number]), ways, counts[number]) for number, ways in order]
        for mixed in (False, True):
            packed = pack_rows(kinds, room, _GAP_PT, mixed=mixed)
            places = tuple(replace(place, item=order[place.item][0]) for place in packed)
            last = page_count(places) - 1
            low = max((_bottom(place, turned) for place in places if place.page == last), default=0.0)
            found.append((last, round(low, 3), side, mixed, places))
    return min(found)[-1]


def _rings(turned: Turned) -> tuple[Contour, Contour, Contour, Contour]:
    first, second, third, fourth = (each.cutting for each in turned)
    return first, second, third, fourth


def _bottom(place: PackedItem, turned: Sequence[Turned]) -> float:
    return place.y_pt + turned[place.item][place.turns].height_pt


# --- pages -----------------------------------------------------------------------------------------


def _shared_pages(places: Sequence[PackedItem], turned: Sequence[Turned]) -> list[tuple[Mark, ...]]:
    """The pages with whole papers; at least one, for the head."""
    pages: list[list[Mark]] = [[] for _ in range(max(1, page_count(places)))]
    drawn: dict[tuple[int, int], Figure] = {}
    for place in places:
        key = place.item, place.turns
        if key not in drawn:
            drawn[key] = _drawn(turned[place.item][place.turns])
        figure = drawn[key]
        pages[place.page].append(Figure(figure.alternative, moved(figure.marks, place.x_pt, place.y_pt)))
    return [tuple(page) for page in pages]


def _drawn(pattern: TemplatePattern) -> Figure:
    """The outline to be cut on, the letter and the grain; in a very small paper the letter alone."""
    inside = letter_inside(pattern, pattern.cutting) or ()
    if not any(isinstance(mark, TextMark) for mark in inside):
        left, top, right, bottom = bounds(pattern.cutting)
        size = max(_LEAST_LETTER_PT, min(SMALL_PT, (right - left) / 3, (bottom - top) / 3))
        inside = (centred(centroid(pattern.cutting), pattern.letter, size),)
    lines = ", ".join(pattern.words.lines)
    alternative = pattern.messages("over-papers-alternative", letter=pattern.letter, lines=lines)
    return Figure(alternative, (cutting_lines((pattern.cutting,), closed=True), *inside))


def _head(facts: BlockFacts, box: Box) -> tuple[tuple[Mark, ...], float]:
    """The marks of the head, with how many of each letter the block needs, and the y where it ends."""
    words = words_of(facts)
    title = words("over-papers-subtitle", size=show_extent(facts.finished, facts.unit, words))
    marks, y = headed(facts.name, title, _guide(facts), box, words)
    needed = " · ".join(f"{paper.count} {paper.label}" for paper in facts.papers)
    said = words("over-papers-for-one", papers=needed)
    if sum(paper.count for paper in facts.papers) > MOST_PAPERS:
        said = f"{said} {words('over-papers-copy')}"
    y += 16.0
    for row in wrap(said, BODY_PT, "bold", box.width_pt):
        marks = (*marks, TextMark(box.x_pt, y, row, BODY_PT, "bold"))
        y += BODY_PT * LEADING
    return marks, y - BODY_PT * LEADING + 4.0


def _guide(facts: BlockFacts) -> Guide:
    words = words_of(facts)
    seam = show_measure(facts.seam, facts.unit, words)
    use = tuple(words(f"over-papers-use-{what}", seam=seam) for what in ("print", "pin", "fold", "out"))
    care = tuple(words(f"over-papers-care-{what}") for what in ("scissors", "pins", "keep"))
    return Guide(words("over-papers-guide"), use, care)


def _cut_roll(
    geometry: PageGeometry,
    places: Sequence[PackedItem],
    turned: Sequence[Turned],
    large: Sequence[tuple[TemplatePattern, Tiling]],
    head_bottom_pt: float,
) -> PageGeometry:
    """The roll just long enough for the fullest page."""
    ends = [head_bottom_pt, *(_bottom(place, turned) for place in places)]
    ends += [geometry.room.y_pt + tile.window.height_pt for _, tiling in large for tile in tiling.tiles]
    return geometry.cut_at(min(max(ends), geometry.room.bottom_pt))


def _document(facts: BlockFacts, geometry: PageGeometry, pages: Sequence[tuple[Mark, ...]]) -> Document:
    check = square_and_bar(geometry.box.x_pt, geometry.check_y_pt, words_of(facts))
    paper: PaperSize = geometry.paper
    finished = tuple(
        Page(
            paper.width_pt,
            paper.height_pt,
            (*page, *check, *footer(facts, geometry.box, number, len(pages), what="over-papers-what")),
        )
        for number, page in enumerate(pages, 1)
    )
    words = words_of(facts)
    title, subject = words("over-papers-title", block=facts.name), words("over-papers-document")
    return Document(title, finished, facts.language, facts.maker.name, subject, rights=facts.maker.rights)
