"""The designer's own checks: `expect` lines of blocks and quilts against their facts."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.analysis.program import Expectation, QuiltExpectation
from blockdsl.diagnostics import Problems, nearest_word
from blockdsl.facts.blockrecord import BlockRecord, CutFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import Exact, ceil_to, floor_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import RulerUnit
from blockdsl.model.lengths import about, write_length, write_size
from blockdsl.syntax import ast

PIECES = {
    "squares": "square",
    "square": "square",
    "rectangles": "rectangle",
    "rectangle": "rectangle",
    "strips": "strip",
    "strip": "strip",
    "templates": "template",
    "template": "template",
    "triangles": "triangle",
    "triangle": "triangle",
    "diamonds": "diamond",
    "diamond": "diamond",
    "parallelograms": "parallelogram",
    "parallelogram": "parallelogram",
    "trapezoids": "trapezoid",
    "trapezoid": "trapezoid",
    "hexagons": "hexagon",
    "hexagon": "hexagon",
    "octagons": "octagon",
    "octagon": "octagon",
}

IN_UNIT = {
    ("in", "in"): Fraction(1),
    ("cm", "in"): Fraction(100, 254),
    ("mm", "in"): Fraction(10, 254),
    ("in", "cm"): Fraction(254, 100),
    ("cm", "cm"): Fraction(1),
    ("mm", "cm"): Fraction(1, 10),
}
"""Factors from what is written to the block's own unit."""


def check_expectations(facts: BlockRecord, expectations: Sequence[Expectation], problems: Problems) -> None:
    """Report every expectation that does not hold, with both values."""
    for line in expectations:
        match line:
            case ast.ExpectCut():
                _check_cut(facts, line, problems)
            case ast.ExpectUnit():
                _check_unit(facts, line, problems)
            case ast.ExpectFinished():
                wanted = (in_unit_of(line.width, facts.unit), in_unit_of(line.height, facts.unit))
                if wanted != facts.finished:
                    got = write_size(*facts.finished, facts.unit)
                    problems.report(
                        "expect-finished", line.span, wanted=write_size(*wanted, facts.unit), got=got, help=None
                    )


def _check_cut(facts: BlockRecord, line: ast.ExpectCut, problems: Problems) -> None:
    kind = PIECES.get(line.piece.text)
    ours = [cut for cut in facts.cutting if cut.fabric == line.fabric.text]
    subcut = line.subcut.text if line.subcut else None
    size = tuple(sorted((line.width.value, line.height.value)))
    same = [
        cut
        for cut in ours
        if cut.piece == kind and tuple(sorted(told_size(cut))) == size and subcut in (None, cut.subcut)
    ]
    found = sum(cut.count for cut in same)
    if found != line.count.value:
        got = f"{found} of them" if same else "no such piece"
        listed = "; ".join(_cut_text(cut, facts.unit) for cut in ours) or "nothing"
        wanted = line.span.text.removeprefix("expect").strip()
        problems.report(
            "expect-cut", line.span, wanted=wanted, got=got, help=f"of `{line.fabric.text}` the block cuts {listed}"
        )


def _cut_text(cut: CutFacts, unit: RulerUnit) -> str:
    one, other = (write_length(side, unit) for side in told_size(cut))
    size = one if one == other and cut.piece not in ("rectangle", "template") else f"{one} x {other}"
    once = "" if cut.subcut == "none" else f" {cut.subcut}"
    return f"{cut.count} {cut.piece}{'' if cut.count == 1 else 's'} {size}{once}"


def told_size(cut: CutFacts) -> tuple[Fraction, Fraction]:
    """What a maker sets her ruler to: both sides; of pieces from a strip its width and how far apart the cuts are.

    Where a width is all that there is to know, it is said twice, as a square's side is.
    """
    if cut.strip is None or cut.strip.form == "template":
        return cut.cut
    return cut.strip.width, cut.strip.every or cut.strip.width


def _check_unit(facts: BlockRecord, line: ast.ExpectUnit, problems: Problems) -> None:
    named = [unit for unit in facts.units if line.unit.text in (unit.name, *unit.also)]
    wanted = (in_unit_of(line.width, facts.unit), in_unit_of(line.height, facts.unit))
    same = [unit for unit in named if wanted in (unit.finished, unit.finished[::-1])]
    count = sum(unit.count for unit in same)
    if same and (line.count is None or line.count.value == count):
        return
    text = write_size(*wanted, facts.unit) + (f", count {line.count.value}" if line.count else "")
    got = "; ".join(f"{write_size(*unit.finished, facts.unit)}, count {unit.count}" for unit in named) or "no such unit"
    known = ", ".join(dict.fromkeys(f"`{unit.name}`" for unit in facts.units)) or "no units"
    problems.report("expect-unit", line.span, wanted=text, got=got, help=f"the block has {known}")


def in_unit_of(literal: ast.LengthLiteral, unit: RulerUnit) -> Fraction:
    """A written length in the block's or quilt's unit: 12 in is never taken for 12 cm."""
    return literal.value * IN_UNIT[literal.unit, unit]


def check_quilt(facts: QuiltFacts, expectations: Sequence[QuiltExpectation], problems: Problems) -> None:
    """Report every expectation that does not hold, with both values.

    A quilt on point measures no number that a ruler shows: there the nearest that it does is meant.
    """
    for line in expectations:
        if isinstance(line, ast.ExpectFinished):
            wanted = in_unit_of(line.width, facts.unit), in_unit_of(line.height, facts.unit)
            if wanted != tuple(_nearest(side, facts.measure) for side in facts.finished):
                got = " x ".join(about(side, facts.unit, facts.measure) for side in facts.finished)
                problems.report(
                    "expect-finished",
                    line.span,
                    wanted=write_size(*wanted, facts.unit),
                    got=f"{got} {facts.unit}",
                    help=None,
                )
            continue
        counts = dict(facts.blocks)
        found = counts.get(line.block.text, 0)
        if found != line.count.value:
            near = nearest_word(line.block.text, counts)
            advice = f'it has "{near}"' if near and not found else None
            problems.report(
                "expect-blocks", line.span, wanted=line.count.value, name=line.block.text, got=found, help=advice
            )


def _nearest(length: Exact, measure: Fraction) -> Fraction:
    if isinstance(length, Fraction):
        return length
    below, above = floor_to(length, measure), ceil_to(length, measure)
    return below if length - below < above - length else above
