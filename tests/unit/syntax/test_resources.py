"""The grammar, the library and the fonts are found."""

from __future__ import annotations

from blockdsl.resources import font_path, grammar_text, library_names, library_path


def test_the_grammar_has_no_list_of_shapes() -> None:
    grammar = grammar_text("line")
    assert "shape: NAME" in grammar
    assert "geese" not in grammar


def test_every_library_name_is_a_file() -> None:
    assert "basics" in library_names()
    assert all(library_path(name).is_file() for name in library_names())


def test_the_fonts_are_there() -> None:
    assert font_path("FiraGO-Regular.ttf").is_file()
