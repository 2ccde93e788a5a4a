"""The proof that a block's patches cover it, and what to say when they do not."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from blockdsl.analysis.place import BlockLayout
from blockdsl.analysis.settings import Settings
from blockdsl.diagnostics import Problems
from blockdsl.geometry import Exact, Point, to_float
from blockdsl.geometry.arc_cover import CurvedPatch, prove_arcs
from blockdsl.geometry.cover import Cover, Region, prove_cover
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import RulerUnit
from blockdsl.model.lengths import write_length
from blockdsl.syntax import ast

MOST_REPORTS = 6
MENDS = {
    "patches-overlap": "move the corners of one so that the two only share an edge",
    "patches-leave-gap": "add a patch there, or move the corners of its neighbours",
    "patch-outside": "keep corners within the `grid`",
}


class Ground(Struct, frozen=True):
    """What the proof is about: the block as laid out, with its settings and its grid lines."""

    block: ast.BlockDeclaration
    layout: BlockLayout
    settings: Settings
    columns: Sequence[Fraction]
    heights: Sequence[Fraction]


def covered_area(ground: Ground, problems: Problems) -> Exact | None:
    """The block's area when the patches cover it exactly once; otherwise None, gaps and overlaps reported."""
    settings = ground.settings
    cover = prove_cover([patch.outline for patch in ground.layout.patches], settings.width, settings.height)
    found = [
        *(("patches-overlap", region) for region in cover.overlaps),
        *(("patches-leave-gap", region) for region in cover.gaps),
        *(("patch-outside", region) for region in cover.outside),
    ]
    for code, region in found[:MOST_REPORTS]:
        _report_region(code, region, ground, problems)
    return None if found else _proved(cover, ground)


def _proved(cover: Cover, ground: Ground) -> Exact:
    # The proof is by edges; the areas must agree, or the proof itself is at fault.
    settings = ground.settings
    if cover.area != settings.width * settings.height:
        raise AssertionError("the edges close but the areas do not add up")
    curved = [CurvedPatch(patch.curved, patch.outline) for patch in ground.layout.patches if patch.curved]
    # Curves come from shapes alone: where their arcs do not close, the shape is at fault and not the quilter.
    if curved and prove_arcs(curved):
        raise AssertionError("the arcs of a curved seam do not lie on each other")
    return cover.area


def _report_region(code: str, region: Region, ground: Ground, problems: Problems) -> None:
    """One gap or overlap, at the `patch` line that is last in it where there is one."""
    patches = ground.layout.patches
    lines = [line for line in ground.block.lines if isinstance(line, ast.FreePatch)]
    drawn_here = len(lines) == len(patches)
    of_lines = [lines[index] for index in region.patches] if drawn_here else []
    span = of_lines[-1].span if of_lines else ground.block.name.span
    related = tuple((line.span, "with this patch") for line in of_lines[:-1])
    unit = ground.settings.unit
    area = f"{write_length(region.area, unit)} square {'inches' if unit == 'in' else 'cm'}"
    names = " and ".join(patches[index].fabric for index in region.patches[:4])
    place = f"{_place(region.place, unit)}{_cell(region.place, ground)}"
    problems.report(code, span, help=MENDS[code], related=related, area=area, place=place, patches=names)


def _place(place: Point, unit: RulerUnit) -> str:
    across, down = (write_length(Fraction(to_float(value)).limit_denominator(8), unit) for value in place)
    return f"{across} {unit} from the left and {down} {unit} from the top"


def _cell(place: Point, ground: Ground) -> str:
    column = sum(at <= place.x for at in ground.columns)
    row = sum(at <= place.y for at in ground.heights)
    return f" (row {row}, column {column})" if row and column else ""
