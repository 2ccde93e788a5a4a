"""The words that a line may begin with: where such a line belongs, and how it is written."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final, Literal

Home = Literal["file", "grid", "block", "quilt", "book", "maker", "maker alone"]


@dataclass(frozen=True, slots=True)
class LineKind:
    """`home`: it declares something, or belongs in units and blocks, in blocks only, in quilts only, or in books.

    A line whose home is `maker` is a maker's own way of working: it stands in her `maker`, and in a book, a quilt or a
    block, where it wins; one whose home is `maker alone` stands nowhere else. `usage` is an example. The word may be
    spelled as in `also`; `former` are words that it had once, which are read and reported.
    """

    home: Home
    usage: str
    also: tuple[str, ...] = ()
    former: tuple[str, ...] = ()


QUILT_KINDS: Final[dict[str, LineKind]] = {
    "set": LineKind(
        "quilt",
        '`set straight 4 x 6 of "Harbour Light"`, with `dropped columns`, `on point` or `strippy` for `straight`; '
        '`set medallion of "Harbour Light"`; or `set rows`',
    ),
    "row": LineKind("quilt", '`row "Harbour Light" "Chain"> fog`'),
    "blocks": LineKind("quilt", "`blocks 9 in`"),
    "fill": LineKind("quilt", "`fill fog`"),
    "alternate": LineKind("quilt", '`alternate "Chain"` or `alternate fog`'),
    "turn": LineKind("quilt", "`turn > on even rows`, `on odd columns`, `on every second` or `on all`"),
    "colourway": LineKind(
        "quilt",
        '`colourway "Night" on even rows`, `on odd columns`, `on every second` or `on all`',
        also=("colorway",),
        former=("colouring",),
    ),
    "sash": LineKind("quilt", "`sash 1 1/2 in slate posts lantern outer`"),
    "border": LineKind("quilt", "`border 2 in lantern mitred` or `border 3 in pieced beam corners slate`"),
    "round": LineKind("quilt", '`round 2 in lantern`, `round 3 in pieced beam` or `round "Chain"`'),
    "binding": LineKind("quilt", "`binding 2 1/4 in slate straight` or `bias`"),
    "backing": LineKind("quilt", "`backing fog overage 4 in`"),
    "wadding": LineKind("quilt", "`wadding overage 4 in`", also=("batting",)),
    "sleeve": LineKind("quilt", "`sleeve 4 in fog`"),
    "scraps": LineKind("quilt", "`scraps lantern from 8 fat quarters`"),
    "fabric": LineKind("quilt", "`fabric width 40 in usable`"),
    "shrinkage": LineKind("quilt", "`shrinkage 5 %`"),
    "note": LineKind("quilt", '`note "Press toward the dark."`'),
    "font": LineKind("maker alone", '`font "My.ttf"`'),
    "press": LineKind("maker", "`press open`, `press as it nests` or `press toward dark`"),
    "language": LineKind("maker", "`language en-US` or `language en-GB`"),
    "expect": LineKind("quilt", '`expect finished 62 x 86 in` or `expect blocks "Harbour Light" 22`'),
}
"""Every kind of line that stands in a quilt; some of the words begin lines of a block as well."""

LINE_KINDS: Final[dict[str, LineKind]] = QUILT_KINDS | {
    "use": LineKind("file", '`use "path.block"` or `use library "stars"`'),
    "fabric": LineKind("file", '`fabric fog "Harbour fog" #dfe3e0 light`'),
    "unit": LineKind("file", "`unit beam = geese lantern on fog`, or `unit beam` with its rows below"),
    "block": LineKind("file", '`block "Harbour Light"`; in a book also `block "Harbour Light" sizes 6 9 12 in`'),
    "cutter": LineKind("file", '`cutter "My 3 in squares" square 3 in`'),
    "quilt": LineKind("file", '`quilt "Breakwater"`'),
    "book": LineKind("file", '`book "A Harbour Sampler"`'),
    "maker": LineKind("file", '`maker "Marsh Street Patterns"`'),
    "row": LineKind("grid", "`row fog fog/lantern (geese lantern on fog)> -`"),
    "columns": LineKind("grid", "`columns 1 2 1`"),
    "heights": LineKind("grid", "`heights 1 2 1`"),
    "grid": LineKind("grid", "`grid 4 x 4`"),
    "patch": LineKind("grid", "`patch fog at 0,0 2,0 0,2`"),
    "applique": LineKind(
        "grid", '`applique fog "M1 1 H3 V3 H1 Z"`, with `turn-under 1/4 in` or `raw edge` behind it if it is not usual'
    ),
    "note": LineKind("grid", '`note "Press toward the dark."`'),
    "size": LineKind("block", "`size 12 in` or `size 12 x 9 in`"),
    "seam": LineKind("block", "`seam 1/4 in`"),
    "measure": LineKind("block", "`measure 1/8 in`"),
    "trim": LineKind("block", "`trim 1/8 in`"),
    "sizes": LineKind("block", "`sizes 6 9 12 in`"),
    "make": LineKind("block", "`make half as two at a time` or `make 4 of half as two at a time`"),
    "grain": LineKind("block", "`grain B long edge` or `grain B short edges`"),
    "compare": LineKind("block", "`compare methods`"),
    "colourway": LineKind(
        "block", '`colourway "Night" fog=slate slate=fog`', also=("colorway",), former=("colouring",)
    ),
    "family": LineKind("block", "`family nine-patch`"),
    "source": LineKind("block", '`source "Listed in a book of 1915."`'),
    "expect": LineKind(
        "block",
        "`expect cut fog 4 squares 2 7/8`, `expect unit beam 4 x 2 in count 4` or `expect finished 12 in`",
    ),
    "by": LineKind("book", '`by "The maker"`'),
    "paper": LineKind("book", "`paper letter`, `paper a4` or `paper roll 36 in`"),
    "chapter": LineKind("book", '`chapter "Lights"`'),
    "text": LineKind("book", '`text "intro.md"`'),
    "techniques": LineKind("book", "`techniques`, and nothing after it"),
}
"""Every kind of line that can be read."""

FORMER: Final[dict[str, str]] = {old: word for word, kind in LINE_KINDS.items() for old in kind.former}
"""Words that lines once began with, and what is written now."""

_SPELLINGS: Final[dict[str, str]] = FORMER | {other: word for word, kind in LINE_KINDS.items() for other in kind.also}

KEYWORDS: Final = frozenset(LINE_KINDS) | frozenset(_SPELLINGS) - frozenset(FORMER)
"""Words that a line may begin with, in every spelling of today."""

DECLARATIONS: Final = frozenset(word for word, kind in LINE_KINDS.items() if kind.home == "file")

BOOK_MEMBERS: Final = frozenset({"block", "quilt"})
"""Declarations whose words also begin a line of a book that names one."""

MAKER_LINES: Final = frozenset(word for word, kind in LINE_KINDS.items() if kind.home == "maker")
"""Lines of a maker; they may stand in a book, a quilt or a block too."""

QUILT_LINES: Final = frozenset(QUILT_KINDS)
"""Lines that tell a quilt from the name of one in a book."""


def keyword_of(word: str) -> str:
    """The keyword as the table has it, whichever way it is spelled; any other word stays as it is."""
    return _SPELLINGS.get(word, word)
