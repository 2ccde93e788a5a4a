"""The units of a block: each pictured once, with what it should measure; and the ways of making them compared."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec.structs import replace

from blockdsl.document.content import (
    NO_LESSONS,
    Card,
    Cards,
    DataCell,
    DataColumn,
    Heading,
    Lessons,
    Paragraph,
    Part,
    RowGroup,
    Section,
    Table,
    TextRun,
    Tick,
    plain,
    quiet,
    section,
    strong,
)
from blockdsl.document.pictures import of_unit
from blockdsl.facts.blockfacts import BlockFacts, UnitFacts
from blockdsl.facts.blockrecord import Alternative
from blockdsl.geometry import to_float
from blockdsl.pictures.block import Fabrics, fabrics_of
from blockdsl.wording.grammar import capital, in_clauses, name_of
from blockdsl.wording.lengths import plain_size
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import format_finished, format_method, format_sides, unit_title


def units_to_make(sizes: Sequence[BlockFacts], level: int, lessons: Lessons = NO_LESSONS) -> list[Part]:
    """The units with what they measure at each size; sizes whose units differ have a section each."""
    words = words_of(sizes[0])
    if len({_way_of_making(facts) for facts in sizes}) > 1:
        return [
            replace(
                _section(words("units-title-size", size=format_finished(facts)), [facts], level, lessons), at=(place,)
            )
            for place, facts in enumerate(sizes, start=1)
            if facts.units
        ]
    return [_section(words("units-title"), sizes, level, lessons)] if sizes[0].units else []


def _way_of_making(facts: BlockFacts) -> object:
    return tuple((unit.title, unit.count, unit.method, unit.spare) for unit in facts.units)


def _section(title: str, sizes: Sequence[BlockFacts], level: int, lessons: Lessons) -> Section:
    fabrics = fabrics_of(sizes[0])
    alike = zip(*(facts.units for facts in sizes), strict=True)
    cards = tuple(_card(sizes, units, fabrics, level + 1, lessons) for units in alike)
    return section(level, title, Cards("units", cards), aside=words_of(sizes[0])("units-aside"))


def _card(
    sizes: Sequence[BlockFacts], units: Sequence[UnitFacts], fabrics: Fabrics, level: int, lessons: Lessons
) -> Card:
    facts, unit, words = sizes[0], units[0], words_of(sizes[0])
    spare = (TextRun(words("units-spare", count=unit.spare)),) if unit.spare else ()
    lesson = lessons.get(unit.method)
    said = TextRun(words("units-method", method=format_method(unit.method, words)), "quiet")
    method = Paragraph((replace(said, target=lesson.target) if lesson is not None else said,))
    finished = Paragraph(quiet(words("units-finished", size=plain_size(unit.finished, facts.unit, words))))
    measure = words("units-measure", size=plain_size(unit.unfinished, facts.unit, words))
    one_size: tuple[Part, ...] = (finished, method, Tick(strong(measure)))
    return Card(
        (
            of_unit(facts, unit, fabrics),
            Heading(level, plain(capital(unit_title(unit, words)))),
            Paragraph((TextRun(words("units-make", count=unit.count), "strong"), *spare)),
            *(one_size if len(sizes) == 1 else (method, _measures(sizes, units))),
        )
    )


def _measures(sizes: Sequence[BlockFacts], units: Sequence[UnitFacts]) -> Table:
    """For each size of the block what the unit should measure, and its finished size."""
    words = words_of(sizes[0])
    rows: tuple[tuple[DataCell, ...], ...] = tuple(
        (
            plain(format_finished(facts)),
            strong(plain_size(unit.unfinished, facts.unit, words)),
            quiet(plain_size(unit.finished, facts.unit, words)),
        )
        for facts, unit in zip(sizes, units, strict=True)
    )
    columns = tuple(DataColumn(words(f"units-head-{name}"), "words") for name in ("block", "measure", "finished"))
    return Table(capital(unit_title(units[0], words)), columns, (RowGroup(rows, by_size=True),))


# --- ways of making ------------------------------------------------------------------------------------


def methods_compared(facts: BlockFacts, level: int) -> list[Part]:
    """A group for each unit with a row for each way; nothing unless the block asks for it."""
    if not facts.compares_methods:
        return []
    pairs = [(unit, ways) for unit, ways in zip(facts.units, facts.alternatives, strict=True) if len(ways) > 1]
    if not pairs:
        return []
    words = words_of(facts)
    columns = (
        DataColumn(words("methods-head-method"), "words"),
        DataColumn(words("methods-head-cut"), "words"),
        DataColumn(words("methods-head-waste", unit=facts.unit), "number"),
        DataColumn(words("methods-head-seams"), "number"),
    )
    groups = tuple(
        RowGroup(
            tuple(_way(facts, way) for way in ways),
            plain(words("methods-unit", unit=capital(unit_title(unit, words)), count=unit.count)),
        )
        for unit, ways in pairs
    )
    table = Table(words("methods-title"), columns, groups)
    return [section(level, words("methods-title"), table, aside=words("methods-aside"))]


def _way(facts: BlockFacts, way: Alternative) -> tuple[DataCell, ...]:
    words = words_of(facts)
    method = format_method(way.method, words)
    method = words("methods-spare", method=method, count=way.spare) if way.spare else method
    texts = (method, _format_way(way, facts), f"{to_float(way.waste):.0f}", str(way.seams))
    return tuple((strong if way.chosen else plain)(text) for text in texts)


def _format_way(way: Alternative, facts: BlockFacts) -> str:
    """What is cut for one way, in words."""
    words = words_of(facts)
    labels = {fabric.name: fabric.label for fabric in facts.fabrics}
    cuts = []
    for cut in way.cuts:
        size = format_sides(cut.cut, facts.unit, words, square=cut.piece == "square")
        key = "methods-cut" if cut.subcut == "none" else f"methods-cut-{cut.subcut}"
        piece = name_of(f"piece-{cut.piece}", words, count=cut.count)
        cuts.append(words(key, count=cut.count, fabric=labels[cut.fabric], piece=piece, size=size))
    return in_clauses(cuts, words)
