"""Which way each patch is cut, so that the outer edges of the block lie on the straight grain; and what stays bias.

A raw edge on the bias stretches. Inside a block the seams hold it; the outside edges of a block have nothing that holds
them until it is joined, so there the straight grain decides how a patch is cut.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from functools import lru_cache
from typing import Annotated, Literal

from msgspec import Meta, Struct

from blockdsl.analysis.letters import Lettered
from blockdsl.cutting.curved import box_for_curved
from blockdsl.cutting.ways import Way, on_the_bias, ways_to_cut
from blockdsl.geometry import Exact, Polygon, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import (
    Point,
    bounding_box,
    clockwise,
    cross,
    dot,
    drop_straight_corners,
    edges,
    step,
    translate,
)
from blockdsl.model import BlockDesign
from blockdsl.record import Letter, Record, Rest, says

Ways = Mapping[str, Way]
"""For each letter the way in which its patches are cut."""


Biased = Literal["all", "long", "short", "some"]


class Bias(Record, frozen=True):
    """Patches of one letter with edges on the bias, as they are cut."""

    label: Letter
    which: Annotated[Biased, says("All of the edges, all long or all short ones, or other ones; `lengths` has each.")]
    lengths: Annotated[tuple[Exact, ...], says("Finished lengths of the edges on the bias."), Meta(min_length=1)]
    edges: Annotated[int, says("How many edges the patches have."), Meta(ge=3)]
    outside: Annotated[Rest, says("How many of the patches have such an edge on the outside of the block.")]


class GrainPlan(Struct, frozen=True):
    """How the patches of a block are cut: by letter, and by their places those that are cut another way."""

    ways: Ways
    exceptions: Mapping[int, Way]


def plan_grain(design: BlockDesign, lettered: Lettered) -> GrainPlan:
    """The way for each letter, and for each patch at the edge of the block that another way suits better."""
    ways = choose_ways(design, lettered)
    return GrainPlan(ways, ways_at_the_edge(design, lettered, ways))


def choose_ways(design: BlockDesign, lettered: Lettered) -> Ways:
    """For each letter the way that leaves the fewest outer edges of the block on the bias; the usual one among equals.

    What the designer says in a `grain` line goes before that.
    """
    at_the_edge = _at_the_edge(design, lettered)
    said = {choice.letter: choice.edge for choice in design.grains}
    chosen: dict[str, Way] = {}
    for letter, first in lettered.first.items():
        if letter in lettered.curved:
            grain = Point(*lettered.shapes[letter].grain)
            box = box_for_curved(lettered.curved[letter], design.seam, grain)
            chosen[letter] = Way("template", box, "none", grain)
            continue
        ways = ways_to_cut(at_origin(first), design.seam)
        wanted = [way for way in ways if letter in said and _keeps_straight(way, first, said[letter])]
        ways = tuple(wanted) or ways
        patches = at_the_edge.get(letter, ()) if len(ways) > 1 else ()
        chosen[letter] = _straightest(ways, first, patches)
    return chosen


def ways_at_the_edge(design: BlockDesign, lettered: Lettered, ways: Ways) -> dict[int, Way]:
    """Patches, by their places in the block, that are cut another way than the others of their letter.

    They lie outside with an edge that the usual way would leave on the bias and another way does not. What the designer
    says in a `grain` line holds for all patches of the letter.
    """
    said = {choice.letter for choice in design.grains}
    found: dict[int, Way] = {}
    for letter, patches in _at_the_edge(design, lettered).items():
        if letter in said:
            continue
        first = lettered.first[letter]
        others = ways_to_cut(at_origin(first), design.seam)
        for patch in patches if len(others) > 1 else ():
            if _outer_bias(ways[letter].grain, first, patch):
                way = _straightest((ways[letter], *others), first, (patch,))
                if way != ways[letter]:
                    found[patch.place] = way
    return found


def _straightest(ways: Sequence[Way], first: Polygon, patches: Sequence[_AtTheEdge]) -> Way:
    return min(ways, key=lambda way: sum(_outer_bias(way.grain, first, each) for each in patches))


def has_a_choice(patch: Polygon, allowance: Fraction) -> bool:
    """Whether a `grain` line means anything for a patch: its long and its short edges can be kept straight in turn."""
    ways = ways_to_cut(at_origin(patch), allowance)
    kept = [{edge for edge in ("long", "short") if _keeps_straight(way, patch, edge)} for way in ways]
    return {"long"} in kept and {"short"} in kept


def bias_of(
    design: BlockDesign, lettered: Lettered, plan: GrainPlan, loose: Collection[int], slanted: Collection[int] = ()
) -> tuple[Bias, ...]:
    """What is cut on the bias, letter by letter; nothing for letters of which all edges are straight.

    What a method makes is cut as squares and strips, and has no edge on the bias until it is sewn; paper holds the
    edges of what is sewn to it. Only strip sets that are cut at 45° have such edges, at the ends of their segments
    (`slanted` are those patches): their strips run along the axes of the block.
    """
    ways, exceptions = plan.ways, plan.exceptions
    by_themselves = {lettered.letters[index] for index in loose}
    from_strips = {lettered.letters[index] for index in slanted}
    at_the_edge = _at_the_edge(design, lettered)
    found = []
    for letter, first in lettered.first.items():
        if letter in lettered.curved:  # a curve runs through every direction: it is eased in anyhow
            continue
        if letter not in by_themselves and letter not in from_strips:
            continue
        outline = clockwise(drop_straight_corners(first))
        sides = [step(a, b) for a, b in edges(outline)]
        is_cut = letter in by_themselves
        grain = ways[letter].grain if is_cut else Point(Fraction(1), Fraction(0))
        biased = [side for side in sides if on_the_bias(side, grain)]
        lengths = tuple(square_root(dot(side, side)) for side in biased)
        if lengths:
            patches = at_the_edge.get(letter, ()) if is_cut else ()
            grains = (exceptions[each.place].grain if each.place in exceptions else grain for each in patches)
            outside = sum(_outer_bias(laid, first, each) > 0 for laid, each in zip(grains, patches, strict=True))
            found.append(Bias(letter, _which(biased, sides), lengths, len(sides), outside))
    return tuple(found)


def _which(biased: Sequence[Point], sides: Sequence[Point]) -> Biased:
    if len(biased) == len(sides):
        return "all"
    squares = [dot(side, side) for side in sides]
    found = [dot(side, side) for side in biased]
    longest, shortest = max(squares), min(squares)
    if all(square == longest for square in found) and len(found) == squares.count(longest):
        return "long"
    if all(square == shortest for square in found) and len(found) == squares.count(shortest):
        return "short"
    return "some"


def at_origin(patch: Polygon) -> Polygon:
    """The patch moved to the top left, so that what is found out about it once can be remembered."""
    left, top, _, _ = bounding_box(patch)
    return translate(patch, -left, -top)


# --- at the edge of the block ----------------------------------------------------------------------


class _AtTheEdge(Struct, frozen=True):
    """A patch of a block, by its place in the list, and which of its sides, by their places, lie on the outside."""

    place: int
    sides: tuple[Point, ...]
    outer: tuple[int, ...]


def _at_the_edge(design: BlockDesign, lettered: Lettered) -> dict[str, list[_AtTheEdge]]:
    """By letter; patches of fabrics that must stand upright are left out, for nothing is left to choose for them."""
    upright = {fabric.name for fabric in design.fabrics if fabric.directional}
    said = {choice.letter for choice in design.grains}
    plain = {
        letter
        for letter, shape in lettered.shapes.items()
        if letter in lettered.curved
        or (shape.kind in ("square", "rectangle") and (not shape.grain[0] or not shape.grain[1]))
        # Their edges along the axes are straight in the usual way, and no other edge lies outside.
        or (shape.kind in ("half-square triangle", "quarter-square triangle") and letter not in said)
    }
    found: dict[str, list[_AtTheEdge]] = {}
    for place, (patch, letter) in enumerate(zip(design.patches, lettered.letters, strict=True)):
        if letter in plain or patch.fabric in upright:
            continue
        if not any(_is_outer(a, b, design) for a, b in edges(patch.outline)):
            continue
        outline = clockwise(drop_straight_corners(patch.outline))
        outer = tuple(side for side, (a, b) in enumerate(edges(outline)) if _is_outer(a, b, design))
        if outer:
            sides = tuple(step(a, b) for a, b in edges(outline))
            found.setdefault(letter, []).append(_AtTheEdge(place, sides, outer))
    return found


def _is_outer(a: Point, b: Point, design: BlockDesign) -> bool:
    return (a.x == b.x and a.x in (0, design.width)) or (a.y == b.y and a.y in (0, design.height))


def _outer_bias(grain: Point, first: Polygon, patch: _AtTheEdge) -> int:
    """How many outer edges of a patch lie on the bias, cut as the first of its letter and turned the best way."""
    turned = [_turned(grain, cos, sin) for cos, sin in _turns(_sides(first), patch.sides)]
    return min((sum(on_the_bias(patch.sides[place], laid) for place in patch.outer) for laid in turned), default=0)


@lru_cache(256)
def _sides(outline: Polygon) -> tuple[Point, ...]:
    return tuple(step(a, b) for a, b in edges(clockwise(drop_straight_corners(outline))))


@lru_cache(1024)
def _turns(sides: tuple[Point, ...], place: tuple[Point, ...]) -> tuple[tuple[Exact, Exact], ...]:
    """Cosine and sine, both times the first side squared, of each turn that lays a piece onto a patch.

    Patches of a letter lie alike in many places of a block, so it is worked out once. With f the first side and g the
    one that it comes to lie on, cos = f·g/|f|², sin = f×g/|f|².
    """
    count, first = len(sides), sides[0]
    scale = dot(first, first)
    found: list[tuple[Exact, Exact]] = []
    for turn in range(count):
        cos, sin = dot(first, place[turn]), cross(first, place[turn])
        turned = (_turned(side, cos, sin) for side in sides)
        if all(
            each == Point(scale * place[(i + turn) % count].x, scale * place[(i + turn) % count].y)
            for i, each in enumerate(turned)
        ):
            found.append((cos, sin))
    return tuple(found)


def _turned(side: Point, cos: Exact, sin: Exact) -> Point:
    return Point(cos * side.x - sin * side.y, sin * side.x + cos * side.y)


def _keeps_straight(way: Way, patch: Polygon, edge: str) -> bool:
    """Whether the longest edges, or the shortest, lie along the grain of the way: a strip's own edges, no cuts."""
    sides = [step(a, b) for a, b in edges(clockwise(drop_straight_corners(patch)))]
    squares = [dot(side, side) for side in sides]
    wanted = max(squares) if edge == "long" else min(squares)
    return all(
        not on_the_bias(side, way.grain) for side, square in zip(sides, squares, strict=True) if square == wanted
    )
