"""The head of the first page of foundation papers: whose they are, how to sew on them, and the long bars."""

from __future__ import annotations

from blockdsl.drawing.lengths import show_extent, show_measure
from blockdsl.drawing.marks import Mark
from blockdsl.drawing.templates_head import Guide, foot, headed
from blockdsl.drawing.theme import Box
from blockdsl.facts.blockfacts import BlockFacts


def foundation_head(facts: BlockFacts, box: Box) -> tuple[tuple[Mark, ...], float]:
    """The marks of the head at the top of the box, and the y of the rule that ends it."""
    size = show_extent(facts.finished, facts.unit)
    return headed(facts.name, f"Foundation papers at full size for the block of {size} finished", _guide(facts), box)


def _guide(facts: BlockFacts) -> Guide:
    seam = show_measure(facts.seam, facts.unit)
    scale = "Measure the test square and the bars below. If they are not right, print again at actual size."
    lay = "Lay cloth on the blank side, patch 1 right side up, the next right sides together, and sew on its thick line"
    trim = f"Go on by number; after each seam trim the cloth to {seam} beyond it, fold the patch open and press."
    join = "Join the sections in the order that is given, dashed line on dashed line."
    tear = "Tear the paper off when all sides are sewn."
    use = (
        f"{scale} Cut the papers apart outside the solid outer line.",
        f"The papers are mirror images: this printed side is the back. {lay} from the printed side, beyond both ends.",
        f"{trim} Pieces are cut roomy, with the arrow along the straight grain.",
        f"Cut cloth and paper on the solid outer line, {seam} outside the dashed one. {join} {tear}",
    )
    care = (
        "Close the rotary cutter after every cut, and cut away from yourself on a mat.",
        "Fold the paper out of the way before you cut cloth beside it.",
        "Keep blades, pins and needles from children and pets.",
    )
    return Guide("How to sew on the papers", use, care)


def foundation_foot(facts: BlockFacts, box: Box, page: int, pages: int) -> tuple[Mark, ...]:
    """The last line of a page: block name, finished size, page n of m."""
    return foot(facts, box, page, pages, what="foundation papers at full size, mirrored")
