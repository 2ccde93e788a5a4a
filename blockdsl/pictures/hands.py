"""The pictures of a sewing step: what is taken apart, and what comes of it, once more for the other hand."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

from msgspec import Struct

from blockdsl.facts.blockfacts import BlockFacts, RulerUnit
from blockdsl.facts.stepfacts import StepFacts, Variant
from blockdsl.geometry import to_float
from blockdsl.marks.display_list import Mark
from blockdsl.marks.theme import (
    Box,
)
from blockdsl.model.language import Language
from blockdsl.pictures.block import Fabrics, fabrics_of
from blockdsl.pictures.step import apart_picture, arrow, joined_picture
from blockdsl.raster import Raster
from blockdsl.sewing.steps.upright import upright
from blockdsl.wording import StepText, step_texts
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.step_pictures import format_apart, format_joined, format_step, labels_of


class StepLook(Struct, frozen=True):
    """What all cards of a block share: fabrics and their labels, its ruler, the words of its steps, its photographs."""

    fabrics: Fabrics
    labels: dict[str, str]
    unit: RulerUnit
    texts: Mapping[int, StepText]
    words: Messages
    language: Language
    photos: Mapping[str, Raster] = MappingProxyType({})

    @property
    def title(self) -> str:
        """The heading of the section."""
        return self.words("sheet-steps")

    def text(self, step: StepFacts) -> StepText:
        """The words of a step."""
        return self.texts[step.number]


def look_of(facts: BlockFacts) -> StepLook:
    """The look of a block's steps, and their words."""
    texts = {text.number: text for text in step_texts(facts)}
    photos = dict(facts.photos)
    return StepLook(fabrics_of(facts), labels_of(facts), facts.unit, texts, words_of(facts), facts.language, photos)


_INNER_PT: Final = 6.0


_ARROW_ROOM_PT: Final = 20.0


def hand_pictures(step: StepFacts, place: int, look: StepLook, box: Box, size: float = 1.0) -> tuple[Mark, ...]:
    """The two pictures of one hand in a box, an arrow between them; one alone for what a method makes.

    Side by side, or one above the other where they come out larger so.
    """
    hand = upright(step.hands[place])
    edge = _INNER_PT * size
    inner = Box(box.x_pt + edge, box.y_pt + edge, box.width_pt - 2 * edge, box.height_pt - 2 * edge)
    if not hand.ingredients:
        # Areas of papers are numbered in the order of sewing, in which the picture has them.
        areas = [f"{letter}{place}" for letter in step.sections for place in range(1, len(hand.picture) + 1)]
        says = format_step(step, look.words)
        return (joined_picture(hand, look.fabrics, inner, says, size, areas)[0],)
    first, second, turned = _halves(hand, inner, _ARROW_ROOM_PT * size)
    apart, _ = apart_picture(hand, look.fabrics, first, format_apart(step, look.labels, look.words), size)
    joined, _ = joined_picture(hand, look.fabrics, second, format_joined(step, look.words), size)
    x, y = (first.right_pt + second.x_pt) / 2, (first.bottom_pt + second.y_pt) / 2
    reach = 6.0 * size
    if turned:
        x = inner.x_pt + inner.width_pt / 2
        return (apart, *arrow((x, y - reach), (x, y + reach), 10.0 * size), joined)
    y = inner.y_pt + inner.height_pt / 2
    return (apart, *arrow((x - reach, y), (x + reach, y), 10.0 * size), joined)


def _halves(hand: Variant, box: Box, between: float) -> tuple[Box, Box, bool]:
    """Boxes for the two pictures, and whether they lie one above the other."""
    wide, high = (to_float(side) for side in hand.extent)
    across, down = (box.width_pt - between) / 2, (box.height_pt - between) / 2
    beside = min(across / wide, box.height_pt / high)
    below = min(box.width_pt / wide, down / high)
    if beside >= below:
        right = Box(box.x_pt + across + between, box.y_pt, across, box.height_pt)
        return Box(box.x_pt, box.y_pt, across, box.height_pt), right, False
    lower = Box(box.x_pt, box.y_pt + down + between, box.width_pt, down)
    return Box(box.x_pt, box.y_pt, box.width_pt, down), lower, True
