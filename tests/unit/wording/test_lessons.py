"""The lessons of the methods: every message is there, in both languages, with all that it needs."""

import pytest

from blockdsl.facts.blockfacts import RulerUnit
from blockdsl.facts.techniquefacts import TechniqueSection
from blockdsl.facts.techniques import technique_facts, techniques_for
from blockdsl.sewing.techniques import LESSONS
from blockdsl.wording.lessons import (
    describe_picture,
    section_title,
    sizes_aside,
    step_title,
    step_words,
    table_heads,
    technique_about,
    technique_title,
)
from tests.unit.model.blocks import block

UNITS: tuple[RulerUnit, ...] = ("in", "cm")


def sections(method: str, unit: RulerUnit) -> tuple[TechniqueSection, ...]:
    return technique_facts(method, list(LESSONS[method].topics), None, unit).sections


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("method", LESSONS)
def test_every_lesson_is_told_in_sentences_in_both_languages(method: str, unit: RulerUnit) -> None:
    technique = technique_facts(method, list(LESSONS[method].topics), None, unit)
    assert technique_title(technique)
    assert technique_about(technique).endswith(".")
    for section in technique.sections:
        assert section_title(section)[0].isupper()
        for step in section.steps:
            assert step_title(step, section)
            assert step_words(step, section).endswith((".", ")"))
            assert all(describe_picture(picture, unit, section.language).endswith(".") for picture in step.pictures)


@pytest.mark.parametrize("method", LESSONS)
def test_british_lessons_keep_british_words_and_american_ones_american(method: str) -> None:
    american = " ".join(step_words(step, section) for section in sections(method, "in") for step in section.steps)
    british = " ".join(step_words(step, section) for section in sections(method, "cm") for step in section.steps)
    for word in ("towards", "centre", "colour", "tack ", "cloth"):
        assert word not in american
    for word in ("toward ", "center", "color ", "baste"):
        assert word not in british


def test_tables_of_units_that_are_no_squares_say_their_proportion() -> None:
    (geese,) = sections("four at a time", "in")
    assert sizes_aside(geese) == "in inches, 1/4 in seam allowance; 2 : 1, width to height"
    (half,) = sections("eight at a time", "in")
    assert sizes_aside(half) == "in inches, 1/4 in seam allowance"


def test_heads_of_a_table_name_each_piece_once_as_it_is_cut_and_once_oversized() -> None:
    (half,) = sections("eight at a time", "in")
    assert table_heads(half) == ["Finished", "Both squares", "Both squares, oversized", "Should measure"]


def test_no_lesson_has_a_line_of_the_block_language() -> None:
    for method in LESSONS:
        for section in sections(method, "in"):
            told = " ".join(step_words(step, section) for step in section.steps)
            assert "“" not in told
            assert "trim 1/8" not in told


def test_a_book_of_inches_and_centimetres_is_told_in_one_english() -> None:
    inches = block("row (half fog slate) fog", "row fog fog", "make half as two at a time", size="6 in")
    metric = block("row (hourglass fog slate) fog", "row fog fog", "make hourglass as two at a time", size="12 cm")
    (two,) = (each for each in techniques_for([inches, metric]) if each.method == "two at a time")
    assert [(section.unit, section.language) for section in two.sections] == [("in", "en-US"), ("cm", "en-US")]
    assert sizes_aside(two.sections[1]) == "in centimeters, 0.75 cm seam allowance"
