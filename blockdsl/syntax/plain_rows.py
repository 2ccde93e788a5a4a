"""Rows of a block read by hand, where they are plain.

A quilt-sized grid has 40,000 cells; the grammar would take seconds over them. Rows are therefore read by
hand with the grammar's own expressions; a row that does not fit them goes to the grammar, which knows why.
"""

from __future__ import annotations

import re
from functools import cache
from typing import Final, Literal, cast

from blockdsl.diagnostics import Source, Span
from blockdsl.syntax.atoms import is_name, normalized
from blockdsl.syntax.block_lines import Row
from blockdsl.syntax.grammar import pattern
from blockdsl.syntax.lines import RawLine
from blockdsl.syntax.nodes import Cell, Continue, NameCell, Number, PairCell, ShapeCall, ShapeCell, Turn, Word
from blockdsl.syntax.numbers import NumberFault, read_numbers

_ROW: Final = re.compile(r"row(?=\s)")


@cache
def _cell_expression() -> re.Pattern[str]:
    name = pattern("NAME")
    return re.compile(
        rf"\s+(?:(?P<name>{name})(?:(?P<slope>[/\\])(?P<right>{name}))?(?P<turns>[<>~]*)"
        rf"|(?P<going>[-|])|(?P<shape>\([^()]*\))(?P<shape_turns>[<>~]*))(?!\S)"
    )


@cache
def _word_expression() -> re.Pattern[str]:
    return re.compile(
        rf"\s*(?:(?P<times>{pattern('TIMES')})|(?P<name>{pattern('NAME')})|(?P<number>{pattern('NUMBER')}))"
    )


def read_row(line: RawLine) -> Row | None:
    """The row, when every cell can be read by hand; None sends the line to the grammar.

    It gives exactly what the grammar would give.
    """
    text, source, start = line.text, line.source, line.start
    if not _ROW.match(text) or not is_plain(text):
        return None
    expression = _cell_expression()
    cells: list[Cell] = []
    at = 3
    while at < len(text):
        found = expression.match(text, at)
        cell = _read_cell(source, start, found) if found else None
        if found is None or cell is None:
            return None
        cells.append(cell)
        at = found.end()
    return Row(line.span(), tuple(cells))


def is_plain(text: str) -> bool:
    """Whether every name in the line is sure to be a name; the grammar looks closer at the others."""
    return text.isascii() or all(is_name(word) for word in re.findall(pattern("NAME"), text))


def _read_cell(source: Source, start: int, found: re.Match[str]) -> Cell | None:
    name = found["name"]
    if name is not None:
        return _read_name_or_pair(source, start, found, name)
    if found["going"]:
        place = start + found.start("going")
        return Continue(Span(source, place, place + 1), "left" if found["going"] == "-" else "above")
    return _read_shape(source, start, found)


def _read_name_or_pair(source: Source, start: int, found: re.Match[str], name: str) -> NameCell | PairCell:
    begin = start + found.start("name")
    span = Span(source, begin, start + found.end())
    turns = cast("tuple[Turn, ...]", tuple(found["turns"]))
    middle = begin + len(name)
    word = Word(Span(source, begin, middle), normalized(name))
    if found["slope"] is None:
        return NameCell(span, word, turns)
    right = Word(Span(source, middle + 1, start + found.end("right")), normalized(found["right"]))
    return PairCell(span, word, right, cast("Literal['/', '\\\\']", found["slope"]), turns)


def _read_shape(source: Source, start: int, found: re.Match[str]) -> ShapeCell | None:
    text, (at, stop) = found.string, found.span("shape")
    at, stop = at + 1, stop - 1
    end = at + len(text[at:stop].rstrip())
    expression = _word_expression()
    words: list[Word | Number] = []
    while at < end:
        word = expression.match(text, at)
        atom = _read_atom(source, start, word) if word else None
        if word is None or atom is None:
            return None
        words.append(atom)
        at = word.end()
    if not words or not isinstance(words[0], Word) or words[0].span.text != words[0].text:
        return None
    turns = cast("tuple[Turn, ...]", tuple(found["shape_turns"]))
    call = ShapeCall(words[0].span.to(words[-1].span), words[0], tuple(words[1:]))
    return ShapeCell(Span(source, start + found.start("shape"), start + found.end()), call, turns)


def _read_atom(source: Source, start: int, found: re.Match[str]) -> Word | Number | None:
    kind = cast("str", found.lastgroup)
    text = found[kind]
    span = Span(source, start + found.start(kind), start + found.end(kind))
    if kind != "number":
        return Word(span, "x" if kind == "times" else normalized(text))
    try:
        values = read_numbers(text)
    except NumberFault:
        return None
    return Number(span, values[0]) if len(values) == 1 else None
