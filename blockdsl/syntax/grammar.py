"""The grammars of one line, each made ready once: that of most lines, and that of the lines of a quilt."""

from __future__ import annotations

from functools import cache

from lark import Lark, Token, Tree

from blockdsl.resources import grammar_text

LineTree = Tree[Token]


@cache
def line_grammar() -> Lark:
    """The parser of one line; making it takes a moment, so it is made when the first line needs it."""
    return _grammar("line")


@cache
def quilt_grammar() -> Lark:
    """The parser of one line of a quilt; a file without quilts never asks for it."""
    return _grammar("quilt")


def _grammar(name: str) -> Lark:
    text = grammar_text(name) + grammar_text("words")
    return Lark(text, parser="lalr", lexer="contextual", maybe_placeholders=True)


def parse_line(text: str) -> LineTree:
    """The tree of one line that has no comment.

    Errors: lark's UnexpectedInput where the line does not follow the grammar.
    """
    return line_grammar().parse(text)


def parse_quilt_line(text: str) -> LineTree:
    """As `parse_line`, for a line of a quilt."""
    return quilt_grammar().parse(text)


@cache
def pattern(terminal: str) -> str:
    """The regular expression of a terminal, so that what is read by hand is read by the same rule."""
    return str(line_grammar().get_terminal(terminal).pattern.to_regexp())
