"""What each word of a file is, so that an editor can colour it; and the colours of fabrics."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final, get_args

from msgspec import Struct

from blockdsl.diagnostics import Span
from blockdsl.editor.mentions import Mention, mentions
from blockdsl.editor.nodes import all_lines
from blockdsl.editor.project import Reading
from blockdsl.syntax import ast
from blockdsl.syntax.grammar import keyword_terminals, spellings
from blockdsl.syntax.kinds import KEYWORDS
from blockdsl.syntax.nodes import LengthUnit

TYPES: Final = ("keyword", "variable", "function", "type", "class", "string", "number", "operator", "comment")
"""The protocol's own names: a fabric is a variable, a unit a function, a shape a type, a title a class."""
MODIFIERS: Final = ("declaration", "defaultLibrary")

_TOKEN: Final = re.compile(
    r"""(?P<comment>\#(?=\s|$).*)|(?P<string>"[^"]*"?|“[^”]*”?)|(?P<colour>\#[0-9A-Fa-f]{6}(?![\w-]))"""
    r"""|(?P<number>[0-9]+(?:[./][0-9]+)?)|(?P<word>[^\W\d_][\w-]*)|(?P<operator>[-|<>~/\\=%×]+)""",
)


class Token(Struct, frozen=True):
    """One word: what it is of `TYPES`, and which `MODIFIERS` it has as bits."""

    span: Span
    type: str
    modifiers: int = 0


def tokens(reading: Reading, first: int = 1, last: int = 1 << 30) -> Iterator[Token]:
    """The tokens of the lines from `first` to `last`, in order."""
    file = reading.file
    named = {mention.span.start: mention for mention in mentions(file)}
    words = _own_words()
    for number, (start, text) in enumerate(file.source.lines(), start=1):
        if not first <= number <= last:
            continue
        begins = True
        for found in _TOKEN.finditer(text):
            span = Span(file.source, start + found.start(), start + found.end())
            kind, word = str(found.lastgroup), found.group()
            mention = named.get(span.start + (1 if kind == "string" else 0))
            if mention is not None and kind in {"word", "string"}:
                yield Token(span, *_of_mention(mention, reading))
            elif kind == "word":
                if begins or word in words:
                    yield Token(span, "keyword")
            else:
                yield Token(span, "number" if kind == "colour" else kind)
            begins = False


def _own_words() -> frozenset[str]:
    """All words of the language."""
    terminals = (*keyword_terminals("line"), *keyword_terminals("quilt"))
    return KEYWORDS | frozenset(get_args(LengthUnit)) | {word for terminal in terminals for word in spellings(terminal)}


def _of_mention(mention: Mention, reading: Reading) -> tuple[str, int]:
    bits = 1 if mention.declares else 0
    match mention.kind:
        case "shape":
            return "type", 2
        case "fabric or unit":
            declared = reading.names.declared.get(mention.name)
            of_library = declared is not None and declared.span.source.name.startswith("library/")
            what = "function" if isinstance(declared, ast.UnitDeclaration) else "variable"
            return what, bits | (2 if of_library else 0)
        case _:
            return "class", bits


def colours(file: ast.File) -> Iterator[tuple[Span, str]]:
    """The colour of each fabric that the file declares, where it is written."""
    for line in all_lines(file):
        if isinstance(line, ast.FabricDeclaration):
            place = line.label.span.stop - line.span.start
            found = re.compile(r"#[0-9A-Fa-f]{6}").search(line.span.text, place)
            if found:
                start = line.span.start
                yield Span(line.span.source, start + found.start(), start + found.end()), line.colour
