"""What a method's step is made of."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from msgspec import Struct

from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.message import Argument, Message
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import ScenePicture

Batch = Literal["each", "pair", "set", "strips"]
"""What is taken at once: what makes one unit, a pair of squares, a set of squares, the strips of one strip set."""


class MethodPiece(Struct, frozen=True):
    """Cloth that a batch takes: by letter, fabric (its name in the block) and form, and how many pieces of it.

    `cut` is the side of a square, both sides of a rectangle, the width and the length of a strip.
    """

    label: str
    fabric: str
    form: str
    cut: tuple[Fraction, ...]
    count: int = 1


class MethodUnit(Struct, frozen=True):
    """A unit to be made by a method: its measures, its pieces by role, and how many batches make how many.

    `count` are made as they lie in the block, `mirrored` are their mirror images. `drawn` says that the unit of
    `count` lies as the shape is drawn, and is not its mirror image.
    """

    measures: Measures
    pieces: Mapping[int, MethodPiece]
    batches: int
    count: int
    mirrored: int = 0
    drawn: bool = True

    def same(self, first: int, second: int) -> bool:
        """Whether two roles are of the same piece of cloth."""
        one, other = self.pieces[first], self.pieces[second]
        return (one.label, one.fabric) == (other.label, other.fabric)


class MethodPart(Struct, frozen=True):
    """One lettered part of a step: its sentences in order, a picture, then what is measured and what follows that."""

    sentences: tuple[Message, ...]
    picture: ScenePicture
    measure: Message | None = None
    after: tuple[Message, ...] = ()

    @property
    def pictures(self) -> tuple[ScenePicture, ...]:
        """Its picture, as the steps of a lesson have theirs."""
        return (self.picture,)


class MethodStep(Struct, frozen=True):
    """The step of a method: what is taken at once, how many units that makes, and the parts of the step.

    `pieces` are those of a batch by role, each with its share of them. `again` is what is said where an earlier step
    has taught the same: what the batch takes, and what is new; `way` is the same for steps that are sewn alike.
    """

    batch: Batch
    batches: int
    gives: int
    pieces: Mapping[int, MethodPiece]
    parts: tuple[MethodPart, ...]
    way: tuple[Argument, ...]
    again: MethodPart
