"""The cloth of one fabric for a whole quilt: everything that is cut from it in one plan, and the length to buy.

Borders and sashes longer than the cloth is wide are either cut along its length, as they were asked for, or joined
from strips across it: the strips of one width are sewn end to end and the lengths cut off, so that no strip is begun
for each of them.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from functools import lru_cache
from typing import Annotated, Final

from msgspec import Struct, field

from blockdsl.cutting.buying import SHOP_STEP, SHRINKAGE, Buy, buy
from blockdsl.cutting.cloth import ClothPiece, ClothPlan, Effort, fits_cloth, plan_length
from blockdsl.cutting.finishing import widths_for
from blockdsl.cutting.strips import USABLE, without_selvages
from blockdsl.geometry import floor_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.fabric import RulerUnit
from blockdsl.model.quilt import BackingChoice, QuiltDesign
from blockdsl.record import Count, Name, Record, says

SHORTEST_END: Final[dict[RulerUnit, Fraction]] = {"in": Fraction(4), "cm": Fraction(10)}
"""A shorter piece at the end of a border shows as a mistake: common practice, no source."""

GOES_TO_JOINED = "joined"
"""What the key of strips to be joined begins with; their width follows."""


class QuiltPiece(Struct, frozen=True):
    """`count` pieces that a quilt asks of one fabric. `joined`: strips are sewn together where it is too long."""

    key: str
    cut: tuple[Fraction, Fraction]
    count: int
    lengthwise: bool = False
    may_turn: bool = True
    joined: bool = False


class JoinedStrips(Record, frozen=True):
    """Strips of one width, across the cloth, that are sewn end to end before lengths are cut off."""

    key: Annotated[Name, says("That of the strips in the plan.")]
    cut_width: Fraction = field(name="cut")
    strips: Count
    last: Annotated[Fraction, says("How long the last of them is; all others are as long as the cloth is wide.")]
    keys: Annotated[tuple[str, ...], says("The keys of the pieces that come of them.")] = field(name="pieces")


class FabricCloth(Struct, frozen=True):
    """How one fabric is cut: the plan, what is joined from strips across, and the length to buy."""

    plan: ClothPlan
    joined: tuple[JoinedStrips, ...]
    buy: Buy


class Bolt(Struct, frozen=True):
    """The cloth there is: its usable width, the ruler's measure and the seam, all in `unit`."""

    usable_width: Fraction
    measure: Fraction
    seam: Fraction
    unit: RulerUnit
    shrinkage: Fraction = SHRINKAGE


def cloth_width(quilt: QuiltDesign, fabric: str) -> Fraction:
    """Usable width of a fabric: its own less selvages, else what the quilt says, else 40 in or 100 cm."""
    for known in quilt.fabrics:
        if known.name == fabric and known.width is not None:
            return without_selvages(known.width, quilt.unit, quilt.measure)
    return USABLE[quilt.unit] if quilt.usable_width is None else floor_to(quilt.usable_width, quilt.measure)


def backing_width(quilt: QuiltDesign, choice: BackingChoice) -> Fraction:
    """Usable width of the backing: of the wide fabric that is asked for, less its selvages, or of the fabric named."""
    if choice.width is None:
        return cloth_width(quilt, choice.fabric)
    return without_selvages((choice.width, quilt.unit), quilt.unit, quilt.measure)


def too_large(pieces: Iterable[QuiltPiece], usable_width: Fraction) -> QuiltPiece | None:
    """The first piece that the cloth holds in no way, or None."""
    return next((piece for piece in pieces if not _fits(piece, usable_width)), None)


def _fits(piece: QuiltPiece, usable_width: Fraction) -> bool:
    return (
        min(piece.cut) <= usable_width if _is_joined(piece, usable_width) else fits_cloth(_piece(piece), usable_width)
    )


def fabric_cloth(pieces: Sequence[QuiltPiece], bolt: Bolt, effort: Effort) -> FabricCloth:
    """The plan for everything that is cut from one fabric, and what to buy.

    Shape:  strips across the cloth, after what is cut along its length.
    Errors: ValueError for a piece that the cloth does not hold (see `too_large`).
    """
    cloth, joined = cloth_pieces(pieces, bolt)
    plan = _plan(cloth, bolt, effort)
    return FabricCloth(plan, joined, buy(plan.length, bolt.unit, bolt.shrinkage))


@lru_cache(256)
def _plan(cloth: tuple[ClothPiece, ...], bolt: Bolt, effort: Effort) -> ClothPlan:
    """A plan may take seconds, and a quilt stands in a book as well as by itself: the same question is asked once."""
    return plan_length(cloth, bolt.usable_width, bolt.measure, effort, buying_step=SHOP_STEP[bolt.unit])


def cloth_pieces(pieces: Sequence[QuiltPiece], bolt: Bolt) -> tuple[tuple[ClothPiece, ...], tuple[JoinedStrips, ...]]:
    """The pieces as the cloth gives them: what is joined as whole strips, all else as it is."""
    chains: dict[Fraction, list[QuiltPiece]] = defaultdict(list)
    whole: list[ClothPiece] = []
    for piece in pieces:
        if _is_joined(piece, bolt.usable_width):
            chains[min(piece.cut)].append(piece)
        else:
            whole.append(_piece(piece))
    joined = tuple(joined_strips(width, chains[width], bolt) for width in sorted(chains, reverse=True))
    strips = [strip for each in joined for strip in _strips(each, bolt.usable_width)]
    return (*whole, *strips), joined


def _strips(joined: JoinedStrips, usable_width: Fraction) -> tuple[ClothPiece, ...]:
    """Whole strips, and the last one, which shares its strip with other pieces where it is short."""
    full = ClothPiece(joined.key, usable_width, joined.cut_width, joined.strips - 1, may_turn=False)
    return full, ClothPiece(joined.key, joined.last, joined.cut_width, 1, may_turn=False)


def joined_strips(cut_width: Fraction, pieces: Sequence[QuiltPiece], bolt: Bolt) -> JoinedStrips:
    """How many strips across the cloth, sewn end to end, give all the lengths.

    Exact:  the least n with n × usable width - (n - 1) × 2 seams ≥ the sum of the lengths; the last as long as is then
            wanted. Joined straight: a slanted join would lose the strip's width each time.
    """
    length = sum((max(piece.cut) * piece.count for piece in pieces), Fraction(0))
    strips, last = strips_for(length, bolt)
    return JoinedStrips(f"{GOES_TO_JOINED} {cut_width}", cut_width, strips, last, tuple(piece.key for piece in pieces))


def strips_for(length: Fraction, bolt: Bolt) -> tuple[int, Fraction]:
    """How many strips across the cloth, joined straight, make so long a one, and how long the last of them is.

    The last is never a scrap with a seam: it is `SHORTEST_END` long at least, and what is too much is cut off.
    """
    strips = widths_for(length, bolt.usable_width, bolt.seam)
    last = length - (strips - 1) * (bolt.usable_width - 2 * bolt.seam)
    return strips, last if strips == 1 else max(last, SHORTEST_END[bolt.unit])


def _is_joined(piece: QuiltPiece, usable_width: Fraction) -> bool:
    return piece.joined and not piece.lengthwise and max(piece.cut) > usable_width


def _piece(piece: QuiltPiece) -> ClothPiece:
    width, height = piece.cut
    return ClothPiece(piece.key, width, height, piece.count, piece.may_turn, piece.lengthwise)
