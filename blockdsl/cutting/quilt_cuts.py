"""Everything that a quilt top is cut from, added up over all its blocks and its plain cloth.

The units of all blocks of one kind and colourway, and of its mirror image, are made together, so batches are counted
over the whole quilt: three units for each of four blocks, two at a time, are six pairs of squares, not eight. Triangles
of one size are cut from common squares, whatever they are for. Neither batches nor squares are shared by two prints.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from math import ceil
from typing import Annotated

from msgspec import Struct, field
from msgspec.structs import replace

from blockdsl.analysis.letters import letter_patches
from blockdsl.cutting.cutlist import TRIANGLES, Cut, cut_list
from blockdsl.cutting.grain import plan_grain
from blockdsl.cutting.quilt_pieces import PlainPiece
from blockdsl.cutting.quilt_prints import as_cut, prints_of_blocks
from blockdsl.cutting.ways import Piece, Subcut
from blockdsl.diagnostics import Problems
from blockdsl.geometry import ceil_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign
from blockdsl.model.quilt import KindRole, QuiltDesign
from blockdsl.record import Count, Name, Record, says
from blockdsl.sewing import Making, Prints, Run, choose_for_block, plan_makings
from blockdsl.sewing.methods import CUT_PATCHES, FOUNDATION


class QuiltCut(Record, frozen=True):
    """One size of one fabric over the whole quilt: all that is cut alike, whatever it is for."""

    fabric: Name
    piece: Piece
    cut: Annotated[tuple[Fraction, Fraction], says("Of a strip its width and its length.")]
    count: Count
    subcut: Subcut
    lengthwise: bool
    may_turn: Annotated[
        bool,
        says("Untrue where a print must stand upright: the first side of the cut then lies across the cloth."),
    ]
    joined: bool
    uses: Annotated[
        Mapping[str, Count],
        says("How many are for what: a block with its unit or the letter of its patch, or the role of plain cloth."),
    ] = field(name="for")


_BY_ITSELF = (CUT_PATCHES, FOUNDATION)
"""Methods whose pieces are cut for one patch each, not for a batch."""
_Look = tuple[str, Piece, tuple[Fraction, Fraction], Subcut, bool, bool, bool]
"""Fabric, piece, size, sub-cut, lengthwise, may turn, joined: what is cut alike."""


class _Need(Struct, frozen=True):
    """`count` pieces, or, of pieces that are sub-cut, so many triangles; of a fabric of several prints from which."""

    look: _Look
    count: int
    use: str
    print_number: int = 0


def quilt_cuts(quilt: QuiltDesign, pieces: Sequence[PlainPiece]) -> tuple[QuiltCut, ...]:
    """All cuts of the top by fabric, large before small; binding, backing and sleeve apart."""
    needs: dict[_Look, dict[int, Counter[str]]] = {}
    for need in (*_of_blocks(quilt), *_of_plain_cloth(pieces)):
        needs.setdefault(need.look, {}).setdefault(need.print_number, Counter())[need.use] += need.count
    cuts = [_cut(look, uses) for look, uses in needs.items()]
    order = {fabric.name: place for place, fabric in enumerate(quilt.fabrics)}
    return tuple(
        sorted(
            cuts,
            key=lambda cut: (
                order[cut.fabric],
                -max(cut.cut),
                -min(cut.cut),
                cut.piece,
                cut.subcut,
                tuple(cut.uses.items()),
            ),
        )
    )


def _cut(look: _Look, prints: dict[int, Counter[str]]) -> QuiltCut:
    """Triangles of one print share squares, those of several do not."""
    fabric, piece, cut, subcut, lengthwise, may_turn, joined = look
    each = TRIANGLES.get(subcut, 1)
    told: Counter[str] = Counter()
    for uses in prints.values():
        for use, count in uses.items():
            told[use] += ceil(count / each)
    pieces = sum(ceil(uses.total() / each) for uses in prints.values())
    return QuiltCut(fabric, piece, cut, pieces, subcut, lengthwise, may_turn, joined, dict(told))


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


def with_mirror_image(name: str) -> str:
    """What a block and its mirror image, whose units are made together, are called in the list."""
    return f"{name} and its mirror image"


def _of_blocks(quilt: QuiltDesign) -> Iterator[_Need]:
    prints = prints_of_blocks(quilt)
    families: dict[tuple[int, str], dict[int, list[Prints]]] = {}
    for place, block in enumerate(quilt.blocks):
        mirror = quilt.kinds[block.kind].mirror_of
        family = block.kind if mirror is None else mirror
        families.setdefault((family, block.colourway), {}).setdefault(block.kind, []).append(prints[place])
    for (_, colourway), copies in sorted(families.items()):
        yield from _of_family(quilt, colourway, copies)


def _of_family(quilt: QuiltDesign, colourway: str, copies: dict[int, list[Prints]]) -> Iterator[_Need]:
    """The blocks of one kind, and of its mirror image, in one colour plan: their units are made in common batches."""
    names = listed_names((kind.name, kind.role) for kind in quilt.kinds)
    kinds = sorted(copies)
    designs = [as_cut(quilt, kind, colourway) for kind in kinds]
    runs = [
        Run(choose_for_block(design, Problems()), tuple(copies[kind]))
        for kind, design in zip(kinds, designs, strict=True)
    ]
    both = len(kinds) > 1 and quilt.kinds[kinds[0]].role != "border unit"
    shared = with_mirror_image(names[kinds[0]]) if both else names[kinds[0]]
    for kind, design, making in zip(kinds, designs, plan_makings(runs), strict=True):
        yield from _of_copies(_Copies(design, making, tuple(copies[kind])), names[kind], shared)


class _Copies(Struct, frozen=True):
    design: BlockDesign
    making: Making
    prints: tuple[Prints, ...]


def _of_copies(copies: _Copies, name: str, shared: str) -> Iterator[_Need]:
    """Batches as they are counted, and patches cut by themselves: print by print where their fabric has several."""
    design = copies.design
    lettered, upright = letter_patches(design.patches), {each.name for each in design.fabrics if each.directional}
    grain = plan_grain(design, lettered)
    spread = {fabric for prints in copies.prints for fabric, _ in prints}
    for cut in cut_list(design, copies.making, lettered, len(copies.prints), grain):
        by_itself = cut.method in _BY_ITSELF
        if not (by_itself and cut.fabric in spread):
            use = f"{name if by_itself else shared}: {cut.unit or cut.label}"
            yield from _needs(cut, use, upright=cut.fabric in upright, measure=design.measure)
    for fabric in sorted(spread):
        of_print = Counter(dict(prints).get(fabric, 0) for prints in copies.prints)
        for number, many in sorted(of_print.items()):
            for cut in cut_list(design, _by_itself(copies, many), lettered, many, grain):
                if cut.fabric == fabric:
                    use = f"{name}: {cut.unit or cut.label}"
                    needs = _needs(cut, use, upright=fabric in upright, measure=design.measure)
                    yield from (replace(need, print_number=number) for need in needs)


def _by_itself(copies: _Copies, many: int) -> Making:
    """The making of so many of the blocks, without what is made in batches."""
    papers = []
    for plan in copies.making.foundations:
        each = len(plan.group.places) // len(copies.prints)
        papers.append(replace(plan, group=replace(plan.group, places=plan.group.places[:each] * many)))
    return replace(copies.making, parts=(), foundations=tuple(papers))


def _needs(cut: Cut, use: str, *, upright: bool, measure: Fraction) -> Iterator[_Need]:
    """A line of a block's list as pieces of cloth: what is cut from strips at an angle takes those strips."""
    if cut.strip is not None and cut.strip.strips:
        size = (cut.strip.width, ceil_to(cut.strip.length, measure))
        yield _Need((cut.fabric, "strip", size, "none", False, not upright, False), cut.strip.strips, use)
        return
    if upright and cut.upright_side is not None:
        size = cut.cut if cut.upright_side == 1 else (cut.cut[1], cut.cut[0])
        yield _Need((cut.fabric, cut.piece, size, cut.subcut, False, False, False), _counted(cut), use)
        return
    yield _Need((cut.fabric, cut.piece, cut.cut, cut.subcut, False, True, False), _counted(cut), use)


def _counted(cut: Cut) -> int:
    """Triangles that are needed, or pieces; of a print that must stand upright all that the squares give."""
    if cut.upright_side is not None:
        return cut.yields
    return cut.yields - cut.spare if cut.subcut != "none" else cut.count
