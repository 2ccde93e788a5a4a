"""The head of a quilt's sheet: its name, its sizes, the quilt in colour, and beside it fabrics, blocks and borders."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.quiltfacts import QuiltFacts, QuiltKindFacts, RingFacts
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.prose import TextStyle, fitted, line, paragraph
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, GUTTER_PT, INK, QUIET, SMALL_PT, STEP_PT, Box, span_pt
from blockdsl.page.flow import Flowable
from blockdsl.page.sheet.fabrics import key_column
from blockdsl.page.sheet.head import measures_flowable, title_flowable
from blockdsl.pictures.block import block_picture
from blockdsl.pictures.quilt import quilt_picture
from blockdsl.wording.grammar import capital, in_thousands, many
from blockdsl.wording.lengths import show_extent, show_measure
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.quilt_words import format_blocks, format_setting, title_of

_PICTURE_COLUMNS: Final = 8
_TALLEST_PT: Final = 330.0
_BLOCK_PT: Final = 50.0
_NAME: Final = TextStyle(BODY_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_SMALL: Final = TextStyle(SMALL_PT, "regular", QUIET)
_CORNERS: Final = {"butted": "", "mitred": "quilt-corners-mitered", "squares": "quilt-corners-squares"}
"""What is said of a border's corners, by the key of its words."""
Drawn = tuple[float, tuple[Mark, ...]]
"""How high it is, and its marks from (0, 0)."""


def quilt_head(facts: QuiltFacts) -> list[Flowable]:
    """Everything above the materials."""
    return [title_flowable(facts.name), _measures(facts), _picture(facts)]


def _measures(facts: QuiltFacts) -> Flowable:
    words = words_of(facts)
    whole = sum(count for _, count in facts.blocks)
    halves = sum(count for _, count in facts.half_blocks)
    more = words("quilt-half-blocks", count=halves) if halves else ""
    blocks = format_blocks(facts) if len(facts.blocks) < 2 else many(whole, "blocks", words)
    return measures_flowable(
        (
            (words("sheet-finished"), show_extent(facts.finished, facts.unit, words), "", 3),
            (words("quilt-set"), capital(format_setting(facts)), "", 3),
            (words("quilt-blocks"), blocks, more, 4),
            (words("sheet-made-of"), many(len(facts.fabrics_used), "fabrics", words), "", 2),
        )
    )


def _picture(facts: QuiltFacts) -> Flowable:
    """The quilt at the left; at its right fabrics, then blocks and borders as far as they find room beside it."""
    picture, placed = quilt_picture(facts, Box(0.0, 0.0, span_pt(_PICTURE_COLUMNS), _TALLEST_PT))
    x = placed.width_pt + 2 * GUTTER_PT
    width = CONTENT_WIDTH_PT - x
    y, key = key_column(facts.fabrics_used, width, words_of(facts))
    marks: list[Mark] = [picture, *moved(key, x, 0.0)]
    for part in (_blocks(facts, width), _borders(facts, width)):
        height, drawn = part
        if drawn and y + 4 * STEP_PT + height <= placed.height_pt:
            marks += moved(drawn, x, y + 4 * STEP_PT)
            y += 4 * STEP_PT + height
    return Flowable(max(placed.height_pt, y), tuple(marks), before_pt=3.5 * STEP_PT)


def _blocks(facts: QuiltFacts, width: float) -> Drawn:
    """Each block in each of its colourways, small, with how many there are."""
    return _stacked(
        [_block(kind, *counted, width, words_of(facts)) for kind in facts.kinds for counted in kind.colourways]
    )


def _block(kind: QuiltKindFacts, colourway: str, count: int, width: float, words: Messages) -> Drawn:
    block = kind.block
    plan = next((plan for plan in block.colourways if plan.name == colourway), None)
    picture, placed = block_picture(block, Box(0.0, 0.0, _BLOCK_PT, _BLOCK_PT), colourway=plan)
    left = _BLOCK_PT + 2 * STEP_PT
    marks: list[Mark] = [picture]
    y = 0.0
    told = [(fitted(title_of(kind, words), width - left, _NAME), _NAME)]
    if colourway:
        told.append((fitted(words("quilt-colorway", name=colourway), width - left, _BODY), _BODY))
    size = words("measure-finished", size=show_extent(block.finished, block.unit, words))
    told += [(words("units-make", count=in_thousands(count, words)), _BODY), (size, _SMALL)]
    for text, style in told:
        marks += line(text, left, y + style.baseline_pt, style)
        y += style.line_pt
    return max(placed.height_pt, y), tuple(marks)


def _borders(facts: QuiltFacts, width: float) -> Drawn:
    """The middle without borders, then each border from the inside out."""
    if not facts.rings:
        return 0.0, ()
    labels = {fabric.name: fabric.label or fabric.name for fabric in facts.fabrics_used}
    words = words_of(facts)
    middle = show_extent(facts.middle, facts.unit, words)
    center = words("quilt-center-measures", center=capital(words("quilt-center")), size=middle)
    told = [center, *(_ring(facts, ring, labels) for ring in facts.rings)]
    return _stacked([paragraph(text, width, _BODY) for text in told])


def _ring(facts: QuiltFacts, ring: RingFacts, labels: dict[str, str]) -> str:
    words = words_of(facts)
    fabric = labels.get(ring.fabric, ring.fabric) if ring.fabric else words("quilt-ring-pieced", unit=ring.unit or "")
    corners = _CORNERS[ring.corners]
    key = "quilt-ring-measures-corners" if corners else "quilt-ring-measures"
    name, width = capital(words(f"quilt-ring-only-{ring.word}")), show_measure(ring.width, facts.unit, words)
    return words(key, ring=name, width=width, fabric=fabric, corners=words(corners) if corners else "")


def _stacked(parts: list[Drawn]) -> Drawn:
    """One under the other, a little apart."""
    y = 0.0
    marks: list[Mark] = []
    for place, (height, drawn) in enumerate(parts):
        y += STEP_PT if place else 0.0
        marks += moved(drawn, 0.0, y)
        y += height
    return y, tuple(marks)
