"""The cutting table as a spreadsheet, read back by openpyxl and added up."""

from __future__ import annotations

import zipfile
from io import BytesIO

import openpyxl
import pytest

from blockdsl.cli.outputs import _spreadsheet
from blockdsl.export.xlsx import length_format
from blockdsl.facts import BlockFacts
from blockdsl.geometry.fraction import Fraction
from tests.unit.model.blocks import block

GOOSE = block("row (geese fog on slate)", "row (geese moss on slate)", size="4 in")
METRIC = block("row fog\\slate fog/slate", "row slate/fog slate\\fog", size="15 cm")


def sheet(facts: BlockFacts) -> openpyxl.worksheet.worksheet.Worksheet:
    return openpyxl.load_workbook(BytesIO(_spreadsheet(facts))).active


@pytest.mark.parametrize("facts", [GOOSE, METRIC], ids=["inches", "centimetres"])
def test_every_number_is_a_number_and_the_last_row_adds_them_up(facts: BlockFacts) -> None:
    heads, *rows = sheet(facts).iter_rows(values_only=True)
    *rows, total = rows

    assert heads[:5] == ("fabric", "cut", "piece", "width", "height")
    by_fabric = sorted(facts.cutting, key=lambda cut: [fabric.name for fabric in facts.fabrics].index(cut.fabric))
    assert [row[1] for row in rows] == [cut.count for cut in by_fabric]
    assert all(isinstance(row[3], int | float) and isinstance(row[4], int | float) for row in rows)
    assert total[0] == "in all"
    assert total[1] == f"=SUM(B2:B{len(rows) + 1})"
    # What a program shows that does not reckon itself: the sum as it was written.
    shown = openpyxl.load_workbook(BytesIO(_spreadsheet(facts)), data_only=True).active
    assert shown.cell(len(rows) + 2, 2).value == sum(cut.count for cut in facts.cutting)


def test_lengths_are_shown_as_the_ruler_reads_them() -> None:
    # Published rule: the goose of 4 in is cut from a square of 4 + 1 1/4 in, twice corner to corner.
    places = [cell for row in sheet(GOOSE).iter_rows(min_row=2) for cell in row[3:4] if cell.value == 5.25]
    assert places
    assert {cell.number_format for cell in places} == {"# ?/8"}
    (first,) = sheet(METRIC).iter_rows(min_row=2, max_row=2)
    assert {cell.number_format for cell in first[3:5]} == {"0.0#"}


def test_a_finer_ruler_has_more_figures() -> None:
    assert length_format(Fraction(1, 16)) == "# ??/16"
    assert length_format(Fraction(1, 8)) == "# ?/8"


def test_words_that_look_like_formulas_and_addresses_stay_words() -> None:
    odd = block("row odd", above='fabric odd "=1+1" #aabbcc')
    cells = [cell for row in sheet(odd).iter_rows() for cell in row if cell.value == "=1+1"]
    assert [cell.data_type for cell in cells] == ["s"]


def test_the_same_block_gives_the_same_bytes_and_no_date_of_today() -> None:
    first, second = _spreadsheet(GOOSE), _spreadsheet(GOOSE)
    assert first == second
    assert {entry.date_time[0] for entry in zipfile.ZipFile(BytesIO(first)).infolist()} == {1980}
