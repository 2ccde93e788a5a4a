"""All blocks of a book or a site to look up: by name, by finished size, by family, by number of patches; its quilts."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Iterator, Sequence
from typing import Final

from blockdsl.document.content import (
    ColumnKind,
    DataCell,
    DataColumn,
    Definition,
    DefinitionList,
    Part,
    Parts,
    RichText,
    RowGroup,
    Table,
    TextRun,
    plain,
    section,
)
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookBlockFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import to_float
from blockdsl.wording.grammar import in_thousands, many
from blockdsl.wording.messages import Messages
from blockdsl.wording.sheet import families_in_order, format_family, format_finished

BlockPages = Sequence[tuple[BookBlockFacts, str]]
"""Blocks with where they are told, in the order of the book."""
QuiltPages = Sequence[tuple[QuiltFacts, str]]
"""Quilts likewise."""

_HEADS: Final[tuple[tuple[str, ColumnKind], ...]] = (
    ("block", "words"),
    ("finished", "words"),
    ("patches", "number"),
    ("fabrics", "number"),
)
_CM_IN_AN_INCH: Final = 2.54


def index_parts(found: BlockPages, words: Messages, quilts: QuiltPages = (), *, brief: bool = False) -> Parts:
    """Blocks by what a maker may know of them, then the quilts by size.

    A `brief` one lists names without measures, and the quilts behind the families.
    """
    families = list(_by_family(found, words))
    if brief and quilts:
        families.append((words("book-quilts"), _runs((quilt.name, target) for quilt, target in quilts)))
    names = [(block.name, target) for block, target in found] + [(quilt.name, target) for quilt, target in quilts]
    by_name = DefinitionList((Definition("", (_with_commas(_runs(names)),)),), "index")
    whole: list[tuple[str, Part | None]] = [
        ("index-by-name", by_name if brief else _table(found, words)),
        ("index-by-size", _looked_up(_by_size(found, quilts))),
        ("index-by-family", _looked_up(families)),
        ("index-by-patches", _looked_up(_by_patches(found, words))),
        ("book-quilts", None if brief else _looked_up(_by_size((), quilts))),
    ]
    return tuple(section(2, words(title), part) for title, part in whole if part is not None)


def _table(found: BlockPages, words: Messages) -> Table:
    rows: list[tuple[DataCell, ...]] = [
        (
            (TextRun(block.name, target=target),),
            plain(", ".join(format_finished(facts) for facts in block.sizes)),
            plain(in_thousands(len(block.sizes[0].placed), words)),
            plain(str(len(block.sizes[0].fabrics))),
        )
        for block, target in sorted(found, key=lambda entry: _alphabetic(entry[0].name))
    ]
    columns = tuple(DataColumn(words(f"index-head-{head}"), kind) for head, kind in _HEADS)
    return Table(words("index-caption"), columns, (RowGroup(tuple(rows)),))


def _by_size(found: BlockPages, quilts: QuiltPages) -> Iterator[tuple[str, list[TextRun]]]:
    """Under each size the blocks and quilts that have it, small to large, whatever the unit."""
    sizes: dict[tuple[float, str], list[TextRun]] = {}
    entries: list[tuple[BlockFacts | QuiltFacts, str]] = [
        *((facts, target) for block, target in found for facts in block.sizes),
        *quilts,
    ]
    for facts, target in entries:
        sizes.setdefault((_area(facts), format_finished(facts)), []).append(TextRun(facts.name, target=target))
    return ((size, sizes[area, size]) for area, size in sorted(sizes))


def _area(facts: BlockFacts | QuiltFacts) -> float:
    """In square centimetres, to put sizes of both units in order."""
    scale = _CM_IN_AN_INCH if facts.unit == "in" else 1.0
    return round(to_float(facts.finished[0]) * to_float(facts.finished[1]) * scale * scale, 4)


def _by_family(found: BlockPages, words: Messages) -> Iterator[tuple[str, list[TextRun]]]:
    families: dict[str, list[TextRun]] = {}
    for block, target in found:
        families.setdefault(format_family(block.sizes[0]), []).append(TextRun(block.name, target=target))
    return ((family, families[family]) for family in families_in_order(families, words))


def _by_patches(found: BlockPages, words: Messages) -> Iterator[tuple[str, list[TextRun]]]:
    counts: dict[int, list[TextRun]] = {}
    for block, target in found:
        counts.setdefault(len(block.sizes[0].placed), []).append(TextRun(block.name, target=target))
    return ((many(count, "patches", words), counts[count]) for count in sorted(counts))


def _runs(names: Iterable[tuple[str, str]]) -> list[TextRun]:
    return [TextRun(name, target=target) for name, target in names]


def _looked_up(lines: Iterable[tuple[str, list[TextRun]]]) -> DefinitionList | None:
    """What is looked up, and behind it the blocks on one line with commas between; nothing where there is none."""
    entries = tuple(Definition(text, (_with_commas(runs),)) for text, runs in lines)
    return DefinitionList(entries, "index") if entries else None


def _with_commas(runs: Sequence[TextRun]) -> RichText:
    ordered = sorted(runs, key=lambda run: _alphabetic(run.text))
    return tuple(part for number, run in enumerate(ordered) for part in ((TextRun(", "), run) if number else (run,)))


def _alphabetic(name: str) -> tuple[str, str]:
    """Accents and capitals do not part names."""
    apart = unicodedata.normalize("NFKD", name)
    return "".join(letter for letter in apart if not unicodedata.combining(letter)).casefold(), name
