"""The steps that join patches and units in words, from their actions."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import StepFacts
from blockdsl.geometry import to_float
from blockdsl.sewing.steps.action import Action, Lay, Measure, Papers, Place, Press, Row, SetIn, Sew, Trim, Turn
from blockdsl.wording.care import Care
from blockdsl.wording.lengths import figure, is_on_ruler, length_words, nearest_words, rounded, size_words
from blockdsl.wording.messages import Messages
from blockdsl.wording.sewing import SewingSentences, spread_alike
from blockdsl.wording.steptext import StepPart
from blockdsl.wording.stepvoice import Mentioned

_MOST_WORDS = 90
"""A longer step is divided into lettered parts."""


def joining_parts(step: StepFacts, block: BlockFacts, words: Messages, mentioned: Mentioned) -> tuple[StepPart, ...]:
    """What to do in a step that joins patches and units; in lettered parts when it is long."""
    return _Writer(step, block, words, mentioned).parts()


class _Writer(SewingSentences, Care):
    """All actions of a step, in order."""

    _is_trimmed = False

    def parts(self) -> tuple[StepPart, ...]:
        """The whole; broken after pressing when it is long, and wherever something is measured on the way."""
        groups: list[list[str]] = [[self._take()]]
        measures: list[tuple[int, str]] = []
        self._outward = self._pressed_outward(self._step.actions)
        runs = self._runs(self._step.actions)
        rounds = any(isinstance(run[0], Sew) and len(run) > 1 and run[0].out for run in runs)
        trims = [run for run in runs if isinstance(run[0], Trim)]
        for run in runs:
            if isinstance(run[0], Measure):
                groups = [group for group in groups if group]
                measures.append((len(groups), self._measure(run[0])))
                groups.append([])
                continue
            if isinstance(run[0], Press) and self._outward:
                groups[-1] += (
                    [self._words("press-each", way="away" if self._each_is_away else "toward")]
                    if run[0] is self._outward[0]
                    else []
                )
                continue
            if isinstance(run[0], Trim) and run is not trims[-1] and not rounds:
                continue
            groups[-1] += [sentence for sentence in self._said(run) if sentence]
            if isinstance(run[0], Press | Trim | Papers):
                groups.append([])
        if len(measures) > 1:
            return _between(groups, measures)
        measure = measures[0][1] if measures else ""
        groups = [group for group in groups if group]
        if sum(len(sentence.split()) for group in groups for sentence in group) <= _MOST_WORDS or len(groups) < 2:
            return (StepPart(tuple(sentence for group in groups for sentence in group), measure),)
        groups = _gathered(groups)
        last = len(groups) - 1
        return tuple(StepPart(tuple(group), measure if place == last else "") for place, group in enumerate(groups))

    def _take(self) -> str:
        return self._words("step-take-each" if self._step.count > 1 else "step-take", list=self._labels.takes())

    def _runs(self, actions: Sequence[Action]) -> list[list[Action]]:
        """Actions that share a sentence: two alike on opposite sides, the rows of a list."""
        runs: list[list[Action]] = []
        for action in actions:
            if runs and self._goes_with(runs[-1], action):
                runs[-1].append(action)
            else:
                runs.append([action])
        return self._each_set_in(runs)

    def _each_set_in(self, runs: list[list[Action]]) -> list[list[Action]]:
        """Two alike that are set in one after the other, as an earlier step taught, and then both pressed."""
        for place in range(len(runs) - 3):
            (one, *_), (first, *_), (other, *_), (second, *_) = runs[place : place + 4]
            if (
                not isinstance(one, SetIn)
                or not isinstance(other, SetIn)
                or self._by_hand
                or not self._mentioned.set_in[1]
            ):
                continue
            if not isinstance(first, Press) or not isinstance(second, Press) or one.landmarks or other.landmarks:
                continue
            if max(one.turns, other.turns) > 1 or not self._alike_names(one.part, other.part):
                continue
            both = Press((*first.seams, *second.seams), (*first.toward, *second.toward))
            return [*runs[:place], [one, other], [both], *runs[place + 4 :]]
        return runs

    def _goes_with(self, run: Sequence[Action], action: Action) -> bool:
        first = run[0]
        if isinstance(action, Row):
            return isinstance(first, Row)
        if not isinstance(action, Sew) or not isinstance(first, Sew) or len(run) > 1:
            return False
        if max(first.part, action.part) < self._many and self._labels.is_numbered(first.part):
            return False
        return self._alike_names(first.part, action.part) and spread_alike(first, action)

    def _said(self, run: Sequence[Action]) -> Iterator[str]:
        first = run[0]
        match first:
            case Row():
                yield from self._rows([each for each in run if isinstance(each, Row)])
            case Sew():
                yield from self._sew([each for each in run if isinstance(each, Sew)])
            case Place():
                yield from self._place(first)
            case Lay():
                yield self._lay(first)
            case Turn():
                yield self._turn(first)
            case Press():
                yield from self._press(first)
            case Trim():
                yield from self._trim(first)
            case SetIn() if len(run) > 1:
                name, number = self._mentioned.set_in
                yield self._words("join-set-in-each", part=self._labels.an(first.part), name=name, number=number)
            case _:
                yield from self._with_care(first)

    def _trim(self, trim: Trim) -> Iterator[str]:
        """Dog-ears, and what is trimmed to a size; as before where a step has said just that."""
        to_size = self._trimmed(trim)
        before = self._mentioned.trimmed.setdefault(to_size, self._step.number)
        if to_size and before != self._step.number:
            yield self._words("join-trim-as", number=before)
            return
        yield self._words("join-trim")
        yield to_size

    def _trimmed(self, trim: Trim) -> str:
        """To which size two triangles are trimmed that make a rectangle; never to less than it must have."""
        unit = self._block.unit
        if trim.sides is None or any(rounded(side, unit) < side for side in trim.sides):
            return ""
        self._is_trimmed = True
        return self._words(
            "join-trim-to",
            each="yes" if self._step.count > 1 else "no",
            width=figure(trim.sides[0], unit, self._words),
            height=figure(trim.sides[1], unit, self._words),
            unit=unit,
            seam=length_words(self._block.seam, unit, self._words),
            points="yes" if trim.points else "no",
        )

    def _measure(self, measure: Measure) -> str:
        unit = self._block.unit
        if measure.sides is not None:
            said = size_words(measure.sides, unit, self._words)
            if self._is_trimmed:
                width, height = (figure(side, unit, self._words) for side in measure.sides)
                return self._words("size", width=width, height=height, unit=unit)
            if self._is_block and measure.points:
                beyond = length_words(self._block.seam, unit, self._words)
                return self._words("measure-points", size=said, length=beyond, count=measure.points)
            return said
        exact = measure.length or self._step.size[0]
        if not measure.about and is_on_ruler(exact, unit):
            length = length_words(exact, unit, self._words)
        else:
            length = nearest_words(to_float(exact), unit, self._words, about=True)
        if measure.along is None:
            return self._words("measure-across", length=length)
        if measure.along == "long":
            return self._words("measure-long", length=length)
        return self._words("measure-along", length=length, pos=self._pos(measure.along))


def _between(groups: Sequence[Sequence[str]], measures: Sequence[tuple[int, str]]) -> tuple[StepPart, ...]:
    """A part up to each measure, which is taken after so many groups."""
    found, start = [], 0
    for stop, measure in measures:
        found.append(StepPart(tuple(sentence for group in groups[start:stop] for sentence in group), measure))
        start = stop
    return tuple(found)


def _gathered(groups: Sequence[Sequence[str]]) -> list[list[str]]:
    """Short groups together with the one before: a part with a single sentence is none."""
    found: list[list[str]] = []
    for group in groups:
        if found and (len(group) < 2 or sum(len(sentence.split()) for sentence in found[-1]) < 12):
            found[-1] += group
        else:
            found.append(list(group))
    return found
