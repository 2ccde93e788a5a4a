"""A file as it was read last, and as it was read when nothing was wrong with it."""

from __future__ import annotations

from pathlib import Path
from threading import Lock

from msgspec import Struct

from blockdsl import pipeline
from blockdsl.analysis.inputs import Input, RememberingReader, open_input, project_folder
from blockdsl.analysis.override import WhatIf
from blockdsl.diagnostics import Diagnostic, Problems, Source
from blockdsl.pipeline import Stages


class Reading(Struct, frozen=True):
    """What came of a file. `paths` are all files that were read for it, itself among them."""

    stages: Stages
    problems: tuple[Diagnostic, ...]
    paths: tuple[Path, ...]

    @property
    def has_errors(self) -> bool:
        """Whether nothing may be made of it."""
        return any(problem.severity == "error" for problem in self.problems)


class Seen:
    """A file that is looked at. Each reading has a number; `good` is the last one without errors.

    Several threads may ask; the file is read by one at a time.
    """

    def __init__(self, path: Path) -> None:
        """Read the file for the first time."""
        self.path = path
        self.number = 0
        self.cursor: tuple[str, int] | None = None
        self._typed: str | None = None
        self._lock = Lock()
        self._others: dict[WhatIf, Reading] = {}
        self.last = self._read(None)
        self.good: Reading | None = None if self.last.has_errors else self.last

    def again(self) -> None:
        """Read it anew: something was saved."""
        with self._lock:
            self._others.clear()
            self.last = self._read(None)
            if not self.last.has_errors:
                self.good = self.last
            self.number += 1

    def typed(self, text: str | None) -> None:
        """The text that an editor has and has not saved yet; None for what lies on the disk."""
        self._typed = text
        self.again()

    def moved(self, file: str, line: int) -> None:
        """Where the editor's cursor stands."""
        self.cursor = (file, line)
        self.number += 1

    def reading(self, what_if: WhatIf) -> Reading | None:
        """The last good reading as it is changed by what is chosen; None before there is one."""
        if self.good is None or not what_if.options:
            return self.good
        if self.last.has_errors:  # only what was read when all was well is shown, and that was not so changed
            return self._others.get(what_if, self.good)
        with self._lock:
            if what_if not in self._others:
                found = self._read(what_if)
                self._others[what_if] = self.good if found.has_errors else found
            return self._others[what_if]

    def _read(self, what_if: WhatIf | None) -> Reading:
        opened = open_input(str(self.path))
        if self._typed is not None:
            opened = Input(Source(opened.source.name, self._typed), opened.path, Problems(), readable=True)
        reader = RememberingReader(project_folder(opened.path))
        stages = pipeline.run(opened.source, reader, opened.problems, what_if)
        return Reading(stages, tuple(opened.problems), (self.path, *reader.read))
