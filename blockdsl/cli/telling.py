"""Problems told on standard error, each once, for people or for programs."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterable
from typing import Final, Literal, TextIO

from blockdsl.diagnostics import Diagnostic, Problems, render_json, render_text, summary

MessageFormat = Literal["text", "json"]
MESSAGE_FORMATS: Final = ("text", "json")


class Teller:
    """Tells problems as they come; files that use the same palette do not tell its problems twice."""

    def __init__(self, message_format: MessageFormat, stream: TextIO | None = None) -> None:
        """Tell on `stream`, standard error when it is not given."""
        self._format = message_format
        self._stream = stream or sys.stderr
        self._colour = wants_colour(self._stream)
        self._told = Problems()
        self._known: set[tuple[str, str, int, str]] = set()

    def tell(self, problems: Iterable[Diagnostic]) -> None:
        """Tell those problems that have not been told."""
        for problem in problems:
            key = (problem.code, problem.span.source.name, problem.span.start, problem.message)
            if key in self._known:
                continue
            self._known.add(key)
            self._told.add(problem)
            words = render_json(problem) if self._format == "json" else render_text(problem, self._colour)
            self._stream.write(f"{words}\n")

    def sum_up(self) -> bool:
        """End with how many there were, for people and only if there were any; whether one was an error."""
        if len(self._told) and self._format == "text":
            self._stream.write(f"{summary(self._told)}\n")
        return self._told.has_errors


def wants_colour(stream: TextIO) -> bool:
    """Whether colour is welcome: a terminal, and nobody said NO_COLOR."""
    return stream.isatty() and not os.environ.get("NO_COLOR") and os.environ.get("TERM") != "dumb"
