"""The facts as JSON, schema 1: lengths as strings in the block's own unit, lists in a stable order.

Lengths are as the language writes them: `2 7/8`, in centimetres `7.3`; with roots `2-r2` (r2, r3: square roots).
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Sequence
from typing import Protocol

from blockdsl.cutting.grain import Bias
from blockdsl.cutting.strips import StripCut
from blockdsl.diagnostics import Diagnostic
from blockdsl.facts.alternatives import Alternative
from blockdsl.facts.blockfacts import (
    BlockFacts,
    CutFacts,
    Extent,
    PatchFacts,
    PlacedPatch,
    StripSetFacts,
    TemplateFacts,
    UnitFacts,
)
from blockdsl.facts.collect import FileFacts
from blockdsl.facts.drafting import DraftFacts, draft
from blockdsl.facts.drift import DriftFacts
from blockdsl.facts.json_book import asked_sizes, book_document, size_documents
from blockdsl.facts.json_foundation import foundation_document
from blockdsl.facts.json_quilt import quilt_document
from blockdsl.facts.json_quilt_steps import DescribeQuilt
from blockdsl.facts.json_steps import actions_document, parts_document
from blockdsl.facts.papers import papers_document
from blockdsl.facts.stepfacts import JoinFacts, StepFacts
from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.arc import Curved, CurvedArea
from blockdsl.model.lengths import write_length
from blockdsl.sewing.order import SeamCount

SCHEMA = 1
_RECORDS = 4
"""How deep the records of a block lie: in a list, in a block, in the list of blocks, in the document."""
_words = json.JSONEncoder(ensure_ascii=False).encode
Say = Callable[[Exact], str]


class StepWords(Protocol):
    """The words of a step: its title, and all that there is to do."""

    @property
    def title(self) -> str:
        """Its name, how many are made, their size."""

    @property
    def text(self) -> str:
        """All sentences and measures on one line."""


Describe = Callable[[BlockFacts], Sequence[StepWords]]
"""Gives the words of all steps of a block, in order; they are made where a document is written."""


def facts_json(
    facts: FileFacts, problems: Iterable[Diagnostic], describe: Describe, describe_quilt: DescribeQuilt
) -> str:
    """One JSON document for a file, problems included."""

    def document_of(block: BlockFacts, asked: Sequence[Extent] = ()) -> dict[str, object]:
        return block_document(block, asked, describe)

    units = {block.unit for block in facts.blocks}
    document = {
        "schema": SCHEMA,
        "file": facts.file,
        "unit": units.pop() if len(units) == 1 else ("in" if not units else "mixed"),
        "blocks": [document_of(block, asked_sizes(block, facts.books)) for block in facts.blocks],
        "quilts": [quilt_document(quilt, describe_quilt) for quilt in facts.quilts],
        "books": [book_document(book, document_of) for book in facts.books],
        "problems": [_problem(problem) for problem in problems],
    }
    return _laid_out(document, 0)


def _laid_out(value: object, depth: int) -> str:
    """JSON over several lines, with each record of a list on one: to be read, compared, and written quickly."""
    inside: Iterable[object] = value.values() if isinstance(value, dict) else value if isinstance(value, list) else ()
    if depth >= _RECORDS or not any(isinstance(item, dict | list) for item in inside):
        return _words(value)
    start, end = " " * (depth + 1), " " * depth
    items = [_laid_out(item, depth + 1) for item in inside]
    if not isinstance(value, dict):
        return "[\n" + ",\n".join(f"{start}{item}" for item in items) + f"\n{end}]"
    lines = [f"{start}{_words(key)}: {item}" for key, item in zip(value, items, strict=True)]
    return "{\n" + ",\n".join(lines) + f"\n{end}}}"


def block_document(
    block: BlockFacts, asked: Sequence[Extent] = (), describe: Describe | None = None
) -> dict[str, object]:
    """One block as plain lists, dictionaries and strings; `asked` are further sizes that books print, in its unit.

    Without `describe` the steps have their data and no words.
    """
    unit = block.unit

    def say(length: Exact) -> str:
        return write_length(length, unit)

    return {
        "name": block.name,
        "family": block.family,
        "sources": list(block.sources),
        "unit": block.unit,
        "seam": say(block.seam),
        "measure": say(block.measure),
        "finished": _extent(block.finished, say),
        "unfinished": _extent(block.unfinished, say),
        "grid": list(block.grid),
        "columns": [say(step) for step in block.columns],
        "heights": [say(step) for step in block.heights],
        "cell": _extent(block.cell, say) if block.cell else None,
        "drawn_on": _drawn_on(draft(block), say),
        "cover": {"area": say(block.cover.area), "gaps": block.cover.gaps, "overlaps": block.cover.overlaps},
        "fabrics": [
            {"name": f.name, "label": f.label, "colour": f.colour, "value": f.value, "number": f.number}
            for f in block.fabrics
        ],
        "patches": [_patch(patch, say) for patch in block.patches],
        "cutting": [_cut(cut, say) for cut in block.cutting],
        "bias": [_bias(each, say) for each in block.bias],
        "lacking": [
            {"shape": each.shape, "size": _extent(each.size, say), "labels": list(each.labels)}
            for each in block.lacking
        ],
        "drift": _drift(block.drift, say) if block.drift is not None else None,
        "foundations": [foundation_document(each, say) for each in block.foundations],
        "papers": papers_document(block.papers, say),
        "units": _units(block, say),
        "steps": _steps(block, describe, say),
        "seams": _seams(block.seams),
        "area_by_fabric": {name: _area(area, say) for name, area in block.area_by_fabric},
        "colourings": [
            {
                "name": plan.name,
                "fabrics": dict(plan.replaces),
                "cutting": [_cut(cut, say) for cut in plan.cutting],
            }
            for plan in block.colourings
        ],
        "sizes": [_extent(extent, say) for extent in (block.finished, *asked)],
        "at_sizes": size_documents(block.sizes, lambda size: block_document(size, (), describe)),
        "pressing": block.pressing,
        "language": block.language,
        "notes": list(block.notes),
        "placed": [_placed(patch, say) for patch in block.placed],
        "appliques": [
            {
                "label": piece.label,
                "fabric": piece.fabric,
                "outline": _outline(piece.outline, say),
                "turn_under": say(piece.turn_under),
            }
            for piece in block.appliques
        ],
        "templates": [_template(template, say) for template in block.templates],
    }


def _extent(extent: tuple[Exact, Exact], say: Say) -> list[str]:
    return [say(extent[0]), say(extent[1])]


def _drift(drift: DriftFacts, say: Say) -> dict[str, object]:
    return {
        "off": say(drift.off),
        "row": list(drift.row),
        "beside": list(drift.beside),
        "drawn": say(drift.drawn) if drift.row else None,
        "lengths": _extent(drift.lengths, say) if drift.row else None,
        "measure": None if drift.measure is None else say(drift.measure),
        "templates": list(drift.templates),
        "sizes": [_extent(size, say) for size in drift.sizes],
        "methods": [{"what": what, "as": method} for what, method in drift.methods],
    }


def _drawn_on(paper: DraftFacts, say: Say) -> dict[str, object]:
    return {
        "kind": paper.kind,
        "squares": [paper.across, paper.down],
        "cell": say(paper.cell) if paper.cell is not None else None,
        "family": paper.family,
    }


def _outline(polygon: Polygon, say: Say) -> list[list[str]]:
    return [[say(corner.x), say(corner.y)] for corner in polygon]


def _patch(patch: PatchFacts, say: Say) -> dict[str, object]:
    return {
        "label": patch.label,
        "shape": patch.shape,
        "finished": _extent(patch.finished, say),
        "fabric": patch.fabric,
        "count": patch.count,
    }


def _cut(cut: CutFacts, say: Say) -> dict[str, object]:
    return {
        "fabric": cut.fabric,
        "label": cut.label,
        "piece": cut.piece,
        "cut": _extent(cut.cut, say),
        "exact": _extent(cut.exact, say),
        "count": cut.count,
        "subcut": cut.subcut,
        "yields": cut.yields,
        "spare": cut.spare,
        "for": cut.purpose,
        "cutters": list(cut.cutters),
        "strip": _strip(cut.strip, say) if cut.strip else None,
        "slant": cut.slant or None,
        "outside": cut.outside,
        "corner": None if cut.corner is None else say(cut.corner),
        "upright": None if cut.upright is None else say(cut.cut[cut.upright]),
        "print_up": None if cut.print_up is None else [say(step) for step in cut.print_up],
        "areas": list(cut.areas),
    }


def _strip(strip: StripCut, say: Say) -> dict[str, object]:
    return {
        "form": strip.form,
        "width": say(strip.width),
        "every": None if strip.every is None else say(strip.every),
        "across": None if strip.across is None else say(strip.across),
        "angles": list(strip.angles),
        "slant": strip.slant or None,
        "exact": _extent(strip.exact, say),
        "strips": strip.strips,
        "each": strip.each,
        "length": say(strip.length),
    }


def _bias(bias: Bias, say: Say) -> dict[str, object]:
    lengths = [say(length) for length in bias.lengths]
    return {"label": bias.label, "which": bias.which, "lengths": lengths, "edges": bias.edges, "outside": bias.outside}


def _unit(unit: UnitFacts, say: Say) -> dict[str, object]:
    return {
        "name": unit.name,
        "title": unit.title,
        "count": unit.count,
        "finished": _extent(unit.finished, say),
        "unfinished": _extent(unit.unfinished, say),
        "method": unit.method,
        "spare": unit.spare,
        "strip_sets": [_strip_set(each, say) for each in unit.strip_sets],
    }


def _strip_set(each: StripSetFacts, say: Say) -> dict[str, object]:
    return {
        "strips": [{"label": label, "fabric": fabric} for label, fabric in each.strips],
        "strip_width": say(each.strip_width),
        "segment": say(each.segment),
        "across": say(each.across),
        "angle": each.angle,
        "rows": list(each.rows),
        "segments": each.segments,
        "lengths": [
            {
                "sets": found.sets,
                "length": say(found.length),
                "segments": found.segments,
                "squared_again": found.squared_again,
            }
            for found in each.lengths
        ],
    }


def _steps(block: BlockFacts, describe: Describe | None, say: Say) -> list[dict[str, object]]:
    steps = [_step(step, say) for step in block.steps]
    if describe is None:
        return steps
    return [
        step | {"title": words.title, "text": words.text} for step, words in zip(steps, describe(block), strict=True)
    ]


def _step(step: StepFacts, say: Say) -> dict[str, object]:
    return {
        "number": step.number,
        "makes": step.makes,
        "count": step.count,
        "spare": step.spare,
        "method": step.method,
        "joins": [_join(join, say) for join in step.joins],
        "seam": step.seam,
        "sections": list(step.sections),
        "finished": _extent(step.finished, say) if step.finished else None,
        "unfinished": _extent(step.unfinished, say) if step.unfinished else None,
        "size": _extent(step.size, say),
        "parts": parts_document(step),
        "actions": actions_document(step, say),
        "cells": [dict(zip(("column", "row", "columns", "rows"), cell, strict=True)) for cell in step.cells],
    }


def _join(join: JoinFacts, say: Say) -> dict[str, object]:
    if join.step:
        return {"step": join.step, "unit": join.name, "count": join.count}
    if join.piece:
        size = [say(side) for side in join.cut]
        return {"piece": join.piece, "cut": size, "patch": join.name, "fabric": join.fabric, "count": join.count}
    return {"patch": join.name, "fabric": join.fabric, "count": join.count}


def _seams(seams: SeamCount | None) -> dict[str, object] | None:
    if seams is None:
        return None
    return {
        "straight": seams.straight,
        "partial": seams.partial,
        "set_in": seams.set_in,
        "curved": seams.curved,
    }


def _units(block: BlockFacts, say: Say) -> list[dict[str, object]]:
    ways: Sequence[Sequence[Alternative]] = block.alternatives or [()] * len(block.units)
    pairs = zip(block.units, ways, strict=True)
    return [_unit(unit, say) | {"alternatives": [_alternative(way, say) for way in each]} for unit, each in pairs]


def _alternative(way: Alternative, say: Say) -> dict[str, object]:
    return {
        "method": way.method,
        "chosen": way.chosen,
        "cutting": [
            {
                "fabric": cut.fabric,
                "piece": cut.piece,
                "cut": _extent(cut.cut, say),
                "count": cut.count,
                "subcut": cut.subcut,
            }
            for cut in way.cuts
        ],
        "cloth": say(way.cloth),
        "waste": say(way.waste),
        "seams": way.seams,
        "spare": way.spare,
    }


def _placed(patch: PlacedPatch, say: Say) -> dict[str, object]:
    placed: dict[str, object] = {"label": patch.label, "fabric": patch.fabric, "outline": _outline(patch.outline, say)}
    return placed | ({"bends": _bends(patch.curved, say)} if patch.curved else {})


def _area(area: Exact | CurvedArea, say: Say) -> str:
    """An exact number; with curves a sum with a multiple of π, `36-9/4pi`."""
    return str(area) if isinstance(area, CurvedArea) else say(area)


def _bends(curved: Curved, say: Say) -> list[object]:
    """For each side from corner to corner null, or the circle that it bends along."""
    return [
        bend and {"centre": [say(bend.centre.x), say(bend.centre.y)], "radius": say(bend.radius), "hollow": bend.hollow}
        for bend in curved.bends
    ]


def _template(template: TemplateFacts, say: Say) -> dict[str, object]:
    names = ("sewing_bends", "cutting_bends")
    bends: dict[str, object] = dict(zip(names, (_bends(each, say) for each in template.curved or ()), strict=False))
    return bends | {
        "label": template.label,
        "shape": template.shape,
        "finished": _extent(template.finished, say),
        "sewing": _outline(template.sewing, say),
        "cutting": _outline(template.cutting, say),
        "grain": [say(template.grain[0]), say(template.grain[1])],
        "uses": dict(template.uses),
        "mirror_of": template.mirror_of,
    }


def _problem(problem: Diagnostic) -> dict[str, object]:
    return {
        "code": problem.code,
        "severity": problem.severity,
        "file": problem.span.source.name,
        "line": problem.span.line,
        "column": problem.span.column,
        "message": problem.message,
        "help": problem.help,
    }
