"""What is wrong with the words of one line."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from msgspec import Struct, field


class LineFix(Struct, frozen=True):
    """One way to put a line right: the words from `start` to `stop` give way to `text`; counted as in `SyntaxIssue`.

    A `sure` one is what was meant, beyond doubt. Without a `title` it is named for the words that come in.
    """

    start: int
    stop: int
    text: str
    title: str = ""
    sure: bool = False


class SyntaxIssue(Struct, frozen=True):
    """A mistake in one line; `start` and `stop` count from the line's first word. `fixes` are what would help."""

    code: str
    start: int
    stop: int
    help: str | None = None
    values: Mapping[str, object] = field(default_factory=lambda: MappingProxyType({}))
    fixes: tuple[LineFix, ...] = ()


class IssueFound(Exception):
    """A word fits the grammar but is not allowed here. Never leaves this layer."""

    def __init__(self, issue: SyntaxIssue) -> None:
        super().__init__(issue.code)
        self.issue = issue
