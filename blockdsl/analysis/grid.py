"""Grid lines: columns, heights, and which cells of the rows belong together."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import lcm

from msgspec import Struct

from blockdsl.diagnostics import Edit, Fix, Problems, Span, change_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.syntax import ast
from blockdsl.syntax.kinds import draws

MOST_CELLS = 200
FINEST = 10**9
"""Even steps in a grid: a billionth of a block is finer than any thread, and numbers beyond it only take time."""


class CellRegion(Struct, frozen=True):
    """A cell with all that continues it: columns `left` up to `right`, rows `top` up to `bottom`."""

    cell: ast.NameCell | ast.PairCell | ast.ShapeCell
    left: int
    top: int
    right: int
    bottom: int


class Grid(Struct, frozen=True):
    """Relative widths and heights with the regions in reading order."""

    columns: tuple[Fraction, ...]
    heights: tuple[Fraction, ...]
    regions: tuple[CellRegion, ...]


Lines = Sequence[ast.BlockLine]


def is_damaged_drawing(line: ast.BlockLine) -> bool:
    """Whether a line could not be read and may have drawn something; a broken setting leaves the drawing whole."""
    return isinstance(line, ast.UnreadableLine) and draws(line.keyword)


def read_grid(lines: Lines, name: Span, problems: Problems) -> Grid | None:
    """The grid that `row`, `columns` and `heights` lines draw, or None when it is not known (reported)."""
    rows = [line for line in lines if isinstance(line, ast.Row)]
    if any(is_damaged_drawing(line) for line in lines):
        return None
    across = len(rows[0].cells)
    if len(rows) > MOST_CELLS or any(len(row.cells) > MOST_CELLS for row in rows):
        problems.report("too-many-cells", name, help=f"a grid has at most {MOST_CELLS} × {MOST_CELLS} cells")
        return None
    if not _rows_alike(rows, across, problems):
        return None
    columns = _shares(lines, ast.Columns, across, "columns-do-not-match", problems)
    heights = _shares(lines, ast.Heights, len(rows), "heights-do-not-match", problems)
    regions = _regions(rows, problems)
    if columns is None or heights is None or regions is None:
        return None
    return Grid(columns, heights, regions)


def _cells(count: int) -> str:
    return "1 cell" if count == 1 else f"{count:,} cells"


def _rows_alike(rows: Sequence[ast.Row], across: int, problems: Problems) -> bool:
    fine = True
    for row in rows[1:]:
        found = len(row.cells)
        if found > across:
            span = row.cells[across].span.to(row.cells[-1].span)
            help_text = f"take {found - across} out, or add to the other rows; `-` continues the cell on its left"
            extra = Span(span.source, row.cells[across - 1].span.stop, span.stop)
            fix = Fix("Take out the cells that are too many", (Edit(extra, ""),))
            problems.report(
                "row-too-long", span, found=_cells(found), wanted=_cells(across), help=help_text, fixes=(fix,)
            )
        elif found < across:
            help_text = "add the missing cells; `-` continues the cell on its left, `|` the one above"
            more = "  -" * (across - found)
            fix = Fix(f"Add `{more.strip()}` to the row", (Edit(row.span.after, more),))
            problems.report(
                "row-too-short", row.span, found=_cells(found), wanted=_cells(across), help=help_text, fixes=(fix,)
            )
        fine = fine and found == across
    return fine


def _shares(
    lines: Lines, kind: type[ast.Columns | ast.Heights], wanted: int, code: str, problems: Problems
) -> tuple[Fraction, ...] | None:
    said = [line for line in lines if isinstance(line, kind)]
    if not said:
        return (Fraction(1),) * wanted
    numbers = said[0].numbers
    for number in numbers:
        if number.value <= 0:
            what = "width of a column" if kind is ast.Columns else "height of a row"
            problems.report("length-not-positive", number.span, what=what)
            return None
    if len(numbers) != wanted:
        word = said[0].span.text.split()[0]
        parts = [number.span.text for number in numbers[:wanted]] + ["1"] * (wanted - len(numbers))
        fix = change_to(said[0].span, f"{word} {' '.join(parts)}")
        problems.report(code, said[0].span, found=len(numbers), wanted=wanted, fixes=(fix,))
        return None
    if too_fine([number.value for number in numbers]):
        what = "columns" if kind is ast.Columns else "rows"
        problems.report("grid-too-fine", said[0].span, what=what, help="write them as small numbers, such as `1 1/2 1`")
        return None
    return tuple(number.value for number in numbers)


def too_fine(numbers: Sequence[Fraction]) -> bool:
    """Whether only a grid of more than `FINEST` even steps would hold all the numbers, one after the other."""
    bottom = 1
    for number in numbers:
        bottom = lcm(bottom, number.denominator)
        if bottom > FINEST:
            return True
    return sum(numbers) * bottom > FINEST


def _regions(rows: Sequence[ast.Row], problems: Problems) -> tuple[CellRegion, ...] | None:
    """Follow `-` and `|` to the cell that each continues; every region must be a rectangle."""
    if not any(isinstance(cell, ast.Continue) for row in rows for cell in row.cells):
        return tuple(
            CellRegion(cell, x, y, x + 1, y + 1)
            for y, row in enumerate(rows)
            for x, cell in enumerate(row.cells)
            if not isinstance(cell, ast.Continue)
        )
    owners: dict[tuple[int, int], tuple[int, int]] = {}
    members: dict[tuple[int, int], list[tuple[int, int]]] = {}
    for y, row in enumerate(rows):
        for x, cell in enumerate(row.cells):
            owner = _owner(cell, x, y, owners, problems)
            if owner is None:
                return None
            owners[x, y] = owner
            members.setdefault(owner, []).append((x, y))
    return _rectangles(rows, members, problems)


def _owner(
    cell: ast.Cell, x: int, y: int, owners: dict[tuple[int, int], tuple[int, int]], problems: Problems
) -> tuple[int, int] | None:
    if not isinstance(cell, ast.Continue):
        return (x, y)
    before = (x - 1, y) if cell.toward == "left" else (x, y - 1)
    if before not in owners:
        where = "on its left" if cell.toward == "left" else "above it"
        problems.report("nothing-to-continue", cell.span, where=where, help="put a fabric or a unit here")
        return None
    return owners[before]


def _rectangles(
    rows: Sequence[ast.Row], members: dict[tuple[int, int], list[tuple[int, int]]], problems: Problems
) -> tuple[CellRegion, ...] | None:
    regions = []
    for (x, y), cells in members.items():
        cell = rows[y].cells[x]
        assert not isinstance(cell, ast.Continue)  # noqa: S101  owners are never continuations
        right, bottom = 1 + max(c for c, _ in cells), 1 + max(r for _, r in cells)
        if len(cells) != (right - x) * (bottom - y) or min(c for c, _ in cells) < x:
            problems.report(
                "continue-not-rectangular",
                cell.span,
                help="a cell with its `-` and `|` must make a full rectangle; use `patch` lines for other outlines",
            )
            return None
        regions.append(CellRegion(cell, x, y, right, bottom))
    return tuple(regions)


def lines_at(shares: Iterable[Fraction], length: Fraction) -> tuple[Fraction, ...]:
    """Where the grid lines lie when the shares fill `length`, from 0."""
    shares = tuple(shares)
    total = sum(shares)
    places, so_far = [Fraction(0)], Fraction(0)
    for share in shares:
        so_far += share
        places.append(length * so_far / total)
    return tuple(places)
