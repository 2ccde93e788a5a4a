"""Which things are stages of a unit that is sewn in rounds, and what those are called: `round 1` of a log cabin."""

from __future__ import annotations

from collections.abc import Mapping

from msgspec import Struct

from blockdsl.sewing.making import Making
from blockdsl.shapes import SHAPES


class Rounds(Struct, frozen=True):
    """By their patches, what there is after each round: `names` for all but the last, which is the unit itself.

    `inside` has every stage on the way too.
    """

    names: Mapping[tuple[int, ...], str]
    inside: frozenset[tuple[int, ...]]


def find_rounds(making: Making) -> Rounds:
    """The rounds of every unit that is sewn so, wherever it lies."""
    names: dict[tuple[int, ...], str] = {}
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
                    names[tuple(range(place.first, stop))] = each.name
    return Rounds(names, frozenset(inside))
