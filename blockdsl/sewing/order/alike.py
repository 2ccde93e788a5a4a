"""Which parts of the block look alike, turned or in the mirror."""

from __future__ import annotations

from collections.abc import Hashable, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType

from blockdsl.geometry.symmetry import ALL_EIGHT, IDENTITY, Symmetry
from blockdsl.model import BlockDesign, Patch
from blockdsl.sewing.order.net import Net
from blockdsl.sewing.order.region import box_of

_TURNS = tuple(symmetry for symmetry in ALL_EIGHT if not symmetry.is_mirrored)
_MIRRORED = tuple(symmetry for symmetry in ALL_EIGHT if symmetry.is_mirrored)
Span = tuple[int, int]
"""The patches of a unit: its first, and the one after its last."""
Solid = Mapping[Span, str]
"""Units that come whole out of a method, and which method."""
NOTHING_SOLID: Solid = MappingProxyType({})
_Box = tuple[int, int, int, int]
_Seen = frozenset[tuple[int, int, int]]
_Cloth = tuple[str, str, tuple[bool, ...]]


@dataclass(frozen=True, slots=True)
class Likeness:
    """`turned` is the same for parts that are alike up to a turn, `either` also for mirror images."""

    turned: int
    either: int


class Looks:
    """Tells which parts of one block look alike; remembers the shapes and parts that it has seen."""

    def __init__(self, design: BlockDesign, net: Net, solid: Solid = NOTHING_SOLID) -> None:
        self._net = net
        # What comes whole out of a method is not like the same patches sewn one by one, or made by another method.
        whole = {patch: method for (first, stop), method in solid.items() for patch in range(first, stop)}
        self._cloth = [
            (patch.fabric, whole.get(place, ""), _bends(patch)) for place, patch in enumerate(design.patches)
        ]
        self._numbers: dict[Hashable, int] = {}
        self._shapes: dict[tuple[object, ...], int] = {}
        self._turned_shapes: dict[tuple[int, Symmetry], int] = {}
        self._likenesses: dict[tuple[int, ...], Likeness] = {}
        self._outlines: list[tuple[_Cloth, list[tuple[int, int]], _Box]] = []
        self._boxes: list[_Box] = []
        self._shape_of = [self._shape(patch) for patch in range(len(net.rings))]

    def _number(self, thing: Hashable) -> int:
        return self._numbers.setdefault(thing, len(self._numbers))

    def _whole_box(self, ranks: _Box) -> _Box:
        net = self._net
        return net.across[ranks[0]], net.down[ranks[1]], net.across[ranks[2]], net.down[ranks[3]]

    def _shape(self, patch: int) -> int:
        net = self._net
        box = self._whole_box(net.boxes[patch])
        self._boxes.append(box)
        corners = [(net.whole[c][0] - box[0], net.whole[c][1] - box[1]) for c in net.rings[patch]]
        key = (self._cloth[patch], *corners)
        number = self._shapes.get(key)
        if number is None:
            number = self._shapes[key] = len(self._shapes)
            size = (0, 0, box[2] - box[0], box[3] - box[1])
            self._outlines.append((self._cloth[patch], corners, size))
        return number

    def _turned_shape(self, shape: int, symmetry: Symmetry) -> int:
        """A number for the fabric and outline of a shape after turning, whichever corner comes first."""
        known = self._turned_shapes.get((shape, symmetry))
        if known is None:
            fabric, corners, box = self._outlines[shape]
            left, top = _top_left(symmetry, box)
            turned = [_apply(symmetry, corner, (left, top)) for corner in corners]
            ring = frozenset(frozenset(pair) for pair in zip(turned, [*turned[1:], turned[0]], strict=True))
            known = self._turned_shapes[shape, symmetry] = self._number((fabric, ring))
        return known

    def _seen(self, patches: Sequence[int], symmetry: Symmetry) -> list[tuple[int, int, int]]:
        """Each patch's turned shape and where it lies in the turned box of all of them."""
        left, top = _top_left(symmetry, self._whole_box(box_of(self._net, patches)))
        found = []
        for patch in patches:
            x, y = _top_left(symmetry, self._boxes[patch])
            found.append((self._turned_shape(self._shape_of[patch], symmetry), x - left, y - top))
        return found

    def likeness(self, patches: Sequence[int]) -> Likeness:
        """Numbers by which to compare these patches, taken together, with others."""
        key = tuple(patches)
        known = self._likenesses.get(key)
        if known is None:
            known = self._likenesses[key] = self._likeness(patches)
        return known

    def _likeness(self, patches: Sequence[int]) -> Likeness:
        turned = frozenset(frozenset(self._seen(patches, symmetry)) for symmetry in _TURNS)
        mirrored = frozenset(frozenset(self._seen(patches, symmetry)) for symmetry in _MIRRORED)
        return Likeness(self._number(turned), self._number(frozenset((turned, mirrored))))

    def match(self, first: Sequence[int], second: Sequence[int]) -> Match | None:
        """How the first lies as the second does, turned before mirrored; None when they are not alike."""
        there = self._seen(second, IDENTITY)
        looked_for = frozenset(there)
        by_look = dict(zip(there, second, strict=True))
        for symmetry in (*_TURNS, *_MIRRORED):
            here = self._seen(first, symmetry)
            if frozenset(here) == looked_for:
                patches = {patch: by_look[look] for patch, look in zip(first, here, strict=True)}
                return Match(symmetry, patches, self._origin(first, symmetry), self._origin(second, IDENTITY))
        return None

    def _origin(self, patches: Sequence[int], symmetry: Symmetry) -> tuple[int, int]:
        return _top_left(symmetry, self._whole_box(box_of(self._net, patches)))


@dataclass(frozen=True, slots=True)
class Match:
    """A symmetry that lays one part on another, and for each patch the one on which it comes to lie."""

    symmetry: Symmetry
    patches: Mapping[int, int]
    from_origin: tuple[int, int]
    to_origin: tuple[int, int]

    def place(self, corner: tuple[int, int]) -> tuple[int, int]:
        """Where a corner, in the net's whole numbers, comes to lie."""
        x, y = _apply(self.symmetry, corner, self.from_origin)
        return x + self.to_origin[0], y + self.to_origin[1]


def _bends(patch: Patch) -> tuple[bool, ...]:
    """Which of its bends are hollow, however it is turned; a triangle and a quarter circle have one twin between them.

    The twin's own sides say where a bend is: within one block chords that look alike belong to arcs that do.
    """
    bends = () if patch.curved is None else patch.curved.bends
    return tuple(sorted(bend.hollow for bend in bends if bend is not None))


def _apply(symmetry: Symmetry, corner: tuple[int, int], origin: tuple[int, int]) -> tuple[int, int]:
    x, y = corner
    return (
        symmetry.x_from_x * x + symmetry.x_from_y * y - origin[0],
        symmetry.y_from_x * x + symmetry.y_from_y * y - origin[1],
    )


def _top_left(symmetry: Symmetry, box: _Box) -> tuple[int, int]:
    """The top left corner of a box after the matrix alone; whole numbers of roots have no order to ask for."""
    left, top, right, bottom = box
    if symmetry.x_from_x:
        return left if symmetry.x_from_x > 0 else -right, top if symmetry.y_from_y > 0 else -bottom
    return top if symmetry.x_from_y > 0 else -bottom, left if symmetry.y_from_x > 0 else -right
