"""Content laid out on paper: each part as flowables, for whoever runs them over pages."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.document.content import (
    AtSizes,
    Cards,
    Columns,
    DefinitionList,
    FabricKey,
    Heading,
    Listing,
    Paragraph,
    Part,
    Parts,
    Picture,
    Plate,
    Prose,
    Reference,
    RichText,
    Section,
    Signs,
    Steps,
    Table,
    TextRun,
    Tick,
    WebLink,
    quiet,
    strong,
)
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Element, Link, Mark, moved, tagged
from blockdsl.marks.prose import TextStyle, fitted, line, lines_of, rule, runs, width_of
from blockdsl.marks.theme import (
    ACCENT,
    BODY_PT,
    BOLD_RULE_PT,
    CONTENT_WIDTH_PT,
    FOOTER_HEIGHT_PT,
    GUTTER_PT,
    INK,
    LEAD_PT,
    QUIET,
    SMALL_PT,
    STEP_PT,
    TITLE_PT,
    Box,
    PaperSize,
    span_pt,
)
from blockdsl.page.cards import card_flowables, ticked
from blockdsl.page.flow import Drawn, Flowable, PageNumbers, on_first_page, pages_taken, run_over_pages
from blockdsl.page.headings import continued, heading, heading_element
from blockdsl.page.index import index_flowables
from blockdsl.page.key import key_columns
from blockdsl.page.plate import compact_height, plate_flowables
from blockdsl.page.prose import definition_flowables, prose_flowables
from blockdsl.page.steps import step_flowables
from blockdsl.page.table import picture_marks, table_flowables
from blockdsl.page.text import BODY, BOLD, QUIETLY, SMALL, plain_words, rich, rich_lines
from blockdsl.page.web_link import web_link
from blockdsl.wording.messages import Messages

_NONE: Final[PageNumbers] = {}
_TALLEST_PT: Final = 380.0
_LEFT_COLUMNS: Final = 3
_RIGHT_COLUMNS: Final = 9
_HALF_COLUMNS: Final = 6
_FEW_LINES: Final = 6
"""So many lines of small type stay on one page."""
_CLOSING: Final = TextStyle(BODY_PT - 0.75, "regular", INK)
_MEASURE: Final = TextStyle(BODY_PT + 1, "regular", INK)
_MEASURE_COLUMNS: Final = (3, 3, 4, 2)
_OVER: Final = TextStyle(LEAD_PT, "bold", ACCENT)
TITLE_SIZES_PT: Final = (TITLE_PT, 22.0, 17.0)
_TITLE_LINES: Final = 2
_TITLE_LEADING: Final = 1.14
READING_PT: Final = span_pt(8)
"""How wide words are set: about 75 letters, after which the eye loses its line."""

_SIGN_GAP_PT: Final = 1.5 * STEP_PT


def pages_of(
    title: Flowable,
    parts: Parts,
    words: Messages,
    paper: PaperSize,
    pages: PageNumbers = _NONE,
) -> list[tuple[Mark, ...]]:
    """What stands on each page above its foot.

    Some sections open a page; others are left out where they would begin one. Pictures are large unless small ones save
    a page or let the cutting begin on the first; in a book, whose pages have numbers, they are small where they can be.
    """
    laid = [_Laid(part, list(_part(part, words, pages, ()))) for part in parts]
    if isinstance(parts[0], Table):
        laid[0].pieces[0] = replace(laid[0].pieces[0], before_pt=0.0)
    taken = _taken(_chapters(title, laid, spare=False), paper)
    if not pages and taken > 1:
        guessed = [_with_smaller_pictures(each, words, drawn=False) for each in laid]
        shorter = _taken(_chapters(title, guessed, spare=False), paper)
        begins = shorter == taken and _begins(guessed, title, paper) and not _begins(laid, title, paper)
        if shorter < taken or begins:
            laid, taken = [_with_smaller_pictures(each, words) for each in laid], shorter
    whole = _chapters(title, laid, spare=True)
    if any(each.is_spare for each in laid) and _taken(whole, paper) > taken:
        whole = _chapters(title, laid, spare=False)
    return [body for chapter in whole for body in flowed(chapter, paper)]


class _Laid(Struct, frozen=True):
    """A part with its flowables."""

    part: Part
    pieces: list[Flowable]

    @property
    def is_spare(self) -> bool:
        """Whether it may be left out."""
        return isinstance(self.part, Section) and self.part.spare


def _with_smaller_pictures(laid: _Laid, words: Messages, *, drawn: bool = True) -> _Laid:
    """The same part, with its plate as in a book; or just as high as that, to see whether it saves a page."""
    if not (isinstance(laid.part, Plate) and laid.part.simple):
        return laid
    if drawn:
        return _Laid(laid.part, plate_flowables(laid.part, words, compact=True))
    return _Laid(laid.part, [Flowable(compact_height(laid.part), before_pt=4 * STEP_PT)])


def _chapters(title: Flowable, laid: Sequence[_Laid], *, spare: bool) -> list[list[Flowable]]:
    """What begins a page each; without what may be left out unless it is asked for."""
    chapters: list[list[Flowable]] = [[title]]
    for each in laid:
        if each.is_spare and not spare:
            continue
        if isinstance(each.part, Section) and each.part.opens:
            chapters.append([])
        chapters[-1] += each.pieces
    return chapters


def _begins(laid: Sequence[_Laid], title: Flowable, paper: PaperSize) -> bool:
    """Whether the work begins on the first page: the first section below its heading, which is the cutting."""
    before = 1
    for each in laid:
        if isinstance(each.part, Section) and each.part.layout == "below":
            break
        before += len(each.pieces)
    return on_first_page(_chapters(title, laid, spare=False)[0], _room(paper)) > before


def _taken(chapters: Sequence[Sequence[Flowable]], paper: PaperSize) -> int:
    return sum(pages_taken(chapter, _room(paper)) for chapter in chapters)


def flowed(pieces: Sequence[Flowable], paper: PaperSize) -> list[tuple[Mark, ...]]:
    """The flowables run over as many pages as they take, above the foot of each."""
    return run_over_pages(pieces, _room(paper))


def _room(paper: PaperSize) -> Box:
    box = paper.content
    return Box(box.x_pt, box.y_pt, box.width_pt, box.height_pt - FOOTER_HEIGHT_PT)


def flowables(
    parts: Iterable[Part], words: Messages, pages: PageNumbers = _NONE, again: tuple[Flowable, ...] = ()
) -> list[Flowable]:
    """All parts as flowables; `again` is said above those that open a page."""
    pieces: list[Flowable] = []
    before: Part | None = None
    for part in parts:
        found = list(_part(part, words, pages, again))
        if isinstance(part, Table) and isinstance(before, Paragraph):
            found[0] = replace(found[0], before_pt=1.5 * STEP_PT)
            pieces[-1] = replace(pieces[-1], keep_with_next=True)  # what is said of a table stands on its page
        pieces += found
        before = part
    return pieces


def _part(  # noqa: C901, PLR0911, PLR0912 - one line for each part that paper has
    part: Part, words: Messages, pages: PageNumbers, again: tuple[Flowable, ...]
) -> Iterable[Flowable]:
    """Errors: TypeError for a part that is not for paper, such as the way through a site."""
    match part:
        case Section(layout="beside"):
            return _beside(part, words, pages)
        case Section():
            return _below(part, words, pages)
        case Table():
            return table_flowables(part, words, again=again)
        case Cards():
            return card_flowables(part, words, again)
        case Steps():
            return step_flowables(part, words, again)
        case Paragraph():
            return (_paragraph(part),)
        case Plate():
            return plate_flowables(part, words, compact=bool(pages))
        case DefinitionList(kind="measures"):
            return (_measures(part),)
        case DefinitionList(kind="index"):
            return index_flowables(part, pages, again)
        case DefinitionList(kind="lines"):
            return _lines(part)
        case DefinitionList():
            return definition_flowables(part, pages)
        case Signs():
            return (_signs(part),)
        case Columns():
            return (_columns(part),)
        case Reference():
            return (_reference(part, words, pages),)
        case WebLink():
            return (Flowable(*web_link(part, CONTENT_WIDTH_PT), before_pt=STEP_PT),)
        case AtSizes():
            remark = replace(_paragraph(Paragraph(quiet(part.remark))), keep_with_next=True)
            return [remark, *flowables(part.sizes[0].parts(), words, pages, again)]
        case Prose():
            return prose_flowables(part.parts, pages)
        case FabricKey():
            return key_columns(part)
        case Picture():
            return (_picture(part),)
        case Tick():
            return (Flowable(*ticked(part, CONTENT_WIDTH_PT), before_pt=STEP_PT),)
        case _:
            raise TypeError(f"paper has no place for {type(part).__name__}")


def _paragraph(part: Paragraph) -> Flowable:
    height, marks = rich(part.words, READING_PT, SMALL if part.small else BODY)
    return Flowable(height, marks, before_pt=1.5 * STEP_PT)


def _picture(picture: Picture) -> Flowable:
    marks, filled = picture.draw(Box(0.0, 0.0, min(picture.width_pt, CONTENT_WIDTH_PT), _TALLEST_PT))
    return Flowable(filled.height_pt + 2 * STEP_PT, marks)


# --- titles and sections -------------------------------------------------------------------------------


def title_flowable(title: str, over: str = "", sizes_pt: Sequence[float] = TITLE_SIZES_PT) -> Flowable:
    """A title under a strong rule, smaller when it is long, cut at no length; `over` stands above it in the accent."""
    for size in sizes_pt:
        style = TextStyle(size, "bold", INK)
        lines = lines_of(title, CONTENT_WIDTH_PT, style)
        if len(lines) <= _TITLE_LINES:
            break
    marks: list[Mark] = [rule(BOLD_RULE_PT / 2, CONTENT_WIDTH_PT, INK, BOLD_RULE_PT)]
    y = 4 * STEP_PT
    if over:
        marks += line(over, 0.0, y + _OVER.baseline_pt, _OVER)
        y += _OVER.line_pt + 1.5 * STEP_PT
    y += style.capitals_pt + 2
    pitch = style.size_pt * _TITLE_LEADING
    whole = heading_element(1)
    for place, words in enumerate(lines):
        marks += tagged(line(words, -0.04 * style.size_pt, y + place * pitch, style), whole)
    return Flowable(y + (len(lines) - 1) * pitch + 4.5 * STEP_PT, tuple(marks), keep_with_next=True)


def _below(part: Section, words: Messages, pages: PageNumbers) -> list[Flowable]:
    """The heading, bound to what follows it; on a new page its name is said again."""
    title = plain_words(part.heading.words)
    inner = flowables(part.parts, words, pages, (continued(title, words),))
    if isinstance(part.parts[0], Table | Paragraph):
        inner[0] = replace(inner[0], before_pt=0.0)
    level = part.heading.level
    return [heading(title, aside=fraction_text(part.heading.aside), level=level), *inner]


def _drawn_beside(part: WebLink | Picture, width: float) -> Drawn:
    if isinstance(part, WebLink):
        return web_link(part, width)
    marks, filled = part.draw(Box(0.0, 0.0, min(width, part.width_pt), part.height_pt))
    return filled.height_pt, marks


def _beside(part: Section, words: Messages, pages: PageNumbers) -> list[Flowable]:
    """A name beside its paragraphs, line by line so that long ones run over pages."""
    pieces: list[Flowable] = []
    left = span_pt(_LEFT_COLUMNS) + GUTTER_PT
    few = True
    for paragraph in part.parts:
        if isinstance(paragraph, Reference):
            pieces.append(_reference(paragraph, words, pages, left, STEP_PT if pieces else 0.0))
            continue
        if isinstance(paragraph, WebLink | Picture):
            tall, marks = _drawn_beside(paragraph, span_pt(_RIGHT_COLUMNS))
            pieces.append(Flowable(tall, moved(marks, left, 0.0), before_pt=STEP_PT if pieces else 0.0))
            few = False
            continue
        if not isinstance(paragraph, Paragraph):
            raise TypeError(f"no {type(paragraph).__name__} stands beside a heading")
        style = SMALL if paragraph.small else BODY
        few = few and paragraph.small
        # Small words stand on the line of the name beside them.
        drop = BOLD.baseline_pt - style.baseline_pt
        lines = rich_lines(paragraph.words, span_pt(_RIGHT_COLUMNS), style)
        whole = Element("P")
        for place, spans in enumerate(lines):
            marks = tagged(runs(spans, left, drop + style.baseline_pt), whole)
            before = STEP_PT if place == 0 and pieces else 0.0
            keep = place in (0, len(lines) - 2) and place < len(lines) - 1
            pieces.append(Flowable(style.line_pt, marks, before_pt=before, keep_with_next=keep))
    if few and len(pieces) <= _FEW_LINES:
        pieces = [replace(piece, keep_with_next=place < len(pieces) - 1) for place, piece in enumerate(pieces)]
    name = plain_words(part.heading.words)
    named = tagged(line(name, 0.0, 2 * STEP_PT + BOLD.baseline_pt, BOLD), heading_element(part.heading.level))
    top: list[Mark] = [rule(0.0, CONTENT_WIDTH_PT), *named]
    top += moved(pieces[0].marks, 0.0, 2 * STEP_PT)
    height = pieces[0].height_pt + 2 * STEP_PT
    return [replace(pieces[0], height_pt=height, marks=tuple(top), before_pt=5 * STEP_PT), *pieces[1:]]


def _columns(part: Columns) -> Flowable:
    """Sections beside each other in small type, under one rule."""
    marks: list[Mark] = [rule(0.0, CONTENT_WIDTH_PT)]
    height = 0.0
    for place, section in enumerate(part.sections):
        listed = any(isinstance(each, Listing) for each in section.parts)
        bottom, drawn = _column(section.heading, _paragraphs(section.parts), Element("L") if listed else None)
        marks += moved(drawn, place * (span_pt(_HALF_COLUMNS) + GUTTER_PT), 0.0)
        height = max(height, bottom)
    return Flowable(height, tuple(marks), before_pt=5 * STEP_PT)


def _paragraphs(parts: Parts) -> Iterator[RichText]:
    for part in parts:
        if isinstance(part, Paragraph):
            yield part.words
        elif isinstance(part, Listing):
            for item in part.items:
                yield from _paragraphs(item)


def _column(heading: Heading, texts: Iterable[RichText], whole: Element | None) -> tuple[float, tuple[Mark, ...]]:
    """The words under their heading; items of the list `whole` where there is one."""
    y = 2 * STEP_PT
    name = line(plain_words(heading.words), 0.0, y + BOLD.baseline_pt, BOLD)
    marks: list[Mark] = [*tagged(name, heading_element(heading.level))]
    y += BOLD.line_pt + STEP_PT / 2
    for text in texts:
        height, words = rich(text, span_pt(_HALF_COLUMNS), _CLOSING)
        around = (whole, Element("LI"), Element("LBody")) if whole is not None else ()
        marks += moved(tagged(words, *around), 0.0, y)
        y += height + STEP_PT * 0.75
    return y, tuple(marks)


# --- lists ---------------------------------------------------------------------------------------------


def _measures(part: DefinitionList) -> Flowable:
    """Small names over what they are, with a quiet second line, over the columns of the page."""
    marks: list[Mark] = []
    x = height = 0.0
    for entry, columns in zip(part.entries, _MEASURE_COLUMNS, strict=True):
        width = span_pt(columns)
        small = TextStyle(SMALL_PT, "regular", QUIET)
        marks += moved(line(entry.name, 0.0, small.baseline_pt, small), x, 0.0)
        y = small.line_pt + 1
        for place, value in enumerate(entry.lines):
            tall, drawn = rich(value, width, QUIETLY if place else _MEASURE)
            marks += moved(drawn, x, y)
            y += tall
        height = max(height, y)
        x += width + GUTTER_PT
    return Flowable(height, tuple(marks), keep_with_next=True)


def _lines(part: DefinitionList) -> Iterator[Flowable]:
    """A name at the left and what is said of it at its right, line by line."""
    left = span_pt(4)
    for entry in part.entries:
        marks: list[Mark] = []
        y = 0.0
        for value in entry.lines:
            height, drawn = rich(value, span_pt(8), BODY)
            marks += moved(drawn, left + GUTTER_PT, y)
            y += height
        style = QUIETLY if all(run.weight == "quiet" for value in entry.lines for run in value) else BOLD
        named = line(fitted(fraction_text(entry.name), left, style), 0.0, style.baseline_pt, style)
        yield Flowable(y, (*named, *marks), before_pt=STEP_PT / 2)


def _signs(part: Signs) -> Flowable:
    """What the pictures' signs mean, in one line, or two in a language of long words."""
    height = max(BODY.line_pt + STEP_PT, *(sign.drawing.height_pt + STEP_PT / 2 for sign in part.entries))
    middle = height / 2
    marks: list[Mark] = []
    whole = Element("L")
    x = y = 0.0
    for sign in part.entries:
        wide, high = sign.drawing.width_pt, sign.drawing.height_pt
        drawn = picture_marks(sign.drawing, Box(0.0, middle - high / 2, wide, high))
        end = wide + _SIGN_GAP_PT + width_of(sign.words, BODY)
        if x and x + end > CONTENT_WIDTH_PT:
            x, y = 0.0, y + height
        said = line(sign.words, wide + _SIGN_GAP_PT, middle + BODY.capitals_pt / 2, BODY)
        marks += moved(tagged((*drawn, *said), whole, Element("LI"), Element("LBody")), x, y)
        x += end + 5 * STEP_PT
    return Flowable(y + height, tuple(marks), keep_with_next=True)


def _reference(
    part: Reference, words: Messages, pages: PageNumbers, left_pt: float = 0.0, before_pt: float = STEP_PT
) -> Flowable:
    """Words and the page that they lead to."""
    run = (TextRun(words("book-on-page", what=part.text) + " "), *strong(pages.get(part.target, "0")))
    width = CONTENT_WIDTH_PT - left_pt
    height, marks = rich(run, width)
    link = Link(part.target, left_pt, 0.0, width, height, moved(marks, left_pt, 0.0))
    return Flowable(height, (link,), before_pt=before_pt)
