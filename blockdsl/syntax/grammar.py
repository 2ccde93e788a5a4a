"""The grammars of one line, each made ready once: that of most lines, and that of the lines of a quilt.

A grammar file has the rules. What the table of line kinds knows is put in front of them and behind: the list of all
lines, and the words that are keywords. A word in capitals that no grammar file defines is the keyword of that name,
and only where it is expected.

Working a parser out of its grammar takes longer than reading a file with it. So its tables are kept beside this file,
with a digest of the grammar that they came from: `make format` writes them anew. Tables of another grammar, or of
another lark, are left aside, and the parser is worked out of its grammar.
"""

from __future__ import annotations

import hashlib
import json
import re
from functools import cache
from pathlib import Path
from typing import Any, Final, Literal

import lark
from lark import Lark
from lark.exceptions import UnexpectedInput

from blockdsl.resources import grammar_text
from blockdsl.syntax.atoms import LineAt
from blockdsl.syntax.kinds import LINE_FORMS, QUILT_FORMS, spellings_of
from blockdsl.syntax.line_kind import LineKind, Node
from blockdsl.syntax.lines import RawLine
from blockdsl.syntax.tree import LineTree

Grammar = Literal["line", "quilt"]

FORMS: Final[dict[Grammar, dict[str, LineKind]]] = {"line": LINE_FORMS, "quilt": QUILT_FORMS}
"""The kinds of line that each grammar has, by the rule that reads them."""

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
    node: Node = FORMS[grammar][tree.data].build(LineAt(line.source, line.start), line.span(), tree)
    return node


@cache
def _parser(grammar: Grammar) -> Lark:
    """The parser, from its tables where they are of this grammar; a file without quilts never asks for theirs."""
    rules = whole_grammar(grammar)
    place = tables_path(grammar)
    if place.is_file():
        tables = json.loads(place.read_text("utf-8"))
        if tables["digest"] == digest_of(rules) and tables["lark"] == lark_release():
            return Lark.load(_with_numbers(tables["parser"]))
    return work_out(rules)


def whole_grammar(grammar: Grammar) -> str:
    """The grammar as lark reads it: the file's rules, the list of all lines before them, keywords behind."""
    start = f"?start: {' | '.join(FORMS[grammar])}\n"
    words = "".join(f"{terminal}.2: /{_either(terminal)}(?![\\w-])/\n" for terminal in _undefined(grammar))
    return start + _text(grammar) + words


def work_out(rules: str) -> Lark:
    """The parser of a whole grammar."""
    return Lark(rules, parser="lalr", lexer="contextual", maybe_placeholders=True)


def tables_path(grammar: Grammar) -> Path:
    """Where the tables of the grammar's parser are kept."""
    return Path(__file__).with_name(f"{grammar}_tables.json")


def digest_of(rules: str) -> str:
    """What a grammar is known by."""
    return hashlib.sha256(rules.encode()).hexdigest()


def lark_release() -> str:
    """The release whose tables ours are: a change in the third place of its number does not change their form."""
    return ".".join(lark.__version__.split(".")[:2])


def _with_numbers(parser: dict[str, Any]) -> dict[str, Any]:
    """The tables as lark wrote them: JSON has words alone for keys, and lark's are numbers."""
    memo = {int(key): value for key, value in parser["memo"].items()}
    table = parser["data"]["parser"]["parser"]
    table["tokens"] = {int(key): value for key, value in table["tokens"].items()}
    table["states"] = {
        int(state): {int(token): action for token, action in actions.items()}
        for state, actions in table["states"].items()
    }
    return {"data": parser["data"], "memo": memo}


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


def expected(text: str, grammar: Grammar = "line") -> frozenset[str]:
    """The terminals that can come after these words of a line; none where they do not begin one."""
    reading = _parser(grammar).parse_interactive(text)
    try:
        reading.exhaust_lexer()
    except UnexpectedInput:
        return frozenset()
    accepted: set[str] = reading.accepts()  # type: ignore[no-untyped-call]  # lark says no types here
    return frozenset(accepted)


def spellings(terminal: str) -> tuple[str, ...]:
    """A keyword as it is written, from its terminal, in all its spellings."""
    return spellings_of(terminal.lower().replace("_", "-"))
