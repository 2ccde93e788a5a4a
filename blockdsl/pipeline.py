"""One file from its text to its facts, on one screen: parse, analyse, plan, cut, describe.

Commands, tests and `import blockdsl` all come this way, so the steps are put together in this place alone. Each step
takes what the one before it gave and reports to one collector; a mistake of the quilter's never raises.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from functools import partial
from pathlib import Path

from msgspec import Struct

from blockdsl.analysis import Program, Reader, analyse
from blockdsl.analysis.inputs import Input, RememberingReader, project_folder
from blockdsl.analysis.memory import NO_MEMORY, Memory
from blockdsl.analysis.override import WhatIf
from blockdsl.cutting import BlockCuts, cut_block
from blockdsl.diagnostics import Problems, Source, Span
from blockdsl.facts import FileFacts, collect_facts
from blockdsl.model import BlockDesign
from blockdsl.model.language import Language
from blockdsl.sewing import Making, plan_making
from blockdsl.syntax.parse import parse

__all__ = ["Stages", "Worked", "about", "analyse", "cut", "parse", "plan", "run", "work_through"]


class Stages(Struct, frozen=True):
    """What a text became, step by step: what it declares, how its blocks are made and cut, its facts and problems."""

    program: Program
    plans: tuple[Making, ...]
    cuts: tuple[BlockCuts, ...]
    facts: FileFacts
    problems: Problems


def run(
    source: Source,
    reader: Reader,
    problems: Problems | None = None,
    what_if: WhatIf | None = None,
    language: Language | None = None,
    memory: Memory = NO_MEMORY,
) -> Stages:
    """All that a text says, or what comes of it if something is supposed.

    `reader` brings in what the text uses; problems go to the collector that is given, or to a new one. `language` is
    what pages are in, whatever the file says; `memory` what an editor keeps from one key to the next.
    """
    found = Problems() if problems is None else problems
    program = analyse(
        source, reader, found, what_if, language, memory
    )  # parses the text, and each file that it uses as met
    plans = plan(program, found, memory)
    cuts = cut(program, plans, memory)
    return Stages(program, plans, cuts, collect_facts(program, cuts, found, memory), found)


def plan(program: Program, problems: Problems, memory: Memory = NO_MEMORY) -> tuple[Making, ...]:
    """How each block of the program is made, in their order."""
    return tuple(memory.once("plan", (design,), problems, partial(plan_making, design)) for design in program.blocks)


def cut(program: Program, plans: Sequence[Making], memory: Memory = NO_MEMORY) -> tuple[BlockCuts, ...]:
    """What is cut for each block of the program."""
    pairs = zip(program.blocks, plans, strict=True)
    return tuple(memory.once("cut", pair, Problems(), partial(_cut, pair)) for pair in pairs)


def _cut(pair: tuple[BlockDesign, Making], _: Problems) -> BlockCuts:
    return cut_block(*pair)


class Worked(Struct, frozen=True):
    """A file's facts beside what they were made from, to be handed to other processes.

    `read` are the files that it brings in, each with a digest of the text that was read; `spans` where each of its
    blocks is declared.
    """

    origin: Input
    facts: FileFacts
    read: tuple[tuple[Path, str], ...]
    spans: tuple[Span, ...]

    @property
    def used(self) -> tuple[Path, ...]:
        """The paths of the files that it brings in."""
        return tuple(path for path, _ in self.read)

    @property
    def sources(self) -> tuple[Path, ...]:
        """The paths of all files that were read, its own first; standard input has none."""
        return self.used if self.origin.path is None else (self.origin.path, *self.used)

    @property
    def has_errors(self) -> bool:
        """Whether nothing may be made of it."""
        return self.origin.problems.has_errors


def work_through(origin: Input, what_if: WhatIf | None = None, language: Language | None = None) -> Worked:
    """The same for a file that was opened, with what it uses read from the disk; problems go to its own collector."""
    if not origin.readable:
        return Worked(origin, FileFacts(origin.source.name, (), (origin.source.name,)), (), ())
    with about(origin.source.name):
        reader = RememberingReader(project_folder(origin.path))
        stages = run(origin.source, reader, origin.problems, what_if, language)
    spans = tuple(design.span for design in stages.program.blocks)
    return Worked(origin, stages.facts, tuple(reader.read.items()), spans)


@contextmanager
def about(name: str) -> Iterator[None]:
    """Should blockdsl itself fail in here, say which file it was working on."""
    try:
        yield
    except Exception as fault:
        fault.add_note(f"while working on {name}")
        raise
