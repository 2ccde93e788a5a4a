"""A document as one PDF file at real size, with selectable text, tags and the same bytes each time."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from hashlib import sha256
from io import BytesIO
from typing import Final

from pypdf import PdfReader, PdfWriter
from pypdf.generic import (
    ArrayObject,
    BooleanObject,
    ByteStringObject,
    DictionaryObject,
    NameObject,
    PdfObject,
    TextStringObject,
)

from blockdsl.drawing.marks import Document, Figure
from blockdsl.export.cairo_library import load_cairo
from blockdsl.export.cairo_painter import CairoPainter
from blockdsl.export.printable import Unprintable, check_page, check_text

_PRODUCER: Final = "blockdsl"


def write_pdf(document: Document, *, created: datetime | None = None) -> bytes:
    """All pages on one surface, so that a font is embedded once for the whole file.

    Units:  points; a page's size is the paper's, and viewers are asked not to scale when they print.
    Errors: Unprintable where there is no page or one cannot be painted; CairoMissing.

    Without `created` the file has no date at all.
    """
    if not document.pages:
        message = "a document without pages"
        raise Unprintable(message)
    for page in document.pages:
        check_page(page)
    bookmarks = [words for words, _ in document.outline]
    for words in (document.title, document.author, document.subject, document.language, *bookmarks):
        check_text(words)
    return _finish(_paint(document), document, created)


def _paint(document: Document) -> bytes:
    cairo = load_cairo()
    written = BytesIO()
    first = document.pages[0]
    surface = cairo.PDFSurface(written, first.width_pt, first.height_pt)
    painter = CairoPainter(surface, tagged=True)
    for page in document.pages:
        surface.set_size(page.width_pt, page.height_pt)
        painter.context.tag_begin("Sect")
        painter.paint(page.marks)
        painter.context.tag_end("Sect")
        painter.context.show_page()
    surface.finish()
    return written.getvalue()


def _finish(painted: bytes, document: Document, created: datetime | None) -> bytes:
    """What cairo 1.16 cannot say: print at real size, alternative texts, language, and an id from the content."""
    writer = PdfWriter(clone_from=PdfReader(BytesIO(painted)))
    root = writer.root_object
    root[NameObject("/ViewerPreferences")] = DictionaryObject(
        {NameObject("/PrintScaling"): NameObject("/None"), NameObject("/DisplayDocTitle"): BooleanObject(value=True)}
    )
    root[NameObject("/Lang")] = TextStringObject(document.language)
    _describe_figures(writer, document)
    _add_outline(writer, document)
    writer.metadata = _information(document, created)
    identity = ByteStringObject(_content_id(document, created))
    writer._ID = ArrayObject([identity, identity])  # noqa: SLF001 - the public way makes a random id
    written = BytesIO()
    writer.write(written)
    return written.getvalue()


def _add_outline(writer: PdfWriter, document: Document) -> None:
    """The bookmarks, and the wish that a viewer shows them at once."""
    for words, page in document.outline:
        writer.add_outline_item(title=words, page_number=page)
    if document.outline:
        writer.root_object[NameObject("/PageMode")] = NameObject("/UseOutlines")


def _content_id(document: Document, created: datetime | None) -> bytes:
    """Sixteen bytes that follow from what the file shows: from the display list, for cairo writes its own date."""
    return sha256(repr((document, created)).encode("utf-8")).digest()[:16]


def _information(document: Document, created: datetime | None) -> dict[str, str]:
    """The entries of the PDF's information dictionary that have something to say."""
    entries = {
        "/Title": document.title,
        "/Author": document.author,
        "/Subject": document.subject,
        "/Producer": _PRODUCER,
        "/CreationDate": _date(created),
        "/ModDate": _date(created),
    }
    return {name: value for name, value in entries.items() if value}


def _date(moment: datetime | None) -> str:
    """A moment in PDF's way of writing it, always in universal time; one without a zone is taken as such."""
    if moment is None:
        return ""
    aware = moment if moment.tzinfo else moment.replace(tzinfo=UTC)
    return aware.astimezone(UTC).strftime("D:%Y%m%d%H%M%SZ")


def _describe_figures(writer: PdfWriter, document: Document) -> None:
    """Give each Figure tag its alternative text; the tags come in the order of the marks."""
    tree = writer.root_object.get("/StructTreeRoot")
    if tree is None:
        return
    alternatives = [mark.alternative for page in document.pages for mark in page.marks if isinstance(mark, Figure)]
    for element, alternative in zip(_figure_elements(tree), alternatives, strict=True):
        element[NameObject("/Alt")] = TextStringObject(alternative)


def _figure_elements(node: PdfObject) -> Iterator[DictionaryObject]:
    """The structure elements tagged Figure below `node`, in reading order. Kids are elements, lists or numbers."""
    found = node.get_object()
    if isinstance(found, ArrayObject):
        for kid in found:
            yield from _figure_elements(kid)
    elif isinstance(found, DictionaryObject):
        if found.get("/S") == "/Figure":
            yield found
        elif "/K" in found:
            yield from _figure_elements(found.raw_get("/K"))
