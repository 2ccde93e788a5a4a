"""Pressing in words: toward what, away from what, open."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from itertools import groupby, pairwise

from blockdsl.facts.stepfacts import StepSeam
from blockdsl.geometry.polygon import step
from blockdsl.sewing.steps.action import Action, Crease, Lay, Measure, Pin, Position, Press, Sew, Trim
from blockdsl.sewing.steps.directions import OPPOSITE, towards
from blockdsl.sewing.steps.landmarks import along
from blockdsl.sewing.steps.plan import across, direction_of
from blockdsl.wording.grammar import listed, the
from blockdsl.wording.stepvoice import StepVoice

_ENOUGH_OUTWARD = 3
_BOTH_WAYS = 2
_TURNS_ONCE = 3
"""A seam of so many places turns at the one in the middle."""


class PressingSentences(StepVoice):
    """Names the side of each seam by what the hands hold."""

    _each_is_away = False

    def _pressed_outward(self, actions: Sequence[Action]) -> list[Press]:
        """The pressings of a step in which piece after piece is added and each seam is pressed the same way from it.

        Toward what was added, or each away from it.
        """
        presses: list[Press] = []
        ways: set[bool] = set()
        sewn: Sew | None = None
        for action in actions:
            if isinstance(action, Sew):
                sewn = action
            elif isinstance(action, Press):
                ((stage, place), *more) = action.seams
                seam = self._stages[stage].seams[place]
                if more or sewn is None or sewn.seam != (stage, place) or seam.toward is None:
                    return []
                ways.add(seam.parts[seam.toward] == sewn.part)
                presses.append(action)
            elif not isinstance(action, Measure | Lay | Crease | Trim | Pin):
                return []
        self._each_is_away = ways == {False}
        return presses if len(presses) >= _ENOUGH_OUTWARD and len(ways) == 1 else []

    def _press(self, press: Press) -> Iterator[str]:
        seams = [self._stages[stage].seams[place] for stage, place in press.seams]
        special = [said for seam in seams if (said := self._fanned(seam) or self._by_row(seam, len(seams)))]
        if special:
            yield from dict.fromkeys(special)
            return
        if len(seams) == 1 and seams[0].stop is not None and (named := self._sewn_part(seams[0])):
            yield named
            return
        groups = [
            [self._stages[key[0]].seams[key[1]] for key in keys] for _, keys in groupby(press.seams, lambda k: k[0])
        ]
        whole = self._pressed(seams) or (self._together(groups) if len(groups) > 1 else "")
        if whole:
            yield whole
            return
        for _, group in groupby(press.seams, key=lambda key: key[0]):
            keys = list(group)
            mine = [self._stages[stage].seams[place] for stage, place in keys]
            part = self._many + keys[0][0]
            row = ""
            if part in self._row_lists:
                row = self._joined(part)
            elif len({key[0] for key in press.seams}) > 1:
                row = self._row_names.get(part, "")
            said = self._pressed(mine, row)
            if said:
                yield said
                continue
            yield from self._each_way(mine, row)

    def _fanned(self, seam: StepSeam) -> str:
        """A seam that is pressed one way as far as the middle, where many seams meet, and the other way beyond it."""
        if seam.fan is None:
            return ""
        one, other = seam.fan.fabrics
        if one == other and one not in seam.fan.across:
            return self._words("press-fan", name=self._labels.fabrics[one])
        half, way = towards(step(seam.fan.place, seam.line[0])), towards(seam.arrow)
        return self._words(
            "press-fan-halves",
            half=self._pos(half),
            way=self._pos(way),
            rest=self._pos(OPPOSITE[half]),
            back=self._pos(OPPOSITE[way]),
        )

    def _sewn_part(self, seam: StepSeam) -> str:
        """Of a seam that is left open, what is sewn of it."""
        if seam.toward is None:
            return ""
        self._lines = list(pairwise(seam.line))
        self._sewn = {}
        name = self._side([seam.parts[seam.toward]], [seam.parts[1 - seam.toward]])
        return self._words("press-sewn", name=name) if name else ""

    def _by_row(self, seam: StepSeam, count: int) -> str:
        """A seam of rows that are alike, some of which are pressed the other way."""
        if seam.by_row is None:
            return ""
        way = towards(seam.arrow)
        rows, others = ([str(number) for number in each] for each in (seam.by_row.rows, seam.by_row.others))
        return self._words(
            "press-by-row",
            count=count,
            way=self._way_of_rows(),
            rows=listed(rows, self._words),
            several="yes" if len(rows) > 1 else "no",
            one=self._pos(way),
            others=listed(others, self._words),
            more="yes" if len(others) > 1 else "no",
            other=self._pos(OPPOSITE[way]),
        )

    def _each_way(self, seams: Sequence[StepSeam], row: str) -> Iterator[str]:
        """Seams of one row that go different ways: outward, toward the middle, or by number."""
        ways = [towards(seam.arrow) for seam in seams]
        over = [towards(seam.over) for seam in seams]
        on = [way == other for way, other in zip(ways, over, strict=True)]
        half = len(seams) // 2
        has = "yes" if row else "no"
        if len(seams) % 2 == 0 and on == [True] * half + [False] * half:
            yield self._words("press-inward", count=len(seams), row=row, has=has)
        elif len(seams) % 2 == 0 and on == [False] * half + [True] * half:
            yield self._words("press-outward", count=len(seams), row=row, has=has)
        elif len(seams) > 1 and len(set(on)) == _BOTH_WAYS:
            forward = direction_of(seams)
            sides = [forward if each else OPPOSITE[forward] for each in dict.fromkeys(on)]
            numbers = [[str(place + 1) for place, each in enumerate(on) if each == way] for way in dict.fromkeys(on)]
            yield self._words(
                "press-by-number",
                first=listed(numbers[0], self._words),
                one=self._pos(sides[0]),
                several="yes" if len(numbers[0]) > 1 else "no",
                second=listed(numbers[1], self._words),
                other=self._pos(sides[1]),
                more="yes" if len(numbers[1]) > 1 else "no",
                row=row,
                has=has,
            )
        elif len(seams) > 1:
            forward = direction_of(seams)
            pos = self._pos(forward if on[0] else OPPOSITE[forward])
            yield self._words("press-toward-way", count=len(seams), pos=pos, row=row, has=has)
        else:
            yield from (self._pressed([seam], row) for seam in seams)

    def _pressed(self, seams: Sequence[StepSeam], row: str = "") -> str:
        """Where these seams go together, or nothing when no one word says it."""
        count = sum(len(seam.line) - 1 for seam in seams)
        if all(seam.toward is None for seam in seams):
            return self._words("press-open", count=count, row=row, has="yes" if row else "no")
        if any(seam.toward is None for seam in seams):
            return ""
        self._lines = [pair for seam in seams for pair in pairwise(seam.line)]
        self._sewn = {}
        to = [seam.parts[seam.toward] for seam in seams if seam.toward is not None]
        away = [seam.parts[1 - seam.toward] for seam in seams if seam.toward is not None]
        found = self._named(to, away)
        if found:
            word, name = found
            return self._words(f"press-{word}", count=count, name=name, row=row, has="yes" if row else "no")
        first = seams[0].parts
        if len(seams) == 1 == len(self._stages) and not self._ordinal and self._alike_names(*first):
            return self._words("press-either")
        ways = {_way(seam) for seam in seams}
        if len(ways) == 1:
            pos = self._pos(ways.pop())
            return self._words("press-toward-way", count=count, pos=pos, row=row, has="yes" if row else "no")
        return ""

    def _named(self, to: Sequence[int], away: Sequence[int]) -> tuple[str, str] | None:
        """`toward` or `away`, and the name of that side, where one name says it."""
        for word, these, others in (("toward", to, away), ("away", away, to)):
            name = self._side(these, others)
            if name:
                return word, name
        return None

    def _together(self, stages: Sequence[Sequence[StepSeam]]) -> str:
        """Seams of several stages that go toward pieces of one name, though it lies on both sides of some."""
        found = set[tuple[str, str] | None]()
        for seams in stages:
            if any(seam.toward is None for seam in seams):
                return ""
            self._lines = [pair for seam in seams for pair in pairwise(seam.line)]
            self._sewn = {}
            to = [seam.parts[seam.toward] for seam in seams if seam.toward is not None]
            away = [seam.parts[1 - seam.toward] for seam in seams if seam.toward is not None]
            found.add(self._named(to, away))
        if len(found) != 1 or None in found:
            return ""
        ((word, name),) = (each for each in found if each is not None)
        count = sum(len(seam.line) - 1 for seams in stages for seam in seams)
        return self._words(f"press-{word}", count=count, name=name, row="", has="no")

    def _side(self, these: Sequence[int], others: Sequence[int]) -> str:
        """One name for all of these parts that none of the parts across their seams has."""
        for name_of in (self._letter, self._fabric, self._labels.full):
            names = {self._side_name(part, name_of) for part in these}
            across = {self._side_name(each, name_of) for part in others for each in self._pieces(part)}
            if len(names) == 1 and not names & across and "" not in names:
                name = names.pop()
                several = len(set(these)) > 1 and not self._is_patch(these[0]) and these[0] < self._many
                return self._plural_side(these[0]) if several else name
        return ""

    def _pieces(self, part: int) -> list[int]:
        """The part and, where nothing names it, all that was sewn to make it."""
        if part < self._many or part in self._row_lists or part in self._row_names:
            return [part]
        if part not in self._sewn:
            self._sewn[part] = self._along_the_seam(part)
        return self._sewn[part]

    def _along_the_seam(self, part: int) -> list[int]:
        found = [part]
        for each in self._inside(part):
            outlines = [patch.corners for patch in self._labels.parts[each].picture]
            if any(along(outline, line) is not None for outline in outlines for line in self._lines):
                found.append(each)
        return found

    def _inside(self, part: int) -> list[int]:
        if part < self._many:
            return [part]
        return [each for one in self._stages[part - self._many].parts for each in self._inside(one)]

    def _plural_side(self, part: int) -> str:
        return the(self._labels.many(part), self._words)

    def _is_patch(self, part: int) -> bool:
        return part < self._many and self._labels.is_patch(part)

    def _letter(self, part: int) -> str:
        return self._labels.parts[part].name

    def _fabric(self, part: int) -> str:
        found = self._labels.parts[part]
        return self._labels.fabrics[found.fabric] if found.fabric else found.name

    def _side_name(self, part: int, name_of: Callable[[int], str]) -> str:
        if part in self._ordinal:
            return self._ordinal[part]
        if part in self._faces:
            return self._faces[part]
        if part >= self._many:
            return self._joined(part) if part in self._row_lists or part in self._row_names else ""
        if self._labels.is_patch(part):
            return name_of(part)
        return self._labels.the(part)


def _way(seam: StepSeam) -> Position:
    """Which way a seam is pressed: one that turns to and fro as it does on the whole."""
    if len(seam.line) <= _TURNS_ONCE:
        return towards(seam.arrow)
    return across(seam) if seam.arrow == seam.over else OPPOSITE[across(seam)]
