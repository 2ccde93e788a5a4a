"""How much a warning matters to a maker: it may be ignored, or count as an error."""

from __future__ import annotations

from typing import Final, Literal

from msgspec import Struct

from blockdsl.diagnostics.catalogue import CATALOGUE, Severity

Level = Literal["error", "warning", "ignored"]


class Levels(Struct, frozen=True):
    """What a maker says of warnings by their codes: `deny` makes errors of them, `allow` hides them.

    `warnings_as_errors` makes errors of all that are not allowed. An error stays an error, whatever is said.
    """

    deny: frozenset[str] = frozenset()
    allow: frozenset[str] = frozenset()
    warnings_as_errors: bool = False

    @property
    def key(self) -> tuple[object, ...]:
        """The same as words in a settled order, for what is kept under them."""
        return sorted(self.deny), sorted(self.allow), self.warnings_as_errors

    def of(self, code: str, severity: Severity) -> Level:
        """How a problem of this code and severity is shown, if at all."""
        if severity == "error":
            return "error"
        if code in self.deny:
            return "error"
        if code in self.allow:
            return "ignored"
        return "error" if self.warnings_as_errors else "warning"

    def and_also(self, other: Levels) -> Levels:
        """These, with what is said later beside them: the later word on a code counts."""
        return Levels(
            (self.deny - other.allow) | other.deny,
            (self.allow - other.deny) | other.allow,
            self.warnings_as_errors or other.warnings_as_errors,
        )


AS_THEY_ARE: Final = Levels()


def is_warning(code: str) -> bool:
    """Whether the catalogue has a warning of this code."""
    return code in CATALOGUE and CATALOGUE[code].severity == "warning"
