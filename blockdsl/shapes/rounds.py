"""Logs in rounds about a centre, for log cabins and courthouse steps: their words and how they lie."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal

from msgspec import Struct

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.outlines import box
from blockdsl.shapes.shape import Cloth, Round
from blockdsl.shapes.words import WordReader

Side = Literal["top", "right", "bottom", "left"]
MOST_LOGS = 80
NARROWEST, WIDEST = Fraction(1, 20), Fraction(20)


class Log(Struct, frozen=True):
    """Where a log is added, and its width as a part of the centre's side."""

    side: Side
    wide: Fraction


class Extent(Struct, frozen=True):
    """What has been sewn, with the centre's top left corner as origin and its side as measure."""

    left: Fraction
    top: Fraction
    right: Fraction
    bottom: Fraction

    def with_log(self, log: Log) -> tuple[Extent, Extent]:
        """The log, as long as the side that it is added to, and what there is with it."""
        left, top, right, bottom = self.left, self.top, self.right, self.bottom
        match log.side:
            case "top":
                added, whole = (left, top - log.wide, right, top), (left, top - log.wide, right, bottom)
            case "right":
                added, whole = (right, top, right + log.wide, bottom), (left, top, right + log.wide, bottom)
            case "bottom":
                added, whole = (left, bottom, right, bottom + log.wide), (left, top, right, bottom + log.wide)
            case "left":
                added, whole = (left - log.wide, top, left, bottom), (left - log.wide, top, right, bottom)
        return Extent(*added), Extent(*whole)


CENTRE = Extent(Fraction(0), Fraction(0), Fraction(1), Fraction(1))


def read_width(words: WordReader) -> Fraction | None:
    """The width of a log, as a part of the centre's side."""
    found = words.number()
    return found if found is not None and NARROWEST <= found <= WIDEST else None


def in_turn(fabrics: tuple[str, ...], rounds: int | None, in_a_round: int) -> tuple[str, ...]:
    """One fabric for each log: those that are named, gone through again until all `rounds` are made.

    Empty when there are more names than logs, or too many logs.
    """
    logs = len(fabrics) if rounds is None else rounds * in_a_round
    if not fabrics or len(fabrics) > logs or logs > MOST_LOGS:
        return ()
    return tuple(fabrics[place % len(fabrics)] for place in range(logs))


def proportion(logs: Iterable[Log]) -> Fraction:
    """Width over height of all logs with their centre."""
    whole = CENTRE
    for log in logs:
        _, whole = whole.with_log(log)
    return (whole.right - whole.left) / (whole.bottom - whole.top)


def draw_logs(filling: ShapeUse, logs: Iterable[Log], width: Exact, height: Exact) -> tuple[Cloth, ...]:
    """The centre and each log in the order in which they are sewn, filling the box."""
    places, whole = [CENTRE], CENTRE
    for log in logs:
        added, whole = whole.with_log(log)
        places.append(added)
    across, down = width / (whole.right - whole.left), height / (whole.bottom - whole.top)
    outlines = (
        box(
            (place.left - whole.left) * across,
            (place.top - whole.top) * down,
            (place.right - whole.left) * across,
            (place.bottom - whole.top) * down,
        )
        for place in places
    )
    return tuple(zip(filling.fabrics, outlines, strict=True))


def rounds_of(filling: ShapeUse, in_a_round: int, at_a_time: int) -> tuple[Round, ...]:
    """The logs as they are sewn: round by round, so many at a time; the last round may be left unfinished."""
    logs = len(filling.fabrics) - 1
    return tuple(
        Round("round", 1 + first // in_a_round, (at_a_time,) * (min(in_a_round, logs - first) // at_a_time))
        for first in range(0, logs, in_a_round)
    )
