"""Five hundred seeded faults of wording over the library: which are caught, and why the others are not.

`python -m tests.outside.reader.faults [how many] [seed]`, or `make read`.
"""

from __future__ import annotations

import re
import sys
from collections import Counter
from dataclasses import dataclass
from random import Random
from typing import Any

from tests.outside.reader.changes import changes
from tests.outside.reader.comparing import compare
from tests.outside.reader.library import FAMILIES, check, documents, steps_of
from tests.outside.reader.reading import Progress, sew_on, sew_step
from tests.outside.reader.sentences import Step
from tests.outside.reader.stock import stock_of
from tests.outside.reader.table import Refused

SEED = 1915
MANY = 500
MOST_UNSEEN = 0.2


@dataclass(frozen=True, slots=True)
class Tried:
    """A fault, and why it was not caught; None where it was."""

    block: str
    step: int
    kind: str
    what: str
    reason: str | None


def try_faults(document: dict[str, Any], random: Random, count: int) -> list[Tried]:
    """Single changes of a block's words, each sewn from the step that it is in."""
    steps = steps_of(document)
    before = [Progress(stock_of(document))]
    for step in steps:
        progress = before[-1].copy()
        sew_step(progress, step)
        before.append(progress)
    found = []
    for kind, what, place, changed in changes(steps, random, count):
        rest = [changed, *steps[place + 1 :]]
        try:
            compare(sew_on(before[place].copy(), rest, [*steps[:place], *rest]), document)
            reason: str | None = reason_of(kind, steps[place], changed)
        except Refused:
            reason = None
        found.append(Tried(document["name"], changed.number, kind, what, reason))
    return found


CARE = (
    r"dog-ears|Crease|extend|even: pin|backstitch|marks between|Stop at the dot|dot .* from both edges|Remove the paper"
)


def reason_of(kind: str, step: Step, changed: Step) -> str:
    """Why the words still sew the same block."""
    old, new = (re.split(r"(?<=[.]) ", text) for text in (step.text, changed.text))
    differ = [sentence for sentence in old if sentence not in new] + [
        sentence for sentence in new if sentence not in old
    ]
    if kind == "another order":
        return "in either order the same is done"
    if differ and all("Press " in sentence for sentence in differ):
        return "pressing that nothing nests against"
    if differ and all(re.search(CARE, sentence) for sentence in differ):
        return "care that moves no patch"
    if differ and all(re.search(r"mark|draw a line|line", sentence) for sentence in differ):
        return "the other square may be marked as well"
    return "the same block: by symmetry, or because it fits only so"


def sample(many: int, seed: int) -> list[Tried]:
    """Faults over all blocks of the library that can be read, as evenly as it goes."""
    every = [document for family in FAMILIES for document in documents(family)]
    random = Random(seed)  # noqa: S311
    random.shuffle(every)
    found: list[Tried] = []
    # Some blocks may not be readable, so each of the others gives a few more.
    each = -(-many * 10 // (len(every) * 9))
    for document in every:
        if len(found) >= many:
            break
        try:
            check(document)
        except Refused:
            continue
        found += try_faults(document, random, min(each, many - len(found)))
    return found


def main(many: int = MANY, seed: int = SEED) -> int:
    """0 where at most a fifth of the faults was not caught."""
    tried = sample(many, seed)
    unseen = [each for each in tried if each.reason]
    for each in unseen:
        print(f"{each.block}, step {each.step}, {each.kind}: {each.what}: {each.reason}")
    for reason, count in Counter(each.reason for each in unseen).most_common():
        print(f"{count:4d}  {reason}")
    print(f"{len(tried) - len(unseen)} of {len(tried)} faults of wording are caught")
    return int(len(unseen) > MOST_UNSEEN * len(tried))


if __name__ == "__main__":
    sys.exit(main(*map(int, sys.argv[1:])))
