"""`expect`: the designer's own checks."""

import pytest

from tests.unit.model.blocks import errors, one_error

HALVES = ("row fog/slate fog/slate", "row slate/fog moss", "make half as cut patches")


def judged(line: str, *, size: str = "6 in") -> list[str]:
    return [problem.code for problem in errors(*HALVES, line, size=size)]


@pytest.mark.parametrize(
    "line",
    [
        "expect cut fog 2 squares 3 7/8",
        "expect cut fog 2 squares 3 7/8 once",
        "expect cut moss 1 square 3 1/2",
        "expect cut moss 1 square 3.5",
        "expect unit half 3 in",
        "expect unit half 3 x 3 in count 3",
        "expect finished 6 in",
        "expect finished 6 x 6 in",
    ],
)
def test_a_check_that_holds_says_nothing(line: str) -> None:
    assert judged(line) == []


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("expect cut fog 3 squares 3 7/8", "expect-cut"),
        ("expect cut fog 2 squares 3 3/4", "expect-cut"),
        ("expect cut fog 2 squares 3 7/8 twice", "expect-cut"),
        ("expect cut fog 2 rectangles 3 7/8 x 3 7/8", "expect-cut"),
        ("expect cut lantern 1 square 3 1/2", "expect-cut"),
        ("expect unit half 3 in count 2", "expect-unit"),
        ("expect unit half 4 in", "expect-unit"),
        ("expect unit geese 3 in", "expect-unit"),
        ("expect finished 7 in", "expect-finished"),
        ("expect finished 6 x 7 in", "expect-finished"),
    ],
)
def test_a_check_that_does_not_hold_is_an_error(line: str, code: str) -> None:
    assert judged(line) == [code]


def test_both_values_are_given() -> None:
    finished = one_error(*HALVES, "expect finished 7 in", size="6 in")
    assert "7 in" in finished.message
    assert "6 in" in finished.message
    unit = one_error(*HALVES, "expect unit half 3 in count 2", size="6 in")
    assert "count 2" in unit.message
    assert "count 3" in unit.message
    cut = one_error(*HALVES, "expect cut fog 3 squares 3 7/8", size="6 in")
    assert "fog 3 squares 3 7/8" in cut.message
    assert "2 of them" in cut.message
    assert "2 squares 3 7/8 once" in (cut.help or "")


def test_a_rectangle_may_be_written_either_way_round() -> None:
    for size in ("3 1/2 x 6 1/2", "6 1/2 x 3 1/2"):
        assert errors("row fog", f"expect cut fog 1 rectangle {size}", size="6 x 3 in") == []


def test_a_strip_is_checked_by_width_and_length() -> None:
    rows = ("row (rails fog slate)", "make rails as strip set")
    assert errors(*rows, "expect cut fog 1 strip 3 1/2 x 7 1/2", size="6 in") == []


def test_both_lines_of_a_fabric_cut_to_one_size_count_together() -> None:
    # one corner cut by itself and one out of a batch are both 3 7/8 in
    above = "unit left = half fog slate"
    rows = ("row left fog/moss", "row moss moss", "make left as two at a time", "expect cut fog 2 squares 3 7/8")
    assert errors(*rows, size="6 in", above=above) == []


def test_inches_are_never_taken_for_centimetres() -> None:
    problem = one_error("row fog", "expect finished 12 in", size="12 cm")
    assert problem.code == "expect-finished"
    # 12 in are 30.48 cm
    assert "30.48 cm" in problem.message
    assert one_error("row fog/slate", "expect unit half 12 in", size="12 cm").code == "expect-unit"


def test_millimetres_and_centimetres_agree() -> None:
    assert errors("row fog", "expect finished 300 mm", size="30 cm") == []


def test_a_unit_is_checked_by_its_own_name() -> None:
    above = "unit beam = geese lantern on fog"
    assert errors("row beam", "expect unit beam 6 x 3 in count 1", size="6 x 3 in", above=above) == []
    assert one_error("row beam", "expect unit geese 6 x 3 in", size="6 x 3 in", above=above).code == "expect-unit"


def test_a_turned_unit_is_checked_lying_or_standing() -> None:
    for size in ("6 x 3", "3 x 6"):
        assert errors("row (geese lantern on fog)>", f"expect unit geese {size} in", size="3 x 6 in") == []


def test_mirror_images_are_counted_with_the_unit() -> None:
    rows = ("row (split fog slate moss) (split fog slate moss)~", "expect unit split 3 in count 2")
    assert errors(*rows, size="6 x 3 in") == []
