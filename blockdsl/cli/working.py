"""One file worked through from its text to its facts."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from blockdsl.analysis import Program, analyse
from blockdsl.cli.inputs import Input, RememberingReader, project_folder
from blockdsl.facts import FileFacts, collect_facts


@dataclass(frozen=True, slots=True)
class Worked:
    """A file's facts beside what it was made from. `program` is None when the file could not be read.

    `used` are the paths of the files that it brings in.
    """

    origin: Input
    program: Program | None
    facts: FileFacts
    used: tuple[Path, ...]

    @property
    def has_errors(self) -> bool:
        """Whether nothing may be made of it."""
        return self.origin.problems.has_errors


def work_through(origin: Input) -> Worked:
    """All that a file says; its problems are reported to its own collector."""
    if not origin.readable:
        return Worked(origin, None, FileFacts(origin.source.name, (), (origin.source.name,)), ())
    with about(origin.source.name):
        reader = RememberingReader(project_folder(origin.path))
        program = analyse(origin.source, reader, origin.problems)
        facts = collect_facts(program, origin.problems)
    return Worked(origin, program, facts, tuple(reader.paths))


@contextmanager
def about(name: str) -> Iterator[None]:
    """Should blockdsl itself fail in here, say which file it was working on."""
    try:
        yield
    except Exception as fault:
        fault.add_note(f"while working on {name}")
        raise
