"""Strips for strip sets, as long as their segments together, and no longer than the fabric is wide."""

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
    # six segments of 6 1/2 in are 39 in of 40; the seventh takes a strip of its own
    facts = block(f"row {' '.join([RAILS] * 7)}", "make rails as strip set", size="42 x 6 in")
    assert cut_lines(facts, "fog") == ["fog: 1 strip 2 1/2 x 39 for 6", "fog: 1 strip 2 1/2 x 6 1/2 for 1"]


def test_full_strips_are_counted_together() -> None:
    facts = block(*[f"row {' '.join([RAILS] * 7)}"] * 2, "make rails as strip set", size="42 x 12 in")
    assert cut_lines(facts, "fog") == ["fog: 2 strip 2 1/2 x 39 for 12", "fog: 1 strip 2 1/2 x 13 for 2"]


def test_a_narrow_fabric_gives_shorter_strips() -> None:
    # 22 in less 2 in of selvages hold three segments of 6 1/2 in
    found = strips("width 22 in", "row " + "(rails fog sea) " * 4, "make rails as strip set", size="24 x 6 in")
    assert found[:2] == ["fog: 1 strip 3 1/2 x 19 1/2 for 3", "fog: 1 strip 3 1/2 x 6 1/2 for 1"]


def test_a_fabric_measured_in_centimetres_serves_a_block_in_inches() -> None:
    # 112 cm less 5 cm are 42.1 in: six segments of 6 1/2 in
    found = strips("width 112 cm", "row " + "(rails fog sea) " * 6, "make rails as strip set", size="36 x 6 in")
    assert found == ["fog: 1 strip 3 1/2 x 39 for 6", "sea: 1 strip 3 1/2 x 39 for 6"]


def test_metric_strips_fit_a_metre_of_fabric() -> None:
    # bands of 5 cm cut 6.5; segments of 10 cm cut 11.5: eight are 92 cm
    found = strips("", "row " + "(rails fog sea) " * 9, "make rails as strip set", size="90 x 10 cm")
    assert found[:2] == ["fog: 1 strip 6 1/2 x 92 for 8", "fog: 1 strip 6 1/2 x 11 1/2 for 1"]


def test_bars_and_rails_turned_are_one_strip_set() -> None:
    found = strips(
        "", "row (rails fog sea) (bars fog sea)", "make rails as strip set", "make bars as strip set", size="12 x 6 in"
    )
    assert found == ["fog: 1 strip 3 1/2 x 13 for 2", "sea: 1 strip 3 1/2 x 13 for 2"]


def test_a_fabric_used_twice_in_a_set_takes_two_strips() -> None:
    found = strips("", "row (rails fog sea fog)", "make rails as strip set", size="6 in")
    assert found == ["fog: 2 strip 2 1/2 x 6 1/2 for 1", "sea: 1 strip 2 1/2 x 6 1/2 for 1"]
