"""A language that nobody speaks: American English with its words two fifths longer, as German and French often are."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from importlib import import_module
from typing import Any, Final

from fluent.runtime import FluentResource
from fluent.syntax import FluentSerializer
from fluent.syntax.ast import Message, Term, TextElement
from fluent.syntax.visitor import Transformer

from blockdsl.wording import grammar

messages: Any = import_module("blockdsl.wording.messages")
"""The module: its package has a function of that name."""
LANGUAGE: Final = "en-XA"
BY: Final = 0.4
_WORD: Final = re.compile(r"[A-Za-z]{2,}")
_VOWEL: Final = re.compile(r"[aeiouyAEIOUY]")


def longer(text: str) -> str:
    """Every word with its vowels doubled until it is two fifths longer: `cuutting`."""
    return _WORD.sub(lambda word: _longer(word[0]), text)


def _longer(word: str) -> str:
    wanted = len(word) + round(len(word) * BY)
    while len(word) < wanted:
        places = [found.start() for found in _VOWEL.finditer(word)] or [len(word) - 1]
        for number, place in enumerate(places[: wanted - len(word)]):
            at = place + number
            word = word[: at + 1] + word[at].lower() + word[at + 1 :]
    return word


class _Lengthen(Transformer):
    def visit_TextElement(self, node: TextElement) -> TextElement:  # noqa: N802  named by fluent.syntax
        node.value = longer(node.value)
        return node


@contextmanager
def spoken() -> Iterator[str]:
    """The language while this lasts; what is remembered of it is forgotten at the end."""
    known, modules = messages.LANGUAGES, dict(grammar.MODULES)
    read: Callable[[str], dict[str, str]] = messages._entries

    def entries(folder: str) -> dict[str, str]:
        if folder != LANGUAGE:
            return read(folder)
        found = {}
        for name, text in read("en-US").items():
            (entry,) = FluentResource(text).body
            assert isinstance(entry, Message | Term)
            found[name] = FluentSerializer().serialize_entry(_Lengthen().visit(entry))
        return found

    try:
        messages.LANGUAGES = {**known, LANGUAGE: (LANGUAGE,)}
        grammar.MODULES[LANGUAGE] = grammar.MODULES["en-US"]
        messages._entries = entries
        messages.messages.cache_clear()
        yield LANGUAGE
    finally:
        messages.LANGUAGES, messages._entries = known, read
        grammar.MODULES.clear()
        grammar.MODULES.update(modules)
        messages.messages.cache_clear()
