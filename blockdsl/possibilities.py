"""What a block can become: one quilt for each setting that suits it, made of it by the language itself.

Each setting is written as the lines of a `quilt`, put below the maker's own file and worked through as any other, so
whatever is shown can be built as it stands. Two quilts that look the same, turned over or about, are one; the others
come in the order of how different they look.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl import pipeline
from blockdsl.analysis import Reader
from blockdsl.analysis.looks import Form, Look
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts.possibility import Plan, Possibility
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign, luminance
from blockdsl.model.language import Language

_ABOUT: Final = {"in": (48, 60), "cm": (120, 150)}
"""How wide and how high the quilts are about: one for the knees. Common practice, no source."""
_FEWEST, _MOST = 2, 8
_SQUARE_TURNS: Final = (
    (),
    ("turn > on every second",),
    ("turn >> on every second",),
    ("turn ~ on every second",),
    ("turn ~ on even columns",),
    ("turn >> on even rows",),
    ("turn > on even columns",),
    ("turn >> on even rows", "turn > on every second"),
    ("turn ~ on even columns", "turn ~>> on even rows"),
)
"""By twos and by fours: each second block, rows or columns by turns, round a middle, mirrored both ways."""
_EVERY_SECOND: Final = ("every second", "even rows", "even columns")


def possibilities(
    source: Source, reader: Reader, design: BlockDesign, language: Language | None = None
) -> list[Possibility]:
    """One quilt for each setting that suits the block, the plain one first, then what looks most different.

    `source` is the file that declares the block, or that uses one that does; it has no errors.
    """
    plans = list(_plans(design))
    names = [f"{design.name} / {number}" for number in range(1, len(plans) + 1)]
    text = "\n".join([source.text.rstrip(), *map(Plan.declared, plans, names)])
    stages = pipeline.run(Source(source.name, text), reader, language=language)
    wrong = _lines_with_errors(stages.problems)
    quilts = {quilt.name: quilt for quilt in stages.facts.quilts}
    found: list[tuple[Possibility, Look]] = []
    seen: set[Form] = set()
    line = text[: len(source.text.rstrip())].count("\n") + 2
    designs = {quilt.name: quilt for quilt in stages.program.quilts}
    for plan, name in zip(plans, names, strict=True):
        lines = range(line, line + 1 + len(plan.lines))
        line = lines.stop + 1
        if name not in quilts or wrong.intersection(lines):
            continue
        look = Look(designs[name])
        if look.form not in seen:
            seen.update(look.turned_forms)
            found.append((Possibility(plan, quilts[name]), look))
    return _most_different_first(found)


def _lines_with_errors(problems: Problems) -> set[int]:
    return {problem.span.line for problem in problems if problem.severity == "error"}


def _most_different_first(found: Sequence[tuple[Possibility, Look]]) -> list[Possibility]:
    """The first of them, then again and again the one that is least like any before it."""
    if not found:
        return []
    left = list(range(1, len(found)))
    ordered = [found[0][0]]
    nearest = {place: found[place][1].differs_from(found[0][1]) for place in left}
    while left:
        chosen = max(left, key=lambda place: (nearest[place], -place))
        left.remove(chosen)
        ordered.append(found[chosen][0])
        for place in left:
            nearest[place] = min(nearest[place], found[place][1].differs_from(found[chosen][1]))
    return ordered


# --- the settings -------------------------------------------------------------------------------------


def _plans(design: BlockDesign) -> Iterator[Plan]:
    across, down = _places(design)
    fabrics = sorted(design.fabrics, key=lambda fabric: luminance(fabric.colour), reverse=True)
    light, dark = fabrics[0].name, fabrics[-1].name
    grounds = tuple(dict.fromkeys((light, dark)))
    of = f'of "{design.name}"'
    yield from _straight(design, f"set straight {across} x {down} {of}", grounds)
    for fabric in grounds:  # odd numbers: all four corners are blocks
        yield Plan((f"set straight {across + 1} x {down + 1} {of}", f"alternate {fabric}"), alternate=fabric)
    yield from _dropped(design, f"set dropped columns {across} x {down} {of}", grounds)
    yield from _strippy(design, f"set strippy {across // 2 + 1} x {down} {of}", grounds)
    if design.width == design.height:
        fewer = (max(_FEWEST, round(count * Fraction(5, 7))) for count in (across, down))  # 5/7 is about 1/√2
        yield from _on_point(design, f"set on point {' x '.join(map(str, fewer))} {of}", grounds)


def _places(design: BlockDesign) -> tuple[int, int]:
    """Even numbers of blocks across and down that make the quilt about as large as one for the knees."""
    across, down = (
        max(_FEWEST, min(_MOST, 2 * round(Fraction(about) / side / 2)))
        for about, side in zip(_ABOUT[design.unit], (design.width, design.height), strict=True)
    )
    return across, down


def _straight(design: BlockDesign, setting: str, grounds: Sequence[str]) -> Iterator[Plan]:
    for turns in _turns(design):
        plain = Plan((setting, *turns), turned=bool(turns))
        yield plain
        yield from _sashed(design, plain, grounds)
    for plan in design.colourways:
        for where in _EVERY_SECOND:
            yield Plan((setting, f'colourway "{plan.name}" on {where}'), colourway=plan.name)


def _turns(design: BlockDesign) -> Iterator[tuple[str, ...]]:
    """An oblong block is not turned by a quarter."""
    square = design.width == design.height
    return (turns for turns in _SQUARE_TURNS if square or not any("turn > " in turn for turn in turns))


def _sashed(design: BlockDesign, plan: Plan, grounds: Sequence[str]) -> Iterator[Plan]:
    width = _sixth(design)
    if not width:
        return
    sash = f"sash {width} {design.unit} {grounds[-1]}"
    yield replace(plan, lines=(*plan.lines, sash), sashed=True)
    if len(grounds) > 1:
        yield replace(plan, lines=(*plan.lines, f"{sash} posts {grounds[0]} outer"), sashed=True, posts=True)


def _sixth(design: BlockDesign) -> str:
    """A sixth of the block in halves, as the language writes it; nothing of a block for which that is too little."""
    whole, half = divmod(int(min(design.width, design.height) / 6 * 2), 2)
    if design.unit == "cm":
        return f"{whole}.5" if half else str(whole) if whole else ""
    return " ".join(word for word in (str(whole) if whole else "", "1/2" if half else "") if word)


def _dropped(design: BlockDesign, setting: str, grounds: Sequence[str]) -> Iterator[Plan]:
    plain = Plan((setting, f"fill {grounds[0]}"))
    yield plain
    yield Plan((setting, f"fill {grounds[0]}", "turn >> on even columns"), turned=True)
    yield Plan((setting,))
    yield from _sashed(design, plain, grounds)


def _strippy(design: BlockDesign, setting: str, grounds: Sequence[str]) -> Iterator[Plan]:
    for fabric in grounds:
        yield Plan((setting, f"fill {fabric}"))
    width = _sixth(design)
    if width:
        yield Plan((setting, f"sash {width} {design.unit} {grounds[-1]} outer"), sashed=True)
    yield Plan((setting, f"fill {grounds[0]}", "turn >> on even columns"), turned=True)


def _on_point(design: BlockDesign, setting: str, grounds: Sequence[str]) -> Iterator[Plan]:
    for fabric in grounds:
        plain = Plan((setting, f"fill {fabric}"))
        yield plain
        yield replace(plain, lines=(*plain.lines, "turn > on every second"), turned=True)
        yield from list(_sashed(design, plain, grounds))[-1:]
    for fabric in grounds:
        yield Plan((setting, f"alternate {fabric}", f"fill {fabric}"), alternate=fabric)
    for plan in design.colourways:
        lines = (setting, f"fill {grounds[0]}", f'colourway "{plan.name}" on every second')
        yield Plan(lines, colourway=plan.name)
