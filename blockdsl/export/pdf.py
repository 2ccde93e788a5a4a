"""A document as one PDF file at real size, with selectable text, tags and the same bytes each time."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from datetime import UTC, datetime
from hashlib import sha256
from io import BytesIO
from itertools import chain
from typing import Any, Final

from pypdf import PdfReader, PdfWriter
from pypdf.generic import (
    ArrayObject,
    BooleanObject,
    ByteStringObject,
    DictionaryObject,
    Fit,
    IndirectObject,
    NameObject,
    NumberObject,
    PdfObject,
    TextStringObject,
)

from blockdsl.drawing.marks import Anchor, Bookmark, Figure, Link, Mark, Page, PageLabels, Publication
from blockdsl.export.cairo_library import load_cairo
from blockdsl.export.cairo_painter import CairoPainter
from blockdsl.export.printable import Unprintable, check_page, check_text

_PRODUCER: Final = "blockdsl"


def write_pdf(document: Publication, *, created: datetime | None = None) -> bytes:
    """All pages on one surface, so that a font is embedded once for the whole file.

    Units:  points; a page's size is the paper's, and viewers are asked not to scale when they print.
    Errors: Unprintable where there is no page, one cannot be painted, or a link leads to no anchor; CairoMissing.

    Pages are taken one by one, and none is kept. Without `created` the file has no date at all.
    """
    for words in (document.title, document.author, document.subject, document.language, *_words(document.outline)):
        check_text(words)
    told = _Told()
    painted = _paint(document, told)
    missing = sorted(told.targets - told.anchors)
    if missing:
        message = f"links to {', '.join(missing)}: there is no such anchor"
        raise Unprintable(message)
    return _finish(painted, document, told, created)


@dataclass(slots=True)
class _Told:
    """What must be remembered of pages that are painted and gone."""

    alternatives: list[str] = field(default_factory=list)
    anchors: set[str] = field(default_factory=set)
    targets: set[str] = field(default_factory=set)
    digest: Any = field(default_factory=sha256)

    def take(self, page: Page) -> None:
        """Remember a page."""
        self.digest.update(repr(page).encode("utf-8"))
        self._take(page.marks)

    def _take(self, marks: Iterable[Mark]) -> None:
        for mark in marks:
            match mark:
                case Figure():
                    self.alternatives.append(mark.alternative)
                case Anchor():
                    self.anchors.add(mark.name)
                case Link():
                    self.targets.add(mark.target)


def _words(outline: Iterable[Bookmark]) -> Iterator[str]:
    for bookmark in outline:
        yield bookmark.words
        yield from _words(bookmark.inner)


def _paint(document: Publication, told: _Told) -> bytes:
    cairo = load_cairo()
    written = BytesIO()
    pages = iter(document.pages)
    first = next(pages, None)
    if first is None:
        message = "a document without pages"
        raise Unprintable(message)
    check_page(first)
    surface = cairo.PDFSurface(written, first.width_pt, first.height_pt)
    painter = CairoPainter(surface, tagged=True)
    for page in chain((first,), pages):
        check_page(page)
        told.take(page)
        surface.set_size(page.width_pt, page.height_pt)
        painter.context.tag_begin("Sect")
        painter.paint(page.marks)
        painter.context.tag_end("Sect")
        painter.context.show_page()
    surface.finish()
    return written.getvalue()


def _finish(painted: bytes, document: Publication, told: _Told, created: datetime | None) -> bytes:
    """What cairo 1.16 cannot say: print at real size, alternative texts, language, and an id from the content."""
    writer = PdfWriter(clone_from=PdfReader(BytesIO(painted)))
    root = writer.root_object
    root[NameObject("/ViewerPreferences")] = DictionaryObject(
        {NameObject("/PrintScaling"): NameObject("/None"), NameObject("/DisplayDocTitle"): BooleanObject(value=True)}
    )
    root[NameObject("/Lang")] = TextStringObject(document.language)
    _describe_figures(writer, told.alternatives)
    _add_outline(writer, document.outline)
    _add_labels(writer, document.labels)
    writer.metadata = _information(document, created)
    identity = ByteStringObject(_content_id(document, told, created))
    writer._ID = ArrayObject([identity, identity])  # noqa: SLF001 - the public way makes a random id
    written = BytesIO()
    writer.write(written)
    return written.getvalue()


def _add_outline(writer: PdfWriter, outline: Iterable[Bookmark], parent: IndirectObject | None = None) -> None:
    """The bookmarks as a tree, and the wish that a viewer shows them at once."""
    for bookmark in outline:
        fit = Fit.xyz(0, float(writer.pages[bookmark.page].mediabox.top), None)  # the viewer's scale is kept
        item = writer.add_outline_item(title=bookmark.words, page_number=bookmark.page, parent=parent, fit=fit)
        _add_outline(writer, bookmark.inner, item)
        writer.root_object[NameObject("/PageMode")] = NameObject("/UseOutlines")


def _add_labels(writer: PdfWriter, labels: Iterable[PageLabels]) -> None:
    """What a viewer calls the pages (ISO 32000-1, 12.4.2)."""
    numbers = ArrayObject()
    for entry in labels:
        style = NameObject("/r" if entry.style == "roman" else "/D")
        numbers += [NumberObject(entry.first), DictionaryObject({NameObject("/S"): style})]
    if numbers:
        writer.root_object[NameObject("/PageLabels")] = DictionaryObject({NameObject("/Nums"): numbers})


def _content_id(document: Publication, told: _Told, created: datetime | None) -> bytes:
    """Sixteen bytes that follow from what the file shows: from the display list, for cairo writes its own date."""
    about = (document.title, document.language, document.author, document.subject, document.outline, document.labels)
    digest = told.digest.copy()
    digest.update(repr((about, created)).encode("utf-8"))
    found: bytes = digest.digest()[:16]
    return found


def _information(document: Publication, created: datetime | None) -> dict[str, str]:
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


def _describe_figures(writer: PdfWriter, alternatives: Iterable[str]) -> None:
    """Give each Figure tag its alternative text; the tags come in the order of the marks."""
    tree = writer.root_object.get("/StructTreeRoot")
    if tree is None:
        return
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
