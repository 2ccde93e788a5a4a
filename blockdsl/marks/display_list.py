"""The display list: the closed, small set of marks that every painter knows.

All coordinates are points (1/72 in) at real size, x to the right, y downward from the page's top left corner.
Colours are `#rrggbb`. Text is already measured and broken: one mark is one run on one line.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal

from msgspec import Struct, structs

from blockdsl.raster import Raster

Weight = Literal["regular", "bold"]

PagePoint = tuple[float, float]
"""A place on the page, in points."""
Segment = tuple[PagePoint, PagePoint]
Contour = tuple[PagePoint, ...]
"""The corners of an outline on the page in order, the first not said again."""


Role = Literal[
    "H1", "H2", "H3", "H4", "H5", "H6", "P", "Table", "TR", "TH", "TD", "L", "LI", "Lbl", "LBody", "Caption", "Artifact"
]
"""What something is to those who hear the page, as PDF calls it (ISO 32000-1, 14.8.4); an artifact is not read."""


class Element(Struct, frozen=True):
    """A part of the page as it is read. Marks that follow each other with the very same element are one such part.

    `scope` is of a head of a table what it heads, `numbering` how a list is numbered. Of a cell `column` is its place
    in the row, from 0, and `columns` how many it spans; of a row `columns` is how many it has.
    """

    role: Role
    scope: Literal["", "Column", "Row"] = ""
    numbering: Literal["", "Disc", "Decimal"] = ""
    column: int = 0
    columns: int = 1


class Path(Struct, frozen=True):
    """One or more rings or open lines. `fill` and `stroke` may each be None; `dash` is in points.

    With `round_ends` lines and dashes end in half circles, so that a dash of next to no length is a dot.
    """

    rings: tuple[tuple[tuple[float, float], ...], ...]
    closed: bool = True
    fill: str | None = None
    stroke: str | None = None
    stroke_width_pt: float = 0.5
    dash: tuple[float, ...] = ()
    round_ends: bool = False


class TextMark(Struct, frozen=True):
    """One run of text whose left end stands at (x, y) on the baseline, turned clockwise by `turn_degrees` about it.

    `elements` are those that it is read in, from the outermost; without one it is a paragraph by itself.
    """

    x_pt: float
    y_pt: float
    text: str
    size_pt: float
    weight: Weight = "regular"
    colour: str = "#1d1d1b"
    turn_degrees: float = 0.0
    elements: tuple[Element, ...] = ()


class RasterMark(Struct, frozen=True):
    """A picture of pixels in its box; the box has the picture's own proportion. It stands inside a `Figure`."""

    raster: Raster
    x_pt: float
    y_pt: float
    width_pt: float
    height_pt: float


class Figure(Struct, frozen=True):
    """A picture with alternative text for those who cannot see it."""

    alternative: str
    marks: tuple[Mark, ...]
    elements: tuple[Element, ...] = ()


Transform = tuple[float, float, float, float, float, float]
"""Where a stamp comes down: (a, b, c, d, e, f) puts its (x, y) at (a x + c y + e, b x + d y + f), in points."""


class Stamp(Struct, frozen=True):
    """The same paths and words at many places, given once: the blocks of a quilt. `name` is as an anchor's, its own.

    The places turn, mirror and move but do not stretch, so that lines keep their thickness.
    """

    name: str
    marks: tuple[Path | TextMark, ...]
    places: tuple[Transform, ...]


class Anchor(Struct, frozen=True):
    """A place that links and bookmarks lead to; nothing is seen of it. Names are of ASCII letters, digits and `-`."""

    name: str
    x_pt: float
    y_pt: float


class Link(Struct, frozen=True):
    """Marks that lead to `target` when their box is clicked; on paper just marks.

    The target is an anchor of the same document, or an address of the web, `https://` and all.
    """

    target: str
    x_pt: float
    y_pt: float
    width_pt: float
    height_pt: float
    marks: tuple[Mark, ...]
    elements: tuple[Element, ...] = ()


def leads_out(target: str) -> bool:
    """Whether a link leads to the web; the names of anchors have no such signs."""
    return "://" in target


class Kept(Struct, frozen=True):
    """All that stands on a page but its foot, painted before: the painter of PDF has what came of it, by its key.

    It comes before any mark that is seen. `words` are all the texts in it. Other painters paint nothing for it.
    """

    key: str
    words: str


Mark = Path | TextMark | RasterMark | Figure | Stamp | Link | Anchor | Kept


class Page(Struct, frozen=True):
    """One page, real size."""

    width_pt: float
    height_pt: float
    marks: tuple[Mark, ...]


class Bookmark(Struct, frozen=True):
    """A line of a viewer's outline: its words, the page that it leads to, from 0, and the lines below it."""

    words: str
    page: int
    inner: tuple[Bookmark, ...] = ()


class PageLabels(Struct, frozen=True):
    """From the page `first`, counted from 0, pages are called 1, 2, 3 … or i, ii, iii …; till the next such entry."""

    first: int
    style: Literal["decimal", "roman"]


class Publication(Struct, frozen=True):
    """A file's pages with what a PDF says about itself. Pages may be made one after the other, as they are asked for.

    `rights` is what it says of who may do what with it. `outline` are the bookmarks of a longer file; `labels` what a
    viewer calls its pages.
    """

    title: str
    pages: Iterable[Page]
    language: str = "en"
    author: str = ""
    subject: str = ""
    rights: str = ""
    outline: tuple[Bookmark, ...] = ()
    labels: tuple[PageLabels, ...] = ()


class Document(Publication, frozen=True):
    """A publication whose pages are all at hand."""

    pages: tuple[Page, ...]


def tagged(marks: Iterable[Mark], *elements: Element) -> tuple[Mark, ...]:
    """The same marks, read as parts of these elements, the outermost first."""
    return tuple([_tagged(mark, elements) for mark in marks])


def unread(marks: Iterable[Mark]) -> tuple[Mark, ...]:
    """The same marks as artifacts: what is said on every page is not read aloud."""
    return tagged(marks, Element("Artifact"))


def _tagged(mark: Mark, elements: tuple[Element, ...]) -> Mark:
    if isinstance(mark, TextMark | Figure | Link):
        return structs.replace(mark, elements=(*elements, *mark.elements))
    return mark


def moved(marks: Iterable[Mark], dx_pt: float, dy_pt: float) -> tuple[Mark, ...]:
    """The same marks, further right and down."""
    if not dx_pt and not dy_pt:
        return tuple(marks)
    return tuple([_moved(mark, dx_pt, dy_pt) for mark in marks])


def _moved(mark: Mark, dx: float, dy: float) -> Mark:  # noqa: PLR0911 - one line for each mark there is
    if isinstance(mark, Path):
        rings = tuple([tuple([(x + dx, y + dy) for x, y in ring]) for ring in mark.rings])
        return Path(rings, mark.closed, mark.fill, mark.stroke, mark.stroke_width_pt, mark.dash, mark.round_ends)
    if isinstance(mark, TextMark):
        return TextMark(
            mark.x_pt + dx,
            mark.y_pt + dy,
            mark.text,
            mark.size_pt,
            mark.weight,
            mark.colour,
            mark.turn_degrees,
            mark.elements,
        )
    if isinstance(mark, RasterMark):
        return RasterMark(mark.raster, mark.x_pt + dx, mark.y_pt + dy, mark.width_pt, mark.height_pt)
    if isinstance(mark, Figure):
        return Figure(mark.alternative, moved(mark.marks, dx, dy), mark.elements)
    if isinstance(mark, Link):
        inner = moved(mark.marks, dx, dy)
        return Link(mark.target, mark.x_pt + dx, mark.y_pt + dy, mark.width_pt, mark.height_pt, inner, mark.elements)
    if isinstance(mark, Kept | Stamp):
        return mark if isinstance(mark, Kept) else _moved_stamp(mark, dx, dy)  # a kept page has its place already
    return Anchor(mark.name, mark.x_pt + dx, mark.y_pt + dy)


def _moved_stamp(stamp: Stamp, dx: float, dy: float) -> Stamp:
    places = tuple([(a, b, c, d, e + dx, f + dy) for a, b, c, d, e, f in stamp.places])
    return Stamp(stamp.name, stamp.marks, places)
