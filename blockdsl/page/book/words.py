"""The maker's own words, in Markdown, as flowables: headings at the side, paragraphs, lists; emphasis is set bold.

What has no place in a printed pattern is left out or said plainly: HTML is printed as it is written, of a picture
its words are printed, of a link its words and where it leads.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from typing import Final

from markdown_it import MarkdownIt
from markdown_it.token import Token
from msgspec import Struct
from msgspec.structs import replace

from blockdsl.facts.bookfacts import WordsFacts
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, line, lines_of, runs, together, width_of
from blockdsl.marks.theme import GUTTER_PT, HEADING_PT, INK, QUIET, STEP_PT, span_pt
from blockdsl.marks.typeset import wrap
from blockdsl.page.book.parts import READING, READING_PT, SIDE_PT, hairline
from blockdsl.page.flow import Flowable

_LINE_PT: Final = READING.size_pt * 1.46
_SIDE: Final = (
    TextStyle(HEADING_PT, "bold", INK),
    TextStyle(READING.size_pt + 1, "bold", INK),
    TextStyle(READING.size_pt, "bold"),
)
_INDENT_PT: Final = 14.0
_PARAGRAPH_PT: Final = 0.6 * _LINE_PT
_SECTION_PT: Final = 1.6 * _LINE_PT


class ReadText(Struct, frozen=True):
    """A text read once: the title that it begins with, or nothing, and what follows."""

    title: str
    flowables: tuple[Flowable, ...]


@cache
def _reader() -> MarkdownIt:
    return MarkdownIt("commonmark", {"html": False})


def read_words(markdown: str) -> ReadText:
    """The text as flowables from the left edge of the page; a first heading of level 1 becomes the title.

    Units: headings take the four columns at the left, words the eight at the right.
    """
    tokens = _reader().parse(markdown.expandtabs(4))
    title = ""
    if len(tokens) > 2 and tokens[0].type == "heading_open" and tokens[0].tag == "h1":
        title = plain_words(tokens[1])
        tokens = tokens[3:]
    setting = _Setting()
    for token in tokens:
        setting.take(token)
    return ReadText(title, tuple(setting.flowables()))


def said(text: WordsFacts) -> list[Flowable]:
    """The maker's words within a part: a title that they begin with becomes their first heading."""
    words = read_words(text.markdown)
    if not words.title:
        return list(words.flowables)
    return list(read_words(f"#{text.markdown.lstrip()}").flowables)


def plain_words(token: Token) -> str:
    """The words of a run without their emphasis, fractions set."""
    return "".join(text for text, _ in _spans(token, READING)).strip()


class _Setting:
    """Takes the tokens of a text in order; a heading waits for the paragraph beside which it stands."""

    def __init__(self) -> None:
        self._flowables: list[Flowable] = []
        self._heading: tuple[str, TextStyle] | None = None
        self._in_heading = ""
        self._lists: list[int | None] = []
        self._marker = ""
        self._quotes = 0

    def take(self, token: Token) -> None:
        match token.type:
            case "heading_open":
                self._in_heading = token.tag
            case "heading_close":
                self._in_heading = ""
            case "bullet_list_open":
                self._lists.append(None)
            case "ordered_list_open":
                self._lists.append(int(token.attrGet("start") or 1))
            case "bullet_list_close" | "ordered_list_close":
                self._lists.pop()
            case "list_item_open":
                self._begin_item()
            case "blockquote_open" | "blockquote_close":
                self._quotes += 1 if token.nesting > 0 else -1
            case _:
                self._take_words(token)

    def _take_words(self, token: Token) -> None:
        match token.type:
            case "inline":
                self._inline(token)
            case "hr":
                self._add([Flowable(STEP_PT, moved([hairline(0.0, READING_PT)], SIDE_PT, STEP_PT / 2))], _SECTION_PT)
            case "code_block" | "fence":
                self._lines([[(words, READING)] for words in token.content.rstrip().split("\n")])
            case _:
                pass

    def _begin_item(self) -> None:
        number = self._lists[-1]
        self._marker = "•" if number is None else f"{number}."
        if number is not None:
            self._lists[-1] = number + 1

    def _inline(self, token: Token) -> None:
        if self._in_heading:
            self._flush()
            level = min(int(self._in_heading[1]), len(_SIDE))
            self._heading = plain_words(token), _SIDE[max(0, level - 2)]
            return
        style = replace(READING, colour=QUIET) if self._quotes else READING
        width = READING_PT - self._indent()
        self._lines(_broken(_spans(token, style), width))

    def _indent(self) -> float:
        return _INDENT_PT * (len(self._lists) + self._quotes)

    def _lines(self, lines: Sequence[Sequence[tuple[str, TextStyle]]]) -> None:
        x = SIDE_PT + self._indent()
        flowables = [
            Flowable(_LINE_PT, runs(words, x, READING.baseline_pt), keep_with_next=_kept(place, len(lines)))
            for place, words in enumerate(lines)
        ]
        if self._marker and flowables:
            marker = line(self._marker, x - _INDENT_PT, READING.baseline_pt, READING)
            flowables[0] = replace(flowables[0], marks=(*marker, *flowables[0].marks))
        before = _PARAGRAPH_PT * (0.5 if self._lists else 1.0)
        self._marker = ""
        self._add(flowables, before)

    def _add(self, flowables: list[Flowable], before_pt: float) -> None:
        if not flowables:
            return
        flowables[0] = replace(flowables[0], before_pt=before_pt)
        if self._heading is not None:
            flowables = _beside(*self._heading, flowables)
            self._heading = None
        self._flowables += flowables

    def _flush(self) -> None:
        """A heading with nothing below it stands by itself."""
        if self._heading is not None:
            self._add([Flowable(_LINE_PT)], 0.0)

    def flowables(self) -> list[Flowable]:
        """All that was taken."""
        self._flush()
        return self._flowables


def _kept(place: int, count: int) -> bool:
    """Whether a line is bound to the next: no first or last line of a paragraph stands alone on a page."""
    return place < count - 1 and place in (0, count - 2)


def _beside(text: str, style: TextStyle, flowables: list[Flowable]) -> list[Flowable]:
    """A heading at the left of the first lines of its section, level with the first."""
    lines = lines_of(text, span_pt(4) - GUTTER_PT, style)
    marks: list[Mark] = []
    for place, words in enumerate(lines):
        marks += line(words, 0.0, READING.baseline_pt + place * style.line_pt, style)
    first = replace(flowables[0], marks=(*marks, *flowables[0].marks), before_pt=_SECTION_PT)
    missing = len(lines) * style.line_pt - sum(piece.height_pt for piece in flowables)
    if missing > 0:  # a heading longer than its paragraph pushes what follows down
        flowables = [*flowables[:-1], replace(flowables[-1], height_pt=flowables[-1].height_pt + missing)]
        first = replace(first, height_pt=flowables[0].height_pt)
    return [first, *flowables[1:]]


def _spans(token: Token, style: TextStyle) -> list[tuple[str, TextStyle]]:
    """The words of a run with the style of each; strong and light emphasis are both bold."""
    spans: list[tuple[str, TextStyle]] = []
    depth = 0
    address: list[str] = []
    for child in token.children or ():
        match child.type:
            case "strong_open" | "em_open":
                depth += 1
            case "strong_close" | "em_close":
                depth -= 1
            case "link_open":
                address.append(str(child.attrGet("href") or ""))
            case "link_close":
                where = address.pop()
                if where and spans and not spans[-1][0].endswith(where):
                    spans.append((f" ({where})", style))
            case "softbreak":
                spans.append((" ", style))
            case "hardbreak":
                spans.append(("\n", style))
            case _:
                words = fraction_text(child.content)
                spans.append((words, replace(style, weight="bold") if depth else style))
    return spans


def _broken(spans: Sequence[tuple[str, TextStyle]], width_pt: float) -> list[list[tuple[str, TextStyle]]]:
    """Lines no wider than that; words of different styles that touch are not parted."""
    lines: list[list[tuple[str, TextStyle]]] = [[]]
    x = 0.0
    for word in _joined(spans):
        if word is None:
            lines.append([])
            x = 0.0
            continue
        gap = width_of(" ", word[0][1]) if lines[-1] else 0.0
        width = sum(width_of(text, style) for text, style in word)
        if lines[-1] and x + gap + width > width_pt:
            lines.append([])
            x = gap = 0.0
        if width > width_pt:
            for piece in wrap("".join(text for text, _ in word), word[0][1].size_pt, word[0][1].weight, width_pt):
                lines[-1:] = [*([lines[-1]] if lines[-1] else []), [(piece, word[0][1])]]
            x = width_of(lines[-1][-1][0], word[0][1])
            continue
        if gap:
            lines[-1] = [*lines[-1][:-1], (lines[-1][-1][0] + " ", lines[-1][-1][1])]
        lines[-1] += word
        x += gap + width
    return [_merged(words) for words in lines]


def _joined(spans: Sequence[tuple[str, TextStyle]]) -> list[list[tuple[str, TextStyle]] | None]:
    """Words as runs of one style or more; None is a line's end that the maker wants."""
    words: list[list[tuple[str, TextStyle]] | None] = []
    touching = False
    for text, style in spans:
        for number, part in enumerate(text.split("\n")):
            if number:
                words.append(None)
                touching = False
            pieces = together(part)
            if pieces and touching and not part[:1].isspace() and words and words[-1] is not None:
                words[-1].append((pieces.pop(0), style))
            words += [[(piece, style)] for piece in pieces]
            touching = bool(part) and not part[-1].isspace() if part else touching
    return words


def _merged(words: Sequence[tuple[str, TextStyle]]) -> list[tuple[str, TextStyle]]:
    """Neighbouring runs of one style as one, so that the line is one run to those who take its text."""
    merged: list[tuple[str, TextStyle]] = []
    for text, style in words:
        if merged and merged[-1][1] == style:
            merged[-1] = (merged[-1][0] + text, style)
        else:
            merged.append((text, style))
    return merged
