"""What is made of a block or a book: each output's name, how its bytes come about, and what they depend on."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import datetime
from functools import partial
from typing import TYPE_CHECKING, Final

from blockdsl.cli.cache import Cache
from blockdsl.cli.cache_keys import content_of
from blockdsl.export.naming import Taken
from blockdsl.fonts.further import FurtherFont

if TYPE_CHECKING:
    from blockdsl.facts import BlockFacts, BookFacts
    from blockdsl.facts.blockfacts import ColouringFacts
    from blockdsl.facts.quiltfacts import QuiltFacts
    from blockdsl.marks.display_list import Page, Publication

KINDS: Final = ("sheet", "templates", "diagrams", "table", "book", "web")
"""What is written when `--only` does not say."""

ASKED: Final = ("steps",)
"""What `--only` may name besides; it is written for those alone who ask for it."""

_OF_FILES: Final = frozenset({"book", "web"})
"""Kinds that are made of a whole file and not of a block."""

_DIAGRAMS: Final = ("letters", "grid", "cutting")
"""Names that a colourway's picture may not take."""


USUAL_MARGIN_MM: Final = 12.0
POINTS_IN_A_MILLIMETRE: Final = 72 / 25.4


@dataclass(frozen=True, slots=True)
class Print:
    """How pages are printed. `created` is the date that a PDF tells, or None for no date; `font` the maker's own.

    On a roll templates alone are printed; sheets and books then stand on Letter, or on A4 for a roll in centimetres.
    """

    paper: str
    created: datetime | None
    margin_mm: float = USUAL_MARGIN_MM
    font: FurtherFont | None = None

    @property
    def margin_pt(self) -> float:
        """What the printer leaves white, in points."""
        return self.margin_mm * POINTS_IN_A_MILLIMETRE

    @property
    def sheet_paper(self) -> str:
        """The paper of sheets and books."""
        if not self.paper.startswith("roll"):
            return self.paper
        return "letter" if self.paper.endswith("in") else "a4"


@dataclass(frozen=True, slots=True)
class Output:
    """A file to be: its name in the folder, the work that gives its bytes, and all that they depend on.

    The bytes of a `folder` are its files, packed.
    """

    name: str
    make: Callable[[], bytes]
    depends: tuple[object, ...]
    folder: bool = False


_ENDINGS: Final = (
    ("table", (".cutting.svg", ".cutting.md", ".cutting.csv")),
    ("sheet", (".sheet.pdf", ".quilt.pdf")),
    ("templates", (".templates.pdf", ".foundation.pdf", ".papers.pdf")),
    ("steps", (".png",)),
    ("book", (".pdf",)),
)
_STEP: Final = re.compile(r"\.step-\d+\.svg$")


def kind_of(name: str) -> str:
    """Of what kind, as `--only` names them, an output of this name is."""
    if ".web/" in name:
        return "web"
    if _STEP.search(name):
        return "steps"
    return next((kind for kind, endings in _ENDINGS if name.endswith(endings)), "diagrams")


def block_outputs(block: BlockFacts, stem: str, kinds: frozenset[str], printed: Print) -> Iterator[Output]:
    """The files of one block; their names begin with `stem`."""
    if kinds <= _OF_FILES:
        return
    content = content_of(block)
    if "sheet" in kinds:
        yield Output(f"{stem}.sheet.pdf", lambda: _sheet(block, printed), ("sheet", content, printed))
    if "templates" in kinds and not too_large(block):
        yield Output(f"{stem}.templates.pdf", lambda: _templates(block, printed), ("templates", content, printed))
    if "templates" in kinds and block.foundations and not foundations_too_large(block):
        yield Output(f"{stem}.foundation.pdf", lambda: _foundation(block, printed), ("foundation", content, printed))
    if "templates" in kinds and block.papers and not papers_too_large(block):
        yield Output(f"{stem}.papers.pdf", lambda: _papers(block, printed), ("papers", content, printed))
    if "diagrams" in kinds:
        yield from _diagrams(block, content, stem)
    if "table" in kinds:
        yield from _tables(block, content, stem)
    if "steps" in kinds:
        yield from _steps(block, content, stem)


def quilt_outputs(quilt: QuiltFacts, stem: str, kinds: frozenset[str], printed: Print) -> Iterator[Output]:
    """The files of one quilt; their names begin with `stem`."""
    if kinds <= _OF_FILES:
        return
    content = content_of(quilt)
    if "sheet" in kinds:
        yield Output(f"{stem}.quilt.pdf", lambda: _quilt_sheet(quilt, printed), ("quilt sheet", content, printed))
    if "diagrams" in kinds:
        yield _picture("quilt_page", quilt, content, f"{stem}.svg", quilt.name)
        if len(quilt.rows) > 1:
            yield _picture("rows_page", quilt, content, f"{stem}.rows.svg", f"{quilt.name}, rows")
    if "table" in kinds:
        for form, ending in (("to_markdown", "md"), ("to_csv", "csv")):
            make = partial(_quilt_table, quilt, form)
            yield Output(f"{stem}.cutting.{ending}", make, ("quilt table", form, content))


def _quilt_sheet(quilt: QuiltFacts, printed: Print) -> bytes:
    from blockdsl.page.quilt.sheet import quilt_sheet

    return pdf_bytes(quilt_sheet(quilt, paper=printed.sheet_paper), printed)


def _quilt_table(quilt: QuiltFacts, form: str) -> bytes:
    from blockdsl.export import tables
    from blockdsl.page.quilt.cutting import quilt_cutting_rows

    write: Callable[..., str] = getattr(tables, form)
    return write(*quilt_cutting_rows(quilt)).encode()


def size_outputs(block: BlockFacts, stem: str, kinds: frozenset[str], printed: Print) -> Iterator[Output]:
    """What a block needs at a further size that a book prints: templates where pieces are cut by them, and papers."""
    by_template = any(cut.piece == "template" for cut in block.cutting)
    if "templates" in kinds and by_template and not too_large(block):
        depends = ("templates", content_of(block), printed)
        yield Output(f"{stem}.templates.pdf", lambda: _templates(block, printed), depends)
    if "templates" in kinds and block.foundations and not foundations_too_large(block):
        depends = ("foundation", content_of(block), printed)
        yield Output(f"{stem}.foundation.pdf", lambda: _foundation(block, printed), depends)
    if "templates" in kinds and block.papers and not papers_too_large(block):
        depends = ("papers", content_of(block), printed)
        yield Output(f"{stem}.papers.pdf", lambda: _papers(block, printed), depends)


def book_output(book: BookFacts, stem: str, printed: Print, cache: Cache) -> Output:
    """The book as one PDF; pages that the cache has of it are not drawn again."""
    return Output(f"{stem}.pdf", lambda: book_bytes(book, printed, cache), ("book", content_of(book), printed))


def book_bytes(book: BookFacts, printed: Print, cache: Cache) -> bytes:
    """The book on the paper that was asked for."""
    from blockdsl.cli.keeping import PageKeeper
    from blockdsl.export.pdf import write_pdf
    from blockdsl.page.book.book import book_document

    keeper = PageKeeper(cache)
    document = book_document(replace(book, paper=printed.sheet_paper), keeper)
    return write_pdf(document, created=printed.created, kept=keeper.painted)


def too_large(block: BlockFacts) -> tuple[str, ...]:
    """The letters of the patches whose templates no page can hold; with one of them no templates are printed."""
    from blockdsl.fullsize.templates import templates_too_large

    return templates_too_large(block)


def _sheet(block: BlockFacts, printed: Print) -> bytes:
    from blockdsl.page.sheet.sheet import block_sheet

    return pdf_bytes(block_sheet(block, paper=printed.sheet_paper), printed)


def _templates(block: BlockFacts, printed: Print) -> bytes:
    from blockdsl.fullsize.templates import template_pages

    return pdf_bytes(template_pages(block, paper=printed.paper, margin_pt=printed.margin_pt), printed)


def foundations_too_large(block: BlockFacts) -> tuple[str, ...]:
    """The names of the foundation papers that no page can hold; with one of them no papers are printed."""
    from blockdsl.fullsize.foundation import foundations_too_large as too_large_of

    return too_large_of(block)


def _foundation(block: BlockFacts, printed: Print) -> bytes:
    from blockdsl.fullsize.foundation import foundation_pages

    return pdf_bytes(foundation_pages(block, paper=printed.paper, margin_pt=printed.margin_pt), printed)


def papers_too_large(block: BlockFacts) -> tuple[str, ...]:
    """The letters of the papers to fold round that no page can hold; with one of them none are printed."""
    from blockdsl.fullsize.papers import papers_too_large as too_large_of

    return too_large_of(block)


def _papers(block: BlockFacts, printed: Print) -> bytes:
    from blockdsl.fullsize.papers import paper_pages

    return pdf_bytes(paper_pages(block, paper=printed.paper, margin_pt=printed.margin_pt), printed)


def check_print_bytes(printed: Print) -> bytes:
    """The page that tells whether a printer prints at actual size."""
    from blockdsl.fullsize.scale_check_page import check_print_page
    from blockdsl.marks.display_list import Document

    return pdf_bytes(Document("Check of the print", (check_print_page(printed.sheet_paper),)), printed)


def pdf_bytes(document: Publication, printed: Print) -> bytes:
    """The document as PDF with the date that was asked for."""
    from blockdsl.export.pdf import write_pdf

    return write_pdf(document, created=printed.created)


def _diagrams(block: BlockFacts, content: str, stem: str) -> Iterator[Output]:
    """The block in colour, in each of its colourways, with its letters, and on its grid."""
    yield _picture("colour_page", block, content, f"{stem}.svg", block.name)
    taken = Taken(_DIAGRAMS)
    for plan in block.colourings:
        name, title = f"{stem}.{taken.take(plan.name)}.svg", f"{block.name}, {plan.name}"
        yield _picture("colour_page", block, content, name, title, plan)
    yield _picture("letters_page", block, content, f"{stem}.letters.svg", f"{block.name}, letters")
    yield _picture("grid_page", block, content, f"{stem}.grid.svg", f"{block.name}, grid")


def _picture(
    page: str,
    block: BlockFacts | QuiltFacts,
    content: str,
    name: str,
    title: str,
    colourway: ColouringFacts | None = None,
) -> Output:
    """The picture that `page.single` has under the name `page`, of a block in one of its colourings."""

    def make() -> bytes:
        from blockdsl.export.svg import write_svg
        from blockdsl.page import single as picture

        draw: Callable[..., Page] = getattr(picture, page)
        drawn = draw(block) if colourway is None else draw(block, colourway)
        return write_svg(drawn, title=title)

    return Output(name, make, (page, content, title, colourway))


def _steps(block: BlockFacts, content: str, stem: str) -> Iterator[Output]:
    """Each step as a picture of its own, to scale to any size and as 1920 × 1080 pixels."""
    for step in block.steps:
        for ending in ("svg", "png"):
            name = f"{stem}.step-{step.number:02d}.{ending}"
            depends = ("step", content, step.number, _cairo_version() if ending == "png" else ending)
            yield Output(name, partial(_step_picture, block, step.number, ending), depends)


def _cairo_version() -> str:
    from blockdsl.export.cairo_library import cairo_version

    return cairo_version()


def _step_picture(block: BlockFacts, number: int, ending: str) -> bytes:
    from blockdsl.page.step_slide import PIXELS_AN_INCH, step_page

    page = step_page(block, number)
    if ending == "png":
        from blockdsl.export.png import write_png

        return write_png(page, PIXELS_AN_INCH)
    from blockdsl.export.svg import write_svg

    return write_svg(page, title=f"{block.name}, step {number}")


def _tables(block: BlockFacts, content: str, stem: str) -> Iterator[Output]:
    """The cutting table as a picture, as Markdown and as CSV."""
    yield _picture("cutting_page", block, content, f"{stem}.cutting.svg", f"{block.name}, cutting")
    yield Output(f"{stem}.cutting.md", lambda: _table(block, "to_markdown"), ("to_markdown", content))
    yield Output(f"{stem}.cutting.csv", lambda: _table(block, "to_csv"), ("to_csv", content))


def _table(block: BlockFacts, form: str) -> bytes:
    from blockdsl.export import tables
    from blockdsl.page.cutting_words import cutting_rows

    write: Callable[..., str] = getattr(tables, form)
    return write(*cutting_rows(block)).encode()
