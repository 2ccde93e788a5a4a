"""One block at several sizes and in several colourways, as one table."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec import Struct

from blockdsl.facts.blockfacts import BlockFacts, Extent, RulerUnit
from blockdsl.facts.drafting import SizeFacts, at_width, draft, size_table
from blockdsl.geometry import Exact
from blockdsl.geometry.arc import CurvedArea
from blockdsl.geometry.fraction import Fraction

_NEAR: Final = 2


class BlockRow(Struct, frozen=True):
    """The block in one way. `pieces` of cloth are cut for its `patches`.

    `smallest` is the letter and finished extent of the patch with the shortest side; `off` the first measure between
    the ruler's marks, None when there is none. `areas` are, for each fabric of the table in its order, what is seen of
    it in the finished block, None where the block has none. `near` are the friendly widths next to its own, two to
    either side, itself left out.
    """

    unit: RulerUnit
    finished: Extent
    unfinished: Extent
    patches: int
    pieces: int
    smallest: tuple[str, Extent]
    off: Exact | None
    friendly: bool
    near: tuple[Exact, ...]
    areas: tuple[Exact | CurvedArea | None, ...]


class BlockTable(Struct, frozen=True):
    """The table: `fabrics` and, in the same order, their names in print."""

    fabrics: tuple[str, ...]
    labels: tuple[str, ...]
    rows: tuple[BlockRow, ...]


def compare_blocks(blocks: Sequence[BlockFacts]) -> BlockTable:
    """A row for each block, in their order."""
    labels = {fabric.name: fabric.label or fabric.name for block in blocks for fabric in block.fabrics}
    return BlockTable(tuple(labels), tuple(labels.values()), tuple(_row(block, tuple(labels)) for block in blocks))


def _row(block: BlockFacts, fabrics: Sequence[str]) -> BlockRow:
    own = at_width(block, block.finished[0], block.unit, draft(block))
    areas = dict(block.area_by_fabric)
    return BlockRow(
        unit=block.unit,
        finished=block.finished,
        unfinished=block.unfinished,
        patches=len(block.placed),
        pieces=sum(cut.count for cut in block.cutting),
        smallest=own.smallest,
        off=own.off,
        friendly=own.friendly,
        near=_near(size_table(block, block.unit), Fraction(block.finished[0])),  # type: ignore[arg-type]  # no roots
        areas=tuple(areas.get(fabric) for fabric in fabrics),
    )


def _near(sizes: Sequence[SizeFacts], width: Fraction) -> tuple[Exact, ...]:
    friendly = [size.finished[0] for size in sizes if size.friendly]
    below = [size for size in friendly if size < width]
    above = [size for size in friendly if size > width]
    return (*below[-_NEAR:], *above[:_NEAR])
