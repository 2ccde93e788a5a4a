"""Messages in a language: Fluent files, read once, those of a language laid over those of another where it differs.

A term (`-toward`) that British English says in its own way changes every message that has it.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import lru_cache
from importlib.resources import files
from typing import TYPE_CHECKING, Any, Final, Protocol

from fluent.runtime import FluentBundle, FluentResource

from blockdsl.wording.grammar import Argument, grammar_of, name_in_case

if TYPE_CHECKING:
    from fluent.runtime.resolver import Pattern

LANGUAGES: Final[Mapping[str, tuple[str, ...]]] = {
    "en-US": ("en-US",),
    "en-GB": ("en-GB", "en-US"),
    "de": ("de",),
    "fr": ("fr",),
}
"""For each language the folders that its messages are looked for in, the first one laid over the next."""
_SAID_REMEMBERED: Final = 4096
_ENTRY: Final = re.compile(r"^(-?[A-Za-z][A-Za-z0-9_-]*) *=", re.MULTILINE)
_REFERENCE: Final = re.compile(r"\{\s*(-?[a-z][a-z0-9-]*)")
_COMMENT: Final = re.compile(r"^#.*\n?", re.MULTILINE)

_LONG: Final = 200
"""Longer arguments, such as the list of a row of forty patches, are put in after formatting: Fluent refuses more than
2,500 letters in a place, to guard those who read files of strangers."""


class MissingMessageError(LookupError):
    """A message that no file of the language has, or that was given too few arguments."""


class Messages:
    """The messages of one language."""

    def __init__(self, language: str) -> None:
        self.language = language
        self.grammar = grammar_of(language)
        self._bundle = FluentBundle([language], use_isolating=False, functions={"NAME": self._named()})
        # Each entry is parsed when it is first wanted: a run needs few of many hundred.
        self._waiting: dict[str, str] = {}
        for folder in reversed(LANGUAGES[language]):
            self._waiting |= _entries(folder)
        # Steps that are alike say the same; 1 and True are told apart, for they are not written alike.
        self._said = lru_cache(maxsize=_SAID_REMEMBERED, typed=True)(self._say)

    def __contains__(self, key: object) -> bool:
        """Whether the language has a message, or an attribute of one, of this key."""
        return isinstance(key, str) and self._pattern(key) is not None

    def __call__(self, key: str, **arguments: Argument) -> str:
        """The message of this key, or its attribute (`key.title`), with its arguments in place.

        Whole numbers choose between singular and plural.

        Errors: MissingMessageError when there is no such message, or when it needs an argument that is not given.
        """
        return self._said(key, **arguments)

    def _say(self, key: str, **arguments: Argument) -> str:
        pattern = self._pattern(key)
        if pattern is None:
            raise MissingMessageError(f"{key} in {self.language}")
        long = {name: value for name, value in arguments.items() if isinstance(value, str) and len(value) > _LONG}
        stand_ins = {name: f"\ue000{place}\ue001" for place, name in enumerate(long)}
        said, errors = self._bundle.format_pattern(pattern, {**arguments, **stand_ins})
        if errors:
            raise MissingMessageError(f"{key} in {self.language}: {errors[0]}")
        # Where a line of the file ends, a sentence goes on.
        text = str(said).replace("\n", " ")
        for name, stand_in in stand_ins.items():
            text = text.replace(stand_in, long[name])
        return self.grammar.contracted(text)

    def _named(self) -> Any:
        """The function of `NAME($part, case: "dative")` in a message."""

        def named(name: str, *, case: str = "nominative") -> str:
            return name_in_case(name, str(case), self)

        return named

    def _read(self, name: str) -> None:
        """Parse an entry, and what it refers to."""
        text = self._waiting.pop(name, None)
        if text is None:
            return
        self._bundle.add_resource(FluentResource(text))
        for other in _REFERENCE.findall(text):
            self._read(other)

    def _pattern(self, key: str) -> Pattern | None:
        name, _, attribute = key.partition(".")
        self._read(name)
        if not self._bundle.has_message(name):
            return None
        found = self._bundle.get_message(name)
        return found.attributes.get(attribute) if attribute else found.value


@lru_cache(maxsize=len(LANGUAGES))
def messages(language: str = "en-US") -> Messages:
    """The messages of a language, read at the first call.

    Errors: KeyError for a language that is not in LANGUAGES.
    """
    return Messages(language)


class HasLanguage(Protocol):
    """What is printed in a language: a block, a quilt, a book, a lesson."""

    @property
    def language(self) -> str:
        """One of LANGUAGES."""


def words_of(facts: HasLanguage) -> Messages:
    """The messages that a block, a quilt, a book or a lesson is printed in."""
    return messages(facts.language)


@lru_cache
def _entries(folder: str) -> dict[str, str]:
    """The text of every message and term in a folder, by its name; a term's begins with a hyphen."""
    found: dict[str, str] = {}
    for source in sorted(files("blockdsl.wording").joinpath(folder).iterdir(), key=lambda source: source.name):
        if not source.name.endswith(".ftl"):
            continue
        _, *parts = _ENTRY.split(source.read_text(encoding="utf-8"))
        for name, rest in zip(parts[::2], parts[1::2], strict=True):
            found[name] = f"{name} ={_COMMENT.sub('', rest)}\n"
    return found
