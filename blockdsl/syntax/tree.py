"""The grammar's tree of one line, and what is looked for in it."""

from __future__ import annotations

from typing import cast

from lark import Token, Tree

from blockdsl.syntax.atoms import LineAt, issue_at
from blockdsl.syntax.issue import IssueFound
from blockdsl.syntax.nodes import LengthLiteral, LengthUnit, Turn

LineTree = Tree[Token]


def tokens_of(tree: LineTree, *kinds: str) -> list[Token]:
    """The tokens of these kinds that lie directly in the tree."""
    return [child for child in tree.children if isinstance(child, Token) and child.type in kinds]


def find(tree: LineTree, *kinds: str) -> Token | None:
    """The first such token, if there is one."""
    return next(iter(tokens_of(tree, *kinds)), None)


def trees_of(tree: LineTree, rule: str) -> list[LineTree]:
    """The trees of a rule that lie directly in the tree."""
    return [child for child in tree.children if isinstance(child, Tree) and child.data == rule]


def length_of(at: LineAt, tree: LineTree) -> LengthLiteral:
    """The one length in a tree."""
    (length,) = trees_of(tree, "length")
    return at.length(tokens_of(length, "NUMBER")[0], tokens_of(length, "LENGTH_UNIT")[0])


def extent_of(at: LineAt, tree: LineTree) -> tuple[LengthLiteral, LengthLiteral]:
    """Width and height; the unit after the second number holds for both, and one number is a square."""
    (extent,) = trees_of(tree, "extent")
    numbers, units = tokens_of(extent, "NUMBER"), tokens_of(extent, "LENGTH_UNIT")
    if len(numbers) == 1:
        side = at.length(numbers[0], units[0])
        return side, side
    if units[0] != units[-1]:
        raise IssueFound(issue_at("units-mixed", units[-1], "give both measurements in one unit"))
    span = at.span(numbers[0], units[0] if len(units) == 2 else None)
    width = LengthLiteral(span, at.number(numbers[0]).value, cast("LengthUnit", str(units[-1])))
    return width, at.length(numbers[1], units[-1])


def widths_of(at: LineAt, tree: LineTree) -> tuple[LengthLiteral, ...]:
    """`6 9 12 in 30 cm`: several widths, the unit behind those that it holds for."""
    widths: list[LengthLiteral] = []
    for sizes in trees_of(tree, "sizes"):
        (unit,) = tokens_of(sizes, "LENGTH_UNIT")
        *before, last = tokens_of(sizes, "NUMBER")
        numbers = [number for token in before for number in at.numbers(token)]
        widths += [LengthLiteral(number.span, number.value, cast("LengthUnit", str(unit))) for number in numbers]
        widths.append(at.length(last, unit))
    return tuple(widths)


def turns_of(token: Token | None) -> tuple[Turn, ...]:
    """The turns written in one token, in order."""
    return cast("tuple[Turn, ...]", tuple(str(token))) if token is not None else ()
