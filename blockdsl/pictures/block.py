"""Pictures of a block: in colour, as a lettered diagram, its grid, and its units one by one."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts, ColourwayFacts, FabricFacts, PlacedPatch, RulerUnit, UnitFacts
from blockdsl.geometry import Exact, to_float
from blockdsl.marks.display_list import Contour, Figure, Mark, Path
from blockdsl.marks.hatch import hatch_all
from blockdsl.marks.prose import TextStyle, line, line_centred, line_ending, rectangle, width_of
from blockdsl.marks.theme import INK, QUIET, RULE, SMALL_PT, WHITE, Box
from blockdsl.pictures.block_applique import with_appliques
from blockdsl.pictures.block_letters import MARGIN_PT, letter_patches, written_inside, written_outside
from blockdsl.pictures.placing import Placing, fit
from blockdsl.wording.lengths import drafted_length
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import (
    describe_colour_picture,
    describe_grid_picture,
    describe_letter_picture,
    describe_unit_picture,
)

Fabrics = Mapping[str, FabricFacts]

_UNKNOWN: Final = FabricFacts("", "", "#ffffff", "light", 1)
_HATCHED_PATCHES: Final = 2500  # beyond this a patch is too small on any page for its hatch to be told
_PALE_BELOW_PT: Final = 2.5
_NUMBER_MARGIN_PT: Final = 26.0


def fabrics_of(facts: BlockFacts, colourway: ColourwayFacts | None = None) -> dict[str, FabricFacts]:
    """For each fabric name of the block, the fabric that is seen: its own, or the one that replaces it."""
    own = {fabric.name: fabric for fabric in facts.fabrics}
    if colourway is None:
        return own
    all_fabrics = own | {fabric.name: fabric for fabric in colourway.fabrics}
    replaces = dict(colourway.replaces)
    return {name: all_fabrics.get(replaces.get(name, name), fabric) for name, fabric in own.items()}


def _side_pt(rings: Sequence[Contour], placed: Box) -> float:
    """Side of a square as large as the patches are on average."""
    return math.sqrt(placed.width_pt * placed.height_pt / max(1, len(rings)))


def _outlines(rings: Sequence[Contour], placed: Box) -> Path:
    """Every patch's outline in one mark: thinner, then paler, the smaller the patches are, so that none turn black."""
    side = _side_pt(rings, placed)
    if side < _PALE_BELOW_PT:
        return Path(tuple(rings), stroke=RULE, stroke_width_pt=side * 0.05)
    return Path(tuple(rings), stroke=INK, stroke_width_pt=max(0.2, min(0.6, side * 0.04)))


def coloured_patches(
    patches: Sequence[PlacedPatch], fabrics: Fabrics, placing: Placing, placed: Box, *, hatched: bool = True
) -> list[Mark]:
    """Fills batched by fabric, hatches over them, every outline on top unless the patches are mere dots.

    `placed` is the box that they fill.
    """
    by_fabric: dict[str, list[Contour]] = {}
    for patch in patches:
        by_fabric.setdefault(patch.fabric, []).append(placing.ring(patch.shown))
    marks: list[Mark] = []
    for name, rings in by_fabric.items():
        fabric = fabrics.get(name, _UNKNOWN)
        marks.append(Path(tuple(rings), fill=fabric.colour))
        if hatched and len(patches) <= _HATCHED_PATCHES:
            marks += hatch_all(rings, fabric.number, fabric.colour)
    everything = tuple(ring for rings in by_fabric.values() for ring in rings)
    if _side_pt(everything, placed) >= _PALE_BELOW_PT:
        marks.append(_outlines(everything, placed))
    return marks


def swatch(fabric: FabricFacts, box: Box) -> tuple[Mark, ...]:
    """A small rectangle of the fabric: its colour, its hatch, an outline."""
    plain = rectangle(box.x_pt, box.y_pt, box.width_pt, box.height_pt, fill=fabric.colour)
    edge = rectangle(box.x_pt, box.y_pt, box.width_pt, box.height_pt, stroke=INK, stroke_width_pt=0.5)
    return (plain, *hatch_all(plain.rings, fabric.number, fabric.colour), edge)


def block_picture(facts: BlockFacts, box: Box, *, colourway: ColourwayFacts | None = None) -> tuple[Figure, Box]:
    """The block in colour, as large as the box allows at its top left; and the box it fills.

    Every fabric has its hatch as well as its colour, so that the picture can be read in greyscale. Fills are batched,
    one mark a fabric: a block of 40,000 patches is a few dozen marks.
    """
    placing, placed = fit(facts.finished, box)
    fabrics = fabrics_of(facts, colourway)
    marks = coloured_patches(facts.placed, fabrics, placing, placed)
    marks += laid_on_block(facts, fabrics, placing)
    marks.append(_edge(placed))
    return Figure(describe_colour_picture(facts, colourway), tuple(marks)), placed


def laid_on_block(facts: BlockFacts, fabrics: Fabrics, placing: Placing, *, hatched: bool = True) -> list[Mark]:
    """The pieces of appliqué, each on those before it."""
    marks: list[Mark] = []
    for piece in facts.appliques:
        ring, fabric = placing.ring(piece.outline), fabrics.get(piece.fabric, _UNKNOWN)
        marks.append(Path((ring,), fill=fabric.colour))
        marks += hatch_all([ring], fabric.number, fabric.colour) if hatched else ()
        marks.append(Path((ring,), stroke=INK, stroke_width_pt=0.6 if hatched else 0.3))
    return marks


def _edge(placed: Box, thickness_pt: float = 1.0) -> Path:
    return rectangle(
        placed.x_pt, placed.y_pt, placed.width_pt, placed.height_pt, stroke=INK, stroke_width_pt=thickness_pt
    )


def letter_diagram(facts: BlockFacts, box: Box) -> tuple[Figure, Box]:
    """A lettered diagram with each patch's letter well inside it; and the box it fills with its outside letters.

    Letters that fit in none of their patches stand beside the block on leaders, for which the block is drawn smaller.
    """
    placing, placed = fit(facts.finished, box)
    labels = [patch.label for patch in facts.placed]
    rings = tuple(placing.ring(patch.shown) for patch in facts.placed)
    lettering = letter_patches(labels, rings)
    if lettering.outside:
        inner = Box(box.x_pt + MARGIN_PT, box.y_pt, box.width_pt - 2 * MARGIN_PT, box.height_pt)
        placing, placed = fit(facts.finished, inner)
        rings = tuple(placing.ring(patch.shown) for patch in facts.placed)
        lettering = letter_patches(labels, rings)
    laid_on = tuple(placing.ring(piece.outline) for piece in facts.appliques)
    lettering = with_appliques(lettering, rings, [piece.label for piece in facts.appliques], laid_on)
    marks: list[Mark] = [
        rectangle(placed.x_pt, placed.y_pt, placed.width_pt, placed.height_pt, fill=WHITE),
        _outlines(rings, placed),
        *(Path((ring,), fill=WHITE, stroke=INK, stroke_width_pt=0.6) for ring in laid_on),
        _edge(placed),
        *written_inside(lettering),
        *written_outside(lettering, placed),
    ]
    filled = placed if not lettering.outside else Box(box.x_pt, placed.y_pt, box.width_pt, placed.height_pt)
    return Figure(describe_letter_picture(facts), tuple(marks)), filled


def unit_picture(
    unit: UnitFacts, fabrics: Fabrics, box: Box, words: Messages, *, unit_of_length: RulerUnit = "in"
) -> tuple[Figure, Box]:
    """One unit in colour, as large as the box allows at its top left; and the box it fills."""
    placing, placed = fit(unit.finished, box)
    marks = coloured_patches(unit.picture, fabrics, placing, placed)
    marks.append(_edge(placed, 0.8))
    return Figure(describe_unit_picture(unit, unit_of_length, words), tuple(marks)), placed


def grid_lines(facts: BlockFacts) -> tuple[tuple[Exact, ...], tuple[Exact, ...]]:
    """The widths of the grid's columns and the heights of its rows, finished, in the block's own measure."""
    if facts.cell is not None:
        columns, rows = facts.grid
        return (facts.cell[0],) * columns, (facts.cell[1],) * rows
    return facts.columns, facts.heights


def grid_diagram(facts: BlockFacts, box: Box) -> tuple[Figure, Box]:
    """The grid over pale patches, with the finished width of each column above and height of each row at the left."""
    inner = Box(
        box.x_pt + _NUMBER_MARGIN_PT,
        box.y_pt + _NUMBER_MARGIN_PT / 2,
        box.width_pt - _NUMBER_MARGIN_PT,
        box.height_pt - _NUMBER_MARGIN_PT / 2,
    )
    placing, placed = fit(facts.finished, inner)
    rings = tuple(placing.ring(patch.shown) for patch in facts.placed)
    widths, heights = grid_lines(facts)
    xs = _running([to_float(width) for width in widths], placed.width_pt, placed.x_pt)
    ys = _running([to_float(height) for height in heights], placed.height_pt, placed.y_pt)
    upright = tuple(((x, placed.y_pt), (x, placed.bottom_pt)) for x in xs)
    level = tuple(((placed.x_pt, y), (placed.right_pt, y)) for y in ys)
    marks: list[Mark] = [
        Path(rings, stroke=RULE, stroke_width_pt=_outlines(rings, placed).stroke_width_pt),
        Path(upright + level, closed=False, stroke=INK, stroke_width_pt=0.6 if len(xs) + len(ys) < 60 else 0.3),
        _edge(placed),
        *_numbers_above(facts, widths, xs, placed),
        *_numbers_beside(facts, heights, ys, placed),
    ]
    filled = Box(box.x_pt, box.y_pt, placed.right_pt - box.x_pt, placed.bottom_pt - box.y_pt)
    return Figure(describe_grid_picture(facts), tuple(marks)), filled


def _running(sizes: Sequence[float], length_pt: float, start_pt: float) -> list[float]:
    """Where each line stands when the sizes share the length."""
    whole = sum(sizes)
    places = [start_pt]
    for size in sizes:
        places.append(places[-1] + size / whole * length_pt)
    return places


_NUMBER: Final = TextStyle(SMALL_PT, "regular", QUIET)


def _numbers_above(facts: BlockFacts, widths: Sequence[Exact], xs: Sequence[float], placed: Box) -> list[Mark]:
    """A number over each column; over the first alone when they are all alike and narrow, none where none fits."""
    marks: list[Mark] = []
    for place, width in enumerate(widths):
        words = drafted_length(width, facts.unit, words_of(facts))
        fits = width_of(words, _NUMBER) + 2 <= xs[place + 1] - xs[place]
        if fits:
            marks += line_centred(words, (xs[place] + xs[place + 1]) / 2, placed.y_pt - 7, _NUMBER)
        elif place == 0:
            marks += line(words, xs[0], placed.y_pt - 4, _NUMBER)
            if facts.cell is not None:
                break
    return marks


def _numbers_beside(facts: BlockFacts, heights: Sequence[Exact], ys: Sequence[float], placed: Box) -> list[Mark]:
    marks: list[Mark] = []
    for place, height in enumerate(heights):
        middle_pt = (ys[place] + ys[place + 1]) / 2
        if place and ys[place + 1] - ys[place] < _NUMBER.size_pt:
            continue
        marks += line_ending(
            drafted_length(height, facts.unit, words_of(facts)),
            placed.x_pt - 4,
            middle_pt + _NUMBER.capitals_pt / 2,
            _NUMBER,
        )
    return marks
