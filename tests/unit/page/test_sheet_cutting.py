"""The cutting table in words."""

from msgspec.structs import replace

from blockdsl.facts.blockfacts import CutFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.page.table import aligned_parts
from blockdsl.wording import messages
from blockdsl.wording.cutting_rows import cutting_rows
from blockdsl.wording.sheet import format_allowance, format_grid, format_metric_rule, format_subcut
from tests.unit.pictures import sample

GEESE = CutFacts(
    "lantern",
    "C",
    "square",
    (Fraction(29, 4),) * 2,
    (Fraction(29, 4),) * 2,
    1,
    "none",
    4,
    0,
    "four at a time",
    "beam",
    purpose="four at a time beam",
)


def test_the_rows_are_grouped_by_fabric_and_say_the_sub_cut_in_words() -> None:
    headers, rows = cutting_rows(sample.harbour_light())
    assert headers == ("fabric", "cut", "piece", "size", "then", "patch", "for", "spare")
    assert rows[0] == ("Harbour fog", "4", "squares", "2 in", "", "D", "", "")
    assert rows[2] == (
        "Harbour fog", "4", "squares", "3 7/8 in", "cut once corner to corner → 8 triangles", "B", "", "",
    )  # fmt: skip
    assert rows[3][3:] == ("7 1/4 in", "cut twice corner to corner → 4 triangles", "F", "", "2")
    assert [row[0] for row in rows] == ["Harbour fog"] * 4 + ["Lantern"] * 3 + ["Wet slate"]


def test_a_method_says_how_many_units_its_pieces_give_and_what_they_are_for() -> None:
    assert format_subcut(GEESE, None, messages()) == "for 4 units"
    assert cutting_rows(sample.harbour_light())[1][5][4:7] == ("for 4 units", "C", "beam, four at a time")


def test_one_piece_is_named_in_the_singular() -> None:
    assert cutting_rows(sample.harbour_light())[1][3][1:3] == ("1", "square")


def test_a_strip_says_its_width_its_length_and_the_segments_of_its_set() -> None:
    strip = replace(
        GEESE, piece="strip", cut=(Fraction(5, 2), Fraction(40)), method="strip set", unit="", count=2, yields=6
    )
    facts = replace(sample.harbour_light(), cutting=(strip,))
    assert cutting_rows(facts)[1] == [
        ("Lantern", "2", "strips", "2 1/2 × 40 in", "sewn into a set → 6 segments", "C", "strip set", "")
    ]


def test_sizes_line_up_at_the_fraction_or_at_the_point() -> None:
    assert aligned_parts(["2 ⁷⁄₈", "⁷⁄₈", "3", "12.5"]) == [("2", "⁷⁄₈"), ("", "⁷⁄₈"), ("3", ""), ("12", ".5")]


def test_the_allowance_and_the_ruler_are_told_in_inches() -> None:
    words = format_allowance(sample.harbour_light())
    assert "include ¹⁄₄ in seam allowances" in words
    assert "rounded up to the next ¹⁄₈ in." in words


def test_metric_sheets_say_why_they_differ_from_the_usual_rule() -> None:
    assert "0.6 mm and 1.2 mm" in format_metric_rule(sample.in_centimetres())
    assert "up to the next 1 mm." in format_allowance(sample.in_centimetres())
    assert format_metric_rule(sample.harbour_light()) == ""
    squares = [replace(cut, subcut="none", method="cut patches") for cut in sample.in_centimetres().cutting]
    assert format_metric_rule(replace(sample.in_centimetres(), cutting=tuple(squares))) == ""


def test_an_even_grid_is_told_by_its_cell_and_an_uneven_one_by_its_columns_and_rows() -> None:
    assert format_grid(sample.harbour_light()) == ("4 × 4 squares of 3 in", "3 ¹⁄₂ in unfinished")
    assert format_grid(sample.strained()) == (
        "columns 1 ¹⁄₂, 4 ¹⁄₂, 4 ¹⁄₂, 1 ¹⁄₂ in",
        "rows 2 ²⁄₅, 7 ¹⁄₅, 2 ²⁄₅ in",
    )
