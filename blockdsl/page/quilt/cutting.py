"""Cutting for a whole quilt, fabric by fabric: what is cut, then how the cloth is laid out for it, in order."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Final

from blockdsl.analysis.letters import spell
from blockdsl.cutting.cloth import ClothPlan
from blockdsl.cutting.quilt_pieces import MEASURED
from blockdsl.facts.blockfacts import FabricFacts, RulerUnit
from blockdsl.facts.finishingfacts import ClothPieceFacts, FabricClothFacts
from blockdsl.facts.quiltfacts import QuiltCutFacts, QuiltFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.prose import Style, paragraph, width_of
from blockdsl.marks.theme import ACCENT, BODY_PT, CONTENT_WIDTH_PT, INK, QUIET, SMALL_PT, STEP_PT
from blockdsl.marks.typeset import fraction_text
from blockdsl.page.cloth import cloth_pictures
from blockdsl.page.flow import Slice, stacked
from blockdsl.page.headings import continued, heading
from blockdsl.page.quilt.materials import finishing_of
from blockdsl.page.sheet.cutting import fabric_group
from blockdsl.page.table import (
    Column,
    grouped,
    lengths_axes,
    lengths_cell,
    table_head,
    table_row,
    tick_cell,
    words_cell,
)
from blockdsl.pictures.lengths import plain_length, show_length, show_measure
from blockdsl.pictures.words import many, piece_words
from blockdsl.wording import quilt_names

_NUMBER: Final = Style(BODY_PT, "bold", INK)
_BODY: Final = Style(BODY_PT, "regular", INK)
_LETTER: Final = Style(BODY_PT, "bold", ACCENT)
_QUIET: Final = Style(BODY_PT, "regular", QUIET)
_SMALL: Final = Style(SMALL_PT, "regular", QUIET)
_GAP_PT: Final = 3 * STEP_PT
_TITLE: Final = "Cutting"
_SUBCUTS: Final = {
    "none": "",
    "once": "cut each once corner to corner",
    "twice": "cut each twice corner to corner",
}
_LENGTHWISE: Final = "cut lengthwise"
_OF_BLOCK: Final = {
    "strip": "then follow the block instructions",
    "octagon": "then cut off the corners, following the block instructions",
    "template": "around its template",
}


@dataclass(frozen=True, slots=True)
class CutLine:
    """A size that is cut from a fabric, with the small letter that it has in the pictures below."""

    letter: str
    piece: str
    sides: tuple[Fraction, ...]
    count: int
    then: str
    uses: tuple[tuple[str, int], ...]


def quilt_cutting(facts: QuiltFacts) -> list[Slice]:
    """The heading, then each fabric: its table, and its cloth as it is cut."""
    told = finishing_of(facts)
    if told is None:
        return []
    fabrics = {fabric.name: fabric for fabric in facts.fabrics_used}
    aside = "cut lengthwise pieces first, then the widest strips"
    slices = [heading(_TITLE, aside=aside)]
    for place, cloth in enumerate(told.fabrics):
        section = _fabric(facts, cloth, fabrics[cloth.fabric])
        slices += [replace(section[0], before_pt=4 * STEP_PT if place else 0.0), *section[1:]]
    return slices


def cut_lines(facts: QuiltFacts, cloth: FabricClothFacts) -> list[CutLine]:
    """All that is cut from a fabric, in the order of its letters."""
    return [_line(facts, cloth.fabric, piece, spell(place).lower()) for place, piece in enumerate(cloth.pieces)]


HEADERS: Final = ("fabric", "cut", "piece", "size", "then", "for")


def quilt_cutting_rows(facts: QuiltFacts) -> tuple[tuple[str, ...], list[tuple[str, ...]]]:
    """Headers and rows of all that is cut, for tables in Markdown and CSV; sizes carry their unit."""
    told = finishing_of(facts)
    labels = {fabric.name: fabric.label or fabric.name for fabric in facts.fabrics_used}
    rows: list[tuple[str, ...]] = [
        (
            labels[cloth.fabric],
            str(line.count),
            line.piece,
            f"{' × '.join(plain_length(side, facts.unit) for side in line.sides)} {facts.unit}",
            line.then,
            ", ".join(name for name, _ in line.uses),
        )
        for cloth in (told.fabrics if told is not None else ())
        for line in cut_lines(facts, cloth)
    ]
    return HEADERS, rows


def _line(facts: QuiltFacts, fabric: str, piece: ClothPieceFacts, letter: str) -> CutLine:
    cut = _cut_of(facts, piece.key)
    square = piece.cut[0] == piece.cut[1]
    if cut is None:  # binding and sleeve
        words = piece_words("square" if square else "strip", piece.count)
        return CutLine(letter, words, _sides(piece.cut), piece.count, "", _named(facts, piece, fabric))
    of_block = _OF_BLOCK.get(cut.piece, "") if any(":" in use for use, _ in cut.uses) else ""
    told = (_LENGTHWISE if cut.lengthwise else "", _SUBCUTS[cut.subcut], of_block)
    then = ", ".join(words for words in told if words)
    strips = not square and all(use in MEASURED for use, _ in cut.uses)
    words = piece_words("strip" if strips else cut.piece, cut.count)
    return CutLine(letter, words, _sides(piece.cut), piece.count, then, _named(facts, piece, fabric))


def _named(facts: QuiltFacts, piece: ClothPieceFacts, fabric: str) -> tuple[tuple[str, int], ...]:
    """What the pieces are for, as the steps call it."""
    names = quilt_names(facts)
    return tuple((names.use(use, fabric, piece.cut), count) for use, count in piece.uses)


def _cut_of(facts: QuiltFacts, key: str) -> QuiltCutFacts | None:
    return facts.cutting[int(key)] if key.isdigit() else None


def _sides(cut: tuple[Fraction, Fraction]) -> tuple[Fraction, ...]:
    """A square's side once, else the shorter side first."""
    return cut[:1] if cut[0] == cut[1] else (min(cut), max(cut))


def letters_of(cloth: FabricClothFacts) -> Mapping[str, str]:
    """The small letter of each piece of the plan by its key; strips that are joined go by those that they become."""
    letters = {piece.key: spell(place).lower() for place, piece in enumerate(cloth.pieces)}
    joined = {each.key: "+".join(letters[key] for key in each.keys) for each in cloth.joined}
    return letters | joined


def _fabric(facts: QuiltFacts, cloth: FabricClothFacts, fabric: FabricFacts) -> list[Slice]:
    lines = cut_lines(facts, cloth)
    columns, axes = _layout(lines, facts.unit)
    head = table_head(columns)
    height, again = stacked([continued(_TITLE), head])
    rows = [_row(line, columns, axes, facts.unit, ruled=place > 0) for place, line in enumerate(lines)]
    group = fabric_group(fabric, sum(line.count for line in lines))
    table = grouped(Slice(height, again, keep=True), group, rows, fabric_group(fabric, None))
    slices = [head, *table]
    slices += [_said(text) for text in say_cloth(facts, cloth)]
    if cloth.plan is not None:
        named = (continued(f"{_TITLE}: {fabric.label or fabric.name}"),)
        slices += [replace(row, head=named) for row in cloth_rows(facts, cloth, cloth.plan, fabric)]
    return slices


def cloth_rows(facts: QuiltFacts, cloth: FabricClothFacts, plan: ClothPlan, fabric: FabricFacts) -> list[Slice]:
    """The cloth strip by strip, each piece with its letter."""
    letters = letters_of(cloth)
    return cloth_pictures(plan, facts.unit, fabric.colour, lambda key: letters.get(key, ""))


def say_cloth(facts: QuiltFacts, cloth: FabricClothFacts) -> Iterator[str]:
    """What the plan takes and how good it is; what is joined. Nothing where nothing is cut by the length."""
    plan = cloth.plan
    if plan is None:
        return
    length = show_measure(plan.length, facts.unit)
    if cloth.scraps:
        yield "Its blocks are cut from fat quarters, each block from one print; only the rest is cut by the length."
    if plan.proved:
        yield f"Laid out as below, {length} of fabric is needed: the shortest layout for strips cut this way."
    else:
        more = show_measure(plan.at_most_longer, facts.unit)
        yield f"Laid out as below, {length} of fabric is needed: within {more} of the shortest layout."
    letters = letters_of(cloth)
    for each in cloth.joined:
        said = " and ".join(letters[key] for key in each.keys)
        width = plain_length(each.cut_width, facts.unit)
        yield (
            f"For {said}: sew {many(each.strips, 'strip')} {width} {facts.unit} wide end to end with straight seams, "
            "press the seams open, and cut them to length."
        )


def _said(words: str) -> Slice:
    height, marks = paragraph(fraction_text(words), CONTENT_WIDTH_PT, _QUIET)
    return Slice(height, marks, before_pt=1.5 * STEP_PT, keep=True)


def _layout(lines: Sequence[CutLine], unit: RulerUnit) -> tuple[list[Column], list[tuple[float, float]]]:
    """Narrow columns take what their words need, what it is for the rest."""
    axes, size_pt = lengths_axes([[show_length(side, unit) for side in line.sides] for line in lines], _BODY)

    def need(words: Sequence[str], head: str, style: Style) -> float:
        return max((*(width_of(text, style) for text in words), width_of(head, _SMALL))) + _GAP_PT

    then = [line.then for line in lines]
    columns = [
        Column("", 4 * STEP_PT),
        Column("cut", need([f"{line.count:,}" for line in lines], "cut", _NUMBER), "right", _GAP_PT - STEP_PT),
        Column("piece", need([line.piece for line in lines], "piece", _BODY), gap_pt=_GAP_PT),
        Column("size", max(size_pt, width_of("size", _SMALL)) + _GAP_PT + STEP_PT, gap_pt=_GAP_PT),
        Column("in the picture", need([], "in the picture", _LETTER), gap_pt=_GAP_PT),
        Column("then" if any(then) else "", need(then, "then", _BODY) if any(then) else 0.0, gap_pt=_GAP_PT),
    ]
    rest = CONTENT_WIDTH_PT - sum(column.width_pt for column in columns)
    return [*columns, Column("for", rest, gap_pt=0.0)], axes


def _row(
    line: CutLine,
    columns: Sequence[Column],
    axes: Sequence[tuple[float, float]],
    unit: RulerUnit,
    *,
    ruled: bool,
) -> Slice:
    _, count, piece, _, letter, then, purpose = columns
    uses = ", ".join(f"{name} {number}" if len(line.uses) > 1 else name for name, number in line.uses)
    cells = (
        tick_cell(_BODY),
        words_cell(f"{line.count:,}", count, _NUMBER),
        words_cell(line.piece, piece, _BODY),
        lengths_cell([show_length(side, unit) for side in line.sides], axes, _BODY),
        words_cell(line.letter, letter, _LETTER),
        words_cell(line.then, then, _BODY),
        words_cell(uses, purpose, _QUIET),
    )
    return table_row(columns, cells, ruled=ruled)
