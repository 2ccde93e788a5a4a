"""Several quilts beside each other, as one table: what becomes of it if the blocks are larger, on point, recoloured."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from blockdsl.cutting.buying import Buy
from blockdsl.facts.blockfacts import Extent, RulerUnit
from blockdsl.facts.finishingfacts import FabricClothFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry.fraction import Fraction


class QuiltRow(Struct, frozen=True):
    """One quilt of the table, in its own unit.

    `finished`: size with borders; `blocks`: whole blocks in all, beside `half_blocks` and `plain_squares`; `pieces`:
    pieces of cloth cut for the top; `strips`: across the cloth, of all fabrics, binding with them and backing apart.
    `cloth` is, for each fabric of the table in its order, what is bought of it; None where the quilt has none of it, or
    where its cloth cannot be planned. `cloth_length` adds up what is planned for them all, backing apart;
    `fat_quarters` are those for blocks of scraps.
    """

    name: str
    unit: RulerUnit
    finished: Extent
    blocks: int
    pieces: int
    cloth: tuple[Buy | None, ...]
    cloth_length: Fraction
    backing: Buy | None
    backing_widths: int
    binding_strips: int
    binding_square: Fraction | None
    binding: Buy | None
    wadding: tuple[Fraction, Fraction] | None
    half_blocks: int = 0
    plain_squares: int = 0
    strips: int = 0
    fat_quarters: int = 0


class QuiltTable(Struct, frozen=True):
    """The table: `fabrics` name the columns of cloth, in the order in which the quilts first have them.

    `labels` are the fabrics' names in print, in the same order.
    """

    fabrics: tuple[str, ...]
    rows: tuple[QuiltRow, ...]
    labels: tuple[str, ...] = ()


def compare_quilts(quilts: Sequence[QuiltFacts]) -> QuiltTable:
    """A row for each quilt, in their order."""
    fabrics = tuple(dict.fromkeys(cloth.fabric for quilt in quilts for cloth in quilt.fabrics))
    labels = {fabric.name: fabric.label or fabric.name for quilt in quilts for fabric in quilt.fabrics_used}
    rows = tuple(_row(quilt, fabrics) for quilt in quilts)
    return QuiltTable(fabrics, rows, tuple(labels[fabric] for fabric in fabrics))


def _row(quilt: QuiltFacts, fabrics: Sequence[str]) -> QuiltRow:
    bought = {cloth.fabric: cloth.buy for cloth in quilt.fabrics}
    backing = quilt.backing.plan if quilt.backing else None
    binding = quilt.binding.plan if quilt.binding else None
    return QuiltRow(
        name=quilt.name,
        unit=quilt.unit,
        finished=quilt.finished,
        blocks=sum(count for _, count in quilt.blocks),
        pieces=sum(cut.count for cut in quilt.cutting),
        cloth=tuple(bought.get(fabric) for fabric in fabrics),
        cloth_length=sum((buy.need for buy in bought.values() if buy is not None), Fraction(0)),
        backing=backing.buy if backing else None,
        backing_widths=backing.widths if backing else 0,
        binding_strips=binding.strips if binding else 0,
        binding_square=binding.square if binding else None,
        binding=binding.buy if binding else None,
        wadding=quilt.wadding.size if quilt.wadding else None,
        half_blocks=sum(count for _, count in quilt.half_blocks),
        plain_squares=sum(piece.count for piece in quilt.pieces if piece.role == "plain square"),
        strips=sum(cloth.plan.strip_count for cloth in quilt.fabrics if cloth.plan is not None),
        fat_quarters=sum(_fat_quarters(cloth, quilt) for cloth in quilt.fabrics),
    )


def _fat_quarters(cloth: FabricClothFacts, quilt: QuiltFacts) -> int:
    """Those that are bought for the blocks of scraps of a fabric."""
    if not cloth.scraps or cloth.fat_quarters is None:
        return 0
    each = next((scraps.fat_quarters for scraps in quilt.scraps if scraps.role == cloth.fabric), None)
    return cloth.fat_quarters.mixed if each is None else sum(each)
