"""The head of the first page of templates: whose they are, how to use them, and the long bars of the scale check."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec import Struct

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.marks.display_list import Element, Mark, Path, TextMark, tagged, unread
from blockdsl.marks.theme import (
    BODY_PT,
    GUTTER_PT,
    HAIRLINE_PT,
    HEADING_PT,
    LEAD_PT,
    QUIET,
    RULE,
    SMALL_PT,
    Box,
)
from blockdsl.marks.typeset import ellipsis, measure, wrap
from blockdsl.page.maker_row import maker_row
from blockdsl.page.scale_check import LONG_BARS_HEIGHT_PT, long_bars
from blockdsl.wording.lengths import show_extent, show_measure
from blockdsl.wording.messages import Messages, words_of

_TITLE_PT: Final = 20.0
_LEADING: Final = 1.32
TILE: Final = "/"
"""Parts a template's letter from the number of one of its tiles."""


class Guide(Struct, frozen=True):
    """What the head says in its two columns: how to use what is printed, step by step, and the cautions."""

    title: str
    use: tuple[str, ...]
    care: tuple[str, ...]


def head(facts: BlockFacts, box: Box) -> tuple[tuple[Mark, ...], float]:
    """The marks of the head at the top of the box, and the y of the rule that ends it."""
    marks, y = headed(facts.name, _subtitle(facts), _guide(facts), box, words_of(facts))
    if facts.templates:
        return marks, y
    none = TextMark(box.x_pt, y + 24.0, words_of(facts)("templates-none"), BODY_PT)
    return (*marks, none), y


def headed(name: str, subtitle: str, guide: Guide, box: Box, words: Messages) -> tuple[tuple[Mark, ...], float]:
    """A head at the top of the box with the long bars of the scale check, and the y of the rule that ends it."""
    marks: list[Mark] = []
    whole = Element("H1")
    y = box.y_pt + 15.0
    for row in wrap(name, _TITLE_PT, "bold", box.width_pt)[:3]:
        said = ellipsis(row, _TITLE_PT, "bold", box.width_pt)
        marks += tagged((TextMark(box.x_pt, y, said, _TITLE_PT, "bold"),), whole)
        y += _TITLE_PT * 1.15
    y -= 5.0
    marks.append(TextMark(box.x_pt, y, subtitle, LEAD_PT, colour=QUIET))
    y += 12.0
    marks.append(Path((((box.x_pt, y), (box.right_pt, y)),), closed=False, stroke=RULE, stroke_width_pt=HAIRLINE_PT))
    y += 19.0
    y = _columns(marks, guide, box, y, words)
    y += 6.0
    marks += long_bars(box.x_pt, y, words)
    y += LONG_BARS_HEIGHT_PT - 6.0
    marks.append(Path((((box.x_pt, y), (box.right_pt, y)),), closed=False, stroke=RULE, stroke_width_pt=HAIRLINE_PT))
    return tuple(marks), y


def _subtitle(facts: BlockFacts) -> str:
    words = words_of(facts)
    return words("templates-subtitle", size=show_extent(facts.finished, facts.unit, words))


def _guide(facts: BlockFacts) -> Guide:
    """How to use templates; what the short marks of curved edges are for, and where appliqué is folded."""
    words = words_of(facts)
    lay = [words("templates-use-lay")]
    if any(template.curved is not None for template in facts.templates):
        lay.append(words("templates-use-curved"))
    if any(piece.turn_under for piece in facts.appliques):
        lay.append(words("templates-use-applique"))
    seam = show_measure(facts.seam, facts.unit, words)
    use = (words("templates-use-measure"), words("templates-use-cut", seam=seam), " ".join(lay))
    care = tuple(words(f"templates-care-{what}") for what in ("cutter", "scissors", "blades"))
    return Guide(words("templates-guide"), use, care)


def _columns(marks: list[Mark], guide: Guide, box: Box, top: float, words: Messages) -> float:
    """How to use what is printed, and the cautions, side by side; the y below the longer of the two."""
    left = box.width_pt * 0.62 - GUTTER_PT
    start = box.x_pt + left + 2 * GUTTER_PT
    first = _list(marks, guide.title, guide.use, Box(box.x_pt, top, left, 0.0), numbered=True)
    last = _list(marks, words("templates-care"), guide.care, Box(start, top, box.right_pt - start, 0.0), numbered=False)
    return max(first, last)


def _list(marks: list[Mark], title: str, entries: tuple[str, ...], box: Box, *, numbered: bool) -> float:
    marks += tagged((TextMark(box.x_pt, box.y_pt, title, HEADING_PT - 2.0, "bold"),), Element("H2"))
    whole = Element("L", numbering="Decimal" if numbered else "")
    y = box.y_pt + 16.0
    indent = 12.0 if numbered else 0.0
    size = BODY_PT - 0.5
    for number, entry in enumerate(entries, 1):
        item, body = Element("LI"), Element("LBody")
        if numbered:
            marks += tagged((TextMark(box.x_pt, y, str(number), size, "bold"),), whole, item, Element("Lbl"))
        for row in wrap(entry, size, "regular", box.width_pt - indent):
            marks += tagged((TextMark(box.x_pt + indent, y, row, size),), whole, item, body)
            y += size * _LEADING
        y += 3.0
    return y


def contents(letters: Sequence[Sequence[str]], box: Box, words: Messages) -> tuple[Mark, ...]:
    """Which template is on which page, in the box on the first page; left out when it needs more lines than fit.

    A single page has no need of it.
    """
    if len(letters) == 1 or not any(letters):
        return ()
    tiles: dict[str, list[int]] = {}
    parts = []
    for page, names in enumerate(letters, 1):
        whole = [name for name in names if TILE not in name]
        if whole:
            parts.append(words("templates-find-page", page=page, letters=", ".join(whole)))
        for name in names:
            if name not in whole:
                tiles.setdefault(name.split(TILE)[0], []).append(page)
    parts += [
        words("templates-find-tiles", first=pages[0], last=pages[-1], letter=name, tiles=len(pages))
        for name, pages in tiles.items()
    ]
    rows = [row for part in parts for row in wrap(part, SMALL_PT, "regular", box.width_pt)]
    if len(rows) * 10.0 > box.height_pt - 14.0:
        rows = wrap(" · ".join(parts), SMALL_PT, "regular", box.width_pt)
    if len(rows) * 10.0 > box.height_pt - 14.0:
        return ()
    title = TextMark(box.x_pt, box.y_pt + 7.0, words("templates-find"), BODY_PT, "bold")
    lines = (TextMark(box.x_pt, box.y_pt + 22.0 + k * 10.0, row, SMALL_PT, colour=QUIET) for k, row in enumerate(rows))
    return (title, *lines)


def footer(facts: BlockFacts, box: Box, page: int, pages: int, what: str = "templates-what") -> tuple[Mark, ...]:
    """The last line of a page: block name, finished size, what it is (a message), page n of m; above it the maker's."""
    words = words_of(facts)
    count = words("page-of", page=page, pages=pages)
    right = box.right_pt - measure(count, SMALL_PT)
    size = show_extent(facts.finished, facts.unit, words)
    said = words("foot-finished", block=facts.name, size=size, what=words(what))
    fitted = ellipsis(said, SMALL_PT, "regular", right - box.x_pt - GUTTER_PT)
    return (
        *maker_row(facts.maker, box, box.bottom_pt - 2.0 - SMALL_PT * 1.15),
        *unread((TextMark(box.x_pt, box.bottom_pt - 2.0, fitted, SMALL_PT, colour=QUIET),)),
        *unread((TextMark(right, box.bottom_pt - 2.0, count, SMALL_PT, colour=QUIET),)),
    )
