"""The sewing of a block one seam at a time, for a class or a film."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec import Struct

from blockdsl.export.html.picture import page_markup
from blockdsl.facts import BlockFacts
from blockdsl.marks.display_list import Page
from blockdsl.marks.theme import Box
from blockdsl.pictures.hands import StepLook, look_of
from blockdsl.pictures.scene import technique_picture
from blockdsl.pictures.step import seam_picture
from blockdsl.sewing.steps.upright import upright
from blockdsl.wording.step_pictures import format_step

_SIDE_PT = 360.0
_EDGE_PT = 12.0


class Frame(Struct, frozen=True):
    """One moment: in a step the parts before their first seam, then each seam; of a method each of its pictures."""

    step: int
    hand: int
    seam: int
    seams: int
    scene: int | None = None


def frames_of(facts: BlockFacts) -> tuple[Frame, ...]:
    """All moments of a block's sewing, in order."""
    return tuple(_frames(facts))


def _frames(facts: BlockFacts) -> Iterator[Frame]:
    for step in facts.steps:
        if any(hand.ingredients for hand in step.hands):
            for place, hand in enumerate(step.hands):
                seams = sum(len(stage.seams) for stage in hand.stages)
                yield from (Frame(step.number, place, seam, seams) for seam in range(seams + 1))
        else:
            yield from (Frame(step.number, 0, 0, 0, scene) for scene in range(len(step.lesson)))


class Film(Struct):
    """The frames of a block and how they are drawn."""

    facts: BlockFacts
    look: StepLook
    frames: tuple[Frame, ...]

    @classmethod
    def of(cls, facts: BlockFacts) -> Film:
        """Nothing is drawn yet."""
        return cls(facts, look_of(facts), frames_of(facts))

    def drawn(self, number: int) -> dict[str, object]:
        """A frame, from 0: its picture as SVG, what the step is called, and what is said of it.

        Errors: IndexError for a frame that is not there.
        """
        frame = self.frames[number]
        step = next(each for each in self.facts.steps if each.number == frame.step)
        text = self.look.text(step)
        box = Box(_EDGE_PT, _EDGE_PT, _SIDE_PT, _SIDE_PT)
        if frame.scene is not None:
            scene = step.lesson[frame.scene].pictures[0]
            marks = (technique_picture(scene, step.fabrics, self.look.unit, box, self.look.language),)
            part = next((part for part in text.parts if part.picture == frame.scene), text.parts[-1])
            words = part.text
        else:
            hand = upright(step.hands[frame.hand])
            says = format_step(step, self.look.words)
            marks = (seam_picture(hand, self.look.fabrics, box, says, frame.seam, 1.4),)
            words = text.text
        side = _SIDE_PT + 2 * _EDGE_PT
        return {
            "svg": page_markup(Page(side, side, marks)),
            "title": f"{text.number}  {text.name}",
            "made": text.made,
            "words": words,
            "step": frame.step,
            "seam": frame.seam,
            "seams": frame.seams,
            "number": number,
            "count": len(self.frames),
        }
