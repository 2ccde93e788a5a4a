"""A table as a spreadsheet whose numbers are numbers: they add up, and lengths read as the ruler does."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, datetime
from io import BytesIO
from typing import Final

import xlsxwriter

from blockdsl.export.printable import check_text
from blockdsl.geometry import Exact, to_float
from blockdsl.geometry.fraction import Fraction

Cell = str | int | Exact

_FINENESS: Final = (2, 4, 8, 16, 32, 64)
_LONGEST: Final = 40
"""Letters to which a column is widened; what is longer is broken in its cell."""
_NEVER: Final = datetime(1980, 1, 1, tzinfo=UTC)
"""The date that the file tells: the same bytes every day."""


def write_xlsx(
    title: str, heads: Sequence[str], rows: Sequence[Sequence[Cell]], total: str, measure: Fraction | None
) -> bytes:
    """The rows below their heads, and a last row, called `total`, that adds up the columns of whole numbers.

    Units:  fractions are lengths; with the ruler's `measure` in inches they are shown as mixed fractions of it, without
            one as decimals to a tenth of a millimetre of centimetres.
    Errors: Unprintable for words that cannot be written; ValueError where a row is shorter than the heads.
    """
    written = BytesIO()
    book = xlsxwriter.Workbook(written, {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False})
    book.set_properties({"title": check_text(title), "author": "blockdsl", "created": _NEVER})
    sheet = book.add_worksheet()
    bold = book.add_format({"bold": True, "bottom": 1, "text_wrap": True, "valign": "top"})
    plain = book.add_format({"text_wrap": True, "valign": "top"})
    length = book.add_format({"num_format": length_format(measure), "valign": "top"})
    sums = book.add_format({"bold": True, "top": 1})
    for column, head in enumerate(heads):
        sheet.write_string(0, column, check_text(head), bold)
    for place, row in enumerate(rows, start=1):
        for column, cell in enumerate(_whole(row, heads)):
            if isinstance(cell, str):
                sheet.write_string(place, column, check_text(cell), plain)
            else:
                sheet.write_number(place, column, to_float(cell), plain if isinstance(cell, int) else length)
    _add_up(sheet, heads, rows, check_text(total), sums)
    for column, head in enumerate(heads):
        longest = max(len(str(row[column])) for row in [heads, *rows])
        sheet.set_column(column, column, min(_LONGEST, max(len(head), longest) + 2))
    sheet.freeze_panes(1, 0)
    sheet.repeat_rows(0)
    sheet.set_landscape()
    sheet.fit_to_pages(1, 0)
    book.close()
    return written.getvalue()


def _whole(row: Sequence[Cell], heads: Sequence[str]) -> Sequence[Cell]:
    if len(row) != len(heads):
        message = f"a row of {len(row)} cells in a table of {len(heads)} columns"
        raise ValueError(message)
    return row


def _add_up(
    sheet: xlsxwriter.worksheet.Worksheet,
    heads: Sequence[str],
    rows: Sequence[Sequence[Cell]],
    total: str,
    style: xlsxwriter.format.Format,
) -> None:
    last = len(rows)
    sheet.write_string(last + 1, 0, total, style)
    for column in range(1, len(heads)):
        cells = [row[column] for row in rows]
        counts = [cell for cell in cells if isinstance(cell, int)]
        if cells and len(counts) == len(cells):
            letter = xlsxwriter.utility.xl_col_to_name(column)
            sheet.write_formula(last + 1, column, f"=SUM({letter}2:{letter}{last + 1})", style, sum(counts))
        else:
            sheet.write_blank(last + 1, column, None, style)


def length_format(measure: Fraction | None) -> str:
    """How a spreadsheet shows a length: `# ?/8` for a ruler that reads eighths, `0.0#` for centimetres.

    Source: ECMA-376, part 1, 18.8.31 (number formats): a number behind the stroke is the denominator (from
            memory).
    """
    if measure is None:
        return "0.0#"
    fineness = next((each for each in _FINENESS if (measure * each).denominator == 1), _FINENESS[-1])
    return f"# {'?' * len(str(fineness))}/{fineness}"
