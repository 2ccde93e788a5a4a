"""Whether the strips and half blocks of a quilt can be measured: what falls between the marks sews up too large."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.analysis.quilt.columns import half_depth
from blockdsl.analysis.quilt.plan import SettingPlan
from blockdsl.analysis.quilt.rings import RingPlan
from blockdsl.diagnostics import Problems, Span
from blockdsl.geometry import ceil_to, floor_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.lengths import write_size
from blockdsl.syntax import ast


def report_quilt_off_the_ruler(
    lines: Sequence[ast.QuiltLine], plan: SettingPlan, rings: Sequence[RingPlan], problems: Problems
) -> None:
    """Warn of widths of sashing and borders, and of half blocks, that the ruler does not show."""
    set_line = next((line for line in lines if isinstance(line, ast.SetGrid)), None)
    sash = next((line for line in lines if isinstance(line, ast.Sash)), None)
    width = plan.sashing.width if plan.sashing else plan.strip[0] if plan.strip else None
    if sash is not None and width is not None:
        _report("a sash", width, sash.span, plan, problems)
    for ring in rings:
        _report(f"a {ring.word}", ring.width, ring.span, plan, problems)
    if set_line is not None and plan.setting == "dropped columns" and plan.across > 1:
        _report_half(plan, set_line.span, problems)


def _report(what: str, width: Fraction, span: Span, plan: SettingPlan, problems: Problems) -> None:
    measure = plan.main.measure
    near = [size for size in (floor_to(width, measure), ceil_to(width, measure)) if size > 0]
    if width in near:
        return
    advice = f"make it {' or '.join(_said(size, plan) for size in near)}"
    _tell(what, width, span, plan, advice, problems)


def _report_half(plan: SettingPlan, span: Span, problems: Problems) -> None:
    """A half is half of what a block is higher than a sash, so another width of the sash moves it to a mark."""
    measure, height = plan.main.measure, plan.main.height
    depth = half_depth(plan.block, plan.sashing)
    near = [floor_to(depth, measure), ceil_to(depth, measure)]
    if depth in near:
        return
    widths = [height - 2 * size for size in reversed(near) if 0 < height - 2 * size < height]
    said = " or ".join(_said(width, plan) for width in widths)
    advice = f"a sash of {said} would bring it to a mark" if said else "make the blocks a little larger or smaller"
    _tell("a half block", depth, span, plan, advice, problems)


def _tell(what: str, length: Fraction, span: Span, plan: SettingPlan, advice: str, problems: Problems) -> None:
    measure = plan.main.measure
    problems.report(
        "quilt-off-ruler", span, what=what, length=_said(length, plan), measure=_said(measure, plan), help=advice
    )


def _said(length: Fraction, plan: SettingPlan) -> str:
    return write_size(length, length, plan.main.unit)
