"""Which parts of the order are a step of their own, and which are sewn on the way in the step that takes them."""

from __future__ import annotations

from collections.abc import Mapping

from msgspec import Struct, field

from blockdsl.model import BlockDesign
from blockdsl.sewing.making import Making
from blockdsl.sewing.methods import PATCH_BY_PATCH
from blockdsl.sewing.order import Assembly, Joined, Piece
from blockdsl.sewing.part_name import PartName
from blockdsl.sewing.pressing_frames import Frames
from blockdsl.shapes import SHAPES

MOST_PARTS = 9
MOST_AROUND = 5
MOST_STAGES = 5
Key = tuple[int, int]
"""One thing to make: the unit of the order, and the unit of the making whose method gives it, or one of those below."""
BY_SEAM = -1
BY_HAND = -2
"""What is sewn seam by seam, and what is sewn so of patches that are all folded round papers."""


class Thing(Struct):
    """One thing to make. `node` is it in its first place in the tree, `count` how often it is made.

    `title` is the number of the making's unit that it is, also when it is sewn seam by seam, or None. `takers` are
    the things that it is a part of. `into` is the thing in whose step it is sewn on the way.
    """

    key: Key
    node: Joined
    title: int | None
    count: int = 0
    takers: set[Key] = field(default_factory=set)
    places: list[tuple[int, ...]] = field(default_factory=list)
    into: Key | None = None

    @property
    def by_method(self) -> bool:
        """Whether it comes out of a method as a whole."""
        return self.key[1] >= 0

    @property
    def by_hand(self) -> bool:
        """Whether it is sewn of patches folded round papers."""
        return self.key[1] == BY_HAND


class Things:
    """Everything that is made, each after its parts, the block last."""

    def __init__(self, design: BlockDesign, making: Making, whole: Joined, frames: Frames) -> None:
        self.frames = frames
        self.rounds_made = find_rounds(making)
        self._title: dict[tuple[int, ...], int] = {}
        for number, unit in enumerate(making.units):
            for place in unit.group.places:
                self._title[tuple(range(place.first, place.stop))] = number
        self._method = [unit.method not in PATCH_BY_PATCH for unit in making.units]
        self._folded = {patch for first, stop in making.over_papers for patch in range(first, stop)}
        self._found: dict[Key, Thing] = {}
        self.root = self.key_of(whole)
        self._look(whole)
        self.all: Mapping[Key, Thing] = dict(sorted(self._found.items()))
        if len(design.patches) > 1:
            self._absorb()

    def key_of(self, node: Assembly) -> Key:
        """Which thing a joined node is."""
        title = self._title.get(node.patches)
        number = self.frames.number_of(node)
        if title is not None and self._method[title]:
            return number, title
        return number, BY_HAND if self._folded and self._folded.issuperset(node.patches) else BY_SEAM

    def _look(self, whole: Joined) -> None:
        """Find what is made and how often. What is made several times is sewn as in its first place every time."""
        waiting = [self.root]
        while waiting:
            key = waiting.pop()
            if key in self._found:
                continue
            node = self.frames.units[key[0]].assembly
            thing = self._found[key] = Thing(key, node, self._title.get(node.patches))
            waiting += [] if thing.by_method else [self.key_of(part) for part in node.parts if isinstance(part, Joined)]
        self._found[self.root].count = 1
        for key in sorted(self._found, reverse=True):  # what takes a part comes after it
            taker = self._found[key]
            for part in () if taker.by_method else taker.node.parts:
                if isinstance(part, Joined):
                    thing = self._found[self.key_of(part)]
                    thing.count += taker.count
                    thing.takers.add(key)
        self._find_places(whole)

    def _find_places(self, whole: Joined) -> None:
        waiting = [whole]
        while waiting:
            node = waiting.pop()
            thing = self._found.get(self.key_of(node))
            if thing is None:  # made otherwise here than in its first place
                continue
            thing.places.append(node.patches)
            if thing.title is None:
                thing.title = self._title.get(node.patches)
            if not thing.by_method:
                waiting.extend(part for part in reversed(node.parts) if isinstance(part, Joined))

    # --- what is sewn on the way -------------------------------------------------------------------

    def _absorb(self) -> None:
        for key, thing in self.all.items():
            if thing.by_method:
                continue
            inner = [self.all[self.key_of(part)] for part in thing.node.parts if isinstance(part, Joined)]
            lone = [child for child in inner if self._may_go_into(child, thing)]
            if key == self.root and not (len(inner) == 1 and lone and not self._is_row(inner[0])):
                continue
            most = MOST_AROUND if len(inner) == 1 else MOST_PARTS
            taken: list[Thing] = []
            for child in sorted(lone, key=self._parts):
                # One thing after the other, or rows side by side: more would be called "the pair" and "the other".
                if taken and any(self._stages(each) > 1 for each in (*taken, child)):
                    break
                child.into = key
                if self._parts(thing) > most or self._stages(thing) > MOST_STAGES:
                    child.into = None
                    break
                taken.append(child)

    def _may_go_into(self, child: Thing, taker: Thing) -> bool:
        if child.node.patches in self.rounds_made.names or child.by_hand != taker.by_hand:
            return False
        if not self._is_round(child) and self._is_round(taker) and any(map(self._is_round, self._takers(taker))):
            return False  # what lies in the middle is whole before a round begins, so that a step is a whole round
        return (
            not child.by_method and child.title is None and child.takers == {taker.key} and child.count == taker.count
        )

    def _takers(self, thing: Thing) -> list[Thing]:
        return [self.all[key] for key in thing.takers]

    @staticmethod
    def _is_round(thing: Thing) -> bool:
        """Whether two patches are sewn to opposite sides of what is in the middle."""
        return len(thing.node.parts) == 3 and all(isinstance(part, Piece) for part in thing.node.parts[::2])

    def _is_row(self, thing: Thing) -> bool:
        """Whether it reaches across the whole block with more than a patch's breadth beside it."""
        return len(thing.node.parts) > 3

    def _parts(self, thing: Thing) -> int:
        """How many things lie on the table for it."""
        return sum(self._parts(inner) if inner is not None else 1 for inner in self._sewn_in(thing))

    def _stages(self, thing: Thing) -> int:
        return 1 + sum(self._stages(inner) for inner in self._sewn_in(thing) if inner is not None)

    def _sewn_in(self, thing: Thing) -> list[Thing | None]:
        """For each part the thing that is sewn on the way, or None."""
        found: list[Thing | None] = []
        for part in thing.node.parts:
            inner = self.all[self.key_of(part)] if isinstance(part, Joined) else None
            found.append(inner if inner is not None and inner.into == thing.key else None)
        return found

    # --- what the steps are made of ----------------------------------------------------------------

    def is_on_the_way(self, part: Assembly, taker: Joined) -> bool:
        """Whether this part is sewn within the step that makes what takes it."""
        if isinstance(part, Piece):
            return False
        into = self.all[self.key_of(part)].into
        return into is not None and into == self.key_of(taker)

    def steps(self) -> list[Thing]:
        """The things with a step of their own, in the order of making: units by size, rows, the block.

        Units that come out of a method need nothing else and are made first.
        """
        own = [thing for thing in self.all.values() if thing.into is None and thing.key != self.root]
        rows = self.rows()
        own.sort(key=lambda thing: not thing.by_method)
        first = [thing for thing in own if thing.key not in rows]
        last = sorted((thing for thing in own if thing.key in rows), key=lambda thing: rows[thing.key][0])
        return [*first, *last, self.all[self.root]]

    def rows(self) -> dict[Key, list[int]]:
        """The unnamed parts of the block that nothing else takes, with their places among its parts, from 0."""
        found: dict[Key, list[int]] = {}
        root = self.all[self.root]
        if root.by_method:
            return found
        for place, part in enumerate(root.node.parts):
            if isinstance(part, Piece):
                continue
            thing = self.all[self.key_of(part)]
            if thing.node.patches in self.rounds_made.names:
                continue
            if thing.title is None and thing.takers == {self.root} and thing.into is None:
                found.setdefault(thing.key, []).append(place)
        return found


class Rounds(Struct, frozen=True):
    """By their patches, what there is after each round: `names` for all but the last, which is the unit itself.

    `inside` has every stage on the way too.
    """

    names: Mapping[tuple[int, ...], PartName]
    inside: frozenset[tuple[int, ...]]


def find_rounds(making: Making) -> Rounds:
    """The rounds of every unit that is sewn so, wherever it lies."""
    names: dict[tuple[int, ...], PartName] = {}
    inside: set[tuple[int, ...]] = set()
    for unit in making.units:
        for place in unit.group.places:
            shape = SHAPES[place.filling.shape] if place.filling else None
            if place.filling is None or shape is None or shape.rounds is None:
                continue
            stop = place.first + 1
            for each in shape.rounds(place.filling):
                for count in each.added:
                    stop += count
                    inside.add(tuple(range(place.first, stop)))
                if stop < place.stop:
                    names[tuple(range(place.first, stop))] = PartName(each.kind, number=str(each.number))
    return Rounds(names, frozenset(inside))
