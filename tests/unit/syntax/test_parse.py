"""What a line says, part by part."""

from __future__ import annotations

import pytest

from blockdsl.diagnostics import Problems, Source
from blockdsl.geometry import square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.syntax import ast, parse


def read(text: str) -> tuple[ast.Declaration, ...]:
    problems = Problems()
    file = parse(Source("test.block", text), problems)
    assert [problem.message for problem in problems] == []
    return file.declarations


def lines_of(*lines: str) -> tuple[ast.BlockLine, ...]:
    (block,) = read('block "Test"\n' + "\n".join(lines))
    assert isinstance(block, ast.BlockDeclaration)
    return block.lines


def line_of(line: str) -> ast.BlockLine:
    (node,) = lines_of(line)
    return node


def cells_of(row: str) -> tuple[ast.Cell, ...]:
    node = line_of(row)
    assert isinstance(node, ast.Row)
    return node.cells


# --- declarations ------------------------------------------------------------------------------


def test_a_fabric_has_a_name_a_label_and_a_colour() -> None:
    (fabric,) = read('fabric fog "Harbour fog" #DFE3E0')
    assert isinstance(fabric, ast.FabricDeclaration)
    assert (fabric.name.text, fabric.label.text, fabric.colour) == ("fog", "Harbour fog", "#dfe3e0")
    assert (fabric.value, fabric.width, fabric.directional) == (None, None, False)


def test_a_fabric_may_say_its_value_its_width_and_that_it_is_directional_in_any_order() -> None:
    (fabric,) = read('fabric fog "Fog" #dfe3e0 directional width 42 in light')
    assert isinstance(fabric, ast.FabricDeclaration)
    assert fabric.value is not None
    assert fabric.width is not None
    assert (fabric.value.text, fabric.width.value, fabric.width.unit, fabric.directional) == (
        "light",
        Fraction(42),
        "in",
        True,
    )


def test_use_names_a_file_or_a_library() -> None:
    file, library = read('use "more/stars.block"\nuse library "stars"')
    assert isinstance(file, ast.Use)
    assert isinstance(library, ast.Use)
    assert (file.path.text, file.library, library.path.text, library.library) == (
        "more/stars.block",
        False,
        "stars",
        True,
    )


def test_a_unit_is_a_shape_or_has_rows() -> None:
    beam, corner = read("unit beam = geese lantern on fog\nunit corner\nrow a b\nrow c d")
    assert isinstance(beam, ast.UnitDeclaration)
    assert isinstance(corner, ast.UnitDeclaration)
    assert beam.shape is not None
    assert beam.shape.shape.text == "geese"
    assert [word.text for word in beam.shape.words if isinstance(word, ast.Word)] == ["lantern", "on", "fog"]
    assert (beam.lines, corner.shape, len(corner.lines)) == ((), None, 2)


def test_a_declaration_lasts_until_the_next_one_and_indentation_means_nothing() -> None:
    first, second = read('block "A"\nrow x\n      row x\nblock "B"\n\n  row y')
    assert isinstance(first, ast.BlockDeclaration)
    assert isinstance(second, ast.BlockDeclaration)
    assert (first.name.text, len(first.lines), second.name.text, len(second.lines)) == ("A", 2, "B", 1)


# --- cells -------------------------------------------------------------------------------------


def test_a_cell_is_a_name_with_its_turns_in_order() -> None:
    (cell,) = cells_of("row corner~>")
    assert isinstance(cell, ast.NameCell)
    assert (cell.name.text, cell.turns, cell.span.text) == ("corner", ("~", ">"), "corner~>")


@pytest.mark.parametrize("slope", ["/", "\\"])
def test_a_pair_says_the_fabric_on_each_side_of_its_line(slope: str) -> None:
    (cell,) = cells_of(f"row fog{slope}lantern<")
    assert isinstance(cell, ast.PairCell)
    assert (cell.left.text, cell.slope, cell.right.text, cell.turns) == ("fog", slope, "lantern", ("<",))
    assert (cell.left.span.text, cell.right.span.text) == ("fog", "lantern")


def test_a_shape_in_brackets_keeps_its_words_and_numbers() -> None:
    (cell,) = cells_of("row (snowball a with b at tl br cut 1/3)>>")
    assert isinstance(cell, ast.ShapeCell)
    words = [word.text if isinstance(word, ast.Word) else word.value for word in cell.call.words]
    assert words == ["a", "with", "b", "at", "tl", "br", "cut", Fraction(1, 3)]
    assert (cell.call.shape.text, cell.turns) == ("snowball", (">", ">"))


@pytest.mark.parametrize("times", ["4 x 4", "4x4", "4 × 4", "4×4"])
def test_a_checker_may_be_written_with_any_times_sign(times: str) -> None:
    (cell,) = cells_of(f"row (checker {times} a b)")
    assert isinstance(cell, ast.ShapeCell)
    words = [word.text if isinstance(word, ast.Word) else word.value for word in cell.call.words]
    assert words == [4, "x", 4, "a", "b"]


def test_a_dash_goes_on_to_the_left_and_a_bar_above() -> None:
    cells = cells_of("row - | fog")
    assert [cell.toward for cell in cells if isinstance(cell, ast.Continue)] == ["left", "above"]


def test_a_fabric_may_be_called_by_a_word_of_the_language() -> None:
    cells = cells_of("row row on x x4 in (half at as) unit/block")
    names = [cell.name.text for cell in cells if isinstance(cell, ast.NameCell)]
    assert names == ["row", "on", "x", "x4", "in"]


def test_a_name_may_be_in_any_script() -> None:
    cells = cells_of("row 布 été हिन्दी/ткань")
    assert [cell.name.text for cell in cells if isinstance(cell, ast.NameCell)] == ["布", "été"]
    assert isinstance(cells[2], ast.PairCell)
    assert (cells[2].left.text, cells[2].right.text) == ("हिन्दी", "ткань")


def test_an_accent_typed_apart_from_its_letter_gives_the_same_name() -> None:
    together, apart = cells_of("row \u00e9t\u00e9 e\u0301te\u0301")
    assert isinstance(together, ast.NameCell)
    assert isinstance(apart, ast.NameCell)
    assert together.name.text == apart.name.text


# --- numbers, lengths, places ------------------------------------------------------------------


def test_a_whole_number_takes_the_proper_fraction_after_it() -> None:
    node = line_of("columns 1 1/2 1 3/2 2.5")
    assert isinstance(node, ast.Columns)
    assert [number.value for number in node.numbers] == [Fraction(3, 2), 1, Fraction(3, 2), Fraction(5, 2)]
    assert [number.span.text for number in node.numbers] == ["1 1/2", "1", "3/2", "2.5"]


@pytest.mark.parametrize(
    ("text", "value", "unit"),
    [
        ("2 7/8 in", Fraction(23, 8), "in"),
        ("2.875 in", Fraction(23, 8), "in"),
        ("7.5 cm", Fraction(15, 2), "cm"),
        ("75mm", Fraction(75), "mm"),
    ],
)
def test_a_length_is_a_number_and_its_unit(text: str, value: Fraction, unit: str) -> None:
    node = line_of(f"seam {text}")
    assert isinstance(node, ast.Seam)
    assert (node.length.value, node.length.unit, node.length.span.text) == (value, unit, text)


def test_one_measure_makes_a_square_block() -> None:
    node = line_of("size 12 in")
    assert isinstance(node, ast.Size)
    assert node.width == node.height


@pytest.mark.parametrize("text", ["12 x 9 in", "12x9in", "12 × 9 in", "12 in x 9 in"])
def test_two_measures_share_the_unit_after_them(text: str) -> None:
    node = line_of(f"size {text}")
    assert isinstance(node, ast.Size)
    assert (node.width.value, node.width.unit, node.height.value, node.height.unit) == (
        Fraction(12),
        "in",
        Fraction(9),
        "in",
    )


def test_a_place_may_have_roots() -> None:
    node = line_of("patch at at 2-r2,1/2 1/2r3,-2r2 0,2+7/8")
    assert isinstance(node, ast.FreePatch)
    two, three = square_root(Fraction(2)), square_root(Fraction(3))
    assert node.fabric.text == "at"
    assert [(corner.x, corner.y) for corner in node.corners] == [
        (2 - two, Fraction(1, 2)),
        (three * Fraction(1, 2), two * -2),
        (Fraction(0), Fraction(23, 8)),
    ]


# --- choices -----------------------------------------------------------------------------------


def test_a_method_is_the_words_after_as() -> None:
    node = line_of("make geese  as four  at a time")
    assert isinstance(node, ast.Make)
    assert (node.what.text, node.method.text) == ("geese", "four at a time")


def test_a_number_of_units_stands_before_of() -> None:
    node = line_of("make 4 of geese as four at a time")
    assert isinstance(node, ast.Make)
    assert node.count is not None
    assert (int(node.count.value), node.what.text, node.method.text) == (4, "geese", "four at a time")


def test_a_unit_may_be_called_of() -> None:
    node = line_of("make 2 of of as four at a time")
    assert isinstance(node, ast.Make)
    assert node.what.text == "of"


def test_a_colourway_says_which_fabric_becomes_which() -> None:
    node = line_of('colourway "Night" fog=slate slate = fog')
    assert isinstance(node, ast.Colourway)
    assert node.name.text == "Night"
    assert [(one.text, other.text) for one, other in node.changes] == [("fog", "slate"), ("slate", "fog")]


def test_an_expected_cut_of_squares_is_as_high_as_it_is_wide() -> None:
    node = line_of("expect cut fog 4 squares 2 7/8 once")
    assert isinstance(node, ast.ExpectCut)
    assert (node.fabric.text, node.count.value, node.piece.text) == ("fog", Fraction(4), "squares")
    assert (node.width.value, node.height.value) == (Fraction(23, 8), Fraction(23, 8))
    assert node.subcut is not None
    assert node.subcut.text == "once"


def test_an_expected_cut_of_rectangles_has_two_measures() -> None:
    node = line_of("expect cut fog 4 rectangles 2 x 3 1/2")
    assert isinstance(node, ast.ExpectCut)
    assert (node.width.value, node.height.value, node.subcut) == (Fraction(2), Fraction(7, 2), None)


def test_an_expected_unit_has_its_size_and_its_count_when_asked() -> None:
    with_count, without = lines_of("expect unit beam 4 x 2 in count 4", "expect unit beam 4 x 2 in")
    assert isinstance(with_count, ast.ExpectUnit)
    assert isinstance(without, ast.ExpectUnit)
    assert with_count.count is not None
    assert (with_count.width.value, with_count.height.value, with_count.count.value) == (
        Fraction(4),
        Fraction(2),
        Fraction(4),
    )
    assert without.count is None


def test_the_other_choices_are_read() -> None:
    nodes = lines_of(
        "measure 1/8 in", "trim 1/8 in", 'note "Press"', "grid 4 x 3", "heights 1 2", "expect finished 6 in"
    )
    assert [type(node) for node in nodes] == [
        ast.Measure,
        ast.Trim,
        ast.Note,
        ast.GridExtent,
        ast.Heights,
        ast.ExpectFinished,
    ]


def test_a_block_says_its_family_and_its_sources() -> None:
    family, source = lines_of("family nine-patch", 'source "A list of 1915, page 3"')
    assert isinstance(family, ast.Family)
    assert isinstance(source, ast.Origin)
    assert (family.name.text, source.text.text) == ("nine-patch", "A list of 1915, page 3")


# --- the text around the words -----------------------------------------------------------------


def test_a_comment_ends_a_line_but_not_quoted_text() -> None:
    note, size = lines_of('note "row # 3" # and a comment', "size 12 in #")
    assert isinstance(note, ast.Note)
    assert isinstance(size, ast.Size)
    assert note.text.text == "row # 3"
    assert size.span.text == "size 12 in"


def test_curly_quotation_marks_are_quotation_marks() -> None:
    note = line_of('note “The 12" ruler”')
    assert isinstance(note, ast.Note)
    assert note.text.text == 'The 12" ruler'


@pytest.mark.parametrize("text", ["", "\n", "  \n\t\n", "# only a comment", "\ufeff"])
def test_a_file_may_be_empty(text: str) -> None:
    assert read(text) == ()


def test_a_byte_order_mark_and_line_ends_of_any_system_change_nothing() -> None:
    (block,) = read('\ufeffblock "A"\r\n\trow\u00a0a  b\r\n')
    assert isinstance(block, ast.BlockDeclaration)
    (row,) = block.lines
    assert (block.span.text, row.span.text, row.span.line, row.span.column) == ('block "A"', "row\u00a0a  b", 2, 2)


def test_every_place_is_the_place_in_the_text() -> None:
    text = 'fabric fog "Fog" #dfe3e0\n\n  # a comment\nunit u\n   row fog (half fog fog)> \n'
    _, unit = read(text)
    assert isinstance(unit, ast.UnitDeclaration)
    (row,) = unit.lines
    assert isinstance(row, ast.Row)
    fog, half = row.cells
    assert (fog.span.line, fog.span.column, fog.span.text) == (5, 8, "fog")
    assert (half.span.line, half.span.column, half.span.text) == (5, 12, "(half fog fog)>")
