"""Collecting the cloth of each fabric of a quilt, by the length and by the fat quarter, and its scraps."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import get_args

from msgspec.structs import replace

from blockdsl.analysis.scraps import PrintSpread
from blockdsl.analysis.scraps_places import blocks_with
from blockdsl.cutting.buying import SHRINKAGE
from blockdsl.cutting.cloth import ClothPiece, Effort, fits_sheet
from blockdsl.cutting.fat_quarters import (
    blocks_from_sheet,
    fat_quarter_use,
    fat_quarters_of_prints,
    sheets_for,
    usable_fat_quarter,
)
from blockdsl.cutting.quilt_cloth import Bolt, QuiltPiece, cloth_width, fabric_cloth, too_large
from blockdsl.cutting.quilt_cuts import listed_names
from blockdsl.cutting.quilt_prints import pieces_of_blocks, pieces_of_each_print, spread_over_prints
from blockdsl.facts.finishingfacts import ClothPieceFacts, FabricClothFacts, ScrapsFacts
from blockdsl.facts.quiltrecord import QuiltCutFacts, QuiltKindFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.quilt import PieceRole, QuiltDesign, ScrapsChoice

BINDING, SLEEVE = "binding", "sleeve"
LAST_OF_SLEEVE = "sleeve, last"
"""Key of the last of a sleeve's strips, which is shorter than the others."""
PLAIN = {*get_args(PieceRole), BINDING, SLEEVE}
"""What a fabric is cut for besides blocks."""
MANY_PIECES = 3000
MOST_FAT_QUARTERS = 60
"""What takes more of them, which is 15 yards, is bought by the length."""

Line = tuple[QuiltPiece, Mapping[str, int]]
"""A piece and what it is for."""


def collect_cloth(
    design: QuiltDesign,
    cuts: Sequence[QuiltCutFacts],
    kinds: Sequence[QuiltKindFacts],
    further: Sequence[tuple[str, Line]],
    scraps: Sequence[ScrapsFacts],
    *,
    quickly: bool = False,
) -> tuple[FabricClothFacts, ...]:
    """The cloth of every fabric that something is cut from; `further` are binding and sleeve, by their fabrics.

    `quickly`: by the first good plan, which may take a little more cloth than the best.
    """
    spread = {each.role for each in scraps if each.blocks_each}
    cloths = (
        _fabric(design, name, _lines_of(name, cuts, further), kinds, scraps=name in spread, quickly=quickly)
        for name in (fabric.name for fabric in design.fabrics)
    )
    return tuple(cloth for cloth in cloths if cloth.pieces)


def pieces_too_large(
    design: QuiltDesign,
    cuts: Sequence[QuiltCutFacts],
    kinds: Sequence[QuiltKindFacts],
    scraps: Sequence[ScrapsFacts],
) -> Iterator[tuple[str, QuiltPiece]]:
    """Each fabric that has no plan and is not bought, with the first of its pieces that its cloth does not hold."""
    spread = {each.role for each in scraps if each.blocks_each}
    borders = _units_of_borders(kinds)
    for name in (fabric.name for fabric in design.fabrics):
        pieces = _by_length(_lines_of(name, cuts, ()), borders, scraps=name in spread)
        found = too_large(pieces, cloth_width(design, name))
        if found is not None:
            yield name, found


def shrinkage_of(design: QuiltDesign) -> Fraction:
    """What washing may take, as a part of the length."""
    return SHRINKAGE if design.shrinkage is None else design.shrinkage


def _lines_of(fabric: str, cuts: Sequence[QuiltCutFacts], further: Iterable[tuple[str, Line]]) -> list[Line]:
    """All that is cut from a fabric: the top's pieces, keyed by their places in the quilt's list, then the rest."""
    return [
        *(
            (QuiltPiece(str(place), cut.cut, cut.count, cut.lengthwise, cut.may_turn, cut.joined), cut.uses)
            for place, cut in enumerate(cuts)
            if cut.fabric == fabric
        ),
        *(line for name, line in further if name == fabric),
    ]


def _fabric(
    design: QuiltDesign,
    name: str,
    lines: Sequence[Line],
    kinds: Sequence[QuiltKindFacts],
    *,
    scraps: bool,
    quickly: bool,
) -> FabricClothFacts:
    """One fabric's cloth. Of scraps the blocks are cut from fat quarters; the rest, borders too, by the length."""
    borders = _units_of_borders(kinds)
    bolt = Bolt(cloth_width(design, name), design.measure, design.seam, design.unit, shrinkage_of(design))
    told = tuple(ClothPieceFacts(piece.key, piece.cut, piece.count, uses) for piece, uses in lines)
    by_length = _by_length(lines, borders, scraps=scraps)
    from_sheets = [piece for line in lines if (piece := _part(line, borders, blocks=True) if scraps else line[0]).count]
    sheet = usable_fat_quarter(design.unit)
    sheeted = [ClothPiece(piece.key, *piece.cut, piece.count, piece.may_turn) for piece in from_sheets]
    blocks = len(blocks_with(design, name))
    few = scraps or _area(sheeted) <= MOST_FAT_QUARTERS * sheet[0] * sheet[1]
    effort = effort_for(from_sheets) if scraps and not quickly else Effort.QUICK
    use = (
        fat_quarter_use(pieces_of_blocks(design, name), blocks, sheeted, sheet, design.measure, effort) if few else None
    )
    if not by_length or too_large(by_length, bolt.usable_width) is not None:
        return FabricClothFacts(name, bolt.usable_width, told, scraps, None, (), None, use)
    cloth = fabric_cloth(by_length, bolt, Effort.QUICK if quickly else effort_for(by_length))
    return FabricClothFacts(name, bolt.usable_width, told, scraps, cloth.plan, cloth.joined, cloth.buy, use)


def _by_length(lines: Sequence[Line], borders: frozenset[str], *, scraps: bool) -> list[QuiltPiece]:
    """What is cut from the length of a fabric: of scraps only what is not in the blocks."""
    parts = (_part(line, borders, blocks=False) if scraps else line[0] for line in lines)
    return [piece for piece in parts if piece.count]


def effort_for(pieces: Iterable[QuiltPiece]) -> Effort:
    """How hard to look: of very many pieces simple ways of filling strips waste next to nothing."""
    return Effort.QUICK if sum(piece.count for piece in pieces) > MANY_PIECES else Effort.USUAL


def _units_of_borders(kinds: Sequence[QuiltKindFacts]) -> frozenset[str]:
    """What the units of borders are called in the list."""
    names = listed_names((kind.name, kind.role) for kind in kinds)
    return frozenset(name for name, kind in zip(names, kinds, strict=True) if kind.role == "border unit")


def _part(line: Line, borders: frozenset[str], *, blocks: bool) -> QuiltPiece:
    """Of a size that the blocks share with borders and plain cloth the pieces for the ones or the others."""
    piece, uses = line
    counts = (count for use, count in uses.items() if _in_blocks(use, borders) == blocks)
    return replace(piece, count=sum(counts))


def _in_blocks(use: str, borders: frozenset[str]) -> bool:
    return use not in PLAIN and use.rpartition(": ")[0] not in borders


def _area(pieces: Iterable[ClothPiece]) -> Fraction:
    return sum((piece.width * piece.height * piece.count for piece in pieces), Fraction(0))


def collect_scraps(design: QuiltDesign) -> tuple[ScrapsFacts, ...]:
    """Each role that is to be spread over prints, in the order of its lines."""
    found = []
    for choice in design.scraps:
        blocks, spread = spread_over_prints(design, choice)
        if not blocks:  # reported as `line-idle`
            continue
        sheet = usable_fat_quarter(design.unit)
        pieces_of = pieces_of_blocks(design, choice.fabric)
        each = blocks_from_sheet(pieces_of, sheet, design.measure) if pieces_of else 0
        shown = min(each, max(spread.uses, default=0))
        layout = sheets_for(pieces_of(shown), sheet, design.measure, Effort.QUICK) if pieces_of and shown else None
        found.append(
            ScrapsFacts(
                role=choice.fabric,
                prints=choice.prints,
                blocks=blocks,
                assignment=spread.assignment,
                uses=spread.uses,
                clashes=spread.clashes,
                corner_clashes=spread.corner_clashes,
                bound=spread.bound,
                balanced=spread.balanced,
                blocks_each=each,
                fat_quarters=_of_prints(design, choice, blocks, spread, each),
                layout=layout,
                layout_blocks=shown,
            )
        )
    return tuple(found)


def _of_prints(
    design: QuiltDesign, choice: ScrapsChoice, blocks: Sequence[int], spread: PrintSpread, each: int
) -> tuple[int, ...] | None:
    """How many fat quarters of each print; None when one gives no whole block.

    Shape:  by how many blocks one gives, of the kind that takes most; more where several kinds of blocks are cut from
            a print and share no batches.
    """
    least = fat_quarters_of_prints(spread.uses, each)
    kinds = {(design.blocks[block].kind, design.blocks[block].colourway) for block in blocks}
    if least is None or len(kinds) == 1:
        return least
    sheet = usable_fat_quarter(design.unit)
    placed = list(zip(blocks, spread.assignment, strict=True))
    of_each = pieces_of_each_print(design, choice.fabric, placed)
    if not all(fits_sheet(piece, *sheet) for pieces in of_each for piece in pieces):
        return None
    wanted = [sheets_for(pieces, sheet, design.measure, Effort.QUICK).count if pieces else 0 for pieces in of_each]
    wanted += [0] * (len(least) - len(wanted))
    return tuple(map(max, least, wanted))
