"""The steps of a block: what the signs in the pictures mean, then each step with its pictures and its words."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from functools import partial
from typing import Final

from msgspec.structs import replace

from blockdsl.document.content import (
    NO_LESSONS,
    Lessons,
    Paragraph,
    Parts,
    Picture,
    Sign,
    Signs,
    Step,
    StepPart,
    Steps,
    WebLink,
    plain,
)
from blockdsl.document.pictures import filling, photo
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import StepFacts
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.theme import Box
from blockdsl.model.maker import shown_address
from blockdsl.model.remark import Remark
from blockdsl.pictures.hands import StepLook, hand_pictures, look_of
from blockdsl.pictures.scene import technique_picture
from blockdsl.pictures.step import arrow, dot, letter_mark, stitches
from blockdsl.raster import Raster
from blockdsl.wording import StepPart as PartText
from blockdsl.wording import StepText
from blockdsl.wording.messages import Messages
from blockdsl.wording.step_pictures import format_too_many

_PICTURE_PT: Final = (264.0, 118.0)
_SCENE_PT: Final = (180.0, 136.0)
_SIGN_PT: Final = (24.0, 13.0)


def steps_of(facts: BlockFacts, lessons: Lessons = NO_LESSONS) -> Parts:
    """The key and all steps; nothing for a block of one patch, a remark for one of too many."""
    if facts.steps:
        look = look_of(facts)
        return (
            _key(facts, look.words),
            Steps(tuple(_with_lesson(step_of(step, look), step, lessons) for step in facts.steps)),
        )
    if facts.sewing is None or facts.sewing.is_told:
        return ()
    return (Paragraph(plain(format_too_many(facts))),)


def _with_lesson(told: Step, step: StepFacts, lessons: Lessons) -> Step:
    """The step with what leads to the lesson of its method."""
    by_method = step.made_by is not None or bool(step.lesson)
    return replace(told, lesson=lessons.get(step.method)) if by_method else told


def step_of(step: StepFacts, look: StepLook, signs: float = 1.0) -> Step:
    """One step; its pictures are those of each hand, or of each part of a method. `signs` makes theirs larger."""
    text = look.text(step)
    hands = tuple(filling(partial(_hand, step, place, look, signs), *_PICTURE_PT) for place in range(len(step.hands)))
    parts = tuple(
        step_part(letter, part, None if part.picture is None else _scene(step, part.picture, look))
        for letter, part in text.lettered
    )
    made = step_with(text, parts, () if any(part.picture is not None for part in parts) else hands)
    return replace(made, links=web_links(step.remarks, look.words), photos=photos_of(step.remarks, look.photos))


def step_with(
    text: StepText, parts: tuple[StepPart, ...], pictures: tuple[Picture, ...] = (), remark: str = ""
) -> Step:
    """A step of those words."""
    return Step(text.number, text.name, parts, text.made, text.size, pictures, remark, text.notes)


def web_links(remarks: Iterable[Remark], words: Messages) -> tuple[WebLink, ...]:
    """The addresses among the designer's remarks."""
    return tuple(
        WebLink(remark.text, remark.address, words("sheet-qr", address=shown_address(remark.address)))
        for remark in remarks
        if remark.address
    )


def photos_of(remarks: Iterable[Remark], pixels: Mapping[str, Raster]) -> tuple[Picture, ...]:
    """The pictures among the designer's remarks."""
    return tuple(photo(pixels[remark.picture], remark.text) for remark in remarks if remark.picture in pixels)


def step_part(letter: str, part: PartText, picture: Picture | None = None) -> StepPart:
    """A part of a step."""
    return StepPart(part.sentences, letter, part.heading, part.measure, part.after, picture)


def _hand(step: StepFacts, place: int, look: StepLook, signs: float, box: Box) -> tuple[Mark, ...]:
    return hand_pictures(step, place, look, box, signs)


def scenes_of(step: StepFacts, look: StepLook) -> tuple[Picture, ...]:
    """The scenes of a step's lesson, for one that is sewn as an earlier step."""
    return tuple(_scene(step, place, look) for place in range(len(step.lesson)))


def _scene(step: StepFacts, place: int, look: StepLook) -> Picture:
    scene = step.lesson[place].pictures[0]
    return filling(lambda box: technique_picture(scene, step.fabrics, look.unit, box, look.language), *_SCENE_PT)


def _key(facts: BlockFacts, words: Messages) -> Signs:
    """What the signs in the pictures mean; the dot where a seam ends short of the edge."""
    return Signs(tuple(Sign(picture, words(f"steps-key-{what}")) for what, picture in _signs(facts)))


def _signs(facts: BlockFacts) -> Iterator[tuple[str, Picture]]:
    def drawn(*marks: Mark) -> Picture:
        return Picture(lambda box: (moved(marks, box.x_pt, box.y_pt), box), *_SIGN_PT, repeats=True)

    width, middle = _SIGN_PT[0], _SIGN_PT[1] / 2
    yield "seam", drawn(*stitches((0.0, middle), (width, middle)))
    yield "press", drawn(*arrow((4.0, middle), (18.0, middle), 13.0))
    yield "letter", drawn(*letter_mark("A", width / 2, middle))
    if any(seam.dots for step in facts.steps for hand in step.hands for stage in hand.stages for seam in stage.seams):
        yield "dot", drawn(dot(width / 2, middle))
