"""What would let a unit fit its cell: a turn, another row or column, a cell that goes on over the next.

Each is a guess: what it does to the other cells of the block shows when it is tried.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from msgspec import Struct

from blockdsl.analysis.fixes import line_below
from blockdsl.analysis.grid import CellRegion, Grid
from blockdsl.diagnostics import Edit, Fix, Span, change_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import write_exact
from blockdsl.syntax import ast


class Around(Struct, frozen=True):
    """Where a cell lies: the lines of its block or unit, their grid, its own region."""

    lines: Sequence[ast.BlockLine]
    grid: Grid
    region: CellRegion


def fits_so(
    span: Span, wants: Fraction, gets: Fraction, *, turned: bool, instead: str, around: Around | None
) -> tuple[Fix, ...]:
    """The fixes for a cell at `span` that is `gets` and should be `wants`, width over height of the unrotated unit.

    `turned` is whether the unit lies on its side there; `instead` how another shape is written that fits, if any.
    """
    fixes = [change_to(span, instead)] if instead else []
    if around is None or around.region.cell.span != span:
        return tuple(fixes)
    if gets == 1 / wants:
        fixes.append(_turned(around.region.cell, turned=turned))
    width = 1 / wants if turned else wants
    fixes += _over_more(around, width)
    fixes += _other_shares(around, width)
    return tuple(fixes)


def _turned(cell: ast.NameCell | ast.PairCell | ast.ShapeCell, *, turned: bool) -> Fix:
    """A turn more, or less where there is one already."""
    if turned:
        marks = len(cell.turns)
        return Fix("Take the turn off", (Edit(Span(cell.span.source, cell.span.stop - marks, cell.span.stop), ""),))
    return Fix("Turn it with `>`", (Edit(cell.span.after, ">"),))


def _extent(grid: Grid, region: CellRegion) -> tuple[Fraction, Fraction]:
    """Width and height of a region in the shares of its grid."""
    return (
        sum(grid.columns[region.left : region.right], Fraction(0)),
        sum(grid.heights[region.top : region.bottom], Fraction(0)),
    )


def _over_more(around: Around, ratio: Fraction) -> Iterator[Fix]:
    """The cell goes on over the cells at its right, or over those below, until it has its proportion."""
    rows = [line for line in around.lines if isinstance(line, ast.Row)]
    region, grid = around.region, around.grid
    size, others = _share_sizes(around)
    width, height = _extent(grid, region)
    right = region.right
    while width * size < ratio * height * others and right < len(grid.columns):
        width += grid.columns[right]
        right += 1
    if right > region.right and width * size == ratio * height * others:
        cells = [cell for row in rows[region.top : region.bottom] for cell in row.cells[region.right : right]]
        yield Fix("Let it continue to the right with `-`", tuple(Edit(cell.span, "-") for cell in cells))
    width, height = _extent(grid, region)
    bottom = region.bottom
    while width * size > ratio * height * others and bottom < len(grid.heights):
        height += grid.heights[bottom]
        bottom += 1
    if bottom > region.bottom and width * size == ratio * height * others:
        cells = [cell for row in rows[region.bottom : bottom] for cell in row.cells[region.left : region.right]]
        yield Fix("Let it continue below with `|`", tuple(Edit(cell.span, "|") for cell in cells))


def _share_sizes(around: Around) -> tuple[Fraction, Fraction]:
    """How long a share of the columns and one of the rows is, in one measure; alike where there is no `size` line."""
    size = next((line for line in around.lines if isinstance(line, ast.Size)), None)
    if size is None:
        return Fraction(1), Fraction(1)
    grid = around.grid
    return size.width.value / sum(grid.columns), size.height.value / sum(grid.heights)


def _other_shares(around: Around, ratio: Fraction) -> Iterator[Fix]:
    """Another height of the row, or width of the column, and the block as much shorter or narrower."""
    region, grid = around.region, around.grid
    across, down = _share_sizes(around)
    width, height = _extent(grid, region)
    if region.bottom == region.top + 1:
        heights = list(grid.heights)
        heights[region.top] = width * across / (ratio * down)
        yield _written(around, "heights", heights, ast.Heights)
    if region.right == region.left + 1:
        columns = list(grid.columns)
        columns[region.left] = ratio * height * down / across
        yield _written(around, "columns", columns, ast.Columns)


def _written(around: Around, word: str, shares: Sequence[Fraction], kind: type[ast.Heights | ast.Columns]) -> Fix:
    line = f"{word} {' '.join(write_exact(share) for share in shares)}"
    said = next((each for each in around.lines if isinstance(each, kind)), None)
    rows = [each for each in around.lines if isinstance(each, ast.Row)]
    edits = [Edit(said.span, line)] if said else [_above(rows[0].span, line)]
    title = f"Write `{line}`"
    size = next((each for each in around.lines if isinstance(each, ast.Size)), None)
    if size is not None:
        sides = {"columns": size.width.value, "heights": size.height.value}
        before = sum(around.grid.columns if word == "columns" else around.grid.heights)
        sides[word] = sides[word] * sum(shares) / before
        both = f"size {write_exact(sides['columns'])} x {write_exact(sides['heights'])} {size.width.unit}"
        edits.append(Edit(size.span, both))
        title += f" and `{both}`"
    return Fix(title, tuple(edits))


def _above(row: Span, text: str) -> Edit:
    """A new line above the first row."""
    source = row.source
    if row.line == 1:
        return line_below(row, text)
    return line_below(Span(source, source.offset(row.line - 1, 1), source.offset(row.line - 1, 1)), text)
