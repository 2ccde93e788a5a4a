"""The tables of a comparison in words: a line for each measure, a column for each set of overrides."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import pi
from typing import Final, TypeVar

from blockdsl.cli.saying import many
from blockdsl.cutting.buying import Buy
from blockdsl.facts.blockfacts import RulerUnit
from blockdsl.facts.compare_blocks import BlockRow, BlockTable
from blockdsl.facts.compare_quilts import QuiltRow, QuiltTable
from blockdsl.geometry import Exact, to_float
from blockdsl.geometry.arc import CurvedArea
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import write_exact
from blockdsl.wording import messages
from blockdsl.wording.lengths import plain_length, plain_measure, plain_size

_Row = TypeVar("_Row")
_Lines = list[tuple[str, ...]]
_NONE: Final = "-"
_WORDS: Final = messages()
"""Commands speak American English."""
_RULER_INCH: Final = 64
"""Square inches are given in parts of these at the smallest: squares of eighths are sixty-fourths."""


def quilt_lines(table: QuiltTable) -> _Lines:
    """Each measure of the quilts: its name, then what it is for each of them."""
    lines = [
        _line("finished", table.rows, lambda row: f"{plain_size(row.finished, row.unit, _WORDS)}"),
        _line("blocks", table.rows, _blocks),
        _line("pieces to cut", table.rows, lambda row: f"{row.pieces:,}"),
        _line("strips across", table.rows, lambda row: f"{row.strips:,}"),
    ]
    for place, label in enumerate(table.labels):
        lines.append(_line(label, table.rows, _cloth_of(place)))
    if any(row.fat_quarters for row in table.rows):
        lines.append(
            _line("fat quarters", table.rows, lambda row: f"{row.fat_quarters:,}" if row.fat_quarters else _NONE)
        )
    lines += [
        _line("all of these", table.rows, lambda row: _bought(_sum(row))),
        _line("backing", table.rows, _backing),
        _line("binding", table.rows, _binding),
        _line("wadding", table.rows, _wadding),
    ]
    return lines


def block_lines(table: BlockTable) -> _Lines:
    """Each measure of the block: its name, then what it is for each of its rows."""
    lines = [
        _line("finished", table.rows, lambda row: f"{plain_size(row.finished, row.unit, _WORDS)}"),
        _line("unfinished", table.rows, lambda row: f"{plain_size(row.unfinished, row.unit, _WORDS)}"),
        _line("smallest patch", table.rows, _smallest),
        _line("patches", table.rows, lambda row: f"{row.patches:,}"),
        _line("pieces to cut", table.rows, lambda row: f"{row.pieces:,}"),
        _line("on the ruler", table.rows, _on_ruler),
        _line("friendly", table.rows, lambda row: "yes" if row.friendly else "no"),
        _line("friendly sizes near it", table.rows, _near),
    ]
    for place, label in enumerate(table.labels):
        lines.append(_line(f"{label}, seen", table.rows, _area_of(place)))
    return lines


def _line(name: str, rows: Sequence[_Row], say: Callable[[_Row], str]) -> tuple[str, ...]:
    return (name, *map(say, rows))


# --- quilts ------------------------------------------------------------------------------------


def _blocks(row: QuiltRow) -> str:
    told = [f"{row.blocks:,}"]
    told += [many(row.half_blocks, "half block")] if row.half_blocks else []
    told += [many(row.plain_squares, "plain square")] if row.plain_squares else []
    return " and ".join(told)


def _cloth_of(place: int) -> Callable[[QuiltRow], str]:
    return lambda row: _bought(row.cloth[place], row.unit)


def _bought(buy: Buy | None, unit: RulerUnit | None = None) -> str:
    """`3/4 yd (needs 22 1/2 in)`; a sum is given without its need when no unit is given."""
    if buy is None or not buy.length:
        return _NONE
    return f"{buy.words} (needs {plain_length(buy.need, unit or buy.unit, _WORDS)} {buy.unit})"


def _sum(row: QuiltRow) -> Buy | None:
    """All lengths of cloth together, backing apart."""
    bought = [buy for buy in row.cloth if buy is not None]
    length = sum((buy.length for buy in bought), Fraction(0))
    allowed = sum((buy.allowed for buy in bought), Fraction(0))
    return Buy(row.cloth_length, allowed, length, row.unit) if bought else None


def _backing(row: QuiltRow) -> str:
    if row.backing is None:
        return _NONE
    return f"{_bought(row.backing)}, {many(row.backing_widths, 'width')}"


def _binding(row: QuiltRow) -> str:
    """Cut from the fabrics above."""
    if row.binding is None:
        return _NONE
    if row.binding_square is not None:
        return f"bias, from a square of {plain_measure(row.binding_square, row.unit, _WORDS)}"
    return many(row.binding_strips, "strip")


def _wadding(row: QuiltRow) -> str:
    return _NONE if row.wadding is None else f"{plain_size(row.wadding, row.unit, _WORDS)}"


# --- blocks ------------------------------------------------------------------------------------


def _smallest(row: BlockRow) -> str:
    label, extent = row.smallest
    return f"{label}, {plain_size(extent, row.unit, _WORDS)}"


def _on_ruler(row: BlockRow) -> str:
    return "yes" if row.off is None else f"no: {plain_measure(row.off, row.unit, _WORDS)}"


def _near(row: BlockRow) -> str:
    sizes = ", ".join(plain_length(size, row.unit, _WORDS) for size in row.near)
    return f"{sizes} {row.unit}" if sizes else _NONE


def _area_of(place: int) -> Callable[[BlockRow], str]:
    return lambda row: _area(row.areas[place], row.unit)


def _area(area: Exact | CurvedArea | None, unit: RulerUnit) -> str:
    """`18 sq in`; what has roots or arcs in it, or is no fraction of a ruler, to the tenth: `about 12.6 sq in`."""
    if area is None:
        return _NONE
    if isinstance(area, CurvedArea):
        return f"about {to_float(area.straight) + to_float(area.round) * pi:.1f} sq {unit}"
    if isinstance(area, Fraction) and (area * (_RULER_INCH if unit == "in" else 100)).denominator == 1:
        return f"{plain_length(area, unit, _WORDS) if unit == 'cm' else write_exact(area)} sq {unit}"
    return f"about {to_float(area):.1f} sq {unit}"
