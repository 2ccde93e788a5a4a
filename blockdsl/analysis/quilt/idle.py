"""Lines of a quilt that change nothing in its setting, which she may not have meant."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from blockdsl.analysis.fixes import without_line
from blockdsl.analysis.quilt.plan import SettingPlan
from blockdsl.diagnostics import Problems
from blockdsl.syntax import ast


def report_idle_lines(
    lines: Sequence[ast.QuiltLine], plan: SettingPlan, fabrics: Collection[str], problems: Problems
) -> None:
    """Warn of lines that the quilt has no use for, each with what it could be meant for.

    `fabrics` are those that its blocks are pieced from.
    """
    for line in lines:
        why = _in_no_quilt(line, fabrics) or _in_this_setting(line, plan)
        if why is not None:
            what, reason, advice = why
            fixes = (without_line(line.span, f"`{what}`"),)
            problems.report("line-idle", line.span, what=what, why=reason, help=advice, fixes=fixes)


def _in_no_quilt(line: ast.QuiltLine, fabrics: Collection[str]) -> tuple[str, str, str] | None:
    """The line's word, why it changes nothing whatever the setting, and what to do about it; None when it does."""
    match line:
        case ast.Scraps() if line.fabric.text not in fabrics:
            known = ", ".join(f"`{fabric}`" for fabric in fabrics)
            return "scraps", f"no block has `{line.fabric.text}`", f"name a fabric of the blocks: {known}"
        case ast.Band(pieced=True, along_length=True):
            return "along length", "a pieced border is not cut in one piece", "leave the words out"
        case _:
            return None


def _in_this_setting(line: ast.QuiltLine, plan: SettingPlan) -> tuple[str, str, str] | None:
    """The same for lines that have something to do in other settings."""
    match line:
        case ast.Fill():
            return _fill(plan)
        case ast.Alternate():
            return _alternate(plan)
        case ast.Sash():
            return _sash(line, plan)
        case ast.SetGrid(pattern="dropped columns") if plan.across == 1:
            return "dropped columns", "there is one column, and every second one is dropped", "set two columns or more"
        case _:
            return None


def _fill(plan: SettingPlan) -> tuple[str, str, str] | None:
    if plan.on_point or plan.setting == "dropped columns":
        return None
    if plan.setting == "strippy":
        named = plan.strip is not None and plan.strip[1] == plan.fill
        return None if named else ("fill", "the `sash` line gives the plain strips", "take one of the two lines out")
    return "fill", "there is nothing to fill", "for plain squares on every second place write `alternate fog`"


def _alternate(plan: SettingPlan) -> tuple[str, str, str] | None:
    if plan.setting in ("rows", "medallion"):
        return "alternate", "every place is named already", "take it out, or name its block in the rows"
    if plan.on_point and min(plan.across, plan.down) == 1:
        return "alternate", "there is no place between the blocks", "set two rows and two columns or more"
    if plan.across * plan.down == 1:
        return "alternate", "there is one place", "set more blocks"
    return None


def _sash(line: ast.Sash, plan: SettingPlan) -> tuple[str, str, str] | None:
    if plan.setting == "strippy" and line.posts is not None:
        return "posts", "plain strips do not cross", "leave the word and its fabric out"
    if plan.on_point or line.outer:
        return None
    if plan.across * plan.down == 1 or (plan.setting == "strippy" and plan.across == 1):
        return "sash", "there is nothing to put it between", "add `outer` to lay it round the outside"
    return None
