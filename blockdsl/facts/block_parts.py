"""The fabrics, patches, units and cutting list of a block as records."""

from __future__ import annotations

from msgspec import structs

from blockdsl.analysis.letters import Lettered
from blockdsl.cutting import Cut
from blockdsl.cutting.cutters import cutters_for
from blockdsl.cutting.strip_sets import strip_sets
from blockdsl.facts.blockrecord import CutFacts, FabricFacts, PlacedPatch, UnitFacts
from blockdsl.model import BlockDesign, Fabric, Patch
from blockdsl.sewing import Making, UnitClass
from blockdsl.sewing.classes import is_mirror_image


def fabric_facts(fabric: Fabric, number: int) -> FabricFacts:
    """A fabric by its number."""
    return FabricFacts(fabric.name, fabric.label, fabric.colour, fabric.value, number)


def placed_patches(design: BlockDesign, lettered: Lettered) -> tuple[PlacedPatch, ...]:
    """Every patch where it lies."""
    pairs = zip(design.patches, lettered.letters, strict=True)
    return tuple(_placed(letter, patch) for patch, letter in pairs)


def _placed(letter: str, patch: Patch) -> PlacedPatch:
    return PlacedPatch(letter, patch.fabric, patch.corners, patch.curved.bends if patch.curved else ())


def cut_facts(cuts: tuple[Cut, ...], design: BlockDesign, lettered: Lettered) -> tuple[CutFacts, ...]:
    """The lines of the cutting table."""
    return tuple(
        CutFacts(
            *structs.astuple(cut),
            purpose=f"{cut.method} {cut.unit}" if cut.unit else "patches",
            cutters=cutters_for(cut, design, lettered),
            upright=None if cut.upright_side is None else cut.cut[cut.upright_side],
        )
        for cut in cuts
    )


def unit_facts(design: BlockDesign, lettered: Lettered, making: Making) -> tuple[UnitFacts, ...]:
    """The units to make."""
    return tuple(_unit(unit, design, lettered, making) for unit in making.units)


def _unit(unit: UnitClass, design: BlockDesign, lettered: Lettered, making: Making) -> UnitFacts:
    group = unit.group
    mirrors = (place for place, other in enumerate(making.units) if is_mirror_image(group, other.group))
    allowance = 2 * design.seam
    first = group.places[0].first
    letters = lettered.letters[first : first + len(group.picture)]
    pairs = zip(group.picture, letters, strict=True)
    return UnitFacts(
        name=group.name or (group.filling.shape if group.filling else "unit"),
        title=unit.title,
        count=unit.count,
        finished=(group.width, group.height),
        unfinished=(group.width + allowance, group.height + allowance),
        method=unit.method,
        spare=unit.spare,
        picture=tuple(_placed(letter, patch) for patch, letter in pairs),
        mirror=next(iter(mirrors), None),
        also=tuple(dict.fromkeys(place.name for place in group.places if place.name and place.name != group.name)),
        shape=group.filling.shape if group.filling else "",
        strip_sets=strip_sets(group.key, making.parts, design, lettered),
    )
