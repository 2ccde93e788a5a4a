"""A step of English paper piecing in words: pieces folded round their papers, edge whipped to edge, papers taken out.

Papers are folded as easily as hands can, so a set-in seam is no more trouble than a straight one, no seam stops short
of its edge and none is pressed to a side. Large tacking stitches, small whip stitches through the folds alone, papers
left in until a patch has all its neighbours: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from blockdsl.model.lengths import write_length
from blockdsl.sewing.steps.edges import edge_of
from blockdsl.sewing.steps.step import Stage, StepSeam, Variant
from blockdsl.sewing.steps.words import Speech, Teller

_FOLD = (
    "Lay each paper, printed side up, on the wrong side of its piece with the same allowance all round, and pin it. "
    "Fold the allowances over the paper one after the other and tack them down with large stitches."
)
_WHIP = (
    "All seams of this step are sewn by hand: right sides together, from corner to corner, with small whip stitches "
    "that catch the two folds and not the paper."
)


def sentences_by_hand(
    variant: Variant, speech: Speech, hands: int, *, is_block: bool, is_first: bool, is_whole: bool
) -> tuple[str, ...]:
    """What to do for one step over papers, sentence by sentence.

    `is_first`: how pieces are folded and whipped is told in full. `is_whole`: nothing else is sewn to it over papers,
    so the papers come out.
    """
    found: list[str] = []
    if any(part.step is None for part in variant.ingredients):
        found.append(_FOLD if is_first else "Tack the pieces round their papers.")
    found.append(_WHIP if is_first else "Whip-stitch all seams of this step by hand.")
    found += _HandTeller(variant, speech).sewing()
    found += _taken_out(variant, speech, is_block=is_block) if is_whole else ["Leave the papers in."]
    if hands == 2:
        found.append("Make the mirror image in the same way, with the parts the other way round.")
    return tuple(found)


def _taken_out(variant: Variant, speech: Speech, *, is_block: bool) -> list[str]:
    size = " × ".join(write_length(side + 2 * speech.seam, speech.unit) for side in variant.extent)
    who = "the block" if is_block else "it" if variant.count == 1 else "each"
    measures = f": {who} should now measure {size} {speech.unit}" if variant.is_rectangle else ""
    return [
        "Press it from the back with the papers in, then draw out the tacking and take out the papers.",
        f"Unfold the allowances along the outer edge and press them flat{measures}.",
    ]


class _HandTeller(Teller):
    """Tells the stages as they are sewn by hand: nothing to press, to stop at or to lock."""

    def __init__(self, variant: Variant, speech: Speech) -> None:
        super().__init__(variant, speech)
        self._told_inner = False

    def sewing(self) -> list[str]:
        """All stages in order, without what has nothing to say."""
        return [sentence for sentence in super().sewing() if sentence]

    def _from_the_edge(self) -> str:
        return ""

    def _edge(self, part: int, seam: StepSeam) -> str:
        """By its finished length: the allowance is folded away."""
        if self._is_stage(part):
            return ""
        return edge_of(self._variant.ingredients[part].outline, seam.line, Fraction(0), self._speech.unit)

    def _hard(self, stage: Stage) -> list[str]:
        found = []
        if any(len(seam.line) > 2 for seam in stage.seams) and not self._told_inner:
            self._told_inner = True
            found.append(
                "At each inner corner fold the papers until the next two edges lie together, and sew on with the same "
                "thread."
            )
        if any(seam.stop is not None for seam in stage.seams):
            found.append("Sew only as far as the mark in the picture and leave the rest open for now.")
        return found

    def _closing(self, stage: Stage) -> list[str]:
        return ["Now sew what was left open, from where you stopped to the corner."] if stage.closes else []

    def _held(self, _stage: Stage) -> list[str]:
        return []

    def _centred(self, _stage: Stage) -> list[str]:
        return []

    def _matching(self, _stage: Stage) -> list[str]:
        return []

    def _press(self, _stage: Stage) -> str:
        return ""

    def _row_edges(self, rows: Sequence[Stage]) -> str:
        return super()._row_edges(rows).replace("edges level", "folded edges level")
