"""The making of a block: each unit with its method, how often, and what cloth that takes."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.diagnostics import Problems, change_to
from blockdsl.geometry import to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign, Choice
from blockdsl.sewing.batches import Batches, BatchGroup, NeededPart, Prints
from blockdsl.sewing.choices import ON_PAPERS, ChosenGroup, choose_methods, report_held_by_papers
from blockdsl.sewing.classes import UnitGroup, group_units
from blockdsl.sewing.foundation.choose import plan_foundations, without_what_papers_hold
from blockdsl.sewing.foundation.plan import FoundationPlan, letter_on
from blockdsl.sewing.methods import CUT_PATCHES, FOR_ALL, FOUNDATION, METHODS, OVER_PAPERS, PATCH_BY_PATCH, STRIPS
from blockdsl.sewing.strips import is_star
from blockdsl.shapes import SHAPES

Span = tuple[int, int]
"""The patches of a unit in the block's list: its first, and the one after its last."""
ZERO = Fraction(0)


class UnitClass(Struct, frozen=True):
    """A unit to be made `count` times; `spare` more come out of its batches. `picture` is as drawn, unturned.

    Units that are alike but made by several methods are several classes.
    """

    group: UnitGroup
    title: str
    count: int
    method: str
    spare: int


class Making(Struct, frozen=True):
    """Units in reading order, the cloth for those made by a method, and the patches that are cut by themselves.

    `foundations` are the units that are sewn to papers; their cloth is cut patch by patch, with room to spare.
    """

    units: tuple[UnitClass, ...]
    parts: tuple[NeededPart, ...]
    loose: tuple[int, ...]
    foundations: tuple[FoundationPlan, ...] = ()

    @property
    def from_slanted_strips(self) -> frozenset[int]:
        """The patches of stars whose points come out of strip sets cut at 45°, by their place in the block's list."""
        stars = (unit.group for unit in self.units if unit.method == STRIPS and is_star(unit.group.filling))
        places = (place for star in stars for place in star.places)
        return frozenset(patch for place in places for patch in range(place.first, place.stop))

    @property
    def made_whole(self) -> dict[Span, str]:
        """The units that come whole out of a method, each with its method."""
        made = [unit for unit in self.units if unit.method not in PATCH_BY_PATCH]
        return {(place.first, place.stop): unit.method for unit in made for place in unit.group.places}

    @property
    def over_papers(self) -> dict[Span, str]:
        """The units whose patches are folded round papers, likewise."""
        made = [unit for unit in self.units if unit.method == OVER_PAPERS]
        return {(place.first, place.stop): unit.method for unit in made for place in unit.group.places}


class UnitMethod(Struct, frozen=True):
    """A group of units of one copy of a block, and the method that makes them."""

    group: UnitGroup
    method: str


class ChosenMethods(Struct, frozen=True):
    """A block's units with their methods, and the papers, before it is known how many blocks are made."""

    design: BlockDesign
    units: tuple[UnitMethod, ...]
    foundations: tuple[FoundationPlan, ...]


class Run(Struct, frozen=True):
    """So many copies of one block, each with the prints that it has of fabrics that are spread over several."""

    chosen: ChosenMethods
    copies: tuple[Prints, ...] = ((),)


def plan_making(design: BlockDesign, problems: Problems, copies: int = 1) -> Making:
    """Choose the method for each unit and count what it takes; choices that cannot be followed are reported.

    `copies` are so many of the same block, their units made in common batches.
    """
    return plan_makings((Run(choose_for_block(design, problems), ((),) * copies),))[0]


def plan_makings(runs: Sequence[Run]) -> tuple[Making, ...]:
    """The makings of blocks that are made together: a block of a quilt and its mirror image.

    Shape:  units that look the same, or come out of one batch as mirror images, are counted in common; the cloth for
            them is in the making of the first block that has them. No batch spans two prints.
    """
    groups = (BatchGroup(unit.group, unit.method, run.copies) for run in runs for unit in run.chosen.units)
    batches = Batches(groups, runs[0].chosen.design.trim)
    return tuple(_making(run, batches) for run in runs)


def title_of(group: UnitGroup) -> str:
    """What the sheet calls the unit: the designer's name or the trade's, and its fabrics."""
    if group.filling is None:
        title = group.name or "unit"
    else:
        trade = SHAPES[group.filling.shape].title
        is_own = group.name is not None and group.name.replace("-", " ") != trade.replace("-", " ")
        title = f"{group.name} ({trade})" if is_own else trade
    return f"{title}, mirror image" if group.mirrored and not group.own_mirror else title


def choose_for_block(design: BlockDesign, problems: Problems) -> ChosenMethods:
    """The units with their methods, without those that papers hold, and the papers; what cannot be is reported."""
    chosen = choose_methods(design, group_units(design), problems)
    foundations = plan_foundations(_lines_for(FOUNDATION, chosen), design, problems)
    folded = choose_over_papers(_lines_for(OVER_PAPERS, chosen), problems)
    papered = [*(plan.group for plan in foundations), *folded]
    methods = {each.group.key: each.method for each in chosen}
    groups = without_what_papers_hold([each.group for each in chosen], papered)
    by_key = {group.key: group for group in groups}
    report_held_by_papers(chosen, by_key, problems)
    kept = [replace(plan, group=by_key[plan.group.key]) for plan in foundations if plan.group.key in by_key]
    # Small to large, as the units are made: papers are lettered in that order.
    kept.sort(key=lambda plan: to_float(plan.group.width * plan.group.height))
    on_papers = {group.key for group in papered}
    units = []
    for group in groups:
        method = methods[group.key]
        can_be = method not in ON_PAPERS or group.key in on_papers
        units.append(UnitMethod(group, method if can_be else CUT_PATCHES))
    if design.trim and not any(_is_trimmed(unit) for unit in units):
        help_text = "choose `make … as two at a time`, or take the `trim` line out"
        problems.report("trim-without-method", design.span, help=help_text)
    return ChosenMethods(design, tuple(units), letter_on(kept))


def _lines_for(method: str, chosen: Sequence[ChosenGroup]) -> list[tuple[UnitGroup, Choice]]:
    return [(each.group, each.choice) for each in chosen if each.choice is not None and each.method == method]


def _is_trimmed(unit: UnitMethod) -> bool:
    group = unit.group
    if unit.method in FOR_ALL or group.filling is None:
        return False
    return METHODS[unit.method][group.filling.shape](group.filling, group.width, group.height, ZERO).trimmed


def _making(run: Run, batches: Batches) -> Making:
    classes: list[UnitClass] = []
    parts: list[NeededPart] = []
    made: set[int] = set()
    times = len(run.copies)
    for unit in run.chosen.units:
        spare = 0
        if unit.method not in FOR_ALL:
            found, spare = batches.parts_of(BatchGroup(unit.group, unit.method, run.copies))
            parts.extend(found)
        if unit.method not in PATCH_BY_PATCH:
            for place in unit.group.places:
                made.update(range(place.first, place.stop))
        group = _many_times(unit.group, times)
        classes.append(UnitClass(group, title_of(group), len(group.places), unit.method, spare))
    loose = tuple(index for index in range(len(run.chosen.design.patches)) if index not in made)
    # Small to large: what lies inside another unit is made, and measured, before it.
    classes.sort(key=lambda unit: to_float(unit.group.width * unit.group.height))
    papers = tuple(replace(plan, group=_many_times(plan.group, times)) for plan in run.chosen.foundations)
    return Making(tuple(classes), tuple(parts), loose, papers)


def _many_times(group: UnitGroup, times: int) -> UnitGroup:
    return group if times == 1 else replace(group, places=group.places * times)


def choose_over_papers(chosen: Sequence[tuple[UnitGroup, Choice]], problems: Problems) -> tuple[UnitGroup, ...]:
    """The units to be pieced over papers: of those chosen for it the ones with straight edges alone.

    A curve would have to be gathered around its paper; such units are reported, once for a choice.
    """
    told: set[object] = set()
    found = []
    for group, choice in chosen:
        if not any(patch.curved for patch in group.picture):
            found.append(group)
        elif choice.method_span not in told:
            told.add(choice.method_span)
            advice = "make it as `cut patches`: its curves are sewn by templates"
            fixes = (change_to(choice.method_span, CUT_PATCHES),)
            problems.report("papers-curved", choice.method_span, what=choice.what, help=advice, fixes=fixes)
    return tuple(found)
