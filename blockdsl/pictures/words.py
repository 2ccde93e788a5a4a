"""What the sheet says in words: sentences from facts, and the alternative text of every picture."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts, ColouringFacts, CutFacts, RulerUnit, UnitFacts
from blockdsl.facts.bookfacts import BookFacts
from blockdsl.facts.drafting import draft, named_family
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import Exact, Surd
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.typeset import fraction_text
from blockdsl.pictures.lengths import drafted_length, plain_extent, plain_length, show_extent, show_length, show_measure
from blockdsl.pictures.strip_words import say_direction, say_octagon, say_strips
from blockdsl.shapes import SHAPES
from blockdsl.wording import messages
from blockdsl.wording.cutting import squaring_sentence
from blockdsl.wording.drift import drift_sentences

_PIECES: Final = {
    "square": ("square", "squares"),
    "rectangle": ("rectangle", "rectangles"),
    "strip": ("strip", "strips"),
    "triangle": ("triangle", "triangles"),
    "diamond": ("diamond", "diamonds"),
    "parallelogram": ("parallelogram", "parallelograms"),
    "trapezoid": ("trapezoid", "trapezoids"),
    "hexagon": ("hexagon", "hexagons"),
    "octagon": ("octagon", "octagons"),
    "template": ("by template", "by template"),
}
_ORDINARY_METHOD: Final = "cut patches"
_METHODS: Final = {_ORDINARY_METHOD: "traditional piecing"}
_STRIP_SET: Final = "strip set"
_LISTED_COLUMNS: Final = 12  # more widths than this are told by their range

CAUTIONS: Final = (
    "Rotary cutter: close the blade when you put it down, cut away from yourself; keep children and pets away.",
    "Iron: keep hands and cord clear of the plate, and switch it off when you leave the table.",
    "Needles and pins: count them in and out, and keep the fingers clear of a moving needle.",
    "Follow the instructions that came with your tools and machines, and the rules where you live.",
)


def many(count: int, one: str, more: str = "") -> str:
    """`1 patch`, `4 patches`."""
    return f"{count:,} {one if count == 1 else more or one + 's'}"


def say_count(book: BookFacts) -> str:
    """What there is in a book: `12 patchwork blocks and 1 quilt`."""
    blocks, quilts = sum(1 for _ in book.blocks), sum(1 for _ in book.quilts)
    told = [many(quilts, "quilt")] if quilts else []
    return " and ".join([many(blocks, "patchwork block"), *told] if blocks or not quilts else told)


def say_piece(cut: CutFacts) -> str:
    """What is cut, in as many as there are: `squares`, `by template`."""
    return piece_words(cut.piece, cut.count)


def piece_words(piece: str, count: int) -> str:
    """What so many pieces of a kind are called."""
    return _PIECES[piece][count != 1]


def say_subcut(cut: CutFacts, unit: RulerUnit | None = None) -> str:
    """What is done with a piece after it is cut: `cut once corner to corner → 4 triangles`, or nothing.

    Of pieces from strips it says how they are cut; without a unit in words that suit every size.
    """
    said, lies = _say_subcut(cut, unit), say_direction(cut)
    return f"{lies} {said}" if cut.slant else ", ".join(words for words in (said, lies) if words)


def _say_subcut(cut: CutFacts, unit: RulerUnit | None) -> str:
    if cut.strip is not None and (cut.piece != "template" or cut.count > 1):
        return say_strips(cut, unit)
    if cut.corner is not None:
        return f"cut as a {say_octagon(cut, unit)}"
    if cut.subcut != "none":
        told = "" if cut.slant else f"cut {cut.subcut} corner to corner "
        return f"{told}→ {many(cut.yields, 'triangle')}"
    if cut.method == _STRIP_SET and cut.piece == "strip":
        return f"sewn into a set → {many(cut.yields, 'segment')}"
    if not is_by_patch(cut):
        return "" if cut.areas else f"for {many(cut.yields, 'unit')}"
    return f"→ {many(cut.yields, 'patch', 'patches')}" if cut.yields != cut.count else ""


def is_by_patch(cut: CutFacts) -> bool:
    """Whether the line is for patches cut by themselves, which needs no word of what it is for."""
    return cut.method == _ORDINARY_METHOD


def say_colourway(unit: RulerUnit) -> str:
    """`colorway` on a sheet in inches, which is in American English, `colourway` on one in centimetres."""
    return "colorway" if unit == "in" else "colourway"


def say_method(method: str) -> str:
    """What a way of making is called where it is printed: the trade's word where the language has one of its own."""
    return _METHODS.get(method, method)


def say_purpose(cut: CutFacts) -> str:
    """The unit and the method that the pieces are for, unless that goes without saying: `beam, four at a time`."""
    if is_by_patch(cut):
        return ""
    unit = SHAPES[cut.unit].title if cut.unit in SHAPES else cut.unit
    purpose = ", ".join(part for part in (unit, cut.method) if part)
    return f"{purpose} {say_areas(cut.areas)}" if cut.areas else purpose


def say_areas(areas: Sequence[str]) -> str:
    """The numbers of areas, those that follow one another as a run: `A2, A6–A9`."""
    runs: list[list[str]] = []
    for area in areas:
        letter, number = area.rstrip("0123456789"), area.lstrip("ABCDEFGHIJKLMNOPQRSTUVWXYZ")
        if runs and runs[-1][-1] == f"{letter}{int(number) - 1}":
            runs[-1].append(area)
        else:
            runs.append([area])
    return ", ".join(f"{run[0]}–{run[-1]}" if len(run) > 2 else ", ".join(run) for run in runs)


def say_sources(facts: BlockFacts) -> tuple[str, ...]:
    """Where the block comes from, then its family, a paragraph each; nothing where the designer does not say."""
    said = [text for text in facts.sources if text.strip()]
    return (*said, f"Family: {facts.family}.") if facts.family else tuple(said)


def say_sides(size: Sequence[Exact], unit: RulerUnit, *, square: bool) -> str:
    """A size with set fractions and its unit; a square says its side once."""
    return show_measure(size[0], unit) if square else show_extent((size[0], size[1]), unit)


def say_grid(facts: BlockFacts) -> tuple[str, str]:
    """The grid, finished, and what its cells measure before they are joined; of an uneven grid columns and rows.

    A block of one cell, such as a log cabin, is told by the squared paper that it is drawn on.
    """
    columns, rows = facts.grid
    if facts.grid == (1, 1):
        return _say_paper(facts)
    if facts.cell is not None:
        square = facts.cell[0] == facts.cell[1]
        cells = "squares" if square else "rectangles"
        unfinished = tuple(side + 2 * facts.seam for side in facts.cell)
        return (
            f"{columns} × {rows} {cells} of {say_sides(facts.cell, facts.unit, square=square)}",
            f"{say_sides(unfinished, facts.unit, square=square)} unfinished",
        )
    return (
        _say_sizes("column", "wide", facts.columns, facts.unit),
        _say_sizes("row", "high", facts.heights, facts.unit),
    )


def _say_paper(facts: BlockFacts) -> tuple[str, str]:
    paper = draft(facts)
    if paper.kind != "squares" or paper.cell is None:
        return paper.family, ""
    sides = (paper.cell, paper.cell + 2 * facts.seam)
    finished, unfinished = (show_measure(side, facts.unit) for side in sides)
    return f"{paper.across} × {paper.down} squares of {finished}", f"{unfinished} unfinished"


def _say_sizes(noun: str, way: str, sizes: Sequence[Exact], unit: RulerUnit) -> str:
    if len(sizes) > _LISTED_COLUMNS:
        least, most = (drafted_length(size, unit) for size in (min(sizes), max(sizes)))
        return f"{len(sizes)} {noun}s {least} to {most} {unit} {way}"
    return f"{noun}{'s' * (len(sizes) != 1)} {', '.join(drafted_length(size, unit) for size in sizes)} {unit}"


def say_allowance(facts: BlockFacts | QuiltFacts) -> str:
    """The seam allowance and the ruler's measure in a plain sentence."""
    return (
        f"Cut sizes include {show_measure(facts.seam, facts.unit)} seam allowances and are rounded up to the next "
        f"{_say_reading(facts)}. Finished sizes are those in the finished quilt, without seam allowances."
    )


def say_drift(facts: BlockFacts) -> tuple[str, ...]:
    """What is said before the first cut where rounding to the ruler adds up; nothing for most blocks."""
    return tuple(map(fraction_text, drift_sentences(facts, messages())))


def say_squaring(facts: BlockFacts) -> str:
    """What the strips of strip sets have for squaring up; empty for a block without any."""
    return fraction_text(squaring_sentence(facts, messages()))


def _say_reading(facts: BlockFacts | QuiltFacts) -> str:
    """The ruler's measure: `⅛ in`, `1 mm`."""
    if facts.unit == "cm" and facts.measure < 1:
        return f"{show_length(facts.measure * 10, 'cm')} mm"
    return show_measure(facts.measure, facts.unit)


def say_metric_rule(facts: BlockFacts) -> str:
    """Why metric sizes are larger than the usual rule of thumb; empty where the rule is not meant or cuts nothing.

    Source: a leg needs 0.75 × (2 + √2) = 2.561 cm, a long edge 0.75 × (2 + 2√2) = 3.621 cm.
    """
    if facts.unit != "cm" or facts.seam != Fraction(3, 4):
        return ""
    if not any(cut.subcut != "none" or cut.method.endswith("at a time") for cut in facts.cutting):
        return ""
    return (
        "The usual metric rule adds 2.5 cm for half-square and 3.5 cm for quarter-square triangles. With a 0.75 cm "
        "seam that falls short by 0.6 mm and 1.2 mm, so the squares here are a little larger."
    )


def say_templates(facts: BlockFacts) -> str:
    """Where pieces that no ruler cuts come from; empty when there are none."""
    if not any(cut.piece == "template" for cut in facts.cutting):
        return ""
    return "Pieces marked “by template” are cut around the full-size templates; their sizes are the fabric each takes."


FAMILIES = ("Four-patch", "Nine-patch", "Five-patch", "Seven-patch")
"""The trade's families of square grids, in the order in which they are listed."""
OTHER_FAMILY = "Other grids"


def say_family(facts: BlockFacts) -> str:
    """The family that the designer names, else the trade's for its grid: 6 × 6 squares are a nine-patch."""
    family = facts.family or named_family(facts, draft(facts).kind)
    return family[:1].upper() + family[1:] if family else OTHER_FAMILY


def families_in_order(said: Collection[str]) -> list[str]:
    """Those of the grids first, then the designers' own words by name, other grids last."""
    own = sorted(set(said) - {*FAMILIES, OTHER_FAMILY})
    return [family for family in (*FAMILIES, *own, OTHER_FAMILY) if family in said]


def say_between_marks(facts: BlockFacts) -> str:
    """That some finished sizes fall between the marks of the ruler, and what to do; empty when none does."""
    sides = [side for unit in facts.units for side in unit.finished]
    sides += [side for patch in facts.patches if patch.shape in ("square", "rectangle") for side in patch.finished]
    if all(isinstance(side, Surd) or (side / facts.measure).denominator == 1 for side in sides):
        return ""
    return (
        "Some finished sizes of this block fall between the marks of the ruler. Pieces are rounded up to the next "
        "mark, so units come out slightly oversized: trim each one to the size given before you join it."
    )


def _say_fabrics(facts: BlockFacts, colouring: ColouringFacts | None) -> str:
    fabrics = facts.fabrics if colouring is None else colouring.fabrics
    return ", ".join(f"{fabric.label} ({fabric.value})" for fabric in fabrics)


def say_colour_picture(facts: BlockFacts, colouring: ColouringFacts | None = None) -> str:
    """Alternative text of the block in colour."""
    plan = "" if colouring is None else f", {say_colourway(facts.unit)} {colouring.name}"
    return (
        f"{facts.name}{plan} in colour: {plain_extent(facts.finished, facts.unit)} {facts.unit} finished, "
        f"{many(len(facts.placed), 'patch', 'patches')} of {_say_fabrics(facts, colouring)}."
    )


def say_letter_picture(facts: BlockFacts) -> str:
    """Alternative text of the lettered diagram."""
    counts: dict[str, int] = {}
    for patch in facts.placed:
        counts[patch.label] = counts.get(patch.label, 0) + 1
    letters = ", ".join(f"{many(count, 'patch', 'patches')} {label}" for label, count in sorted(counts.items()))
    return f"Lettered diagram of {facts.name} with the letters of its patches: {letters}."


def say_unit_picture(unit: UnitFacts, unit_of_length: RulerUnit) -> str:
    """Alternative text of a unit."""
    size = plain_extent(unit.finished, unit_of_length)
    return f"Unit {unit.title}: {size} {unit_of_length} finished, {many(len(unit.picture), 'patch', 'patches')}."


def say_grid_picture(facts: BlockFacts) -> str:
    """Alternative text of the grid."""
    if facts.cell is not None:
        columns, rows = facts.grid
        cell = plain_extent(facts.cell, facts.unit)
        return f"Grid of {facts.name}: {columns} columns and {rows} rows, each cell {cell} {facts.unit} finished."
    widths = ", ".join(plain_length(width, facts.unit) for width in facts.columns)
    heights = ", ".join(plain_length(height, facts.unit) for height in facts.heights)
    return f"Grid of {facts.name}: columns {widths} {facts.unit} wide, rows {heights} {facts.unit} high, finished."
