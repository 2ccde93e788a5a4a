"""The whole analysis of one file, in order."""

from __future__ import annotations

from dataclasses import dataclass

from blockdsl.analysis.books import Shelf
from blockdsl.analysis.names import bring_together
from blockdsl.analysis.neighbours import report_unused_fabrics
from blockdsl.analysis.place import Placer
from blockdsl.analysis.reading import Reader
from blockdsl.analysis.resize import design_at_all_sizes
from blockdsl.analysis.settings import read_choices
from blockdsl.diagnostics import Problems, Source
from blockdsl.model import BlockDesign, BookDesign, Choice, QuiltDesign
from blockdsl.syntax import ast, ast_quilt

Expectation = ast.ExpectCut | ast.ExpectUnit | ast.ExpectFinished
QuiltExpectation = ast.ExpectFinished | ast_quilt.ExpectBlocks


@dataclass(frozen=True, slots=True)
class Program:
    """What a file declares. `expectations` are the designer's own checks, block by block, as written.

    `blocks` are the file's own, then those of other files that its quilts and books use; `quilts` likewise, each with
    its own checks in `quilt_expectations`.
    `unlaid` are the choices of blocks that have errors and could not be laid out.
    `sources` are the names of all files that were read, the file itself first.
    """

    source: Source
    blocks: tuple[BlockDesign, ...]
    expectations: tuple[tuple[Expectation, ...], ...]
    sources: tuple[str, ...]
    books: tuple[BookDesign, ...] = ()
    unlaid: tuple[Choice, ...] = ()
    quilts: tuple[QuiltDesign, ...] = ()
    quilt_expectations: tuple[tuple[QuiltExpectation, ...], ...] = ()


def analyse(source: Source, reader: Reader, problems: Problems) -> Program:
    """Resolve, place and prove every block that `source` declares, set its quilts and put its books together.

    Blocks and quilts with errors are left out.
    """
    names = bring_together(source, reader, problems)
    placer = Placer(names, problems)
    shelf = Shelf(names, placer, reader, problems)
    unlaid: list[Choice] = []
    declared: list[tuple[ast.BlockDeclaration, BlockDesign]] = []
    for declaration in names.main.declarations:
        if isinstance(declaration, ast.BlockDeclaration):
            design = design_at_all_sizes(declaration, names, placer, problems)
            shelf.know(declaration, design)
            if design is not None:
                declared.append((declaration, design))
            else:
                unlaid += read_choices(declaration.lines)
    for declaration in names.main.declarations:
        if isinstance(declaration, ast.UnitDeclaration):
            placer.look_up_unit(declaration)
    shelf.set_quilts()
    books = shelf.books()
    declared += shelf.brought_in
    if not problems.has_errors:
        used = {patch.fabric for _, design in declared for patch in design.patches}
        used |= {piece.fabric for _, design in declared for piece in design.appliques}
        used |= {fabric.name for _, quilt in shelf.quilts for fabric in quilt.fabrics}
        report_unused_fabrics(names, used, problems)
    return Program(
        source,
        tuple(design for _, design in declared),
        tuple(_expectations(declaration) for declaration, _ in declared),
        (*(file.source.name for file in names.files), *shelf.texts),
        books,
        tuple(unlaid),
        tuple(design for _, design in shelf.quilts),
        tuple(_quilt_expectations(declaration) for declaration, _ in shelf.quilts),
    )


def _expectations(block: ast.BlockDeclaration) -> tuple[Expectation, ...]:
    return tuple(line for line in block.lines if isinstance(line, Expectation))


def _quilt_expectations(quilt: ast.QuiltDeclaration) -> tuple[QuiltExpectation, ...]:
    return tuple(line for line in quilt.lines if isinstance(line, QuiltExpectation))
