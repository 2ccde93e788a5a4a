"""Judging fabrics: those too alike side by side, those that nothing uses."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import combinations
from math import sqrt

from blockdsl.analysis.fixes import without_line
from blockdsl.analysis.scope import Scope
from blockdsl.diagnostics import Problems
from blockdsl.geometry import Exact, Point
from blockdsl.geometry.polygon import edges
from blockdsl.model import BlockDesign, Fabric, contrast
from blockdsl.syntax import ast

ALIKE_CONTRAST = 1.15
FEW_FABRICS = 100
ALIKE_DISTANCE = 40.0
VALUE_CONTRAST = 1.3


def report_fabrics_too_alike(design: BlockDesign, names: Scope, problems: Problems) -> None:
    """Warn of neighbours with too little contrast, or that ought to differ in value and do not."""
    # Comparing colours is quick where fabrics are few, finding neighbours where they are very many.
    touching = _touching(design) if len(design.fabrics) > FEW_FABRICS else None
    pairs = combinations(design.fabrics, 2) if touching is None else _in_order(design, touching)
    alike = [(one, other) for one, other in pairs if _too_alike(one, other)]
    if alike and touching is None:
        touching = _touching(design)
    for one, other in alike:
        if touching and (one.name, other.name) in touching:
            declared = names.declared[other.name]
            ours = declared.span.source is names.main.source
            problems.report(
                "contrast-low",
                declared.span if ours else design.span,
                one=one.label,
                other=other.label,
                help="make one of them lighter or darker, so that the pattern shows",
            )


def _in_order(design: BlockDesign, pairs: Iterable[tuple[str, str]]) -> list[tuple[Fabric, Fabric]]:
    place = {fabric.name: number for number, fabric in enumerate(design.fabrics)}
    numbers = sorted((place[one], place[other]) for one, other in pairs if place[one] < place[other])
    return [(design.fabrics[one], design.fabrics[other]) for one, other in numbers]


def _too_alike(one: Fabric, other: Fabric) -> bool:
    ratio = contrast(one.colour, other.colour)
    if one.value != other.value and "medium" not in (one.value, other.value):
        return ratio < VALUE_CONTRAST
    return ratio < ALIKE_CONTRAST and _distance(one.colour, other.colour) < ALIKE_DISTANCE


def _distance(one: str, other: str) -> float:
    """Distance of two colours in red, green and blue, 0 to 442; coarse, but two that look alike are near."""
    pairs = ((int(one[place : place + 2], 16), int(other[place : place + 2], 16)) for place in (1, 3, 5))
    return sqrt(sum((a - b) ** 2 for a, b in pairs))


def _touching(design: BlockDesign) -> set[tuple[str, str]]:
    """Pairs of fabrics, both ways round, of which some patches lie along each other's edges."""
    along: dict[tuple[Exact, ...], list[tuple[Exact, Exact, str]]] = {}
    for patch in design.patches:
        for start, end in edges(patch.outline):
            line, low, high = _on_line(start, end)
            along.setdefault(line, []).append((low, high, patch.fabric))
    found: set[tuple[str, str]] = set()
    for stretches in along.values():
        open_here: list[tuple[Exact, str]] = []
        for low, high, fabric in sorted(stretches):
            # The cover is proved: never more than two patches lie along one place of a line.
            open_here = [(end, other) for end, other in open_here if low < end]
            for _, other in open_here:
                found |= {(fabric, other), (other, fabric)}
            open_here.append((high, fabric))
    return found


def _on_line(start: Point, end: Point) -> tuple[tuple[Exact, ...], Exact, Exact]:
    """The line through an edge as a key, and where along it the edge runs."""
    dx, dy = end.x - start.x, end.y - start.y
    if dx == 0:
        low, high = sorted((start.y, end.y))
        return (start.x,), low, high
    slope = dy / dx
    low, high = sorted((start.x, end.x))
    return (slope, start.y - slope * start.x), low, high


def report_colourways(design: BlockDesign, block: ast.BlockDeclaration, problems: Problems) -> None:
    """Warn of colour plans that change nothing, or that run two neighbours into one."""
    used = {fabric.name for fabric in design.fabrics}
    for line in block.lines:
        if not isinstance(line, ast.Colourway):
            continue
        for old, _ in line.changes:
            if old.text not in used:
                help_text = f"the block uses {', '.join(f'`{name}`' for name in sorted(used))}"
                problems.report("colourway-idle", old.span, name=old.text, help=help_text)
        _report_merged(design, line, problems)


def _report_merged(design: BlockDesign, line: ast.Colourway, problems: Problems) -> None:
    taken = {old.text: new.text for old, new in line.changes}
    names = [fabric.name for fabric in design.fabrics]
    alike = [pair for pair in combinations(names, 2) if taken.get(pair[0], pair[0]) == taken.get(pair[1], pair[1])]
    touching = _touching(design) if alike else set()
    for one, other in alike:
        if (one, other) in touching:
            problems.report(
                "colourway-merges",
                line.span,
                one=one,
                other=other,
                becomes=taken.get(one, one),
                name=line.name.text,
                help="give one of the two another fabric, so that the seam shows",
            )


def report_unused_fabrics(names: Scope, used: set[str], problems: Problems) -> None:
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
                fixes=(without_line(declaration.span, "fabric"),),
            )


def _words_said(file: ast.File) -> set[str]:
    """Fabrics that a colour plan or a unit that is not placed speaks of."""
    said: set[str] = set()
    for declaration in file.declarations:
        if isinstance(declaration, ast.BlockDeclaration):
            for line in declaration.lines:
                if isinstance(line, ast.Colourway):
                    said.update(word.text for pair in line.changes for word in pair)
        elif isinstance(declaration, ast.UnitDeclaration):
            said.update(_words_of_unit(declaration))
    return said


def _words_of_unit(unit: ast.UnitDeclaration) -> Iterable[str]:
    calls = [unit.shape] if unit.shape else []
    for line in unit.lines:
        if isinstance(line, ast.FreePatch | ast.Applique):
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
