"""A block's page: pictures, measures, fabrics, cutting and units at each size, colourings, notes, source, cautions."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.document.cutting_table import cutting_table
from blockdsl.document.parts import (
    Card,
    Cards,
    FabricLine,
    Heading,
    Key,
    Listing,
    Pairs,
    Paragraph,
    Part,
    Parts,
    Picture,
    Places,
    Run,
    Section,
    Tick,
    WebPage,
    Words,
    plain,
)
from blockdsl.document.pictures import colour_page, letters_page, swatch_page, unit_page
from blockdsl.document.steps import step_cards
from blockdsl.facts.blockfacts import BlockFacts, ColouringFacts, FabricFacts, UnitFacts
from blockdsl.page.applique_words import is_told_in_a_step, say_applique
from blockdsl.page.bias_words import say_bias
from blockdsl.pictures.block import fabrics_of
from blockdsl.pictures.lengths import plain_extent, plain_length
from blockdsl.pictures.words import (
    CAUTIONS,
    many,
    say_allowance,
    say_between_marks,
    say_colourway,
    say_grid,
    say_method,
    say_metric_rule,
    say_sources,
    say_squaring,
    say_templates,
)


def block_page(sizes: Sequence[BlockFacts], name: str, *, over: str = "") -> WebPage:
    """The page of one block at one or more sizes, which differ in measures alone: pictures are drawn once."""
    first = sizes[0]
    parts: list[Part] = [_pictures(first)]
    fabrics = _section(2, "Fabrics", (Key(tuple(map(fabric_line, first.fabrics))),))
    if len(sizes) == 1:
        parts += [Pairs(measures(first)), fabrics, *making(first, 2)]
    else:
        places = [(facts, f"size-{number}") for number, facts in enumerate(sizes, start=1)]
        links = tuple(Run(say_finished(facts), target=f"{name}#{anchor}") for facts, anchor in places)
        parts += [Places(links, "Sizes"), fabrics]
        parts += [_at_size(facts, anchor) for facts, anchor in places]
    if (applique := say_applique(first)) and not is_told_in_a_step(first):
        parts.append(_section(2, "Appliqué", tuple(Paragraph(plain(text)) for text in applique)))
    parts += _colourings(first)
    if first.notes:
        parts.append(_section(2, "Notes", tuple(Paragraph(plain(note)) for note in first.notes)))
    if sources := say_sources(first):
        parts.append(_section(2, "Source", tuple(Paragraph((Run(text, "quiet"),)) for text in sources)))
    return WebPage(name, first.name, (*parts, *_closing(sizes)), over=over)


def say_finished(facts: BlockFacts) -> str:
    """The finished size in short: `12 in`, or `12 × 9 in`."""
    width, height = facts.finished
    words = plain_length(width, facts.unit) if width == height else plain_extent(facts.finished, facts.unit)
    return f"{words} {facts.unit}"


def measures(facts: BlockFacts) -> tuple[tuple[str, tuple[Words, ...]], ...]:
    """What a block measures: finished, unfinished, its grid, how much there is of it."""
    made_of = (many(len(facts.placed), "patch", "patches"), many(len(facts.fabrics), "fabric"))
    return (
        ("Finished", (plain(f"{plain_extent(facts.finished, facts.unit)} {facts.unit}"),)),
        ("Unfinished", (plain(f"{plain_extent(facts.unfinished, facts.unit)} {facts.unit}"),)),
        ("Grid, finished", tuple(map(plain, say_grid(facts)))),
        ("Made of", tuple(map(plain, made_of))),
    )


def _section(level: int, title: str, parts: Parts, anchor: str = "") -> Section:
    return Section(Heading(level, plain(title), anchor), parts)


def _pictures(facts: BlockFacts) -> Cards:
    colour = Picture(colour_page(facts), "In colour")
    letters = Picture(letters_page(facts), "Patches by letter")
    return Cards("pictures", (Card((colour,)), Card((letters,))))


def fabric_line(fabric: FabricFacts) -> FabricLine:
    """A fabric in the key: its swatch, number, label and value."""
    return FabricLine(swatch_page(fabric), fabric.number, fabric.label or fabric.name, fabric.value)


# --- at one size ---------------------------------------------------------------------------------------


def _at_size(facts: BlockFacts, anchor: str) -> Section:
    """One of several sizes: its measures, and its cutting and units."""
    finished = say_finished(facts)
    return _section(2, f"{finished} finished", (Pairs(measures(facts)), *making(facts, 3, finished)), anchor)


def making(facts: BlockFacts, level: int, finished: str = "") -> list[Part]:
    """Cutting, units and steps under headings of that level."""
    parts: list[Part] = []
    if facts.cutting:
        parts.append(_section(level, "Cutting", (cutting_table(facts, finished=finished),)))
    if facts.units:
        cards = Cards("units", tuple(_unit_card(facts, made, level + 1) for made in facts.units))
        aside = Paragraph((Run("Measure each one before you join it.", "quiet"),))
        parts.append(_section(level, "Units to make and measure", (aside, cards)))
    if steps := step_cards(facts, level + 1):
        parts.append(_section(level, "Steps", tuple(steps)))
    return parts


def _unit_card(facts: BlockFacts, unit: UnitFacts, level: int) -> Card:
    title = unit.title or unit.name
    spare = (Run(f", {unit.spare} spare"),) if unit.spare else ()
    return Card(
        (
            Picture(unit_page(facts, unit)),
            Heading(level, plain(title[:1].upper() + title[1:])),
            Paragraph((Run(f"Make {unit.count}", "strong"), *spare)),
            Paragraph((Run(f"Finished {plain_extent(unit.finished, facts.unit)} {facts.unit}", "quiet"),)),
            Paragraph((Run(f"Method: {say_method(unit.method)}", "quiet"),)),
            Tick((Run(f"should measure {plain_extent(unit.unfinished, facts.unit)} {facts.unit}", "strong"),)),
        )
    )


# --- after the sizes -----------------------------------------------------------------------------------


def _colourings(facts: BlockFacts) -> list[Part]:
    """The block's own colours beside the other plans; nothing when it has no other."""
    if not facts.colourings:
        return []
    cards = tuple(_colouring_card(facts, plan) for plan in (None, *facts.colourings))
    return [_section(2, f"{say_colourway(facts.unit)}s".capitalize(), (Cards("colourings", cards),))]


def _colouring_card(facts: BlockFacts, plan: ColouringFacts | None) -> Card:
    seen = {fabric.name: fabric for fabric in fabrics_of(facts, plan).values()}
    return Card(
        (
            Picture(colour_page(facts, plan)),
            Heading(3, plain("As drawn" if plan is None else plan.name)),
            Key(tuple(map(fabric_line, seen.values()))),
        )
    )


def _closing(sizes: Sequence[BlockFacts]) -> tuple[Part, ...]:
    """What the sizes mean, each thing said once, and the cautions."""
    says = (say_allowance, say_squaring, say_between_marks, say_metric_rule, say_templates, say_bias)
    texts = dict.fromkeys(say(facts) for say in says for facts in sizes)
    return (
        _section(2, "About the sizes", tuple(Paragraph(plain(text)) for text in texts if text)),
        _section(2, "Take care", (Listing(tuple((Paragraph(plain(text)),) for text in CAUTIONS)),)),
    )
