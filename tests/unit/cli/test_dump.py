"""`dump`: each boundary between the layers can be looked at."""

from pathlib import Path

import pytest

from blockdsl.cli.arguments import STAGES
from tests.unit.cli.pinwheel import Run, spoil

SHOWN = {
    "tree": "RawLine",
    "ast": "BlockDeclaration",
    "model": "BlockDesign",
    "making": "Making",
    "cuts": "CutFacts",
    "sheet": "Document",
}


@pytest.mark.parametrize("stage", STAGES)
def test_each_stage_shows_its_own_type_and_no_address_in_memory(folder: Path, run: Run, stage: str) -> None:
    ended = run("dump", stage, "pinwheel.block")

    assert (ended.status, ended.told) == (0, "")
    assert SHOWN[stage] in ended.out
    assert "object at 0x" not in ended.out


def test_the_cuts_are_the_exact_ones_beside_those_on_the_ruler(folder: Path, run: Run) -> None:
    """By hand: 3 in + (2 + √2)/4 in is 7/2 + √2/4, cut 3 7/8 = 31/8."""
    shown = run("dump", "cuts", "pinwheel.block").out

    assert "cut: (31/8, 31/8)" in shown
    assert "((1, 7/2), (2, 1/4))" in shown


def test_a_file_with_a_slip_is_shown_as_far_as_it_goes(folder: Path, run: Run) -> None:
    spoil(folder / "pinwheel.block")

    ended = run("dump", "ast", "pinwheel.block")
    after = run("dump", "model", "pinwheel.block")

    assert (ended.status, after.status) == (0, 1)
    assert "frog" in ended.out
    assert "error[name-unknown]" in after.told
