"""Pictures of blocks: letters inside their patches, fabrics as they are named, marks batched."""

import time

import pytest
from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.display_list import Figure, Path, TextMark
from blockdsl.marks.theme import Box
from blockdsl.marks.typeset import CAP_HEIGHT, measure
from blockdsl.pictures.block import block_picture, fabrics_of, grid_diagram, letter_diagram, unit_picture
from blockdsl.pictures.placing import middle, toward_side
from blockdsl.wording import messages
from tests.unit.pictures import sample

BOX = Box(20, 30, 300, 300)


def words(figure: Figure) -> list[TextMark]:
    return [mark for mark in figure.marks if isinstance(mark, TextMark)]


def paths(figure: Figure) -> list[Path]:
    return [mark for mark in figure.marks if isinstance(mark, Path)]


def holds(ring: tuple[tuple[float, float], ...], x: float, y: float) -> bool:
    """Whether a point lies inside an outline (even-odd rule)."""
    inside = False
    for (ax, ay), (bx, by) in zip(ring, ring[1:] + ring[:1], strict=True):
        if (ay > y) != (by > y) and x < (bx - ax) * (y - ay) / (by - ay) + ax:
            inside = not inside
    return inside


def test_the_middle_of_a_square_is_its_centre() -> None:
    assert middle(((10, 10), (30, 10), (30, 30), (10, 30))) == pytest.approx((20, 20, 10))


def test_the_middle_of_a_half_square_triangle_is_deep_inside() -> None:
    # Legs of 100: the inscribed circle has radius 100 × (1 - 1/√2) = 29.29 and its centre that far from both legs.
    x, y, radius = middle(((0, 0), (100, 0), (0, 100)))
    assert radius == pytest.approx(29.29, rel=0.1)
    assert (x, y) == pytest.approx((29.29, 29.29), rel=0.2)


def test_the_middle_of_an_angle_piece_lies_inside_it_and_not_at_its_centroid() -> None:
    angle = ((0.0, 0.0), (100.0, 0.0), (100.0, 20.0), (20.0, 20.0), (20.0, 100.0), (0.0, 100.0))
    x, y, radius = middle(angle)
    assert holds(angle, x, y)
    # The largest circle touches both outer sides and the inner corner: r√2 + r(…)= 20√2 gives r = 20√2/(1 + √2).
    assert radius == pytest.approx(20 * 2**0.5 / (1 + 2**0.5), rel=0.05)


def test_a_leader_ends_inside_its_patch_near_the_side() -> None:
    square = ((0.0, 0.0), (100.0, 0.0), (100.0, 10.0), (0.0, 10.0))
    assert toward_side(square, (50, 5), -20) == (4, 5)
    assert toward_side(square, (50, 5), 200) == (96, 5)


@pytest.mark.parametrize(
    "facts", [sample.harbour_light(), sample.checker(20), sample.oblong(24, 6)], ids=["harbour", "checker", "oblong"]
)
def test_every_letter_stands_wholly_inside_a_patch_of_its_name(facts: BlockFacts) -> None:
    figure, placed = letter_diagram(facts, BOX)
    scale = placed.width_pt / float(facts.finished[0])
    rings: dict[str, list[tuple[tuple[float, float], ...]]] = {}
    for patch in facts.placed:
        ring = tuple((placed.x_pt + float(x) * scale, placed.y_pt + float(y) * scale) for x, y in patch.outline)
        rings.setdefault(patch.label, []).append(ring)
    letters = words(figure)
    assert len(letters) == len(facts.placed)
    for letter in letters:
        right = letter.x_pt + measure(letter.text, letter.size_pt, letter.weight)
        top = letter.y_pt - CAP_HEIGHT * letter.size_pt
        corners = [(x, y) for x in (letter.x_pt, right) for y in (top, letter.y_pt)]
        assert any(all(holds(ring, x, y) for x, y in corners) for ring in rings[letter.text]), letter


def test_patches_of_one_shape_have_letters_of_one_size() -> None:
    figure, _ = letter_diagram(sample.checker(20), BOX)
    assert len({letter.size_pt for letter in words(figure)}) == 1


def test_letters_without_room_stand_beside_the_block_each_once() -> None:
    facts = sample.slivers()
    figure, filled = letter_diagram(facts, BOX)
    letters = [letter.text for letter in words(figure)]
    assert sorted(letters) == sorted({patch.label for patch in facts.placed})
    assert filled.width_pt == BOX.width_pt


def test_more_than_400_patches_name_three_of_each_letter() -> None:
    figure, _ = letter_diagram(sample.checker(24), Box(0, 0, 500, 500))
    letters = [letter.text for letter in words(figure)]
    assert {letters.count(letter) for letter in set(letters)} == {3}


def test_the_colours_of_the_picture_are_those_of_its_fabrics() -> None:
    figure, _ = block_picture(sample.harbour_light(), BOX)
    fills = {path.fill for path in paths(figure) if path.closed and len(path.rings[0]) in {3, 4}}
    assert {"#dfe3e0", "#e0a030", "#3a4750"} <= fills


def test_a_colourway_shows_the_fabric_that_takes_the_other_ones_place() -> None:
    facts = sample.harbour_light()
    seen = fabrics_of(facts, facts.colourways[0])
    assert {name: fabric.name for name, fabric in seen.items()} == {
        "fog": "slate",
        "slate": "fog",
        "lantern": "lantern",
    }


def test_the_picture_fills_the_box_at_its_top_left_in_the_blocks_proportion() -> None:
    _, placed = block_picture(sample.oblong(24, 6), BOX)
    assert (placed.x_pt, placed.y_pt, placed.width_pt, placed.height_pt) == (20, 30, 300, 75)


def test_a_block_of_40_000_patches_is_a_few_marks_and_quick() -> None:
    facts = sample.checker(200)
    start = time.process_time()
    figure, _ = block_picture(facts, BOX)
    letters, _ = letter_diagram(facts, BOX)
    assert time.process_time() - start < 5
    assert len(figure.marks) < 50
    assert len(letters.marks) < 60


def test_a_unit_is_drawn_in_its_own_proportion() -> None:
    facts = sample.harbour_light()
    beam = facts.units[1]
    figure, placed = unit_picture(beam, fabrics_of(facts), Box(0, 0, 66, 66), messages())
    assert (placed.width_pt, placed.height_pt) == (66, 33)
    assert figure.alternative == "Unit Beam: 6 × 3 in finished, 3 patches."


def test_the_grid_says_the_size_of_every_column_and_row() -> None:
    figure, _ = grid_diagram(sample.harbour_light(), BOX)
    assert [text.text for text in words(figure)] == ["3"] * 8
    uneven, _ = grid_diagram(replace(sample.strained(), placed=()), BOX)
    assert [text.text for text in words(uneven)] == [
        "1 ¹⁄₂", "4 ¹⁄₂", "4 ¹⁄₂", "1 ¹⁄₂", "2 ²⁄₅", "7 ¹⁄₅", "2 ²⁄₅",
    ]  # fmt: skip
    assert "columns 1 1/2, 4 1/2, 4 1/2, 1 1/2 in wide" in uneven.alternative


def test_an_even_block_without_a_cell_is_told_by_its_columns() -> None:
    facts = replace(sample.harbour_light(), cell=None)
    figure, _ = grid_diagram(facts, BOX)
    assert [text.text for text in words(figure)] == ["3", "6", "3", "3", "6", "3"]
    assert facts.columns == (Fraction(3), Fraction(6), Fraction(3))
