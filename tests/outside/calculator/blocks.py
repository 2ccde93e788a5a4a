"""A block's own list: every patch is cut from a line of it, the pieces are large enough, and all patches are served."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from typing import Any

from shapely.geometry import Polygon

from tests.outside.calculator.figures import near

Doc = dict[str, Any]
PARTS = {"none": 1, "once": 2, "twice": 4}
HAIR = 1e-9


def complaints_of_block(block: Doc) -> Iterator[str]:
    """What the cutting list of a block is short of."""
    need: Counter[tuple[str, str]] = Counter()
    shapes: dict[str, Any] = {}
    for patch in block["placed"]:
        need[patch["fabric"], patch["label"]] += 1
        if not any(patch.get("bends") or ()):
            shapes[patch["label"]] = Polygon([(near(x), near(y)) for x, y in patch["outline"]])
    lines = block["cutting"]
    yield from _lines(lines)
    for (fabric, label), count in need.items():
        mine = [line for line in lines if (line["fabric"], line["label"]) == (fabric, label)]
        if not mine:
            yield f"nothing is cut for {label} of {fabric}"
        alone = [line for line in mine if line["for"] == "patches"]
        served = sum(line["yields"] - line["spare"] for line in alone)
        if alone and len(alone) == len(mine) and served != count:
            yield f"{count} patches {label} of {fabric}, the list serves {served}"
        if label in shapes:
            yield from _large_enough(shapes[label], alone, near(block["seam"]))


def _lines(lines: list[Doc]) -> Iterator[str]:
    """Each line by itself: what it gives, and its sizes beside the exact ones."""
    for line in lines:
        if line["for"] == "patches" and line["yields"] > line["count"] * PARTS[line["subcut"]]:
            yield f"{line['count']} pieces of {line['label']} give {line['yields']}"
        if line["yields"] < line["spare"] or line["count"] < 1:
            yield f"{line} is short"
        for have, want in zip(line["cut"], line["exact"], strict=True):
            if line["piece"] != "strip" and near(have) < near(want) - HAIR:
                yield f"{line['label']} is cut {line['cut']}, {line['exact']} is wanted"


def _large_enough(patch: Any, lines: list[Doc], seam: float) -> Iterator[str]:
    """The cloth of a piece holds the area of the patch and its allowance; shapes themselves are laid by the machine."""
    grown = patch.buffer(seam, join_style="mitre", mitre_limit=1000)
    for line in lines:
        if line["piece"] in ("square", "rectangle") and line["corner"] is None:
            area = near(line["cut"][0]) * near(line["cut"][1]) / PARTS[line["subcut"]]
            if area < grown.area - 1e-6:
                yield f"{line['label']}: {line['cut']} {line['subcut']} is less cloth than the patch with its allowance"
