"""The ways in which each unit can be made, beside each other; printed when the block says `compare methods`."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.alternatives import Alternative
from blockdsl.facts.blockfacts import BlockFacts, UnitFacts
from blockdsl.geometry import to_float
from blockdsl.marks.prose import Style, line
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, INK, LEAD_PT, STEP_PT, span_pt
from blockdsl.page.flow import Slice
from blockdsl.page.headings import continued, heading
from blockdsl.page.table import Column, grouped, table_head, table_row, words_cell
from blockdsl.pictures.lengths import show_extent, show_measure
from blockdsl.pictures.words import many, say_method

TITLE: Final = "Methods compared"
_WASTE_PT: Final = 110.0
_SEAMS_PT: Final = 44.0
_PIECES: Final = {"template": "piece"}
_BODY: Final = Style(BODY_PT, "regular", INK)
_BOLD: Final = Style(BODY_PT, "bold", INK)
_NAME: Final = Style(LEAD_PT, "bold", INK)


def method_list(facts: BlockFacts) -> list[Slice]:
    """A group for each unit with a row for each way; nothing unless the block asks for it."""
    if not facts.compares_methods:
        return []
    pairs = [(unit, ways) for unit, ways in zip(facts.units, facts.alternatives, strict=True) if len(ways) > 1]
    if not pairs:
        return []
    columns = (
        Column("Method", span_pt(3)),
        Column("Cut", CONTENT_WIDTH_PT - span_pt(3) - _WASTE_PT - _SEAMS_PT),
        Column(f"Fabric lost to seams and trimming, sq {facts.unit}", _WASTE_PT, "right"),
        Column("Seams", _SEAMS_PT, "right", 0.0),
    )
    head = table_head(columns)
    slices = [heading(TITLE, aside="bold: the method used here"), head]
    for unit, ways in pairs:
        rows = [_row(facts, columns, way, ruled=place > 0) for place, way in enumerate(ways)]
        slices += grouped(head, _group(unit), rows, continued(TITLE))
    return slices


def _group(unit: UnitFacts) -> Slice:
    words = f"{unit.title[:1].upper()}{unit.title[1:]}, make {unit.count}"
    return Slice(_NAME.line_pt + STEP_PT, line(words, 0.0, STEP_PT + _NAME.baseline_pt, _NAME), before_pt=2 * STEP_PT)


def _row(facts: BlockFacts, columns: tuple[Column, ...], way: Alternative, *, ruled: bool) -> Slice:
    style = _BOLD if way.chosen else _BODY
    spare = f" ({way.spare} spare)" if way.spare else ""
    texts = (f"{say_method(way.method)}{spare}", say_way(way, facts), f"{to_float(way.waste):.0f}", str(way.seams))
    cells = [words_cell(text, column, style) for text, column in zip(texts, columns, strict=True)]
    return table_row(columns, cells, ruled=ruled)


def say_way(way: Alternative, facts: BlockFacts) -> str:
    """What is cut for one way, in words."""
    labels = {fabric.name: fabric.label for fabric in facts.fabrics}
    told = []
    for cut in way.cuts:
        square = cut.piece == "square"
        size = show_measure(cut.cut[0], facts.unit) if square else show_extent(cut.cut, facts.unit)
        once = "" if cut.subcut == "none" else f", cut {cut.subcut}"
        told.append(f"{many(cut.count, f'{labels[cut.fabric]} {_PIECES.get(cut.piece, cut.piece)}')} {size}{once}")
    return "; ".join(told)
