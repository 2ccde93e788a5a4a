"""Several quilts beside each other, as one table: what becomes of it if the blocks are larger, on point, recoloured."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from blockdsl.cutting.buying import Buy
from blockdsl.facts.blockfacts import Extent, RulerUnit
from blockdsl.facts.quiltfacts import QuiltFacts


@dataclass(frozen=True, slots=True)
class QuiltRow:
    """One quilt of the table, in its own unit.

    `finished`: size with borders; `blocks`: whole blocks in all; `pieces`: pieces of cloth cut for the top. `cloth` is,
    for each fabric of the table in its order, what is bought of it; None where the quilt has none of it, or where its
    cloth cannot be planned. `cloth_length` adds up what is planned for them all, backing apart.
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


@dataclass(frozen=True, slots=True)
class QuiltTable:
    """The table: `fabrics` name the columns of cloth, in the order in which the quilts first have them."""

    fabrics: tuple[str, ...]
    rows: tuple[QuiltRow, ...]


def compare_quilts(quilts: Sequence[QuiltFacts]) -> QuiltTable:
    """A row for each quilt, in their order."""
    fabrics = tuple(dict.fromkeys(cloth.fabric for quilt in quilts for cloth in quilt.fabrics))
    return QuiltTable(fabrics, tuple(_row(quilt, fabrics) for quilt in quilts))


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
    )
