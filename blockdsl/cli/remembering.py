"""What came of a file is kept, and taken again while its text and all that it brings in are the same.

What is kept is data alone: names, keys, words and bytes, read back as those and nothing else. A cache folder may be
shared, and whatever somebody puts into it can be wrong, but it cannot run.
"""

from __future__ import annotations

from pathlib import Path

import msgspec

from blockdsl.analysis.inputs import Input, has_digest, project_folder
from blockdsl.cli.cache import Cache
from blockdsl.cli.cache_keys import key_of
from blockdsl.diagnostics import CATALOGUE, Diagnostic, Severity, Span
from blockdsl.pipeline import Worked


class _Problem(msgspec.Struct, frozen=True, array_like=True):
    """A problem in the file itself, with its related places there."""

    code: str
    message: str
    start: int
    stop: int
    help: str | None
    related: tuple[tuple[int, int, str], ...]


class _Entry(msgspec.Struct, frozen=True, array_like=True):
    """What came of a file: its problems, the files that it read with a digest of each, and `data`."""

    problems: tuple[_Problem, ...]
    read: tuple[tuple[str, str], ...]
    data: bytes


class Recalled(msgspec.Struct, frozen=True):
    """What is known of a file without working it through: its problems, what it brings in, and what came of it."""

    problems: tuple[Diagnostic, ...]
    used: tuple[Path, ...]
    data: bytes


def memory_key(origin: Input, *how: object) -> str:
    """The key under which what comes of a file is kept; `how` is all that matters besides."""
    folder, levels = str(project_folder(origin.path)), origin.problems.levels.key
    return key_of("file", origin.source.name, origin.source.text, folder, levels, how)


def recall(cache: Cache, key: str, origin: Input) -> Recalled | None:
    """What is kept under the key, when no file that was read for it has changed since."""
    kept = cache.get(key)
    if kept is None:
        return None
    try:
        entry = msgspec.msgpack.decode(kept, type=_Entry)
        problems = tuple(_told(problem, origin) for problem in entry.problems)
        used = tuple((Path(path), digest) for path, digest in entry.read)
        if not all(has_digest(path, digest) for path, digest in used):
            return None
    except (msgspec.MsgspecError, ValueError, KeyError):  # not what we put there: then the work is done again
        return None
    return Recalled(problems, tuple(path for path, _ in used), entry.data)


def remember(cache: Cache, key: str, worked: Worked, data: bytes) -> None:
    """Keep what came of a file without errors, unless one of its problems lies in another file."""
    problems = tuple(worked.origin.problems)
    if cache.folder is None or worked.has_errors or not all(_is_here(problem, worked.origin) for problem in problems):
        return
    entry = _Entry(
        tuple(
            _Problem(
                problem.code,
                problem.message,
                problem.span.start,
                problem.span.stop,
                problem.help,
                tuple((span.start, span.stop, words) for span, words in problem.related),
            )
            for problem in problems
        ),
        tuple((str(path), digest) for path, digest in worked.read),
        data,
    )
    cache.put(key, msgspec.msgpack.encode(entry))


def _is_here(problem: Diagnostic, origin: Input) -> bool:
    return all(span.source == origin.source for span in (problem.span, *(span for span, _ in problem.related)))


def _told(problem: _Problem, origin: Input) -> Diagnostic:
    severity: Severity = CATALOGUE[problem.code].severity
    related = tuple((_span(origin, start, end), words) for start, end, words in problem.related)
    span = _span(origin, problem.start, problem.stop)
    return Diagnostic(problem.code, severity, problem.message, span, problem.help, related)


def _span(origin: Input, start: int, end: int) -> Span:
    """Errors: ValueError where the text has no such place."""
    if not 0 <= start <= end <= len(origin.source.text):
        raise ValueError("no such place in the text")
    return Span(origin.source, start, end)
