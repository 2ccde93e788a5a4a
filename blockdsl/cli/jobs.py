"""Pieces of work that stand alone: all outputs of one block, a book, or a web site. Any process can do one."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Final, Literal

from blockdsl.cli.cache import Cache
from blockdsl.cli.cache_keys import key_of
from blockdsl.cli.outputs import Output, Print, block_outputs, book_output, quilt_outputs, size_outputs
from blockdsl.cli.sites import site_output, unpacked

if TYPE_CHECKING:
    from blockdsl.facts import BlockFacts, BookFacts
    from blockdsl.facts.quiltfacts import QuiltFacts

WORTH_SHARING: Final = 10
"""So many blocks that must be drawn take longer than it takes other processes to start."""


@dataclass(frozen=True, slots=True)
class Job:
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
    def quilts(self) -> tuple[QuiltFacts, ...]:
        """The quilts whose cloth it tells."""
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
            yield site_output(self.facts, self.stem)
        elif isinstance(self.facts, BookFacts):
            yield book_output(self.facts, self.stem, self.printed, cache)
        elif isinstance(self.facts, QuiltFacts):
            yield from quilt_outputs(self.facts, self.stem, self.kinds, self.printed)
        elif self.what == "size":
            yield from size_outputs(self.facts, self.stem, self.kinds, self.printed)
        else:
            yield from block_outputs(self.facts, self.stem, self.kinds, self.printed)


Made = dict[str, bytes]
"""Files by their names in the folder."""


@dataclass(frozen=True, slots=True)
class Outlook:
    """What a job will write: the `names` of its files but for those of a site, and whether all seem to be kept."""

    names: tuple[str, ...]
    is_kept: bool


def outlook(job: Job, cache: Cache) -> Outlook:
    """Look at a job before it is done."""
    outputs = list(job.outputs(cache))
    kept = cache.folder is not None and all(cache.has(key_of(*output.depends)) for output in outputs)
    return Outlook(tuple(output.name for output in outputs if not output.folder), kept)


def do(job: Job, folder: Path | None) -> Made:
    """The job's files, each from the cache in `folder` or made now and kept there."""
    cache = Cache(folder)
    made: Made = {}
    try:
        for output in job.outputs(cache):
            data = output.make() if cache.folder is None else cache.made(key_of(*output.depends), output.make)
            made |= unpacked(output.name, data) if output.folder else {output.name: data}
    except Exception as fault:
        fault.add_note(f"while working on {job.source}")
        raise
    finally:
        cache.tidy()
    return made
