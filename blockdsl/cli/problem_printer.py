"""Problems shown on standard error, each once, for people or for programs."""

from __future__ import annotations

import os
import sys
from argparse import Namespace
from collections.abc import Iterable, Iterator, Sequence
from functools import partial
from typing import Final, TextIO

from blockdsl import __version__
from blockdsl.diagnostics import Diagnostic, Problems, render_json, render_short, render_text, summary

MESSAGE_FORMATS: Final = ("text", "short", "json", "sarif")
COLOURS: Final = ("auto", "always", "never")


MOST_TOLD: Final = 20
"""How many problems of a file are shown one by one; after that many she fixes some and looks again."""

_MOST_OF_A_KIND: Final = 4
"""So many of one kind with different words are shown one by one."""


def gather(found: Sequence[Diagnostic]) -> Iterator[tuple[Diagnostic, list[Diagnostic]]]:
    """Each problem that is shown by itself, with those that say the same, or are of its kind and come after many."""
    kinds: dict[str, dict[str, list[Diagnostic]]] = {}
    for problem in found:
        said = kinds.setdefault(problem.code, {})
        words = problem.message if problem.message in said or len(said) < _MOST_OF_A_KIND else next(reversed(said))
        said.setdefault(words, []).append(problem)
    firsts = [group for said in kinds.values() for group in said.values()]
    for first, *alike in sorted(firsts, key=lambda group: group[0].span.start):
        yield first, alike


def _lines(found: Sequence[Diagnostic]) -> str:
    """Where they are: `in line 7`, `in lines 7 to 40`."""
    lines = [problem.span.line for problem in found]
    first, last = min(lines), max(lines)
    return f"in line {first}" if first == last else f"in lines {first} to {last}"


class ProblemPrinter:
    """Shows problems as they come; files that use the same palette do not show its problems twice."""

    def __init__(self, arguments: Namespace, stream: TextIO | None = None) -> None:
        """Tell as the command line says, on `stream`, standard error when it is not given."""
        self._format: str = arguments.message_format
        self._quiet: bool = arguments.quiet
        self._stream = stream or sys.stderr
        self._colour = wants_colour(self._stream, arguments.color)
        self._told = Problems()
        self._known: set[tuple[str, str, int, str]] = set()

    def show(self, problems: Iterable[Diagnostic]) -> None:
        """Show those problems that have not been shown; to people, of many that are alike the first ones."""
        new = []
        for problem in problems:
            key = (problem.code, problem.span.source.name, problem.span.start, problem.message)
            if key not in self._known:
                self._known.add(key)
                self._told.add(problem)
                new.append(problem)
        if self._format in ("json", "short"):
            render = render_json if self._format == "json" else partial(render_short, colour=self._colour)
            for problem in new:
                self._stream.write(f"{render(problem)}\n")
        if self._format != "text":
            return
        by_file: dict[str, list[Diagnostic]] = {}
        for problem in new:
            by_file.setdefault(problem.span.source.name, []).append(problem)
        for name, found in by_file.items():
            self._show_file(name, found)

    def _show_file(self, name: str, found: Sequence[Diagnostic]) -> None:
        gathered = list(gather(found))
        for problem, alike in gathered[:MOST_TOLD]:
            self._stream.write(f"{render_text(problem, self._colour)}\n")
            if alike:
                self._stream.write(f"   and {len(alike)} more like it, {_lines(alike)}\n")
        left = sum(1 + len(alike) for _, alike in gathered[MOST_TOLD:])
        if left:
            self._stream.write(f"{name}: and {left} more; --message-format json lists them all\n")

    def sum_up(self) -> bool:
        """End with how many there were, for people and only if there were any; whether one was an error.

        As SARIF all of them are told here, as one document.
        """
        if self._format == "sarif":
            from blockdsl.export.sarif import to_sarif

            self._stream.write(to_sarif(self._told, __version__))
        if len(self._told) and self._format == "text" and not self._quiet:
            self._stream.write(f"{summary(self._told)}\n")
        return self._told.has_errors


def wants_colour(stream: TextIO, asked: str = "auto") -> bool:
    """Whether colour is welcome: as it was asked for; otherwise on a terminal, if nobody said NO_COLOR."""
    if asked != "auto":
        return asked == "always"
    return stream.isatty() and not os.environ.get("NO_COLOR") and os.environ.get("TERM") != "dumb"
