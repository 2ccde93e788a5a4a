"""Techniques for the block at hand: which are needed, in which sizes and fabrics."""

import pytest

from blockdsl.analysis.program import analyse
from blockdsl.analysis.reading import TextReader
from blockdsl.cutting import cut_block
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.collect import collect_block
from blockdsl.facts.techniquefacts import TechniqueSection
from blockdsl.facts.techniques import technique_facts, techniques_for
from blockdsl.facts.unit_lesson import topic_shape
from blockdsl.geometry.fraction import Fraction, read_fraction
from blockdsl.sewing import plan_making
from blockdsl.sewing.methods import CUT_PATCHES, METHODS
from blockdsl.sewing.techniques import LESSONS
from blockdsl.sewing.techniques.scene import SceneWords
from blockdsl.wording.lessons import step_words

FABRICS = """
fabric fog "Harbour fog" #dfe3e0
fabric lantern "Lantern" #e0a030
fabric slate "Wet slate" #3a4750
"""

BY_HAND = ("over papers", "applique", "set-in seams", "partial seams", "mitered corners")
"""Lessons that cut nothing along a ruler."""


def block(lines: str) -> BlockFacts:
    problems = Problems()
    program = analyse(Source("test", FABRICS + lines), TextReader(), problems)
    assert not problems.has_errors, [problem.message for problem in problems]
    design = program.blocks[0]
    return collect_block(cut_block(design, plan_making(design, problems)), problems)


def said(section: TechniqueSection) -> str:
    return " ".join(step_words(step, section) for step in section.steps)


STAR = """
block "Star"
size 12 in
columns 1 2 1
heights 1 2 1
row slate (geese lantern on slate fog) slate
row (geese lantern on slate)< (hourglass fog slate) (geese lantern on slate)>
row slate (geese lantern on slate)>> slate
make geese as stitch and flip
"""


def test_every_method_of_the_language_has_a_lesson() -> None:
    assert set(METHODS) <= set(LESSONS)
    assert "foundation" in LESSONS


@pytest.mark.parametrize("method", [method for method in METHODS if METHODS[method]])
def test_every_shape_that_a_method_makes_has_a_topic(method: str) -> None:
    assert set(METHODS[method]) == set(LESSONS[method].topics)


def test_a_shape_without_a_page_of_its_own_is_taught_with_plain_patches() -> None:
    assert topic_shape(CUT_PATCHES, "checker") == "square"
    assert topic_shape(CUT_PATCHES, "geese") == "geese"


def test_a_book_teaches_only_what_its_blocks_use() -> None:
    techniques = techniques_for([block(STAR)])
    assert [(each.method, [section.shape for section in each.sections]) for each in techniques] == [
        (CUT_PATCHES, ["square", "hourglass"]),
        ("stitch and flip", ["geese"]),
    ]


def test_the_units_of_several_blocks_stand_together_each_in_its_own_measure() -> None:
    metric = block('block "Metric"\nsize 8 cm\nrow (half fog slate)\nmake half as two at a time')
    inches = block('block "Inches"\nsize 3 in\nrow (half fog slate)\nmake half as two at a time')
    (technique,) = techniques_for([inches, metric, inches])
    (section,) = technique.sections
    assert [(use.block, use.unit, use.unfinished) for use in section.uses] == [
        ("Inches", "in", (read_fraction("3.5"), read_fraction("3.5"))),
        ("Metric", "cm", (read_fraction("9.5"), read_fraction("9.5"))),
    ]
    assert section.unit == "in"


def test_the_steps_speak_of_the_blocks_own_sizes() -> None:
    facts = block('block "Half"\nsize 3 in\nrow (half fog slate)\nmake half as two at a time')
    (section,) = technique_facts("two at a time", ["half"], facts).sections
    assert "Cut one 3 7/8 in square of each fabric" in said(section)
    assert "should now measure 3 1/2 × 3 1/2 in" in said(section)


def test_steps_for_a_block_with_trim_cut_what_the_block_cuts() -> None:
    facts = block('block "Half"\nsize 3 in\nrow (half fog slate)\nmake half as two at a time\ntrim 1/4 in')
    (section,) = technique_facts("two at a time", ["half"], facts).sections
    assert "Cut one 4 1/8 in square" in said(section)
    assert "measure 3 1/2 × 3 1/2 in" in said(section)


def test_steps_in_centimetres_are_told_as_decimals() -> None:
    (section,) = technique_facts("two at a time", ["half"], None, "cm").sections
    assert "Cut one 10.6 cm square of each fabric" in said(section)  # 8 + 0.75 (2 + √2) = 10.561
    assert "9.5 × 9.5 cm" in said(section)


def test_a_strip_set_is_cut_longer_by_centimetres_where_the_block_has_them() -> None:
    # 2.5 and 1.5 cm: common practice, no source
    (inches,) = technique_facts("strip set", ["rails"], None, "in").sections
    assert "1 in longer for squaring up, and 1/2 in" in said(inches)
    (metric,) = technique_facts("strip set", ["rails"], None, "cm").sections
    assert "2.5 cm longer for squaring up, and 1.5 cm" in said(metric)


def test_pictures_show_the_blocks_own_fabrics_by_role() -> None:
    facts = block('block "Goose"\nsize 6 x 3 in\nrow (geese lantern on slate fog)\nmake geese as stitch and flip')
    (section,) = technique_facts("stitch and flip", ["geese"], facts).sections
    assert [fabric.name for fabric in section.fabrics] == ["lantern", "slate", "fog"]


def test_without_a_block_pictures_are_in_two_neutral_tones() -> None:
    (section,) = technique_facts("four at a time", ["geese"], None).sections
    goose, sky = section.fabrics[:2]
    assert (goose.value, sky.value) == ("dark", "light")
    assert goose.number != sky.number  # told apart by their hatches in greyscale


def test_the_darker_square_is_never_the_one_that_is_drawn_on() -> None:
    facts = block('block "Half"\nsize 3 in\nrow (half slate fog)\nmake half as two at a time')
    (section,) = technique_facts("two at a time", ["half"], facts).sections
    drawn = section.steps[1].pictures[0].items[0]
    assert section.fabrics[getattr(drawn, "role")].name == "fog"  # noqa: B009  an item of whichever kind


def test_what_the_block_cuts_for_the_unit_is_told_from_its_cutting_table() -> None:
    facts = block('block "Goose"\nsize 6 x 3 in\nrow (geese lantern on slate)\nmake geese as four at a time')
    (section,) = technique_facts("four at a time", ["geese"], facts).sections
    (use,) = section.uses
    assert [(cut.fabric, cut.count, cut.cut[0]) for cut in use.cuts] == [
        ("lantern", 1, read_fraction("7.25")),
        ("slate", 4, read_fraction("3.875")),
    ]
    assert use.spare == 3


def test_a_snowball_with_two_corners_is_taught_with_two_corners() -> None:
    facts = block(
        'block "Ball"\nsize 6 in\nrow (snowball fog with slate at tl br cut 1/4)\nmake snowball as stitch and flip'
    )
    (section,) = technique_facts("stitch and flip", ["snowball"], facts).sections
    assert "two 2 in squares for the corners" in said(section)


def test_a_strip_set_of_a_single_strip_is_taught_with_a_common_one() -> None:
    facts = block('block "One"\nsize 3 in\nrow (checker 2 x 1 fog slate)\nmake checker as strip set')
    (section,) = technique_facts("strip set", ["checker"], facts).sections
    assert section.finished == (Fraction(4), Fraction(4))
    assert [use.finished for use in section.uses] == [(Fraction(3), Fraction(3))]


def test_a_nine_patch_of_strips_takes_two_strip_sets() -> None:
    facts = block('block "Nine"\nsize 6 in\nrow (checker 3 x 3 fog slate)\nmake checker as strip set')
    (section,) = technique_facts("strip set", ["checker"], facts).sections
    assert "second strip set" in said(section)
    assert "Cut strips 2 1/2 in wide" in said(section)


@pytest.mark.parametrize("unit", ["in", "cm"])
@pytest.mark.parametrize("method", [method for method in LESSONS if method not in BY_HAND])
def test_each_cut_along_a_ruler_is_shown_for_both_hands(method: str, unit: str) -> None:
    shapes = list(LESSONS[method].topics)
    for section in technique_facts(method, shapes, None, "in" if unit == "in" else "cm").sections:
        pairs = [tuple(picture.hand for picture in step.pictures) for step in section.steps]
        assert ("right", "left") in pairs, section.key
        assert all(pair in {("right", "left"), (None,), (None, None)} for pair in pairs)


def test_a_method_that_the_language_does_not_have_is_refused() -> None:
    with pytest.raises(KeyError):
        technique_facts("by magic", ["half"], None)


def test_a_ruler_that_reads_whole_inches_is_taught_without_a_trim_that_nobody_could_mean() -> None:
    facts = block(
        'block "Coarse"\nsize 12 in\nmeasure 1 in\nrow fog/slate fog/slate\nrow fog/slate fog/slate\n'
        "make half as two at a time\ntrim 1/8 in"
    )
    (section,) = technique_facts("two at a time", ["half"], facts).sections
    assert section.uses


def test_units_on_papers_are_shown_with_their_own_areas() -> None:
    rows = "  row fog/slate slate/fog\n  row slate/fog fog/slate\n"
    facts = block(f'\nblock "Half"\n  size 12 in\n{rows}  make half as foundation\n')
    geese = block('\nblock "Geese"\n  size 4 x 2 in\n  row (geese lantern on fog)\n  make geese as foundation\n')
    for shown, areas in ((facts, {"A1", "A2"}), (geese, {"A1", "A2", "A3"})):
        pictures = [picture for step in shown.steps[0].lesson for picture in step.pictures]
        for picture in (pictures[0], pictures[-1]):
            assert {item.text for item in picture.items if isinstance(item, SceneWords)} == areas


def test_a_block_with_set_in_seams_brings_their_lesson() -> None:
    facts = block('block "Star"\nsize 12 in\nrow (star45 points fog slate ground lantern)')
    taught = {each.method: [section.shape for section in each.sections] for each in techniques_for([facts])}
    assert taught == {CUT_PATCHES: ["square", "star45"], "set-in seams": ["square"]}


def test_log_cabins_and_courthouse_steps_are_taught_by_one_lesson() -> None:
    assert topic_shape(CUT_PATCHES, "log") == "log"
    assert topic_shape(CUT_PATCHES, "courthouse") == "log"


def test_each_unit_counts_only_what_it_needs_itself() -> None:
    """By hand: two pairs of half squares share one line of fog; each unit takes one square of it, cut once."""
    facts = block('block "Two"\nsize 12 x 6 in\nrow (half fog slate) (half fog lantern)')
    (technique,) = techniques_for([facts])
    section = next(each for each in technique.sections if each.shape == "half")
    assert [[(cut.fabric, cut.count) for cut in use.cuts] for use in section.uses] == [
        [("fog", 1), ("slate", 1)],
        [("fog", 1), ("lantern", 1)],
    ]


def test_two_units_of_a_method_list_the_squares_of_their_own_batches() -> None:
    """By hand: hourglasses two at a time, one of each kind: one square of each of its two fabrics."""
    facts = block(
        'block "Two"\nsize 12 x 6 in\nrow (hourglass fog slate) (hourglass fog lantern)\n'
        "make hourglass as two at a time"
    )
    (section,) = technique_facts("two at a time", ["hourglass"], facts).sections
    assert [[(cut.fabric, cut.count) for cut in use.cuts] for use in section.uses] == [
        [("fog", 1), ("slate", 1)],
        [("fog", 1), ("lantern", 1)],
    ]
