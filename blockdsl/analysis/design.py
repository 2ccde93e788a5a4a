"""One block from its declaration: settings read, cells laid, cover proved."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from msgspec.structs import replace

from blockdsl.analysis.applique import MOST_PIECES
from blockdsl.analysis.cover_report import Ground, covered_area
from blockdsl.analysis.maker_choices import read_language, read_maker, read_pressing
from blockdsl.analysis.neighbours import report_colourways, report_fabrics_too_alike
from blockdsl.analysis.place import BlockLayout, Placer
from blockdsl.analysis.remarks import read_photos, read_remarks
from blockdsl.analysis.ruler import report_sizes_off_the_ruler
from blockdsl.analysis.scope import Scope
from blockdsl.analysis.settings import Settings, read_choices, read_colourways, read_grains, read_settings
from blockdsl.analysis.symmetric import report_symmetry
from blockdsl.diagnostics import Problems, Span
from blockdsl.geometry import Exact, to_float
from blockdsl.geometry.arc_offset import least_radius
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign, Fabric, Patch
from blockdsl.model.lengths import write_length
from blockdsl.syntax import ast


def design_block(block: ast.BlockDeclaration, names: Scope, placer: Placer, problems: Problems) -> BlockDesign | None:
    """The block as it will look when it is finished; None when it has errors, which are reported."""
    settings = read_settings(block, problems)
    colourways = read_colourways(block.lines, names, problems)
    if settings is None:
        placer.look_through(block.lines, block.name.span)
        return None
    layout, columns, heights = placer.lay_lines(block.lines, block.name.span, settings.width, settings.height)
    if layout is None:
        return None
    area = covered_area(Ground(block, layout, settings, columns, heights), problems)
    if len(layout.appliques) > MOST_PIECES:
        advice = f"a block has at most {MOST_PIECES:,} pieces of appliqué"
        problems.report("too-many-patches", block.name.span, help=advice)
        return None
    if area is None or report_tight_curves(layout.patches, settings, block.name.span, problems):
        return None
    fabrics = _fabrics_in_order(layout, names)
    design = _assemble(block, settings, layout, area, fabrics, names, (columns, heights))
    # What is wrong with these at one size is wrong at all, and told once.
    once = problems if _size_line(block) is not None else Problems()
    choices, remarks = read_choices(block.lines, names, problems), read_remarks(block, names, once)
    photos = read_photos(block, names, once)
    design = replace(design, choices=choices, remarks=remarks, photos=photos)
    report_sizes_off_the_ruler(design, _size_line(block), problems)
    report_fabrics_too_alike(design, names, problems)
    report_colourways(design, block, problems)
    report_symmetry(design, block.lines, once)
    return replace(design, colourways=colourways)


def _size_line(block: ast.BlockDeclaration) -> ast.Size | None:
    """The block's own `size` line; None where it is laid at another size."""
    sizes = (line for line in block.lines if isinstance(line, ast.Size))
    return next((line for line in sizes if line.span.text.startswith("size ")), None)


def _fabrics_in_order(layout: BlockLayout, names: Scope) -> tuple[Fabric, ...]:
    """The block's fabrics as the files declare them, so that numbers do not change with the design."""
    used = {patch.fabric for patch in layout.patches} | {piece.fabric for piece in layout.appliques}
    return tuple(fabric for name, fabric in names.fabrics.items() if name in used)


def _assemble(
    block: ast.BlockDeclaration,
    settings: Settings,
    layout: BlockLayout,
    area: Exact,
    fabrics: tuple[Fabric, ...],
    names: Scope,
    lines: tuple[tuple[Fraction, ...], tuple[Fraction, ...]],
) -> BlockDesign:
    columns, heights = (tuple(end - start for start, end in pairwise(places)) for places in lines)
    return BlockDesign(
        name=block.name.text,
        span=block.name.span,
        unit=settings.unit,
        seam=settings.seam,
        measure=settings.measure,
        trim=settings.trim,
        width=settings.width,
        height=settings.height,
        columns=columns,
        heights=heights,
        cover_area=area,
        fabrics=fabrics,
        patches=layout.patches,
        units=layout.units,
        appliques=layout.appliques,
        choices=(),
        colourways=(),
        palette=tuple(names.fabrics.values()),
        notes=tuple(line.text.text for line in block.lines if isinstance(line, ast.Note) and line.place is None),
        level=next((line.text.text for line in block.lines if isinstance(line, ast.Level)), ""),
        time=next((line.text.text for line in block.lines if isinstance(line, ast.Time)), ""),
        family=next((line.name.text for line in block.lines if isinstance(line, ast.Family)), None),
        sources=tuple(line.text.text for line in block.lines if isinstance(line, ast.Origin)),
        cutters=tuple(names.cutters.values()),
        grains=read_grains(block.lines),
        compares_methods=any(isinstance(line, ast.Compare) for line in block.lines),
        pressing=read_pressing(block.lines),
        language=read_language(block.lines),
        maker=read_maker(block.lines),
    )


def report_tight_curves(patches: Sequence[Patch], settings: Settings, block: Span, problems: Problems) -> bool:
    """Report the tightest hollow edge when its allowance would close it up; whether there was one."""
    hollow = [
        bend.radius
        for patch in patches
        if patch.curved is not None
        for bend in patch.curved.bends
        if bend is not None and bend.hollow
    ]
    least = least_radius(settings.seam)
    tight = [radius for radius in hollow if radius <= least]
    if not tight:
        return False
    radius = min(tight, key=to_float)
    unit = settings.unit
    problems.report(
        "curve-too-tight",
        block,
        radius=f"{write_length(radius, unit)} {unit}",
        name=block.text.strip('"'),
        help=f"make the block larger or the radius a larger share of its cell: more than "
        f"{write_length(least, unit)} {unit}, better four times the seam allowance or more",
    )
    return True
