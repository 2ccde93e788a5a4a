"""What the sheet says in words: sentences from facts, and the alternative text of every picture."""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts, ColourwayFacts, CutFacts, FabricFacts, RulerUnit, UnitFacts
from blockdsl.facts.bookfacts import BookFacts
from blockdsl.facts.drafting import draft, named_family
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import Exact, Surd
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.shapes import SHAPES
from blockdsl.wording.cutting import squaring_sentence
from blockdsl.wording.drift import drift_sentences
from blockdsl.wording.grammar import capital, in_figures, in_series, in_thousands, listed, many, name_of
from blockdsl.wording.lengths import (
    drafted_length,
    plain_extent,
    plain_length,
    plain_measure,
    plain_size,
    show_extent,
    show_length,
    show_measure,
)
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.part_names import title_words
from blockdsl.wording.strips import format_direction, format_octagon, format_strips

_ORDINARY_METHOD: Final = "cut patches"
_STRIP_SET: Final = "strip set"
_LISTED_COLUMNS: Final = 12  # more widths than this are told by their range


def cautions(words: Messages) -> tuple[str, ...]:
    """The cautions in short, as every sheet has them."""
    return tuple(words(f"care-{what}") for what in ("cutter", "iron", "needles", "tools"))


def format_count(book: BookFacts) -> str:
    """What there is in a book: `12 patchwork blocks and 1 quilt`."""
    words = words_of(book)
    blocks, quilts = sum(1 for _ in book.blocks), sum(1 for _ in book.quilts)
    told = [many(quilts, "quilts", words)] if quilts else []
    return listed([many(blocks, "patchwork-blocks", words), *told] if blocks or not quilts else told, words)


# --- the cutting table -----------------------------------------------------------------------------


def format_piece(cut: CutFacts, words: Messages) -> str:
    """What is cut, in as many as there are: `squares`, `by template`."""
    return piece_words(cut.piece, cut.count, words)


def piece_words(piece: str, count: int, words: Messages) -> str:
    """What so many pieces of a kind are called."""
    return words("cut-by-template") if piece == "template" else str(name_of(f"piece-{piece}", words, count=count))


def format_subcut(cut: CutFacts, unit: RulerUnit | None, words: Messages) -> str:
    """What is done with a piece after it is cut: `cut once corner to corner → 4 triangles`, or nothing.

    Of pieces from strips it says how they are cut; without a unit in words that suit every size.
    """
    said, lies = _format_subcut(cut, unit, words), format_direction(cut, words)
    if cut.slant:
        return words("lies-cut", lies=lies, then=said)
    return words("lies-after", then=said, lies=lies) if said and lies else said or lies


def _format_subcut(cut: CutFacts, unit: RulerUnit | None, words: Messages) -> str:
    if cut.strip is not None and (cut.piece != "template" or cut.count > 1):
        return format_strips(cut, unit, words)
    if cut.corner is not None:
        return format_octagon(cut, unit, words)
    number = in_thousands(cut.yields, words)
    if cut.subcut != "none":
        key = "then-triangles" if cut.slant else f"then-corner-{cut.subcut}"
    elif cut.method == _STRIP_SET and cut.piece == "strip":
        key = "then-segments"
    elif not is_by_patch(cut):
        key = "" if cut.areas else "then-units"
    else:
        key = "then-patches" if cut.yields != cut.count else ""
    return words(key, count=cut.yields, number=number) if key else ""


def is_by_patch(cut: CutFacts) -> bool:
    """Whether the line is for patches cut by themselves, which needs no word of what it is for."""
    return cut.method == _ORDINARY_METHOD


def format_method(method: str, words: Messages) -> str:
    """What a way of making is called where it is printed: the trade's word where the language has one of its own."""
    return words(f"method-{method.replace(' ', '-')}")


def unit_title(unit: UnitFacts, words: Messages) -> str:
    """What a unit is called: the maker's own name, or the trade's."""
    return part_words(unit.title or unit.name, words)


def part_words(title: str, words: Messages) -> str:
    """The maker's own name as she writes it, a name of the trade in the language."""
    return title_words(title, words)


def format_purpose(cut: CutFacts, words: Messages) -> str:
    """The unit and the method that the pieces are for, unless that goes without saying: `beam, four at a time`."""
    if is_by_patch(cut):
        return ""
    unit = part_words(SHAPES[cut.unit].title, words) if cut.unit in SHAPES else cut.unit
    method = format_method(cut.method, words) if cut.method else ""
    purpose = in_series((part for part in (unit, method) if part), words)
    return words("then-areas", purpose=purpose, areas=format_areas(cut.areas)) if cut.areas else purpose


def format_areas(areas: Sequence[str]) -> str:
    """The numbers of areas, those that follow one another as a run: `A2, A6–A9`."""
    runs: list[list[str]] = []
    for area in areas:
        letter, number = area.rstrip("0123456789"), area.lstrip("ABCDEFGHIJKLMNOPQRSTUVWXYZ")
        if runs and runs[-1][-1] == f"{letter}{int(number) - 1}":
            runs[-1].append(area)
        else:
            runs.append([area])
    return ", ".join(f"{run[0]}–{run[-1]}" if len(run) > 2 else ", ".join(run) for run in runs)


# --- finished sizes --------------------------------------------------------------------------------


def format_finished(facts: BlockFacts | QuiltFacts) -> str:
    """The finished size in short: `9 in`, or `6 × 9 in` where it is no square."""
    if facts.finished[0] == facts.finished[1]:
        return plain_measure(facts.finished[0], facts.unit, words_of(facts))
    return plain_size(facts.finished, facts.unit, words_of(facts))


def format_sizes(sizes: Sequence[BlockFacts]) -> str:
    """All sizes in a row: `6, 9, and 12 in`; unit by unit."""
    words, told = words_of(sizes[0]), []
    for unit in dict.fromkeys(facts.unit for facts in sizes):
        of_unit = [facts for facts in sizes if facts.unit == unit]
        figures = listed([_size_in_figures(facts) for facts in of_unit], words)
        told.append(words("length", length=figures, unit=unit))
    return listed(told, words) if len(sizes) == len(told) else ", ".join(told)


def _size_in_figures(facts: BlockFacts) -> str:
    """A size without its unit: `9`, or `6 × 9` when the block is no square."""
    if facts.finished[0] == facts.finished[1]:
        return plain_length(facts.finished[0], facts.unit, words_of(facts))
    return plain_extent(facts.finished, facts.unit, words_of(facts))


# --- measures and grid -----------------------------------------------------------------------------


def format_sources(facts: BlockFacts) -> tuple[str, ...]:
    """Where the block comes from, then its family, a paragraph each; nothing where the designer does not say."""
    said = [text for text in facts.sources if text.strip()]
    if not facts.family:
        return tuple(said)
    words = words_of(facts)
    return (*said, words("sheet-family", family=family_words(facts.family, words)))


def format_sides(size: Sequence[Exact], unit: RulerUnit, words: Messages, *, square: bool) -> str:
    """A size with set fractions and its unit; a square says its side once."""
    return show_measure(size[0], unit, words) if square else show_extent((size[0], size[1]), unit, words)


def format_grid(facts: BlockFacts) -> tuple[str, str]:
    """The grid, finished, and what its cells measure before they are joined; of an uneven grid columns and rows.

    A block of one cell, such as a log cabin, is described by the squared paper that it is drawn on.
    """
    words = words_of(facts)
    columns, rows = facts.grid
    if facts.grid == (1, 1):
        return _format_paper(facts, words)
    if facts.cell is not None:
        square = facts.cell[0] == facts.cell[1]
        unfinished = tuple(side + 2 * facts.seam for side in facts.cell)
        size = format_sides(facts.cell, facts.unit, words, square=square)
        return (
            words("grid-squares" if square else "grid-rectangles", columns=columns, rows=rows, size=size),
            words("measure-unfinished", size=format_sides(unfinished, facts.unit, words, square=square)),
        )
    return (
        _format_sizes("columns", facts.columns, facts.unit, words),
        _format_sizes("rows", facts.heights, facts.unit, words),
    )


def _format_paper(facts: BlockFacts, words: Messages) -> tuple[str, str]:
    paper = draft(facts)
    if paper.kind != "squares" or paper.cell is None:
        return family_words(paper.family, words), ""
    sides = (paper.cell, paper.cell + 2 * facts.seam)
    finished, unfinished = (show_measure(side, facts.unit, words) for side in sides)
    return (
        words("grid-squares", columns=paper.across, rows=paper.down, size=finished),
        words("measure-unfinished", size=unfinished),
    )


def _format_sizes(lines: str, sizes: Sequence[Exact], unit: RulerUnit, words: Messages) -> str:
    if len(sizes) > _LISTED_COLUMNS:
        least, most = (drafted_length(size, unit, words) for size in (min(sizes), max(sizes)))
        return words(f"grid-{lines}-range", count=len(sizes), least=least, most=most, unit=unit)
    said = in_series((drafted_length(size, unit, words) for size in sizes), words)
    return words(f"grid-{lines}", count=len(sizes), sizes=said, unit=unit)


# --- what the sizes mean ---------------------------------------------------------------------------


def format_allowance(facts: BlockFacts | QuiltFacts) -> str:
    """The seam allowance and the ruler's measure in a plain sentence."""
    words = words_of(facts)
    seam = show_measure(facts.seam, facts.unit, words)
    return words("sizes-allowance", seam=seam, measure=_format_reading(facts, words))


def format_drift(facts: BlockFacts) -> tuple[str, ...]:
    """What is said before the first cut where rounding to the ruler adds up; nothing for most blocks."""
    return tuple(map(fraction_text, drift_sentences(facts, words_of(facts))))


def format_squaring(facts: BlockFacts) -> str:
    """What the strips of strip sets have for squaring up; empty for a block without any."""
    return fraction_text(squaring_sentence(facts, words_of(facts)))


def _format_reading(facts: BlockFacts | QuiltFacts, words: Messages) -> str:
    """The ruler's measure: `⅛ in`, `1 mm`."""
    if facts.unit == "cm" and facts.measure < 1:
        return words("measure-millimeters", length=show_length(facts.measure * 10, "cm", words))
    return show_measure(facts.measure, facts.unit, words)


def format_metric_rule(facts: BlockFacts) -> str:
    """Why metric sizes are larger than the usual rule of thumb; empty where the rule is not meant or cuts nothing.

    Source: a leg needs 0.75 × (2 + √2) = 2.561 cm, a long edge 0.75 × (2 + 2√2) = 3.621 cm.
    """
    if facts.unit != "cm" or facts.seam != Fraction(3, 4):
        return ""
    if not any(cut.subcut != "none" or cut.method.endswith("at a time") for cut in facts.cutting):
        return ""
    words = words_of(facts)
    figures = {"half": "2.5", "quarter": "3.5", "seam": "0.75", "halfshort": "0.6", "quartershort": "1.2"}
    return words("sizes-metric", **{name: in_figures(figure, words) for name, figure in figures.items()})


def format_templates(facts: BlockFacts) -> str:
    """Where pieces that no ruler cuts come from; empty when there are none."""
    return words_of(facts)("sizes-templates") if any(cut.piece == "template" for cut in facts.cutting) else ""


def format_between_marks(facts: BlockFacts) -> str:
    """That some finished sizes fall between the marks of the ruler, and what to do; empty when none does."""
    sides = [side for unit in facts.units for side in unit.finished]
    sides += [side for patch in facts.patches if patch.shape in ("square", "rectangle") for side in patch.finished]
    if all(isinstance(side, Surd) or (side / facts.measure).denominator == 1 for side in sides):
        return ""
    return words_of(facts)("sizes-between-marks")


# --- families --------------------------------------------------------------------------------------

_FAMILIES: Final = ("four-patch", "nine-patch", "five-patch", "seven-patch")
"""The trade's families of square grids, in the order in which they are listed."""
_GRIDS: Final = {"grid of": "family-grid", "oblong grid,": "family-oblong", "uneven grid,": "family-uneven"}
_ON_A_GRID: Final = re.compile(r"(grid of|oblong grid,|uneven grid,) ([0-9]+) × ([0-9]+)(?: parts)?")


def family_words(family: str, words: Messages) -> str:
    """A family of the trade in the language; the maker's own word as she writes it."""
    key = f"family-{family.replace('60°', 'sixty-degree').replace(' ', '-')}"
    if key in words:
        return words(key)
    found = _ON_A_GRID.fullmatch(family)
    return words(_GRIDS[found[1]], across=found[2], down=found[3]) if found else family


def format_family(facts: BlockFacts) -> str:
    """The family that the designer names, else the trade's for its grid: 6 × 6 squares are a nine-patch."""
    words = words_of(facts)
    family = facts.family or named_family(facts, draft(facts).kind)
    return capital(family_words(family, words)) if family else words("family-other")


def families_in_order(said: Collection[str], words: Messages) -> list[str]:
    """Those of the grids first, then the designers' own words by name, other grids last."""
    first = [capital(words(f"family-{family}")) for family in _FAMILIES]
    last = words("family-other")
    own = sorted(set(said) - {*first, last})
    return [family for family in (*first, *own, last) if family in said]


# --- pictures --------------------------------------------------------------------------------------


def value_words(fabric: FabricFacts, words: Messages) -> str:
    """`light`, `medium` or `dark`."""
    return words(f"value-{fabric.value}")


def _format_fabrics(facts: BlockFacts, colourway: ColourwayFacts | None, words: Messages) -> str:
    fabrics = facts.fabrics if colourway is None else colourway.fabrics
    return in_series(
        (words("picture-fabric", fabric=fabric.label, value=value_words(fabric, words)) for fabric in fabrics), words
    )


def describe_colour_picture(facts: BlockFacts, colourway: ColourwayFacts | None = None) -> str:
    """Alternative text of the block in colour."""
    words = words_of(facts)
    return words(
        "picture-block" if colourway is None else "picture-block-colorway",
        block=facts.name,
        name="" if colourway is None else colourway.name,
        size=plain_size(facts.finished, facts.unit, words),
        patches=many(len(facts.placed), "patches", words),
        fabrics=_format_fabrics(facts, colourway, words),
    )


def describe_letter_picture(facts: BlockFacts) -> str:
    """Alternative text of the lettered diagram."""
    words = words_of(facts)
    counts: dict[str, int] = {}
    for patch in facts.placed:
        counts[patch.label] = counts.get(patch.label, 0) + 1
    letters = in_series(
        (
            words("picture-letter", count=count, number=in_thousands(count, words), letter=label)
            for label, count in sorted(counts.items())
        ),
        words,
    )
    return words("picture-letters", block=facts.name, letters=letters)


def describe_unit_picture(unit: UnitFacts, unit_of_length: RulerUnit, words: Messages) -> str:
    """Alternative text of a unit."""
    size = plain_size(unit.finished, unit_of_length, words)
    patches = many(len(unit.picture), "patches", words)
    return words("picture-unit", unit=part_words(unit.title, words), size=size, patches=patches)


def describe_grid_picture(facts: BlockFacts) -> str:
    """Alternative text of the grid."""
    words = words_of(facts)
    if facts.cell is not None:
        columns, rows = facts.grid
        size = plain_size(facts.cell, facts.unit, words)
        return words("picture-grid", block=facts.name, columns=columns, rows=rows, size=size)
    widths, heights = (
        in_series((plain_length(each, facts.unit, words) for each in sizes), words)
        for sizes in (facts.columns, facts.heights)
    )
    return words("picture-grid-uneven", block=facts.name, widths=widths, heights=heights, unit=facts.unit)
