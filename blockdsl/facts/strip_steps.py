"""The steps of a unit made of strip sets: each kind of set makes segments, which the last step joins."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import structs
from msgspec.structs import replace

from blockdsl.cutting.sizes import Extent
from blockdsl.cutting.squaring import SQUARED_AGAIN, SQUARED_FIRST
from blockdsl.facts.blockrecord import BlockRecord, FabricFacts, StripSetFacts, UnitFacts
from blockdsl.facts.stepfacts import JoinFacts, StepFacts, join_of
from blockdsl.facts.technique_example import counts_of, dark_roles
from blockdsl.geometry import ceil_to
from blockdsl.sewing.method_steps import MethodPiece
from blockdsl.sewing.method_steps.strip_sets import SetLength, StripSetUnit, joined, segments_of
from blockdsl.sewing.methods import STRIPS
from blockdsl.sewing.part_name import PartName
from blockdsl.sewing.techniques import Measures


def strip_steps(
    made: StepFacts, unit: UnitFacts, joining: Sequence[UnitFacts], block: BlockRecord
) -> tuple[StepFacts, ...]:
    """The steps before, numbered up to `made`, and `made` itself as it is sewn from their segments.

    `joining` are all units of the block whose segments are joined, in the order of the steps: sets are numbered over
    all of them; where one kind alone is cut into segments it needs no number.
    """
    units = [_set_unit(each, unit, block) for each in unit.strip_sets]
    if is_a_segment(unit):
        told, fabrics = units[0]
        told = replace(told, trimmed=_trimmed_across(unit.strip_sets[0], block))
        return (_made_by(made, taken(unit.strip_sets[0]), told, fabrics),)
    start = first_set(unit, joining)
    numbered = sum(len(each.strip_sets) for each in joining) > 1
    first = made.number - len(units)
    before = tuple(
        _segments(made, first + place, segment_name(start + place if numbered else 0), each, told, block)
        for place, (each, told) in enumerate(zip(unit.strip_sets, units, strict=True))
    )
    told, fabrics = units[0]
    told = replace(told, trimmed=_trimmed_joined(unit, block))
    join = joined(told, tuple(range(start, start + len(units))) if numbered else (), unit.count)
    joins = tuple(join_of(step.makes, step.count, step.number) for step in before)
    names = {name: part for step in (made, *before) for name, part in step.names.items()}
    return (*before, structs.replace(made, joins=joins, names=names, lesson=join.parts, fabrics=fabrics, made_by=join))


def segment_name(number: int) -> PartName:
    """The segments of a set, with the number of the set where there are several."""
    return PartName("segment of set", number=str(number)) if number else PartName("segment")


def _trimmed_across(each: StripSetFacts, block: BlockRecord) -> Extent | None:
    """What a set is trimmed to across before segments that are units are cut from it, and these as they are cut."""
    across = ceil_to(each.exact_across, block.measure)
    return (across, each.segment) if across < each.across else None


def _trimmed_joined(unit: UnitFacts, block: BlockRecord) -> Extent | None:
    """What a unit of several segments is trimmed to, where its strips or their segments were rounded up."""
    first, seams = unit.strip_sets[0], 2 * block.seam
    rows = sum(len(each.rows) for each in unit.strip_sets)
    made = first.across, rows * (first.segment - seams) + seams
    size = ceil_to(unit.unfinished[0], block.measure), ceil_to(unit.unfinished[1], block.measure)
    return size if made[0] > size[0] or made[1] > size[1] else None


def first_set(unit: UnitFacts, joining: Sequence[UnitFacts]) -> int:
    """The number of the first strip set of a unit, among all whose segments are joined."""
    place = next(place for place, each in enumerate(joining) if each is unit)
    return 1 + sum(len(each.strip_sets) for each in joining[:place])


def is_a_segment(unit: UnitFacts) -> bool:
    """Whether each segment is a unit: a set has as many segments as there are units."""
    return len(unit.strip_sets) == 1 and unit.strip_sets[0].segments == unit.count + unit.spare


def _made_by(
    made: StepFacts, joins: tuple[JoinFacts, ...], told: StripSetUnit, fabrics: tuple[FabricFacts, ...]
) -> StepFacts:
    step = segments_of(told)
    return structs.replace(made, joins=joins, lesson=step.parts, fabrics=fabrics, made_by=step)


def _segments(
    made: StepFacts,
    number: int,
    name: PartName,
    each: StripSetFacts,
    told: tuple[StripSetUnit, tuple[FabricFacts, ...]],
    block: BlockRecord,
) -> StepFacts:
    """The step that makes the segments of one kind of set."""
    seams = 2 * block.seam
    size = each.segment, each.across
    step = StepFacts(
        number=number,
        makes=name.notation,
        names={name.notation: name},
        count=each.segments,
        spare=0,
        method=STRIPS,
        joins=(),
        seam="straight",
        finished=(size[0] - seams, size[1] - seams),
        unfinished=size,
        cells=made.cells,
        hands=(),
        size=(size[0] - seams, size[1] - seams),
    )
    return _made_by(step, taken(each), *told)


def taken(each: StripSetFacts) -> tuple[JoinFacts, ...]:
    """All strips of a kind of set, each length by itself."""
    return tuple(
        join_of(letter, each.cloths.count((letter, fabric)) * length.sets, 0, fabric, "strip", (each.strip_width,))
        for length in each.lengths
        for letter, fabric in dict.fromkeys(each.cloths)
    )


def _set_unit(each: StripSetFacts, unit: UnitFacts, block: BlockRecord) -> tuple[StripSetUnit, tuple[FabricFacts, ...]]:
    """A set by the roles of its strips, one for each different cloth, and the fabrics of the roles."""
    cloths = list(dict.fromkeys(each.cloths))
    known = {fabric.name: fabric for fabric in block.fabrics}
    fabrics = tuple(known[fabric] for _, fabric in cloths)
    size = each.strip_width, each.lengths[0].length
    pieces = {role: MethodPiece(*cloth, "strip", size, each.cloths.count(cloth)) for role, cloth in enumerate(cloths)}
    measures = Measures(
        unit=block.unit,
        seam=block.seam,
        finished=unit.finished,
        cuts={role: ((piece.cut[0], piece.cut[1]), piece.count) for role, piece in pieces.items()},
        dark=dark_roles(fabrics),
        counts=counts_of(unit.shape, unit.picture),
        open_seams=block.pressing == "open",
        squared_up=(SQUARED_FIRST[block.unit], SQUARED_AGAIN[block.unit]),
    )
    roles = tuple(cloths.index(strip) for strip in each.cloths)
    return StripSetUnit(measures, pieces, roles, each.strip_width, each.segment, each.across, lengths_of(each)), fabrics


def lengths_of(each: StripSetFacts) -> tuple[SetLength, ...]:
    """How many sets there are of each length."""
    return tuple(SetLength(size.sets, size.length, size.segments, size.squared_again) for size in each.lengths)


def is_pieced_from_strips(unit: UnitFacts) -> bool:
    """Whether a unit is made of strip sets that are cut straight across."""
    return unit.method == STRIPS and all(each.angle == 90 for each in unit.strip_sets)
