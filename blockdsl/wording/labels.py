"""What the parts of a step are called in its sentences: the shortest that is unique in the step."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from collections.abc import Set as AbstractSet

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import Ingredient, StepFacts, Variant
from blockdsl.wording.grammar import an, listed, plural
from blockdsl.wording.messages import Messages

_NUMBERED = re.compile(r"^(row|column) |\bround \d+$")


_JOINTS = re.compile(" of | made ")
_MOST_LISTED = 3


class Labels:
    """Names of the parts of one step."""

    def __init__(self, step: StepFacts, hand: Variant, block: BlockFacts, words: Messages) -> None:
        self._words = words
        self._step = step
        self._block = block
        self.parts: Sequence[Ingredient] = hand.ingredients
        self.fabrics = {fabric.name: fabric.label for fabric in block.fabrics}
        self._count = Counter(self._key(part) for part in self.parts)
        self._short_units = _shortened({part.name for part in self.parts if part.fabric is None})
        self._of_letter: dict[str, set[str]] = {}
        self._of_fabric: dict[str, set[str]] = {}
        for part in self.parts:
            if part.fabric is not None:
                self._of_letter.setdefault(part.name, set()).add(part.fabric)
                self._of_fabric.setdefault(part.fabric, set()).add(part.name)

    @staticmethod
    def _key(part: Ingredient) -> tuple[str, str]:
        return part.name, part.fabric or ""

    def is_patch(self, number: int) -> bool:
        """Whether it is a single patch."""
        return self.parts[number].fabric is not None

    def is_numbered(self, number: int) -> bool:
        """Whether it is `row 2` or `column 3`."""
        part = self.parts[number]
        return part.fabric is None and _NUMBERED.search(part.name) is not None

    def count(self, number: int) -> int:
        """How many of it the step takes."""
        return self._count[self._key(self.parts[number])]

    def full(self, number: int) -> str:
        """A patch by letter and fabric, `A (Wet slate)`; anything else by its name."""
        part = self.parts[number]
        return part.name if part.fabric is None else f"{part.name} ({self.fabrics[part.fabric]})"

    def short(self, number: int) -> str:
        """A patch by its letter alone, where only one fabric has that letter in the step."""
        part = self.parts[number]
        if part.fabric is None:
            return self._short_units.get(part.name, part.name)
        return part.name if len(self._of_letter[part.name]) == 1 else self.full(number)

    def by_fabric(self, number: int) -> str:
        """A patch by its fabric alone, where its letter has several fabrics and its fabric a single letter."""
        part = self.parts[number]
        if part.fabric is None:
            return self.short(number)
        if len(self._of_letter[part.name]) == 1:
            return part.name
        return self.fabrics[part.fabric] if len(self._of_fabric[part.fabric]) == 1 else self.full(number)

    def an(self, number: int) -> str:
        """As something that is added: `A`, `an A (Foam)`, `the beam`, `a corner`, `row 1`."""
        if self.is_numbered(number):
            return self.parts[number].name
        name = self.short(number)
        if self.count(number) > 1:
            return an(name, self._words)
        return name if self.is_patch(number) else self._words("the", name=name)

    def the(self, number: int) -> str:
        """As something known: `A`, `the beam`, `row 2`."""
        name = self.short(number)
        return name if self.is_patch(number) or self.is_numbered(number) else self._words("the", name=name)

    def many(self, number: int) -> str:
        """More than one of it: `B`, `corners`."""
        name = self.short(number)
        return name if self.is_patch(number) else plural(name, self._words)

    # --- takes -------------------------------------------------------------------------------------

    def takes(self) -> str:
        """All that is taken for one, in the order of the parts: `2 corners and 1 beam`, `rows 1, 2, and 3`."""
        items: list[str] = []
        seen: set[tuple[str, str]] = set()
        for number in self._in_order():
            part = self.parts[number]
            key = self._key(part)
            if key in seen:
                continue
            seen.add(key)
            if self.is_numbered(number) and "round" in part.name:
                items.append(part.name)
                continue
            if self.is_numbered(number):
                word = part.name.split(" ", maxsplit=1)[0]
                group = [each.name for place, each in enumerate(self.parts) if self.is_numbered(place)]
                seen |= {(name, "") for name in group}
                items.append(self._numbered(word, [name.split(" ")[1] for name in group]))
                continue
            items.append(self._taken(number))
        return listed(items, self._words)

    def _in_order(self) -> list[int]:
        """The parts as they are sewn."""
        stages = self._step.hands[0].stages
        return [part for stage in stages for part in stage.parts if part < len(self.parts)]

    def numbered(self, parts: Sequence[int]) -> str:
        """`row 1`, `rows 1, 3, and 5`, `rows 1 to 20`."""
        names = [self.parts[part].name.split(" ") for part in parts]
        return self._numbered(names[0][0], [number for _, number in names])

    def _numbered(self, word: str, numbers: Sequence[str]) -> str:
        if len(numbers) > _MOST_LISTED and numbers == [str(number) for number in range(1, len(numbers) + 1)]:
            return self._words("numbers-to", word=plural(word, self._words), first=numbers[0], last=numbers[-1])
        return (
            f"{word} {numbers[0]}"
            if len(numbers) == 1
            else f"{plural(word, self._words)} {listed(numbers, self._words)}"
        )

    def _taken(self, number: int) -> str:
        part, count = self.parts[number], self.count(number)
        if part.fabric is not None:
            return f"{count} {part.name}{self._form(part)} ({self.fabrics[part.fabric]})"
        if count == 1 and self._step.count == 1 and part.step and self._made(part.step) == 1:
            return self._words("the", name=part.name)
        return f"{count} {part.name if count == 1 else plural(part.name, self._words)}"

    def _made(self, number: int) -> int:
        return next(step.count for step in self._block.steps if step.number == number)

    def _form(self, part: Ingredient) -> str:
        """` triangle` or ` square` after a letter that the cutting list has in two forms."""
        cuts = (cut for cut in self._block.cutting if cut.label == part.name)
        forms = {cut.piece if cut.subcut == "none" else "triangle" for cut in cuts}
        if len(forms) < 2:
            return ""
        if len(part.picture[0].outline) == 3:
            return f" {self._words('piece-triangle')}"
        return f" {self._words('piece-square')}" if len(part.picture[0].outline) == 4 else ""


def _shortened(names: AbstractSet[str]) -> dict[str, str]:
    """Names without their fabrics or their making, where what is left is unique among them.

    Else by the one fabric that no other of the same kind has: `Lantern half-square triangle`.
    """
    parts = {name: _JOINTS.split(name, maxsplit=1) for name in names}
    count = Counter(head for head, *_ in parts.values())
    found: dict[str, str] = {}
    for name, (head, *rest) in parts.items():
        if count[head] == 1:
            found[name] = head
            continue
        if head in names:
            continue
        others = {
            fabric
            for other, (kind, *more) in parts.items()
            if kind == head and other != name
            for fabric in _fabrics(more)
        }
        own = [fabric for fabric in _fabrics(rest) if fabric not in others]
        if own:
            found[name] = f"{own[0]} {head}"
    return found


def _fabrics(rest: Sequence[str]) -> list[str]:
    return [fabric for each in rest for fabric in each.split(" and ")]
