"""Cut sizes that add up to more than a seam can take in: what comes of them, and what would do instead.

Whatever is offered has been tried: the block was cut and sewn with it, and its seams come to lie in their places.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import islice
from typing import Final

from msgspec.structs import replace

from blockdsl.analysis.letters import Lettered, letter_patches
from blockdsl.analysis.ruler import report_sizes_off_the_ruler
from blockdsl.cutting import Cut, cut_list
from blockdsl.cutting.drift import Drift
from blockdsl.cutting.resized import FinishedSize
from blockdsl.diagnostics import Problems
from blockdsl.facts.blockrecord import DriftFacts, Instead
from blockdsl.facts.sewn import Sewing, drift_finder
from blockdsl.geometry import Exact, floor_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign, Choice
from blockdsl.model.lengths import about, write_length, write_size
from blockdsl.model.scale import scaled
from blockdsl.sewing import plan_making
from blockdsl.sewing.methods import CUT_PATCHES, FOUNDATION
from blockdsl.sewing.order import Unsewable, find_order

FINER: Final = Fraction(1, 16)
"""The finest marks of a ruler in inches; in centimetres there are none finer than the usual millimetre."""
_SHOWN: Final = {"in": Fraction(1, 16), "cm": Fraction(1, 10)}
_STEPS: Final = {"in": Fraction(1, 2), "cm": Fraction(1)}
_MOST_SIZES: Final = 16
"""So many other sizes are tried, the nearest first."""
_MOST_PATCHES: Final = 200
"""Blocks of more patches are not tried at other sizes: each takes as long as the block itself."""
_OFFERED: Final = 2


def collect_drift(design: BlockDesign, sewing: Sewing, lettered: Lettered, cuts: Sequence[Cut]) -> DriftFacts | None:
    """Where rounding adds up in a block cut so, and what would do; None when all seams lie in their places."""
    drift = sewing.drift(tuple(cuts))
    if drift is None:
        return None
    row, beside = (tuple(lettered.letters[patch] for patch in side) for side in drift.along)
    measure = FINER if design.unit == "in" and design.measure > FINER else None
    if measure is not None and sewing.adds_up(replace(FinishedSize.of(design), measure=measure)):
        measure = None
    return DriftFacts(
        off=drift.off,
        row=row,
        beside=beside,
        drawn=drift.drawn if row else None,
        lengths=drift.lengths if row else None,
        measure=measure,
        templates=_templates(sewing, row, beside, cuts),
        sizes=tuple(islice(_sizes(design, sewing), _OFFERED)),
        methods=tuple(Instead(*each) for each in _methods(design, drift)),
    )


def report_drift(design: BlockDesign, found: DriftFacts | None, problems: Problems) -> None:
    """Warn of it. Where units do not fall on the ruler that has been said, and is the reason."""
    if found is None or _is_off_the_ruler(design):
        return
    marks = write_size(design.measure, design.measure, design.unit)
    problems.report(
        "rounding-adds-up",
        design.span,
        measure=marks,
        what=_what(found, design),
        off=f"{write_length(floor_to(found.off, _SHOWN[design.unit]), design.unit)} {design.unit}",
        help=_help(found, design),
    )


def _what(found: DriftFacts, design: BlockDesign) -> str:
    if found.lengths is None or found.drawn is None:
        return "seams add up to more than drawn"
    real, drawn = (about(length, design.unit, _SHOWN[design.unit]) for length in (found.lengths[0], found.drawn))
    verb = "finishes" if len(found.row) == 1 else "finish"
    return f"{letters_in_words(found.row)} {verb} {real} {design.unit} long where {drawn} {design.unit} fits"


def letters_in_words(row: Sequence[str]) -> str:
    """`A`, `3 A in a row`, `2 A and 1 B in a row`."""
    if len(row) == 1:
        return row[0]
    counted = [f"{count} {letter}" for letter, count in Counter(row).items()]
    return f"{', '.join(counted[:-1])} and {counted[-1]} in a row" if len(counted) > 1 else f"{counted[0]} in a row"


def _help(found: DriftFacts, design: BlockDesign) -> str:
    offers = []
    if found.measure is not None:
        offers.append(f"write `measure {write_length(found.measure, design.unit)} {design.unit}`")
    if found.templates:
        offers.append(f"cut {' and '.join(found.templates)} with templates")
    if found.sizes:
        sizes = " or ".join(write_size(*size, design.unit) for size in found.sizes)
        offers.append(f"make the block {sizes}")
    offers += [f"write `make {each.what} as {each.method}`" for each in found.methods]
    if not offers:
        return "cut every patch with its template"
    return f"any of these avoids it: {'; '.join(offers)}"


# --- what would do ---------------------------------------------------------------------------------


def _works(design: BlockDesign) -> bool:
    """Whether the seams of a design come to lie in their places."""
    making, lettered = plan_making(design, Problems()), letter_patches(design.patches)
    order = find_order(design, making.made_whole)
    if isinstance(order, Unsewable):
        return False
    finder = drift_finder(design, making, lettered.letters, order)
    return finder is None or finder.find(cut_list(design, making, lettered)) is None


def _templates(sewing: Sewing, row: Sequence[str], beside: Sequence[str], cuts: Sequence[Cut]) -> tuple[str, ...]:
    """The fewest letters that are enough: those of the row, of both sides, or all that are rounded up."""
    loose = [cut for cut in cuts if cut.method == CUT_PATCHES and not cut.unit and cut.piece != "template"]
    rounded = list(dict.fromkeys(cut.label for cut in loose if cut.cut != cut.exact or cut.strip is not None))
    for chosen in (row, (*row, *beside), rounded):
        letters = tuple(letter for letter in rounded if letter in chosen)
        if letters and not sewing.drifts_with_templates(cuts, letters):
            return letters
    return ()


def _sizes(design: BlockDesign, sewing: Sewing) -> Iterator[tuple[Exact, Exact]]:
    """Whole and half inches or whole centimetres near the block's width, the nearest first."""
    if len(design.patches) > _MOST_PATCHES or design.appliques or any(patch.curved for patch in design.patches):
        return
    step = _STEPS[design.unit]
    nearest = round(design.width / step) * step
    around = sorted(
        (nearest + step * place for place in range(-_MOST_SIZES, _MOST_SIZES + 1)),
        key=lambda width: (abs(width - design.width), -width),
    )
    wanted = (width for width in around if width > 0 and width != design.width)
    for width in islice(wanted, _MOST_SIZES):
        other = scaled(design, width / design.width)
        if not _is_off_the_ruler(other) and not sewing.adds_up(
            replace(FinishedSize.of(design), scale=width / design.width)
        ):
            yield other.width, other.height


def _methods(design: BlockDesign, drift: Drift) -> Iterator[tuple[str, str]]:
    """Units that hold all that misses, sewn to papers instead, where that works."""
    patches = {patch for side in drift.along for patch in side}
    making = plan_making(design, Problems())
    for unit in making.units if patches else ():
        holds = any(patches <= set(range(place.first, place.stop)) for place in unit.group.places)
        what = unit.group.name or (unit.group.filling.shape if unit.group.filling else None)
        if not holds or what is None or unit.method != CUT_PATCHES:
            continue
        problems = Problems()
        other = replace(design, choices=(*design.choices, Choice(what, FOUNDATION, design.span, design.span)))
        if plan_making(other, problems).foundations and not any(problems) and _works(other):
            yield what, FOUNDATION


def _is_off_the_ruler(design: BlockDesign) -> bool:
    found = Problems()
    report_sizes_off_the_ruler(design, None, found)
    return any(found)
