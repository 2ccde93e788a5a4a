"""What is said before the first cut where sizes rounded to the ruler add up."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.blockrecord import DriftFacts
from blockdsl.geometry import Exact, floor_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.fabric import RulerUnit
from blockdsl.wording.grammar import listed
from blockdsl.wording.lengths import exact_figure, length_words
from blockdsl.wording.messages import Messages


def drift_sentences(block: BlockFacts, words: Messages) -> tuple[str, ...]:
    """What is said before the first cut where rounding to the ruler adds up: what comes of it, and what to do."""
    drift = block.drift
    if drift is None:
        return ()
    unit = block.unit
    marks = Fraction(1, 16) if unit == "in" else Fraction(1, 10)
    off = words("length", length=exact_figure(floor_to(drift.off, marks), unit, words), unit=unit)
    measure = exact_figure(block.measure, unit, words)
    if drift.lengths is not None and drift.drawn is not None:
        real, drawn = (length_words(length, unit, words) for length in (drift.lengths[0], drift.drawn))
        row = _row(drift.row, words)
        first = words("rounding-adds-up", measure=measure, unit=unit, row=row, real=real, drawn=drawn, off=off)
    else:
        first = words("rounding-adds-up-seams", measure=measure, unit=unit, off=off)
    return first, " ".join(_remedies(block, drift, words))


def _row(row: Sequence[str], words: Messages) -> str:
    counts = Counter(row)
    if len(row) == 1:
        return words("drift-one", letter=row[0])
    if len(counts) == 1:
        return words("drift-alike", count=len(row), letter=row[0])
    counted = [words("drift-some", count=count, letter=letter) for letter, count in counts.items()]
    return words("drift-mixed", list=listed(counted, words))


def _remedies(block: BlockFacts, drift: DriftFacts, words: Messages) -> list[str]:
    """What was tried and would do; templates first, for they come with the sheet."""
    unit, found = block.unit, []
    letters = drift.templates or tuple(dict.fromkeys(patch.label for patch in block.patches))
    found.append(words("use-templates", letters=listed(letters, words), count=len(letters)))
    if drift.sizes:
        sizes = [_finished(size, unit, words) for size in drift.sizes]
        either = sizes[0] if len(sizes) == 1 else words("drift-either", first=sizes[0], second=sizes[1])
        found.append(words("use-size", sizes=either))
    if drift.measure is not None:
        found.append(words("use-finer", measure=exact_figure(drift.measure, unit, words), unit=unit))
    found += [words("use-method", what=each.what) for each in drift.methods]
    return found


def _finished(size: tuple[Exact, Exact], unit: RulerUnit, words: Messages) -> str:
    """`6 in`, or both sides of a block that is no square."""
    width, height = (exact_figure(side, unit, words) for side in size)
    if width == height:
        return words("length", length=width, unit=unit)
    return words("size", width=width, height=height, unit=unit)
