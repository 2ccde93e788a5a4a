"""The tables of a quilt's page: what is cut from each fabric, with its cloth drawn; and what the rows measure."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from typing import Final

from blockdsl.document.assembly import alike_rows
from blockdsl.document.materials import finishing_of
from blockdsl.document.parts import (
    Card,
    Cards,
    ColumnKind,
    DataColumn,
    DocumentPart,
    DocumentSection,
    Heading,
    Image,
    Paragraph,
    RowGroup,
    SizeCell,
    Table,
    TextRun,
    TickCell,
    plain,
)
from blockdsl.document.pictures import swatch_page
from blockdsl.document.quilt_cuts import CutLine, cut_lines, format_cloth, letters_of
from blockdsl.facts.blockfacts import FabricFacts
from blockdsl.facts.finishingfacts import FabricClothFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.marks.display_list import Page, moved
from blockdsl.pictures.cloth import ClothRow, cloth_pictures
from blockdsl.wording.cutting_rows import format_to_cut
from blockdsl.wording.grammar import in_thousands
from blockdsl.wording.lengths import plain_length
from blockdsl.wording.messages import words_of

_HEADS: Final[tuple[tuple[str, ColumnKind], ...]] = (
    ("head-done", "tick"),
    ("head-cut", "count"),
    ("head-piece", "words"),
    ("head-size", "size"),
    ("head-then", "then"),
    ("head-in-the-picture", "letter"),
    ("head-for", "purpose"),
)


def cutting_parts(facts: QuiltFacts) -> Iterator[DocumentPart]:
    """For each fabric a section: its table, how good the plan of its cloth is, the cloth strip by strip."""
    told = finishing_of(facts)
    fabrics = {fabric.name: fabric for fabric in facts.fabrics_used}
    for cloth in told.fabrics if told is not None else ():
        fabric = fabrics[cloth.fabric]
        label = fabric.label or fabric.name
        parts: list[DocumentPart] = [_table(facts, cloth, fabric)]
        parts += [Paragraph((TextRun(text, "quiet"),)) for text in format_cloth(facts, cloth)]
        if cloth.plan is not None:
            letters = letters_of(cloth)
            rows = cloth_pictures(cloth.plan, facts, fabric.colour, _name_in(letters))
            parts.append(Cards("cloth", tuple(map(_cloth_card, rows))))
        yield DocumentSection(Heading(3, plain(label)), tuple(parts))


def _name_in(letters: Mapping[str, str]) -> Callable[[str], str]:
    return lambda key: letters.get(key, "")


def _cloth_card(row: ClothRow) -> Card:
    """A strip or a length of cloth with its number and its words."""
    page = Page(row.width_pt + 2.0, row.height_pt + 2.0, moved([row.picture], 1.0, 1.0))
    told = (Paragraph(plain(text)) for text in row.told)
    return Card((Image(page), Heading(4, (TextRun(f"{row.number} "), TextRun(row.said))), *told))


def _table(facts: QuiltFacts, cloth: FabricClothFacts, fabric: FabricFacts) -> Table:
    lines = cut_lines(facts, cloth)
    label = fabric.label or fabric.name
    words = words_of(facts)
    aside = format_to_cut(sum(line.count for line in lines), words)
    rows = tuple(_row(facts, line, label) for line in lines)
    kept = [place for place in range(len(_HEADS)) if any(row[place] for row in rows)]
    group = RowGroup(
        tuple(tuple(row[place] for place in kept) for row in rows), (TextRun(label),), swatch_page(fabric), aside
    )
    caption = words(f"quilt-cutting-caption-{facts.unit}", fabric=label, quilt=facts.name)
    columns = tuple(DataColumn(words(_HEADS[place][0]), _HEADS[place][1]) for place in kept)
    return Table(caption, columns, (group,))


def _row(facts: QuiltFacts, line: CutLine, label: str) -> tuple[TickCell | SizeCell | tuple[TextRun, ...], ...]:
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
        plain(line.then) if line.then else (),
        plain(line.letter),
        plain(uses) if uses else (),
    )


def rows_table(facts: QuiltFacts) -> Table:
    """The rows of the top, those that are alike on one line, with what each should measure."""
    words, rows = words_of(facts), []
    for name, members, size in alike_rows(facts):
        tick = TickCell(words("site-done", what=words("rows-tick", rows=name, size=size)))
        rows.append((tick, plain(name), plain(members), (TextRun(size, "strong"),)))
    heads = ("rows-head-row", "rows-head-takes", "rows-head-measure")
    columns = (DataColumn(words("head-done"), "tick"), *(DataColumn(words(key), "words") for key in heads))
    return Table(words("rows-caption", quilt=facts.name), columns, (RowGroup(tuple(rows)),))
