"""Pieces of work that stand alone: all outputs of one block, a book, or a web site. Any process can do one."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import suppress
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Final, Literal

import msgspec
from msgspec import Struct

from blockdsl.cli.cache import Cache
from blockdsl.cli.cache_keys import key_of
from blockdsl.cli.outputs import Output, block_outputs, book_output, quilt_outputs, site_output, size_outputs
from blockdsl.export.written import is_inside

if TYPE_CHECKING:
    from blockdsl.facts import BlockFacts, BookFacts
    from blockdsl.facts.quiltfacts import QuiltFacts
    from blockdsl.printing import Print

WORTH_SHARING: Final = 10
"""So many blocks that must be drawn take longer than it takes other processes to start."""


class Job(Struct, frozen=True):
    """What is made of one block, quilt or book: `block`, a block at a further `size`, `quilt`, a `book` or its `site`.

    `stem` begins the names of its files; `source` is the file that it was declared in, for messages.
    """

    what: Literal["block", "size", "quilt", "book", "site"]
    facts: BlockFacts | QuiltFacts | BookFacts
    stem: str
    kinds: frozenset[str]
    printed: Print
    source: str

    @property
    def accent(self) -> str:
        """The maker's own colour; empty for ours."""
        return self.facts.maker.colour

    @property
    def quilts(self) -> tuple[QuiltFacts, ...]:
        """The quilts whose cloth it shows."""
        from blockdsl.facts import BookFacts
        from blockdsl.facts.quiltfacts import QuiltFacts

        if isinstance(self.facts, QuiltFacts):
            return (self.facts,)
        return tuple(self.facts.quilts) if isinstance(self.facts, BookFacts) else ()

    def outputs(self, cache: Cache) -> Iterator[Output]:
        """Its files to be; parts of them may be in the cache."""
        from blockdsl.facts import BookFacts
        from blockdsl.facts.quiltfacts import QuiltFacts

        if isinstance(self.facts, BookFacts) and self.what == "site":
            made = partial(_bytes_of, self, cache=cache)
            yield site_output(self.facts, self.stem, self.kinds, self.printed, made)
        elif isinstance(self.facts, BookFacts):
            yield book_output(self.facts, self.stem, self.printed, cache)
        elif isinstance(self.facts, QuiltFacts):
            yield from quilt_outputs(self.facts, self.stem, self.kinds, self.printed)
        elif self.what == "size":
            yield from size_outputs(self.facts, self.stem, self.kinds, self.printed)
        else:
            yield from block_outputs(self.facts, self.stem, self.kinds, self.printed)


MadeFiles = dict[str, bytes]
"""Files by their names in the folder."""


class OutputKey(Struct, frozen=True):
    """An output by the stem of its job, its name, and its key in the cache (empty when nothing is kept)."""

    stem: str
    name: str
    key: str
    folder: bool


def output_keys(job: Job, cache: Cache) -> tuple[OutputKey, ...]:
    """What a job will write, without doing it."""
    return tuple(
        OutputKey(job.stem, output.name, _key(job, output) if cache.folder else "", output.folder)
        for output in job.outputs(cache)
    )


def kept_files(keys: Iterable[OutputKey], cache: Cache) -> MadeFiles | None:
    """The files as they are kept; None when one of them is not."""
    made: MadeFiles = {}
    for output in keys:
        data = cache.get(output.key)
        files = None if data is None else _files(output.name, data, folder=output.folder)
        if files is None:
            return None
        made |= files
    return made


def do(job: Job, folder: Path | None) -> MadeFiles:
    """The job's files, each from the cache in `folder` or made now and kept there.

    What is kept in a folder that others can write to may be anything: where it leads to a failure the work is done
    without it.
    """
    cache = Cache(folder)
    try:
        if folder is not None:
            with suppress(Exception):
                return _do(job, cache)
        return _do(job, Cache(None))
    except Exception as fault:
        fault.add_note(f"while working on {job.source}")
        raise
    finally:
        cache.tidy()


def _key(job: Job, output: Output) -> str:
    """All that the bytes depend on, the maker's own font and colour too, which may stand anywhere."""
    ways = job.printed.font, job.printed.outline_words, job.accent
    return key_of(*output.depends, *ways) if any(ways) else key_of(*output.depends)


def _bytes_of(job: Job, output: Output, *, cache: Cache) -> bytes:
    """The bytes of an output that is no folder, from the cache or made now and kept there."""
    return cache.made(_key(job, output) if cache.folder else "", output.make)


def _do(job: Job, cache: Cache) -> MadeFiles:
    from blockdsl.marks.typeset import printing_with

    with printing_with(job.printed.font, outline_words=job.printed.outline_words, accent=job.accent):
        return _made(job, cache)


def _made(job: Job, cache: Cache) -> MadeFiles:
    made: MadeFiles = {}
    for output in job.outputs(cache):
        key = _key(job, output) if cache.folder else ""
        data = cache.get(key)
        files = None if data is None else _files(output.name, data, folder=output.folder)
        if files is None:
            data = output.make()
            cache.put(key, data)
            files = _files(output.name, data, folder=output.folder)
        made |= files or {}
    return made


def _files(name: str, data: bytes, *, folder: bool) -> MadeFiles | None:
    """The bytes of an output as files; None where they are not those of a folder, or name a file outside it."""
    if not folder:
        return {name: data}
    try:
        files = msgspec.msgpack.decode(data, type=dict[str, bytes])
    except msgspec.MsgspecError:
        return None
    return {f"{name}/{inner}": content for inner, content in files.items()} if all(map(is_inside, files)) else None
