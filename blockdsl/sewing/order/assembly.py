"""What a finished order of sewing says: which parts are joined, along which seams."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Annotated, Literal, TypeAlias

from msgspec import Struct

from blockdsl.geometry import Point, Polygon
from blockdsl.geometry.arc import Bend
from blockdsl.record import Record, Rest, says

SeamKind = Literal["straight", "curved", "partial", "set-in"]


class SeamLine(Struct, frozen=True):
    """One seam in block coordinates, from `start` to `end`.

    straight: one line, sewn at once. partial: sewn from `start` as far as `stop`; the stretch from there to `end` is
    sewn when the assembly that `closes` it is whole. set-in: `turns` are the corners at which the work is turned, in
    order from `start`. A set-in seam may be partial too; then its kind is set-in and it has a `stop`. Where a seam is
    left open at both ends, sewing starts at `begin` and the stretch from there back to `start` is closed later too.
    curved: one arc, whose chord leads from `start` to `end`; `bend` is its circle, as its hollow side has it.
    """

    start: Point
    end: Point
    kind: SeamKind = "straight"
    turns: tuple[Point, ...] = ()
    stop: Point | None = None
    begin: Point | None = None
    bend: Bend | None = None


class Piece(Struct, frozen=True):
    """One patch, by its number in the block's list."""

    patch: int
    outline: Polygon

    @property
    def patches(self) -> tuple[int, ...]:
        """The patch, as the patches of every assembly are given."""
        return (self.patch,)


class Joined(Struct, frozen=True):
    """Parts sewn together; seam i joins part i + 1 to part i, and `kind` is the hardest of the seams.

    With more than two parts the seams are parallel, as in a row of squares. `closes` are the open stretches of partial
    seams further in, each from its stop to its end, that are sewn once these parts are joined. `patches` is sorted;
    `outline` is clockwise without straight corners, or None where it meets itself or a seam inside is still open.
    """

    parts: tuple[Assembly, ...]
    seams: tuple[SeamLine, ...]
    kind: SeamKind
    closes: tuple[tuple[Point, Point], ...]
    patches: tuple[int, ...]
    outline: Polygon | None


class Unsewable(Struct, frozen=True):
    """No order was found: `patches` could not be parted from one another by any seam."""

    patches: tuple[int, ...]


Assembly: TypeAlias = Piece | Joined


class SeamCount(Record, frozen=True):
    """How many seams there are of each kind."""

    straight: Rest
    partial: Annotated[Rest, says("Counted once for each end that is closed later.")]
    set_in: Annotated[Rest, says("Counted once for each corner at which the seam turns.")]
    curved: Rest = 0


def walk(assembly: Assembly) -> Iterator[Assembly]:
    """Every assembly in the tree, each before its parts."""
    waiting = [assembly]
    while waiting:
        here = waiting.pop()
        yield here
        if isinstance(here, Joined):
            waiting.extend(reversed(here.parts))


def count_seams(assembly: Assembly) -> SeamCount:
    """The seams of a whole tree, by kind; closing a partial seam is no seam of its own."""
    straight = partial = set_in = curved = 0
    for node in walk(assembly):
        for seam in node.seams if isinstance(node, Joined) else ():
            straight += seam.kind == "straight"
            curved += seam.kind == "curved"
            partial += (seam.stop is not None) + (seam.begin is not None)
            set_in += len(seam.turns)
    return SeamCount(straight, partial, set_in, curved)
