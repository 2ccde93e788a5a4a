"""Books: which line belongs to which, sizes read, the usual form."""

from __future__ import annotations

import pytest

from blockdsl.diagnostics import Problems, Source
from blockdsl.geometry.fraction import Fraction as F  # noqa: N817 - they stand in lists of sizes
from blockdsl.syntax import ast, format_text, parse


def read(text: str) -> tuple[ast.Declaration, ...]:
    problems = Problems()
    declarations = parse(Source("test.block", text), problems).declarations
    assert [problem.message for problem in problems] == []
    return declarations


def slips(text: str) -> list[tuple[str, int]]:
    problems = Problems()
    parse(Source("test.block", text), problems)
    return [(problem.code, problem.span.line) for problem in problems]


def kinds(declaration: ast.Declaration) -> list[str]:
    assert isinstance(declaration, ast.BookDeclaration | ast.BlockDeclaration)
    return [type(line).__name__ for line in declaration.lines]


def test_every_line_of_a_book_is_read_wherever_it_is_indented() -> None:
    text = (
        'book "All"\nby "Me"\n      paper roll 36 in\ntext "a.md"\n chapter "One"\nblock "A"\n'
        'block "B" sizes 6 in\nquilt "Top"\ntechniques'
    )
    (book,) = read(text)
    assert kinds(book) == [
        "By", "Paper", "BookText", "Chapter", "BookBlock", "BookBlock", "BookQuilt", "Techniques"
    ]  # fmt: skip


def test_a_block_with_a_size_below_it_is_a_new_block_and_ends_the_book() -> None:
    book, block = read('book "All"\nblock "A"\nblock "B"\n\n# its size\nsize 6 in\nrow fog\n')
    assert kinds(book) == ["BookBlock"]
    assert kinds(block) == ["Size", "Row"]


@pytest.mark.parametrize("below", ['chapter "Two"', 'block "B" sizes 6 in', "techniques", 'fabric a "A" #aabbcc', ""])
def test_a_block_with_another_line_below_it_is_one_of_the_book(below: str) -> None:
    book, *_ = read(f'book "All"\nblock "A"\n{below}\n')
    assert kinds(book)[0] == "BookBlock"


def test_a_quilt_that_is_declared_ends_the_book_and_one_that_is_named_does_not() -> None:
    assert slips('book "All"\nquilt "Top"\nchapter "Two"\n') == []
    declared = read('book "All"\nquilt "Top"\nset straight 4 x 6 of "A"\n')
    assert [type(one).__name__ for one in declared] == ["BookDeclaration", "QuiltDeclaration"]
    assert kinds(declared[0]) == []


def test_sizes_are_read_with_their_fractions_and_each_unit_holds_for_those_before_it() -> None:
    (book,) = read('book "All"\nblock "A" sizes 4 6 1/2 7.5 in 100 150 mm\n')
    assert isinstance(book, ast.BookDeclaration)
    (line,) = book.lines
    assert isinstance(line, ast.BookBlock)
    assert [(width.value, width.unit) for width in line.widths] == [
        (F(4), "in"), (F(13, 2), "in"), (F(15, 2), "in"), (F(100), "mm"), (F(150), "mm")
    ]  # fmt: skip
    assert [width.span.text for width in line.widths] == ["4", "6 1/2", "7.5 in", "100", "150 mm"]


def test_a_slip_in_a_line_that_names_a_block_spoils_that_line_alone() -> None:
    text = 'book "All"\nblock "A" sizes 6 9\nchapter "Two"\nblock "B" size 6 in\nblock "C"\n'
    assert slips(text) == [("length-needs-unit", 2), ("word-unexpected", 4)]


def test_a_line_of_a_book_does_not_belong_in_a_block_and_a_line_of_a_block_not_in_a_book() -> None:
    assert slips('block "A"\nsize 6 in\npaper letter\nrow fog') == [("line-does-not-belong", 3)]
    assert slips('book "A"\nsize 6 in\nby "Me"') == [("line-does-not-belong", 2)]
    assert slips("unit u = half a b\ntechniques") == [("line-does-not-belong", 2)]
    assert slips('block "A" sizes 6 in') == [("line-outside-declaration", 1)]


def test_in_its_usual_form_what_lies_in_a_chapter_is_indented_once_more() -> None:
    text = (
        'book "All"\nby "Me"\n# before\nchapter "One"\ntext  “a.md”\n# about A\nblock "A"   sizes 6   9 1/2 in\n'
        'techniques\nblock "B"\nsize 6in\nrow fog\n'
    )
    assert format_text(Source("test.block", text)) == (
        'book "All"\n  by "Me"\n  # before\n  chapter "One"\n    text "a.md"\n    # about A\n'
        '    block "A" sizes 6 9 1/2 in\n  techniques\n\nblock "B"\n  size 6 in\n  row fog\n'
    )


def test_words_of_a_book_are_names_elsewhere() -> None:
    fabrics = 'fabric by "By" #aabbcc\nfabric sizes "Sizes" #112233\nfabric text "Text" #445566\n'
    assert len(read(f"{fabrics}unit paper\nrow by sizes text\n")) == 4
