"""What the page shows of a file, as plain data: text stays text, and the page's script makes elements of it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final, get_args

from blockdsl.analysis.override import WhatIf
from blockdsl.cutting import BlockCuts
from blockdsl.diagnostics import Diagnostic
from blockdsl.export.html.picture import page_markup
from blockdsl.export.svg import number
from blockdsl.facts import BlockFacts, QuiltFacts
from blockdsl.facts.blockfacts import FabricFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.display_list import Contour, Figure, Page
from blockdsl.marks.theme import PAPERS, Box
from blockdsl.model import RulerUnit
from blockdsl.pictures.block import block_picture, fabrics_of
from blockdsl.pictures.placing import fit, middle
from blockdsl.pictures.quilt import quilt_picture
from blockdsl.preview.frames import frames_of
from blockdsl.preview.seen import Reading, Seen
from blockdsl.syntax.ast import Pattern
from blockdsl.wording.cutting_rows import plain_cut_size
from blockdsl.wording.lengths import plain_size
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import format_piece, format_subcut

_SIDE_PT: Final = 480.0
_EDGE_PT: Final = 6.0
_MOST_PATCHES: Final = 3000
"""Patches that can be pointed at; in a larger block they are too small to be hit."""
_WIDTHS: Final[dict[RulerUnit, tuple[int, ...]]] = {
    "in": (4, 6, 8, 9, 10, 12, 15, 18),
    "cm": (10, 15, 20, 25, 30, 40),
}
SIZES: Final = {f"{width} {unit}": (Fraction(width), unit) for unit, widths in _WIDTHS.items() for width in widths}
"""The widths at which a block may be looked at, as they are written."""

SETTINGS: Final[tuple[str, ...]] = get_args(Pattern)

Data = dict[str, object]


def view_of(seen: Seen, what_if: WhatIf, item: int) -> Data:
    """All that the page needs to draw itself: problems, what may be chosen, and the item that is.

    `item` counts the file's quilts and blocks together, from 0, quilts first; one that is not there is the first.
    """
    reading = seen.reading(what_if)
    data: Data = {
        "number": seen.number,
        "file": seen.path.name,
        "broken": seen.last.has_errors,
        "problems": [_problem(each) for each in seen.last.problems],
        "cursor": seen.cursor[1] if seen.cursor else None,
        "items": [],
        "shown": None,
    }
    if reading is None:
        return data
    quilts, blocks = reading.stages.facts.quilts, reading.stages.facts.blocks
    items: list[BlockFacts | QuiltFacts] = [*quilts, *blocks]
    data["items"] = [{"kind": "quilt" if each in quilts else "block", "name": each.name} for each in items]
    if items:
        place = item if 0 <= item < len(items) else 0
        data["item"] = place
        chosen = items[place]
        data["choices"] = _choices(seen.good or reading, chosen)
        data["shown"] = _quilt(chosen) if isinstance(chosen, QuiltFacts) else _block(chosen, reading, seen.cursor)
    return data


def _problem(problem: Diagnostic) -> Data:
    span = problem.span
    return {
        "severity": problem.severity,
        "code": problem.code,
        "message": problem.message,
        "help": problem.help,
        "file": span.source.name,
        "line": span.line,
        "column": span.column,
        "text": span.source.line(span.line) if span.source.text else "",
    }


def _choices(reading: Reading, chosen: BlockFacts | QuiltFacts) -> Data:
    """What may be chosen of an item; a file in one of its colourways no longer has the others, so it is as written."""
    colourways = {name.name for block in reading.stages.facts.blocks for name in block.colourways}
    return {
        "colourways": sorted(colourways),
        "sizes": [size for size, (_, unit) in SIZES.items() if unit == chosen.unit],
        "settings": SETTINGS if isinstance(chosen, QuiltFacts) else (),
        "papers": [{"name": name, "title": paper.title} for name, paper in PAPERS.items()],
    }


def _page(figure: Figure, filled: Box) -> str:
    return page_markup(Page(filled.width_pt + 2 * _EDGE_PT, filled.height_pt + 2 * _EDGE_PT, (figure,)))


def _quilt(quilt: QuiltFacts) -> Data:
    figure, filled = quilt_picture(quilt, Box(_EDGE_PT, _EDGE_PT, _SIDE_PT, _SIDE_PT))
    words = words_of(quilt)
    return {
        "kind": "quilt",
        "name": quilt.name,
        "size": plain_size(quilt.finished, quilt.unit, words),
        "svg": _page(figure, filled),
        "patches": [],
        "frames": 0,
        "cutting": [],
    }


def _block(facts: BlockFacts, reading: Reading, cursor: tuple[str, int] | None) -> Data:
    cuts = next(
        cuts for cuts, each in zip(reading.stages.cuts, reading.stages.facts.blocks, strict=True) if each is facts
    )
    figure, filled = block_picture(facts, Box(_EDGE_PT, _EDGE_PT, _SIDE_PT, _SIDE_PT))
    words = words_of(facts)
    cloth = fabrics_of(facts)
    return {
        "kind": "block",
        "name": facts.name,
        "size": plain_size(facts.finished, facts.unit, words),
        "unfinished": plain_size(facts.unfinished, facts.unit, words),
        "svg": _page(figure, filled),
        "patches": list(_patches(facts, cuts, cloth, cursor)),
        "frames": len(frames_of(facts)),
        "cutting": list(_cutting(facts)),
    }


def _cutting(facts: BlockFacts) -> Iterator[Data]:
    labels = {fabric.name: fabric.label for fabric in facts.fabrics}
    words = words_of(facts)
    for cut in facts.cutting:
        yield {
            "label": cut.label,
            "fabric": labels[cut.fabric],
            "cut": f"{cut.count} {format_piece(cut, words)} {plain_cut_size(cut, facts)}",
            "then": format_subcut(cut, facts.unit, words),
        }


def _patches(
    facts: BlockFacts, cuts: BlockCuts, cloth: dict[str, FabricFacts], cursor: tuple[str, int] | None
) -> Iterator[Data]:
    """Each patch: where it lies in the picture, its letter and fabric, what it is cut from, its steps and its line."""
    if len(facts.placed) > _MOST_PATCHES:
        return
    placing, _ = fit(facts.finished, Box(_EDGE_PT, _EDGE_PT, _SIDE_PT, _SIDE_PT))
    words = words_of(facts)
    sizes = {(each.label, each.fabric): plain_size(each.finished, facts.unit, words) for each in facts.patches}
    cuts_of: dict[tuple[str, str], list[str]] = {}
    for cut in facts.cutting:
        said = f"{cut.count} {format_piece(cut, words)} {plain_cut_size(cut, facts)}"
        cuts_of.setdefault((cut.label, cut.fabric), []).append(said)
    steps = _steps_by_patch(facts)
    for place, (patch, drawn) in enumerate(zip(facts.placed, (each.span for each in cuts.design.patches), strict=True)):
        ring = placing.ring(patch.shown)
        x, y, radius = middle(ring)
        line = drawn.line if drawn is not None else 0
        file = drawn.source.name if drawn is not None else ""
        yield {
            "path": _outline(ring),
            "x": round(x, 1),
            "y": round(y, 1),
            "room": round(radius, 1),
            "label": patch.label,
            "fabric": cloth[patch.fabric].label,
            "size": sizes.get((patch.label, patch.fabric), ""),
            "cut": cuts_of.get((patch.label, patch.fabric), []),
            "steps": steps.get(place, []),
            "line": line,
            "file": file,
            "lit": cursor is not None and cursor == (file, line),
        }


def _steps_by_patch(facts: BlockFacts) -> dict[int, list[int]]:
    """For each patch the numbers of the steps in whose pictures it is."""
    found: dict[int, list[int]] = {}
    for step in facts.steps:
        for hand in step.hands:
            for place in hand.patches:
                numbers = found.setdefault(place, [])
                if step.number not in numbers:
                    numbers.append(step.number)
    return found


def _outline(ring: Contour) -> str:
    return "M" + "L".join(f"{number(x)} {number(y)}" for x, y in ring) + "Z"
