"""How a piece lies, told by what shows where: a whole edge, a point, the fabric at a corner."""

from __future__ import annotations

from cmath import phase, pi
from collections.abc import Callable, Iterable

from tests.outside.reader.cloth import HAIR, Cloth, End, Run, corners, cross, dot, lying_of, near, runs, unit
from tests.outside.reader.words import PLACES

Test = Callable[[Cloth], float]
"""How well a laid piece answers to the words: 0 not at all, more is better."""
POINTS = frozenset(
    {
        "point",
        "sewn point",
        "sharp point",
        "sharp corner",
        "sharpest corner",
        "narrow corner",
        "square corner",
        "long edge",
    }
)


def turns_of(cloth: Cloth, *, on_point: bool = False) -> list[complex]:
    """The turns by which an edge of it lies level or upright; those by which a corner points up, down or aside."""
    all_runs = runs(cloth)
    level = _quarters(run.b - run.a for run in all_runs)
    if not on_point:
        return level
    tilted = [turn * unit(1 + 1j) for turn in level] + _quarters(
        _bisector(cloth, place) for place in range(len(all_runs))
    )
    return [turn for turn in _once(tilted) if not any(near(turn, other) for other in level)]


def is_upright(cloth: Cloth) -> bool:
    """Whether all its edges are level or upright at once, however it lies then."""
    return len(turns_of(cloth)) <= 4


def _quarters(ways: Iterable[complex]) -> list[complex]:
    return _once(unit(way).conjugate() * quarter for way in ways for quarter in (1, 1j, -1, -1j))


def _once(turns: Iterable[complex]) -> list[complex]:
    found: list[complex] = []
    for turn in turns:
        if not any(near(turn, other) for other in found):
            found.append(turn)
    return found


def _bisector(cloth: Cloth, place: int) -> complex:
    all_runs = runs(cloth)
    before, after = all_runs[place - 1], all_runs[place]
    outward = unit(before.b - before.a) - unit(after.b - after.a)
    return outward if abs(outward) > HAIR else -1j


def different(cloths: Iterable[Cloth]) -> list[Cloth]:
    """Each way of lying once."""
    found: dict[object, Cloth] = {}
    for cloth in cloths:
        found.setdefault(lying_of(cloth), cloth)
    return list(found.values())


def lies(cloth: Cloth, shows: str, place: str) -> float:
    """How well `shows` lies at a place of the piece as it lies: 3 beyond doubt, 2, 1 in some way, 0 not."""
    where = PLACES[place]
    if shows in ("point", "sewn point"):
        return 3 * int(any(_is_at(cloth, at, where) for at in points_of(cloth, sewn=shows == "sewn point")))
    if shows in EDGES or shows in CORNERS:
        return _corner_or_edge(cloth, shows, where)
    if shows in ("top mark", "top note"):
        return 3 * int(
            any(shows.split(maxsplit=1)[0] in edge.tags for run in edges_at(cloth, place) for edge in run.edges)
        )
    outermost = [run for run in runs(cloth) if near(run.outward, unit(where)) and not run.curve]
    if any(_is_at(cloth, run.a, where) for run in outermost):
        return _along_edge(cloth, shows, where)
    mark = _at_corner(cloth, shows, where)
    # An edge at the top is meant before a corner there.
    return mark if where.real and where.imag else min(mark, 2.4)


def _is_at(cloth: Cloth, at: complex, where: complex) -> bool:
    """Whether a point of the outline is the outermost in a direction."""
    return max(_far(edge.a, where) for edge in cloth.edges) - _far(at, where) < HAIR


def _far(point: complex, where: complex) -> float:
    return dot(point, unit(where))


def points_of(cloth: Cloth, *, sewn: bool = False) -> list[complex]:
    """Where two seams meet at an edge from both sides, as at a goose's point; or where a seam ends in a corner."""
    vertices = [run.a for run in runs(cloth)]
    found = []
    for at, ends in meeting_seams(cloth):
        at_vertex = any(near(at, vertex) for vertex in vertices)
        if (sewn and at_vertex) or (not sewn and not at_vertex and _leans_both_ways(cloth, at, ends)):
            found.append(at)
    return found


def meeting_seams(cloth: Cloth) -> list[tuple[complex, list[End]]]:
    """The places of an outline where seams end, with their ends."""
    places: list[tuple[complex, list[End]]] = []
    for end in cloth.ends:
        for at, ends in places:
            if near(at, end.at):
                ends.append(end)
                break
        else:
            places.append((end.at, [end]))
    return places


def has_points(cloth: Cloth) -> bool:
    """Whether a patch ends in a point at an edge."""
    vertices = [run.a for run in runs(cloth)]
    return any(len(ends) > 1 and not any(near(at, v) for v in vertices) for at, ends in meeting_seams(cloth))


def _leans_both_ways(cloth: Cloth, at: complex, ends: list[End]) -> bool:
    along = next((unit(edge.along) for edge in cloth.edges if abs(cross(unit(edge.along), at - edge.a)) < HAIR), 1 + 0j)
    leans = [dot(end.into, along) for end in ends if HAIR < abs(dot(end.into, along)) < 1 - HAIR]
    return any(lean > 0 for lean in leans) and any(lean < 0 for lean in leans)


EDGES = ("long edge", "longest edge", "middle edge", "short edge", "shortest edge")
CORNERS = ("square corner", "sharp corner", "sharpest corner", "narrow corner", "wide corner")


def _corner_or_edge(cloth: Cloth, shows: str, where: complex) -> int:
    if shows in EDGES:
        facing = edges_facing(cloth, where)
        those = [run for run in edges_of(cloth, shows) if any(near(run.a, other.a) for other in facing)]
        # An edge that lies there squarely is meant before one that lies nearly so.
        return (3 if any(near(run.outward, unit(where)) for run in those) else 2) if those else 0
    sharpest = min(inside for _, inside in inner_angles(cloth))
    for at, inside in inner_angles(cloth):
        if shows == "sharpest corner" and inside - sharpest > HAIR:
            continue
        square = abs(inside - pi / 2) < HAIR
        fits = square if shows == "square corner" else not square and (inside > pi / 2) == (shows == "wide corner")
        if fits and _is_at(cloth, at, where) and _is_alone(cloth, at, where):
            # A corner at the right points to the right, if it can; one at the upper right may have a level edge.
            points_there = near(unit(_bisector_at(cloth, at)), unit(where))
            return 3 if points_there or (where.real and where.imag) else 2
    return 0


def _bisector_at(cloth: Cloth, at: complex) -> complex:
    place = next(place for place, run in enumerate(runs(cloth)) if near(run.a, at))
    return _bisector(cloth, place)


def edges_of(cloth: Cloth, kind: str) -> list[Run]:
    """The long, short or middle edges of a piece; none where all are of one length."""
    lengths: list[float] = []
    for run in runs(cloth):
        if not any(abs(run.length - other) < HAIR for other in lengths):
            lengths.append(run.length)
    lengths.sort()
    if len(lengths) == 1:
        return []
    wanted = {
        "long": lengths[-1:], "longest": lengths[-1:], "middle": lengths[1:-1], "short": lengths[:-1],
        "shortest": lengths[:1],
    }[kind.split(" ", maxsplit=1)[0]]  # fmt: skip
    return [run for run in runs(cloth) if any(abs(run.length - length) < HAIR for length in wanted)]


def inner_angles(cloth: Cloth) -> list[tuple[complex, float]]:
    """The corners of an outline with the angle inside each; a curve leads on as its first short line does."""
    all_runs = runs(cloth)
    return [
        (run.a, phase(-all_runs[place - 1].edges[-1].along / run.edges[0].along) % (2 * pi))
        for place, run in enumerate(all_runs)
    ]


def _is_alone(cloth: Cloth, at: complex, where: complex) -> bool:
    """Whether no other corner is as far out in a direction."""
    far = _far(at, where)
    return not any(far - _far(run.a, where) < HAIR and not near(run.a, at) for run in runs(cloth))


def _at_corner(cloth: Cloth, shows: str, where: complex) -> int:
    """A patch that has the corner to itself, or shares it."""
    all_runs = runs(cloth)
    far = max(_far(run.a, where) for run in all_runs)
    vertices = [run.a for run in all_runs if far - _far(run.a, where) < HAIR]
    if len(vertices) != 1:
        return 0
    touching = [edge for edge in cloth.edges if near(edge.a, vertices[0]) or near(edge.b, vertices[0])]
    hits = [shows in edge.tags for edge in touching]
    shared = any(near(end.at, vertices[0]) for end in cloth.ends)
    return (1 if shared else 3) if all(hits) else 1 if any(hits) else 0


def _along_edge(cloth: Cloth, shows: str, where: complex) -> float:
    """All along an edge, in a part of it but not of the opposite one, or in a part of it."""
    here, there = _showing(cloth, shows, where), _showing(cloth, shows, -where)
    if here <= HAIR:
        return 0
    if here > 1 - HAIR:
        return 3 if there < 1 - HAIR else 2.5
    return 2 if there <= HAIR else 1


def _showing(cloth: Cloth, shows: str, where: complex) -> float:
    """The share of the outermost edge in a direction along which something shows."""
    edges = [
        edge
        for edge in cloth.edges
        if not edge.curve and near(unit(edge.along) * -1j, unit(where)) and _is_at(cloth, edge.a, where)
    ]
    whole = sum(abs(edge.along) for edge in edges)
    return sum(abs(edge.along) for edge in edges if shows in edge.tags) / whole if whole else 0.0


def in_the_middle(cloth: Cloth, shows: str, place: str) -> int:
    """Whether something shows in the middle of an edge, and neither at its ends."""
    for run in edges_at(cloth, place):
        middle = (run.a + run.b) / 2
        hits = [shows in edge.tags for edge in run.edges if _covers(edge.a, edge.b, middle)]
        if hits and all(hits):
            return 3
    return 0


def _covers(a: complex, b: complex, point: complex) -> bool:
    reach = dot(unit(b - a), point - a)
    return -HAIR < reach < abs(b - a) + HAIR


def edges_at(cloth: Cloth, place: str) -> list[Run]:
    """The edges that face a direction: exactly, or else as nearly as an edge of that name can."""
    return edges_facing(cloth, PLACES[place])


def edges_exactly_at(cloth: Cloth, place: str) -> list[Run]:
    """The edges that face a direction squarely."""
    return [run for run in runs(cloth) if not run.curve and near(run.outward, unit(PLACES[place]))]


def edges_facing(cloth: Cloth, direction: complex) -> list[Run]:
    """The edges that face a direction: squarely, or else as nearly as can be meant."""
    where = unit(direction)
    straight = [run for run in runs(cloth) if not run.curve]
    exact = [run for run in straight if near(run.outward, where)]
    if exact:
        return exact
    if where.real and where.imag and abs(where.real) > HAIR and abs(where.imag) > HAIR:
        return [
            run for run in straight if run.outward.real * where.real > HAIR and run.outward.imag * where.imag > HAIR
        ]
    return [run for run in straight if dot(run.outward, where) > 0.8]


def best(cloths: Iterable[Cloth], tests: Iterable[Test]) -> list[Cloth]:
    """Those that answer best to all that is said of how they lie; none where one thing holds of none."""
    return best_with_mark(cloths, tests)[0]


def best_with_mark(cloths: Iterable[Cloth], tests: Iterable[Test]) -> tuple[list[Cloth], float]:
    """The same, and how well they answer."""
    tests = list(tests)
    marks = [(min([3, *(test(cloth) for test in tests)]), cloth) for cloth in cloths]
    top = max((mark for mark, _ in marks), default=0)
    return [cloth for mark, cloth in marks if mark == top and mark > 0], top


__all__ = ["best", "corners", "different", "edges_at", "in_the_middle", "lies", "points_of", "turns_of"]
