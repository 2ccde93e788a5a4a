"""Judging a block that is laid out: the proof of cover, the ruler, the fabrics side by side."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction
from itertools import combinations
from math import gcd, lcm

from blockdsl.analysis.names import Names
from blockdsl.analysis.place import Layout
from blockdsl.analysis.settings import Settings
from blockdsl.diagnostics import Problems
from blockdsl.geometry import Exact, Point, Polygon, to_float
from blockdsl.geometry.cover import Cover, Region, prove_cover
from blockdsl.geometry.number import write_exact
from blockdsl.geometry.polygon import bounding_box, edges
from blockdsl.model import BlockDesign, Fabric, contrast
from blockdsl.syntax import ast

RECTANGLE = 4
MOST_REPORTS = 6


def covers(
    layout: Layout,
    settings: Settings,
    columns: Sequence[Fraction],
    heights: Sequence[Fraction],
    block: ast.BlockDeclaration,
    problems: Problems,
) -> Exact | None:
    """The block's area when the patches cover it exactly once; otherwise None, gaps and overlaps reported."""
    cover = prove_cover([patch.outline for patch in layout.patches], settings.width, settings.height)
    found = [
        *(("patches-overlap", region) for region in cover.overlaps),
        *(("patches-leave-gap", region) for region in cover.gaps),
        *(("patch-outside", region) for region in cover.outside),
    ]
    if not found:
        return _proved(cover, settings)
    lines = [line for line in block.lines if isinstance(line, ast.FreePatch)]
    for code, region in found[:MOST_REPORTS]:
        _report_region(code, region, layout, settings, (columns, heights), block, lines, problems)
    return None


def _proved(cover: Cover, settings: Settings) -> Exact:
    # The proof is by edges; the areas must tell the same, or the proof itself is at fault.
    if cover.area != settings.width * settings.height:
        raise AssertionError("the edges close but the areas do not add up")
    return cover.area


def _report_region(
    code: str,
    region: Region,
    layout: Layout,
    settings: Settings,
    grid: tuple[Sequence[Fraction], Sequence[Fraction]],
    block: ast.BlockDeclaration,
    lines: Sequence[ast.FreePatch],
    problems: Problems,
) -> None:
    """One gap or overlap, at the `patch` line that is last in it where there is one."""
    of_lines = [lines[index] for index in region.patches if index < len(lines) and len(lines) == len(layout.patches)]
    span = of_lines[-1].span if of_lines else block.name.span
    related = tuple((line.span, "with this patch") for line in of_lines[:-1])
    area = f"{write_exact(region.area)} square {'inches' if settings.unit == 'in' else 'cm'}"
    names = " and ".join(layout.patches[index].fabric for index in region.patches[:4])
    help_text = {
        "patches-overlap": "move the corners of one so that they share an edge only",
        "patches-leave-gap": "add a patch there, or move the corners of its neighbours",
        "patch-outside": "keep corners within the `grid`",
    }[code]
    place = f"{_place(region.place, settings)}{_cell(region.place, grid)}"
    problems.report(code, span, help=help_text, related=related, area=area, place=place, patches=names)


def _place(place: Point, settings: Settings) -> str:
    across, down = (f"{to_float(value):.4g}" for value in place)
    return f"{across} {settings.unit} from the left and {down} {settings.unit} from the top"


def _cell(place: Point, grid: tuple[Sequence[Fraction], Sequence[Fraction]]) -> str:
    columns, rows = ([n for n, at in enumerate(lines) if at <= value] for lines, value in zip(grid, place, strict=True))
    return f" (row {rows[-1] + 1}, column {columns[-1] + 1})" if columns and rows else ""


# --- the ruler -----------------------------------------------------------------------------------


def report_sizes_off_the_ruler(design: BlockDesign, problems: Problems) -> None:
    """Warn when a unit or an upright patch has a finished size that the ruler does not show."""
    sizes = set(_measured_sizes(design))
    off = sorted(size for size in sizes if (size / design.measure).denominator != 1)
    if not off:
        return
    step = _least_common([design.measure * design.width / size for size in sizes])
    below = step * (design.width // step)
    near = [size for size in (below, below + step) if size > 0]
    shape = Fraction(design.height, 1) / design.width
    sizes_text = " or ".join(_size_text(size, size * shape, design.unit) for size in near)
    problems.report(
        "size-off-ruler",
        design.span,
        cell=f"{write_exact(off[0])} {design.unit}",
        measure=f"{write_exact(design.measure)} {design.unit}",
        help=f"the nearest sizes at which every unit falls on the ruler: {sizes_text}",
    )


def _size_text(width: Fraction, height: Fraction, unit: str) -> str:
    if width == height:
        return f"{write_exact(width)} {unit}"
    return f"{write_exact(width)} x {write_exact(height)} {unit}"


def _measured_sizes(design: BlockDesign) -> Iterable[Fraction]:
    """Finished widths and heights that a maker measures: the units' and the upright rectangles'."""
    for unit in design.units:
        yield from (Fraction(unit.width), Fraction(unit.height))  # type: ignore[arg-type]  # grid boxes are rational
    seen: set[tuple[Exact, ...]] = set()
    for patch in design.patches:
        outline = patch.outline
        if len(outline) == RECTANGLE and _is_upright(outline):
            left, top, right, bottom = bounding_box(outline)
            size = (right - left, bottom - top)
            if size not in seen:
                seen.add(size)
                yield from (side for side in size if isinstance(side, Fraction))


def _is_upright(outline: Polygon) -> bool:
    first, second, third, fourth = outline
    return (first.x, second.x) == (fourth.x, third.x) and (first.y, third.y) == (second.y, fourth.y)


def _least_common(steps: Sequence[Fraction]) -> Fraction:
    """The least length that is a whole multiple of every step."""
    top, bottom = steps[0].numerator, steps[0].denominator
    for step in steps[1:]:
        top, bottom = lcm(top, step.numerator), gcd(bottom, step.denominator)
    return Fraction(top, bottom)


# --- fabrics -------------------------------------------------------------------------------------


ALIKE_CONTRAST = 1.15
ALIKE_DISTANCE = 40.0
VALUE_CONTRAST = 1.3


def report_fabrics_too_alike(design: BlockDesign, names: Names, problems: Problems) -> None:
    """Warn of neighbours that cannot be told apart, or that ought to differ in value and do not."""
    for one, other in combinations(design.fabrics, 2):
        if _too_alike(one, other) and _are_neighbours(design, one.name, other.name):
            declared = names.declared[other.name]
            ours = declared.span.source is names.main.source
            problems.report(
                "contrast-low",
                declared.span if ours else design.span,
                one=one.label,
                other=other.label,
                help="make one of them lighter or darker, so that the pattern can be seen",
            )


def _too_alike(one: Fabric, other: Fabric) -> bool:
    ratio = contrast(one.colour, other.colour)
    if one.value != other.value and "medium" not in (one.value, other.value):
        return ratio < VALUE_CONTRAST
    return ratio < ALIKE_CONTRAST and _distance(one.colour, other.colour) < ALIKE_DISTANCE


def _distance(one: str, other: str) -> float:
    """Distance of two colours in red, green and blue, 0 to 442; coarse, but two that look alike are near."""
    pairs = ((int(one[place : place + 2], 16), int(other[place : place + 2], 16)) for place in (1, 3, 5))
    return sum((a - b) ** 2 for a, b in pairs) ** 0.5


def _are_neighbours(design: BlockDesign, one: str, other: str) -> bool:
    """Whether some patch of one fabric lies along an edge of one of the other."""
    along: dict[tuple[Exact, ...], list[tuple[Exact, Exact]]] = {}
    for patch in design.patches:
        if patch.fabric == one:
            for start, end in edges(patch.outline):
                line, low, high = _on_line(start, end)
                along.setdefault(line, []).append((low, high))
    for patch in design.patches:
        if patch.fabric == other:
            for start, end in edges(patch.outline):
                line, low, high = _on_line(start, end)
                if any(low < before and after < high for after, before in along.get(line, ())):
                    return True
    return False


def _on_line(start: Point, end: Point) -> tuple[tuple[Exact, ...], Exact, Exact]:
    """The line through an edge as a key, and where along it the edge runs."""
    dx, dy = end.x - start.x, end.y - start.y
    if dx == 0:
        low, high = sorted((start.y, end.y))
        return (start.x,), low, high
    slope = dy / dx
    low, high = sorted((start.x, end.x))
    return (slope, start.y - slope * start.x), low, high


def report_unused_fabrics(names: Names, used: set[str], problems: Problems) -> None:
    """Warn of the file's own fabrics that nothing uses; a file without blocks is a palette and may list any."""
    if not any(isinstance(declaration, ast.BlockDeclaration) for declaration in names.main.declarations):
        return
    said = used | _words_said(names.main)
    for declaration in names.main.declarations:
        if isinstance(declaration, ast.FabricDeclaration) and declaration.name.text not in said:
            problems.report(
                "fabric-unused",
                declaration.name.span,
                name=declaration.name.text,
                help="take the line out, or use the fabric in a cell",
            )


def _words_said(file: ast.File) -> set[str]:
    """Fabrics that a colour plan or a unit that is not placed speaks of."""
    said: set[str] = set()
    for declaration in file.declarations:
        if isinstance(declaration, ast.BlockDeclaration):
            for line in declaration.lines:
                if isinstance(line, ast.Colouring):
                    said.update(word.text for pair in line.changes for word in pair)
        elif isinstance(declaration, ast.UnitDeclaration):
            said.update(_words_of_unit(declaration))
    return said


def _words_of_unit(unit: ast.UnitDeclaration) -> Iterable[str]:
    calls = [unit.shape] if unit.shape else []
    for line in unit.lines:
        if isinstance(line, ast.FreePatch):
            yield line.fabric.text
        elif isinstance(line, ast.Row):
            for cell in line.cells:
                match cell:
                    case ast.NameCell():
                        yield cell.name.text
                    case ast.PairCell():
                        yield from (cell.left.text, cell.right.text)
                    case ast.ShapeCell():
                        calls.append(cell.call)
    for call in calls:
        yield from (word.text for word in call.words if isinstance(word, ast.Word))
