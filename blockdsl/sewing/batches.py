"""Batches: how often a method is followed for all units that are made together, and the cloth that it takes.

A batch never spans prints: of a fabric that is spread over several prints, each print's units are made for themselves,
and so is whatever else goes into the same units.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable, Iterable, Sequence
from math import ceil

from msgspec import Struct

from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.classes import UnitGroup
from blockdsl.sewing.methods import METHODS
from blockdsl.sewing.recipe import Recipe, RecipePart

Prints = tuple[tuple[str, int], ...]
"""For one copy of a block which print of each fabric it has, (fabric, number), where fabrics have several."""


class NeededPart(Struct, frozen=True):
    """Cloth that a method asks for: `count` pieces for `units` units and `spare` more.

    `becomes` is the block's patch that the piece ends as (the first of several).

    For strips `count` is strips in a set, and `segments` how many segments the sets must give, lot by lot: the sets of
    different prints are cut for themselves. `made_for` are the keys of the groups of units: two where mirror images
    come out of the same batch.
    """

    part: RecipePart
    method: str
    unit: str
    becomes: int
    count: int
    units: int
    spare: int
    segments: tuple[int, ...]
    made_for: tuple[Hashable, ...]


class BatchGroup(Struct, frozen=True):
    """A group of units and the method that makes it; `copies` are those of the block that it is in, each its prints.

    The group's places are those in one copy.
    """

    group: UnitGroup
    method: str
    copies: Sequence[Prints]


class Batches:
    """Counts batches over several groups; a unit and its mirror image that come out of one batch are counted together.

    Groups of the same key are one: a block and its mirror image in a quilt share the units that look the same.
    """

    def __init__(self, groups: Iterable[BatchGroup], trim: Fraction) -> None:
        self._trim = trim
        self._by_key: dict[Hashable, list[BatchGroup]] = {}
        for each in groups:
            self._by_key.setdefault(each.group.key, []).append(each)
        self._done: set[Hashable] = set()

    def parts_of(self, batch: BatchGroup) -> tuple[list[NeededPart], int]:
        """What the group takes, and how many units are left over. No parts, when another group's batches have it all.

        The units left over are those of all groups that share the batches.
        """
        group = batch.group
        assert group.filling is not None  # noqa: S101  only shapes have recipes
        recipe = METHODS[batch.method][group.filling.shape](group.filling, group.width, group.height, self._trim)
        handed = bool(recipe.mirrored) and not group.own_mirror
        fabrics = {part.fabric for part in recipe.parts}
        ours = self._lots(group.key, fabrics)
        theirs = self._lots(group.mirror_key, fabrics) if handed else Counter()
        each = recipe.alike if handed else recipe.alike + recipe.mirrored
        lots = list(dict.fromkeys((*ours, *theirs)))
        makings = [max(ceil(ours[lot] / each), ceil(theirs[lot] / (recipe.mirrored or 1))) for lot in lots]
        followed = sum(makings)
        wanted, others = ours.total(), theirs.total()
        spare = followed * each - wanted
        if group.key in self._done or (handed and group.mirror_key in self._done):
            return [], spare
        self._done.add(group.key)
        made = followed * (recipe.alike + recipe.mirrored)
        unused = spare + (followed * recipe.mirrored if handed and not others else 0)
        counted = _Counted(tuple(makings), wanted + others, made - wanted - others)
        return _needed(batch, recipe, counted), unused

    def _lots(self, key: Hashable, fabrics: set[str]) -> Counter[Prints]:
        """Units to be made, by the prints that go into them."""
        found: Counter[Prints] = Counter()
        for each in self._by_key.get(key, ()):
            for prints, copies in Counter(each.copies).items():
                lot = tuple((fabric, number) for fabric, number in prints if fabric in fabrics)
                found[lot] += copies * len(each.group.places)
        return found


class _Counted(Struct, frozen=True):
    """How often the method is followed in each lot, for how many units, and how many come out besides."""

    makings: tuple[int, ...]
    units: int
    spare: int


def _needed(batch: BatchGroup, recipe: Recipe, counted: _Counted) -> list[NeededPart]:
    group, followed = batch.group, sum(counted.makings)
    assert group.filling is not None  # noqa: S101  only shapes have recipes
    return [
        NeededPart(
            part=part,
            method=batch.method,
            unit=group.name or group.filling.shape,
            becomes=group.places[0].first + part.role,
            count=part.count if part.segments else part.count * followed,
            units=counted.units,
            spare=counted.spare,
            segments=tuple(part.segments * times for times in counted.makings) if part.segments else (),
            made_for=(group.key, group.mirror_key) if recipe.mirrored else (group.key,),
        )
        for part in recipe.parts
    ]
