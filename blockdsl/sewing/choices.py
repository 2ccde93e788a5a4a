"""Which unit is made by which method: what the `make` lines say, place by place, and those that reach nothing.

A line for a unit's own name stands before one for its shape; one that says how many stands before one that does not
and takes its units in reading order. What no line reaches is cut patch by patch.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Hashable, Iterator, Mapping, Sequence

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.analysis.fixes import without_line
from blockdsl.diagnostics import Problems, change_to, nearest_word
from blockdsl.model import BlockDesign, Choice, UnitPlace
from blockdsl.sewing.classes import UnitGroup
from blockdsl.sewing.methods import CUT_PATCHES, FOR_ALL, FOUNDATION, METHODS, OVER_PAPERS, makes, methods_for
from blockdsl.shapes import SHAPES

ON_PAPERS = (FOUNDATION, OVER_PAPERS)
"""Methods that take in all that lies inside a unit."""


class ChosenGroup(Struct, frozen=True):
    """Units that are alike and made by one method; `choice` is a line that says so, None where none does.

    `lines` are all lines that say so, for one place of the group or another.
    """

    group: UnitGroup
    choice: Choice | None
    lines: tuple[Choice, ...] = ()

    @property
    def method(self) -> str:
        """The method that was chosen."""
        return CUT_PATCHES if self.choice is None else self.choice.method


def choose_methods(design: BlockDesign, groups: Sequence[UnitGroup], problems: Problems) -> tuple[ChosenGroup, ...]:
    """The groups, parted where units that are alike are made by several methods; lines that reach nothing are reported.

    The keys of what comes out tell methods apart as well: mirror images share a batch only where both are made alike.
    """
    valid = [
        choice for choice in design.choices if is_known_method(choice, problems) and _applies(choice, groups, problems)
    ]
    taken = _taken(valid, groups, problems)
    return tuple(parted for group in groups for parted in _parted(group, taken))


def _parted(group: UnitGroup, taken: Mapping[int, Choice]) -> Iterator[ChosenGroup]:
    by_method: dict[str, list[UnitPlace]] = {}
    lines: dict[str, dict[int, Choice]] = {}
    for place in group.places:
        choice = taken.get(id(place))
        method = CUT_PATCHES if choice is None else choice.method
        by_method.setdefault(method, []).append(place)
        if choice is not None:
            lines.setdefault(method, {})[id(choice)] = choice
    for method, places in by_method.items():
        name = next((place.name for place in places if place.name), None)
        filling = next((place.filling for place in places if place.filling == group.filling), group.filling)
        own = replace(
            group,
            key=(group.key, method),
            mirror_key=(group.mirror_key, method),
            name=name,
            filling=filling,
            places=places,
        )
        said = tuple(lines.get(method, {}).values())
        yield ChosenGroup(own, said[-1] if said else None, said)


def is_known_method(choice: Choice, problems: Problems) -> bool:
    """Whether there is such a method; if not it is reported. All that can be said of a block that is not laid out."""
    if choice.method in METHODS:
        return True
    near = nearest_word(choice.method, METHODS)
    help_text = f"did you mean `{near}`?" if near else f"the methods are {_list(tuple(METHODS))}"
    fixes = (change_to(choice.method_span, near),) if near else ()
    problems.report("method-unknown", choice.method_span, name=choice.method, help=help_text, fixes=fixes)
    return False


# --- which line reaches which unit ---------------------------------------------------------------


def _taken(choices: Sequence[Choice], groups: Sequence[UnitGroup], problems: Problems) -> dict[int, Choice]:
    """For each place (by its identity) the line that it is made by."""
    places = [(place, group) for group in groups for place in group.places]
    places.sort(key=lambda found: found[0].first)
    taken: dict[int, Choice] = {}
    means: tuple[Callable[[Choice, UnitPlace, UnitGroup], bool], ...] = (_by_name, _by_shape, _by_other_shape)
    reached: dict[int, int] = {}
    for meant in means:
        for counted in (True, False):
            for line in choices:
                if (line.count is not None) == counted:
                    free = [p for p, group in places if id(p) not in taken and meant(line, p, group)]
                    wanted = len(free) if line.count is None else line.count - reached.get(id(line), 0)
                    for place in free[: max(wanted, 0)]:
                        taken[id(place)] = line
                    reached[id(line)] = reached.get(id(line), 0) + min(len(free), max(wanted, 0))
    for line in choices:
        _report_reach(line, reached[id(line)], places, taken, problems)
    return taken


def _by_name(choice: Choice, place: UnitPlace, _group: UnitGroup) -> bool:
    return choice.what == place.name


def _by_shape(choice: Choice, place: UnitPlace, _group: UnitGroup) -> bool:
    return place.filling is not None and choice.what == place.filling.shape


def _by_other_shape(choice: Choice, place: UnitPlace, group: UnitGroup) -> bool:
    """Rails turned are bars: what is written as either is the same unit."""
    return choice.what != place.name and choice.what in _shapes_of(group)


def _report_reach(
    line: Choice,
    reached: int,
    places: Sequence[tuple[UnitPlace, UnitGroup]],
    taken: Mapping[int, Choice],
    problems: Problems,
) -> None:
    """A line that makes nothing, or fewer than it says."""
    if reached and reached >= (line.count or 0):
        return
    meant = [place for place, group in places if _by_name(line, place, group) or line.what in _shapes_of(group)]
    others = [taken[id(place)] for place in meant if id(place) in taken and taken[id(place)] is not line]
    said = ", ".join(dict.fromkeys(f"`{_write(other)}`" for other in others))
    if not reached:
        problems.report(
            "nothing-left-to-make",
            line.what_span,
            what=line.what,
            others=said,
            help=f"take one of the lines out, or say how many: `make 1 of {line.what} as {line.method}`",
            fixes=(without_line(line.what_span, "`make`"),),
        )
        return
    left = f"apart from {said} " if said else ""
    problems.report(
        "too-few-to-make",
        line.what_span,
        what=line.what,
        count=line.count,
        left=f"{left}there are {reached}" if reached > 1 else f"{left}there is {reached}",
        help=f"make {reached} of them, or leave the number out to make all that are left",
    )


def report_held_by_papers(chosen: Sequence[ChosenGroup], kept: Collection[Hashable], problems: Problems) -> None:
    """A line that makes nothing because all its units lie inside others that are sewn to, or over, papers.

    `kept` are the keys of the groups that are still made for themselves.
    """
    making = {id(line) for each in chosen if each.group.key in kept for line in each.lines}
    papers = dict.fromkeys(f"`{_write(each.choice)}`" for each in chosen if each.choice and each.method in ON_PAPERS)
    lines = {id(line): line for each in chosen for line in each.lines}
    for line in lines.values():
        if id(line) not in making:
            problems.report(
                "nothing-left-to-make",
                line.what_span,
                what=line.what,
                others=", ".join(papers),
                help="the units inside a foundation-pieced unit are sewn to the same papers: remove this line",
                fixes=(without_line(line.what_span, "`make`"),),
            )


def _write(choice: Choice) -> str:
    many = "" if choice.count is None else f"{choice.count} of "
    return f"make {many}{choice.what} as {choice.method}"


# --- lines that cannot be followed ---------------------------------------------------------------


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
            able = [each for each in usual if group.filling is None or makes(each, group.filling)]
            help_text = "choose one of those" if shape else "for the shapes in it, name the shape: `make half as …`"
            problems.report(
                "method-does-not-fit",
                choice.method_span,
                method=choice.method,
                what=choice.what,
                can=_list(able),
                help=help_text,
                fixes=tuple(change_to(choice.method_span, method) for method in able),
            )
            return False
    return True


def _report_nothing_meant(choice: Choice, groups: Sequence[UnitGroup], problems: Problems) -> None:
    known = {name for group in groups for name in _names_of(group)}
    if choice.what in SHAPES:
        help_text = f"this block has {_list(tuple(sorted(known)))}" if known else "this block has plain patches only"
        idle = (without_line(choice.what_span, "`make`"),)
        problems.report("nothing-to-make", choice.what_span, what=choice.what, help=help_text, fixes=idle)
        return
    near = nearest_word(choice.what, [*known, *SHAPES])
    help_text = (
        f"did you mean `{near}`?"
        if near
        else f"`make` takes a shape or a unit of this block: {_list(tuple(sorted(known)))}"
    )
    fixes = (change_to(choice.what_span, near),) if near else ()
    problems.report(
        "name-unknown", choice.what_span, kind="shape or unit", name=choice.what, help=help_text, fixes=fixes
    )


def _list(words: Sequence[str]) -> str:
    return ", ".join(f"`{word}`" for word in words)


def _names_of(group: UnitGroup) -> set[str]:
    return {place.name for place in group.places if place.name} | _shapes_of(group)


def _shapes_of(group: UnitGroup) -> set[str]:
    """All shapes that units of the group are written as: rails turned are bars."""
    return {place.filling.shape for place in group.places if place.filling}
