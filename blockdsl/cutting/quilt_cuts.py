"""Everything that a quilt top is cut from, added up over all its blocks and its plain cloth.

The units of all blocks of one kind and colouring are made together, so batches are counted over the whole quilt: three
units for each of four blocks, two at a time, are six pairs of squares, not eight. Triangles of one size are cut from
common squares, whatever they are for.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from blockdsl.analysis.letters import letter_patches
from blockdsl.cutting.cutlist import TRIANGLES, Cut, cut_list
from blockdsl.cutting.quilt_pieces import PlainPiece
from blockdsl.cutting.ways import Piece, Subcut
from blockdsl.diagnostics import Problems
from blockdsl.geometry import ceil_to
from blockdsl.model.quilt import KindRole, QuiltDesign
from blockdsl.model.recolour import recoloured
from blockdsl.sewing import plan_making


@dataclass(frozen=True, slots=True)
class QuiltCut:
    """`count` pieces of one size of one fabric, and what for: (words, how many of the pieces).

    Of a strip `cut` is its width and its length. `may_turn` is untrue where a print must stand upright: `cut` is then
    across the cloth first.
    """

    fabric: str
    piece: Piece
    cut: tuple[Fraction, Fraction]
    count: int
    subcut: Subcut
    lengthwise: bool
    may_turn: bool
    joined: bool
    uses: tuple[tuple[str, int], ...]


@dataclass(frozen=True, slots=True)
class _Need:
    """`count` pieces, or, of pieces that are sub-cut, so many triangles."""

    look: tuple[str, Piece, tuple[Fraction, Fraction], Subcut, bool, bool, bool]
    count: int
    use: str


def quilt_cuts(quilt: QuiltDesign, pieces: Sequence[PlainPiece]) -> tuple[QuiltCut, ...]:
    """All cuts of the top by fabric, large before small; binding, backing and sleeve apart."""
    needs: dict[tuple[str, Piece, tuple[Fraction, Fraction], Subcut, bool, bool, bool], Counter[str]] = {}
    for need in (*_of_blocks(quilt), *_of_plain_cloth(pieces)):
        needs.setdefault(need.look, Counter())[need.use] += need.count
    cuts = [_cut(look, uses) for look, uses in needs.items()]
    order = {fabric.name: place for place, fabric in enumerate(quilt.fabrics)}
    return tuple(
        sorted(cuts, key=lambda cut: (order[cut.fabric], -max(cut.cut), -min(cut.cut), cut.piece, cut.subcut, cut.uses))
    )


def _cut(look: tuple[str, Piece, tuple[Fraction, Fraction], Subcut, bool, bool, bool], uses: Counter[str]) -> QuiltCut:
    fabric, piece, cut, subcut, lengthwise, may_turn, joined = look
    each = TRIANGLES.get(subcut, 1)
    told = tuple((use, ceil(count / each)) for use, count in uses.items())
    count = ceil(sum(uses.values()) / each)
    return QuiltCut(fabric, piece, cut, count, subcut, lengthwise, may_turn, joined, told)


# --- plain cloth -----------------------------------------------------------------------------------


def _of_plain_cloth(pieces: Iterable[PlainPiece]) -> Iterator[_Need]:
    for piece in pieces:
        look = (
            piece.fabric,
            piece.piece,
            piece.cut,
            piece.subcut,
            piece.lengthwise,
            not piece.upright,
            piece.joined,
        )
        yield _Need(look, piece.count, piece.role)


# --- blocks ----------------------------------------------------------------------------------------


def listed_names(kinds: Iterable[tuple[str, KindRole]]) -> tuple[str, ...]:
    """What each kind of block, by its name and role, is called in the list; a border's unit is told from its block."""
    told = tuple(kinds)
    blocks = {name for name, role in told if role != "border unit"}
    return tuple(f"{name}, border unit" if role == "border unit" and name in blocks else name for name, role in told)


def _of_blocks(quilt: QuiltDesign) -> Iterator[_Need]:
    names = listed_names((kind.name, kind.role) for kind in quilt.kinds)
    copies = Counter((place.kind, place.colouring) for place in quilt.blocks)
    for (kind, colouring), count in sorted(copies.items()):
        design = quilt.kinds[kind].design
        plan = next((plan for plan in design.colourings if plan.name == colouring), None)
        coloured = design if plan is None else recoloured(design, plan)
        making = plan_making(coloured, Problems(), count)
        upright = {fabric.name for fabric in coloured.fabrics if fabric.directional}
        for cut in cut_list(coloured, making, letter_patches(coloured.patches), count):
            use = f"{names[kind]}: {cut.unit or cut.label}"
            yield from _needs(cut, use, upright=cut.fabric in upright, measure=design.measure)


def _needs(cut: Cut, use: str, *, upright: bool, measure: Fraction) -> Iterator[_Need]:
    """A line of a block's list as pieces of cloth: what is cut from strips at an angle takes those strips."""
    if cut.strip is not None and cut.strip.strips:
        size = (cut.strip.width, ceil_to(cut.strip.length, measure))
        yield _Need((cut.fabric, "strip", size, "none", False, not upright, False), cut.strip.strips, use)
        return
    if upright and cut.upright is not None:
        size = cut.cut if cut.upright == 1 else (cut.cut[1], cut.cut[0])
        yield _Need((cut.fabric, cut.piece, size, cut.subcut, False, False, False), _counted(cut), use)
        return
    yield _Need((cut.fabric, cut.piece, cut.cut, cut.subcut, False, True, False), _counted(cut), use)


def _counted(cut: Cut) -> int:
    """Triangles that are needed, or pieces."""
    return cut.yields - cut.spare if cut.subcut != "none" else cut.count
