"""What to buy for a quilt: each fabric with the length that is needed and what to ask for, then all the rest."""

from __future__ import annotations

from typing import Final

from msgspec.structs import replace

from blockdsl.document.materials import Material, material_lines, said_of_materials
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.prose import TextStyle, paragraph
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, INK, QUIET, STEP_PT, Box
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import continued, heading
from blockdsl.page.table import EMPTY, TableCell, TableColumn, table_head, table_row, words_cell
from blockdsl.pictures.block import swatch
from blockdsl.wording.messages import words_of

_BOLD: Final = TextStyle(BODY_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_QUIET: Final = TextStyle(BODY_PT, "regular", QUIET)
_SWATCH: Final = Box(0.0, 1.0, 24.0, 11.0)
_WIDTHS_PT: Final = (34.0, 136.0, 84.0, 54.0, 76.0, CONTENT_WIDTH_PT - 384.0)


def materials(facts: QuiltFacts) -> list[Flowable]:
    """The list of all that is bought, with what the lengths are based on below."""
    lines = material_lines(facts)
    if not lines:
        return []
    words, columns = words_of(facts), _columns(facts)
    flowables = [heading(words("buy-title")), table_head(columns)]
    again = (continued(words("buy-title"), words), table_head(columns))
    rows = (table_row(columns, _row(line, columns), ruled=place > 0) for place, line in enumerate(lines))
    flowables += [replace(row, head=again) for row in rows]
    flowables[-1] = replace(flowables[-1], keep_with_next=True)
    said = said_of_materials(facts)
    for place, text in enumerate(said, start=1):
        height, marks = paragraph(fraction_text(text), CONTENT_WIDTH_PT, _QUIET)
        flowables.append(Flowable(height, marks, before_pt=1.5 * STEP_PT, keep_with_next=place < len(said)))
    return flowables


def _columns(facts: QuiltFacts) -> tuple[TableColumn, ...]:
    words = words_of(facts)
    heads = ("head-fabric", "buy-head-buy", "buy-head-needed", "buy-head-allowed", "head-for")
    last = len(heads)
    named = (TableColumn(words(key), _WIDTHS_PT[place]) for place, key in enumerate(heads, start=1) if place < last)
    return (TableColumn("", _WIDTHS_PT[0]), *named, TableColumn(words(heads[-1]), _WIDTHS_PT[-1], gap_pt=0.0))


def _row(told: Material, columns: tuple[TableColumn, ...]) -> tuple[TableCell, ...]:
    picture = TableCell(_BODY.line_pt, swatch(told.fabric, _SWATCH)) if told.fabric is not None else EMPTY
    texts = (
        (told.name, _BOLD),
        (fraction_text(told.buy), _BOLD),
        (told.need, _BODY),
        (told.allowed, _QUIET),
        (told.uses, _QUIET),
    )
    cells = (words_cell(text, column, style) for (text, style), column in zip(texts, columns[1:], strict=True))
    return (picture, *cells)
