"""The files that may be taken away from the page: what `build` makes of the item, by name."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial

from msgspec import Struct

from blockdsl.export.naming import slug
from blockdsl.facts import BlockFacts, QuiltFacts
from blockdsl.printing import Print, full_size_pdf, parts_at_full_size, picture_svg, quilt_pdf, sheet_pdf, too_large

_PDF = "application/pdf"
_SVG = "image/svg+xml"


class Download(Struct, frozen=True):
    """A file: what it is called on the page and on the disk, its kind, and how its bytes come about."""

    title: str
    name: str
    media: str
    make: Callable[[], bytes]


def downloads_of(item: BlockFacts | QuiltFacts, paper: str) -> Mapping[str, Download]:
    """The files of an item on this paper, by the word that stands for each in an address."""
    printed = Print(paper, None)
    stem = slug(item.name)
    if isinstance(item, QuiltFacts):
        return {
            "sheet": Download("Quilt sheet", f"{stem}.sheet.pdf", _PDF, lambda: quilt_pdf(item, printed)),
            "picture": Download("Picture", f"{stem}.svg", _SVG, lambda: picture_svg("quilt_page", item, item.name)),
        }
    found = {
        "sheet": Download("Pattern sheet", f"{stem}.sheet.pdf", _PDF, lambda: sheet_pdf(item, printed)),
        "picture": Download("Picture", f"{stem}.svg", _SVG, lambda: picture_svg("colour_page", item, item.name)),
    }
    for part in parts_at_full_size(item):
        if not too_large(part, item):
            found[part] = Download(
                part.capitalize(), f"{stem}.{part}.pdf", _PDF, partial(full_size_pdf, part, item, printed)
            )
    return found
