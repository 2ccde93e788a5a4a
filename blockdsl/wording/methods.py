"""The steps of units that a method makes as a whole: its parts in words, each with its picture."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import JoinFacts, LessonStep, MethodPart, StepFacts
from blockdsl.sewing.message import Message
from blockdsl.wording.grammar import listed, name_of
from blockdsl.wording.lengths import figure, size_words
from blockdsl.wording.messages import Messages
from blockdsl.wording.part_names import PartNames
from blockdsl.wording.pieces import PieceNames
from blockdsl.wording.sentences import sentence
from blockdsl.wording.steptext import StepPart


def way_of(step: StepFacts) -> tuple[object, ...]:
    """The same for steps of methods that are done in the same way."""
    return step.made_by.way if step.made_by is not None else step.lesson


def made_by_method(step: StepFacts, words: Messages) -> str:
    """How many are made, and of how much at once: `make 8, 2 from each pair of squares`."""
    told = step.made_by
    if told is None:
        return words("step-make", count=step.count) if step.count > 1 else ""
    counts = [hand.count for hand in step.hands]
    if len(counts) == 1 and step.count == 1 and told.batch == "each":
        return ""
    return words(
        "method-made",
        count=counts[0] if len(counts) > 1 else step.count,
        mirrored=counts[1] if len(counts) > 1 else 0,
        batch="squares" if told.batch in ("pair", "set") and told.batches == 1 else told.batch,
        gives=told.gives,
        squares=sum(piece.count for piece in told.pieces.values()),
        sets=told.batches,
        spare=step.spare,
    )


def method_parts(step: StepFacts, block: BlockFacts, words: Messages, as_in: int) -> tuple[StepPart, ...]:
    """The parts of a step that a method makes; of one that an earlier step taught (`as_in`) only what is new."""
    told = step.made_by
    if told is None:
        return _lesson_parts(step, block, words, as_in)
    names = PieceNames(told.pieces, block, words)
    if as_in:
        return (_part(told.again, None, block, words, names, as_in),)
    return tuple(_part(part, place, block, words, names) for place, part in enumerate(told.parts))


def _part(
    part: MethodPart, place: int | None, block: BlockFacts, words: Messages, names: PieceNames, as_in: int = 0
) -> StepPart:
    def told(said: Iterable[Message]) -> tuple[str, ...]:
        return tuple(sentence(each, block.unit, words, names, number=as_in) for each in said)

    measure = told([part.measure])[0] if part.measure is not None else ""
    return StepPart(told(part.sentences), measure, "", place, told(part.after))


def _lesson_parts(step: StepFacts, block: BlockFacts, words: Messages, as_in: int) -> tuple[StepPart, ...]:
    """The steps of a lesson, where a method has no step of its own."""
    take = take_sentence(step, block, words)
    before = (take,) if take else ()
    measure = size_words(step.unfinished, block.unit, words) if step.unfinished else ""
    if as_in:
        return (StepPart((*before, words("step-as-in", number=as_in)), measure),)
    lesson: Sequence[LessonStep] = [each for each in step.lesson if isinstance(each, LessonStep)]
    last = len(lesson) - 1
    return tuple(
        StepPart(
            (*(before if place == 0 else ()), sentence(each.text, block.unit, words)),
            measure if place == last else "",
            sentence(each.title, block.unit, words),
            place,
        )
        for place, each in enumerate(lesson)
    )


def take_sentence(step: StepFacts, block: BlockFacts, words: Messages) -> str:
    """What a unit that a method makes takes for all of them: `Take 4 Harbour fog squares 2 3/8 in`."""
    if not step.joins:
        return ""
    labels = {fabric.name: fabric.label for fabric in block.fabrics}
    names = PartNames(words, step.names)
    pieces = [_piece(join, labels, block, names, words) for join in step.joins]
    return words("step-take", list=listed(pieces, words))


def _piece(join: JoinFacts, labels: dict[str, str], block: BlockFacts, names: PartNames, words: Messages) -> str:
    label = labels.get(join.fabric, join.fabric)
    if join.step:
        return words("take-from-step", name=names.one(join.name, "the"), step=join.step)
    if not join.piece:
        return words("take-patches", count=join.count, letter=join.name, form="plain", fabric=label)
    size = " × ".join(figure(side, block.unit, words) for side in join.cut)
    piece = name_of(f"piece-{join.piece}", words, count=join.count)
    key = "take-strips" if join.piece == "strip" else "take-pieces"
    return words(key, count=join.count, fabric=label, piece=piece, size=size, unit=block.unit)
