"""Where the pieces of a block, cut on the ruler, do not come together: found by sewing their real sizes.

Parts are sewn in the order of the steps. A unit whose size the steps give is trimmed to it; all else keeps what its
pieces were rounded up by, and that adds up along a row. Two parts that meet in a seam should be equally long there.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping, Sequence
from math import inf
from typing import Final

from msgspec import Struct

from blockdsl.cutting.cutlist import Cut
from blockdsl.cutting.drift.cloth import DriftCloth, LaidPiece
from blockdsl.cutting.drift.sides import Misfit, Reach, SewnPart, SewnSide, widen
from blockdsl.cutting.resized import FinishedSize, LooseCuts
from blockdsl.geometry import Exact, Point, Polygon, sign, to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import edges, step
from blockdsl.model import BlockDesign
from blockdsl.sewing import Making
from blockdsl.sewing.order import Assembly, Joined, Piece, subunits
from blockdsl.sewing.pressing_frames import Frames
from blockdsl.sewing.steps.tree import Key, Thing, Things

NOTHING = Fraction(0)
ROOM: Final = 1e-6
"""What a first look in floats leaves for their errors, which are below 1e-10 for sums of a thousand such numbers."""


class RealSize(Struct, frozen=True):
    """What one thing to make really measures before it is trimmed, between opposite edges, finished.

    `patches` are those of its first place. `across` are the distances between parallel edges of its outline: (a step
    along the edges, as drawn, really; an average along both edges). `is_trimmed`: the steps give its size, so that it
    is trimmed to it.
    """

    patches: tuple[int, ...]
    across: tuple[tuple[Point, Exact, Exact], ...]
    is_trimmed: bool


class Drift(Struct, frozen=True):
    """Seams that do not come to lie where they should, by more than can be eased in.

    `patches` are those of the first thing, in the order of the steps, in which that shows, and `off` is how far the
    seam lies from its place that lies furthest when the thing is laid evenly and trimmed. `along` are the
    patches along the two sides of the seam at which lengths differ most, the longer side first, `lengths` their real
    lengths, finished, and `drawn` what both should be; nothing where they do not differ.
    """

    patches: tuple[int, ...]
    along: tuple[tuple[int, ...], tuple[int, ...]]
    drawn: Exact
    lengths: tuple[Exact, Exact]
    off: Exact


class DriftFinder:
    """Sews one block with pieces cut as one list after another says, at its own size or at others."""

    def __init__(self, design: BlockDesign, making: Making, letters: Sequence[str], order: Joined) -> None:
        self._design, self._making, self._letters, self._order = design, making, letters, order
        self._things: Things | None = None
        self._rough = DriftCloth(design, making, letters, rough=True)
        self._loose: LooseCuts | None = None

    def find(self, cuts: Sequence[Cut], by_template: Collection[str] = ()) -> Drift | None:
        """The first thing, by the steps, in which seams lie too far from their places; None when all lie well.

        Most blocks are let off by a look at their order alone, in which nothing is trimmed but what is named; only
        where that finds something is it sewn as its steps have it.
        """
        self._rough.cut(cuts, by_template)
        return self._exactly(cuts, by_template, None, enough=0).drift if self._may_drift() else None

    def drifts(self, cuts: Sequence[Cut], by_template: Collection[str] = (), size: FinishedSize | None = None) -> bool:
        """Whether anything would be found, at another size or with templates; in floats where that is beyond doubt."""
        self._rough.cut(cuts, by_template, size)
        if self._rough.is_exact:
            return False
        enough = float(self._rough.tolerance) + ROOM
        most = to_float(_Steps(self._rough, self._all_things(), enough=enough).most)
        if abs(most - float(self._rough.tolerance)) > ROOM:
            return most > self._rough.tolerance
        return self._exactly(cuts, by_template, size).drift is not None

    def drifts_at(self, size: FinishedSize) -> bool:
        """Whether anything would be found at another size, when all is cut in the same ways."""
        if self._loose is None:
            self._loose = LooseCuts(self._design, self._making)
        return self.drifts(self._loose.cuts(size), size=size)

    def real_sizes(self, cuts: Sequence[Cut]) -> tuple[RealSize, ...]:
        """Everything that has a step of its own and is sewn seam by seam, in the order of the steps."""
        return self._exactly(cuts, (), None).sizes

    def _may_drift(self) -> bool:
        return not self._rough.is_exact and _may_drift(self._rough, self._making, self._order)

    def _exactly(
        self, cuts: Sequence[Cut], by_template: Collection[str], size: FinishedSize | None, *, enough: float = inf
    ) -> _Steps:
        cloth = DriftCloth(self._design, self._making, self._letters)
        cloth.cut(cuts, by_template, size)
        return _Steps(cloth, self._all_things(), enough=max(enough, float(cloth.tolerance)))

    def _all_things(self) -> Things:
        if self._things is None:
            solid = self._making.made_whole | self._making.over_papers
            frames = Frames(subunits(self._order, self._design, solid))
            self._things = Things(self._design, self._making, self._order, frames)
        return self._things


# --- a look at the order ---------------------------------------------------------------------------


def _may_drift(cloth: DriftCloth, making: Making, order: Joined) -> bool:
    """Whether seams lie too far out, or nearly, when only named units are trimmed.

    In floats, whose errors are far smaller than the room that is left for them.
    """
    room = float(cloth.tolerance) - ROOM
    titles = {
        tuple(range(place.first, place.stop)): number
        for number, unit in enumerate(making.units)
        for place in unit.group.places
    }
    known: dict[tuple[int, ...], SewnPart] = {}
    for node in _nodes(cloth, titles, order):
        if any(isinstance(part, Joined) and part.patches not in known for part in node.parts) or (
            cloth.made_as_drawn.issuperset(node.patches)
        ):
            known[node.patches] = cloth.drawn(node)
            continue
        part, _ = sew(cloth, node, lambda part: known[part.patches] if isinstance(part, Joined) else cloth.piece(part))
        if is_upright(node.outline):
            part = centred(cloth, part)
            if node.patches in titles:
                part = SewnPart(cloth.trimmed(node), part.moved)
            if to_float(furthest(part)) > room:
                return True
        known[node.patches] = part
    return False


def _nodes(cloth: DriftCloth, titles: Mapping[tuple[int, ...], int], order: Joined) -> list[Joined]:
    """What is joined, each after its parts; of units that are alike the insides of one."""
    seen: set[int] = set()
    nodes: list[Joined] = []
    waiting: list[Joined] = [order]
    while waiting:
        node = waiting.pop()
        nodes.append(node)
        title = titles.get(node.patches)
        if title in seen or cloth.made_as_drawn.issuperset(node.patches):
            continue
        if title is not None and is_upright(node.outline):
            seen.add(title)
        waiting.extend(part for part in node.parts if isinstance(part, Joined))
    return nodes[::-1]


def sew(cloth: DriftCloth, node: Joined, part_of: Callable[[Assembly], SewnPart]) -> tuple[SewnPart, list[Misfit]]:
    """A node from its parts, and where parts differ in length along a seam."""
    parts = [part_of(part) for part in node.parts]
    if node.outline is not None and all(part.is_as_drawn for part in parts):
        return cloth.drawn(node), []
    whole, misfits = parts[0], []
    for seam, part in zip(node.seams, parts[1:], strict=True):
        whole, found = cloth.sewer.joined(whole, part, cloth.line(seam))
        misfits += [] if seam.kind == "curved" else found
    for start, end in node.closes:
        whole = cloth.sewer.closed(whole, cloth.point(start), cloth.point(end))
    return whole, misfits


def is_upright(outline: Polygon | None) -> bool:
    """Whether it is a rectangle with level and upright sides: its size can be measured."""
    return outline is not None and len(outline) == 4 and all(a.x == b.x or a.y == b.y for a, b in edges(outline))


def centred(cloth: DriftCloth, part: SewnPart) -> SewnPart:
    """An upright part moved so that it stands out as far on opposite sides, as it is laid to be trimmed."""
    if part.is_as_drawn:
        return part
    out: dict[tuple[int, int], Exact] = {}
    for side in part.sides:
        way = (sign(side.end.x - side.start.x), sign(side.end.y - side.start.y))
        out[way] = max(side.off, side.off_end, out.get(way, side.off))
    top, right, bottom, left = (out.get(way, NOTHING) for way in ((1, 0), (0, 1), (-1, 0), (0, -1)))
    return cloth.sewer.pushed(part, (left - right) / 2, (top - bottom) / 2)


def furthest(part: SewnPart) -> Exact:
    """How far from its place that seam lies which lies furthest."""
    return max((max(high, -low) for low, high in part.moved.values()), default=NOTHING)


def across(cloth: DriftCloth, outline: Polygon, sides: Sequence[SewnSide]) -> list[tuple[Point, Exact, Exact]]:
    """For each two parallel edges of an outline: a step along them, their distance as drawn, and really."""
    borders = list(edges(outline))
    found = []
    for place, (a, b) in enumerate(borders):
        for c, d in borders[place + 1 :]:
            apart = cloth.sewer.apart(a, b, c, d)
            if apart is not None:
                more = [
                    cloth.sewer.mean(sides, cloth.point(start), cloth.point(end)) for start, end in ((a, b), (c, d))
                ]
                found.append((step(a, b), apart, apart + more[0] + more[1]))
    return found


# --- as the steps have it --------------------------------------------------------------------------


class _Steps:
    """Every thing to make, in the order of its steps; what the steps give the size of is trimmed to it."""

    def __init__(self, cloth: DriftCloth, things: Things, *, enough: float = inf) -> None:
        """Sew all of them, or until a seam lies farther from its place than is `enough`."""
        self._cloth, self._things, self._frames = cloth, things, things.frames
        self._made: dict[Key, SewnPart] = {}
        self._worst: Misfit | None = None
        self._sewn_things: list[tuple[Joined, Sequence[SewnSide]]] = []
        self.drift: Drift | None = None
        self.most: Exact = NOTHING
        """How far the seam lies from its place that lies furthest, of all that is laid evenly and trimmed."""
        for thing in self._things.steps():
            self._made[thing.key] = self._make(thing)
            if to_float(self.most) > enough:
                break

    @property
    def sizes(self) -> tuple[RealSize, ...]:
        """What is sewn seam by seam, with its real size."""
        return tuple(
            RealSize(node.patches, tuple(across(self._cloth, node.outline, sides)), is_upright(node.outline))
            for node, sides in self._sewn_things
            if node.outline is not None
        )

    def _make(self, thing: Thing) -> SewnPart:
        node = thing.node
        if thing.by_hand or (thing.by_method and not self._cloth.is_star_from_strips(node)):
            return self._cloth.drawn(node)
        part = self._sewn(node, thing)
        if node.outline is None:
            return part
        trimmed = is_upright(node.outline)
        self._sewn_things.append((node, part.sides))
        if not trimmed:
            return part
        part = centred(self._cloth, part)
        self._judge(node, furthest(part))
        return SewnPart(self._cloth.trimmed(node), part.moved)

    def _judge(self, node: Joined, moved: Exact) -> None:
        """The first step at which seams lie out of their places; what misses most so far is told as the reason."""
        worst = self._worst
        self.most = max(self.most, moved)
        if self.drift is not None or moved <= self._cloth.tolerance:
            return
        if worst is None:
            self.drift = Drift(node.patches, ((), ()), NOTHING, (NOTHING, NOTHING), moved)
            return
        longer = 0 if worst.lengths[0] > worst.lengths[1] else 1
        along = (worst.patches[longer], worst.patches[1 - longer])
        lengths = (worst.lengths[longer], worst.lengths[1 - longer])
        self.drift = Drift(node.patches, along, worst.drawn, lengths, moved)

    def _sewn(self, node: Joined, thing: Thing) -> SewnPart:
        def part_of(part: Assembly) -> SewnPart:
            if isinstance(part, Piece):
                return self._cloth.piece(part)
            if thing.by_method or self._things.is_on_the_way(part, node):
                return self._sewn(part, thing)
            return self._fetched(part, thing)

        whole, misfits = sew(self._cloth, node, part_of)
        for misfit in misfits:
            if self._worst is None or misfit.off > self._worst.off:
                self._worst = misfit
        return whole

    def _fetched(self, part: Joined, taker: Thing) -> SewnPart:
        """What an earlier step made, as it lies in what takes it."""
        key = self._things.key_of(part)
        made = self._made[key]
        if part.outline is not None and made.is_as_drawn:
            return self._cloth.drawn(part)
        lies = self._cloth.lying((key, taker.key, part.patches[0]), lambda: self._lying(part, key, taker))
        sides = [side._replace(start=lies.corner(side.start), end=lies.corner(side.end)) for side in made.sides]
        if lies.is_mirrored:
            sides = [
                side._replace(start=side.end, end=side.start, off=side.off_end, off_end=side.off) for side in sides
            ]
        return SewnPart(sides, turned(made.moved, lies.ways))

    def _lying(self, part: Joined, key: Key, taker: Thing) -> LaidPiece:
        """How something that was made lies in what takes it."""
        placement = self._frames.within(part, taker.key[0])
        here, there = self._frames.origin(key[0]), self._frames.origin(taker.key[0])

        def corner(point: Point) -> Point:
            laid = placement.point(self._cloth.unscaled(point, here))
            return self._cloth.point(Point(laid.x + there.x, laid.y + there.y))

        ways = [placement.direction(Point(Fraction(x), Fraction(1 - x))) for x in (1, 0)]
        numbers = tuple(self._cloth.sewer.number_pair(way) for way in ways)
        return LaidPiece(corner, numbers, is_mirrored=placement.turn.symmetry.is_mirrored)


def turned(moved: Mapping[tuple[Exact, Exact], Reach], along: Sequence[Point]) -> dict[tuple[Exact, Exact], Reach]:
    """How far seams lie from their places in something that was turned, or made as its mirror image.

    `along` are where a step to the right and a step down lead then.
    """
    (a, b), (c, d) = along
    found: dict[tuple[Exact, Exact], Reach] = {}
    for (x, y), reach in moved.items():
        widen(found, (x * a + y * c, x * b + y * d), reach)
    return found
