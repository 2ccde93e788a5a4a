"""The blocks of the library at the size that they have, and at others."""

from __future__ import annotations

import os
import re
from dataclasses import dataclass
from functools import lru_cache
from zlib import crc32

from blockdsl import pipeline
from blockdsl.analysis import FileReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts import BlockFacts
from blockdsl.geometry.fraction import read_fraction
from blockdsl.resources import library_folder, library_names, library_path

FAMILIES = [name for name in library_names() if name not in ("basics", "demo/palette", "demo/book")]
OWN = "own size"
SIZES = (OWN, "6 in", "9 in", "30 cm")
"""Widths; the height goes with it."""
EVERY_SIZE = bool(os.environ.get("BLOCKDSL_EVERY_SIZE"))
SIZE = re.compile(r"^  size (\S+(?: \d+/\d+)?)(?: x (\S+(?: \d+/\d+)?))? (?:in|cm)$", re.MULTILINE)
OF_A_SIZE = re.compile(r"^  (expect|measure) .*\n", re.MULTILINE)
"""Lines that hold for a block's own size alone."""
PARAGRAPH = re.compile(r'^block "([^"]*)"\n(?:(?: .*)?\n)*', re.MULTILINE)
"""A block of the library, from the line that names it to the next line at the margin."""
LAST = 1_000_000
"""No file has so many lines."""


@dataclass(frozen=True, slots=True)
class Tried:
    """A block at a size, and the codes of the warnings about its lines."""

    facts: BlockFacts
    warned: frozenset[str]


@lru_cache(64)
def tried(name: str, size: str = OWN, more: str = "", only: frozenset[str] | None = None) -> tuple[Tried, ...]:
    """The blocks of a file of the library, of a width or as they stand, with one more line in each; some alone."""
    text, problems = library_path(name).read_text(encoding="utf-8"), Problems()
    if only is not None:
        text = PARAGRAPH.sub(lambda found: found[0] if found[1] in only else "", text)
    if size != OWN:
        width, unit = size.split()
        line = f"\n  {more}" if more else ""
        text = SIZE.sub(lambda old: _sized(old[1], old[2] or old[1], width, unit) + line, OF_A_SIZE.sub("", text))
    source = Source(str(library_path(name)), text)
    facts = pipeline.run(source, FileReader(library_folder()), problems).facts
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    begins = {block.name: _line_of(block.name, source.text) for block in facts.blocks}
    found = []
    for block in facts.blocks:
        ends = min((line for line in begins.values() if line > begins[block.name]), default=LAST)
        mine = (problem.code for problem in problems if begins[block.name] <= problem.span.line < ends)
        found.append(Tried(block, frozenset(mine)))
    return tuple(found)


def blocks_of(name: str, size: str = OWN) -> tuple[BlockFacts, ...]:
    return tuple(each.facts for each in tried(name, size))


def others(name: str, size: str, more: str = "") -> tuple[Tried, ...]:
    """The same, without those whose own size this is: they are tried as they stand."""
    if size == OWN:
        return tried(name, size, more)
    own = {facts.name: (facts.finished, facts.unit) for facts in blocks_of(name)}
    names = frozenset(block for block in own if _is_its_turn(block, size))
    found = tried(name, size, more, names) if names else ()
    assert names <= {each.facts.name for each in found}
    return tuple(
        each
        for each in found
        if each.facts.name in names and (each.facts.finished, each.facts.unit) != own[each.facts.name]
    )


def _is_its_turn(block: str, size: str) -> bool:
    """Beside its own size every other block is tried at one more in every run, each at all of them by `make sewn`."""
    turn = crc32(block.encode()) % (2 * (len(SIZES) - 1))
    return size == OWN or EVERY_SIZE or SIZES[1:].index(size) == turn


def _line_of(block: str, text: str) -> int:
    """The line on which a block begins; one that is brought in from elsewhere begins behind the last line."""
    place = text.find(f'\nblock "{block}"')
    return text.count("\n", 0, place) + 2 if place >= 0 else LAST


def _sized(old_width: str, old_height: str, width: str, unit: str) -> str:
    across, down = (sum(map(read_fraction, side.split())) for side in (old_width, old_height))
    return f"  size {width} x {read_fraction(width) * down / across} {unit}"
