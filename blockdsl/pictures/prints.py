"""The prints of scraps in pictures: a tint of the role's colour for each, so that one can be told from the other."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from blockdsl.facts.quiltfacts import QuiltFacts

_FARTHEST: Final = 0.36
"""Farther off, prints of a light fabric would look dark, and the block's lights and darks would be lost."""
_WHITE: Final = 255
_LIGHT: Final = 165.0
"""From this mean of red, green and blue on a colour has more room below it than above."""
_DARKEST: Final = 0.16
"""Of each part of a colour, so that its hue stays."""
Tints = tuple[tuple[str, str], ...]
"""Fabrics by name, each with the colour that it has in one block."""


def shade(colour: str, print_number: int, prints: int) -> str:
    """A tint of the role's colour for each print: the first as it is, the last farthest from it."""
    share = _FARTHEST * (print_number - 1) / max(1, prints - 1)
    parts = [int(colour[place : place + 2], 16) for place in (1, 3, 5)]
    goals = [part * _DARKEST for part in parts] if sum(parts) / 3 >= _LIGHT else [_WHITE] * 3
    tint = (part + (goal - part) * share for part, goal in zip(parts, goals, strict=True))
    return "#" + "".join(f"{round(part):02x}" for part in tint)


def tints_of_blocks(facts: QuiltFacts) -> Mapping[int, Tints]:
    """For each block with scraps, by its place in the quilt's list, the tints of its prints."""
    colours = {fabric.name: fabric.colour for fabric in facts.fabrics_used}
    found: dict[int, Tints] = {}
    for spread in facts.finishing.scraps if facts.finishing is not None else ():
        for block, number in zip(spread.blocks, spread.assignment, strict=True):
            tint = (spread.role, shade(colours[spread.role], number, spread.prints))
            found[block] = (*found.get(block, ()), tint)
    return found
