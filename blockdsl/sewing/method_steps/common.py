"""Sentences that the steps of several methods share."""

from __future__ import annotations

from blockdsl.geometry import Exact
from blockdsl.sewing.message import Argument, Message, PieceList, PieceName, SizeArgument, message
from blockdsl.sewing.method_steps.parts import Batch, MethodPart, MethodStep, MethodUnit
from blockdsl.sewing.techniques.halves import darker


def take(batch: Batch, unit: MethodUnit, *roles: int) -> Message:
    """What one batch takes; of a single batch only that."""
    key = f"method-take-{batch}" if unit.batches > 1 else "method-take"
    return message(key, pieces=PieceList(roles, "take"))


def press(unit: MethodUnit, seams: int, toward: int) -> Message:
    """Toward the piece of a role, or open; `seams` is 1, 2 for both, more for all."""
    if unit.measures.open_seams:
        return message("method-press-open", seams=seams)
    return message("method-press-toward", seams=seams, piece=PieceName(toward))


def press_word(unit: MethodUnit) -> str:
    """How a message learns which way its seams are pressed."""
    return "open" if unit.measures.open_seams else "side"


def marked_and_under(unit: MethodUnit, first: int, second: int) -> tuple[int, int]:
    """Of a pair of squares the one that is drawn on and lies on top, the lighter one, and the other."""
    return (second, first) if darker(unit.measures, first, second) == first else (first, second)


def sew_both_sides(unit: MethodUnit, lines: int = 1) -> Message:
    """Beside the drawn line, or lines."""
    return message("method-sew-both-sides", lines=lines, seam=unit.measures.allowance)


def measure(unit: MethodUnit) -> Message:
    """The unit, edge to edge, unfinished."""
    return message("method-measure", size=unit.measures.size)


def opened_size(unit: MethodUnit, role: int) -> SizeArgument:
    """What half-square triangles measure that are made of two squares.

    Derived: the seam lies an allowance a from the diagonal, a√2 along an edge; squares of side s open to s - a√2.
    """
    side: Exact = unit.measures.side(role) - unit.measures.slant
    return SizeArgument(side, side)


def method_step(
    unit: MethodUnit,
    take: tuple[Batch, int],
    parts: tuple[MethodPart, ...],
    way: tuple[Argument, ...],
    *again: Message,
) -> MethodStep:
    """The step; `take` is what is taken at once and how many units that gives.

    `again` is said after what is taken where an earlier step of the same `way` has taught it.
    """
    batch, gives = take
    taken, last = parts[0].sentences[0], parts[-1]
    sorting = tuple(each for each in last.after if each.key.startswith("method-sort"))
    brief = MethodPart((taken, *again), last.picture, last.measure, sorting)
    return MethodStep(batch, unit.batches, gives, unit.pieces, parts, way, brief)
