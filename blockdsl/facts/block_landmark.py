"""What shows how a whole block lies: a fabric at an edge, at a corner, in the middle of an edge, about its center.

A block that looks different turned must be laid by something that a maker sees. The first that leaves one way to lie
is taken: one landmark, then two together, at last a mark that is pinned at its top when it is made.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Mapping, Sequence
from itertools import combinations
from typing import Final, Literal

from blockdsl.cutting.sizes import Extent
from blockdsl.facts.blockrecord import AppliqueFacts, BlockRecord, PlacedPatch
from blockdsl.geometry import Point, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import bounding_box, contains, edges, is_convex
from blockdsl.geometry.sharing import share_area
from blockdsl.geometry.symmetry import HALF_TURN, QUARTER_ANTICLOCKWISE, QUARTER_CLOCKWISE, Symmetry
from blockdsl.record import Record

Where = Literal["top", "upper-right", "right", "lower-right", "bottom", "lower-left", "left", "upper-left"]
LandmarkKind = Literal["edge", "corner", "middle", "center", "mark"]
Picture = tuple[PlacedPatch, ...]
Features = Mapping[tuple[LandmarkKind, str], tuple[Where, ...]]

_SIDES: Final[tuple[Where, ...]] = ("top", "right", "bottom", "left")
_CORNERS: Final[tuple[Where, ...]] = ("upper-left", "upper-right", "lower-right", "lower-left")
_KINDS: Final[tuple[LandmarkKind, ...]] = ("edge", "corner", "middle", "center")
_NEAR: Final = Fraction(1, 200)
"""How far from its center a block is looked at, as a share of its sides."""
_MOST_PLACES: Final = 3


class BlockLandmark(Record, frozen=True, omit_defaults=True):
    """A fabric (as the quilt has it, by name) that is seen at places of a block as it lies.

    `edge`: along the whole of the sides; `corner`: at corners; `middle`: in the middles of sides; `center`: on those
    sides of the block's center. `mark`: no fabric, the note that is pinned at the top of the block when it is made.
    """

    kind: LandmarkKind
    places: tuple[Where, ...]
    fabric: str = ""


def landmarks_of(block: BlockRecord, colourway: str, lies: Symmetry) -> tuple[BlockLandmark, ...]:
    """What shows that a block lies so; nothing where it looks the same in every way that it can lie.

    `lies` takes the block as its facts have it to how it lies in the quilt.
    """
    size = block.finished
    fabrics = _fabrics(block, colourway)
    quarters = (QUARTER_CLOCKWISE, QUARTER_ANTICLOCKWISE) if size[0] == size[1] else ()
    # What looks the same after a quarter turn does so after another, and after a half turn.
    if not _looks_alike(block, fabrics, lies, lies.then(HALF_TURN)):
        others = [lies.then(turn) for turn in (*quarters[:1], HALF_TURN, *quarters[1:])]
    elif quarters and not _looks_alike(block, fabrics, lies, lies.then(QUARTER_CLOCKWISE)):
        others = [lies.then(turn) for turn in quarters]
    else:
        return ()
    here = _picture(block, fabrics, lies)
    extent = lies.turned_extent(*size)
    seen = _features(here, extent)
    unlike = [_features(_picture(block, fabrics, turn), turn.turned_extent(*size)) for turn in others]
    found = _choose(seen, unlike)
    return found or (BlockLandmark("mark", (_top_after(lies),)),)


def _choose(seen: Features, others: Sequence[Features]) -> tuple[BlockLandmark, ...]:
    """The first landmark, or the first two, that fit no other way to lie."""
    marks = [
        BlockLandmark(kind, places, fabric)
        for kind in _KINDS
        for (found, fabric), places in seen.items()
        if found == kind and len(places) <= _MOST_PLACES
    ]
    marks.sort(key=lambda mark: (_KINDS.index(mark.kind), len(mark.places)))
    fits = {
        mark: [set(mark.places) <= set(other.get((mark.kind, mark.fabric), ())) for other in others] for mark in marks
    }
    for count in (1, 2):
        for chosen in combinations(marks, count):
            if not any(all(fits[mark][place] for mark in chosen) for place in range(len(others))):
                return chosen
    return ()


def _fabrics(block: BlockRecord, colourway: str) -> dict[str, str]:
    """For each fabric of the block the one that it has in the quilt, by name."""
    plan = next((plan for plan in block.colourways if plan.name == colourway), None)
    return dict(plan.replaces) if plan is not None and colourway else {}


def _picture(block: BlockRecord, fabrics: Mapping[str, str], lies: Symmetry) -> Picture:
    return tuple(
        PlacedPatch(
            patch.label, fabrics.get(patch.fabric, patch.fabric), lies.apply_polygon(patch.outline, *block.finished)
        )
        for patch in block.placed
    )


def _looks_alike(block: BlockRecord, fabrics: Mapping[str, str], one: Symmetry, other: Symmetry) -> bool:
    """Whether the block shows the same cloth in both ways, even where its seams then lie in other places."""
    if _look(block, fabrics, one) == _look(block, fabrics, other):
        return True
    if block.appliques or not all(patch.curved is None and is_convex(patch.outline) for patch in block.placed):
        return False
    here, there = (
        [(patch, bounding_box(patch.outline)) for patch in _picture(block, fabrics, lies)] for lies in (one, other)
    )
    return not any(
        patch.fabric != under.fabric and share_area(patch.outline, box, under.outline, under_box)
        for patch, box in here
        for under, under_box in there
    )


def _look(block: BlockRecord, fabrics: Mapping[str, str], lies: Symmetry) -> frozenset[Hashable]:
    """What is seen of a block that lies so, its appliqué too."""
    pieces: tuple[PlacedPatch | AppliqueFacts, ...] = (*block.placed, *block.appliques)
    return frozenset(
        (fabrics.get(each.fabric, each.fabric), _from_least(lies.apply_polygon(each.outline, *block.finished)))
        for each in pieces
    )


def _from_least(outline: Polygon) -> Polygon:
    start = min(range(len(outline)), key=outline.__getitem__)
    return outline[start:] + outline[:start]


def _top_after(lies: Symmetry) -> Where:
    """Where the top of a block comes to be."""
    x, y = lies.apply_direction(Point(Fraction(0), Fraction(-1)))
    return ("left" if x < 0 else "right") if x else ("top" if y < 0 else "bottom")


# --- what is seen ----------------------------------------------------------------------------------


def _features(picture: Picture, extent: Extent) -> dict[tuple[LandmarkKind, str], tuple[Where, ...]]:
    """All landmarks of a block as it lies, with the places of each."""
    found: dict[tuple[LandmarkKind, str], list[Where]] = {}
    for kind, fabric, place in _seen(picture, extent):
        found.setdefault((kind, fabric), []).append(place)
    return {key: tuple(places) for key, places in found.items()}


def _seen(picture: Picture, extent: Extent) -> Iterator[tuple[LandmarkKind, str, Where]]:
    width, height = extent
    zero = Fraction(0)
    at = {
        "top": (1, zero, Point(width / 2, zero)),
        "right": (0, width, Point(width, height / 2)),
        "bottom": (1, height, Point(width / 2, height)),
        "left": (0, zero, Point(zero, height / 2)),
    }
    for side in _SIDES:
        axis, line, middle = at[side]
        along = [
            (patch.fabric, sorted((start[1 - axis], end[1 - axis])))
            for patch in picture
            for start, end in edges(patch.outline)
            if start[axis] == line and end[axis] == line
        ]
        fabrics = {fabric for fabric, _ in along}
        if len(fabrics) == 1:
            yield "edge", fabrics.pop(), side
            continue
        there = {fabric for fabric, (low, high) in along if low <= middle[1 - axis] <= high}
        if len(there) == 1:
            yield "middle", there.pop(), side
    corners = {
        "upper-left": Point(zero, zero),
        "upper-right": Point(width, zero),
        "lower-right": Point(width, height),
        "lower-left": Point(zero, height),
    }
    for place in _CORNERS:
        fabrics = {patch.fabric for patch in picture if corners[place] in patch.outline}
        if len(fabrics) == 1:
            yield "corner", fabrics.pop(), place
    across, down = width * _NEAR, height * _NEAR
    around = {
        "top": Point(width / 2, height / 2 - down),
        "right": Point(width / 2 + across, height / 2),
        "bottom": Point(width / 2, height / 2 + down),
        "left": Point(width / 2 - across, height / 2),
        "upper-left": Point(width / 2 - across, height / 2 - down),
        "upper-right": Point(width / 2 + across, height / 2 - down),
        "lower-right": Point(width / 2 + across, height / 2 + down),
        "lower-left": Point(width / 2 - across, height / 2 + down),
    }
    for place in (*_SIDES, *_CORNERS):
        there = {patch.fabric for patch in picture if contains(patch.outline, around[place])}
        if len(there) == 1:
            yield "center", there.pop(), place
