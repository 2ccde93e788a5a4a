"""`set on point of 25 "Harbour Light"`: how many across and down make so many blocks, or come near it.

Of all that fit the quilt is taken that is nearest to a square and no wider than high.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from msgspec import Struct

from blockdsl.analysis.settings import whole_number
from blockdsl.diagnostics import Problems, change_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign
from blockdsl.syntax import ast

MOST_COUNT: Final = 10_000
_LONGEST: Final = 3
"""No quilt is more than three times as high as wide."""
_MOST_OFFERED: Final = 4
_HOW: Final = {
    "straight": "set straight",
    "on point": "set on point",
    "dropped columns": "in dropped columns",
    "strippy": "in a strippy setting",
}


class _Places(Struct, frozen=True, order=True):
    """So many across and down; `slack` is how far from a square the quilt comes out."""

    slack: Fraction
    across: int
    down: int


def with_places(line: ast.SetCount, main: BlockDesign, *, alternates: bool, problems: Problems) -> ast.SetGrid | None:
    """The same line with its blocks across and down; None where no quilt has so many, which is reported.

    Counted is the block that it names, whole; with `alternates` another stands on every second place.
    """
    wanted = whole_number(line.count, "number of blocks", problems, most=MOST_COUNT)
    if wanted is None:
        return None
    ratio = Fraction(main.width) / Fraction(main.height)
    found = _ways(wanted, line.pattern, ratio, alternates=alternates)
    if found:
        best = min(found)
        across, down = (ast.Number(line.count.span, Fraction(count)) for count in (best.across, best.down))
        return ast.SetGrid(line.span, line.pattern, across, down, line.block)
    offered = _near(wanted, line.pattern, ratio, alternates=alternates)
    told = ", ".join(f"{count} ({best.across} × {best.down})" for count, best in offered)
    nearest = min(offered, key=lambda each: (abs(each[0] - wanted), each[0]))[0]
    fixes = (change_to(line.count.span, str(nearest)),)
    problems.report(
        "count-cannot-be",
        line.count.span,
        count=wanted,
        how=_HOW[line.pattern],
        help=f"near it there are {told}",
        fixes=fixes,
    )
    return None


def _near(wanted: int, pattern: ast.Pattern, ratio: Fraction, *, alternates: bool) -> list[tuple[int, _Places]]:
    """The numbers on both sides that can be, each with its best way."""
    found: list[tuple[int, _Places]] = []
    for step in range(1, wanted + _LONGEST * _MOST_OFFERED**2):
        for count in (wanted - step, wanted + step):
            ways = _ways(count, pattern, ratio, alternates=alternates) if count > 0 else []
            found += [(count, min(ways))] if ways else []
        if len(found) >= _MOST_OFFERED:
            break
    return sorted(found)


def _ways(wanted: int, pattern: ast.Pattern, ratio: Fraction, *, alternates: bool) -> list[_Places]:
    """All ways that make exactly so many, in the proportions of a quilt."""
    return [
        places
        for places in _upright(wanted, pattern, ratio, alternates=alternates)
        if blocks_in(pattern, places.across, places.down, alternates=alternates) == wanted
    ]


def _upright(wanted: int, pattern: ast.Pattern, ratio: Fraction, *, alternates: bool) -> Iterator[_Places]:
    """For each number across the numbers down that may make so many, the quilt no wider than high."""
    for across in range(1, 2 * wanted + 2):
        # The count grows with every block down, so the right number is found by halving.
        low, high = 1, 2 * wanted + 2
        while low < high:
            down = (low + high) // 2
            if blocks_in(pattern, across, down, alternates=alternates) < wanted:
                low = down + 1
            else:
                high = down
        tall = low / (across * ratio)
        if tall < 1:
            break
        if tall <= _LONGEST:
            yield _Places(tall - 1, across, low)


def blocks_in(pattern: ast.Pattern, across: int, down: int, *, alternates: bool) -> int:
    """How many whole blocks of the first kind there are, so many across and down.

    On point the rows between have one fewer each way; in dropped columns every second one ends in halves.
    """
    if pattern == "on point":
        return across * down + (0 if alternates else (across - 1) * (down - 1))
    if pattern == "dropped columns":
        kept = (
            (row + column) % 2 == 0 or not alternates for column in range(across) for row in range(column % 2, down)
        )
        return sum(kept)
    return (across * down + 1) // 2 if alternates else across * down
