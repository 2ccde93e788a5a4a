"""What an editor's file remembers from one key to the next: the files it uses, and what its unchanged blocks came to.

A block is found again when its lines are the very same ones, and all that its words name are too: fabrics, units, the
lines of units, cutters. What later steps make of a design is found again by the design itself.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any, Final, TypeVar

from msgspec import Struct

from blockdsl.analysis.memory import Memory
from blockdsl.analysis.scope import Scope
from blockdsl.diagnostics import Diagnostic, Problems, Source, Span
from blockdsl.model import BlockDesign, Fabric
from blockdsl.syntax import ast
from blockdsl.syntax.parse import parse

Made = TypeVar("Made")

_KEPT_FOR: Final = 4
"""Readings after which something that was not asked for is forgotten: a slip and its correction are both at hand."""


class _Kept(Struct):
    """What a step made, the things that it was made from, and the problems that it reported."""

    made_from: tuple[object, ...]
    made: Any
    problems: tuple[Diagnostic, ...]
    used: int


class _KeptDesign(Struct):
    """A design with all that it depends on."""

    block: ast.BlockDeclaration
    said: tuple[tuple[str, object, Fabric | None], ...]
    palette: tuple[Fabric, ...]
    cutters: tuple[object, ...]
    design: BlockDesign
    problems: tuple[Diagnostic, ...]
    used: int


class KeptMemory(Memory):
    """The memory of one file; `next_reading` comes before each reading."""

    def __init__(self) -> None:
        """Nothing is known yet."""
        self._reading = 0
        self._steps: dict[tuple[object, ...], _Kept] = {}
        self._designs: dict[tuple[str, str, int], list[_KeptDesign]] = {}
        self._files: dict[int, _Kept] = {}

    def next_reading(self) -> None:
        """Forget what has not been asked for in the last readings."""
        self._reading += 1
        oldest = self._reading - _KEPT_FOR
        self._steps = {key: kept for key, kept in self._steps.items() if kept.used >= oldest}
        self._files = {key: kept for key, kept in self._files.items() if kept.used >= oldest}
        alive = ((key, [kept for kept in all_kept if kept.used >= oldest]) for key, all_kept in self._designs.items())
        self._designs = {key: all_kept for key, all_kept in alive if all_kept}

    @property
    def size(self) -> int:
        """How many things it holds."""
        return len(self._steps) + len(self._files) + sum(map(len, self._designs.values()))

    def parse(self, source: Source, problems: Problems) -> ast.File:
        """A file that is used; one that is open too is read line by line, as it changes."""
        if type(source) is not Source:
            return parse(source, problems)
        kept = self._files.get(id(source))
        if kept is None:
            found = Problems()
            kept = self._files[id(source)] = _Kept((source,), parse(source, found), tuple(found), 0)
        file: ast.File = self._told(kept, problems)
        return file

    def design(
        self,
        block: ast.BlockDeclaration,
        names: Scope,
        problems: Problems,
        make: Callable[[Problems], BlockDesign | None],
    ) -> BlockDesign | None:
        """The block as it was designed before, if all that it is made of is as it was."""
        here = self._designs.setdefault((names.main.source.name, block.span.source.name, block.span.start), [])
        for kept in here:
            if _is_as_before(kept, block, names):
                kept.used = self._reading
                for problem in kept.problems:
                    problems.add(problem)
                return kept.design
        found = Problems()
        design = make(found)
        for problem in found:
            problems.add(problem)
        # An error is reported once in a file, so what a block with errors comes to depends on the blocks before it.
        if design is not None and not found.has_errors:
            here.append(_kept_design(block, names, design, tuple(found), self._reading))
        return design

    def once(
        self, step: str, made_from: tuple[object, ...], problems: Problems, make: Callable[[Problems], Made]
    ) -> Made:
        """What the step made of these very things before."""
        key = (step, *map(id, made_from))
        kept = self._steps.get(key)
        if kept is None:
            found = Problems()
            # The things are kept too, so that no others come by their numbers.
            kept = self._steps[key] = _Kept(made_from, make(found), tuple(found), 0)
        made: Made = self._told(kept, problems)
        return made

    def _told(self, kept: _Kept, problems: Problems) -> Any:
        kept.used = self._reading
        for problem in kept.problems:
            problems.add(problem)
        return kept.made


def _kept_design(
    block: ast.BlockDeclaration, names: Scope, design: BlockDesign, problems: tuple[Diagnostic, ...], used: int
) -> _KeptDesign:
    said: dict[str, tuple[str, object, Fabric | None]] = {}
    waiting = list(_words(block.lines))
    while waiting:
        word = waiting.pop()
        if word not in said:
            declared = names.declared.get(word)
            said[word] = (word, declared, names.fabrics.get(word))
            if isinstance(declared, ast.UnitDeclaration):
                waiting += _words((declared.shape, *declared.lines))
    return _KeptDesign(
        block,
        tuple(said.values()),
        _palette(block, names, said),
        tuple(names.cutters.values()),
        design,
        problems,
        used,
    )


def _palette(block: ast.BlockDeclaration, names: Scope, said: Any) -> tuple[Fabric, ...]:
    """The fabrics in their order: those that the block says, or all where a colourway may bring in others."""
    if any(isinstance(line, ast.Colourway) for line in block.lines):
        return tuple(names.fabrics.values())
    return tuple(fabric for name, fabric in names.fabrics.items() if name in said)


def _words(found: object) -> Iterator[str]:
    """All bare words of nodes."""
    if isinstance(found, ast.Word):
        yield found.text
    elif isinstance(found, tuple):
        for part in found:
            yield from _words(part)
    elif isinstance(found, Struct) and not isinstance(found, Span):
        for name in found.__struct_fields__:
            yield from _words(getattr(found, name))


def _is_as_before(kept: _KeptDesign, block: ast.BlockDeclaration, names: Scope) -> bool:
    """Whether the block and all that its words name are as they were."""
    if not _same_lines(kept.block, block) or kept.cutters != tuple(names.cutters.values()):
        return False
    for word, declared, fabric in kept.said:
        now = names.declared.get(word)
        if now is not declared and not _same_declaration(now, declared):
            return False
        if fabric is not None and names.fabrics.get(word) != fabric:
            return False
    return kept.palette == _palette(block, names, {word for word, _, _ in kept.said})


def _same_declaration(one: object, other: object) -> bool:
    if isinstance(one, ast.UnitDeclaration) and isinstance(other, ast.UnitDeclaration):
        return one.shape is other.shape and _same_lines(one, other)
    return False


def _same_lines(
    one: ast.BlockDeclaration | ast.UnitDeclaration, other: ast.BlockDeclaration | ast.UnitDeclaration
) -> bool:
    """Whether two readings of a declaration have the very same lines."""
    return (
        one.name is other.name
        and len(one.lines) == len(other.lines)
        and all(first is second for first, second in zip(one.lines, other.lines, strict=True))
    )
