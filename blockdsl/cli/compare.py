"""`blockdsl compare`: a file beside itself at other sizes, in other settings and colourways."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Callable, Iterator, Sequence
from typing import TYPE_CHECKING, Final, TypeVar

from msgspec.structs import replace

from blockdsl.analysis.inputs import Input, open_input
from blockdsl.cli.comparison_lines import block_lines, quilt_lines
from blockdsl.cli.overrides import refuse_without_quilts, what_ifs_of
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.saying import in_columns, write_out
from blockdsl.cli.settings import levels_asked
from blockdsl.cli.status import ERRORS, FINE
from blockdsl.diagnostics import Problems
from blockdsl.facts.compare_blocks import BlockTable, compare_blocks
from blockdsl.facts.compare_quilts import QuiltTable, compare_quilts
from blockdsl.facts.json_compare import Compared, compare_json
from blockdsl.pipeline import Worked, work_through

if TYPE_CHECKING:
    from blockdsl.analysis.override import WhatIf
    from blockdsl.facts import BlockFacts, QuiltFacts

_Facts = TypeVar("_Facts", "BlockFacts", "QuiltFacts")
_AS_IT_SAYS: Final = "as the file says"


def run(arguments: Namespace) -> int:
    """Run the command: a column for each combination that can be; problems of those that cannot are reported."""
    what_ifs = what_ifs_of(arguments)
    origin = open_input(arguments.file, levels_asked(arguments))
    printer = ProblemPrinter(arguments)
    works: list[tuple[WhatIf, Worked]] = []
    for what_if in what_ifs:
        worked = work_through(Input(origin.source, origin.path, _kept(origin), origin.readable), what_if=what_if)
        printer.show(worked.origin.problems)
        if not worked.has_errors:
            works.append((what_if, worked))
        elif not works:  # the file as it says: all others would have the same mistakes
            break
    if works:
        refuse_without_quilts([works[0][1]], what_ifs)
    compared = [*_quilts(works), *_blocks(works)]
    write_out(_written(compared, origin.source.name, arguments.format))
    return ERRORS if printer.sum_up() else FINE


def _kept(origin: Input) -> Problems:
    """A collector for one look at the file, with what was found when it was opened."""
    problems = Problems()
    for problem in origin.problems:
        problems.add(problem)
    return problems


# --- what is compared --------------------------------------------------------------------------


def _quilts(works: Sequence[tuple[WhatIf, Worked]]) -> Iterator[Compared]:
    columns = [(what_if, worked.facts.quilts) for what_if, worked in works]
    for place, quilt in enumerate(columns[0][1] if columns else ()):
        found = [(what_if, quilts[place]) for what_if, quilts in columns]
        yield _compared(quilt.name, found, compare_quilts)


def _blocks(works: Sequence[tuple[WhatIf, Worked]]) -> Iterator[Compared]:
    """Blocks that the file itself declares, each way once; beside quilts only where there is something to compare."""
    columns: list[tuple[WhatIf, Sequence[BlockFacts]]] = []
    seen: set[tuple[object, str | None]] = set()
    for what_if, worked in works:
        key = what_if.size, what_if.colourway
        if key not in seen:
            seen.add(key)
            of_block = replace(what_if, places=None, pattern=None)  # the setting is no matter of a block
            columns.append((of_block, _own_blocks(worked)))
    if not columns or (len(columns) == 1 and works[0][1].facts.quilts):
        return
    for place, block in enumerate(columns[0][1]):
        found = [(what_if, blocks[place]) for what_if, blocks in columns]
        yield _compared(block.name, found, compare_blocks)


def _own_blocks(worked: Worked) -> list[BlockFacts]:
    """The file's own; of a file that has none of its own those that it brings in."""
    pairs = list(zip(worked.spans, worked.facts.blocks, strict=True))
    own = [block for span, block in pairs if span.source.name == worked.origin.source.name]
    return own or ([] if worked.facts.quilts else [block for _, block in pairs])


def _compared(
    name: str,
    found: Sequence[tuple[WhatIf, _Facts]],
    tabulate: Callable[[Sequence[_Facts]], QuiltTable | BlockTable],
) -> Compared:
    what_ifs = tuple(what_if for what_if, _ in found)
    return Compared(name, what_ifs, tabulate([thing for _, thing in found]))


# --- how it is written -------------------------------------------------------------------------


def _written(compared: Sequence[Compared], file: str, form: str) -> str:
    if form == "json":
        return compare_json(file, compared) + "\n"
    parts = [_table(each, form) for each in compared]
    return "\n".join(parts)


def _table(each: Compared, form: str) -> str:
    """One table under its name; in a spreadsheet the name stands over the measures."""
    heads = tuple(what_if.words or _AS_IT_SAYS for what_if in each.what_ifs)
    lines = quilt_lines(each.table) if isinstance(each.table, QuiltTable) else block_lines(each.table)
    if form == "text":
        return "\n".join([f"{each.name}", "", *in_columns([("", *heads), *lines])]) + "\n"
    from blockdsl.export.tables import to_csv, to_markdown

    return (to_csv if form == "csv" else to_markdown)((each.name, *heads), lines)
