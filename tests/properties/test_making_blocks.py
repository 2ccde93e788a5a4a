"""What is made is what is needed: no patch twice, none forgotten, and what is over is told."""

from collections import Counter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from blockdsl.sewing.methods import METHODS
from tests.unit.model.any_block import AnyBlock, any_blocks
from tests.unit.model.blocks import block, block_of

WORDS = {
    "half": "half fog slate",
    "hourglass": "hourglass fog slate",
    "quarters": "quarters fog lantern slate moss",
    "split": "split fog lantern slate",
    "geese": "geese fog on lantern slate",
    "diamond": "diamond fog on slate",
    "snowball": "snowball fog with slate at tl tr",
    "rails": "rails fog lantern slate",
    "bars": "bars fog lantern slate",
    "checker": "checker 3 x 3 fog slate",
    "star45": "star45 points lantern slate rows 2 ground fog",
}
WAYS = [(method, shape) for method, recipes in METHODS.items() for shape in recipes]
SEGMENTS = {"rails": (1,), "bars": (1,), "checker": (2, 1), "star45": (8, 8)}
"""Segments that one unit takes of each of its strip sets."""


@given(any_blocks())
@settings(max_examples=12)
def test_every_patch_is_cut_by_itself_or_made_in_a_unit_and_never_both(any_block: AnyBlock) -> None:
    facts = block_of(any_block.text())
    needed = Counter(patch.fabric for patch in facts.placed)
    found: Counter[str] = Counter()
    for cut in facts.cutting:
        if not cut.unit:
            found[cut.fabric] += cut.yields - cut.spare
    for unit in facts.units:
        if unit.method != "cut patches":
            for patch in unit.picture:
                found[patch.fabric] += unit.count
    assert found == needed


@pytest.mark.parametrize(("method", "shape"), WAYS)
@given(left=st.integers(1, 9), right=st.integers(0, 5))
@settings(max_examples=8)
def test_what_a_method_gives_less_what_is_spare_is_what_the_block_needs(
    method: str, shape: str, left: int, right: int
) -> None:
    row = "row " + "one " * left + "one~ " * right
    width = (6 if shape == "geese" else 3) * (left + right)
    facts = block(row, f"make {shape} as {method}", size=f"{width} x 3 in", above=f"unit one = {WORDS[shape]}")
    assert sum(unit.count for unit in facts.units) == left + right
    for cut in facts.cutting:
        assert cut.method == method
        assert cut.unit == "one"
        if cut.piece != "strip":
            assert cut.yields - cut.spare == left + right
    strips = [cut for cut in facts.cutting if cut.piece == "strip"]
    for fabric in {cut.fabric for cut in strips}:
        given_by = sum(cut.yields for cut in strips if cut.fabric == fabric)
        assert given_by == sum(SEGMENTS[shape]) * (left + right)


@pytest.mark.parametrize(("method", "shape"), [way for way in WAYS if way[0].endswith("at a time")])
@given(left=st.integers(1, 9), right=st.integers(0, 9))
@settings(max_examples=8)
def test_no_batch_is_made_that_is_not_needed(method: str, shape: str, left: int, right: int) -> None:
    row = "row " + "one " * left + "one~ " * right
    width = (6 if shape == "geese" else 3) * (left + right)
    facts = block(row, f"make {shape} as {method}", size=f"{width} x 3 in", above=f"unit one = {WORDS[shape]}")
    # of the chiral shapes one batch of four gives two of each hand; the others come out all alike
    chiral = shape in ("quarters", "split", "geese")
    batch = {"two at a time": 2, "four at a time": 4, "eight at a time": 8}[method]
    made = 4 * -(-max(left, right) // 2) if chiral else batch * -(-(left + right) // batch)
    assert {cut.yields for cut in facts.cutting} == {made}
    if right or not chiral:
        assert sum(unit.spare for unit in facts.units) == made - left - right
