"""The two questions that are asked of a cloth: how much of its length, and how many sheets."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.cutting.cloth.effort import Effort
from blockdsl.cutting.cloth.pieces import ClothPiece
from blockdsl.cutting.cloth.plan import ClothPlan, SheetPlan
from blockdsl.geometry.fraction import Fraction


def plan_length(
    pieces: Sequence[ClothPiece],
    usable_width: Fraction,
    measure: Fraction,
    effort: Effort = Effort.USUAL,
    three_stage: bool = True,
    buying_step: Fraction | None = None,
) -> ClothPlan:
    """The shortest length of cloth found for all the pieces, cut into strips across it, and how short it could be.

    Shape:    long pieces (asked for, or longer than the cloth is wide) side by side first, narrower strips beside
              them; then strips across the whole width, each sub-cut into sections.
    Measures: everything in one unit; pieces are rounded up to the cutter's `measure`, the cloth down.
    Third:    with `three_stage`, sections are cut again, in stacks, but only where that buys less cloth: where the
              length comes down to fewer of the steps in which cloth is bought, or at all when none is given.
    Errors:   ValueError for a piece that the cloth cannot hold (see `fits_cloth`), or of no size.
    """
    from blockdsl.cutting.cloth.lengths import shortest_length

    return shortest_length(pieces, usable_width, measure, effort, buying_step, three_stage=three_stage)


def plan_sheets(
    pieces: Sequence[ClothPiece],
    sheet_width: Fraction,
    sheet_length: Fraction,
    measure: Fraction,
    effort: Effort = Effort.USUAL,
    either_way: bool = True,
) -> SheetPlan:
    """The fewest sheets found, such as fat quarters, each cut into strips that are then sub-cut.

    Strips:   across each sheet, or where `either_way` along it, whichever takes fewer sheets.
    Measures: everything in one unit; pieces are rounded up to the cutter's `measure`, the sheet down.
    Errors:   ValueError for a piece that no sheet holds (see `fits_sheet`), or of no size.
    """
    from blockdsl.cutting.cloth.sheets import fewest_sheets

    return fewest_sheets(pieces, (sheet_width, sheet_length), measure, effort, either_way=either_way)
