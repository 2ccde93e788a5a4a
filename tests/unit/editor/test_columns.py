"""Columns as editors count them.

The Language Server Protocol 3.17 counts in UTF-16 from 0 unless both sides agree on UTF-8 or UTF-32; a letter outside
the basic plane, such as an emoji, takes two units in UTF-16. Python's own encoders are the judges.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from lsprotocol import types

from blockdsl.diagnostics import Source, Span
from blockdsl.editor.columns import Columns
from blockdsl.editor.edited import EditedSource
from blockdsl.editor.server import changed_text


@pytest.mark.parametrize(
    ("encoding", "columns"),
    # `é` is one letter, here made of an e and an accent; the lantern is one letter, two units of UTF-16, four bytes.
    [("utf-16", [0, 1, 2, 3, 5, 6]), ("utf-32", [0, 1, 2, 3, 4, 5]), ("utf-8", [0, 1, 2, 4, 8, 9])],
)
def test_accents_and_emoji_take_the_columns_that_the_encoding_says(encoding: str, columns: list[int]) -> None:
    source = Source("a", "one\nae\u0301🏮x\n")
    # An accent that stands by itself is two bytes of UTF-8.
    found = [Columns(encoding).position(source, 4 + letter) for letter in range(6)]
    assert [place.line for place in found] == [1] * 6
    assert [place.character for place in found] == columns


def test_a_column_inside_a_letter_is_in_front_of_it() -> None:
    source = Source("a", "a🏮b")
    assert [Columns().offset(source, types.Position(0, column)) for column in range(6)] == [0, 1, 1, 2, 3, 3]


@pytest.mark.parametrize("kind", [Source, EditedSource])
@given(text=st.text(st.sampled_from("ab é\u0301🏮😀\n\r\t"), max_size=30), data=st.data())
def test_there_and_back_is_the_same_place(kind: type[Source], text: str, data: st.DataObject) -> None:
    source = kind("a", text)
    line = data.draw(st.integers(1, len(source.line_starts)))
    column = data.draw(st.integers(1, len(source.line(line)) + 1))
    offset = source.offset(line, column)
    place = Columns().position(source, offset)
    before = source.line(line)[: column - 1]
    assert (place.line, place.character) == (line - 1, len(before.encode("utf-16-le")) // 2)
    assert Columns().offset(source, place) == offset


def test_places_outside_the_text_are_the_nearest_inside() -> None:
    source = EditedSource("a", "fog\nslate")
    columns = Columns()
    assert columns.position(source, columns.offset(source, types.Position(99, 99))) == types.Position(1, 5)
    assert columns.position(source, columns.offset(source, types.Position(0, 99))) == types.Position(0, 3)
    assert columns.range(Span(source, *2 * (source.line_starts[0],))).end == types.Position(0, 0)


@pytest.mark.parametrize(
    ("text", "start", "end", "typed", "now"),
    [
        ("row fog\n", (0, 7), (0, 7), " slate", "row fog slate\n"),
        ("é🏮b", (0, 1), (0, 3), "", "éb"),
        ("a\r\nb\rc", (1, 0), (2, 0), "X", "a\r\nXc"),  # the protocol ends lines in three ways
        ("a\nb", (0, 1), (1, 0), "", "ab"),
        ("a", (9, 9), (9, 9), "b", "ab"),
        ("abc", (0, 2), (0, 1), "x", "axc"),  # a range that is the wrong way round
    ],
)
def test_a_change_is_made_where_the_editor_made_it(
    text: str, start: tuple[int, int], end: tuple[int, int], typed: str, now: str
) -> None:
    place = types.Range(types.Position(*start), types.Position(*end))
    assert changed_text(text, types.TextDocumentContentChangePartial(place, typed), Columns()) == now
