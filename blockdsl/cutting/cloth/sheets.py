"""Sheets of one size, such as fat quarters: strips packed into the fewest of them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from fractions import Fraction
from math import floor

from blockdsl.cutting.cloth.effort import Effort
from blockdsl.cutting.cloth.filling import Filled, Plan
from blockdsl.cutting.cloth.greedy import greedy_plans
from blockdsl.cutting.cloth.layout import Layout
from blockdsl.cutting.cloth.pieces import ClothPiece, coarsest, merge_sizes
from blockdsl.cutting.cloth.plan import Sheet, SheetPlan

SheetOf = tuple[tuple[Filled, int], ...]
"""What is cut from one sheet: strips, and how often each."""


def fewest_sheets(
    pieces: Sequence[ClothPiece], sheet: tuple[Fraction, Fraction], measure: Fraction, effort: Effort
) -> SheetPlan:
    """See `plan_sheets`."""
    measure = coarsest(pieces, measure)
    width, length = (floor(side / measure) for side in sheet)
    sizes = merge_sizes(pieces, range(len(pieces)), *sheet, measure)
    counts = [size.count for size in sizes]
    packed = min(
        (pack_strips(plan, length) for plan in greedy_plans(sizes, counts, width)),
        key=lambda packed: (sum(packed.values()), len(packed)),
    )
    bound = -(-sum(size.area * size.count for size in sizes) // (width * length))
    layout = Layout(pieces, sizes, measure)
    sheets = Counter(_sheet(layout, strips, sheet) for strips in packed for _ in range(packed[strips]))
    return SheetPlan(*sheet, tuple(Sheet(one.strips, one.left, times) for one, times in sheets.items()), bound)


def _sheet(layout: Layout, strips: SheetOf, sheet: tuple[Fraction, Fraction]) -> Sheet:
    laid = layout.strips(dict(strips), sheet[0])
    return Sheet(laid, sheet[1] - sum((strip.height * strip.times for strip in laid), Fraction(0)))


def pack_strips(plan: Plan, length: int) -> dict[SheetOf, int]:
    """Strips put onto sheets: the highest first, each onto the sheet that it fills best."""
    left: list[int] = []
    sheets: list[Counter[Filled]] = []
    for strip in sorted(plan, key=lambda strip: (-strip.height, strip.sections)):
        for _ in range(plan[strip]):
            fits = [place for place, over in enumerate(left) if over >= strip.height]
            place = min(fits, key=lambda place: left[place], default=len(left))
            if place == len(left):
                left.append(length)
                sheets.append(Counter())
            left[place] -= strip.height
            sheets[place][strip] += 1
    return dict(
        Counter(tuple(sorted(sheet.items(), key=lambda item: (-item[0].height, item[0].sections))) for sheet in sheets)
    )
