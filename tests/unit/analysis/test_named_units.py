"""Named units: nested, turned, and refused when they go round in a ring or too deep."""

import pytest

from tests.unit.model.blocks import block, cloth_at, errors, exactly, one_error, read

LIGHT = """
fabric fog     "Harbour fog"  #dfe3e0 light
fabric lantern "Lantern"      #e0a030 medium
fabric slate   "Wet slate"    #3a4750 dark

unit beam = geese lantern on fog

unit corner
  row fog          fog/lantern
  row fog/lantern  slate

block "Harbour Light"
  size 12 in
  columns 1 2 1
  heights 1 2 1
  row corner   beam                     corner>
  row beam<    (hourglass lantern fog)  beam>
  row corner<  beam>>                   corner>>
"""


def test_the_block_of_the_language_page_lies_as_the_page_says() -> None:
    facts, problems = read(LIGHT)
    assert problems == []
    light = facts.blocks[0]
    assert light.grid == (4, 4)
    assert exactly(light.cell) == (3, 3)
    # the beams point outward
    assert [cloth_at(light, *place) for place in ((6.01, 0.1), (11.9, 6.01), (6.01, 11.9), (0.1, 6.01))] == [
        "lantern"
    ] * 4
    assert [cloth_at(light, *place) for place in ((3.2, 0.1), (8.8, 0.1), (0.1, 3.2), (11.9, 8.8))] == ["fog"] * 4
    # the slate squares meet the centre
    assert [cloth_at(light, *place) for place in ((2.9, 2.9), (9.1, 2.9), (2.9, 9.1), (9.1, 9.1))] == ["slate"] * 4
    # the hourglass stands upright
    assert cloth_at(light, 6.01, 3.2) == "lantern"
    assert cloth_at(light, 3.2, 6.01) == "fog"


def test_the_areas_of_the_block_of_the_language_page() -> None:
    # by hand: corners 18 fog, 9 lantern, 9 slate; beams 36 and 36; hourglass 18 and 18
    light = read(LIGHT)[0].blocks[0]
    assert dict(light.area_by_fabric) == {"fog": 72, "lantern": 63, "slate": 9}
    assert light.cover.area == 144


def test_units_may_be_declared_below_the_block_that_uses_them() -> None:
    after = (
        LIGHT[: LIGHT.index("unit beam")]
        + LIGHT[LIGHT.index("block") :]
        + LIGHT[LIGHT.index("unit beam") : LIGHT.index("block")]
    )
    assert read(after)[0].blocks[0].placed == read(LIGHT)[0].blocks[0].placed


def test_a_unit_within_a_turned_unit_turns_with_it() -> None:
    above = "unit wing = geese lantern on fog slate\nunit pair\n  columns 2\n  row wing\n  row wing~"
    plain, turned = block("row pair", above=above), block("row pair>", above=above)
    # upright: fog top left, slate top right; turned clockwise: fog top right, slate bottom right
    assert cloth_at(plain, 0.1, 0.05) == "fog"
    assert cloth_at(plain, 11.9, 0.05) == "slate"
    assert cloth_at(turned, 11.95, 0.1) == "fog"
    assert cloth_at(turned, 11.95, 11.9) == "slate"


def test_two_half_turned_units_make_the_block_that_one_draws() -> None:
    above = "unit one = half fog slate\nunit two\n  row one>"
    assert block("row two>", above=above).placed[0].outline == block("row fog/slate>>").placed[0].outline


def test_a_unit_grows_with_its_cell() -> None:
    facts = block(
        "columns 1 2", "heights 2 1", "row fog one", "row one fog", size="9 in", above="unit one = half fog slate"
    )
    assert exactly(sorted(unit.finished for unit in facts.units)) == [(3, 3), (6, 6)]


def test_a_unit_of_rows_that_is_not_square_keeps_its_proportion() -> None:
    above = "unit strip\n  columns 1 2\n  row fog slate"
    assert errors("row strip", size="9 x 3 in", above=above) == []
    problem = one_error("row strip", size="9 in", above=above)
    assert problem.code == "unit-does-not-fit"
    assert "3 : 1" in problem.message


def test_a_unit_made_of_itself_is_told_by_which_way() -> None:
    above = "unit one\n  row two\nunit two\n  row three\nunit three\n  row one"
    problem = one_error("row one", above=above)
    assert problem.code == "unit-cycle"
    assert "one → two → three → one" in (problem.help or "")


def nested(depth: int) -> str:
    inner = [f"unit u{number}\n  row u{number + 1}" for number in range(1, depth)]
    return "\n".join([*inner, f"unit u{depth}\n  row fog slate\n  row slate fog"])


def test_units_lie_up_to_thirty_two_deep() -> None:
    assert errors("row u1", above=nested(32)) == []
    assert one_error("row u1", above=nested(33)).code == "nesting-too-deep"


def test_more_than_a_hundred_thousand_patches_are_refused() -> None:
    # 100 cells of 32 x 32 patches each are 102,400
    row = "row " + "fine " * 10
    assert one_error(*[row] * 10, above="unit fine = checker 32 x 32 fog slate").code == "too-many-patches"


def test_units_that_multiply_are_refused_before_they_are_laid() -> None:
    levels = [f"unit u{number}\n" + f"  row {f'u{number + 1} ' * 10}\n" * 10 for number in range(1, 12)]
    above = "\n".join([*levels, "unit u12 = checker 200 x 200 fog slate"])
    assert one_error("row u1", above=above).code == "too-many-patches"


@pytest.mark.parametrize("cell", ["corner/slate", "(half corner slate)"])
def test_a_shape_is_made_of_fabrics_not_of_units(cell: str) -> None:
    problem = one_error(f"row {cell}", above="unit corner = half fog slate")
    assert problem.code == "name-unknown"
    assert "is a unit" in (problem.help or "")
