"""The length of cloth: what is cut lengthwise, the strips beside it, the strips across."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from math import floor

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.cutting.cloth.effort import Effort
from blockdsl.cutting.cloth.filling import Filled, Plan, StripFilling, strip_heights
from blockdsl.cutting.cloth.greedy import greedy_plans, take
from blockdsl.cutting.cloth.layout import Layout
from blockdsl.cutting.cloth.lengthwise import LongPanel, long_panels
from blockdsl.cutting.cloth.pieces import ClothPiece, PieceSize, coarsest, is_long, merge_sizes
from blockdsl.cutting.cloth.plan import ClothPlan
from blockdsl.cutting.cloth.search import search
from blockdsl.cutting.cloth.task import Answer, Task, across_only
from blockdsl.geometry import ceil_to
from blockdsl.geometry.fraction import Fraction


class Cloth(Struct, frozen=True):
    """What is asked, in measures: the sizes to be cut across, the cloth's width, the panels of what is lengthwise."""

    sizes: tuple[PieceSize, ...]
    width: int
    panels: tuple[LongPanel, ...]

    @property
    def long_length(self) -> int:
        """Cloth that the panels take."""
        return sum(panel.height for panel in self.panels)


class Strips(Struct, frozen=True):
    """An answer: the strips beside each panel, and those across the whole width."""

    beside: tuple[Plan, ...]
    across: Plan


def shortest_length(
    pieces: Sequence[ClothPiece],
    usable_width: Fraction,
    measure: Fraction,
    effort: Effort,
    buying_step: Fraction | None,
    *,
    three_stage: bool,
) -> ClothPlan:
    """See `plan_length`."""
    measure = coarsest(pieces, measure)
    long = [line for line, piece in enumerate(pieces) if is_long(piece, usable_width)]
    short = sorted(set(range(len(pieces))).difference(long))
    panels = long_panels(pieces, long, usable_width, measure)
    sizes = merge_sizes(pieces, short, usable_width, None, measure)
    cloth = Cloth(sizes, floor(usable_width / measure), tuple(panels))
    sides = tuple((panel.beside, panel.height) for panel in panels)
    task = Task(cloth.sizes, tuple(size.count for size in cloth.sizes), cloth.width, sides)
    found, stages = search(task, starts(cloth), effort), 2
    bought = _bought((cloth.long_length + found.length) * measure, buying_step)
    if three_stage and effort is not Effort.QUICK and _bought(area_bound(cloth) * measure, buying_step) < bought:
        stacked = search(replace(task, stacked=True), [found.answer], effort)
        if _bought((cloth.long_length + stacked.length) * measure, buying_step) < bought:
            found, stages = stacked, 3
    bound = max(area_bound(cloth), cloth.long_length + found.bound)
    strips = split(found.answer, len(panels))
    layout = Layout(pieces, cloth.sizes, measure)
    laid = layout.panels(cloth.panels, strips.beside, usable_width)
    across = layout.strips(strips.across, usable_width)
    length = cloth.long_length + found.length
    return ClothPlan(usable_width, laid, across, length * measure, bound * measure, stages)


def _bought(length: Fraction, step: Fraction | None) -> Fraction:
    """Cloth bought for a length: the length itself when it is bought by no steps."""
    return length if step is None else ceil_to(length, step)


def area_bound(cloth: Cloth) -> int:
    """Cloth below which the bare area of the pieces does not fit, nor one as high as it must lie."""
    area = sum(size.area * size.count for size in cloth.sizes)
    beside = sum(panel.beside * panel.height for panel in cloth.panels)
    highest = 0 if cloth.panels else max((size.ways[0][0] for size in cloth.sizes), default=0)
    return cloth.long_length + max(-(-(area - beside) // cloth.width), highest, 0)


def starts(cloth: Cloth) -> list[Answer]:
    """Plans made in simple ways: all across, and with what goes there beside the panels."""
    counts = [size.count for size in cloth.sizes]
    answers = [across_only(plan) for plan in greedy_plans(cloth.sizes, counts, cloth.width)]
    if not cloth.panels:
        return answers
    beside = {
        (strip, side): times
        for side, panel in enumerate(cloth.panels)
        for strip, times in fill_beside(cloth.sizes, counts, panel).items()
    }
    return [*answers, *({**beside, **across_only(plan)} for plan in greedy_plans(cloth.sizes, counts, cloth.width))]


def split(answer: Answer, panels: int) -> Strips:
    """An answer by where its strips are cut."""
    plans: list[Plan] = [{} for _ in range(panels + 1)]
    for (strip, side), times in answer.items():
        plans[side][strip] = times
    return Strips(tuple(plans[:panels]), plans[panels])


def fill_beside(sizes: Sequence[PieceSize], counts: list[int], panel: LongPanel) -> Plan:
    """Strips for the cloth beside a panel, the fullest for their height first; `counts` loses what they take."""
    plan: Counter[Filled] = Counter()
    left = panel.height
    areas = [size.area for size in sizes]
    while heights := [height for height in strip_heights(sizes, counts) if height <= left]:
        filling = StripFilling(sizes, counts, areas, heights, panel.beside)
        row = max(
            range(len(heights)), key=lambda row: (Fraction(int(filling.best[row, -1]), heights[row]), heights[row])
        )
        strip = filling.strip(row)
        if not strip.counts:
            break
        times = min(left // strip.height, *(counts[place] // number for place, number in strip.counts.items()))
        plan[strip] += times
        take(counts, strip, times)
        left -= strip.height * times
    return dict(plan)
