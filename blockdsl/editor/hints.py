"""What stands between the lines while one writes: real sizes of cells and rows, how many there are of a patch."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from msgspec import Struct

from blockdsl.cutting import BlockCuts
from blockdsl.diagnostics import Span
from blockdsl.editor.project import Reading
from blockdsl.facts import BlockFacts, QuiltFacts
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.syntax import ast
from blockdsl.wording.lengths import plain_length, plain_measure, plain_size
from blockdsl.wording.messages import words_of


class Hint(Struct, frozen=True):
    """A few words behind a place, and what they mean."""

    at: Span
    words: str
    meaning: str


def hints(reading: Reading) -> Iterator[Hint]:
    """The hints of all blocks and units that the file declares, in order."""
    made = {id(cuts.design.span): (cuts, facts) for cuts, facts in _pairs(reading)}
    for declaration in reading.file.declarations:
        if isinstance(declaration, ast.BlockDeclaration) and id(declaration.name.span) in made:
            yield from _of_block(declaration, *made[id(declaration.name.span)])
        elif isinstance(declaration, ast.UnitDeclaration):
            yield from _of_unit(declaration, reading)


def _pairs(reading: Reading) -> Iterator[tuple[BlockCuts, BlockFacts]]:
    return zip(reading.stages.cuts, reading.stages.facts.blocks, strict=True)


def _of_block(block: ast.BlockDeclaration, cuts: BlockCuts, facts: BlockFacts) -> Iterator[Hint]:
    columns, heights = cuts.design.columns, cuts.design.heights
    rows = 0
    for line in block.lines:
        match line:
            case ast.Row(span=span) if rows < len(heights):
                size = plain_size((cuts.design.width, heights[rows]), facts.unit, words_of(facts))
                if not rows:
                    yield from _cells(line, columns, facts)
                yield Hint(span.after, size, "What the row measures, finished.")
                rows += 1
            case ast.Columns(numbers=numbers):
                yield from _shares(numbers, columns, facts, "The finished width of the column.")
            case ast.Heights(numbers=numbers):
                yield from _shares(numbers, heights, facts, "The finished height of the row.")
            case ast.FreePatch(span=span):
                yield from _patch(span, cuts, facts)


def _cells(row: ast.Row, columns: Sequence[Fraction], facts: BlockFacts) -> Iterator[Hint]:
    """The real width of each cell of the first row, cells that it continues over counted in."""
    words = words_of(facts)
    width, last = Fraction(0), None
    for number, cell in enumerate(row.cells):
        if isinstance(cell, ast.Continue):
            width += columns[number]
            continue
        if last is not None:
            yield Hint(last.after, plain_length(width, facts.unit, words), "The finished width of the cell.")
        width, last = columns[number], cell.span
    # The last cell's would stand beside what the whole row measures.


def _shares(numbers: Sequence[ast.Number], real: Sequence[Exact], facts: BlockFacts, meaning: str) -> Iterator[Hint]:
    for number, length in zip(numbers, real, strict=False):
        yield Hint(number.span.after, plain_measure(length, facts.unit, words_of(facts)), meaning)


def _patch(line: Span, cuts: BlockCuts, facts: BlockFacts) -> Iterator[Hint]:
    """The letter of a free patch, and how many there are of it in the block."""
    for patch, placed in zip(cuts.design.patches, facts.placed, strict=True):
        if patch.span == line:
            count = sum(each.count for each in facts.patches if each.label == placed.label)
            yield Hint(line.after, f"{placed.label}, {count} in the block", "The letter of the patch, and how many.")
            return


def _of_unit(unit: ast.UnitDeclaration, reading: Reading) -> Iterator[Hint]:
    """How many there are of a unit in the blocks of the file, all sizes together."""
    name = unit.name.text
    count = sum(
        made.count for facts in reading.stages.facts.blocks for made in facts.units if name in (made.name, *made.also)
    )
    if count:
        blocks = sum(any(name in (made.name, *made.also) for made in f.units) for f in reading.stages.facts.blocks)
        many = "1 block" if blocks == 1 else f"{blocks} blocks"
        yield Hint(unit.span.after, f"{count} in {many}", "How many there are in the blocks of this file.")


# --- above each block and quilt ------------------------------------------------------------------


def lenses(reading: Reading) -> Iterator[tuple[Span, str, str]]:
    """For each block and quilt of the file its pieces; and the quilt's title, for the cloth that it takes."""
    facts = {f.name: f for f in reading.stages.facts.blocks}
    quilts = {quilt.name: quilt for quilt in reading.stages.facts.quilts}
    for declaration in reading.file.declarations:
        if isinstance(declaration, ast.BlockDeclaration) and declaration.name.text in facts:
            yield declaration.span, block_lens(facts[declaration.name.text]), ""
        elif isinstance(declaration, ast.QuiltDeclaration) and declaration.name.text in quilts:
            yield declaration.span, quilt_lens(quilts[declaration.name.text]), declaration.name.text


def block_lens(facts: BlockFacts) -> str:
    """`17 pieces; fog 9, lantern 8`: the patches of the block, fabric by fabric."""
    counts: dict[str, int] = {}
    for fabric in (*(patch.fabric for patch in facts.placed), *(piece.fabric for piece in facts.appliques)):
        counts[fabric] = counts.get(fabric, 0) + 1
    total = sum(counts.values())
    many = "1 piece" if total == 1 else f"{total} pieces"
    return f"{many}: {', '.join(f'{name} {count}' for name, count in counts.items())}"


def quilt_lens(quilt: QuiltFacts) -> str:
    """`24 blocks, 408 pieces`: those of the top, its borders and strips counted by the piece."""
    pieces = sum(kind.count * (len(kind.block.placed) + len(kind.block.appliques)) for kind in quilt.kinds)
    pieces += sum(piece.count for piece in quilt.pieces)
    blocks = sum(kind.count for kind in quilt.kinds)
    return f"{blocks} blocks, {pieces} pieces"


def quilt_cloth(reading: Reading, title: str) -> str:
    """`fog 2 3/4 yd, slate 1 yd; backing 4 yd`: what to buy for a quilt; nothing where its cloth is not known."""
    quilt = next((quilt for quilt in reading.stages.facts.quilts if quilt.name == title), None)
    if quilt is None or quilt.finishing is None:
        return ""
    found = quilt.finishing.facts
    parts = [f"{cloth.fabric} {cloth.buy.words}" for cloth in found.fabrics if cloth.buy and cloth.buy.length]
    words = ", ".join(parts)
    if found.backing is not None:
        words += f"; backing {found.backing.plan.buy.words}"
    return words
