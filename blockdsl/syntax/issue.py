"""What is wrong with the words of one line."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from msgspec import Struct, field


class SyntaxIssue(Struct, frozen=True):
    """A mistake in one line; `start` and `stop` count from the line's first word."""

    code: str
    start: int
    stop: int
    help: str | None = None
    values: Mapping[str, object] = field(default_factory=lambda: MappingProxyType({}))


class IssueFound(Exception):
    """A word fits the grammar but is not allowed here. Never leaves this layer."""

    def __init__(self, issue: SyntaxIssue) -> None:
        super().__init__(issue.code)
        self.issue = issue
