"""What belongs to a shape is in the shape's own file: no other module has its name."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

import blockdsl
from blockdsl.diagnostics import Problems, Source
from blockdsl.shapes import SHAPES
from blockdsl.shapes.listed import FORMER_NAMES, TRADE_WORDS
from blockdsl.shapes.words import WordReader
from blockdsl.syntax import parse
from blockdsl.syntax.ast import UnitDeclaration

TOP = Path(blockdsl.__file__).parent

PLAIN_WORDS = {"square", "half", "diamond", "kite", "trapezoid", "octagon", "hexagons", "slant", "split"}
"""Names of shapes that are words of geometry or of cutting as well: a piece, a cutter, a share. They cannot be told
apart from the shape by their letters."""

WORDS_FOR_READERS = {"page/book/glossary.py", "wording/english.py", "wording/glossary.py"}
"""Modules of words that are explained, or put into the plural, and happen to be names of shapes too."""


def modules() -> Iterator[Path]:
    yield from (path for path in sorted(TOP.rglob("*.py")) if path.parent.name != "shapes")


def words_in(path: Path) -> Iterator[tuple[int, str]]:
    """The quoted words of a module, docstrings apart, each with its line."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    notes = {id(node.value) for node in ast.walk(tree) if isinstance(node, ast.Expr)}
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in notes:
            yield node.lineno, node.value


def is_written_shape(words: str, names: set[str]) -> bool:
    """Whether the words are a shape as a block file writes it, with fabrics or numbers after its name."""
    if words.split(" ", maxsplit=1)[0] not in names:
        return False
    declarations = parse(Source("words.block", f"unit any = {words}"), Problems()).declarations
    unit = declarations[0] if declarations else None
    call = unit.shape if isinstance(unit, UnitDeclaration) else None
    return call is not None and SHAPES[call.shape.text].read(WordReader(call.words)) is not None


def test_a_shape_that_is_written_out_would_be_found() -> None:
    assert is_written_shape("checker 2 x 2 a b", {"checker"})
    assert not is_written_shape("fan blade", {"fan"})


def test_no_other_module_has_the_name_of_a_shape() -> None:
    names = set(SHAPES) - PLAIN_WORDS
    found = [
        f"{path.relative_to(TOP)}:{line}: {word}"
        for path in modules()
        if path.relative_to(TOP).as_posix() not in WORDS_FOR_READERS
        for line, word in words_in(path)
        if word in names or is_written_shape(word, names)
    ]
    assert found == []


@pytest.mark.parametrize("name", sorted(PLAIN_WORDS))
def test_a_name_that_is_a_plain_word_is_a_shape_all_the_same(name: str) -> None:
    assert name in SHAPES


def test_what_a_beginner_may_write_is_no_shape_and_leads_to_one() -> None:
    assert all(word not in SHAPES and shape in SHAPES for word, shape in (TRADE_WORDS | FORMER_NAMES).items())
    assert all(shape.taught_as in SHAPES for shape in SHAPES.values() if shape.taught_as)


@pytest.mark.parametrize("name", sorted(SHAPES))
def test_a_shape_reads_its_own_name(name: str) -> None:
    assert SHAPES[name].usage.split()[0] == name
