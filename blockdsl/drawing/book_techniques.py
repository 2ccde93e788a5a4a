"""The ways of making that a book's blocks use, each in plain steps."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.drawing.book_parts import Bodies, PageNumbers, flowed, part_title
from blockdsl.drawing.book_sections import section
from blockdsl.drawing.theme import Paper
from blockdsl.facts.blockfacts import BlockFacts

TITLE: Final = "Techniques"

METHODS: Final[dict[str, tuple[str, ...]]] = {
    "cut patches": (
        "Every patch is cut by itself, with its seam allowance all round, and sewn to its neighbour.",
        "Cut the pieces of the table and keep them by letter.",
        (
            "Lay two pieces right sides together with the edges to be sewn level. The tips of triangles stand out by "
            "the same amount at both ends."
        ),
        "Sew along the edge, exactly the seam allowance away from it.",
        "Press the seam as it was sewn, then press it open or to the darker side.",
        "Snip off the tips that stand out, and measure.",
    ),
    "two at a time": (
        "Two squares make two units of two triangles each, without cutting a single triangle.",
        (
            "Draw a line from corner to corner on the wrong side of the lighter square, and lay both squares right "
            "sides together."
        ),
        "Sew on both sides of the line, the seam allowance away from it.",
        "Cut on the line and press both units open.",
        (
            "For an hourglass, lay two such units right sides together with their seams crossing and unlike fabrics "
            "facing; draw, sew and cut once more across the first seam."
        ),
        "Trim each unit to the size that it should measure, its seam running from corner to corner.",
    ),
    "four at a time": (
        "One large square and four small ones make four flying geese.",
        "Draw a line from corner to corner on the wrong side of each small square.",
        (
            "Lay two of them on opposite corners of the large square, right sides together, so that their lines make "
            "one line across it and their corners overlap a little in the middle."
        ),
        "Sew on both sides of the line, cut on it, and press the small triangles away from the large one.",
        (
            "Lay another small square on the free corner of each half, its line pointing between the two triangles. "
            "Sew on both sides of the line, cut, and press."
        ),
        "Trim each of the four to the size that it should measure, the seam allowance kept beyond the point.",
    ),
    "eight at a time": (
        "Two large squares make eight units of two triangles each.",
        (
            "Draw both lines from corner to corner on the wrong side of the lighter square, and lay both squares right "
            "sides together."
        ),
        "Sew on both sides of both lines, the seam allowance away from them.",
        "Cut straight across and straight down through the middle, then on the drawn lines: eight units.",
        "Press them open and trim each to the size that it should measure.",
    ),
    "stitch and flip": (
        "A square sewn across a corner of a larger piece becomes a triangle there.",
        "Draw a line from corner to corner on the wrong side of the small square.",
        "Lay it on the corner of the larger piece, right sides together, edges level, its line cutting the corner off.",
        "Sew on the line, or a thread's width to the corner's side of it.",
        "Trim the corner to the seam allowance beyond the seam, flip the triangle over and press it.",
        "Where two corners meet, as in flying geese, finish and press the first before the second.",
    ),
    "strip set": (
        "Long strips are sewn side by side and cut across into segments that are ready to use.",
        (
            "Sew the strips together along their long edges in the order of the unit, each seam from the other end "
            "than the last, so that the set does not bend."
        ),
        "Press all seams to one side, and check that the set is as high as the unit should measure.",
        "Straighten one end of the set at a right angle to its seams.",
        "Cut segments as wide as the table says, straightening the end again after every few.",
    ),
    "foundation": (
        "Pieces are sewn to a printed paper along its lines, in the order of their numbers.",
        "Print the papers at actual size; the drawing is the mirror image of the block.",
        "Pin the first piece to the blank side, right side up, so that it covers its place and the allowance round it.",
        "Lay the next piece on it, right sides together, turn the paper over and sew on the line with short stitches.",
        "Fold the paper back, trim the allowance, and press the piece open. Go on in the order of the numbers.",
        "Trim the unit on the outer line, and take the paper off when its neighbours have been sewn on.",
    ),
}
"""Each method by name: first what it is, then its steps."""


def methods_used(blocks: Sequence[BlockFacts]) -> list[str]:
    """The methods of the blocks' units and pieces, in the order in which they are explained."""
    used = {cut.method for facts in blocks for cut in facts.cutting}
    used |= {unit.method for facts in blocks for unit in facts.units}
    return [*(name for name in METHODS if name in used), *sorted(used - METHODS.keys())]


def technique_pages(blocks: Sequence[BlockFacts], paper: Paper, pages: PageNumbers) -> Bodies:
    """A section for each method, with the blocks that use it; a method without steps is named."""
    del pages
    slices = [part_title(TITLE)]
    for place, method in enumerate(methods_used(blocks)):
        names = dict.fromkeys(facts.name for facts in blocks if method in methods_used([facts]))
        texts = METHODS.get(method, ("",))
        slices += section(
            method[:1].upper() + method[1:], texts, under=[", ".join(names)], numbered=True, ruled=place > 0
        )
    return flowed(slices, paper)
