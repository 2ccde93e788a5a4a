"""What is cut for a block: the table by fabric, cuts at an angle, the maker's cutters, what changes in a colourway."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.document.content import (
    Card,
    Cards,
    ColumnKind,
    DataCell,
    DataColumn,
    Definition,
    DefinitionList,
    Heading,
    Paragraph,
    Part,
    RowGroup,
    Section,
    SizeCell,
    Table,
    TextRun,
    TickCell,
    plain,
    quiet,
    section,
    strong,
)
from blockdsl.document.pictures import of_cut, swatch_of
from blockdsl.facts.blockfacts import BlockFacts, ColourwayFacts, CutFacts, LackingFacts
from blockdsl.pictures.strip import has_picture
from blockdsl.wording.cutting_rows import cuts_by_fabric, format_to_cut, plain_cut_size
from blockdsl.wording.grammar import in_clauses, in_thousands, listed, many, name_of
from blockdsl.wording.lengths import plain_length, plain_measure, plain_size
from blockdsl.wording.messages import Messages, words_of
from blockdsl.wording.sheet import format_finished, format_piece, format_purpose, format_sizes, format_subcut
from blockdsl.wording.strips import is_handed

Totals = Mapping[int, int]
"""For a cut, by its place in the block's list, how many are cut for a whole quilt."""
_BEFORE: Final[tuple[tuple[str, ColumnKind], ...]] = (("done", "tick"), ("cut", "count"), ("piece", "words"))
_AFTER: Final[tuple[tuple[str, ColumnKind], ...]] = (("then", "then"), ("patch", "letter"), ("for", "purpose"))
_OWN_WORDS: Final = ("half", "quarter", "diamond")


# --- the table -----------------------------------------------------------------------------------------


def cutting(sizes: Sequence[BlockFacts], level: int) -> list[Part]:
    """A table for all sizes that are cut alike, with a column for each; nothing when there is nothing to cut."""
    alike: dict[object, list[int]] = {}
    for place, facts in enumerate(sizes, start=1):
        if facts.cutting:
            alike.setdefault(_way_of_cutting(facts), []).append(place)
    words = words_of(sizes[0])
    parts: list[Part] = []
    for places in alike.values():
        group = [sizes[place - 1] for place in places]
        title = words("cutting") if len(alike) == 1 else words("sizes-cutting-for", sizes=format_sizes(group))
        aside = words("sizes-cutting-aside" if len(group) > 1 else f"cutting-sizes-{group[0].unit}")
        finished = format_sizes(group) if len(sizes) > 1 else ""
        part = section(level, title, cutting_table(group, finished=finished, places=places), aside=aside)
        parts.append(replace(part, at=tuple(places)) if len(alike) > 1 else part)
    return parts


def _way_of_cutting(facts: BlockFacts) -> object:
    """Equal for sizes that differ in nothing but the sizes of their pieces."""
    return tuple(
        (
            cut.fabric,
            cut.label,
            cut.piece,
            cut.subcut,
            cut.method,
            cut.unit,
            cut.count,
            cut.yields,
            cut.spare,
            cut.slant,
            cut.upright,
            cut.print_up,
            cut.strip and cut.strip.strips,
        )
        for cut in facts.cutting
    )


def cutting_table(
    sizes: Sequence[BlockFacts], totals: Totals | None = None, finished: str = "", places: Sequence[int] = ()
) -> Table:
    """By fabric, a row to tick off for each size; columns with no words are left out.

    With `totals` the table of one block of a quilt: what all of them take stands beside each line, and nothing is said
    of what is left over, since what one leaves the next one takes. `finished` are the block's sizes where it has more,
    `places` where these stand among them, from 1.
    """
    first, words = sizes[0], words_of(sizes[0])
    last = "spare" if totals is None else "in-all"
    columns = [
        *(DataColumn(words(f"head-{name}"), kind) for name, kind in _BEFORE),
        *(
            DataColumn(format_finished(facts), "size", place)
            if len(sizes) > 1
            else DataColumn(words("head-size"), "size")
            for facts, place in zip(sizes, places or range(1, len(sizes) + 1), strict=True)
        ),
        *(DataColumn(words(f"head-{name}"), kind) for name, kind in _AFTER),
        DataColumn(words(f"head-{last}"), "spare"),
    ]
    tables = [cuts_by_fabric(facts) for facts in sizes]
    groups = [
        (fabric, cuts, [_row(sizes, [table[at][1][row] for table in tables], totals) for row in range(len(cuts))])
        for at, (fabric, cuts) in enumerate(tables[0])
    ]
    kept = [place for place in range(len(columns)) if any(row[place] for _, _, rows in groups for row in rows)]
    caption = f"cutting-caption{'-at' if finished else ''}-{first.unit}"
    return Table(
        words(caption, block=first.name, finished=finished),
        tuple(columns[place] for place in kept),
        tuple(
            RowGroup(
                tuple(tuple(row[place] for place in kept) for row in rows),
                plain(fabric.label or fabric.name),
                swatch_of(fabric),
                format_to_cut(sum(cut.count for cut in cuts), words),
            )
            for fabric, cuts, rows in groups
        ),
    )


def _row(sizes: Sequence[BlockFacts], cuts: Sequence[CutFacts], totals: Totals | None) -> tuple[DataCell, ...]:
    """A cell for each column; one with nothing to say is empty."""
    facts, cut = sizes[0], cuts[0]
    words, piece = words_of(facts), format_piece(cut, words_of(facts))
    fabric = next(fabric.label or fabric.name for fabric in facts.fabrics if fabric.name == cut.fabric)
    what = words("cutting-tick", count=cut.count, piece=piece, size=plain_cut_size(cut, facts), fabric=fabric)
    number = cut.spare if totals is None else totals.get(facts.cutting.index(cut), 0)
    return (
        TickCell(words("site-done", what=what)),
        plain(in_thousands(cut.count, words)),
        plain(piece),
        *(
            SizeCell(tuple(plain_length(side, at_size.unit, words) for side in at_this.sides))
            for at_size, at_this in zip(sizes, cuts, strict=True)
        ),
        _said(format_subcut(cut, facts.unit if len(sizes) == 1 else None, words)),
        _said(cut.label),
        _said(format_purpose(cut, words)),
        _said(in_thousands(number, words) if number else ""),
    )


def _said(text: str) -> DataCell:
    return plain(text) if text else ()


# --- cuts at an angle ----------------------------------------------------------------------------------


def cuts_at_an_angle(facts: BlockFacts, level: int, *, remark: str = "") -> list[Part]:
    """A picture for each way of cutting, strips before rectangles; nothing where all cuts are square."""
    shown: dict[object, CutFacts] = {}
    for cut in facts.cutting:
        if has_picture(cut):
            shown.setdefault((cut.label, cut.cut, cut.slant, cut.outside), cut)
    if not shown:
        return []
    words = words_of(facts)
    strips = tuple(_cut_card(cut, facts) for cut in shown.values() if cut.strip is not None)
    others = tuple(_cut_card(cut, facts) for cut in shown.values() if cut.strip is None)
    of_corners = [cut.corner is not None for cut in shown.values()]
    handed = any(is_handed(cut) for cut in shown.values())
    remarks = (("layers", handed), ("ruler", not all(of_corners)), ("corners", any(of_corners)))
    parts: list[Part] = [Paragraph(quiet(remark))] if remark else []
    parts += [Cards("strips", strips)] if strips else []
    parts += [Cards("cuts", others)] if others else []
    parts += [Paragraph(quiet(words(f"angle-{name}"))) for name, meant in remarks if meant]
    return [section(level, words("angle-title"), *parts, aside=words("angle-aside"))]


def _cut_card(cut: CutFacts, facts: BlockFacts) -> Card:
    words = words_of(facts)
    key = "-".join(["angle", *(["one-layer"] if is_handed(cut) else []), *(["edge"] if cut.outside else [])])
    what = _what_is_cut(cut, words) if key == "angle" else words(key, what=_what_is_cut(cut, words))
    return Card((Paragraph((TextRun(cut.label, "strong"), TextRun(f" {what}", "quiet"))), of_cut(facts, cut)))


def _what_is_cut(cut: CutFacts, words: Messages) -> str:
    if cut.corner is not None:
        return words("angle-octagon")
    if cut.strip is None:
        return words("angle-rectangle")
    piece = name_of(f"piece-{cut.piece}", words)
    return words("angle-turned", piece=piece) if cut.strip.form == "turned" else str(piece)


# --- the maker's cutters -------------------------------------------------------------------------------


def cutters(facts: BlockFacts, level: int) -> list[Part]:
    """A line for each cutter of the maker's that the block can use, then what she lacks; nothing without cutters."""
    if not facts.cutters:
        return []
    words = words_of(facts)
    letters = {
        label: tuple(dict.fromkeys(cut.label for cut in facts.cutting if label in cut.cutters))
        for label in facts.cutters
    }
    lines = [Definition(label, (plain(_format_patches(found, words)),)) for label, found in letters.items() if found]
    lines = lines or [Definition("", (plain(words("cutters-none")),))]
    lines += [
        Definition(words("cutters-lacking"), (quiet(_format_lacking(lacking, facts)),)) for lacking in facts.lacking
    ]
    return [section(level, words("cutters-title"), DefinitionList(tuple(lines), "lines"), aside=words("cutters-aside"))]


def _format_lacking(lacking: LackingFacts, facts: BlockFacts) -> str:
    """The letters and the cutter that would be of use to them."""
    words = words_of(facts)
    patches = _format_patches(lacking.labels, words)
    return words("cutters-lacking-what", patches=patches, cutter=format_lacking(lacking, facts))


def format_lacking(lacking: LackingFacts, facts: BlockFacts) -> str:
    """The cutter that would be of use: `square, 3 in finished`, `strip, 2 1/2 in wide`."""
    words, shape = words_of(facts), lacking.shape
    name = words(f"cutters-{shape}") if shape in _OWN_WORDS else name_of(f"piece-{shape}", words)
    if shape == "rectangle":
        return words("cutters-finished", shape=name, size=plain_size(lacking.size, facts.unit, words))
    size = plain_measure(lacking.size[0], facts.unit, words)
    return words("cutters-wide" if shape == "strip" else "cutters-finished", shape=name, size=size)


def _format_patches(letters: Sequence[str], words: Messages) -> str:
    return words("cutters-patches", count=len(letters), letters=", ".join(letters))


# --- in a colourway ------------------------------------------------------------------------------------


def recutting(facts: BlockFacts, level: int) -> Iterator[Section]:
    """A short table for each colourway that has a cutting table of its own: only the fabrics that change."""
    words = words_of(facts)
    columns = (
        DataColumn(words("head-fabric"), "swatch"),
        *(DataColumn(words(head), "words") for head in ("head-fabric", "head-in-place-of", "head-cut")),
    )
    for plan in facts.colourways:
        rows = tuple(_rows_of(facts, plan))
        if rows:
            title = words("sheet-in-colorway", name=plan.name)
            table = Table(title, columns, (RowGroup(rows),), whole=True)
            aside = words("recut-aside") if len(rows) < len(plan.fabrics) else ""
            yield Section(Heading(level, plain(title), aside=aside), (table,), spare=True)


def _rows_of(facts: BlockFacts, plan: ColourwayFacts) -> Iterator[tuple[DataCell, ...]]:
    """A row for each fabric that takes another's place."""
    words = words_of(facts)
    labels = {fabric.name: fabric.label or fabric.name for fabric in facts.fabrics}
    for fabric in plan.fabrics:
        places = [old for old, new in plan.replaces.items() if new == fabric.name]
        cuts = [cut for cut in plan.cutting if cut.fabric == fabric.name]
        if places == [fabric.name] or not cuts:
            continue
        before = [replace(cut, fabric=fabric.name) for cut in facts.cutting if cut.fabric in places]
        instead = listed([labels[old] for old in places], words)
        what = _what_changes(facts, cuts, before, len(places))
        yield (swatch_of(fabric), strong(fabric.label or fabric.name), quiet(instead), plain(what))


def _what_changes(facts: BlockFacts, cuts: Sequence[CutFacts], before: Sequence[CutFacts], places: int) -> str:
    """That it is the same as in the table above, or all of it where pieces of several fabrics come together."""
    words = words_of(facts)
    pieces = many(sum(cut.count for cut in cuts), "pieces", words)
    if places == 1 and _in_order(cuts) == _in_order(before):
        return words("recut-same", pieces=pieces)
    return words("recut-all", pieces=pieces, cuts=in_clauses((_format_cut(cut, facts) for cut in cuts), words))


def _in_order(cuts: Iterable[CutFacts]) -> list[CutFacts]:
    """Lines to be compared, whatever they are listed after."""
    return sorted((replace(cut, shares=(), cutters=()) for cut in cuts), key=repr)


def _format_cut(cut: CutFacts, facts: BlockFacts) -> str:
    words = words_of(facts)
    then = format_subcut(cut, facts.unit, words)
    size = " × ".join(plain_length(side, facts.unit, words) for side in cut.sides)
    key = f"recut-{'template' if cut.piece == 'template' else 'line'}{'-then' if then else ''}"
    return words(key, count=cut.count, piece=format_piece(cut, words), size=size, letter=cut.label, then=then)
