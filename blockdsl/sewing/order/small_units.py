"""Small units among patches that were drawn one by one: a maker sews these first, before anything takes their edges.

Half squares: two triangles that are a square or a rectangle together, along the diagonal. Hourglasses: four triangles
whose square corners meet in the middle of a square. Striped squares: rectangles side by side that are a square
together. Those that lie upright come first: what looks like a half square on its corner may be the meeting halves of
two hourglasses.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence

from blockdsl.geometry import Exact, Point, sign
from blockdsl.geometry.polygon import dot, step
from blockdsl.model import BlockDesign
from blockdsl.sewing.order.net import Net

Edge = frozenset[int]
"""An edge of a patch, by the corners at its ends."""


def small_units(design: BlockDesign, net: Net, patches: Iterable[int]) -> list[tuple[int, ...]]:
    """The patches of each small unit among `patches`, no patch in two of them."""
    straight = [patch for patch in patches if design.patches[patch].curved is None]
    triangles = {patch: long for patch in straight if (long := _long_edge(net, patch))}
    pairs = list(_half_squares(net, triangles))
    upright = [pair for pair in pairs if not _is_level(net, triangles[pair[0]])]
    hourglasses = list(_hourglasses(net, triangles))
    taken = {patch for unit in (*upright, *hourglasses) for patch in unit}
    tilted = [pair for pair in pairs if not taken.intersection(pair)]
    return [*upright, *hourglasses, *tilted, *_striped_squares(net, straight)]


def _step(net: Net, start: int, end: int) -> Point:
    return step(net.points[start], net.points[end])


def _squared(net: Net, edge: Edge) -> Exact:
    """The length of an edge times itself."""
    way = _step(net, *edge)
    return dot(way, way)


def _is_level(net: Net, edge: Edge) -> bool:
    """Whether an edge is level or upright."""
    way = _step(net, *edge)
    return not sign(way.x) or not sign(way.y)


# --- triangles --------------------------------------------------------------------------------------


def _long_edge(net: Net, patch: int) -> Edge:
    """The edge opposite the square corner of a triangle; empty where there is none."""
    ring = net.rings[patch]
    if len(ring) == 3:
        for corner in ring:
            one, other = (end for end in ring if end != corner)
            if not sign(dot(_step(net, corner, one), _step(net, corner, other))):
                return frozenset((one, other))
    return frozenset()


def _square_corner(net: Net, patch: int, long: Edge) -> int:
    return next(corner for corner in net.rings[patch] if corner not in long)


def _half_squares(net: Net, triangles: Mapping[int, Edge]) -> Iterator[tuple[int, ...]]:
    """Two triangles on the whole of each other's long edge, a rectangle together."""
    on_edge: dict[Edge, list[int]] = defaultdict(list)
    for patch, long in triangles.items():
        on_edge[long].append(patch)
    for long, two in on_edge.items():
        if len(two) == 2:
            one, other = (net.points[_square_corner(net, patch, long)] for patch in two)
            a, b = (net.points[end] for end in long)
            if one.x + other.x == a.x + b.x and one.y + other.y == a.y + b.y:
                yield two[0], two[1]


def _hourglasses(net: Net, triangles: Mapping[int, Edge]) -> Iterator[tuple[int, ...]]:
    """Four triangles about their square corners, an upright square together."""
    about: dict[int, list[int]] = defaultdict(list)
    for patch, long in triangles.items():
        about[_square_corner(net, patch, long)].append(patch)
    for four in about.values():
        longs = [triangles[patch] for patch in four]
        alike = len({_squared(net, long) for long in longs}) == 1
        if len(four) == len(frozenset().union(*longs)) == 4 and alike and all(_is_level(net, long) for long in longs):
            yield tuple(four)


# --- stripes ----------------------------------------------------------------------------------------


def _striped_squares(net: Net, patches: Iterable[int]) -> Iterator[tuple[int, ...]]:
    """Rectangles in a row, each on the whole of the long edge of the one before, a square together."""
    stripes = {patch: long for patch in patches if len(long := _long_edges(net, patch)) == 2}
    on_edge: dict[Edge, list[int]] = defaultdict(list)
    for patch, edges in stripes.items():
        for edge in edges:
            on_edge[edge].append(patch)
    beside: dict[int, list[int]] = {patch: [] for patch in stripes}
    for two in on_edge.values():
        if len(two) == 2:
            beside[two[0]].append(two[1])
            beside[two[1]].append(two[0])
    seen: set[int] = set()
    for first in stripes:
        if first in seen or len(beside[first]) != 1:
            continue
        row = [first]
        while onward := [patch for patch in beside[row[-1]] if patch not in row[-2:]]:
            row += onward
        seen.update(row)
        if _are_a_square(net, row, stripes):
            yield tuple(sorted(row))


def _long_edges(net: Net, patch: int) -> list[Edge]:
    """The two long edges of a rectangle; none of a square, nor of another shape."""
    ring: Sequence[int] = net.rings[patch]
    if len(ring) != 4:
        return []
    ways = [_step(net, ring[place - 1], ring[place]) for place in range(4)]
    if any(sign(dot(ways[place - 1], ways[place])) for place in range(4)):
        return []
    first, second = dot(ways[0], ways[0]), dot(ways[1], ways[1])
    if first == second:
        return []
    start = 0 if first > second else 1
    return [frozenset((ring[place - 1], ring[place])) for place in (start, start + 2)]


def _are_a_square(net: Net, row: Sequence[int], stripes: Mapping[int, Sequence[Edge]]) -> bool:
    """Whether the breadths of the stripes come to their length."""
    ways = []
    for patch in row:
        ring = net.rings[patch]
        short = next(
            (ring[place - 1], ring[place])
            for place in range(4)
            if frozenset((ring[place - 1], ring[place])) not in stripes[patch]
        )
        ways.append(_step(net, *short))
    whole = ways[0]
    for way in ways[1:]:
        along = sign(dot(whole, way))
        whole = Point(whole.x + along * way.x, whole.y + along * way.y)
    return dot(whole, whole) == _squared(net, stripes[row[0]][0])
