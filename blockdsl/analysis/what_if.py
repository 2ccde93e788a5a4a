"""Trying other sizes and settings, and finding what works where one does not."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from itertools import product
from typing import Final, TypeVar

from msgspec.structs import replace

from blockdsl.analysis.override import WhatIf
from blockdsl.analysis.settings import CM_IN_AN_INCH
from blockdsl.diagnostics import Diagnostic, Problems, nearest_word
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign, QuiltDesign
from blockdsl.syntax import ast

Found = TypeVar("Found")
_PATTERNS: Final[tuple[ast.Pattern, ...]] = ("straight", "on point", "dropped columns", "strippy")
_STEPS: Final = 6
"""So many halves of an inch or centimetre to either side another size is looked for."""
_FEWER: Final = 2
"""So many blocks across and down to either side another setting is looked for."""
_MOST_PLACES: Final = 2_000
"""More blocks than that are not laid for a trial."""
_TOO_MUCH: Final = frozenset({"size-too-large", "too-many-blocks"})
_OF_THE_SETTING: Final = frozenset({"fill-missing", "block-does-not-fit"})
_HOPELESS: Final = frozenset({"setting-fixed", "name-unknown"})


def analyse_what_if(
    attempt: Callable[[WhatIf | None, Problems], Found],
    quilts_of: Callable[[Found], Iterable[QuiltDesign]],
    what_if: WhatIf,
    problems: Problems,
) -> Found:
    """What a file gives with the changes asked for. Where they are impossible, the message says what works.

    `attempt` looks at the file, as it says with None. Mistakes of the file itself are reported first, and alone.
    """
    found = Problems()
    result = attempt(what_if, found)
    if not found.has_errors:
        # A line that has nothing to do in another setting is no mistake of the file.
        _take_over(problems, (each for each in found if each.code != "line-idle" or not what_if.sets))
        return result
    own = Problems()
    as_it_says = attempt(None, own)
    if own.has_errors:
        _take_over(problems, own)
        return as_it_says
    errors: dict[str, Diagnostic] = {}
    for problem in found:
        if problem.severity == "error":
            errors.setdefault(problem.code, problem)  # one change, one message, in however many lines it shows
    near = nearby(what_if, quilts_of(as_it_says), errors)
    instead = next((other for other in near if _works(attempt, other)), None)
    for place, problem in enumerate(errors.values()):
        problems.add(_told(problem, what_if, instead if not place else None))
    return result


def _take_over(problems: Problems, found: Iterable[Diagnostic]) -> None:
    for problem in found:
        problems.add(problem)


def _works(attempt: Callable[[WhatIf | None, Problems], object], other: WhatIf) -> bool:
    found = Problems()
    attempt(other, found)
    return not found.has_errors


def _told(problem: Diagnostic, what_if: WhatIf, instead: WhatIf | None) -> Diagnostic:
    """The problem as one of the options, at the line of the file that they do not go with."""
    advice = problem.help
    if instead is not None:
        works = f"this works: {instead.options}" if instead != WhatIf() else "it works as the file says"
        advice = f"{works}; or change the file: {advice}" if advice else works
    return replace(problem, message=f"with {what_if.options}: {problem.message}", help=advice)


def report_no_such_colourway(name: str, blocks: Iterable[BlockDesign], problems: Problems) -> None:
    """Report when no block has the colourway asked for; a file without blocks has none to miss."""
    designs = list(blocks)
    known = list(dict.fromkeys(plan.name for design in designs for plan in design.colourways))
    if not designs or name in known:
        return
    near = nearest_word(name, known)
    listed = ", ".join(f'"{each}"' for each in known)
    if near:
        advice = f"did you mean --colourway '{near}'?"
    else:
        advice = f"there is {listed}" if known else "give a block such a `colourway` line"
    problems.report("name-unknown", designs[0].span, kind="colourway", name=name, help=advice)


# --- what would do -----------------------------------------------------------------------------


def nearby(what_if: WhatIf, quilts: Iterable[QuiltDesign], codes: Iterable[str]) -> Iterator[WhatIf]:
    """Other changes that may fix problems of these codes, the nearest first.

    One thing is changed at a time, the others stay as they were asked: first the size by halves, then the number of
    blocks, then the setting. Where it is all too large, size or number are halved until they fit.
    """
    found = set(codes)
    if found & _TOO_MUCH:
        yield from _halved(what_if)
    elif "units-mixed" in found:
        yield from _other_unit(what_if)
    elif found & _OF_THE_SETTING:
        yield from _other_patterns(what_if)
    elif not found & _HOPELESS:
        yield from _other_sizes(what_if)
        yield from _other_places(what_if, next(iter(quilts), None))
        yield from _other_patterns(what_if)


def _other_unit(what_if: WhatIf) -> Iterator[WhatIf]:
    if what_if.size is not None:
        width, unit = what_if.size
        there = width * CM_IN_AN_INCH if unit == "in" else width / CM_IN_AN_INCH
        yield replace(what_if, size=(_in_halves(there), "cm" if unit == "in" else "in"))


def _other_patterns(what_if: WhatIf) -> Iterator[WhatIf]:
    for pattern in _PATTERNS if what_if.pattern else ():
        if pattern != what_if.pattern:
            yield replace(what_if, pattern=pattern)


def _in_halves(width: Fraction) -> Fraction:
    return max(Fraction(round(width * 2), 2), Fraction(1, 2))


def _other_sizes(what_if: WhatIf) -> Iterator[WhatIf]:
    if what_if.size is None:
        return
    width, unit = what_if.size
    middle = _in_halves(width)
    for step in range(_STEPS + 1):
        for size in dict.fromkeys((middle - Fraction(step, 2), middle + Fraction(step, 2))):
            if size > 0 and size != width:
                yield replace(what_if, size=(size, unit))


def _other_places(what_if: WhatIf, own: QuiltDesign | None) -> Iterator[WhatIf]:
    places = what_if.places or ((own.across, own.down) if own is not None else (0, 0))
    if not what_if.sets or not 0 < places[0] * places[1] <= _MOST_PLACES:
        return
    steps = range(-_FEWER, _FEWER + 1)
    for more in sorted(product(steps, steps), key=lambda each: (abs(each[0]) + abs(each[1]), each)):
        other = places[0] + more[0], places[1] + more[1]
        if any(more) and min(other) > 0:
            yield replace(what_if, places=other)


def _halved(what_if: WhatIf) -> Iterator[WhatIf]:
    size, places = what_if.size, what_if.places
    while (size is not None and size[0] > 1) or (places is not None and max(places) > 1):
        size = size and (_in_halves(size[0] / 2), size[1])
        places = places and (max(places[0] // 2, 1), max(places[1] // 2, 1))
        if places is not None:
            yield replace(what_if, places=places)
        if size is not None:
            yield replace(what_if, size=size)
