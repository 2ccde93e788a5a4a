"""A quilt's cloth and finishing, worked out when it is first asked for: a plan for a fabric may take seconds."""

from __future__ import annotations

from blockdsl.diagnostics import Problems
from blockdsl.facts.collect_cloth import collect_scraps
from blockdsl.facts.collect_finishing import collect_finishing
from blockdsl.facts.finishing_report import report_finishing, report_scraps
from blockdsl.facts.finishingfacts import FinishingFacts, ScrapsFacts
from blockdsl.facts.quiltfacts import QuiltCutFacts, QuiltKindFacts
from blockdsl.model.quilt import QuiltDesign


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
