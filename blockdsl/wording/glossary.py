"""The trade's words that pages use, each explained in a sentence or two, in the language's own order."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator, Mapping, Sequence
from functools import lru_cache
from typing import Final

from msgspec import Struct

from blockdsl.wording.messages import Messages

_TERMS: Final = (
    "applique",
    "bias",
    "by-template",
    "colorway",
    "corner-to-corner",
    "curved-seam",
    "cut-size",
    "eight-at-a-time",
    "finished",
    "flying-geese",
    "foundation",
    "four-at-a-time",
    "four-patch",
    "grain",
    "grid",
    "half-square-triangle",
    "hourglass",
    "measure",
    "mirror-image",
    "nine-patch",
    "over-papers",
    "patch",
    "piece",
    "press",
    "quarter-square-triangle",
    "rails",
    "right-sides-together",
    "rotary-cutter",
    "seam-allowance",
    "segment",
    "snowball",
    "spare",
    "stitch-and-flip",
    "strip-set",
    "baste",
    "template",
    "trim",
    "turn-under",
    "two-at-a-time",
    "unfinished",
    "unit",
    "value",
    "whip-stitch",
)
"""The messages of all terms, without `glossary-`."""


class TermUsed(Struct, frozen=True):
    """A term that pages use, what it means, and the first page that has it."""

    term: str
    meaning: str
    page: str


def terms_used(texts: Mapping[str, str], words: Messages) -> tuple[TermUsed, ...]:
    """Each term that is said, with the first page that says it; `texts` are the words of each page by its name."""
    found = []
    for key, term, pattern in _patterns(words):
        page = next((page for page, text in texts.items() if pattern.search(text)), None)
        if page is not None:
            found.append(TermUsed(term, words(f"glossary-{key}.meaning"), page))
    return tuple(found)


def all_terms(words: Messages) -> Sequence[str]:
    """Every term, in the order of the language's alphabet."""
    return list(meanings(words))


def meanings(words: Messages) -> dict[str, str]:
    """Every term with what it means, in the order of the language's alphabet."""
    return {term: words(f"glossary-{key}.meaning") for key, term, _ in _patterns(words)}


@lru_cache
def _patterns(words: Messages) -> tuple[tuple[str, str, re.Pattern[str]], ...]:
    """Message, term, and what finds it with its endings and in its further forms."""
    found = []
    for key in _TERMS:
        term = words(f"glossary-{key}")
        forms = "|".join(map(re.escape, _forms(key, term, words)))
        found.append((key, term, re.compile(rf"\b(?:{forms}){words.grammar.endings}\b", re.IGNORECASE)))
    return tuple(sorted(found, key=lambda each: _sorting(each[1])))


def _forms(key: str, term: str, words: Messages) -> Iterator[str]:
    yield term
    more = f"glossary-{key}.forms"
    if more in words:
        yield from (form.strip() for form in words(more).split("|"))


def _sorting(term: str) -> str:
    """Accents and capitals play no part in the alphabet."""
    apart = unicodedata.normalize("NFKD", term)
    return "".join(letter for letter in apart if not unicodedata.combining(letter)).casefold()
