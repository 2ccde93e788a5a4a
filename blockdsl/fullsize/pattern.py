"""A template in points: its outlines with the dog ears cut off, its grain, and what is written on it.

Here the exact numbers of the facts become floats, once. The cutting outline's top left corner is the origin.
"""

from __future__ import annotations

import unicodedata
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts, RulerUnit, TemplateFacts
from blockdsl.geometry import Polygon, to_float
from blockdsl.geometry.arc import Curved
from blockdsl.geometry.arc_recognise import BLADE, QUARTER_CIRCLE
from blockdsl.geometry.offset import trim_points
from blockdsl.marks.clip import bounds
from blockdsl.marks.display_list import Contour, PagePoint
from blockdsl.marks.theme import POINTS_PER_CENTIMETRE, POINTS_PER_INCH
from blockdsl.model.block import APPLIQUE
from blockdsl.model.language import Language
from blockdsl.pictures.arcs import notches_of, outline_places
from blockdsl.wording.grammar import capital
from blockdsl.wording.lengths import show_extent, show_measure
from blockdsl.wording.messages import Messages, messages, words_of

POINTS_PER_UNIT: Final[dict[RulerUnit, float]] = {"in": POINTS_PER_INCH, "cm": POINTS_PER_CENTIMETRE}


class TemplateWords(Struct, frozen=True):
    """What a template says: its letter, its shape, its size and use, and last the block's name, shortened to fit."""

    letter: str
    title: str
    lines: tuple[str, ...] = ()
    block: str = ""


class TemplatePattern(Struct, frozen=True):
    """One template: rings in points, `grain` a direction; `notches` lead from the cutting line to a curved seam."""

    words: TemplateWords
    cutting: Contour
    sewing: Contour
    grain: PagePoint
    notches: tuple[tuple[PagePoint, PagePoint], ...] = ()
    language: Language = "en-US"

    @property
    def messages(self) -> Messages:
        """Those that it is printed with."""
        return messages(self.language)

    @property
    def letter(self) -> str:
        """The letter by which the sheet calls it."""
        return self.words.letter

    @property
    def width_pt(self) -> float:
        """From its leftmost to its rightmost point."""
        return bounds(self.cutting)[2]

    @property
    def height_pt(self) -> float:
        """From its highest to its lowest point."""
        return bounds(self.cutting)[3]

    @property
    def alternative(self) -> str:
        """What it is, for those who cannot see it."""
        lines = ". ".join(self.words.lines)
        return self.messages("templates-alternative", letter=self.letter, title=self.words.title, lines=lines)


def pattern_of(template: TemplateFacts, facts: BlockFacts) -> TemplatePattern:
    """The template with its words, trimmed and measured in points."""
    scale = POINTS_PER_UNIT[facts.unit]
    if template.curved is not None:
        return _curved_pattern(template, template.curved, facts, scale)
    trims = template.shape != APPLIQUE
    cutting = _ring(trim_points(template.cutting, template.sewing, facts.seam) if trims else template.cutting, scale)
    left, top, _, _ = bounds(cutting)
    return TemplatePattern(
        _words(template, facts),
        tuple((x - left, y - top) for x, y in cutting),
        tuple((x - left, y - top) for x, y in _ring(template.sewing, scale)),
        (to_float(template.grain[0]), to_float(template.grain[1])),
        language=facts.language,
    )


def _words(template: TemplateFacts, facts: BlockFacts) -> TemplateWords:
    shape = template.shape.replace("é", "e").replace(" ", "-")
    title = capital(words_of(facts)(f"shape-{shape}"))
    return TemplateWords(template.label, title, _lines(template, facts), facts.name)


def _curved_pattern(
    template: TemplateFacts, outlines: tuple[Curved, Curved], facts: BlockFacts, scale: float
) -> TemplatePattern:
    """Its points are trimmed already, with the arcs that they stand beside."""
    sewing, cutting = (tuple((x * scale, y * scale) for x, y in outline_places(outline, scale)) for outline in outlines)
    left, top, _, _ = bounds(cutting)

    def placed(ring: Contour) -> Contour:
        return tuple((x - left, y - top) for x, y in ring)

    notches = ((placed(notch)[0], placed(notch)[1]) for notch in notches_of(outlines[0], facts.seam, scale))
    grain = (to_float(template.grain[0]), to_float(template.grain[1]))
    return TemplatePattern(
        _words(template, facts), placed(cutting), placed(sewing), grain, tuple(notches), facts.language
    )


def _ring(polygon: Polygon, scale: float) -> Contour:
    return tuple((to_float(point.x) * scale, to_float(point.y) * scale) for point in polygon)


def _lines(template: TemplateFacts, facts: BlockFacts) -> tuple[str, ...]:
    labels = {fabric.name: _closed(fabric.label) for fabric in facts.fabrics}
    words = words_of(facts)
    uses = ((count, labels.get(name, _closed(name))) for name, count in template.uses.items())
    cut = ", ".join(words("templates-cut-of", count=count, fabric=fabric) for count, fabric in uses)
    lines = [_finished(template, facts.unit, words)]
    if template.uses:
        lines.append(words("templates-cut", list=cut))
    under = next((piece.turn_under for piece in facts.appliques if piece.label == template.label), None)
    if under is not None:
        turn = show_measure(under, facts.unit, words)
        lines.append(words("templates-turn", width=turn) if under else words("templates-raw"))
    if template.mirror_of is not None:
        lines.append(words("templates-mirror", letter=template.mirror_of))
    return tuple(lines)


def _closed(label: str) -> str:
    """A name from the right is closed with a mark that is not seen, lest the next number be read as a part of it."""
    backward = any(unicodedata.bidirectional(letter) in {"R", "AL"} for letter in label)
    return f"{label}\N{LEFT-TO-RIGHT MARK}" if backward else label


def _finished(template: TemplateFacts, unit: RulerUnit, words: Messages) -> str:
    """The finished size as the trade says it for the shape: a square by one side, a triangle by its legs."""
    if template.curved is not None:
        return _finished_curve(template, template.curved[0], unit, words)
    key = _BY_ONE_SIDE.get(template.shape)
    if key is not None:
        return words(key, size=show_measure(template.finished[0], unit, words))
    return words("templates-finished", size=show_extent(template.finished, unit, words))


_BY_ONE_SIDE: Final = {
    "square": "templates-finished-square",
    "half-square triangle": "templates-finished-short",
    "quarter-square triangle": "templates-finished-long",
}


def _finished_curve(template: TemplateFacts, sewing: Curved, unit: RulerUnit, words: Messages) -> str:
    first, second = (show_measure(side, unit, words) for side in template.finished)
    if template.shape == QUARTER_CIRCLE:
        return words("templates-finished-radius", size=first)
    if template.shape == BLADE:
        return words("templates-finished-blade", size=first, other=second)
    radius = next(bend.radius for bend in sewing.bends if bend is not None)
    size, other = show_extent(template.finished, unit, words), show_measure(radius, unit, words)
    return words("templates-finished-with-radius", size=size, other=other)


def quarter_turn(pattern: TemplatePattern) -> TemplatePattern:
    """The template turned a quarter clockwise, grain and all; its words are written anew."""
    height = pattern.height_pt

    def turned(ring: Contour) -> Contour:
        return tuple((height - y, x) for x, y in ring)

    grain = (-pattern.grain[1], pattern.grain[0])
    notches = tuple((turned(notch)[0], turned(notch)[1]) for notch in pattern.notches)
    return replace(
        pattern, cutting=turned(pattern.cutting), sewing=turned(pattern.sewing), grain=grain, notches=notches
    )
