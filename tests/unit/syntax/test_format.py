"""The usual form of a file."""

from __future__ import annotations

from blockdsl.diagnostics import Source
from blockdsl.syntax.format import format_text


def formatted(text: str) -> str | None:
    return format_text(Source("test.block", text))


def test_cells_stand_in_columns_and_lines_are_indented() -> None:
    text = 'block "A"\nsize 12in\nrow a corner>\nrow  a/b (half  a b)~'
    assert formatted(text) == 'block "A"\n  size 12 in\n  row a    corner>\n  row a/b  (half a b)~\n'


def test_wide_letters_take_two_columns() -> None:
    assert formatted("unit u\nrow 布 a\nrow a b") == "unit u\n  row 布  a\n  row a   b\n"


def test_fabric_lines_one_after_another_stand_in_columns() -> None:
    text = 'fabric fog "Harbour fog" #DFE3E0 light\nfabric slate "Slate" #3a4750 dark width 42in'
    assert formatted(text) == (
        'fabric fog   "Harbour fog"  #dfe3e0 light\nfabric slate "Slate"        #3a4750 dark width 42 in\n'
    )


def test_there_is_one_blank_line_before_a_declaration_and_never_two() -> None:
    text = "\n\nunit a\nrow x\n\n\n\nrow y\nunit b\nrow z\n\n"
    assert formatted(text) == "unit a\n  row x\n\n  row y\n\nunit b\n  row z\n"


def test_declarations_of_one_line_and_one_kind_may_stand_together() -> None:
    text = 'use "a.block"\nuse library "b"\nunit a = half x y\nunit b = half y x'
    assert formatted(text) == 'use "a.block"\nuse library "b"\n\nunit a = half x y\nunit b = half y x\n'


def test_a_comment_above_a_declaration_belongs_to_it() -> None:
    text = "unit a\nrow x\n  # about b\nunit b\n# inside b\nrow y   #  here\n"
    assert formatted(text) == "unit a\n  row x\n\n# about b\nunit b\n  # inside b\n  row y  #  here\n"


def test_numbers_stay_as_written_and_signs_take_their_usual_form() -> None:
    text = 'block “A”\nsize 12×9.50in\ncolumns 1   1/2 2.5\ncolourway "N" a = b\nrow (checker 4x4 a b)'
    assert formatted(text) == (
        'block "A"\n  size 12 x 9.50 in\n  columns 1 1/2 2.5\n  colourway "N" a=b\n  row (checker 4 x 4 a b)\n'
    )


def test_a_line_with_a_number_of_units_is_laid_out_like_any_other() -> None:
    text = 'block "B"\n  size 6 in\n  make   4  of goose  as  four at a time\n  row goose\n'
    assert formatted(text) == 'block "B"\n  size 6 in\n  make 4 of goose as four at a time\n  row goose\n'


def test_curly_marks_stay_where_a_straight_mark_is_among_the_words() -> None:
    assert formatted('block "A"\nnote “the 12" ruler”') == 'block "A"\n  note “the 12" ruler”\n'


def test_a_file_with_a_slip_is_left_alone() -> None:
    assert formatted('block "A"\n  size 12') is None


def test_a_line_in_the_wrong_place_is_a_slip() -> None:
    assert formatted("row fog") is None


def test_the_outline_of_an_applique_is_kept_word_for_word() -> None:
    text = 'block "A"\nrow a\napplique   fog “M0  0 1,1Z”  turn-under 3/16in\n'
    assert formatted(text) == 'block "A"\n  row a\n  applique fog "M0  0 1,1Z" turn-under 3/16 in\n'


def test_the_rows_of_a_quilt_stand_in_columns_and_its_lines_are_indented() -> None:
    text = 'quilt  "Top"\nset rows\nrow "Long" fog\nrow fog “A”>\nfabric   width 40in usable\nshrinkage 5%\n'
    usual = """quilt "Top"
  set rows
  row "Long"  fog
  row fog     "A">
  fabric width 40 in usable
  shrinkage 5 %
"""
    assert formatted(text) == usual
    assert formatted(usual) == usual


def test_line_ends_and_the_byte_order_mark_are_those_of_plain_text() -> None:
    assert formatted('\ufeffblock "A"\r\n\trow a\r\n') == 'block "A"\n  row a\n'


def test_an_empty_file_stays_empty() -> None:
    assert formatted("") == ""
    assert formatted("\n\n") == ""


def test_fabrics_before_and_after_a_quilt_have_columns_of_their_own() -> None:
    text = 'fabric deep "Night water" #17293f\nquilt "Q"\nfabric a "Lamp" #e0a030\n'
    usual = 'fabric deep "Night water"  #17293f\n\nquilt "Q"\n\nfabric a "Lamp"  #e0a030\n'
    assert formatted(text) == usual
    assert formatted(usual) == usual
