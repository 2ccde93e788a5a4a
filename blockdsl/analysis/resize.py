"""The same block at another width: all that depends on its size follows from it, the rest of its lines stays."""

from __future__ import annotations

from typing import Final

from msgspec.structs import replace

from blockdsl.analysis.design import design_block
from blockdsl.analysis.place import Placer
from blockdsl.analysis.scope import Scope
from blockdsl.analysis.settings import read_settings
from blockdsl.diagnostics import Problems
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign, RulerUnit
from blockdsl.syntax import ast

_OF_A_SIZE: Final = frozenset({"size-off-ruler", "size-too-large", "length-not-positive"})
"""What can be wrong with one size of a block that is right at its own."""


def design_at_all_sizes(
    block: ast.BlockDeclaration, names: Scope, placer: Placer, problems: Problems
) -> BlockDesign | None:
    """The block at its own size, with those of its `sizes` line; None when it has errors, which are reported."""
    return names.memory.design(block, names, problems, lambda found: _design_at_all_sizes(block, names, placer, found))


def _design_at_all_sizes(
    block: ast.BlockDeclaration, names: Scope, placer: Placer, problems: Problems
) -> BlockDesign | None:
    own = design_block(block, names, placer, problems)
    asked = [width for line in block.lines if isinstance(line, ast.Sizes) for width in line.widths]
    if own is None or not asked:
        return own
    sizes: dict[tuple[str, Fraction], BlockDesign] = {}
    seen = {(own.unit, own.width)}
    for width in asked:
        key = measured(width)
        if key in seen:
            advice = "leave it out: the block's own size is always shown, and each other size once"
            problems.report("setting-twice", width.span, what=width.span.text, help=advice)
            continue
        seen.add(key)
        if (found := block_at_width(block, width, own, names, placer, problems)) is not None:
            sizes[key] = found
    return replace(own, sizes=tuple(sizes.values()))


def measured(width: ast.LengthLiteral) -> tuple[RulerUnit, Fraction]:
    """A written width in what rulers show, inches or centimetres."""
    return ("in", width.value) if width.unit == "in" else ("cm", width.value / (10 if width.unit == "mm" else 1))


def block_at_width(
    block: ast.BlockDeclaration,
    width: ast.LengthLiteral,
    own: BlockDesign,
    names: Scope,
    placer: Placer,
    problems: Problems,
) -> BlockDesign | None:
    """The block so wide, and as high as its proportion makes it; None when it cannot be, which is reported.

    `own` is the block at its own size. Problems are reported at the place where the width was asked for. In the other
    kind of unit the block's own seam, measure and trim say nothing, and the usual ones hold.
    """
    height = replace(width, value=width.value * own.height / own.width)
    same_unit = (width.unit == "in") == (own.unit == "in")
    kept = (
        line
        for line in block.lines
        if not isinstance(line, ast.Size | ast.Sizes)
        and (same_unit or not isinstance(line, ast.Seam | ast.Measure | ast.Trim))
    )
    resized = replace(
        block,
        name=ast.Text(width.span, block.name.text),
        lines=(ast.Size(width.span, width, height), *kept),
    )
    found = Problems()
    # An impossible size is reported by itself: without one a block is still checked for other mistakes.
    can_be = read_settings(resized, found) is not None
    design = design_block(resized, names, placer, found) if can_be else None
    for problem in found:
        if problem.code in _OF_A_SIZE:
            problems.add(problem)
        elif problem.severity == "error":
            # At its own size the block has none, so it is this size that cannot be, whichever line is at fault.
            problems.add(replace(problem, span=width.span))
    return design
