"""What is made of a file, as bytes: sheets, papers at full size, books, pictures and sites, straight from its facts.

What draws a thing is loaded when the thing is asked for, so that whoever only checks a file never waits for it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from datetime import UTC, datetime
from pathlib import PurePosixPath
from types import MappingProxyType
from typing import TYPE_CHECKING, Final, Literal

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.export.naming import Taken
from blockdsl.fonts.further import FurtherFont

if TYPE_CHECKING:
    from blockdsl.export.pdf_page import PaintedPage
    from blockdsl.facts import BlockFacts, BookFacts
    from blockdsl.facts.blockfacts import ColourwayFacts
    from blockdsl.facts.bookfacts import BookBlockFacts
    from blockdsl.facts.possibility import Possibility
    from blockdsl.facts.quiltfacts import QuiltFacts
    from blockdsl.marks.display_list import Document, Page, Publication
    from blockdsl.model.language import Language
    from blockdsl.page.book.parts import PageCache
    from blockdsl.pipeline import Worked

USUAL_PAPER: Final = "letter"
USUAL_MARGIN_MM: Final = 12.0
POINTS_IN_A_MILLIMETRE: Final = 72 / 25.4
DATE: Final = "SOURCE_DATE_EPOCH"

FullSize = Literal["templates", "foundation", "papers"]
"""What is printed at real size: templates, papers that are sewn to, papers that cloth is folded round."""


class Print(Struct, frozen=True):
    """How pages are printed. `created` is the date that a PDF shows, or None for no date; `font` the maker's own.

    With `outline_words` the words of SVG pictures are outlines, so that every program draws them alike.
    Templates are of what a ruler does not cut, or with `all_templates` of every patch.

    On a roll templates alone are printed; sheets and books then stand on Letter, or on A4 for a roll in centimetres.
    """

    paper: str
    created: datetime | None
    margin_mm: float = USUAL_MARGIN_MM
    font: FurtherFont | None = None
    outline_words: bool = True
    all_templates: bool = False

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


def creation_date(environment: Mapping[str, str]) -> datetime | None:
    """The date that outputs show, from SOURCE_DATE_EPOCH; without it they have none.

    Errors: ValueError, in words for the user, when it is not a number of seconds.
    """
    given = environment.get(DATE, "")
    if not given:
        return None
    try:
        return datetime.fromtimestamp(int(given), UTC)
    except (ValueError, OverflowError, OSError):
        raise ValueError(f"{DATE} is {given!r}: it must be a whole number of seconds") from None


# --- numbers -----------------------------------------------------------------------------------


def facts_text(worked: Worked, *, cloth: bool = True) -> str:
    """The numbers and problems of a file as JSON.

    The cloth of its quilts is planned only where it is wanted and the file has no errors; without it there is nothing
    to say of layers and binding, so the steps end with the top.
    """
    from msgspec import structs

    from blockdsl.wording import facts_json

    found = worked.facts
    if worked.has_errors or not cloth:
        quilts = tuple(
            structs.replace(quilt, finishing=None, steps=tuple(step for step in quilt.steps if step.of_top))
            for quilt in found.quilts
        )
        found = replace(found, quilts=quilts)
    return facts_json(found, worked.origin.problems)


# --- documents ---------------------------------------------------------------------------------


def pdf_bytes(document: Publication, printed: Print, kept: Mapping[str, PaintedPage] = MappingProxyType({})) -> bytes:
    """The document as PDF with the date that was asked for; `kept` are pages that have been painted before."""
    from blockdsl.export.pdf import write_pdf

    return write_pdf(document, created=printed.created, kept=kept)


def sheet_pdf(block: BlockFacts, printed: Print) -> bytes:
    """The block's pattern sheet."""
    from blockdsl.page.sheet import block_sheet

    return pdf_bytes(block_sheet(block, paper=printed.sheet_paper), printed)


def quilt_pdf(quilt: QuiltFacts, printed: Print) -> bytes:
    """The quilt's sheets."""
    from blockdsl.page.sheet import quilt_sheet

    return pdf_bytes(quilt_sheet(quilt, paper=printed.sheet_paper), printed)


def book_document(book: BookFacts, printed: Print, keeper: PageCache | None = None) -> Publication:
    """The book on the paper that was asked for; some of its pages the `keeper` may have."""
    from blockdsl.page.book.book import book_document as pages_of

    return pages_of(replace(book, paper=printed.sheet_paper), keeper)


def check_print_pdf(printed: Print, language: Language = "en-US") -> bytes:
    """The page that shows whether a printer prints at actual size."""
    from blockdsl.marks.display_list import Document
    from blockdsl.page.scale_check_page import check_print_page
    from blockdsl.wording.messages import messages

    title = messages(language)("scale-document")
    page = check_print_page(printed.sheet_paper, language)
    return pdf_bytes(Document(title, (page,), language=language), printed)


# --- at full size ------------------------------------------------------------------------------


def with_templates_to_print(block: BlockFacts, printed: Print) -> BlockFacts:
    """The block with templates of those patches alone that are cut by them; with all of them where they are asked for.

    Squares, rectangles, their halves and what is cut from strips are cut more simply, and more truly, with a ruler.
    """
    if printed.all_templates:
        return block
    letters = {cut.label for cut in block.cutting if cut.piece == "template"}
    kept = tuple(template for template in block.templates if template.label in letters)
    return block if len(kept) == len(block.templates) else replace(block, templates=kept)


def parts_at_full_size(block: BlockFacts) -> tuple[FullSize, ...]:
    """What of the block is printed at full size."""
    has: dict[FullSize, object] = {
        "templates": block.templates,
        "foundation": block.foundations,
        "papers": block.papers,
    }
    return tuple(part for part, there in has.items() if there)


def full_size_pdf(part: FullSize, block: BlockFacts, printed: Print) -> bytes:
    """The block's templates or papers; they can be printed when nothing of them is `too_large`."""
    pages, _ = _full_size(part)
    return pdf_bytes(pages(block, paper=printed.paper, margin_pt=printed.margin_pt), printed)


def too_large(part: FullSize, block: BlockFacts) -> tuple[str, ...]:
    """The patches, by letter, or the foundation papers, by name, that no page can hold; with one none are printed."""
    _, too_large_of = _full_size(part)
    return too_large_of(block)


def _full_size(part: FullSize) -> tuple[Callable[..., Document], Callable[[BlockFacts], tuple[str, ...]]]:
    if part == "templates":
        from blockdsl.fullsize.templates import template_pages, templates_too_large

        return template_pages, templates_too_large
    if part == "foundation":
        from blockdsl.fullsize.foundation import foundation_pages, foundations_too_large

        return foundation_pages, foundations_too_large
    from blockdsl.fullsize.papers import paper_pages, papers_too_large

    return paper_pages, papers_too_large


# --- pictures ----------------------------------------------------------------------------------


def picture_svg(
    page: str, shown: BlockFacts | QuiltFacts, about: str = "", colourway: ColourwayFacts | None = None
) -> bytes:
    """The picture that `page.single` has under the name `page`, of a block in one of its colourways.

    `about` says what it shows beside the name, as a message `picture-title-…`: `letters`, `grid`, `cutting`, `rows`.
    """
    from blockdsl.export.svg import write_svg
    from blockdsl.page import single
    from blockdsl.wording.messages import words_of

    title = shown.name
    if colourway is not None:
        title = words_of(shown)("picture-title-colorway", name=shown.name, colorway=colourway.name)
    elif about:
        title = words_of(shown)(f"picture-title-{about}", name=shown.name)
    draw: Callable[..., Page] = getattr(single, page)
    return write_svg(draw(shown) if colourway is None else draw(shown, colourway), title=title)


def gallery_svg(blocks: Sequence[BlockFacts], title: str) -> bytes:
    """All blocks side by side, by family."""
    from blockdsl.export.svg import write_svg
    from blockdsl.page.gallery import gallery_page

    return write_svg(gallery_page(blocks, title), title=title, draw_words=True)


def possibilities_svg(found: Sequence[Possibility], title: str) -> bytes:
    """Every quilt that a block can become, side by side."""
    from blockdsl.export.svg import write_svg
    from blockdsl.page.gallery import possibility_page

    return write_svg(possibility_page(found, title), title=title, draw_words=True)


# --- sites -------------------------------------------------------------------------------------


class SitePrint(Struct, frozen=True):
    """What can be printed from a page of a site: what it is called there, its file's name, and its bytes."""

    words: str
    name: str
    make: Callable[[], bytes]


PrintsOf = Callable[["BookBlockFacts | QuiltFacts", str], Iterable[SitePrint]]
"""What is printed of a block or a quilt; the files' names begin with that of its page."""


def site_files(book: BookFacts, prints_of: PrintsOf | None = None) -> dict[str, bytes]:
    """The files of the book's web site, by name; with `prints_of` what can be printed is among them."""
    from blockdsl.document.content import WebFile
    from blockdsl.document.site import RESERVED, web_site
    from blockdsl.export.html import site_files as files_of

    made: dict[str, bytes] = {}

    def files(item: BookBlockFacts | QuiltFacts, name: str) -> tuple[WebFile, ...]:
        prints = tuple(prints_of(item, name)) if prints_of is not None else ()
        made.update((each.name, each.make()) for each in prints)
        return tuple(WebFile(each.words, each.name) for each in prints)

    return files_of(web_site(book, Taken(RESERVED).take, files)) | made


def as_book(blocks: Sequence[BlockFacts], source: str, paper: str, quilts: Sequence[QuiltFacts] = ()) -> BookFacts:
    """What a file without a book declares as one, by the name of its one quilt or block, or else of the file."""
    from blockdsl.facts import book_of

    words = PurePosixPath(source.replace("\\", "/")).stem.replace("-", " ").replace("_", " ").strip("<> ")
    named = quilts or blocks
    return book_of(blocks, named[0].name if len(named) == 1 else words[:1].upper() + words[1:], paper, quilts)
