"""Which block is of which print: the quilt drawn with its numbers, and how often each print is used."""

from __future__ import annotations

from typing import Final

from msgspec.structs import replace

from blockdsl.document.materials import finishing_of
from blockdsl.document.prints import format_prints
from blockdsl.facts.blockfacts import FabricFacts
from blockdsl.facts.finishingfacts import ScrapsFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.prose import TextStyle, paragraph
from blockdsl.marks.theme import INK, QUIET, SMALL_PT, STEP_PT, span_pt
from blockdsl.page.flow import Flowable
from blockdsl.page.headings import heading
from blockdsl.page.quilt.cutting import cloth_row
from blockdsl.pictures.cloth import sheet_pictures
from blockdsl.pictures.spread import prints_picture
from blockdsl.wording.grammar import in_thousands, many
from blockdsl.wording.messages import words_of

_QUIET: Final = TextStyle(SMALL_PT, "regular", QUIET)

_BODY: Final = TextStyle(9.0, "regular", INK)


def scraps(facts: QuiltFacts) -> list[Flowable]:
    """A picture and a few words for each role that is spread over prints."""
    told = finishing_of(facts)
    flowables: list[Flowable] = []
    for spread in told.scraps if told is not None else ():
        fabric = next(fabric for fabric in facts.fabrics_used if fabric.name == spread.role)
        words = words_of(facts)
        title = words("prints-title", fabric=fabric.label or fabric.name)
        flowables += [heading(title, aside=many(spread.prints, "prints", words))]
        flowables += [_words(text) for text in format_prints(spread, words)]
        height, marks = prints_picture(facts, spread, fabric)
        flowables.append(Flowable(height, marks, before_pt=STEP_PT))
        flowables += _one_cut(facts, spread, fabric)
    return flowables


def _one_cut(facts: QuiltFacts, spread: ScrapsFacts, fabric: FabricFacts) -> list[Flowable]:
    """How one fat quarter is cut, for as many blocks as it gives or as a print has."""
    if spread.layout is None:
        return []
    size = (spread.layout.sheet_width, spread.layout.sheet_length)
    words, count = words_of(facts), spread.layout_blocks
    said = words("prints-fat-quarter", count=count, number=in_thousands(count, words))
    pictures = sheet_pictures(spread.layout.sheets, size, facts, fabric.colour, lambda key: key)
    return [replace(_words(said), before_pt=3 * STEP_PT), *map(cloth_row, pictures)]


def _words(text: str) -> Flowable:
    height, marks = paragraph(fraction_text(text), span_pt(10), _BODY)
    return Flowable(height + STEP_PT, marks, keep_with_next=True)
