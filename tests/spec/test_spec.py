"""The language reference holds: each example has the problems that stand beside its lines, and no other."""

from __future__ import annotations

from pathlib import Path

import pytest

from blockdsl.diagnostics import CATALOGUE, Source
from blockdsl.syntax.format import format_text
from tests.spec.pages import HERE, Example, examples

PAGES = sorted(HERE.glob("*.md"))
PROBLEM_PAGES = sorted((HERE / "problems").glob("*.md"))

EXAMPLES = [
    pytest.param(example, id=f"{page.stem}: {example.heading} ({number})")
    for page in PAGES
    for number, example in enumerate(examples(page), start=1)
]

WITH_NUMBERS = [
    pytest.param(example, id=f"{page.stem}: {example.heading} ({number})")
    for page in PAGES
    for number, example in enumerate(examples(page), start=1)
    if example.facts
]


@pytest.mark.parametrize("example", EXAMPLES)
def test_an_example_has_the_problems_beside_its_lines_and_no_other(example: Example, tmp_path: Path) -> None:
    assert example.problems(tmp_path) == example.expected


@pytest.mark.parametrize("example", WITH_NUMBERS)
def test_an_example_has_the_numbers_that_stand_below_it(example: Example, tmp_path: Path) -> None:
    told = example.told(tmp_path)
    assert [(path, value) for path, _, value in told] == [(path, promised) for path, promised, _ in told]


@pytest.mark.parametrize("example", EXAMPLES)
def test_an_example_without_problems_is_in_its_usual_form(example: Example) -> None:
    if not example.expected:
        assert format_text(Source("example.block", example.text)) == example.text


def test_every_problem_has_a_page_and_every_page_a_problem() -> None:
    assert [page.stem for page in PROBLEM_PAGES] == sorted(CATALOGUE)


@pytest.mark.parametrize("page", PROBLEM_PAGES, ids=lambda page: page.stem)
def test_the_bad_example_has_the_problem_and_the_fixed_one_has_none(page: Path, tmp_path: Path) -> None:
    bad, fixed = examples(page)
    assert (bad.heading, fixed.heading) == ("A bad example", "How to fix it")
    assert [code for _, code in bad.expected if code != "line-unknown" or page.stem == code] == [page.stem]
    assert bad.problems(tmp_path) == bad.expected
    assert fixed.problems(tmp_path) == []


@pytest.mark.parametrize("page", PROBLEM_PAGES, ids=lambda page: page.stem)
def test_a_page_begins_with_what_the_catalogue_says(page: Path) -> None:
    title, _, severity, _, meaning, *_ = page.read_text(encoding="utf-8").split("\n")
    entry = CATALOGUE[page.stem]
    assert title == f"# {page.stem}"
    assert severity == ("An error." if entry.severity == "error" else "A warning.")
    assert meaning == entry.meaning
