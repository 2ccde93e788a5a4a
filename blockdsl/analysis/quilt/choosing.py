"""Which block stands on which place of a setting, how it is turned and in which colours."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec.structs import replace

from blockdsl.analysis.quilt.middle import BlockHere, Chooser, Here, PlainSquare
from blockdsl.geometry.symmetry import from_turns
from blockdsl.model import BlockDesign
from blockdsl.syntax import ast

Rule = ast.TurnRule | ast.ColourwayRule
_EVERY_SECOND: Final = "every second"


def is_there(where: ast.Where, row: int, column: int, *, on_point: bool) -> bool:
    """Whether a rule holds for a place, counted from 0.

    On point the outer grid has the odd lattice rows, and the blocks between its blocks the even ones: those are every
    second.
    """
    match where:
        case "all":
            return True
        case "odd rows" | "even rows":
            return row % 2 == (0 if where == "odd rows" else 1)
        case "odd columns" | "even columns":
            return column % 2 == (0 if where == "odd columns" else 1)
        case _:
            return row % 2 == 1 if on_point else (row + column) % 2 == 1


def every_second(main: BlockDesign, other: BlockDesign | str | None, *, on_point: bool) -> Chooser:
    """One block everywhere, or a second one (or a fabric) on every second place."""
    first: Here = BlockHere(main)
    second: Here = first if other is None else PlainSquare(other) if isinstance(other, str) else BlockHere(other)

    def choose(row: int, column: int) -> Here:
        return second if is_there(_EVERY_SECOND, row, column, on_point=on_point) else first

    return choose


def by_rows(rows: Sequence[Sequence[Here]]) -> Chooser:
    """Each place as it is named."""

    def choose(row: int, column: int) -> Here:
        return rows[row][column]

    return choose


def with_rules(choose: Chooser, lines: Sequence[ast.QuiltLine], *, on_point: bool) -> Chooser:
    """The places turned and recoloured by all rules that hold for them, one after the other."""
    rules = [line for line in lines if isinstance(line, Rule)]
    if not rules:
        return choose
    known: dict[tuple[object, tuple[bool, ...]], Here] = {}

    def chosen(row: int, column: int) -> Here:
        here = choose(row, column)
        hold = tuple(is_there(rule.where, row, column, on_point=on_point) for rule in rules)
        key = (_mark(here), hold)
        if key not in known:
            known[key] = _changed(here, [rule for rule, holds in zip(rules, hold, strict=True) if holds])
        return known[key]

    return chosen


def _mark(here: Here) -> object:
    return here.fabric if isinstance(here, PlainSquare) else (id(here.design), here.symmetry, here.colourway)


def _changed(here: Here, rules: Sequence[Rule]) -> Here:
    for rule in rules:
        if isinstance(here, PlainSquare):
            break
        if isinstance(rule, ast.TurnRule):
            here = replace(here, symmetry=here.symmetry.then(from_turns("".join(rule.turns))))
        elif any(plan.name == rule.name.text for plan in here.design.colourways):
            here = replace(here, colourway=rule.name.text)
    return here
