"""Whatever the check accepts, every kind of output is made of: odd words, sizes to the limits, any methods."""

from __future__ import annotations

import pytest

from tests.fuzz.valid import KINDS, built, valid_text

FIRST = 2_000_000
FILES = 100
"""`make fuzz` builds many more, other ones."""


@pytest.mark.parametrize("part", range(10))
def test_a_file_that_passes_the_check_is_built_in_every_kind_or_told_what_is_wrong(part: int) -> None:
    made = 0
    for number in range(FIRST + part * FILES // 10, FIRST + (part + 1) * FILES // 10):
        text = valid_text(number)
        # A site teaches every method that the file takes, which costs more than all the rest.
        ending = built(text, KINDS if number % 10 == 0 else KINDS.removesuffix(",web,steps"))
        assert ending.is_good, f"file {number}: {ending.said}\n{text}"
        made += ending.status == 0
    assert made > FILES // 10 // 3


@pytest.mark.parametrize("number", [10_000_160, 10_001_047, 10_002_598, 10_003_501])
def test_files_that_once_passed_the_check_and_failed_the_build_are_built(number: int) -> None:
    """Each for its own reason.

    A slide of a strip set without hands, a cloth measured on the other ruler, letters beside a very narrow block, a
    hollow arc that twice the allowance closes.
    """
    assert built(valid_text(number)).status == 0
