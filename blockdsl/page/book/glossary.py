"""The trade's words that a book uses, each explained in a sentence or two."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from blockdsl.marks.display_list import Mark
from blockdsl.marks.prose import Style, line, line_ending, lines_of
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, GUTTER_PT, INK, QUIET, STEP_PT, Paper, span_pt
from blockdsl.page.book.parts import READING, READING_PT, SIDE_PT, Bodies, PageNumbers, flowed, hairline, part_title
from blockdsl.page.flow import Slice

TITLE: Final = "Words of the trade"

TERMS: Final[dict[str, str]] = {
    "appliqué": "Pieces sewn onto a finished background, with their edges turned under or left raw.",
    "bias": "A direction at an angle to the threads, stretchiest at 45°. Handle bias edges lightly.",
    "by template": "Cut around a full-size printed shape, because no ruler cuts it.",
    "colourway": "Another colour plan of the same block: the patches stay, the fabrics change places.",
    "corner to corner": "A square cut once from corner to corner gives two triangles, cut twice four.",
    "curved seam": "A seam along an arc: the concave edge is eased onto the convex one, with the concave piece on top.",
    "cut size": "The size of a piece as you cut it, with seam allowance on every side.",
    "eight at a time": "Two large squares sewn and cut into eight half-square triangles.",
    "finished": "The size of a patch, a unit or a block once it is sewn in on all sides. It has no seam allowance.",
    "flying geese": "A unit twice as wide as high: one large triangle, its point up, between two small ones.",
    "foundation": "A printed paper to which the pieces are sewn along its lines.",
    "four at a time": "One large square and four small ones sewn and cut into four flying geese.",
    "four-patch": "A block on two by two squares, or on a multiple of them.",
    "grain": "The direction of the threads. A patch keeps its shape when its outer edges lie along the straight grain.",
    "grid": "The squares on which a block is drawn.",
    "half-square triangle": "Half of a square, cut from corner to corner; its short sides lie along the grain.",
    "hourglass": "A unit of four triangles that meet in its middle, two fabrics facing each other in pairs.",
    "measure": "To check the size of a unit with the ruler before you join it: it should measure its unfinished size.",
    "mirror image": "A patch turned over; it cannot be cut from the same template lying the same way up.",
    "nine-patch": "A block on three by three squares, or on a multiple of them.",
    "over papers": "English paper piecing: pieces folded round papers of their finished size and sewn by hand.",
    "patch": "A shape as it is seen in the finished block.",
    "piece": "The fabric for one patch or several, with its seam allowance.",
    "press": "To set the iron down on a seam and lift it again, without pushing the fabric.",
    "quarter-square triangle": "A quarter of a square, cut from corner to corner both ways; its long side lies along "
    "the grain.",
    "rails": "Strips of one width sewn side by side into a unit.",
    "right sides together": "With the printed sides of two pieces facing each other, so that the seam ends up inside.",
    "rotary cutter": "A round blade on a handle that cuts along a ruler, on a mat.",
    "seam allowance": "The fabric between the seam and the edge of the piece.",
    "segment": "A slice cut across a strip set.",
    "snowball": "A square whose corners are cut off by small triangles.",
    "spare": "Left over when the method gives more than the block needs.",
    "stitch and flip": "A square sewn across the corner of another piece, trimmed, and flipped open into a triangle.",
    "strip set": "Long strips sewn side by side, to be cut across into segments.",
    "tack": "To hold layers together for a while with long stitches that are taken out later.",
    "template": "A shape at full size to cut around.",
    "trim": "To cut a unit that is a little too large to the size that it should measure.",
    "turn under": "To fold the allowance of an appliqué piece to the wrong side, so that no raw edge shows.",
    "two at a time": "Two squares sewn on both sides of a line and cut apart on it, to make two units.",
    "unfinished": "The size of a unit or a block before it is joined to others: its finished size and a seam allowance "
    "on each side.",
    "unit": "A part of a block that is sewn first, often several times.",
    "value": "How light or dark a fabric looks beside the others; it matters more to the pattern than its colour.",
    "whip stitch": "A small stitch over two folded edges that lie on each other, catching only the folds.",
}
"""Words in the order of the alphabet; a word is found with or without its plural s."""

_TERM: Final = Style(READING.size_pt, "bold", INK)
_PAGE: Final = Style(BODY_PT, "regular", QUIET)
_LINE_PT: Final = READING.size_pt * 1.4


def terms_used(texts: Mapping[str, str]) -> dict[str, str]:
    """Each term that is said, with the first page that says it; `texts` are the words of each page by its name."""
    found: dict[str, str] = {}
    patterns = {term: re.compile(rf"\b{re.escape(term)}(?:s|es)?\b", re.IGNORECASE) for term in TERMS}
    for page, text in texts.items():
        for term, pattern in patterns.items():
            if term not in found and pattern.search(text):
                found[term] = page
    return {term: found[term] for term in TERMS if term in found}


def glossary_pages(terms: Mapping[str, str], paper: Paper, pages: PageNumbers) -> Bodies:
    """A line or two for each term: the word, what it means, the page that uses it first."""
    del pages
    slices: list[Slice] = [part_title(TITLE)]
    for place, (term, page) in enumerate(terms.items()):
        slices += _entry(term, TERMS[term], page, ruled=place > 0)
    return flowed(slices, paper)


def _entry(term: str, meaning: str, page: str, *, ruled: bool) -> Sequence[Slice]:
    words = lines_of(meaning, READING_PT - 2 * GUTTER_PT, READING)
    names = lines_of(term, span_pt(4) - GUTTER_PT, _TERM)
    rows: list[Slice] = []
    for place in range(max(len(words), len(names))):
        marks: list[Mark] = []
        if place < len(names):
            marks += line(names[place], 0.0, STEP_PT / 2 + READING.baseline_pt, _TERM)
        if place < len(words):
            marks += line(words[place], SIDE_PT, STEP_PT / 2 + READING.baseline_pt, READING)
        if place == 0:
            marks += line_ending(page, CONTENT_WIDTH_PT, STEP_PT / 2 + READING.baseline_pt, _PAGE)
            marks += [hairline(0.0)] if ruled else []
        rows.append(Slice(_LINE_PT, tuple(marks), keep=True))
    rows[-1] = replace(rows[-1], height_pt=_LINE_PT + STEP_PT, keep=False)
    return rows
