"""What lies on point in the block lies upright on the table while it is sewn."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise
from math import lcm

from msgspec.structs import replace

from blockdsl.geometry import Point, Polygon
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import bounding_box, edges
from blockdsl.model import Patch
from blockdsl.sewing.steps.action import Position
from blockdsl.sewing.steps.directions import ORDER, outward, towards
from blockdsl.sewing.steps.step import Stage, StepSeam, Variant


def upright(variant: Variant) -> Variant:
    """The same, rotated by an eighth of a turn when every seam in it lies at 45 degrees; else as it is.

    Units:  rotated, every length is longer by the root of 2, so that no number gets a root by it.
    """
    outline = variant.outline
    if outline is None or variant.is_rectangle or any(patch.curved for patch in variant.picture):
        return variant
    lines = [pair for stage in variant.stages for seam in stage.seams for pair in pairwise(seam.line)]
    if not lines or not all(_is_diagonal(*line) for line in lines):
        return variant
    if len(outline) == 3 or len(variant.picture) == len(variant.ingredients) == 2:
        return variant  # a triangle is told by its long edge; two patches are placed on one another
    return _moved(variant, _rotated)


def marked_edge(variant: Variant) -> tuple[Position, Point]:
    """The edge that a mark is pinned to: where it is as the result lies on the table, and the way out across it.

    The way is that in the block. It is the edge at the top, or where no single one is there, the next that is alone.
    """
    lying, own = upright(variant).outline, variant.outline
    if lying is not None and own is not None:
        ways = [towards(outward(*edge)) for edge in edges(lying)]
        for place in ORDER:
            if ways.count(place) == 1:
                return place, outward(*list(edges(own))[ways.index(place)])
    return "top", Point(Fraction(0), Fraction(-1))


def in_whole_numbers(variant: Variant) -> tuple[Variant, int]:
    """The same, so many times as large that every corner has whole numbers, which are quicker to compare.

    Where roots are among them it stays as it is, and 1 time as large.
    """
    corners = [corner for patch in variant.picture for corner in patch.outline]
    corners += [place for stage in variant.stages for seam in stage.seams for place in _places(seam)]
    corners += [place for stage in variant.stages for pair in stage.closes for place in pair]
    numbers = [number for corner in corners for number in corner]
    if any(patch.curved for patch in variant.picture) or not all(isinstance(number, Fraction) for number in numbers):
        return variant, 1
    times = lcm(*{number.denominator for number in numbers if isinstance(number, Fraction)})

    def whole(place: Point) -> Point:
        return Point(int(place.x * times), int(place.y * times))  # type: ignore[arg-type]  # whole numbers are exact

    return _moved(variant, whole), times


def _places(seam: StepSeam) -> tuple[Point, ...]:
    more = (seam.stop, seam.begin, None if seam.fan is None else seam.fan.place)
    return (*seam.line, *seam.dots, *(place for place in more if place is not None))


def _moved(variant: Variant, turn: Callable[[Point], Point]) -> Variant:
    """Everything turned in the same way, the box again at (0, 0)."""
    corners = tuple(turn(corner) for patch in variant.picture for corner in patch.outline)
    left, top, right, bottom = bounding_box(corners)

    def point(place: Point) -> Point:
        turned = turn(place)
        return Point(turned.x - left, turned.y - top)

    def ring(places: Sequence[Point]) -> Polygon:
        return tuple(map(point, places))

    def picture(patches: Sequence[Patch]) -> tuple[Patch, ...]:
        return tuple(Patch(patch.fabric, ring(patch.outline), span=patch.span) for patch in patches)

    def seam(old: StepSeam) -> StepSeam:
        return replace(
            old,
            line=ring(old.line),
            over=turn(old.over),
            arrow=turn(old.arrow),
            stop=None if old.stop is None else point(old.stop),
            begin=None if old.begin is None else point(old.begin),
            fan=old.fan and replace(old.fan, place=point(old.fan.place)),
            dots=ring(old.dots),
        )

    def stage(old: Stage) -> Stage:
        closes = tuple((point(start), point(end)) for start, end in old.closes)
        return replace(old, seams=tuple(map(seam, old.seams)), closes=closes)

    return replace(
        variant,
        extent=(right - left, bottom - top),
        outline=variant.outline and ring(variant.outline),
        picture=picture(variant.picture),
        ingredients=tuple(
            replace(
                part, picture=picture(part.picture), outline=part.outline and ring(part.outline), top=turn(part.top)
            )
            for part in variant.ingredients
        ),
        stages=tuple(map(stage, variant.stages)),
    )


def _is_diagonal(start: Point, end: Point) -> bool:
    across, down = end.x - start.x, end.y - start.y
    return across in (down, -down)


def _rotated(place: Point) -> Point:
    """A step or a place after an eighth of a turn clockwise, made longer by the root of 2."""
    return Point(place.x - place.y, place.x + place.y)
