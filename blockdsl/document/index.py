"""All blocks of a site to look up: by name, by finished size, by family, by number of patches; and its quilts."""

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
    Heading,
    RichText,
    RowGroup,
    Section,
    Table,
    TextRun,
    WebPage,
    plain,
)
from blockdsl.facts.bookfacts import BookBlockFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import to_float
from blockdsl.wording.grammar import in_thousands, many
from blockdsl.wording.lengths import plain_size
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import families_in_order, format_family, format_finished

BlockPages = Sequence[tuple[BookBlockFacts, str]]
"""Blocks with the names of their pages, in the order of the book."""
QuiltPages = Sequence[tuple[QuiltFacts, str]]
"""Quilts likewise."""

_HEADS: Final[tuple[tuple[str, ColumnKind], ...]] = (
    ("block", "words"),
    ("finished", "words"),
    ("patches", "number"),
    ("fabrics", "number"),
)


def index_page(found: BlockPages, name: str, words: Messages, quilts: QuiltPages = ()) -> WebPage:
    """The page of all blocks, then of the quilts; `name` is that of its file."""
    parts = (_by_name(found, words), _by_size(found, words), _by_family(found, words), _by_patches(found, words))
    return WebPage(name, words("index-title"), (*parts, *_quilts(quilts, words)))


def _quilts(quilts: QuiltPages, words: Messages) -> Iterator[Section]:
    """The quilts with their sizes; nothing when there are none."""
    if quilts:
        lines = [
            (f"{plain_size(quilt.finished, quilt.unit, words_of(quilt))}", [TextRun(quilt.name, target=page)])
            for quilt, page in sorted(quilts, key=lambda entry: _alphabetic(entry[0].name))
        ]
        yield _section(words("book-quilts"), _looked_up(lines))


def _section(title: str, *parts: Table | DefinitionList) -> Section:
    return Section(Heading(2, plain(title)), parts)


def _by_name(found: BlockPages, words: Messages) -> Section:
    rows: list[tuple[DataCell, ...]] = [
        (
            (TextRun(block.name, target=page),),
            plain(", ".join(format_finished(facts) for facts in block.sizes)),
            plain(in_thousands(len(block.sizes[0].placed), words)),
            plain(str(len(block.sizes[0].fabrics))),
        )
        for block, page in sorted(found, key=lambda entry: _alphabetic(entry[0].name))
    ]
    columns = tuple(DataColumn(words(f"index-head-{head}"), kind) for head, kind in _HEADS)
    return _section(words("index-by-name"), Table(words("index-caption"), columns, (RowGroup(tuple(rows)),)))


def _alphabetic(name: str) -> str:
    """Accents and capitals do not part names."""
    return "".join(
        letter for letter in unicodedata.normalize("NFKD", name) if not unicodedata.combining(letter)
    ).casefold()


def _by_size(found: BlockPages, words: Messages) -> Section:
    """Each finished size with what is made at it: inches before centimetres, small before large."""
    sizes: dict[tuple[bool, float, float], tuple[str, list[TextRun]]] = {}
    for block, page in found:
        for number, facts in enumerate(block.sizes, start=1):
            width, height = map(to_float, facts.finished)
            target = f"{page}#size-{number}" if len(block.sizes) > 1 else page
            _, runs = sizes.setdefault((facts.unit != "in", width, height), (format_finished(facts), []))
            runs.append(TextRun(block.name, target=target))
    return _section(
        words("index-by-size"), _looked_up(line for _, line in sorted(sizes.items(), key=lambda item: item[0]))
    )


def _by_family(found: BlockPages, words: Messages) -> Section:
    families: dict[str, list[TextRun]] = {}
    for block, page in found:
        families.setdefault(format_family(block.sizes[0]), []).append(TextRun(block.name, target=page))
    lines = ((family, families[family]) for family in families_in_order(families, words))
    return _section(words("index-by-family"), _looked_up(lines))


def _by_patches(found: BlockPages, words: Messages) -> Section:
    counts: dict[int, list[TextRun]] = {}
    for block, page in found:
        counts.setdefault(len(block.sizes[0].placed), []).append(TextRun(block.name, target=page))
    lines = ((many(count, "patches", words), counts[count]) for count in sorted(counts))
    return _section(words("index-by-patches"), _looked_up(lines))


def _looked_up(lines: Iterable[tuple[str, list[TextRun]]]) -> DefinitionList:
    """What is looked up, and behind it the blocks on one line with commas between."""
    return DefinitionList(tuple(Definition(text, (_with_commas(runs),)) for text, runs in lines), "terms")


def _with_commas(runs: Sequence[TextRun]) -> RichText:
    ordered = sorted(runs, key=lambda run: _alphabetic(run.text))
    return tuple(part for number, run in enumerate(ordered) for part in ((TextRun(", "), run) if number else (run,)))
