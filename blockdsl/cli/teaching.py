"""`blockdsl sizes` and `blockdsl grid`: what a teacher shows before the first cut."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator, Sequence
from fractions import Fraction
from pathlib import Path
from typing import TYPE_CHECKING, Final

from blockdsl.analysis.inputs import open_inputs
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.saying import in_columns, many, write_out
from blockdsl.cli.status import ERRORS, FINE
from blockdsl.cli.writing import SQUARES, Writer
from blockdsl.export.naming import Taken
from blockdsl.facts.drafting import SizeFacts, at_width, draft, size_table
from blockdsl.model.lengths import write_size
from blockdsl.pictures.drafting import say_squares
from blockdsl.pictures.lengths import plain_extent, plain_length
from blockdsl.pipeline import work_through

if TYPE_CHECKING:
    from blockdsl.facts import BlockFacts
    from blockdsl.geometry import Exact
    from blockdsl.model import RulerUnit

_HEADS: Final = ("", "finished", "unfinished", "cell", "on the ruler", "smallest patch")


def sizes(arguments: Namespace) -> int:
    """Each block of the files at every usual size: its cell, what the ruler reads, the smallest patch."""
    blocks, _, status = _blocks(arguments)
    write_out("\n".join("\n".join(_size_lines(block)) + "\n" for block in blocks))
    return status


def grid(arguments: Namespace) -> int:
    """The smallest square grid of each block; with `-o` the block drawn on it, as a picture."""
    blocks, sources, status = _blocks(arguments)
    write_out("\n".join("\n".join(_grid_lines(block, arguments.size)) + "\n" for block in blocks))
    if arguments.output and blocks:
        _draw(blocks, Path(arguments.output), Writer(sources))
    return status


def _blocks(arguments: Namespace) -> tuple[list[BlockFacts], list[Path], int]:
    """All blocks of the files that have no errors, and all files that were read; problems are told."""
    printer = ProblemPrinter(arguments.message_format)
    blocks: list[BlockFacts] = []
    works = [work_through(origin) for origin in open_inputs(arguments.files)]
    for worked in works:
        printer.show(worked.origin.problems)
        blocks += () if worked.has_errors else worked.facts.blocks
    return blocks, [path for worked in works for path in worked.sources], ERRORS if printer.sum_up() else FINE


# --- sizes -------------------------------------------------------------------------------------


def _size_lines(block: BlockFacts) -> Iterator[str]:
    """The name, what it is drawn on, and a table for each unit."""
    drawing = draft(block)
    yield f"{block.name}: {say_squares(block, drawing)}"
    units: tuple[RulerUnit, ...] = ("in", "cm") if block.unit == "in" else ("cm", "in")
    rooted = False
    for unit in units:
        rows = size_table(block, unit)
        rooted = rooted or any(row.rooted for row in rows)
        yield ""
        yield from in_columns([_HEADS, *(_size_row(row) for row in rows)])
    yield ""
    yield "* friendly: every measure falls on halves, and no patch is narrower than 3/4 in (2 cm)"
    if rooted:
        yield "Pieces measured along a diagonal fall on no ruler's marks; they are cut rounded up at every size."


def _size_row(row: SizeFacts) -> tuple[str, ...]:
    label, smallest = row.smallest
    return (
        "*" if row.friendly else "",
        write_size(*row.finished, row.unit),
        write_size(*row.unfinished, row.unit),
        _plain(row.cell, row.unit) if row.cell is not None else "uneven",
        _on_ruler(row),
        f"{label}, {plain_extent(smallest, row.unit)} {row.unit}",
    )


def _on_ruler(row: SizeFacts) -> str:
    if row.off is not None:
        return f"no: {_plain(row.off, row.unit)}"
    return "no: rounding adds up" if row.adds_up else "yes"


def _plain(length: Exact, unit: RulerUnit) -> str:
    return f"{plain_length(length, unit)} {unit}"


# --- grid --------------------------------------------------------------------------------------


def _grid_lines(block: BlockFacts, asked: Sequence[tuple[Fraction, RulerUnit]]) -> Iterator[str]:
    """What it is drawn on, and the square's size at its own size and at those that were asked for."""
    drawing = draft(block)
    yield f"{block.name}: {say_squares(block, drawing)}"
    yield ""
    own = (Fraction(block.finished[0]), block.unit)  # type: ignore[arg-type]  # sizes of blocks are rational
    rows = [_cell_row(at_width(block, width, unit, drawing)) for width, unit in (own, *asked)]
    yield from in_columns([("finished", "unfinished", "square finished", "square unfinished", "on the ruler"), *rows])


def _cell_row(row: SizeFacts) -> tuple[str, ...]:
    finished, unfinished = write_size(*row.finished, row.unit), write_size(*row.unfinished, row.unit)
    on_ruler = _on_ruler(row)
    if row.cell is None:
        return finished, unfinished, "uneven", "uneven", on_ruler
    grown = row.cell + row.unfinished[0] - row.finished[0]
    return finished, unfinished, _plain(row.cell, row.unit), _plain(grown, row.unit), on_ruler


def _draw(blocks: Sequence[BlockFacts], folder: Path, writer: Writer) -> None:
    """The block on its grid as a picture; two blocks of one name get two pictures."""
    from blockdsl.export.svg import write_svg
    from blockdsl.pictures.drafting import drafting_page

    taken = Taken()
    files = {
        f"{taken.take(block.name)}.squares.svg": write_svg(drafting_page(block), title=f"{block.name}, on squares")
        for block in blocks
    }
    writer.put(folder, files, SQUARES)
    write_out(f"{many(len(files), 'file')} written to {folder}\n")
