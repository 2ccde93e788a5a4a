"""From the stages of a step to actions: what lies on the table, what is sewn to it, one seam at a time."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from msgspec import structs
from msgspec.structs import replace

from blockdsl.geometry import Exact, Point, Polygon, sign
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import cross, dot, step
from blockdsl.sewing.steps.action import (
    Action,
    Baste,
    Close,
    Crease,
    Curve,
    Dot,
    Fold,
    Landmark,
    Lay,
    Measure,
    Meeting,
    Papers,
    Partial,
    Pin,
    Place,
    Position,
    Press,
    Row,
    SetIn,
    Sew,
    Trim,
    Turn,
)
from blockdsl.sewing.steps.directions import OPPOSITE, towards
from blockdsl.sewing.steps.edges import edge_kind, is_askew, is_rectangle, is_slanted
from blockdsl.sewing.steps.ends import overhang
from blockdsl.sewing.steps.landmarks import NOTHING, Lying, along, half_turned, is_longest, lying, seen_along, steadied
from blockdsl.sewing.steps.measure import finished_size, measure_of
from blockdsl.sewing.steps.step import Ingredient, Stage, StepSeam, Variant
from blockdsl.sewing.steps.upright import in_whole_numbers, upright

_ALIKE = 1e-6
_BACKWARDS = ("left", "top")
_UPRIGHT = ("top", "bottom", "left", "right")
_FINE = 64
"""How far points extend is given to such a share of an inch or a centimetre."""
_NUMBERED = re.compile(r"(?:row|column) \d")
MOST_BESIDE = 3
"""Parts side by side that are sewn to a middle one; of more the order is listed."""


def _fine(length: float) -> Fraction:
    return Fraction(round(length * _FINE), _FINE)


def plan_actions(variant: Variant, seam: Fraction) -> tuple[Action, ...]:
    """The actions of a step that joins patches and units, as its picture lies; `seam` is the allowance."""
    planned = tuple(_Planner(variant, seam).plan())
    is_laid = not any(isinstance(action, Sew) and action.faces for action in planned)
    return (*planned, measure_of(variant, seam, is_laid=is_laid))


def plan_by_hand(variant: Variant, seam: Fraction, *, is_whole: bool) -> tuple[Action, ...]:
    """The same for patches that are folded round papers: nothing is creased, dotted or pressed on the way.

    `is_whole`: nothing else is sewn to it over papers, so the papers come out.
    """
    planned = _Planner(variant, seam).plan()
    sewn = (action for action in planned if not isinstance(action, Crease | Dot | Press | Trim | Measure))
    return (Baste(), *sewn, Papers(is_whole), measure_of(variant, seam))


def pinned(actions: Sequence[Action], side: Position) -> tuple[Action, ...]:
    """The same with a mark pinned to that edge before it is measured."""
    return (*actions[:-1], Pin(side), actions[-1])


def told_to_lie(action: Action) -> Iterator[tuple[int, tuple[Landmark, ...]]]:
    """The parts that an action says how to lay, each with its landmarks."""
    match action:
        case Lay() | Row():
            yield from zip(action.parts, action.landmarks, strict=True)
        case Sew() | SetIn():
            yield action.part, action.landmarks
        case Place():
            yield action.base, action.landmarks
        case _:
            pass


class _Planner:
    def __init__(self, variant: Variant, seam: Fraction) -> None:
        self._variant, self._times = in_whole_numbers(upright(variant))
        self._seam = seam
        self._many = len(variant.ingredients)
        self._curves = 0
        self._lying: dict[int, Lying] = {}
        self._told: set[int] = set()
        self._creased: set[str] = set()
        self._even: Position = "right"

    def plan(self) -> Iterator[Action]:
        """In order."""
        stages = self._variant.stages
        if any(seam.dots or len(seam.line) > 2 for stage in stages for seam in stage.seams):
            yield Dot(tuple(range(self._many)))
        rows = self._rows()
        number = 0
        while number < len(stages):
            if number == 0 and rows:
                yield from self._sew_rows(rows)
                number = rows
                continue
            yield from self._stage(number, stages[number])
            number += 1

    def _rows(self) -> int:
        """How many stages in front are rows that the last one joins; 0 when they are none, or a single one."""
        *rows, last = self._variant.stages
        if len(rows) < 2 or not all(self._is_plain(stage) for stage in (*rows, last)):
            return 0
        if any(part >= self._many for row in rows for part in row.parts):
            return 0
        joined = sorted(part for part in last.parts if part >= self._many)
        return len(rows) if joined == [self._many + number for number in range(len(rows))] else 0

    @staticmethod
    def _is_plain(stage: Stage) -> bool:
        return not stage.closes and all(
            seam.kind == "straight" and len(seam.line) == 2 and seam.stop is None and seam.begin is None
            for seam in stage.seams
        )

    def _sew_rows(self, count: int) -> Iterator[Action]:
        rows = self._variant.stages[:count]
        actions: list[Action] = []
        units = [part.step for part in self._variant.ingredients if part.step is not None]
        if any(len(row.parts) > 2 for row in rows) or any(units.count(step) > 2 for step in units):
            actions += [self._row(number, row) for number, row in enumerate(rows)]
        else:
            for number, row in enumerate(rows):
                actions += [each for each in self._stage(number, row) if not isinstance(each, Press)]
        seams = tuple((number, place) for number, row in enumerate(rows) for place in range(len(row.seams)))
        yield from self._laid_together([action for action in actions if isinstance(action, Lay)])
        yield from (action for action in actions if isinstance(action, Crease))
        yield from (action for action in actions if not isinstance(action, Lay | Crease))
        yield self._press(seams)

    def _laid_together(self, lays: Sequence[Lay]) -> Iterator[Lay]:
        """Bases of one kind, one in each row, are laid in one sentence."""
        waiting = list(lays)
        while waiting:
            first = waiting.pop(0)
            alike = [each for each in waiting if self._is_like(first.parts[0], each.parts[0])]
            if len(first.parts) == 1 and len(alike) == 1 and len(alike[0].parts) == 1 and not first.on_point:
                waiting.remove(alike[0])
                yield Lay(first.parts + alike[0].parts, first.landmarks + alike[0].landmarks)
            else:
                yield first

    # --- stages ------------------------------------------------------------------------------------

    def _stage(self, number: int, stage: Stage) -> Iterator[Action]:
        if any(seam.bend for seam in stage.seams):
            yield from self._curved(number, stage)
        elif not self._is_plain(stage):
            yield from self._hard(number, stage)
        elif len(stage.parts) > MOST_BESIDE or self._is_shorter_listed(stage):
            yield self._row(number, stage)
            yield self._press(self._seams(number, stage))
        else:
            yield from self._beside(number, stage)

    def _is_shorter_listed(self, stage: Stage) -> bool:
        """Of two units whose placing must be said, beside a patch or with long names, a list says it in fewer words."""
        if len(stage.parts) != MOST_BESIDE or max(stage.parts) >= self._many:
            return False
        if any(self._is_numbered(part) for part in stage.parts):
            return False
        names = [self._variant.ingredients[part].name for part in stage.parts]
        sides = zip(stage.parts, (*stage.seams, stage.seams[-1]), strict=True)
        told = [bool(self._lies(part, seam).landmarks) for part, seam in sides]
        is_patch = self._variant.ingredients[stage.parts[1]].step is None
        long = all(len(name.split(" ")) > 1 for name in (names[0], names[2]))
        return told[0] and told[2] and (is_patch or long)

    def _press(self, seams: tuple[tuple[int, int], ...]) -> Press:
        found = [self._variant.stages[stage].seams[place] for stage, place in seams]
        return Press(seams, tuple(None if seam.toward is None else seam.parts[seam.toward] for seam in found))

    @staticmethod
    def _seams(number: int, stage: Stage) -> tuple[tuple[int, int], ...]:
        return tuple((number, place) for place in range(len(stage.seams)))

    def _row(self, number: int, stage: Stage) -> Row:
        way = direction_of(stage.seams)
        marks = tuple(
            self._lies(part, stage.seams[min(place, len(stage.seams) - 1)]).landmarks
            for place, part in enumerate(stage.parts)
        )
        dots = tuple(self._dots(seam) for seam in stage.seams)
        row = Row(stage.parts, way, number, marks, self._meeting(stage.seams), dots)
        # What lies aslant in the block is turned to be sewn, and read as it lies then.
        if way in _BACKWARDS and len(stage.seams) < MOST_BESIDE:
            return structs.replace(
                row, parts=row.parts[::-1], way=OPPOSITE[way], landmarks=marks[::-1], dots=dots[::-1]
            )
        return row

    @staticmethod
    def _meeting(seams: Sequence[StepSeam]) -> Meeting:
        if not any(seam.meetings for seam in seams):
            return ""
        return "match" if any(seam.unnested for seam in seams) else "nest"

    def _beside(self, number: int, stage: Stage) -> Iterator[Action]:
        """Two or three parts: one lies on the table, the others are sewn to it one after the other."""
        base = self._base(stage)
        others = [place for place in range(len(stage.parts)) if place != base]
        if len(stage.parts) == 2 and (placed := self._placed(number, stage, base)):
            yield from placed
            return
        if askew := self._askew(number, stage, base):
            yield askew
            yield self._press(self._seams(number, stage))
            yield Trim()
            return
        yield from self._laid(stage, base)
        sewn = [self._sewn(number, stage, base, place) for place in others]
        spread = tuple(each.part for each in sewn if spreads(each))
        fresh = tuple(part for part in spread if self._variant.ingredients[part].name not in self._creased)
        if fresh:
            self._creased |= {self._variant.ingredients[part].name for part in fresh}
            yield Crease(stage.parts[base], fresh)
        yield from sewn
        yield self._press(self._seams(number, stage))
        if any(is_slanted(seam.line) or spreads(each) for seam, each in zip(stage.seams, sewn, strict=True)):
            yield Trim()

    def _sewn(self, number: int, stage: Stage, base: int, place: int) -> Sew:
        seam_number = min(base, place)
        seam = stage.seams[seam_number]
        part = stage.parts[place]
        side = towards(seam.over)
        return Sew(
            part,
            stage.parts[base],
            side if place > base else OPPOSITE[side],
            (number, seam_number),
            "" if part >= self._many else edge_kind(self._variant.ingredients[part].outline, seam.line),
            () if part in self._told else self._lies(part, seam).landmarks,
            self._meeting([seam]),
            self._extends(part, stage.parts[base], seam),
            self._dots(seam),
            self._along(stage.parts[base], seam),
        )

    def _askew(self, number: int, stage: Stage, base: int) -> Sew | None:
        """Two units whose seam lies neither level nor upright nor at 45°: by their fabrics, or by their long edges."""
        parts = stage.parts
        if len(parts) != 2 or max(parts) >= self._many or not is_askew(stage.seams[0].line):
            return None
        part, ground = (self._variant.ingredients[each] for each in (parts[1 - base], parts[base]))
        line = stage.seams[0].line
        if part.step is None or ground.step is None:
            return None
        sew = self._sewn(number, stage, base, 1 - base)
        if not sew.landmarks and not self._lies(parts[base], stage.seams[0]).landmarks:
            if len(self._variant.stages) > 1:
                return None  # what is sewn to it later must be known to lie as it does
            return structs.replace(sew, edge="long") if _by_longest(part, line) and _by_longest(ground, line) else None
        faces = seen_along(part, line), seen_along(ground, line)
        return structs.replace(sew, faces=faces, landmarks=()) if all(faces) and faces[0] != faces[1] else None

    def _along(self, part: int, seam: StepSeam) -> tuple[int, ...]:
        """The ingredients that lie along a seam in what an earlier stage made, in order from the left or the top."""
        if part < self._many:
            return ()
        inside = sorted(self._inside(part), key=lambda number: self._start(number, seam))
        return tuple(number for number in inside if self._touches(number, seam))

    def _inside(self, part: int) -> list[int]:
        if part < self._many:
            return [part]
        return [each for inner in self._variant.stages[part - self._many].parts for each in self._inside(inner)]

    def _start(self, part: int, seam: StepSeam) -> Exact:
        corners = [corner for ring in self._outlines(part) for corner in ring]
        if seam.line[0].x == seam.line[-1].x:
            return min(corner.y for corner in corners)
        return min(corner.x for corner in corners)

    def _touches(self, part: int, seam: StepSeam) -> bool:
        return any(along(ring, seam.line) is not None for ring in self._outlines(part))

    def _laid(self, stage: Stage, base: int) -> Iterator[Action]:
        """How the base lies, and what is laid beside it: rows, and the other one of two alike."""
        part = stage.parts[base]
        first = stage.seams[min(base, len(stage.seams) - 1)]
        alike = [place for place, other in enumerate(stage.parts) if place != base and self._is_like(other, part)]
        numbered = [place for place, other in enumerate(stage.parts) if place != base and self._is_numbered(other)]
        if len(stage.parts) == 2 and alike and not numbered:
            both = (0, 1)
            marks = tuple(self._lies(stage.parts[place], first).landmarks for place in both)
            if any(marks):
                self._told |= set(stage.parts)
                yield Lay(tuple(stage.parts), marks)
            return
        if numbered and self._is_numbered(part):
            yield from self._laid_rows(stage)
            return
        on_point = self._is_on_point(part)
        marks_of_base = () if part in self._told else self._lies(part, first).landmarks
        if marks_of_base and part < self._many:
            slanted = all("-" in towards(seam.over) for seam in stage.seams)
            marks_of_base = steadied(self._variant.ingredients[part], marks_of_base, slanted=slanted)
        self._told.add(part)
        if marks_of_base or on_point:
            yield Lay((part,), (marks_of_base,), on_point)

    def _laid_rows(self, stage: Stage) -> Iterator[Action]:
        """Rows and columns by number: each is laid, or turned as one before it."""
        before: list[int] = []
        lays: list[tuple[int, tuple[Landmark, ...]]] = []
        turns: list[Turn] = []
        for place, part in enumerate(stage.parts):
            marks = self._lies(part, stage.seams[min(place, len(stage.seams) - 1)]).landmarks
            self._told.add(part)
            if not marks:
                continue
            like = next((other for other in before if self._is_like(other, part)), None)
            if like is not None and half_turned(
                self._variant.ingredients[like].picture, self._variant.ingredients[part].picture
            ):
                turns.append(Turn(part, like, 2))
                continue
            lays.append((part, marks))
            before.append(part)
        while lays:
            _, marks = lays[0]
            same = [part for part, other in lays if other == marks]
            lays = [each for each in lays if each[1] != marks]
            yield Lay(tuple(same), tuple(marks for _ in same))
        yield from turns

    def _is_numbered(self, part: int) -> bool:
        if part >= self._many:
            return False
        ingredient = self._variant.ingredients[part]
        # A row of tumblers is a shape, row 2 is numbered.
        return ingredient.step is not None and bool(_NUMBERED.match(ingredient.name))

    def _is_like(self, one: int, other: int) -> bool:
        """Whether two parts are made by one step."""
        if one >= self._many or other >= self._many:
            return False
        first, second = self._variant.ingredients[one], self._variant.ingredients[other]
        return first.step is not None and first.step == second.step

    def _is_on_point(self, part: int) -> bool:
        if part >= self._many:
            return False
        outline = self._variant.ingredients[part].outline
        if outline is None or len(outline) != 4:
            return False
        ways = [towards(Point(b.x - a.x, b.y - a.y)) for a, b in zip(outline, (*outline[1:], outline[0]), strict=True)]
        return is_rectangle(outline) and all("-" in way for way in ways)

    def _lies(self, part: int, seam: StepSeam) -> Lying:
        if part >= self._many:
            return NOTHING
        if part not in self._lying:
            ingredient = self._variant.ingredients[part]
            self._lying[part] = lying(ingredient, seam.line)
        return self._lying[part]

    # --- which part lies on the table --------------------------------------------------------------

    def _base(self, stage: Stage) -> int:
        if len(stage.parts) == MOST_BESIDE:
            return 1
        if any(seam.stop is not None for seam in stage.seams):
            areas = [sum((doubled_area(ring) for ring in self._outlines(part)), Fraction(0)) for part in stage.parts]
            return areas.index(min(areas))
        ranks = [self._rank(part) for part in stage.parts]
        if ranks[0] != ranks[1]:
            return ranks.index(max(ranks))
        return 0 if towards(stage.seams[0].over) in ("right", "upper-right", "lower-right") else 1

    def _rank(self, part: int) -> tuple[int, object]:
        """What lies on the table: what is sewn already, else a unit, else a rectangle, else the larger patch."""
        if part >= self._many:
            return 3, 0
        ingredient = self._variant.ingredients[part]
        if ingredient.step is not None:
            return 2, 0
        outline = ingredient.outline
        if outline is None:
            return 0, 0
        return (1 if is_rectangle(outline) else 0), doubled_area(outline)

    # --- patches that are mirror images in their seam ----------------------------------------------

    def _placed(self, number: int, stage: Stage, base: int) -> list[Action] | None:
        """One patch placed on the other, all edges even, when they are mirror images in their seam."""
        one, other = stage.parts[base], stage.parts[1 - base]
        if one >= self._many or other >= self._many:
            return None
        under, over = self._variant.ingredients[one], self._variant.ingredients[other]
        if under.fabric is None or over.fabric is None or under.outline is None or over.outline is None:
            return None
        seam = stage.seams[0]
        offset = len(under.outline) == 3 and _half_turned(under.outline, over.outline, seam.line)
        if is_rectangle(under.outline) or not (offset or _mirrored(under.outline, over.outline, seam.line)):
            return None
        side = towards(seam.over) if base == 0 else OPPOSITE[towards(seam.over)]
        kind = edge_kind(under.outline, seam.line)
        marks = lying(under, seam.line, by_edge=True).landmarks
        # What is sewn on in the same step must be known to lie as it does; by itself it is laid anew.
        says = bool(marks) or number + 1 < len(self._variant.stages)
        return [
            Place(other, one, side, (number, 0), kind, marks, says, offset, self._dots(seam)),
            self._press(((number, 0),)),
            self._trimmed(under, over, points=offset),
        ]

    def _trimmed(self, under: Ingredient, over: Ingredient, *, points: bool) -> Trim:
        """Two triangles that are all of a rectangle are trimmed to it; of others the dog-ears only."""
        alone = self._many == 2 and self._variant.outline is not None and is_rectangle(self._variant.outline)
        if not alone or {len(under.outline or ()), len(over.outline or ())} != {3}:
            return Trim()
        width, height = (side * Fraction(1, self._times) + 2 * self._seam for side in finished_size(self._variant))
        return Trim((width, height), points)

    def _extends(self, part: int, base: int, seam: StepSeam) -> tuple[tuple[Position, Fraction], ...]:
        """How far the part extends beyond the base at both ends of their seam; nothing when both are even."""
        start, end = overhang(seam.line, self._outlines(part), self._outlines(base))
        if not start and not end:
            return ()
        allowance = float(self._seam)
        back = Point(seam.line[0].x - seam.line[-1].x, seam.line[0].y - seam.line[-1].y)
        first = towards(back)
        return (first, _fine(start * allowance)), (OPPOSITE[first], _fine(end * allowance))

    @staticmethod
    def _dots(seam: StepSeam) -> tuple[Position, ...]:
        """At which ends of a seam something is set in later."""
        back = Point(seam.line[0].x - seam.line[-1].x, seam.line[0].y - seam.line[-1].y)
        return tuple(towards(back) if dot == seam.line[0] else OPPOSITE[towards(back)] for dot in seam.dots)

    def _outlines(self, part: int) -> list[Polygon]:
        if part >= self._many:
            inner = self._variant.stages[part - self._many].parts
            return [outline for each in inner for outline in self._outlines(each)]
        ingredient = self._variant.ingredients[part]
        return [ingredient.outline] if ingredient.outline else [patch.corners for patch in ingredient.picture]

    # --- curves, partial and set-in seams ----------------------------------------------------------

    def _curved(self, number: int, stage: Stage) -> Iterator[Action]:
        for place, seam in enumerate(stage.seams):
            if seam.bend is None:
                base, part = seam.parts
                yield Sew(part, base, towards(seam.over), (number, place), "", self._lies(part, seam).landmarks)
                continue
            upper = hollow_part(seam)
            yield Curve(seam.parts[upper], seam.parts[1 - upper], (number, place), not self._curves)
            self._curves += 1
        yield self._press(self._seams(number, stage))

    def _hard(self, number: int, stage: Stage) -> Iterator[Action]:
        """Seams that turn, that are left open, or that close one left open."""
        if way := self._zigzag_way(stage):
            yield structs.replace(self._row(number, stage), way=way, dots=(), zigzag=True)
            yield self._press(self._seams(number, stage))
            return
        base = self._base(stage)
        yield from self._laid(stage, base)
        closing = [action for start, end in stage.closes for action in self._closing(number, start, end)]
        yield from (Fold(close.part) for close in closing if number > close.seam[0])
        for place in (place for place in range(len(stage.parts)) if place != base):
            seam_number = min(base, place)
            seam = stage.seams[seam_number]
            part, on = stage.parts[place], stage.parts[place - 1 if place > base else place + 1]
            side = towards(seam.over) if place > base else OPPOSITE[towards(seam.over)]
            if len(seam.line) > 2:
                side = across(seam) if place > base else OPPOSITE[across(seam)]
                yield SetIn(part, on, side, (number, seam_number), self._lies(part, seam).landmarks, len(seam.line) - 2)
            elif seam.stop is not None:
                yield self._partial(number, seam_number, seam, part, on, side)
            else:
                yield self._sewn(number, stage, base, place)
        yield self._press(self._seams(number, stage))
        first = next((seam for seam in stage.seams if seam.stop is not None), None)
        if first is not None:
            self._even = self._towards_start(first)
            yield from self._midway(number)
        if closing:
            yield from self._midway(number)
        yield from closing

    def _zigzag_way(self, stage: Stage) -> Position | None:
        """In which direction parts follow each other along seams that all turn many times; None where they do not."""
        ways = {across(seam) for seam in stage.seams}
        turning = all(len(seam.line) > MOST_BESIDE and seam.stop is None for seam in stage.seams)
        if len(stage.parts) < MOST_BESIDE or stage.closes or not turning or len(ways) != 1:
            return None
        way = ways.pop()
        return way if way in ("right", "bottom") else None

    @staticmethod
    def _towards_start(seam: StepSeam) -> Position:
        return towards(Point(seam.line[0].x - seam.line[-1].x, seam.line[0].y - seam.line[-1].y))

    def _midway(self, number: int) -> Iterator[Measure]:
        """While a seam is open no rectangle lies there: its edge at the end that is sewn is measured."""
        outlines = [ring for part in self._inside(self._many + number) for ring in self._outlines(part)]
        if self._even not in _UPRIGHT or not all(is_rectangle(ring) for ring in outlines):
            return
        xs, ys = ([corner[axis] for ring in outlines for corner in ring] for axis in (0, 1))
        own, other = (xs, ys) if self._even in ("left", "right") else (ys, xs)
        far = max(own) if self._even in ("right", "bottom") else min(own)
        there = [place for place, side in zip(other, own, strict=True) if side == far]
        length = (max(there) - min(there)) * Fraction(1, self._times)
        yield Measure(None, self._even, length + 2 * self._seam)

    def _partial(self, number: int, place: int, seam: StepSeam, part: int, on: int, side: Position) -> Partial:
        start, end, stop = seam.line[0], seam.line[-1], seam.stop or seam.line[-1]
        way = Point(start.x - end.x, start.y - end.y)
        sewn = Point(stop.x - start.x, stop.y - start.y)
        length = _longest(sewn)
        ingredient = self._variant.ingredients[part] if part < self._many else None
        edge = None
        if ingredient is not None and ingredient.outline is not None and is_rectangle(ingredient.outline):
            edge = _edge_along(ingredient.outline, seam.line)
        edge = None if edge is None else edge * Fraction(1, self._times)
        length = length * Fraction(1, self._times)
        return Partial(part, on, side, (number, place), towards(way), length, OPPOSITE[towards(way)], edge)

    def _closing(self, number: int, start: Point, end: Point) -> Iterator[Close]:
        """The open rest of an earlier seam, from the stop to its end."""
        way = towards(Point(end.x - start.x, end.y - start.y))
        for stage_number, earlier in enumerate(self._variant.stages[: number + 1]):
            for place, seam in enumerate(earlier.seams):
                if start not in (seam.stop, seam.begin):
                    continue
                base = self._base(earlier)
                loose = earlier.parts[place if base > place else place + 1]
                side = towards(seam.over) if base <= place else OPPOSITE[towards(seam.over)]
                whole = replace(seam, line=(seam.line[0], end) if start == seam.stop else (end, seam.line[-1]))
                onto = tuple(
                    part for part in self._along(self._many + number, whole) if part not in self._inside(loose)
                )
                yield Close(loose, onto, side, way, (stage_number, place))
                return


def across(seam: StepSeam) -> Position:
    """On which side of the first part the second lies, along all of a seam that turns."""
    way = Point(seam.line[-1].x - seam.line[0].x, seam.line[-1].y - seam.line[0].y)
    first = Point(seam.line[1].x - seam.line[0].x, seam.line[1].y - seam.line[0].y)
    right = first.x * seam.over.y - first.y * seam.over.x
    return towards(Point(-way.y, way.x) if sign(right) > 0 else Point(way.y, -way.x))


def direction_of(seams: Sequence[StepSeam]) -> Position:
    """In which direction parts follow each other, one seam after the other."""
    return towards(Point(sum(seam.over.x for seam in seams), sum(seam.over.y for seam in seams)))  # type: ignore[arg-type]  # no seam, no row


def spreads(sew: Sew) -> bool:
    """Whether the part extends beyond the base by as much at both ends, so that their middles are matched."""
    return len(sew.out) == 2 and sew.out[0][1] > 0 and abs(sew.out[0][1] - sew.out[1][1]) < _ALIKE


def _longest(way: Point) -> Exact:
    across, down = way.x * sign(way.x), way.y * sign(way.y)
    return across if sign(across - down) >= 0 else down


def _by_longest(part: Ingredient, line: Sequence[Point]) -> bool:
    """Whether a longest edge of a part lies along a seam."""
    side = None if part.outline is None else along(part.outline, line)
    return part.outline is not None and side is not None and is_longest(part.outline, side)


def _edge_along(outline: Polygon, line: Sequence[Point]) -> Exact:
    xs, ys = [c.x for c in outline], [c.y for c in outline]
    return max(ys) - min(ys) if line[0].x == line[-1].x else max(xs) - min(xs)


def doubled_area(ring: Polygon) -> Exact:
    """Twice the area of a clockwise outline."""
    first = ring[0]
    ways = [step(first, corner) for corner in ring[1:]]
    return sum((cross(one, other) for one, other in pairwise(ways)), Fraction(0))


def _half_turned(one: Polygon, other: Polygon, line: Sequence[Point]) -> bool:
    """Whether each of two triangles, no mirror image of the other, comes from the other by a half turn."""
    a, b = line[0], line[-1]
    turned = {Point(a.x + b.x - corner.x, a.y + b.y - corner.y) for corner in one}
    return turned == set(other) and not _mirrored(one, other, line)


def _mirrored(one: Polygon, other: Polygon, line: Sequence[Point]) -> bool:
    """Whether two outlines are mirror images in a line."""
    a, b = line[0], line[-1]
    way = Point(b.x - a.x, b.y - a.y)
    square = way.x * way.x + way.y * way.y

    def across(place: Point) -> Point:
        x, y = place.x - a.x, place.y - a.y
        along_it = 2 * (x * way.x + y * way.y)
        return Point(along_it * way.x + square * (a.x - x), along_it * way.y + square * (a.y - y))

    return {across(corner) for corner in one} == {Point(square * corner.x, square * corner.y) for corner in other}


def hollow_part(seam: StepSeam) -> int:
    """Which of the seam's two parts, 0 or 1, has the hollow edge: the one on the far side of the chord from the centre.

    Errors: ValueError for a seam that is not curved.
    """
    if seam.bend is None:
        raise ValueError("a straight seam has no hollow side")
    return 1 if sign(dot(seam.over, step(seam.bend.centre, seam.line[0]))) > 0 else 0
