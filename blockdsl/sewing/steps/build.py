"""From the order, the making and the pressing to numbered steps."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from collections.abc import Set as AbstractSet
from typing import TypeGuard

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.geometry import Point, Polygon, sign
from blockdsl.geometry.arc import Bend
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import cross, dot, edges, step
from blockdsl.geometry.symmetry import IDENTITY, Turn
from blockdsl.model import BlockDesign
from blockdsl.sewing.foundation import FoundationPlan
from blockdsl.sewing.making import Making
from blockdsl.sewing.methods import CUT_PATCHES, OVER_PAPERS, STRIPS
from blockdsl.sewing.order import Assembly, Joined, Piece, subunits, walk
from blockdsl.sewing.part_name import PartName
from blockdsl.sewing.pressing import Pressing, plan_pressing
from blockdsl.sewing.pressing_frames import Frames, moved
from blockdsl.sewing.pressing_rows import press_by_row
from blockdsl.sewing.pressing_seams import SeamKey, UnitSeams
from blockdsl.sewing.steps.customs import customs
from blockdsl.sewing.steps.names import cells_of, name_things, row_names
from blockdsl.sewing.steps.papers import paper_steps, step_count
from blockdsl.sewing.steps.plan import pinned, plan_actions, plan_by_hand, told_to_lie
from blockdsl.sewing.steps.step import ByRow, Fan, Ingredient, MakingStep, Stage, StepSeam, Variant
from blockdsl.sewing.steps.tree import BY_HAND, Key, Thing, Things
from blockdsl.sewing.steps.upright import marked_edge
from blockdsl.sewing.strips import steps_before

MOST_PATCHES = 1000
"""Blocks of more patches get no steps: nobody sews them from a list, and it would take long to find."""


def build_steps(design: BlockDesign, making: Making, order: Assembly, letters: Sequence[str]) -> tuple[MakingStep, ...]:
    """The steps of a block in the order of making; none for a block of one patch.

    Shape:  what is alike up to a turn is one step; mirror images are one step of two variants. `letters` are those of
            the block's patches, in their order.
    """
    if isinstance(order, Piece):
        return ()
    frames = Frames(subunits(order, design, making.made_whole | making.over_papers))
    things = Things(design, making, order, frames)
    turned_at = {turn for node in walk(order) if isinstance(node, Joined) for seam in node.seams for turn in seam.turns}
    return _Builder(design, making, things, letters, turned_at).steps()


class _Pair(Struct, frozen=True):
    """A thing that a method makes and its mirror image, when there is one; anything else is alone."""

    first: Thing
    second: Thing | None


class _Builder:
    def __init__(
        self,
        design: BlockDesign,
        making: Making,
        things: Things,
        letters: Sequence[str],
        turned_at: AbstractSet[Point],
    ) -> None:
        self._design = design
        self._turned_at = turned_at
        self._making = making
        self._things = things
        self._letters = letters
        self._frames = things.frames
        # Where seams reach a curve: on its chord in the order of sewing, on the curve itself in words and pictures.
        self._true: dict[Point, Point] = {}
        for patch in design.patches:
            if patch.curved:
                self._true.update(zip(patch.outline, patch.curved.corners, strict=True))
        self._seams = UnitSeams(design, things.frames)
        wanted = [thing.key[0] for thing in things.all.values() if not thing.by_method]
        fixed, outward = customs(design, making, things, self._seams)
        self._pressing: Pressing = plan_pressing(design, self._seams, wanted, fixed, outward)
        self._mirrors: dict[Key, Key] = {}
        self._rows = self._rows_alike()
        block = things.root[0]
        self._pressing, self._turned_rows = press_by_row(self._seams, self._pressing, block, self._rows)
        self._pairs = self._paired()
        self._plans = {plan.group.key: plan for plan in making.foundations}
        self._number = self._numbered()
        self._names = self._named()
        self._row_names = row_names(things)
        # Which way the top of what was sewn lies in its first place, where it was turned to be sewn.
        self._tops: dict[Key, Point] = {}

    def _rows_alike(self) -> dict[int, list[int]]:
        """The rows of which there are several that lie alike, with their places among the parts of the block."""
        found: dict[int, list[int]] = {}
        for key, places in self._things.rows().items():
            turns = {place.turn for place in self._frames.units[key[0]].places[1:]}
            if len(places) > 1 and turns <= {Turn(IDENTITY)} and not self._things.all[key].by_hand:
                found[key[0]] = places
        return found

    def _by_row(self, key: SeamKey) -> ByRow | None:
        places = self._rows.get(key[0], [])
        others = [place + 1 for place in places if place in self._turned_rows]
        return ByRow(tuple(place + 1 for place in places if place + 1 not in others), tuple(others)) if others else None

    def _paired(self) -> list[_Pair]:
        """Things in order. What a method makes comes with its mirror image, at the later place of the two."""
        waiting: set[Key] = set()
        order = self._things.steps()
        by_unit = {thing.key: thing for thing in order}
        partner: dict[Key, Key] = {}
        for thing in order:
            mirror = self._frames.units[thing.key[0]].mirror_of
            if mirror is None:
                continue
            other = next((key for key in by_unit if key[0] == mirror and min(key[1], 0) == min(thing.key[1], 0)), None)
            if other is None or other in self._mirrors.values() or not self._alike_in_kind(by_unit[other], thing):
                continue
            self._mirrors[thing.key] = other
            if thing.by_method:
                partner[thing.key] = other
                waiting.add(other)
        return [
            _Pair(by_unit[partner[thing.key]], thing) if thing.key in partner else _Pair(thing, None)
            for thing in order
            if thing.key not in waiting
        ]

    def _alike_in_kind(self, one: Thing, other: Thing) -> bool:
        return len(self._stages_in(one)) == len(self._stages_in(other))

    def _goes_in(self, part: Assembly, node: Joined) -> TypeGuard[Joined]:
        return self._things.is_on_the_way(part, node)

    def _stages_in(self, thing: Thing) -> list[Joined]:
        if thing.by_method:
            return []
        found, waiting = [], [thing.node]
        while waiting:
            node = waiting.pop()
            found.append(node)
            waiting += [part for part in node.parts if self._goes_in(part, node)]
        return found

    def _named(self) -> dict[Key, PartName]:
        """Mirror images are called after the one that is made first."""
        order = [pair.first for pair in self._pairs]
        names = name_things(
            self._design, self._making, self._things, [thing for thing in order if thing.key not in self._mirrors]
        )
        numbered = row_names(self._things)
        for key, other in self._mirrors.items():
            # A row or a column keeps its own number, whichever other one it is the mirror image of.
            own = numbered.get(self._things.all[key].node.patches)
            names[key] = own or replace(names[other], mirrored=True)
        return names

    def _numbered(self) -> dict[Key, int]:
        """The step that makes each thing; mirror images share one, but not on papers, which are each other's mirror.

        The steps before it that make segments of strip sets, or sections of papers, have their own numbers.
        """
        number = 0
        found: dict[Key, int] = {}
        for pair in self._pairs:
            number += 0 if self._papers_of(pair.first) else 1
            if pair.first.by_method:
                unit = self._making.units[pair.first.key[1]]
                number += steps_before(unit.group.filling) if unit.method == STRIPS and unit.group.filling else 0
            for thing in filter(None, (pair.first, pair.second)):
                plan = self._papers_of(thing)
                number += step_count(plan) if plan else 0
                found[thing.key] = number
        return found

    def _papers_of(self, thing: Thing) -> FoundationPlan | None:
        """The foundation papers that it is sewn to, if it is."""
        return self._plans.get(self._making.units[thing.key[1]].group.key) if thing.by_method else None

    def steps(self) -> tuple[MakingStep, ...]:
        """All of them."""
        steps = [step for pair in self._pairs for step in self._steps_of(pair)]
        marked = {number for step in steps for number in _marked(step)}
        return tuple(
            replace(step, actions=pinned(step.actions, marked_edge(step.variants[0])[0]))
            if step.number in marked and step.actions
            else step
            for step in steps
        )

    def _steps_of(self, pair: _Pair) -> tuple[MakingStep, ...]:
        if self._papers_of(pair.first) is None:
            return (self._step(self._number[pair.first.key], pair),)
        steps: list[MakingStep] = []
        for thing in filter(None, (pair.first, pair.second)):
            plan = self._papers_of(thing)
            if plan is not None:
                first = self._number[thing.key] - step_count(plan) + 1
                steps += paper_steps(plan, first, self._names[thing.key], thing.key[1], self._variant(thing))
        return tuple(steps)

    def _step(self, number: int, pair: _Pair) -> MakingStep:
        thing, name = pair.first, self._names[pair.first.key]
        variants = tuple(self._variant(each) for each in (pair.first, pair.second) if each is not None)
        if not thing.by_method:
            self._tops[thing.key] = marked_edge(variants[0])[1]
        if thing.by_method:
            method = self._making.units[thing.key[1]].method
            return MakingStep(number, name, method, thing.key[1], variants)
        if thing.by_hand:
            is_whole = not any(taker[1] == BY_HAND for taker in thing.takers)
            actions = plan_by_hand(variants[0], self._design.seam, is_whole=is_whole)
            return MakingStep(number, name, OVER_PAPERS, thing.title, variants, actions)
        actions = plan_actions(variants[0], self._design.seam)
        return MakingStep(number, name, CUT_PATCHES, thing.title, variants, actions)

    def _variant(self, thing: Thing) -> Variant:
        unit = self._frames.units[thing.key[0]]
        ingredients: list[Ingredient] = []
        stages: list[Stage] = []
        node = unit.assembly
        if not thing.by_method:
            count = self._count_ingredients(node)
            self._sew(node, thing, ingredients, stages, count)
        return Variant(
            count=thing.count,
            extent=(unit.width, unit.height),
            outline=unit.outline,
            picture=unit.picture,
            patches=unit.places[0].patches,
            ingredients=tuple(ingredients),
            stages=tuple(stages),
            cells=cells_of(self._design, thing),
        )

    def _count_ingredients(self, node: Joined) -> int:
        return sum(self._count_ingredients(part) if self._goes_in(part, node) else 1 for part in node.parts)

    def _sew(self, node: Joined, thing: Thing, ingredients: list[Ingredient], stages: list[Stage], many: int) -> int:
        """Stages for a node and what is sewn on the way; the number of what comes out."""
        origin = self._frames.origin(thing.key[0])
        parts = []
        for part in node.parts:
            if self._goes_in(part, node):
                parts.append(self._sew(part, thing, ingredients, stages, many))
            else:
                parts.append(len(ingredients))
                ingredients.append(self._ingredient(part, origin))
        seams = tuple(self._seam(thing, node, place, parts) for place in range(len(node.seams)))
        closes = tuple((moved([a], origin)[0], moved([b], origin)[0]) for a, b in node.closes)
        stages.append(Stage(tuple(parts), seams, closes))
        return many + len(stages) - 1

    def _seam(self, thing: Thing, node: Joined, place: int, parts: Sequence[int]) -> StepSeam:
        origin = self._frames.origin(thing.key[0])
        number, seam = self._frames.number_of(node), node.seams[place]
        key = (number, place)
        by_hand = thing.by_hand
        toward = None if by_hand else self._pressing.toward.get(key, 1)
        over, ends = self._seams.of(number)[place].over, (seam.start, seam.end)
        return StepSeam(
            line=moved([self._true.get(place, place) for place in (seam.start, *seam.turns, seam.end)], origin),
            over=over,
            kind=seam.kind,
            stop=None if seam.stop is None else moved([seam.stop], origin)[0],
            begin=None if seam.begin is None else moved([seam.begin], origin)[0],
            parts=(parts[place], parts[place + 1]),
            toward=toward,
            arrow=over if toward else Point(-over.x, -over.y),
            meetings=0 if by_hand else self._pressing.meetings.get(key, 0),
            unnested=0 if by_hand else self._pressing.unnested.get(key, 0),
            dots=() if by_hand else tuple(moved([end], origin)[0] for end in ends if end in self._turned_at),
            fan=self._fan(key, origin),
            by_row=self._by_row(key),
            bend=seam.bend and Bend(moved([seam.bend.centre], origin)[0], seam.bend.radius, hollow=True),
        )

    def _fan(self, key: SeamKey, origin: Point) -> Fan | None:
        """Where a seam is pressed to its other side from there on; `origin` is the corner of what the step makes."""
        hub, toward = self._pressing.fans.get(key), self._pressing.toward.get(key)
        if hub is None or toward is None:
            return None
        seam, corner = self._seams.of(key[0])[key[1]], self._frames.origin(key[0])
        ends = (seam.line[0], seam.line[-1])
        place = Point(hub.x + corner.x - origin.x, hub.y + corner.y - origin.y)
        first, second, third, fourth = (
            next(
                self._design.patches[patch].fabric
                for patch in seam.beside[side]
                if self._leads(moved(self._design.patches[patch].outline, corner), hub, end)
            )
            for side, end in zip((toward, 1 - toward, 1 - toward, toward), (*ends, *ends), strict=True)
        )
        return Fan(place, (first, second), (third, fourth))

    @staticmethod
    def _leads(outline: Polygon, hub: Point, end: Point) -> bool:
        """Whether one of its edges leads from the hub toward the end."""
        way = step(hub, end)
        ways = [step(*(edge if edge[0] == hub else edge[::-1])) for edge in edges(outline) if hub in edge]
        return any(not sign(cross(way, side)) and sign(dot(way, side)) > 0 for side in ways)

    def _ingredient(self, part: Assembly, origin: Point) -> Ingredient:
        patches = part.patches
        picture = tuple(self._design.patches[number].moved(-origin.x, -origin.y) for number in patches)
        outline = None if part.outline is None else moved(part.outline, origin)
        if outline is not None and any(patch.curved for patch in picture) and not _is_upright(outline):
            outline = None  # the twin's edges have names that the curved piece's do not
        letters = tuple(self._letters[number] for number in patches)
        if isinstance(part, Piece):
            fabric = self._design.patches[part.patch].fabric
            return Ingredient(letters[0], None, fabric, patches, picture, outline, letters)
        key = self._things.key_of(part)
        name = self._row_names.get(patches, self._names[key])
        top = self._frames.direction(part, self._tops.get(key, Point(Fraction(0), Fraction(-1))))
        return Ingredient(name.notation, self._number[key], None, patches, picture, outline, letters, top, name)


def _marked(step: MakingStep) -> Iterator[int]:
    """The steps whose results are told apart by a mark at their top."""
    parts = step.variants[0].ingredients
    for action in step.actions:
        for part, landmarks in told_to_lie(action):
            number = parts[part].step if part < len(parts) else None
            if number is not None and any(landmark.kind == "mark" for landmark in landmarks):
                yield number


def _is_upright(outline: Polygon) -> bool:
    return len(outline) == 4 and all(start.x == end.x or start.y == end.y for start, end in edges(outline))
