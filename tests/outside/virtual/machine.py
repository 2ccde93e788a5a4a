"""The machine: piles of cloth from the cut list, one step after the other, and the block compared at the end."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Any

from shapely.geometry import box

from tests.outside.virtual.cloth import NEAR, Fault, Work, covers, grown, joined, kept, settled, sewn
from tests.outside.virtual.looks import lacking, laid_over, out_of_place
from tests.outside.virtual.methods import Made, make_by_method
from tests.outside.virtual.partial import Stretch, closed, parted
from tests.outside.virtual.piles import Piles
from tests.outside.virtual.plan import PATCH_BY_PATCH, Hand, Part, Plan, Step

Thing = tuple[str, int, str]
"""(name, step, fabric) of what a step takes."""
UNSEEN = 0.1
"""The share of a mark of the ruler that nobody measures: what is too wide may slip by as much along slanted edges."""


@dataclass(slots=True)
class Stack:
    """What a step made: alike works, and how many of them are left on the table."""

    work: Work
    hand: Hand
    left: int


def sew(plan: Plan, seen: dict[int, Work] | None = None) -> Work:
    """Sew the block from its cut list by its steps; a Fault when anything is missing, short, left over or wrong.

    `seen` takes what each step makes as it is before it is trimmed, by the step's number; of two hands the first.
    """
    piles = Piles(plan)
    table: dict[int, list[Stack]] = {}
    for step in plan.steps:
        table[step.number] = _made(step, plan, piles, table, seen)
    block = _the_block(plan, piles, table)
    piles.must_be_used_up()
    left = {number: stack.left for number, stacks in table.items() for stack in stacks if stack.left}
    if left:
        raise Fault(f"{left} of what steps made are not used")
    _measure(block, plan.placed, plan, "the block")
    (width, height), (right, bottom) = plan.finished, plan.unfinished
    edge = plan.seam - UNSEEN * plan.measure
    if not covers(block.cloth, box(-edge, -edge, width + edge, height + edge)):
        raise Fault(f"the block is smaller than {plan.unfinished}")
    if abs(width + 2 * plan.seam - right) + abs(height + 2 * plan.seam - bottom) > NEAR:
        raise Fault("the block with its allowances is not its unfinished size")
    return block


def _the_block(plan: Plan, piles: Piles, table: dict[int, list[Stack]]) -> Work:
    if not plan.steps:
        if len(plan.placed) > 1:
            raise Fault("there are no steps")
        return piles.piece_for(plan.placed[0], 1)
    (stack,) = table[plan.steps[-1].number]
    if stack.left != 1:
        raise Fault(f"the last step makes {stack.left} blocks")
    stack.left = 0
    return stack.work


def _made(
    step: Step, plan: Plan, piles: Piles, table: dict[int, list[Stack]], seen: dict[int, Work] | None
) -> list[Stack]:
    taken: Counter[Thing] = Counter()
    if sum(hand.count for hand in step.hands) != step.count:
        raise Fault(f"step {step.number} makes {step.count}, its hands do not")
    sewn_by_seam = step.method in PATCH_BY_PATCH or any(hand.parts for hand in step.hands)
    if sewn_by_seam:
        stacks = [Stack(_sewn(hand, plan, piles, table, taken), hand, hand.count) for hand in step.hands]
    else:
        made: Made = make_by_method(step, plan, piles)
        taken = made.taken
        stacks = [Stack(work, hand, hand.count) for work, hand in zip(made.works, step.hands, strict=True)]
    told: Counter[Thing] = Counter()
    for join in step.joins:
        told[join.name, join.step, join.fabric] += join.count
    if told != taken:
        raise Fault(f"step {step.number} ({step.makes}) says that it takes {dict(told)}, it took {dict(taken)}")
    for stack in stacks:
        what = f"step {step.number} ({step.makes})"
        if sewn_by_seam:
            whole = joined(patch.shape for patch in stack.hand.picture)
            stack.work = settled(stack.work, whole, plan.seam)
        if seen is not None:
            seen.setdefault(step.number, stack.work)
        drift = _measure(stack.work, stack.hand.picture, plan, what, is_measured=step.unfinished is not None)
        stack.work = replace(_trimmed(stack.work, stack.hand, plan, step), drift=drift)
    return stacks


def _sewn(hand: Hand, plan: Plan, piles: Piles, table: dict[int, list[Stack]], taken: Counter[Thing]) -> Work:
    works: list[tuple[Work, Any]] = []
    for part in hand.parts:
        taken[part.name, part.step, part.fabric] += hand.count
        works.append((_fetched(part, hand.count, piles, table), joined(patch.shape for patch in part.picture)))
    ends: list[Stretch] = []
    for stage in hand.stages:
        whole, lies = works[stage.parts[0]]
        for number, seam in zip(stage.parts[1:], stage.seams, strict=True):
            other, theirs = works[number]
            line = seam.line
            if seam.kind == "partial":
                line, later = parted(line, lies, theirs)
                ends += later
            else:
                ends = closed(ends, whole, other, theirs, plan.seam)
            whole = sewn(whole, other, line, plan.seam, (lies, theirs), seam.kind, ends_even=plan.ends_even)
            lies = joined([lies, theirs])
        works.append((whole, lies))
    if ends:
        raise Fault("the open end of a partial seam is never closed")
    used = [part for stage in hand.stages for part in stage.parts]
    if sorted(used) != list(range(len(works) - 1)):
        raise Fault(f"not all of {[part.name for part in hand.parts]} is sewn in, each once")
    return works[-1][0]


def _fetched(part: Part, count: int, piles: Piles, table: dict[int, list[Stack]]) -> Work:
    """So many of a part from the pile or the table, laid where it goes; nothing may be turned over."""
    if not part.step:
        (patch,) = part.picture
        if (patch.label, patch.fabric) != (part.name, part.fabric):
            raise Fault(f"{part.name} ({part.fabric}) shows {patch.label} ({patch.fabric})")
        return piles.piece_for(patch, count)
    found = None
    for stack in table.get(part.step, ()):
        laid = laid_over(stack.work, stack.hand.picture, part.picture) if stack.left else None
        if laid is not None and count:
            used = min(stack.left, count)
            stack.left -= used
            count -= used
            found = laid
    if found is None or count:
        raise Fault(f"{count} of {part.name} (step {part.step}) are missing, as they should lie")
    return found


def _measure(work: Work, picture: Iterable[Any], plan: Plan, what: str, *, is_measured: bool = True) -> float:
    """Large enough all round, when it has a size to measure, and every patch where the picture has it.

    Gives how far seams, and raw edges with corners, lie from their places. Before, this was only known to be no more
    than all that was slid.
    """
    patches = tuple(picture)
    whole = grown(joined(patch.shape for patch in patches), plan.seam)
    if is_measured and not covers(work.cloth, grown(whole, -UNSEEN * plan.measure)):
        raise Fault(f"{what} does not measure its unfinished size")
    drift, wrong = out_of_place(work, patches)
    if wrong:
        raise Fault(f"{what} does not look like its picture: {wrong}")
    return max(drift, lacking(work, whole))


def _trimmed(work: Work, hand: Hand, plan: Plan, step: Step) -> Work:
    """Trimmed to the size that the step tells, when it tells one; else as it is."""
    if step.unfinished is None:
        return work
    whole = joined(patch.shape for patch in hand.picture)
    left, top, right, bottom = whole.bounds
    told = sorted(side - 2 * plan.seam for side in step.unfinished)
    size = sorted((right - left, bottom - top))
    if abs(told[0] - size[0]) + abs(told[1] - size[1]) > NEAR:
        raise Fault(f"step {step.number} tells a size of {step.unfinished}, its picture has another")
    trimmed = kept(work, box(left - plan.seam, top - plan.seam, right + plan.seam, bottom + plan.seam))
    return replace(trimmed, drift=work.drift)
