"""Steps as markup: each its number and name, its pictures, its words and its measure, at one size or at several."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.document.content import Step, StepPart, Steps
from blockdsl.export.html.elements import element, words
from blockdsl.export.html.picture import Enlarging, figure_markup
from blockdsl.export.html.runs import reference_markup, tick_markup, web_link_markup
from blockdsl.export.html.sizes import at_each


def steps_markup(sizes: Sequence[Steps], names: Sequence[str], level: int, enlarging: Enlarging) -> str | None:
    """The same steps at each size, with what differs said for each; None where they are not the same steps."""
    columns = list(zip(*(steps.steps for steps in sizes), strict=False))
    if any(len(steps.steps) != len(columns) for steps in sizes) or not all(map(_alike, columns)):
        return None
    items = [_step(column, names, level, enlarging) for column in columns]
    return element("ol", *items, class_=f"cards steps {sizes[0].kind}")


def _alike(column: Sequence[Step]) -> bool:
    """Whether they are one step, in as many parts."""
    return len({(step.number, step.name, len(step.parts), len(step.pictures)) for step in column}) == 1


def _step(column: Sequence[Step], names: Sequence[str], level: int, enlarging: Enlarging) -> str:
    """One step at each size: its number and name, its pictures, what to do part by part, what is added to it."""
    first = column[0]
    headings = []
    for step in column:
        made = element("span", words(f", {step.made}"), class_="made") if step.made else ""
        headings.append(
            element(f"h{level}", element("span", f"{step.number} ", class_="number"), words(step.name), made)
        )
    size = at_each([_quiet(step.size) for step in column], names)
    pictures = [
        at_each([figure_markup(picture, enlarging) for picture in pictured], names)
        for pictured in zip(*(step.pictures for step in column), strict=True)
    ]
    parts = [_part(alike, names, level + 1, enlarging) for alike in zip(*(step.parts for step in column), strict=True)]
    pictured = any(part.picture is not None for part in first.parts)
    told = element("ol", *(element("li", part) for part in parts), class_="parts") if pictured else "".join(parts)
    shown = element("div", *pictures, class_="shown") if pictures else ""
    after = at_each([_after(step, enlarging) for step in column], names)
    heading = at_each(headings, names)
    return element("li", heading, size, shown, told, after, class_="with-pictures" if pictured else None)


def _after(step: Step, enlarging: Enlarging) -> str:
    """What is added to a step: its lesson, a remark, the designer's notes, pictures and links."""
    notes = (element("p", words(note), class_="note", dir="auto") for note in step.notes)
    photos = (figure_markup(photo, enlarging) for photo in step.photos)
    lesson = reference_markup(step.lesson) if step.lesson is not None else ""
    return "".join((lesson, _quiet(step.remark), *notes, *photos, *map(web_link_markup, step.links)))


def _part(column: Sequence[StepPart], names: Sequence[str], level: int, enlarging: Enlarging) -> str:
    return "".join(
        at_each(markups, names) for markups in zip(*(_said(part, level, enlarging) for part in column), strict=True)
    )


def _said(part: StepPart, level: int, enlarging: Enlarging) -> tuple[str, ...]:
    """The heading of a part, its picture, its sentences, its measure, what follows."""
    sentences = " ".join(filter(None, ("" if part.heading else part.letter, *part.sentences)))
    return (
        element(f"h{level}", words(f"{part.letter} {part.heading}".strip())) if part.heading else "",
        figure_markup(part.picture, enlarging) if part.picture is not None else "",
        element("p", words(sentences), dir="auto") if sentences else "",
        tick_markup(element("strong", words(part.measure))) if part.measure else "",
        element("p", words(" ".join(part.after))) if part.after else "",
    )


def _quiet(said: str) -> str:
    return element("p", words(said), class_="quiet") if said else ""
