"""Single changes of the words of a step, as a slip of the pen would make them."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from itertools import pairwise
from random import Random

from tests.outside.reader.sentences import Step
from tests.outside.reader.words import plain

Change = tuple[str, Step]
"""What was changed, in words, and the step as it reads then."""

SIDES = {
    "top": "bottom", "bottom": "top", "left": "right", "right": "left", "upper": "lower", "lower": "upper",
}  # fmt: skip
WORDS = {
    "toward": "away from", "away from": "toward", "towards": "away from", "first": "second", "second": "first",
    "nesting": "matching", "matching": "nesting", "long": "short", "short": "long", "both": "all", "row 1": "row 2",
    "row 2": "row 1", "row 3": "row 2", "rows 1 and 3": "rows 1 and 2",
}  # fmt: skip
CLAUSES = (
    r", with (?:its |a )?[^,.☐]*?(?: at the [^,.☐]*| edge)(?=[,.])", r", nesting(?: the seams)?",
    r", matching(?: the seams)?",
    r" in the same way", r" \((?=[^()]* at the )[^()]*\)", r" by its \w+ edge", r", right ends even", r" open",
)  # fmt: skip


def sentences(text: str) -> list[tuple[int, int]]:
    """Where the sentences of a text begin and end, measures left out."""
    hits = re.finditer(r"(?:\([a-z]\) )?([A-Z][^.☐]*(?:\d\.\d[^.☐]*)*\.)(?: |$)", text)
    return [(hit.start(1), hit.end(1)) for hit in hits]


def another_side(step: Step) -> Iterator[Change]:
    for hit in re.finditer(rf"\b(?:{'|'.join(SIDES)})\b(?! sides)", step.text):
        yield f"{hit[0]} to {SIDES[hit[0]]}", _put(step, hit.start(), hit.end(), SIDES[hit[0]])


def another_word(step: Step) -> Iterator[Change]:
    for hit in re.finditer(rf"\b(?:{'|'.join(WORDS)})\b", step.text):
        yield f"{hit[0]} to {WORDS[hit[0]]}", _put(step, hit.start(), hit.end(), WORDS[hit[0]])


def another_order(step: Step) -> Iterator[Change]:
    """Two sentences that follow each other, exchanged."""
    places = sentences(step.text)
    for (a, b), (c, d) in pairwise(places):
        text = step.text[:a] + step.text[c:d] + step.text[b:c] + step.text[a:b] + step.text[d:]
        yield f"order of {step.text[a:b]!r} and {step.text[c:d]!r}", replace(step, text=text)


def another_count(step: Step) -> Iterator[Change]:
    for hit in re.finditer(r"(?<![\d/.] )(?<![\d/.])\b(\d+)(?= (?!\d|×|in\b|cm\b|and\b|[½¼¾⅛⅜⅝⅞]))", step.text):
        yield f"{hit[1]} to {int(hit[1]) + 1}", _put(step, hit.start(), hit.end(), str(int(hit[1]) + 1))
    for hit in re.finditer(r"make (\d+)", step.title):
        title = step.title[: hit.start(1)] + str(int(hit[1]) + 1) + step.title[hit.end(1) :]
        yield f"title: {hit[0]} and one more", replace(step, title=title)


def another_measure(step: Step) -> Iterator[Change]:
    for hit in re.finditer(r"☐ (?:about )?(\d+)", step.text):
        yield f"measure {hit[1]} and one more", _put(step, hit.start(1), hit.end(1), str(int(hit[1]) + 1))


def left_out(step: Step) -> Iterator[Change]:
    """A clause or a sentence that is not there."""
    for pattern in CLAUSES:
        for hit in re.finditer(pattern, step.text):
            yield f"without {hit[0]!r}", _put(step, hit.start(), hit.end(), "")
    for a, b in sentences(step.text):
        yield f"without {step.text[a:b]!r}", _put(step, a, b, "")


def another_letter(step: Step) -> Iterator[Change]:
    """A letter or a fabric in place of another one of the step."""
    letters = sorted(set(re.findall(r"\b[A-Z]r?\b(?=[ ,.;)])", step.text)))
    fabrics = sorted(set(re.findall(r"\(([A-Z][a-z][^()]*)\)", step.text)) - {""})
    fabrics = [fabric for fabric in fabrics if " at the " not in fabric and " of " not in fabric]
    for names in (letters, fabrics):
        for name in names:
            for other in names:
                if other != name:
                    for hit in re.finditer(rf"\b{re.escape(name)}\b(?=[ ,.;)])", step.text):
                        yield f"{name} to {other}", _put(step, hit.start(), hit.end(), other)


def _put(step: Step, start: int, stop: int, words: str) -> Step:
    return replace(step, text=re.sub(r"  +", " ", step.text[:start] + words + step.text[stop:]))


KINDS: dict[str, Callable[[Step], Iterator[Change]]] = {
    "another side": another_side,
    "another word": another_word,
    "another order": another_order,
    "another count": another_count,
    "another measure": another_measure,
    "left out": left_out,
    "another letter": another_letter,
}


def changes(steps: list[Step], random: Random, count: int) -> list[tuple[str, str, int, Step]]:
    """So many single changes of the steps of a block: kind, what, which step, how it reads then."""
    found = []
    for _ in range(count * 4):
        place = random.randrange(len(steps))
        kind = random.choice(sorted(KINDS))
        step = replace(steps[place], text=plain(steps[place].text))
        choices = list(KINDS[kind](step))
        if choices:
            what, changed = random.choice(choices)
            found.append((kind, what, place, changed))
        if len(found) == count:
            break
    return found
