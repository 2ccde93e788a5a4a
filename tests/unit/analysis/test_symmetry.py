"""Whether a block is symmetric, and which cell keeps it from being so."""

from __future__ import annotations

from random import Random

import pytest

from blockdsl.analysis import TextReader, analyse
from blockdsl.diagnostics import Problems, Source
from blockdsl.resources import library_names, library_path
from blockdsl.syntax.block_lines import SYMMETRIES

HEAD = 'fabric fog "Fog" #dddddd\nfabric slate "Slate" #445566\n\nblock "Lights"\n  size 6 in\n'
STAR = (
    "fog       fog/slate   fog/slate>   fog",
    "fog/slate  slate       slate        fog/slate>",
    "fog/slate< slate       slate        fog/slate>>",
    "fog       fog/slate<  fog/slate>>  fog",
)


def problems_of(text: str) -> list[tuple[int, str]]:
    """Line and code of each problem."""
    source, problems = Source("lights.block", text), Problems()
    analyse(source, TextReader(), problems)
    return [(source.position(problem.span.start)[0], problem.code) for problem in problems]


def grid(rows: list[list[str]]) -> str:
    return HEAD + "".join(f"  row {'  '.join(row)}\n" for row in rows)


@pytest.mark.parametrize("seed", range(24))
def test_a_cell_turned_the_wrong_way_is_found_where_it_is(seed: int) -> None:
    """In a star that is symmetric in every way, any half square turned by lot is the one that is named."""
    rows = [row.split() for row in STAR]
    assert problems_of(grid(rows)) == []
    chance = Random(seed)  # noqa: S311
    turned = [(row, column) for row in range(4) for column in range(4) if "/" in rows[row][column]]
    row, column = chance.choice(turned)
    rows[row][column] += chance.choice((">", "<", ">>"))
    problems = Problems()
    source = Source("lights.block", grid(rows))
    analyse(source, TextReader(), problems)
    (found,) = problems
    assert found.code == "symmetry-broken"
    assert found.span.text == rows[row][column]
    assert source.position(found.span.start)[0] == 6 + row


def test_a_cell_of_another_fabric_is_found() -> None:
    rows = [row.split() for row in STAR]
    rows[3][3] = "slate"
    assert problems_of(grid(rows)) == [(9, "symmetry-broken")]


def test_two_cells_that_differ_are_meant_so() -> None:
    rows = [row.split() for row in STAR]
    rows[0][0] = rows[3][3] = "slate"
    assert problems_of(grid(rows)) == []


def test_no_block_of_the_library_is_taken_for_a_slip() -> None:
    for name in library_names():
        problems = Problems()
        analyse(Source(f"library/{name}.block", library_path(name).read_text("utf-8")), TextReader(), problems)
        assert "symmetry-broken" not in {problem.code for problem in problems}


@pytest.mark.parametrize(
    ("line", "found"),
    [
        ("expect symmetric", []),
        ("expect symmetric by quarter turn", []),
        ("expect symmetric by half turn", []),
        ("expect symmetric left to right", []),
        ("expect symmetric top to bottom", []),
        ("expect symmetric by turns", ["symmetry-unknown"]),
        ("expect symmetric left", ["symmetry-unknown"]),
        ("expect symmetry", ["word-unexpected"]),
        ("expect no", ["line-ends-early"]),
        ("expect no symmetric", ["word-unexpected"]),
    ],
)
def test_the_words_of_the_line(line: str, found: list[str]) -> None:
    text = grid([row.split() for row in STAR]) + f"  {line}\n"
    assert [code for _, code in problems_of(text)] == found


@pytest.mark.parametrize(
    ("rows", "holds"),
    [
        ((r"fog\slate fog\slate>", r"fog\slate< fog\slate>>"), {"by quarter turn", "by half turn"}),
        (("fog/slate fog/slate>", "fog/slate< fog/slate>>"), set(SYMMETRIES)),
        (("fog slate", "slate fog"), {"by half turn"}),
        (("fog slate", "fog slate"), {"top to bottom"}),
        (("fog fog", "slate slate"), {"left to right"}),
        (("fog fog", "fog slate"), set()),
    ],
)  # fmt: skip
def test_what_holds_is_worked_out_by_hand(rows: tuple[str, ...], holds: set[str]) -> None:
    for way in SYMMETRIES:
        text = grid([row.split() for row in rows]) + f"  expect symmetric {way}\n"
        found = [code for _, code in problems_of(text)]
        assert found == ([] if way in holds else ["expect-symmetric"]), way


def test_an_oblong_block_is_never_the_same_after_a_quarter_turn() -> None:
    text = HEAD.replace("6 in", "6 x 3 in") + "  row slate  fog  slate\n  expect symmetric{}\n"
    assert [code for _, code in problems_of(text.format(""))] == []
    assert [code for _, code in problems_of(text.format(" by quarter turn"))] == ["expect-symmetric"]
