"""Putting problems right: the fixes that they carry, tried on the text before they are trusted."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from typing import Final

from blockdsl.analysis import Reader
from blockdsl.diagnostics import Diagnostic, Edit, Fix, Problems, Source
from blockdsl.pipeline import run

MOST_ROUNDS: Final = 5


def apply(source: Source, edits: Iterable[Edit]) -> str:
    """The text of a source with edits of its own; of two that reach into one another the first is made."""
    text = source.text
    places = sorted((_place(source, edit.span.start), _place(source, edit.span.stop), edit.text) for edit in edits)
    parts, at = [], 0
    for start, stop, words in places:
        if start >= at:
            parts += [text[at:start], words]
            at = stop
    return "".join([*parts, text[at:]])


def _place(source: Source, offset: int) -> int:
    """How many letters stand before a place."""
    line, column = source.position(offset)
    starts = Source(source.name, source.text).line_starts if type(source) is not Source else source.line_starts
    return starts[line - 1] + column - 1


def works(problem: Diagnostic, fix: Fix, source: Source, reader: Reader, before: Sequence[Diagnostic]) -> bool:
    """Whether a fix puts its problem right and brings in no other error."""
    if any(edit.span.source is not source for edit in fix.edits):
        return False
    text = apply(source, fix.edits)
    found = Problems()
    run(Source(source.name, text), reader, found)
    after = Counter(each.code for each in found if each.severity == "error")
    was = Counter(each.code for each in before if each.severity == "error")
    alike = sum(each.code == problem.code for each in before)
    return not after - was and sum(each.code == problem.code for each in found) < alike


def offered(problem: Diagnostic, source: Source, reader: Reader, before: Sequence[Diagnostic]) -> list[Fix]:
    """The fixes of a problem that can be offered: those that are sure, and those that were tried and work."""
    return [fix for fix in problem.fixes if fix.sure or works(problem, fix, source, reader, before)]


def fixed(source: Source, reader: Reader) -> str:
    """The text with all fixes made that are sure, and those that are the only one and work.

    What one fix changes may show others, so the text is read again until nothing changes any more.
    """
    text = source.text
    for _ in range(MOST_ROUNDS):
        now = Source(source.name, text)
        found = Problems()
        run(now, reader, found)
        problems = list(found)
        edits = [edit for problem in problems if (fix := _best(problem, now, reader, problems)) for edit in fix.edits]
        changed = apply(now, edits)
        if changed == text:
            break
        text = changed
    return text


def _best(problem: Diagnostic, source: Source, reader: Reader, before: Sequence[Diagnostic]) -> Fix | None:
    """The fix to be made without asking."""
    if problem.span.source is not source or not problem.fixes:
        return None
    first = problem.fixes[0]
    if first.sure:
        return first
    return first if len(problem.fixes) == 1 and works(problem, first, source, reader, before) else None
