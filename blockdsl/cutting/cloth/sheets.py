"""Sheets of one size, such as fat quarters: strips packed into the fewest of them."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from math import floor

from msgspec.structs import replace

from blockdsl.cutting.cloth.effort import Effort
from blockdsl.cutting.cloth.filling import Filled, Plan
from blockdsl.cutting.cloth.greedy import greedy_plans
from blockdsl.cutting.cloth.layout import Layout
from blockdsl.cutting.cloth.pieces import ClothPiece, coarsest, merge_sizes
from blockdsl.cutting.cloth.plan import CutSheet, SheetPlan
from blockdsl.cutting.cloth.sheet_filling import SheetOf, SheetTask, SheetWay, counts_of, sheet_of
from blockdsl.cutting.cloth.sheet_search import Sheets, fewest
from blockdsl.geometry.fraction import Fraction


def fewest_sheets(
    pieces: Sequence[ClothPiece],
    sheet: tuple[Fraction, Fraction],
    measure: Fraction,
    effort: Effort,
    *,
    either_way: bool,
) -> SheetPlan:
    """See `plan_sheets`."""
    measure = coarsest(pieces, measure)
    width, length = (floor(side / measure) for side in sheet)
    across = SheetWay(merge_sizes(pieces, range(len(pieces)), *sheet, measure), width, length)
    ways = (across, across.turned()) if either_way else (across,)
    task = SheetTask(ways, tuple(size.count for size in across.sizes))
    found, bound = fewest(task, simple_sheets(task), effort) if task.wanted else ({}, 0)
    layout = Layout(pieces, across.sizes, measure)
    layouts = [layout, layout.along(ways[-1].sizes)]
    laid: Counter[CutSheet] = Counter()
    for (way, strips), times in sorted(without_spare(task, found).items(), key=lambda item: (-item[1], item[0][0])):
        for _ in range(times):
            laid[_sheet(layouts[way], strips, sheet[::-1] if way else sheet, along=bool(way))] += 1
    return SheetPlan(*sheet, tuple(replace(one, times=times) for one, times in laid.items()), bound)


def _sheet(
    layout: Layout, strips: tuple[tuple[Filled, int], ...], sheet: tuple[Fraction, Fraction], *, along: bool
) -> CutSheet:
    laid = layout.strips(dict(strips), sheet[0])
    return CutSheet(laid, sheet[1] - sum((strip.height * strip.times for strip in laid), Fraction(0)), along)


def simple_sheets(task: SheetTask) -> Sheets:
    """The fewest sheets of the simple plans, packed in a simple way."""
    packed = [
        pack_strips(plan, way, lies.length)
        for way, lies in enumerate(task.ways)
        for plan in greedy_plans(lies.sizes, task.counts, lies.width)
    ]
    return min(packed, key=lambda sheets: (sum(sheets.values()), len(sheets)))


def pack_strips(plan: Plan, way: int, length: int) -> Sheets:
    """Strips put onto sheets: the highest first, each onto the sheet that it fills best."""
    left: list[int] = []
    sheets: list[list[Filled]] = []
    for strip in sorted(plan, key=lambda strip: (-strip.height, strip.sections)):
        for _ in range(plan[strip]):
            fits = [place for place, over in enumerate(left) if over >= strip.height]
            place = min(fits, key=lambda place: left[place], default=len(left))
            if place == len(left):
                left.append(length)
                sheets.append([])
            left[place] -= strip.height
            sheets[place].append(strip)
    return dict(Counter(sheet_of(way, sheet) for sheet in sheets))


def without_spare(task: SheetTask, sheets: Sheets) -> Sheets:
    """The same sheets without the pieces of which there are too many; those that come last lose them."""
    left = list(task.counts)
    kept: Counter[SheetOf] = Counter()
    for sheet in sorted(sheets, key=lambda sheet: (-sheets[sheet], sheet[0])):
        for _ in range(sheets[sheet]):
            kept[_needed(sheet, left)] += 1
    return {sheet: times for sheet, times in kept.items() if sheet[1]}


def _needed(sheet: SheetOf, left: list[int]) -> SheetOf:
    """What is still wanted of a sheet; `left` loses it."""
    counts = counts_of(sheet)
    if all(number <= left[place] for place, number in counts.items()):
        for place, number in counts.items():
            left[place] -= number
        return sheet
    strips = []
    for strip, times in sheet[1]:
        for _ in range(times):
            sections = []
            for stack, across in strip.sections:
                place = stack[0][0]
                number = min(across, left[place])
                left[place] -= number
                sections.extend([(stack, number)] if number else [])
            strips.extend([Filled(strip.height, tuple(sections))] if sections else [])
    return sheet_of(sheet[0], strips)
