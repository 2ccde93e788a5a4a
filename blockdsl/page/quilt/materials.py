"""What to buy for a quilt: each fabric with the length that is needed and what to ask for, then all the rest."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Final

from blockdsl.cutting.buying import Buy
from blockdsl.cutting.fat_quarters import NOMINAL
from blockdsl.cutting.quilt_cuts import with_mirror_image
from blockdsl.facts.blockfacts import FabricFacts
from blockdsl.facts.collect_cloth import PLAIN
from blockdsl.facts.finishingfacts import FabricClothFacts, FinishingFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import ceil_to
from blockdsl.marks.prose import Style, paragraph
from blockdsl.marks.theme import BODY_PT, CONTENT_WIDTH_PT, INK, QUIET, STEP_PT, Box
from blockdsl.marks.typeset import fraction_text
from blockdsl.page.flow import Slice
from blockdsl.page.headings import continued, heading
from blockdsl.page.table import EMPTY, Cell, Column, table_head, table_row, words_cell
from blockdsl.pictures.block import swatch
from blockdsl.pictures.lengths import plain_length, show_extent, show_length, show_measure
from blockdsl.pictures.words import many
from blockdsl.wording import quilt_names
from blockdsl.wording.grammar import capital

_BOLD: Final = Style(BODY_PT, "bold", INK)
_BODY: Final = Style(BODY_PT, "regular", INK)
_QUIET: Final = Style(BODY_PT, "regular", QUIET)
_SWATCH: Final = Box(0.0, 1.0, 24.0, 11.0)
_COLUMNS: Final = (
    Column("", 34.0),
    Column("fabric", 136.0),
    Column("buy", 84.0),
    Column("needed", 54.0),
    Column("washing, squaring", 76.0),
    Column("for", CONTENT_WIDTH_PT - 384.0, gap_pt=0.0),
)
_TOOLS: Final = (
    "You will also need: matching thread, basting thread or safety pins, pins or clips; rotary cutter, mat, and ruler; "
    "iron; sewing machine with a ¼ in foot."
)
_SHOP: Final = {"in": "1/8 yd (4 1/2 in)", "cm": "10 cm"}


@dataclass(frozen=True, slots=True)
class Material:
    """A line of what is bought, in words; `fabric` None for what is no cloth of the top."""

    fabric: FabricFacts | None
    name: str
    buy: str
    need: str
    allowed: str
    uses: str


def materials(facts: QuiltFacts) -> list[Slice]:
    """The list of all that is bought, with what the lengths are based on below."""
    lines = material_lines(facts)
    if not lines:
        return []
    slices = [heading("Fabric requirements"), table_head(_COLUMNS)]
    again = (continued("Fabric requirements"), table_head(_COLUMNS))
    rows = (table_row(_COLUMNS, _row(line), ruled=place > 0) for place, line in enumerate(lines))
    slices += [replace(row, head=again) for row in rows]
    slices[-1] = replace(slices[-1], keep=True)
    for words in said_of_materials(facts):
        height, marks = paragraph(fraction_text(words), CONTENT_WIDTH_PT, _QUIET)
        slices.append(Slice(height, marks, before_pt=1.5 * STEP_PT, keep=words != _TOOLS))
    return slices


def material_lines(facts: QuiltFacts) -> list[Material]:
    """All that is bought, fabric by fabric; nothing where nothing is known of it."""
    told = finishing_of(facts)
    if told is None:
        return []
    labels = {fabric.name: fabric for fabric in facts.fabrics_used}
    return [*_fabrics(told, labels, facts), *_rest(told, labels, facts)]


def said_of_materials(facts: QuiltFacts) -> list[str]:
    """How it was reckoned, what fat quarters would do, what else is needed."""
    told = finishing_of(facts)
    if told is None:
        return []
    return [text for text in (_reckoned(facts, told), _fat_quarters(facts, told), _TOOLS) if text]


def finishing_of(facts: QuiltFacts) -> FinishingFacts | None:
    """The quilt's cloth and finishing, None where nothing is known of it."""
    return facts.finishing.facts if facts.finishing is not None else None


def _row(told: Material) -> tuple[Cell, ...]:
    picture = Cell(_BODY.line_pt, swatch(told.fabric, _SWATCH)) if told.fabric is not None else EMPTY
    texts = (
        (told.name, _BOLD),
        (fraction_text(told.buy), _BOLD),
        (told.need, _BODY),
        (told.allowed, _QUIET),
        (told.uses, _QUIET),
    )
    cells = (words_cell(text, column, style) for (text, style), column in zip(texts, _COLUMNS[1:], strict=True))
    return (picture, *cells)


def _fabrics(told: FinishingFacts, labels: dict[str, FabricFacts], facts: QuiltFacts) -> Iterator[Material]:
    for cloth in told.fabrics:
        fabric = labels[cloth.fabric]
        uses = _uses(cloth, facts)
        use = cloth.fat_quarters
        if cloth.scraps and use is not None:
            scraps = next(each for each in told.scraps if each.role == cloth.fabric)
            count = sum(scraps.fat_quarters) if scraps.fat_quarters is not None else use.mixed
            name = f"{fabric.label or fabric.name}, {many(scraps.prints, 'print')}"
            yield Material(fabric, name, many(count, "fat quarter"), "", "", "the blocks, each of one print")
        if cloth.buy is not None and cloth.buy.length:
            yield Material(fabric, fabric.label or fabric.name, *_bought(cloth.buy, facts), uses)
        elif cloth.buy is None and cloth.pieces and not cloth.scraps:
            yield Material(
                fabric, fabric.label or fabric.name, "wider fabric", "", "", "a piece is wider than this fabric"
            )


def _bought(buy: Buy, facts: QuiltFacts) -> tuple[str, str, str]:
    allowed = ceil_to(buy.allowed, facts.measure)
    return buy.words, show_measure(buy.need, facts.unit), show_measure(allowed, facts.unit)


def _uses(cloth: FabricClothFacts, facts: QuiltFacts) -> str:
    """What its length is for, each use once. Patches stand with the cutting, blocks of scraps with their prints."""
    names = dict.fromkeys(name.partition(": ")[0] for piece in cloth.pieces for name, _ in piece.uses)
    kinds = [kind.name for kind in facts.kinds if kind.role != "border unit"] if cloth.scraps else []
    blocks = {*kinds, *map(with_mirror_image, kinds)}
    plain = quilt_names(facts)
    return ", ".join(plain.role(name) if name in PLAIN else name for name in names if name not in blocks)


def _rest(told: FinishingFacts, labels: dict[str, FabricFacts], facts: QuiltFacts) -> Iterator[Material]:
    """Backing and wadding: binding and sleeve are cut from the fabrics above."""
    if told.backing is not None:
        fabric = labels[told.backing.fabric]
        plan = told.backing.plan
        widths = many(plan.widths, "width")
        name = f"Backing: {fabric.label or fabric.name}"
        yield Material(fabric, name, *_bought(plan.buy, facts), f"{widths} of fabric")
    if told.wadding is not None:
        size = show_extent(told.wadding.size, facts.unit)
        yield Material(None, capital(quilt_names(facts).words("quilt-batting")), size, "", "", "in one piece")


def _reckoned(facts: QuiltFacts, told: FinishingFacts) -> str:
    """What the lengths assume."""
    widths = sorted({cloth.usable_width for cloth in told.fabrics})
    said = " and ".join(show_length(width, facts.unit) for width in widths)
    return (
        f"Based on {said} {facts.unit} usable width. Shrinkage and squaring-up allowance is listed separately; the "
        f"total is rounded up to the next {_SHOP[facts.unit]}."
    )


def _fat_quarters(facts: QuiltFacts, told: FinishingFacts) -> str:
    """How many fat quarters would do in place of a length, fabric by fabric; nothing where one holds no piece."""
    labels = {fabric.name: fabric.label or fabric.name for fabric in facts.fabrics_used}
    said = [
        f"{labels[cloth.fabric]} {cloth.fat_quarters.mixed}"
        for cloth in told.fabrics
        if cloth.fat_quarters is not None and not cloth.scraps
    ]
    across, along = NOMINAL[facts.unit]
    size = f"{plain_length(along, facts.unit)} × {plain_length(across, facts.unit)} {facts.unit}"
    return f"Fat quarters of {size} instead of a length: {', '.join(said)}." if said else ""
