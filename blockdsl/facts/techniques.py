"""The facts of a technique, for the block at hand or for common sizes."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec.structs import replace

from blockdsl.facts.applique_step import METHOD as APPLIQUE
from blockdsl.facts.blockfacts import BlockFacts, FabricFacts, RulerUnit, UnitFacts
from blockdsl.facts.paper_steps import paper_fabrics, paper_lesson
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.facts.technique_example import PLAIN, Ruler, dark_roles, example, role_fabrics, showable
from blockdsl.facts.technique_sample import Sample, cut_of, told_cut, work_out
from blockdsl.facts.techniquefacts import LessonStep, SizeRow, SizeTable, TechniqueFacts, TechniqueSection
from blockdsl.facts.unit_lesson import topic_shape, use_of
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import bounding_box
from blockdsl.model.language import Language, usual_language
from blockdsl.sewing.methods import CUT_PATCHES, FOUNDATION
from blockdsl.sewing.techniques import LESSONS, Topic

USUAL: dict[str, tuple[Fraction, Fraction]] = {
    "in": (Fraction(1, 4), Fraction(1, 8)),
    "cm": (Fraction(3, 4), Fraction(1, 10)),
}
"""Seam allowance and ruler's measure when no block says otherwise: the language's own defaults."""

OVERSIZED: dict[str, Fraction] = {"in": Fraction(1, 8), "cm": Fraction(3, 10)}
"""What units come out larger by when their pieces are cut oversized (common practice, no source)."""


SET_IN, PARTIAL, MITERED, BIAS = "set-in seams", "partial seams", "mitered corners", "continuous bias"
"""Lessons of seams that no method of the language makes, by the names that they have among the methods."""


def techniques_for(blocks: Sequence[BlockFacts], quilts: Sequence[QuiltFacts] = ()) -> tuple[TechniqueFacts, ...]:
    """The techniques that blocks and quilts use, in the order of the lessons, each with all the blocks' units.

    All are in one language, that of the first block or quilt.
    """
    languages = [*(block.language for block in blocks), *(quilt.language for quilt in quilts)]
    language = languages[0] if languages else None
    found: dict[str, list[TechniqueFacts]] = {}
    for block in blocks:
        used = taught_in(block)
        for method, lesson in LESSONS.items():
            shapes = [shape for shape in lesson.topics if (method, shape) in used]
            if shapes:
                found.setdefault(method, []).append(technique_facts(method, shapes, block, block.unit, language))
    for quilt in quilts:
        for method in sewn_in_quilt(quilt):
            found.setdefault(method, []).append(technique_facts(method, [PLAIN], None, quilt.unit, language))
    return tuple(_together(found[method]) for method in LESSONS if method in found)


def taught_in(block: BlockFacts) -> set[tuple[str, str]]:
    """Each method with the topic of it that teaches what a block takes."""
    used = {(unit.method, topic_shape(unit.method, unit.shape)) for unit in block.units if unit.method in LESSONS}
    all_folded = sum(paper.count for paper in block.papers) == len(block.placed)
    by_patch = not all_folded and any(cut.method == CUT_PATCHES for cut in block.cutting)
    if not block.units or by_patch:
        used.add((CUT_PATCHES, PLAIN))
    return used | {(method, PLAIN) for method in sewn_in_block(block)}


def sewn_in_block(block: BlockFacts) -> tuple[str, ...]:
    """The lessons that a block takes besides those of its methods: of its seams and its appliqué."""
    seams = block.seams
    taught = [SET_IN] if seams is not None and seams.set_in else []
    taught += [PARTIAL] if seams is not None and seams.partial else []
    return (*taught, *([APPLIQUE] if block.appliques else []))


def sewn_in_quilt(quilt: QuiltFacts) -> tuple[str, ...]:
    """The lessons that the borders and the binding of a quilt take."""
    mitered = any(ring.corners == "mitred" for ring in quilt.rings)
    on_bias = quilt.binding is not None and quilt.binding.plan.cut == "bias"
    return (*([MITERED] if mitered else []), *([BIAS] if on_bias else []))


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
    method: str,
    shapes: Sequence[str],
    block: BlockFacts | None,
    unit: RulerUnit = "in",
    language: Language | None = None,
) -> TechniqueFacts:
    """The pages of one method: for each shape its steps, the block's units that are made so, common sizes.

    Units:  lengths in the block's unit, or in `unit` when there is no block; its seam and measure likewise. The words
            are in `language`, or in that of the unit.
    Errors: KeyError for a method that the language does not have. A shape that the method does not make gets the
            method's first topic.
    """
    lesson = LESSONS[method]
    if block is not None:
        unit = block.unit
    seam, measure = USUAL[unit] if block is None else (block.seam, block.measure)
    wanted = dict.fromkeys(topic_shape(method, shape) for shape in shapes)
    sections = tuple(
        _section(method, lesson.topics[shape], block, (unit, seam, measure), language or usual_language(unit))
        for shape in wanted
    )
    return TechniqueFacts(method, sections)


def _section(method: str, topic: Topic, block: BlockFacts | None, ruler: Ruler, language: Language) -> TechniqueSection:
    uses = (
        {place: use_of(place, block, language) for place in _places(method, topic, block)} if block is not None else {}
    )
    fits = (place for place in uses if block is not None and _is_shown(block.units[place], topic))
    place = next(fits, None)
    first = None if place is None or block is None else block.units[place]
    cuts = () if place is None else uses[place].cuts
    sample, measures = example(method, topic, first, cuts, ruler)
    fabrics = role_fabrics(topic, first, block)
    steps = topic.steps(
        replace(measures, dark=dark_roles(fabrics), open_seams=block is not None and block.pressing == "open")
    )
    finished: tuple[Exact, Exact] = (sample.width, sample.height)
    if method == FOUNDATION and block is not None and block.foundations:
        steps, fabrics, finished = _own_papers(block)
    return TechniqueSection(
        shape=topic.shape,
        key=topic.key,
        unit=ruler[0],
        seam=ruler[1],
        finished=finished,
        fabrics=fabrics,
        steps=steps,
        table=size_table(method, topic.shape, ruler),
        uses=tuple(uses.values()),
        sized=topic.sized,
        language=language,
    )


def _own_papers(
    block: BlockFacts,
) -> tuple[tuple[LessonStep, ...], tuple[FabricFacts, ...], tuple[Exact, Exact]]:
    """The work on the first section of a block that has several areas, or on its first one, and the section's size."""
    papers = [paper for foundation in block.foundations for paper in foundation.papers]
    paper = next((paper for paper in papers if len(paper.patches) > 1), papers[0])
    fabrics = paper_fabrics(paper, block)
    left, top, right, bottom = bounding_box(paper.sewing)
    return paper_lesson(paper, fabrics, block), fabrics, (right - left, bottom - top)


def _is_shown(unit: UnitFacts, topic: Topic) -> bool:
    return unit.shape == topic.shape != PLAIN and showable(unit)


def _places(method: str, topic: Topic, block: BlockFacts) -> list[int]:
    """The places of the units that the topic teaches."""
    return [
        place
        for place, unit in enumerate(block.units)
        if unit.method == method and unit.shape and topic_shape(method, unit.shape) == topic.shape
    ]


# --- common sizes ----------------------------------------------------------------------------------


def size_table(method: str, shape: str, ruler: Ruler, widths: Sequence[Fraction] | None = None) -> SizeTable:
    """What to cut for common finished sizes (or for `widths`), worked out as for any block."""
    topic = LESSONS[method].topics[shape]
    unit = ruler[0]
    common = topic.common[0 if unit == "in" else 1] if widths is None else widths
    oversized = OVERSIZED[unit] if topic.oversized else Fraction(0)
    rows = tuple(_row(method, topic, width, ruler, oversized) for width in common)
    heads = tuple(head for head, _ in topic.columns)
    if method == "strip set":
        heads = (*heads, "segment-width")
    told = [(head, False) for head in heads] + [(head, True) for head in heads if topic.oversized]
    share = topic.proportion
    return SizeTable(tuple(told), rows, oversized, (share.numerator, share.denominator))


def _row(method: str, topic: Topic, width: Fraction, ruler: Ruler, oversized: Fraction) -> SizeRow:
    height = width / topic.proportion
    sample = Sample(topic.writes, method, width, height, *ruler)
    cuts: list[tuple[Fraction, ...]] = []
    for trim in (Fraction(0), oversized) if oversized else (Fraction(0),):
        facts = work_out(replace(sample, trim=trim))
        for _, role in topic.columns:
            cut = cut_of(facts, role)
            if cut is not None:
                told = told_cut(cut)
                cuts += [(told[0],), (told[1],)] if method == "strip set" else [told]
    unfinished = (width + 2 * ruler[1], height + 2 * ruler[1])
    same = width == height
    return SizeRow((width,) if same else (width, height), tuple(cuts), unfinished[:1] if same else unfinished)
