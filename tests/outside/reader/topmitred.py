"""Reading the steps of mitred borders: strips as long as the outer edge, pinned by their middles, mitred corners."""

from __future__ import annotations

import re

from tests.outside.reader.cloth import HAIR
from tests.outside.reader.tops import Lying, Piece, Table, made, reads
from tests.outside.reader.words import LENGTH, Refused, length, number

STRIPS = rf"(?P<n>\d+) strips \((?P<fabric>[^)]+)\) (?P<w>{LENGTH}) × (?P<h>{LENGTH}) (?:in|cm)"


@reads(
    rf"(?:Take|Cut) {STRIPS}",
    rf"(?:Take|Cut) {STRIPS} for the sides and (?P<m>\d+) strips(?: \([^)]+\))? (?P<v>{LENGTH}) × (?P<g>{LENGTH}) "
    r"(?:in|cm) for the top and bottom",
)
def take_mitred(table: Table, found: re.Match[str]) -> None:
    """Strips for mitred corners: as long as the outer edge and more."""
    said = found.groupdict()
    fours = [(number(found["n"]), length(found["w"]), float(length(found["h"])))]
    if said.get("m"):
        fours.append((number(found["m"]), length(found["v"]), float(length(found["g"]))))
    if sum(count for count, *_ in fours) != 4 or len({width for _, width, _ in fours}) != 1:
        raise Refused("a border has four strips of one width")
    width = float(fours[0][1]) - 2 * table.stock.seam
    if table.result is None:
        table.result = made(table, table.base)
    table.mitred = (found["fabric"], width, [long for count, _, long in fours for _ in range(count)])


@reads(r"Pin a strip to each edge, right sides together, middles matched")
def pin_mitred(table: Table, found: re.Match[str]) -> None:
    _pinned(table)


@reads(
    r"Pin the long strips to the (?P<a>left and right|top and bottom) edges and the short strips to the "
    r"(?P<b>top and bottom|left and right) edges, right sides together, middles matched"
)
def pin_long_and_short(table: Table, found: re.Match[str]) -> None:
    wide, high = _pinned(table)
    if (found["a"] == "left and right") != (high > wide) or found["a"] == found["b"]:
        raise Refused("the long strips are for the long edges")


def _pinned(table: Table) -> tuple[float, float]:
    if table.mitred is None or table.result is None:
        raise Refused("no strips were taken")
    _, width, longs = table.mitred
    outer = sorted(side + 2 * width + 2 * table.stock.seam for side in table.result.size for _ in range(2))
    if any(long < side - HAIR for long, side in zip(sorted(longs), outer, strict=True)):
        raise Refused("a strip does not reach into its corners")
    return table.result.size


@reads(r"Sew on the line from the inner corner outward")
def sew_miters(table: Table, found: re.Match[str]) -> None:
    """The four corners, each at 45°."""
    if table.mitred is None or table.result is None:
        raise Refused("there is nothing to miter")
    fabric, width, _ = table.mitred
    wide, high = table.result.size
    inner = [complex(width, width), complex(width + wide, width), complex(width + wide, width + high)]
    inner.append(complex(width, width + high))
    outer = [
        0j,
        complex(wide + 2 * width, 0),
        complex(wide + 2 * width, high + 2 * width),
        complex(0, high + 2 * width),
    ]
    lying = [each.moved(complex(width, width)) for each in table.result.lying]
    for a in range(4):
        b = (a + 1) % 4
        points = (outer[a], outer[b], inner[b], inner[a])
        lying.append(_trapezoid(table, fabric, points))
    table.result, table.mitred = Piece(tuple(lying), (wide + 2 * width, high + 2 * width)), None


def _trapezoid(table: Table, fabric: str, points: tuple[complex, ...]) -> Lying:
    """A strip with mitred ends, which must be one of those that were cut."""
    long = max(abs(points[1] - points[0]), abs(points[3] - points[2]))
    part = next(
        (
            part
            for part in table.stock.parts
            if part.fabric == fabric
            and part.key[0] == "cloth"
            and abs(max(part.size) - long) < HAIR
            and part.names & {"border", "round"}
            and table.stock.left[part.key]
        ),
        None,
    )
    if part is None:
        raise Refused(f"no strip of {fabric} is {long:g} long")
    table.stock.take(part, 1)
    return Lying(part, sum(points) / 4, 1 + 0j, points)
