"""On what squared paper a block is drawn, and at which sizes it can be measured with a ruler.

What a teacher shows a beginner: the smallest square grid that every corner of the drawing lies on, the family that
the trade counts it to by that grid, and for each finished size the cell, the smallest patch and whether the ruler
reads it all.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import gcd, lcm
from typing import Annotated, Final, Literal

from msgspec import Struct

from blockdsl.analysis.settings import USUAL_MEASURE, USUAL_SEAM
from blockdsl.cutting.resized import FinishedSize
from blockdsl.facts.blockfacts import BlockFacts, Extent, RulerUnit
from blockdsl.geometry import Exact, Surd
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import write_exact
from blockdsl.record import Count, Name, Record, says
from blockdsl.shapes import SHAPES

MOST_SQUARES: Final = 64
"""A grid of more squares across is drawn by nobody."""
SIZES: Final[dict[RulerUnit, tuple[Fraction, Fraction, Fraction]]] = {
    "in": (Fraction(3), Fraction(24), Fraction(1, 2)),
    "cm": (Fraction(8), Fraction(60), Fraction(1)),
}
"""From, to, and by how much the table of sizes goes: 3 to 24 in by halves, 8 to 60 cm by whole centimetres."""
FRIENDLY: Final[dict[RulerUnit, tuple[Fraction, Fraction]]] = {
    "in": (Fraction(1, 2), Fraction(3, 4)),
    "cm": (Fraction(1, 2), Fraction(2)),
}
"""A friendly size has all its measures on halves of an inch or centimetre, and no patch narrower than this
(3/4 in, 2 cm): our own bounds for a beginner."""
_FAMILIES: Final = {1: "four-patch", 3: "nine-patch", 9: "nine-patch", 5: "five-patch", 7: "seven-patch"}
"""Families by the odd part of the number of squares: halving a square keeps the family (common practice, no source)."""
MOST_LINES: Final = 17
"""More lines across than this, and uneven ones, are drawn by nobody."""
Kind = Literal["squares", "eight-point", "sixty degrees", "none"]


class DraftFacts(Record, frozen=True):
    """The smallest square grid that every corner of the drawing lies on.

    `eight-point` or `sixty degrees` where some corners lie on no squared paper because the drawing has 45° diamonds
    (√2) or 60° angles (√3): the lines are those through its corners then, if they are few; `none` where more squares
    than anybody draws would be needed.
    """

    kind: Kind
    squares: Annotated[tuple[Count, Count], says("Across and down.")]
    cell: Annotated[Exact | None, says("Finished side of a square, or null when the squares are not even.")]
    family: Annotated[Name, says("What the trade calls such a grid.")]
    xs: Annotated[tuple[Exact, ...], says("The places of its lines across.")]
    ys: Annotated[tuple[Exact, ...], says("The places of its lines down.")]

    @property
    def across(self) -> int:
        """How many squares lie side by side."""
        return self.squares[0]

    @property
    def down(self) -> int:
        """How many squares lie one above the other."""
        return self.squares[1]


class SizeFacts(Struct, frozen=True):
    """A block at a finished size: `cell` is None when its grid has no even cell.

    `off` is the first finished measure between the ruler's marks, None when there is none; `rooted` says that some
    pieces are measured along diagonals, which no ruler reads at any size, so that they are always cut rounded up;
    `adds_up` that this puts seams out of place at this size.
    `smallest` is the letter and finished extent of the patch with the shortest side.
    """

    finished: Extent
    unfinished: Extent
    unit: RulerUnit
    cell: Exact | None
    off: Exact | None
    rooted: bool
    smallest: tuple[str, Extent]
    friendly: bool
    adds_up: bool = False


def draft(block: BlockFacts) -> DraftFacts:
    """The smallest grid that every corner lies on."""
    width, height = block.finished
    corners = [corner for patch in block.placed for corner in patch.outline]
    xs: set[Exact] = {corner.x for corner in corners}
    ys: set[Exact] = {corner.y for corner in corners}
    if any(patch.curved is not None for patch in block.placed):
        # Ends of arcs that lie on no squared paper are found with a compass and its angles, not with lines.
        xs, ys = set(filter(_is_rational, xs)), set(filter(_is_rational, ys))
    lines_of_grid = (_running(block.columns), _running(block.heights))
    roots = "".join(write_exact(x) for x in xs | ys if isinstance(x, Surd))
    if roots:
        kind: Kind = "sixty degrees" if "r3" in roots or "r6" in roots else "eight-point"
        return _of_roots(block, kind, (sorted({*xs, 0 * width, width}), sorted({*ys, 0 * height, height})))
    step = _common([Fraction(x) for x in (*xs, *ys, width, height) if x])  # type: ignore[arg-type]  # no roots here
    across, down = int(Fraction(width) / step), int(Fraction(height) / step)  # type: ignore[arg-type]
    if max(across, down) > MOST_SQUARES:
        return DraftFacts("none", block.grid, _even(block.cell), family_of(block, "none"), *lines_of_grid)
    places = tuple(step * place for place in range(max(across, down) + 1))
    return DraftFacts(
        "squares", (across, down), step, family_of(block, "squares"), places[: across + 1], places[: down + 1]
    )


def _of_roots(block: BlockFacts, kind: Kind, places: tuple[list[Exact], list[Exact]]) -> DraftFacts:
    """The lines that its corners lie on, where they are few; else those of its own columns and rows."""
    xs, ys = (tuple(each) for each in places)
    if max(len(xs), len(ys)) > MOST_LINES:
        xs, ys = _running(block.columns), _running(block.heights)
    own = block.grid != (1, 1) and (len(xs) - 1, len(ys) - 1) == block.grid
    cell = _even(block.cell) if own else None
    return DraftFacts(kind, (len(xs) - 1, len(ys) - 1), cell, family_of(block, kind), xs, ys)


def family_of(block: BlockFacts, kind: Kind) -> str:
    """What the trade calls a block on such a grid of columns and rows, or what the grid is."""
    named = named_family(block, kind)
    if named is not None:
        return named
    across, down = block.grid
    if across != down:
        return f"oblong grid, {across} × {down}"
    if block.cell is None:
        return f"uneven grid, {len(block.columns)} × {len(block.heights)} parts"
    return f"grid of {across} × {down}"


def named_family(block: BlockFacts, kind: Kind) -> str | None:
    """The trade's name for the family of a block's grid, None where it has none. The one rule for all that say it."""
    if len(block.columns) == len(block.heights) == 1:
        shape = block.units[0].shape if len(block.units) == 1 else ""
        by_kind = {"eight-point": "eight-point design", "sixty degrees": "60° design"}
        return (SHAPES[shape].family if shape in SHAPES else "") or by_kind.get(kind, "one-patch")
    across, down = block.grid
    if across != down or block.cell is None:
        return None
    if across == 1:
        return "one-patch"
    odd = across
    while odd % 2 == 0:
        odd //= 2
    return _FAMILIES.get(odd)


def size_table(block: BlockFacts, unit: RulerUnit) -> tuple[SizeFacts, ...]:
    """The block at each size of the table in that unit, by its width."""
    first, last, step = SIZES[unit]
    count = int((last - first) / step) + 1
    drawing = draft(block)
    return tuple(at_width(block, first + step * place, unit, drawing) for place in range(count))


def at_width(block: BlockFacts, width: Exact, unit: RulerUnit, drawing: DraftFacts) -> SizeFacts:
    """The block so wide. In its own unit its own ruler reads it, in the other the usual one."""
    scale = width / block.finished[0]
    measure = block.measure if unit == block.unit else USUAL_MEASURE[unit]
    measured = {length * scale for length in _measured(block)}
    lengths = sorted(length for length in measured if isinstance(length, Fraction))
    off = next((length for length in lengths if not _falls_on(length, measure)), None)
    label, extent = min(((patch.label, patch.finished) for patch in block.patches), key=lambda found: min(found[1]))
    smallest = (extent[0] * scale, extent[1] * scale)
    halves, narrowest = FRIENDLY[unit]
    friendly = all(_falls_on(length, halves) for length in lengths) and min(smallest) >= narrowest
    cell = drawing.cell * scale if drawing.cell is not None else None
    rooted = len(lengths) < len(measured)
    finished = (width, block.finished[1] * scale)
    seam = block.seam if unit == block.unit else USUAL_SEAM[unit]
    unfinished = (finished[0] + 2 * seam, finished[1] + 2 * seam)
    adds_up = off is None and _adds_up(block, width, unit, (seam, measure))
    return SizeFacts(
        finished, unfinished, unit, cell, off, rooted, (label, smallest), friendly and not adds_up, adds_up
    )


def _adds_up(block: BlockFacts, width: Exact, unit: RulerUnit, ruler: tuple[Fraction, Fraction]) -> bool:
    """Whether rounding to the ruler puts seams out of place at a width."""
    scale = width / block.finished[0]
    if block.sewing is None or not isinstance(scale, Fraction):
        return False
    return block.sewing.adds_up(FinishedSize(scale, unit, *ruler))


def _measured(block: BlockFacts) -> Iterable[Exact]:
    """What a maker measures: the block, its units, and its patches by the sides that are not diagonals of squares.

    The long edge of a triangle or the height of one is never measured by itself.
    """
    yield from block.finished
    for unit in block.units:
        yield from unit.finished
    for patch in block.patches:
        if patch.shape in {"square", "rectangle"} or "half-square" in patch.shape:
            yield from patch.finished


def _is_rational(length: Exact) -> bool:
    return isinstance(length, Fraction)


def _falls_on(length: Fraction, measure: Fraction) -> bool:
    return (length / measure).denominator == 1


def _common(lengths: Sequence[Fraction]) -> Fraction:
    """The longest length that goes into all of them."""
    bottom = lcm(*(length.denominator for length in lengths))
    return Fraction(gcd(*(int(length * bottom) for length in lengths)), bottom)


def _running(steps: Sequence[Exact]) -> tuple[Exact, ...]:
    places: list[Exact] = [Fraction(0)]
    for step in steps:
        places.append(places[-1] + step)
    return tuple(places)


def _even(cell: Extent | None) -> Exact | None:
    return cell[0] if cell is not None and cell[0] == cell[1] else None
