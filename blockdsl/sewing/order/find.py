"""From patches to an order of sewing: taken apart from the finished block down to single patches."""

from __future__ import annotations

from collections.abc import Set as AbstractSet

from msgspec import Struct

from blockdsl.geometry import Point
from blockdsl.model import BlockDesign
from blockdsl.sewing.order.alike import NOTHING_SOLID, Looks, Match, Solid, Span
from blockdsl.sewing.order.assembly import Assembly, Unsewable, count_seams
from blockdsl.sewing.order.bends import MOST_WASTED, part_along_a_bend
from blockdsl.sewing.order.cuts import CutLine
from blockdsl.sewing.order.divide import choose_division
from blockdsl.sewing.order.dress import dress
from blockdsl.sewing.order.nesting import Nest, inside_out, nest_units, parts_of_shapes, set_atoms
from blockdsl.sewing.order.net import Net, make_net
from blockdsl.sewing.order.region import Region, look_at, reading_place
from blockdsl.sewing.order.slits import fewest_openings
from blockdsl.sewing.order.zigzags import part_in_zigzags
from blockdsl.shapes import SHAPES

MOST_PATCHES_REMEMBERED = 800


def find_order(design: BlockDesign, solid: Solid = NOTHING_SOLID) -> Assembly | Unsewable:
    """How a maker would sew the block.

    `solid` are units that come whole out of a method of their own (four geese at a time): they are never opened up,
    even where that costs a partial seam.

    Shape:  a tree whose leaves are the block's patches. Units are followed where they can be sewn by themselves;
            parts that look alike, turned or in the mirror, are sewn alike.
    Exact:  every seam is a line that the patches' own corners give; no floats.
    Errors: Unsewable with the patches that no seam parts, or those that overlap or leave a gap.
    """
    net = make_net(design)
    if net.faulty:
        return Unsewable(net.faulty)
    if not design.patches:
        return Unsewable(())
    parts = parts_of_shapes(design, net)
    nest, shapes = nest_units(design, net), nest_units(design, net, unnamed="shapes")
    found = _find(_Finder(design, net, solid, nest, parts))
    # Small units that nobody has named come first only where that costs no partial and no set-in seam.
    if nest != shapes and (isinstance(found, Unsewable) or _hardness(found)):
        other = _find(_Finder(design, net, solid, shapes, parts))
        found = other if _is_easier(other, found) else found
    if parts and isinstance(found, Unsewable):
        plain = nest_units(design, net, unnamed="none")
        found = _find(_Finder(design, net, solid, plain, frozenset()))
    return found


def _is_easier(one: Assembly | Unsewable, other: Assembly | Unsewable) -> bool:
    if isinstance(one, Unsewable) or isinstance(other, Unsewable):
        return isinstance(other, Unsewable) and not isinstance(one, Unsewable)
    return _hardness(one) < _hardness(other)


def _find(finder: _Finder) -> Assembly | Unsewable:
    whole = finder.find()
    return Unsewable(tuple(sorted(finder.stuck))) if finder.stuck else dress(finder.net, whole)


def _hardness(found: Assembly) -> int:
    """How many turns and ends of partial seams there are."""
    count = count_seams(found)
    return count.set_in + count.partial


class _Finder:
    """Takes regions apart; remembers every region it has taken apart by its look."""

    def __init__(self, design: BlockDesign, net: Net, solid: Solid, nest: Nest, parts: frozenset[Span]) -> None:
        self.net = net
        # A unit with curved seams is sewn by itself: a line along two chords is no seam.
        curved = frozenset(
            (unit.first, unit.stop)
            for unit in design.units
            if any(patch.curved for patch in design.patches[unit.first : unit.stop]) and unit.filling is not None
        )
        self._solid = frozenset(solid) | curved | parts
        self._looks = Looks(design, net, solid)
        self._nest = nest
        self._nests = {(each.atom, len(each.patches)): each for each in inside_out(nest)}
        self._added_last = added_last(design)
        self._atom = list(range(len(design.patches)))
        self._known: dict[int, CutLine] = {}
        self._measured: dict[tuple[int, object], CutLine | None] = {}
        self._design = design
        self._corners: dict[Point, int] = {}
        self.stuck: set[int] = set()

    def find(self) -> CutLine:
        """The whole block, units first, so that what looks like a unit elsewhere is sewn as the unit is."""
        whole = CutLine([])
        for nest in inside_out(self._nest):
            whole = CutLine(list(nest.patches))
            set_atoms(nest, self._atom)
            self._take_apart(whole)
        return whole

    def _take_apart(self, whole: CutLine) -> None:
        """Fill in all parts. What is open at a place stays open for its parts: those come with their places."""
        waiting: list[tuple[CutLine, frozenset[int]]] = [(whole, frozenset())]
        while waiting:
            cut, opened = waiting.pop()
            if len(cut.patches) == 1 or self._recall(cut, opened):
                continue
            self._part(cut, opened)
            waiting.extend((part, opened | cut.opened) for part in reversed(cut.parts))

    def _part(self, cut: CutLine, opened: frozenset[int]) -> None:
        region = self._seen(cut, opened)
        first, stop = cut.patches[0], cut.patches[-1] + 1
        count = self._added_last.get((first, stop), 0)
        if count and not opened and stop - first == len(cut.patches):
            cut.parts = self._in_rounds(cut.patches, count)
            return
        division = choose_division(region, self._looks)
        if division is None:
            region = self._dissolved(cut, opened)
            division = choose_division(region, self._looks)
        if division is not None:
            cut.parts = [CutLine(part) for part in division.parts]
            return
        found = part_the_hard_way(region, self._looks)
        if found is None and self._units_in(cut):
            while units := self._units_in(cut):
                for unit in units:
                    set_atoms(unit, self._atom)
            found = part_the_hard_way(look_at(self.net, cut.patches, self._atom, opened), self._looks)
        if found is None:
            self.stuck.update(cut.patches)
            return
        cut.opened, cut.bent = found.opened, found.bent
        cut.parts = [CutLine(part) for part in found.parts]

    def _in_rounds(self, patches: list[int], count: int) -> list[CutLine]:
        """What there was before and the `count` patches that were added to it last, in reading order."""
        before, *added = patches[:-count], *([patch] for patch in patches[-count:])
        first, last = (before, *added) if count == 1 else added
        if reading_place(self.net, last) < reading_place(self.net, first):
            first, last = last, first
        return [CutLine(part) for part in ((first, last) if count == 1 else (first, before, last))]

    def _seen(self, cut: CutLine, opened: AbstractSet[int]) -> Region:
        """The region, after a unit that is all of it has been opened up."""
        while True:
            first = cut.patches[0]
            nest = self._nests.get((first, len(cut.patches)))
            if nest is None or any(self._atom[patch] != first for patch in cut.patches):
                return look_at(self.net, cut.patches, self._atom, opened)
            set_atoms(nest, self._atom)

    # --- units that stand in the way ---------------------------------------------------------------

    def _dissolved(self, cut: CutLine, opened: AbstractSet[int]) -> Region:
        """The region with as few units opened up as let a line lead across; as it was, when none does."""
        units = self._units_in(cut)
        for unit in units:
            set_atoms(unit, self._atom)
            region = look_at(self.net, cut.patches, self._atom, opened)
            if choose_division(region, self._looks) is not None:
                return region
            for patch in unit.patches:
                self._atom[patch] = unit.atom
        before = list(self._atom)
        while units:
            for unit in units:
                set_atoms(unit, self._atom)
            region = look_at(self.net, cut.patches, self._atom, opened)
            if choose_division(region, self._looks) is not None:
                return region
            units = self._units_in(cut)
        self._atom[:] = before
        return look_at(self.net, cut.patches, self._atom, opened)

    def _units_in(self, cut: CutLine) -> list[Nest]:
        """The units that lie in the region, are kept whole so far, and may be opened up."""
        counts: dict[int, int] = {}
        for patch in cut.patches:
            counts[self._atom[patch]] = counts.get(self._atom[patch], 0) + 1
        return [
            self._nests[first, count]
            for first, count in counts.items()
            if count > 1 and (first, first + count) not in self._solid
        ]

    # --- what has been seen before -----------------------------------------------------------------

    def _recall(self, cut: CutLine, opened: AbstractSet[int]) -> bool:
        """Take the region apart as one that looks like it; else remember it under its look."""
        if len(cut.patches) > MOST_PATCHES_REMEMBERED or (opened and self._has_open_seam(cut, opened)):
            return False
        known = self._first_like(cut)
        if known is cut:
            return False
        match = self._looks.match(known.patches, cut.patches)
        if match is None:
            return False
        self._copy(known, cut, match)
        return True

    def _first_like(self, cut: CutLine) -> CutLine:
        """The first region seen that looks like this one; looks are asked only of regions of one measure."""
        measure = len(cut.patches), sum(self.net.areas[patch] for patch in cut.patches)
        lone = self._measured.setdefault(measure, cut)
        if lone is cut:
            return cut
        if lone is not None:
            self._measured[measure] = None
            self._known[self._looks.likeness(lone.patches).either] = lone
        return self._known.setdefault(self._looks.likeness(cut.patches).either, cut)

    def _has_open_seam(self, cut: CutLine, opened: AbstractSet[int]) -> bool:
        inside = frozenset(cut.patches)
        return any(self.net.left[side] in inside and self.net.right[side] in inside for side in opened)

    def _copy(self, known: CutLine, cut: CutLine, match: Match) -> None:
        pairs = [(known, cut)]
        while pairs:
            there, here = pairs.pop()
            here.opened = frozenset(self._side_at(side, match) for side in there.opened)
            here.bent = there.bent
            here.parts = [CutLine(sorted(match.patches[patch] for patch in part.patches)) for part in there.parts]
            pairs.extend(zip(there.parts, here.parts, strict=True))
            if not here.bent and here.parts and self._is_backwards(here):
                here.parts.reverse()

    def _is_backwards(self, cut: CutLine) -> bool:
        first, last = (reading_place(self.net, cut.parts[end].patches) for end in (0, -1))
        return last < first

    def _side_at(self, side: int, match: Match) -> int:
        net = self.net
        if not self._corners:
            self._corners = {point: corner for corner, point in enumerate(net.points)}
        shift = match.shift(self._design)
        turned = (match.turn.apply_direction(net.points[end]) for end in (net.start[side], net.end[side]))
        one, other = (self._corners[Point(place.x + shift.x, place.y + shift.y)] for place in turned)
        found = net.side_of.get((one, other))
        return net.side_of[other, one] if found is None else found


def added_last(design: BlockDesign) -> dict[Span, int]:
    """For each thing that there is on the way, by its first patch and the one after its last: how many came last."""
    found: dict[Span, int] = {}
    for unit in design.units:
        shape = SHAPES[unit.filling.shape] if unit.filling else None
        if unit.filling is None or shape is None or shape.rounds is None:
            continue
        stop = unit.first + 1
        for each in shape.rounds(unit.filling):
            for count in each.added:
                stop += count
                found[unit.first, stop] = count
    return found


class HardParting(Struct, frozen=True):
    """The parts, the sides of partial seams that are closed when these parts are joined, and whether one is set in."""

    parts: list[list[int]]
    opened: frozenset[int]
    bent: bool


def part_the_hard_way(region: Region, looks: Looks) -> HardParting | None:
    """Part the region with set-in seams where seams meet in a Y, else with partial ones; None when nothing helps."""
    opened: frozenset[int] = frozenset()
    here = region
    while True:
        division = choose_division(here, looks)
        parts = division.parts if division else part_in_zigzags(here) or part_along_a_bend(here, wasted=0)
        if parts:
            return HardParting(parts, opened, bent=division is None)
        more = fewest_openings(here)
        if more is None:
            break
        opened |= more
        here = look_at(region.net, region.patches, region.atom, region.opened | opened)
    for wasted in range(1, MOST_WASTED + 1):
        parts = part_along_a_bend(region, wasted=wasted)
        if parts:
            return HardParting(parts, frozenset(), bent=True)
    return None
