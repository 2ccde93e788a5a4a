"""What the words of a step are: a title, what to do part by part, a measure to check."""

from __future__ import annotations

from typing import Final

from msgspec import Struct, structs

from blockdsl.wording.grammar import capital

BOX: Final = "☐"
"""Stands before what is measured. The pages' font lacks it: there a box is drawn."""


class StepPart(Struct, frozen=True):
    """What to do at a stretch: `sentences`, then a `measure` to check, or none, and `after` it what follows from it.

    Where a method has pictures of its own, `picture` is the place of this part's picture in the step's lesson and
    `heading` the words beside its letter.
    """

    sentences: tuple[str, ...]
    measure: str = ""
    heading: str = ""
    picture: int | None = None
    after: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        """Sentences begin with a capital, also where a noun with its article comes first: `Die Einheit …`."""
        structs.force_setattr(self, "sentences", tuple(map(capital, self.sentences)))
        structs.force_setattr(self, "after", tuple(map(capital, self.after)))

    @property
    def text(self) -> str:
        """All of it as one line, the measure after a box to tick."""
        if not self.measure:
            return " ".join(self.sentences)
        stop = "." if self.after else ""
        return " ".join((*self.sentences, f"{BOX} {self.measure}{stop}", *self.after))


class StepText(Struct, frozen=True):
    """One step in words: the `name` of what is made, how many (`made`, empty for a single one), its `size`, the parts.

    `as_in` is the number of the earlier step that teaches the same method, or 0. `notes` are the designer's, as she
    wrote them.
    """

    number: int
    name: str
    made: str
    size: str
    parts: tuple[StepPart, ...]
    as_in: int = 0
    notes: tuple[str, ...] = ()

    @property
    def title(self) -> str:
        """`Corners · make 4 · 3 × 3 in finished`."""
        return " · ".join(filter(None, (self.name, self.made, self.size)))

    @property
    def lettered(self) -> tuple[tuple[str, StepPart], ...]:
        """Each part with its letter, `(a)`; without one where there is a single part."""
        if len(self.parts) == 1:
            return (("", self.parts[0]),)
        return tuple((f"({chr(ord('a') + place)})", part) for place, part in enumerate(self.parts))

    @property
    def text(self) -> str:
        """All parts and notes as one line."""
        parts = " ".join(f"{letter} {part.text}".strip() for letter, part in self.lettered)
        stop = "." if self.notes and not parts.endswith(".") else ""
        return " ".join((parts + stop, *self.notes))
