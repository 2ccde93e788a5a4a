"""The whole analysis of one file, in order."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise

from blockdsl.analysis.cover_report import Ground, covered_area
from blockdsl.analysis.names import Names, bring_together
from blockdsl.analysis.neighbours import report_fabrics_too_alike, report_unused_fabrics
from blockdsl.analysis.place import Layout, Placer
from blockdsl.analysis.reading import Reader
from blockdsl.analysis.ruler import report_sizes_off_the_ruler
from blockdsl.analysis.settings import Settings, read_choices, read_colourings, read_settings
from blockdsl.diagnostics import Problems, Source
from blockdsl.geometry import Exact
from blockdsl.model import BlockDesign, Fabric
from blockdsl.syntax import ast

Expectation = ast.ExpectCut | ast.ExpectUnit | ast.ExpectFinished


@dataclass(frozen=True, slots=True)
class Program:
    """What a file declares. `expectations` are the designer's own checks, block by block, as written.

    `sources` are the names of all files that were read, the file itself first.
    """

    source: Source
    blocks: tuple[BlockDesign, ...]
    expectations: tuple[tuple[Expectation, ...], ...]
    sources: tuple[str, ...]


def analyse(source: Source, reader: Reader, problems: Problems) -> Program:
    """Resolve, place and prove every block that `source` declares; blocks with errors are left out."""
    names = bring_together(source, reader, problems)
    placer = Placer(names, problems)
    blocks: list[BlockDesign] = []
    expectations: list[tuple[Expectation, ...]] = []
    used: set[str] = set()
    for declaration in names.main.declarations:
        if isinstance(declaration, ast.BlockDeclaration):
            design = _design(declaration, names, placer, problems)
            if design is not None:
                blocks.append(design)
                kept = [line for line in declaration.lines if isinstance(line, Expectation)]
                expectations.append(tuple(kept))
                used.update(patch.fabric for patch in design.patches)
    for declaration in names.main.declarations:
        if isinstance(declaration, ast.UnitDeclaration):
            placer.look_up_unit(declaration)
    if not problems.has_errors:
        report_unused_fabrics(names, used, problems)
    return Program(source, tuple(blocks), tuple(expectations), tuple(file.source.name for file in names.files))


def _design(block: ast.BlockDeclaration, names: Names, placer: Placer, problems: Problems) -> BlockDesign | None:
    settings = read_settings(block, problems)
    colourings = read_colourings(block.lines, names, problems)
    # Without a size the cells are still looked up, in a square of one, so that all slips are told in one run.
    width, height = (settings.width, settings.height) if settings else (Fraction(1), Fraction(1))
    layout, columns, heights = placer.lay_lines(block.lines, block.name.span, width, height)
    if settings is None or layout is None:
        return None
    area = covered_area(Ground(block, layout, settings, columns, heights), problems)
    if area is None:
        return None
    fabrics = _fabrics_in_order(layout, names)
    design = _assemble(block, settings, layout, area, fabrics, names, (columns, heights))
    report_sizes_off_the_ruler(design, problems)
    report_fabrics_too_alike(design, names, problems)
    return replace(design, colourings=colourings)


def _fabrics_in_order(layout: Layout, names: Names) -> tuple[Fabric, ...]:
    """The block's fabrics as the files declare them, so that numbers do not change with the design."""
    used = {patch.fabric for patch in layout.patches}
    return tuple(fabric for name, fabric in names.fabrics.items() if name in used)


def _assemble(
    block: ast.BlockDeclaration,
    settings: Settings,
    layout: Layout,
    area: Exact,
    fabrics: tuple[Fabric, ...],
    names: Names,
    lines: tuple[tuple[Fraction, ...], tuple[Fraction, ...]],
) -> BlockDesign:
    columns, heights = (_steps(places) for places in lines)
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
        choices=read_choices(block.lines),
        colourings=(),
        palette=tuple(names.fabrics.values()),
        notes=tuple(line.text.text for line in block.lines if isinstance(line, ast.Note)),
    )


def _steps(places: tuple[Fraction, ...]) -> tuple[Fraction, ...]:
    return tuple(end - start for start, end in pairwise(places))
