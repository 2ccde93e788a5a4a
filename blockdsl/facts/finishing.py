"""A quilt's cloth and finishing, worked out when it is first asked for: a plan for a fabric may take seconds."""

from __future__ import annotations

from blockdsl.diagnostics import Problems
from blockdsl.facts.collect_cloth import collect_scraps, pieces_too_large
from blockdsl.facts.collect_finishing import collect_finishing
from blockdsl.facts.finishing_report import report_finishing, report_scraps, report_too_large
from blockdsl.facts.finishingfacts import FinishingFacts, ScrapsFacts
from blockdsl.facts.quiltrecord import QuiltCutFacts, QuiltKindFacts
from blockdsl.model.quilt import (
    BackingChoice,
    BindingChoice,
    QuiltDesign,
    ScrapsChoice,
    SleeveChoice,
    WaddingChoice,
)


class QuiltFinishing:
    """The cloth, backing, binding, wadding, sleeve and scraps of one quilt; found once, however often it is asked."""

    __slots__ = ("_cuts", "_design", "_found", "_kinds", "_scraps")

    def __init__(self, design: QuiltDesign, cuts: tuple[QuiltCutFacts, ...], kinds: tuple[QuiltKindFacts, ...]) -> None:
        """`cuts` are all that is cut for the top, `kinds` its blocks."""
        self._design, self._cuts, self._kinds = design, cuts, kinds
        self._found: FinishingFacts | None = None
        self._scraps: tuple[ScrapsFacts, ...] | None = None

    def __eq__(self, other: object) -> bool:
        """Quilts whose facts are equal may still be finished otherwise: that is told apart in `repr` alone."""
        return isinstance(other, QuiltFinishing)

    def __hash__(self) -> int:
        """The same of all."""
        return hash(QuiltFinishing)

    def __repr__(self) -> str:
        # All that decides what is found and does not stand in the facts themselves: keys of the cache are made of it.
        design = self._design
        asked = (design.binding, design.backing, design.wadding, design.sleeve, *design.scraps)
        return f"QuiltFinishing({design.fabrics}, {[_said(choice) for choice in asked]})"

    def __reduce__(self) -> tuple[object, ...]:
        # What was found goes along to another process; what was not is found there, the same.
        return _restored, (self._design, self._cuts, self._kinds, self._found)

    @property
    def facts(self) -> FinishingFacts:
        """All of it."""
        if self._found is None:
            self._found = collect_finishing(self._design, self._cuts, self._kinds, self.scraps)
        return self._found

    @property
    def estimated(self) -> FinishingFacts:
        """All of it with the cloth planned quickly: it may be a little more than the plan takes that is printed."""
        return collect_finishing(self._design, self._cuts, self._kinds, self.scraps, quickly=True)

    def take(self, found: FinishingFacts) -> None:
        """Keep what was found for an equal quilt."""
        self._found = found

    @property
    def scraps(self) -> tuple[ScrapsFacts, ...]:
        """The scraps alone, which take no plan of cloth."""
        if self._scraps is None:
            self._scraps = collect_scraps(self._design)
        return self._scraps

    def report(self, problems: Problems) -> None:
        """What cannot be: pieces and bindings wider than their cloth, prints that clash, fat quarters too few."""
        report_too_large(
            self._design, pieces_too_large(self._design, self._cuts, self._kinds, self.scraps), self._cuts, problems
        )
        report_finishing(self._design, problems)
        choices = {choice.fabric: choice for choice in self._design.scraps}
        for scraps in self.scraps:
            choice = choices[scraps.role]
            report_scraps(choice, scraps, problems)


def _restored(
    design: QuiltDesign,
    cuts: tuple[QuiltCutFacts, ...],
    kinds: tuple[QuiltKindFacts, ...],
    found: FinishingFacts | None,
) -> QuiltFinishing:
    finishing = QuiltFinishing(design, cuts, kinds)
    if found is not None:
        finishing.take(found)
    return finishing


def _said(choice: BindingChoice | BackingChoice | WaddingChoice | SleeveChoice | ScrapsChoice | None) -> object:
    """What a line says; where it stands does not matter."""
    return choice and {name: getattr(choice, name) for name in choice.__struct_fields__ if name != "span"}
