"""What is cut for a whole quilt, fabric by fabric: its lines, and how good the plan of its cloth is."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Final

from msgspec import Struct

from blockdsl.analysis.letters import spell
from blockdsl.cutting.quilt_pieces import MEASURED
from blockdsl.document.content import (
    Card,
    Cards,
    ColumnKind,
    DataCell,
    DataColumn,
    Paragraph,
    Part,
    Picture,
    RowGroup,
    SizeCell,
    Table,
    TickCell,
    plain,
    quiet,
    section,
    strong,
)
from blockdsl.document.materials import finishing_of
from blockdsl.document.pictures import swatch_of
from blockdsl.facts.blockfacts import FabricFacts
from blockdsl.facts.finishingfacts import ClothPieceFacts, FabricClothFacts
from blockdsl.facts.quiltfacts import QuiltCutFacts, QuiltFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.display_list import Mark, moved
from blockdsl.marks.theme import Box
from blockdsl.pictures.cloth import ClothRow, cloth_pictures
from blockdsl.wording import quilt_names
from blockdsl.wording.cutting_rows import format_to_cut
from blockdsl.wording.grammar import in_thousands, listed, many
from blockdsl.wording.lengths import plain_extent, plain_length, plain_measure, show_measure
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import piece_words

_HEADS: Final[tuple[tuple[str, ColumnKind], ...]] = (
    ("head-done", "tick"),
    ("head-cut", "count"),
    ("head-piece", "words"),
    ("head-size", "size"),
    ("head-in-the-picture", "letter"),
    ("head-then", "then"),
    ("head-for", "purpose"),
)
_OF_BLOCK: Final = ("strip", "octagon", "template")


class CutLine(Struct, frozen=True):
    """A size that is cut from a fabric, with the small letter that it has in the pictures below."""

    letter: str
    piece: str
    sides: tuple[Fraction, ...]
    count: int
    then: str
    uses: tuple[tuple[str, int], ...]


def quilt_cutting(facts: QuiltFacts) -> list[Part]:
    """For each fabric its table, how good the plan of its cloth is, and the cloth strip by strip."""
    told, words = finishing_of(facts), words_of(facts)
    fabrics = {fabric.name: fabric for fabric in facts.fabrics_used}
    parts = [
        part for cloth in (told.fabrics if told is not None else ()) for part in _cut_of_cloth(facts, cloth, fabrics)
    ]
    return [section(2, words("cutting"), *parts, aside=words("quilt-cutting-aside"))] if parts else []


def _cut_of_cloth(facts: QuiltFacts, cloth: FabricClothFacts, fabrics: Mapping[str, FabricFacts]) -> Iterator[Part]:
    fabric = fabrics[cloth.fabric]
    yield _table(facts, cloth, fabric)
    for text in format_cloth(facts, cloth):
        yield Paragraph(quiet(text))
    if cloth.plan is not None:
        letters = letters_of(cloth)
        rows = cloth_pictures(cloth.plan, facts, fabric.colour, lambda key: letters.get(key, ""))
        name = words_of(facts)("quilt-cutting-fabric", fabric=fabric.label or fabric.name)
        yield Cards("cloth", tuple(map(cloth_card, rows)), name)


def cloth_card(row: ClothRow) -> Card:
    """A strip, a length or a sheet of cloth, with its number and its words."""

    def drawn(box: Box) -> tuple[tuple[Mark, ...], Box]:
        return moved((row.picture,), box.x_pt, box.y_pt), Box(box.x_pt, box.y_pt, row.width_pt, row.height_pt)

    said = (Paragraph(plain(text)) for text in row.told)
    return Card((Picture(drawn, row.width_pt, row.height_pt), Paragraph(strong(row.said)), *said), number=row.number)


def _table(facts: QuiltFacts, cloth: FabricClothFacts, fabric: FabricFacts) -> Table:
    lines = cut_lines(facts, cloth)
    words, label = words_of(facts), fabric.label or fabric.name
    rows = tuple(_row(facts, line, label) for line in lines)
    kept = [place for place in range(len(_HEADS)) if any(row[place] for row in rows)]
    aside = format_to_cut(sum(line.count for line in lines), words)
    cells = tuple(tuple(row[place] for place in kept) for row in rows)
    columns = tuple(DataColumn(words(_HEADS[place][0]), _HEADS[place][1]) for place in kept)
    caption = words(f"quilt-cutting-caption-{facts.unit}", fabric=label, quilt=facts.name)
    return Table(caption, columns, (RowGroup(cells, plain(label), swatch_of(fabric), aside),))


def _row(facts: QuiltFacts, line: CutLine, label: str) -> tuple[DataCell, ...]:
    words = words_of(facts)
    sides = tuple(plain_length(side, facts.unit, words) for side in line.sides)
    size = words("length", length=" × ".join(sides), unit=facts.unit)
    uses = ", ".join(f"{name} {number}" if len(line.uses) > 1 else name for name, number in line.uses)
    what = words("cutting-tick", count=line.count, piece=line.piece, size=size, fabric=label)
    return (
        TickCell(words("site-done", what=what)),
        plain(in_thousands(line.count, words)),
        plain(line.piece),
        SizeCell(sides),
        plain(line.letter),
        plain(line.then) if line.then else (),
        plain(uses) if uses else (),
    )


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


def format_cloth(facts: QuiltFacts, cloth: FabricClothFacts) -> Iterator[str]:
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
