"""The pictures of the steps are true: seams an allowance away, halves that match, units of the right size."""

import pytest

from blockdsl.geometry import Exact, Point, Polygon, sign
from blockdsl.geometry.fraction import Fraction, read_fraction
from blockdsl.geometry.polygon import area, bounding_box
from blockdsl.sewing.techniques import LESSONS, Measures
from blockdsl.sewing.techniques.cloth import at, clipped, outline, reflected, rising, trimmed
from blockdsl.sewing.techniques.corners import corner_by_corner
from blockdsl.sewing.techniques.geese import opened_goose
from blockdsl.sewing.techniques.halves import opened_half
from blockdsl.sewing.techniques.quarters import HOURGLASS, QUARTERS, SPLIT, Roles, opened_quarters
from blockdsl.sewing.techniques.scene import Cutting, Line, Measured, SceneCloth, SceneDot, ScenePicture

QUARTER = Fraction(1, 4)


def squared(start: Point, end: Point) -> Exact:
    across, down = end.x - start.x, end.y - start.y
    return across * across + down * down


def distance_squared(place: Point, line: Line) -> Exact:
    dx, dy = line.end.x - line.start.x, line.end.y - line.start.y
    cross = dx * (place.y - line.start.y) - dy * (place.x - line.start.x)
    return cross * cross / squared(line.start, line.end)


def measures(width: int, height: int, cuts: dict[int, tuple[str, int]], **more: object) -> Measures:
    pieces = {role: ((Fraction(side), Fraction(side)), count) for role, (side, count) in cuts.items()}
    return Measures("in", QUARTER, (Fraction(width), Fraction(height)), pieces, **more)  # type: ignore[arg-type]


HALF = measures(3, 3, {0: ("31/8", 1), 1: ("31/8", 1)}, dark=frozenset({1}))
GOOSE = measures(6, 3, {0: ("29/4", 1), 1: ("31/8", 4)}, dark=frozenset({0}))


def test_both_seams_lie_a_quarter_inch_from_the_line_that_is_cut() -> None:
    sewn_step = LESSONS["two at a time"].topics["half"].steps(HALF)[2]
    lines = [item for item in sewn_step.pictures[0].items if isinstance(item, Line)]
    (drawn,) = [line for line in lines if line.kind == "drawn"]
    sewn = [line for line in lines if line.kind == "sewn"]
    assert len(sewn) == 2
    for seam in sewn:
        for end in (seam.start, seam.end):
            assert distance_squared(end, drawn) == QUARTER * QUARTER


def test_a_line_shifted_past_the_corner_still_runs_from_edge_to_edge() -> None:
    for shift in (Fraction(-1), Fraction(0), Fraction(1)):
        line = rising("sewn", Fraction(4), shift)
        for end in (line.start, line.end):
            assert end.x in {0, 4} or end.y in {0, 4}


def test_a_triangle_folded_over_its_long_edge_completes_the_square() -> None:
    folded = reflected(outline((0, 0), (4, 0), (0, 4)), (at(Fraction(0), Fraction(4)), at(Fraction(4), Fraction(0))))
    assert set(folded) == set(outline((4, 4), (4, 0), (0, 4)))


def test_a_square_clipped_along_its_diagonal_leaves_half_of_it() -> None:
    square = outline((0, 0), (4, 0), (4, 4), (0, 4))
    assert area(clipped(square, (square[3], square[1]))) == 8


def extent(cloths: tuple[SceneCloth, ...]) -> tuple[Exact, Exact]:
    boxes = [bounding_box(cloth.outline) for cloth in cloths]
    width = max(box[2] for box in boxes) - min(box[0] for box in boxes)
    return width, max(box[3] for box in boxes) - min(box[1] for box in boxes)


def seen(cloths: tuple[SceneCloth, ...]) -> Polygon:
    return cloths[-1].outline


@pytest.mark.parametrize("dark", [0, 1])
def test_an_opened_half_square_unit_is_3_1_2_in_when_its_dog_ears_are_off(dark: int) -> None:
    opened = opened_half(measures(3, 3, {0: ("31/8", 1), 1: ("31/8", 1)}, dark=frozenset({dark})))
    width, height = extent(opened)
    assert sign(width - read_fraction("3.5")) > 0  # the ears stand out
    assert sign(height - read_fraction("3.5")) > 0
    assert extent(trimmed(opened, Fraction(3), Fraction(3), QUARTER)) == (read_fraction("3.5"), read_fraction("3.5"))


@pytest.mark.parametrize("roles", [HOURGLASS, QUARTERS, SPLIT])
def test_the_last_half_of_a_quarter_square_unit_covers_half_of_it(roles: Roles) -> None:
    opened = trimmed(opened_quarters(HALF, roles), Fraction(3), Fraction(3), QUARTER)
    assert extent(opened) == (read_fraction("3.5"), read_fraction("3.5"))
    # The right quarter, sewn last, is a quarter of the unfinished square.
    assert area(seen(opened)) == read_fraction("3.5") ** 2 / 4


def test_the_point_of_a_goose_lies_a_seam_allowance_below_the_edge() -> None:
    trimmed_goose = trimmed(opened_goose(GOOSE), Fraction(6), Fraction(3), QUARTER)
    assert extent(trimmed_goose) == (read_fraction("6.5"), read_fraction("3.5"))
    left_sky, right_sky = (set(cloth.outline) for cloth in trimmed_goose[1:])
    assert at(read_fraction("6.25"), read_fraction("3.25")) in right_sky  # the seam runs into the corner
    assert at(read_fraction("-0.25"), read_fraction("3.25")) in left_sky


def test_a_corner_flipped_over_fills_the_corner_that_was_cut_off() -> None:
    base = {0: ((read_fraction("3.5"), read_fraction("6.5")), 1), 1: ((read_fraction("3.5"), read_fraction("3.5")), 2)}
    goose = Measures("in", QUARTER, (Fraction(6), Fraction(3)), base, corners=("tl", "tr"))
    last = corner_by_corner(goose)[-1].pictures[0]
    ground, left, right = (item for item in last.items if isinstance(item, SceneCloth))
    wide, high = read_fraction("6.5"), read_fraction("3.5")
    assert set(ground.outline) == set(outline((0, 0), (wide, 0), (wide, high), (0, high)))
    assert set(left.outline) == set(outline((0, 0), (high, 0), (0, high)))
    assert set(right.outline) == set(outline((3, 0), (wide, 0), (wide, high)))


def cutting(picture: ScenePicture) -> Cutting:
    (found,) = [item for item in picture.items if isinstance(item, Cutting)]
    return found


def test_what_is_kept_lies_under_the_ruler_for_either_hand() -> None:
    base = {0: ((Fraction(4), Fraction(4)), 1), 1: ((Fraction(2), Fraction(2)), 4)}
    ball = Measures("in", QUARTER, (read_fraction("3.5"), read_fraction("3.5")), base, corners=("tl",))
    right, left = corner_by_corner(ball)[3].pictures
    # The corner is cut off at the upper left; turned by half a turn the two pictures cut from opposite ends.
    assert (right.turn_eighths - left.turn_eighths) % 8 == 4
    assert cutting(right).start == cutting(left).end


def test_the_last_picture_tells_what_the_unit_should_measure() -> None:
    for method, shape, sample in (
        ("two at a time", "half", HALF),
        ("eight at a time", "half", HALF),
        ("four at a time", "geese", GOOSE),
        ("cut patches", "geese", GOOSE),
        ("foundation", "geese", GOOSE),
        ("set-in seams", "square", HALF),
        ("partial seams", "square", HALF),
        ("cut patches", "log", HALF),
        ("cut patches", "star45", HALF),
        ("cut patches", "triangle-in-square", HALF),
    ):
        last = LESSONS[method].topics[shape].steps(sample)[-1].pictures[-1]
        told = {item.length for item in last.items if isinstance(item, Measured)}
        assert told == set(sample.unfinished), method


@pytest.mark.parametrize("method", ["set-in seams", "partial seams"])
def test_what_is_set_in_or_sewn_in_part_makes_a_whole_square(method: str) -> None:
    last = LESSONS[method].topics["square"].steps(HALF)[-1].pictures[0]
    cloths = tuple(item for item in last.items if isinstance(item, SceneCloth))
    assert extent(cloths) == HALF.unfinished


def test_a_set_in_square_is_sewn_from_the_dot_on_both_edges() -> None:
    steps = {step.key: step for step in LESSONS["set-in seams"].topics["square"].steps(HALF)}
    dots, seams = [], []
    for key in ("lesson-set-in-first", "lesson-set-in-second"):
        items = steps[key].pictures[0].items
        dots += [item.place for item in items if isinstance(item, SceneDot)]
        seams += [item.start for item in items if isinstance(item, Line) and item.kind == "sewn"]
    assert len(set(dots)) == 1
    assert seams == dots


def test_a_partial_seam_is_finished_from_before_the_dot_where_it_stopped() -> None:
    steps = {step.key: step for step in LESSONS["partial seams"].topics["square"].steps(HALF)}
    ends = []
    for key in ("lesson-partial-lay", "lesson-partial-finish"):
        items = steps[key].pictures[0].items
        (seam,) = (item for item in items if isinstance(item, Line))
        (dot,) = (item.place for item in items if isinstance(item, SceneDot))
        ends.append((seam, dot))
    (first, stop), (rest, _) = ends
    assert first.end == stop
    assert sign(rest.start.x - stop.x) > 0  # it begins where the first part is sewn already
    assert sign(rest.end.x) < 0


def test_the_first_round_of_a_log_cabin_measures_three_logs_and_two_allowances() -> None:
    """By hand: 10 in over five logs is 2 in; with four logs around the middle 3 × 2 + 2 × 1/4 = 6 1/2 in."""
    steps = {step.key: step for step in LESSONS["cut patches"].topics["log"].steps(measures(10, 10, {}))}
    told = {item.length for item in steps["lesson-log-square"].pictures[0].items if isinstance(item, Measured)}
    assert told == {read_fraction("6.5")}


def test_both_seams_of_a_mitered_corner_stop_at_one_dot_and_the_miter_begins_there() -> None:
    steps = {step.key: step for step in LESSONS["mitered corners"].topics["square"].steps(HALF)}
    found = set()
    for key, end in (("sew", "end"), ("second", "end"), ("stitch", "start")):
        items = steps[f"lesson-miter-{key}"].pictures[0].items
        (seam,) = (item for item in items if isinstance(item, Line) and item.kind == "sewn")
        found.add(seam.end if end == "end" else seam.start)
        found |= {item.place for item in items if isinstance(item, SceneDot)}
    assert len(found) == 1


def test_a_miter_is_trimmed_a_seam_allowance_outside_its_seam() -> None:
    (trimming,) = (
        step for step in LESSONS["mitered corners"].topics["square"].steps(HALF) if step.key == "lesson-miter-trim"
    )
    lines = {item.kind: item for item in trimming.pictures[0].items if isinstance(item, Line)}
    for end in (lines["cut"].start, lines["cut"].end):
        assert distance_squared(end, lines["sewn"]) == QUARTER * QUARTER


def test_the_lines_of_a_bias_strip_lie_equally_far_apart() -> None:
    (marking,) = (
        step for step in LESSONS["continuous bias"].topics["square"].steps(HALF) if step.key == "lesson-bias-mark"
    )
    lines = [item for item in marking.pictures[0].items if isinstance(item, Line)]
    downs = [line.end.y for line in lines]
    assert [line.start.y - line.end.y for line in lines] == [HALF.width] * len(lines)
    assert downs == [HALF.width * Fraction(place, 4) for place in (1, 2, 3)]
