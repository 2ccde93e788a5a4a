"""What a language needs beside its messages: how it lists, how it writes figures, and how a name stands in a sentence.

The functions here ask the language of the messages that they are given. English has articles and plurals made for
names that no message file can know, a maker's own among them; other languages decline nouns, which each message asks
for itself: `{ NAME($part, case: "dative") }` in a German file, where an English one has `{ $part }`.
"""

from __future__ import annotations

from collections.abc import Sequence
from importlib import import_module
from typing import TYPE_CHECKING, Final, Literal, Protocol, Self, cast

if TYPE_CHECKING:
    from blockdsl.wording.messages import Argument, Messages

Article = Literal["", "a", "the"]

MODULES: Final = {"en-US": "blockdsl.wording.english", "en-GB": "blockdsl.wording.english"}
"""The module of each language; its `GRAMMAR` is the language's own."""


class Grammar(Protocol):
    """The functions of one language."""

    decimal: str
    """What stands between the whole of a number and its tenths: a point, or a comma."""

    def listed(self, items: Sequence[str], words: Messages) -> str:
        """The items as one list, in which the last is joined by a word."""

    def plural(self, name: str) -> str:
        """More than one of a name that no message file has."""

    def with_article(self, name: str, article: Article, words: Messages) -> str:
        """A name with its article, where the language writes it before any name alike; else the name alone."""


def grammar_of(language: str) -> Grammar:
    """The grammar of a language.

    Errors: KeyError for a language that is not in MODULES.
    """
    return cast("Grammar", import_module(MODULES[language]).GRAMMAR)


class Name(str):
    """The name of a thing as an argument of a sentence: as it stands by itself, and how to have it in another case.

    `key` is the message of its noun, empty for a name that no message file has; `article` and `number` say how it is
    used; `arguments` are those of the noun's message. In English the text is all that is wanted.
    """

    __slots__ = ("arguments", "article", "key", "number")

    key: str
    article: Article
    number: int
    arguments: tuple[tuple[str, Argument], ...]

    def __new__(
        cls,
        text: str,
        key: str = "",
        article: Article = "",
        number: int = 1,
        arguments: tuple[tuple[str, Argument], ...] = (),
    ) -> Self:
        """The name in `text`, its message and how it is used."""
        found = super().__new__(cls, text)
        found.key, found.article, found.number, found.arguments = key, article, number, arguments
        return found

    def __eq__(self, other: object) -> bool:
        """Names are alike when they are written alike in every case."""
        if isinstance(other, Name):
            return self._whole() == other._whole()
        return str.__eq__(self, other) if isinstance(other, str) else NotImplemented

    def __hash__(self) -> int:
        return str.__hash__(self)

    def _whole(self) -> tuple[object, ...]:
        return str(self), self.key, self.article, self.number, self.arguments


def name_of(key: str, words: Messages, *, count: int = 1, article: Article = "", **arguments: Argument) -> Name:
    """A noun that the message files have, so many of it, with or without its article."""
    text = words(key, count=count, article=article, case="nominative", **arguments)
    return Name(words.grammar.with_article(text, article, words), key, article, count, tuple(arguments.items()))


def name_in_case(name: str, case: str, words: Messages) -> str:
    """A name as a case has it; one that no message file has stays as it is. What `NAME` gives in a message."""
    if not isinstance(name, Name) or not name.key:
        return name
    return words(name.key, count=name.number, article=name.article, case=case, **dict(name.arguments))


def listed(items: Sequence[str], words: Messages) -> str:
    """`A`, `A and B`, `A, B, and C`: the items as the language lists them."""
    return words.grammar.listed(items, words)


def plural(name: str, words: Messages) -> str:
    """More than one of it, for names that no message file has."""
    return words.grammar.plural(name)


def an(name: str, words: Messages) -> str:
    """One of it that was not spoken of before: `a unit`, `an hourglass`."""
    return Name(words.grammar.with_article(name, "a", words), getattr(name, "key", ""), "a")


def the(name: str, words: Messages) -> str:
    """That which was spoken of before: `the unit`."""
    return Name(words.grammar.with_article(name, "the", words), getattr(name, "key", ""), "the")


def in_figures(figure: str, words: Messages) -> str:
    """A number that has been written with a decimal point, as the language writes it: `7.5`, `7,5`."""
    return figure if words.grammar.decimal == "." else figure.replace(".", words.grammar.decimal)


def capital(text: str) -> str:
    """With a capital at its beginning."""
    return text[:1].upper() + text[1:]
