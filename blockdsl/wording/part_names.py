"""The names of what a block's steps make, read from the facts and written in a language.

The facts name a part once, in a notation that never changes with the language, and refer to it by that name:
`reversed second goose of Foam and Slate made two at a time`. What it is made of is read back here: a noun of the
trade, a number, or a name of the maker's own; then fabrics, the way of making, and which of several it is.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Mapping
from functools import lru_cache
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.shapes import SHAPES
from blockdsl.wording.grammar import Article, Lookup, Name, in_series, listed, plural

_NUMBERED: Final = re.compile(
    r"(row|column|unit|round|straight round|diagonal round|segment of set|section) ([0-9]+|[A-Z]+)"
)
_SEVERAL: Final = re.compile(r"(row|column)s ([0-9]+(?:, [0-9]+)*,? (?:and|to) [0-9]+)")
_NOUNS: Final = frozenset(
    (
        "block",
        "block with its appliqué",
        "unit",
        "segment",
        "section",
        "strip",
        "pair",
        "quarter",
        "half",
        "corner",
        "side",
        "middle",
        "square",
        "goose",
        "four-patch",
        "nine-patch",
        "sixteen-patch",
        "triangle pair",
        "corner triangle",
        "large diamond",
        "plain patch",
        *(shape.title for shape in SHAPES.values()),
    )
)
"""Every noun that the sewing layer and the shapes give; all else is a name of the maker's own."""
_WAYS: Final = (
    "patch by patch",
    "over papers",
    "on papers",
    "by stitch and flip",
    "from a strip set",
    "two at a time",
    "four at a time",
    "eight at a time",
)
_ORDINALS: Final = ("second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")
_MIRRORED: Final = ", mirror image"
_AGAIN: Final = re.compile(r"(.*), (?:second|number ([0-9]+))")


class PartName(Struct, frozen=True):
    """What a name says. `noun` is a message's key without `part-`, empty where `own` is the maker's own name.

    `numbers` are those of rows or columns as the notation lists them, or a set's, a round's, a section's letter.
    `fabrics` come behind the noun, `fabric` before it. `ordinal` and `again` tell apart what would be called alike.
    """

    noun: str
    own: str = ""
    number: str = ""
    fabrics: tuple[str, ...] = ()
    fabric: str = ""
    way: str = ""
    ordinal: int = 0
    again: int = 0
    mirrored: bool = False

    @property
    def is_numbered(self) -> bool:
        """Whether it is known by its number alone: `row 2`, `column 3`, `round 1`."""
        return bool(self.number) and self.noun not in ("unit", "section", "segment-of-set")

    @property
    def head(self) -> PartName:
        """The name without its fabrics and its making."""
        return replace(self, fabrics=(), way="", again=0)

    def written(self, words: Lookup, *, count: int = 1, article: Article = "", case: str = "nominative") -> str:
        """The name in a language, so many of it, with or without its article."""
        text = self._noun(words, count, article, case)
        if self.fabric:
            text = words("part-in-fabric", name=text, fabric=self.fabric, count=count)
        if self.ordinal:
            text = words("part-ordinal", name=text, number=self.ordinal, count=count, case=case)
        if self.mirrored:
            text = words("part-reversed", name=text, count=count, case=case)
        if self.fabrics:
            text = words("part-of-fabrics", name=text, fabrics=_fabrics(self.fabrics, words))
        if self.way:
            text = words(f"part-made-{self.way.replace(' ', '-')}", name=text)
        if self.again:
            text = words("part-again", name=text, number=self.again)
        return text if self.is_numbered else words.grammar.with_article(text, article, words)

    def _noun(self, words: Lookup, count: int, article: Article, case: str) -> str:
        if self.own:
            name = plural(self.own, words) if count > 1 else self.own
            return words("part-own", name=name, count=count, article=article, case=case)
        if self.noun in ("rows", "columns"):
            return words(f"part-{self.noun}", numbers=numbers_in_words(self.number, words))
        return words(f"part-{self.noun}", number=self.number or "none", count=count, article=article, case=case)

    def name(self, words: Lookup, *, count: int = 1, article: Article = "") -> Name:
        """The name as an argument of a sentence."""
        return Name(self.written(words, count=count, article=article), _Spoken(self, count, article))


class _Spoken(Struct, frozen=True):
    """A part's name as a sentence uses it."""

    part: PartName
    count: int
    article: Article

    def in_case(self, case: str, words: Lookup) -> str:
        return self.part.written(words, count=self.count, article=self.article, case=case)

    def with_article(self, article: Article) -> _Spoken:
        return replace(self, article=article)


def _fabrics(fabrics: tuple[str, ...], words: Lookup) -> str:
    return listed(fabrics, words) if len(fabrics) < 3 else in_series(fabrics, words)


def numbers_in_words(numbers: str, words: Lookup) -> str:
    """`1, 3, and 5` or `1 to 4` of the notation, in a language."""
    first, found, last = numbers.partition(" to ")
    if found:
        return words("part-numbers-to", first=first, last=last)
    return listed(re.findall("[0-9]+", numbers), words)


@lru_cache(maxsize=1024)
def part_name(name: str, fabrics: frozenset[str]) -> PartName:
    """What a name of the facts says; `fabrics` are the printed names of the block's fabrics."""
    if name.startswith("reversed "):
        return replace(part_name(name.removeprefix("reversed "), fabrics), mirrored=True)
    if (again := _AGAIN.fullmatch(name)) is not None:
        return replace(part_name(again[1], fabrics), again=int(again[2] or 2))
    head, made, way = name.rpartition(" made ")
    if made and way in _WAYS:
        return replace(part_name(head, fabrics), way=way)
    head, of, rest = name.partition(" of ")
    while of and name not in _NOUNS:
        if (found := _listed_fabrics(rest, fabrics)) is not None:
            return replace(part_name(head, fabrics), fabrics=found)
        more, of, rest = rest.partition(" of ")
        head = f"{head} of {more}"
    return _plain(name, fabrics)


def title_words(title: str, words: Lookup) -> str:
    """The title of a unit in a language: `Flying geese`, `Beam (flying geese)`, `Beam, mirror image`."""
    head, mirrored, rest = title.rpartition(_MIRRORED)
    if mirrored and not rest:
        return words("kind-mirror-image", name=title_words(head, words))
    own, found, trade = title.removesuffix(")").partition(" (")
    if found and title.endswith(")") and trade in _NOUNS:
        return words("part-own-kind", name=own, kind=_plain(trade, frozenset()).written(words))
    return part_name(title, frozenset()).written(words)


def _listed_fabrics(text: str, fabrics: Collection[str]) -> tuple[str, ...] | None:
    """The fabrics of `Foam and Slate` or `Foam, Slate, Sand`; None where it lists something else."""
    for joint in (" and ", ", "):
        found = tuple(text.split(joint))
        if all(fabric in fabrics for fabric in found):
            return found
    return None


def _plain(name: str, fabrics: frozenset[str]) -> PartName:
    if name in _NOUNS:
        return PartName(_key(name))
    if (numbered := _NUMBERED.fullmatch(name)) is not None:
        return PartName(_key(numbered[1]), number=numbered[2])
    if (several := _SEVERAL.fullmatch(name)) is not None:
        return PartName(f"{several[1]}s", number=several[2])
    return _led(name, fabrics)


def _led(name: str, fabrics: frozenset[str]) -> PartName:
    """A noun with an ordinal or a fabric before it, or else a name of the maker's own."""
    first, _, rest = name.partition(" ")
    if first in _ORDINALS and rest in _NOUNS:
        return replace(part_name(rest, fabrics), ordinal=_ORDINALS.index(first) + 2)
    led = next((fabric for fabric in fabrics if name.startswith(f"{fabric} ")), "")
    if led and name.removeprefix(f"{led} ") in _NOUNS:
        return replace(part_name(name.removeprefix(f"{led} "), fabrics), fabric=led)
    return PartName("", own=name)


def _key(noun: str) -> str:
    """The noun as the messages have it."""
    return noun.replace("60° ", "sixty-degree-").replace("é", "e").replace(" ", "-")


class PartNames(Struct, frozen=True):
    """The names of one block's parts in one language."""

    words: Lookup
    fabrics: frozenset[str]

    def part(self, name: str) -> PartName:
        """What a name of the facts says."""
        return part_name(name, self.fabrics)

    def one(self, name: str, article: Article = "") -> Name:
        """A part, with its article or without."""
        return self.part(name).name(self.words, article=article)

    def many(self, name: str, count: int) -> Name:
        """So many of a part, without the number."""
        return self.part(name).name(self.words, count=count)


def shortened(parts: Mapping[str, PartName]) -> dict[str, PartName]:
    """Names without their fabrics or their making, where what is left is unique among them.

    Else by the one fabric that no other of the same kind has: `Lantern half-square triangle`.
    """
    found: dict[str, PartName] = {}
    for name, part in parts.items():
        alike = [other for other, each in parts.items() if other != name and each.head == part.head]
        if not alike:
            found[name] = part.head
            continue
        if any(parts[other] == part.head for other in alike) or part == part.head:
            continue
        others = {fabric for other in alike for fabric in parts[other].fabrics}
        own = [fabric for fabric in part.fabrics if fabric not in others]
        if own:
            found[name] = replace(part.head, fabric=own[0])
    return found
