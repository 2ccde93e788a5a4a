"""What is remembered from one reading of a file to the next; a command, which reads each file once, remembers nothing.

The steps that take the longest ask here first. What is kept is found again by the very things that it was made from,
so a memory changes no result: a test compares both after every edit.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Final, TypeVar

from blockdsl.diagnostics import Problems, Source
from blockdsl.model import BlockDesign
from blockdsl.syntax import ast
from blockdsl.syntax.parse import parse

Made = TypeVar("Made")


class Memory:
    """One that forgets at once; `blockdsl/editor/remembered.py` has one that keeps."""

    def parse(self, source: Source, problems: Problems) -> ast.File:
        """The declarations of a file that is used."""
        return parse(source, problems)

    def design(
        self,
        _block: ast.BlockDeclaration,
        _names: Any,
        problems: Problems,
        make: Callable[[Problems], BlockDesign | None],
    ) -> BlockDesign | None:
        """The design of a block, which depends on its lines and on the names that they say."""
        return make(problems)

    def once(
        self, _step: str, _made_from: tuple[object, ...], problems: Problems, make: Callable[[Problems], Made]
    ) -> Made:
        """What a step makes of things that are the very same ones, with what it reports."""
        return make(problems)


NO_MEMORY: Final = Memory()
