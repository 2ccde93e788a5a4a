"""What the parts of a step are called in its sentences: the shortest that is unique in the step."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import Ingredient, StepFacts, Variant
from blockdsl.wording.grammar import Article, Name, an, listed
from blockdsl.wording.messages import Messages
from blockdsl.wording.part_names import PartNames, name_of_part, rows_in_words, shortened

_LINES = ("row", "column")


class Labels:
    """Names of the parts of one step."""

    def __init__(self, step: StepFacts, hand: Variant, block: BlockFacts, words: Messages) -> None:
        self._words = words
        self._step = step
        self._block = block
        self.parts: Sequence[Ingredient] = hand.ingredients
        self.fabrics = {fabric.name: fabric.label for fabric in block.fabrics}
        self._count = Counter(self._key(part) for part in self.parts)
        self._names = PartNames(words, step.names)
        units = {part.name: self._names.part(part.name) for part in self.parts if part.fabric is None}
        self._units = units | shortened(units)
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
        """Whether it is `row 2`, `column 3` or `round 1`."""
        part = self.parts[number]
        return part.fabric is None and self._units[part.name].is_numbered

    @property
    def has_pairs(self) -> bool:
        """Whether the step takes pairs that an earlier one made."""
        return any("pair" in part.name.split() for part in self.parts if part.fabric is None)

    def count(self, number: int) -> int:
        """How many of it the step takes."""
        return self._count[self._key(self.parts[number])]

    def full(self, number: int) -> str:
        """A patch by letter and fabric, `A (Wet slate)`; anything else by its name."""
        part = self.parts[number]
        if part.fabric is None:
            return self._names.one(part.name)
        return self._words("patch-in-fabric", letter=part.name, fabric=self.fabrics[part.fabric])

    def short(self, number: int) -> str:
        """A patch by its letter alone, where only one fabric has that letter in the step."""
        part = self.parts[number]
        if part.fabric is None:
            return self._unit(number)
        return Name(part.name) if len(self._of_letter[part.name]) == 1 else self.full(number)

    def _unit(self, number: int, article: Article = "", count: int = 1) -> Name:
        return name_of_part(self._units[self.parts[number].name], self._words, count=count, article=article)

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
        if self.is_patch(number):
            return an(self.short(number), self._words) if self.count(number) > 1 else self.short(number)
        return self._unit(number, "a" if self.count(number) > 1 else "the")

    def the(self, number: int) -> str:
        """As something known: `A`, `the beam`, `row 2`."""
        return self.short(number) if self.is_patch(number) else self._unit(number, "the")

    def many(self, number: int, count: int = 2) -> str:
        """More than one of it: `B`, `corners`."""
        return self.short(number) if self.is_patch(number) else self._unit(number, count=count)

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
            if self.is_numbered(number) and self._units[part.name].noun not in _LINES:
                items.append(self._unit(number))
                continue
            if self.is_numbered(number):
                group = [place for place in range(len(self.parts)) if self.is_numbered(place)]
                seen |= {(self.parts[place].name, "") for place in group}
                items.append(self.numbered(group))
                continue
            items.append(self._taken(number))
        return listed(items, self._words)

    def _in_order(self) -> list[int]:
        """The parts as they are sewn."""
        stages = self._step.hands[0].stages
        return [part for stage in stages for part in stage.parts if part < len(self.parts)]

    def numbered(self, parts: Sequence[int]) -> str:
        """`row 1`, `rows 1, 3, and 5`, `rows 1 to 20`."""
        found = [self._units[self.parts[part].name] for part in parts]
        return rows_in_words(found[0].noun, [each.number for each in found], self._words)

    def _taken(self, number: int) -> str:
        part, count = self.parts[number], self.count(number)
        if part.fabric is not None:
            return self._words(
                "take-patches",
                count=count,
                letter=part.name,
                form=self._form(part),
                fabric=self.fabrics[part.fabric],
            )
        if count == 1 and self._step.count == 1 and part.step and self._made(part.step) == 1:
            return self._names.one(part.name, "the")
        return self._words("take-units", count=count, name=self._names.many(part.name, count))

    def _made(self, number: int) -> int:
        return next(step.count for step in self._block.steps if step.number == number)

    def _form(self, part: Ingredient) -> str:
        """`triangle` or `square`, for a letter that the cutting list has in two forms; else `plain`."""
        cuts = (cut for cut in self._block.cutting if cut.label == part.name)
        forms = {cut.piece if cut.subcut == "none" else "triangle" for cut in cuts}
        if len(forms) < 2:
            return "plain"
        return {3: "triangle", 4: "square"}.get(len(part.picture[0].outline), "plain")
