"""Editors colour block files by a TextMate grammar as the language's own grammar reads them.

The judge is vscode-textmate, the library by which editors read such grammars; it is run in Node.js.
"""

from __future__ import annotations

import json
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Final

import pytest
from lark import Token

from blockdsl.diagnostics import Problems, Source
from blockdsl.resources import library_names, library_path
from blockdsl.syntax.grammar import Grammar, keyword_terminals, parse_line
from blockdsl.syntax.read import read_lines
from blockdsl.syntax.tree import LineTree
from tests.grammars.make_textmate import PATH, grammar, text
from tests.spec.pages import HERE, examples

_KINDS: Final = {
    "TEXT": "string",
    "NUMBER": "number",
    "PLACE": "number",
    "COLOUR": "colour",
    "TIMES": "operator",
    "TURNS": "operator",
    "MARKS": "operator",
    "LEFT": "operator",
    "ABOVE": "operator",
    "EQUALS": "operator",
    "PERCENT": "operator",
    "LENGTH_UNIT": "keyword",
    "NAME": "name",
}
_SCOPES: Final = (
    ("keyword.operator", "operator"),
    ("keyword", "keyword"),
    ("string", "string"),
    ("constant.numeric", "number"),
    ("constant.other.colour", "colour"),
    ("comment", "comment"),
)


def _corpus() -> Iterator[Source]:
    """Every file of the library, and every example of the reference."""
    for name in library_names():
        yield Source(name, library_path(name).read_text(encoding="utf-8"))
    for page in sorted(HERE.glob("*.md")):
        for number, example in enumerate(examples(page)):
            yield Source(f"{page.name} {number}", example.text)


def _lines() -> Iterator[tuple[str, list[tuple[int, int, str]]]]:
    """Each line that can be read, with the words that the language's grammar finds in it and what they are."""
    for source in _corpus():
        for line in read_lines(source, Problems()):
            whole = source.line(source.position(line.raw.start)[0])
            indent = whole.find(line.raw.text)
            comment = (
                [] if line.raw.comment is None else [(whole.rfind("#" + line.raw.comment[1:]), len(whole), "comment")]
            )
            if line.raw.issue is not None:
                continue
            if not line.raw.text:
                yield whole, comment
            elif line.node is not None and type(line.node).__name__ != "UnreadableLine":
                which: Grammar = "quilt" if line.in_quilt else "line"
                words = _words(parse_line(line.raw.text, which), which)
                yield whole, [*((start + indent, stop + indent, kind) for start, stop, kind in words), *comment]


def _words(tree: LineTree, which: Grammar) -> Iterator[tuple[int, int, str]]:
    keywords = set(keyword_terminals(which))
    for token in tree.scan_values(lambda found: isinstance(found, Token)):
        kind = _KINDS.get(token.type) or ("keyword" if token.type in keywords else "")
        if kind and token.start_pos is not None and token.end_pos is not None:
            yield token.start_pos, token.end_pos, kind


def _kind(scopes: list[str]) -> str:
    return next((kind for scope in reversed(scopes) for start, kind in _SCOPES if scope.startswith(start)), "name")


def _told(lines: list[str]) -> list[list[tuple[int, int, list[str]]]]:
    asked = json.dumps({"grammar": grammar(), "lines": lines})
    script = Path(__file__).with_name("tokens.mjs")
    try:
        told = subprocess.run(["node", script], input=asked, capture_output=True, text=True, check=True)
    except (OSError, subprocess.CalledProcessError) as fault:
        pytest.fail(f"{getattr(fault, 'stderr', fault)}: run `make web-judges`")
    found: list[list[tuple[int, int, list[str]]]] = json.loads(told.stdout)
    return found


def test_each_word_is_coloured_as_what_the_grammar_reads_it_as() -> None:
    corpus = list(_lines())
    found = _told([whole for whole, _ in corpus])
    wrong = []
    for (whole, words), tokens in zip(corpus, found, strict=True):
        # The judge counts in UTF-16.
        kinds = [_kind(scopes) for start, stop, scopes in tokens for _ in range(stop - start)]
        for start, stop, kind in words:
            first, last = (len(whole[:at].encode("utf-16-le")) // 2 for at in (start, stop))
            seen = {
                kinds[at] for at, letter in zip(range(first, last), whole[start:stop], strict=False) if letter.strip()
            }
            if seen != {kind}:
                wrong.append((whole, whole[start:stop], kind, sorted(seen)))
    assert len(corpus) > 2000
    assert wrong == []


def test_what_cannot_be_a_keyword_is_none() -> None:
    lines = ["  row on fog/as (geese at on of)> -", 'fabric row "Row # 1" #dfe3e0 # row', "  fill width"]
    first, second, _ = _told(lines)
    assert [_kind(scopes) for start, _, scopes in first if lines[0][start : start + 1].isalpha()] == [
        "keyword",
        *["name"] * 7,
    ]
    assert [_kind(scopes) for _, _, scopes in second if _kind(scopes) != "name"] == [
        "keyword",
        "string",
        "colour",
        "comment",
    ]


def test_the_file_is_that_of_the_grammars_of_today() -> None:
    assert PATH.read_text(encoding="utf-8") == text(), "make format writes it anew"
