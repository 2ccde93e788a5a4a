"""What is made of a block or a book: each output's name, how its bytes come about, and what they depend on."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from functools import cache, lru_cache, partial
from typing import TYPE_CHECKING, Final

import msgspec
from msgspec import Struct
from msgspec.structs import replace

from blockdsl.cli.cache import Cache
from blockdsl.cli.cache_keys import content_of
from blockdsl.export.naming import Taken
from blockdsl.printing import (
    Print,
    SitePrint,
    book_document,
    full_size_pdf,
    parts_at_full_size,
    pdf_bytes,
    picture_svg,
    quilt_pdf,
    sheet_pdf,
    site_files,
    too_large,
    with_templates_to_print,
)

if TYPE_CHECKING:
    from blockdsl.facts import BlockFacts, BookFacts
    from blockdsl.facts.blockfacts import ColourwayFacts
    from blockdsl.facts.bookfacts import BookBlockFacts
    from blockdsl.facts.quiltfacts import QuiltFacts
    from blockdsl.marks.display_list import Page
    from blockdsl.page.step_slide import StepSlides

KINDS: Final = ("sheet", "templates", "diagrams", "table", "book", "web")
"""What is written when `--only` does not say."""

ASKED: Final = ("steps", "cut-files")
"""What `--only` may name besides; it is written for those alone who ask for it."""

_OF_FILES: Final = frozenset({"book", "web"})
"""Kinds that are made of a whole file and not of a block."""

_FOR_SITES: Final = frozenset({"sheet", "templates"})
"""Kinds that a web site has too, to be printed from its pages."""

_DIAGRAMS: Final = ("letters", "grid", "cutting")
"""Names that a colourway's picture may not take."""


class Output(Struct, frozen=True):
    """A file to be: its name in the folder, the work that gives its bytes, and all that they depend on.

    The bytes of a `folder` are its files, packed.
    """

    name: str
    make: Callable[[], bytes]
    depends: tuple[object, ...]
    folder: bool = False


_ENDINGS: Final = (
    ("table", (".cutting.svg", ".cutting.md", ".cutting.csv", ".cutting.xlsx")),
    ("sheet", (".sheet.pdf", ".quilt.pdf")),
    ("templates", (".templates.pdf", ".foundation.pdf", ".papers.pdf")),
    ("steps", (".png",)),
    ("book", (".pdf",)),
)
_STEP: Final = re.compile(r"\.step-\d+\.svg$")
_CUT_FILE: Final = re.compile(r"\.cut(-[A-Z]+)?\.(svg|dxf)$")


def kind_of(name: str) -> str:
    """Of what kind, as `--only` names them, an output of this name is."""
    if ".web/" in name:
        return "web"
    if _STEP.search(name):
        return "steps"
    if _CUT_FILE.search(name):
        return "cut-files"
    return next((kind for kind, endings in _ENDINGS if name.endswith(endings)), "diagrams")


def block_outputs(block: BlockFacts, stem: str, kinds: frozenset[str], printed: Print) -> Iterator[Output]:
    """The files of one block; their names begin with `stem`."""
    if kinds <= _OF_FILES:
        return
    content = content_of(block)
    if "sheet" in kinds:
        yield Output(f"{stem}.sheet.pdf", partial(sheet_pdf, block, printed), ("sheet", content, printed))
    if "templates" in kinds:
        yield from _full_size(block, stem, printed)
    if "diagrams" in kinds:
        yield from _diagrams(block, content, stem)
    if "table" in kinds:
        yield from _tables(block, content, stem)
    if "steps" in kinds:
        yield from _steps(block, content, stem)
    if "cut-files" in kinds and block.templates:
        yield from _cut_files(block, content, stem)


def quilt_outputs(quilt: QuiltFacts, stem: str, kinds: frozenset[str], printed: Print) -> Iterator[Output]:
    """The files of one quilt; their names begin with `stem`."""
    if kinds <= _OF_FILES:
        return
    content = content_of(quilt)
    if "sheet" in kinds:
        yield Output(f"{stem}.quilt.pdf", partial(quilt_pdf, quilt, printed), ("quilt sheet", content, printed))
    if "diagrams" in kinds:
        yield _picture("quilt_page", quilt, content, f"{stem}.svg")
        if len(quilt.rows) > 1:
            yield _picture("rows_page", quilt, content, f"{stem}.rows.svg", "rows")
    if "table" in kinds:
        for form, ending in (("markdown_file", "md"), ("csv_file", "csv")):
            make = partial(_quilt_table, quilt, form)
            yield Output(f"{stem}.cutting.{ending}", make, ("quilt table", form, content))


def _quilt_table(quilt: QuiltFacts, form: str) -> bytes:
    from blockdsl.document.quilt_cuts import quilt_cutting_rows
    from blockdsl.export import tables

    write: Callable[..., bytes] = getattr(tables, form)
    return write(*quilt_cutting_rows(quilt))


def size_outputs(block: BlockFacts, stem: str, kinds: frozenset[str], printed: Print) -> Iterator[Output]:
    """What a block needs at a further size that a book prints: templates where pieces are cut by them, and papers."""
    if "templates" in kinds:
        yield from _full_size(block, stem, replace(printed, all_templates=False))


def _full_size(block: BlockFacts, stem: str, printed: Print) -> Iterator[Output]:
    block = with_templates_to_print(block, printed)
    content = content_of(block)
    for part in parts_at_full_size(block):
        if not too_large(part, block):
            yield Output(f"{stem}.{part}.pdf", partial(full_size_pdf, part, block, printed), (part, content, printed))


def book_output(book: BookFacts, stem: str, printed: Print, cache: Cache) -> Output:
    """The book as one PDF; pages that the cache has of it are not drawn again."""
    return Output(f"{stem}.pdf", lambda: book_bytes(book, printed, cache), ("book", content_of(book), printed))


def book_bytes(book: BookFacts, printed: Print, cache: Cache) -> bytes:
    """The book on the paper that was asked for."""
    from blockdsl.cli.stored_pages import StoredPages

    keeper = StoredPages(cache)
    return pdf_bytes(book_document(book, printed, keeper), printed, keeper.painted)


def site_output(
    book: BookFacts, stem: str, kinds: frozenset[str], printed: Print, made: Callable[[Output], bytes]
) -> Output:
    """The folder of the book's web site, which is made, kept and written as one; its bytes are packed.

    Sheets, templates and papers are in it as far as `kinds` has them, so that it can be moved as a whole; `made` gives
    the bytes of such an output, which may have been made before.
    """
    wanted = kinds & _FOR_SITES
    prints = partial(_site_prints, kinds=wanted, printed=printed, made=made) if wanted else None
    depends = ("site", content_of(book), *((tuple(sorted(wanted)), printed) if wanted else ()))
    return Output(f"{stem}.web", lambda: msgspec.msgpack.encode(site_files(book, prints)), depends, folder=True)


def _site_prints(
    item: BookBlockFacts | QuiltFacts,
    stem: str,
    *,
    kinds: frozenset[str],
    printed: Print,
    made: Callable[[Output], bytes],
) -> Iterator[SitePrint]:
    """The sheets of a block or a quilt, and of a block at each size the templates and papers that it needs."""
    from blockdsl.facts.bookfacts import BookBlockFacts
    from blockdsl.wording.messages import words_of
    from blockdsl.wording.sheet import format_finished

    if not isinstance(item, BookBlockFacts):
        for output in quilt_outputs(item, stem, kinds & {"sheet"}, printed):
            yield SitePrint(words_of(item)("site-pdf-sheet"), output.name, partial(made, output))
        return
    words = words_of(item.sizes[0])
    whole = replace(item.sizes[0], sizes=item.sizes[1:])
    for output in block_outputs(whole, stem, kinds & {"sheet"}, printed):
        yield SitePrint(words("site-pdf-sheet"), output.name, partial(made, output))
    for place, facts in enumerate(item.sizes, start=1):
        named = stem if len(item.sizes) == 1 else f"{stem}-{place}"
        for output in size_outputs(facts, named, kinds & {"templates"}, printed):
            part = output.name.removesuffix(".pdf").rpartition(".")[2]
            size = words(f"site-pdf-{part}", size=format_finished(facts))
            yield SitePrint(size, output.name, partial(made, output))


def _diagrams(block: BlockFacts, content: str, stem: str) -> Iterator[Output]:
    """The block in colour, in each of its colourways, with its letters, and on its grid."""
    yield _picture("colour_page", block, content, f"{stem}.svg")
    taken = Taken(_DIAGRAMS)
    for plan in block.colourways:
        name = f"{stem}.{taken.take(plan.name)}.svg"
        yield _picture("colour_page", block, content, name, colourway=plan)
    yield _picture("letters_page", block, content, f"{stem}.letters.svg", "letters")
    yield _picture("grid_page", block, content, f"{stem}.grid.svg", "grid")


def _picture(
    page: str,
    block: BlockFacts | QuiltFacts,
    content: str,
    name: str,
    about: str = "",
    colourway: ColourwayFacts | None = None,
) -> Output:
    """A picture of a block, in one of its colourways, or of a quilt; `page` and `about` are as for `picture_svg`."""
    return Output(name, partial(picture_svg, page, block, about, colourway), (page, content, about, colourway))


def _steps(block: BlockFacts, content: str, stem: str) -> Iterator[Output]:
    """Each step as a picture of its own, to scale to any size and as 1920 × 1080 pixels."""
    slides = cache(partial(_step_slides, block))
    page_of = lru_cache(maxsize=1)(lambda number: slides().page(number))  # drawn once for both its files
    for step in block.steps:
        for ending in ("svg", "png"):
            name = f"{stem}.step-{step.number:02d}.{ending}"
            depends = ("step", content, step.number, _cairo_version() if ending == "png" else ending)
            yield Output(name, partial(_step_picture, page_of, block, step.number, ending), depends)


def _cut_files(block: BlockFacts, content: str, stem: str) -> Iterator[Output]:
    """The pieces at full size for cutting machines: all in one file, and each in its own."""
    letters = [template.label for template in block.templates]
    for letter in ("", *letters):
        name = f"{stem}.cut-{letter}" if letter else f"{stem}.cut"
        for ending in ("dxf", "svg"):
            yield Output(
                f"{name}.{ending}", partial(_cut_file, block, letter, ending), ("cut", content, letter, ending)
            )


def _cut_file(block: BlockFacts, letter: str, ending: str) -> bytes:
    from blockdsl.fullsize.cut_shapes import cut_shapes

    shapes = tuple(shape for shape in cut_shapes(block) if letter in ("", shape.letter))
    if ending == "dxf":
        from blockdsl.export.dxf import write_dxf

        return write_dxf(shapes)
    from blockdsl.export.cut_svg import write_cut_svg

    return write_cut_svg(shapes, f"{block.name} {letter}".strip())


def _cairo_version() -> str:
    from blockdsl.export.cairo_library import cairo_version

    return cairo_version()


def _step_slides(block: BlockFacts) -> StepSlides:
    from blockdsl.page.step_slide import StepSlides

    return StepSlides(block)


def _step_picture(page_of: Callable[[int], Page], block: BlockFacts, number: int, ending: str) -> bytes:
    page = page_of(number)
    if ending == "png":
        from blockdsl.export.png import write_png
        from blockdsl.page.step_slide import PIXELS_AN_INCH

        return write_png(page, PIXELS_AN_INCH)
    from blockdsl.export.svg import write_svg
    from blockdsl.wording.messages import words_of

    return write_svg(page, title=words_of(block)("picture-title-step", name=block.name, number=number))


def _tables(block: BlockFacts, content: str, stem: str) -> Iterator[Output]:
    """The cutting table as a picture, as Markdown, as CSV and as a spreadsheet."""
    yield _picture("cutting_page", block, content, f"{stem}.cutting.svg", "cutting")
    yield Output(f"{stem}.cutting.md", lambda: _table(block, "markdown_file"), ("markdown_file", content))
    yield Output(f"{stem}.cutting.csv", lambda: _table(block, "csv_file"), ("csv_file", content))
    yield Output(f"{stem}.cutting.xlsx", partial(_spreadsheet, block), ("to_xlsx", content))


def _spreadsheet(block: BlockFacts) -> bytes:
    from blockdsl.export.xlsx import write_xlsx
    from blockdsl.wording.cutting_rows import cutting_cells
    from blockdsl.wording.messages import words_of

    heads, rows = cutting_cells(block)
    measure = block.measure if block.unit == "in" else None
    return write_xlsx(block.name, heads, rows, words_of(block)("head-in-all"), measure)


def _table(block: BlockFacts, form: str) -> bytes:
    from blockdsl.export import tables
    from blockdsl.wording.cutting_rows import cutting_rows

    write: Callable[..., bytes] = getattr(tables, form)
    return write(*cutting_rows(block))
