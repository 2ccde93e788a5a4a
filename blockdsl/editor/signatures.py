"""The words of a shape while one types them: which comes next, and what each is for."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from msgspec import Struct

from blockdsl.diagnostics import Source
from blockdsl.shapes import SHAPES
from blockdsl.shapes.listed import FORMER_NAMES
from blockdsl.syntax.kinds import keyword_of

_PART: Final = re.compile(r"\[(?:[^\[\]]|\[[^\[\]]*\])*\]|\S+")


class Part(Struct, frozen=True):
    """One word of a usage, or what may be left out: where it stands there, and what it is."""

    start: int
    stop: int
    meaning: str


class Signature(Struct, frozen=True):
    """How a shape is written in one of its ways; `active` is the place of the part that comes next."""

    usage: str
    summary: str
    parts: tuple[Part, ...]
    active: int


def signatures(source: Source, offset: int) -> list[Signature]:
    """The ways of writing the shape that a place lies in; none outside a shape."""
    line, column = source.position(offset)
    said = _said(source.line(line)[: column - 1])
    words = said.split() if said is not None else []
    shape = SHAPES.get(FORMER_NAMES.get(words[0], words[0])) if words else None
    if said is None or shape is None:
        return []
    return usages(shape.name, words[1:] if said[-1:].isspace() else words[1:-1])


def usages(name: str, typed: Sequence[str] = ()) -> list[Signature]:
    """The ways of writing a shape, after the words that are typed."""
    shape = SHAPES[name]
    return [_signature(usage, shape.summary, typed) for usage in shape.usage.split(", or ")]


def _said(text: str) -> str | None:
    """What is typed of a shape so far: after a bracket that is open in a row, or after `unit NAME =`."""
    keyword = keyword_of(next(iter(text.split()), ""))
    if keyword == "row" and text.rfind("(") > text.rfind(")"):
        return text[text.rfind("(") + 1 :]
    if keyword == "unit" and "=" in text:
        return text[text.index("=") + 1 :]
    return None


def _signature(usage: str, summary: str, typed: Sequence[str]) -> Signature:
    parts = [Part(found.start(), found.end(), _meaning(found.group())) for found in _PART.finditer(usage)]
    parts = [part for part in parts[1:] if usage[part.start : part.stop] != "…"]
    return Signature(usage, summary, tuple(parts), _active(usage, parts, typed))


def _meaning(part: str) -> str:
    """What a part of a usage stands for; words in capitals are fabrics, small ones are written as they are."""
    if part.startswith("["):
        return f"may be left out: {_meaning(part[1:-1])}"
    words = part.split()
    if len(words) > 1:
        return ", ".join(_meaning(word) for word in words if word != "…")
    if re.fullmatch(r"[A-Z][A-Z-]*", part):
        return "how many" if part in {"ROWS", "COLUMNS"} else f"a fabric: {part.lower().replace('-', ' ')}"
    return "a number" if re.fullmatch(r"[0-9/]+", part) else f"the word `{part}`"


def _active(usage: str, parts: list[Part], typed: Sequence[str]) -> int:
    """The part that comes next after the words that are typed; a word of the shape's own says where one is."""
    place = 0
    for word in typed:
        literal = next((n for n in range(place, len(parts)) if word in _own_words(usage, parts[n])), None)
        if literal is not None:
            place = literal + (0 if usage[parts[literal].start] == "[" else 1)
        elif place < len(parts) and not _goes_on(usage, parts[place]):
            place += 1
    return min(place, len(parts) - 1) if parts else 0


def _own_words(usage: str, part: Part) -> list[str]:
    return re.findall(r"(?<![\w-])[a-z][a-z-]*(?![\w-])", usage[part.start : part.stop])


def _goes_on(usage: str, part: Part) -> bool:
    """Whether as many words as one likes can be written for this part."""
    return usage[part.stop :].lstrip().startswith("…")
