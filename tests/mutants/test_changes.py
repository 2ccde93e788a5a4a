"""The sample of changes: the same each time, each in one place, each a program still, each with tests that lie near."""

from __future__ import annotations

import ast
from pathlib import Path

from tests.mutants.changes import changes_of, chosen
from tests.mutants.nearest import nearest
from tests.mutants.run import COUNT, ROOT, harmless


def test_a_change_is_one_operator_or_number_in_one_place() -> None:
    text = "def wide(a: int, b: int) -> bool:\n    return a + 1 <= b and b != 7\n"
    made = sorted(change.made_in(text).splitlines()[1].strip() for change in changes_of("wide.py", text))
    assert made == [
        "return a + 1 < b and b != 7",
        "return a + 1 <= b and b != 8",
        "return a + 1 <= b and b == 7",
        "return a + 1 <= b or b != 7",
        "return a + 2 <= b and b != 7",
        "return a - 1 <= b and b != 7",
    ]


def test_the_sample_is_the_same_each_time_and_every_change_in_it_is_a_program_still() -> None:
    sample = chosen(ROOT, COUNT)
    assert sample == chosen(ROOT, COUNT)
    assert len(set(sample)) == COUNT
    for change in sample:
        before = (ROOT / change.file).read_text(encoding="utf-8")
        after = change.made_in(before)
        assert after != before
        ast.parse(after)


def test_every_file_has_tests_that_lie_near_and_are_there() -> None:
    for change in chosen(ROOT, COUNT):
        tests = nearest(change.file, ROOT)
        assert tests
        assert all((Path(ROOT) / test).exists() for test in tests), change.file


def test_every_harmless_change_has_its_reason() -> None:
    for each in harmless():
        assert each.keys() == {"file", "line", "old", "new", "reason"}
        assert len(each["reason"]) > 20
