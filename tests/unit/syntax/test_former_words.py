"""Words of old are read, reported with the new word, and rewritten; British and American spellings are alike."""

import pytest

from blockdsl.diagnostics import Problems, Source
from blockdsl.shapes.listed import FORMER_NAMES
from blockdsl.syntax import format_text, parse
from tests.unit.model.blocks import block, errors


def test_each_word_of_old_is_one_error_that_names_the_new_word() -> None:
    found = errors("row (peak lantern on fog)", "make peak as foundation", 'colouring "Night" fog=slate')
    assert [(problem.code, problem.span.text) for problem in found] == [
        ("word-renamed", "peak"),
        ("word-renamed", "peak"),
        ("word-renamed", "colouring"),
    ]
    assert found[2].message == "`colouring` is now called `colourway`"
    assert str(found[0].help).startswith("write `triangle-in-square`")


def test_a_quilt_reports_the_word_of_old_too() -> None:
    problems = Problems()
    parse(Source("test.block", 'quilt "Top"\n  set rows\n  row fog\n  colouring "Night" on all\n'), problems)
    assert [(problem.code, problem.span.line) for problem in problems] == [("word-renamed", 4)]


def test_format_writes_the_new_words() -> None:
    text = (
        "unit tip = peak a on b\n\n"
        'block "A"\n  size 6 in\n  row (peak a on b)\n  make 1 of peak as foundation\n  colouring "N" a=b\n'
    )
    usual = (
        "unit tip = triangle-in-square a on b\n\n"
        'block "A"\n  size 6 in\n  row (triangle-in-square a on b)\n'
        '  make 1 of triangle-in-square as foundation\n  colourway "N" a=b\n'
    )
    assert format_text(Source("test.block", text), FORMER_NAMES) == usual
    assert format_text(Source("test.block", usual), FORMER_NAMES) == usual


def test_a_unit_or_a_fabric_may_have_the_name_that_a_shape_once_had() -> None:
    text = 'unit peak = half fog slate\n\nblock "A"\n  size 6 in\n  row peak\n  make peak as foundation\n'
    assert format_text(Source("test.block", text), FORMER_NAMES) == text
    assert errors("row peak", "make peak as foundation", above="unit peak = half fog slate\n") == []


@pytest.mark.parametrize("word", ["colourway", "colorway"])
def test_a_colourway_is_spelled_in_either_way(word: str) -> None:
    line = f'  {word} "Night" fog=slate\n'
    assert block("row fog moss", line.strip()).colourways[0].name == "Night"
    text = f'block "A"\n  row fog\n{line}'
    assert format_text(Source("test.block", text)) == text


@pytest.mark.parametrize(
    ("british", "american"),
    [
        ("wadding overage 4 in", "batting overage 4 in"),
        ("border 2 in fog mitred", "border 2 in fog mitered"),
        ("sash 1 in fog posts slate", "sash 1 in fog cornerstones slate"),
    ],
)
def test_a_quilt_says_the_same_in_both_kinds_of_english(british: str, american: str) -> None:
    def said(line: str) -> list[str]:
        problems = Problems()
        (quilt,) = parse(Source("test.block", f'quilt "Top"\n  {line}\n'), problems).declarations
        assert list(problems) == []
        (own,) = quilt.lines  # type: ignore[union-attr]
        names = [name for name in type(own).__struct_fields__ if name != "span"]
        return [f"{getattr(getattr(own, name), 'text', getattr(own, name))}".split("span=")[0] for name in names]

    assert said(british) == said(american)


def test_a_middle_is_a_centre_or_a_center() -> None:
    centre, center = (block(f"row (log {word} fog with slate moss lantern slate)") for word in ("centre", "center"))
    assert centre.patches == center.patches
