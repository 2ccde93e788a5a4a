"""Sewing in words: one part to an edge of another, two to opposite edges, one placed on the other, rows."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

from blockdsl.sewing.steps.action import Landmark, Place, Position, Row, Sew
from blockdsl.sewing.steps.directions import ORDER
from blockdsl.sewing.steps.plan import spreads
from blockdsl.wording.grammar import an, capital, in_series, listed
from blockdsl.wording.lengths import is_too_little, length_words, nearest_words
from blockdsl.wording.part_names import rows_in_words
from blockdsl.wording.stepvoice import StepVoice

_ENOUGH_TO_REPEAT = 5


class SewingSentences(StepVoice):
    """Plain seams."""

    def _sew(self, run: Sequence[Sew]) -> Iterator[str]:
        first = run[0]
        # Folded over papers nothing extends, and no middles are creased.
        if len(run) == 2 and (self._by_hand or not first.out):
            yield from self._both_sides(run)
            return
        if len(run) == 2:
            names = self._sides_of(run)
            yield self._words(
                "join-sew-two",
                part=self._labels.many(first.part),
                edge=first.edge or "none",
                edges=listed(names, self._words),
                base=self._on(first.base, ()) if first.base < self._many else self._middle(first.base),
                **self._how(first.meeting),
            )
            yield from self._out(first, several="again" if first.base >= self._many else "yes")
            self._base = None
            return
        if first.faces:
            yield from self._facing(first)
            return
        if self._are_alike(first):
            yield from self._alike(first)
            return
        how = self._how(first.meeting, first.landmarks)
        same = (first.base, first.meeting)
        if first.base == self._base and same == self._same and first.meeting and not first.landmarks:
            how["same"] = "yes"
        edge = first.edge or "none"
        if first.base == self._base:
            yield self._words(
                "join-sew-its", part=self._added(first.part), edge=edge, side=self._pos(first.side), **how
            )
        else:
            base = self._on(first.base, first.along)
            if first.base in self._row_names and first.part in self._row_names and first.base not in self._row_lists:
                base = base.rpartition(" ")[0]
            yield self._words(
                "join-sew", part=self._added(first.part), edge=edge, side=self._pos(first.side), base=base, **how
            )
        self._base, self._same = first.base, same
        yield from self._out(first, several="one-again" if first.base >= self._many else "no")
        yield from self._dots(first.dots)

    def _sides_of(self, run: Sequence[Sew]) -> list[str]:
        """Two opposite edges, the one that is read first before the other."""
        return [self._pos(side) for side in sorted((each.side for each in run), key=ORDER.index)]

    def _both_sides(self, run: Sequence[Sew]) -> Iterator[str]:
        """Two alike on opposite edges of one base, neither on the other."""
        first = run[0]
        sides = listed(self._sides_of(run), self._words)
        how = self._how(first.meeting)
        edge = first.edge or "none"
        part = self._labels.many(first.part)
        if first.base == self._base:
            yield self._words("join-sew-both-its", part=part, edge=edge, edges=sides, **how)
        else:
            base = self._on(first.base, ()) if first.base < self._many else self._joined(first.base)
            yield self._words("join-sew-both", part=part, edge=edge, edges=sides, base=base, **how)
        self._base, self._same = first.base, (first.base, first.meeting)
        yield from self._dots(first.dots)

    def _are_alike(self, sew: Sew) -> bool:
        """Whether it joins two alike that look the same whichever way they lie."""
        if (
            max(sew.part, sew.base) >= self._many
            or self._ordinal
            or sew.landmarks
            or self._labels.is_numbered(sew.part)
        ):
            return False
        return self._alike_names(sew.part, sew.base) and self._labels.count(sew.part) == 2

    def _alike(self, sew: Sew) -> Iterator[str]:
        name = self._labels.short(sew.part)
        self._base = None
        if sew.edge and not self._labels.is_patch(sew.part):
            edge = self._words(f"edge-{sew.edge}")
            yield self._words("join-place-alike", name=name, edges=self._words(f"many-{sew.edge}"))
            if sew.meeting and not self._by_hand:
                yield self._words(f"join-{sew.meeting}")
            yield self._words("join-sew-edge", edge=edge)
        else:
            yield self._words("join-sew-alike", name=name, side=self._pos(sew.side), **self._how(sew.meeting))
            self._base, self._same = sew.base, (sew.base, sew.meeting)

    def _facing(self, sew: Sew) -> Iterator[str]:
        """Two units by the edges that are of one fabric alone."""
        alike = self._alike_names(sew.part, sew.base)
        part = self._words("one", name=self._labels.short(sew.part)) if alike else self._labels.the(sew.part)
        base = self._words("the-other") if alike else self._labels.the(sew.base)
        first, second = (self._labels.fabrics[name] for name in sew.faces)
        self._base = None
        self._faces = {sew.part: first, sew.base: second}
        yield self._words(
            "join-sew-facing",
            part=part,
            base=base,
            first=first,
            second=second,
            **self._how(sew.meeting),
        )
        yield from self._dots(sew.dots)

    def _out(self, sew: Sew, *, several: str) -> Iterator[str]:
        """Which points extend beyond the other part, and how far; not again when it is as just said."""
        for said in self._extending(sew, several=several):
            if said != self._last_out:
                self._last_out = said
                yield said

    def _extending(self, sew: Sew, *, several: str) -> Iterator[str]:
        if not sew.out or self._by_hand:
            return
        unit = self._block.unit
        ends = [(pos, far if not is_too_little(float(abs(far)), unit) else 0) for pos, far in sew.out]
        (one, first), (other, second) = sorted(ends, key=lambda end: not end[1])
        lengths = [
            nearest_words(float(abs(far)), unit, self._words, about=sew.base >= self._many) for far in (first, second)
        ]
        base = "" if first > 0 and second >= 0 else self._on(sew.base, sew.along)
        if first and second and (first > 0) == (second > 0):
            key = "join-points" if first > 0 else "join-points-of"
            yield self._words(key, part=base, length=lengths[0], several=several)
        elif not second:
            return
        else:
            mine = one if first > 0 else other
            yield self._words("join-point-each", part=base, length=lengths[0 if first > 0 else 1], pos=self._pos(mine))

    def _dots(self, dots: Sequence[str]) -> Iterator[str]:
        """Where a seam stops, because something is set in there later."""
        if dots and not self._by_hand:
            key = "join-dot-to-dot" if len(dots) == 2 else "join-stop-at-dot"
            yield self._words(key, pos=self._pos(dots[0]), again=self._backstitched())

    def _place(self, place: Place) -> Iterator[str]:
        if place.offset:
            yield from self._offset(place)
            return
        lies = self._lying(place.landmarks, count=2)
        yield self._words("join-place", part=self._placed(place.part), base=self._placed(place.base), **lies)
        self._base = None
        if place.says_side and place.edge:
            edge = self._words("edge-at", edge=self._words(f"edge-{place.edge}"), pos=self._pos(place.side))
        elif place.edge:
            edge = self._words(f"edge-{place.edge}")
        else:
            edge = self._words("edge-side", pos=self._pos(place.side))
        yield self._words("join-sew-edge", edge=edge)
        yield from self._dots(place.dots)

    def _offset(self, place: Place) -> Iterator[str]:
        """Halves of an oblong, by their long edges: dots at both ends are matched."""
        length = length_words(self._block.seam, self._block.unit, self._words)
        part, base = self._placed(place.part), self._placed(place.base)
        self._base = None
        if self._by_hand:
            yield self._words("join-place-long-hand", part=part, base=base)
            yield self._words("join-sew-edge", edge=self._long_edge(place))
            return
        self._mentioned.sides = True
        if self._mentioned.halves and not place.says_side:
            yield self._words("join-place-long-as", part=part, base=base, number=self._mentioned.halves)
            return
        self._mentioned.halves = self._step.number
        letters = list(dict.fromkeys(self._labels.parts[each].name for each in (place.base, place.part)))
        yield self._words("join-dot-long", parts=listed(letters, self._words), length=length)
        yield self._words("join-place-long", part=part, base=base)
        yield self._words("join-match-dots")
        yield self._words("join-sew-edge", edge=self._long_edge(place))

    def _long_edge(self, place: Place) -> str:
        edge = self._words("edge-long")
        return self._words("edge-at", edge=edge, pos=self._pos(place.side)) if place.says_side else edge

    def _placed(self, part: int) -> str:
        if self._labels.count(part) > 1:
            return an(self._labels.short(part), self._words)
        return self._labels.by_fabric(part)

    def _rows(self, rows: Sequence[Row]) -> Iterator[str]:
        """Parts listed in order."""
        way = self._words(f"way-{rows[0].way}")
        self._base = None
        if len(rows) == 1 and all(part < self._many and self._labels.is_numbered(part) for part in rows[0].parts):
            yield from self._in_order(rows[0], way)
            return
        if len(rows) == 1 and rows[0].zigzag and not self._by_hand:
            yield self._words("join-row-turning", way=way, list=self._list(rows[0]))
            if not self._mentioned.turning:
                yield self._words("join-turn-at-dots")
            self._mentioned.turning = True
            return
        if len(rows) == 1:
            yield self._words("join-row", way=way, list=self._list(rows[0]), **self._how(rows[0].meeting))
            yield from self._row_dots(rows[0])
            return
        word = self._way_of_rows()
        for number, row in enumerate(rows, start=1):
            self._row_lists[self._many + row.stage] = number
        said: dict[str, list[str]] = {}
        for number, row in enumerate(rows, start=1):
            said.setdefault(self._list(row), []).append(str(number))
        for items, numbers in said.items():
            name = rows_in_words(word, numbers, self._words)
            yield self._words("join-row-list", name=capital(name), way=way, list=items)
        meeting = next((row.meeting for row in rows if row.meeting), "")
        yield self._words("join-rows", way=word, **self._how(meeting))

    def _row_dots(self, row: Row) -> Iterator[str]:
        """Where the seams of a row stop, those that stop alike together."""
        alike: dict[tuple[Position, ...], list[str]] = {}
        for number, dots in enumerate(row.dots, start=1):
            alike.setdefault(tuple(sorted(dots)), []).append(str(number))
        for dots, numbers in alike.items():
            if not dots or self._by_hand:
                continue
            seams = self._words("row-seams", count=len(numbers), numbers=listed(numbers, self._words))
            if len(alike) == 1:
                seams = self._words("row-each-seam")
            key = "join-row-dot-to-dot" if len(dots) == 2 else "join-row-stop"
            yield self._words(key, seams=seams, pos=self._pos(dots[0]), again=self._backstitched())

    def _grouped(self, items: Sequence[tuple[str, tuple[Landmark, ...], int]]) -> list[str]:
        """What lies beside others of its kind that lie as it does, counted: `3 half-square triangles`."""
        found = []
        for (name, landmarks, _), same in groupby(items, key=lambda item: (item[0], item[1], item[2] >= self._many)):
            parts = [part for _, _, part in same]
            text = name
            if len(parts) > 1:
                many = self._labels.many(parts[0], len(parts))
                text = self._words("take-units", count=len(parts), name=many)
            if landmarks:
                key = "with-landmark" if len(parts) == 1 else "with-landmark-each"
                text = self._words(key, part=text, shows=self._shows(landmarks, short=len(parts) == 1))
            found.append(text)
        return found

    def _in_order(self, row: Row, way: str) -> Iterator[str]:
        """Rows by number: how each kind of them lies, then all of them in order."""
        lying: dict[tuple[Landmark, ...], list[int]] = {}
        for part, landmarks in zip(row.parts, row.landmarks, strict=True):
            lying.setdefault(landmarks, []).append(part)
        for landmarks, parts in lying.items():
            if shows := self._shows(landmarks, count=len(parts)):
                yield self._words("join-lay", part=self._labels.numbered(parts), shows=shows)
        yield self._words("join-in-order", way=way, **self._how(row.meeting))

    def _list(self, row: Row) -> str:
        items: list[tuple[str, tuple[Landmark, ...], int]] = []
        shared = len(set(row.landmarks)) == 1 and len(row.parts) > 2
        for part, landmarks in zip(row.parts, row.landmarks, strict=True):
            name = self._labels.short(part) if part < self._many else self._joined(part)
            items.append((name, () if shared else landmarks, part))
        listing = self._repeated(self._grouped(items))
        if shared and row.landmarks[0]:
            return self._words("list-each", list=listing, shows=self._shows(row.landmarks[0]))
        return listing

    def _repeated(self, items: Sequence[str]) -> str:
        """`a, then b and a 5 times` in place of a list that goes back and forth."""
        if len(items) < _ENOUGH_TO_REPEAT:
            return in_series(items, self._words)
        if len(set(items[::2])) == 1 and len(set(items[1::2])) == 1:
            key = "list-repeated" if len(items) % 2 else "list-pairs"
            return self._words(key, first=items[0], other=items[1], count=len(items) // 2)
        return in_series(items, self._words)


def spread_alike(one: Sew, other: Sew) -> bool:
    """Whether two triangles are sewn to opposite edges of one base in the same way."""
    return (
        one.base == other.base
        and ((spreads(one) and spreads(other)) or (not one.out and not other.out))
        and one.edge == other.edge
        and not one.landmarks
        and not other.landmarks
        and one.meeting == other.meeting
        and one.dots == other.dots == ()
    )
