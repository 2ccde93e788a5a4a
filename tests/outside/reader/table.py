"""What lies on the table in one step: pieces taken, what they have been sewn to, how they lie.

Where words leave several ways open, each is followed as a table of its own, until words, edges or a measure leave one.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field, replace

from tests.outside.reader.cloth import Cloth, Stretch, lying_of, pattern_of
from tests.outside.reader.landmarks import turns_of
from tests.outside.reader.words import Refused


@dataclass(frozen=True, slots=True)
class Item:
    """A thing taken: its names, and whether its cloth is a patch yet or a square, rectangle or strip."""

    key: int
    names: frozenset[str]
    form: str = "patch"
    group: int = 0
    """Things taken in one entry of the list are of one group."""
    extra: object = None

    @property
    def mark(self) -> str:
        """What lies along its outline, beside letter and fabric: that it is this very thing."""
        return f"#{self.key}"


@dataclass(frozen=True, slots=True)
class Seam:
    """A seam that was sewn and not pressed yet."""

    number: int
    stretches: tuple[Stretch, ...]


@dataclass(frozen=True, slots=True)
class Table:
    """One way of following the words so far."""

    bodies: dict[int, Cloth] = field(default_factory=dict)
    home: dict[int, int] = field(default_factory=dict)
    """In which body each item is."""
    laid: frozenset[int] = frozenset()
    """Bodies that lie as the words say."""
    waiting: tuple[Seam, ...] = ()
    tilted: int = 0
    """How many things were taken to lie without a level edge, though no word says so."""
    notes: dict[str, object] = field(default_factory=dict)
    """What methods keep in mind: lines drawn, papers, the open end of a seam."""

    def body(self, item: int) -> Cloth:
        return self.bodies[self.home[item]]

    def with_body(self, place: int, cloth: Cloth, *, laid: bool = True) -> Table:
        placed = self.laid | {place} if laid else self.laid
        return replace(self, bodies={**self.bodies, place: cloth}, laid=placed)

    def note(self, **notes: object) -> Table:
        return replace(self, notes={**self.notes, **notes})

    def key(self) -> object:
        """What two tables that lie alike have in common."""
        lying = frozenset((place, lying_of(cloth)) for place, cloth in self.bodies.items())
        return lying, tuple(sorted(self.home.items())), self.laid


MANY = 260
"""So many ways of following words are as good as none."""


def each(tables: Iterable[Table], follow: Callable[[Table], Iterable[Table]], why: str) -> list[Table]:
    """Every way of following a sentence, over all that were open.

    Errors: Refused where no way is left.
    """
    found: dict[object, Table] = {}
    reasons: list[str] = []
    for table in tables:
        try:
            for after in follow(table):
                found.setdefault(after.key(), after)
        except Refused as refused:
            reasons.append(str(refused))
        if len(found) > MANY:
            raise Refused(f"more than {MANY} ways are open")
    if not found:
        raise Refused(reasons[0] if reasons else why)
    return list(found.values())


def however_turned(cloth: Cloth) -> frozenset[object]:
    """The same for a thing however it lies."""
    return frozenset(pattern_of(cloth.patches(turn)) for turn in turns_of(cloth))


def ways(cloths: Iterable[Cloth]) -> Iterator[Cloth]:
    """Cloths that stay different when turned."""
    seen: set[frozenset[object]] = set()
    for cloth in cloths:
        key = however_turned(cloth)
        if key not in seen:
            seen.add(key)
            yield cloth


__all__ = ["Item", "Refused", "Seam", "Table", "each", "however_turned", "ways"]
