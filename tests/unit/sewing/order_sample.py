"""Blocks for the tests of the piecing order, drawn in words or laid patch by patch, and orders in words."""

from __future__ import annotations

import random
from collections.abc import Iterable, Sequence

from blockdsl.analysis import TextReader, analyse
from blockdsl.diagnostics import Problems, Source, Span
from blockdsl.geometry import Exact, Point, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import clockwise, drop_straight_corners
from blockdsl.model import BlockDesign, Patch
from blockdsl.sewing.order import Assembly, Piece, Unsewable, count_seams, find_order, rebuild
from tests.unit.model.blocks import written

Place = tuple[Exact | int, Exact | int]
Step = tuple[tuple[int, int], tuple[int, int]]
"""One step along an outline, from corner to corner of squared paper."""

ROOT_2 = square_root(2)
ROOT_3 = square_root(3)


def drawn(*lines: str, size: str = "12 in", above: str = "") -> BlockDesign:
    """The block of these lines, as a file says it."""
    return read_block(written(*lines, size=size, above=above))


def read_block(text: str) -> BlockDesign:
    """The only block of a file, in which nothing may be wrong but warnings."""
    problems = Problems()
    program = analyse(Source("mine.block", text), TextReader(), problems)
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    return program.blocks[0]


def laid(patches: Iterable[tuple[str, Sequence[Place]]], width: Exact | int, height: Exact | int) -> BlockDesign:
    """A block of free patches, each a fabric and its corners."""
    across, down = _exact(width), _exact(height)
    return BlockDesign(
        name="Mine",
        span=Span(Source("mine.block", "x"), 0, 1),
        unit="in",
        seam=Fraction(1, 4),
        measure=Fraction(1, 8),
        trim=Fraction(0),
        width=across,  # type: ignore[arg-type]  # a block of a file is rational; for the order it need not be
        height=down,  # type: ignore[arg-type]
        columns=(),
        heights=(),
        cover_area=across * down,
        fabrics=(),
        patches=tuple(
            Patch(fabric, clockwise(tuple(Point(_exact(x), _exact(y)) for x, y in corners)))
            for fabric, corners in patches
        ),
        units=(),
        choices=(),
        colourways=(),
        palette=(),
        notes=(),
    )


def _exact(number: Exact | int) -> Exact:
    return Fraction(number) if isinstance(number, int) else number


def order_of(design: BlockDesign) -> Assembly:
    """The order found, which must rebuild the block."""
    found = find_order(design)
    assert not isinstance(found, Unsewable), found
    assert rebuild(found, design) == ()
    return found


def told(design: BlockDesign) -> str:
    """The order in words: fabrics by their first letters, parts in brackets, `!` after what is not sewn straight."""
    return _told(order_of(design), design)


def _told(node: Assembly, design: BlockDesign) -> str:
    if isinstance(node, Piece):
        return design.patches[node.patch].fabric[0]
    parts = " ".join(_told(part, design) for part in node.parts)
    return f"({parts})" + {"straight": "", "partial": "!partial", "set-in": "!set-in"}[node.kind]


def seams(design: BlockDesign) -> tuple[int, int, int]:
    """How many seams are straight, partial and set in."""
    count = count_seams(order_of(design))
    return count.straight, count.partial, count.set_in


def rectangle(left: int, top: int, right: int, bottom: int) -> list[Place]:
    return [(left, top), (right, top), (right, bottom), (left, bottom)]


def pinwheel_lines(fabrics: str = "fog slate slate slate slate") -> tuple[str, ...]:
    """Four rectangles of 1 × 2 round a square, clockwise from the top left, as lines of a file."""
    centre, *round_it = fabrics.split()
    places = ("0,0 2,0 2,1 0,1", "2,0 3,0 3,2 2,2", "1,2 3,2 3,3 1,3", "0,1 1,1 1,3 0,3")
    arms = [f"patch {fabric} at {place}" for fabric, place in zip(round_it, places, strict=True)]
    return ("grid 3 x 3", f"patch {centre} at 1,1 2,1 2,2 1,2", *arms)


def star_of_diamonds(fabrics: str = "fl") -> BlockDesign:
    """Eight diamonds of side 1 with 45° points, four squares and four triangles: 2 + √2 a side."""
    half = ROOT_2 / 2
    side = 2 + ROOT_2
    centre = side / 2
    one, zero = Fraction(1), Fraction(0)
    rays = [(one, zero), (half, half), (zero, one), (-half, half), (-one, zero), (-half, -half), (zero, -one)]
    rays.append((half, -half))
    following = [*rays[1:], rays[0]]
    notches = [(centre + x, centre + y) for x, y in rays]
    tips = [(centre + a + c, centre + b + d) for (a, b), (c, d) in zip(rays, following, strict=True)]
    patches: list[tuple[str, Sequence[Place]]] = [
        (fabrics[ray % len(fabrics)], [(centre, centre), notches[ray], tips[ray], notches[(ray + 1) % 8]])
        for ray in range(8)
    ]
    patches += [("s", [notches[ray], tips[ray - 1], tips[ray]]) for ray in range(0, 8, 2)]
    corners = {1: (side, side), 3: (zero, side), 5: (zero, zero), 7: (side, zero)}
    patches += [("m", [notches[ray], tips[ray - 1], corner, tips[ray]]) for ray, corner in corners.items()]
    return laid(patches, side, side)


# --- dissections at random ---------------------------------------------------------------------------


def guillotine(rng: random.Random, count: int, side: int = 1 << 12) -> BlockDesign:
    """A square cut right across, again and again, at random."""
    boxes = [(0, 0, side, side)]
    while len(boxes) < count:
        at = max(range(len(boxes)), key=lambda i: _area(boxes[i]) * rng.random())
        left, top, right, bottom = boxes[at]
        if rng.random() < 0.5 and right - left > 1:
            middle = rng.randrange(left + 1, right)
            boxes[at : at + 1] = [(left, top, middle, bottom), (middle, top, right, bottom)]
        elif bottom - top > 1:
            middle = rng.randrange(top + 1, bottom)
            boxes[at : at + 1] = [(left, top, right, middle), (left, middle, right, bottom)]
    return laid([(rng.choice("fls"), rectangle(*box)) for box in boxes], side, side)


def _area(box: tuple[int, int, int, int]) -> int:
    return (box[2] - box[0]) * (box[3] - box[1])


def with_pinwheels(rng: random.Random, count: int, side: int = 8) -> list[list[tuple[int, int]]]:
    """Outlines of up to `count` rectangles, from cuts right across and pinwheels of four round a fifth."""
    boxes = [(0, 0, side, side)]
    for _ in range(20 * count):
        at = rng.randrange(len(boxes))
        left, top, right, bottom = boxes[at]
        if rng.random() < 0.6 and len(boxes) + 4 <= count and right - left > 3 and bottom - top > 3:
            one, two = sorted(rng.sample(range(left + 1, right), 2))
            high, low = sorted(rng.sample(range(top + 1, bottom), 2))
            arms = [
                (left, top, two, high),
                (two, top, right, low),
                (one, low, right, bottom),
                (left, high, one, bottom),
            ]
            new = [*arms, (one, high, two, low)]
            if rng.random() < 0.5:
                new = [(left + right - r, t, left + right - x, b) for x, t, r, b in new]
            boxes[at : at + 1] = new
        elif len(boxes) < count and right - left > 1:
            middle = rng.randrange(left + 1, right)
            boxes[at : at + 1] = [(left, top, middle, bottom), (middle, top, right, bottom)]
        elif len(boxes) < count and bottom - top > 1:
            middle = rng.randrange(top + 1, bottom)
            boxes[at : at + 1] = [(left, top, right, middle), (left, middle, right, bottom)]
    return [[(x, t), (r, t), (r, b), (x, b)] for x, t, r, b in boxes]


def grown_together(rng: random.Random, count: int, across: int = 4, down: int = 3) -> list[list[tuple[int, int]]]:
    """Outlines of `count` patches: squares and half squares joined at random, bends and inward corners and all."""
    pieces: list[frozenset[Step]] = []
    for y in range(down):
        for x in range(across):
            a, b, c, d = (x, y), (x + 1, y), (x + 1, y + 1), (x, y + 1)
            square = [(a, b, c, d)]
            ways: list[Sequence[tuple[tuple[int, int], ...]]] = [square, square, [(a, b, d), (b, c, d)]]
            cells = rng.choice([*ways, [(a, b, c), (a, c, d)]])
            pieces += [frozenset(zip(cell, (*cell[1:], cell[0]), strict=True)) for cell in cells]
    while len(pieces) > count:
        one = rng.choice(pieces)
        neighbours = [other for other in pieces if other != one and any((b, a) in other for a, b in one)]
        other = rng.choice(neighbours)
        both = frozenset((a, b) for a, b in one | other if not ((b, a) in one or (b, a) in other))
        if walked(both) is not None:
            pieces = [piece for piece in pieces if piece not in (one, other)] + [both]
    return [walked(piece) or [] for piece in pieces]


def walked(steps: frozenset[Step]) -> list[tuple[int, int]] | None:
    """The steps as one outline that does not meet itself, or None."""
    onward = dict(steps)
    if len(onward) < len(steps):
        return None
    first = min(onward)
    ring, here = [first], onward[first]
    while here != first:
        ring.append(here)
        here = onward[here]
    return ring if len(ring) == len(steps) else None


def laid_on_paper(outlines: Sequence[Sequence[tuple[int, int]]], rng: random.Random) -> BlockDesign:
    """A block of these outlines, in fabrics at random."""
    width = max(x for outline in outlines for x, _ in outline)
    height = max(y for outline in outlines for _, y in outline)
    patches = []
    for outline in outlines:
        corners = drop_straight_corners(tuple(Point(Fraction(x), Fraction(y)) for x, y in outline))
        patches.append((rng.choice("fl"), [(corner.x, corner.y) for corner in corners]))
    return laid(patches, width, height)
