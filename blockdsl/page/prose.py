"""Words that are read, not looked up: headings at the side, paragraphs, lists; emphasis is set bold."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.document.content import (
    PAGE_NUMBER,
    Definition,
    DefinitionList,
    Divider,
    Heading,
    Listing,
    Paragraph,
    Part,
    Parts,
    Quotation,
    RichText,
    TextRun,
    Verbatim,
)
from blockdsl.marks.display_list import Element, Link, Mark, tagged
from blockdsl.marks.prose import TextStyle, line, line_ending, lines_of, rule, runs
from blockdsl.marks.theme import (
    BODY_PT,
    CONTENT_WIDTH_PT,
    GUTTER_PT,
    HAIRLINE_PT,
    HEADING_PT,
    INK,
    QUIET,
    RULE,
    STEP_PT,
    span_pt,
)
from blockdsl.page.flow import Flowable, PageNumbers
from blockdsl.page.headings import heading_element
from blockdsl.page.text import plain_words, rich_lines

READING: Final = TextStyle(10.0)
"""Running text that is read, not looked up."""
SIDE_PT: Final = span_pt(4) + GUTTER_PT
"""Where running text begins: its headings stand in the four columns at its left."""
READING_PT: Final = span_pt(8)
_LINE_PT: Final = READING.size_pt * 1.46
_SIDE: Final = (
    TextStyle(HEADING_PT, "bold", INK),
    TextStyle(READING.size_pt + 1, "bold", INK),
    TextStyle(READING.size_pt, "bold"),
)
_INDENT_PT: Final = 14.0
_PARAGRAPH_PT: Final = 0.6 * _LINE_PT
_SECTION_PT: Final = 1.6 * _LINE_PT
NUMBER_PT: Final = 30.0
"""Room for a page's number at the end of a line."""
_TERM: Final = TextStyle(READING.size_pt, "bold", INK)
_NUMBER: Final = TextStyle(BODY_PT, "regular", QUIET)
_TERM_LINE_PT: Final = READING.size_pt * 1.4
_WHOLE_PT: Final = 300.0
"""A section that is no higher stays on one page."""


class _Place(Struct, frozen=True):
    """Where words stand: how far indented, the mark before the first line, whether they are somebody else's.

    `around` is the item of a list that they are read in.
    """

    indent_pt: float = 0.0
    mark: str = ""
    listed: bool = False
    around: tuple[Element, ...] = ()
    quoted: bool = False


def prose_flowables(parts: Parts, pages: PageNumbers) -> list[Flowable]:
    """Each heading at the left of the first lines of its section, level with the first."""
    pieces: list[Flowable] = []
    heading: Heading | None = None
    waiting: list[Flowable] = []
    for part in (*parts, Heading(2, ())):
        if isinstance(part, Heading):
            pieces += _section(heading, waiting)
            heading, waiting = part, []
        else:
            waiting += _part(part, _Place(), pages)
    return pieces


def _section(heading: Heading | None, pieces: list[Flowable]) -> list[Flowable]:
    """What stands under a heading, or before the first one; a heading with nothing below it stands by itself."""
    if heading is None:
        return pieces
    style = _SIDE[min(max(heading.level, 2), 4) - 2]
    lines = lines_of(plain_words(heading.words), span_pt(4) - GUTTER_PT, style)
    marks: list[Mark] = []
    whole = heading_element(heading.level)
    for place, words in enumerate(lines):
        marks += tagged(line(words, 0.0, READING.baseline_pt + place * style.line_pt, style), whole)
    pieces = pieces or [Flowable(_LINE_PT)]
    pieces[0] = replace(pieces[0], marks=(*marks, *pieces[0].marks), before_pt=_SECTION_PT)
    missing = len(lines) * style.line_pt - sum(piece.height_pt for piece in pieces)
    if missing > 0:  # a heading longer than its paragraph pushes what follows down
        pieces[-1] = replace(pieces[-1], height_pt=pieces[-1].height_pt + missing)
    if sum(piece.before_pt + piece.height_pt for piece in pieces) < _WHOLE_PT:
        pieces[:-1] = [replace(piece, keep_with_next=True) for piece in pieces[:-1]]
    return pieces


def _part(part: Part, at: _Place, pages: PageNumbers) -> Iterator[Flowable]:
    """Errors: TypeError for a part that has no place among running words."""
    match part:
        case Paragraph():
            yield from _lines(_numbered(part.words, pages), at)
        case Listing():
            whole = Element("L", numbering="Disc" if part.start is None else "Decimal")
            for number, item in enumerate(part.items, start=part.start or 0):
                mark = "•" if part.start is None else f"{number}."
                around = (*at.around, whole, Element("LI"))
                place = replace(at, indent_pt=at.indent_pt + _INDENT_PT, mark=mark, listed=True, around=around)
                for inner in item:
                    yield from _part(inner, place, pages)
                    place = replace(place, mark="")
        case Quotation():
            for inner in part.parts:
                yield from _part(inner, replace(at, indent_pt=at.indent_pt + _INDENT_PT, quoted=True), pages)
        case Verbatim():
            for number, text in enumerate(part.text.rstrip().split("\n")):
                marks = line(text, SIDE_PT + at.indent_pt, READING.baseline_pt)
                yield Flowable(_LINE_PT, marks, before_pt=0.0 if number else _PARAGRAPH_PT)
        case Divider():
            across = rule(STEP_PT / 2, READING_PT, RULE, HAIRLINE_PT, SIDE_PT)
            yield Flowable(STEP_PT, (across,), before_pt=_SECTION_PT)
        case _:
            raise TypeError(f"running words have no place for {type(part).__name__}")


def _numbered(words: RichText, pages: PageNumbers) -> RichText:
    """The words with the numbers of the pages that they name."""
    return tuple(replace(run, text=pages.get(run.target, "0")) if run.text == PAGE_NUMBER else run for run in words)


def _lines(words: RichText, at: _Place) -> Iterator[Flowable]:
    style = replace(READING, colour=QUIET) if at.quoted else READING
    x = SIDE_PT + at.indent_pt
    lines: Sequence[Sequence[tuple[str, TextStyle]]] = rich_lines(words, READING_PT - at.indent_pt, style)
    whole = (*at.around, Element("LBody")) if at.around else ()
    paragraph = Element("P")
    for place, spans in enumerate(lines):
        marks = tagged(runs(spans, x, READING.baseline_pt), *whole, paragraph)
        before = 0.0
        if not place:
            dot = line(at.mark, x - _INDENT_PT, READING.baseline_pt, READING)
            marks = (*tagged(dot, *at.around, Element("Lbl")), *marks)
            before = _PARAGRAPH_PT * (0.5 if at.listed else 1.0)
        # No first or last line of a paragraph stands alone on a page.
        keep = place < len(lines) - 1 and place in (0, len(lines) - 2)
        yield Flowable(_LINE_PT, marks, before_pt=before, keep_with_next=keep)


# --- terms ---------------------------------------------------------------------------------------------


def definition_flowables(terms: DefinitionList, pages: PageNumbers) -> list[Flowable]:
    """A name at the left, what is said of it at its right, the page that it leads to at the end of the line."""
    pieces: list[Flowable] = []
    for entry in terms.entries:
        pieces += _definition(entry, pages, ruled=bool(pieces))
    return pieces


def _definition(entry: Definition, pages: PageNumbers, *, ruled: bool) -> list[Flowable]:
    width = READING_PT - NUMBER_PT
    lines = [spans for text in entry.lines for spans in rich_lines(text, width, READING)]
    names = lines_of(entry.name, span_pt(4) - GUTTER_PT, _TERM)
    leads = entry.where[-1] if entry.where else TextRun("")
    baseline = 2 * STEP_PT + READING.baseline_pt
    pieces: list[Flowable] = []
    for place in range(max(len(lines), len(names))):
        first = not place
        y = baseline if first else READING.baseline_pt
        marks: list[Mark] = [*line(names[place], 0.0, y, _TERM)] if place < len(names) else []
        marks += runs(lines[place], SIDE_PT, y) if place < len(lines) else ()
        marks += line_ending(pages.get(leads.target, leads.text), CONTENT_WIDTH_PT, y, _NUMBER) if first else ()
        height = _TERM_LINE_PT + (2 * STEP_PT if first else 0.0)
        drawn: tuple[Mark, ...] = tuple(marks)
        if first and leads.target:
            drawn = (Link(leads.target, 0.0, 0.0, CONTENT_WIDTH_PT, height, drawn),)
        top = (rule(0.0, CONTENT_WIDTH_PT, RULE, HAIRLINE_PT),) if first and ruled else ()
        pieces.append(Flowable(height, (*top, *drawn), keep_with_next=True))
    last = pieces[-1]
    pieces[-1] = replace(last, height_pt=last.height_pt + STEP_PT, keep_with_next=False)
    return pieces
