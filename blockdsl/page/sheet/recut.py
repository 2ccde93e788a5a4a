"""What is cut from other fabrics in each colourway, in short: only the fabrics that change."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Final

from msgspec import structs
from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts, ColourwayFacts, CutFacts, FabricFacts
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.prose import TextStyle
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, INK, QUIET, STEP_PT, Box, span_pt
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import heading
from blockdsl.page.table import TableCell, TableColumn, table_head, table_row, words_cell
from blockdsl.pictures.block import swatch
from blockdsl.wording.grammar import in_clauses, listed, many
from blockdsl.wording.lengths import show_length
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import format_piece, format_subcut

_BOLD: Final = TextStyle(BODY_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_QUIET: Final = TextStyle(BODY_PT, "regular", QUIET)
_SWATCH: Final = Box(0.0, 1.0, 24.0, 11.0)


def recut_tables(facts: BlockFacts) -> list[Flowable]:
    """A heading and a short table for each colourway that has a cutting table of its own."""
    words = words_of(facts)
    columns = (
        TableColumn("", 34.0),
        TableColumn(words("head-fabric"), span_pt(3)),
        TableColumn(words("head-in-place-of"), span_pt(3)),
        TableColumn(words("head-cut"), CONTENT_WIDTH_PT - 34.0 - 2 * span_pt(3), gap_pt=0.0),
    )
    flowables: list[Flowable] = []
    for plan in facts.colourways:
        rows = list(_rows(facts, plan, columns))
        if not rows:
            continue
        aside = words("recut-aside") if len(rows) < len(plan.fabrics) else ""
        table = [table_row(columns, row, ruled=place > 0) for place, row in enumerate(rows)]
        # A short table: all of it stays on one page.
        title = words("sheet-in-colorway", name=plan.name)
        bound = [heading(title, aside=aside), table_head(columns), *table]
        flowables += [*(replace(piece, keep_with_next=True) for piece in bound[:-1]), bound[-1]]
    return flowables


def _rows(facts: BlockFacts, plan: ColourwayFacts, columns: tuple[TableColumn, ...]) -> Iterator[tuple[TableCell, ...]]:
    """A row for each fabric that takes another's place."""
    labels = {fabric.name: fabric.label or fabric.name for fabric in facts.fabrics}
    for fabric in plan.fabrics:
        places = [old for old, new in plan.replaces.items() if new == fabric.name]
        cuts = [cut for cut in plan.cutting if cut.fabric == fabric.name]
        if places == [fabric.name] or not cuts:
            continue
        before = [structs.replace(cut, fabric=fabric.name) for cut in facts.cutting if cut.fabric in places]
        instead = listed([labels[old] for old in places], words_of(facts))
        yield _row(fabric, instead, _what(facts, cuts, before, len(places)), columns)


def _what(facts: BlockFacts, cuts: Sequence[CutFacts], before: Sequence[CutFacts], places: int) -> str:
    """That it is the same as in the table above, or all of it where pieces of several fabrics come together."""
    words = words_of(facts)
    pieces = many(sum(cut.count for cut in cuts), "pieces", words)
    if places == 1 and _told(cuts) == _told(before):
        return words("recut-same", pieces=pieces)
    return words("recut-all", pieces=pieces, cuts=in_clauses((_say(cut, facts) for cut in cuts), words))


def _told(cuts: Iterable[CutFacts]) -> list[CutFacts]:
    """Lines to be compared, whatever they are listed after."""
    return sorted((structs.replace(cut, shares=(), cutters=()) for cut in cuts), key=repr)


def _say(cut: CutFacts, facts: BlockFacts) -> str:
    words = words_of(facts)
    then = format_subcut(cut, facts.unit, words)
    size = " × ".join(show_length(side, facts.unit, words) for side in cut.sides)
    key = f"recut-{'template' if cut.piece == 'template' else 'line'}{'-then' if then else ''}"
    piece = format_piece(cut, words)
    return fraction_text(words(key, count=cut.count, piece=piece, size=size, letter=cut.label, then=then))


def _row(fabric: FabricFacts, instead: str, what: str, columns: tuple[TableColumn, ...]) -> tuple[TableCell, ...]:
    height = _BODY.line_pt + STEP_PT / 2
    _, name, before, cut = columns
    return (
        TableCell(height, swatch(fabric, _SWATCH)),
        words_cell(fabric.label or fabric.name, name, _BOLD),
        words_cell(instead, before, _QUIET),
        words_cell(what, cut, _BODY),
    )
