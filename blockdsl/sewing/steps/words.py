"""A step in words: which pieces, which way round, the seam, pressing, trimming, measuring, how many."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from blockdsl.geometry import sign
from blockdsl.model.fabric import RulerUnit
from blockdsl.model.lengths import write_length
from blockdsl.sewing.steps.edges import edge_of, is_slanted
from blockdsl.sewing.steps.step import Ingredient, Stage, StepSeam, Variant

NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")


@dataclass(frozen=True, slots=True)
class Speech:
    """What sentences need to know of the block: its ruler, its seam allowance, what its fabrics are called."""

    unit: RulerUnit
    seam: Fraction
    labels: Mapping[str, str]

    def length(self, length: object) -> str:
        """`3 1/2 in`."""
        return f"{write_length(length, self.unit)} {self.unit}"  # type: ignore[arg-type]


def say_count(count: int) -> str:
    """A small number in words."""
    return NUMBERS[count] if count < len(NUMBERS) else str(count)


def sentences_of(variant: Variant, name: str, speech: Speech, hands: int, *, is_block: bool) -> tuple[str, ...]:
    """What to do for one step, sentence by sentence, in order."""
    teller = _Teller(variant, speech)
    found = [*teller.sewing(), *teller.finish()]
    found += _measure(variant, name, speech, is_block=is_block)
    if hands == 2:
        found.append("Make the mirror image in the same way, with the parts the other way round.")
    return tuple(found)


def _measure(variant: Variant, name: str, speech: Speech, *, is_block: bool) -> list[str]:
    if not variant.is_rectangle:
        return []
    size = " × ".join(write_length(side + 2 * speech.seam, speech.unit) for side in variant.extent)
    who = "The block" if is_block else "It" if variant.count == 1 else "Each"
    return [f"{who} should now measure {size} {speech.unit}."]


class _Teller:
    """Tells the stages of one variant."""

    def __init__(self, variant: Variant, speech: Speech) -> None:
        self._variant = variant
        self._speech = speech
        self._many = len(variant.ingredients)
        self._told_edge = False

    # --- names -------------------------------------------------------------------------------------

    def _name(self, part: int, *, article: bool = True) -> str:
        if part >= self._many:
            stage = self._variant.stages[part - self._many]
            return "the row" if len(stage.parts) > 2 else "the pair"
        return self._called(self._variant.ingredients[part], article=article)

    def _called(self, ingredient: Ingredient, *, article: bool = True) -> str:
        if ingredient.fabric is not None:
            return f"{ingredient.name} ({self._speech.labels[ingredient.fabric]})"
        plain = not article or ingredient.name.split(" ")[0] in {"row", "rows", "column", "columns", "unit"}
        return ingredient.name if plain else f"the {ingredient.name}"

    def _is_stage(self, part: int) -> bool:
        return part >= self._many

    def _outline(self, part: int) -> object:
        return None if self._is_stage(part) else self._variant.ingredients[part].outline

    # --- sewing ------------------------------------------------------------------------------------

    def sewing(self) -> list[str]:
        """All stages in order."""
        stages = self._variant.stages
        if self._is_in_rows():
            return self._rows()
        found = []
        for number, stage in enumerate(stages):
            found += self._stage(stage, first=number == 0)
        return found

    def _is_in_rows(self) -> bool:
        """Whether all stages but the last are rows of parts and the last joins them."""
        *rows, last = self._variant.stages
        return len(rows) > 1 and all(
            all(not self._is_stage(part) for part in row.parts) and self._is_simple(row) for row in rows
        ) and all(self._is_stage(part) or len(last.parts) > 1 for part in last.parts) and sum(
            self._is_stage(part) for part in last.parts
        ) == len(rows)  # fmt: skip

    @staticmethod
    def _is_simple(stage: Stage) -> bool:
        return all(seam.kind == "straight" for seam in stage.seams) and not stage.closes

    def _rows(self) -> list[str]:
        *rows, last = self._variant.stages
        word = "rows" if self._across(rows[0]) else "columns"
        lay = f"Lay out the pieces as the picture shows, in {say_count(len(last.parts))} {word}."
        edges = self._row_edges(rows)
        sew = (
            f"Sew the pieces of each of the {word} together, right sides together, {edges}, "
            f"{self._speech.length(self._speech.seam)} from the edge."
        )
        press = " ".join(dict.fromkeys(self._press(row) for row in rows))
        if len(rows) > 1 and len({self._press(row) for row in rows}) > 1:
            press = f"Press the seams of the {word} as the arrows show."
        join = f"Then join the {word}, right sides together"
        return [lay, sew, press, *self._joined(last, join)]

    def _row_edges(self, rows: Sequence[Stage]) -> str:
        found = {self._edges(seam) for row in rows for seam in row.seams}
        return found.pop() if len(found) == 1 else "edges level"

    def _joined(self, stage: Stage, start: str) -> list[str]:
        return [f"{start}.", *self._matching(stage), self._press(stage), *self._closing(stage)]

    def _stage(self, stage: Stage, *, first: bool) -> list[str]:
        return [self._order(stage, first=first), *self._hard(stage), *self._matching(stage), self._press(stage),
                *self._closing(stage)]  # fmt: skip

    def _order(self, stage: Stage, *, first: bool) -> str:
        """What is laid on what, and the seam."""
        parts = stage.parts
        inner = [part for part in parts if self._is_stage(part)]
        how = "" if self._told_edge else f", {self._speech.length(self._speech.seam)} from the edge"
        self._told_edge = True
        edges = self._edges(stage.seams[0]) if len({self._edges(seam) for seam in stage.seams}) == 1 else "edges level"
        if not first and len(inner) == 1:
            others = [self._name(part) for part in parts if part not in inner]
            both = self._sides(stage) if len(others) == 2 else ""
            return f"Add {_listed(others)}{both}, right sides together, {edges}."
        if len(parts) == 2:
            one, other = parts
            if self._name(one) == self._name(other):
                return f"Lay two of {self._plural(one)} right sides together, {edges}, and sew{how}."
            return f"Lay {self._name(one)} on {self._name(other)}, right sides together, {edges}, and sew{how}."
        way = "from left to right" if self._across(stage) else "from top to bottom"
        if not (self._across(stage) or self._down(stage)):
            way = "in the order of the picture"
        if all(self._is_stage(part) for part in parts):
            return f"Join the rows {way}, right sides together."
        names = [self._name(part, article=False) for part in parts]
        return f"Sew together {way}: {_listed(names)}; right sides together, {edges}{how}."

    def _plural(self, part: int) -> str:
        name = self._name(part)
        return name if self._is_stage(part) else name

    def _sides(self, stage: Stage) -> str:
        if self._across(stage):
            return " at the left and the right"
        return " at the top and the bottom" if self._down(stage) else " on both sides"

    @staticmethod
    def _across(stage: Stage) -> bool:
        return all(seam.line[0].x == seam.line[-1].x for seam in stage.seams)

    @staticmethod
    def _down(stage: Stage) -> bool:
        return all(seam.line[0].y == seam.line[-1].y for seam in stage.seams)

    def _edges(self, seam: StepSeam) -> str:
        """Which edges lie on each other."""
        if len(seam.line) != 2:
            return "edges level"
        told = []
        for part in seam.parts:
            outline = self._outline(part)
            told.append(edge_of(outline, seam.line, self._speech.seam, self._speech.unit))  # type: ignore[arg-type]
        one, other = told
        if one and one == other:
            return f"the {one}s level"
        if one and other:
            first, second = (self._short(part) for part in seam.parts)
            return f"the {one} of {first} on the {other} of {second}"
        known = one or other
        if known and not known.endswith("in edge") and not known.endswith("cm edge"):
            return f"along the {known} of {self._short(seam.parts[0 if one else 1])}"
        return "edges level"

    def _short(self, part: int) -> str:
        if self._is_stage(part):
            return self._name(part)
        ingredient = self._variant.ingredients[part]
        return ingredient.name if ingredient.fabric is not None else f"the {ingredient.name}"

    def _hard(self, stage: Stage) -> list[str]:
        """What is special about partial and set-in seams."""
        found = []
        if any(len(seam.line) > 2 for seam in stage.seams):
            found.append(
                "This seam is set in: mark a dot a seam allowance from both edges at each inner corner, sew from dot "
                "to dot, stop there with the needle down, lift the foot, turn the work until the next edges are level, "
                "and sew on."
            )
        if any(seam.stop is not None for seam in stage.seams):
            found.append(
                "This is a partial seam: sew only as far as the mark in the picture and leave the rest open for now."
            )
        return found

    def _closing(self, stage: Stage) -> list[str]:
        if not stage.closes:
            return []
        what = "the open end of the partial seam" if len(stage.closes) == 1 else "the open ends of the partial seams"
        return [f"Now sew {what}, from where you stopped to the edge, and press."]

    def _matching(self, stage: Stage) -> list[str]:
        """Where seams meet."""
        meetings = sum(seam.meetings for seam in stage.seams)
        loose = sum(seam.unnested for seam in stage.seams)
        if not meetings:
            return []
        where = "Where the seams meet" if meetings > 1 else "Where the two seams meet"
        if not loose:
            return [f"{where}, their allowances point opposite ways: push them together until they lock, and pin."]
        if loose == meetings:
            return [f"{where}, their allowances lie the same way and do not lock: pin through both seams."]
        places = "place" if loose == 1 else "places"
        return [
            f"{where}, push them together until they lock, and pin; at {say_count(loose)} {places} the allowances lie "
            "the same way: pin through both seams there."
        ]

    # --- pressing ----------------------------------------------------------------------------------

    def _press(self, stage: Stage) -> str:
        seams = stage.seams
        allowances = "the seam allowances" if len(seams) == 1 else "all seam allowances"
        if any(seam.toward is None for seam in seams):
            return "Press the seam open."
        to = [seam.parts[seam.toward] for seam in seams if seam.toward is not None]
        away = [seam.parts[1 - seam.toward] for seam in seams if seam.toward is not None]
        if all(not self._is_stage(part) for part in to) and self._tells_apart(to, away):
            return f"Press {allowances} toward {_listed(list(dict.fromkeys(self._short(part) for part in to)))}."
        if all(not self._is_stage(part) for part in away) and self._tells_apart(away, to):
            return f"Press {allowances} away from {_listed(list(dict.fromkeys(self._short(part) for part in away)))}."
        ways = {_way(seam) for seam in seams}
        if len(ways) == 1:
            return f"Press {allowances} {ways.pop()}."
        return f"Press {allowances} as the arrows show."

    def _tells_apart(self, these: Sequence[int], others: Sequence[int]) -> bool:
        names, rest = {self._short(part) for part in these}, {self._short(part) for part in others}
        return not names & rest and len(names) < 3

    def finish(self) -> list[str]:
        """Trimming."""
        lines = [seam.line for stage in self._variant.stages for seam in stage.seams]
        ears = self._variant.is_rectangle and any(is_slanted(line) for line in lines)
        return ["Snip off the small points (dog ears) that stand out."] if ears else []


def _way(seam: StepSeam) -> str:
    x, y = sign(seam.arrow.x), sign(seam.arrow.y)
    if x and y:
        return "as the arrow shows"
    if x:
        return "to the right" if x > 0 else "to the left"
    return "downward" if y > 0 else "upward"


def _listed(words: Sequence[str]) -> str:
    counted = Counter(words)
    if len(words) > 4 and len(counted) < len(words) / 2:
        return ", ".join(words)
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"
