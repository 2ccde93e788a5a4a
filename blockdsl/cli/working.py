"""One file worked through from its text to its facts."""

from __future__ import annotations

import pickle
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path

from blockdsl.analysis import analyse
from blockdsl.analysis.override import WhatIf
from blockdsl.cli.cache import Cache
from blockdsl.cli.cache_keys import key_of
from blockdsl.cli.inputs import Input, RememberingReader, project_folder
from blockdsl.diagnostics import Diagnostic, Span
from blockdsl.facts import FileFacts, collect_facts


@dataclass(frozen=True, slots=True)
class Worked:
    """A file's facts beside what it was made from.

    `used` are the paths of the files that it brings in, `spans` where each of its blocks is declared.
    """

    origin: Input
    facts: FileFacts
    used: tuple[Path, ...]
    spans: tuple[Span, ...]

    @property
    def has_errors(self) -> bool:
        """Whether nothing may be made of it."""
        return self.origin.problems.has_errors


@dataclass(frozen=True, slots=True)
class _Remembered:
    """What is kept of a file without errors: its facts, its warnings, and what it uses with a digest of each."""

    facts: FileFacts
    problems: tuple[Diagnostic, ...]
    used: tuple[tuple[Path, str], ...]
    spans: tuple[Span, ...]


def work_through(origin: Input, folder: Path | None = None, what_if: WhatIf | None = None) -> Worked:
    """All that a file says, or what comes of it if something is supposed; problems go to its own collector.

    What the cache in `folder` holds of the same text is taken from there, as long as the files that it uses are the
    same too.
    """
    cache = Cache(folder)
    if not origin.readable:
        return Worked(origin, FileFacts(origin.source.name, (), (origin.source.name,)), (), ())
    project = project_folder(origin.path)
    key = key_of("facts", origin.source.name, origin.source.text, str(project), what_if) if cache.folder else ""
    known = _recall(cache, key)
    if known is not None:
        for problem in known.problems:
            origin.problems.add(problem)
        return Worked(origin, known.facts, tuple(path for path, _ in known.used), known.spans)
    worked = _work(origin, project, what_if)
    if cache.folder is not None and not worked.has_errors:
        _remember(cache, key, worked)
        cache.tidy()
    return worked


def _work(origin: Input, project: Path, what_if: WhatIf | None) -> Worked:
    with about(origin.source.name):
        reader = RememberingReader(project)
        program = analyse(origin.source, reader, origin.problems, what_if)
        facts = collect_facts(program, origin.problems)
    return Worked(origin, facts, tuple(reader.paths), tuple(design.span for design in program.blocks))


def _recall(cache: Cache, key: str) -> _Remembered | None:
    """What is kept under the key, when no file that was used has changed since."""
    data = cache.get(key) if key else None
    if data is None:
        return None
    try:
        known = pickle.loads(data)  # noqa: S301 - our own folder, and the digest says that it is what we put there
    except Exception:  # noqa: BLE001 - whatever it is, it is not ours: then the work is done again
        return None
    if not isinstance(known, _Remembered) or any(_digest(path) != digest for path, digest in known.used):
        return None
    return known


def _remember(cache: Cache, key: str, worked: Worked) -> None:
    used = tuple((path, _digest(path)) for path in worked.used)
    known = _Remembered(worked.facts, tuple(worked.origin.problems), used, worked.spans)
    cache.put(key, pickle.dumps(known, pickle.HIGHEST_PROTOCOL))


def _digest(path: Path) -> str:
    try:
        return sha256(path.read_bytes()).hexdigest()
    except OSError:
        return ""


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
