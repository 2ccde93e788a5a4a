"""`blockdsl sizes`: the sizes at which a block falls on the ruler's marks."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Final

from blockdsl.analysis.inputs import open_inputs
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.saying import in_columns, write_out
from blockdsl.cli.settings import levels_asked
from blockdsl.cli.status import ERRORS, FINE
from blockdsl.facts.drafting import SizeFacts, draft, size_table
from blockdsl.model.lengths import write_size
from blockdsl.pictures.drafting import format_squares
from blockdsl.pipeline import work_through
from blockdsl.wording.lengths import plain_length, plain_size
from blockdsl.wording.messages import messages

if TYPE_CHECKING:
    from blockdsl.facts import BlockFacts
    from blockdsl.geometry import Exact
    from blockdsl.model import RulerUnit

_HEADS: Final = ("", "finished", "unfinished", "cell", "on the ruler", "smallest patch")


def run(arguments: Namespace) -> int:
    """Each block of the files at every usual size: its cell, what the ruler reads, the smallest patch."""
    found, _, status = blocks_of(arguments)
    write_out("\n".join("\n".join(_size_lines(block)) + "\n" for block in found))
    return status


def blocks_of(arguments: Namespace) -> tuple[list[BlockFacts], list[Path], int]:
    """All blocks of the files that have no errors, and all files that were read; problems are reported."""
    printer = ProblemPrinter(arguments)
    blocks: list[BlockFacts] = []
    works = [work_through(origin) for origin in open_inputs(arguments.files, levels_asked(arguments))]
    for worked in works:
        printer.show(worked.origin.problems)
        blocks += () if worked.has_errors else worked.facts.blocks
    return blocks, [path for worked in works for path in worked.sources], ERRORS if printer.sum_up() else FINE


def _size_lines(block: BlockFacts) -> Iterator[str]:
    """The name, what it is drawn on, and a table for each unit."""
    drawing = draft(block)
    yield f"{block.name}: {format_squares(block, drawing)}"
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
        with_unit(row.cell, row.unit) if row.cell is not None else "uneven",
        on_ruler(row),
        f"{label}, {plain_size(smallest, row.unit, messages())}",
    )


def on_ruler(row: SizeFacts) -> str:
    """Whether every cut falls on the ruler's marks."""
    if row.off is not None:
        return f"no: {with_unit(row.off, row.unit)}"
    return "no: rounding adds up" if row.adds_up else "yes"


def with_unit(length: Exact, unit: RulerUnit) -> str:
    """A length in words."""
    return f"{plain_length(length, unit, messages())} {unit}"
