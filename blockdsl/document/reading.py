"""The maker's own words, in Markdown, as parts of a web page.

As in the printed book: HTML is shown as it is written, of a picture its words are said, of a link its words and where
it leads. Headings are moved so that none is left out on the way down.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

from markdown_it import MarkdownIt
from markdown_it.token import Token
from markdown_it.tree import SyntaxTreeNode
from msgspec import Struct

from blockdsl.document.content import (
    Divider,
    Heading,
    Listing,
    Paragraph,
    Part,
    Parts,
    Prose,
    Quotation,
    RichText,
    TextRun,
    Verbatim,
    plain,
)
from blockdsl.facts.bookfacts import WordsFacts

_DEEPEST = 6


def prose_of(text: WordsFacts) -> Prose:
    """A text within a part of a book: a title that it begins with becomes its first heading."""
    found = read_text(text.markdown)
    title = (Heading(2, plain(found.title)),) if found.title else ()
    return Prose((*title, *found.parts))


class Reading(Struct, frozen=True):
    """A text: the title that it begins with, or nothing, and what follows."""

    title: str
    parts: Parts


@cache
def _reader() -> MarkdownIt:
    return MarkdownIt("commonmark", {"html": False})


def read_text(markdown: str) -> Reading:
    """The text as parts; a first heading of level 1 becomes the title."""
    tokens: list[Token] = _reader().parse(markdown.expandtabs(4))
    blocks = SyntaxTreeNode(tokens).children if tokens else []
    title = ""
    if blocks and blocks[0].type == "heading" and blocks[0].tag == "h1":
        title = "".join(run.text for run in _words(blocks[0].children[0]))
        blocks = blocks[1:]
    return Reading(title.strip(), _stepped(tuple(part for block in blocks for part in _parts(block))))


def _stepped(parts: Parts) -> Parts:
    """Headings from level 2 down, each at most one level below the one before it."""
    level = 1
    stepped: list[Part] = []
    for part in parts:
        if isinstance(part, Heading):
            level = min(max(part.level, 2), level + 1, _DEEPEST)
            stepped.append(Heading(level, part.words))
        else:
            stepped.append(part)
    return tuple(stepped)


def _parts(node: SyntaxTreeNode) -> Iterator[Part]:
    match node.type:
        case "heading":
            yield Heading(int(node.tag[1]), _words(node.children[0]))
        case "paragraph":
            yield Paragraph(_words(node.children[0]))
        case "bullet_list" | "ordered_list":
            start = int(node.attrs.get("start", 1)) if node.type == "ordered_list" else None
            yield Listing(tuple(_inner(item) for item in node.children), start)
        case "blockquote":
            yield Quotation(_inner(node))
        case "code_block" | "fence":
            yield Verbatim(node.content.rstrip("\n"))
        case "hr":
            yield Divider()
        case _:
            pass


def _inner(node: SyntaxTreeNode) -> Parts:
    """What lies inside a list's item or a quotation; a heading there is strong words, for it heads no section."""
    parts = (part for child in node.children for part in _parts(child))
    return tuple(
        Paragraph(tuple(TextRun(run.text, "strong") for run in part.words)) if isinstance(part, Heading) else part
        for part in parts
    )


def _words(node: SyntaxTreeNode) -> RichText:
    return tuple(_runs(node, "plain"))


def _runs(node: SyntaxTreeNode, weight: str) -> Iterator[TextRun]:
    for child in node.children:
        match child.type:
            case "strong":
                yield from _runs(child, "strong")
            case "em":
                yield from _runs(child, "strong" if weight == "strong" else "emphasis")
            case "link":
                runs = list(_runs(child, weight))
                yield from runs
                address = str(child.attrs.get("href", ""))
                if address and "".join(run.text for run in runs) != address.removeprefix("mailto:"):
                    yield _run(f" ({address})", weight)
            case "softbreak":
                yield _run(" ", weight)
            case "hardbreak":
                yield _run("\n", weight)
            case _:
                yield _run(child.content, weight)


def _run(text: str, weight: str) -> TextRun:
    match weight:
        case "strong":
            return TextRun(text, "strong")
        case "emphasis":
            return TextRun(text, "emphasis")
        case _:
            return TextRun(text)
