"""A problem, and the collector that passes report to."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.diagnostics.catalogue import CATALOGUE, Severity
from blockdsl.diagnostics.levels import AS_THEY_ARE, Levels
from blockdsl.diagnostics.source import Span


class Edit(Struct, frozen=True):
    """Other words for a place; an empty place gains them, no words take what is there away."""

    span: Span
    text: str


class Fix(Struct, frozen=True):
    """One way to put a problem right: what it does, as the title of a choice, and the edits that do it.

    A `sure` one is what was meant, beyond doubt; the others are guesses, to be tried before they are offered.
    """

    title: str
    edits: tuple[Edit, ...]
    sure: bool = False


def change_to(span: Span, text: str, *, sure: bool = False) -> Fix:
    """The fix that writes other words in a place."""
    return Fix(f"Change to `{text}`", (Edit(span, text),), sure)


class Diagnostic(Struct, frozen=True):
    """One problem at one place. `related` are further places with a word about each, `fixes` what would help."""

    code: str
    severity: Severity
    message: str
    span: Span
    help: str | None = None
    related: tuple[tuple[Span, str], ...] = ()
    fixes: tuple[Fix, ...] = ()


class Problems:
    """Collects problems in the order found; a pass never raises for a user's mistake."""

    def __init__(self, levels: Levels = AS_THEY_ARE) -> None:
        """Start with none. `levels` is which warnings the maker wants as errors, and which not at all."""
        self.levels = levels
        self._found: list[Diagnostic] = []

    def report(
        self,
        code: str,
        span: Span,
        *,
        help: str | None = None,  # noqa: A002  the word that is printed
        related: tuple[tuple[Span, str], ...] = (),
        fixes: tuple[Fix, ...] = (),
        **values: object,
    ) -> None:
        """Add the problem `code` of the catalogue, its message filled in with `values`."""
        entry = CATALOGUE[code]
        message = entry.message.format(**values)
        self.add(Diagnostic(code, entry.severity, message, span, help, related, fixes))

    def add(self, diagnostic: Diagnostic) -> None:
        """Take over a problem that another collector found."""
        level = self.levels.of(diagnostic.code, diagnostic.severity)
        if level != "ignored":
            self._found.append(diagnostic if level == diagnostic.severity else replace(diagnostic, severity=level))

    def __iter__(self) -> Iterator[Diagnostic]:
        """All problems, by file, line and column."""
        return iter(sorted(self._found, key=_order))

    def __len__(self) -> int:
        """How many, warnings included."""
        return len(self._found)

    @property
    def has_errors(self) -> bool:
        """Whether any of them is an error."""
        return any(d.severity == "error" for d in self._found)


def _order(problem: Diagnostic) -> tuple[str, tuple[int, ...], str]:
    source = problem.span.source
    return source.name, source.order(problem.span.start), problem.code


def nearest_word(word: str, known: Iterable[str]) -> str | None:
    """The known word that `word` was probably meant to be, or None."""
    from difflib import get_close_matches  # noqa: PLC0415 - for a file with mistakes alone

    close = get_close_matches(word, sorted(known), n=1, cutoff=0.6)
    return close[0] if close else None
