"""Cutting for a whole quilt, fabric by fabric: what is cut, then how the cloth is laid out for it, in order."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.analysis.letters import spell
from blockdsl.cutting.cloth import ClothPlan
from blockdsl.cutting.quilt_pieces import MEASURED
from blockdsl.facts.blockfacts import FabricFacts, RulerUnit
from blockdsl.facts.finishingfacts import ClothPieceFacts, FabricClothFacts
from blockdsl.facts.quiltfacts import QuiltCutFacts, QuiltFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.prose import TextStyle, paragraph, width_of
from blockdsl.marks.theme import ACCENT, BODY_PT, CONTENT_WIDTH_PT, INK, QUIET, SMALL_PT, STEP_PT
from blockdsl.page.cloth import cloth_pictures
from blockdsl.page.flow import Flowable, stacked
from blockdsl.page.headings import continued, heading
from blockdsl.page.quilt.materials import finishing_of
from blockdsl.page.sheet.cutting import fabric_group
from blockdsl.page.table import (
    TableColumn,
    grouped,
    lengths_axes,
    lengths_cell,
    table_head,
    table_row,
    tick_cell,
    words_cell,
)
from blockdsl.wording import quilt_names
from blockdsl.wording.grammar import in_thousands, listed, many
from blockdsl.wording.lengths import plain_extent, plain_measure, show_length, show_measure
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import piece_words

_NUMBER: Final = TextStyle(BODY_PT, "bold", INK)
_BODY: Final = TextStyle(BODY_PT, "regular", INK)
_LETTER: Final = TextStyle(BODY_PT, "bold", ACCENT)
_QUIET: Final = TextStyle(BODY_PT, "regular", QUIET)
_SMALL: Final = TextStyle(SMALL_PT, "regular", QUIET)
_GAP_PT: Final = 3 * STEP_PT
_OF_BLOCK: Final = ("strip", "octagon", "template")


class CutLine(Struct, frozen=True):
    """A size that is cut from a fabric, with the small letter that it has in the pictures below."""

    letter: str
    piece: str
    sides: tuple[Fraction, ...]
    count: int
    then: str
    uses: tuple[tuple[str, int], ...]


def quilt_cutting(facts: QuiltFacts) -> list[Flowable]:
    """The heading, then each fabric: its table, and its cloth as it is cut."""
    told = finishing_of(facts)
    if told is None:
        return []
    fabrics = {fabric.name: fabric for fabric in facts.fabrics_used}
    words = words_of(facts)
    flowables = [heading(words("cutting"), aside=words("quilt-cutting-aside"))]
    for place, cloth in enumerate(told.fabrics):
        section = _fabric(facts, cloth, fabrics[cloth.fabric])
        flowables += [replace(section[0], before_pt=4 * STEP_PT if place else 0.0), *section[1:]]
    return flowables


def cut_lines(facts: QuiltFacts, cloth: FabricClothFacts) -> list[CutLine]:
    """All that is cut from a fabric, in the order of its letters."""
    return [_line(facts, cloth.fabric, piece, spell(place).lower()) for place, piece in enumerate(cloth.pieces)]


def quilt_cutting_rows(facts: QuiltFacts) -> tuple[tuple[str, ...], list[tuple[str, ...]]]:
    """Headers and rows of all that is cut, for tables in Markdown and CSV; sizes carry their unit."""
    told, words = finishing_of(facts), words_of(facts)
    labels = {fabric.name: fabric.label or fabric.name for fabric in facts.fabrics_used}
    rows: list[tuple[str, ...]] = [
        (
            labels[cloth.fabric],
            str(line.count),
            line.piece,
            words("length", length=plain_extent(line.sides, facts.unit, words), unit=facts.unit),
            line.then,
            ", ".join(name for name, _ in line.uses),
        )
        for cloth in (told.fabrics if told is not None else ())
        for line in cut_lines(facts, cloth)
    ]
    heads = ("fabric", "cut", "piece", "size", "then", "for")
    return tuple(words(f"head-{name}") for name in heads), rows


def _line(facts: QuiltFacts, fabric: str, piece: ClothPieceFacts, letter: str) -> CutLine:
    words, cut = words_of(facts), _cut_of(facts, piece.key)
    square = piece.cut[0] == piece.cut[1]
    if cut is None:  # binding and sleeve
        what = piece_words("square" if square else "strip", piece.count, words)
        return CutLine(letter, what, _sides(piece.cut), piece.count, "", _named(facts, piece, fabric))
    of_block = cut.piece if cut.piece in _OF_BLOCK and any(":" in use for use in cut.uses) else ""
    told = ("lengthwise" if cut.lengthwise else "", "" if cut.subcut == "none" else cut.subcut, of_block)
    then = ", ".join(words(f"quilt-then-{what}") for what in told if what)
    strips = not square and all(use in MEASURED for use in cut.uses)
    what = piece_words("strip" if strips else cut.piece, cut.count, words)
    return CutLine(letter, what, _sides(piece.cut), piece.count, then, _named(facts, piece, fabric))


def _named(facts: QuiltFacts, piece: ClothPieceFacts, fabric: str) -> tuple[tuple[str, int], ...]:
    """What the pieces are for, as the steps call it."""
    names = quilt_names(facts)
    return tuple((names.use(use, fabric, piece.cut), count) for use, count in piece.uses.items())


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


def _fabric(facts: QuiltFacts, cloth: FabricClothFacts, fabric: FabricFacts) -> list[Flowable]:
    lines = cut_lines(facts, cloth)
    words = words_of(facts)
    columns, axes = _layout(lines, facts.unit, words)
    head = table_head(columns)
    height, again = stacked([continued(words("cutting"), words), head])
    rows = [_row(line, columns, axes, facts, ruled=place > 0) for place, line in enumerate(lines)]
    group = fabric_group(fabric, sum(line.count for line in lines), words)
    table = grouped(Flowable(height, again, keep_with_next=True), group, rows, fabric_group(fabric, None, words))
    flowables = [head, *table]
    flowables += [_said(text) for text in say_cloth(facts, cloth)]
    if cloth.plan is not None:
        title = words("quilt-cutting-fabric", fabric=fabric.label or fabric.name)
        named = (continued(title, words),)
        flowables += [replace(row, head=named) for row in cloth_rows(facts, cloth, cloth.plan, fabric)]
    return flowables


def cloth_rows(facts: QuiltFacts, cloth: FabricClothFacts, plan: ClothPlan, fabric: FabricFacts) -> list[Flowable]:
    """The cloth strip by strip, each piece with its letter."""
    letters = letters_of(cloth)
    return cloth_pictures(plan, facts, fabric.colour, lambda key: letters.get(key, ""))


def say_cloth(facts: QuiltFacts, cloth: FabricClothFacts) -> Iterator[str]:
    """What the plan takes and how good it is; what is joined. Nothing where nothing is cut by the length."""
    plan = cloth.plan
    if plan is None:
        return
    words = words_of(facts)
    length = show_measure(plan.length, facts.unit, words)
    if cloth.scraps:
        yield words("cloth-from-prints")
    if plan.proved:
        yield words("cloth-shortest", length=length)
    else:
        yield words("cloth-within", length=length, more=show_measure(plan.at_most_longer, facts.unit, words))
    letters = letters_of(cloth)
    for each in cloth.joined:
        said = listed([letters[key] for key in each.keys], words)
        width, strips = plain_measure(each.cut_width, facts.unit, words), many(each.strips, "strips", words)
        yield words("cloth-joined", count=each.strips, letters=said, strips=strips, width=width)


def _said(words: str) -> Flowable:
    height, marks = paragraph(fraction_text(words), CONTENT_WIDTH_PT, _QUIET)
    return Flowable(height, marks, before_pt=1.5 * STEP_PT, keep_with_next=True)


def _layout(
    lines: Sequence[CutLine], unit: RulerUnit, words: Messages
) -> tuple[list[TableColumn], list[tuple[float, float]]]:
    """Narrow columns take what their words need, what it is for the rest."""
    axes, size_pt = lengths_axes([[show_length(side, unit, words) for side in line.sides] for line in lines], _BODY)

    heads = {name: words(f"head-{name}") for name in ("cut", "piece", "size", "in-the-picture", "then", "for")}

    def need(texts: Sequence[str], head: str, style: TextStyle) -> float:
        return max((*(width_of(text, style) for text in texts), width_of(head, _SMALL))) + _GAP_PT

    then, counts = [line.then for line in lines], [in_thousands(line.count, words) for line in lines]
    columns = [
        TableColumn("", 4 * STEP_PT),
        TableColumn(heads["cut"], need(counts, heads["cut"], _NUMBER), "right", _GAP_PT - STEP_PT),
        TableColumn(heads["piece"], need([line.piece for line in lines], heads["piece"], _BODY), gap_pt=_GAP_PT),
        TableColumn(heads["size"], max(size_pt, width_of(heads["size"], _SMALL)) + _GAP_PT + STEP_PT, gap_pt=_GAP_PT),
        TableColumn(heads["in-the-picture"], need([], heads["in-the-picture"], _LETTER), gap_pt=_GAP_PT),
        TableColumn(
            heads["then"] if any(then) else "", need(then, heads["then"], _BODY) if any(then) else 0.0, gap_pt=_GAP_PT
        ),
    ]
    rest = CONTENT_WIDTH_PT - sum(column.width_pt for column in columns)
    return [*columns, TableColumn(heads["for"], rest, gap_pt=0.0)], axes


def _row(
    line: CutLine,
    columns: Sequence[TableColumn],
    axes: Sequence[tuple[float, float]],
    facts: QuiltFacts,
    *,
    ruled: bool,
) -> Flowable:
    words = words_of(facts)
    _, count, piece, _, letter, then, purpose = columns
    uses = ", ".join(f"{name} {number}" if len(line.uses) > 1 else name for name, number in line.uses)
    cells = (
        tick_cell(_BODY),
        words_cell(in_thousands(line.count, words), count, _NUMBER),
        words_cell(line.piece, piece, _BODY),
        lengths_cell([show_length(side, facts.unit, words) for side in line.sides], axes, _BODY),
        words_cell(line.letter, letter, _LETTER),
        words_cell(line.then, then, _BODY),
        words_cell(uses, purpose, _QUIET),
    )
    return table_row(columns, cells, ruled=ruled)
