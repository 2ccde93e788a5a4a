"""What each thing to make is called: the designer's name, the trade's, or its place."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence

from msgspec.structs import replace

from blockdsl.model import BlockDesign
from blockdsl.sewing.making import Making, UnitClass
from blockdsl.sewing.methods import CUT_PATCHES, FOUNDATION, OVER_PAPERS
from blockdsl.sewing.part_name import PartName, part_called, rows_named
from blockdsl.sewing.steps.described import described
from blockdsl.sewing.steps.tree import BY_HAND, Key, Thing, Things
from blockdsl.shapes import SHAPES

_WAYS = {
    CUT_PATCHES: "patch by patch",
    OVER_PAPERS: "over papers",
    FOUNDATION: "on papers",
    "stitch and flip": "by stitch and flip",
    "strip set": "from a strip set",
    "two at a time": "two at a time",
    "four at a time": "four at a time",
    "eight at a time": "eight at a time",
}
"""How a unit is made, after its name."""


def name_things(design: BlockDesign, making: Making, things: Things, made: Sequence[Thing]) -> dict[Key, PartName]:
    """A name for everything that is `made` in a step of its own, in that order; no two are called alike.

    The designer's name, the trade's, its number among the rows; else what it looks like or where it lies.
    """
    rows, word = things.rows(), _way_of(things)
    names: dict[Key, PartName] = {}
    nameless: list[Thing] = []
    for thing in made:
        if thing.key == things.root:
            names[thing.key] = PartName("block")
        elif thing.title is not None:
            names[thing.key] = _titled(making.units[thing.title])
        elif thing.node.patches in things.rounds_made.names:
            names[thing.key] = things.rounds_made.names[thing.node.patches]
        elif thing.key in rows and word:
            names[thing.key] = rows_named(word, [place + 1 for place in rows[thing.key]])
        else:
            nameless.append(thing)
    names = _told_apart(design, making, things, names)
    taken = set(names.values())
    for number, thing in enumerate(nameless, start=1):
        unit = PartName("unit", number=str(number))
        name = next((name for name in described(design, thing) if name not in taken), unit)
        names[thing.key] = name
        taken.add(name)
    return names


def _titled(unit: UnitClass) -> PartName:
    group = unit.group
    return part_called(group.name or (SHAPES[group.filling.shape].title if group.filling else "unit"))


def _way_of(things: Things) -> str:
    """What the parts of the block are: rows, columns, or nothing plain."""
    root = things.all[things.root].node
    if len(root.seams) != len(root.parts) - 1 or any(seam.kind != "straight" for seam in root.seams):
        return ""
    if all(seam.start.y == seam.end.y for seam in root.seams):
        return "row"
    return "column" if all(seam.start.x == seam.end.x for seam in root.seams) else ""


def row_names(things: Things) -> dict[tuple[int, ...], PartName]:
    """Each row of the block by its own number, by its patches: where several alike are made in one step."""
    word, root = _way_of(things), things.all[things.root]
    if not word:
        return {}
    places = {place for several in things.rows().values() for place in several}
    return {root.node.parts[place].patches: PartName(word, number=str(place + 1)) for place in places}


def _told_apart(
    design: BlockDesign, making: Making, things: Things, names: Mapping[Key, PartName]
) -> dict[Key, PartName]:
    """Units of one name get the way in which they are made, where that tells them apart, else their fabrics; a number.

    Names of several units of one look that are made in several ways: `goose made four at a time`.
    """
    labels = {fabric.name: fabric.label for fabric in design.fabrics}

    def look(key: Key) -> PartName:
        if names[key] not in alike:
            return names[key]
        patches = things.all[key].node.patches
        return replace(
            names[key], fabrics=tuple(dict.fromkeys(labels[design.patches[each].fabric] for each in patches))
        )

    alike = {name for name, count in Counter(names.values()).items() if count > 1}
    looks: dict[PartName, list[Key]] = {}
    for key in names:
        looks.setdefault(look(key), []).append(key)
    several = Counter(names[keys[0]] for keys in looks.values())
    told: dict[Key, PartName] = {}
    for key, name in names.items():
        same = looks[look(key)]
        ways = {_way(making, other) for other in same}
        if len(same) > 1 and len(ways) == len(same):
            plain = name if several[name] == 1 else look(key)
            told[key] = replace(plain, way=_WAYS[_way(making, key)])
        else:
            told[key] = look(key)
    seen: dict[PartName, int] = {}
    for key, name in told.items():
        seen[name] = seen.get(name, 0) + 1
        if seen[name] > 1:
            told[key] = replace(name, again=seen[name])
    return told


def _way(making: Making, key: Key) -> str:
    return making.units[key[1]].method if key[1] >= 0 else OVER_PAPERS if key[1] == BY_HAND else CUT_PATCHES


def cells_of(design: BlockDesign, thing: Thing) -> tuple[tuple[int, int, int, int], ...]:
    """The cells of the block's grid that it fills at each place: (column, row, columns, rows), from 1."""
    across, down = _lines(design.columns), _lines(design.heights)
    found = []
    for place in thing.places:
        outlines = [design.patches[patch].outline for patch in place]
        corners = [corner for outline in outlines for corner in outline]
        left, right = min(corner.x for corner in corners), max(corner.x for corner in corners)
        top, bottom = min(corner.y for corner in corners), max(corner.y for corner in corners)
        if all(x in across for x in (left, right)) and all(y in down for y in (top, bottom)):
            column, row = across.index(left), down.index(top)
            found.append((column + 1, row + 1, across.index(right) - column, down.index(bottom) - row))
    return tuple(sorted(found, key=lambda cell: (cell[1], cell[0])))


def _lines(sizes: Sequence[object]) -> list[object]:
    places: list[object] = [0]
    for size in sizes:
        places.append(places[-1] + size)  # type: ignore[operator]  # lengths add
    return places
