"""What is made of a block: each output's name and how its bytes come about."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import datetime
from typing import TYPE_CHECKING, Final

from blockdsl.cli.naming import Taken

if TYPE_CHECKING:
    from blockdsl.drawing.marks import Page, Publication
    from blockdsl.facts import BlockFacts, BookFacts

KINDS: Final = ("sheet", "templates", "diagrams", "table", "book")
"""What `--only` may name."""

_DIAGRAMS: Final = ("letters", "grid", "cutting")
"""Names that a colouring's picture may not take."""


@dataclass(frozen=True, slots=True)
class Print:
    """How pages are printed. `created` is the date that a PDF tells, or None for no date.

    On a roll templates alone are printed; sheets and books then stand on Letter, or on A4 for a roll in centimetres.
    """

    paper: str
    created: datetime | None

    @property
    def sheet_paper(self) -> str:
        """The paper of sheets and books."""
        if not self.paper.startswith("roll"):
            return self.paper
        return "letter" if self.paper.endswith("in") else "a4"


@dataclass(frozen=True, slots=True)
class Output:
    """A file to be: its name in the folder, and the work that gives its bytes."""

    name: str
    make: Callable[[], bytes]


def block_outputs(block: BlockFacts, stem: str, kinds: frozenset[str], printed: Print) -> Iterator[Output]:
    """The files of one block; their names begin with `stem`."""
    if "sheet" in kinds:
        yield Output(f"{stem}.sheet.pdf", lambda: _sheet(block, printed))
    if "templates" in kinds and not too_large(block):
        yield Output(f"{stem}.templates.pdf", lambda: _templates(block, printed))
    if "diagrams" in kinds:
        yield from _diagrams(block, stem)
    if "table" in kinds:
        yield from _tables(block, stem)


def size_outputs(block: BlockFacts, stem: str, kinds: frozenset[str], printed: Print) -> Iterator[Output]:
    """What a block needs at a further size that a book prints: its templates, when some piece is cut by them."""
    by_template = any(cut.piece == "template" for cut in block.cutting)
    if "templates" in kinds and by_template and not too_large(block):
        yield Output(f"{stem}.templates.pdf", lambda: _templates(block, printed))


def book_output(book: BookFacts, stem: str, printed: Print) -> Output:
    """The book as one PDF."""
    return Output(f"{stem}.pdf", lambda: book_bytes(book, printed))


def book_bytes(book: BookFacts, printed: Print) -> bytes:
    """The book on the paper that was asked for."""
    from blockdsl.drawing.book import book_document

    return pdf_bytes(book_document(replace(book, paper=printed.sheet_paper)), printed)


def too_large(block: BlockFacts) -> tuple[str, ...]:
    """The letters of the patches whose templates no page can hold; with one of them no templates are printed."""
    from blockdsl.drawing.templates import templates_too_large

    return templates_too_large(block)


def _sheet(block: BlockFacts, printed: Print) -> bytes:
    from blockdsl.drawing.sheet import block_sheet

    return pdf_bytes(block_sheet(block, paper=printed.sheet_paper), printed)


def _templates(block: BlockFacts, printed: Print) -> bytes:
    from blockdsl.drawing.templates import template_pages

    return pdf_bytes(template_pages(block, paper=printed.paper), printed)


def pdf_bytes(document: Publication, printed: Print) -> bytes:
    """The document as PDF with the date that was asked for."""
    from blockdsl.export.pdf import write_pdf

    return write_pdf(document, created=printed.created)


def _svg(page: Callable[[], Page], title: str) -> bytes:
    from blockdsl.export.svg import write_svg

    return write_svg(page(), title=title)


def _diagrams(block: BlockFacts, stem: str) -> Iterator[Output]:
    """The block in colour, in each of its colourings, with its letters, and on its grid."""
    from blockdsl.drawing import picture

    yield Output(f"{stem}.svg", lambda: _svg(lambda: picture.colour_page(block), block.name))
    taken = Taken(_DIAGRAMS)
    for plan in block.colourings:
        yield Output(
            f"{stem}.{taken.take(plan.name)}.svg",
            lambda plan=plan: _svg(  # type: ignore[misc]  # mypy cannot see the type of a default
                lambda: picture.colour_page(block, plan), f"{block.name}, {plan.name}"
            ),
        )
    yield Output(f"{stem}.letters.svg", lambda: _svg(lambda: picture.letters_page(block), f"{block.name}, letters"))
    yield Output(f"{stem}.grid.svg", lambda: _svg(lambda: picture.grid_page(block), f"{block.name}, grid"))


def _tables(block: BlockFacts, stem: str) -> Iterator[Output]:
    """The cutting table as a picture, as Markdown and as CSV."""
    from blockdsl.drawing import picture
    from blockdsl.drawing.cutting_words import cutting_rows
    from blockdsl.export.tables import to_csv, to_markdown

    yield Output(f"{stem}.cutting.svg", lambda: _svg(lambda: picture.cutting_page(block), f"{block.name}, cutting"))
    yield Output(f"{stem}.cutting.md", lambda: to_markdown(*cutting_rows(block)).encode())
    yield Output(f"{stem}.cutting.csv", lambda: to_csv(*cutting_rows(block)).encode())
