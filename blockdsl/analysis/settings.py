"""Reading a block's settings: size, seam, measure, trim, choices, colour plans."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TypeVar

from msgspec import Struct

from blockdsl.analysis.fixes import declare_fabric, did_you_mean, line_below
from blockdsl.analysis.maker_choices import report_choices
from blockdsl.analysis.scope import Scope
from blockdsl.diagnostics import Fix, Problems, change_to, nearest_word
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import Choice, ColourPlan, GrainChoice, RulerUnit
from blockdsl.model.lengths import write_size
from blockdsl.shapes.listed import FORMER_NAMES
from blockdsl.syntax import ast
from blockdsl.syntax.read import renamed_help

Line = TypeVar("Line", bound=ast.BlockLine)

USUAL_SEAM: dict[str, Fraction] = {"in": Fraction(1, 4), "cm": Fraction(3, 4)}
"""Seam allowance when the designer gives none: 1/4 in, 0.75 cm (language reference)."""
USUAL_MEASURE: dict[str, Fraction] = {"in": Fraction(1, 8), "cm": Fraction(1, 10)}
"""What a ruler reads when the designer does not say: 1/8 in, 1 mm (language reference)."""
MOST: dict[str, dict[RulerUnit, Fraction]] = {
    "seam allowance": {"in": Fraction(2), "cm": Fraction(5)},
    "measure of the ruler": {"in": Fraction(1), "cm": Fraction(5, 2)},
    "trim": {"in": Fraction(2), "cm": Fraction(5)},
}
"""More than anybody sews, reads or trims; beyond it a unit or a point of the number is missing (our own bounds)."""
MOST_UNITS = 100_000
"""More units no block has."""
MOST_CM = Fraction(1000)
MOST_OBLONG = 1000
CM_IN_AN_INCH = Fraction(254, 100)
"""Exact by definition of the international inch (1959)."""


class Settings(Struct, frozen=True):
    """What is set for a block; lengths in `unit`."""

    unit: RulerUnit
    width: Fraction
    height: Fraction
    seam: Fraction
    measure: Fraction
    trim: Fraction


def read_settings(block: ast.BlockDeclaration, problems: Problems) -> Settings | None:
    """The settings, with the usual ones where none are given; None when the size is not known (reported)."""
    report_choices(block.lines, problems)
    size = _first(block.lines, ast.Size)
    if size is None:
        if not any(isinstance(line, ast.UnreadableLine) and line.keyword == "size" for line in block.lines):
            help_text = "add its finished size, for example `size 12 in`"
            fix = Fix("Add `size 12 in`", (line_below(block.span, "size 12 in"),))
            problems.report("size-missing", block.name.span, name=block.name.text, help=help_text, fixes=(fix,))
        return None
    unit: RulerUnit = "in" if size.width.unit == "in" else "cm"
    sides = [size.width] if size.width == size.height else [size.width, size.height]
    sizes = [_length(part, unit, problems, "finished size") for part in sides]
    seam = _setting(block.lines, ast.Seam, unit, USUAL_SEAM[unit], problems, "seam allowance")
    measure = _setting(block.lines, ast.Measure, unit, USUAL_MEASURE[unit], problems, "measure of the ruler")
    trim = _setting(block.lines, ast.Trim, unit, Fraction(0), problems, "trim")
    if sizes[0] is None or sizes[-1] is None or seam is None or measure is None or trim is None:
        return None
    settings = Settings(unit, sizes[0], sizes[-1], seam, measure, trim)
    return settings if _within_limits(settings, size, problems) else None


def _within_limits(settings: Settings, size: ast.Size, problems: Problems) -> bool:
    in_cm = CM_IN_AN_INCH if settings.unit == "in" else Fraction(1)
    if max(settings.width, settings.height) * in_cm > MOST_CM:
        problems.report("size-too-large", size.span, help="a block is at most 10 m, about 393 in, wide or high")
        return False
    long, short = sorted((settings.width, settings.height), reverse=True)
    if long > MOST_OBLONG * short:
        help_text = f"a block is at most {MOST_OBLONG} times as long as it is wide"
        problems.report("size-too-oblong", size.span, help=help_text)
        return False
    return True


def _first(lines: Sequence[ast.BlockLine], kind: type[Line]) -> Line | None:
    return next((line for line in lines if isinstance(line, kind)), None)


def _setting(
    lines: Sequence[ast.BlockLine],
    kind: type[ast.Seam | ast.Measure | ast.Trim],
    unit: RulerUnit,
    usual: Fraction,
    problems: Problems,
    what: str,
) -> Fraction | None:
    line = _first(lines, kind)
    return usual if line is None else _length(line.length, unit, problems, what)


def _length(literal: ast.LengthLiteral, unit: RulerUnit, problems: Problems, what: str) -> Fraction | None:
    """A length in the block's unit. Inches and centimetres in one block are an error, never converted in silence."""
    if literal.value <= 0:
        problems.report("length-not-positive", literal.span, what=what)
        return None
    if what in MOST and literal.value > MOST[what][unit] * (10 if literal.unit == "mm" else 1):
        most = write_size(MOST[what][unit], MOST[what][unit], unit)
        problems.report("setting-too-large", literal.span, what=what, help=f"it is at most {most}")
        return None
    if (literal.unit == "in") != (unit == "in"):
        help_text = f"the size is in {'inches' if unit == 'in' else 'centimetres'}: write this in the same unit"
        problems.report("units-mixed", literal.span, help=help_text)
        return None
    return literal.value / 10 if literal.unit == "mm" else literal.value


def read_choices(lines: Sequence[ast.BlockLine], names: Scope, problems: Problems) -> tuple[Choice, ...]:
    """All `make` lines, in order, but those with a count that cannot be, which are reported."""
    found: list[Choice] = []
    for line in lines:
        if isinstance(line, ast.Make):
            count = None
            if line.count is not None:
                count = whole_number(line.count, "number of units", problems, most=MOST_UNITS)
                if count is None:
                    continue
            what = now_called(line.what, problems) if line.what.text not in names.units else line.what.text
            found.append(Choice(what, line.method.text, line.what.span, line.method.span, count))
    return tuple(found)


def now_called(shape: ast.Word, problems: Problems) -> str:
    """The name of a shape as it is now; a name of old is reported and holds all the same."""
    now = FORMER_NAMES.get(shape.text)
    if now is None:
        return shape.text
    fixes = (change_to(shape.span, now, sure=True),)
    problems.report("word-renamed", shape.span, word=shape.text, now=now, help=renamed_help(now), fixes=fixes)
    return now


def read_grains(lines: Sequence[ast.BlockLine]) -> tuple[GrainChoice, ...]:
    """All `grain` lines, in order. Whether there are such letters is known when the patches have theirs."""
    return tuple(
        GrainChoice(line.letter.text, "long" if line.edge.text == "long" else "short", line.letter.span)
        for line in lines
        if isinstance(line, ast.Grain)
    )


def read_colourways(lines: Sequence[ast.BlockLine], names: Scope, problems: Problems) -> tuple[ColourPlan, ...]:
    """All colour plans whose fabrics are known; the others are reported."""
    plans: dict[str, ColourPlan] = {}
    for line in lines:
        if not isinstance(line, ast.Colourway):
            continue
        unknown = [word for pair in line.changes for word in pair if word.text not in names.fabrics]
        for word in unknown:
            if names.may_be_declared(word.text):
                continue
            near = nearest_word(word.text, names.fabrics)
            help_text = f"did you mean `{near}`?" if near else f"declare it with a `fabric {word.text}` line"
            file = names.file_of(word.span)
            fixes = (*did_you_mean(word, near), *((declare_fabric(word, file),) if file else ()))
            problems.report("name-unknown", word.span, kind="fabric", name=word.text, help=help_text, fixes=fixes)
        if line.name.text in plans:
            problems.report("name-twice", line.name.span, kind="colourway", name=line.name.text, help="name one anew")
        elif not unknown:
            changes = tuple((old.text, new.text) for old, new in line.changes)
            plans[line.name.text] = ColourPlan(line.name.text, changes)
    return tuple(plans.values())


def whole_number(number: ast.Number, what: str, problems: Problems, *, most: int) -> int | None:
    """A count of things; None when it is none, not whole or out of reason, which is reported."""
    if number.value.denominator != 1:
        below = max(1, int(number.value))
        advice = f"write {below} or {below + 1}"
        fixes = tuple(change_to(number.span, str(whole)) for whole in (below, below + 1))
        problems.report("count-not-whole", number.span, what=what, number=number.span.text, help=advice, fixes=fixes)
        return None
    if number.value < 1:
        problems.report("length-not-positive", number.span, what=what, help="the least is 1")
        return None
    if number.value > most:
        problems.report("setting-too-large", number.span, what=what, help=f"it is at most {most:,}")
        return None
    return int(number.value)
