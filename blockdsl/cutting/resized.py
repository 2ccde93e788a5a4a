"""The patches of a block that are cut by themselves, cut for other sizes: planned once, and not anew for each size."""

from __future__ import annotations

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.analysis.letters import Lettered, letter_patches
from blockdsl.cutting.angled import StripWay
from blockdsl.cutting.cutlist import Cut, PieceUse, cut_use, in_order, loose_uses
from blockdsl.cutting.grain import plan_grain
from blockdsl.cutting.ways import Way
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign, RulerUnit
from blockdsl.sewing import Making


class FinishedSize(Struct, frozen=True):
    """A size that a block is cut at: its scale to the block as drawn, its unit and its allowance."""

    scale: Fraction
    unit: RulerUnit
    seam: Fraction
    measure: Fraction

    @classmethod
    def of(cls, design: BlockDesign) -> FinishedSize:
        """The block's own."""
        return cls(Fraction(1), design.unit, design.seam, design.measure)


class LooseCuts:
    """What a block's own plan of cutting comes to at other sizes.

    Which way a patch is cut does not depend on its size, and every measure of a piece is what the patch has of it,
    times the scale, and what the allowance adds, which goes with that alone. So two plans tell all of them: the
    block's own, and the same with twice the allowance. Patches with curved sides are cut by template and left out.
    """

    def __init__(self, design: BlockDesign, making: Making) -> None:
        self._design = design
        lettered = _straight_alone(letter_patches(design.patches))
        loose = [index for index in making.loose if design.patches[index].curved is None]
        uses, wider = (
            loose_uses(each, loose, lettered, 1, plan_grain(each, lettered))
            for each in (design, replace(design, seam=2 * design.seam))
        )
        more = _Sum(Fraction(-1), Fraction(1))
        self._uses = [(one, more.use(one, other)) for one, other in zip(uses, wider, strict=True)]
        """As the block is, and what one more allowance adds to each measure."""

    def cuts(self, size: FinishedSize) -> tuple[Cut, ...]:
        """The lines of the cutting list for them, those that are alike not merged."""
        ruler = replace(self._design, unit=size.unit, seam=size.seam, measure=size.measure)
        resized = _Sum(size.scale, size.seam / self._design.seam - size.scale)
        return in_order([cut_use(resized.use(*each), ruler) for each in self._uses], ruler)


def _straight_alone(lettered: Lettered) -> Lettered:
    """Without the curved patches: twice the allowance may close up a hollow arc that the block's own leaves open."""
    first = {letter: patch for letter, patch in lettered.first.items() if letter not in lettered.curved}
    return replace(lettered, first=first)


class _Sum(Struct, frozen=True):
    """Every measure of two plans alike, each plan times its own factor, added up."""

    first: Fraction
    second: Fraction

    def use(self, one: PieceUse, other: PieceUse) -> PieceUse:
        return replace(one, way=self._way(one.way, other.way))

    def _way(self, one: Way, other: Way) -> Way:
        exact = self._number(one.exact[0], other.exact[0]), self._number(one.exact[1], other.exact[1])
        strip = None if one.strip is None or other.strip is None else self._strip(one.strip, other.strip)
        corner = None if one.corner is None or other.corner is None else self._number(one.corner, other.corner)
        return replace(one, exact=exact, strip=strip, corner=corner)

    def _strip(self, one: StripWay, other: StripWay) -> StripWay:
        def number(mine: Exact | None, more: Exact | None) -> Exact | None:
            return None if mine is None or more is None else self._number(mine, more)

        return replace(
            one,
            width=self._number(one.width, other.width),
            every=number(one.every, other.every),
            across=number(one.across, other.across),
            run=self._number(one.run, other.run),
            pitch=self._number(one.pitch, other.pitch),
        )

    def _number(self, one: Exact, other: Exact) -> Exact:
        return one * self.first + other * self.second
