"""What a lesson is: one method, and a topic for each kind of unit that it makes."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from msgspec import Struct

from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import LessonStep
from blockdsl.shapes import Shape

Sizes = tuple[Fraction, ...]


def _steps(first: Fraction, last: Fraction, by: Fraction) -> Sizes:
    return tuple(first + by * place for place in range(int((last - first) / by) + 1))


INCHES = _steps(Fraction(1), Fraction(6), Fraction(1, 2))
CENTIMETRES = _steps(Fraction(3), Fraction(16), Fraction(1))
GEESE_INCHES = _steps(Fraction(2), Fraction(7), Fraction(1, 2))
GEESE_CENTIMETRES = _steps(Fraction(4), Fraction(16), Fraction(1))
THIRDS_INCHES = (*_steps(Fraction(3), Fraction(9), Fraction(3, 2)), Fraction(12))
THIRDS_CENTIMETRES = _steps(Fraction(6), Fraction(30), Fraction(3))


class Topic(Struct, frozen=True):
    """One kind of unit made by a method.

    `key` is that of its title; `words` are those of the shape as it is written in a block file, with the fabrics a, b,
    c … for its roles in order, or of the `example` that is shown for it; `proportion` its width over its height;
    `columns` the keys of the heads of the table of sizes, each with the role whose piece it gives; `drawn` the role of
    each patch in the order in which the shape draws them, going on from the last. `common` are the finished widths of
    that table in inches and in centimetres, empty for no table; `oversized` says that pieces can be cut larger and
    units trimmed. `dark` are the roles shown in the darker cloth, and `shown` the finished widths in inches and in
    centimetres that the steps speak of, when no block gives its own; `sized` says that they speak of a size at all.
    """

    made: Shape
    key: str
    words: str
    steps: Callable[[Measures], tuple[LessonStep, ...]]
    columns: tuple[tuple[str, int], ...] = ()
    proportion: Fraction = Fraction(1)
    drawn: tuple[int, ...] = (0, 1)
    common: tuple[Sizes, Sizes] = (INCHES, CENTIMETRES)
    oversized: bool = False
    dark: tuple[int, ...] = (1,)
    shown: tuple[Fraction, Fraction] = (Fraction(3), Fraction(8))
    sized: bool = True
    example: Shape | None = None

    @property
    def shape(self) -> str:
        """The name of the shape that is made."""
        return self.made.name

    @property
    def writes(self) -> str:
        """How the unit is written in a block file."""
        return f"{(self.example or self.made).name} {self.words}"


class Lesson(Struct, frozen=True):
    """One method: its name in the language, and its topics by shape."""

    method: str
    topics: Mapping[str, Topic]


GEESE = (GEESE_INCHES, GEESE_CENTIMETRES)
THIRDS = (THIRDS_INCHES, THIRDS_CENTIMETRES)
NONE: tuple[Sizes, Sizes] = ((), ())
TWO = Fraction(2)
SHOWN_WIDE = (Fraction(6), Fraction(12))
SHOWN_THIRDS = (Fraction(6), Fraction(15))
