"""A hundred spoiled files through the whole house; `make fuzz` tries twenty thousand."""

from __future__ import annotations

import pytest

from blockdsl.analysis import TextReader, analyse
from blockdsl.diagnostics import Problems, Source
from tests.fuzz.judge import SECONDS, judge
from tests.fuzz.mutate import mutated
from tests.fuzz.seeds import EVERYTHING, seed_texts

FILES = 102
# These begin where the large run ends, so that the two together see more.
FIRST = 1_000_000


def test_the_file_that_mutations_start_from_has_everything_and_no_problem() -> None:
    problems = Problems()
    program = analyse(Source("everything.block", EVERYTHING), TextReader(), problems)
    assert list(problems) == []
    assert [block.name for block in program.blocks] == ["Everything", "Roots", "Strips"]


@pytest.mark.parametrize("part", range(6))
def test_spoiled_files_give_problems_and_never_a_fault_of_ours(part: int) -> None:
    seeds = seed_texts()
    for number in range(FIRST + part * FILES // 6, FIRST + (part + 1) * FILES // 6):
        text = mutated(number, seeds)
        verdict = judge(text, draw=number % 25 == 0, build=number % 50 == 0)
        # How long it took is left to `make fuzz`: this machine may be busy.
        faults = [fault for fault in verdict.faults if not fault.startswith("slow")]
        assert faults == [], f"file {number}:\n{text[:2000]}"


def test_a_file_that_cannot_be_understood_is_judged_in_words() -> None:
    verdict = judge("\x00\x01 not a block file", draw=True, build=True)
    assert verdict.faults == []
    assert verdict.blocks == 0
    assert verdict.seconds < SECONDS


def test_the_same_number_spoils_the_same_file() -> None:
    seeds = seed_texts()
    assert mutated(7, seeds) == mutated(7, seeds)
    assert len({mutated(number, seeds) for number in range(50)}) > 40
