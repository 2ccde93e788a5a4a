"""Which units of a block are the same unit: alike up to turning; mirror images are not."""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Sequence
from functools import lru_cache

from msgspec import Struct, field
from msgspec.structs import replace

from blockdsl.geometry import Exact, Point, Polygon
from blockdsl.geometry.symmetry import (
    IDENTITY,
    MIRROR,
    QUARTER_ANTICLOCKWISE,
    QUARTER_CLOCKWISE,
    Symmetry,
)
from blockdsl.model import BlockDesign, Patch, ShapeUse, UnitPlace

HALF_TURN = QUARTER_CLOCKWISE.then(QUARTER_CLOCKWISE)
TURNS = (IDENTITY, QUARTER_CLOCKWISE, HALF_TURN, QUARTER_ANTICLOCKWISE)
Picture = tuple[Patch, ...]
MOST_COMPARED = 2_000
"""Units of more patches are the same only when they have the same name: nobody draws such a unit twice, and
comparing pictures level by level through deep nests of them would take seconds.
"""


class UnitGroup(Struct):
    """Units that are alike up to turning. `width`, `height` and `picture` are of the unit as drawn, before turning.

    `mirrored` says that the group is the mirror image of what its words draw; `own_mirror` that its mirror
    image is itself, turned.
    """

    key: Hashable
    mirror_key: Hashable
    name: str | None
    filling: ShapeUse | None
    width: Exact
    height: Exact
    picture: Picture
    mirrored: bool
    places: list[UnitPlace] = field(default_factory=list)

    @property
    def own_mirror(self) -> bool:
        """Whether the unit looks the same in the mirror."""
        return self.key == self.mirror_key


def is_mirror_image(one: UnitGroup, other: UnitGroup) -> bool:
    """Whether two groups are each other's mirror image; a unit that looks the same in the mirror has none."""
    return not one.own_mirror and one.mirror_key == other.key


def group_units(design: BlockDesign) -> tuple[UnitGroup, ...]:
    """All units of a block, grouped, in reading order of their first places."""
    groups: dict[Hashable, UnitGroup] = {}
    known: dict[Hashable, Hashable] = {}
    for place in _innermost(design.units):
        look = (place.name, place.filling, place.width, place.height, place.symmetry.is_mirrored)
        if look not in known:
            group = _group(design, place)
            known[look] = group.key
            before = groups.setdefault(group.key, group)
            before.name = before.name or group.name
        groups[known[look]].places.append(place)
    return tuple(groups.values())


def _innermost(places: Sequence[UnitPlace]) -> Iterable[UnitPlace]:
    """A unit that holds nothing but one other is that other: sewn once, under the name that it has or else is given."""
    found: dict[tuple[int, int], UnitPlace] = {}
    for place in places:
        around = found.get((place.first, place.stop))
        found[place.first, place.stop] = place if place.name or not around else replace(place, name=around.name)
    return found.values()


def _group(design: BlockDesign, place: UnitPlace) -> UnitGroup:
    across, down = place.symmetry.turned_extent(place.width, place.height)
    mirrored = place.symmetry.is_mirrored
    # Turned back to how it was drawn; a mirrored one is drawn as the mirror image of its words.
    back = place.symmetry.inverse.then(MIRROR) if mirrored else place.symmetry.inverse
    picture = tuple(
        patch.moved(-place.x, -place.y).turned(back, across, down) for patch in design.patches[place.first : place.stop]
    )
    width, height = place.width, place.height
    # What is drawn patch by patch is sewn patch by patch, even where a shape of the language looks the same.
    patch_by_patch = place.filling is None
    if len(picture) > MOST_COMPARED:
        looks: tuple[Hashable, Hashable] = (place.name, mirrored), (place.name, not mirrored)
    else:
        looks = _keys(picture, width, height)
    keys = (patch_by_patch, looks[0]), (patch_by_patch, looks[1])
    return UnitGroup(*keys, place.name, place.filling, width, height, picture, mirrored)


@lru_cache(maxsize=4096)
def _keys(picture: Picture, width: Exact, height: Exact) -> tuple[Hashable, Hashable]:
    """Keys of a picture and of its mirror image; the same few units come again in every block."""
    return picture_key(picture, width, height), picture_key(_mirror(picture, width, height), width, height)


def _mirror(picture: Picture, width: Exact, height: Exact) -> Picture:
    return tuple(patch.turned(MIRROR, width, height) for patch in picture)


def picture_key(picture: Picture, width: Exact, height: Exact) -> Hashable:
    """The same for pictures that are alike up to turning, and for no others."""
    return min(_seen(picture, turn, width, height) for turn in TURNS)


def _seen(picture: Picture, turn: Symmetry, width: Exact, height: Exact) -> tuple[object, ...]:
    turned = [patch.turned(turn, width, height) for patch in picture]
    patches = sorted((patch.fabric, _from_least_corner(patch.outline), bends_of(patch)) for patch in turned)
    return (*turn.turned_extent(width, height), *patches)


def bends_of(patch: Patch) -> tuple[tuple[Point, Exact, bool], ...]:
    """The circles that a patch bends along, in an order of their own: twins alike that bend alike are alike."""
    bends = () if patch.curved is None else patch.curved.bends
    return tuple(sorted((bend.centre, bend.radius, bend.hollow) for bend in bends if bend is not None))


def _from_least_corner(outline: Polygon) -> Polygon:
    start = min(range(len(outline)), key=outline.__getitem__)
    return outline[start:] + outline[:start]
