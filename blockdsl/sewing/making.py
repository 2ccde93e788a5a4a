"""The making of a block: each unit with its method, how often, and what cloth that takes."""

from __future__ import annotations

from collections.abc import Collection, Hashable, Sequence
from dataclasses import dataclass, replace
from math import ceil

from blockdsl.diagnostics import Problems, nearest_word
from blockdsl.geometry import to_float
from blockdsl.model import BlockDesign, Choice
from blockdsl.sewing.classes import UnitGroup, group_units
from blockdsl.sewing.foundation.choose import plan_foundations, without_what_papers_hold
from blockdsl.sewing.foundation.plan import FoundationPlan
from blockdsl.sewing.methods import (
    CUT_PATCHES,
    FOR_ALL,
    FOUNDATION,
    METHODS,
    OVER_PAPERS,
    PATCH_BY_PATCH,
    makes,
    methods_for,
)
from blockdsl.sewing.over_papers import choose_over_papers
from blockdsl.sewing.recipe import Part, Recipe
from blockdsl.units import SHAPES


@dataclass(frozen=True, slots=True)
class UnitClass:
    """A unit to be made `count` times; `spare` more come out of its batches. `picture` is as drawn, unturned."""

    group: UnitGroup
    title: str
    count: int
    method: str
    spare: int


@dataclass(frozen=True, slots=True)
class NeededPart:
    """Cloth that a method asks for: `count` pieces for `units` units and `spare` more.

    `becomes` is the block's patch that the piece ends as (the first of several).

    For strips `count` is strips in a set, `segments` how many segments the set must give, and `together` the
    fabrics that are sewn to one another, whose strips must be equally long. `made_for` are the keys of the groups
    of units: two where mirror images come out of the same batch.
    """

    part: Part
    method: str
    unit: str
    becomes: int
    count: int
    units: int
    spare: int
    segments: int
    together: tuple[str, ...]
    made_for: tuple[Hashable, ...]


@dataclass(frozen=True, slots=True)
class Making:
    """Units in reading order, the cloth for those made by a method, and the patches that are cut by themselves.

    `foundations` are the units that are sewn to papers; their cloth is cut patch by patch, with room to spare.
    """

    units: tuple[UnitClass, ...]
    parts: tuple[NeededPart, ...]
    loose: tuple[int, ...]
    foundations: tuple[FoundationPlan, ...] = ()

    @property
    def made_whole(self) -> frozenset[tuple[int, int]]:
        """The units that come whole out of a method: where their patches begin and end in the block's list."""
        made = [unit for unit in self.units if unit.method not in PATCH_BY_PATCH]
        return frozenset((place.first, place.stop) for unit in made for place in unit.group.places)

    @property
    def over_papers(self) -> frozenset[tuple[int, int]]:
        """The units whose patches are folded round papers: where these begin and end in the block's list."""
        made = [unit for unit in self.units if unit.method == OVER_PAPERS]
        return frozenset((place.first, place.stop) for unit in made for place in unit.group.places)


def plan_making(design: BlockDesign, problems: Problems, copies: int = 1) -> Making:
    """Choose the method for each unit and count what it takes; choices that cannot be followed are reported.

    `copies` are so many of the same block, their units made in common batches.
    """
    groups: Sequence[UnitGroup] = group_units(design)
    choices = _valid_choices(design, groups, problems)
    chosen = [(group, choice) for group in groups if (choice := _choice_for(group, choices))]
    foundations = plan_foundations([each for each in chosen if each[1].method == FOUNDATION], design, problems)
    folded = choose_over_papers([each for each in chosen if each[1].method == OVER_PAPERS], problems)
    groups = without_what_papers_hold(groups, [*(plan.group for plan in foundations), *folded])
    by_key = {group.key: group for group in groups}
    foundations = tuple(replace(plan, group=by_key[plan.group.key]) for plan in foundations if plan.group.key in by_key)
    on_papers = {plan.group.key for plan in foundations} | {group.key for group in folded}
    for group in groups:
        group.places *= copies
    methods = [_method_for(group, choices, on_papers) for group in groups]
    if design.trim and not any(_is_trimmed(group, method) for group, method in zip(groups, methods, strict=True)):
        help_text = "choose `make … as two at a time`, or take the `trim` line out"
        problems.report("trim-without-method", design.span, help=help_text)
    classes: list[UnitClass] = []
    parts: list[NeededPart] = []
    made: set[int] = set()
    batches = _Batches(design, groups, methods)
    for group, method in zip(groups, methods, strict=True):
        spare = 0
        if method not in PATCH_BY_PATCH:
            if method != FOUNDATION:
                found, spare = batches.parts_of(group, method)
                parts.extend(found)
            for place in group.places[: len(group.places) // copies]:
                made.update(range(place.first, place.stop))
        classes.append(UnitClass(group, title_of(group), len(group.places), method, spare))
    loose = tuple(index for index in range(len(design.patches)) if index not in made)
    # Small to large: what lies inside another unit is made, and measured, before it.
    classes.sort(key=lambda unit: to_float(unit.group.width * unit.group.height))
    return Making(tuple(classes), tuple(parts), loose, foundations)


# --- choices -------------------------------------------------------------------------------------


def _valid_choices(design: BlockDesign, groups: Sequence[UnitGroup], problems: Problems) -> list[Choice]:
    return [
        choice for choice in design.choices if is_known_method(choice, problems) and _applies(choice, groups, problems)
    ]


def is_known_method(choice: Choice, problems: Problems) -> bool:
    """Whether there is such a method; if not it is reported. All that can be told of a block that is not laid out."""
    if choice.method in METHODS:
        return True
    near = nearest_word(choice.method, METHODS)
    help_text = f"did you mean `{near}`?" if near else f"the methods are {_list(tuple(METHODS))}"
    problems.report("method-unknown", choice.method_span, name=choice.method, help=help_text)
    return False


def _applies(choice: Choice, groups: Sequence[UnitGroup], problems: Problems) -> bool:
    meant = [group for group in groups if choice.what in _names_of(group)]
    if not meant:
        _report_nothing_meant(choice, groups, problems)
        return False
    if choice.method in FOR_ALL:
        return True
    for group in meant:
        shape = group.filling.shape if group.filling else None
        if group.filling is None or not makes(choice.method, group.filling):
            usual = methods_for(shape or "")
            can = _list([each for each in usual if group.filling is None or makes(each, group.filling)])
            help_text = "choose one of those" if shape else "for the shapes in it, name the shape: `make half as …`"
            problems.report(
                "method-does-not-fit",
                choice.method_span,
                method=choice.method,
                what=choice.what,
                can=can,
                help=help_text,
            )
            return False
    return True


def _report_nothing_meant(choice: Choice, groups: Sequence[UnitGroup], problems: Problems) -> None:
    known = {name for group in groups for name in _names_of(group)}
    if choice.what in SHAPES:
        help_text = f"this block has {_list(tuple(sorted(known)))}" if known else "this block has plain patches only"
        problems.report("nothing-to-make", choice.what_span, what=choice.what, help=help_text)
        return
    near = nearest_word(choice.what, [*known, *SHAPES])
    help_text = (
        f"did you mean `{near}`?"
        if near
        else f"`make` takes a shape or a unit of this block: {_list(tuple(sorted(known)))}"
    )
    problems.report("name-unknown", choice.what_span, kind="shape or unit", name=choice.what, help=help_text)


def _list(words: Sequence[str]) -> str:
    return ", ".join(f"`{word}`" for word in words)


def _names_of(group: UnitGroup) -> set[str]:
    return {place.name for place in group.places if place.name} | _shapes_of(group)


def _shapes_of(group: UnitGroup) -> set[str]:
    """All shapes that units of the group are written as: rails turned are bars."""
    return {place.filling.shape for place in group.places if place.filling}


def _choice_for(group: UnitGroup, choices: Sequence[Choice]) -> Choice | None:
    """The last choice that names the unit itself, else the last that names its shape."""
    shapes = _shapes_of(group)
    by_shape = [choice for choice in choices if choice.what in shapes]
    by_name = [choice for choice in choices if choice.what in _names_of(group) - shapes]
    return [None, *by_shape, *by_name][-1]


def _on_papers(choice: Choice) -> bool:
    return choice.method in (FOUNDATION, OVER_PAPERS)


def _method_for(group: UnitGroup, choices: Sequence[Choice], on_papers: Collection[Hashable]) -> str:
    """What was chosen for the unit, else cut patches; papers only where they can be sewn to or folded round."""
    choice = _choice_for(group, choices)
    if choice is None or (_on_papers(choice) and group.key not in on_papers):
        return CUT_PATCHES
    return choice.method


def title_of(group: UnitGroup) -> str:
    """What the sheet calls the unit: the designer's name or the trade's, and its fabrics."""
    if group.filling is None:
        title = group.name or "unit"
    else:
        trade = SHAPES[group.filling.shape].title
        title = f"{group.name} ({trade})" if group.name else trade
    return f"{title}, mirror image" if group.mirrored and not group.own_mirror else title


# --- batches -------------------------------------------------------------------------------------


def _is_trimmed(group: UnitGroup, method: str) -> bool:
    if method in FOR_ALL or group.filling is None:
        return False
    return METHODS[method][group.filling.shape](group.filling, group.width, group.height, group.width * 0).trimmed  # type: ignore[arg-type]


class _Batches:
    """Counts batches; a unit and its mirror image that come out of the same batch are counted together."""

    def __init__(self, design: BlockDesign, groups: Sequence[UnitGroup], methods: Sequence[str]) -> None:
        self._design = design
        self._by_key = {group.key: (group, method) for group, method in zip(groups, methods, strict=True)}
        self._done: dict[object, int] = {}

    def parts_of(self, group: UnitGroup, method: str) -> tuple[list[NeededPart], int]:
        """What the group takes, and how many units are left over. Nothing, when its mirror image has it all."""
        assert group.filling is not None  # noqa: S101  only shapes have recipes
        recipe = METHODS[method][group.filling.shape](group.filling, group.width, group.height, self._design.trim)
        if not recipe.mirrored or group.own_mirror:
            each = recipe.alike + recipe.mirrored
            makings = ceil(len(group.places) / each)
            spare = makings * each - len(group.places)
            return self._needed(group, method, recipe, makings, len(group.places), spare), spare
        return self._paired(group, method, recipe)

    def _paired(self, group: UnitGroup, method: str, recipe: Recipe) -> tuple[list[NeededPart], int]:
        """Half of each batch is left-handed, half right-handed."""
        partner, partner_method = self._by_key.get(group.mirror_key, (None, None))
        others = len(partner.places) if partner is not None and partner_method == method else 0
        makings = max(ceil(len(group.places) / recipe.alike), ceil(others / recipe.mirrored))
        spare = makings * recipe.alike - len(group.places)
        if self._done.get(group.mirror_key):
            return [], spare
        self._done[group.key] = makings
        unused = spare + (0 if others else makings * recipe.mirrored)
        both = len(group.places) + others
        total = makings * (recipe.alike + recipe.mirrored)
        return self._needed(group, method, recipe, makings, both, total - both), unused

    def _needed(
        self, group: UnitGroup, method: str, recipe: Recipe, makings: int, units: int, spare: int
    ) -> list[NeededPart]:
        assert group.filling is not None  # noqa: S101  only shapes have recipes
        return [
            NeededPart(
                part=part,
                method=method,
                unit=group.name or group.filling.shape,
                becomes=group.places[0].first + part.role,
                count=part.count if part.segments else part.count * makings,
                units=units,
                spare=spare,
                segments=part.segments * makings,
                together=tuple(dict.fromkeys(other.fabric for other in recipe.parts)),
                made_for=(group.key, group.mirror_key) if recipe.mirrored else (group.key,),
            )
            for part in recipe.parts
        ]
