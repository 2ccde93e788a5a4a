"""`courthouse centre a with t b l r …`: logs added in pairs, at the top and the bottom, then at the sides."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes import log
from blockdsl.shapes.rounds import Log, Side, draw_logs, in_turn, proportion, read_width, rounds_of
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

IN_PAIRS: tuple[Side, ...] = ("top", "bottom", "left", "right")
OPTIONS = ("strip", "rounds")


def _read(words: WordReader) -> ShapeUse | None:
    if not words.is_next("centre", "center") or not (centre := words.word()) or not words.is_next("with"):
        return None
    named = words.several(*OPTIONS)
    wide: Fraction | None = Fraction(1)
    rounds: int | None = None
    said = set()
    while not words.done:
        option = next((option for option in OPTIONS if words.is_next(option)), None)
        if option is None or option in said:
            return None
        said.add(option)
        if option == "strip":
            wide = read_width(words)
        else:
            rounds = words.count(most=1000)
    if wide is None or ("rounds" in said and rounds is None):
        return None
    logs = in_turn(named, rounds, len(IN_PAIRS))
    return ShapeUse("courthouse", (centre, *logs), (wide,)) if logs and len(logs) % 2 == 0 else None


def _logs(filling: ShapeUse) -> list[Log]:
    (wide,) = filling.numbers
    return [Log(IN_PAIRS[place % len(IN_PAIRS)], wide) for place in range(len(filling.fabrics) - 1)]


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    return draw_logs(filling, _logs(filling), width, height)


SHAPE = Shape(
    "courthouse",
    "courthouse centre CENTRE with TOP BOTTOM LEFT RIGHT … [rounds 5] [strip 1]",
    "courthouse steps",
    "a square with logs added in pairs, at the top and the bottom, then on the left and the right; strip is the width "
    "of a log as a part of the centre's side, rounds goes through the fabrics again",
    None,
    _read,
    _draw,
    proportion_of=lambda filling: proportion(_logs(filling)),
    rounds=lambda filling: rounds_of(filling, len(IN_PAIRS), at_a_time=2),
    middle=0,
    family="rounds",
    taught_as=log.SHAPE.name,
    also_called=("courthouse step",),
)
