"""The tables of a quilt's page: what is cut from each fabric, with its cloth drawn; and what the rows measure."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from blockdsl.document.parts import (
    Column,
    Heading,
    Paragraph,
    Part,
    Picture,
    RowGroup,
    Run,
    Section,
    SizeCell,
    Table,
    TickCell,
    plain,
)
from blockdsl.document.pictures import cloth_page, swatch_page
from blockdsl.facts.blockfacts import FabricFacts
from blockdsl.facts.finishingfacts import FabricClothFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.page.quilt.assembly import alike_rows
from blockdsl.page.quilt.cutting import CutLine, cut_lines, say_cloth
from blockdsl.page.quilt.materials import finishing_of
from blockdsl.pictures.lengths import plain_length
from blockdsl.pictures.words import many

_COLUMNS: Final = (
    Column("done", "tick"),
    Column("cut", "count"),
    Column("piece", "words"),
    Column("size", "size"),
    Column("then", "then"),
    Column("in the picture", "letter"),
    Column("for", "purpose"),
)
_ROWS: Final = (
    Column("done", "tick"),
    Column("row", "words"),
    Column("takes", "words"),
    Column("should measure, raw edges", "words"),
)


def cutting_parts(facts: QuiltFacts) -> Iterator[Part]:
    """For each fabric a section: its table, how good the plan of its cloth is, the cloth strip by strip."""
    told = finishing_of(facts)
    fabrics = {fabric.name: fabric for fabric in facts.fabrics_used}
    for cloth in told.fabrics if told is not None else ():
        fabric = fabrics[cloth.fabric]
        label = fabric.label or fabric.name
        parts: list[Part] = [_table(facts, cloth, fabric)]
        parts += [Paragraph((Run(text, "quiet"),)) for text in say_cloth(facts, cloth)]
        if cloth.plan is not None:
            parts.append(Picture(cloth_page(facts, cloth, cloth.plan, fabric)))
        yield Section(Heading(3, plain(label)), tuple(parts))


def _table(facts: QuiltFacts, cloth: FabricClothFacts, fabric: FabricFacts) -> Table:
    lines = cut_lines(facts, cloth)
    label = fabric.label or fabric.name
    unit = "inches" if facts.unit == "in" else "centimetres"
    aside = f"{many(sum(line.count for line in lines), 'piece')} to cut"
    rows = tuple(_row(facts, line, label) for line in lines)
    kept = [place for place in range(len(_COLUMNS)) if any(row[place] for row in rows)]
    group = RowGroup(
        tuple(tuple(row[place] for place in kept) for row in rows), (Run(label),), swatch_page(fabric), aside
    )
    caption = f"Pieces of {label} for {facts.name}: sizes in {unit}, with seam allowance"
    return Table(caption, tuple(_COLUMNS[place] for place in kept), (group,))


def _row(facts: QuiltFacts, line: CutLine, label: str) -> tuple[TickCell | SizeCell | tuple[Run, ...], ...]:
    sides = tuple(plain_length(side, facts.unit) for side in line.sides)
    uses = ", ".join(f"{name} {number}" if len(line.uses) > 1 else name for name, number in line.uses)
    return (
        TickCell(f"{line.count} {line.piece} {' × '.join(sides)} {facts.unit}, {label}"),
        plain(f"{line.count:,}"),
        plain(line.piece),
        SizeCell(sides),
        plain(line.then) if line.then else (),
        plain(line.letter),
        plain(uses) if uses else (),
    )


def rows_table(facts: QuiltFacts) -> Table:
    """The rows of the top, those that are alike on one line, with what each should measure."""
    rows = []
    for name, members, size in alike_rows(facts):
        rows.append((TickCell(f"{name}, {size}"), plain(name), plain(members), (Run(size, "strong"),)))
    return Table(f"Rows of {facts.name}", _ROWS, (RowGroup(tuple(rows)),))
