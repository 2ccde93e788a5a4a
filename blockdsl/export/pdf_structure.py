"""What a PDF says of its pages: how they are read aloud, where links and bookmarks lead, what the pages are called."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Final

from msgspec import Struct

from blockdsl.export.pdf_objects import ObjectFile, references, words
from blockdsl.export.pdf_page import PaintedPage, number
from blockdsl.export.printable import Unprintable
from blockdsl.marks.display_list import Bookmark, PageLabels, leads_out

_LABEL_STYLES: Final = {"roman": b"/r", "decimal": b"/D"}


class Destination(Struct, frozen=True):
    """An anchor in the file: the page's object, and the point in the page's own measure, y upward."""

    page: int
    left: bytes
    top: bytes

    def destination(self) -> bytes:
        """As links and bookmarks name it; the viewer's scale is kept."""
        return b"[%d 0 R/XYZ %s %s null]" % (self.page, self.left, self.top)


class Structure:
    """The tree of what is read aloud, page by page (ISO 32000-1, 14.7)."""

    def __init__(self, file: ObjectFile) -> None:
        """An empty tree in `file`."""
        self._file = file
        self._tree = file.number()
        self._document = file.number()
        self._sections: list[int] = []
        self._by_page: list[int] = []
        self._links: list[tuple[int, int]] = []

    def add_page(self, page: PaintedPage, page_object: int, height_pt: float) -> bytes:
        """The page's tags, and the entries that its own object gets: its number in the tree, and its links."""
        file = self._file
        section = file.number()
        links = {jump.tag: jump for jump in page.jumps}
        elements, annotations = [], []
        for place, tag in enumerate(page.tags):
            element = file.number()
            elements.append(element)
            kid = b"%d" % place
            if place in links:
                jump = links[place]
                left, top, right, bottom = jump.box
                annotation = file.add(
                    b"<</Type/Annot/Subtype/Link/F 4/Border[0 0 0]/Rect[%s %s %s %s]%s/StructParent %d>>"
                    % (
                        number(left),
                        number(height_pt - bottom),
                        number(right),
                        number(height_pt - top),
                        _leading_to(jump.target),
                        self._link_key(element),
                    )
                )
                annotations.append(annotation)
                kid = b"[%d<</Type/OBJR/Obj %d 0 R>>]" % (place, annotation)
            more = b"/Alt" + words(tag.alternative) if tag.alternative else b""
            file.put(
                element,
                b"<</S/%s/P %d 0 R/Pg %d 0 R/K %s%s>>" % (tag.role.encode(), section, page_object, kid, more),
            )
        file.put(section, b"<</S/Sect/P %d 0 R/K%s>>" % (self._document, references(elements)))
        self._sections.append(section)
        self._by_page.append(file.add(references(elements)))
        more = b"/Annots" + references(annotations) if annotations else b""
        return b"/StructParents %d/Tabs/S%s" % (len(self._by_page) - 1, more)

    def _link_key(self, element: int) -> int:
        """Links have numbers from one that no page reaches, for pages have those from 0."""
        self._links.append((_FIRST_LINK + len(self._links), element))
        return self._links[-1][0]

    def finish(self) -> bytes:
        """Write the tree, and give the entries of the catalogue that are about it."""
        file = self._file
        file.put(self._document, b"<</S/Document/P %d 0 R/K%s>>" % (self._tree, references(self._sections)))
        keyed = [*enumerate(self._by_page), *self._links]
        parents = b" ".join(b"%d %d 0 R" % pair for pair in keyed)
        file.put(
            self._tree,
            b"<</Type/StructTreeRoot/K %d 0 R/ParentTree<</Nums[%s]>>/ParentTreeNextKey %d>>"
            % (self._document, parents, _FIRST_LINK + len(self._links)),
        )
        return b"/StructTreeRoot %d 0 R/MarkInfo<</Marked true>>" % self._tree


_FIRST_LINK: Final = 1_000_000


def _leading_to(target: str) -> bytes:
    """The entries of a link that say where it leads: to an anchor by its name, or out to the web."""
    if leads_out(target):
        return b"/A<</S/URI/URI%s>>/Contents%s" % (words(target), words(target))
    return b"/Dest" + words(target)


def anchor_names(file: ObjectFile, places: Mapping[str, Destination], targets: Iterable[str]) -> bytes:
    """The catalogue's entry that says where the anchors are.

    Errors: Unprintable for a target that is not among them.
    """
    missing = sorted(target for target in set(targets) - set(places) if not leads_out(target))
    if missing:
        message = f"links to {', '.join(missing)}: there is no such anchor"
        raise Unprintable(message)
    if not places:
        return b""
    known = b"".join(words(name) + places[name].destination() for name in sorted(places))
    return b"/Names<</Dests %d 0 R>>" % file.add(b"<</Names[%s]>>" % known)


def outline(file: ObjectFile, bookmarks: Sequence[Bookmark], tops: Sequence[Destination]) -> bytes:
    """The catalogue's entries for the bookmarks as a tree, and the wish that a viewer shows them at once."""
    if not bookmarks:
        return b""
    root = file.number()
    first, last, count = _branch(file, bookmarks, root, tops)
    file.put(root, b"<</Type/Outlines/First %d 0 R/Last %d 0 R/Count %d>>" % (first, last, count))
    return b"/Outlines %d 0 R/PageMode/UseOutlines" % root


def _branch(
    file: ObjectFile, bookmarks: Sequence[Bookmark], parent: int, tops: Sequence[Destination]
) -> tuple[int, int, int]:
    """Bookmarks side by side: the first, the last, and how many there are with those below them, all open."""
    numbers = [file.number() for _ in bookmarks]
    total = 0
    for place, (own, bookmark) in enumerate(zip(numbers, bookmarks, strict=True)):
        more = b""
        if place:
            more += b"/Prev %d 0 R" % numbers[place - 1]
        if place + 1 < len(numbers):
            more += b"/Next %d 0 R" % numbers[place + 1]
        if bookmark.inner:
            first, last, count = _branch(file, bookmark.inner, own, tops)
            more += b"/First %d 0 R/Last %d 0 R/Count %d" % (first, last, count)
            total += count
        destination = tops[bookmark.page].destination()
        file.put(own, b"<</Title%s/Parent %d 0 R/Dest%s%s>>" % (words(bookmark.words), parent, destination, more))
        total += 1
    return numbers[0], numbers[-1], total


def labels(entries: Iterable[PageLabels]) -> bytes:
    """The catalogue's entry for what a viewer calls the pages (ISO 32000-1, 12.4.2)."""
    named = b" ".join(b"%d<</S%s>>" % (entry.first, _LABEL_STYLES[entry.style]) for entry in entries)
    return b"/PageLabels<</Nums[%s]>>" % named if named else b""
