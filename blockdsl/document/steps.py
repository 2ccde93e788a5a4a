"""The steps of a block on its web page: cards in order, with the pictures of the sheet."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from blockdsl.document.parts import Card, Cards, DocumentPart, Heading, Image, Paragraph, TextRun, plain
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import StepFacts
from blockdsl.marks.display_list import Page
from blockdsl.marks.theme import Box
from blockdsl.pictures.hands import StepLook, hand_pictures, look_of
from blockdsl.pictures.scene import technique_picture
from blockdsl.wording import StepPart
from blockdsl.wording.messages import words_of

_PICTURE: Final = Box(0.0, 0.0, 264.0, 118.0)
_SCENE: Final = Box(4.0, 4.0, 172.0, 128.0)


def step_cards(facts: BlockFacts, level: int) -> list[DocumentPart]:
    """A line on how to read the pictures and the cards of all steps; nothing when there are none."""
    if not facts.steps:
        return []
    words = words_of(facts)("steps-how")
    look = look_of(facts)
    cards = tuple(card for step in facts.steps for card in _cards(facts, step, look, level))
    return [Paragraph((TextRun(words, "quiet"),)), Cards("steps", cards)]


def _cards(facts: BlockFacts, step: StepFacts, look: StepLook, level: int) -> Iterator[Card]:
    """One card; of a unit made by a method a card for each part of it that has a picture."""
    text = look.text(step)
    drawn = [hand_pictures(step, place, look, _PICTURE) for place in range(len(step.hands))]
    pages = [Page(_PICTURE.width_pt, _PICTURE.height_pt, marks) for marks in drawn]
    made = f", {text.made}" if text.made else ""
    heading = Heading(level, (TextRun(f"{step.number} "), TextRun(text.name + made)))
    size = (Paragraph((TextRun(text.size, "quiet"),)),) if text.size else ()
    alone = [_part(letter, part) for letter, part in text.lettered if part.picture is None]
    yield Card((*map(Image, pages), heading, *size, *alone))
    for letter, part in text.lettered:
        if part.picture is None:
            continue
        scene = technique_picture(
            step.lesson[part.picture].pictures[0], step.fabrics, facts.unit, _SCENE, facts.language
        )
        page = Page(_SCENE.right_pt + _SCENE.x_pt, _SCENE.bottom_pt + _SCENE.y_pt, (scene,))
        name = Heading(level, (TextRun(f"{step.number}{letter.strip('()')} "), TextRun(part.heading or text.name)))
        yield Card((Image(page), name, _part("", part)))


def _part(letter: str, part: StepPart) -> Paragraph:
    return Paragraph(plain(f"{letter} {part.text}".strip()))
