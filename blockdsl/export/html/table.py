"""Tables as markup: heads that say what they are heads of, boxes to tick, fractions one below the other."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from blockdsl.document.content import DataCell, DataColumn, Picture, RichText, RowGroup, SizeCell, Table, TickCell
from blockdsl.export.html.elements import element, plain_fractions, words
from blockdsl.export.html.picture import picture_markup
from blockdsl.export.html.sizes import places_of

_UNSEEN: Final = ("tick", "swatch")
_FEW: Final = 3  # columns that fit every screen
Runs = Callable[[RichText], str]

_SIDE: Final = re.compile(r"([^\d]* )?(\d+)?(?: ?(\d+/\d+)|([.,]\d+))?")


def table_markup(table: Table, runs: Runs) -> str:
    """The table, in a frame that can be moved sideways on a narrow screen, by keys too, where it is a wide one."""
    names_rows = next(place for place, column in enumerate(table.columns) if column.kind not in ("tick", "swatch"))
    head = element("tr", *map(_head, table.columns))
    bodies = [_body(group, table.columns, names_rows, runs) for group in table.groups]
    sizes = sum(column.kind == "size" for column in table.columns)
    kind = "ticked sizes" if sizes > 1 else "ticked"
    ticked = any(column.kind == "tick" for column in table.columns)
    in_words = sum(column.kind != "size" for column in table.columns) >= _FEW
    layout = kind if ticked else ("stacked" if in_words else None)
    caption = element("caption", words(table.caption))
    markup = element("table", caption, element("thead", head), *bodies, class_=layout)
    if layout or len(table.columns) <= _FEW:
        return markup
    return element("section", markup, class_="frame", aria_label=plain_fractions(table.caption), tabindex="0")


def _head(column: DataColumn) -> str:
    named = element("span", words(column.head), class_="unseen") if column.kind in _UNSEEN else words(column.head)
    return element("th", named, scope="col", class_=column.kind, data_at=_at(column))


def _at(column: DataColumn) -> str | None:
    return places_of((column.at,)) if column.at else None


def _body(group: RowGroup, columns: tuple[DataColumn, ...], names_rows: int, runs: Runs) -> str:
    rows = [
        _row(row, columns, names_rows, runs, places_of((place,)) if group.by_size else None)
        for place, row in enumerate(group.rows, start=1)
    ]
    if not group.words:
        return element("tbody", *rows)
    swatch = picture_markup(group.swatch) if group.swatch is not None else ""
    aside = element("span", words(group.aside), class_="aside") if group.aside else ""
    named = element("bdi", runs(group.words))
    heading = element("th", swatch, " ", named, " ", aside, scope="rowgroup", colspan=str(len(columns)))
    return element("tbody", element("tr", heading, class_="group"), *rows)


def _row(
    row: tuple[DataCell, ...], columns: tuple[DataColumn, ...], names_rows: int, runs: Runs, at: str | None
) -> str:
    cells = []
    for place, (cell, column) in enumerate(zip(row, columns, strict=True)):
        name, scope = ("th", "row") if place == names_rows else ("td", None)
        named = place != names_rows and column.kind not in _UNSEEN  # where a narrow screen breaks the row
        head = plain_fractions(column.head) if named and cell else None
        told = {"scope": scope, "class_": column.kind, "data_of": head, "data_at": _at(column)}
        cells.append(element(name, _cell(cell, runs), **told))
    return element("tr", *cells, data_at=at)


def _cell(cell: DataCell, runs: Runs) -> str:
    match cell:
        case TickCell():
            return element("label", element("input", type="checkbox", aria_label=cell.what), class_="box")
        case Picture():
            return picture_markup(cell)
        case SizeCell():
            return " × ".join(map(_side, cell.sides))
        case _:
            return runs(cell)


def _side(side: str) -> str:
    """A length whose whole part ends, and whose fraction begins, where those of the other rows do."""
    found = _SIDE.fullmatch(side)
    if found is None:
        return words(side)
    about, whole, fraction, decimals = found.groups()
    space = "\N{NO-BREAK SPACE}" if whole and fraction else ""
    part = element("span", fraction, class_="fraction") if fraction else decimals or ""
    return "".join(
        (
            words(about or ""),
            element("span", whole or "", class_="whole"),
            element("span", f"{space}{part}", class_="part"),
        )
    )
