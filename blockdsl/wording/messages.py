"""Messages in a language: Fluent files, read once, those of a language laid over those of another where it differs.

A term (`-toward`) that British English says in its own way changes every message that has it.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from importlib.resources import files
from typing import TYPE_CHECKING, Final

from fluent.runtime import FluentBundle, FluentResource

if TYPE_CHECKING:
    from fluent.runtime.resolver import Pattern

Argument = str | int

LANGUAGES: Final[Mapping[str, tuple[str, ...]]] = {"en-US": ("en-US",), "en-GB": ("en-GB", "en-US")}
"""For each language the folders that its messages are looked for in, the first one laid over the next."""


class MissingMessageError(LookupError):
    """A message that no file of the language has, or that was given too few arguments."""


class Messages:
    """The messages of one language."""

    def __init__(self, language: str) -> None:
        self.language = language
        self._bundle = _bundle(language)

    def __contains__(self, key: object) -> bool:
        """Whether the language has a message, or an attribute of one, of this key."""
        return isinstance(key, str) and self._pattern(key) is not None

    def __call__(self, key: str, **arguments: Argument) -> str:
        """The message of this key, or its attribute (`key.title`), with its arguments in place.

        Whole numbers choose between singular and plural.

        Errors: MissingMessageError when there is no such message, or when it needs an argument that is not given.
        """
        pattern = self._pattern(key)
        if pattern is None:
            raise MissingMessageError(f"{key} in {self.language}")
        said, errors = self._bundle.format_pattern(pattern, arguments)
        if errors:
            raise MissingMessageError(f"{key} in {self.language}: {errors[0]}")
        # Where a line of the file ends, a sentence goes on.
        return str(said).replace("\n", " ")

    def _pattern(self, key: str) -> Pattern | None:
        name, _, attribute = key.partition(".")
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


def _bundle(language: str) -> FluentBundle:
    bundle = FluentBundle([language], use_isolating=False)
    for folder in reversed(LANGUAGES[language]):
        sources = sorted(files("blockdsl.wording").joinpath(folder).iterdir(), key=lambda source: source.name)
        for source in sources:
            if source.name.endswith(".ftl"):
                bundle.add_resource(FluentResource(source.read_text(encoding="utf-8")), allow_overrides=True)
    return bundle
