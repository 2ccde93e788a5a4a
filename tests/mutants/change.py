"""Places in the code where one operator or constant can be changed, and the code with one of them changed."""

from __future__ import annotations

import ast
import hashlib
from collections import Counter
from collections.abc import Iterator, Mapping
from copy import deepcopy
from dataclasses import dataclass
from pathlib import Path
from typing import Final

_COMPARES: Final[dict[type[ast.cmpop], type[ast.cmpop]]] = {
    ast.Lt: ast.LtE, ast.LtE: ast.Lt, ast.Gt: ast.GtE, ast.GtE: ast.Gt,
    ast.Eq: ast.NotEq, ast.NotEq: ast.Eq, ast.In: ast.NotIn, ast.NotIn: ast.In,
}  # fmt: skip
_OPERATORS: Final[dict[type[ast.operator], type[ast.operator]]] = {
    ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.Div, ast.Div: ast.Mult, ast.FloorDiv: ast.Mult, ast.Mod: ast.Mult,
}  # fmt: skip
_SCOPES: Final = (ast.FunctionDef, ast.AsyncFunctionDef, ast.ClassDef)


@dataclass(frozen=True, slots=True)
class Change:
    """One change: the file, the number of the place in it, its line, the function, and what is changed into what.

    `again` counts changes that are alike in one function.
    """

    path: Path
    place: int
    line: int
    within: str
    what: str
    again: int

    @property
    def name(self) -> str:
        """What it is known by: the same as long as the code of the place is, wherever in the file it lies."""
        times = f" ({self.again + 1})" if self.again else ""
        return f"{self.path.as_posix()} {self.within}: {self.what}{times}"

    def rank(self, seed: int) -> str:
        """By this, a sample is drawn that stays the same but for places that come and go."""
        return hashlib.sha256(f"{seed} {self.name}".encode()).hexdigest()


def changes_in(path: Path) -> list[Change]:
    """Every place of a file, in order."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    within, seen, changes = dict(_scopes(tree, ())), Counter[tuple[str, str]](), []
    for number, (node, line, what) in enumerate(_places(tree)):
        key = (within[id(node)], what)
        changes.append(Change(path, number, line, *key, seen[key]))
        seen[key] += 1
    return changes


def changed(change: Change) -> str:
    """The code of the file with this one place changed."""
    tree = ast.parse(change.path.read_text(encoding="utf-8"))
    node, _, _ = list(_places(tree))[change.place]
    _change(node)
    return ast.unparse(ast.fix_missing_locations(tree))


def watched(path: Path, places: Mapping[int, int]) -> str:
    """The code of a file that calls `__reached__` with a number before each of these places is worked out."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    nodes = {id(node): places[number] for number, (node, _, _) in enumerate(_places(tree)) if number in places}
    _Watch(nodes).visit(tree)
    after = next(
        (
            number
            for number, line in enumerate(tree.body)
            if not (isinstance(line, ast.Expr) or (isinstance(line, ast.ImportFrom) and line.module == "__future__"))
        ),
        len(tree.body),
    )
    tree.body[after:after] = ast.parse(
        "import builtins as _builtins\n__reached__ = getattr(_builtins, '__reached__', bool)"
    ).body
    return ast.unparse(ast.fix_missing_locations(tree))


class _Watch(ast.NodeTransformer):
    def __init__(self, nodes: Mapping[int, int]) -> None:
        self._nodes = nodes

    def visit(self, node: ast.AST) -> ast.AST:
        """Put `(__reached__(number), place)[1]` where a place is; patterns of `match` are no expressions."""
        number = self._nodes.get(id(node))
        node = self.generic_visit(node) if not isinstance(node, ast.pattern) else node
        if number is None or not isinstance(node, ast.expr):
            return node
        call = ast.Call(ast.Name("__reached__", ast.Load()), [ast.Constant(number)], [])
        return ast.Subscript(ast.Tuple([call, node], ast.Load()), ast.Constant(1), ast.Load())


def _scopes(node: ast.AST, names: tuple[str, ...]) -> Iterator[tuple[int, str]]:
    """The function or class that each node is in, by its id."""
    for inner in ast.iter_child_nodes(node):
        deeper = (*names, inner.name) if isinstance(inner, _SCOPES) else names
        yield id(inner), ".".join(deeper) or "module"
        yield from _scopes(inner, deeper)


def _places(tree: ast.Module) -> Iterator[tuple[ast.AST, int, str]]:
    """Each node that can be changed, its line, and the change in words; hints, decorators and words are passed over."""
    passed_over = {id(inner) for node in ast.walk(tree) for hint in _hints(node) for inner in ast.walk(hint)}
    for node in ast.walk(tree):
        if id(node) in passed_over or not _can_change(node):
            continue
        before, after = ast.unparse(node), deepcopy(node)
        _change(after)
        yield node, getattr(node, "lineno", 0), f"{before} -> {ast.unparse(after)}"


def _hints(node: ast.AST) -> Iterator[ast.AST]:
    if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
        yield from (
            hint for hint in (node.returns, *(each.annotation for each in _arguments(node))) if hint is not None
        )
    elif isinstance(node, ast.ClassDef):
        yield from node.decorator_list
    elif isinstance(node, ast.AnnAssign):
        yield node.annotation
    elif isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in ("cast", "TypeVar"):
        yield node
    elif isinstance(node, ast.Assign) and isinstance(node.value, ast.BinOp) and isinstance(node.value.op, ast.BitOr):
        yield node.value
    elif isinstance(node, ast.Subscript):
        yield from (node.slice,) if isinstance(node.slice, ast.Constant) and node.slice.value is None else ()


def _arguments(node: ast.FunctionDef | ast.AsyncFunctionDef) -> list[ast.arg]:
    return [*node.args.posonlyargs, *node.args.args, *node.args.kwonlyargs]


def _can_change(node: ast.AST) -> bool:
    match node:
        case ast.Compare(ops=[op]):
            return type(op) in _COMPARES
        case ast.BinOp(op=op, left=left):
            return type(op) in _OPERATORS and not (isinstance(left, ast.Constant) and isinstance(left.value, str))
        case ast.BoolOp() | ast.UnaryOp(op=ast.Not() | ast.USub()):
            return True
        case ast.Constant(value=bool()):
            return True
        case ast.Constant(value=int()):
            return True
        case _:
            return False


def _change(node: ast.AST) -> None:
    match node:
        case ast.Compare(ops=[op]):
            node.ops = [_COMPARES[type(op)]()]
        case ast.BinOp(op=op):
            node.op = _OPERATORS[type(op)]()
        case ast.BoolOp(op=op):
            node.op = ast.Or() if isinstance(op, ast.And) else ast.And()
        case ast.UnaryOp(op=ast.Not()):
            node.operand = ast.UnaryOp(ast.Not(), node.operand)
        case ast.UnaryOp(op=ast.USub()):
            node.op = ast.UAdd()
        case ast.Constant(value=bool(value)):
            node.value = not value
        case ast.Constant(value=int(value)):
            node.value = value + 1
        case _:
            raise ValueError("nothing in it to change")
