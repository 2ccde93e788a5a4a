"""Whether the curves of a block can be sewn with its seam allowance."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.analysis.settings import Settings
from blockdsl.diagnostics import Problems, Span
from blockdsl.geometry import to_float
from blockdsl.geometry.arc_offset import least_radius
from blockdsl.model import Patch
from blockdsl.model.lengths import write_length


def report_tight_curves(patches: Sequence[Patch], settings: Settings, block: Span, problems: Problems) -> bool:
    """Report the tightest hollow edge when its allowance would close it up; whether there was one."""
    hollow = [
        bend.radius
        for patch in patches
        if patch.curved is not None
        for bend in patch.curved.bends
        if bend is not None and bend.hollow
    ]
    least = least_radius(settings.seam)
    tight = [radius for radius in hollow if radius <= least]
    if not tight:
        return False
    radius = min(tight, key=to_float)
    unit = settings.unit
    problems.report(
        "curve-too-tight",
        block,
        radius=f"{write_length(radius, unit)} {unit}",
        name=block.text.strip('"'),
        help=f"make the block larger or the radius a larger share of its cell: more than "
        f"{write_length(least, unit)} {unit}, better four times the seam allowance or more",
    )
    return True
