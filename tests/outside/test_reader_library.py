"""What the library's sheets print is read as it is told in the facts, and slips of wording in it do not go unseen."""

from __future__ import annotations

import re
from pathlib import Path
from random import Random

import pytest

from blockdsl.export.pdf import write_pdf
from blockdsl.page.sheet import block_sheet
from tests.outside.reader.faults import MOST_UNSEEN, SEED, sample
from tests.outside.reader.library import FAMILIES, OWN, another_size, check, documents
from tests.outside.reader.printed import printed_steps
from tests.outside.reader.sentences import Step
from tests.outside.reader.words import plain
from tests.outside.virtual.library import tried

FAULTS = 60
MOST_WORDS = 60
EACH = 2
"""Blocks of a file whose sheets are printed; 30 in all at least."""


@pytest.mark.parametrize("name", FAMILIES)
def test_the_steps_that_a_sheet_prints_are_those_of_the_facts(name: str, tmp_path: Path) -> None:
    every = list(zip(tried(name), documents(name), strict=True))
    for each, document in Random(name).sample(every, min(EACH, len(every))):  # noqa: S311
        path = tmp_path / "sheet.pdf"
        path.write_bytes(write_pdf(block_sheet(each.facts)))
        told = [Step(step["number"], plain(step["title"]), plain(step["text"])) for step in document["steps"]]
        assert printed_steps(path) == told, document["name"]


def test_at_least_thirty_sheets_are_printed() -> None:
    assert sum(min(EACH, len(documents(name))) for name in FAMILIES) >= 30


def test_of_sixty_slips_of_wording_at_least_four_in_five_are_caught_and_the_others_sew_the_same_block() -> None:
    slips = sample(FAULTS, SEED)
    assert len(slips) == FAULTS
    assert sum(slip.reason is not None for slip in slips) <= MOST_UNSEEN * FAULTS


def test_a_joining_step_takes_sixty_words_at_most_on_an_average() -> None:
    """A number and its fraction are one word; letters of sub-steps and tick boxes are none."""
    counts = []
    for name in FAMILIES:
        for each, document in zip(tried(name), documents(name), strict=True):
            for step, told in zip(each.facts.steps, document["steps"], strict=True):
                if not step.lesson and not step.sections:
                    text = re.sub(r"\([a-z]\) |☐ ?", "", plain(told["text"]))
                    counts.append(len(re.sub(r"(?<=\d) (?=\d+/\d)", "-", text).split()))
    assert len(counts) > 400
    assert sum(counts) / len(counts) <= MOST_WORDS


@pytest.mark.parametrize("name", FAMILIES)
def test_the_words_of_every_block_sew_it(name: str) -> None:
    for size in (OWN, another_size(name)):
        for document in documents(name, size):
            check(document)
