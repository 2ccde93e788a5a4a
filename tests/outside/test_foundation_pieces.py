"""The pieces for foundation papers, laid with shapely as the step says: each covers its area and the allowance.

The first piece lies right side up over its area. Each other one lies with an edge one seam allowance beyond its line,
is sewn on the line and folded over it. Both may be a little out of place: ROOM along the line, and the edge up to ROOM
further beyond it than it need be. How far a piece reaches beyond what it must cover is common practice, no source.
"""

from collections.abc import Iterator
from dataclasses import replace
from functools import lru_cache
from itertools import pairwise
from math import atan2, degrees, hypot
from typing import Any

import pytest
from hypothesis import assume, given, settings
from shapely import affinity
from shapely.geometry import Polygon, box
from shapely.ops import unary_union

from blockdsl.facts import BlockFacts
from blockdsl.facts.foundationfacts import PaperFacts, PaperPatch
from blockdsl.geometry import to_float
from blockdsl.geometry.fraction import Fraction, read_fraction
from tests.outside.virtual.shapes import CELLS, OBLONG
from tests.properties.test_foundation_blocks import slashed
from tests.unit.model.any_block import AnyBlock, any_blocks
from tests.unit.model.blocks import block, block_of, read, written

NEAR = 1e-6
FAR = 1e3
ROOM = {"in": 0.125, "cm": 0.375}
LEAST_ANGLE = 15.0
"""Where corners are sharper, the margin beyond them belongs to one piece on paper and to another in fabric: a seam is
not sewn so far beyond the end of its line."""

TERN = """unit tern
  grid 6 x 6
  patch fog at 0,0 3,0 3,2 0,1
  patch slate at 0,1 3,2 3,4 0,5
  patch fog at 0,5 3,4 3,6 0,6
  patch fog at 3,0 6,0 6,3 3,1
  patch lantern at 3,1 6,3 6,6 3,6"""


def shape_of(polygon: Any) -> Polygon:
    return Polygon([(to_float(corner.x), to_float(corner.y)) for corner in polygon])


def upright(shape: Any, patch: PaperPatch) -> Any:
    """The shape turned and moved so that the patch's line lies along the x axis with the patch below it (y > 0)."""
    assert patch.seam is not None
    (ax, ay), (bx, by) = ((to_float(end.x), to_float(end.y)) for end in patch.seam)
    angle = -degrees(atan2(by - ay, bx - ax))
    area = affinity.rotate(affinity.translate(shape_of(patch.outline), -ax, -ay), angle, origin=(0, 0))
    if area.centroid.y < 0:
        angle += 180
    return affinity.rotate(affinity.translate(shape, -ax, -ay), angle, origin=(0, 0))


def back(shape: Any, patch: PaperPatch) -> Any:
    """What `upright` turned, turned back."""
    assert patch.seam is not None
    (ax, ay), (bx, by) = ((to_float(end.x), to_float(end.y)) for end in patch.seam)
    angle = -degrees(atan2(by - ay, bx - ax))
    area = affinity.rotate(affinity.translate(shape_of(patch.outline), -ax, -ay), angle, origin=(0, 0))
    if area.centroid.y < 0:
        angle += 180
    return affinity.translate(affinity.rotate(shape, -angle, origin=(0, 0)), ax, ay)


def cloths(patch: PaperPatch) -> Iterator[Any]:
    """The piece with the edge that is laid along the line on the x axis, the rest below it, its middle at x = 0."""
    shorter, longer = (to_float(side) for side in patch.cut)
    if patch.subcut == "once":
        half = shorter / 2**0.5
        assert patch.cut[0] == patch.cut[1]
        yield Polygon([(-half, 0), (half, 0), (0, half)])
    else:
        along, deep = (shorter, longer) if patch.edge == "short" else (longer, shorter)
        yield box(-along / 2, 0, along / 2, deep)


def within_reach(area: Any, seam: float) -> Any:
    """An area and all that is no further from it than the allowance."""
    return area.buffer(seam, quad_segs=64)


def covers(cloth: Any, wanted: Any) -> bool:
    return bool(wanted.difference(cloth.buffer(NEAR)).area < NEAR)


def laid(patch: PaperPatch, seam: float, room: float) -> list[Any]:
    """The piece folded open over its area in the places where a careful hand may put it."""
    wanted = upright(within_reach(shape_of(patch.outline), seam), patch)
    left, _, right, _ = wanted.bounds
    found = []
    for cloth in cloths(patch):
        for beyond in (seam, seam + room):
            middles = {(left + right) / 2}
            if patch.subcut == "once":  # its tips lie where the tips of the area lie
                area = upright(shape_of(patch.outline), patch)
                middles = {(area.bounds[0] + area.bounds[2]) / 2}
            for middle in middles:
                aside = () if beyond > seam and patch.subcut == "once" else (-room, room)
                found += [affinity.translate(cloth, middle + x, -beyond) for x in (0.0, *aside)]
    return found


def faults_of(paper: PaperFacts, facts: BlockFacts) -> list[str]:
    """The areas of a paper that their pieces do not cover, laid in any of the places; and the paper as a whole."""
    seam, room = to_float(facts.seam), ROOM[facts.unit]
    faults: list[str] = []
    faces: list[Any] = []
    for place, patch in enumerate(paper.patches):
        area = shape_of(patch.outline)
        later = unary_union([side_of(other) for other in paper.patches[place + 1 :]])
        share = printed(paper, seam).difference(later)
        if patch.seam is None:
            piece, side = first_laid(patch, seam, room, share), box(-FAR, -FAR, FAR, FAR)
            if piece is None:
                faults.append(f"{patch.number}: {patch.cut}")
                continue
        else:
            wanted = upright(within_reach(area, seam), patch)
            short = [cloth for cloth in laid(patch, seam, room) if not covers(cloth, wanted)]
            if short:
                faults.append(f"{patch.number}: {patch.cut} lacks {wanted.difference(short[-1]).area:.3f}")
            piece, side = back(shifted(patch, seam, share), patch), side_of(patch)
        faces = [face.difference(side) for face in faces] + [piece.intersection(side)]
    whole = unary_union([face.buffer(NEAR, join_style="mitre") for face in faces])
    if sharpest(paper) >= LEAST_ANGLE and not covers(whole, printed(paper, seam)):
        faults.append(f"{paper.letter}: not all of the paper is covered")
    return faults


def sharpest(paper: PaperFacts) -> float:
    """The angle of its sharpest corner, in degrees."""
    angles = []
    for patch in paper.patches:
        corners = list(shape_of(patch.outline).exterior.coords)[:-1]
        for i, (x, y) in enumerate(corners):
            (ax, ay), (bx, by) = corners[i - 1], corners[(i + 1) % len(corners)]
            turn = degrees(atan2(by - y, bx - x) - atan2(ay - y, ax - x)) % 360
            angles.append(min(turn, 360 - turn))
    return min(angles)


def printed(paper: PaperFacts, seam: float) -> Any:
    """What a paper is cut to, sharp points trimmed."""
    return shape_of(paper.sewing).buffer(seam, join_style="mitre", mitre_limit=1.4143)


def side_of(patch: PaperPatch) -> Any:
    """All that lies on the side of its line to which a piece is folded open."""
    return back(box(-FAR, 0, FAR, FAR), patch)


def shifted(patch: PaperPatch, seam: float, outline: Any) -> Any:
    """The piece folded open, its edge an allowance beyond the line, shifted along it to cover its share of an outline.

    It may lie anywhere along its line: the step says to shift it until it covers.
    """
    (cloth,) = cloths(patch)
    area = shape_of(patch.outline)
    share = area.buffer(seam, join_style="mitre", mitre_limit=1000).intersection(outline)
    wanted = upright(within_reach(area, seam).union(share), patch).intersection(box(-FAR, 0, FAR, FAR))
    if patch.subcut == "once":
        wanted = upright(area, patch)
    left, _, right, _ = wanted.bounds
    return affinity.translate(cloth, (left + right) / 2, -seam)


def first_laid(patch: PaperPatch, seam: float, room: float, share: Any) -> Any:
    """The first piece over its area, turned as it covers best; None when no turn covers it in every place.

    It is given back shifted to cover its share of the paper, too.
    """
    area = shape_of(patch.outline)
    wanted = within_reach(area, seam)
    share = area.buffer(seam, join_style="mitre", mitre_limit=1000).intersection(share)
    corners = list(area.exterior.coords)
    steps = [(bx - ax, by - ay) for (ax, ay), (bx, by) in pairwise(corners)]
    for angle in {0.0, *(degrees(atan2(y, x)) for x, y in steps if hypot(x, y) > NEAR)}:
        turned, whole = (affinity.rotate(each, -angle, origin=(0, 0)) for each in (wanted, wanted.union(share)))
        for cloth in _first_cloths(patch):
            if patch.subcut == "once":
                places = [best := _over(cloth, affinity.rotate(area, -angle, origin=(0, 0)))]
            else:
                x, y = _middle(turned)
                places = [(x + dx, y + dy) for dx in (-room, 0, room) for dy in (-room, 0, room)]
                best = _middle(whole)
            if all(covers(affinity.translate(cloth, *place), turned) for place in places):
                return affinity.rotate(affinity.translate(cloth, *best), angle, origin=(0, 0))
    return None


def _middle(shape: Any) -> tuple[float, float]:
    left, top, right, bottom = shape.bounds
    return (left + right) / 2, (top + bottom) / 2


def _over(cloth: Any, area: Any) -> tuple[float, float]:
    """How to move a triangle so that the middle of its inscribed circle lies on that of another."""
    (ax, ay), (bx, by) = _incentre(cloth), _incentre(area)
    return bx - ax, by - ay


def _incentre(triangle: Any) -> tuple[float, float]:
    corners = triangle.exterior.coords[:3]
    weights = [hypot(bx - ax, by - ay) for (ax, ay), (bx, by) in ((corners[i - 2], corners[i - 1]) for i in range(3))]
    x, y = (sum(weight * corner[k] for weight, corner in zip(weights, corners, strict=True)) for k in (0, 1))
    return x / sum(weights), y / sum(weights)


def _first_cloths(patch: PaperPatch) -> Iterator[Any]:
    shorter, longer = (to_float(side) for side in patch.cut)
    if patch.subcut == "once":
        for x in (0, shorter):
            for y in (0, shorter):
                yield Polygon([(x, y), (shorter - x, y), (x, shorter - y)])
    else:
        yield box(-shorter / 2, -longer / 2, shorter / 2, longer / 2)
        yield box(-longer / 2, -shorter / 2, longer / 2, shorter / 2)


def all_faults(facts: BlockFacts) -> list[str]:
    return [fault for found in facts.foundations for paper in found.papers for fault in faults_of(paper, facts)]


@lru_cache
def tern(size: str) -> BlockFacts:
    return block("row tern tern~", "row tern>> tern", "make tern as foundation", size=size, above=TERN)


@pytest.mark.parametrize("size", ["4 in", "8 in", "12 in", "10 cm", "30 cm"])
def test_slanted_pieces_laid_along_their_seams_cover_their_areas(size: str) -> None:
    assert all_faults(tern(size)) == []


@pytest.mark.parametrize("height", ["2 in", "6 in", "7 1/2 in", "15 cm"])
@pytest.mark.parametrize("shape", CELLS)
def test_pieces_of_every_shape_cover_their_areas(shape: str, height: str) -> None:
    number, unit = height.rsplit(" ", 1)
    high = sum((read_fraction(part) for part in number.split()), Fraction(0))
    wide = high * (2 if shape in OBLONG else 1)
    size = f"{written_length(wide)} x {written_length(high)} {unit}"
    facts = block(f"row {CELLS[shape]}", f"make {shape} as foundation", size=size)
    assert len(facts.foundations) == 1
    assert all_faults(facts) == []


def written_length(length: Fraction) -> str:
    whole, part = divmod(length, 1)
    return f"{whole} {part}" if part else str(whole)


def test_geese_of_6_by_3_inches_have_skies_that_reach_their_corners() -> None:
    """By hand: the sky's legs are 3 in and its long edge, the seam, 4.24 in; with 1/4 in all round 5.45 x 2.72 in."""
    facts = block("row (geese lantern on fog)", "make geese as foundation", size="6 x 3 in")
    assert all_faults(facts) == []


@given(slashed())
@settings(max_examples=25)
def test_pieces_of_whatever_is_cut_by_lines_right_across_cover_their_areas(unit: str) -> None:
    facts = block_of(written("row slashed", "make slashed as foundation", size="12 in", above=unit))
    assert all_faults(facts) == []


@given(any_blocks())
@settings(max_examples=8)
def test_pieces_of_any_block_of_rows_and_shapes_cover_their_areas(any_block: AnyBlock) -> None:
    facts, problems = read(replace(any_block, choices=()).text() + "  make whole as foundation\n")
    assume(not {"foundation-too-many", "name-unknown"} & {problem.code for problem in problems})
    assert all_faults(facts.blocks[0]) == []
