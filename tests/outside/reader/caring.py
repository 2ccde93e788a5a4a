"""What is said for care, and changes nothing of what lies where."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace

from tests.outside.reader.bench import Bench, reads
from tests.outside.reader.cloth import TOP
from tests.outside.reader.landmarks import edges_at
from tests.outside.reader.table import Refused, Table
from tests.outside.reader.words import PLACE


@reads(rf"Pin an? (?:TOP mark|note with the word TOP) to (?:its|the) (?P<pos>{PLACE}) edge")
def pin_top(bench: Bench, found: re.Match[str]) -> None:
    """Where nothing else tells how a unit lies: what is its top now is told later."""

    def follow(table: Table) -> Iterator[Table]:
        for place, cloth in table.bodies.items():
            top = [edge for run in edges_at(cloth, found["pos"]) for edge in run.edges]
            if place not in table.laid or not top:
                raise Refused("it is not said which edge is the top")
            edges = tuple(replace(edge, tags=edge.tags | {TOP}) if edge in top else edge for edge in cloth.edges)
            yield replace(table, bodies={**table.bodies, place: replace(cloth, edges=edges)})

    bench.follow(follow, "nothing is there to pin it to")


@reads(
    r"Trim the dog-ears",
    r"Match the slanted seams (?:1/4 in|0\.75 cm) below the \w+ edge",
    r"They are mirror images of the first \w+; keep the two kinds apart",
    r"Crease the middle of each .+",
    r"If it is larger, lay the 45° line of the ruler on the seam and trim all four edges",
    r"Leave the paper in",
    r"Remove the papers?(?: from the seam allowance)?",
    r"Remove the papers when the edges of the block are sewn to others",
)
def no_more(bench: Bench, found: re.Match[str]) -> None:
    """Care that changes nothing of what lies where."""
