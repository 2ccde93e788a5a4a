"""One unit by itself, worked through like any block: so a technique's sizes are those that a block would be given."""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple

from msgspec import Struct

from blockdsl.analysis.program import analyse
from blockdsl.analysis.reading import TextReader
from blockdsl.cutting import cut_block
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts.block_parts import cut_facts, placed_patches, unit_facts
from blockdsl.facts.blockrecord import CutFacts, PlacedPatch, RulerUnit, UnitFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing import plan_making
from blockdsl.sewing.methods import METHODS
from blockdsl.shapes.outlines import LETTERS

_SHADES = ("#f4f1ea", "#3a4750")


class Sample(Struct, frozen=True):
    """A shape as a block file writes it, its fabrics a, b, c …; finished size; method; how its cloth is measured."""

    writes: str
    method: str
    width: Fraction
    height: Fraction
    unit: RulerUnit
    seam: Fraction
    measure: Fraction
    trim: Fraction = Fraction(0)


class WorkedOut(NamedTuple):
    """What a block that is one unit alone is cut from, its units, its patches."""

    cutting: tuple[CutFacts, ...]
    units: tuple[UnitFacts, ...]
    placed: tuple[PlacedPatch, ...]


@lru_cache(maxsize=2048)
def work_out(sample: Sample) -> WorkedOut:
    """The records of a block that is this unit alone.

    Errors: ValueError when the language does not know the shape or the method so (a fault of ours, not the user's).
    """
    problems = Problems()
    program = analyse(Source("technique", _text(sample)), TextReader(), problems)
    if not program.blocks:
        raise ValueError(f"no block from `{sample.writes}`: {[problem.message for problem in problems]}")
    design = program.blocks[0]
    cut = cut_block(design, plan_making(design, problems))
    return WorkedOut(
        cut_facts(cut.cuts, design, cut.lettered),
        unit_facts(design, cut.lettered, cut.making),
        placed_patches(design, cut.lettered),
    )


def _text(sample: Sample) -> str:
    shape = sample.writes.split()[0]
    used = set(sample.writes.split())
    fabrics = [f'fabric {x} "{x}" {_SHADES[place % 2]}' for place, x in enumerate(LETTERS) if x in used]
    made = [f"make {shape} as {sample.method}"] if shape in METHODS.get(sample.method, {}) else []
    trim = [f"trim {sample.trim} {sample.unit}"] if sample.trim else []
    return "\n".join(
        [
            *fabrics,
            'block "Technique"',
            f"size {_mixed(sample.width)} x {_mixed(sample.height)} {sample.unit}",
            f"seam {_mixed(sample.seam)} {sample.unit}",
            f"measure {_mixed(sample.measure)} {sample.unit}",
            *trim,
            *made,
            f"row ({sample.writes})",
            "",
        ]
    )


def _mixed(length: Fraction) -> str:
    whole, rest = divmod(length.numerator, length.denominator)
    if not rest:
        return str(whole)
    fraction = f"{rest}/{length.denominator}"
    return f"{whole} {fraction}" if whole else fraction


def cut_of(facts: WorkedOut, role: int) -> CutFacts | None:
    """What is cut from the fabric of a role; the widest piece when there are several."""
    letter = LETTERS[role]
    cuts = [cut for cut in facts.cutting if cut.fabric == letter]
    return max(cuts, key=lambda cut: cut.cut, default=None)


def told_cut(cut: CutFacts) -> tuple[Fraction, ...]:
    """The side of a square, the sides of a rectangle, the width of a strip and that of its segments."""
    if cut.piece == "strip":
        return cut.cut[0], cut.cut[1] / cut.yields
    return cut.cut[:1] if cut.piece == "square" or (cut.piece == "template" and cut.cut[0] == cut.cut[1]) else cut.cut
