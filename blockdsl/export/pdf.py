"""A document as one PDF file at real size, with selectable text, tags and the same bytes each time.

Pages are written straight from their marks: no drawing library stands between, so that the bytes do not depend on
one, a page's operators can be kept and used again in another file, and no page is held once it is written.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from datetime import UTC, datetime
from types import MappingProxyType

from blockdsl.export.pdf_objects import ObjectFile, references, words
from blockdsl.export.pdf_page import PaintedPage, number, paint_page, resource
from blockdsl.export.pdf_rights import rights
from blockdsl.export.pdf_structure import Destination, Structure, anchor_names, labels, outline
from blockdsl.export.pdf_text import RESOURCE, WEIGHTS, base_name, descriptor, reading_map, subset, widths
from blockdsl.export.printable import Unprintable, check_text
from blockdsl.export.recognised import PRODUCER
from blockdsl.marks.display_list import Bookmark, Publication
from blockdsl.raster import Raster, pixels_of


def write_pdf(
    document: Publication,
    *,
    created: datetime | None = None,
    kept: Mapping[str, PaintedPage] = MappingProxyType({}),
) -> bytes:
    """The document's pages as one file, in which a font is embedded once. What they have kept is in `kept`.

    Units:  points; a page's size is the paper's, and viewers are asked not to scale when they print.
    Errors: Unprintable where there is no page, one cannot be painted, or a link leads to no anchor.

    Pages are taken one by one, and none is kept. Without `created` the file has no date at all.
    """
    return bind(document, (paint_page(page, kept) for page in document.pages), created=created)


def bind(document: Publication, pages: Iterable[PaintedPage], *, created: datetime | None = None) -> bytes:
    """The same for pages that have been painted; those of the document itself are not looked at."""
    for text in (
        document.title,
        document.author,
        document.subject,
        document.language,
        document.rights,
        *_words(document.outline),
    ):
        check_text(text)
    file = ObjectFile()
    tree, resources = file.number(), file.number()
    structure = Structure(file)
    kids: list[int] = []
    tops: list[Destination] = []
    anchors: dict[str, Destination] = {}
    targets: set[str] = set()
    rasters: dict[Raster, None] = {}
    glyphs: list[set[int]] = [set() for _ in WEIGHTS]
    for page in pages:
        own = file.number()
        height = page.height_pt
        operators = [file.add_stream(b"", stream, squeezed=True) for stream in page.operators]
        told = structure.add_page(page, own, height)
        file.put(
            own,
            b"<</Type/Page/Parent %d 0 R/MediaBox[0 0 %s %s]/Resources %d 0 R/Contents%s%s>>"
            % (tree, number(page.width_pt), number(height), resources, references(operators), told),
        )
        kids.append(own)
        tops.append(Destination(own, b"0", number(height)))
        for anchor in page.anchors:
            anchors.setdefault(anchor.name, Destination(own, number(anchor.x_pt), number(height - anchor.y_pt)))
        rasters |= dict.fromkeys(page.rasters)
        targets.update(jump.target for jump in page.jumps)
        for together, used in zip(glyphs, page.glyphs, strict=True):
            together.update(used)
    if not kids:
        message = "a document without pages"
        raise Unprintable(message)
    file.put(tree, b"<</Type/Pages/Count %d/Kids%s>>" % (len(kids), references(kids)))
    file.put(resources, b"<</Font<<%s>>%s>>" % (_fonts(file, glyphs), _pictures(file, rasters)))
    catalogue = b"".join(
        (
            b"<</Type/Catalog/Pages %d 0 R/Lang%s" % (tree, words(document.language)),
            b"/ViewerPreferences<</PrintScaling/None/DisplayDocTitle true>>",
            structure.finish(),
            anchor_names(file, anchors, targets),
            outline(file, document.outline, tops),
            labels(document.labels),
            rights(file, document),
            b">>",
        )
    )
    return file.finished(file.add(catalogue), file.add(_information(document, created)))


def _words(bookmarks: Iterable[Bookmark]) -> Iterator[str]:
    for bookmark in bookmarks:
        yield bookmark.words
        yield from _words(bookmark.inner)


def _fonts(file: ObjectFile, glyphs: Iterable[set[int]]) -> bytes:
    """Each weight that is used, as a composite font whose codes are glyph numbers (ISO 32000-1, 9.7)."""
    entries = []
    for weight, some in zip(WEIGHTS, glyphs, strict=True):
        if not some:
            continue
        used = frozenset(some)
        data = subset(weight, used)
        name = base_name(weight, used)
        carried = file.add_stream(b"/Length1 %d" % len(data), data)
        about = file.add(
            b"<</Type/FontDescriptor/FontName%s%s/FontFile2 %d 0 R>>" % (name, descriptor(weight), carried)
        )
        inner = file.add(
            b"<</Type/Font/Subtype/CIDFontType2/BaseFont%s/CIDToGIDMap/Identity/DW 1000/W%s/FontDescriptor %d 0 R"
            b"/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>>>"
            % (name, widths(weight, used), about)
        )
        reading = file.add_stream(b"", reading_map(weight, used))
        outer = file.add(
            b"<</Type/Font/Subtype/Type0/BaseFont%s/Encoding/Identity-H/DescendantFonts[%d 0 R]/ToUnicode %d 0 R>>"
            % (name, inner, reading)
        )
        entries.append(b"%s %d 0 R" % (RESOURCE[weight], outer))
    return b"".join(entries)


def _pictures(file: ObjectFile, rasters: Iterable[Raster]) -> bytes:
    """The entry for pictures of pixels, each in the file once: JPEG as it is, others squeezed without loss."""
    entries = []
    for raster in rasters:
        size = raster.width_px, raster.height_px
        about = b"/Type/XObject/Subtype/Image/Width %d/Height %d/ColorSpace/DeviceRGB/BitsPerComponent 8" % size
        if raster.form == "jpeg":
            placed = file.add_stream(about, raster.data, squeezed=True, opened_by=b"DCTDecode")
        else:
            placed = file.add_stream(about, pixels_of(raster))
        entries.append(b"%s %d 0 R" % (resource(raster), placed))
    return b"/XObject<<%s>>" % b"".join(entries) if entries else b""


def _information(document: Publication, created: datetime | None) -> bytes:
    """The entries of the PDF's information dictionary that have something to say."""
    entries = {
        b"/Title": document.title,
        b"/Author": document.author,
        b"/Subject": document.subject,
        b"/Producer": PRODUCER,
        b"/CreationDate": _date(created),
        b"/ModDate": _date(created),
    }
    return b"<<%s>>" % b"".join(name + words(value) for name, value in entries.items() if value)


def _date(moment: datetime | None) -> str:
    """A moment in PDF's way of writing it, always in universal time; one without a zone is taken as such."""
    if moment is None:
        return ""
    aware = moment if moment.tzinfo else moment.replace(tzinfo=UTC)
    return aware.astimezone(UTC).strftime("D:%Y%m%d%H%M%SZ")
