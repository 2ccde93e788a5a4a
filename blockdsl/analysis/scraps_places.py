"""Which blocks of a quilt lie side by side, and which touch at a corner alone.

Across a sash or a post counts as well: there the eye still compares. Across a wider plain strip or a plain square it
does not.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence

from blockdsl.analysis.scraps import Neighbours, Pair
from blockdsl.geometry import Exact, Polygon, floor_to, sign, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import step
from blockdsl.model.quilt import PieceRole, PlacedBlock, QuiltDesign

_Box = tuple[Exact, Exact, Exact, Exact]
HALF_ROOT = square_root(Fraction(1, 2))
SASHES: tuple[PieceRole, ...] = ("sash", "sash strip")


def blocks_with(quilt: QuiltDesign, fabric: str) -> tuple[int, ...]:
    """The blocks and half blocks that show the fabric, in each one's colour plan, by their places."""
    shown: dict[tuple[int, str], bool] = {}

    def shows(block: PlacedBlock) -> bool:
        key = (block.kind, block.colourway)
        if key not in shown:
            design = quilt.kinds[block.kind].design
            plans = (dict(plan.replaces) for plan in design.colourways if plan.name == block.colourway)
            replaces = next(plans, {})
            shown[key] = any(replaces.get(each.name, each.name) == fabric for each in design.fabrics)
        return shown[key] and quilt.kinds[block.kind].role != "border unit"

    return tuple(index for index, block in enumerate(quilt.blocks) if shows(block))


def block_neighbours(quilt: QuiltDesign, blocks: Sequence[int]) -> Neighbours:
    """Pairs of the given blocks, by their places in `blocks`: side by side along any length, or at a corner alone.

    Exact:  boxes are widened by half the widest sash on every side, so that those across a sash touch.
    """
    sash = _sash(quilt)
    upright: list[tuple[int, _Box]] = []
    on_point: list[tuple[int, _Box]] = []
    for place, index in enumerate(blocks):
        block = quilt.blocks[index]
        (on_point if block.on_point else upright).append((place, _box(quilt, block, sash / 2)))
    beside: list[Pair] = []
    corner: list[Pair] = []
    for group in (upright, on_point):
        for one, other, alone in _touching(group):
            (corner if alone else beside).append((min(one, other), max(one, other)))
    return Neighbours(len(blocks), tuple(sorted(beside)), tuple(sorted(corner)))


def _sash(quilt: QuiltDesign) -> Exact:
    """The breadth of the sashes, nought where there are none."""
    first = {cloth.role: cloth.outline for cloth in reversed(quilt.cloth)}
    return max((_breadth(first[role]) for role in SASHES if role in first), default=Fraction(0))


def _breadth(outline: Polygon) -> Exact:
    """The shorter side of a rectangle, at any angle to the quilt."""
    sides = (step(outline[0], outline[1]), step(outline[1], outline[2]))
    return min(square_root(side.x * side.x + side.y * side.y) for side in sides)


def _box(quilt: QuiltDesign, block: PlacedBlock, more: Exact) -> _Box:
    """Left, top, right, bottom in the block's own directions, widened."""
    design = quilt.kinds[block.kind].design
    across, down = block.symmetry.turned_extent(design.width, design.height)
    x, y = ((block.x + block.y) * HALF_ROOT, (block.y - block.x) * HALF_ROOT) if block.on_point else (block.x, block.y)
    return x - more, y - more, x + across + more, y + down + more


def _touching(group: Sequence[tuple[int, _Box]]) -> Iterator[tuple[int, int, bool]]:
    """Pairs of boxes that touch; the last of the three says whether at a corner alone."""
    if not group:
        return
    widest = max(box[2] - box[0] for _, box in group)
    highest = max(box[3] - box[1] for _, box in group)
    left, top = group[0][1][:2]
    cells: dict[tuple[int, int], list[tuple[int, _Box]]] = defaultdict(list)
    for place, box in group:
        column, row = _whole((box[0] - left) / widest), _whole((box[1] - top) / highest)
        for other, known in _near(cells, column, row):
            across = min(box[2], known[2]) - max(box[0], known[0])
            down = min(box[3], known[3]) - max(box[1], known[1])
            if sign(across) >= 0 and sign(down) >= 0:
                yield other, place, not across and not down
        cells[column, row].append((place, box))


def _near(cells: dict[tuple[int, int], list[tuple[int, _Box]]], column: int, row: int) -> Iterable[tuple[int, _Box]]:
    for down in (-1, 0, 1):
        for across in (-1, 0, 1):
            yield from cells.get((column + across, row + down), ())


def _whole(x: Exact) -> int:
    return int(floor_to(x, Fraction(1)))
