"""What a language needs beside its messages: how it lists, how it writes figures, and how a name stands in a sentence.

The functions here ask the language of the messages that they are given. English has articles and plurals made for
names that no message file can know, a maker's own among them; other languages decline nouns, which each message asks
for itself: `{ NAME($part, case: "dative") }` in a German file, where an English one has `{ $part }`.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from importlib import import_module
from typing import Final, Literal, Protocol, Self, cast

from msgspec import Struct
from msgspec.structs import replace

Argument = str | int
Article = Literal["", "a", "the", "one", "other", "another"]

MODULES: Final = {
    "en-US": "blockdsl.wording.english",
    "en-GB": "blockdsl.wording.english",
    "de": "blockdsl.wording.german",
    "fr": "blockdsl.wording.french",
}
"""The module of each language; its `GRAMMAR` is the language's own."""


class Grammar(Protocol):
    """The functions of one language."""

    decimal: str
    """What stands between the whole of a number and its tenths: a point, or a comma."""
    endings: str
    """The endings that a word of the trade may have in a text, as a regular expression."""
    thousands: str
    """What stands between thousands and hundreds."""

    def listed(self, items: Sequence[str], words: Lookup) -> str:
        """The items as one list, in which the last is joined by a word."""

    def plural(self, name: str) -> str:
        """More than one of a name that no message file has."""

    def with_article(self, name: str, article: Article, words: Lookup) -> str:
        """A name with its article, where the language writes it before any name alike; else the name alone."""

    def contracted(self, text: str) -> str:
        """A message with its words drawn together that the language writes as one: `zu der` is `zur`."""


LETTER: Final = re.compile(r"[A-Z]{1,2}r?( \(.*\))?")
"""A patch by its letter, with its fabric or without: `A`, `Br`, `A (Nebel)`."""


class WithGenders:
    """What languages share whose nouns have genders: message files give nouns their articles, nobody else can.

    A name that a maker gave has no article and no plural of its own; letters have those of `other` and `another`.
    """

    conjunction: str
    """The word before the last of a list, with its spaces."""

    def listed(self, items: Sequence[str], words: Lookup) -> str:
        """`A`, `A und B`, `A, B und C`, `Reihen 1 und 3 sowie A`."""
        if len(items) < 2:
            return "".join(items)
        key = "list-more" if any(self.conjunction in item for item in items[:-1]) else "list-pair"
        return words(key, first=words("list-comma").join(items[:-1]), last=items[-1])

    def plural(self, name: str) -> str:
        """A maker's name as it is: `2 Einheiten „Balken“`."""
        return name

    def with_article(self, name: str, article: Article, words: Lookup) -> str:
        """`das andere A`, `1 A`; all else as it is."""
        if article in ("one", "other", "another") and LETTER.fullmatch(name):
            return words(article, name=name)
        return name


class Lookup(Protocol):
    """The messages of one language, as a grammar asks for them."""

    @property
    def grammar(self) -> Grammar:
        """The language's own."""

    def __call__(self, key: str, **arguments: Argument) -> str:
        """The message of this key with its arguments in place."""


def grammar_of(language: str) -> Grammar:
    """The grammar of a language.

    Errors: KeyError for a language that is not in MODULES.
    """
    return cast("Grammar", import_module(MODULES[language]).GRAMMAR)


# --- names in sentences ----------------------------------------------------------------------------


class Spoken(Protocol):
    """What a name in a sentence is made of, to have it again in another case. Equal ones are written alike."""

    def in_case(self, case: str, words: Lookup) -> str:
        """The name as a case has it, with its article."""

    def with_article(self, article: Article) -> Self:
        """The same with another article."""


class Name(str):
    """The name of a thing as an argument of a sentence: as it stands by itself, and how to have it in another case.

    `spoken` is None for a letter or a name that stays as it is. In English the text is all that is wanted.
    """

    __slots__ = ("spoken",)

    spoken: Spoken | None

    def __new__(cls, text: str, spoken: Spoken | None = None) -> Self:
        """The name as it is in `text`, and what it is made of."""
        found = super().__new__(cls, text)
        found.spoken = spoken
        return found

    def __eq__(self, other: object) -> bool:
        """Names are alike when they are written alike in every case."""
        if isinstance(other, Name) and self.spoken != other.spoken:
            return False
        return str.__eq__(self, other) if isinstance(other, str) else NotImplemented

    def __ne__(self, other: object) -> bool:
        """As `str` has one of its own."""
        return not self == other

    def __hash__(self) -> int:
        """As that of the text."""
        return str.__hash__(self)


class Noun(Struct, frozen=True):
    """A noun that the message files have, so many of it."""

    key: str
    count: int
    article: Article
    arguments: tuple[tuple[str, Argument], ...]
    further: str = ""
    about: tuple[tuple[str, Argument], ...] = ()

    def in_case(self, case: str, words: Lookup) -> str:
        """The noun as a case has it, and what is said of it."""
        text = words(self.key, count=self.count, article=self.article, case=case, **dict(self.arguments))
        if self.further:
            text = words(self.further, name=text, **dict(self.about))
        return words.grammar.with_article(text, self.article, words)

    def name(self, words: Lookup, further: str = "", **about: Argument) -> Name:
        """As an argument of a sentence; `further` is a message that says more of it, as its `$name`."""
        noun = replace(self, further=further, about=tuple(about.items()))
        return Name(noun.in_case("nominative", words), noun)

    def with_article(self, article: Article) -> Self:
        """The same with another article."""
        return replace(self, article=article)


def name_of(key: str, words: Lookup, *, count: int = 1, article: Article = "", **arguments: Argument) -> Name:
    """A noun that the message files have, so many of it, with or without its article."""
    noun = Noun(key, count, article, tuple(arguments.items()))
    return Name(noun.in_case("nominative", words), noun)


def name_in_case(name: str, case: str, words: Lookup) -> str:
    """A name as a case has it; one that no message file has stays as it is. What `NAME` gives in a message."""
    spoken = name.spoken if isinstance(name, Name) else None
    return name if spoken is None else spoken.in_case(case, words)


def with_article(name: str, article: Article, words: Lookup) -> Name:
    """The name with another article."""
    spoken = name.spoken if isinstance(name, Name) else None
    if spoken is None:
        return Name(words.grammar.with_article(name, article, words))
    spoken = spoken.with_article(article)
    return Name(spoken.in_case("nominative", words), spoken)


def an(name: str, words: Lookup) -> Name:
    """One of it that was not spoken of before: `a unit`, `an hourglass`."""
    return with_article(name, "a", words)


def the(name: str, words: Lookup) -> Name:
    """That which was spoken of before: `the unit`."""
    return with_article(name, "the", words)


class _Listed(Struct, frozen=True):
    """Names in a list, which are in one case."""

    items: tuple[str, ...]

    def in_case(self, case: str, words: Lookup) -> str:
        return words.grammar.listed([name_in_case(item, case, words) for item in self.items], words)

    def with_article(self, article: Article) -> Self:  # noqa: ARG002  as names have it
        """A list has no article of its own."""
        return self


# --- lists and figures -----------------------------------------------------------------------------


def listed(items: Sequence[str], words: Lookup) -> str:
    """`A`, `A and B`, `A, B, and C`: the items as the language lists them; a name where one of them is."""
    text = words.grammar.listed(items, words)
    if any(isinstance(item, Name) and item.spoken is not None for item in items):
        return Name(text, _Listed(tuple(items)))
    return text


def plural(name: str, words: Lookup) -> str:
    """More than one of it, for names that no message file has."""
    return words.grammar.plural(name)


def in_series(items: Iterable[str], words: Lookup) -> str:
    """`A, B, C`: one after another, with no word before the last."""
    return words("list-comma").join(items)


def in_clauses(items: Iterable[str], words: Lookup) -> str:
    """`A and B of it; C`: items that may hold commas themselves."""
    return words("list-semicolon").join(items)


def in_figures(figure: str, words: Lookup) -> str:
    """A number that has been written with a decimal point, as the language writes it: `7.5`, `7,5`."""
    return figure if words.grammar.decimal == "." else figure.replace(".", words.grammar.decimal)


def in_thousands(count: int, words: Lookup) -> str:
    """A count with its thousands apart: `1,250`."""
    return f"{count:,}".replace(",", words.grammar.thousands)


def many(count: int, what: str, words: Lookup) -> str:
    """So many of what is counted on pages, `what` being a message `count-…`: `1 patch`, `4 patches`."""
    return words(f"count-{what}", count=count, number=in_thousands(count, words))


def capital(text: str) -> str:
    """With a capital at its beginning."""
    return text[:1].upper() + text[1:]
