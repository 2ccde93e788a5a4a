"""Whether a block looks the same turned or mirrored, and the one cell that keeps it from doing so.

A cell that was turned the wrong way, or has the wrong fabric, is the commonest slip in drafting: all others have their
partner, and it has none.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec import Struct

from blockdsl.diagnostics import Problems, Span
from blockdsl.geometry import Polygon
from blockdsl.geometry.symmetry import HALF_TURN, MIRROR, QUARTER_CLOCKWISE, Symmetry
from blockdsl.model import BlockDesign, Patch
from blockdsl.syntax import ast

_WAYS: Final[dict[str, Symmetry]] = {
    "by quarter turn": QUARTER_CLOCKWISE,
    "by half turn": HALF_TURN,
    "left to right": MIRROR,
    "top to bottom": MIRROR.then(HALF_TURN),
}
_SAID: Final = {
    "by quarter turn": "after a quarter turn",
    "by half turn": "after a half turn",
    "left to right": "with left and right exchanged",
    "top to bottom": "with top and bottom exchanged",
}
_OF_ALL: Final = {True: ("by quarter turn", "left to right"), False: ("left to right", "top to bottom")}
"""What makes every symmetry of a square block, or of an oblong one."""

_LEAST_CELLS: Final = 9
"""In a block of fewer cells two that differ are seldom a slip."""
_A_PAIR: Final = 2


class _Cell(Struct, frozen=True):
    """A cell of the block, and the looks of its patches as they lie."""

    span: Span
    looks: frozenset[tuple[object, ...]]


def report_symmetry(design: BlockDesign, lines: Sequence[ast.BlockLine], problems: Problems) -> None:
    """Report what the designer expects and does not hold; without a word of hers a single cell out of place."""
    expected = [line for line in lines if isinstance(line, ast.ExpectSymmetric)]
    cells = _cells(design)
    for line in expected:
        _check(line, design, cells, problems)
    if not expected:
        _warn_of_one_cell(design, cells, problems)


def _check(line: ast.ExpectSymmetric, design: BlockDesign, cells: Sequence[_Cell], problems: Problems) -> None:
    square = design.width == design.height
    for way in (line.way,) if line.way else _OF_ALL[square] if line.asked else ():
        if way == "by quarter turn" and not square:
            problems.report("expect-symmetric", line.span, how=_SAID[way], help="only a square block can be")
            return
        alone = _without_partner(cells, design, _WAYS[way])
        if alone:
            shown = tuple((cell.span, "this has no partner") for cell in alone[:2])
            problems.report("expect-symmetric", line.span, how=_SAID[way], related=shown, help=_advice(len(alone)))
            return


def _advice(cells: int) -> str:
    return f"{cells} cells have no partner" if cells > 1 else "turn it, or change its fabric"


def _warn_of_one_cell(design: BlockDesign, cells: Sequence[_Cell], problems: Problems) -> None:
    """Warn where one cell alone keeps the block from a symmetry that all others have.

    Such a cell and the one that should be its partner are two. A single one lies in the middle and is its own partner:
    an hourglass there keeps many a block from being the same after a quarter turn.
    """
    if len(cells) < _LEAST_CELLS:
        return
    for way in _WAYS if design.width == design.height else tuple(_WAYS)[1:]:
        alone = _without_partner(cells, design, _WAYS[way])
        if len(alone) == _A_PAIR:
            # After a quarter turn the other way the slip has no partner either, but its neighbour has.
            back = _without_partner(cells, design, _WAYS[way].inverse)
            slips = [cell for cell in alone if cell in back]
            related = tuple((cell.span, "or this one") for cell in slips[1:])
            advice = "turn it, or change its fabric; if it is meant so, write `expect no symmetry`"
            problems.report("symmetry-broken", slips[0].span, how=_SAID[way], related=related, help=advice)
            return


def _without_partner(cells: Sequence[_Cell], design: BlockDesign, way: Symmetry) -> list[_Cell]:
    """The cells that do not lie in the block once it is turned."""
    turned = {_look(patch.turned(way, design.width, design.height)) for patch in design.patches}
    return [cell for cell in cells if not cell.looks <= turned]


def _cells(design: BlockDesign) -> tuple[_Cell, ...]:
    """Every cell: a unit with its patches, or a patch by itself."""
    looks = [_look(patch) for patch in design.patches]
    inside: set[int] = set()
    found = []
    for unit in design.units:
        if unit.span is not None:
            found.append(_Cell(unit.span, frozenset(looks[unit.first : unit.stop])))
            inside.update(range(unit.first, unit.stop))
    alone = (number for number in range(len(looks)) if number not in inside)
    spans = ((design.patches[number].span, looks[number]) for number in alone)
    return (*found, *(_Cell(span, frozenset((look,))) for span, look in spans if span is not None))


def _look(patch: Patch) -> tuple[object, ...]:
    """What is seen of a patch, the same for outlines that begin at another corner."""
    return (patch.fabric, _from_its_first_corner(patch.corners), patch.curved is not None)


def _from_its_first_corner(outline: Polygon) -> Polygon:
    start = min(range(len(outline)), key=lambda number: tuple(outline[number]))
    return (*outline[start:], *outline[:start])
