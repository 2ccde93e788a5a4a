"""One file worked through from its text to its facts."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from blockdsl.analysis import analyse
from blockdsl.analysis.override import WhatIf
from blockdsl.cli.inputs import Input, RememberingReader, project_folder
from blockdsl.diagnostics import Span
from blockdsl.facts import FileFacts, collect_facts
from blockdsl.model.language import Language


@dataclass(frozen=True, slots=True)
class Worked:
    """A file's facts beside what it was made from.

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
    def has_errors(self) -> bool:
        """Whether nothing may be made of it."""
        return self.origin.problems.has_errors


def work_through(origin: Input, what_if: WhatIf | None = None, language: Language | None = None) -> Worked:
    """All that a file says, or what comes of it if something is supposed; problems go to its own collector.

    `language` is what its pages are in, whatever it says.
    """
    if not origin.readable:
        return Worked(origin, FileFacts(origin.source.name, (), (origin.source.name,)), (), ())
    with about(origin.source.name):
        reader = RememberingReader(project_folder(origin.path))
        program = analyse(origin.source, reader, origin.problems, what_if, language)
        facts = collect_facts(program, origin.problems)
    return Worked(origin, facts, tuple(reader.read.items()), tuple(design.span for design in program.blocks))


@contextmanager
def about(name: str) -> Iterator[None]:
    """Should blockdsl itself fail in here, say which file it was working on."""
    try:
        yield
    except Exception as fault:
        fault.add_note(f"while working on {name}")
        raise


def sources_of(works: Iterable[Worked]) -> list[Path]:
    """All files that were read."""
    return [place for worked in works for place in (worked.origin.path, *worked.used) if place is not None]
