"""What to buy for a quilt: each fabric with the length that is needed and what to ask for, then all the rest."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from blockdsl.cutting.buying import Buy
from blockdsl.drawing.diagram import swatch
from blockdsl.drawing.flow import Slice
from blockdsl.drawing.lengths import show_extent, show_length, show_measure
from blockdsl.drawing.prose import Style, heading, paragraph
from blockdsl.drawing.table import EMPTY, Cell, Column, table_head, table_row, words_cell
from blockdsl.drawing.theme import BODY_PT, CONTENT_WIDTH_PT, INK, QUIET, STEP_PT, Box
from blockdsl.drawing.typeset import fraction_text
from blockdsl.drawing.words import many
from blockdsl.facts.blockfacts import FabricFacts
from blockdsl.facts.finishingfacts import FabricClothFacts, FinishingFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import ceil_to

_BOLD: Final = Style(BODY_PT, "bold", INK)
_BODY: Final = Style(BODY_PT, "regular", INK)
_QUIET: Final = Style(BODY_PT, "regular", QUIET)
_SWATCH: Final = Box(0.0, 1.0, 24.0, 11.0)
_COLUMNS: Final = (
    Column("", 34.0),
    Column("fabric", 140.0),
    Column("buy", 62.0),
    Column("needed", 58.0),
    Column("washing, squaring", 78.0),
    Column("for", CONTENT_WIDTH_PT - 372.0, gap_pt=0.0),
)
_TOOLS: Final = (
    "Besides: thread to match, thread and pins or clips to hold the layers; rotary cutter, mat and ruler; "
    "iron; sewing machine with a foot for an even seam."
)
_SHOP: Final = {"in": "1/8 yd (4 1/2 in)", "cm": "10 cm"}


def materials(facts: QuiltFacts) -> list[Slice]:
    """The list of all that is bought, with how it was reckoned below."""
    told = finishing_of(facts)
    if told is None:
        return []
    labels = {fabric.name: fabric for fabric in facts.fabrics_used}
    head = table_head(_COLUMNS)
    slices = [heading("Materials", aside="to buy; how it is cut follows"), head]
    rows = [*_fabrics(told, labels, facts), *_rest(told, labels, facts)]
    slices += [table_row(_COLUMNS, row, ruled=place > 0) for place, row in enumerate(rows)]
    for words in (_reckoned(facts, told), _TOOLS):
        height, marks = paragraph(fraction_text(words), CONTENT_WIDTH_PT, _QUIET)
        slices.append(Slice(height, marks, before_pt=1.5 * STEP_PT))
    return slices


def finishing_of(facts: QuiltFacts) -> FinishingFacts | None:
    """The quilt's cloth and finishing, None where nothing is known of it."""
    return facts.finishing.facts if facts.finishing is not None else None


def _row(fabric: FabricFacts | None, name: str, buy: str, need: str, allowed: str, uses: str) -> tuple[Cell, ...]:
    picture = Cell(_BODY.line_pt, swatch(fabric, _SWATCH)) if fabric is not None else EMPTY
    texts = ((name, _BOLD), (fraction_text(buy), _BOLD), (need, _BODY), (allowed, _QUIET), (uses, _QUIET))
    cells = (words_cell(text, column, style) for (text, style), column in zip(texts, _COLUMNS[1:], strict=True))
    return (picture, *cells)


def _fabrics(told: FinishingFacts, labels: dict[str, FabricFacts], facts: QuiltFacts) -> Iterator[tuple[Cell, ...]]:
    for cloth in told.fabrics:
        fabric = labels[cloth.fabric]
        uses = _uses(cloth)
        use = cloth.fat_quarters
        if cloth.scraps and use is not None:
            scraps = next(each for each in told.scraps if each.role == cloth.fabric)
            count = sum(scraps.fat_quarters) if scraps.fat_quarters is not None else use.mixed
            name = f"{fabric.label}, {many(scraps.prints, 'print')}"
            yield _row(fabric, name, many(count, "fat quarter"), "", "", "blocks of scraps")
        if cloth.buy is not None and cloth.buy.length:
            yield _row(fabric, fabric.label or fabric.name, *_bought(cloth.buy, facts), uses)


def _bought(buy: Buy, facts: QuiltFacts) -> tuple[str, str, str]:
    allowed = ceil_to(buy.allowed, facts.measure)
    return buy.words, show_measure(buy.need, facts.unit), show_measure(allowed, facts.unit)


def _uses(cloth: FabricClothFacts) -> str:
    """What it is for, each use once; which patch of a block stands with the cutting."""
    names = dict.fromkeys(name.partition(": ")[0] for piece in cloth.pieces for name, _ in piece.uses)
    return ", ".join(names)


def _rest(told: FinishingFacts, labels: dict[str, FabricFacts], facts: QuiltFacts) -> Iterator[tuple[Cell, ...]]:
    """Backing and wadding: binding and sleeve are cut from the fabrics above."""
    if told.backing is not None:
        fabric = labels[told.backing.fabric]
        plan = told.backing.plan
        widths = many(plan.widths, "width")
        yield _row(
            fabric, f"Backing: {fabric.label or fabric.name}", *_bought(plan.buy, facts), f"{widths} of the cloth"
        )
    if told.wadding is not None:
        size = show_extent(told.wadding.size, facts.unit)
        yield _row(None, "Wadding", size, "", "", "in one piece")


def _reckoned(facts: QuiltFacts, told: FinishingFacts) -> str:
    """What the lengths assume."""
    widths = sorted({cloth.usable_width for cloth in told.fabrics})
    said = " and ".join(show_length(width, facts.unit) for width in widths)
    return (
        f"Reckoned for cloth that is {said} {facts.unit} wide between the selvages. What washing and squaring up may "
        f"take stands apart; the sum is rounded up to the next {_SHOP[facts.unit]}, as shops cut. Buy more where you "
        "like to have some over."
    )
