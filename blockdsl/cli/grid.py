"""`blockdsl grid`: the squared paper that a block is drafted on, and the block drawn on it."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from blockdsl.cli.saying import in_columns, many, write_out
from blockdsl.cli.sizes import blocks_of, on_ruler, with_unit
from blockdsl.cli.writing import SQUARES, Writer
from blockdsl.export.naming import Taken
from blockdsl.facts.drafting import SizeFacts, at_width, draft
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.lengths import write_size
from blockdsl.pictures.drafting import format_squares

if TYPE_CHECKING:
    from blockdsl.facts import BlockFacts
    from blockdsl.model import RulerUnit


def run(arguments: Namespace) -> int:
    """The smallest square grid of each block; with `-o` the block drawn on it, as a picture."""
    blocks, sources, status = blocks_of(arguments)
    write_out("\n".join("\n".join(_grid_lines(block, arguments.size)) + "\n" for block in blocks))
    if arguments.output and blocks:
        _draw(blocks, Path(arguments.output), Writer(sources))
    return status


def _grid_lines(block: BlockFacts, asked: Sequence[tuple[Fraction, RulerUnit]]) -> Iterator[str]:
    """What it is drawn on, and the square's size at its own size and at those that were asked for."""
    drawing = draft(block)
    yield f"{block.name}: {format_squares(block, drawing)}"
    yield ""
    own = (Fraction(block.finished[0]), block.unit)  # type: ignore[arg-type]  # sizes of blocks are rational
    rows = [_cell_row(at_width(block, width, unit, drawing)) for width, unit in (own, *asked)]
    yield from in_columns([("finished", "unfinished", "square finished", "square unfinished", "on the ruler"), *rows])


def _cell_row(row: SizeFacts) -> tuple[str, ...]:
    finished, unfinished = write_size(*row.finished, row.unit), write_size(*row.unfinished, row.unit)
    if row.cell is None:
        return finished, unfinished, "uneven", "uneven", on_ruler(row)
    grown = row.cell + row.unfinished[0] - row.finished[0]
    return finished, unfinished, with_unit(row.cell, row.unit), with_unit(grown, row.unit), on_ruler(row)


def _draw(blocks: Sequence[BlockFacts], folder: Path, writer: Writer) -> None:
    """The block on its grid as a picture; two blocks of one name get two pictures."""
    from blockdsl.export.svg import write_svg
    from blockdsl.pictures.drafting import drafting_page
    from blockdsl.wording.messages import words_of

    taken = Taken()
    files = {}
    for block in blocks:
        title = words_of(block)("picture-title-squares", name=block.name)
        files[f"{taken.take(block.name)}.squares.svg"] = write_svg(drafting_page(block), title=title, draw_words=True)
    writer.put(folder, files, SQUARES)
    write_out(f"{many(len(files), 'file')} written to {folder}\n")
