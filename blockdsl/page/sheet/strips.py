"""Pictures of the cuts that are not square, under the cutting table: how the strip lies and where the ruler goes."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts, CutFacts
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, fitted, line, paragraph, width_of
from blockdsl.marks.theme import ACCENT, BODY_PT, GUTTER_PT, QUIET, SMALL_PT, STEP_PT, span_pt
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import heading
from blockdsl.pictures.strip import cut_picture, has_picture
from blockdsl.wording.grammar import name_of
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.strips import is_handed

_LETTER: Final = TextStyle(BODY_PT, "bold", ACCENT)
_QUIET: Final = TextStyle(SMALL_PT, "regular", QUIET)
_COLUMNS: Final = 12


def strip_pictures(facts: BlockFacts) -> list[Flowable]:
    """A picture for each way of cutting, strips before rectangles; nothing where all cuts are square."""
    shown: dict[object, CutFacts] = {}
    for cut in facts.cutting:
        if has_picture(cut):
            shown.setdefault((cut.label, cut.cut, cut.slant, cut.outside), cut)
    if not shown:
        return []
    words = words_of(facts)
    flowables = [heading(words("angle-title"), aside=words("angle-aside"))]
    strips = [cut for cut in shown.values() if cut.strip is not None]
    flowables += _beside(strips, facts, 2)
    flowables += _beside([cut for cut in shown.values() if cut.strip is None], facts, 4)
    of_corners = [cut.corner is not None for cut in shown.values()]
    handed = any(is_handed(cut) for cut in shown.values())
    remarks = (("layers", handed), ("ruler", not all(of_corners)), ("corners", any(of_corners)))
    for remark in (words(f"angle-{name}") for name, meant in remarks if meant):
        height, marks = paragraph(remark, span_pt(_COLUMNS), _QUIET)
        flowables.append(Flowable(height, marks, before_pt=2 * STEP_PT))
    return flowables


def _beside(cuts: Sequence[CutFacts], facts: BlockFacts, in_a_row: int) -> list[Flowable]:
    width = span_pt(_COLUMNS // in_a_row)
    flowables = []
    for place in range(0, len(cuts), in_a_row):
        row = [_titled(cut, facts, width) for cut in cuts[place : place + in_a_row]]
        marks: list[Mark] = []
        for at, (_, each) in enumerate(row):
            marks += moved(each, at * (width + GUTTER_PT), 0.0)
        flowables.append(Flowable(max(height for height, _ in row), tuple(marks), before_pt=2 * STEP_PT))
    return flowables


def _titled(cut: CutFacts, facts: BlockFacts, width: float) -> tuple[float, tuple[Mark, ...]]:
    words = words_of(facts)
    key = "-".join(["angle", *(["one-layer"] if is_handed(cut) else []), *(["edge"] if cut.outside else [])])
    what = _what(cut, words) if key == "angle" else words(key, what=_what(cut, words))
    first = line(cut.label, 0.0, _LETTER.baseline_pt, _LETTER)
    after = width_of(cut.label, _LETTER) + 2 * STEP_PT
    named = line(fitted(what, width - after, _QUIET), after, _LETTER.baseline_pt, _QUIET)
    height, picture = cut_picture(cut, facts.unit, width, words)
    top = _LETTER.line_pt + STEP_PT
    return top + height, (*first, *named, *moved((picture,), 0.0, top))


def _what(cut: CutFacts, words: Messages) -> str:
    if cut.corner is not None:
        return words("angle-octagon")
    if cut.strip is None:
        return words("angle-rectangle")
    piece = name_of(f"piece-{cut.piece}", words)
    return words("angle-turned", piece=piece) if cut.strip.form == "turned" else str(piece)
