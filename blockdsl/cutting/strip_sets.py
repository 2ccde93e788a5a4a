"""Strip sets: how wide and how long their strips are cut, how many sets, and how many segments each gives."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Hashable, Sequence
from typing import Annotated

from msgspec import Meta, Struct

from blockdsl.analysis.letters import Lettered
from blockdsl.cutting.angled import along_the_strip, length_of, strip_ways
from blockdsl.cutting.sizes import Extent, rectangle_for, round_up
from blockdsl.cutting.squaring import sets_of, squaring, times_squared_again
from blockdsl.cutting.strips import on_the_ruler, usable_width
from blockdsl.geometry import Exact, ceil_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign
from blockdsl.record import Count, Letter, Name, Record, Rest, says
from blockdsl.sewing import NeededPart


class CutSets(Struct, frozen=True):
    """`sets` strip sets of one length, `segments` cut from each; `size` is (width, length) of every strip in them."""

    size: tuple[Fraction, Fraction]
    exact: Extent
    sets: int
    segments: int


class StripSetLength(Record, frozen=True):
    """Strip sets of one length: each gives so many segments."""

    sets: Count
    length: Annotated[Fraction, says("That of every strip, with what squaring up takes.")]
    segments: Count
    squared_again: Annotated[Rest, says("How often it is squared up again: after every third segment.")]


class SetStrip(Record, frozen=True):
    """A strip of a strip set."""

    label: Letter
    fabric: Name


class StripSet(Record, frozen=True):
    """One kind of strip set of a unit, and all sets of it."""

    strips: Annotated[tuple[SetStrip, ...], says("Those of one set, from its first edge to the other.")]
    strip_width: Annotated[Fraction, says("How wide each strip is cut.")]
    segment: Annotated[Fraction, says("How far apart the cuts are, square to the cut.")]
    across: Annotated[Fraction, says("What the strips measure sewn together, unfinished.")]
    exact_across: Annotated[Exact, says("The same of strips that are not rounded up to the ruler.")]
    angle: Annotated[int, says("Of the cuts to the strips."), Meta(extra_json_schema={"enum": [45, 90]})]
    rows: Annotated[tuple[Count, ...], says("The rows of the units that the segments are, from 1."), Meta(min_length=1)]
    segments: Annotated[Count, says("In all.")]
    lengths: Annotated[tuple[StripSetLength, ...], says("Long before short."), Meta(min_length=1)]

    @property
    def cloths(self) -> tuple[tuple[str, str], ...]:
        """The letter and fabric of each strip of one set."""
        return tuple((strip.label, strip.fabric) for strip in self.strips)


class _Measures(Struct, frozen=True):
    """Of the strips of a set: `width` and `segment` on the ruler, and (on the ruler, exact) how long for segments."""

    width: Fraction
    exact_width: Exact
    segment: Fraction
    angle: int
    length: Callable[[int], tuple[Exact, Exact]]


def cut_sets(needed: NeededPart, design: BlockDesign) -> list[CutSets]:
    """The sets that give the segments which are needed, long before short; those of each print for themselves.

    Every segment is cut at the ruler's measure, so a strip is as long as its segments together and what squaring up
    takes. What does not fit across the narrowest fabric of the set goes into further sets.
    """
    measures = _measures(needed, design)
    usable = min(usable_width(fabric, design) for fabric in needed.part.bands)
    counts: Counter[int] = Counter()
    for lot in needed.segments:
        for sets, segments in sets_of(usable, lot, lambda many: measures.length(many)[0]):
            counts[segments] += sets
    found = []
    for segments, sets in sorted(counts.items(), reverse=True):
        length, exact = measures.length(segments)
        size = measures.width, ceil_to(length, design.measure)
        found.append(CutSets(size, (measures.exact_width, exact), sets, segments))
    return found


def _measures(needed: NeededPart, design: BlockDesign) -> _Measures:
    if needed.part.cut_as == "slanted strip":
        return _slanted(needed, design)
    exact = rectangle_for(needed.part.patch, design.seam)
    width, segment = round_up(exact, design.measure)

    def length(segments: int) -> tuple[Exact, Exact]:
        lost = squaring(segments, design.unit)
        return segment * segments + lost, exact[1] * segments + lost

    return _Measures(width, exact[0], segment, 90, length)


def _slanted(needed: NeededPart, design: BlockDesign) -> _Measures:
    """The same for sets that are cut at a slant, each strip begun further in than the last by as much as it slants.

    Shape:  a strip gives as many segments as single pieces would come out of it side by side. What squaring up takes
            is measured square to the cuts; along the strip it is 1/sin of their angle as much.
    """
    way = next(way for way in strip_ways(needed.part.patch, design.seam) if way.form == "side by side")
    real = on_the_ruler(way, design.measure)
    width = ceil_to(real.width, design.measure)

    def length(segments: int) -> tuple[Exact, Exact]:
        lost = along_the_strip(squaring(segments, design.unit), real.angles[0])
        return length_of(real, segments) + lost, length_of(way, segments) + lost

    assert real.every is not None  # noqa: S101  cuts at one angle are so far apart
    return _Measures(width, way.width, ceil_to(real.every, design.measure), real.angles[0], length)


def strip_sets(
    key: Hashable, parts: Sequence[NeededPart], design: BlockDesign, lettered: Lettered
) -> tuple[StripSet, ...]:
    """The strip sets of the units of this key, in the order of their rows."""
    kinds: dict[tuple[int, ...], list[NeededPart]] = {}
    for needed in parts:
        if needed.segments and needed.made_for[0] == key:
            kinds.setdefault(needed.part.rows, []).append(needed)
    return tuple(_strip_set(kind, design, lettered) for kind in kinds.values())


def _strip_set(kind: Sequence[NeededPart], design: BlockDesign, lettered: Lettered) -> StripSet:
    first = kind[0]
    letters = {needed.part.fabric: lettered.letters[needed.becomes] for needed in kind}
    measures, bands = _measures(first, design), first.part.bands
    allowance = 2 * design.seam
    return StripSet(
        strips=tuple(SetStrip(letters[fabric], fabric) for fabric in bands),
        strip_width=measures.width,
        segment=measures.segment,
        across=len(bands) * (measures.width - allowance) + allowance,
        exact_across=len(bands) * (measures.exact_width - allowance) + allowance,
        angle=measures.angle,
        rows=first.part.rows,
        segments=sum(first.segments),
        lengths=tuple(
            StripSetLength(found.sets, found.size[1], found.segments, times_squared_again(found.segments))
            for found in cut_sets(first, design)
        ),
    )
