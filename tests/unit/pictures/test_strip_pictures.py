"""Pictures of cuts at an angle and the words beside them: what a beginner must see before she lays the ruler."""

from __future__ import annotations

from collections.abc import Iterable

import pytest

from blockdsl.document.cutting import cuts_at_an_angle
from blockdsl.facts import BlockFacts
from blockdsl.marks.display_list import Figure, Mark, Path, TextMark
from blockdsl.marks.theme import CONTENT_WIDTH_PT
from blockdsl.page.flow import Flowable
from blockdsl.page.parts import flowables
from blockdsl.pictures.strip import cut_lines
from blockdsl.wording import messages
from blockdsl.wording.sheet import format_subcut
from tests.unit.model.blocks import block

PARALLELOGRAM = (
    "grid 6 x 2",
    "patch fog at 0,0 2,0 0,2",
    "patch slate at 2,0 5,0 3,2 0,2",
    "patch moss at 5,0 6,0 6,2 3,2",
)
SKINNY = ("grid 4 x 4", "patch fog at 0,0 2,0 0,4", "patch slate at 2,0 4,4 0,4", "patch fog at 2,0 4,0 4,4")
TRIANGLE = (
    "grid 4 x 3",
    "patch fog at 0,0 r3,0 0,3",
    "patch slate at r3,0 2r3,3 0,3",
    "patch fog at r3,0 4,0 4,3 2r3,3",
)


def all_marks(marks: Iterable[Mark]) -> Iterable[Mark]:
    for mark in marks:
        yield mark
        if isinstance(mark, Figure):
            yield from all_marks(mark.marks)


def strip_pictures(facts: BlockFacts) -> list[Flowable]:
    """The section on cuts at an angle, on paper."""
    return flowables(cuts_at_an_angle(facts, 2), messages())


def figures(facts: BlockFacts) -> list[Figure]:
    return [mark for each in strip_pictures(facts) for mark in each.marks if isinstance(mark, Figure)]


def test_a_block_of_square_cuts_has_no_such_pictures() -> None:
    assert strip_pictures(block("row fog/slate slate", size="6 x 3 in")) == []


def test_each_way_of_cutting_is_shown_once_and_told_to_those_who_cannot_see_it() -> None:
    told = [figure.alternative for figure in figures(block(*SKINNY, size="4 in"))]
    lies = "short side down, one layer, right side up: cut once"
    assert told == [
        f"Cutting A: {lies} from lower left to upper right.",
        f"Cutting Ar: {lies} from upper left to lower right (the opposite way from A).",
    ]


def test_the_measures_of_the_ruler_stand_in_the_picture() -> None:
    facts = block(*PARALLELOGRAM, size="6 x 2 in")
    (figure,) = [each for each in figures(facts) if each.alternative.startswith("Cutting B")]
    words = [mark.text for mark in all_marks(figure.marks) if isinstance(mark, TextMark)]
    # 3 in at 45° is 2.1213 in across, 2.6213 with its seams
    assert words == ["2 ¹⁄₂", "2 ⁵⁄₈", "45°"]


@pytest.mark.parametrize("rows", [PARALLELOGRAM, SKINNY, TRIANGLE])
@pytest.mark.parametrize("size", ["6 in", "24 in", "60 cm"])
def test_no_picture_leaves_the_page_or_its_own_slice(rows: tuple[str, ...], size: str) -> None:
    _, wide, _, high = rows[0].split()
    number, unit = size.split()
    facts = block(*rows, size=f"{int(number) * int(wide)}/{high} x {number} {unit}")
    for each in strip_pictures(facts):
        for mark in all_marks(each.marks):
            if isinstance(mark, Path):
                for x, y in (spot for ring in mark.rings for spot in ring):
                    assert -0.1 <= x <= CONTENT_WIDTH_PT + 0.1
                    assert -0.1 <= y <= each.height_pt + 0.1


def test_triangles_of_60_degrees_meet_on_the_edges_of_their_strip() -> None:
    (cut,) = [cut for cut in block(*TRIANGLE, size="4 x 3 in").cutting if cut.fabric == "slate"]
    assert cut.strip is not None
    first, second = cut_lines(cut.strip, 9)
    # strip 3 3/4 in wide: its edges are 3 3/4 × 2/√3 = 4.330 in, half of that on each side of the tip
    assert first == pytest.approx((0, 2.16506), abs=1e-4)
    assert second == pytest.approx((4.33013, 2.16506), abs=1e-4)


def test_the_table_says_how_many_strips_at_what_angle_and_how_far_apart() -> None:
    facts = block(*PARALLELOGRAM, size="6 x 2 in")
    (cut,) = [cut for cut in facts.cutting if cut.fabric == "slate"]
    assert format_subcut(cut, "in", messages()) == (
        "from a strip 2 1/2 × 6 1/4 in, cut at 45° every 2 5/8 in, one layer, right side up"
    )  # 2 5/8 × √2 + 2 1/2 = 6.2123


def test_a_single_trapezoid_is_told_by_its_ends() -> None:
    # as a published list has it: "2 5/16 x 6 5/8 (ends cut at 45)"
    rows = ("grid 6 x 2", "patch fog at 0,0 2,0 0,2", "patch slate at 2,0 4,0 6,2 0,2", "patch moss at 4,0 6,0 6,2")
    (cut,) = [cut for cut in block(*rows, size="6 x 2 in").cutting if cut.fabric == "slate"]
    # 6 in + 2 × 1/4 (1 + √2) = 7.2071
    assert format_subcut(cut, "in", messages()) == "from a strip 2 1/2 × 7 1/4 in, both ends cut at 45°"


def test_an_octagon_is_shown_as_a_square_with_its_corners_to_be_cut_off() -> None:
    """By hand: 6 1/2 in, and 1.904 in of each corner, 1 7/8 in on the ruler."""
    facts = block("row (octagon fog with slate)", size="6 in")
    (cut,) = (cut for cut in facts.cutting if cut.fabric == "fog")
    told = "square, then cut off all four corners at 45°, 1 7/8 in from each corner along both edges"
    assert format_subcut(cut, "in", messages()) == f"cut as a {told}"
    (shown,) = figures(facts)
    assert shown.alternative == f"Cutting A: cut as a {told}."
    assert sum(isinstance(mark, Path) and bool(mark.dash) for mark in shown.marks) == 4
    assert {mark.text for mark in shown.marks if isinstance(mark, TextMark)} == {"6 ¹⁄₂", "1 ⁷⁄₈"}
