"""The ways in which each unit can be made, beside each other; printed when the block says `compare methods`."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.blockfacts import BlockFacts, UnitFacts
from blockdsl.facts.blockrecord import Alternative
from blockdsl.geometry import to_float
from blockdsl.marks.prose import TextStyle, line
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, INK, LEAD_PT, STEP_PT, span_pt
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import continued, heading
from blockdsl.page.table import TableColumn, grouped, table_head, table_row, words_cell
from blockdsl.wording.grammar import capital, in_clauses, name_of
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import format_method, format_sides, unit_title

_WASTE_PT: Final = 110.0
_SEAMS_PT: Final = 44.0
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_BOLD: Final = TextStyle(BODY_PT, "bold", INK)
_NAME: Final = TextStyle(LEAD_PT, "bold", INK)


def method_list(facts: BlockFacts) -> list[Flowable]:
    """A group for each unit with a row for each way; nothing unless the block asks for it."""
    if not facts.compares_methods:
        return []
    pairs = [(unit, ways) for unit, ways in zip(facts.units, facts.alternatives, strict=True) if len(ways) > 1]
    if not pairs:
        return []
    words = words_of(facts)
    columns = (
        TableColumn(words("methods-head-method"), span_pt(3)),
        TableColumn(words("methods-head-cut"), CONTENT_WIDTH_PT - span_pt(3) - _WASTE_PT - _SEAMS_PT),
        TableColumn(words("methods-head-waste", unit=facts.unit), _WASTE_PT, "right"),
        TableColumn(words("methods-head-seams"), _SEAMS_PT, "right", 0.0),
    )
    head = table_head(columns)
    flowables = [heading(words("methods-title"), aside=words("methods-aside")), head]
    for unit, ways in pairs:
        rows = [_row(facts, columns, way, ruled=place > 0) for place, way in enumerate(ways)]
        flowables += grouped(head, _group(unit, words), rows, continued(words("methods-title"), words))
    return flowables


def _group(unit: UnitFacts, words: Messages) -> Flowable:
    text = words("methods-unit", unit=capital(unit_title(unit, words)), count=unit.count)
    return Flowable(_NAME.line_pt + STEP_PT, line(text, 0.0, STEP_PT + _NAME.baseline_pt, _NAME), before_pt=2 * STEP_PT)


def _row(facts: BlockFacts, columns: tuple[TableColumn, ...], way: Alternative, *, ruled: bool) -> Flowable:
    style = _BOLD if way.chosen else _BODY
    words = words_of(facts)
    method = format_method(way.method, words)
    method = words("methods-spare", method=method, count=way.spare) if way.spare else method
    texts = (method, format_way(way, facts), f"{to_float(way.waste):.0f}", str(way.seams))
    cells = [words_cell(text, column, style) for text, column in zip(texts, columns, strict=True)]
    return table_row(columns, cells, ruled=ruled)


def format_way(way: Alternative, facts: BlockFacts) -> str:
    """What is cut for one way, in words."""
    words = words_of(facts)
    labels = {fabric.name: fabric.label for fabric in facts.fabrics}
    told = []
    for cut in way.cuts:
        square = cut.piece == "square"
        size = format_sides(cut.cut, facts.unit, words, square=square)
        key = "methods-cut" if cut.subcut == "none" else f"methods-cut-{cut.subcut}"
        piece = name_of(f"piece-{cut.piece}", words, count=cut.count)
        told.append(words(key, count=cut.count, fabric=labels[cut.fabric], piece=piece, size=size))
    return in_clauses(told, words)
