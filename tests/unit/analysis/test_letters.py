"""Letters: one for each different patch, by shape alone, in reading order."""

from blockdsl.analysis.letters import spell
from tests.unit.model.blocks import block, exactly, letters

FREE = ("grid 4 x 2", "patch fog at 0,0 2,0 1,2 0,2", "patch slate at 2,0 4,0 4,2 3,2", "patch moss at 2,0 3,2 1,2")


def test_triangles_turned_four_ways_share_a_letter() -> None:
    facts = block("row fog/slate fog/slate>", "row fog/slate< fog/slate>>")
    assert set(letters(facts).split()) == {"A"}


def test_letters_go_in_reading_order() -> None:
    facts = block("columns 2 1", "heights 2 1", "row fog slate", "row slate fog", size="9 in")
    assert letters(facts) == "A B B C"


def test_a_rectangle_lying_down_or_standing_up_is_one_patch() -> None:
    facts = block("columns 2 1", "heights 2 1", "row fog slate", "row slate fog", size="9 in")
    assert exactly([(patch.finished, patch.count) for patch in facts.patches if patch.label == "B"]) == [((3, 6), 2)]


def test_a_mirror_image_has_the_letter_of_its_partner_and_an_r() -> None:
    assert letters(block(*FREE, size="8 x 4 in")) == "A Ar B"


def test_a_mirror_image_names_whose_it_is_on_its_template() -> None:
    facts = block(*FREE, size="8 x 4 in")
    assert [(template.label, template.mirror_of) for template in facts.templates] == [
        ("A", None),
        ("Ar", "A"),
        ("B", None),
    ]


def test_mirror_images_do_not_use_up_letters() -> None:
    more = ("grid 4 x 3", *FREE[1:], "patch fog at 0,2 4,2 4,3 0,3")
    assert letters(block(*more, size="8 x 6 in")) == "A Ar B C"


def test_letters_stay_when_the_colours_change() -> None:
    one = block("row fog (split fog slate moss) slate", "row slate fog/slate fog", size="12 x 8 in")
    other = block("row moss (split moss moss lantern) fog", "row fog slate/fog moss", size="12 x 8 in")
    assert letters(one) == letters(other)


def test_one_letter_in_two_fabrics_is_two_lines() -> None:
    facts = block("row fog slate", "row slate slate")
    assert [(patch.label, patch.fabric, patch.count) for patch in facts.patches] == [("A", "fog", 1), ("A", "slate", 3)]


def test_half_and_quarter_square_triangles_have_letters_of_their_own_since_their_grain_differs() -> None:
    # the half of a 12 in split square has legs of 12 in along the grain, the quarters a long edge of 12 in along it
    facts = block("row (split fog slate moss)")
    assert [(patch.label, patch.shape) for patch in facts.patches] == [
        ("A", "half-square triangle"),
        ("B", "quarter-square triangle"),
        ("B", "quarter-square triangle"),
    ]


def test_after_z_comes_aa() -> None:
    assert [spell(number) for number in (0, 25, 26, 27, 51, 52, 701, 702)] == [
        "A",
        "Z",
        "AA",
        "AB",
        "AZ",
        "BA",
        "ZZ",
        "AAA",
    ]
