"""A step in words: which pieces, which way round, the seam, pressing, trimming, measuring, how many."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from blockdsl.geometry import Polygon, sign
from blockdsl.model.fabric import RulerUnit
from blockdsl.model.lengths import write_length
from blockdsl.sewing.steps.curves import first_curve, hollow_part, next_curve
from blockdsl.sewing.steps.edges import edge_of, is_slanted
from blockdsl.sewing.steps.ends import Ends, ends_of
from blockdsl.sewing.steps.names import MIRRORED, PLACED, plural
from blockdsl.sewing.steps.step import Ingredient, Stage, StepSeam, Variant

NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")

SLANTED = "as the arrow shows"

MOST_NAMED = 5
"""Of more parts side by side the picture shows the order, and the words do not."""


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


def sentences_of(
    variant: Variant, speech: Speech, hands: int, *, is_block: bool, in_rounds: bool = False
) -> tuple[str, ...]:
    """What to do for one step, sentence by sentence, in order; `in_rounds` when logs are added round a middle."""
    teller = Teller(variant, speech, in_rounds=in_rounds)
    found = [*teller.sewing(), *teller.finish()]
    found += _measure(variant, speech, is_block=is_block, in_rounds=in_rounds)
    if hands == 2:
        found.append("Make the mirror image in the same way, with the parts the other way round.")
    return tuple(found)


def _measure(variant: Variant, speech: Speech, *, is_block: bool, in_rounds: bool) -> list[str]:
    if not variant.is_rectangle:
        across = write_length(variant.extent[0] + 2 * speech.seam, speech.unit)
        told = f"From one straight edge to the opposite one it should now measure {across} {speech.unit}."
        return [told] if in_rounds else []
    size = " × ".join(write_length(side + 2 * speech.seam, speech.unit) for side in variant.extent)
    who = "The block" if is_block else "It" if variant.count == 1 else "Each"
    return [f"{who} should now measure {size} {speech.unit}."]


class Teller:
    """Tells the stages of one variant."""

    def __init__(self, variant: Variant, speech: Speech, *, in_rounds: bool = False) -> None:
        self._variant = variant
        self._speech = speech
        self._in_rounds = in_rounds
        self._many = len(variant.ingredients)
        self._told_edge = False
        self._told_turns = False
        self._told_dots = False
        self._told_curve = False
        self._told_middles: set[str] = set()

    # --- names -------------------------------------------------------------------------------------

    def _name(self, part: int, *, article: bool = True) -> str:
        if part >= self._many:
            stage = self._variant.stages[part - self._many]
            return "the row" if len(stage.parts) > 2 else "the pair"
        return self._called(self._variant.ingredients[part], article=article)

    def _called(self, ingredient: Ingredient, *, article: bool = True) -> str:
        if ingredient.fabric is not None:
            return f"{ingredient.name} ({self._speech.labels[ingredient.fabric]})"
        if " of " in ingredient.name:  # a long name: by its step it is told in fewer words
            what = "mirror image" if ingredient.name.startswith(MIRRORED) else "unit"
            return f"{'the ' if article else ''}{what} from step {ingredient.step}"
        plain = not article or ingredient.name.split(" ")[0] in PLACED
        return ingredient.name if plain else f"the {ingredient.name}"

    def _is_stage(self, part: int) -> bool:
        return part >= self._many

    # --- sewing ------------------------------------------------------------------------------------

    def _from_the_edge(self) -> str:
        return f", {self._speech.length(self._speech.seam)} from the edge"

    def sewing(self) -> list[str]:
        """All stages in order."""
        stages = self._variant.stages
        if self._is_in_rows() and not self._in_rounds:
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
        word = "rows" if self._across(rows[0]) else "columns" if self._down(rows[0]) else "groups"
        lay = f"Lay out the pieces as the picture shows, in {say_count(len(last.parts))} {word}."
        edges = self._row_edges(rows)
        sew = f"Sew the pieces of each of the {word} together, right sides together, {edges}{self._from_the_edge()}."
        press = " ".join(dict.fromkeys(self._press(row) for row in rows))
        if len(rows) > 1 and len({self._press(row) for row in rows}) > 1:
            press = f"Press the seams of the {word} as the arrows show."
        join = f"Then join the {word}, right sides together"
        held = [sentence for row in rows for sentence in self._held(row)][:1]
        return [lay, sew, *held, *self._centred(rows[0]), press, *self._joined(last, join)]

    def _row_edges(self, rows: Sequence[Stage]) -> str:
        found = {self._edges(seam) for row in rows for seam in row.seams}
        return found.pop() if len(found) == 1 else "edges level"

    def _joined(self, stage: Stage, start: str) -> list[str]:
        matched = (*self._centred(stage), *self._hard(stage), *self._matching(stage))
        return [f"{start}.", *matched, self._press(stage), *self._closing(stage)]

    def _stage(self, stage: Stage, *, first: bool) -> list[str]:
        order = self._curves(stage) if any(seam.bend for seam in stage.seams) else [self._order(stage, first=first)]
        return [
            *order,
            *self._centred(stage),
            *self._hard(stage),
            *self._matching(stage),
            self._press(stage),
            *self._closing(stage),
        ]

    def _order(self, stage: Stage, *, first: bool) -> str:
        """What is laid on what, and the seam."""
        parts = stage.parts
        inner = [part for part in parts if self._is_stage(part)]
        how = "" if self._told_edge else self._from_the_edge()
        self._told_edge = True
        if self._in_rounds:
            return self._added(stage, how, first=first)
        edges = self._edges(stage.seams[0]) if len({self._edges(seam) for seam in stage.seams}) == 1 else "edges level"
        if not first and len(inner) == 1:
            return f"Add {self._others(stage, inner[0])}, right sides together, {edges}."
        names = [self._name(part) for part in parts]
        if len(parts) == 2:
            return f"Lay {self._on(parts)} right sides together, {edges}, and sew{how}."
        if len(parts) == 3 and self._is_like(parts[0], parts[2]) and names[1] not in names[::2]:
            both = _listed(list(dict.fromkeys(names[::2])))
            return f"Sew {both} to {self._sides(stage)} {names[1]}, right sides together, {edges}{how}."
        return self._side_by_side(stage, edges, how)

    def _added(self, stage: Stage, how: str, *, first: bool) -> str:
        """A log, or two opposite ones, sewn to what there is already."""
        inner = min(stage.parts, key=self._first_patch) if first else max(stage.parts)
        logs = [part for part in stage.parts if part != inner]
        names = _listed(list(dict.fromkeys(self._name(log) for log in logs)))
        edge = self._edge(logs[0], stage.seams[0])
        edges = f"along the {edge} of {self._short(logs[0], stage.parts)}" if edge else "edges level"
        if edge.endswith(f"{self._speech.unit} edge"):
            edges = f"the {edge}s level"
        where = self._side_of(stage, logs[0]) if len(logs) == 1 else self._sides(stage).removesuffix(" of")
        if not (self._across(stage) or self._down(stage)):
            where = "two opposite corners" if first else "the other two corners"
        if first:
            return f"Sew {names} to {where} of {self._name(inner)}, right sides together, {edges}{how}."
        return f"Add {names} to {where}, right sides together, {edges}."

    def _first_patch(self, part: int) -> int:
        return min(self._variant.ingredients[part].patches)

    def _side_of(self, stage: Stage, log: int) -> str:
        before = stage.parts[0] == log
        if self._across(stage):
            return "the left side" if before else "the right side"
        return "the top" if before else "the bottom"

    def _curves(self, stage: Stage) -> list[str]:
        """Curved seams are told one by one: in each another piece has the hollow edge."""
        found: list[str] = []
        how = "" if self._told_edge else self._from_the_edge()
        self._told_edge = True
        for seam in stage.seams:
            if seam.bend is None:
                names = [self._name(part) for part in seam.parts]
                found.append(f"Sew {names[1]} to {names[0]}, right sides together, {self._edges(seam)}{how}.")
                continue
            upper = hollow_part(seam)
            hollow, full = (self._on_curve(seam.parts[part]) for part in (upper, 1 - upper))
            found += next_curve(hollow, full) if self._told_curve else first_curve(hollow, full, how)
            self._told_curve = True
        return found

    def _on_curve(self, part: int) -> str:
        return "what is sewn so far" if self._is_stage(part) else self._name(part)

    def _side_by_side(self, stage: Stage, edges: str, how: str) -> str:
        """Parts in a row, a column, or one after the other."""
        parts = stage.parts
        way = "from left to right" if self._across(stage) else "from top to bottom"
        if not (self._across(stage) or self._down(stage)):
            level = len({frozenset((seam.line[0].y, seam.line[-1].y)) for seam in stage.seams}) == 1
            upright = len({frozenset((seam.line[0].x, seam.line[-1].x)) for seam in stage.seams}) == 1
            way = "from left to right" if level else way if upright else "in the order of the picture"
        if all(self._is_stage(part) for part in parts):
            return f"Join the rows {way}, right sides together."
        if len({self._name(part) for part in parts}) == 1:
            several = plural(self._name(parts[0], article=False), len(parts))
            return f"Sew {say_count(len(parts))} {several} together {way}, right sides together, {edges}{how}."
        if len(parts) > MOST_NAMED:
            what = f"all {len(parts)} {self._rows_named(parts) or 'parts'}"
            return f"Sew {what} together {way}, as the picture shows, right sides together, {edges}{how}."
        listed = _listed([self._name(part, article=False) for part in parts])
        return f"Sew together {way}: {listed}; right sides together, {edges}{how}."

    def _rows_named(self, parts: Sequence[int]) -> str:
        """`rows` or `columns`, when all the parts are such."""
        first = {self._name(part, article=False).split(" ")[0] for part in parts}
        return f"{first.pop()}s" if first in ({"row"}, {"column"}) else ""

    def _is_like(self, one: int, other: int) -> bool:
        """Whether two parts are called alike but for their fabric."""
        if self._is_stage(one) or self._is_stage(other):
            return False
        return self._variant.ingredients[one].name == self._variant.ingredients[other].name

    def _others(self, stage: Stage, inner: int) -> str:
        """What is added to what has been sewn, and where."""
        names = list(dict.fromkeys(self._name(part) for part in stage.parts if part != inner))
        if len(stage.parts) == 2:
            return names[0]
        shown = ", as the picture shows" if len(names) > 1 else ""
        return f"{_listed(names)} to {self._sides(stage).removesuffix(' of')}{shown}"

    def _on(self, parts: Sequence[int]) -> str:
        one, other = (self._name(part) for part in parts)
        if one != other:
            return f"{one} on {other},"
        return f"two {plural(self._name(parts[0], article=False), 2)}"

    def _sides(self, stage: Stage) -> str:
        if self._across(stage):
            return "the left and the right of"
        return "the top and the bottom of" if self._down(stage) else "two opposite sides of"

    @staticmethod
    def _across(stage: Stage) -> bool:
        return all(seam.line[0].x == seam.line[-1].x for seam in stage.seams)

    @staticmethod
    def _down(stage: Stage) -> bool:
        return all(seam.line[0].y == seam.line[-1].y for seam in stage.seams)

    def _edge(self, part: int, seam: StepSeam) -> str:
        if self._is_stage(part) or seam.bend is not None:
            return ""
        return edge_of(self._variant.ingredients[part].outline, seam.line, self._speech.seam, self._speech.unit)

    def _edges(self, seam: StepSeam) -> str:
        """Which edges lie on each other."""
        if len(seam.line) != 2:
            return "edges level"
        one, other = (self._edge(part, seam) for part in seam.parts)
        if one and one == other:
            return f"the {one}s level"
        if one and other:
            first, second = (self._short(part, seam.parts) for part in seam.parts)
            return f"the {one} of {first} on the {other} of {second}"
        known = one or other
        if known and not known.endswith("in edge") and not known.endswith("cm edge"):
            return f"along the {known} of {self._short(seam.parts[0 if one else 1], seam.parts)}"
        return "edges level"

    def _short(self, part: int, beside: Sequence[int] = ()) -> str:
        """A patch by its letter alone, unless one of the parts beside it has the same letter in another fabric."""
        if self._is_stage(part):
            return self._name(part)
        ingredient = self._variant.ingredients[part]
        if ingredient.fabric is None:
            return self._called(ingredient)
        near = [self._variant.ingredients[other] for other in beside if not self._is_stage(other)]
        mistaken = any(other.name == ingredient.name and other.fabric != ingredient.fabric for other in near)
        return self._called(ingredient) if mistaken else ingredient.name

    def _centred(self, stage: Stage) -> list[str]:
        """Slanting pieces: their points stand out, and where they should do so."""
        for seam in stage.seams:
            ends = self._ends(seam)
            edges = [self._edge(part, seam) for part in seam.parts]
            part = seam.parts[edges.index("long edge") if "long edge" in edges else 0]
            name = told = self._short(part, seam.parts)
            allowance = self._speech.length(self._speech.seam)
            match ends:
                case "level":
                    continue
                case "even":
                    words = f"Match the middles: the points of {name} stand out evenly at both ends."
                case "one level":
                    words = f"Lay one end level; at the other the point of {name} stands out."
                case "crossing":
                    told, words = (
                        ends,
                        f"Where the ends do not lie level, let the edges cross {allowance} from the edge.",
                    )
                case "uneven":
                    told = ends
                    words = "The ends do not lie level: pin through both where the seam begins and ends, "
                    words += f"{allowance} from the edges."
            if told in self._told_middles:
                return []
            self._told_middles.add(told)
            return [words]
        return []

    def _ends(self, seam: StepSeam) -> Ends:
        """How the two parts' ends lie on each other; what is not sewn straight through is matched otherwise."""
        if seam.kind != "straight" or len(seam.line) != 2:
            return "level"
        if self._in_rounds and self._variant.is_rectangle and not is_slanted(seam.line):
            return "level"
        one, other = (self._outlines(part) for part in seam.parts)
        return ends_of(seam.line, one, other)

    def _outlines(self, part: int) -> list[Polygon]:
        """The outlines of what a part is made of."""
        if self._is_stage(part):
            inner = self._variant.stages[part - self._many].parts
            return [outline for each in inner for outline in self._outlines(each)]
        ingredient = self._variant.ingredients[part]
        return [ingredient.outline] if ingredient.outline else [patch.corners for patch in ingredient.picture]

    def _hard(self, stage: Stage) -> list[str]:
        """What is special about partial and set-in seams."""
        found = []
        turning = sum(len(seam.line) > 2 for seam in stage.seams)
        this, is_set = ("This seam", "is") if turning == 1 else ("These seams", "are")
        if turning and self._told_turns:
            found.append(f"Set {this.lower()} in too, from dot to dot.")
        elif turning:
            self._told_turns = True
            found.append(
                f"{this} {is_set} set in: mark a dot a seam allowance from both edges at each inner corner, sew from "
                "dot to dot, stop there with the needle down, lift the foot, turn the work until the next edges are "
                "level, and sew on."
            )
        found += self._held(stage)
        if any(seam.stop is not None for seam in stage.seams):
            found.append(
                "This is a partial seam: sew only as far as the mark in the picture and leave the rest open for now."
            )
        return found

    def _held(self, stage: Stage) -> list[str]:
        """Seams that stop short of the edge, where something is set in later."""
        ends = sum(len(seam.dots) for seam in stage.seams)
        if not ends:
            return []
        dots = "the dot" if ends == 1 else "the dots"
        if self._told_dots:
            return [f"Stop at {dots} in the picture again."]
        self._told_dots = True
        short = self._speech.length(self._speech.seam)
        return [f"At {dots} stop {short} from the edge, with a few stitches back: something is set in there later."]

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
        rest = f"at {say_count(loose)} {places} the allowances lie the same way: pin through both seams there"
        return [f"{where}, push them together until they lock, and pin; {rest}."]

    # --- pressing ----------------------------------------------------------------------------------

    def _press(self, stage: Stage) -> str:
        seams = stage.seams
        if any(seam.bend for seam in seams) and len(seams) > 1:
            return "Press the seam allowances as the arrows show."
        allowances = "the seam allowances" if len(seams) == 1 else "all seam allowances"
        if any(seam.toward is None for seam in seams):
            return "Press the seam open."
        to = [seam.parts[seam.toward] for seam in seams if seam.toward is not None]
        away = [seam.parts[1 - seam.toward] for seam in seams if seam.toward is not None]
        for word, these, others in (("toward", to, away), ("away from", away, to)):
            if any(self._is_stage(part) for part in these):
                continue
            names = dict.fromkeys(self._short(part, others) for part in these)
            if len(names) < 3 and not names.keys() & {self._short(part, these) for part in others}:
                return f"Press {allowances} {word} {_listed(list(names))}."
        ways = {_way(seam) for seam in seams}
        if len(ways) == 1 and (len(seams) == 1 or ways != {SLANTED}):
            return f"Press {allowances} {ways.pop()}."
        return f"Press {allowances} as the arrows show."

    def _ends_outside(self, seam: StepSeam) -> bool:
        """Whether a seam reaches the outer edge of what is made; the blades of a fan end at its curve."""
        across, down = self._variant.extent
        return any(end.x in (0, across) or end.y in (0, down) for end in (seam.line[0], seam.line[-1]))

    def finish(self) -> list[str]:
        """Trimming."""
        seams = [seam for stage in self._variant.stages for seam in stage.seams if seam.bend is None]
        ears = self._variant.is_rectangle and any(is_slanted(seam.line) and self._ends_outside(seam) for seam in seams)
        return ["Snip off the small points (dog ears) that stand out."] if ears else []


def _way(seam: StepSeam) -> str:
    x, y = sign(seam.arrow.x), sign(seam.arrow.y)
    if x and y:
        return SLANTED
    if x:
        return "to the right" if x > 0 else "to the left"
    return "downward" if y > 0 else "upward"


def _listed(words: Sequence[str]) -> str:
    counted = Counter(words)
    if len(words) > 4 and len(counted) < len(words) / 2:
        return ", ".join(words)
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"
