"""All changes that can be made: an operator for its neighbour, a number for the next, one place at a time."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from random import Random

OPERATORS: dict[type[ast.AST], tuple[str, str]] = {
    ast.Lt: ("<", "<="),
    ast.LtE: ("<=", "<"),
    ast.Gt: (">", ">="),
    ast.GtE: (">=", ">"),
    ast.Eq: ("==", "!="),
    ast.NotEq: ("!=", "=="),
    ast.Is: ("is", "is not"),
    ast.IsNot: ("is not", "is"),
    ast.In: ("in", "not in"),
    ast.NotIn: ("not in", "in"),
    ast.Add: ("+", "-"),
    ast.Sub: ("-", "+"),
    ast.Mult: ("*", "/"),
    ast.Div: ("/", "*"),
    ast.FloorDiv: ("//", "/"),
    ast.Mod: ("%", "*"),
    ast.And: ("and", "or"),
    ast.Or: ("or", "and"),
}
FOLDERS = ("blockdsl/cutting", "blockdsl/sewing", "blockdsl/analysis", "blockdsl/facts")


@dataclass(frozen=True, slots=True)
class Change:
    """`old` becomes `new` at a place of a file; `line` is what stood there."""

    file: str
    row: int
    column: int
    old: str
    new: str
    line: str

    def made_in(self, text: str) -> str:
        """The file's text with the change in it."""
        lines = text.splitlines(keepends=True)
        raw = lines[self.row - 1].encode()
        after = raw[: self.column] + self.new.encode() + raw[self.column + len(self.old.encode()) :]
        lines[self.row - 1] = after.decode()
        return "".join(lines)

    def __str__(self) -> str:
        return f"{self.file}:{self.row}: `{self.old}` becomes `{self.new}` in {self.line}"


def chosen(root: Path, count: int, seed: int = 1) -> list[Change]:
    """So many changes, drawn by lot: the same ones for the same files, spread over files by how much is in them."""
    found = [
        change
        for folder in FOLDERS
        for path in sorted((root / folder).rglob("*.py"))
        for change in changes_of(path.relative_to(root).as_posix(), path.read_text(encoding="utf-8"))
    ]
    return Random(seed).sample(found, min(count, len(found)))  # noqa: S311  a sample, not a secret


def changes_of(file: str, text: str) -> Iterator[Change]:
    """Every change that can be made in a file; types and words are left alone."""
    lines = [line.encode() for line in text.splitlines()]
    tree = ast.parse(text)
    notes = {id(inner) for node in ast.walk(tree) for note in _notes(node) for inner in ast.walk(note)}
    for node in ast.walk(tree):
        if id(node) in notes:
            continue
        for start, end, kind in _operators(node):
            old, new = OPERATORS[kind]
            if start[0] != end[0]:
                continue
            between = lines[start[0] - 1][start[1] : end[1]]
            at = between.find(old.encode())
            if at >= 0:
                yield Change(file, start[0], start[1] + at, old, new, lines[start[0] - 1].decode().strip())
        if isinstance(node, ast.Constant) and type(node.value) is int:
            yield Change(
                file, node.lineno, node.col_offset, str(node.value), str(node.value + 1),
                lines[node.lineno - 1].decode().strip(),
            )  # fmt: skip


def _notes(node: ast.AST) -> Iterator[ast.AST]:
    """Annotations of types, in which an operator or a number changes nothing that runs."""
    for name in ("annotation", "returns"):
        note = getattr(node, name, None)
        if isinstance(note, ast.AST):
            yield note


def _operators(node: ast.AST) -> Iterator[tuple[tuple[int, int], tuple[int, int], type[ast.AST]]]:
    """Where an operator lies (from the end of what is before it to the start of what is after), and which it is."""
    if isinstance(node, ast.Compare):
        for left, kind, right in zip([node.left, *node.comparators], node.ops, node.comparators, strict=False):
            yield _end(left), (right.lineno, right.col_offset), type(kind)
    elif isinstance(node, ast.BinOp) and type(node.op) in OPERATORS:
        yield _end(node.left), (node.right.lineno, node.right.col_offset), type(node.op)
    elif isinstance(node, ast.BoolOp):
        for left, right in zip(node.values, node.values[1:], strict=False):
            yield _end(left), (right.lineno, right.col_offset), type(node.op)


def _end(node: ast.expr) -> tuple[int, int]:
    return node.end_lineno or node.lineno, node.end_col_offset or node.col_offset
