"""One file from its text to its facts, on one screen: parse, analyse, plan, cut, describe.

Commands, tests and `import blockdsl` all come this way, so the steps are put together in this place alone. Each step
takes what the one before it gave and reports to one collector; a mistake of the quilter's never raises.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from blockdsl.analysis import Program, Reader, analyse
from blockdsl.analysis.inputs import Input, RememberingReader, project_folder
from blockdsl.analysis.override import WhatIf
from blockdsl.diagnostics import Problems, Source, Span
from blockdsl.facts import FileFacts, collect_facts
from blockdsl.model.language import Language
from blockdsl.sewing import Making, plan_making
from blockdsl.syntax.parse import parse

__all__ = ["Stages", "Worked", "about", "analyse", "parse", "plan", "run", "work_through"]


@dataclass(frozen=True, slots=True)
class Stages:
    """What a text became: the program of blocks, quilts and books that it declares, their facts, and its problems."""

    program: Program
    facts: FileFacts
    problems: Problems


def run(
    source: Source,
    reader: Reader,
    problems: Problems | None = None,
    what_if: WhatIf | None = None,
    language: Language | None = None,
) -> Stages:
    """All that a text says, or what comes of it if something is supposed.

    `reader` brings in what the text uses; problems go to the collector that is given, or to a new one. `language` is
    what pages are in, whatever the file says.
    """
    found = Problems() if problems is None else problems
    program = analyse(source, reader, found, what_if, language)  # parses the text, and each file that it uses as met
    facts = collect_facts(program, found)  # plans, cuts and describes each block, then each quilt and book
    return Stages(program, facts, found)


def plan(program: Program, problems: Problems) -> dict[str, Making]:
    """How each block is made, by its name: the step between `analyse` and the cutting, to be looked at alone."""
    return {design.name: plan_making(design, problems) for design in program.blocks}


@dataclass(frozen=True, slots=True)
class Worked:
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
