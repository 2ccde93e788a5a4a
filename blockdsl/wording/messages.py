"""Messages in a language: Fluent files, read once, a language in place of another where it says a thing differently."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from importlib.resources import files
from typing import Final

from fluent.runtime import FluentBundle, FluentResource

Argument = str | int

LANGUAGES: Final[Mapping[str, tuple[str, ...]]] = {"en-US": ("en-US",), "en-GB": ("en-GB", "en-US")}
"""For each language the folders that its messages are looked for in, in that order."""


class MissingMessageError(LookupError):
    """A message that no file of the language has, or that was given too few arguments."""


class Messages:
    """The messages of one language."""

    def __init__(self, language: str) -> None:
        self.language = language
        self._bundles = tuple(_bundle(folder) for folder in LANGUAGES[language])

    def __contains__(self, key: object) -> bool:
        """Whether the language has a message of this key."""
        return isinstance(key, str) and any(bundle.has_message(key) for bundle in self._bundles)

    def __call__(self, key: str, **arguments: Argument) -> str:
        """The message of this key with its arguments in place; whole numbers choose between singular and plural.

        Errors: MissingMessageError when there is no such message, or when it needs an argument that is not given.
        """
        for bundle in self._bundles:
            if bundle.has_message(key):
                pattern = bundle.get_message(key).value
                if pattern is None:
                    break
                said, errors = bundle.format_pattern(pattern, arguments)
                if errors:
                    raise MissingMessageError(f"{key} in {self.language}: {errors[0]}")
                return str(said)
        raise MissingMessageError(f"{key} in {self.language}")


@lru_cache(maxsize=len(LANGUAGES))
def messages(language: str = "en-US") -> Messages:
    """The messages of a language, read at the first call.

    Errors: KeyError for a language that is not in LANGUAGES.
    """
    return Messages(language)


@lru_cache
def _bundle(folder: str) -> FluentBundle:
    bundle = FluentBundle([folder], use_isolating=False)
    sources = sorted(files("blockdsl.wording").joinpath(folder).iterdir(), key=lambda source: source.name)
    for source in sources:
        if source.name.endswith(".ftl"):
            bundle.add_resource(FluentResource(source.read_text(encoding="utf-8")))
    return bundle
