"""`log centre a with b b c c …`: a log cabin, its logs added clockwise from the top, each across all before it."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.rounds import Log, Side, draw_logs, in_turn, proportion, read_width, rounds_of
from blockdsl.shapes.shape import Cloth, Shape
from blockdsl.shapes.words import WordReader

CLOCKWISE: tuple[Side, ...] = ("top", "right", "bottom", "left")
OPTIONS = ("strip", "narrow", "on", "rounds")


def _read(words: WordReader) -> ShapeUse | None:
    if not words.is_next("centre", "center") or not (centre := words.word()) or not words.is_next("with"):
        return None
    named = words.several(*OPTIONS, until="on")
    wide: Fraction | None = Fraction(1)
    narrow: Fraction | None = None
    rounds: int | None = None
    sides, said = len(CLOCKWISE), set()
    while not words.done:
        option = next((option for option in OPTIONS if words.is_next(option)), None)
        if option is None or option in said:
            return None
        said.add(option)
        match option:
            case "strip":
                wide = read_width(words)
            case "narrow":
                narrow = read_width(words)
            case "rounds":
                rounds = words.count(most=1000)
            case _:
                if not (words.is_next("two") and words.is_next("sides")):
                    return None
                sides = 2
    if wide is None or ("narrow" in said and narrow is None) or ("rounds" in said and rounds is None):
        return None
    logs = in_turn(named, rounds, sides)
    if not logs:
        return None
    return ShapeUse("log", (centre, *logs), (wide, wide if narrow is None else narrow), CLOCKWISE[:sides])


def _logs(filling: ShapeUse) -> list[Log]:
    """The first two logs of each round, at the top and on the right, may be narrower than the others."""
    wide, narrow = filling.numbers
    sides = CLOCKWISE[: len(filling.places)]
    around = [sides[place % len(sides)] for place in range(len(filling.fabrics) - 1)]
    return [Log(side, narrow if side in ("top", "right") else wide) for side in around]


def _draw(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Cloth, ...]:
    return draw_logs(filling, _logs(filling), width, height)


SHAPE = Shape(
    "log",
    "log centre CENTRE with TOP RIGHT BOTTOM LEFT … [rounds 5] [strip 1] [narrow 1/2] [on two sides]",
    "log cabin",
    "a square with logs added round it, clockwise from the top; strip is the width of a log as a part of the centre's "
    "side, narrow that of the logs at the top and on the right; rounds goes through the fabrics again; on two sides "
    "adds logs at the top and on the right alone",
    None,
    _read,
    _draw,
    proportion_of=lambda filling: proportion(_logs(filling)),
    rounds=lambda filling: rounds_of(filling, len(filling.places), at_a_time=1),
    also_called=("cabin", "log cabin"),
    middle=0,
    family="rounds",
)
