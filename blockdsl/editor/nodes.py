"""Which nodes of a file lie around a place."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from msgspec import Struct

from blockdsl.diagnostics import Span
from blockdsl.syntax import ast
from blockdsl.syntax.line_kind import Node


def lines_of(declaration: object) -> tuple[Any, ...]:
    """The lines below a declaration's first."""
    return getattr(declaration, "lines", ())


def all_lines(file: ast.File) -> Iterator[Node]:
    """The node of every line that says something, in order."""
    for declaration in file.declarations:
        yield declaration
        yield from lines_of(declaration)


def node_of(file: ast.File, offset: int) -> Node | None:
    """The node of the line that a place lies in."""
    number = file.source.position(offset)[0]
    return next((node for node in all_lines(file) if node.span.line == number), None)


def declaration_of(file: ast.File, offset: int) -> ast.Declaration | None:
    """The declaration that a place lies in: it lasts until the next one."""
    number = file.source.position(offset)[0]
    found = None
    for declaration in file.declarations:
        if declaration.span.line > number:
            break
        found = declaration
    return found


def nodes_around(file: ast.File, offset: int) -> list[Node]:
    """The nodes that a place lies in, or right behind, the smallest first; the last is that of its line."""
    line = node_of(file, offset)
    if line is None:
        return []
    found = [node for node in _inside(line) if node.span.start <= offset <= node.span.stop]
    return sorted(found, key=lambda node: node.span.stop - node.span.start)


def _inside(node: Any) -> Iterator[Node]:
    if isinstance(node, tuple):
        for part in node:
            yield from _inside(part)
    elif isinstance(node, Struct) and not isinstance(node, Span):
        yield node  # type: ignore[misc]  # every node of the ast has a span
        for field in node.__struct_fields__:
            if field != "lines":
                yield from _inside(getattr(node, field))


def last_line(declaration: ast.Declaration) -> int:
    """The number of the last line of a declaration that says something."""
    lines = lines_of(declaration)
    return lines[-1].span.line if lines else declaration.span.line
