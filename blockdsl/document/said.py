"""All the words that a page says, for whoever looks for one of them."""

from __future__ import annotations

from collections.abc import Iterator

from blockdsl.document.content import (
    AtSizes,
    Cards,
    Columns,
    DataCell,
    DefinitionList,
    Heading,
    Listing,
    Paragraph,
    Part,
    Parts,
    Places,
    Plate,
    Prose,
    Quotation,
    Reference,
    RichText,
    Section,
    Step,
    Steps,
    Table,
    Tick,
    WebLink,
    WebPage,
)


def words_on(page: WebPage) -> str:
    """The title and every word of the page, a space between what stands apart."""
    return " ".join([page.title, *_of(page.parts)])


def _of(parts: Parts) -> Iterator[str]:
    for part in parts:
        yield from _said(part)


def _said(part: Part) -> Iterator[str]:  # noqa: C901, PLR0912 - one line for each part that has words
    match part:
        case Heading():
            yield _run_together(part.words)
            yield part.aside
        case Paragraph() | Tick():
            yield _run_together(part.words)
        case Listing():
            for item in part.items:
                yield from _of(item)
        case Quotation() | Prose():
            yield from _of(part.parts)
        case Section():
            yield from _said(part.heading)
            yield from _of(part.parts)
        case Columns():
            yield from _of(part.sections)
        case Plate():
            yield from _of(part.beside)
        case DefinitionList():
            for entry in part.entries:
                yield from (entry.name, *map(_run_together, entry.lines))
        case Cards():
            for card in part.cards:
                yield from _of(card.parts)
        case Steps():
            for step in part.steps:
                yield from _said_in_step(step)
        case Places():
            yield from (entry.text for entry in part.entries)
        case Reference():
            yield part.text
        case WebLink():
            yield part.words
        case AtSizes():
            yield from _of(part.sizes[0].parts())
        case Table():
            yield part.caption
            for group in part.groups:
                yield _run_together(group.words)
                yield from (_cell(cell) for row in group.rows for cell in row)
        case _:
            pass


def _said_in_step(step: Step) -> Iterator[str]:
    yield from (step.name, step.made, step.size, step.remark, *step.notes, *(link.words for link in step.links))
    for part in step.parts:
        yield from (part.heading, part.text)


def _run_together(words: RichText) -> str:
    return "".join(run.text for run in words)


def _cell(cell: DataCell) -> str:
    return _run_together(cell) if isinstance(cell, tuple) else ""
