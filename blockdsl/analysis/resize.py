"""The same block at another width: all that is told of its size follows from it, the rest of its lines stays."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from blockdsl.analysis.design import design_block
from blockdsl.analysis.names import Names
from blockdsl.analysis.place import Placer
from blockdsl.analysis.settings import read_settings
from blockdsl.diagnostics import Problems
from blockdsl.model import BlockDesign
from blockdsl.syntax import ast

_OF_A_SIZE: Final = frozenset({"size-off-ruler", "size-too-large", "length-not-positive"})
"""What can be wrong with one size of a block that is right at its own."""


def block_at_width(
    block: ast.BlockDeclaration,
    width: ast.LengthLiteral,
    own: BlockDesign,
    names: Names,
    placer: Placer,
    problems: Problems,
) -> BlockDesign | None:
    """The block so wide, and as high as its proportion makes it; None when it cannot be, which is reported.

    `own` is the block at its own size. Problems are told at the place where the width was asked for. In the other
    kind of unit the block's own seam, measure and trim say nothing, and the usual ones hold.
    """
    height = replace(width, value=width.value * own.height / own.width)
    same_unit = (width.unit == "in") == (own.unit == "in")
    kept = (
        line
        for line in block.lines
        if not isinstance(line, ast.Size) and (same_unit or not isinstance(line, ast.Seam | ast.Measure | ast.Trim))
    )
    resized = replace(
        block,
        name=ast.Text(width.span, block.name.text),
        lines=(ast.Size(width.span, width, height), *kept),
    )
    found = Problems()
    # A size that cannot be is told by itself: without one a block is still looked through for other slips.
    can_be = read_settings(resized, found) is not None
    design = design_block(resized, names, placer, found) if can_be else None
    for problem in found:
        if problem.code in _OF_A_SIZE:
            problems.add(problem)
    return design
