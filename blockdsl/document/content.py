"""Content: a closed, small set of elements that say what things are, not how they look.

Sheets, books and sites are composed of it once; `page` lays it out on paper, `export/html` writes it as a web page.
An element carries its role, so that either can mark it as what it is: the level of a heading, the caption of a table
and the column that names its rows, the alternative text of a picture (in the figures that it draws), what a run of
words defines, and where it leads.

Words are plain, fractions too (`2 7/8`): whoever prints them sets them. A target is the name of a part of the same book
or site, with `#` and an anchor where it leads into it; nothing leads outside. Layout hints are wishes: what stands
beside what (`Columns`, `Section.layout`), what may be left out where it would begin a page (`Section.spare`).
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Final, Literal

from msgspec import Struct

from blockdsl.marks.display_list import Mark
from blockdsl.marks.theme import Box
from blockdsl.model.maker import NOBODY, Maker


class TextRun(Struct, frozen=True):
    """A run of words, plain, strong, quiet or emphasised; with a target it leads there.

    `defines` marks the place where the words are explained, for an index or a glossary.
    """

    text: str
    weight: Literal["plain", "strong", "quiet", "emphasis"] = "plain"
    target: str = ""
    defines: bool = False


RichText = tuple[TextRun, ...]
Lessons = Mapping[str, "Reference"]
"""For each method that is taught elsewhere in the book or site what leads there."""
NO_LESSONS: Final[Lessons] = MappingProxyType({})
PAGE_NUMBER: Final = "\N{OBJECT REPLACEMENT CHARACTER}"
"""The text of a run that stands for the number of the page to which it leads."""


class Heading(Struct, frozen=True):
    """A heading below the page's title: level 2 or deeper, no level left out on the way down; `aside` is a remark."""

    level: int
    words: RichText
    anchor: str = ""
    aside: str = ""


class Paragraph(Struct, frozen=True):
    """Running words; small ones are for who looks them up, such as a source."""

    words: RichText
    small: bool = False


class Listing(Struct, frozen=True):
    """Items one below the other; `start` is the first number of a list that counts them."""

    items: tuple[Parts, ...]
    start: int | None = None


class Quotation(Struct, frozen=True):
    """Words of somebody else."""

    parts: Parts


class Verbatim(Struct, frozen=True):
    """Lines kept as they were written."""

    text: str


class Divider(Struct, frozen=True):
    """A pause between two trains of thought."""


Drawing = Callable[[Box], tuple[tuple[Mark, ...], Box]]
"""Draws something as large as the box allows, at its top left: the marks, and the box that they fill."""


class Picture(Struct, frozen=True):
    """A drawing; its figures say in words what is seen. `repeats` marks one that only repeats the words next to it.

    Units: `width_pt` and `height_pt` are the room that it wants by itself; a page may give it more or less.
    """

    draw: Drawing
    width_pt: float
    height_pt: float
    caption: str = ""
    repeats: bool = False


class Definition(Struct, frozen=True):
    """A name and what is said of it, on one line or more; `where` ends with the run that leads to more of it."""

    name: str
    lines: tuple[RichText, ...]
    where: RichText = ()


class DefinitionList(Struct, frozen=True):
    """Names and what is said of each. `kind` is what they are.

    Measures stand beside each other; terms are explained one below the other, lines are only looked up, and
    an index leads to what stands elsewhere.
    """

    entries: tuple[Definition, ...]
    kind: Literal["measures", "terms", "lines", "index"] = "measures"


class FabricLine(Struct, frozen=True):
    """A line of the key of fabrics."""

    swatch: Picture
    number: int
    label: str
    value: str


class FabricKey(Struct, frozen=True):
    """The key of fabrics; one that is `brief` has its labels in full elsewhere."""

    fabrics: tuple[FabricLine, ...]
    brief: bool = False


class Plate(Struct, frozen=True):
    """What a page is about, large: its picture in colour, then others of it, with the key of their fabrics.

    `beside` is what belongs next to them as far as there is room. A `small` one repeats what is seen larger elsewhere;
    one that is `simple` can be read small.
    """

    pictures: tuple[Picture, ...]
    key: FabricKey
    beside: Parts = ()
    small: bool = False
    simple: bool = False


class Sign(Struct, frozen=True):
    """A sign that pictures use, and what it means."""

    drawing: Picture
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
    """The sides of a piece without their unit: one for a square."""

    sides: tuple[str, ...]


DataCell = RichText | TickCell | SizeCell | Picture
ColumnKind = Literal["tick", "swatch", "count", "words", "size", "then", "letter", "purpose", "spare", "number"]


class DataColumn(Struct, frozen=True):
    """A column of a table: its head, and what stands in it. The first of words or numbers names its rows.

    `at` is the finished size that it is for, by its place among the page's sizes from 1; 0 for all of them.
    """

    head: str
    kind: ColumnKind
    at: int = 0


class RowGroup(Struct, frozen=True):
    """Rows under a heading of their own: a swatch, words, a quiet remark; without words just rows.

    With `by_size` each row is for one of the page's finished sizes, in their order.
    """

    rows: tuple[tuple[DataCell, ...], ...]
    words: RichText = ()
    swatch: Picture | None = None
    aside: str = ""
    by_size: bool = False


class Table(Struct, frozen=True):
    """A table; `caption` names it. One that is ticked off is read row by row, which narrow screens may break."""

    caption: str
    columns: tuple[DataColumn, ...]
    groups: tuple[RowGroup, ...]
    whole: bool = False
    """Short enough that it is never broken over pages."""


class Card(Struct, frozen=True):
    """A picture with a few words, one among others alike; with a target all of it leads there.

    `number` is its place where they have an order, or 0.
    """

    parts: Parts
    target: str = ""
    number: int = 0


CardKind = Literal["blocks", "gallery", "kinds", "few", "units", "colourways", "strips", "cuts", "cloth"]


class Cards(Struct, frozen=True):
    """Cards beside each other, as many as there is room for; `kind` says what they show.

    Blocks and quilts to find, a gallery of blocks, kinds of block to make, units, colourways, cuts across a strip or a
    rectangle, cloth.
    `name` is what all of them are of, where their section holds more.
    """

    kind: CardKind
    cards: tuple[Card, ...]
    name: str = ""


class StepPart(Struct, frozen=True):
    """One part of a step: what to do, the size to measure, what follows; some with a picture and a heading.

    `letter` is `(a)`, `(b)`, … or nothing where a step has one part.
    """

    sentences: tuple[str, ...]
    letter: str = ""
    heading: str = ""
    measure: str = ""
    after: tuple[str, ...] = ()
    picture: Picture | None = None

    @property
    def text(self) -> str:
        """All that it says."""
        return " ".join((*self.sentences, *((self.measure,) if self.measure else ()), *self.after))


class WebLink(Struct, frozen=True):
    """Words that lead to an address of the web; paper has its QR code beside them, drawn with alternative text."""

    words: str
    address: str
    alternative: str


class Step(Struct, frozen=True):
    """One step: its number and name, how many are `made`, their size, its pictures, its parts, a remark at its end.

    `lesson` leads to where its method is taught; `notes`, `photos` and `links` are the designer's own.
    """

    number: int
    name: str
    parts: tuple[StepPart, ...]
    made: str = ""
    size: str = ""
    pictures: tuple[Picture, ...] = ()
    remark: str = ""
    notes: tuple[str, ...] = ()
    photos: tuple[Picture, ...] = ()
    lesson: Reference | None = None
    links: tuple[WebLink, ...] = ()


class Steps(Struct, frozen=True):
    """What is done in order. `kind`: pieces that are sewn together, a quilt's rows and layers, or a lesson."""

    steps: tuple[Step, ...]
    kind: Literal["pieces", "rows", "lesson"] = "pieces"


class Places(Struct, frozen=True):
    """Where else to go; with a label it is a way through the page of its own, such as the sizes on it."""

    entries: tuple[TextRun, ...]
    label: str = ""


class Reference(Struct, frozen=True):
    """Words that lead to another part of the book or site: paper gives its page behind them."""

    text: str
    target: str


class Section(Struct, frozen=True):
    """A part of a page under its heading.

    `layout`: what follows its heading, or words beside it. One that is `spare` is left out where it would begin a page;
    one that `opens` begins a page on paper. `at` are the finished sizes that it is for, by their places among the
    page's sizes from 1; none where it is for all.
    """

    heading: Heading
    parts: Parts
    layout: Literal["below", "beside"] = "below"
    spare: bool = False
    opens: bool = False
    at: tuple[int, ...] = ()


class Prose(Struct, frozen=True):
    """Words that are read, not looked up: headings, paragraphs, lists."""

    parts: Parts


class Columns(Struct, frozen=True):
    """Sections of few words that stand beside each other."""

    sections: tuple[Section, ...]


class AtSize(Struct, frozen=True):
    """What is said for one of several finished sizes; it is composed when it is asked for."""

    name: str
    anchor: str
    parts: Callable[[], Parts]


class AtSizes(Struct, frozen=True):
    """The same things for several finished sizes. Paper has the first of them, with the remark that says so."""

    sizes: tuple[AtSize, ...]
    remark: str


Part = (
    Heading
    | Paragraph
    | Listing
    | Quotation
    | Verbatim
    | Divider
    | Picture
    | DefinitionList
    | FabricKey
    | Plate
    | Signs
    | Tick
    | Table
    | Cards
    | Steps
    | Places
    | Reference
    | WebLink
    | Section
    | Prose
    | Columns
    | AtSizes
)
Parts = tuple[Part, ...]


class WebFile(Struct, frozen=True):
    """A file of the site that is no page, such as what is printed of a block; `name` is the file's."""

    words: str
    name: str


class WebPage(Struct, frozen=True):
    """One page. `name` is that of its file without ending; `over` stands above the title: a chapter, a remark.

    `sizes` are the finished sizes of a block that has several; the reader chooses one. `files` are to be printed.
    """

    name: str
    title: str
    parts: Parts
    over: str = ""
    under: str = ""
    sizes: tuple[str, ...] = ()
    files: tuple[WebFile, ...] = ()


class WebSite(Struct, frozen=True):
    """A whole site, its pages in reading order, the home page first.

    `language` is a tag such as `en`; `maker` what stands at the foot of every page.
    """

    title: str
    author: str
    language: str
    pages: tuple[WebPage, ...]
    maker: Maker = NOBODY


def plain(text: str) -> RichText:
    """One plain run."""
    return (TextRun(text),)


def quiet(text: str) -> RichText:
    """One quiet run."""
    return (TextRun(text, "quiet"),)


def strong(text: str) -> RichText:
    """One strong run."""
    return (TextRun(text, "strong"),)


def section(level: int, title: str, *parts: Part, aside: str = "", anchor: str = "") -> Section:
    """A section under a heading of plain words."""
    return Section(Heading(level, plain(title), anchor, aside), parts)


def beside(title: str, *parts: Part) -> tuple[Section, ...]:
    """A section whose words stand beside its heading; nothing where nothing is said."""
    return (Section(Heading(2, plain(title)), parts, layout="beside"),) if parts else ()
