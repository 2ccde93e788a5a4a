"""Tables as Markdown and as CSV."""

import csv
from io import StringIO

import pytest

from blockdsl.export.tables import to_csv, to_markdown


def test_a_markdown_table_has_its_columns_aligned() -> None:
    assert to_markdown(["Fabric", "Cut"], [["fog", "4 squares"], ["x", ""]]) == (
        "| Fabric | Cut       |\n|--------|-----------|\n| fog    | 4 squares |\n| x      |           |\n"
    )


def test_pipes_and_line_breaks_stay_inside_their_cell() -> None:
    assert to_markdown(["N"], [["a|b\\c\nd"]]).splitlines()[2] == "| a\\|b\\\\c<br>d |"


def test_csv_comes_back_as_it_went_in() -> None:
    rows = [["fog, pale", 'the "best"', "2 7/8"], ["שלום", "two\nlines", ""]]
    written = to_csv(["a", "b", "c"], rows)
    assert list(csv.reader(StringIO(written))) == [["a", "b", "c"], *rows]
    assert "\r" not in written


@pytest.mark.parametrize("name", ["=1+1", "+cmd", "-cmd|x", "@SUM(A1)", "-1+2", "\t=1"])
def test_a_name_that_a_spreadsheet_would_calculate_with_is_guarded(name: str) -> None:
    assert list(csv.reader(StringIO(to_csv(["n"], [[name]]))))[1] == ["'" + name]


@pytest.mark.parametrize("number", ["-2", "-2 7/8", "+1.5", "12"])
def test_plain_numbers_stay_numbers(number: str) -> None:
    assert to_csv(["n"], [[number]]) == f"n\n{number}\n"


@pytest.mark.parametrize("write", [to_csv, to_markdown])
def test_a_row_with_a_cell_too_few_is_refused(write: type) -> None:
    with pytest.raises(ValueError, match="1 cells in a table of 2 columns"):
        write(["a", "b"], [["a"]])
