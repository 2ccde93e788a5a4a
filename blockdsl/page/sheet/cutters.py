"""The maker's own cutters: what each of them cuts for the block, and what she has none for."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts, LackingFacts
from blockdsl.marks.display_list import moved
from blockdsl.marks.prose import TextStyle, fitted, line, paragraph
from blockdsl.marks.theme import BODY_PT, GUTTER_PT, INK, QUIET, STEP_PT, span_pt
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import heading
from blockdsl.wording.grammar import name_of
from blockdsl.wording.lengths import show_extent, show_measure
from blockdsl.wording.messages import Messages, words_of

_LABEL: Final = TextStyle(BODY_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_QUIET: Final = TextStyle(BODY_PT, "regular", QUIET)
_LEFT_COLUMNS: Final = 4
_RIGHT_COLUMNS: Final = 8
_OWN_WORDS: Final = ("half", "quarter", "diamond")


def cutter_list(facts: BlockFacts) -> list[Flowable]:
    """A line for each cutter of the maker's that the block can use, then what she lacks; nothing without cutters."""
    if not facts.cutters:
        return []
    words = words_of(facts)
    flowables = [heading(words("cutters-title"), aside=words("cutters-aside"))]
    for label in facts.cutters:
        letters = dict.fromkeys(cut.label for cut in facts.cutting if label in cut.cutters)
        if letters:
            flowables.append(_line(label, _format_patches(tuple(letters), words), _BODY))
    if len(flowables) == 1:
        flowables.append(_line("", words("cutters-none"), _BODY))
    flowables += [_line(words("cutters-lacking"), _format_lacking(lacking, facts), _QUIET) for lacking in facts.lacking]
    return flowables


def _format_lacking(lacking: LackingFacts, facts: BlockFacts) -> str:
    """The letters and the cutter that would be of use to them."""
    words = words_of(facts)
    patches = _format_patches(lacking.labels, words)
    return words("cutters-lacking-what", patches=patches, cutter=format_lacking(lacking, facts))


def format_lacking(lacking: LackingFacts, facts: BlockFacts) -> str:
    """The cutter that would be of use: `square, 3 in finished`, `strip, 2 1/2 in wide`."""
    words, shape = words_of(facts), lacking.shape
    name = words(f"cutters-{shape}") if shape in _OWN_WORDS else name_of(f"piece-{shape}", words)
    if shape == "rectangle":
        return words("cutters-finished", shape=name, size=show_extent(lacking.size, facts.unit, words))
    size = show_measure(lacking.size[0], facts.unit, words)
    return words("cutters-wide" if shape == "strip" else "cutters-finished", shape=name, size=size)


def _format_patches(letters: Sequence[str], words: Messages) -> str:
    return words("cutters-patches", count=len(letters), letters=", ".join(letters))


def _line(label: str, words: str, style: TextStyle) -> Flowable:
    left = span_pt(_LEFT_COLUMNS)
    height, marks = paragraph(words, span_pt(_RIGHT_COLUMNS), style)
    name = line(fitted(label, left, _LABEL), 0.0, style.baseline_pt, _LABEL if style is _BODY else style)
    return Flowable(height, (*name, *moved(marks, left + GUTTER_PT, 0.0)), before_pt=STEP_PT / 2)
