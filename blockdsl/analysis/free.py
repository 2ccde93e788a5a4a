"""Free patches: straight-sided outlines in grid coordinates."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from blockdsl.analysis.grid import is_damaged_drawing, too_fine
from blockdsl.analysis.scope import Scope
from blockdsl.diagnostics import Problems, Span
from blockdsl.geometry import Point, Surd
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import clockwise, drop_straight_corners, is_simple
from blockdsl.model import Patch
from blockdsl.syntax import ast

FEWEST_CORNERS = 3
MOST_CORNERS = 200


def lay_free_patches(
    lines: Sequence[ast.BlockLine], title: Span, width: Fraction, height: Fraction, names: Scope, problems: Problems
) -> tuple[Patch, ...] | None:
    """The patches of `patch` lines, scaled from their `grid` to width × height; None when one is at fault.

    Its `grid` has been found usable, and its names have been looked up.
    """
    if any(is_damaged_drawing(line) for line in lines):
        return None
    extent = next((line for line in lines if isinstance(line, ast.GridExtent)), None)
    drawn = [line for line in lines if isinstance(line, ast.FreePatch)]
    if extent is None or not drawn:
        what = "`patch` lines" if extent else "`row` lines, or a `grid` line with `patch` lines"
        kind = "block" if title.text.startswith('"') else "unit"
        problems.report("rows-missing", title, kind=kind, name=title.text.strip('"'), help=f"give it {what}")
        return None
    if too_fine([part for line in drawn for part in _rational_parts(line)]):
        help_text = "write corners with small fractions, such as `1/2`, and roots as `r2` or `r3`"
        problems.report("grid-too-fine", extent.span, what="corners", help=help_text)
        return None
    scale = (width / extent.across.value, height / extent.down.value)
    patches = [_patch(line, scale, names, problems) for line in drawn]
    found = tuple(patch for patch in patches if patch is not None)
    return found if len(found) == len(patches) else None


def _rational_parts(line: ast.FreePatch) -> Iterator[Fraction]:
    """What is left of each number's fractions once whole numbers and roots are taken off."""
    for corner in line.corners:
        for number in (corner.x, corner.y):
            parts = [part for _, part in number.terms] if isinstance(number, Surd) else [number]
            yield from (Fraction(part.numerator % part.denominator, part.denominator) for part in parts)


def _patch(line: ast.FreePatch, scale: tuple[Fraction, Fraction], names: Scope, problems: Problems) -> Patch | None:
    if line.fabric.text not in names.fabrics:
        return None  # reported where the names of the lines are looked up
    outline = tuple(Point(corner.x * scale[0], corner.y * scale[1]) for corner in line.corners)
    outline = drop_straight_corners(outline) if len(outline) >= FEWEST_CORNERS else outline
    if len(outline) < FEWEST_CORNERS or len(outline) > MOST_CORNERS:
        help_text = f"a patch has from {FEWEST_CORNERS} to {MOST_CORNERS} corners that do not lie on one line"
        problems.report("patch-too-few-corners", line.span, help=help_text)
        return None
    if not is_simple(outline):
        problems.report("patch-not-simple", line.span, help="name the corners in order round the patch")
        return None
    return Patch(line.fabric.text, clockwise(outline), span=line.span)
