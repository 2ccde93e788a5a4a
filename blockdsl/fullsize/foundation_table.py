"""The table beside a foundation paper: number, fabric, letter of the diagram, what is cut."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.fullsize.foundation_pattern import PaperPattern, TableLine
from blockdsl.marks.display_list import Element, Mark, Path, TextMark, Weight, moved, tagged
from blockdsl.marks.theme import ACCENT, GUTTER_PT, HAIRLINE_PT, INK, QUIET, RULE, Box
from blockdsl.marks.typeset import ellipsis, measure, wrap
from blockdsl.wording.grammar import listed
from blockdsl.wording.messages import Messages

_SIZE_PT: Final = 8.5
_LEADING_PT: Final = 10.8
_GUTTER_PT: Final = 7.0
_LEAST_FABRIC_PT: Final = 44.0
_TITLE_PT: Final = 10.0
_COLUMNS: Final = 3
_MOST_LINES: Final = 16
"""Lines of a table in one column; the rest goes into the next."""
_HEADS: Final = ("area", "fabric", "letter", "size")


def paper_table(paper: PaperPattern, width_pt: float) -> tuple[float, float, tuple[Mark, ...]]:
    """Width, height and marks, from the table's top left corner; names of fabrics are broken to keep to a width."""
    words = paper.pattern.messages
    heads = [words(f"papers-sheet-{head}") for head in _HEADS]
    columns = list(zip(*map(_cells, paper.table), strict=True))
    pairs = zip(heads, columns, strict=True)
    wide = [max(measure(text, _SIZE_PT, "bold") for text in (head, *cells)) for head, cells in pairs]
    others = wide[0] + wide[2] + wide[3] + 3 * _GUTTER_PT
    wide[1] = min(wide[1], max(width_pt - others, _LEAST_FABRIC_PT))
    at = [sum(wide[:place]) + place * _GUTTER_PT for place in range(4)]
    total = at[3] + wide[3]
    marks: list[Mark] = []
    whole, row_of_heads = Element("Table"), Element("TR", columns=4)
    for place, head in enumerate(heads):
        read = Element("TH", scope="Column", column=place)
        marks += tagged((TextMark(at[place], _SIZE_PT, head, _SIZE_PT, "regular", QUIET),), whole, row_of_heads, read)
    y = _LEADING_PT + 1.5
    marks.append(Path((((0.0, y), (total, y)),), closed=False, stroke=RULE, stroke_width_pt=HAIRLINE_PT))
    y += _LEADING_PT - 1.0
    for line in paper.table:
        y = _row(marks, line, at, wide[1], y, whole)
    for note in _notes(paper.table, words):
        paragraph = Element("P")
        for row in wrap(note, _SIZE_PT, "regular", max(total, width_pt)):
            marks += tagged((TextMark(0.0, y + 1.0, row, _SIZE_PT, "regular", QUIET),), paragraph)
            y += _LEADING_PT
    return total, y - _LEADING_PT + 3.0, tuple(marks)


def table_pages(
    papers: Sequence[PaperPattern], box: Box, below_pt: float | None
) -> tuple[tuple[Mark, ...], list[tuple[Mark, ...]]]:
    """The tables of papers that have none beside them: what stands on the first page, and further pages.

    Shape:  three columns, a long table broken into several. `below_pt` is where the first page is free, None where it
            is taken.
    """
    width = (box.width_pt - (_COLUMNS - 1) * GUTTER_PT) / _COLUMNS
    waiting = [_titled(each, width) for paper in papers for each in _broken(paper)]
    first: tuple[Mark, ...] = ()
    pages: list[tuple[Mark, ...]] = []
    top = box.bottom_pt if below_pt is None else below_pt + GUTTER_PT
    for number in range(len(waiting) + 1):
        placed, waiting = _filled(waiting, Box(box.x_pt, top, box.width_pt, box.bottom_pt - top), width)
        if number:
            pages.append(placed)
        else:
            first = placed
        if not waiting:
            break
        top = box.y_pt
    return first, pages


def _broken(paper: PaperPattern) -> list[PaperPattern]:
    parts = -(-len(paper.table) // _MOST_LINES)
    each = -(-len(paper.table) // parts)
    return [replace(paper, table=paper.table[start : start + each]) for start in range(0, len(paper.table), each)]


def _titled(paper: PaperPattern, width: float) -> tuple[float, tuple[Mark, ...]]:
    """Height and marks of a table under the paper's letter and name."""
    words = paper.pattern.words
    title = ellipsis(f"{words.letter} · {words.title}", _TITLE_PT, "bold", width)
    _, height, table = paper_table(paper, width)
    return height + _TITLE_PT * 1.6, (
        *tagged((TextMark(0.0, _TITLE_PT, title, _TITLE_PT, "bold", INK),), Element("H2")),
        *moved(table, 0.0, _TITLE_PT * 1.6),
    )


def _filled(
    waiting: Sequence[tuple[float, tuple[Mark, ...]]], box: Box, width: float
) -> tuple[tuple[Mark, ...], list[tuple[float, tuple[Mark, ...]]]]:
    """As many of them as go into the columns of a box, and the rest."""
    marks: list[Mark] = []
    rest = list(waiting)
    for column in range(_COLUMNS):
        y = box.y_pt
        while rest and y + rest[0][0] <= box.bottom_pt:
            height, drawn = rest.pop(0)
            marks += moved(drawn, box.x_pt + column * (width + GUTTER_PT), y)
            y += height + GUTTER_PT
    return tuple(marks), rest


def _notes(table: Sequence[TableLine], words: Messages) -> list[str]:
    """How half squares are cut, and which pieces lie with a short edge along their line."""
    notes = [words("papers-sheet-halves")] if any(line.is_half for line in table) else []
    short = [line.number for line in table if line.on_short_edge]
    return [*notes, words("papers-sheet-short", areas=listed(short, words))] if short else notes


def _cells(line: TableLine) -> tuple[str, str, str, str]:
    return line.number, line.fabric, line.letter, line.cut


def _row(marks: list[Mark], line: TableLine, at: Sequence[float], fabric_pt: float, y: float, whole: Element) -> float:
    weights: tuple[Weight, ...] = ("bold", "regular", "regular", "regular")
    colours = (ACCENT, INK, INK, INK)
    first, *more = wrap(line.fabric, _SIZE_PT, "regular", fabric_pt) or [""]
    own = Element("TR", columns=4)
    cells = [Element("TH", scope="Row"), *(Element("TD", column=place) for place in (1, 2, 3))]
    for place, text in enumerate((line.number, first, line.letter, line.cut)):
        mark = TextMark(at[place], y, text, _SIZE_PT, weights[place], colours[place])
        marks += tagged((mark,), whole, own, cells[place])
        if place == 1:
            for row in more:
                y += _LEADING_PT
                below = TextMark(at[1], y, row, _SIZE_PT, "regular", INK)
                marks += tagged((below,), whole, own, cells[1])
            y -= _LEADING_PT * len(more)
    y += _LEADING_PT * len(more)
    return y + _LEADING_PT
