"""So many blocks in rows and columns: what is found, and what is offered where nothing is."""

from __future__ import annotations

from math import isqrt

import pytest

from blockdsl import pipeline
from blockdsl.analysis import TextReader
from blockdsl.diagnostics import Problems, Source

HEAD = """fabric fog "Fog" #dddddd
fabric slate "Slate" #445566

block "Four"
  size {size}
  row fog    slate
  row slate  fog

quilt "Pier"
  set {setting} of {count} "Four"
{more}
"""


def quilt_of(setting: str, count: int, more: str = "  fill fog", size: str = "6 in") -> dict[str, int] | Problems:
    """How many of each block the quilt has when it is laid; or what is wrong with it."""
    problems = Problems()
    text = HEAD.format(setting=setting, count=count, more=more, size=size)
    facts = pipeline.run(Source("pier.block", text), TextReader(), problems).facts
    return dict(facts.quilts[0].blocks) if facts.quilts else problems


@pytest.mark.parametrize(
    ("setting", "more"),
    [("straight", ""), ("strippy", "  sash 2 in fog"), ("on point", "  fill fog"), ("dropped columns", "  fill fog")],
)
def test_a_quilt_has_as_many_blocks_as_were_asked_for_or_none_could(setting: str, more: str) -> None:
    """Laid and counted, for all numbers to sixty; those that cannot be are worked out another way, by trying all."""
    sides = [(across, down) for across in range(1, 130) for down in range(across, 3 * across + 1)]
    can_be = {
        across * down
        + ((across - 1) * (down - 1) if setting == "on point" else 0)
        - (across // 2 if setting == "dropped columns" else 0)
        for across, down in sides
    }
    for count in range(1, 61):
        found = quilt_of(setting, count, more)
        if count in can_be:
            assert found == {"Four": count}
        else:
            assert isinstance(found, Problems)
            assert [problem.code for problem in found] == ["count-cannot-be"]


@pytest.mark.parametrize("count", [1, 4, 9, 12, 24, 30, 48, 10_000])
def test_the_nearest_to_a_square_is_taken(count: int) -> None:
    text = HEAD.format(setting="straight", count=count, more="", size="1 in")
    problems = Problems()
    (quilt,) = pipeline.run(Source("pier.block", text), TextReader(), problems).facts.quilts
    across = max(each for each in range(1, isqrt(count) + 1) if count % each == 0)
    assert (quilt.across, quilt.down) == (across, count // across)


def test_an_oblong_block_is_set_so_that_the_quilt_is_upright() -> None:
    """Blocks of 8 x 4 in: 8 of them are two across and four down, 16 x 16 in."""
    text = HEAD.format(setting="straight", count=8, more="", size="8 x 4 in")
    (quilt,) = pipeline.run(Source("pier.block", text), TextReader(), Problems()).facts.quilts
    assert (quilt.across, quilt.down) == (2, 4)


@pytest.mark.parametrize(("setting", "count"), [("straight", 13), ("on point", 12)])
def test_with_alternates_the_named_block_is_counted(setting: str, count: int) -> None:
    """Straight, 13 blocks and 12 plain squares fill 5 x 5 places; on point the plain ones lie between 3 x 4."""
    assert quilt_of(setting, count, "  alternate fog" + ("\n  fill fog" if setting == "on point" else "")) == {
        "Four": count
    }


def test_a_colleague_who_asks_for_blocks_24_is_told_where_it_goes() -> None:
    text = HEAD.format(setting="straight", count=24, more="  blocks 24", size="6 in")
    problems = Problems()
    pipeline.run(Source("pier.block", text), TextReader(), problems)
    (found,) = problems
    assert "of 24" in (found.help or "")


def test_the_numbers_that_come_near_can_all_be() -> None:
    problems = quilt_of("on point", 24)
    assert isinstance(problems, Problems)
    (found,) = problems
    assert found.help == "near it there are 18 (3 × 4), 23 (3 × 5), 25 (4 × 4), 28 (3 × 6)"
    for count in (18, 23, 25, 28):
        assert quilt_of("on point", count) == {"Four": count}
