"""The numbers of a block as plain data."""

import json

import pytest

from blockdsl.geometry.fraction import Fraction
from blockdsl.wording import facts_json
from tests.unit.model.blocks import block, exactly, read, written

BLOCK = ("row fog/slate fog", "row moss fog/slate>")


def test_the_patches_counted_are_the_patches_placed() -> None:
    facts = block(*BLOCK, size="6 in")
    assert sum(patch.count for patch in facts.patches) == len(facts.placed) == 6


def test_the_areas_of_the_fabrics_are_the_area_of_the_block() -> None:
    # two halves of 3 in squares each give 4 1/2 of fog and of slate
    facts = block(*BLOCK, size="6 in")
    assert dict(facts.area_by_fabric) == {"fog": 18, "slate": 9, "moss": 9}


def test_fabrics_are_listed_as_declared_whatever_the_order_of_the_cells() -> None:
    facts = block("row moss slate lantern fog", size="12 x 3 in")
    assert [(fabric.name, fabric.number) for fabric in facts.fabrics] == [
        ("fog", 1),
        ("lantern", 2),
        ("slate", 3),
        ("moss", 4),
    ]


def test_a_fabric_that_the_block_does_not_use_is_not_listed() -> None:
    assert [fabric.name for fabric in block("row fog moss", size="6 x 3 in").fabrics] == ["fog", "moss"]


def test_the_picture_of_a_unit_is_as_its_words_draw_it_however_it_is_turned() -> None:
    (turned,) = block("row (split fog slate moss)>", size="6 in").units
    (plain,) = block("row (split fog slate moss)", size="6 in").units
    assert [(patch.fabric, patch.outline) for patch in turned.picture] == [
        (patch.fabric, patch.outline) for patch in plain.picture
    ]


def test_the_picture_of_a_mirror_image_is_mirrored() -> None:
    (unit,) = block("row (geese lantern on fog moss)~", size="6 x 3 in").units
    leftmost = min((corner.x, patch.fabric) for patch in unit.picture for corner in patch.outline if corner.y == 0)
    assert exactly(leftmost) == (0, "moss")


def test_notes_are_kept_in_order() -> None:
    assert block("row fog", 'note "Press open"', 'note "Starch"').notes == ("Press open", "Starch")


def test_where_a_block_comes_from_is_kept_as_the_designer_says_it() -> None:
    facts = block("row fog", 'source "A list of 1915"', "family nine-patch", 'source "As it is drawn today"')
    assert facts.family == "nine-patch"
    assert facts.sources == ("A list of 1915", "As it is drawn today")
    assert (block("row fog").family, block("row fog").sources) == (None, ())


def test_columns_and_heights_are_finished_measures() -> None:
    facts = block("columns 1 2 1", "row fog slate fog", size="12 x 3 in")
    assert exactly(facts.columns) == (3, 6, 3)
    assert exactly(facts.heights) == (3,)


# --- JSON ----------------------------------------------------------------------------------------


def document(text: str) -> dict[str, object]:
    facts, problems = read(text)
    parsed = json.loads(facts_json(facts, problems))
    assert isinstance(parsed, dict)
    return parsed


def test_inches_are_mixed_fractions_and_centimetres_decimals() -> None:
    inches = document(written("row fog/slate", size="3 in"))["blocks"]
    assert isinstance(inches, list)
    assert inches[0]["cutting"][0]["cut"] == ["3 7/8", "3 7/8"]
    assert inches[0]["seam"] == "1/4"
    metric = document(written("row fog/slate", size="10 cm"))["blocks"]
    assert isinstance(metric, list)
    assert metric[0]["cutting"][0]["cut"] == ["12.6", "12.6"]
    assert metric[0]["seam"] == "0.75"


@pytest.mark.parametrize(("sizes", "unit"), [(("3 in", "4 in"), "in"), (("3 cm",), "cm"), (("3 in", "4 cm"), "mixed")])
def test_the_unit_of_a_file_is_that_of_its_blocks(sizes: tuple[str, ...], unit: str) -> None:
    blocks = "".join(f'block "{place}"\n  size {size}\n  row fog\n' for place, size in enumerate(sizes))
    assert document('fabric fog "Fog" #ffffff\n' + blocks)["unit"] == unit


def test_the_facts_of_a_block_with_an_error_are_left_out_and_the_error_is_told() -> None:
    good, bad = 'block "Good"\n  size 3 in\n  row fog\n', 'block "Bad"\n  size 3 in\n  row fig\n'
    found = document('fabric fog "Fog" #ffffff\n' + bad + good)
    blocks, problems = found["blocks"], found["problems"]
    assert isinstance(blocks, list)
    assert isinstance(problems, list)
    assert [each["name"] for each in blocks] == ["Good"]
    assert [(each["code"], each["line"], each["column"]) for each in problems] == [("name-unknown", 4, 7)]


def test_the_same_file_gives_the_same_bytes() -> None:
    text = written(*BLOCK, 'colourway "Night" fog=moss moss=fog', "make half as two at a time")
    facts, problems = read(text)
    again, same = read(text)
    assert facts_json(facts, problems) == facts_json(again, same)


def test_a_colourway_has_a_cutting_table_of_its_own() -> None:
    """By hand: 3 in squares are cut 3 1/2 in; two fog and two slate, exchanged by the one plan, merged by the other."""
    blocks = document(
        written(
            "row fog slate",
            "row slate moss",
            'colourway "Night" fog=slate slate=fog',
            'colourway "Dusk" moss=fog',
            size="6 in",
        )
    )["blocks"]
    assert isinstance(blocks, list)
    assert [(cut["fabric"], cut["count"]) for cut in blocks[0]["cutting"]] == [("fog", 1), ("slate", 2), ("moss", 1)]
    night, dusk = blocks[0]["colourways"]
    assert [(cut["fabric"], cut["count"]) for cut in night["cutting"]] == [("fog", 2), ("slate", 1), ("moss", 1)]
    assert [(cut["fabric"], cut["count"], cut["cut"]) for cut in dusk["cutting"]] == [
        ("fog", 2, ["3 1/2", "3 1/2"]),
        ("slate", 2, ["3 1/2", "3 1/2"]),
    ]


def test_the_exact_size_stands_beside_the_cut_size() -> None:
    blocks = document(written("row fog/slate", size="3 in"))["blocks"]
    assert isinstance(blocks, list)
    # 3 + (2 + √2)/4
    assert blocks[0]["cutting"][0]["exact"] == ["7/2+1/4r2", "7/2+1/4r2"]


def test_an_uneven_free_grid_still_fills_the_block() -> None:
    facts = block("grid 2.5 x 1", "patch fog at 0,0 2.5,0 2.5,1 0,1", size="10 x 4 in")
    assert sum(facts.columns, Fraction(0)) == 10
