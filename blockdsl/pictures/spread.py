"""Which block is of which print: the quilt drawn with its numbers, and how often each print is used."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.blockfacts import FabricFacts
from blockdsl.facts.finishingfacts import ScrapsFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import to_float
from blockdsl.marks.display_list import Figure, Mark, Path, moved
from blockdsl.marks.prose import TextStyle, fitted, line, line_centred, rectangle
from blockdsl.marks.theme import CONTENT_WIDTH_PT, GUTTER_PT, INK, RULE, TINT, Box, span_pt
from blockdsl.pictures.placing import Placing, fit
from blockdsl.pictures.prints import shade
from blockdsl.pictures.quilt import QuiltPainter
from blockdsl.wording.grammar import many
from blockdsl.wording.messages import Messages, words_of

_BODY: Final = TextStyle(9.0, "regular", INK)
_TALLEST_PT: Final = 330.0
_LEAST_PT: Final = 5.0
_PICTURE_COLUMNS: Final = 8
_PRINT_LINE_PT: Final = 15.0


def prints_picture(
    facts: QuiltFacts, spread: ScrapsFacts, fabric: FabricFacts, box: Box
) -> tuple[tuple[Mark, ...], Box]:
    """Every block as a box in the tint of its print, with the print's number; at the right the prints."""
    placing, placed = fit(facts.finished, Box(0.0, 0.0, span_pt(_PICTURE_COLUMNS), _TALLEST_PT))
    painter = QuiltPainter(facts, placing, "prints")
    marks: list[Mark] = [rectangle(placed.x_pt, placed.y_pt, placed.width_pt, placed.height_pt, fill=TINT, stroke=RULE)]
    for index, number in zip(spread.blocks, spread.assignment, strict=True):
        marks += _block(facts, index, number, painter, placing, shade(fabric.colour, number, spread.prints))
    words = words_of(facts)
    said = words("prints-picture", count=len(spread.blocks))
    x = placed.width_pt + 2 * GUTTER_PT
    height, prints = _prints(spread, fabric, CONTENT_WIDTH_PT - x, placed.height_pt, words)
    drawn = moved((Figure(said, tuple(marks)), *moved(prints, x, 0.0)), box.x_pt, box.y_pt)
    return drawn, Box(box.x_pt, box.y_pt, CONTENT_WIDTH_PT, max(placed.height_pt, height))


def _prints(
    spread: ScrapsFacts, fabric: FabricFacts, width: float, height: float, words: Messages
) -> tuple[float, tuple[Mark, ...]]:
    """Each print with its tint, in how many blocks it is, how many fat quarters it takes; in columns when many."""
    rows = max(1, int(height / _PRINT_LINE_PT))
    columns = -(-spread.prints // rows)
    marks: list[Mark] = []
    for place, uses in enumerate(spread.uses):
        x, y = (place // rows) * width / columns, (place % rows) * _PRINT_LINE_PT
        colour = shade(fabric.colour, place + 1, spread.prints)
        middle = y + _PRINT_LINE_PT / 2
        marks.append(rectangle(x, y + 1.5, 18.0, _PRINT_LINE_PT - 3, fill=colour, stroke=INK, stroke_width_pt=0.4))
        number = TextStyle(9.0, "bold", INK)
        marks += line(str(place + 1), x + 24.0, middle + number.capitals_pt / 2, number)
        said = many(uses, "blocks", words)
        if spread.fat_quarters:
            quarters = many(spread.fat_quarters[place], "fat-quarters", words)
            said = words("prints-blocks-quarters", blocks=said, quarters=quarters)
        marks += line(fitted(said, width / columns - 44.0, _BODY), x + 40.0, middle + _BODY.capitals_pt / 2, _BODY)
    return min(rows, spread.prints) * _PRINT_LINE_PT, tuple(marks)


def _block(
    facts: QuiltFacts, index: int, number: int, painter: QuiltPainter, placing: Placing, colour: str
) -> list[Mark]:
    block = facts.placed[index]
    a, b, c, d, e, f = painter.place_of(block)
    width, height = (to_float(side) * placing.scale for side in facts.kinds[block.kind].block.finished)
    corners = ((0.0, 0.0), (width, 0.0), (width, height), (0.0, height))
    ring = tuple((a * x + c * y + e, b * x + d * y + f) for x, y in corners)
    marks: list[Mark] = [Path((ring,), fill=colour, stroke=INK, stroke_width_pt=0.4)]
    size = min(11.0, min(width, height) * 0.5)
    if size >= _LEAST_PT:
        x, y = (sum(point[axis] for point in ring) / len(ring) for axis in (0, 1))
        half = size * 0.72
        marks.append(rectangle(x - half, y - half * 0.8, 2 * half, 1.6 * half, fill="#ffffff"))
        marks += line_centred(str(number), x, y, TextStyle(size, "bold", INK))
    return marks
