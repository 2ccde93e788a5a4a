"""What to buy for a quilt: each fabric with the length that is needed and what to ask for, then the rest."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec import Struct

from blockdsl.cutting.buying import Buy
from blockdsl.cutting.fat_quarters import NOMINAL
from blockdsl.cutting.quilt_cuts import with_mirror_image
from blockdsl.document.content import (
    DataCell,
    DataColumn,
    Paragraph,
    Part,
    RowGroup,
    Table,
    plain,
    quiet,
    section,
    strong,
)
from blockdsl.document.pictures import swatch_of
from blockdsl.facts.blockfacts import FabricFacts
from blockdsl.facts.collect_cloth import PLAIN
from blockdsl.facts.finishingfacts import FabricClothFacts, FinishingFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import ceil_to
from blockdsl.wording import quilt_names
from blockdsl.wording.grammar import capital, listed, many
from blockdsl.wording.lengths import plain_size, show_extent, show_length, show_measure
from blockdsl.wording.messages import words_of
from blockdsl.wording.quilt_words import format_buy, kind_words


class Material(Struct, frozen=True):
    """A line of what is bought, in words; `fabric` None for what is no cloth of the top."""

    fabric: FabricFacts | None
    name: str
    buy: str
    need: str
    allowed: str
    uses: str


def materials(facts: QuiltFacts) -> list[Part]:
    """All that is bought, with what the lengths are based on below; nothing where nothing is known of it."""
    lines = material_lines(facts)
    if not lines:
        return []
    words = words_of(facts)
    heads = ("buy-head-what", "buy-head-buy", "buy-head-needed", "buy-head-allowed")
    columns = (
        DataColumn(words("head-fabric"), "swatch"),
        *(DataColumn(words(key), "words") for key in heads),
        DataColumn(words("head-for"), "purpose"),
    )
    table = Table(words("buy-caption", quilt=facts.name), columns, (RowGroup(tuple(map(_row, lines))),))
    remarks = (Paragraph(quiet(text)) for text in said_of_materials(facts))
    return [section(2, words("buy-title"), table, *remarks)]


def _row(line: Material) -> tuple[DataCell, ...]:
    swatch: DataCell = swatch_of(line.fabric) if line.fabric is not None else ()
    others = (plain(line.need), quiet(line.allowed), quiet(line.uses))
    return (swatch, strong(line.name), strong(line.buy), *(cell if cell[0].text else () for cell in others))


def material_lines(facts: QuiltFacts) -> list[Material]:
    """All that is bought, fabric by fabric; nothing where nothing is known of it."""
    told = finishing_of(facts)
    if told is None:
        return []
    labels = {fabric.name: fabric for fabric in facts.fabrics_used}
    return [*_fabrics(told, labels, facts), *_rest(told, labels, facts)]


def said_of_materials(facts: QuiltFacts) -> list[str]:
    """How it was worked out, what fat quarters would do, what else is needed."""
    told = finishing_of(facts)
    if told is None:
        return []
    return [text for text in (_worked_out(facts, told), _fat_quarters(facts, told), format_tools(facts)) if text]


def format_tools(facts: QuiltFacts) -> str:
    """What else is needed, beside fabric."""
    words = words_of(facts)
    return words("buy-tools", foot=words(f"buy-foot-{facts.unit}"))


def finishing_of(facts: QuiltFacts) -> FinishingFacts | None:
    """The quilt's cloth and finishing, None where nothing is known of it."""
    return facts.finishing.facts if facts.finishing is not None else None


def _fabrics(told: FinishingFacts, labels: dict[str, FabricFacts], facts: QuiltFacts) -> Iterator[Material]:
    words = words_of(facts)
    for cloth in told.fabrics:
        fabric = labels[cloth.fabric]
        uses = _uses(cloth, facts)
        use = cloth.fat_quarters
        if cloth.scraps and use is not None:
            scraps = next(each for each in told.scraps if each.role == cloth.fabric)
            count = sum(scraps.fat_quarters) if scraps.fat_quarters is not None else use.mixed
            prints = many(scraps.prints, "prints", words)
            name = words("buy-prints", fabric=fabric.label or fabric.name, prints=prints)
            yield Material(fabric, name, many(count, "fat-quarters", words), "", "", words("buy-of-one-print"))
        if cloth.buy is not None and cloth.buy.length:
            yield Material(fabric, fabric.label or fabric.name, *_bought(cloth.buy, facts), uses)
        elif cloth.buy is None and cloth.pieces and not cloth.scraps:
            name = fabric.label or fabric.name
            yield Material(fabric, name, words("buy-wider"), "", "", words("buy-too-narrow"))


def _bought(buy: Buy, facts: QuiltFacts) -> tuple[str, str, str]:
    allowed = ceil_to(buy.allowed, facts.measure)
    words = words_of(facts)
    need, kept = (show_measure(each, facts.unit, words) for each in (buy.need, allowed))
    return format_buy(buy, words), need, kept


def _uses(cloth: FabricClothFacts, facts: QuiltFacts) -> str:
    """What its length is for, each use once. Patches stand with the cutting, blocks of scraps with their prints."""
    names = dict.fromkeys(name.partition(": ")[0] for piece in cloth.pieces for name in piece.uses)
    kinds = [kind.name for kind in facts.kinds if kind.role != "border unit"] if cloth.scraps else []
    blocks = {*kinds, *map(with_mirror_image, kinds)}
    plain = quilt_names(facts)
    return ", ".join(
        plain.role(name) if name in PLAIN else kind_words(name, plain.words) for name in names if name not in blocks
    )


def _rest(told: FinishingFacts, labels: dict[str, FabricFacts], facts: QuiltFacts) -> Iterator[Material]:
    """Backing and wadding: binding and sleeve are cut from the fabrics above."""
    words = words_of(facts)
    if told.backing is not None:
        fabric = labels[told.backing.fabric]
        plan = told.backing.plan
        widths = many(plan.widths, "widths", words)
        name = words("buy-backing", fabric=fabric.label or fabric.name)
        yield Material(fabric, name, *_bought(plan.buy, facts), words("buy-widths-of-fabric", widths=widths))
    if told.wadding is not None:
        size = show_extent(told.wadding.size, facts.unit, words)
        yield Material(None, capital(words("quilt-batting")), size, "", "", words("buy-in-one-piece"))


def _worked_out(facts: QuiltFacts, told: FinishingFacts) -> str:
    """What the lengths assume."""
    words = words_of(facts)
    widths = sorted({cloth.usable_width for cloth in told.fabrics})
    said = listed([show_length(width, facts.unit, words) for width in widths], words)
    return words(f"buy-based-{facts.unit}", widths=said)


def _fat_quarters(facts: QuiltFacts, told: FinishingFacts) -> str:
    """How many fat quarters would do in place of a length, fabric by fabric; nothing where one holds no piece."""
    words = words_of(facts)
    labels = {fabric.name: fabric.label or fabric.name for fabric in facts.fabrics_used}
    said = [
        words("buy-fat-quarters-of", fabric=labels[cloth.fabric], count=cloth.fat_quarters.mixed)
        for cloth in told.fabrics
        if cloth.fat_quarters is not None and not cloth.scraps
    ]
    across, along = NOMINAL[facts.unit]
    size = plain_size((along, across), facts.unit, words)
    return words("buy-fat-quarters", size=size, list=", ".join(said)) if said else ""
