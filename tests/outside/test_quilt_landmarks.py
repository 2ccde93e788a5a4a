"""How a block lies in a quilt, as the words say it, tried by shapely on the block in every way that it can lie.

Every block of the library, in every turn: what is said of it holds as it lies, and of no other way in which it looks
different.
"""

from __future__ import annotations

import json
import re
from functools import lru_cache
from pathlib import Path
from typing import Final

import pytest
from shapely import LineString, Point, Polygon, affinity, box, unary_union
from shapely.geometry.base import BaseGeometry

from blockdsl import pipeline
from blockdsl.analysis import FileReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts.block_landmark import BlockLandmark, landmarks_of
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.geometry import to_float
from blockdsl.geometry.symmetry import HALF_TURN, IDENTITY, QUARTER_ANTICLOCKWISE, QUARTER_CLOCKWISE, Symmetry
from blockdsl.wording import messages
from tests.kept import once_in_a_run

ROOT: Final = Path(__file__).resolve().parents[2]
FILES: Final = sorted((ROOT / "library").glob("*.block"))
TURNS: Final[dict[int, Symmetry]] = {
    0: IDENTITY,
    90: QUARTER_CLOCKWISE,
    180: HALF_TURN,
    270: QUARTER_ANTICLOCKWISE,
}
NEAR: Final = 1e-6
Laid = dict[str, BaseGeometry]


@lru_cache
def blocks(path: Path) -> tuple[BlockFacts, ...]:
    problems = Problems()
    return pipeline.run(Source(str(path), path.read_text(encoding="utf-8")), FileReader(ROOT), problems).facts.blocks


def laid(block: BlockFacts, degrees: int) -> Laid:
    """What of the block is of each fabric, the block turned clockwise about its center, which is the origin."""
    width, height = (to_float(side) for side in block.finished)
    found: dict[str, list[BaseGeometry]] = {}
    for patch in block.placed:
        shape = Polygon([(to_float(x) - width / 2, to_float(y) - height / 2) for x, y in patch.outline])
        # y runs downward, so that what shapely turns anticlockwise is turned clockwise on the page
        found.setdefault(patch.fabric, []).append(affinity.rotate(shape, degrees, origin=(0, 0)))
    return {fabric: unary_union(shapes).buffer(NEAR) for fabric, shapes in found.items()}


def holds(mark: BlockLandmark, block: BlockFacts, here: Laid) -> bool:
    """Whether a landmark is true of a block as it lies."""
    x1, y1, x2, y2 = unary_union(list(here.values())).bounds
    cloth = here[mark.fabric]
    width, height = x2 - x1, y2 - y1
    sides = {
        "top": LineString([(x1, y1), (x2, y1)]),
        "bottom": LineString([(x1, y2), (x2, y2)]),
        "left": LineString([(x1, y1), (x1, y2)]),
        "right": LineString([(x2, y1), (x2, y2)]),
    }
    small = min(width, height) / 500
    corners = {
        f"{v}-{h}": box(x, y, x + (small if h == "left" else -small), y + (small if v == "upper" else -small))
        for v, y in (("upper", y1), ("lower", y2))
        for h, x in (("left", x1), ("right", x2))
    }
    about = {"top": (0, -1), "bottom": (0, 1), "left": (-1, 0), "right": (1, 0)}
    about |= {f"{v}-{h}": (x, y) for v, y in (("upper", -1), ("lower", 1)) for h, x in (("left", -1), ("right", 1))}
    for place in mark.places:
        if mark.kind == "edge":
            inside = affinity.scale(sides[place], 0.9999, 0.9999).buffer(NEAR)
            seen = cloth.buffer(5 * NEAR).covers(inside)
        elif mark.kind == "corner":
            seen = corners[place].difference(cloth.buffer(5 * NEAR)).area < NEAR * corners[place].area
        elif mark.kind == "middle":
            x, y = sides[place].centroid.coords[0]
            inside = affinity.scale(sides[place], 0.01, 0.01, origin=(x, y)).buffer(NEAR)
            seen = cloth.buffer(5 * NEAR).covers(inside)
        else:
            x, y = about[place]
            seen = cloth.covers(Point(x * width / 200, y * height / 200).buffer(min(width, height) / 2000))
        if not seen:
            return False
    return True


def alike(one: Laid, other: Laid) -> bool:
    if set(one) != set(other):
        return False
    return all(one[fabric].symmetric_difference(other[fabric]).area < 1e-4 for fabric in one)


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_what_is_said_of_a_block_holds_as_it_lies_and_in_no_other_way(path: Path) -> None:
    for block in blocks(path):
        square = block.finished[0] == block.finished[1]
        turns = [0, 90, 180, 270] if square else [0, 180]
        ways = {degrees: laid(block, degrees) for degrees in turns}
        for degrees in turns:
            marks = landmarks_of(block, "", TURNS[degrees])
            others = [ways[other] for other in turns if not alike(ways[other], ways[degrees])]
            if block.appliques or any(mark.kind == "mark" for mark in marks):
                continue
            where = f"{block.name} at {degrees}"
            assert bool(marks) == bool(others), where
            assert all(holds(mark, block, ways[degrees]) for mark in marks), where
            for other in others:
                assert not all(holds(mark, block, other) for mark in marks), where
    marked(path)  # while its blocks are at hand: the next test counts them


def marked(path: Path) -> list[str]:
    """The blocks of a file that are told by a mark at their top."""

    def found() -> str:
        landmarks = {block.name: landmarks_of(block, "", IDENTITY) for block in blocks(path)}
        return json.dumps([name for name, marks in landmarks.items() if any(mark.kind == "mark" for mark in marks)])

    told: list[str] = json.loads(once_in_a_run(found, "marked", path.stem))
    return told


def test_few_blocks_need_a_mark_at_their_top() -> None:
    found = [name for path in FILES for name in marked(path)]
    assert len(found) <= 6, found


def test_every_place_that_is_said_has_a_word() -> None:
    for language in ("en-US", "en-GB"):
        words = messages(language)
        for place in ("top", "right", "bottom", "left", "upper-left", "upper-right", "lower-left", "lower-right"):
            assert re.fullmatch(r"[a-z ]+", words(f"place-{place}"))
