"""Where the designs of a quilt come from: blocks by title at one size, and units of which borders are pieced."""

from __future__ import annotations

from collections.abc import Callable

from msgspec import Struct, field
from msgspec.structs import replace

from blockdsl.analysis.design import design_block
from blockdsl.analysis.fixes import did_you_mean
from blockdsl.analysis.place import Placer
from blockdsl.analysis.scope import Scope
from blockdsl.diagnostics import Problems, nearest_word
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign
from blockdsl.shapes import SHAPES
from blockdsl.syntax import ast

FindBlock = Callable[[ast.BlockDeclaration, ast.LengthLiteral | None], BlockDesign | None]
"""A block at its own size, or so wide; None when it has errors."""


class Designs(Struct):
    """The designs of one quilt; `names` and `placer` are those of the file that it is written in."""

    names: Scope
    placer: Placer
    find: FindBlock
    problems: Problems
    _missing: set[str] = field(default_factory=set)

    def block(self, title: ast.Text, width: ast.LengthLiteral | None) -> BlockDesign | None:
        """The block of a title; None when it is unknown, which is reported once, or has errors."""
        declaration = self.names.blocks.get(title.text)
        if declaration is None:
            if title.text not in self._missing and not self.names.incomplete:
                near = nearest_word(title.text, self.names.blocks)
                advice = f'did you mean "{near}"?' if near else "bring its file in with a `use` line, or draw it here"
                fixes = did_you_mean(title, near)
                self.problems.report(
                    "name-unknown", title.span, kind="block", name=title.text, help=advice, fixes=fixes
                )
            self._missing.add(title.text)
            return None
        return self.find(declaration, width)

    def block_so_high(self, title: ast.Text, height: ast.LengthLiteral) -> BlockDesign | None:
        """The block at the height of a border."""
        own = self.block(title, None)
        if own is None:
            return None
        width = replace(height, value=height.value * own.width / own.height)
        return self.block(title, width)

    def unit(
        self, word: ast.Word, height: ast.LengthLiteral, *, swapped: bool, like: BlockDesign
    ) -> BlockDesign | None:
        """A named unit as a design of its own, `height` high once it is turned (`swapped`: by a quarter).

        It is made as the block `like` makes it.
        """
        proportion = self.proportion(word)
        if proportion is None:
            return None
        across = height if swapped else replace(height, value=height.value * proportion)
        down = replace(height, value=height.value / proportion) if swapped else height
        row = ast.Row(word.span, (ast.NameCell(word.span, word, ()),))
        lines: list[ast.BlockLine] = [ast.Size(height.span, across, down), row]
        block = ast.BlockDeclaration(word.span, ast.Text(word.span, word.text), tuple(lines))
        design = design_block(block, self.names, self.placer, self.problems)
        if design is None:
            return None
        made = {unit.name for unit in design.units} | {unit.filling.shape for unit in design.units if unit.filling}
        choices = tuple(choice for choice in like.choices if choice.what in made)
        return replace(design, seam=like.seam, measure=like.measure, choices=choices)

    def proportion(self, word: ast.Word) -> Fraction | None:
        """Width to height of a named unit; None when there is no such unit, which is reported."""
        unit = self.names.units.get(word.text)
        if unit is None:
            self._report_no_unit(word)
            return None
        if unit.shape is None:
            return self.placer.proportion_of(unit)
        shape = SHAPES.get(unit.shape.shape.text)
        return None if shape is None else (shape.proportion or Fraction(1))

    def _report_no_unit(self, word: ast.Word) -> None:
        if self.names.may_be_declared(word.text):
            return
        near = nearest_word(word.text, self.names.units)
        if word.text in self.names.fabrics:
            advice = f"`{word.text}` is a fabric: leave `pieced` out for a plain border"
        elif near:
            advice = f"did you mean `{near}`?"
        else:
            advice = f"declare it: `unit {word.text} = geese lantern on fog`"
        fixes = () if word.text in self.names.fabrics else did_you_mean(word, near)
        self.problems.report("name-unknown", word.span, kind="unit", name=word.text, help=advice, fixes=fixes)
