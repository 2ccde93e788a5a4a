"""A quilt's steps as a maker reads them: rows, their joining, borders, then the finishing."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from typing import Any, Final

from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.facts.quiltstepfacts import (
    CornerTriangles,
    JoinRows,
    LayAlike,
    MeasuredBorder,
    MitredBorder,
    PiecedBorder,
    PressRows,
    QuiltAction,
    QuiltGroup,
    QuiltPart,
    QuiltStepFacts,
    QuiltTake,
    SewInOrder,
    TrimStrips,
)
from blockdsl.model.quilt import RowKind
from blockdsl.wording.grammar import an, capital, listed
from blockdsl.wording.messages import messages
from blockdsl.wording.quilt_borders import measured_border, mitred_border, pieced_border
from blockdsl.wording.quilt_finishing import finishing_parts, finishing_size
from blockdsl.wording.quilt_names import QuiltNames
from blockdsl.wording.steptext import StepPart, StepText

Parts = list[StepPart]


def quilt_names(facts: QuiltFacts, language: str | None = None) -> QuiltNames:
    """What the parts of a quilt are called, in its language."""
    return QuiltNames(facts, messages(language or facts.language))


def quilt_step_texts(facts: QuiltFacts, language: str | None = None) -> tuple[StepText, ...]:
    """The words of every step of a quilt, in order."""
    writer = _Writer(quilt_names(facts, language))
    return tuple(writer.text(step) for step in facts.steps)


class _Writer:
    """Writes the steps of one quilt; it remembers what has been said once."""

    def __init__(self, names: QuiltNames) -> None:
        self.names, self.words, self.facts = names, names.words, names.facts
        self._noted: set[int] = set()
        self._right_sides = False
        self._bias = False

    # --- a step ------------------------------------------------------------------------------------

    def text(self, step: QuiltStepFacts) -> StepText:
        words = self.words
        if not step.of_top:
            name = capital(words(f"quilt-{step.makes}"))
            return StepText(step.number, name, "", finishing_size(step, self.names), finishing_parts(step, self.names))
        made = words("step-make", count=step.count) if step.count > 1 else ""
        size = words("step-size", size=self._finished(step)) if step.finished else ""
        return StepText(step.number, capital(self._name(step)), made, size, self._parts(step))

    def _finished(self, step: QuiltStepFacts) -> str:
        assert step.finished is not None  # noqa: S101  asked for by its caller alone
        if self._only_height(step):
            return self.words("quilt-measure-high", length=self.names.length(step.finished[1]))
        return self.names.size(step.finished)

    def _measure(self, step: QuiltStepFacts) -> str:
        if step.unfinished is None:
            return ""
        if self._only_height(step):
            return self.words("quilt-measure-high", length=self.names.length(step.unfinished[1]))
        return self.names.size(step.unfinished)

    def _only_height(self, step: QuiltStepFacts) -> bool:
        """Rows on point end in triangles, so only their height is measured."""
        return step.makes == "rows" and self._kind(step) == "diagonal row"

    def _kind(self, step: QuiltStepFacts) -> RowKind:
        return self.facts.rows[step.rows[0]].kind

    def _numbers(self, step: QuiltStepFacts) -> list[int]:
        kind = self._kind(step)
        of_kind = [place for place, row in enumerate(self.facts.rows) if row.kind == kind]
        return [of_kind.index(place) + 1 for place in step.rows]

    def _name(self, step: QuiltStepFacts) -> str:
        if step.makes == "border":
            return self.names.ring(next(ring for ring in self.facts.rings if ring.number == step.ring))
        if step.makes == "center":
            return self.words("quilt-center")
        kind = self._kind(step)
        if kind in ("strip", "sash row"):
            of_kind = [row for row in self.facts.rows if row.kind == kind]
            if len(of_kind) == len(step.rows):
                return self.words("quilt-rows-strips", count=len(of_kind))
        return self.names.rows(kind, self._numbers(step))

    def _parts(self, step: QuiltStepFacts) -> tuple[StepPart, ...]:
        """What is done, in parts; the last ends with what is measured."""
        parts: Parts = []
        sentences: list[str] = list(self._take(step))
        for action in step.actions:
            found = _ACTIONS[type(action)](self, action, step)
            if isinstance(found, list):
                parts += [StepPart((*sentences, *found[0].sentences)), *found[1:]]
                sentences = []
            else:
                sentences += found
        if sentences:
            parts.append(StepPart(tuple(sentences)))
        last = parts[-1]
        parts[-1] = StepPart(last.sentences, self._measure(step))
        return tuple(parts)

    def _take(self, step: QuiltStepFacts) -> Iterator[str]:
        if step.takes and step.makes != "border":
            key = "quilt-take-each" if step.count > 1 else "quilt-take"
            yield self.words(key, list=self.names.takes(step.takes))

    # --- rows --------------------------------------------------------------------------------------

    def lay(self, action: LayAlike, step: QuiltStepFacts) -> tuple[str, ...]:
        block = self.names.part(action.part)
        if action.as_in:
            return (self.words("quilt-lay-as-in", block=block, step=action.as_in),)
        how = self.names.lies(action.part.landmarks)
        taken = next(
            take.count
            for take in (*step.takes, QuiltTake("block", action.part.index, action.part.colourway, 1))
            if (take.what, take.index, take.colourway) == (action.part.what, action.part.index, action.part.colourway)
        )
        said = self.words("quilt-lay-each" if taken > 1 else "quilt-lay-one", block=block, how=how)
        return (*self.note_of(action.part, block), said)

    def note_of(self, part: QuiltPart, block: str) -> tuple[str, ...]:
        """Once for each block whose top only a mark shows: when to pin it on."""
        if part.index in self._noted or not any(mark.kind == "mark" for mark in part.landmarks):
            return ()
        self._noted.add(part.index)
        return (self.words("quilt-note-top", block=block),)

    def sew(self, action: SewInOrder, step: QuiltStepFacts) -> tuple[str, ...]:
        del step
        sides = "no" if self._right_sides else "yes"
        self._right_sides = True
        (first, *more) = action.groups
        notes = tuple(
            note
            for group in action.groups
            for part in group.parts
            if part.what == "block" and part.landmarks
            for note in self.note_of(part, self.names.part(part))
        )
        if not more and len(first.parts) == 1 and not first.parts[0].landmarks:
            return (*notes, self.words(f"quilt-sew-{action.way}-all", sides=sides))
        groups, *others = (self._group(group) for group in action.groups)
        for each in others:
            groups = self.words("quilt-group-next", before=groups, next=each)
        said = [*notes, self.words(f"quilt-sew-{action.way}", sides=sides, groups=groups)]
        if any(part.corner for group in action.groups for part in group.parts) and not self._bias:
            self._bias = True
            said = [self.words("quilt-diagonal-ends"), *said, self.words("quilt-bias-edges")]
        return tuple(said)

    def _group(self, group: QuiltGroup) -> str:
        if len(group.parts) == 1 and group.times > 1 and not group.parts[0].landmarks:
            name = self.names.part(group.parts[0], group.times)
            return self.words("take-units", count=group.times, name=name)
        parts = listed([self.names.part_as_it_lies(part) for part in group.parts], self.words)
        if group.times == 1:
            return parts
        # Of two parts it is plain what comes again; more of them are held together.
        many = self.words("quilt-group-many", parts=parts) if len(group.parts) > 2 else parts
        return self.words("quilt-group-times", parts=many, times=group.times)

    def press(self, action: PressRows, step: QuiltStepFacts) -> tuple[str, ...]:
        if action.toward == "sashes" and step.makes == "center":
            return (self.words("quilt-press-strips"),)
        if action.toward != "ends":
            return (self.words(f"quilt-press-{action.toward.replace(' ', '-')}"),)
        sew = next(each for each in step.actions if isinstance(each, SewInOrder))
        one, other = ("top", "bottom") if sew.way == "down" else ("left", "right")
        if not action.first or not action.second:
            return (self.words(f"quilt-press-ends-{one if action.first else other}"),)
        kind = self._kind(step)
        return (
            self.words(
                "quilt-press-ends-both",
                first=self.names.rows(kind, action.first),
                second=self.names.rows(kind, action.second),
                one=self.words(f"place-{one}"),
                other=self.words(f"place-{other}"),
            ),
        )

    # --- joining -----------------------------------------------------------------------------------

    def trim(self, action: TrimStrips, step: QuiltStepFacts) -> Parts:
        del step
        said = self.words(
            "quilt-trim-rows" if action.rows == "row" else "quilt-trim-columns",
            length=self.names.figure(action.length),
            count=action.count,
            strips=self.names.piece(action.piece, action.count),
            fabric=self.names.fabric_of(action.piece),
        )
        return [StepPart((said, self.words("quilt-trim-marks")))]

    def join(self, action: JoinRows, step: QuiltStepFacts) -> tuple[str, ...]:
        words = self.words
        numbers = list(range(1, action.count + 1))
        rows = self.names.rows("row" if action.kind == "diagonal row" else action.kind, numbers)
        strips = self._strips(step, action.strips)
        take = (
            words("quilt-take-rows-strips", rows=rows, count=action.strips, strips=strips)
            if action.strips
            else words("quilt-take-rows", rows=rows)
        )
        said = [take, *(self._on_point(action) if action.shifts else self._joined(action, step))]
        if action.toward == "open":
            said.append(words("quilt-long-open"))
        elif action.toward == "strips":
            said.append(words("quilt-long-strips" if action.between == "posted" else "quilt-long-plain"))
        else:
            said.append(words("quilt-long-right" if action.way == "across" else "quilt-long-bottom"))
        return tuple(said)

    def _strips(self, step: QuiltStepFacts, count: int) -> str:
        """What lies between the rows: plain strips of a strippy quilt, or strips of sashing."""
        cloth = [self.facts.rows[place].members for place in step.rows if len(self.facts.rows[place].members) == 1]
        roles = {self.facts.cloth[members[0].index].role for members in cloth if members[0].what == "cloth"}
        return self.words("quilt-strip" if "strip" in roles else "quilt-rows-strips", count=count)

    def _joined(self, action: JoinRows, step: QuiltStepFacts) -> Iterator[str]:
        words = self.words
        meeting = words("quilt-nesting" if action.nest else "quilt-matching")
        if action.halfway and not action.between:
            yield words("quilt-join-halfway")
            return
        if not action.between:
            yield words(f"quilt-join-{action.way}", meeting=meeting)
            return
        outer = "yes" if action.outer else "no"
        yield words(f"quilt-arrange-{action.way}", strip=an(self._strips(step, 1), words), outer=outer)
        if action.between == "plain":
            yield words("quilt-sew-long-marks")
            return
        if action.cornerstones:
            beside = [
                words(
                    "quilt-cornerstones-of",
                    count=len(posts),
                    numbers=self.names.numbers(posts),
                    columns=self.names.rows("column", columns),
                )
                for posts, columns in action.cornerstones
            ]
            told, *more = beside
            for each in more:
                told = words("quilt-cornerstones-and", first=told, last=each)
            yield words("quilt-pin-cornerstones-listed", meeting=meeting, list=told)
        else:
            yield words("quilt-pin-cornerstones", meeting=meeting)
        yield words("quilt-sew-long")

    def _on_point(self, action: JoinRows) -> Iterator[str]:
        words = self.words
        yield words("quilt-point-down")
        if action.between:
            yield words("quilt-point-strips")
        ways = {(1, 1): "both", (1, -1): "left", (-1, 1): "right", (-1, -1): "none"}
        runs: list[tuple[tuple[int, int], list[int]]] = []
        for number, way in enumerate(action.shifts, start=2):
            if runs and runs[-1][0] == way:
                runs[-1][1].append(number)
            else:
                runs.append((way, [number]))
        for way, numbers in runs:
            rows = capital(self.names.rows("row", numbers))
            yield words(f"quilt-beyond-{ways[way]}", rows=rows, count=len(numbers))
        meeting = words("quilt-nesting" if action.nest else "quilt-matching")
        if action.between:
            yield words("quilt-pin-cornerstones", meeting=meeting)
            yield words("quilt-sew-long")
        else:
            yield words("quilt-join-down", meeting=meeting)

    def corners(self, action: CornerTriangles, step: QuiltStepFacts) -> tuple[str, ...] | Parts:
        words = self.words
        center = words("quilt-center")
        seam = self.names.length(self.facts.seam)
        press = "quilt-corners-open" if action.open else "quilt-corners-press"
        is_sashed = any(row.kind == "sash row" for row in self.facts.rows)
        square_up = words("quilt-square-up-sashes" if is_sashed else "quilt-square-up", seam=seam)
        crease = words("quilt-corners-crease")
        if action.onto is not None:
            landmarks = action.onto.landmarks
            pressed = words(press, count=2)
            rest = words("quilt-corners-block-rest")
            block = words("quilt-corners-block", lies="yes" if landmarks else "no", how=self.names.lies(landmarks))
            return (crease, block, pressed, rest, pressed, square_up)
        turn = words("quilt-corners-turn", center=center)
        sew = words("quilt-corners-sew", center=center)
        del step
        return [StepPart(()), StepPart((crease, turn, sew, words(press, count=4), square_up))]

    # --- borders -----------------------------------------------------------------------------------

    def measured(self, action: MeasuredBorder, step: QuiltStepFacts) -> Parts:
        return measured_border(action, step, self.names)

    def mitred(self, action: MitredBorder, step: QuiltStepFacts) -> Parts:
        return mitred_border(action, step, self.names)

    def pieced(self, action: PiecedBorder, step: QuiltStepFacts) -> Parts:
        return pieced_border(action, step, self.names)


_ACTIONS: Final[Mapping[type[QuiltAction], Callable[[_Writer, Any, QuiltStepFacts], tuple[str, ...] | Parts]]] = {
    LayAlike: _Writer.lay,
    SewInOrder: _Writer.sew,
    PressRows: _Writer.press,
    TrimStrips: _Writer.trim,
    JoinRows: _Writer.join,
    CornerTriangles: _Writer.corners,
    MeasuredBorder: _Writer.measured,
    MitredBorder: _Writer.mitred,
    PiecedBorder: _Writer.pieced,
}
