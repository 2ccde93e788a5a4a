"""What is cut from other fabrics in each colouring, in short: only the fabrics that change."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts, ColouringFacts, CutFacts, FabricFacts
from blockdsl.marks.prose import Style
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, INK, QUIET, STEP_PT, Box, span_pt
from blockdsl.marks.typeset import fraction_text
from blockdsl.page.flow import Slice
from blockdsl.page.headings import heading
from blockdsl.page.table import Cell, Column, table_head, table_row, words_cell
from blockdsl.pictures.block import swatch
from blockdsl.pictures.lengths import show_length
from blockdsl.pictures.words import many, say_colourway, say_piece, say_subcut

_BOLD: Final = Style(BODY_PT, "bold", INK)
_BODY: Final = Style(BODY_PT, "regular", INK)
_QUIET: Final = Style(BODY_PT, "regular", QUIET)
_SWATCH: Final = Box(0.0, 1.0, 24.0, 11.0)
_COLUMNS: Final = (
    Column("", 34.0),
    Column("fabric", span_pt(3)),
    Column("in place of", span_pt(3)),
    Column("cut", CONTENT_WIDTH_PT - 34.0 - 2 * span_pt(3), gap_pt=0.0),
)


def recut_tables(facts: BlockFacts) -> list[Slice]:
    """A heading and a short table for each colouring that has a cutting table of its own."""
    slices: list[Slice] = []
    for plan in facts.colourings:
        rows = list(_rows(facts, plan))
        if not rows:
            continue
        aside = "all other fabrics are cut as before" if len(rows) < len(plan.fabrics) else ""
        table = [table_row(_COLUMNS, row, ruled=place > 0) for place, row in enumerate(rows)]
        # A short table: all of it stays on one page.
        bound = [heading(f"In the {say_colourway(facts.unit)} {plan.name}", aside=aside), table_head(_COLUMNS), *table]
        slices += [*(replace(piece, keep=True) for piece in bound[:-1]), bound[-1]]
    return slices


def _rows(facts: BlockFacts, plan: ColouringFacts) -> Iterator[tuple[Cell, ...]]:
    """A row for each fabric that takes another's place."""
    labels = {fabric.name: fabric.label or fabric.name for fabric in facts.fabrics}
    for fabric in plan.fabrics:
        places = [old for old, new in plan.replaces if new == fabric.name]
        cuts = [cut for cut in plan.cutting if cut.fabric == fabric.name]
        if places == [fabric.name] or not cuts:
            continue
        before = [replace(cut, fabric=fabric.name) for cut in facts.cutting if cut.fabric in places]
        yield _row(fabric, [labels[old] for old in places], _what(facts, cuts, before, len(places)))


def _what(facts: BlockFacts, cuts: Sequence[CutFacts], before: Sequence[CutFacts], places: int) -> str:
    """That it is the same as in the table above, or all of it where pieces of several fabrics come together."""
    pieces = many(sum(cut.count for cut in cuts), "piece")
    if places == 1 and _told(cuts) == _told(before):
        return f"{pieces}, as in the cutting table"
    return f"{pieces}: {'; '.join(_say(cut, facts) for cut in cuts)}"


def _told(cuts: Iterable[CutFacts]) -> list[CutFacts]:
    """Lines to be compared, whatever they are listed after."""
    return sorted((replace(cut, shares=(), cutters=()) for cut in cuts), key=repr)


def _say(cut: CutFacts, facts: BlockFacts) -> str:
    then = say_subcut(cut, facts.unit)
    size = "" if cut.piece == "template" else f" {' × '.join(show_length(side, facts.unit) for side in cut.sides)}"
    return fraction_text(f"{cut.count} {say_piece(cut)}{size}, patch {cut.label}{f', {then}' if then else ''}")


def _row(fabric: FabricFacts, places: Sequence[str], what: str) -> tuple[Cell, ...]:
    height = _BODY.line_pt + STEP_PT / 2
    _, name, instead, cut = _COLUMNS
    return (
        Cell(height, swatch(fabric, _SWATCH)),
        words_cell(fabric.label or fabric.name, name, _BOLD),
        words_cell(" and ".join(places), instead, _QUIET),
        words_cell(what, cut, _BODY),
    )
