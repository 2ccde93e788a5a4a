"""Counting before laying: how many patches and units a grid comes to, and how deep its units lie in one another.

A unit of units of units can ask for more patches than there are stars; each is counted once, from the inside out,
so that such a block is refused before anything is laid.
"""

from __future__ import annotations

from collections.abc import Callable

from msgspec import Struct

from blockdsl.analysis.grid import Grid
from blockdsl.analysis.scope import MOST_NESTING, Scope
from blockdsl.diagnostics import Span
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes import SHAPES
from blockdsl.syntax import ast

MOST_PATCHES = 100_000
MOST_UNITS = 100_000


class Excess(Struct, frozen=True):
    """What is too much or goes round in a ring: the problem's code, the cell, and the units from it to itself."""

    code: str
    span: Span
    ring: tuple[str, ...] = ()


class _Tally(Struct, frozen=True):
    """Patches and named or shaped units in something, and how many named units lie in one another in it."""

    patches: int
    units: int
    depth: int


_ONE_PATCH = _Tally(1, 0, 0)


class Census:
    """Counts units by name, each once. `grid_of` and `filling_of` give None for what cannot be read."""

    def __init__(
        self,
        names: Scope,
        grid_of: Callable[[ast.UnitDeclaration], Grid | None],
        filling_of: Callable[[ast.ShapeCall], ShapeUse | None],
    ) -> None:
        """`names` is the table of fabrics and units."""
        self._names = names
        self._grid_of = grid_of
        self._filling_of = filling_of
        self._counted: dict[str, _Tally] = {}
        self._drawn: dict[ShapeUse, int] = {}
        self._inside: list[str] = []

    def excess_in(self, grid: Grid) -> Excess | None:
        """The first cell of a grid with which it is too much; None when the grid can be laid."""
        found = self._tally(grid)
        self._inside.clear()
        return found if isinstance(found, Excess) else None

    def _tally(self, grid: Grid) -> _Tally | Excess:
        patches, units, depth = 0, 0, 0
        for region in grid.regions:
            one = self._of_cell(region.cell)
            if isinstance(one, Excess):
                return one
            patches, units, depth = patches + one.patches, units + one.units, max(depth, one.depth)
            if patches > MOST_PATCHES:
                return Excess("too-many-patches", region.cell.span)
            if units > MOST_UNITS:
                return Excess("too-many-units", region.cell.span)
        return _Tally(patches, units, depth)

    def _of_cell(self, cell: ast.NameCell | ast.PairCell | ast.ShapeCell) -> _Tally | Excess:
        if isinstance(cell, ast.PairCell):
            return _Tally(2, 1, 0)
        if isinstance(cell, ast.ShapeCell):
            return self._of_shape(cell.call, 0)
        name = cell.name.text
        unit = None if name in self._names.fabrics else self._names.units.get(name)
        return _ONE_PATCH if unit is None else self._of_unit(unit, cell.span)

    def _of_unit(self, unit: ast.UnitDeclaration, span: Span) -> _Tally | Excess:
        name = unit.name.text
        if name in self._inside:
            return Excess("unit-cycle", span, (*self._inside[self._inside.index(name) :], name))
        if name not in self._counted:
            if len(self._inside) >= MOST_NESTING:
                return Excess("nesting-too-deep", span)
            self._inside.append(name)
            found = self._count(unit)
            if isinstance(found, Excess):
                return found
            self._inside.pop()
            self._counted[name] = found
        tally = self._counted[name]
        if len(self._inside) + tally.depth > MOST_NESTING:
            return Excess("nesting-too-deep", span)
        return tally

    def _count(self, unit: ast.UnitDeclaration) -> _Tally | Excess:
        if unit.shape is not None:
            return self._of_shape(unit.shape, 1)
        if not any(isinstance(line, ast.Row) for line in unit.lines):
            return _Tally(sum(isinstance(line, ast.FreePatch) for line in unit.lines), 1, 1)
        grid = self._grid_of(unit)
        inner = _ONE_PATCH if grid is None else self._tally(grid)
        return inner if isinstance(inner, Excess) else _Tally(inner.patches, inner.units + 1, inner.depth + 1)

    def _of_shape(self, call: ast.ShapeCall, depth: int) -> _Tally:
        filling = self._filling_of(call)
        if filling is None:
            return _Tally(1, 1, depth)
        if filling not in self._drawn:
            shape = SHAPES[filling.shape]
            self._drawn[filling] = len(shape.draw(filling, shape.wants(filling) or Fraction(1), Fraction(1)))
        return _Tally(self._drawn[filling], 1, depth)
