"""The facts of a technique, for the block at hand or for common sizes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction

from blockdsl.facts.blockfacts import BlockFacts, FabricFacts, PlacedPatch, RulerUnit, UnitFacts
from blockdsl.facts.technique_sample import LETTERS, Sample, cut_of, told_cut, work_out
from blockdsl.facts.techniquefacts import SizeRow, SizeTable, TechniqueFacts, TechniqueSection, UnitUse
from blockdsl.geometry.polygon import bounding_box
from blockdsl.sewing.methods import CUT_PATCHES
from blockdsl.sewing.techniques import LESSONS, Measures, Topic

USUAL: dict[str, tuple[Fraction, Fraction]] = {
    "in": (Fraction(1, 4), Fraction(1, 8)),
    "cm": (Fraction(3, 4), Fraction(1, 10)),
}
"""Seam allowance and ruler's measure when no block says otherwise: the language's own defaults."""

ROOMY: dict[str, Fraction] = {"in": Fraction(1, 8), "cm": Fraction(3, 10)}
"""What units come out larger by when their pieces are cut roomy (common practice, no source)."""

_PLAIN = "square"
_NEUTRAL = (
    FabricFacts("light", "Light fabric", "#e9e4d8", "light", 1),
    FabricFacts("dark", "Dark fabric", "#9a958b", "dark", 2),
    FabricFacts("second light", "Second light fabric", "#f3efe6", "light", 3),
    FabricFacts("second dark", "Second dark fabric", "#b3aa98", "dark", 4),
)
_CORNERS = ("tl", "tr", "br", "bl")
_MOST_TRIMS = 16
_MOST_ROLES = 6


def topic_shape(method: str, shape: str) -> str:
    """The topic that teaches a shape made by a method; the plain one for whatever has no page of its own."""
    topics = LESSONS[method].topics
    return shape if shape in topics else next(iter(topics))


def techniques_for(blocks: Sequence[BlockFacts]) -> tuple[TechniqueFacts, ...]:
    """The techniques that these blocks use, in the language's order of methods, each with all the blocks' units."""
    found: dict[str, list[TechniqueFacts]] = {}
    for block in blocks:
        used = {(unit.method, topic_shape(unit.method, unit.shape)) for unit in block.units if unit.method in LESSONS}
        if not block.units or any(cut.method == CUT_PATCHES for cut in block.cutting):
            used.add((CUT_PATCHES, _PLAIN))
        for method, lesson in LESSONS.items():
            shapes = [shape for shape in lesson.topics if (method, shape) in used]
            if shapes:
                found.setdefault(method, []).append(technique_facts(method, shapes, block, block.unit))
    return tuple(_together(found[method]) for method in LESSONS if method in found)


def _together(several: Sequence[TechniqueFacts]) -> TechniqueFacts:
    """The first block's pages for each shape, with the units of all blocks."""
    sections: dict[str, TechniqueSection] = {}
    for technique in several:
        for section in technique.sections:
            known = sections.get(section.shape)
            uses = known.uses if known else ()
            uses = (*uses, *(use for use in section.uses if use not in uses))
            sections[section.shape] = replace(known or section, uses=uses)
    order = list(LESSONS[several[0].method].topics)
    return replace(several[0], sections=tuple(sorted(sections.values(), key=lambda each: order.index(each.shape))))


def technique_facts(
    method: str, shapes: Sequence[str], block: BlockFacts | None, unit: RulerUnit = "in"
) -> TechniqueFacts:
    """The pages of one method: for each shape its steps, the block's units that are made so, common sizes.

    Units:  lengths in the block's unit, or in `unit` when there is no block; its seam and measure likewise.
    Errors: KeyError for a method that the language does not have. A shape that the method does not make gets the
            method's first topic.
    """
    lesson = LESSONS[method]
    if block is not None:
        unit = block.unit
    seam, measure = USUAL[unit] if block is None else (block.seam, block.measure)
    wanted = dict.fromkeys(topic_shape(method, shape) for shape in shapes)
    sections = tuple(_section(method, lesson.topics[shape], block, (unit, seam, measure)) for shape in wanted)
    return TechniqueFacts(method, lesson.title, lesson.about, sections)


Ruler = tuple[RulerUnit, Fraction, Fraction]


def _section(method: str, topic: Topic, block: BlockFacts | None, ruler: Ruler) -> TechniqueSection:
    units = _units(method, topic, block)
    first = units[0] if units and topic.shape != _PLAIN else None
    sample, measures = _example(method, topic, first, block, ruler)
    fabrics = _fabrics(topic, first, block)
    light = min((_rank(fabric) for fabric in fabrics), default=0)
    dark = frozenset(role for role, fabric in enumerate(fabrics) if _rank(fabric) > light)
    return TechniqueSection(
        shape=topic.shape,
        title=topic.title,
        unit=ruler[0],
        seam=ruler[1],
        finished=(sample.width, sample.height),
        fabrics=fabrics,
        steps=topic.steps(replace(measures, dark=dark)),
        table=size_table(method, topic.shape, ruler),
        uses=tuple(_use(unit, block) for unit in units) if block else (),
    )


def _rank(fabric: FabricFacts) -> int:
    return ("light", "medium", "dark").index(fabric.value)


def _units(method: str, topic: Topic, block: BlockFacts | None) -> list[UnitFacts]:
    if block is None:
        return []
    return [
        unit
        for unit in block.units
        if unit.method == method and unit.shape and topic_shape(method, unit.shape) == topic.shape
    ]


def _use(unit: UnitFacts, block: BlockFacts) -> UnitUse:
    labels = {(patch.label, patch.fabric) for patch in unit.picture}
    cuts = tuple(
        cut
        for cut in block.cutting
        if cut.method == unit.method
        and (cut.unit == unit.name or (cut.method == CUT_PATCHES and (cut.label, cut.fabric) in labels))
    )
    names = {fabric.name: fabric.label for fabric in block.fabrics}
    return UnitUse(
        block.name, block.unit, unit.title, unit.count, unit.spare, unit.finished, unit.unfinished, cuts, names
    )


# --- the unit that the steps speak of --------------------------------------------------------------


def _fabrics(topic: Topic, unit: UnitFacts | None, block: BlockFacts | None) -> tuple[FabricFacts, ...]:
    """The fabric of each role: the block's own, or two neutral tones."""
    if unit is None or block is None:
        own = block.fabrics if block is not None and topic.shape == _PLAIN else ()
        return (*own[:2], *_neutral(topic)[len(own[:2]) :])
    known = {fabric.name: fabric for fabric in block.fabrics}
    by_role: dict[int, FabricFacts] = {}
    for place, patch in enumerate(unit.picture):
        by_role.setdefault(_role(topic, place), known[patch.fabric])
    last = by_role[max(by_role)]
    return tuple(by_role.get(role, last) for role in range(max(by_role) + 1))


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


def _example(
    method: str, topic: Topic, unit: UnitFacts | None, block: BlockFacts | None, ruler: Ruler
) -> tuple[Sample, Measures]:
    name, seam, measure = ruler
    if unit is None:
        width = topic.shown[0 if name == "in" else 1]
        writes, height = topic.writes, width / topic.proportion
    else:
        writes = _written(topic, unit)
        width, height = (Fraction(side) for side in unit.finished)  # type: ignore[arg-type]
    sample = Sample(writes, method, width, height, name, seam, measure)
    if unit is not None and block is not None:
        sample = _trimmed_like(sample, _use(unit, block))
    facts = work_out(sample)
    cuts: dict[int, tuple[tuple[Fraction, Fraction], int]] = {}
    for role in range(len(LETTERS)):
        cut = cut_of(facts, role)
        if cut is not None:
            told = told_cut(cut)
            cuts[role] = ((told[0], told[-1]), cut.count)
    picture = facts.units[0].picture if facts.units else facts.placed
    return sample, Measures(
        unit=name,
        seam=seam,
        finished=(width, height),
        cuts=cuts,
        counts=_counts(topic.shape, picture),
        corners=_places(topic.shape, picture),
    )


def _trimmed_like(sample: Sample, use: UnitUse) -> Sample:
    """The sample with the extra for trimming that the block has, found by what it cuts."""
    wanted = {cut.cut for cut in use.cuts}
    for times in range(_MOST_TRIMS + 1):
        tried = replace(sample, trim=times * sample.measure)
        if {cut.cut for cut in work_out(tried).cutting} == wanted:
            return tried
        if not any(cut.method != CUT_PATCHES for cut in use.cuts):
            break
    return sample


def _written(topic: Topic, unit: UnitFacts) -> str:
    """The unit's shape with a letter for each role, its numbers and corners found in its picture."""
    words = topic.writes.split()
    picture = unit.picture
    fabrics = {_role(topic, place): patch.fabric for place, patch in enumerate(picture)}
    match topic.shape:
        case "rails" | "bars":
            return " ".join([topic.shape, *LETTERS[: len(picture)]])
        case "checker":
            down, across = _counts("checker", picture)
            return f"checker {down} x {across} a b"
        case "geese" if fabrics.get(2) != fabrics.get(1):
            return f"{topic.writes} c"
        case "diamond" if len({fabrics[role] for role in (1, 2, 3, 4)}) > 1:
            return f"{topic.writes} c d e"
        case "snowball":
            first = bounding_box(picture[1].outline)
            share = (first[2] - first[0]) / unit.finished[0]
            return f"{topic.writes} at {' '.join(_places('snowball', picture))} cut {share}"
    return " ".join(words)


def _counts(shape: str, picture: Sequence[PlacedPatch]) -> tuple[int, ...]:
    """Strips of a set, (rows, columns) of a checkerboard; strips side by side are told by a second number."""
    match shape:
        case "rails":
            return (len(picture),)
        case "bars":
            return (len(picture), 1)
        case "checker":
            rows = len({bounding_box(patch.outline)[1] for patch in picture})
            return rows, len(picture) // rows
    return ()


def _places(shape: str, picture: Sequence[PlacedPatch]) -> tuple[str, ...]:
    """Which corners of the unit have a patch of their own, clockwise from the upper left."""
    match shape:
        case "geese":
            return ("tl", "tr")
        case "diamond":
            return _CORNERS
        case "half":
            return ("br",)
        case "snowball":
            right = max(bounding_box(patch.outline)[2] for patch in picture)
            found = set()
            for patch in picture[1:]:
                left, top, _, _ = bounding_box(patch.outline)
                found.add(("t" if top == 0 else "b") + ("l" if left == 0 else "r"))
            del right
            return tuple(place for place in _CORNERS if place in found)
    return ()


# --- common sizes ----------------------------------------------------------------------------------


def size_table(method: str, shape: str, ruler: Ruler, widths: Sequence[Fraction] | None = None) -> SizeTable:
    """What to cut for common finished sizes (or for `widths`), worked out as for any block."""
    topic = LESSONS[method].topics[shape]
    unit = ruler[0]
    common = topic.common[0 if unit == "in" else 1] if widths is None else widths
    roomy = ROOMY[unit] if topic.roomy else Fraction(0)
    rows = tuple(_row(method, topic, width, ruler, roomy) for width in common)
    heads = tuple(head for head, _ in topic.columns)
    if method == "strip set":
        heads = (*heads, "Segment width")
    if topic.roomy:
        heads = (*heads, *(f"{head}, roomy" for head in heads))
    return SizeTable(heads, rows, roomy)


def _row(method: str, topic: Topic, width: Fraction, ruler: Ruler, roomy: Fraction) -> SizeRow:
    height = width / topic.proportion
    sample = Sample(topic.writes, method, width, height, *ruler)
    cuts: list[tuple[Fraction, ...]] = []
    for trim in (Fraction(0), roomy) if roomy else (Fraction(0),):
        facts = work_out(replace(sample, trim=trim))
        for _, role in topic.columns:
            cut = cut_of(facts, role)
            if cut is not None:
                told = told_cut(cut)
                cuts += [(told[0],), (told[1],)] if method == "strip set" else [told]
    unfinished = (width + 2 * ruler[1], height + 2 * ruler[1])
    same = width == height
    return SizeRow((width,) if same else (width, height), tuple(cuts), unfinished[:1] if same else unfinished)
