"""The tables of the parsers, written anew beside their grammars' code: `make format`."""

from __future__ import annotations

import json
from typing import Any

from lark.grammar import Rule
from lark.lexer import TerminalDef

from blockdsl.syntax.grammar import FORMS, Grammar, digest_of, lark_release, tables_path, whole_grammar, work_out

SHIFT = 0
"""An action that reads a word and goes on to a state; any other ends a rule."""


def tables_text(grammar: Grammar) -> str:
    """The tables of the grammar's parser, as they are kept: JSON, the same for the same grammar and lark."""
    rules = whole_grammar(grammar)
    data, memo = work_out(rules).memo_serialize([TerminalDef, Rule])
    _number_in_order(data["parser"]["parser"])
    kept = {"digest": digest_of(rules), "lark": lark_release(), "parser": {"data": data, "memo": memo}}
    return json.dumps(kept, ensure_ascii=False, separators=(",", ":")) + "\n"


def _number_in_order(table: dict[str, Any]) -> None:
    """Lark numbers words and states as it meets them in sets, another way each time.

    Here words are numbered by name, and states as they are reached from the start, a word at a time.
    """
    names = table["tokens"]
    tokens = {name: number for number, name in enumerate(sorted(names.values()))}
    states = table["states"]
    reached = list(table["start_states"].values())
    for state in reached:  # which grows meanwhile
        by_name = sorted((names[token], action) for token, action in states[state].items() if action[0] == SHIFT)
        reached += [target for _, (_, target) in by_name if target not in reached]
    numbers = {state: number for number, state in enumerate(reached)}

    def renumbered(action: tuple[int, Any]) -> tuple[int, Any]:
        return (SHIFT, numbers[action[1]]) if action[0] == SHIFT else action

    table["tokens"] = {number: name for name, number in tokens.items()}
    table["states"] = {
        numbers[state]: {
            number: renumbered(action)
            for number, action in sorted(((tokens[names[each]], action) for each, action in states[state].items()))
        }
        for state in reached
    }
    for ends in ("start_states", "end_states"):
        table[ends] = {start: numbers[state] for start, state in table[ends].items()}


if __name__ == "__main__":
    for each in FORMS:
        tables_path(each).write_text(tables_text(each), "utf-8")
