"""Which parts of the block look alike, turned or in the mirror."""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Mapping, Sequence
from itertools import chain, product
from types import MappingProxyType

from msgspec import Struct

from blockdsl.geometry import Point, Surd
from blockdsl.geometry.symmetry import ALL_EIGHT, IDENTITY, Symmetry, Turn, eighth_clockwise
from blockdsl.model import BlockDesign, Patch
from blockdsl.sewing.order.net import Net
from blockdsl.sewing.order.whole import WholeNumbers, whole_numbers

_TURNS = tuple(symmetry for symmetry in ALL_EIGHT if not symmetry.is_mirrored)
_AS_IT_LIES = Turn(IDENTITY)
_MIRRORED = tuple(symmetry for symmetry in ALL_EIGHT if symmetry.is_mirrored)
_WAYS_TURNED, _WAYS_MIRRORED = (
    tuple(tuple(Turn(symmetry, eighth) for symmetry in symmetries) for eighth in (False, True))
    for symmetries in (_TURNS, _MIRRORED)
)
"""The same after no eighth turn, and after one."""
Span = tuple[int, int]
"""The patches of a unit: its first, and the one after its last."""
Solid = Mapping[Span, str]
"""Units that come whole out of a method, and which method."""
NOTHING_SOLID: Solid = MappingProxyType({})
_Box = tuple[int, int, int, int]
_Seen = frozenset[tuple[int, int, int]]
_Cloth = tuple[str, str, tuple[bool, ...]]


class Likeness(Struct, frozen=True):
    """`turned` is the same for parts that are alike up to a turn, `either` also for mirror images.

    `is_symmetric`: some turn leaves the part looking as it did.
    """

    turned: int
    either: int
    is_symmetric: bool


class _Lying(Struct, frozen=True):
    """The block as it lies, or turned an eighth: whole numbers for its corners, and the box of each patch.

    A box is (left, top, right, bottom), as ranks in `across` and `down`: whole numbers of roots have no order.
    """

    whole: Sequence[tuple[int, int]]
    across: Sequence[int]
    down: Sequence[int]
    boxes: Sequence[_Box]

    def box(self, patches: Iterable[int]) -> _Box:
        """The box round some patches, in whole numbers."""
        lefts, tops, rights, bottoms = zip(*(self.boxes[patch] for patch in patches), strict=True)
        return (
            self.across[min(lefts)],
            self.down[min(tops)],
            self.across[max(rights)],
            self.down[max(bottoms)],
        )


class Looks:
    """Tells which parts of one block look alike; remembers the shapes and parts that it has seen.

    Where a block's corners have roots of 2, as those of an eight-pointed star, parts may be alike after an eighth turn.
    """

    def __init__(self, design: BlockDesign, net: Net, solid: Solid = NOTHING_SOLID) -> None:
        self._net = net
        # What comes whole out of a method is not like the same patches sewn one by one, or made by another method.
        whole = {patch: method for (first, stop), method in solid.items() for patch in range(first, stop)}
        self._cloth = [
            (patch.fabric, whole.get(place, ""), _bends(patch)) for place, patch in enumerate(design.patches)
        ]
        self._numbers: dict[Hashable, int] = {}
        self._shapes: dict[tuple[object, ...], int] = {}
        self._placed: dict[Turn, list[tuple[int, int, int]]] = {}
        self._turned_shapes: dict[tuple[int, Symmetry], int] = {}
        self._likenesses: dict[tuple[int, ...], Likeness] = {}
        self._outlines: list[tuple[_Cloth, list[tuple[int, int]], _Box]] = []
        self._lying = _ways_of_lying(net)
        self._boxes = [[lying.box([patch]) for patch in range(len(net.rings))] for lying in self._lying]
        self._shape_of = [
            [self._shape(patch, lying, box) for patch, box in enumerate(boxes)]
            for lying, boxes in zip(self._lying, self._boxes, strict=True)
        ]

    def _number(self, thing: Hashable) -> int:
        return self._numbers.setdefault(thing, len(self._numbers))

    def _shape(self, patch: int, lying: _Lying, box: _Box) -> int:
        corners = [(lying.whole[c][0] - box[0], lying.whole[c][1] - box[1]) for c in self._net.rings[patch]]
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

    def _seen(self, patches: Sequence[int], turn: Turn, box: _Box | None = None) -> list[tuple[int, int, int]]:
        """Each patch's turned shape and place in the turned box of all of them, which `box` is before it is turned."""
        placed = self._placed.get(turn)
        if placed is None:
            placed = self._placed[turn] = self._place_all(turn)
        left, top = _top_left(turn.symmetry, box or self._lying[turn.eighth].box(patches))
        return [(shape, x - left, y - top) for shape, x, y in [placed[patch] for patch in patches]]

    def _place_all(self, turn: Turn) -> list[tuple[int, int, int]]:
        """Of each patch of the block its turned shape and where the top left of its turned box lies."""
        symmetry = turn.symmetry
        return [
            (self._turned_shape(shape, symmetry), *_top_left(symmetry, box))
            for shape, box in zip(self._shape_of[turn.eighth], self._boxes[turn.eighth], strict=True)
        ]

    def likeness(self, patches: Sequence[int]) -> Likeness:
        """Numbers by which to compare these patches, taken together, with others."""
        key = tuple(patches)
        known = self._likenesses.get(key)
        if known is None:
            known = self._likenesses[key] = self._likeness(patches)
        return known

    def _likeness(self, patches: Sequence[int]) -> Likeness:
        boxes = [lying.box(patches) for lying in self._lying]
        turned, mirrored = (
            frozenset(
                frozenset(self._seen(patches, turn, box)) for box, way in zip(boxes, each, strict=False) for turn in way
            )
            for each in (_WAYS_TURNED, _WAYS_MIRRORED)
        )
        symmetric = len(turned) < len(_TURNS) * len(self._lying)
        return Likeness(self._number(turned), self._number(frozenset((turned, mirrored))), symmetric)

    def match(self, first: Sequence[int], second: Sequence[int]) -> Match | None:
        """How the first lies as the second does, turned before mirrored; None when they are not alike."""
        there = self._seen(second, _AS_IT_LIES)
        looked_for = frozenset(there)
        by_look = dict(zip(there, second, strict=True))
        for symmetries in (_TURNS, _MIRRORED):
            for way, symmetry in product(range(len(self._lying)), symmetries):
                turn = Turn(symmetry, bool(way))
                here = self._seen(first, turn)
                if frozenset(here) == looked_for:
                    patches = {patch: by_look[look] for patch, look in zip(first, here, strict=True)}
                    return Match(turn, patches)
        return None

    def onto_itself(self, patches: Sequence[int]) -> tuple[Match, ...]:
        """The turns after which these patches look as before, the one that turns nothing left out."""
        if not self.likeness(patches).is_symmetric:
            return ()
        there = self._seen(patches, _AS_IT_LIES)
        looked_for, by_look = frozenset(there), dict(zip(there, patches, strict=True))
        found = []
        for way, symmetry in product(range(len(self._lying)), _TURNS):
            turn = Turn(symmetry, bool(way))
            here = self._seen(patches, turn)
            if turn != _AS_IT_LIES and frozenset(here) == looked_for:
                found.append(Match(turn, {patch: by_look[look] for patch, look in zip(patches, here, strict=True)}))
        return tuple(found)


def _ways_of_lying(net: Net) -> tuple[_Lying, ...]:
    as_it_lies = _Lying(net.whole, net.across, net.down, net.boxes)
    if not any(isinstance(number, Surd) and 2 in number.roots for number in chain(*net.points)):
        return (as_it_lies,)
    turned = [eighth_clockwise(point) for point in net.points]
    numbers = whole_numbers((tuple(net.points), tuple(turned)))
    return _lying_so(net, net.points, numbers), _lying_so(net, turned, numbers)


def _lying_so(net: Net, points: Sequence[Point], numbers: WholeNumbers) -> _Lying:
    whole = [(numbers.of(point.x), numbers.of(point.y)) for point in points]
    exact_x = {x: point.x for (x, _), point in zip(whole, points, strict=True)}
    exact_y = {y: point.y for (_, y), point in zip(whole, points, strict=True)}
    across, down = sorted(exact_x, key=exact_x.__getitem__), sorted(exact_y, key=exact_y.__getitem__)
    seen, level = ({place: rank for rank, place in enumerate(each)} for each in (across, down))
    boxes = []
    for ring in net.rings:
        xs, ys = [seen[whole[corner][0]] for corner in ring], [level[whole[corner][1]] for corner in ring]
        boxes.append((min(xs), min(ys), max(xs), max(ys)))
    return _Lying(whole, across, down, boxes)


class Match(Struct, frozen=True):
    """A turn that lays one part on another, and for each patch the one on which it comes to lie."""

    turn: Turn
    patches: Mapping[int, int]

    def shift(self, design: BlockDesign) -> Point:
        """How far the turned part is then moved."""
        here, there = next(iter(self.patches.items()))
        turned = min(self.turn.apply_direction(corner) for corner in design.patches[here].outline)
        lies = min(design.patches[there].outline)
        return Point(lies.x - turned.x, lies.y - turned.y)


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
