"""The grammars of one line, each made ready once: that of most lines, and that of the lines of a quilt.

A grammar file has the rules. What the table of line kinds knows is put in front of them and behind: the list of all
lines, and the words that are keywords. A word in capitals that no grammar file defines is the keyword of that name,
and only where it is expected.
"""

from __future__ import annotations

import re
from functools import cache
from typing import Final, Literal

from lark import Lark

from blockdsl.resources import grammar_text
from blockdsl.syntax.atoms import LineAt
from blockdsl.syntax.kinds import LINE_FORMS, QUILT_FORMS, spellings_of
from blockdsl.syntax.line_kind import Node
from blockdsl.syntax.lines import RawLine
from blockdsl.syntax.tree import LineTree

Grammar = Literal["line", "quilt"]

_FORMS: Final = {"line": LINE_FORMS, "quilt": QUILT_FORMS}
_DEFINED: Final = re.compile(r"^([A-Z_]+)(?:\.[0-9]+)?:", re.MULTILINE)
_OTHERS: Final = re.compile(r"^([A-Z_]+)(?:\.1)?:", re.MULTILINE)
_CAPITALS: Final = re.compile(r"\b[A-Z][A-Z_]+\b")


def parse_line(text: str, grammar: Grammar = "line") -> LineTree:
    """The tree of one line that has no comment.

    Errors: lark's UnexpectedInput where the line does not follow the grammar.
    """
    return _parser(grammar).parse(text)


def build_line(line: RawLine, tree: LineTree, grammar: Grammar = "line") -> Node:
    """The node of one line; a declaration comes without the lines below it.

    Errors: IssueFound where a word fits the grammar but is not allowed.
    """
    node: Node = _FORMS[grammar][tree.data].build(LineAt(line.source, line.start), line.span(), tree)
    return node


@cache
def _parser(grammar: Grammar) -> Lark:
    """The parser; making it takes a moment, so a file without quilts never asks for theirs."""
    start = f"?start: {' | '.join(_FORMS[grammar])}\n"
    words = "".join(f"{terminal}.2: /{_either(terminal)}(?![\\w-])/\n" for terminal in _undefined(grammar))
    return Lark(start + _text(grammar) + words, parser="lalr", lexer="contextual", maybe_placeholders=True)


def _text(grammar: Grammar) -> str:
    return grammar_text(grammar) + grammar_text("words")


@cache
def keyword_terminals(grammar: Grammar) -> tuple[str, ...]:
    """The keywords of a grammar as its rules name them, in the order in which they are first named."""
    text = _text(grammar)
    rules = "\n".join(line for line in text.splitlines() if not re.match(r"//|%|[A-Z]", line))
    others = set(_OTHERS.findall(text))
    return tuple(word for word in dict.fromkeys(_CAPITALS.findall(rules)) if word not in others)


def _undefined(grammar: Grammar) -> tuple[str, ...]:
    defined = set(_DEFINED.findall(_text(grammar)))
    return tuple(word for word in keyword_terminals(grammar) if word not in defined)


def _either(terminal: str) -> str:
    spellings = spellings_of(terminal.lower().replace("_", "-"))
    return spellings[0] if len(spellings) == 1 else f"(?:{'|'.join(spellings)})"


@cache
def pattern(terminal: str) -> str:
    """The regular expression of a terminal, so that what is read by hand is read by the same rule."""
    return str(_parser("line").get_terminal(terminal).pattern.to_regexp())
