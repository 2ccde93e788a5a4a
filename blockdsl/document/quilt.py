"""A quilt: pictures, measures, what to buy, what to cut, the blocks, how it is put together and finished."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Final

from blockdsl.cutting.quilt_cuts import listed_names, with_mirror_image
from blockdsl.document.assembly import assembly, finishing, prints
from blockdsl.document.block import sizes_and_care
from blockdsl.document.content import (
    NO_LESSONS,
    Card,
    Cards,
    Definition,
    DefinitionList,
    FabricKey,
    Heading,
    Lessons,
    Paragraph,
    Part,
    Parts,
    Plate,
    Reference,
    Section,
    TextRun,
    Tick,
    beside,
    plain,
    quiet,
    section,
    strong,
)
from blockdsl.document.cutting import Totals, cutting_table
from blockdsl.document.materials import materials
from blockdsl.document.pictures import by_letter, in_colour, key_of, of_quilt
from blockdsl.document.quilt_cuts import quilt_cutting
from blockdsl.document.steps import steps_of
from blockdsl.document.units import units_to_make
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.quiltfacts import QuiltFacts, QuiltKindFacts, RingFacts
from blockdsl.wording.bias import format_bias
from blockdsl.wording.grammar import capital, in_thousands, many
from blockdsl.wording.lengths import plain_measure, plain_size
from blockdsl.wording.messages import words_of
from blockdsl.wording.quilt_words import format_blocks, format_setting, kind_words, title_of
from blockdsl.wording.sheet import (
    format_allowance,
    format_between_marks,
    format_metric_rule,
    format_squaring,
    format_templates,
)

_ROLES: Final = {"block": "", "half block": "blocks-half", "border unit": "blocks-for-border"}
_CORNERS: Final = {"butted": "", "mitred": "quilt-corners-mitered", "squares": "quilt-corners-squares"}
"""What is said of a border's corners, by the key of its words."""

PageOf = Callable[[BlockFacts], str]
"""The part that tells how a block is made at its size; none where no part does."""


def nowhere(block: BlockFacts) -> str:
    """For a quilt by itself: all is told with it."""
    del block
    return ""


def quilt_parts(
    facts: QuiltFacts, page_of: PageOf = nowhere, *, begin: str = "", lessons: Lessons = NO_LESSONS
) -> Parts:
    """One quilt. A block that has a part of its own is told there; of others the making is told here.

    `begin` is where the sizes and the cautions are explained for a whole book; without it they are said here.
    """
    words = words_of(facts)
    made = [kind for kind in facts.kinds if len(kind.block.placed) > 1 and not page_of(kind.block)]
    alone = len(facts.kinds) == 1 and len(facts.kinds[0].colourways) == 1
    return (
        _measures(facts),
        Plate((of_quilt(facts),), key_of(facts.fabrics_used, words), tuple(_beside(facts))),
        *materials(facts),
        *beside(words("sheet-notes"), *(Paragraph(plain(note)) for note in facts.notes)),
        *before_the_first_cut(facts, begin),
        *quilt_cutting(facts),
        *([] if made and alone else [_blocks(facts, page_of)]),
        *(_making(facts, kind, lessons, alone=alone) for kind in made),
        *assembly(facts),
        *prints(facts),
        *finishing(facts),
    )


# --- its head ------------------------------------------------------------------------------------------


def _measures(facts: QuiltFacts) -> DefinitionList:
    words = words_of(facts)
    halves = sum(count for _, count in facts.half_blocks)
    whole = sum(count for _, count in facts.blocks)
    blocks = format_blocks(facts) if len(facts.blocks) < 2 else many(whole, "blocks", words)
    more = (plain(words("quilt-half-blocks", count=halves)),) if halves else ()
    borders = words("quilt-without-borders", size=plain_size(facts.middle, facts.unit, words))
    entries = (
        Definition(words("sheet-finished"), (plain(format_size(facts)), *((plain(borders),) if facts.rings else ()))),
        Definition(words("quilt-set"), (plain(capital(format_setting(facts))),)),
        Definition(words("quilt-blocks"), (plain(blocks), *more)),
        Definition(words("sheet-made-of"), (plain(many(len(facts.fabrics_used), "fabrics", words)),)),
    )
    return DefinitionList(entries)


def format_size(facts: QuiltFacts) -> str:
    """The finished size: `66 1/2 × 93 1/2 in`."""
    return plain_size(facts.finished, facts.unit, words_of(facts))


def _beside(facts: QuiltFacts) -> Iterator[Part]:
    """Each block in each of its colourways, small, with how many there are; the borders from the inside out."""
    cards = tuple(_few_words(kind, *counted) for kind in facts.kinds for counted in kind.colourways)
    yield Cards("few", cards)
    if facts.rings:
        labels = {fabric.name: fabric.label or fabric.name for fabric in facts.fabrics_used}
        words = words_of(facts)
        middle = plain_size(facts.middle, facts.unit, words)
        center = words("quilt-center-measures", center=capital(words("quilt-center")), size=middle)
        for text in (center, *(_format_ring(facts, ring, labels) for ring in facts.rings)):
            yield Paragraph(plain(text))


def _few_words(kind: QuiltKindFacts, colourway: str, count: int) -> Card:
    block, words = kind.block, words_of(kind.block)
    plan = next((plan for plan in block.colourways if plan.name == colourway), None)
    size = words("measure-finished", size=plain_size(block.finished, block.unit, words))
    return Card(
        (
            in_colour(block, plan, small=True),
            Paragraph(strong(title_of(kind, words))),
            *((Paragraph(plain(words("quilt-colorway", name=colourway))),) if colourway else ()),
            Paragraph(plain(words("units-make", count=in_thousands(count, words)))),
            Paragraph(quiet(size)),
        )
    )


def _format_ring(facts: QuiltFacts, ring: RingFacts, labels: dict[str, str]) -> str:
    words = words_of(facts)
    fabric = labels.get(ring.fabric, ring.fabric) if ring.fabric else words("quilt-ring-pieced", unit=ring.unit or "")
    corners = _CORNERS[ring.corners]
    key = "quilt-ring-measures-corners" if corners else "quilt-ring-measures"
    name, width = capital(words(f"quilt-ring-only-{ring.word}")), plain_measure(ring.width, facts.unit, words)
    return words(key, ring=name, width=width, fabric=fabric, corners=words(corners) if corners else "")


def before_the_first_cut(facts: QuiltFacts, begin: str) -> tuple[Part, ...]:
    """What the sizes mean and what to take care of, or where a book says so."""
    words = words_of(facts)
    if begin:
        return beside(words("sheet-before-cutting"), Reference(words("book-read-first"), begin))
    return (sizes_and_care(sizes_said(facts), words),)


def sizes_said(facts: QuiltFacts) -> list[str]:
    """What the sizes mean, of the quilt and of its blocks, each thing once."""
    blocks = [kind.block for kind in facts.kinds]
    says = (format_squaring, format_metric_rule, format_templates)
    texts = dict.fromkeys([format_allowance(facts), *(say(block) for say in says for block in blocks)])
    return [text for text in texts if text]


# --- blocks ----------------------------------------------------------------------------------------------


def _blocks(facts: QuiltFacts, page_of: PageOf) -> Section:
    """A card for each block in each colourway, then where those are made that have a part of their own."""
    words = words_of(facts)
    cards = tuple(_card(kind, *counted, page_of) for kind in facts.kinds for counted in kind.colourways)
    elsewhere = {page_of(kind.block): kind_words(kind.name, words) for kind in facts.kinds}
    references = (
        Reference(words("book-elsewhere", block=name), target) for target, name in elsewhere.items() if target
    )
    return section(2, words("blocks-title"), Cards("kinds", cards), *references, aside=words("blocks-aside"))


def _card(kind: QuiltKindFacts, colourway: str, count: int, page_of: PageOf) -> Card:
    block, words = kind.block, words_of(kind.block)
    plan = next((plan for plan in block.colourways if plan.name == colourway), None)
    about = [words("blocks-in-colorway", name=colourway)] if colourway else []
    about += [words(_ROLES[kind.role])] if _ROLES[kind.role] else []
    size, patches = plain_size(block.finished, block.unit, words), many(len(block.placed), "patches", words)
    about.append(words("blocks-about", size=size, patches=patches))
    measure = words("units-measure", size=plain_size(block.unfinished, block.unit, words))
    return Card(
        (
            in_colour(block, plan),
            Heading(3, (TextRun(title_of(kind, words), target=page_of(block)),)),
            Paragraph(strong(words("units-make", count=in_thousands(count, words)))),
            *(Paragraph(quiet(text)) for text in about),
            Tick(strong(measure)),
        )
    )


def _making(facts: QuiltFacts, kind: QuiltKindFacts, lessons: Lessons, *, alone: bool) -> Section:
    """One block: its letters, what one takes, its units and steps."""
    block, words = kind.block, words_of(facts)
    size, count = plain_size(block.unfinished, block.unit, words), in_thousands(kind.count, words)
    title = words("blocks-title-one", block=block.name) if alone else title_of(kind, words)
    plan = next((plan for plan in block.colourways if alone and plan.name == kind.colourways[0][0]), None)
    remarks = (Paragraph(quiet(text)) for say in (format_between_marks, format_bias) if (text := say(block)))
    steps = steps_of(block, lessons)
    return section(
        2,
        title,
        Plate((in_colour(block, plan), by_letter(block)), FabricKey(()), small=True),
        *_cutting_one(block, block_totals(facts, kind)),
        *remarks,
        *units_to_make((block,), 3, lessons),
        *((section(3, words("sheet-steps"), *steps, aside=words("steps-aside")),) if steps else ()),
        aside=words("blocks-make-each", count=count, size=size),
    )


def _cutting_one(block: BlockFacts, totals: Totals) -> list[Part]:
    """The table of one block, with the remark that it is for one alone."""
    if not block.cutting:
        return []
    words = words_of(block)
    aside, remark = words(f"cutting-sizes-{block.unit}"), Paragraph(quiet(words("blocks-totals")))
    return [section(3, words("cutting-one"), remark, cutting_table((block,), totals), aside=aside)]


def block_totals(facts: QuiltFacts, kind: QuiltKindFacts) -> dict[int, int]:
    """For each line of a block's table, by its place, how many the whole quilt takes for that part of this block.

    Batches that serve its mirror image too are counted with them.
    """
    names = listed_names((each.name, each.role) for each in facts.kinds)
    name = names[facts.kinds.index(kind)]
    shared = with_mirror_image(name.removesuffix(", mirror image"))
    totals: dict[int, int] = {}
    for place, cut in enumerate(kind.block.cutting):
        uses = {f"{each}: {cut.unit or cut.label}" for each in (name, shared)}
        totals[place] = sum(
            count
            for whole in facts.cutting
            if (whole.fabric, whole.piece, sorted(whole.cut)) == (cut.fabric, cut.piece, sorted(cut.cut))
            and whole.subcut == cut.subcut
            for used, count in whole.uses.items()
            if used in uses
        )
    return totals
