"""From the making of a block to the facts of its papers."""

from __future__ import annotations

from fractions import Fraction

from blockdsl.analysis.letters import Lettered
from blockdsl.cutting.foundation import generous_piece
from blockdsl.cutting.sizes import with_allowance
from blockdsl.facts.foundationfacts import FoundationFacts, PaperFacts, PaperPatch
from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.recognise import recognise
from blockdsl.model import BlockDesign
from blockdsl.sewing import Making
from blockdsl.sewing.foundation import FoundationPlan, Section
from blockdsl.sewing.making import title_of


def collect_foundations(design: BlockDesign, making: Making, lettered: Lettered) -> tuple[FoundationFacts, ...]:
    """Every unit that is sewn to papers, in the order in which the block first has them."""
    return tuple(_foundation(plan, design, lettered) for plan in making.foundations)


def _foundation(plan: FoundationPlan, design: BlockDesign, lettered: Lettered) -> FoundationFacts:
    group = plan.group
    return FoundationFacts(
        name=group.name or (group.filling.shape if group.filling else "unit"),
        title=title_of(group),
        count=len(group.places),
        finished=(group.width, group.height),
        papers=tuple(_paper(section, plan, design, lettered) for section in plan.sections),
        joins=tuple((_run(before), _run(after)) for before, after in plan.joins),
    )


def _run(letters: tuple[str, ...]) -> str:
    return letters[0] if len(letters) == 1 else f"{letters[0]}–{letters[-1]}"


def _paper(section: Section, plan: FoundationPlan, design: BlockDesign, lettered: Lettered) -> PaperFacts:
    first = plan.group.places[0].first
    patches = []
    for place, sewn in enumerate(section.patches, 1):
        patch = plan.group.picture[sewn.index]
        patches.append(
            PaperPatch(
                number=f"{section.letter}{place}",
                label=lettered.letters[first + sewn.index],
                fabric=patch.fabric,
                outline=patch.outline,
                seam=sewn.seam,
                cut=generous_piece(patch.outline, design)[0],
                grain=_grain(patch.outline),
            )
        )
    return PaperFacts(section.letter, section.outline, with_allowance(section.outline, design.seam), tuple(patches))


def _grain(outline: Polygon) -> tuple[Exact, Exact]:
    """Along the unit's sides, as the pieces are cut: the patch's own grain where that lies along them, else down."""
    across, down = recognise(outline).grain
    return (across, down) if not (across and down) else (Fraction(0), Fraction(1))
