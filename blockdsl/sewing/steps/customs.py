"""Seams whose pressing is settled: by the method that sews them, or by the custom of the trade for their shape."""

from __future__ import annotations

from blockdsl.model import BlockDesign
from blockdsl.sewing.making import Making
from blockdsl.sewing.methods import FOUNDATION
from blockdsl.sewing.order import Joined, Piece
from blockdsl.sewing.pressing import darker_of
from blockdsl.sewing.pressing_seams import SeamKey, UnitSeams
from blockdsl.sewing.steps.tree import Thing, Things
from blockdsl.shapes import SHAPES


def customs(
    design: BlockDesign, making: Making, things: Things, seams: UnitSeams
) -> tuple[dict[SeamKey, int], dict[SeamKey, int]]:
    """(fixed, outward): for each seam the part, 0 or 1, that it is pressed toward."""
    fixed: dict[SeamKey, int] = {}
    outward: dict[SeamKey, int] = {}
    for thing in things.all.values():
        if thing.title is None:
            continue
        if thing.by_method and making.units[thing.title].method == FOUNDATION:
            _as_on_papers(making, things, thing, seams, fixed)
            continue
        filling = making.units[thing.title].group.filling
        if filling is None:
            continue
        where = fixed if thing.by_method else outward
        base = 0 if thing.by_method and making.units[thing.title].method == "stitch and flip" else None
        own = SHAPES[filling.shape].middle
        middle = base if own is None else own
        if middle is not None:
            _outward(things, thing, thing.node.patches[middle], where)
        elif thing.by_method:
            _darker(design, things, thing, fixed)
    return fixed, outward


def _as_on_papers(making: Making, things: Things, thing: Thing, seams: UnitSeams, where: dict[SeamKey, int]) -> None:
    """On papers each seam goes toward the piece that was added, and a join toward the section with the first letter.

    What was added is the later of the pieces beside the seam: others of its part may come later still.
    """
    key = making.units[thing.key[1]].group.key
    plan = next(plan for plan in making.foundations if plan.group.key == key)
    order = {
        sewn.index: (section, turn)
        for section, each in enumerate(plan.sections)
        for turn, sewn in enumerate(each.patches)
    }
    first = thing.node.patches[0]
    for node in _inside(things, thing):
        for place, seam in enumerate(seams.of(things.frames.number_of(node))):
            before, after = ([order[patch - first] for patch in side] for side in seam.beside)
            if len({section for section, _ in (*before, *after)}) == 1:
                toward = int(max(after) > max(before))
            else:
                toward = int(min(after) < min(before))
            where[things.frames.number_of(node), place] = toward


def _outward(things: Things, thing: Thing, middle: int, where: dict[SeamKey, int]) -> None:
    for node in _inside(things, thing):
        for place in range(len(node.seams)):
            before, after = node.parts[place], node.parts[place + 1]
            if (middle in before.patches) != (middle in after.patches):
                where[things.frames.number_of(node), place] = 1 if middle in before.patches else 0


def _darker(design: BlockDesign, things: Things, thing: Thing, where: dict[SeamKey, int]) -> None:
    """Two patches joined by a method go toward the darker of them; how longer seams lie is left to their meetings."""
    value = {fabric.name: fabric.value for fabric in design.fabrics}
    values = [value[design.patches[patch].fabric] for patch in thing.node.patches]
    first = thing.node.patches[0]
    for node in _inside(things, thing):
        for place in range(len(node.seams)):
            before, after = node.parts[place], node.parts[place + 1]
            if isinstance(before, Piece) and isinstance(after, Piece):
                low, high = sorted((before.patch, after.patch))
                darker = (low, high)[darker_of(values, low - first, high - first)]
                where[things.frames.number_of(node), place] = int(darker == after.patch)


def _inside(things: Things, thing: Thing) -> list[Joined]:
    """The thing and all that is joined inside it, as in its unit's first place."""
    found, waiting = [], [thing.node]
    while waiting:
        node = waiting.pop()
        # Only first places are known by their parts; a copy's seams are those of its first place.
        if node is things.frames.units[things.frames.number_of(node)].assembly:
            found.append(node)
        waiting += [part for part in node.parts if isinstance(part, Joined)]
    return found
