"""The maker's own cutters: what each of them cuts for the block, and what she has none for."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts, LackingFacts
from blockdsl.marks.display_list import moved
from blockdsl.marks.prose import Style, fitted, line, paragraph
from blockdsl.marks.theme import BODY_PT, GUTTER_PT, INK, QUIET, STEP_PT, span_pt
from blockdsl.page.flow import Slice
from blockdsl.page.headings import heading
from blockdsl.pictures.lengths import show_extent, show_measure

_LABEL: Final = Style(BODY_PT, "bold", INK)
_BODY: Final = Style(BODY_PT, "regular", INK)
_QUIET: Final = Style(BODY_PT, "regular", QUIET)
_LEFT_COLUMNS: Final = 4
_RIGHT_COLUMNS: Final = 8
_SHAPES: Final = {"half": "half-square triangle", "quarter": "quarter-square triangle", "diamond": "diamond of 45°"}


def cutter_list(facts: BlockFacts) -> list[Slice]:
    """A line for each cutter of the maker's that the block can use, then what she lacks; nothing without cutters."""
    if not facts.cutters:
        return []
    slices = [heading("Your cutters", aside="what each one cuts, by the letters in the cutting table")]
    for label in facts.cutters:
        letters = dict.fromkeys(cut.label for cut in facts.cutting if label in cut.cutters)
        if letters:
            slices.append(_line(label, _say_patches(tuple(letters)), _BODY))
    if len(slices) == 1:
        slices.append(_line("", "None of them fits a piece of this block.", _BODY))
    slices += [
        _line("no matching cutter", f"{_say_patches(lacking.labels)}: {say_lacking(lacking, facts)}", _QUIET)
        for lacking in facts.lacking
    ]
    return slices


def say_lacking(lacking: LackingFacts, facts: BlockFacts) -> str:
    """The cutter that would be of use: `square, 3 in finished`, `strip, 2 1/2 in wide`."""
    name = _SHAPES.get(lacking.shape, lacking.shape)
    if lacking.shape == "rectangle":
        return f"{name}, {show_extent(lacking.size, facts.unit)} finished"
    size = show_measure(lacking.size[0], facts.unit)
    return f"{name}, {size} wide" if lacking.shape == "strip" else f"{name}, {size} finished"


def _say_patches(letters: Sequence[str]) -> str:
    return f"{'patch' if len(letters) == 1 else 'patches'} {', '.join(letters)}"


def _line(label: str, words: str, style: Style) -> Slice:
    left = span_pt(_LEFT_COLUMNS)
    height, marks = paragraph(words, span_pt(_RIGHT_COLUMNS), style)
    name = line(fitted(label, left, _LABEL), 0.0, style.baseline_pt, _LABEL if style is _BODY else style)
    return Slice(height, (*name, *moved(marks, left + GUTTER_PT, 0.0)), before_pt=STEP_PT / 2)
