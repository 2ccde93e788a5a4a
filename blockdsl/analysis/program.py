"""The whole analysis of one file, in order."""

from __future__ import annotations

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.analysis.books import Shelf
from blockdsl.analysis.letters_printed import read_further_font, report_letters_not_in_font
from blockdsl.analysis.maker_choices import Choices, Settled, read_language, read_maker, read_pressing
from blockdsl.analysis.memory import NO_MEMORY, Memory
from blockdsl.analysis.neighbours import report_unused_fabrics
from blockdsl.analysis.override import WhatIf, override
from blockdsl.analysis.place import Placer
from blockdsl.analysis.reading import Reader
from blockdsl.analysis.recolouring import Recoloured
from blockdsl.analysis.resize import design_at_all_sizes
from blockdsl.analysis.scope import bring_together
from blockdsl.analysis.settings import read_choices
from blockdsl.analysis.what_if import analyse_what_if, report_no_such_colourway
from blockdsl.diagnostics import Problems, Source
from blockdsl.fonts.further import FurtherFont
from blockdsl.model import BlockDesign, BookDesign, Choice, QuiltDesign
from blockdsl.model.language import Language
from blockdsl.model.maker import NOBODY
from blockdsl.syntax import ast

Expectation = ast.ExpectCut | ast.ExpectUnit | ast.ExpectFinished
QuiltExpectation = ast.ExpectFinished | ast.ExpectBlocks


class Program(Struct, frozen=True):
    """What a file declares. `expectations` are the designer's own checks, block by block, as written.

    `blocks` are the file's own, then those of other files that its quilts and books use; `quilts` likewise, each with
    its own checks in `quilt_expectations`.
    `unlaid` are the choices of blocks that have errors and could not be laid out.
    `sources` are the names of all files that were read, the file itself first. `font` is the maker's own, for letters
    that ours lacks.
    """

    source: Source
    blocks: tuple[BlockDesign, ...]
    expectations: tuple[tuple[Expectation, ...], ...]
    sources: tuple[str, ...]
    books: tuple[BookDesign, ...] = ()
    unlaid: tuple[Choice, ...] = ()
    quilts: tuple[QuiltDesign, ...] = ()
    quilt_expectations: tuple[tuple[QuiltExpectation, ...], ...] = ()
    font: FurtherFont | None = None


def analyse(
    source: Source,
    reader: Reader,
    problems: Problems,
    what_if: WhatIf | None = None,
    language: Language | None = None,
    memory: Memory = NO_MEMORY,
) -> Program:
    """Resolve, place and prove every block that `source` declares, set its quilts and put its books together.

    Blocks and quilts with errors are left out. With `what_if` all of it is as is asked there, not as the file says;
    `language` is what all pages are in, whatever the file says. `memory` has what an earlier reading of it came to.
    """

    def attempt(asked: WhatIf | None, found: Problems) -> Program:
        return _analyse(source, reader, found, asked, language, memory)

    if what_if is None or what_if == WhatIf():
        return attempt(None, problems)
    return analyse_what_if(attempt, lambda program: program.quilts, what_if, problems)


def _analyse(
    source: Source,
    reader: Reader,
    problems: Problems,
    what_if: WhatIf | None,
    language: Language | None,
    memory: Memory,
) -> Program:
    names = bring_together(source, reader, problems, memory)
    font = read_further_font(names, reader, problems)
    report_letters_not_in_font(names.main, font, problems)
    if what_if is not None:
        override(names, what_if, problems)
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
                unlaid += read_choices(declaration.lines, names, problems)
    for declaration in names.main.declarations:
        if isinstance(declaration, ast.UnitDeclaration):
            placer.look_up_unit(declaration)
    shelf.set_quilts()
    books = shelf.books()
    declared += shelf.brought_in
    if not problems.has_errors and what_if is None:
        used = {patch.fabric for _, design in declared for patch in design.patches}
        used |= {piece.fabric for _, design in declared for piece in design.appliques}
        used |= {fabric.name for _, quilt in shelf.quilts for fabric in quilt.fabrics}
        report_unused_fabrics(names, used, problems)
    program = Program(
        source,
        tuple(design for _, design in declared),
        tuple(_expectations(declaration) for declaration, _ in declared),
        (*(file.source.name for file in names.files), *shelf.texts),
        books,
        tuple(unlaid),
        tuple(design for _, design in shelf.quilts),
        tuple(_quilt_expectations(declaration) for declaration, _ in shelf.quilts),
        font,
    )
    if what_if is not None:
        program = _supposed(program, what_if, problems)
    said = () if names.maker is None else names.maker.lines
    maker = NOBODY if names.maker is None else read_maker(said, names.maker.name.text)
    settled = Settled(Choices(read_pressing(said), read_language(said), language, maker), memory)
    return replace(
        program,
        blocks=tuple(map(settled.block, program.blocks)),
        quilts=tuple(map(settled.quilt, program.quilts)),
        books=tuple(map(settled.book, program.books)),
    )


def _supposed(program: Program, what_if: WhatIf, problems: Problems) -> Program:
    """The program in the colourway that is asked, with notes of all that is."""
    if what_if.colourway is not None and not problems.has_errors:
        of_quilts = (kind.design for quilt in program.quilts for kind in quilt.kinds)
        report_no_such_colourway(what_if.colourway, (*program.blocks, *of_quilts), problems)
    asked = Recoloured(what_if)
    return replace(
        program,
        blocks=tuple(map(asked.block, program.blocks)),
        quilts=tuple(map(asked.quilt, program.quilts)),
        books=tuple(map(asked.book, program.books)),
    )


def _expectations(block: ast.BlockDeclaration) -> tuple[Expectation, ...]:
    return tuple(line for line in block.lines if isinstance(line, Expectation))


def _quilt_expectations(quilt: ast.QuiltDeclaration) -> tuple[QuiltExpectation, ...]:
    return tuple(line for line in quilt.lines if isinstance(line, QuiltExpectation))
