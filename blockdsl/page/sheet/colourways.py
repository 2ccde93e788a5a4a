"""The block in its other colourways, side by side with the first, each with its key of fabrics."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.blockfacts import BlockFacts, ColourwayFacts, FabricFacts
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, fitted, line, lines_of
from blockdsl.marks.theme import GUTTER_PT, INK, LEAD_PT, STEP_PT, Box, span_pt
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import continued, heading
from blockdsl.page.sheet.fabrics import key_column
from blockdsl.pictures.block import block_picture, fabrics_of
from blockdsl.wording.messages import words_of

_ACROSS: Final = 2
_COLUMNS: Final = 6
_PICTURE_COLUMNS: Final = 3
_NAME: Final = TextStyle(LEAD_PT, "bold", INK)
_NAME_LINES: Final = 3
_LABEL_LINES: Final = 2  # the whole label stands in the key on the first page


def colourway_gallery(facts: BlockFacts) -> list[Flowable]:
    """The heading and two colourways on each flowable, the block's own first; nothing when it has no other."""
    if not facts.colourways:
        return []
    cards = [_card(facts, colourway) for colourway in (None, *facts.colourways)]
    words = words_of(facts)
    title = words("sheet-colorways")
    flowables = [heading(title)]
    for start in range(0, len(cards), _ACROSS):
        row = cards[start : start + _ACROSS]
        marks: list[Mark] = []
        for place, (_, card) in enumerate(row):
            marks += moved(card, place * (span_pt(_COLUMNS) + GUTTER_PT), 0.0)
        before = 4 * STEP_PT if start else STEP_PT
        flowables.append(
            Flowable(max(height for height, _ in row), tuple(marks), before, head=(continued(title, words),))
        )
    return flowables


def _seen(facts: BlockFacts, colourway: ColourwayFacts | None) -> list[FabricFacts]:
    """The fabrics that are seen in a colourway, each once, in the order of the fabrics they stand for."""
    return list({fabric.name: fabric for fabric in fabrics_of(facts, colourway).values()}.values())


def _card(facts: BlockFacts, colourway: ColourwayFacts | None) -> tuple[float, tuple[Mark, ...]]:
    """The picture at the left; its name and its key at its right."""
    side = span_pt(_PICTURE_COLUMNS)
    picture, placed = block_picture(facts, Box(0.0, 0.0, side, side), colourway=colourway)
    x = side + GUTTER_PT
    room = span_pt(_COLUMNS) - x
    marks: list[Mark] = [picture]
    lines = lines_of(words_of(facts)("sheet-as-drawn") if colourway is None else colourway.name, room, _NAME)
    if len(lines) > _NAME_LINES:
        lines = [*lines[: _NAME_LINES - 1], fitted(" ".join(lines[_NAME_LINES - 1 :]), room, _NAME)]
    y = -3.0
    for words in lines:
        marks += line(words, x, y + _NAME.baseline_pt, _NAME)
        y += _NAME.line_pt
    y += 1.5 * STEP_PT
    height, key = key_column(_seen(facts, colourway), room, words_of(facts), _LABEL_LINES)
    marks += moved(key, x, y)
    return max(placed.height_pt, y + height), tuple(marks)
