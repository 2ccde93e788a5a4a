"""Appliqué: outlines in grid coordinates that are sewn onto the pieced ground."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final, Protocol

from blockdsl.analysis.scope import Scope
from blockdsl.diagnostics import Fix, Span
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.path import PathFault, outline_of_path, reaches_beyond
from blockdsl.model import Applique
from blockdsl.syntax import ast

MOST_PIECES: Final = 1000
_MOST_TURN_UNDER: Final = {"in": Fraction(1), "cm": Fraction(5, 2), "mm": Fraction(25)}


class Report(Protocol):
    """Reports a problem, once however often a unit is placed."""

    def __call__(
        self,
        code: str,
        span: Span,
        *,
        help: str | None = None,  # noqa: A002
        fixes: tuple[Fix, ...] = (),
        **values: str,
    ) -> None:
        """See `Problems.report`."""


def lay_appliques(
    lines: Sequence[ast.BlockLine],
    grid: tuple[Fraction, Fraction],
    size: tuple[Fraction, Fraction],
    names: Scope,
    report: Report,
) -> tuple[Applique, ...] | None:
    """The pieces of all `applique` lines, in their order, in a box of that size; None when one is at fault.

    Their fabrics have been looked up.
    """
    drawn = [line for line in lines if isinstance(line, ast.Applique)]
    found = [_piece(line, grid, size, names, report) for line in drawn]
    pieces = tuple(piece for piece in found if piece is not None)
    return pieces if len(pieces) == len(drawn) else None


def _piece(
    line: ast.Applique,
    grid: tuple[Fraction, Fraction],
    size: tuple[Fraction, Fraction],
    names: Scope,
    report: Report,
) -> Applique | None:
    under = line.turn_under
    if under is not None and not 0 < under.value <= _MOST_TURN_UNDER[under.unit]:
        advice = "it is up to 1 in or 2.5 cm; for none write `raw edge`"
        report("turn-under-odd", under.span, help=advice, length=under.span.text)
        return None
    try:
        outline = outline_of_path(line.path.text, grid, size)
    except PathFault as fault:
        advice = 'draw one closed outline in the squares of the grid, such as "M1 1 H3 V3 H1 Z"'
        report("applique-path", line.path.span, help=advice, why=str(fault))
        return None
    if reaches_beyond(outline, *size):
        advice = "keep it within the grid, from 0,0 at the top left"
        report("applique-outside", line.path.span, help=advice)
        return None
    if line.fabric.text not in names.fabrics:
        return None  # reported where the names of the lines are looked up
    if under is None:
        return Applique(line.fabric.text, outline, outline, raw_edge=line.raw_edge)
    length = under.value / 10 if under.unit == "mm" else under.value
    return Applique(line.fabric.text, outline, outline, (length, "in" if under.unit == "in" else "cm"))
