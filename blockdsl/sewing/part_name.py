"""What a part is called, as data: a noun of the trade, a number, or a name of the maker's own; what tells it apart.

The facts refer to a part by its `notation`, which is the same in every language; sentences about it are written in
`blockdsl/wording` from the data.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec import Struct

from blockdsl.shapes import SHAPES

NOUNS: Final = frozenset(
    (
        "block",
        "block with its appliqué",
        "unit",
        "segment",
        "section",
        "strip",
        "pair",
        "quarter",
        "half",
        "corner",
        "side",
        "middle",
        "square",
        "goose",
        "four-patch",
        "nine-patch",
        "sixteen-patch",
        "triangle pair",
        "pieced square",
        "corner triangle",
        "large diamond",
        "plain patch",
        *(shape.title for shape in SHAPES.values()),
    )
)
"""Every noun that the steps and the shapes give; with a number also row, column, round, segment of set and section."""
ORDINALS: Final = ("second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")
_MOST_LISTED: Final = 3


class PartName(Struct, frozen=True):
    """What a part is called. `noun` is empty where `own` is the maker's own name.

    `number` is that of a row, a set or a round, or a section's letter; `numbers` are those of several rows or columns.
    `fabrics` come behind the noun, `fabric` before it. `ordinal` and `again` tell apart what would be called alike.
    """

    noun: str
    own: str = ""
    number: str = ""
    numbers: tuple[int, ...] = ()
    fabrics: tuple[str, ...] = ()
    fabric: str = ""
    way: str = ""
    ordinal: int = 0
    again: int = 0
    mirrored: bool = False

    @property
    def is_numbered(self) -> bool:
        """Whether it is known by its number alone: `row 2`, `columns 3 and 4`, `round 1`."""
        return bool(self.numbers or self.number) and self.noun not in ("unit", "section", "segment of set")

    @property
    def notation(self) -> str:
        """The name by which the facts refer to it: `reversed second goose of Foam and Slate made two at a time`."""
        text = self.own or self.noun
        if self.numbers:
            text = f"{text}s {_listed(self.numbers)}"
        elif self.number:
            text = f"{text} {self.number}"
        if self.fabric:
            text = f"{self.fabric} {text}"
        if self.ordinal:
            text = f"{ORDINALS[self.ordinal - 2]} {text}"
        if self.fabrics:
            text = f"{text} of {(' and ' if len(self.fabrics) < 3 else ', ').join(self.fabrics)}"
        if self.way:
            text = f"{text} made {self.way}"
        if self.again:
            text = f"{text}, {'second' if self.again == 2 else f'number {self.again}'}"
        return f"reversed {text}" if self.mirrored else text


def part_called(name: str) -> PartName:
    """A part by a name that is a noun of the trade, or else the maker's own."""
    return PartName(name) if name in NOUNS else PartName("", own=name)


def rows_named(word: str, numbers: Sequence[int]) -> PartName:
    """One row or column, or several that are alike."""
    return PartName(word, number=str(numbers[0])) if len(numbers) == 1 else PartName(word, numbers=tuple(numbers))


def _listed(numbers: Sequence[int]) -> str:
    if are_a_run(numbers):
        return f"{numbers[0]} to {numbers[-1]}"
    if len(numbers) > 2:
        return f"{', '.join(map(str, numbers[:-1]))}, and {numbers[-1]}"
    return f"{numbers[0]} and {numbers[-1]}"


def are_a_run(numbers: Sequence[int]) -> bool:
    """Whether there are so many that the first and the last say it, and each follows on the one before."""
    return len(numbers) > _MOST_LISTED and list(numbers) == list(range(numbers[0], numbers[-1] + 1))
