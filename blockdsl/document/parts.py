"""What a page of the web site is made of: a closed, small set of parts that says what things are, not how they look.

Words are plain; a fraction in them may be plain (`2 7/8`) or set (`2 ⁷⁄₈`). Pictures are pages of marks. A target is
the name of a page of the same site, with `#` and an anchor where it leads into it; nothing leads outside.
"""

from __future__ import annotations

from typing import Literal

from msgspec import Struct

from blockdsl.marks.display_list import Page


class TextRun(Struct, frozen=True):
    """A run of words, plain, strong or quiet; with a target it leads there."""

    text: str
    weight: Literal["plain", "strong", "quiet", "emphasis"] = "plain"
    target: str = ""


RichText = tuple[TextRun, ...]


class Heading(Struct, frozen=True):
    """A heading below the page's title: level 2 or deeper, no level left out on the way down."""

    level: int
    words: RichText
    anchor: str = ""


class Paragraph(Struct, frozen=True):
    """Running words."""

    words: RichText


class Listing(Struct, frozen=True):
    """Items one below the other; `start` is the first number of a list that counts them."""

    items: tuple[DocumentParts, ...]
    start: int | None = None


class Quotation(Struct, frozen=True):
    """Words of somebody else."""

    parts: DocumentParts


class Verbatim(Struct, frozen=True):
    """Lines kept as they were written."""

    text: str


class Divider(Struct, frozen=True):
    """A pause between two trains of thought."""


class Image(Struct, frozen=True):
    """A drawing; its figures say in words what is seen. `beside` is one that only repeats the words next to it."""

    page: Page
    caption: str = ""
    beside: bool = False


class DefinitionList(Struct, frozen=True):
    """Names and what is said of each, on one line or more. `kind` is what they are: measures or explained words."""

    entries: tuple[tuple[str, tuple[RichText, ...]], ...]
    kind: Literal["measures", "terms"] = "measures"


class FabricLine(Struct, frozen=True):
    """A line of the key of fabrics."""

    swatch: Page
    number: int
    label: str
    value: str


class FabricKey(Struct, frozen=True):
    """The key of fabrics."""

    fabrics: tuple[FabricLine, ...]


class Sign(Struct, frozen=True):
    """A sign that pictures use, and what it means."""

    drawing: Page
    words: str


class Signs(Struct, frozen=True):
    """The key to the signs of the pictures that follow."""

    entries: tuple[Sign, ...]


class Tick(Struct, frozen=True):
    """Something to do or measure, with a box to tick."""

    words: RichText


class TickCell(Struct, frozen=True):
    """A box to tick in a table; `what` names it for those who do not see the row."""

    what: str


class SizeCell(Struct, frozen=True):
    """The sides of a piece with plain fractions and without their unit: one for a square."""

    sides: tuple[str, ...]


DataCell = RichText | TickCell | SizeCell
ColumnKind = Literal["tick", "count", "words", "size", "then", "letter", "purpose", "spare", "number"]


class DataColumn(Struct, frozen=True):
    """A column of a table: its head, and what stands in it. The first that is no tick names its rows."""

    head: str
    kind: ColumnKind


class RowGroup(Struct, frozen=True):
    """Rows under a heading of their own: a swatch, words, a quiet remark; without words just rows."""

    rows: tuple[tuple[DataCell, ...], ...]
    words: RichText = ()
    swatch: Page | None = None
    aside: str = ""


class Table(Struct, frozen=True):
    """A table; `caption` names it. One that is ticked off is read row by row, which narrow screens may break."""

    caption: str
    columns: tuple[DataColumn, ...]
    groups: tuple[RowGroup, ...]


class Card(Struct, frozen=True):
    """A picture with a few words, one among others alike; with a target all of it leads there."""

    parts: DocumentParts
    target: str = ""


class Cards(Struct, frozen=True):
    """Cards beside each other, as many as there is room for; steps have an order."""

    kind: Literal["blocks", "pictures", "units", "colourways", "steps", "cloth"]
    cards: tuple[Card, ...]


class Places(Struct, frozen=True):
    """Where else to go; with a label it is a way through the page of its own, such as the sizes on it."""

    entries: tuple[TextRun, ...]
    label: str = ""


class DocumentSection(Struct, frozen=True):
    """A part of a page under its heading."""

    heading: Heading
    parts: DocumentParts


DocumentPart = (
    Heading
    | Paragraph
    | Listing
    | Quotation
    | Verbatim
    | Divider
    | Image
    | DefinitionList
    | FabricKey
    | Signs
    | Tick
    | Table
    | Cards
    | Places
    | DocumentSection
)
DocumentParts = tuple[DocumentPart, ...]


class WebPage(Struct, frozen=True):
    """One page. `name` is that of its file without ending; `over` stands above the title: a chapter, a remark."""

    name: str
    title: str
    parts: DocumentParts
    over: str = ""
    under: str = ""


class WebSite(Struct, frozen=True):
    """A whole site, its pages in reading order, the home page first. `language` is a tag such as `en`."""

    title: str
    author: str
    language: str
    pages: tuple[WebPage, ...]


def plain(text: str) -> RichText:
    """One plain run."""
    return (TextRun(text),)
