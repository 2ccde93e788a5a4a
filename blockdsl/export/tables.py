"""Tables of text as Markdown and as CSV."""

from __future__ import annotations

import codecs
import csv
import re
from collections.abc import Sequence
from io import StringIO
from typing import Final

_FORMULA: Final = re.compile(r"[=+\-@\t\r]")
_NUMBER: Final = re.compile(r"[+-]?\d[\d .,/]*")


def to_markdown(headers: Sequence[str], rows: Sequence[Sequence[str]]) -> str:
    """A pipe table with aligned columns, ending in a line break; pipes and line breaks inside a cell are escaped.

    Errors: ValueError where a row has not as many cells as there are headers.
    """
    table = [[_markdown_cell(cell) for cell in row] for row in _even(headers, rows)]
    widths = [max(3, *(len(row[column]) for row in table)) for column in range(len(headers))]
    head, *body = (
        "| " + " | ".join(cell.ljust(width) for cell, width in zip(row, widths, strict=True)) + " |" for row in table
    )
    rule = "|" + "|".join("-" * (width + 2) for width in widths) + "|"
    return "\n".join([head, rule, *body]) + "\n"


def to_csv(headers: Sequence[str], rows: Sequence[Sequence[str]]) -> str:
    r"""Comma-separated values with `\n` line ends.

    A cell that a spreadsheet would take for a formula gets an apostrophe before it; plain numbers such as -2 do not.

    Errors: ValueError where a row has not as many cells as there are headers.
    """
    written = StringIO()
    writer = csv.writer(written, lineterminator="\n")
    writer.writerows([_guarded(cell) for cell in row] for row in _even(headers, rows))
    return written.getvalue()


def markdown_file(headers: Sequence[str], rows: Sequence[Sequence[str]]) -> bytes:
    """The table as a Markdown file. Errors: as `to_markdown`."""
    return to_markdown(headers, rows).encode()


def csv_file(headers: Sequence[str], rows: Sequence[Sequence[str]]) -> bytes:
    """The table as a CSV file. It begins with a mark by which spreadsheets know UTF-8. Errors: as `to_csv`."""
    return codecs.BOM_UTF8 + to_csv(headers, rows).encode()


def _even(headers: Sequence[str], rows: Sequence[Sequence[str]]) -> list[Sequence[str]]:
    for row in rows:
        if len(row) != len(headers):
            message = f"a row of {len(row)} cells in a table of {len(headers)} columns"
            raise ValueError(message)
    return [headers, *rows]


def _markdown_cell(text: str) -> str:
    return "<br>".join(text.replace("\\", "\\\\").replace("|", "\\|").splitlines())


def _guarded(text: str) -> str:
    return "'" + text if _FORMULA.match(text) and not _NUMBER.fullmatch(text) else text
