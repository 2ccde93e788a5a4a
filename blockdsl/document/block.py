"""A block's page: pictures, measures, fabrics, cutting and units at each size, colourways, notes, source, cautions."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.document.cutting_table import cutting_table
from blockdsl.document.parts import (
    Card,
    Cards,
    DefinitionList,
    DocumentPart,
    DocumentParts,
    DocumentSection,
    FabricKey,
    FabricLine,
    Heading,
    Image,
    Listing,
    Paragraph,
    Places,
    RichText,
    TextRun,
    Tick,
    WebPage,
    plain,
)
from blockdsl.document.pictures import colour_page, letters_page, swatch_page, unit_page
from blockdsl.document.steps import step_cards
from blockdsl.facts.blockfacts import BlockFacts, ColourwayFacts, FabricFacts, UnitFacts
from blockdsl.pictures.block import fabrics_of
from blockdsl.wording.applique import format_applique, is_told_in_a_step
from blockdsl.wording.bias import format_bias
from blockdsl.wording.grammar import capital, many
from blockdsl.wording.lengths import plain_measure, plain_size
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import (
    cautions,
    format_allowance,
    format_between_marks,
    format_grid,
    format_method,
    format_metric_rule,
    format_sources,
    format_squaring,
    format_templates,
    unit_title,
    value_words,
)


def block_page(sizes: Sequence[BlockFacts], name: str, *, over: str = "") -> WebPage:
    """The page of one block at one or more sizes, which differ in measures alone: pictures are drawn once."""
    first, words = sizes[0], words_of(sizes[0])
    parts: list[DocumentPart] = [_pictures(first)]
    fabrics = _section(
        2, words("sheet-fabrics"), (FabricKey(tuple(fabric_line(each, words) for each in first.fabrics)),)
    )
    if len(sizes) == 1:
        parts += [DefinitionList(measures(first)), fabrics, *making(first, 2)]
    else:
        places = [(facts, f"size-{number}") for number, facts in enumerate(sizes, start=1)]
        links = tuple(TextRun(format_finished(facts), target=f"{name}#{anchor}") for facts, anchor in places)
        parts += [Places(links, words("site-sizes")), fabrics]
        parts += [_at_size(facts, anchor) for facts, anchor in places]
    if (applique := format_applique(first)) and not is_told_in_a_step(first):
        parts.append(_section(2, words("sheet-applique"), tuple(Paragraph(plain(text)) for text in applique)))
    parts += _colourways(first)
    if first.notes:
        parts.append(_section(2, words("sheet-notes"), tuple(Paragraph(plain(note)) for note in first.notes)))
    if sources := format_sources(first):
        parts.append(
            _section(2, words("sheet-source"), tuple(Paragraph((TextRun(text, "quiet"),)) for text in sources))
        )
    return WebPage(name, first.name, (*parts, *_closing(sizes)), over=over)


def format_finished(facts: BlockFacts) -> str:
    """The finished size in short: `12 in`, or `12 × 9 in`."""
    width, height = facts.finished
    words = words_of(facts)
    if width == height:
        return plain_measure(width, facts.unit, words)
    return plain_size(facts.finished, facts.unit, words)


def measures(facts: BlockFacts) -> tuple[tuple[str, tuple[RichText, ...]], ...]:
    """What a block measures: finished, unfinished, its grid, how much there is of it."""
    words = words_of(facts)
    made_of = (many(len(facts.placed), "patches", words), many(len(facts.fabrics), "fabrics", words))
    return (
        (words("sheet-finished"), (plain(plain_size(facts.finished, facts.unit, words)),)),
        (words("sheet-unfinished"), (plain(plain_size(facts.unfinished, facts.unit, words)),)),
        (words("sheet-grid"), tuple(map(plain, format_grid(facts)))),
        (words("sheet-made-of"), tuple(map(plain, made_of))),
    )


def _section(level: int, title: str, parts: DocumentParts, anchor: str = "") -> DocumentSection:
    return DocumentSection(Heading(level, plain(title), anchor), parts)


def _pictures(facts: BlockFacts) -> Cards:
    words = words_of(facts)
    colour = Image(colour_page(facts), words("sheet-in-color"))
    letters = Image(letters_page(facts), words("sheet-letters"))
    return Cards("pictures", (Card((colour,)), Card((letters,))))


def fabric_line(fabric: FabricFacts, words: Messages) -> FabricLine:
    """A fabric in the key: its swatch, number, label and value."""
    return FabricLine(swatch_page(fabric), fabric.number, fabric.label or fabric.name, value_words(fabric, words))


# --- at one size ---------------------------------------------------------------------------------------


def _at_size(facts: BlockFacts, anchor: str) -> DocumentSection:
    """One of several sizes: its measures, and its cutting and units."""
    finished = format_finished(facts)
    return _section(
        2,
        words_of(facts)("site-at-size", size=finished),
        (DefinitionList(measures(facts)), *making(facts, 3, finished)),
        anchor,
    )


def making(facts: BlockFacts, level: int, finished: str = "") -> list[DocumentPart]:
    """Cutting, units and steps under headings of that level."""
    words = words_of(facts)
    parts: list[DocumentPart] = []
    if facts.cutting:
        parts.append(_section(level, words("cutting"), (cutting_table(facts, finished=finished),)))
    if facts.units:
        cards = Cards("units", tuple(_unit_card(facts, made, level + 1) for made in facts.units))
        aside = Paragraph((TextRun(words("units-aside-sentence"), "quiet"),))
        parts.append(_section(level, words("units-title"), (aside, cards)))
    if steps := step_cards(facts, level + 1):
        parts.append(_section(level, words("sheet-steps"), tuple(steps)))
    return parts


def _unit_card(facts: BlockFacts, unit: UnitFacts, level: int) -> Card:
    words = words_of(facts)
    spare = (TextRun(words("units-spare", count=unit.spare)),) if unit.spare else ()
    finished = words("units-finished", size=plain_size(unit.finished, facts.unit, words))
    method = words("units-method", method=format_method(unit.method, words))
    measure = words("units-measure", size=plain_size(unit.unfinished, facts.unit, words))
    return Card(
        (
            Image(unit_page(facts, unit)),
            Heading(level, plain(capital(unit_title(unit, words)))),
            Paragraph((TextRun(words("units-make", count=unit.count), "strong"), *spare)),
            Paragraph((TextRun(finished, "quiet"),)),
            Paragraph((TextRun(method, "quiet"),)),
            Tick((TextRun(measure, "strong"),)),
        )
    )


# --- after the sizes -----------------------------------------------------------------------------------


def _colourways(facts: BlockFacts) -> list[DocumentPart]:
    """The block's own colours beside the other plans; nothing when it has no other."""
    if not facts.colourways:
        return []
    cards = tuple(_colourway_card(facts, plan) for plan in (None, *facts.colourways))
    return [_section(2, words_of(facts)("sheet-colorways"), (Cards("colourways", cards),))]


def _colourway_card(facts: BlockFacts, plan: ColourwayFacts | None) -> Card:
    words = words_of(facts)
    seen = {fabric.name: fabric for fabric in fabrics_of(facts, plan).values()}
    return Card(
        (
            Image(colour_page(facts, plan)),
            Heading(3, plain(words("sheet-as-drawn") if plan is None else plan.name)),
            FabricKey(tuple(fabric_line(each, words) for each in seen.values())),
        )
    )


def _closing(sizes: Sequence[BlockFacts]) -> tuple[DocumentPart, ...]:
    """What the sizes mean, each thing said once, and the cautions."""
    says = (format_allowance, format_squaring, format_between_marks, format_metric_rule, format_templates, format_bias)
    words = words_of(sizes[0])
    texts = dict.fromkeys(say(facts) for say in says for facts in sizes)
    return (
        _section(2, words("sheet-sizes"), tuple(Paragraph(plain(text)) for text in texts if text)),
        _section(2, words("sheet-care"), (Listing(tuple((Paragraph(plain(text)),) for text in cautions(words))),)),
    )
