"""Lists and names of German. Its nouns decline in the message files, with the articles beside `the` in `parts.ftl`."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from blockdsl.wording.grammar import Article, Lookup

_LETTER: Final = re.compile("[A-Z]{1,2}r?( \\(.*\\))?")
"""A patch by its letter, with its fabric or without: `A`, `Br`, `A (Nebel)`."""

_DRAWN_TOGETHER: Final = {"zu der": "zur", "zu dem": "zum", "von dem": "vom"}
_APART: Final = re.compile(rf"\b(?:{'|'.join(_DRAWN_TOGETHER)})\b")


class German:
    """German: letters are neuter, and a name that a maker gave has no article, for nobody knows its gender."""

    decimal = ","
    endings = "(?:e|en|em|er|es|n|s)?"
    thousands = "."

    def listed(self, items: Sequence[str], words: Lookup) -> str:
        """`A`, `A und B`, `A, B und C`, `Reihen 1 und 3 sowie A`."""
        if len(items) < 2:
            return "".join(items)
        if any(" und " in item for item in items[:-1]):
            return words("list-more", first=", ".join(items[:-1]), last=items[-1])
        return words("list-pair", first=", ".join(items[:-1]), last=items[-1])

    def plural(self, name: str) -> str:
        """A maker's name as it is: `2 Einheiten „Balken“`."""
        return name

    def with_article(self, name: str, article: Article, words: Lookup) -> str:
        """`das andere A`, `1 A`; all else as it is, nouns having their articles already."""
        if article in ("one", "other", "another") and _LETTER.fullmatch(name):
            return words(article, name=name)
        return name

    def contracted(self, text: str) -> str:
        """`zur Einheit`, `zum Block`, `vom Segment`."""
        return _APART.sub(lambda found: _DRAWN_TOGETHER[found[0]], text)


GRAMMAR: Final = German()
