"""A comparison as JSON: a table for each quilt and each block, its columns in the order asked for."""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence

from msgspec import Struct

from blockdsl.analysis.override import WhatIf
from blockdsl.cutting.buying import Buy
from blockdsl.facts.compare_blocks import BlockRow, BlockTable
from blockdsl.facts.compare_quilts import QuiltRow, QuiltTable
from blockdsl.facts.document import SCHEMA
from blockdsl.geometry import Exact
from blockdsl.geometry.arc import CurvedArea
from blockdsl.model.lengths import write_length

Say = Callable[[Exact], str]


class Compared(Struct, frozen=True):
    """One quilt or block: its name, and with which overrides each of its rows is worked out."""

    name: str
    what_ifs: tuple[WhatIf, ...]
    table: QuiltTable | BlockTable


def compare_json(file: str, compared: Sequence[Compared]) -> str:
    """One document; lengths are strings as in the facts, in each column's own unit."""
    document = {
        "schema": SCHEMA,
        "file": file,
        "quilts": [_quilt(each, each.table) for each in compared if isinstance(each.table, QuiltTable)],
        "blocks": [_block(each, each.table) for each in compared if isinstance(each.table, BlockTable)],
    }
    return json.dumps(document, ensure_ascii=False, indent=1)


def _overrides(what_if: WhatIf) -> dict[str, object]:
    """What is not as the file says; null for what is."""
    return {
        "size": what_if.size_words or None,
        "set": what_if.set_words or None,
        "colourway": what_if.colourway,
    }


def _quilt(compared: Compared, table: QuiltTable) -> dict[str, object]:
    pairs = zip(compared.what_ifs, table.rows, strict=True)
    return {"name": compared.name, "columns": [_quilt_column(each, row, table) for each, row in pairs]}


def _quilt_column(what_if: WhatIf, row: QuiltRow, table: QuiltTable) -> dict[str, object]:
    say = _in(row.unit)
    return {
        "what_if": _overrides(what_if),
        "unit": row.unit,
        "finished": [say(side) for side in row.finished],
        "blocks": row.blocks,
        "half_blocks": row.half_blocks,
        "plain_squares": row.plain_squares,
        "pieces": row.pieces,
        "strips": row.strips,
        "fabrics": {name: _buy(buy, say) for name, buy in zip(table.fabrics, row.cloth, strict=True)},
        "fat_quarters": row.fat_quarters,
        "backing": (_buy(row.backing, say) or {}) | {"widths": row.backing_widths} if row.backing else None,
        "binding": _binding(row, say),
        "wadding": [say(side) for side in row.wadding] if row.wadding else None,
    }


def _binding(row: QuiltRow, say: Say) -> dict[str, object] | None:
    if row.binding is None:
        return None
    square = say(row.binding_square) if row.binding_square is not None else None
    return {"strips": row.binding_strips, "square": square, "need": say(row.binding.need)}


def _buy(buy: Buy | None, say: Say) -> dict[str, object] | None:
    return {"need": say(buy.need), "allowed": say(buy.allowed), "buy": buy.words} if buy is not None else None


def _block(compared: Compared, table: BlockTable) -> dict[str, object]:
    pairs = zip(compared.what_ifs, table.rows, strict=True)
    return {"name": compared.name, "columns": [_block_column(each, row, table) for each, row in pairs]}


def _block_column(what_if: WhatIf, row: BlockRow, table: BlockTable) -> dict[str, object]:
    say = _in(row.unit)
    label, extent = row.smallest
    return {
        "what_if": _overrides(what_if),
        "unit": row.unit,
        "finished": [say(side) for side in row.finished],
        "unfinished": [say(side) for side in row.unfinished],
        "smallest": {"label": label, "finished": [say(side) for side in extent]},
        "patches": row.patches,
        "pieces": row.pieces,
        "off_ruler": say(row.off) if row.off is not None else None,
        "friendly": row.friendly,
        "friendly_near": [say(size) for size in row.near],
        "area_by_fabric": {
            name: str(area) if isinstance(area, CurvedArea) else say(area)
            for name, area in zip(table.fabrics, row.areas, strict=True)
            if area is not None
        },
    }


def _in(unit: str) -> Say:
    return lambda length: write_length(length, "in" if unit == "in" else "cm")
