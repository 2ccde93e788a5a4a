"""English paper piecing: edges folded over papers, sewn by hand."""

from __future__ import annotations

import re

from tests.outside.reader.bench import Bench, reads
from tests.outside.reader.cloth import EITHER
from tests.outside.reader.table import Refused


@reads(r"Fold the edges of each piece over its paper and baste them", r"Baste the pieces to their papers")
def baste(bench: Bench, found: re.Match[str]) -> None:
    bench.method["basted"] = True


@reads(
    r"Whip-stitch all seams(?:, right sides together, corner to corner, through the folds alone)?",
    r"Leave the papers in",
    r"Press from the back",
    r"Take out the basting and the papers, and press the outer edges open",
)
def by_hand(bench: Bench, found: re.Match[str]) -> None:
    pieces = [kind for kind, _, _ in bench.taken if kind.form != "unit"]
    if found[0].startswith("Whip-stitch") and pieces and not bench.method.get("basted"):
        raise Refused("these pieces were not basted")
    # Nothing is pressed before the papers come out.
    bench.press_each = EITHER
    bench.by_hand = True
