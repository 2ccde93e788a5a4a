"""The head of the first page of foundation papers: whose they are, how to sew on them, bars, how sections join."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.foundationfacts import FoundationFacts
from blockdsl.facts.stepfacts import StepFacts
from blockdsl.fullsize.head import Guide, footer, headed
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Mark, Path, moved
from blockdsl.marks.prose import TextStyle, paragraph
from blockdsl.marks.theme import GUTTER_PT, HAIRLINE_PT, INK, RULE, Box
from blockdsl.pictures.block import fabrics_of
from blockdsl.pictures.step import apart_picture
from blockdsl.wording.grammar import capital
from blockdsl.wording.lengths import length_words, show_extent
from blockdsl.wording.messages import Messages, messages, words_of
from blockdsl.wording.sheet import part_words

_PICTURE_PT: Final = 96.0
_ACROSS: Final = 3
_SAID: Final = TextStyle(8.5, "regular", INK)
_USE: Final = ("scale", "sew", "pieces", "cut")
_CARE: Final = ("cutter", "fold", "iron", "blades")


def foundation_head(facts: BlockFacts, box: Box) -> tuple[tuple[Mark, ...], float]:
    """The marks of the head at the top of the box, and the y of the rule that ends it."""
    words = messages(facts.language)
    size = show_extent(facts.finished, facts.unit, words_of(facts))
    marks, y = headed(facts.name, words("papers-guide-subtitle", size=size), _guide(facts, words), box, words)
    joined = list(_joined(facts))
    if not joined:
        return marks, y
    y += GUTTER_PT
    said: list[Mark] = []
    width = (box.width_pt - (_ACROSS - 1) * GUTTER_PT) / _ACROSS
    for start in range(0, len(joined), _ACROSS):
        tallest = 0.0
        for place, (foundation, step) in enumerate(joined[start : start + _ACROSS]):
            height, drawn = _sections(foundation, step, facts, width, words)
            said += moved(drawn, box.x_pt + place * (width + GUTTER_PT), y)
            tallest = max(tallest, height)
        y += tallest + GUTTER_PT / 2
    said.append(Path((((box.x_pt, y), (box.right_pt, y)),), closed=False, stroke=RULE, stroke_width_pt=HAIRLINE_PT))
    return (*marks, *said), y


def _joined(facts: BlockFacts) -> Iterator[tuple[FoundationFacts, StepFacts]]:
    """The units of several sections, each with the step that joins them."""
    for step in facts.steps:
        if step.foundation is not None and len(step.sections) > 1:
            yield facts.foundations[step.foundation], step


def _sections(
    foundation: FoundationFacts, step: StepFacts, facts: BlockFacts, width: float, words: Messages
) -> tuple[float, tuple[Mark, ...]]:
    """The sections a little apart, each with its letter, and in what order they are joined."""
    joins = words("papers-sheet-then").join(join.name for join in foundation.joins)
    told = words("papers-sheet-join", title=capital(part_words(foundation.title, words)), joins=joins)
    box = Box(0.0, 0.0, width, _PICTURE_PT)
    picture, _ = apart_picture(step.hands[0], fabrics_of(facts), box, told)
    height, said = paragraph(fraction_text(told), width, _SAID)
    return _PICTURE_PT + 4.0 + height, (picture, *moved(said, 0.0, _PICTURE_PT + 4.0))


def _guide(facts: BlockFacts, words: Messages) -> Guide:
    seam = fraction_text(length_words(facts.seam, facts.unit, words))
    use = tuple(words(f"papers-guide-{each}", seam=seam) for each in _USE)
    care = tuple(words(f"papers-care-{each}") for each in _CARE)
    return Guide(words("papers-guide-title"), use, care)


def foundation_footer(facts: BlockFacts, box: Box, page: int, pages: int) -> tuple[Mark, ...]:
    """The last line of a page: block name, finished size, page n of m."""
    return footer(facts, box, page, pages, what="foundation-what")
