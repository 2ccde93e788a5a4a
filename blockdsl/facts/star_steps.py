"""The steps of a star of strip sets: a set for each row, large diamonds, pairs, quarters, halves, the star."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from msgspec.structs import replace

from blockdsl.cutting.sizes import Extent
from blockdsl.facts.blockrecord import BlockRecord, CutFacts, FabricFacts, StripSetFacts, UnitFacts
from blockdsl.facts.stepfacts import JoinFacts, MethodStep, StepFacts, join_of
from blockdsl.facts.strip_steps import lengths_of, segment_name, taken
from blockdsl.facts.technique_example import dark_roles
from blockdsl.sewing.method_steps import MethodPiece, star_sets
from blockdsl.sewing.method_steps.star_sets import HALF, HALF_GROUND, PAIR, StarUnit
from blockdsl.sewing.method_steps.strip_sets import StripSetUnit
from blockdsl.sewing.methods import STRIPS
from blockdsl.sewing.part_name import PartName
from blockdsl.sewing.techniques import Measures
from blockdsl.sewing.techniques.measures import ROOT_TWO
from blockdsl.sewing.techniques.scene import SceneCloth
from blockdsl.shapes.star45 import POINTS


def is_star_of_strips(unit: UnitFacts) -> bool:
    """Whether a unit is a star whose rows are cut from strip sets at 45°."""
    return unit.method == STRIPS and any(each.angle != 90 for each in unit.strip_sets)


def star_steps(
    made: StepFacts, unit: UnitFacts, cuts: Sequence[CutFacts], first_set: int, block: BlockRecord
) -> tuple[StepFacts, ...]:
    """All steps of a star; `made` is the last of them, `first_set` the number of its first strip set."""
    star, fabrics = _star(unit, cuts, first_set, block)
    return tuple(_steps(made, unit, star, fabrics))


def _steps(made: StepFacts, unit: UnitFacts, star: StarUnit, fabrics: tuple[FabricFacts, ...]) -> Iterator[StepFacts]:
    rows, count = star.rows, unit.count
    first = made.number - rows - 4
    blank = replace(made, method=STRIPS, spare=0, joins=(), hands=(), finished=None, unfinished=None)

    sets = [segment_name(star.first + place) for place in range(len(unit.strip_sets))]
    large_diamond, pair, quarter, half = map(PartName, ("large diamond", "pair", "quarter", "half"))
    names = {**made.names, **{part.notation: part for part in (*sets, large_diamond, pair, quarter, half)}}

    def step(
        makes: PartName, many: int, told: MethodStep, joins: tuple[JoinFacts, ...], size: Extent
    ) -> Callable[[int], StepFacts]:
        found = replace(
            blank,
            makes=makes.notation,
            names=names,
            count=many,
            joins=joins,
            lesson=told.parts,
            fabrics=fabrics,
            made_by=told,
            size=size,
        )
        return lambda number: replace(found, number=number)

    for place, (each, strips) in enumerate(zip(unit.strip_sets, star.sets, strict=True)):
        size = strips.band, rows * strips.band * ROOT_TWO
        yield step(sets[place], each.segments, star_sets.segments_of(star, place), taken(each), size)(first + place)
    segments = tuple(
        join_of(sets[place].notation, each.segments, first + place) for place, each in enumerate(unit.strip_sets)
    )
    large = first + rows
    told = star_sets.large_diamonds(star)
    yield step(large_diamond, 8 * count, told, segments, star.extent((0,)))(large)
    diamonds = join_of(large_diamond.notation, 8 * count, large)
    yield step(pair, 4 * count, star_sets.pairs(star), (diamonds,), star.extent(PAIR))(large + 1)
    triangle, square = star.pieces[star.triangles], star.pieces[star.corners]
    sides = join_of(triangle.label, count, 0, triangle.fabric, "square", triangle.cut)
    corners = join_of(square.label, 2 * count, 0, square.fabric, "square", square.cut)
    pairs = join_of(pair.notation, 4 * count, large + 1)
    yield step(quarter, 4 * count, star_sets.quarters(star), (pairs, sides), star.extent(PAIR, (0,)))(large + 2)
    quarters = join_of(quarter.notation, 4 * count, large + 2)
    told = star_sets.halves(star, large + 2)
    yield step(half, 2 * count, told, (quarters, corners), star.extent(HALF, HALF_GROUND))(large + 3)
    told = star_sets.whole(star, large + 2)
    joins = (join_of(half.notation, 2 * count, large + 3), corners)
    yield replace(made, joins=joins, names=names, lesson=told.parts, fabrics=fabrics, made_by=told)


def _star(
    unit: UnitFacts, cuts: Sequence[CutFacts], first_set: int, block: BlockRecord
) -> tuple[StarUnit, tuple[FabricFacts, ...]]:
    cloths = list(dict.fromkeys(strip for each in unit.strip_sets for strip in each.cloths))
    ground = [(patch.label, patch.fabric) for patch in unit.picture[POINTS * len(unit.strip_sets) ** 2 :]]
    triangle, square = ground[0], ground[-1]
    kinds = [*((*cloth, "strip") for cloth in cloths), (*triangle, "square"), (*square, "square")]
    known = {fabric.name: fabric for fabric in block.fabrics}
    fabrics = tuple(known[fabric] for _, fabric, _ in kinds)
    by_cloth = {(cut.label, cut.fabric): cut for cut in cuts if cut.piece == "square"}
    roles = {(label, fabric): role for role, (label, fabric, _) in enumerate(kinds)}
    measures = Measures(
        unit=block.unit,
        seam=block.seam,
        finished=unit.finished,
        cuts={},
        dark=dark_roles(fabrics),
        open_seams=block.pressing == "open",
    )
    pieces = {
        role: MethodPiece(label, fabric, form, by_cloth[label, fabric].cut[:1] if form == "square" else ())
        for role, (label, fabric, form) in enumerate(kinds)
    }
    sets = tuple(_set(each, cloths, measures) for each in unit.strip_sets)
    patches = tuple(SceneCloth(roles[patch.label, patch.fabric], patch.outline) for patch in unit.picture)
    star = StarUnit(measures, sets, pieces, roles[triangle], roles[square], patches, first_set, unit.count)
    return star, fabrics


def _set(each: StripSetFacts, cloths: Sequence[tuple[str, str]], measures: Measures) -> StripSetUnit:
    """The strip set of a row; its pieces have the roles of the whole star."""
    size = each.strip_width, each.lengths[0].length
    pieces = {
        cloths.index(cloth): MethodPiece(*cloth, "strip", size, each.cloths.count(cloth))
        for cloth in dict.fromkeys(each.cloths)
    }
    roles = tuple(cloths.index(strip) for strip in each.cloths)
    return StripSetUnit(measures, pieces, roles, each.strip_width, each.segment, each.across, lengths_of(each))
