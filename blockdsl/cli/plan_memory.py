"""What was made of a file last time, as names and keys: while nothing has changed, its blocks are not worked out."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

import msgspec
from msgspec import Struct

from blockdsl.analysis.inputs import Input
from blockdsl.cli.cache import Cache
from blockdsl.cli.jobs import OutputKey
from blockdsl.cli.planning import Planned, PrintOptions
from blockdsl.cli.remembering import memory_key, recall, remember
from blockdsl.model.language import Language


class Remembered(Struct, frozen=True):
    """A file of which everything is known to be in the cache; `declared` is as in `Planned`."""

    origin: Input
    used: tuple[Path, ...]
    outputs: tuple[OutputKey, ...]
    declared: Mapping[str, str]
    has_book: bool
    language: Language | None

    @property
    def sources(self) -> tuple[Path, ...]:
        """The paths of all files that were read, its own first; standard input has none."""
        return self.used if self.origin.path is None else (self.origin.path, *self.used)


class _Plan(msgspec.Struct, frozen=True, array_like=True):
    outputs: tuple[tuple[str, str, str, bool], ...]
    declared: dict[str, str]
    has_book: bool
    language: Language | None


class PlanMemory:
    """Plans of files by how they were asked for; without a cache nothing is remembered."""

    def __init__(self, cache: Cache, kinds: frozenset[str], asked: PrintOptions) -> None:
        """Remember for outputs of these kinds, printed so."""
        self._cache = cache
        self._how = (sorted(kinds), asked)

    def recall(self, origin: Input) -> Remembered | None:
        """What is known of a file, its problems given to its collector; None when it must be worked through."""
        if self._cache.folder is None or not origin.readable:
            return None
        found = recall(self._cache, memory_key(origin, "plan", *self._how), origin)
        if found is None:
            return None
        try:
            plan = msgspec.msgpack.decode(found.data, type=_Plan)
        except msgspec.MsgspecError:
            return None
        outputs = tuple(OutputKey(*each) for each in plan.outputs)
        if not all(self._cache.has(output.key) for output in outputs):
            return None
        for problem in found.problems:
            origin.problems.add(problem)
        return Remembered(origin, found.used, outputs, plan.declared, plan.has_book, plan.language)

    def keep(self, planned: Planned, outputs: tuple[OutputKey, ...]) -> None:
        """Remember what a file without errors has given."""
        if self._cache.folder is None:
            return
        plan = _Plan(
            tuple((each.stem, each.name, each.key, each.folder) for each in outputs),
            dict(planned.declared),
            bool(planned.worked.facts.books),
            planned.language,
        )
        key = memory_key(planned.origin, "plan", *self._how)
        remember(self._cache, key, planned.worked, msgspec.msgpack.encode(plan))
