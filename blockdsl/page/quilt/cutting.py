"""Cutting for a whole quilt, fabric by fabric: what is cut, then how the cloth is laid out for it, in order."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.cutting.cloth import ClothPlan
from blockdsl.document.materials import finishing_of
from blockdsl.document.quilt_cuts import CutLine, cut_lines, format_cloth, letters_of
from blockdsl.facts.blockfacts import FabricFacts, RulerUnit
from blockdsl.facts.finishingfacts import FabricClothFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, line, paragraph, width_of
from blockdsl.marks.theme import ACCENT, BODY_PT, CONTENT_WIDTH_PT, INK, QUIET, SMALL_PT, STEP_PT
from blockdsl.page.flow import Flowable, stacked
from blockdsl.page.headings import continued, heading
from blockdsl.page.sheet.cutting import fabric_group
from blockdsl.page.table import (
    TableColumn,
    grouped,
    lengths_axes,
    lengths_cell,
    table_head,
    table_row,
    tick_cell,
    words_cell,
)
from blockdsl.pictures.cloth import ClothRow, cloth_pictures
from blockdsl.wording.grammar import in_thousands
from blockdsl.wording.lengths import show_length
from blockdsl.wording.messages import Messages, words_of

_NUMBER: Final = TextStyle(BODY_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_LETTER: Final = TextStyle(BODY_PT, "bold", ACCENT)
_QUIET: Final = TextStyle(BODY_PT, "regular", QUIET)
_SMALL: Final = TextStyle(SMALL_PT, "regular", QUIET)
_GAP_PT: Final = 3 * STEP_PT
_PICTURE_PT: Final = 300.0
_CLOTH_NUMBER_PT: Final = 20.0


def quilt_cutting(facts: QuiltFacts) -> list[Flowable]:
    """The heading, then each fabric: its table, and its cloth as it is cut."""
    told = finishing_of(facts)
    if told is None:
        return []
    fabrics = {fabric.name: fabric for fabric in facts.fabrics_used}
    words = words_of(facts)
    flowables = [heading(words("cutting"), aside=words("quilt-cutting-aside"))]
    for place, cloth in enumerate(told.fabrics):
        section = _fabric(facts, cloth, fabrics[cloth.fabric])
        flowables += [replace(section[0], before_pt=4 * STEP_PT if place else 0.0), *section[1:]]
    return flowables


def _fabric(facts: QuiltFacts, cloth: FabricClothFacts, fabric: FabricFacts) -> list[Flowable]:
    lines = cut_lines(facts, cloth)
    words = words_of(facts)
    columns, axes = _layout(lines, facts.unit, words)
    head = table_head(columns)
    height, again = stacked([continued(words("cutting"), words), head])
    rows = [_row(line, columns, axes, facts, ruled=place > 0) for place, line in enumerate(lines)]
    group = fabric_group(fabric, sum(line.count for line in lines), words)
    table = grouped(Flowable(height, again, keep_with_next=True), group, rows, fabric_group(fabric, None, words))
    flowables = [head, *table]
    flowables += [_said(text) for text in format_cloth(facts, cloth)]
    if cloth.plan is not None:
        title = words("quilt-cutting-fabric", fabric=fabric.label or fabric.name)
        named = (continued(title, words),)
        flowables += [replace(row, head=named) for row in cloth_rows(facts, cloth, cloth.plan, fabric)]
    return flowables


def cloth_rows(facts: QuiltFacts, cloth: FabricClothFacts, plan: ClothPlan, fabric: FabricFacts) -> list[Flowable]:
    """The cloth strip by strip, each piece with its letter."""
    letters = letters_of(cloth)
    return [cloth_row(row) for row in cloth_pictures(plan, facts, fabric.colour, lambda key: letters.get(key, ""))]


def cloth_row(row: ClothRow) -> Flowable:
    """Number, picture, words."""
    words_x = _CLOTH_NUMBER_PT + _PICTURE_PT + 4 * STEP_PT
    width = CONTENT_WIDTH_PT - words_x
    height, heading = paragraph(fraction_text(row.said), width, _NUMBER)
    texts: list[Mark] = [*moved(heading, words_x, 0.0)]
    for told in row.told:
        more, body = paragraph(fraction_text(told), width, _BODY)
        texts += moved(body, words_x, height)
        height += more
    number = line(str(row.number), 0.0, _NUMBER.baseline_pt, _NUMBER)
    picture = moved([row.picture], _CLOTH_NUMBER_PT, 2.0)
    return Flowable(max(row.height_pt + 4.0, height), (*number, *picture, *texts), before_pt=2 * STEP_PT)


def _said(words: str) -> Flowable:
    height, marks = paragraph(fraction_text(words), CONTENT_WIDTH_PT, _QUIET)
    return Flowable(height, marks, before_pt=1.5 * STEP_PT, keep_with_next=True)


def _layout(
    lines: Sequence[CutLine], unit: RulerUnit, words: Messages
) -> tuple[list[TableColumn], list[tuple[float, float]]]:
    """Narrow columns take what their words need, what it is for the rest."""
    axes, size_pt = lengths_axes([[show_length(side, unit, words) for side in line.sides] for line in lines], _BODY)

    heads = {name: words(f"head-{name}") for name in ("cut", "piece", "size", "in-the-picture", "then", "for")}

    def need(texts: Sequence[str], head: str, style: TextStyle) -> float:
        return max((*(width_of(text, style) for text in texts), width_of(head, _SMALL))) + _GAP_PT

    then, counts = [line.then for line in lines], [in_thousands(line.count, words) for line in lines]
    columns = [
        TableColumn("", 4 * STEP_PT),
        TableColumn(heads["cut"], need(counts, heads["cut"], _NUMBER), "right", _GAP_PT - STEP_PT),
        TableColumn(heads["piece"], need([line.piece for line in lines], heads["piece"], _BODY), gap_pt=_GAP_PT),
        TableColumn(heads["size"], max(size_pt, width_of(heads["size"], _SMALL)) + _GAP_PT + STEP_PT, gap_pt=_GAP_PT),
        TableColumn(heads["in-the-picture"], need([], heads["in-the-picture"], _LETTER), gap_pt=_GAP_PT),
        TableColumn(
            heads["then"] if any(then) else "", need(then, heads["then"], _BODY) if any(then) else 0.0, gap_pt=_GAP_PT
        ),
    ]
    rest = CONTENT_WIDTH_PT - sum(column.width_pt for column in columns)
    return [*columns, TableColumn(heads["for"], rest, gap_pt=0.0)], axes


def _row(
    line: CutLine,
    columns: Sequence[TableColumn],
    axes: Sequence[tuple[float, float]],
    facts: QuiltFacts,
    *,
    ruled: bool,
) -> Flowable:
    words = words_of(facts)
    _, count, piece, _, letter, then, purpose = columns
    uses = ", ".join(f"{name} {number}" if len(line.uses) > 1 else name for name, number in line.uses)
    cells = (
        tick_cell(_BODY),
        words_cell(in_thousands(line.count, words), count, _NUMBER),
        words_cell(line.piece, piece, _BODY),
        lengths_cell([show_length(side, facts.unit, words) for side in line.sides], axes, _BODY),
        words_cell(line.letter, letter, _LETTER),
        words_cell(line.then, then, _BODY),
        words_cell(uses, purpose, _QUIET),
    )
    return table_row(columns, cells, ruled=ruled)
