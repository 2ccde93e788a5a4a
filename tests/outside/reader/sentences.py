"""A step's title and text taken apart: what it makes, and one sentence after another."""

from __future__ import annotations

import re
from dataclasses import dataclass

from tests.outside.reader.words import LENGTH, Unreadable, american, length, listed, number, plain, stem

SIZE = rf"(about )?({LENGTH}) × (about )?({LENGTH}) (in|cm)"
SIGN = "☐"


@dataclass(frozen=True, slots=True)
class Title:
    """What a step makes: its name, or one name for each of its rows, how many, from how many batches."""

    names: tuple[str, ...]
    count: int
    each_batch: int | None
    finished: tuple[float, float] | None
    about: bool
    rest: tuple[str, ...]
    source: str | None = None
    """What all or each batch of them are made from: 5 squares, 1 strip set."""

    mirrored: int = 0
    """How many reversed ones are made besides."""
    spare: int = 0

    @property
    def total(self) -> int:
        return self.count + self.mirrored + self.spare

    @property
    def batches(self) -> int:
        return self.total // self.each_batch if self.each_batch else 1


@dataclass(frozen=True, slots=True)
class Step:
    """A step as it is printed."""

    number: int
    title: str
    text: str


MAKE = re.compile(
    r"make (?P<n>\d+)(?: and (?P<m>\d+) reversed)?(?:, (?P<k>\d+) from each (?P<each>[^,]+))?"
    r"(?: from (?P<source>[^,]+))?(?:, (?P<spare>\d+) spare)?"
)


def title_of(step: Step) -> Title:
    """The title read: Rows 1 and 3 · make 2 · 12 × 3 in finished."""
    parts = [part.strip() for part in american(plain(step.title)).split("·")]
    name, rest = parts[0], parts[1:]
    count, batch, size, about, source, mirrored, spare = 1, None, None, False, None, 0, 0
    other: list[str] = []
    for part in rest:
        if found := MAKE.fullmatch(part):
            count, mirrored = int(found["n"]), int(found["m"] or 0)
            batch, spare = int(found["k"] or 0) or None, int(found["spare"] or 0)
            source = found["each"] or found["source"]
        elif found := re.fullmatch(rf"{SIZE} finished", part):
            size, about = (float(length(found[2])), float(length(found[4]))), bool(found[1] or found[3])
        else:
            other.append(part)
    if batch and (count + mirrored + spare) % batch:
        raise Unreadable(f"{count + mirrored + spare} cannot be made {batch} at a time")
    return Title(tuple(_names(name)), count, batch, size, about, tuple(other), source, mirrored, spare)


def _names(name: str) -> list[str]:
    """Rows 1 and 3 are two names; half-square triangles are one."""
    if found := re.fullmatch(r"((?:rows|columns|parts)) ([\d, and]+?)( of .+)?", name.lower()):
        kind = stem(found[1])
        return [f"{kind} {number(part)}{stem(found[3]) if found[3] else ''}" for part in listed(found[2])]
    return [stem(name)]


def sentences_of(text: str) -> list[str]:
    """The sentences of a step, each tick box one of them, letters of sub-steps left out."""
    text = american(plain(text))
    text = re.sub(r"(?:^| )\([a-z]\) ", "\n", text)
    text = re.sub(rf"\.? *{SIGN} *", f"\n{SIGN} ", text)
    parts = (part.strip() for line in text.split("\n") for part in re.split(r"\.(?= |$)", line))
    return [part for part in parts if part]
