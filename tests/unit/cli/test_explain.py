"""What a problem means, and what a word of the trade means."""

import pytest

from blockdsl.diagnostics import CATALOGUE
from tests.unit.cli.pinwheel import Run


def test_every_problem_is_listed_and_has_its_page(run: Run) -> None:
    listed = run("explain").out.splitlines()

    assert [line.split()[0] for line in listed] == sorted(CATALOGUE)
    pages = run("explain", *CATALOGUE).out
    for code in CATALOGUE:
        assert f"# {code}\n" in pages


def test_a_page_shows_a_bad_example_and_how_to_fix_it(run: Run) -> None:
    page = run("explain", "fabric-unused").out

    assert page.startswith("# fabric-unused\n")
    assert "## How to fix it" in page


def test_a_code_with_a_slip_is_answered_with_the_one_that_was_meant(run: Run) -> None:
    ended = run("explain", "fabric-unusd")

    assert (ended.status, ended.out) == (2, "")
    assert ended.told == "blockdsl: there is no problem 'fabric-unusd'; did you mean 'fabric-unused'?\n"


def test_a_word_of_the_trade_is_explained_in_the_language_asked_for(run: Run) -> None:
    assert run("terms", "Bias").out.startswith("bias\n    A direction at an angle to the threads")
    assert "quer" in run("terms", "Schrägband", "--language", "de").told + run("terms", "--language", "de").out


def test_a_word_that_the_glossary_lacks_is_answered_with_a_near_one(run: Run) -> None:
    ended = run("terms", "strip sett")

    assert ended.status == 2
    assert "did you mean 'strip set'?" in ended.told


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("chek", "x.block"), "did you mean check?"),
        (("check", "x.block", "--colr", "never"), "did you mean --color?"),
        (("check", "x.block", "--message-format", "jsn"), "did you mean json?"),
    ],
)
def test_a_slip_in_the_command_is_answered_with_the_word_that_was_meant(
    run: Run, words: tuple[str, ...], told: str
) -> None:
    ended = run(*words)

    assert ended.status == 2
    assert told in ended.told


def test_options_are_written_in_full(run: Run) -> None:
    ended = run("check", "x.block", "--quie")

    assert ended.status == 2
    assert "did you mean --quiet?" in ended.told
