"""The names of what a block's steps make, written in a language."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.sewing.part_name import NOUNS, PartName, are_a_run, part_called, rows_named
from blockdsl.wording.grammar import Article, Lookup, Name, in_series, listed, plural

_MIRRORED: Final = ", mirror image"


def written(part: PartName, words: Lookup, *, count: int = 1, article: Article = "", case: str = "nominative") -> str:
    """The name in a language, so many of it, with or without its article."""
    text = _noun(part, words, count, article, case)
    if part.fabric:
        text = words("part-in-fabric", name=text, fabric=part.fabric, count=count)
    if part.ordinal:
        text = words("part-ordinal", name=text, number=part.ordinal, count=count, case=case)
    if part.mirrored:
        text = words("part-reversed", name=text, count=count, case=case)
    if part.fabrics:
        fabrics = listed(part.fabrics, words) if len(part.fabrics) < 3 else in_series(part.fabrics, words)
        text = words("part-of-fabrics", name=text, fabrics=fabrics)
    if part.way:
        text = words(f"part-made-{part.way.replace(' ', '-')}", name=text)
    if part.again:
        text = words("part-again", name=text, number=part.again)
    return text if part.is_numbered else words.grammar.with_article(text, article, words)


def _noun(part: PartName, words: Lookup, count: int, article: Article, case: str) -> str:
    if part.own:
        name = plural(part.own, words) if count > 1 else part.own
        return words("part-own", name=name, count=count, article=article, case=case)
    key = part.noun.replace("60° ", "sixty-degree-").replace("é", "e").replace(" ", "-")
    if part.numbers:
        return words(f"part-{key}s", numbers=_numbers(part.numbers, words))
    return words(f"part-{key}", number=part.number or "none", count=count, article=article, case=case)


def _numbers(numbers: Sequence[int], words: Lookup) -> str:
    if are_a_run(numbers):
        return words("part-numbers-to", first=str(numbers[0]), last=str(numbers[-1]))
    return listed(list(map(str, numbers)), words)


def rows_in_words(word: str, numbers: Sequence[str], words: Lookup) -> str:
    """Rows or columns by number: `row 1`, `rows 1, 3, and 5`, `rows 1 to 20`."""
    return written(rows_named(word, [int(number) for number in numbers]), words)


def name_of_part(part: PartName, words: Lookup, *, count: int = 1, article: Article = "") -> Name:
    """The name as an argument of a sentence."""
    return Name(written(part, words, count=count, article=article), _Spoken(part, count, article))


class _Spoken(Struct, frozen=True):
    """A part's name as a sentence uses it."""

    part: PartName
    count: int
    article: Article

    def in_case(self, case: str, words: Lookup) -> str:
        return written(self.part, words, count=self.count, article=self.article, case=case)

    def with_article(self, article: Article) -> _Spoken:
        return replace(self, article=article)


def title_words(title: str, words: Lookup) -> str:
    """The title of a unit in a language: `Flying geese`, `Beam (flying geese)`, `Beam, mirror image`."""
    head, mirrored, rest = title.rpartition(_MIRRORED)
    if mirrored and not rest:
        return words("kind-mirror-image", name=title_words(head, words))
    own, found, trade = title.removesuffix(")").partition(" (")
    if found and title.endswith(")") and trade in NOUNS:
        return words("part-own-kind", name=own, kind=written(part_called(trade), words))
    return written(part_called(title), words)


class PartNames(Struct, frozen=True):
    """The parts of one step by the names that the facts have for them, in one language."""

    words: Lookup
    names: Mapping[str, PartName]

    def part(self, name: str) -> PartName:
        """What a name of the facts says.

        Errors: KeyError for a name that the step does not have.
        """
        return self.names[name]

    def one(self, name: str, article: Article = "") -> Name:
        """A part, with its article or without."""
        return name_of_part(self.names[name], self.words, article=article)

    def many(self, name: str, count: int) -> Name:
        """So many of a part, without the number."""
        return name_of_part(self.names[name], self.words, count=count)


def shortened(parts: Mapping[str, PartName]) -> dict[str, PartName]:
    """Names without their fabrics or their making, where what is left is unique among them.

    Else by the one fabric that no other of the same kind has: `Lantern half-square triangle`.
    """
    found: dict[str, PartName] = {}
    for name, part in parts.items():
        alike = [other for other, each in parts.items() if other != name and _head(each) == _head(part)]
        if not alike:
            found[name] = _head(part)
            continue
        if any(parts[other] == _head(part) for other in alike) or part == _head(part):
            continue
        others = {fabric for other in alike for fabric in parts[other].fabrics}
        own = [fabric for fabric in part.fabrics if fabric not in others]
        if own:
            found[name] = replace(_head(part), fabric=own[0])
    return found


def _head(part: PartName) -> PartName:
    """The name without its fabrics and its making."""
    return replace(part, fabrics=(), way="", again=0)
