"""All blocks of a site to look up: by name, by finished size, by family, by number of patches; and its quilts."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Iterator, Sequence
from typing import Final

from blockdsl.document.block import say_finished
from blockdsl.document.parts import (
    Cell,
    Column,
    Heading,
    Pairs,
    RowGroup,
    Run,
    Section,
    Table,
    WebPage,
    Words,
    plain,
)
from blockdsl.facts.bookfacts import BookBlockFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import to_float
from blockdsl.pictures.lengths import plain_extent
from blockdsl.pictures.words import families_in_order, many, say_family

Found = Sequence[tuple[BookBlockFacts, str]]
"""Blocks with the names of their pages, in the order of the book."""
FoundQuilts = Sequence[tuple[QuiltFacts, str]]
"""Quilts likewise."""

_COLUMNS: Final = (
    Column("block", "words"),
    Column("finished", "words"),
    Column("patches", "number"),
    Column("fabrics", "number"),
)


def index_page(found: Found, name: str, quilts: FoundQuilts = ()) -> WebPage:
    """The page of all blocks, then of the quilts; `name` is that of its file."""
    parts = (_by_name(found), _by_size(found), _by_family(found), _by_patches(found))
    return WebPage(name, "Blocks by name, size, family and patches", (*parts, *_quilts(quilts)))


def _quilts(quilts: FoundQuilts) -> Iterator[Section]:
    """The quilts with their sizes; nothing when there are none."""
    if quilts:
        lines = [
            (f"{plain_extent(quilt.finished, quilt.unit)} {quilt.unit}", [Run(quilt.name, target=page)])
            for quilt, page in sorted(quilts, key=lambda entry: _alphabetic(entry[0].name))
        ]
        yield _section("Quilts", _looked_up(lines))


def _section(title: str, *parts: Table | Pairs) -> Section:
    return Section(Heading(2, plain(title)), parts)


def _by_name(found: Found) -> Section:
    rows: list[tuple[Cell, ...]] = [
        (
            (Run(block.name, target=page),),
            plain(", ".join(say_finished(facts) for facts in block.sizes)),
            plain(f"{len(block.sizes[0].placed):,}"),
            plain(str(len(block.sizes[0].fabrics))),
        )
        for block, page in sorted(found, key=lambda entry: _alphabetic(entry[0].name))
    ]
    return _section("By name", Table("All blocks by name", _COLUMNS, (RowGroup(tuple(rows)),)))


def _alphabetic(name: str) -> str:
    """Accents and capitals do not part names."""
    return "".join(
        letter for letter in unicodedata.normalize("NFKD", name) if not unicodedata.combining(letter)
    ).casefold()


def _by_size(found: Found) -> Section:
    """Each finished size with what is made at it: inches before centimetres, small before large."""
    sizes: dict[tuple[bool, float, float], tuple[str, list[Run]]] = {}
    for block, page in found:
        for number, facts in enumerate(block.sizes, start=1):
            width, height = map(to_float, facts.finished)
            target = f"{page}#size-{number}" if len(block.sizes) > 1 else page
            _, runs = sizes.setdefault((facts.unit != "in", width, height), (say_finished(facts), []))
            runs.append(Run(block.name, target=target))
    return _section(
        "By finished size", _looked_up(words for _, words in sorted(sizes.items(), key=lambda item: item[0]))
    )


def _by_family(found: Found) -> Section:
    families: dict[str, list[Run]] = {}
    for block, page in found:
        families.setdefault(say_family(block.sizes[0]), []).append(Run(block.name, target=page))
    lines = ((family, families[family]) for family in families_in_order(families))
    return _section("By family", _looked_up(lines))


def _by_patches(found: Found) -> Section:
    counts: dict[int, list[Run]] = {}
    for block, page in found:
        counts.setdefault(len(block.sizes[0].placed), []).append(Run(block.name, target=page))
    lines = ((many(count, "patch", "patches"), counts[count]) for count in sorted(counts))
    return _section("By number of patches", _looked_up(lines))


def _looked_up(lines: Iterable[tuple[str, list[Run]]]) -> Pairs:
    """What is looked up, and behind it the blocks on one line with commas between."""
    return Pairs(tuple((words, (_with_commas(runs),)) for words, runs in lines), "terms")


def _with_commas(runs: Sequence[Run]) -> Words:
    ordered = sorted(runs, key=lambda run: _alphabetic(run.text))
    return tuple(part for number, run in enumerate(ordered) for part in ((Run(", "), run) if number else (run,)))
