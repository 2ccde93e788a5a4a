"""The grammar of one line, made ready once."""

from __future__ import annotations

from functools import cache

from lark import Lark, Token, Tree

from blockdsl.resources import grammar_text

LineTree = Tree[Token]


@cache
def line_grammar() -> Lark:
    """The parser of one line; making it takes a moment, so it is made when the first line needs it."""
    return Lark(grammar_text("line"), parser="lalr", lexer="contextual", maybe_placeholders=True)


def parse_line(text: str) -> LineTree:
    """The tree of one line that has no comment.

    Errors: lark's UnexpectedInput where the line does not follow the grammar.
    """
    return line_grammar().parse(text)


@cache
def pattern(terminal: str) -> str:
    """The regular expression of a terminal, so that what is read by hand is read by the same rule."""
    return str(line_grammar().get_terminal(terminal).pattern.to_regexp())
