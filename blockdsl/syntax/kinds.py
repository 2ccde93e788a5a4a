"""The table of line kinds: every word that a line may begin with, gathered from the files of the nodes."""

from __future__ import annotations

from typing import Final

from blockdsl.syntax.block_lines import BLOCK_KINDS, MAKER_KINDS
from blockdsl.syntax.book_lines import BOOK_KINDS
from blockdsl.syntax.declarations import DECLARATION_KINDS
from blockdsl.syntax.line_kind import LineKind, Node
from blockdsl.syntax.quilt_lines import QUILT_OWN_KINDS, Scraps

QUILT_KINDS: Final[dict[str, LineKind]] = {kind.word: kind for kind in (*QUILT_OWN_KINDS, *MAKER_KINDS)}
"""Every kind of line that may stand in a quilt; some of the words begin lines of a block as well."""

_OTHERS: Final = (*DECLARATION_KINDS, *BLOCK_KINDS, *MAKER_KINDS, *BOOK_KINDS)

LINE_KINDS: Final[dict[str, LineKind]] = QUILT_KINDS | {kind.word: kind for kind in _OTHERS}
"""Every kind of line that can be read; of a word that begins lines of a quilt and of a block the latter's."""

LINE_FORMS: Final[dict[str, LineKind]] = {rule: kind for kind in _OTHERS for rule in kind.forms}
QUILT_FORMS: Final[dict[str, LineKind]] = {rule: kind for kind in QUILT_KINDS.values() for rule in kind.forms}
"""The kind of line that each rule of a grammar reads."""

FORMER: Final[dict[str, str]] = {old: word for word, kind in LINE_KINDS.items() for old in kind.former}
"""Words that lines once began with, and what is written now."""

_SPELLINGS: Final[dict[str, str]] = FORMER | {other: word for word, kind in LINE_KINDS.items() for other in kind.also}

KEYWORDS: Final = frozenset(LINE_KINDS) | frozenset(_SPELLINGS) - frozenset(FORMER)
"""Words that a line may begin with, in every spelling of today."""

DECLARATIONS: Final = frozenset(word for word, kind in LINE_KINDS.items() if kind.home == "file")

BOOK_MEMBERS: Final = frozenset({"block", "quilt"})
"""Declarations whose words also begin a line of a book that names one."""

MAKER_LINES: Final = frozenset(kind.word for kind in MAKER_KINDS)
"""Lines of a maker; they may stand in a book, a quilt or a block too."""

QUILT_LINES: Final = frozenset(QUILT_KINDS)
"""Lines by which a quilt differs from the name of one in a book."""


def keyword_of(word: str) -> str:
    """The keyword as the table has it, whichever way it is spelled; any other word stays as it is."""
    return _SPELLINGS.get(word, word)


def spellings_of(keyword: str) -> tuple[str, ...]:
    """All the words that are read as this one, its own first."""
    return (keyword, *(other for other, word in _SPELLINGS.items() if word == keyword))


def once_as(line: Node) -> str | None:
    """What a line sets that can be set only once in its declaration, in words; None for any other line."""
    kind = _ONCE.get(type(line).__name__)
    if kind is None:
        return None
    # What is set for one fabric, such as its scraps, can be set for another too.
    return f"{kind.word} {line.fabric.text}" if isinstance(line, Scraps) else kind.word


_ONCE: Final = {made: kind for kind in (*_OTHERS, *QUILT_OWN_KINDS) if kind.once for made in kind.makes}


def draws(keyword: str) -> bool:
    """Whether a line that begins with this word may draw something; an unknown word may."""
    kind = LINE_KINDS.get(keyword)
    return kind is None or (kind.home == "grid" and keyword != "note")
