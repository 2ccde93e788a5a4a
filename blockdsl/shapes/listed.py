"""The list of shapes: a shape is its file and its line here."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.shapes import (
    bars,
    checker,
    courthouse,
    cubes,
    curve,
    diamond,
    fan,
    geese,
    half,
    half_rectangle,
    hexagons,
    hourglass,
    kite,
    log,
    long_diamond,
    octagon,
    pineapple,
    quarters,
    rails,
    slant,
    snowball,
    split,
    spool,
    square,
    star45,
    trapezoid,
    triangle_in_square,
    triangles60,
    tumblers,
)
from blockdsl.shapes.shape import Shape

_FILES: Final = (
    square,
    half,
    quarters,
    hourglass,
    split,
    geese,
    diamond,
    snowball,
    rails,
    bars,
    checker,
    star45,
    triangles60,
    hexagons,
    cubes,
    half_rectangle,
    triangle_in_square,
    long_diamond,
    kite,
    trapezoid,
    slant,
    spool,
    octagon,
    tumblers,
    log,
    courthouse,
    pineapple,
    curve,
    fan,
)

SHAPES: dict[str, Shape] = {file.SHAPE.name: file.SHAPE for file in _FILES}

FORMER_NAMES: dict[str, str] = {old: shape.name for shape in SHAPES.values() for old in shape.former}
"""Names that shapes had once, and what is written now."""

TRADE_WORDS: dict[str, str] = {word: shape.name for shape in SHAPES.values() for word in shape.also_called}
"""Words of the trade that are no shape of the language, singular and without hyphens, and the shape that is meant."""

_MOST_WORDS = 4


def shape_meant(said: Sequence[str]) -> tuple[str, int] | None:
    """The shape that the trade calls by the first of these words, and by how many of them; None where it knows none.

    `half-square triangles` are the shape `half`; a word that is a shape itself is left alone when it stands alone.
    """
    for count in range(min(_MOST_WORDS, len(said)), 0, -1):
        phrase = " ".join(said[:count]).lower().replace("-", " ").replace("_", " ")
        for words in (phrase, phrase.removesuffix("s")):
            if words in TRADE_WORDS:
                return TRADE_WORDS[words], count
    return None
