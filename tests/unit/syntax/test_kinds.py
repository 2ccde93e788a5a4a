"""The table of line kinds: what it says of a line is what is read, and every patch knows the line that drew it."""

import re

import pytest

from blockdsl.analysis import TextReader, analyse
from blockdsl.diagnostics import Problems, Source
from blockdsl.resources import grammar_text
from blockdsl.syntax import format_text, parse
from blockdsl.syntax.grammar import Grammar
from blockdsl.syntax.kinds import LINE_FORMS, LINE_KINDS, QUILT_FORMS, QUILT_KINDS, spellings_of
from blockdsl.syntax.line_kind import LineKind

CLOTH = """
fabric fog "Fog" #dfe3e0
fabric slate "Slate" #3a4750
"""
ABOVE = {
    "file": "",
    "grid": 'block "A"\n',
    "block": 'block "A"\n',
    "quilt": 'quilt "Top"\n',
    "book": 'book "B"\n',
    "maker": 'block "A"\n',
    "maker alone": 'maker "M"\n',
}
KINDS = [
    *(pytest.param(kind, id=f"a block: {word}") for word, kind in LINE_KINDS.items()),
    *(pytest.param(kind, id=f"a quilt: {word}") for word, kind in QUILT_KINDS.items()),
]


def written(usage: str) -> list[str]:
    """The lines that a usage shows whole, each beginning with its word."""
    shown = re.findall(r"`([^`]+)`", usage)
    word = shown[0].split()[0]
    return [line for line in shown if line.split()[0] == word]


@pytest.mark.parametrize("kind", KINDS)
def test_every_line_is_read_as_its_usage_writes_it(kind: LineKind) -> None:
    for line in written(kind.usage):
        above = 'book "B"\n' if kind.word == "block" and " sizes " in line else ABOVE[kind.home]
        problems = Problems()
        parse(Source("test.block", f"{above}{line}\n"), problems)
        assert [problem.message for problem in problems] == [], line


@pytest.mark.parametrize("kind", KINDS)
def test_every_spelling_of_a_word_reads_the_same_line(kind: LineKind) -> None:
    line = written(kind.usage)[0]
    for word in spellings_of(kind.word):
        text = f"{ABOVE[kind.home]}{line.replace(kind.word, word, 1)}\n"
        assert format_text(Source("test.block", text)) is not None


@pytest.mark.parametrize(("grammar", "forms"), [("line", LINE_FORMS), ("quilt", QUILT_FORMS)])
def test_every_form_of_a_line_is_a_rule_of_its_grammar(grammar: Grammar, forms: dict[str, LineKind]) -> None:
    rules = re.findall(r"^\??([a-z_]+):", grammar_text(grammar), re.MULTILINE)
    assert set(forms) <= set(rules)


def drawn_by(text: str) -> list[str]:
    problems = Problems()
    (block,) = analyse(Source("test.block", CLOTH + text), TextReader(), problems).blocks
    assert all(unit.span is not None for unit in block.units)
    return [patch.span.text for patch in block.patches if patch.span is not None]


def test_every_patch_knows_the_cell_that_drew_it() -> None:
    text = (
        "unit four\n  row fog slate>\n  row slate fog\n"
        'block "A"\n  size 4 in\n  row four (half fog slate)~\n  row fog/slate fog\n'
    )
    assert drawn_by(text) == ["fog", "slate>", "slate", "fog", *["(half fog slate)~"] * 2, *["fog/slate"] * 2, "fog"]


def test_turned_units_and_free_patches_know_the_line_that_drew_them() -> None:
    text = (
        "unit tip\n  grid 2 x 2\n  patch fog at 0,0 2,0 0,2\n  patch slate at 2,0 2,2 0,2\n"
        'block "A"\n  size 4 in\n  row tip> tip~\n  row tip tip<\n'
    )
    assert drawn_by(text) == ["patch fog at 0,0 2,0 0,2", "patch slate at 2,0 2,2 0,2"] * 4


def test_a_patch_is_the_same_whoever_drew_it() -> None:
    problems = Problems()
    text = CLOTH + 'block "A"\n  size 4 in\n  row (half fog slate) fog/slate\n  row fog fog\n'
    (block,) = analyse(Source("test.block", text), TextReader(), problems).blocks
    assert block.patches[0].moved(block.width / 2, 0 * block.width) == block.patches[2]
    assert "span" not in repr(block.patches)


def test_a_set_line_that_comes_twice_is_pointed_at() -> None:
    problems = Problems()
    text = CLOTH + 'unit two\n  columns 1 2\n  columns 1 1\n  row fog slate\nblock "A"\n  size 4 in\n  row two\n'
    analyse(Source("test.block", text), TextReader(), problems)
    (twice,) = [problem for problem in problems if problem.code == "setting-twice"]
    assert (twice.span.text, twice.related[0][0].text) == ("columns 1 1", "columns 1 2")
