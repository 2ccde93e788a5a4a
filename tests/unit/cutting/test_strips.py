"""Strips for strip sets: as long as their segments and squaring up take, and no longer than the fabric is wide.

The rule: 1 in for the set, 1/2 in each time it is squared up again, after every third segment but not after the last;
2.5 and 1.5 cm. Common practice, no source.
"""

import pytest

from blockdsl.cutting.squaring import squaring, times_squared_again
from blockdsl.geometry.fraction import read_fraction
from blockdsl.model.fabric import RulerUnit
from tests.unit.model.blocks import block, cut_lines, read

RAILS = "(rails fog slate moss)"


def strips(width: str, *rows: str, size: str) -> list[str]:
    cloth = "".join(
        f'fabric {name} "{name}" {colour} {width}\n' for name, colour in [("fog", "#ffffff"), ("sea", "#203040")]
    )
    lines = "".join(f"  {row}\n" for row in rows)
    facts, problems = read(f'{cloth}block "B"\n  size {size}\n{lines}')
    assert problems == []
    return cut_lines(facts.blocks[0])


def test_what_does_not_fit_across_the_fabric_goes_into_another_strip() -> None:
    # five segments of 6 1/2 in are 32 1/2, squared up twice 34; six would be 40 1/2. Two more are 13 + 1
    facts = block(f"row {' '.join([RAILS] * 7)}", "make rails as strip set", size="42 x 6 in")
    assert cut_lines(facts, "fog") == ["fog: 1 strip 2 1/2 x 34 for 5", "fog: 1 strip 2 1/2 x 14 for 2"]


def test_full_strips_are_counted_together() -> None:
    # fourteen are five, five and four; four are 26 + 1 1/2
    facts = block(*[f"row {' '.join([RAILS] * 7)}"] * 2, "make rails as strip set", size="42 x 12 in")
    assert cut_lines(facts, "fog") == ["fog: 2 strip 2 1/2 x 34 for 10", "fog: 1 strip 2 1/2 x 27 1/2 for 4"]


def test_a_narrow_fabric_gives_shorter_strips() -> None:
    # 22 in less 2 in of selvages hold two segments of 6 1/2 in: three are 19 1/2 + 1
    found = strips("width 22 in", "row " + "(rails fog sea) " * 4, "make rails as strip set", size="24 x 6 in")
    assert found == ["fog: 2 strip 3 1/2 x 14 for 4", "sea: 2 strip 3 1/2 x 14 for 4"]


def test_a_fabric_measured_in_centimetres_serves_a_block_in_inches() -> None:
    # 112 cm less 5 cm are 42.1 in: six segments of 6 1/2 in, and 1 1/2 in
    found = strips("width 112 cm", "row " + "(rails fog sea) " * 6, "make rails as strip set", size="36 x 6 in")
    assert found == ["fog: 1 strip 3 1/2 x 40 1/2 for 6", "sea: 1 strip 3 1/2 x 40 1/2 for 6"]


def test_metric_strips_fit_a_metre_of_fabric() -> None:
    # bands of 5 cm cut 6.5; segments of 10 cm cut 11.5: eight are 92 cm, squared up again twice 97.5
    found = strips("", "row " + "(rails fog sea) " * 9, "make rails as strip set", size="90 x 10 cm")
    assert found[:2] == ["fog: 1 strip 6 1/2 x 97 1/2 for 8", "fog: 1 strip 6 1/2 x 14 for 1"]


def test_bars_and_rails_turned_are_one_strip_set() -> None:
    found = strips(
        "", "row (rails fog sea) (bars fog sea)", "make rails as strip set", "make bars as strip set", size="12 x 6 in"
    )
    assert found == ["fog: 1 strip 3 1/2 x 14 for 2", "sea: 1 strip 3 1/2 x 14 for 2"]


def test_a_fabric_used_twice_in_a_set_takes_two_strips() -> None:
    found = strips("", "row (rails fog sea fog)", "make rails as strip set", size="6 in")
    assert found == ["fog: 2 strip 2 1/2 x 7 1/2 for 1", "sea: 1 strip 2 1/2 x 7 1/2 for 1"]


@pytest.mark.parametrize(("segments", "times"), [(1, 0), (3, 0), (4, 1), (6, 1), (7, 2), (9, 2), (10, 3)])
def test_a_set_is_squared_up_again_after_every_third_segment_but_not_after_the_last(segments: int, times: int) -> None:
    assert times_squared_again(segments) == times


@pytest.mark.parametrize(("unit", "lost"), [("in", "5/2"), ("cm", "7")])
def test_ten_segments_lose_the_first_squaring_and_three_more(unit: RulerUnit, lost: str) -> None:
    # 1 + 3 × 1/2 in; 2.5 + 3 × 1.5 cm
    assert squaring(10, unit) == read_fraction(lost)


def test_a_set_gives_a_segment_or_more() -> None:
    with pytest.raises(ValueError, match="a segment or more"):
        times_squared_again(0)


def test_segments_that_would_just_fill_the_cloth_leave_nothing_to_square_up() -> None:
    # eight segments of 5 in are 40 in of 40: seven are 35 + 1 + 2 × 1/2 = 37, the eighth is 5 + 1
    facts = block(f"row {' '.join(['(rails fog slate)'] * 8)}", "make rails as strip set", size="36 x 4 1/2 in")
    assert cut_lines(facts, "fog") == ["fog: 1 strip 2 3/4 x 37 for 7", "fog: 1 strip 2 3/4 x 6 for 1"]


def test_the_strips_of_rip_current_are_those_of_the_worked_example() -> None:
    # 4 × 6 1/2 + 1 + 1/2 = 27 1/2
    facts = block("row" + " (rails fog slate moss)" * 4, "make rails as strip set", size="24 x 3 in")
    assert cut_lines(facts, "fog") == ["fog: 1 strip 1 1/2 x 27 1/2 for 4"]


def test_the_strips_of_a_double_nine_patch_are_those_of_the_worked_example() -> None:
    # 10 × 1 1/2 + 1 + 3 × 1/2 = 17 1/2; 5 × 1 1/2 + 1 + 1/2 = 9
    facts = block("row" + " (checker 3 x 3 fog slate)" * 5, "make checker as strip set", size="15 x 3 in")
    assert cut_lines(facts) == [
        "fog: 2 strip 1 1/2 x 17 1/2 for 10",
        "fog: 1 strip 1 1/2 x 9 for 5",
        "slate: 1 strip 1 1/2 x 17 1/2 for 10",
        "slate: 2 strip 1 1/2 x 9 for 5",
    ]


def test_a_set_cut_at_45_degrees_loses_as_much_square_to_the_cuts() -> None:
    # Strips of 1 5/8 in give eight segments as wide: along the strip 8 × 1.625 × 1.41421 = 18.3848, the slanted end
    # 1.625, and squaring up three times (1 + 2 × 1/2) × 1.41421 = 2.8284. Together 22.8382, on the ruler 22 7/8.
    facts = block("row (star45 points fog slate rows 3 ground moss)", "make star45 as strip set", size="16 in")
    assert cut_lines(facts, "fog") == ["fog: 5 strip 1 5/8 x 22 7/8 for 24"]
