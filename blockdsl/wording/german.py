"""Lists and names of German. Its nouns decline in the message files, with the articles beside `the` in `parts.ftl`."""

from __future__ import annotations

import re
from typing import Final

from blockdsl.wording.grammar import WithGenders

_DRAWN_TOGETHER: Final = {"zu der": "zur", "zu dem": "zum", "von dem": "vom"}
_APART: Final = re.compile(rf"\b(?:{'|'.join(_DRAWN_TOGETHER)})\b")


class German(WithGenders):
    """German: letters are neuter."""

    conjunction = " und "
    decimal = ","
    endings = "(?:e|en|em|er|es|n|s)?"
    thousands = "."

    def contracted(self, text: str) -> str:
        """`zur Einheit`, `zum Block`, `vom Segment`."""
        return _APART.sub(lambda found: _DRAWN_TOGETHER[found[0]], text)


GRAMMAR: Final = German()
