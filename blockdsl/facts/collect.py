"""Collecting the facts of a file, block by block."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from functools import partial
from math import gcd, lcm

from msgspec import Struct

from blockdsl.analysis import Program
from blockdsl.analysis.letters import Lettered
from blockdsl.analysis.memory import NO_MEMORY, Memory
from blockdsl.cutting import BlockCuts, cut_block, cut_list, report_pieces_wider_than_fabric, templates
from blockdsl.cutting.applique import applique_letters, applique_pieces, turn_under_of
from blockdsl.cutting.cutters import lacking_cutters
from blockdsl.cutting.grain import bias_of
from blockdsl.cutting.grain_lines import report_grains, report_turned_prints
from blockdsl.diagnostics import Problems
from blockdsl.facts.block_parts import cut_facts, fabric_facts, placed_patches, unit_facts
from blockdsl.facts.blockfacts import (
    AppliqueFacts,
    BlockFacts,
    ColourwayFacts,
    CoverFacts,
    PatchFacts,
)
from blockdsl.facts.bookfacts import BookBlockFacts, BookFacts, ChapterFacts, WordsFacts
from blockdsl.facts.collect_foundation import collect_foundations
from blockdsl.facts.collect_quilt import collect_quilt
from blockdsl.facts.drift import collect_drift, report_drift
from blockdsl.facts.expect import check_expectations, check_quilt
from blockdsl.facts.papers import collect_papers
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.facts.sewn import Sewing
from blockdsl.fonts.further import FurtherFont
from blockdsl.geometry import Exact
from blockdsl.geometry.arc import CurvedArea
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import area
from blockdsl.model import (
    BlockDesign,
    BlockInBook,
    BookDesign,
    ChapterDesign,
    ColourPlan,
    QuiltDesign,
    QuiltInBook,
    WordsInBook,
)
from blockdsl.model.language import usual_language
from blockdsl.model.recolour import recoloured
from blockdsl.sewing import is_known_method, plan_making

MOST_SQUARES = 4


class FileFacts(Struct, frozen=True):
    """The facts of one file. `sources` are all the files that it was read from, itself first.

    `blocks` are its own and those of other files that its quilts and books use, each at its own size; `quilts` are its
    own and those of other files that its books print. `font` is the maker's, for letters that ours lacks.
    """

    file: str
    blocks: tuple[BlockFacts, ...]
    sources: tuple[str, ...]
    books: tuple[BookFacts, ...] = ()
    quilts: tuple[QuiltFacts, ...] = ()
    font: FurtherFont | None = None


def collect_facts(
    program: Program, cuts: Sequence[BlockCuts], problems: Problems, memory: Memory = NO_MEMORY
) -> FileFacts:
    """Everything about every block, quilt and book of the file; expectations that do not hold are reported.

    `cuts` are those of the program's blocks, in their order; `memory` has what an earlier reading came to.
    """
    blocks = []
    known: dict[int, BlockFacts] = {}

    def facts_of(design: BlockDesign) -> BlockFacts:
        # What is wrong with the making of a block has been reported at its own size.
        if id(design) not in known:
            known[id(design)] = memory.once(
                "unreported facts", (design,), Problems(), lambda found: _alone(design, found)
            )
        return known[id(design)]

    for choice in program.unlaid:
        is_known_method(choice, problems)
    for of_block, expectations in zip(cuts, program.expectations, strict=True):
        facts = memory.once("facts", (of_block,), problems, partial(collect_block, of_block))
        check_expectations(facts, expectations, problems)
        blocks.append(facts)
        known[id(of_block.design)] = facts
    quilts: dict[int, QuiltFacts] = {}
    for quilt, checks in zip(program.quilts, program.quilt_expectations, strict=True):
        quilts[id(quilt)] = collect_quilt(quilt, facts_of, problems)
        check_quilt(quilts[id(quilt)], checks, problems)

    def facts_of_quilt(quilt: QuiltDesign) -> QuiltFacts:
        # In a book whose seams are pressed another way a quilt is another design.
        if id(quilt) not in quilts:
            return collect_quilt(quilt, facts_of, Problems())
        return quilts[id(quilt)]

    books = tuple(collect_book(book, facts_of, facts_of_quilt) for book in program.books)
    return FileFacts(program.source.name, tuple(blocks), program.sources, books, tuple(quilts.values()), program.font)


def collect_block(of_block: BlockCuts, problems: Problems) -> BlockFacts:
    """Everything about one block; what cannot be cut or sewn is reported."""
    design, making, lettered, cuts = of_block.design, of_block.making, of_block.lettered, of_block.cuts
    numbers = {fabric.name: place + 1 for place, fabric in enumerate(design.fabrics)}
    grid, cell = _squared_paper(design)
    laid_on = [piece.template for piece in applique_pieces(design, lettered)]
    pieced = templates(design, lettered, of_block.grain)
    report_pieces_wider_than_fabric(design, cuts, problems)
    report_grains(design, lettered, problems)
    report_turned_prints(design, making, problems)
    sewing = Sewing(design, making, lettered.letters)
    if sewing.unsewable:
        problems.report("cannot-be-sewn", design.span, letters=", ".join(sewing.unsewable), help=None)
    drift = collect_drift(design, sewing, lettered, cuts)
    report_drift(design, drift, problems)
    return BlockFacts(
        name=design.name,
        unit=design.unit,
        seam=design.seam,
        measure=design.measure,
        finished=(design.width, design.height),
        unfinished=(design.width + 2 * design.seam, design.height + 2 * design.seam),
        columns=design.columns,
        heights=design.heights,
        grid=grid,
        cell=cell,
        cover=CoverFacts(design.cover_area, 0, 0),
        fabrics=tuple(fabric_facts(fabric, numbers[fabric.name]) for fabric in design.fabrics),
        placed=placed_patches(design, lettered),
        patches=_patches(design, lettered),
        cutting=cut_facts(cuts, design, lettered),
        units=unit_facts(design, lettered, making),
        templates=(*pieced, *laid_on),
        appliques=_appliques(design, lettered),
        colourways=tuple(_colourway(plan, design, lettered) for plan in design.colourways),
        area_by_fabric=_areas(design, lettered),
        notes=design.notes,
        remarks=design.remarks,
        level=design.level,
        time=design.time,
        photos=design.photos,
        family=design.family,
        sources=design.sources,
        foundations=collect_foundations(design, making, lettered),
        papers=collect_papers(making, lettered, pieced),
        cutters=tuple(cutter.label for cutter in design.cutters if cutter.unit == design.unit),
        lacking=lacking_cutters(cuts, design, lettered),
        bias=bias_of(design, lettered, of_block.grain, making.loose, making.from_slanted_strips),
        sewing=sewing,
        compares_methods=design.compares_methods,
        sizes=tuple(collect_block(cut_block(size, plan_making(size, Problems())), Problems()) for size in design.sizes),
        pressing=design.pressing or "as it nests",
        language=design.language or usual_language(design.unit),
        maker=design.maker,
        drift=drift,
    )


def _alone(design: BlockDesign, problems: Problems) -> BlockFacts:
    return collect_block(cut_block(design, plan_making(design, problems)), problems)


def _squared_paper(design: BlockDesign) -> tuple[tuple[int, int], tuple[Exact, Exact] | None]:
    """The even grid on which the block's grid lines lie, as counted on squared paper, and its cell.

    Columns of 1, 2 and 1 lie on four squares. Where the paper would need far more squares than the block
    has columns (a narrow cross between wide cells) no even grid helps: the block's own columns and rows then, no cell.
    """
    across, down = (_squares(steps) for steps in (design.columns, design.heights))
    if across > MOST_SQUARES * len(design.columns) or down > MOST_SQUARES * len(design.heights):
        return (len(design.columns), len(design.heights)), None
    return (across, down), (design.width / across, design.height / down)


def _squares(steps: Sequence[Fraction]) -> int:
    """How many equal steps the longest common measure of all makes of their sum."""
    bottom = lcm(*(step.denominator for step in steps))
    common = Fraction(gcd(*(int(step * bottom) for step in steps)), bottom)
    return int(sum(steps) / common)


def _appliques(design: BlockDesign, lettered: Lettered) -> tuple[AppliqueFacts, ...]:
    pairs = zip(design.appliques, applique_letters(design, lettered), strict=True)
    return tuple(
        AppliqueFacts(letter, piece.fabric, piece.outline, turn_under_of(piece, design.unit)) for piece, letter in pairs
    )


def _patches(design: BlockDesign, lettered: Lettered) -> tuple[PatchFacts, ...]:
    pairs = zip(design.patches, lettered.letters, strict=True)
    counts = Counter((letter, patch.fabric) for patch, letter in pairs)
    order = {letter: place for place, letter in enumerate(lettered.shapes)}
    fabrics = {fabric.name: place for place, fabric in enumerate(design.fabrics)}
    keys = sorted(counts, key=lambda key: (order[key[0]], fabrics[key[1]]))
    return tuple(_patch(letter, fabric, counts[letter, fabric], lettered) for letter, fabric in keys)


def _patch(letter: str, fabric: str, count: int, lettered: Lettered) -> PatchFacts:
    shape = lettered.shapes[letter]
    return PatchFacts(letter, shape.kind, shape.finished, fabric, count)


def _colourway(plan: ColourPlan, design: BlockDesign, lettered: Lettered) -> ColourwayFacts:
    """The plan's own list of fabrics, numbered on from the block's so that a hatch stays with its fabric."""
    coloured = recoloured(design, plan)
    cuts = cut_list(coloured, plan_making(coloured, Problems()), lettered)
    replaces = dict(plan.replaces)
    palette = {fabric.name: fabric for fabric in design.palette}
    numbers = {fabric.name: place + 1 for place, fabric in enumerate(design.fabrics)}
    for fabric in design.palette:
        if fabric.name in replaces.values():
            numbers.setdefault(fabric.name, len(numbers) + 1)
    taken = {fabric.name: replaces.get(fabric.name, fabric.name) for fabric in design.fabrics}
    names = dict.fromkeys(taken.values())
    return ColourwayFacts(
        name=plan.name,
        fabrics=tuple(fabric_facts(palette[name], numbers[name]) for name in names),
        replaces=taken,
        cutting=cut_facts(cuts, coloured, lettered),
    )


def _areas(design: BlockDesign, lettered: Lettered) -> tuple[tuple[str, Exact | CurvedArea], ...]:
    """Finished area of each fabric; patches of one letter have one area."""
    of_letter: dict[str, Exact | CurvedArea] = {
        letter: lettered.curved[letter].area if letter in lettered.curved else area(outline)
        for letter, outline in lettered.first.items()
    }
    areas: dict[str, Exact | CurvedArea] = {fabric.name: Fraction(0) for fabric in design.fabrics}
    pairs = zip(design.patches, lettered.letters, strict=True)
    for (fabric, letter), count in Counter((patch.fabric, letter) for patch, letter in pairs).items():
        areas[fabric] += of_letter[letter] * count
    return tuple(areas.items())


FactsOf = Callable[[BlockDesign], BlockFacts]
FactsOfQuilt = Callable[[QuiltDesign], QuiltFacts]


def collect_book(book: BookDesign, facts_of: FactsOf, facts_of_quilt: FactsOfQuilt) -> BookFacts:
    """The book with the facts of its blocks and quilts, which the two functions give."""
    chapters = tuple(_chapter(chapter, facts_of, facts_of_quilt) for chapter in book.chapters)
    pressing, language = book.pressing or "as it nests", book.language or "en-US"
    author = book.author or book.maker.name
    return BookFacts(
        book.name, author, book.paper, chapters, book.techniques, pressing, language, book.maker, book.subtitle
    )


def _chapter(chapter: ChapterDesign, facts_of: FactsOf, facts_of_quilt: FactsOfQuilt) -> ChapterFacts:
    return ChapterFacts(chapter.title, tuple(_item(item, facts_of, facts_of_quilt) for item in chapter.items))


def _item(
    item: WordsInBook | BlockInBook | QuiltInBook, facts_of: FactsOf, facts_of_quilt: FactsOfQuilt
) -> WordsFacts | BookBlockFacts | QuiltFacts:
    if isinstance(item, WordsInBook):
        return WordsFacts(item.path, item.markdown)
    if isinstance(item, QuiltInBook):
        return facts_of_quilt(item.design)
    return BookBlockFacts(item.name, tuple(facts_of(design) for design in item.sizes))
