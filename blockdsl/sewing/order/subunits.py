"""The units in an order that are made several times, and what each is joined from."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from blockdsl.geometry import Exact, Point
from blockdsl.geometry.polygon import Polygon, translate
from blockdsl.geometry.symmetry import Turn
from blockdsl.model import BlockDesign, Patch
from blockdsl.sewing.order.alike import NOTHING_SOLID, Looks, Solid
from blockdsl.sewing.order.assembly import Assembly, Joined, Piece, SeamKind, walk
from blockdsl.sewing.order.net import Net, make_net
from blockdsl.sewing.order.region import box_of


class SubUnitPlace(Struct, frozen=True):
    """One place of a unit: the top left corner of its box there, its patches, and how it is turned there.

    What lies at a point of the block in the unit's first place lies here at the turned point, moved by `shift`.
    """

    corner: Point
    patches: tuple[int, ...]
    turn: Turn
    shift: Point


class PartOf(Struct, frozen=True):
    """A part that a unit is joined from, as in the unit's first place: a patch, or a unit by its number in the list.

    One of the two is None.
    """

    patch: int | None
    unit: int | None


class SubUnit(Struct, frozen=True):
    """Assemblies that are alike up to a turn: one unit, made once for each place.

    `width` and `height` are finished, those of the box round the unit as it lies in its first place; `picture` is its
    patches there, in the order of the place's patches, moved into that box; `outline` likewise. `joins` are its parts
    in sewing order and `kind` the hardest seam between them; `assembly` is the unit in its first place.
    `mirror_of` is the number of the unit that is its mirror image, when that comes before it. `onto_itself` are the
    turns, each with how far the block is then moved, after which the unit in its first place looks as before.
    """

    width: Exact
    height: Exact
    picture: tuple[Patch, ...]
    outline: Polygon | None
    places: tuple[SubUnitPlace, ...]
    joins: tuple[PartOf, ...]
    kind: SeamKind
    assembly: Joined
    mirror_of: int | None
    onto_itself: tuple[tuple[Turn, Point], ...] = ()

    @property
    def count(self) -> int:
        """How many are made."""
        return len(self.places)


def subunits(assembly: Assembly, design: BlockDesign, solid: Solid = NOTHING_SOLID) -> tuple[SubUnit, ...]:
    """Every unit of the order, parts before what is joined from them, the block itself last.

    Mirror images are units of their own, side by side. A block of one patch has none. `solid` as in `find_order`:
    what comes whole out of a method is no unit with the same patches sewn one by one or made by another method.
    """
    net = make_net(design)
    return _Grouping(design, net, solid).units(assembly)


class _Grouping:
    def __init__(self, design: BlockDesign, net: Net, solid: Solid) -> None:
        self._design = design
        self._net = net
        self._looks = Looks(design, net, solid)

    def units(self, assembly: Assembly) -> tuple[SubUnit, ...]:
        """Sorted so that a unit comes after its parts: by how many patches it has, then as sewn."""
        groups: dict[int, list[Joined]] = {}
        either: dict[int, int] = {}
        look_of: dict[int, int] = {}
        for node in walk(assembly):
            if isinstance(node, Joined):
                likeness = self._looks.likeness(node.patches)
                look_of[id(node)] = likeness.turned
                groups.setdefault(likeness.turned, []).append(node)
                either[likeness.turned] = likeness.either
        first: dict[int, int] = {}
        for place, look in enumerate(groups):
            first.setdefault(either[look], place)
        order = sorted(groups, key=lambda look: (len(groups[look][0].patches), first[either[look]]))
        number = {look: place for place, look in enumerate(order)}
        earliest: dict[int, int] = {}
        for look in order:
            earliest.setdefault(either[look], number[look])
        made = []
        for look in order:
            partner = earliest[either[look]]
            joins = [self._join(part, look_of, number) for part in groups[look][0].parts]
            made.append(self._unit(groups[look], joins, partner if partner < number[look] else None))
        return tuple(made)

    def _join(self, part: Assembly, look_of: dict[int, int], number: dict[int, int]) -> PartOf:
        if isinstance(part, Piece):
            return PartOf(part.patch, None)
        return PartOf(None, number[look_of[id(part)]])

    def _unit(self, nodes: Sequence[Joined], joins: Sequence[PartOf], mirror_of: int | None) -> SubUnit:
        first = nodes[0]
        left, top, right, bottom = self._box(first.patches)
        patches = [self._design.patches[patch] for patch in first.patches]
        return SubUnit(
            width=right - left,
            height=bottom - top,
            picture=tuple(patch.moved(-left, -top) for patch in patches),
            outline=None if first.outline is None else translate(first.outline, -left, -top),
            places=tuple(self._place(first, node) for node in nodes),
            joins=tuple(joins),
            kind=first.kind,
            assembly=first,
            mirror_of=mirror_of,
            onto_itself=tuple(
                (match.turn, match.shift(self._design)) for match in self._looks.onto_itself(first.patches)
            ),
        )

    def _place(self, first: Joined, node: Joined) -> SubUnitPlace:
        match = self._looks.match(first.patches, node.patches)
        left, top, _, _ = self._box(node.patches)
        assert match is not None  # noqa: S101  they were found to be alike
        return SubUnitPlace(Point(left, top), node.patches, match.turn, match.shift(self._design))

    def _box(self, patches: Sequence[int]) -> tuple[Exact, Exact, Exact, Exact]:
        left, top, right, bottom = box_of(self._net, patches)
        across, down = self._net.exact_across, self._net.exact_down
        return across[left], down[top], across[right], down[bottom]
