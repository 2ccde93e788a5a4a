"""Measures after a tick box, and what is trimmed to them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from math import tan

from tests.outside.reader.bench import Bench, follow, reads
from tests.outside.reader.cloth import HAIR, Cloth, Run, dot, near, runs
from tests.outside.reader.landmarks import edges_at, edges_of, has_points, inner_angles, turns_of
from tests.outside.reader.sentences import SIZE
from tests.outside.reader.stock import value
from tests.outside.reader.table import Refused, Table
from tests.outside.reader.words import LENGTH, PLACE, length

EIGHTH = 1 / 16 + 1e-6
"""A measure with `about` is rounded to the nearest eighth of an inch; to a millimetre or two in centimetres."""


@reads(
    rf"Trim (?:each(?: \w[^,]*?)?|it) to {SIZE}(?:, with (?P<how>.+)|, the same amount off opposite edges)?",
)
def trim(bench: Bench, found: re.Match[str]) -> None:
    bench.trimmed = (float(length(found[2])), float(length(found[4])))


@reads(r"Trim as in step (?P<n>\d+)")
def trim_as(bench: Bench, found: re.Match[str]) -> None:
    said = [
        sentence for sentence in bench.texts.get(int(found["n"]), []) if re.match(r"Trim (?:each|it) to ", sentence)
    ]
    if len(said) != 1:
        raise Refused("that step trims nothing to a size")
    follow(bench, said[0])


@reads(rf"☐ {SIZE}(?:, with (?:1/4 in|0\.75 cm) beyond (?P<points>the point|each point|the points))?")
def measure(bench: Bench, found: re.Match[str]) -> None:
    said = (float(length(found[2])), float(length(found[4])))
    about = bool(found[1] or found[3])
    is_result = bench.title.finished and abs(bench.title.finished[0] + 2 * bench.stock.seam - said[0]) < 2 * EIGHTH
    if about and "stage two" in bench.method and not is_result:
        _measure_halves(bench, said[0])
        return
    room = EIGHTH if about or bench.trimmed == said else HAIR

    def follow(table: Table) -> Iterator[Table]:
        if len(table.bodies) != 1 and "kinds" not in bench.method:
            raise Refused("more than one thing lies on the table")
        place, cloth = next(iter(table.bodies.items()))
        as_it_lies = place in table.laid and is_level(cloth)
        for lying in [cloth] if as_it_lies else [cloth.moved(turn) for turn in turns_of(cloth)]:
            size = tuple(side + 2 * bench.stock.seam for side in lying.size())
            if all(abs(a - b) < room for a, b in zip(size, said, strict=True)):
                if found["points"] and not has_points(cloth):
                    raise Refused("there is no point")
                yield table
                return
        raise Refused(f"it measures {size[0]:.4g} × {size[1]:.4g}")

    bench.follow(follow, "it measures something else")
    finished = bench.title.finished
    if finished is None:
        raise Refused("the title says no size")
    wide = EIGHTH * 2 if bench.title.about or about or bench.trimmed else HAIR
    if any(abs(a + 2 * bench.stock.seam - b) > wide for a, b in zip(finished, said, strict=True)):
        raise Refused("title and measure do not agree")
    bench.measured = True


def _measure_halves(bench: Bench, said: float) -> None:
    """The half-square triangles of which others are made: as large as the cut squares less what the seam takes."""
    sizes = [value(kind.cut[0]) - 2**0.5 * bench.stock.seam for kind, _, _ in bench.taken if kind.form == "square"]
    if not any(abs(said - size) < EIGHTH for size in sizes):
        raise Refused(f"it measures {sizes[0]:.4g}")


def is_level(cloth: Cloth) -> bool:
    """Whether an edge of it lies level or upright: a square on point is measured along its edges all the same."""
    return any(abs(edge.along.real) < HAIR or abs(edge.along.imag) < HAIR for edge in cloth.edges)


@reads(rf"☐ (?P<about>about )?({LENGTH}) (?:in|cm) across")
def across(bench: Bench, found: re.Match[str]) -> None:
    said = float(length(found[2]))
    room = EIGHTH if found["about"] else HAIR

    def follow(table: Table) -> Iterator[Table]:
        sizes = [size + 2 * bench.stock.seam for cloth in table.bodies.values() for size in widths(cloth)]
        if any(abs(size - said) < room for size in sizes):
            yield table
            return
        raise Refused(f"it measures {', '.join(f'{size:.4g}' for size in sizes)}")

    bench.follow(follow, "it measures something else")
    bench.measured = True


def widths(cloth: Cloth) -> list[float]:
    """How wide a cloth is across each of its edges, each once."""
    found: list[float] = []
    for run in runs(cloth):
        far = [dot(edge.a - run.a, -run.outward) for edge in cloth.edges]
        if not any(abs(max(far) - min(far) - other) < HAIR for other in found):
            found.append(max(far) - min(far))
    return found


@reads(rf"☐ (?P<about>about )?(?P<d>{LENGTH}) (?:in|cm) along (?:the|its) (?P<pos>{PLACE}|long) edge")
def along_edge(bench: Bench, found: re.Match[str]) -> None:
    said = float(length(found["d"]))
    room = EIGHTH if found["about"] else HAIR

    def follow(table: Table) -> Iterator[Table]:
        for cloth in table.bodies.values():
            edges = edges_of(cloth, "long edge") if found["pos"] == "long" else edges_at(cloth, found["pos"])
            lengths = [raw_length(cloth, run, bench.stock.seam) for run in edges]
            if not any(abs(size - said) < room for size in lengths):
                raise Refused(f"that edge measures {', '.join(f'{size:.4g}' for size in lengths)}")
            yield table

    bench.follow(follow, "it measures something else")
    bench.measured = True


def raw_length(cloth: Cloth, run: Run, seam: float) -> float:
    """How long an edge is with the allowance on: at each end by the seam times the cotangent of half the angle."""
    angles = dict(inner_angles(cloth))
    ends = [next(angle for at, angle in angles.items() if near(at, end)) for end in (run.a, run.b)]
    return run.length + sum(seam / tan(angle / 2) for angle in ends)
