"""What is said of the cutting table."""

from __future__ import annotations

from blockdsl.cutting.squaring import SQUARED_AGAIN, SQUARED_FIRST
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.geometry import Exact, sign
from blockdsl.wording.lengths import exact_figure
from blockdsl.wording.messages import Messages


def squaring_sentence(block: BlockFacts, words: Messages) -> str:
    """What the strips of strip sets have for squaring up; empty for a block without any."""
    if not any(unit.strip_sets for unit in block.units):
        return ""
    unit = block.unit
    first, again = (exact_figure(each[unit], unit, words) for each in (SQUARED_FIRST, SQUARED_AGAIN))
    return words("squaring-up", first=first, again=again, unit=unit)


def print_words(up: tuple[Exact, Exact], words: Messages) -> str:
    """Which way the print runs up on a template, as it is drawn: toward a side, or one of its corners."""
    level = {1: "right", 0: "", -1: "left"}[_mostly(up[0], up[1])]
    upright = {1: "bottom", 0: "", -1: "top"}[_mostly(up[1], up[0])]
    corner = {"top": "upper", "bottom": "lower"}.get(upright, "")
    side = f"{corner}-{level}" if corner and level else level or upright
    return words("print-up-on-template", side=words(f"side-{side}"))


def _mostly(part: Exact, other: Exact) -> int:
    """The sign of a part of a step; nothing where the step leans to it by less than half of what it does otherwise."""
    if (4 * part * part) < other * other:
        return 0
    return sign(part)
