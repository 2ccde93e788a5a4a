"""The lesson of one unit of a block, in its own measures, and what is cut for it."""

from __future__ import annotations

from collections import Counter

from msgspec import structs
from msgspec.structs import replace

from blockdsl.facts.blockrecord import BlockRecord, CutFacts, FabricFacts, UnitFacts
from blockdsl.facts.technique_example import dark_roles, example, role_fabrics, showable
from blockdsl.facts.techniquefacts import LessonStep, UnitUse
from blockdsl.model.language import Language
from blockdsl.sewing.methods import CUT_PATCHES
from blockdsl.sewing.techniques import LESSONS
from blockdsl.shapes import SHAPES


def topic_shape(method: str, shape: str) -> str:
    """The topic that teaches a shape made by a method; the plain one for whatever has no page of its own."""
    topics = LESSONS[method].topics
    shape = (SHAPES[shape].taught_as if shape in SHAPES else "") or shape
    return shape if shape in topics else next(iter(topics))


def unit_lesson(unit: UnitFacts, block: BlockRecord) -> tuple[tuple[LessonStep, ...], tuple[FabricFacts, ...]]:
    """The steps of one unit's method in its own measures (common ones when it has none to show), and its fabrics.

    Of a shape that is not the one in the pictures, the size that it should measure is given.

    Errors: KeyError for a method that the language does not have.
    """
    topic = LESSONS[unit.method].topics[topic_shape(unit.method, unit.shape)]
    shown = unit if unit.shape == topic.shape and showable(unit) else None
    cuts = use_of(block.units.index(unit), block).cuts if shown is not None else ()
    _, measures = example(unit.method, topic, shown, cuts, (block.unit, block.seam, block.measure))
    fabrics = role_fabrics(topic, shown, block)
    made = unit.finished if unit.shape != topic.shape else None
    open_seams = block.pressing == "open"
    return topic.steps(replace(measures, dark=dark_roles(fabrics), made=made, open_seams=open_seams)), fabrics


def use_of(place: int, block: BlockRecord, language: Language | None = None) -> UnitUse:
    """A unit by its place in the block's list, with what is cut for it, and its mirror image, alone."""
    unit = block.units[place]
    names = {fabric.name: fabric.label for fabric in block.fabrics}
    cuts = _own_patches(unit, block) if unit.method == CUT_PATCHES else _own_pieces(place, block)
    return UnitUse(
        block.name,
        block.unit,
        unit.title,
        unit.count,
        unit.spare,
        unit.finished,
        unit.unfinished,
        cuts,
        names,
        language or block.language,
    )


def _own_pieces(place: int, block: BlockRecord) -> tuple[CutFacts, ...]:
    """The pieces that a method takes for a unit: of batches that mirror images share, the whole batch."""
    counted = [(cut, sum(share for places, share in cut.shares if place in places)) for cut in block.cutting]
    return tuple(structs.replace(cut, count=count) for cut, count in counted if count)


def _own_patches(unit: UnitFacts, block: BlockRecord) -> tuple[CutFacts, ...]:
    """The pieces that hold the patches of a unit; a square that is cut corner to corner holds two or four."""
    wanted = Counter((patch.label, patch.fabric) for patch in unit.picture for _ in range(unit.count))
    own: list[CutFacts] = []
    for cut in block.cutting:
        left = wanted[cut.label, cut.fabric]
        if cut.method != CUT_PATCHES or not left:
            continue
        each = {"none": 1, "once": 2, "twice": 4}[cut.subcut]
        count = min(cut.count, -(-left // each))
        wanted[cut.label, cut.fabric] -= min(left, count * each)
        own.append(structs.replace(cut, count=count))
    return tuple(own)
