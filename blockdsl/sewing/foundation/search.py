"""The fewest sections that a unit can be sewn in, and how they are joined.

A section is what one paper holds. Where a unit needs several, it is parted along straight lines right across, so that
sections are joined by straight seams from edge to edge; being parts of a rectangle cut so, they are convex.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec import Struct, field

from blockdsl.sewing.foundation.peel import Added, seen, sewing_sequence
from blockdsl.sewing.order.divide import divisions
from blockdsl.sewing.order.net import Net
from blockdsl.sewing.order.region import chords, flood, reading_place

MOST_LOOKS: Final = 6_000
"""Patches looked at in the search for the fewest sections: half a second's work. After that the first good way does."""


class SplitLine(Struct, frozen=True):
    """Patches that are one section (then `order` is their sequence), or two or more parts that are joined in turn."""

    patches: tuple[int, ...]
    order: tuple[Added, ...]
    parts: tuple[SplitLine, ...] = ()

    @property
    def sections(self) -> int:
        """How many papers it takes."""
        return sum(part.sections for part in self.parts) if self.parts else 1


class SectionSearch(Struct):
    """Looks through all ways of parting a unit along straight lines; what was seen once is remembered.

    `stuck`: patches that no straight line parts, when there are any; then nothing else is of use. `in_rounds`: the
    unit's patches are numbered in their order of sewing.
    """

    net: Net
    in_rounds: bool = False
    stuck: tuple[int, ...] = ()
    _known: dict[tuple[int, ...], SplitLine | None] = field(default_factory=dict)
    _looks: int = 0

    def fewest(self, patches: Sequence[int]) -> SplitLine | None:
        """The patches in as few sections as can be; None when they cannot be sewn by straight seams alone."""
        key = tuple(sorted(patches))
        if key not in self._known:
            self._known[key] = self._look(key)
        return self._known[key]

    def _look(self, patches: tuple[int, ...]) -> SplitLine | None:
        order = sewing_sequence(self.net, patches, as_numbered=self.in_rounds)
        if order is not None:
            return SplitLine(patches, order)
        self._looks += len(patches)
        ways = self._ways(patches)
        if not ways:
            # What is stuck here is stuck whichever way the unit is parted: no need to look further.
            self.stuck = self.stuck or patches
        best: SplitLine | None = None
        for parts in ways:
            if self.stuck:
                return None
            found = self._joined(patches, parts, best.sections if best else None)
            best = found or best
            if best and (best.sections == 2 or self._looks > MOST_LOOKS):
                break
        return best

    def _ways(self, patches: tuple[int, ...]) -> list[list[list[int]]]:
        """Ways of parting the patches: by each line across, or, when there is no time for that, by parallel lines."""
        region = seen(self.net, patches)
        if self._looks > MOST_LOOKS:
            by_lines = [division.parts for division in divisions(region)]
            return sorted(by_lines, key=lambda parts: max(map(len, parts)))
        # Rows before columns; the last line first, so that sections are joined from the first to the last.
        lines = sorted(chords(region), key=lambda chord: (self.net.way[chord[0]], -chord[0]))
        return [self._in_reading_order(flood(region, frozenset(chord))) for chord in lines]

    def _in_reading_order(self, parts: list[list[int]]) -> list[list[int]]:
        return sorted(parts, key=lambda part: reading_place(self.net, part))

    def _joined(
        self, patches: tuple[int, ...], parts: Sequence[Sequence[int]], fewer_than: int | None
    ) -> SplitLine | None:
        """The parts, each in its fewest sections; None when that is not fewer than asked."""
        found: list[SplitLine] = []
        count = 0
        for place, part in enumerate(parts):
            cut = self.fewest(part)
            if cut is None:
                return None
            found.append(cut)
            count += cut.sections
            if fewer_than is not None and count + len(parts) - place - 1 >= fewer_than:
                return None
        return SplitLine(patches, (), tuple(found))
