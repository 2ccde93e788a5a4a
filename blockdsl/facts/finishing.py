"""A quilt's cloth and finishing, worked out when it is first asked for: a plan for a fabric may take seconds."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction

from blockdsl.analysis.scraps import spread_prints
from blockdsl.analysis.scraps_places import block_neighbours, blocks_with
from blockdsl.cutting.buying import SHRINKAGE
from blockdsl.cutting.cloth import ClothPiece, Effort
from blockdsl.cutting.fat_quarters import (
    blocks_from_sheet,
    fat_quarter_use,
    fat_quarters_of_prints,
    usable_fat_quarter,
)
from blockdsl.cutting.finishing import JOIN, Asked, backing_plan, sleeve_plan, wadding_plan
from blockdsl.cutting.finishing_binding import (
    BindingCloth,
    BindingCut,
    BindingPlan,
    binding_plan,
    can_be_cut,
    way_round,
)
from blockdsl.cutting.quilt_cloth import Bolt, QuiltPiece, backing_width, cloth_width, fabric_cloth, too_large
from blockdsl.diagnostics import Problems
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.finishing_report import report_finishing, report_scraps
from blockdsl.facts.finishingfacts import (
    BackingFacts,
    BindingFacts,
    ClothPieceFacts,
    FabricClothFacts,
    FinishingFacts,
    ScrapsFacts,
    SleeveFacts,
)
from blockdsl.facts.quiltfacts import QuiltCutFacts, QuiltKindFacts
from blockdsl.geometry import Exact
from blockdsl.model.quilt import QuiltDesign

BINDING, SLEEVE = "binding", "sleeve"


class QuiltFinishing:
    """The cloth, backing, binding, wadding, sleeve and scraps of one quilt; found once, however often it is asked."""

    __slots__ = ("_cuts", "_design", "_found", "_kinds", "_scraps")

    def __init__(self, design: QuiltDesign, cuts: tuple[QuiltCutFacts, ...], kinds: tuple[QuiltKindFacts, ...]) -> None:
        """`cuts` are all that is cut for the top, `kinds` its blocks."""
        self._design, self._cuts, self._kinds = design, cuts, kinds
        self._found: FinishingFacts | None = None
        self._scraps: tuple[ScrapsFacts, ...] | None = None

    def __reduce__(self) -> tuple[object, ...]:
        # What was found does not go to another process: it is found there again, the same.
        return QuiltFinishing, (self._design, self._cuts, self._kinds)

    @property
    def facts(self) -> FinishingFacts:
        """All of it."""
        if self._found is None:
            self._found = collect_finishing(self._design, self._cuts, self._kinds, self.scraps)
        return self._found

    @property
    def scraps(self) -> tuple[ScrapsFacts, ...]:
        """The scraps alone, which take no plan of cloth."""
        if self._scraps is None:
            self._scraps = collect_scraps(self._design, self._kinds)
        return self._scraps

    def report(self, problems: Problems) -> None:
        """What cannot be: bindings wider than their cloth, prints that clash, fat quarters too few."""
        report_finishing(self._design, problems)
        for choice, scraps in zip(self._design.scraps, self.scraps, strict=True):
            report_scraps(choice, scraps, problems)


def collect_finishing(
    design: QuiltDesign,
    cuts: Sequence[QuiltCutFacts],
    kinds: Sequence[QuiltKindFacts],
    scraps: tuple[ScrapsFacts, ...],
) -> FinishingFacts:
    """What the quilt takes besides its piecing."""
    binding, sleeve = _binding(design), _sleeve(design)
    further = [*_binding_pieces(design, binding), *_sleeve_pieces(design, sleeve)]
    names = [fabric.name for fabric in design.fabrics]
    lines = {name: [*_cut_pieces(cuts, name), *(each for fabric, each in further if fabric == name)] for name in names}
    backing = _backing(design)
    wadding = design.wadding.overage if design.wadding else backing.plan.overage if backing else None
    return FinishingFacts(
        fabrics=tuple(_fabric(design, name, lines[name], kinds) for name in names if lines[name]),
        backing=backing,
        binding=binding,
        wadding=None if wadding is None else wadding_plan(_finished(design), design.unit, design.measure, wadding),
        sleeve=sleeve,
        scraps=scraps,
    )


Line = tuple[QuiltPiece, tuple[tuple[str, int], ...]]
"""A piece and what it is for."""


def _finished(design: QuiltDesign) -> tuple[Exact, Exact]:
    return design.width, design.height


def _shrinkage(design: QuiltDesign) -> Fraction:
    return SHRINKAGE if design.shrinkage is None else design.shrinkage


# --- cloth ---------------------------------------------------------------------------------------


def _cut_pieces(cuts: Sequence[QuiltCutFacts], fabric: str) -> list[Line]:
    """All that is cut for the top, keyed by its place in the quilt's list of cuts."""
    return [
        (QuiltPiece(str(place), cut.cut, cut.count, cut.lengthwise, cut.may_turn, cut.joined), cut.uses)
        for place, cut in enumerate(cuts)
        if cut.fabric == fabric
    ]


def _fabric(design: QuiltDesign, name: str, lines: Sequence[Line], kinds: Sequence[QuiltKindFacts]) -> FabricClothFacts:
    bolt = Bolt(cloth_width(design, name), design.measure, design.seam, design.unit, _shrinkage(design))
    pieces = [piece for piece, _ in lines]
    told = tuple(ClothPieceFacts(piece.key, piece.cut, piece.count, uses) for piece, uses in lines)
    if too_large(pieces, bolt.usable_width) is not None:
        return FabricClothFacts(name, bolt.usable_width, told, None, (), None, None)
    cloth = fabric_cloth(pieces, bolt, Effort.USUAL)
    use = fat_quarter_use(
        _pieces_of_a_block(kinds, name),
        sum(kind.count for kind in kinds if kind.role != "border unit" and _cuts_from(kind.block, name)),
        [ClothPiece(piece.key, *piece.cut, piece.count, piece.may_turn) for piece in pieces],
        usable_fat_quarter(design.unit),
        design.measure,
    )
    return FabricClothFacts(name, bolt.usable_width, told, cloth.plan, cloth.joined, cloth.buy, use)


def _cuts_from(block: BlockFacts, fabric: str) -> bool:
    return any(cut.fabric == fabric for cut in block.cutting)


def _pieces_of_a_block(kinds: Iterable[QuiltKindFacts], fabric: str) -> list[ClothPiece]:
    """What the block that takes most of a fabric cuts from it, made by itself."""
    per_block = [
        [
            ClothPiece(str(place), *cut.cut, cut.count)
            for place, cut in enumerate(kind.block.cutting)
            if cut.fabric == fabric
        ]
        for kind in kinds
        if kind.role == "block"
    ]
    return max(per_block, key=_area, default=[])


def _area(pieces: Iterable[ClothPiece]) -> Fraction:
    return sum((piece.width * piece.height * piece.count for piece in pieces), Fraction(0))


# --- finishing -----------------------------------------------------------------------------------


def _backing(design: QuiltDesign) -> BackingFacts | None:
    choice = design.backing
    if choice is None:
        return None
    usable = backing_width(design, choice)
    if usable <= 2 * JOIN[design.unit]:
        return None
    asked = Asked(choice.overage, usable, _shrinkage(design))
    return BackingFacts(choice.fabric, backing_plan(_finished(design), design.unit, design.measure, asked))


def _binding(design: QuiltDesign) -> BindingFacts | None:
    choice = design.binding
    if choice is None:
        return None
    width = cloth_width(design, choice.fabric)
    cloth = BindingCloth(width, design.measure, design.seam, design.unit, shrinkage=_shrinkage(design))
    if not can_be_cut(choice.strip_width, cloth):
        return None
    cut: BindingCut = "bias" if choice.bias else "straight"
    plan = binding_plan(way_round(_finished(design)), choice.strip_width, cut, cloth)
    return BindingFacts(choice.fabric, plan)


def _binding_pieces(design: QuiltDesign, binding: BindingFacts | None) -> list[tuple[str, Line]]:
    """Strips across the whole width, or squares, to be cut from the binding's fabric with all else."""
    if binding is None:
        return []
    count, cut = _binding_cut(binding.plan, cloth_width(design, binding.fabric))
    return [(binding.fabric, (QuiltPiece(BINDING, cut, count), ((BINDING, count),)))]


def _binding_cut(plan: BindingPlan, usable_width: Fraction) -> tuple[int, tuple[Fraction, Fraction]]:
    if plan.square is not None:
        return plan.squares, (plan.square, plan.square)
    return plan.strips, (usable_width, plan.strip_width)


def _sleeve(design: QuiltDesign) -> SleeveFacts | None:
    choice = design.sleeve
    if choice is None:
        return None
    cloth = (cloth_width(design, choice.fabric), design.measure)
    if cloth[0] <= 2 * design.seam:
        return None
    return SleeveFacts(choice.fabric, sleeve_plan(design.width, choice.depth, design.seam, design.unit, cloth))


def _sleeve_pieces(design: QuiltDesign, sleeve: SleeveFacts | None) -> list[tuple[str, Line]]:
    if sleeve is None:
        return []
    plan, usable = sleeve.plan, cloth_width(design, sleeve.fabric)
    sides = ((usable, plan.strips - 1), (plan.last, 1))
    return [
        (sleeve.fabric, (QuiltPiece(SLEEVE, (long, plan.cut_width), count), ((SLEEVE, count),)))
        for long, count in sides
        if count
    ]


# --- scraps --------------------------------------------------------------------------------------


def collect_scraps(design: QuiltDesign, kinds: Sequence[QuiltKindFacts]) -> tuple[ScrapsFacts, ...]:
    """Each role that is to be spread over prints, in the order of its lines."""
    found = []
    for choice in design.scraps:
        blocks = blocks_with(design, choice.fabric)
        spread = spread_prints(block_neighbours(design, blocks), choice.prints)
        sheet = usable_fat_quarter(design.unit)
        each = blocks_from_sheet(_pieces_of_a_block(kinds, choice.fabric), sheet, design.measure)
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
                fat_quarters=fat_quarters_of_prints(spread.uses, each),
            )
        )
    return tuple(found)
