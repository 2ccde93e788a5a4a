"""The words for every shape, by every method that makes it, sew it: what the library has none of too."""

from __future__ import annotations

from zlib import crc32

import pytest

from blockdsl.shapes import SHAPES
from tests.outside.reader.library import check
from tests.outside.reader.shapes import EVERY, ROWS, shape_document, shapes_by_methods

MADE = list(shapes_by_methods())


def test_every_shape_that_is_sewn_is_among_them() -> None:
    assert set(SHAPES) - {"square"} == set(EVERY) == {shape for shape, _ in MADE}


@pytest.mark.parametrize(("shape", "method"), MADE)
def test_the_words_of_a_method_make_its_shape(shape: str, method: str) -> None:
    """In a row or in two, one of both in every run; both, and in centimetres too, by `make read`."""
    rows = ROWS[crc32(f"{shape} {method}".encode()) % len(ROWS)]
    check(shape_document(shape, method, rows))
