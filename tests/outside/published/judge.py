"""Published pieces against the cutting list of a block: the same, or roomy or short by exactly so much."""

from __future__ import annotations

import re
import tomllib
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from blockdsl import pipeline
from blockdsl.analysis import TextReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts.blockfacts import BlockFacts, CutFacts
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction, read_fraction

HERE = Path(__file__).parent
PALETTE = """\
fabric dark "Dark" #202020
fabric light "Light" #f4f4f4
fabric medium "Medium" #3c78b4
fabric frame "Frame" #96a03c
"""
PIECE = re.compile(
    r"(?P<fabric>\S+) (?P<count>\d+) (?P<piece>square|rectangle|strip|triangle|diamond|parallelogram"
    r"|trapezoid|hexagon|template)"
    r" (?P<width>[\d/ .]+?)(?: x (?P<length>[\d/ .]+?))?"
    r"(?: (?P<subcut>once|twice))?(?: (?P<verdict>same|roomy by .+|short by .+|shorter by .+))?"
)
Key = tuple[str, str, tuple[Fraction, ...], str]


@dataclass(frozen=True, slots=True)
class Published:
    """One piece of a source: `sides` as printed, `off` what it has more (or, below nothing, less) than ours.

    `shorter` is by how much a strip as wide as ours is shorter.
    """

    fabric: str
    count: int
    piece: str
    sides: tuple[Fraction, ...]
    subcut: str
    off: Fraction
    shorter: Fraction = Fraction(0)

    @property
    def ours(self) -> Key:
        """The piece that our cutting list must have."""
        width, *length = (side - self.off for side in self.sides)
        sides = (width, *(side + self.shorter for side in length))
        return self.fabric, self.piece, tuple(sorted(sides)), self.subcut


def length(text: str) -> Fraction:
    """`2 7/8`, `1/8` or `13.5` as a number."""
    return sum((read_fraction(part) for part in text.split()), Fraction(0))


def load(name: str) -> list[dict[str, Any]]:
    """The rows of one of the files of published values."""
    rows = tomllib.loads((HERE / name).read_text(encoding="utf-8"))
    return [row for table in rows.values() for row in table]


def pieces(row: dict[str, Any]) -> list[Published]:
    """The row's pieces; one that does not say how it compares follows the row's verdict."""
    return [_piece(text, str(row["verdict"])) for text in row["published"]]


def _piece(text: str, verdict: str) -> Published:
    found = PIECE.fullmatch(text)
    assert found, f"not a piece: {text}"
    width = length(found["width"])
    sides = (width, length(found["length"])) if found["length"] else (width,)
    told = found["verdict"] or ("same" if verdict == "mixed" else verdict)
    shorter = length(told.removeprefix("shorter by ")) if told.startswith("shorter by ") else Fraction(0)
    off = Fraction(0) if shorter else _off(told)
    return Published(
        found["fabric"], int(found["count"]), found["piece"], sides, found["subcut"] or "none", off, shorter
    )


def _off(verdict: str) -> Fraction:
    if verdict == "same":
        return Fraction(0)
    kind, by, amount = verdict.split(maxsplit=2)
    assert (kind, by) in {("roomy", "by"), ("short", "by")}, verdict
    return length(amount) if kind == "roomy" else -length(amount)


def block_facts(text: str, name: str | None = None) -> tuple[BlockFacts, list[str]]:
    """The facts of the block `name` of a text, or of its only block, and the codes of the problems found."""
    problems = Problems()
    facts = pipeline.run(Source("published.block", text), TextReader(), problems).facts
    codes = sorted({problem.code for problem in problems})
    blocks = [block for block in facts.blocks if name in (None, block.name)]
    assert len(blocks) == 1, [f"{problem.span.line}: {problem.message}" for problem in problems]
    return blocks[0], codes


def facts_of_lines(lines: Iterable[str]) -> tuple[BlockFacts, list[str]]:
    """The facts of one block that is given by its lines, in the palette above."""
    text = PALETTE + 'block "Published"\n' + "\n".join(lines) + "\n"
    facts, codes = block_facts(text)
    return facts, [code for code in codes if code != "fabric-unused"]


def key_of(cut: CutFacts) -> Key:
    """A line of our cutting list, as a published piece is written: one side for what is square or goes by its strip."""
    sides = cut.cut[:1] if cut.piece == "square" else cut.cut
    if cut.strip is not None and cut.strip.form != "template":
        # as pages of cutting have it: the strip, and how far apart the cuts are where that is a measure of its own
        sides = (cut.strip.width,) if cut.strip.every is None else (cut.strip.width, cut.strip.every)
    return cut.fabric, cut.piece, tuple(sorted(sides)), cut.subcut


def cutting(facts: BlockFacts) -> Counter[Key]:
    """Our cutting list, pieces of one size counted together whatever they are for."""
    counted: Counter[Key] = Counter()
    for cut in facts.cutting:
        counted[key_of(cut)] += cut.count
    return counted


def count_of(facts: BlockFacts, published: Published) -> int:
    """How many we cut of a published piece; a strip or template may be given by its shorter side alone."""
    return sum(cut.count for cut in facts.cutting if _is(cut, published))


def assert_holds(row: dict[str, Any], facts: BlockFacts, found: Sequence[Published]) -> None:
    """Each published side against the exact need: only what is called short may be less."""
    for published in found:
        needs = [_need(cut) for cut in facts.cutting if _is(cut, published)]
        assert needs, row["input"]
        for exact in needs:
            shortest, longest = min(published.sides), max(published.sides)
            if published.shorter:
                assert shortest >= min(exact)
                assert longest < max(exact) <= longest + published.shorter, f"{published} is not short of {exact}"
            elif published.off < 0:
                assert shortest < min(exact), f"{published} is not short of {exact}"
            else:
                assert shortest >= min(exact), f"{published} is short of {exact}"
                assert len(published.sides) == 1 or longest >= max(exact), f"{published} is short of {exact}"


def _need(cut: CutFacts) -> tuple[Exact, Exact]:
    """What a piece takes exactly; of one from a strip the strip and how far apart its cuts are."""
    return cut.strip.exact if cut.strip is not None and cut.strip.form != "template" else cut.exact


def _is(cut: CutFacts, published: Published) -> bool:
    fabric, piece, sides, subcut = key_of(cut)
    wanted = published.ours
    return (fabric, piece, sides[: len(wanted[2])], subcut) == wanted
