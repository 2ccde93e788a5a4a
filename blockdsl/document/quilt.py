"""A quilt's page: pictures, measures, what to buy, what to cut, the blocks, how it is put together and finished."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Final

from blockdsl.document.assembly import steps_with_words
from blockdsl.document.block import fabric_line, making
from blockdsl.document.finishing import finishing_steps
from blockdsl.document.materials import Material, material_lines, said_of_materials
from blockdsl.document.parts import (
    Card,
    Cards,
    DataCell,
    DataColumn,
    DefinitionList,
    DocumentPart,
    DocumentParts,
    DocumentSection,
    FabricKey,
    Heading,
    Image,
    Listing,
    Paragraph,
    RowGroup,
    Table,
    TextRun,
    Tick,
    WebPage,
    plain,
)
from blockdsl.document.pictures import (
    colour_page,
    finishing_page,
    letters_page,
    mitre_page,
    prints_page,
    quilt_page,
    ring_page,
    rows_page,
)
from blockdsl.document.prints import format_prints
from blockdsl.document.quilt_sizes import sizes_said
from blockdsl.document.quilt_tables import cutting_parts, rows_table
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.quiltfacts import QuiltFacts, QuiltKindFacts
from blockdsl.facts.quiltstepfacts import QuiltStepFacts
from blockdsl.wording import StepText
from blockdsl.wording.grammar import capital, in_thousands, many
from blockdsl.wording.lengths import plain_size
from blockdsl.wording.messages import words_of
from blockdsl.wording.quilt_words import format_blocks, format_setting, format_strips_of_ring, title_of
from blockdsl.wording.sheet import cautions

_ROLES: Final = {"block": "", "half block": "blocks-half", "border unit": "blocks-for-border"}

PageOf = Callable[[BlockFacts], str]
"""The name of the page that shows how a block is made at its size; none where no page does."""


def quilt_web_page(facts: QuiltFacts, name: str, page_of: PageOf, *, over: str = "") -> WebPage:
    """The page of one quilt. How a block is made is here, unless it has a page of its own."""
    words = words_of(facts)
    parts: list[DocumentPart] = [
        Cards("pictures", (Card((Image(quilt_page(facts)),)),)),
        DefinitionList(_measures(facts)),
        _section(2, words("sheet-fabrics"), FabricKey(tuple(fabric_line(each, words) for each in facts.fabrics_used))),
    ]
    if facts.notes:
        parts.append(_section(2, words("sheet-notes"), *(Paragraph(plain(note)) for note in facts.notes)))
    parts += _materials(facts)
    before = [Paragraph(plain(text)) for text in sizes_said(facts)]
    care = Listing(tuple((Paragraph(plain(text)),) for text in cautions(words)))
    parts.append(_section(2, words("sheet-before-cutting"), *before, care))
    parts += [_section(2, words("cutting"), *cutting)] if (cutting := tuple(cutting_parts(facts))) else []
    parts.append(_section(2, words("blocks-title"), *_blocks(facts, page_of)))
    parts.append(_section(2, words("assembly-title"), *_assembly(facts)))
    parts += _scraps(facts)
    if finishing := _finishing(facts):
        parts.append(_section(2, words("finishing-title"), Cards("steps", finishing)))
    return WebPage(name, facts.name, tuple(parts), over=over)


def format_size(facts: QuiltFacts) -> str:
    """The finished size: `66 1/2 × 93 1/2 in`."""
    return plain_size(facts.finished, facts.unit, words_of(facts))


def _section(level: int, title: str, *parts: DocumentPart) -> DocumentSection:
    return DocumentSection(Heading(level, plain(title)), parts)


def _measures(facts: QuiltFacts) -> tuple[tuple[str, tuple[tuple[TextRun, ...], ...]], ...]:
    words = words_of(facts)
    borders = words("quilt-without-borders", size=plain_size(facts.middle, facts.unit, words))
    return (
        (words("sheet-finished"), (plain(format_size(facts)), *((plain(borders),) if facts.rings else ()))),
        (words("quilt-set"), (plain(capital(format_setting(facts))),)),
        (words("quilt-blocks"), (plain(format_blocks(facts)),)),
        (words("sheet-made-of"), (plain(many(len(facts.fabrics_used), "fabrics", words)),)),
    )


def _materials(facts: QuiltFacts) -> Iterator[DocumentSection]:
    """What to buy, and what that is based on; nothing where nothing is known of it."""
    rows = [_material(line) for line in material_lines(facts)]
    if rows:
        words = words_of(facts)
        heads = ("buy-head-what", "buy-head-buy", "buy-head-needed", "buy-head-allowed")
        columns = (*(DataColumn(words(key), "words") for key in heads), DataColumn(words("head-for"), "purpose"))
        table = Table(words("buy-caption", quilt=facts.name), columns, (RowGroup(tuple(rows)),))
        said = (Paragraph((TextRun(text, "quiet"),)) for text in said_of_materials(facts))
        yield _section(2, words("buy-title"), table, *said)


def _material(line: Material) -> tuple[DataCell, ...]:
    words = (line.need, line.allowed, line.uses)
    return (plain(line.name), (TextRun(line.buy, "strong"),), *(plain(text) if text else () for text in words))


# --- blocks ----------------------------------------------------------------------------------------------


def _blocks(facts: QuiltFacts, page_of: PageOf) -> Iterator[DocumentPart]:
    """A card for each block in each colourway, then the making of those that have no page of their own."""
    words = words_of(facts)
    yield Paragraph((TextRun(words("blocks-aside-sentence"), "quiet"),))
    yield Cards("units", tuple(_card(kind, *counted, page_of) for kind in facts.kinds for counted in kind.colourways))
    for kind in facts.kinds:
        block = kind.block
        if page_of(block) or len(block.placed) < 2:
            continue
        pictures = Cards("pictures", (Card((Image(letters_page(block), words("sheet-letters")),)),))
        alone = Paragraph((TextRun(words("blocks-one-sentence"), "quiet"),))
        size = plain_size(block.finished, block.unit, words)
        yield _section(3, words("blocks-making", block=block.name), pictures, alone, *making(block, 4, size))


def _card(kind: QuiltKindFacts, colourway: str, count: int, page_of: PageOf) -> Card:
    block, words = kind.block, words_of(kind.block)
    plan = next((plan for plan in block.colourways if plan.name == colourway), None)
    page = page_of(block)
    title = title_of(kind, words)
    named = (TextRun(title, target=page),) if page else plain(title)
    about = [words("blocks-in-colorway", name=colourway)] if colourway else []
    about += [words(_ROLES[kind.role])] if _ROLES[kind.role] else []
    size = words("measure-finished", size=plain_size(block.finished, block.unit, words))
    measure = words("units-measure", size=plain_size(block.unfinished, block.unit, words))
    return Card(
        (
            Image(colour_page(block, plan)),
            Heading(3, named),
            Paragraph((TextRun(words("units-make", count=in_thousands(count, words)), "strong"),)),
            *(Paragraph((TextRun(text, "quiet"),)) for text in (*about, size)),
            Tick((TextRun(measure, "strong"),)),
        )
    )


# --- putting together ------------------------------------------------------------------------------------


def _assembly(facts: QuiltFacts) -> Iterator[DocumentPart]:
    if len(facts.rows) > 1:
        yield Image(rows_page(facts))
        yield rows_table(facts)
    yield Cards("steps", tuple(_step(facts, step, text) for step, text in steps_with_words(facts) if step.of_top))


def _step(facts: QuiltFacts, step: QuiltStepFacts, text: StepText) -> Card:
    ring = next((ring for ring in facts.rings if ring.number == step.ring), None) if step.ring else None
    parts: list[DocumentPart] = [Image(ring_page(facts, ring))] if ring is not None else []
    parts += [Image(mitre_page(words_of(facts)))] if ring is not None and ring.corners == "mitred" else []
    parts += _words(text)
    if ring is not None and (cut := format_strips_of_ring(facts, ring)):
        parts.append(Paragraph((TextRun(cut, "quiet"),)))
    return Card(tuple(parts))


def _words(text: StepText) -> list[DocumentPart]:
    """A step's heading, what is done part by part, what is measured."""
    more = " · ".join(filter(None, (text.made, text.size)))
    parts: list[DocumentPart] = [Heading(3, (TextRun(f"{text.number} "), TextRun(text.name)))]
    parts += [Paragraph((TextRun(more, "quiet"),))] if more else []
    for letter, part in text.lettered:
        parts.append(Paragraph(plain(" ".join(filter(None, (letter, *part.sentences))))))
        if part.measure:
            parts.append(Tick((TextRun(part.measure, "strong"),)))
    return parts


def _scraps(facts: QuiltFacts) -> Iterator[DocumentSection]:
    labels = {fabric.name: fabric for fabric in facts.fabrics_used}
    for spread in facts.scraps:
        fabric = labels[spread.role]
        words = words_of(facts)
        said = (Paragraph(plain(text)) for text in format_prints(spread, words))
        picture = Image(prints_page(facts, spread, fabric))
        yield _section(2, words("prints-title", fabric=fabric.label or fabric.name), *said, picture)


def _finishing(facts: QuiltFacts) -> tuple[Card, ...]:
    cards = []
    for step in finishing_steps(facts):
        pictures: DocumentParts = tuple(
            Image(finishing_page(picture)) for _, picture in step.stretches if picture is not None
        )
        cards.append(Card((*pictures, *_words(step.text))))
    return tuple(cards)
