"""All the words that a page says, for whoever looks for one of them."""

from __future__ import annotations

from collections.abc import Iterator

from blockdsl.document.parts import (
    Cards,
    DataCell,
    DefinitionList,
    DocumentPart,
    DocumentParts,
    DocumentSection,
    Heading,
    Listing,
    Paragraph,
    Places,
    Quotation,
    Table,
    TextRun,
    Tick,
    WebPage,
)


def words_on(page: WebPage) -> str:
    """The title and every word of the page, a space between what stands apart."""
    return " ".join([page.title, *_of(page.parts)])


def _of(parts: DocumentParts) -> Iterator[str]:
    for part in parts:
        yield from _said(part)


def _said(part: DocumentPart) -> Iterator[str]:  # noqa: C901, PLR0912 - one line for each part that has words
    match part:
        case Heading() | Paragraph() | Tick():
            yield _run_together(part.words)
        case Listing():
            for item in part.items:
                yield from _of(item)
        case Quotation():
            yield from _of(part.parts)
        case DocumentSection():
            yield _run_together(part.heading.words)
            yield from _of(part.parts)
        case DefinitionList():
            for name, lines in part.entries:
                yield from (name, *map(_run_together, lines))
        case Cards():
            for card in part.cards:
                yield from _of(card.parts)
        case Places():
            yield from (entry.text for entry in part.entries)
        case Table():
            yield part.caption
            for group in part.groups:
                yield _run_together(group.words)
                yield from (_cell(cell) for row in group.rows for cell in row)
        case _:
            pass


def _run_together(words: tuple[TextRun, ...]) -> str:
    return "".join(run.text for run in words)


def _cell(cell: DataCell) -> str:
    return _run_together(cell) if isinstance(cell, tuple) else ""
