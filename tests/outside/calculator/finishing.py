"""Binding, backing, borders and prints of a quilt, worked out from its finished size and what the facts say is cut."""

from __future__ import annotations

from collections.abc import Iterator
from math import floor, sqrt
from typing import Any

from tests.outside.calculator.figures import near

Doc = dict[str, Any]
HAIR = 1e-9
ROOM = {"in": 10.0, "cm": 25.0}
"""What is kept beyond the edge and all joins, for loose ends."""
SPARE = {"in": 2.0, "cm": 5.0}
"""What a border is cut longer than it should measure, to be trimmed to the top."""


def complaints_of_finishing(quilt: Doc) -> Iterator[str]:
    """All that is put round a top and under it."""
    width, height = (near(side) + 2 * near(quilt["seam"]) for side in quilt["finished"])
    if quilt.get("binding"):
        yield from _binding(quilt["binding"], 2 * (width + height), quilt)
    if quilt.get("backing"):
        yield from _backing(quilt["backing"], (width, height))
    if quilt.get("wadding"):
        over = 2 * near(quilt["wadding"]["overage"])
        for have, side in zip(quilt["wadding"]["size"], (width, height), strict=True):
            if near(have) < side + over - HAIR:
                yield f"the wadding is {have} for a raw top of {side} and {over} of overage"
    yield from _borders(quilt)
    for scraps in quilt.get("scraps", ()):
        yield from _prints(scraps)


def _binding(binding: Doc, edge: float, quilt: Doc) -> Iterator[str]:
    """Each join, the closing one too, takes a strip's width: two strips cross at right angles."""
    strip = near(binding["strip"])
    usable = next(near(each["usable_width"]) for each in quilt["fabrics"] if each["fabric"] == binding["fabric"])
    if binding["cut"] == "straight":
        length, joins = binding["strips"] * usable, binding["strips"]
    else:
        net = near(binding["square"]) - 2 * near(quilt["seam"])
        # a square sewn to a tube: as many rounds as lie in half its diagonal, each twice as long as that
        rounds = floor(net / sqrt(2) / strip + HAIR)
        length, joins = binding["squares"] * rounds * sqrt(2) * net, binding["squares"]
    left = length - joins * strip - edge
    if left < ROOM[quilt["unit"]] - HAIR:
        yield f"the binding leaves {left:.2f} beyond the raw edge of {edge:.2f} and {joins} joins"


def _backing(backing: Doc, top: tuple[float, float]) -> Iterator[str]:
    across = backing["widths"] * near(backing["usable_width"]) - (backing["widths"] - 1) * 2 * near(backing["join"])
    along = near(backing["length"])
    sewn = (along, across) if backing["seams"] == "horizontal" else (across, along)
    wanted = [side + 2 * near(backing["overage"]) for side in top]
    ways = [sewn, sewn[::-1]] if backing["seams"] == "none" else [sewn]
    if not any(all(have >= want - HAIR for have, want in zip(way, wanted, strict=True)) for way in ways):
        yield f"the back is {sewn}, {wanted} is wanted"


def _borders(quilt: Doc) -> Iterator[str]:
    """A plain border is cut as long as it should measure and some to spare; `exact` is with its allowances."""
    for piece in quilt["pieces"]:
        if piece["role"] != "border":
            continue
        long = max(near(side) for side in piece["cut"])
        want = max(near(side) for side in piece["exact"])
        if long < want - HAIR:
            yield f"a border of {want} is cut {long}"
        if piece["shape"] == "rectangle" and long < want + SPARE[quilt["unit"]] - HAIR:
            yield f"a border of {want} has {long - want} to spare"


def _prints(scraps: Doc) -> Iterator[str]:
    """Each print is bought for the blocks that are cut from it, and its layout holds that many."""
    if scraps["fat_quarters"] is None:
        return
    for uses, quarters in zip(scraps["uses"], scraps["fat_quarters"], strict=True):
        if uses > quarters * scraps["blocks_each"]:
            yield f"{uses} blocks of a print of {scraps['role']} come from {quarters}, {scraps['blocks_each']} of each"
    if sum(scraps["uses"]) != len(scraps["assignment"]):
        yield f"{sum(scraps['uses'])} uses of prints for {len(scraps['assignment'])} blocks"
