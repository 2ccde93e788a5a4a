"""The grammar by which editors colour block files without the language server, written anew: `make format`.

It is made from the grammars of lines: the first word of a line says which further words are keywords there.
"""

from __future__ import annotations

import json
from pathlib import Path
from string import ascii_lowercase
from typing import Any, Final

from blockdsl.resources import grammar_folder
from blockdsl.syntax.grammar import FORMS, Grammar, keyword_terminals, spellings, whole_grammar, work_out
from blockdsl.syntax.kinds import KEYWORDS, keyword_of

PATH: Final = grammar_folder() / "blockdsl.tmLanguage.json"

NAME: Final = r"[^\W\d_][\w\p{M}-]*"
_END: Final = r"(?![\w-])"


def _keywords_by_line() -> dict[str, set[str]]:
    """For each word that begins a line, in every spelling, the further keywords of its rules, as patterns."""
    found: dict[str, set[str]] = {word: set() for word in KEYWORDS}
    grammars: tuple[Grammar, ...] = ("line", "quilt")
    for grammar in grammars:
        rules: dict[str, list[list[Any]]] = {}
        parser = work_out(whole_grammar(grammar))
        patterns = {terminal.name: str(terminal.pattern.to_regexp()) for terminal in parser.terminals}
        for rule in parser.rules:
            rules.setdefault(str(rule.origin.name), []).append(list(rule.expansion))
        known = set(keyword_terminals(grammar))
        for form in FORMS[grammar]:
            for expansion in rules[form]:
                first, *rest = [name for name in _terminals(expansion, rules, frozenset()) if name in known]
                # One line begins with a word that is not spelled as its terminal is called.
                for word in ("text",) if first == "WORDS" else spellings(first):
                    found.setdefault(word, set()).update(patterns[terminal] for terminal in rest)
    return found


def _terminals(expansion: list[Any], rules: dict[str, list[list[Any]]], above: frozenset[str]) -> list[str]:
    """The terminals of a rule and of all rules in it, in order."""
    found: list[str] = []
    for symbol in expansion:
        if symbol.is_term:
            found.append(str(symbol.name))
        elif symbol.name not in above:
            for each in rules[symbol.name]:
                found += _terminals(each, rules, above | {symbol.name})
    return found


def _line(word: str, others: set[str]) -> dict[str, Any]:
    """The rule of the lines that begin with one word."""
    also = sorted(each for each in others if each.startswith(("(?:", *ascii_lowercase)))
    patterns: list[dict[str, Any]] = []
    if word in {"fabric", "unit"}:
        called = "variable.other" if word == "fabric" else "entity.name.function"
        # A quilt has a line `fabric width 40 in usable`.
        name = rf"\G\s+(?!width\s+[0-9])({NAME})"
        patterns.append({"match": name, "captures": {"1": {"name": f"{called}.blockdsl"}}})
    if also:
        patterns.append({"match": rf"(?<![\w-])(?:{'|'.join(also)})(?!=)", "name": "keyword.other.blockdsl"})
    if word == "unit":
        patterns.append({"match": rf"(=)\s*({NAME})", "captures": _shape("keyword.operator.blockdsl")})
    patterns.append({"include": "#inside"})
    return {
        "begin": rf"^\s*({word}){_END}",
        "beginCaptures": {"1": {"name": "keyword.control.blockdsl"}},
        "end": "$",
        "name": f"meta.line.{keyword_of(word)}.blockdsl",
        "patterns": patterns,
    }


def _shape(before: str) -> dict[str, Any]:
    return {"1": {"name": before}, "2": {"name": "support.type.blockdsl"}}


def grammar() -> dict[str, Any]:
    """The whole grammar, as editors read it."""
    lines = [_line(word, others) for word, others in sorted(_keywords_by_line().items())]
    inside = [
        {"include": "#comment"},
        {"match": r'"[^"]*"|“[^”]*”', "name": "string.quoted.double.blockdsl"},
        {"match": rf"#[0-9A-Fa-f]{{6}}{_END}", "name": "constant.other.colour.blockdsl"},
        {"match": r"(?<=\s)[-+0-9r./]+,[-+0-9r./]+(?!\S)", "name": "constant.numeric.place.blockdsl"},
        {
            "match": r"(?<![\w./-])(?:[0-9]+\.[0-9]+|[0-9]+/[0-9]+|[0-9]+(?:\s+[0-9]+/[0-9]+)?)"
            rf"(?=$|[\s)×%]|x\s*[0-9]|(?:in|cm|mm){_END})",
            "name": "constant.numeric.blockdsl",
        },
        {
            "match": rf"(?<=[0-9])(\s*)(in|cm|mm){_END}",
            "captures": {"2": {"name": "keyword.other.unit.blockdsl"}},
        },
        {"match": r"×|(?<=[0-9])\s*x(?=\s*[0-9])|(?<=\s)x(?=\s+[0-9])", "name": "keyword.operator.times.blockdsl"},
        {
            "match": rf"(\()\s*({NAME})",
            "captures": _shape("punctuation.section.parens.blockdsl"),
        },
        {"match": r"(?<=\s)[-|](?!\S)|[<>~]+|[=/\\%]", "name": "keyword.operator.blockdsl"},
        # A name is taken whole, so that no digit and no dash in it is anything by itself.
        {"match": NAME},
    ]
    return {
        "name": "Block file",
        "scopeName": "source.blockdsl",
        "fileTypes": ["block"],
        "patterns": [{"include": "#comment"}, *lines],
        "repository": {
            "comment": {"match": r"#(?=\s|$).*$", "name": "comment.line.number-sign.blockdsl"},
            "inside": {"patterns": inside},
        },
    }


def text() -> str:
    """The file, the same for the same grammars."""
    return json.dumps(grammar(), ensure_ascii=False, indent=1) + "\n"


if __name__ == "__main__":
    Path(PATH).write_text(text(), encoding="utf-8")
