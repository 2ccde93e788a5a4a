"""The steps of a block on its web page: cards in order, with the pictures of the sheet."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from blockdsl.drawing.marks import Page
from blockdsl.drawing.steps import hand_pictures, look_of
from blockdsl.drawing.steps_words import say_take
from blockdsl.drawing.technique_picture import technique_picture
from blockdsl.drawing.theme import Box
from blockdsl.drawing.web_parts import Card, Cards, Heading, Paragraph, Part, Picture, Run, plain
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import StepFacts

_PICTURE: Final = Box(0.0, 0.0, 264.0, 118.0)
_SCENE: Final = Box(4.0, 4.0, 172.0, 128.0)


def step_cards(facts: BlockFacts, level: int) -> list[Part]:
    """A line on how to read the pictures and the cards of all steps; nothing when there are none."""
    if not facts.steps:
        return []
    words = (
        "Sew in this order. The pictures show the right side, finished: dashes are seams to sew, arrows show the way "
        "to press."
    )
    cards = tuple(card for step in facts.steps for card in _cards(facts, step, level))
    return [Paragraph((Run(words, "quiet"),)), Cards("steps", cards)]


def _cards(facts: BlockFacts, step: StepFacts, level: int) -> Iterator[Card]:
    """One card; of a unit made by a method a card for each thing to do after it."""
    look = look_of(facts)
    drawn = [hand_pictures(step, place, look, _PICTURE) for place in range(len(step.hands))]
    pages = [Page(_PICTURE.width_pt, _PICTURE.height_pt, marks) for marks in drawn]
    made = f", make {step.count}" if step.count > 1 else ""
    heading = Heading(level, (Run(f"{step.number} "), Run(step.title + made)))
    take = say_take(step, look.labels, facts.unit)
    quiet = (Paragraph((Run(take, "quiet"),)),) if take else ()
    told = step.sentences[-1] if step.lesson else step.text
    yield Card((*map(Picture, pages), heading, *quiet, Paragraph(plain(told))))
    for place, each in enumerate(step.lesson):
        scene = technique_picture(each.pictures[0], step.fabrics, facts.unit, _SCENE)
        page = Page(_SCENE.right_pt + _SCENE.x_pt, _SCENE.bottom_pt + _SCENE.y_pt, (scene,))
        name = Heading(level, (Run(f"{step.number}{chr(ord('a') + place)} "), Run(each.title)))
        yield Card((Picture(page), name, Paragraph(plain(each.text))))
