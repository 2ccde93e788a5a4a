"""The tables of the parsers that are kept, beside the grammars that they come from."""

from __future__ import annotations

import json

import pytest
from lark import Lark

from blockdsl.syntax import grammar
from blockdsl.syntax.grammar import FORMS, Grammar, lark_release, parse_line, tables_path
from tests.grammars.make_tables import tables_text


@pytest.mark.parametrize("name", FORMS)
def test_the_tables_that_are_kept_are_those_of_the_grammar(name: Grammar) -> None:
    kept, made = (json.loads(text) for text in (tables_path(name).read_text("utf-8"), tables_text(name)))
    assert kept["digest"] == made["digest"], "the grammar has changed: make format"
    if kept["lark"] == lark_release():  # a later lark may write them otherwise; then they are left aside
        assert kept["parser"] == made["parser"], "make format"


def test_tables_of_another_grammar_are_left_aside(monkeypatch: pytest.MonkeyPatch) -> None:
    def loaded(_: object) -> Lark:
        raise AssertionError("the tables were taken all the same")

    usual = parse_line('note "Press well"')
    monkeypatch.setattr(Lark, "load", loaded)
    monkeypatch.setattr(grammar, "digest_of", lambda _: "of another grammar")
    grammar._parser.cache_clear()
    try:
        assert parse_line('note "Press well"') == usual
    finally:
        grammar._parser.cache_clear()
