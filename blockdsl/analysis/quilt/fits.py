"""Whether the parts of a quilt fit one another, and what would."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Final

from blockdsl.analysis.fixes import did_you_mean
from blockdsl.analysis.quilt.columns import half_depth
from blockdsl.analysis.quilt.halves import Side, can_be_halved
from blockdsl.analysis.quilt.middle import BlockHere, Here, Sashing
from blockdsl.analysis.settings import CM_IN_AN_INCH, MOST_CM
from blockdsl.diagnostics import Problems, Span, nearest_word
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.symmetry import from_turns
from blockdsl.model import BlockDesign
from blockdsl.model.lengths import about, write_size
from blockdsl.syntax import ast

MOST_BLOCKS: Final = 10_000


def are_alike(main: BlockDesign, others: Iterable[BlockDesign], span: Span, problems: Problems) -> bool:
    """Whether all blocks of a setting have one finished size; the first that has not is reported."""
    for other in others:
        if (other.unit, other.width, other.height) != (main.unit, main.width, main.height):
            size, else_size = (write_size(each.width, each.height, each.unit) for each in (main, other))
            advice = f"make all of them one size with a line `blocks {write_size(main.width, main.width, main.unit)}`"
            if main.width / main.height != other.width / other.height:
                advice = "draw one of them in the proportion of the other: a setting has places of one size"
            problems.report(
                "blocks-differ-in-size",
                span,
                help=advice,
                one=main.name,
                size=size,
                other=other.name,
                else_size=else_size,
            )
            return False
    return True


def is_square(main: BlockDesign, span: Span, problems: Problems) -> bool:
    """Whether the block can be set on point; if not it is reported."""
    if main.width == main.height:
        return True
    why = f"on point, blocks are square, and it is {write_size(main.width, main.height, main.unit)}"
    advice = "set it straight, or draw it as a square"
    problems.report("block-does-not-fit", span, name=main.name, why=why, help=advice)
    return False


def turns_fit(
    main: BlockDesign, lines: Sequence[ast.QuiltLine], rows: Sequence[Sequence[Here]], problems: Problems
) -> bool:
    """Whether no oblong block is turned by a quarter; if one is it is reported."""
    if main.width == main.height:
        return True
    turned = next((line for line in lines if isinstance(line, ast.TurnRule) and _is_quarter(line)), None)
    span = turned.span if turned else None
    if span is None and any(isinstance(h, BlockHere) and h.symmetry.swaps_sides for row in rows for h in row):
        span = next(line.span for line in lines if isinstance(line, ast.QuiltRow))
    if span is None:
        return True
    size = write_size(main.width, main.height, main.unit)
    why = f"it is {size}, and a quarter turn lays it across its place"
    advice = "turn it by half, `>>`, or mirror it, `~`"
    problems.report("block-does-not-fit", span, name=main.name, why=why, help=advice)
    return False


def _is_quarter(rule: ast.TurnRule) -> bool:
    return from_turns("".join(rule.turns)).swaps_sides


def halves_fit(
    designs: Sequence[BlockDesign], sashing: Sashing | None, *, pieced: bool, span: Span, problems: Problems
) -> bool:
    """Whether dropped columns can end in halves; what is in the way is reported."""
    main = designs[0]
    depth = half_depth((main.width, main.height), sashing)
    if depth <= 0:
        assert sashing is not None  # noqa: S101  without a sash half a block is left
        height = about(main.height, main.unit, main.measure)
        advice = f"make it narrower than {height} {main.unit}, the height of a block"
        problems.report("sash-too-wide", span, width=write_size(sashing.width, sashing.width, main.unit), help=advice)
        return False
    sides: tuple[Side, ...] = ("upper", "lower", "left", "right") if main.width == main.height else ("upper", "lower")
    for design in designs:
        if pieced and not all(can_be_halved(design, side, depth) for side in sides):
            why = "its curves or appliqué would be cut in two at the ends of the columns"
            advice = "give the halves a fabric: `fill fog`"
            problems.report("block-does-not-fit", span, name=design.name, why=why, help=advice)
            return False
    return True


def colourways_are_known(lines: Sequence[ast.QuiltLine], designs: Sequence[BlockDesign], problems: Problems) -> bool:
    """Whether some block has each colour plan that a rule names; what none has is reported."""
    known = {plan.name for design in designs for plan in design.colourways}
    complete = True
    for line in lines:
        if isinstance(line, ast.ColourwayRule) and line.name.text not in known:
            near = nearest_word(line.name.text, known)
            advice = f'did you mean "{near}"?' if near else "give the block such a `colourway` line"
            fixes = did_you_mean(line.name, near)
            problems.report(
                "name-unknown", line.name.span, kind="colourway", name=line.name.text, help=advice, fixes=fixes
            )
            complete = False
    return complete


def few_enough(places: int, span: Span, problems: Problems) -> bool:
    """Whether a quilt has no more blocks than the most that there may be."""
    if places <= MOST_BLOCKS:
        return True
    problems.report("too-many-blocks", span, found=f"{places:,}", help=f"a quilt has at most {MOST_BLOCKS:,} blocks")
    return False


def small_enough(size: tuple[Exact, Exact], main: BlockDesign, span: Span, problems: Problems) -> bool:
    """Whether a quilt is no larger than 10 m; if it is, how many blocks or how small ones would do is left to her."""
    in_cm = CM_IN_AN_INCH if main.unit == "in" else Fraction(1)
    if max(size) * in_cm <= MOST_CM:
        return True
    across, down = (about(side, main.unit, main.measure) for side in size)
    advice = f"it comes to {across} x {down} {main.unit}; 10 m are about 393 in: take fewer blocks, or smaller ones"
    problems.report("size-too-large", span, help=advice)
    return False
