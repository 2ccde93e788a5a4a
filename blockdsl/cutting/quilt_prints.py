"""Which print each block of a quilt is cut from, and what so many blocks of one print take of it.

Of a fabric that is spread over prints every block is cut from one print, and each print from fat quarters: its strips
are no longer than a fat quarter is wide. What is sewn in batches is counted for each print by itself.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from msgspec.structs import replace

from blockdsl.analysis.letters import letter_patches
from blockdsl.analysis.scraps import PrintSpread, spread_prints
from blockdsl.analysis.scraps_places import block_neighbours, blocks_with
from blockdsl.cutting.cloth import ClothPiece
from blockdsl.cutting.cutlist import Cut, cut_list
from blockdsl.cutting.fat_quarters import PiecesOf, usable_fat_quarter
from blockdsl.cutting.grain import plan_grain
from blockdsl.cutting.quilt_cloth import cloth_width
from blockdsl.cutting.strips import SELVAGES
from blockdsl.diagnostics import Problems
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign, Fabric
from blockdsl.model.quilt import QuiltDesign, ScrapsChoice
from blockdsl.model.recolour import recoloured
from blockdsl.sewing import Prints, Run, choose_for_block, plan_makings


def spread_over_prints(quilt: QuiltDesign, choice: ScrapsChoice) -> tuple[tuple[int, ...], PrintSpread]:
    """The blocks that show the fabric, by their places, and the print of each."""
    blocks = blocks_with(quilt, choice.fabric)
    return blocks, spread_prints(block_neighbours(quilt, blocks), choice.prints)


def prints_of_blocks(quilt: QuiltDesign) -> tuple[Prints, ...]:
    """For each block in its place the prints that it has; none where no fabric is spread over several."""
    found: list[list[tuple[str, int]]] = [[] for _ in quilt.blocks]
    for choice in quilt.scraps:
        blocks, spread = spread_over_prints(quilt, choice)
        for block, number in zip(blocks, spread.assignment, strict=True):
            found[block].append((choice.fabric, number))
    return tuple(tuple(sorted(set(each))) for each in found)


def as_cut(quilt: QuiltDesign, kind: int, colourway: str) -> BlockDesign:
    """A kind of block in a colour plan, its fabrics as wide as the quilt's cloth.

    What is spread over prints is no wider than a fat quarter, but in the units of borders, which are cut from a length.
    """
    design = quilt.kinds[kind].design
    plan = next((plan for plan in design.colourways if plan.name == colourway), None)
    coloured = design if plan is None else recoloured(design, plan)
    in_border = quilt.kinds[kind].role == "border unit"
    spread = frozenset[str]() if in_border else frozenset(choice.fabric for choice in quilt.scraps)
    fabrics = tuple(_as_wide(each, quilt, scraps=each.name in spread) for each in coloured.fabrics)
    return replace(coloured, fabrics=fabrics)


def _as_wide(fabric: Fabric, quilt: QuiltDesign, *, scraps: bool) -> Fabric:
    usable = cloth_width(quilt, fabric.name)
    if scraps:
        usable = min(usable, usable_fat_quarter(quilt.unit)[0])
    return replace(fabric, width=(usable + SELVAGES[quilt.unit], quilt.unit))


def pieces_of_blocks(quilt: QuiltDesign, fabric: str) -> PiecesOf | None:
    """What so many blocks of one print of a fabric take of it, of the kind that takes most; None when none does.

    Shape:  pieces keyed by the letters of their patches. What other fabrics are spread over prints differs from block
            to block, so that no batch with them is shared.
    """
    best: tuple[Fraction, PiecesOf] | None = None
    for kind, colourway in sorted({(block.kind, block.colourway) for block in quilt.blocks}):
        if quilt.kinds[kind].role == "block":
            pieces_of = _pieces_of(quilt, (kind, colourway), fabric)
            takes = area_of(pieces_of(1))
            if takes and (best is None or takes > best[0]):
                best = takes, pieces_of
    return None if best is None else best[1]


def pieces_of_each_print(quilt: QuiltDesign, fabric: str, blocks: Sequence[tuple[int, int]]) -> list[list[ClothPiece]]:
    """What the blocks of each print take of the fabric; `blocks` are (place, print), prints counted from 1.

    Shape:  a list for each print, in order; batches are shared by blocks of one kind and colour plan.
    """
    made: dict[tuple[int, str], PiecesOf] = {}
    counts: dict[int, Counter[tuple[int, str]]] = {}
    for place, number in blocks:
        block = quilt.blocks[place]
        counts.setdefault(number, Counter())[block.kind, block.colourway] += 1
    found: list[list[ClothPiece]] = []
    for number in range(1, max(counts, default=0) + 1):
        pieces: list[ClothPiece] = []
        for which, many in sorted(counts.get(number, Counter()).items()):
            if which not in made:
                made[which] = _pieces_of(quilt, which, fabric)
            pieces += made[which](many)
        found.append(pieces)
    return found


def _pieces_of(quilt: QuiltDesign, which: tuple[int, str], fabric: str) -> PiecesOf:
    """Of one kind of block in one colour plan."""
    design = as_cut(quilt, *which)
    chosen, lettered = choose_for_block(design, Problems()), letter_patches(design.patches)
    grain = plan_grain(design, lettered)
    others = [choice.fabric for choice in quilt.scraps if choice.fabric != fabric]
    known: dict[int, list[ClothPiece]] = {}

    def pieces_of(blocks: int) -> list[ClothPiece]:
        if blocks not in known:
            copies = tuple(tuple((other, number) for other in others) for number in range(blocks))
            (making,) = plan_makings((Run(chosen, copies),))
            cuts = cut_list(design, making, lettered, blocks, grain)
            known[blocks] = [_piece(cut) for cut in cuts if cut.fabric == fabric]
        return known[blocks]

    return pieces_of


def _piece(cut: Cut) -> ClothPiece:
    if cut.upright_side is None:
        return ClothPiece(cut.label, *cut.cut, cut.count)
    across, up = cut.cut if cut.upright_side == 1 else cut.cut[::-1]
    return ClothPiece(cut.label, across, up, cut.count, may_turn=False)


def area_of(pieces: Sequence[ClothPiece]) -> Fraction:
    """The cloth in the pieces themselves."""
    return sum((piece.width * piece.height * piece.count for piece in pieces), Fraction(0))
