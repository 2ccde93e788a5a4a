"""What the blocks of a quilt take when no batch may mix prints: the cloth of one print is cut, sewn and done with.

Fabrics of scraps come in prints, one for each block; blocks of the same print are made together, and so is all that
has none of these fabrics in it. Batches and strip sets are those of the virtual machine.
"""

from __future__ import annotations

from collections import Counter
from math import ceil

from blockdsl.facts import QuiltFacts
from tests.outside.virtual.methods import batch_of
from tests.outside.virtual.piles import PIECES
from tests.outside.virtual.plan import PATCH_BY_PATCH, Plan, Step, plan_of

Size = tuple[float, float]
Key = tuple[str, Size, str]
"""(fabric, size with the shorter side first, how it is cut corner to corner)"""
Prints = tuple[tuple[str, int], ...]
"""The print of each fabric of scraps, by the fabric's name."""


def key_of(fabric: str, cut: Size, subcut: str) -> Key:
    return fabric, (round(min(cut), 6), round(max(cut), 6)), subcut


def wanted(quilt: QuiltFacts) -> Counter[Key]:
    """All squares and rectangles that blocks are made of, but for strips."""
    plans = [plan_of(kind.block) for kind in quilt.kinds]
    blocks = _blocks_by_print(quilt)
    pieces: Counter[Key] = Counter()
    triangles: Counter[tuple[Key, Prints]] = Counter()
    for at, plan in enumerate(plans):
        for line in plan.cutting:
            if line.strip is None and line.purpose.split(" ")[0] in ("patches", "foundation", "stitch"):
                # what is left over in one block can serve another of the same print
                parts = line.count if line.subcut == "none" else line.yields - line.spare
                for prints, count in blocks[at].items():
                    triangles[key_of(line.fabric, line.cut, line.subcut), _of({line.fabric}, prints)] += parts * count
        for step in plan.steps:
            if step.method not in (*PATCH_BY_PATCH, "strip set", "stitch and flip", "foundation"):
                pieces.update(_batches(step, plan, blocks[at]))
    for (key, _), count in triangles.items():
        pieces[key] += ceil(count / PIECES[key[2]])
    return pieces


def _batches(step: Step, plan: Plan, blocks: Counter[Prints]) -> Counter[Key]:
    used, each = batch_of(step, plan)
    fabrics = {line.fabric for line in used}
    of_print: Counter[Prints] = Counter()
    for prints, count in blocks.items():
        of_print[_of(fabrics, prints)] += count
    found: Counter[Key] = Counter()
    for count in of_print.values():
        times = max(ceil(hand.count * count / out) for hand, out in zip(step.hands, each, strict=True))
        for line, squares in used.items():
            found[key_of(line.fabric, line.cut, line.subcut)] += squares * times
    return found


def _of(fabrics: set[str], prints: Prints) -> Prints:
    return tuple(each for each in prints if each[0] in fabrics)


def _blocks_by_print(quilt: QuiltFacts) -> list[Counter[Prints]]:
    """For each kind how many blocks of it are of which prints."""
    prints: list[dict[str, int]] = [{} for _ in quilt.placed]
    for role in quilt.scraps:
        for block, each in zip(role.blocks, role.assignment, strict=True):
            prints[block][role.role] = each
    found: list[Counter[Prints]] = [Counter() for _ in quilt.kinds]
    for place, mine in zip(quilt.placed, prints, strict=True):
        found[place.kind][tuple(sorted(mine.items()))] += 1
    return found


def short(quilt: QuiltFacts) -> dict[Key, tuple[int, int]]:
    """What the list of the quilt has too few of: (listed, wanted)."""
    listed: Counter[Key] = Counter()
    for cut in quilt.cutting:
        listed[key_of(cut.fabric, (float(cut.cut[0]), float(cut.cut[1])), cut.subcut)] += cut.count
    return {key: (listed[key], count) for key, count in wanted(quilt).items() if listed[key] < count}
