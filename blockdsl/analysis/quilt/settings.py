"""Reading the lines of a quilt: each kind of line once, fabrics looked up, lengths in the quilt's unit."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final, TypeVar

from msgspec import Struct

from blockdsl.analysis.fixes import declare_fabric, did_you_mean
from blockdsl.analysis.scope import Scope
from blockdsl.analysis.settings import whole_number
from blockdsl.diagnostics import Problems
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import RulerUnit
from blockdsl.model.quilt import BackingChoice, BindingChoice, ScrapsChoice, SleeveChoice, WaddingChoice
from blockdsl.syntax import ast

Line = TypeVar("Line", bound=ast.QuiltLine)

USUAL_OVERAGE: Final[dict[RulerUnit, Fraction]] = {"in": Fraction(4), "cm": Fraction(10)}
"""What backing and wadding have more on each side when nothing is said (common practice, no source)."""
MOST_PRINTS: Final = 1000
MOST_PERCENT: Final = 50


def first_line(lines: Sequence[ast.QuiltLine], kind: type[Line]) -> Line | None:
    """The first line of a kind."""
    return next((line for line in lines if isinstance(line, kind)), None)


class SettingWords(Struct):
    """Looks up what the lines of one quilt name; what is unknown is reported once."""

    names: Scope
    unit: RulerUnit
    problems: Problems

    def fabric(self, word: ast.Word | None) -> str | None:
        """The fabric's name; None when there is none, which is reported."""
        if word is None or word.text in self.names.fabrics:
            return word.text if word else None
        if not self.names.may_be_declared(word.text):
            near = self.names.nearest(word.text)
            if word.text in self.names.units:
                advice = f"`{word.text}` is a unit: a fabric is wanted here"
            elif near:
                advice = f"did you mean `{near}`?"
            else:
                advice = f'declare it: `fabric {word.text} "Its name in print" #c0c0c0`'
            file = self.names.file_of(word.span)
            fixes = (*did_you_mean(word, near), *((declare_fabric(word, file),) if file else ()))
            fixes = () if word.text in self.names.units else fixes
            self.problems.report("name-unknown", word.span, kind="fabric", name=word.text, help=advice, fixes=fixes)
        return None

    def length(self, literal: ast.LengthLiteral, what: str, *, most: Fraction | None = None) -> Fraction | None:
        """A length in the quilt's unit; inches and centimetres in one quilt are an error, never converted unasked."""
        if literal.value <= 0:
            advice = "give it a width, or leave the line out"
            self.problems.report("length-not-positive", literal.span, what=what, help=advice)
            return None
        if (literal.unit == "in") != (self.unit == "in"):
            advice = (
                f"the blocks are in {'inches' if self.unit == 'in' else 'centimetres'}: write this in the same unit"
            )
            self.problems.report("units-mixed", literal.span, help=advice)
            return None
        length = literal.value / 10 if literal.unit == "mm" else literal.value
        if most is not None and length > most:
            advice = f"it is at most {most} {self.unit}"
            self.problems.report("setting-too-large", literal.span, what=what, help=advice)
            return None
        return length


class Finish(Struct, frozen=True):
    """What is said of the rest of the quilt."""

    binding: BindingChoice | None
    backing: BackingChoice | None
    wadding: WaddingChoice | None
    sleeve: SleeveChoice | None
    scraps: tuple[ScrapsChoice, ...]
    usable_width: Fraction | None
    shrinkage: Fraction | None


def read_finish(lines: Sequence[ast.QuiltLine], words: SettingWords) -> Finish:
    """Binding, backing, wadding, sleeve, scraps and what is said of the fabric; what cannot be is reported."""
    overage = USUAL_OVERAGE[words.unit]
    usable = first_line(lines, ast.UsableWidth)
    return Finish(
        binding=_binding(first_line(lines, ast.Binding), words),
        backing=_backing(first_line(lines, ast.Backing), words, overage),
        wadding=_wadding(first_line(lines, ast.Wadding), words, overage),
        sleeve=_sleeve(first_line(lines, ast.Sleeve), words),
        scraps=tuple(
            choice for line in lines if isinstance(line, ast.Scraps) if (choice := _scraps(line, words)) is not None
        ),
        usable_width=None if usable is None else words.length(usable.width, "usable width of the fabric"),
        shrinkage=_shrinkage(first_line(lines, ast.Shrinkage), words),
    )


def _binding(line: ast.Binding | None, words: SettingWords) -> BindingChoice | None:
    if line is None:
        return None
    most = Fraction(12) if words.unit == "in" else Fraction(30)
    fabric, width = words.fabric(line.fabric), words.length(line.width, "width of the binding strips", most=most)
    return None if fabric is None or width is None else BindingChoice(fabric, width, line.bias, line.span)


def _backing(line: ast.Backing | None, words: SettingWords, usual: Fraction) -> BackingChoice | None:
    if line is None:
        return None
    fabric = words.fabric(line.fabric)
    overage = _overage(line.overage, words, usual)
    width = None if line.width is None else words.length(line.width, "width of the backing fabric")
    if fabric is None or overage is None or (line.width is not None and width is None):
        return None
    return BackingChoice(fabric, overage, width, line.span)


def _overage(literal: ast.LengthLiteral | None, words: SettingWords, usual: Fraction) -> Fraction | None:
    most = Fraction(20) if words.unit == "in" else Fraction(50)
    return usual if literal is None else words.length(literal, "overage", most=most)


def _wadding(line: ast.Wadding | None, words: SettingWords, usual: Fraction) -> WaddingChoice | None:
    overage = None if line is None else _overage(line.overage, words, usual)
    return None if line is None or overage is None else WaddingChoice(overage, line.span)


def _sleeve(line: ast.Sleeve | None, words: SettingWords) -> SleeveChoice | None:
    if line is None:
        return None
    fabric, depth = words.fabric(line.fabric), words.length(line.depth, "depth of the sleeve")
    return None if fabric is None or depth is None else SleeveChoice(fabric, depth, line.span)


def _scraps(line: ast.Scraps, words: SettingWords) -> ScrapsChoice | None:
    prints = whole_number(line.prints, "number of fat quarters", words.problems, most=MOST_PRINTS)
    fabric = words.fabric(line.fabric)
    return None if fabric is None or prints is None else ScrapsChoice(fabric, prints, line.span)


def _shrinkage(line: ast.Shrinkage | None, words: SettingWords) -> Fraction | None:
    if line is None:
        return None
    if line.percent.value > MOST_PERCENT:
        advice = "cotton shrinks by 3 to 5 %; write `shrinkage 5 %`"
        words.problems.report("setting-too-large", line.percent.span, what="shrinkage", help=advice)
        return None
    return line.percent.value / 100
