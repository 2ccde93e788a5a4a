"""Units sewn to printed papers: which patches share a paper, and in what order they are added.

Takes:    a unit as drawn, its cover proved.
Gives:    its sections with numbered patches and their seams, and the order in which sections are joined.
Measures: exact, finished, in the unit's own box as seen from the right side of the cloth.
Reports:  the patches that no straight seam parts, as a result of its own kind.
Does not know: cloth, allowances, paper.
"""

from blockdsl.sewing.foundation.plan import (
    FoundationPlan,
    NoFoundation,
    PaperSection,
    SectionJoin,
    SewnPatch,
    plan_foundation,
)

__all__ = ["FoundationPlan", "NoFoundation", "PaperSection", "SectionJoin", "SewnPatch", "plan_foundation"]
