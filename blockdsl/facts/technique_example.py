"""The unit that a technique's steps speak of: the block's own, found again in its picture, or a common one."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec.structs import replace

from blockdsl.analysis.settings import MOST
from blockdsl.cutting.squaring import SQUARED_AGAIN, SQUARED_FIRST
from blockdsl.facts.blockrecord import BlockRecord, CutFacts, FabricFacts, PlacedPatch, RulerUnit, UnitFacts
from blockdsl.facts.technique_sample import Sample, cut_of, told_cut, work_out
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.methods import CUT_PATCHES
from blockdsl.sewing.techniques import Measures, Topic
from blockdsl.shapes import SHAPES, checker, square
from blockdsl.shapes.outlines import LETTERS
from blockdsl.shapes.shape import DrawnUnit

Ruler = tuple[RulerUnit, Fraction, Fraction]
"""Unit, seam allowance, the ruler's measure."""

PLAIN = square.SHAPE.name
"""The topic for patches that make no shape of the language."""

_NEUTRAL = (
    FabricFacts("light", "Light fabric", "#e9e4d8", "light", 1),
    FabricFacts("dark", "Dark fabric", "#9a958b", "dark", 2),
    FabricFacts("second light", "Second light fabric", "#f3efe6", "light", 3),
    FabricFacts("second dark", "Second dark fabric", "#b3aa98", "dark", 4),
)
_MOST_TRIMS = 16
_MOST_ROLES = 6
_MOST_PATCHES = 36  # a unit of more patches is too fine to be drawn step by step


def showable(unit: UnitFacts) -> bool:
    """Whether the steps can be given for this very unit."""
    strips = counts_of(unit.shape, unit.picture)
    if strips and strips[unit.shape == checker.SHAPE.name] < 2:
        return False  # nothing is sewn to a single strip
    counts = len(unit.picture) <= (_MOST_PATCHES if unit.shape == checker.SHAPE.name else len(LETTERS))
    return counts and all(isinstance(side, Fraction) for side in unit.finished)


def role_fabrics(topic: Topic, unit: UnitFacts | None, block: BlockRecord | None) -> tuple[FabricFacts, ...]:
    """The fabric of each role: the block's own, or two neutral tones."""
    if unit is None or block is None:
        own = block.fabrics if block is not None and topic.shape == PLAIN else ()
        return (*own[:2], *_neutral(topic)[len(own[:2]) :])
    known = {fabric.name: fabric for fabric in block.fabrics}
    by_role: dict[int, FabricFacts] = {}
    for place, patch in enumerate(unit.picture):
        by_role.setdefault(_role(topic, place), known[patch.fabric])
    last = by_role[max(by_role)]
    return tuple(by_role.get(role, last) for role in range(max(by_role) + 1))


def dark_roles(fabrics: Sequence[FabricFacts]) -> frozenset[int]:
    """The roles whose fabric is darker than the lightest."""
    light = min((_rank(fabric) for fabric in fabrics), default=0)
    return frozenset(role for role, fabric in enumerate(fabrics) if _rank(fabric) > light)


def _rank(fabric: FabricFacts) -> int:
    return ("light", "medium", "dark").index(fabric.value)


def _neutral(topic: Topic) -> list[FabricFacts]:
    """Light and dark as the topic wants them; the second of each in a tone of its own."""
    tones: list[FabricFacts] = []
    for role in range(_MOST_ROLES):
        dark = role in topic.dark
        again = any((tone.value == "dark") == dark for tone in tones)
        tones.append(_NEUTRAL[(1 if dark else 0) + (2 if again else 0)])
    return tones


def _role(topic: Topic, place: int) -> int:
    return topic.drawn[place] if place < len(topic.drawn) else topic.drawn[-1]


def example(
    method: str, topic: Topic, unit: UnitFacts | None, cuts: Sequence[CutFacts], ruler: Ruler
) -> tuple[Sample, Measures]:
    """The unit that the steps speak of, and its measures: the block's own, or a common one.

    `cuts` are the lines of the block's cutting table for the unit.
    """
    name, seam, measure = ruler
    if unit is None:
        width = topic.shown[0 if name == "in" else 1]
        writes, height = topic.writes, width / topic.proportion
    else:
        writes = _written(topic, unit)
        width, height = (Fraction(side) for side in unit.finished if isinstance(side, Fraction))
    sample = Sample(writes, method, width, height, name, seam, measure)
    if unit is not None:
        sample = _trimmed_like(sample, cuts)
    facts = work_out(sample)
    pieces: dict[int, tuple[tuple[Fraction, Fraction], int]] = {}
    for role in range(len(LETTERS)):
        cut = cut_of(facts, role)
        if cut is not None:
            told = told_cut(cut)
            pieces[role] = ((told[0], told[-1]), cut.count)
    picture = facts.units[0].picture if facts.units else facts.placed
    return sample, Measures(
        unit=name,
        seam=seam,
        finished=(width, height),
        cuts=pieces,
        counts=counts_of(topic.shape, picture),
        corners=corners_of(topic.shape, picture),
        radius=_radius(picture),
        squared_up=(SQUARED_FIRST[name], SQUARED_AGAIN[name]),
    )


def _trimmed_like(sample: Sample, cuts: Sequence[CutFacts]) -> Sample:
    """The sample with the extra for trimming that the block has, found by what it cuts."""
    wanted = {cut.cut for cut in cuts}
    for times in range(_MOST_TRIMS + 1):
        tried = replace(sample, trim=times * sample.measure)
        if tried.trim > MOST["trim"][sample.unit]:
            break
        if {cut.cut for cut in work_out(tried).cutting} == wanted:
            return tried
        if not any(cut.method != CUT_PATCHES for cut in cuts):
            break
    return sample


def _written(topic: Topic, unit: UnitFacts) -> str:
    """The unit's shape with a letter for each role, its numbers and corners found in its picture."""
    picture = unit.picture
    fabrics = {_role(topic, place): patch.fabric for place, patch in enumerate(picture)}
    own = SHAPES[topic.shape].written_as
    if own is not None:
        outlines = [patch.outline for patch in picture]
        return own(DrawnUnit(outlines, fabrics, unit.finished[0], topic.writes))
    radius = _radius(picture)
    return f"{topic.writes} radius {radius / unit.finished[0]}" if radius else topic.writes


def counts_of(shape: str, picture: Sequence[PlacedPatch]) -> tuple[int, ...]:
    """Strips of a set, (rows, columns) of a checkerboard; strips side by side have a second number."""
    counts = SHAPES[shape].counts if shape in SHAPES else None
    return counts([patch.outline for patch in picture]) if counts else ()


def _radius(picture: Sequence[PlacedPatch]) -> Exact | None:
    """The radius of the first curved seam; None where all are straight."""
    bends = (bend for patch in picture if patch.curved for bend in patch.curved.bends)
    return next((bend.radius for bend in bends if bend is not None), None)


def corners_of(shape: str, picture: Sequence[PlacedPatch]) -> tuple[str, ...]:
    """Which corners of the unit have a patch of their own, clockwise from the upper left."""
    corners = SHAPES[shape].corners if shape in SHAPES else None
    return corners([patch.outline for patch in picture]) if corners else ()
