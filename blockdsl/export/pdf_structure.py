"""What a PDF says of its pages: how they are read aloud, where links and bookmarks lead, what the pages are called."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Final

from msgspec import Struct, field

from blockdsl.export.pdf_objects import ObjectFile, references, words
from blockdsl.export.pdf_page import Branch, Jump, PaintedPage, number
from blockdsl.export.printable import Unprintable
from blockdsl.marks.display_list import Bookmark, Element, PageLabels, leads_out

_LABEL_STYLES: Final = {"roman": b"/r", "decimal": b"/D"}


class Destination(Struct, frozen=True):
    """An anchor in the file: the page's object, and the point in the page's own measure, y upward."""

    page: int
    left: bytes
    top: bytes

    def destination(self) -> bytes:
        """As links and bookmarks name it; the viewer's scale is kept."""
        return b"[%d 0 R/XYZ %s %s null]" % (self.page, self.left, self.top)


class _Node(Struct):
    """An element of the tree: what it is, its entries, and what is in it: pieces of the page, links, other elements."""

    role: str
    entries: bytes = b""
    kids: list[int | bytes | _Node] = field(default_factory=list)
    filled: list[tuple[int, _Node]] = field(default_factory=list)
    """Of a row of a table its cells, each with its column."""


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
        self._level = 0

    def add_page(self, page: PaintedPage, page_object: int, height_pt: float) -> bytes:
        """The page's tags, and the entries that its own object gets: its number in the tree, and its links."""
        file = self._file
        links = {jump.tag: jump for jump in page.jumps}
        section = _Node("Sect")
        known: dict[int, _Node] = {}
        annotations: list[tuple[int, Jump]] = []
        for place, tag in enumerate(page.tags):
            within = self._within(section, tag.branches, known)
            if tag.role == "Words":
                if within is section:
                    within = _added(section, _Node("P"))
                if tag.alternative:
                    within = _added(within, _Node("Span", b"/ActualText" + words(tag.alternative)))
                within.kids.append(place)
            elif tag.role == "Figure":
                _added(within, _Node("Figure", b"/Alt" + words(tag.alternative), [place]))
            else:
                annotation = file.number()
                annotations.append((annotation, links[place]))
                around = _added(section, _Node("P")) if within is section else within
                _added(around, _Node("Link", b"", [place, b"<</Type/OBJR/Obj %d 0 R>>" % annotation]))
        owners: dict[int | bytes, int] = {}
        self._sections.append(self._put(section, self._document, page_object, owners))
        for annotation, jump in annotations:
            owner = owners[b"<</Type/OBJR/Obj %d 0 R>>" % annotation]
            self._put_link(annotation, jump, height_pt, owner)
        self._by_page.append(file.add(references([owners[place] for place in range(len(page.tags))])))
        more = b"/Annots" + references([annotation for annotation, _ in annotations]) if annotations else b""
        return b"/StructParents %d/Tabs/S%s" % (len(self._by_page) - 1, more)

    def _within(self, section: _Node, branches: Sequence[Branch], known: dict[int, _Node]) -> _Node:
        """The innermost of the elements that a piece stands in; those that are not there yet are begun."""
        node = section
        for branch in branches:
            if branch.number not in known:
                known[branch.number] = self._begun(node, branch.element)
            node = known[branch.number]
        return node

    def _begun(self, within: _Node, element: Element) -> _Node:
        """A new element; headings go down one level at a time, and a caption belongs to the figure before it."""
        role: str = element.role
        if role in _HEADINGS:
            self._level = min(_HEADINGS.index(role) + 1, self._level + 1)
            role = _HEADINGS[self._level - 1]
        if role == "Caption":
            before = within.kids[-1] if within.kids else None
            if not isinstance(before, _Node) or before.role != "Figure":
                return _added(within, _Node("P"))
            return _added(before, _Node("Caption"))
        node = _Node(role, _attributes(element))
        if role == "TR":
            node.filled = [(column, _Node("TD")) for column in range(element.columns)]
        if within.role == "TR":
            within.filled = [
                each for each in within.filled if not element.column <= each[0] < element.column + element.columns
            ]
            within.filled = sorted([*within.filled, (element.column, node)], key=lambda each: each[0])
            return node
        return _added(within, node)

    def _put(self, node: _Node, parent: int, page_object: int, owners: dict[int | bytes, int]) -> int:
        """Write an element with all in it; `owners` gets the element of each piece of the page, and of each link."""
        own = self._file.number()
        kids = []
        for kid in (*node.kids, *(cell for _, cell in node.filled)):
            if isinstance(kid, _Node):
                kids.append(b"%d 0 R" % self._put(kid, own, page_object, owners))
            else:
                owners[kid] = own
                kids.append(b"%d" % kid if isinstance(kid, int) else kid)
        self._file.put(
            own,
            b"<</S/%s/P %d 0 R/Pg %d 0 R%s/K[%s]>>"
            % (node.role.encode(), parent, page_object, node.entries, b" ".join(kids)),
        )
        return own

    def _put_link(self, annotation: int, jump: Jump, height_pt: float, owner: int) -> None:
        left, top, right, bottom = jump.box
        box = b" ".join(map(number, (left, height_pt - bottom, right, height_pt - top)))
        said = words(jump.words or jump.target)
        self._file.put(
            annotation,
            b"<</Type/Annot/Subtype/Link/F 4/Border[0 0 0]/Rect[%s]%s/Contents%s/StructParent %d>>"
            % (box, _leading_to(jump.target), said, self._link_key(owner)),
        )

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
_HEADINGS: Final = ("H1", "H2", "H3", "H4", "H5", "H6")


def _added(within: _Node, node: _Node) -> _Node:
    within.kids.append(node)
    return node


def _attributes(element: Element) -> bytes:
    """What a head of a table heads, how many columns a cell spans, how a list is numbered (ISO 32000-1, 14.8.5)."""
    if element.numbering:
        return b"/A<</O/List/ListNumbering/%s>>" % element.numbering.encode()
    if element.role not in ("TH", "TD") or not (element.scope or element.columns > 1):
        return b""
    scope = b"/Scope/%s" % element.scope.encode() if element.scope else b""
    span = b"/ColSpan %d" % element.columns if element.columns > 1 else b""
    return b"/A<</O/Table%s%s>>" % (scope, span)


def _leading_to(target: str) -> bytes:
    """The entries of a link that say where it leads: to an anchor by its name, or out to the web."""
    if leads_out(target):
        return b"/A<</S/URI/URI%s>>" % words(target)
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
