"""What is shown for the place under the pointer: a picture, sizes, what is cut, how a word is written."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec import Struct

from blockdsl.cutting import BlockCuts
from blockdsl.diagnostics import Span
from blockdsl.editor.mentions import Mention, mention_at
from blockdsl.editor.nodes import declaration_of, node_of, nodes_around
from blockdsl.editor.pictures import block_image, part_image, quilt_image, shape_image, swatch_image
from blockdsl.editor.project import Reading
from blockdsl.editor.signatures import usages
from blockdsl.facts import BlockFacts, QuiltFacts
from blockdsl.facts.blockfacts import CutFacts, Extent, UnitFacts
from blockdsl.geometry import Exact
from blockdsl.model import Fabric, UnitPlace
from blockdsl.shapes import SHAPES
from blockdsl.syntax import ast
from blockdsl.syntax.kinds import LINE_KINDS, QUILT_KINDS, keyword_of
from blockdsl.wording.cutting_rows import plain_cut_size
from blockdsl.wording.lengths import plain_measure, plain_size
from blockdsl.wording.messages import words_of
from blockdsl.wording.sheet import format_piece, format_subcut


class Shown(Struct, frozen=True):
    """Words in Markdown, and the place that they are about."""

    markdown: str
    span: Span


def hover(reading: Reading, offset: int) -> Shown | None:
    """What there is to show for a place; None where there is nothing."""
    mention = mention_at(reading.file, offset)
    if mention is not None and (found := _of_mention(mention, reading)):
        return Shown("\n\n".join(found), mention.span)
    for node in nodes_around(reading.file, offset):
        if isinstance(node, ast.PairCell | ast.ShapeCell | ast.NameCell) and (found := _of_cell(node, reading)):
            return Shown("\n\n".join(found), node.span)
        if isinstance(node, ast.FreePatch) and (found := _of_patch(node, reading)):
            return Shown("\n\n".join(found), node.span)
    return _of_keyword(reading, offset)


def _of_mention(mention: Mention, reading: Reading) -> list[str]:
    match mention.kind:
        case "shape":
            return [*_of_cell_around(mention, reading), *shape_words(mention.name)]
        case "block":
            return _of_block(mention.name, reading)
        case "quilt":
            return _of_quilt(mention.name, reading)
        case "fabric or unit":
            found = _of_cell_around(mention, reading)
            fabric = reading.names.fabrics.get(mention.name)
            if fabric is not None:
                return [*found, *fabric_words(fabric)]
            return found or _of_unit(mention.name, reading)
        case _:
            return []


def _picture(address: str | None, title: str) -> list[str]:
    return [f"![{_plain(title)}]({address})"] if address else []


def _plain(text: str) -> str:
    """A name of the maker's own, without what Markdown would read as marks."""
    return "".join(f"\\{letter}" if letter in "\\`*_[]<>#|!" else letter for letter in text)


# --- words of the language -----------------------------------------------------------------------


def shape_words(name: str) -> list[str]:
    """How a shape is written, what it is, and how it looks."""
    shape = SHAPES.get(name)
    if shape is None:
        return []
    (first, *_) = usages(name)
    words = "\n".join(f"- `{first.usage[part.start : part.stop]}`: {part.meaning}" for part in first.parts)
    return [
        *_picture(shape_image(name), shape.title),
        f"**{shape.title}**: `{shape.usage}`",
        f"{shape.summary}.",
        words,
    ]


def fabric_words(fabric: Fabric) -> list[str]:
    """A swatch of a fabric, and what is known of it."""
    known = [fabric.colour, fabric.value, *(["directional"] if fabric.directional else [])]
    return [
        *_picture(swatch_image(fabric.colour, fabric.label), fabric.label),
        f"**{_plain(fabric.label)}**: {', '.join(known)}",
    ]


def _of_keyword(reading: Reading, offset: int) -> Shown | None:
    """How the line is written whose first word this is."""
    node = node_of(reading.file, offset)
    if node is None:
        return None
    word = node.span.text.split(maxsplit=1)[0] if node.span.text else ""
    here = Span(node.span.source, node.span.start, node.span.start + len(word))
    if not here.start <= offset <= here.stop:
        return None
    in_quilt = isinstance(declaration_of(reading.file, offset), ast.QuiltDeclaration)
    kind = (QUILT_KINDS if in_quilt and not isinstance(node, ast.QuiltDeclaration) else LINE_KINDS).get(
        keyword_of(word)
    )
    return Shown(f"**{word}**: {kind.usage}", here) if kind else None


def _size(extent: Extent, facts: BlockFacts | QuiltFacts) -> str:
    """`4 × 2 in`; of a square one side, `4 in`."""
    if extent[0] == extent[1]:
        return plain_measure(extent[0], facts.unit, words_of(facts))
    return plain_size(extent, facts.unit, words_of(facts))


# --- blocks and their units ----------------------------------------------------------------------


def _blocks(reading: Reading) -> Iterator[tuple[BlockCuts, BlockFacts]]:
    return zip(reading.stages.cuts, reading.stages.facts.blocks, strict=True)


def _of_block(name: str, reading: Reading) -> list[str]:
    facts = next((facts for _, facts in _blocks(reading) if facts.name == name), None)
    if facts is None:
        return []
    return [*_picture(block_image(facts), name), f"**{_plain(name)}**", *block_words(facts)]


def block_words(facts: BlockFacts) -> list[str]:
    """A block's sizes, and of how many pieces and units it is made."""
    pieces = len(facts.placed) + len(facts.appliques)
    sizes = f"{_size(facts.finished, facts)} finished, {_size(facts.unfinished, facts)} unfinished"
    units = [f"{_plain(unit.title)} × {unit.count}, {unit.method}" for unit in facts.units]
    fabrics = f"{len(facts.fabrics)} fabric" + ("s" if len(facts.fabrics) != 1 else "")
    return [sizes, f"{pieces} patches in {fabrics}", *(["; ".join(units)] if units else [])]


def _of_quilt(name: str, reading: Reading) -> list[str]:
    quilt = next((quilt for quilt in reading.stages.facts.quilts if quilt.name == name), None)
    if quilt is None:
        return []
    return [*_picture(quilt_image(quilt), name), f"**{_plain(name)}**", *quilt_words(quilt)]


def quilt_words(quilt: QuiltFacts) -> list[str]:
    """A quilt's size and its blocks."""
    size = _size(quilt.finished, quilt)
    kinds: dict[str, int] = {}
    for kind in quilt.kinds:
        kinds[kind.block.name] = kinds.get(kind.block.name, 0) + kind.count
    return [f"{size} finished", "; ".join(f"{count} {_plain(block)}" for block, count in kinds.items())]


def _of_cell_around(mention: Mention, reading: Reading) -> list[str]:
    """What the cell is that a name is said in, if it is one."""
    for node in nodes_around(reading.file, mention.span.start):
        if isinstance(node, ast.PairCell | ast.ShapeCell | ast.NameCell):
            return _of_cell(node, reading)
    return []


def _of_cell(cell: ast.Cell, reading: Reading) -> list[str]:
    for cuts, facts in _blocks(reading):
        for place in cuts.design.units:
            if place.span == cell.span and (place.filling or place.name):
                return _of_place(place, cuts, facts)
    return _of_patch(cell, reading)


def _of_patch(drawn_by: ast.Cell | ast.FreePatch, reading: Reading) -> list[str]:
    """The patch that a cell of plain fabric or a `patch` line draws."""
    for cuts, facts in _blocks(reading):
        for number, patch in enumerate(cuts.design.patches):
            if patch.span == drawn_by.span:
                placed = facts.placed[number]
                kind = next(
                    each for each in facts.patches if (each.label, each.fabric) == (placed.label, placed.fabric)
                )
                size = _size(kind.finished, facts)
                many = f"{kind.count} patches like it" if kind.count > 1 else "1 patch"
                return [
                    f"**{kind.label}**, {kind.shape}: {size} finished, {many}",
                    *_cut(facts, {(kind.label, kind.fabric)}, None),
                ]
    return []


def _of_place(place: UnitPlace, cuts: BlockCuts, facts: BlockFacts) -> list[str]:
    """A unit in its cell: as it lies there, its sizes, how many there are, what is cut for it."""
    extent: tuple[Exact, Exact] = place.symmetry.turned_extent(place.width, place.height)
    unit = unit_of(place, cuts, facts)
    title = unit.title if unit else place.name or "unit"
    picture = part_image(facts, place.first, place.stop, (place.x, place.y), extent, title)
    patches = {(patch.label, patch.fabric) for patch in facts.placed[place.first : place.stop]}
    if unit is None:
        size = _size(extent, facts)
        return [*_picture(picture, title), f"**{_plain(title)}**: {size} finished", *_cut(facts, patches, None)]
    sizes = f"{_size(unit.finished, facts)} finished, {_size(unit.unfinished, facts)} unfinished"
    count = f"{unit.count} in {_plain(facts.name)}, {unit.method}"
    return [*_picture(picture, title), f"**{_plain(title)}**: {sizes}", count, *_cut(facts, patches, unit)]


def unit_of(place: UnitPlace, cuts: BlockCuts, facts: BlockFacts) -> UnitFacts | None:
    """The unit to make that a place is one of."""
    for made, unit in zip(cuts.making.units, facts.units, strict=True):
        if any(other is place for other in made.group.places):
            return unit
    return None


def _of_unit(name: str, reading: Reading) -> list[str]:
    """A named unit where it first lies."""
    for cuts, facts in _blocks(reading):
        for place in cuts.design.units:
            if place.name == name:
                return _of_place(place, cuts, facts)
    return []


def _cut(facts: BlockFacts, patches: set[tuple[str, str]], unit: UnitFacts | None) -> list[str]:
    """The lines of the cutting table for a unit that is made by a method, or else for patches by letter and fabric."""
    for_unit = [cut for cut in facts.cutting if unit is not None and cut.unit == unit.name]
    cuts = for_unit or [cut for cut in facts.cutting if not cut.unit and (cut.label, cut.fabric) in patches]
    return ["Cut for the block:\n" + "\n".join(f"- {_cut_line(cut, facts)}" for cut in cuts)] if cuts else []


def _cut_line(cut: CutFacts, facts: BlockFacts) -> str:
    words = words_of(facts)
    label = next(fabric.label for fabric in facts.fabrics if fabric.name == cut.fabric)
    then = format_subcut(cut, facts.unit, words)
    size = f"{cut.count} {format_piece(cut, words)} {plain_cut_size(cut, facts)}"
    return f"{cut.label}: {size}, {_plain(label)}" + (f"; {then}" if then else "")
