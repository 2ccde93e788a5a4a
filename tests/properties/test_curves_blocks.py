"""Whatever is drawn of curves: areas add up, turns change nothing, no triangle is taken for a quarter circle."""

from __future__ import annotations

from collections import Counter

from hypothesis import given, settings
from hypothesis import strategies as st

from blockdsl.facts import BlockFacts
from blockdsl.geometry.arc import CurvedArea
from blockdsl.geometry.fraction import Fraction
from tests.unit.model.blocks import CLOTH, block_of

shares = st.sampled_from(["1/2", "5/8", "2/3", "3/4", "7/8"])
turns = st.sampled_from(["", ">", "<", ">>", "~", "~>"])
cells = st.one_of(
    st.builds("(curve {} in {} radius {}){}".format, *[st.sampled_from(["fog", "slate"])] * 2, shares, turns),
    st.builds("(fan fog slate fog on lantern radius {}){}".format, shares, turns),
    st.builds("(fan fog slate fog slate fog slate on lantern handle slate 1/4 radius {}){}".format, shares, turns),
    st.builds("(fan slate fog on fog handle fog 1/3){}".format, turns),
    st.sampled_from(["fog/slate", "fog", "(quarters fog slate fog lantern)"]),
)
squares = st.lists(cells, min_size=4, max_size=4)


def drawn(four: list[str], whole_turn: str = "") -> BlockFacts:
    """Two by two cells as a unit that is laid with a turn."""
    one, two, three, four_ = four
    unit = f"unit whole\n  row {one} {two}\n  row {three} {four_}\n"
    return block_of(f'{CLOTH}\n{unit}block "Any"\n  size 12 in\n  row whole{whole_turn}\n')


def cloth(facts: BlockFacts) -> Counter[object]:
    """What is cut, without letters."""
    return Counter((cut.fabric, cut.piece, cut.cut, cut.count, cut.subcut) for cut in facts.cutting)


@given(squares)
@settings(max_examples=10)
def test_the_areas_of_curved_patches_add_up_to_the_block(four: list[str]) -> None:
    total = CurvedArea(Fraction(0), Fraction(0))
    for _, part in drawn(four).area_by_fabric:
        total = total + part
    assert total == CurvedArea(Fraction(144), Fraction(0))


@given(squares)
@settings(max_examples=10)
def test_four_quarter_turns_of_curves_are_nothing(four: list[str]) -> None:
    assert drawn(four, ">>>>").placed == drawn(four).placed
    assert drawn(four, "~~").placed == drawn(four).placed


@given(squares, st.sampled_from([">", ">>", "~"]))
@settings(max_examples=10)
def test_a_turned_block_of_curves_takes_the_same_cloth_and_the_same_seams(four: list[str], turn: str) -> None:
    plain, turned = drawn(four), drawn(four, turn)
    assert cloth(turned) == cloth(plain)
    assert turned.seams == plain.seams


@given(squares)
@settings(max_examples=10)
def test_patches_of_one_letter_are_all_curved_or_all_straight(four: list[str]) -> None:
    by_letter: dict[str, set[bool]] = {}
    for patch in drawn(four).placed:
        by_letter.setdefault(patch.label, set()).add(patch.curved is not None)
    assert all(len(kinds) == 1 for kinds in by_letter.values())


@given(squares)
@settings(max_examples=8)
def test_every_curve_is_sewn_by_a_curved_seam_of_its_own(four: list[str]) -> None:
    """One for each quarter circle, one more for each handle."""
    seams = drawn(four).seams
    assert seams is not None
    text = " ".join(four)
    assert seams.curved == text.count("(curve") + text.count("(fan") + text.count("handle")
