"""Whether what a maker measures falls on the marks of her ruler."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import gcd, lcm

from msgspec import Struct

from blockdsl.diagnostics import Problems, Span, change_to
from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign
from blockdsl.model.lengths import write_size
from blockdsl.shapes import SHAPES
from blockdsl.syntax import ast

RECTANGLE = 4
LONGEST = 1000
"""No block is longer, be it in inches or centimetres."""
_HALF = Fraction(1, 2)


def report_sizes_off_the_ruler(design: BlockDesign, size: ast.Size | None, problems: Problems) -> None:
    """Warn when a unit or an upright patch has a finished size that the ruler does not show."""
    sizes = set(_measured_sizes(design))
    off = sorted(size for size in sizes if (size / design.measure).denominator != 1)
    if not off:
        return
    widths = _better_widths(design, sizes)
    shape = Fraction(design.height, 1) / design.width
    better = [write_size(width, width * shape, design.unit) for width in widths.near + widths.halves]
    said = None if size is None else Span(size.span.source, size.width.span.start, size.span.stop)
    fixes = tuple(change_to(said, each) for each in better) if said and design.span.source is said.source else ()
    problems.report(
        "size-off-ruler",
        design.span,
        cell=write_size(off[0], off[0], design.unit),
        measure=write_size(design.measure, design.measure, design.unit),
        help=_better_sizes(design, widths),
        fixes=fixes,
    )


class _Better(Struct, frozen=True):
    """The nearest widths at which every unit can be measured: those named first, and those with halves."""

    near: tuple[Fraction, ...]
    halves: tuple[Fraction, ...]


def _better_widths(design: BlockDesign, sizes: Iterable[Fraction]) -> _Better:
    """The nearest widths of the block at which every unit can be measured.

    Whole inches or centimetres and halves are what she draws with: others are listed only where neither of these is
    between half the block's width and twice as much.
    """
    step = _least_common([design.measure * design.width / size for size in sizes])
    if step is None:
        return _Better((), ())
    whole = [width for width in _around(design.width, step, Fraction(1)) if _is_near(width, design.width)]
    halves = [width for width in _around(design.width, step, _HALF) if _is_near(width, design.width)]
    halves = [width for width in halves if width.denominator != 1]
    near = whole or halves or _around(design.width, step, step)
    return _Better(tuple(near), tuple(halves) if whole else ())


def _better_sizes(design: BlockDesign, widths: _Better) -> str:
    """The same in words."""
    if not widths.near:
        return "no size below 10 m puts every unit on the ruler; make the columns and rows more alike"
    shape = Fraction(design.height, 1) / design.width

    def listed(found: Iterable[Fraction]) -> str:
        return " or ".join(write_size(width, width * shape, design.unit) for width in found)

    half = "half an inch" if design.unit == "in" else "half a centimetre"
    more = f"; with {half}: {listed(widths.halves)}" if widths.halves else ""
    return f"the nearest sizes at which every unit falls on the ruler: {listed(widths.near)}{more}"


def _around(width: Fraction, step: Fraction, mark: Fraction) -> list[Fraction]:
    """The multiples of the step that are multiples of the mark too, next below and next above a width."""
    common = _least_common([step, mark])
    if common is None:
        return []
    below = common * (width // common)
    return [size for size in (below, below + common) if size > 0]


def _is_near(width: Fraction, own: Fraction) -> bool:
    return own / 2 <= width <= own * 2


def _measured_sizes(design: BlockDesign) -> Iterable[Fraction]:
    """Finished widths and heights that a maker measures: the units', those of fields, the upright rectangles'."""
    for unit in design.units:
        yield from (Fraction(unit.width), Fraction(unit.height))  # type: ignore[arg-type]  # grid boxes are rational
        measured = SHAPES[unit.filling.shape].measured if unit.filling else None
        if unit.filling and measured:
            yield Fraction(measured(unit.filling, unit.width, unit.height))  # type: ignore[arg-type]
    seen: set[tuple[Exact, ...]] = set()
    for patch in design.patches:
        if _is_upright(patch.outline):
            one, _, opposite, _ = patch.outline
            size = (opposite.x - one.x, opposite.y - one.y)
            if size not in seen:
                seen.add(size)
                yield from (abs(side) for side in size if isinstance(side, Fraction))


def _is_upright(outline: Polygon) -> bool:
    """Whether it is a rectangle with level and upright sides; the first side may be either."""
    if len(outline) != RECTANGLE:
        return False
    first, second, third, fourth = outline
    if first.y == second.y:
        return (first.x, second.x, third.y) == (fourth.x, third.x, fourth.y)
    return (first.x, second.y, third.x) == (second.x, third.y, fourth.x) and first.y == fourth.y


def _least_common(steps: Sequence[Fraction]) -> Fraction | None:
    """The least length that is a whole multiple of every step; None when it is longer than any block."""
    top, bottom = steps[0].numerator, steps[0].denominator
    for step in steps[1:]:
        top, bottom = lcm(top, step.numerator), gcd(bottom, step.denominator)
        if top > LONGEST * bottom:
            return None
    return Fraction(top, bottom)
