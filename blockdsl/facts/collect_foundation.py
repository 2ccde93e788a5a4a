"""From the making of a block to the facts of its papers."""

from __future__ import annotations

from blockdsl.analysis.letters import Lettered
from blockdsl.cutting.foundation import roomy_piece
from blockdsl.cutting.sizes import with_allowance
from blockdsl.facts.foundationfacts import FoundationFacts, PaperFacts, PaperJoin, PaperPatch
from blockdsl.model import BlockDesign
from blockdsl.sewing import Making
from blockdsl.sewing.foundation import FoundationPlan, PaperSection
from blockdsl.sewing.making import title_of


def collect_foundations(design: BlockDesign, making: Making, lettered: Lettered) -> tuple[FoundationFacts, ...]:
    """Every unit that is sewn to papers, in the order in which the block first has them."""
    places = {made.group.key: place for place, made in enumerate(making.units)}
    return tuple(_foundation(plan, places[plan.group.key], design, lettered) for plan in making.foundations)


def _foundation(plan: FoundationPlan, unit: int, design: BlockDesign, lettered: Lettered) -> FoundationFacts:
    group = plan.group
    return FoundationFacts(
        unit=unit,
        name=group.name or (group.filling.shape if group.filling else "unit"),
        title=title_of(group),
        count=len(group.places),
        finished=(group.width, group.height),
        papers=tuple(_paper(section, plan, design, lettered) for section in plan.sections),
        joins=tuple(
            PaperJoin(join.before, join.after, join.seam, f"{_run(join.before)}–{_run(join.after)}")
            for join in plan.joins
        ),
    )


def _run(letters: tuple[str, ...]) -> str:
    return "".join(letters) if len(letters) < 3 else f"{letters[0]}…{letters[-1]}"


def _paper(section: PaperSection, plan: FoundationPlan, design: BlockDesign, lettered: Lettered) -> PaperFacts:
    first = plan.group.places[0].first
    patches = []
    for place, sewn in enumerate(section.patches, 1):
        patch = plan.group.picture[sewn.index]
        piece = roomy_piece(patch.outline, sewn.seam, patch.fabric, design)
        patches.append(
            PaperPatch(
                number=f"{section.letter}{place}",
                label=lettered.letters[first + sewn.index],
                fabric=patch.fabric,
                outline=patch.outline,
                seam=sewn.seam,
                cut=piece.cut,
                subcut=piece.subcut,
                edge=piece.edge,
            )
        )
    return PaperFacts(section.letter, section.outline, with_allowance(section.outline, design.seam), tuple(patches))
