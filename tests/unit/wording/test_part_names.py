"""The names of parts are written as the facts have them, and in a language, whatever they are put together from."""

from pathlib import Path

import pytest

from blockdsl import pipeline
from blockdsl.analysis.reading import FileReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.resources import library_folder
from blockdsl.sewing.part_name import PartName, part_called
from blockdsl.shapes import SHAPES
from blockdsl.wording import LANGUAGES, messages
from blockdsl.wording.grammar import Name, an, name_in_case, the
from blockdsl.wording.part_names import PartNames, name_of_part, written


@pytest.mark.parametrize(
    ("part", "name"),
    [
        (PartName("row", number="2"), "row 2"),
        (PartName("row", numbers=(1, 3)), "rows 1 and 3"),
        (PartName("row", numbers=(1, 3, 5)), "rows 1, 3, and 5"),
        (PartName("column", numbers=(1, 2, 3, 4)), "columns 1 to 4"),
        (PartName("half-square triangle", fabrics=("Foam", "Wet slate")), "half-square triangle of Foam and Wet slate"),
        (PartName("square in a square", fabrics=("Sand of Aran",)), "square in a square of Sand of Aran"),
        (PartName("goose", way="two at a time"), "goose made two at a time"),
        (PartName("corner", ordinal=2, mirrored=True), "reversed second corner"),
        (PartName("pair", fabric="Foam"), "Foam pair"),
        (PartName("quarter", again=2), "quarter, second"),
        (PartName("quarter", again=3), "quarter, number 3"),
        (PartName("", own="box of Delight"), "box of Delight"),
        (PartName("section", number="A"), "section A"),
    ],
)
def test_the_facts_and_american_pages_name_a_part_alike(part: PartName, name: str) -> None:
    assert part.notation == name
    assert written(part, messages()) == name


def test_a_name_that_is_no_noun_of_the_trade_is_the_makers_own() -> None:
    assert part_called("corner") == PartName("corner")
    assert part_called("beam") == PartName("", own="beam")


@pytest.mark.parametrize("file", ["stars", "curves", "rounds", "nine-patch", "eight-point"])
def test_every_name_of_the_library_is_written_in_american_english_as_the_facts_have_it(file: str) -> None:
    path = Path(library_folder()) / f"{file}.block"
    problems = Problems()
    source = Source(path.name, path.read_text(encoding="utf-8"))
    facts = pipeline.run(source, FileReader(path.parent), problems).facts
    for block in facts.blocks:
        for step in block.steps:
            names = PartNames(messages(), step.names)
            for name in (step.makes, *(join.unit for join in step.joins if join.unit)):
                # Flying geese have no singular of their own.
                assert names.one(name).replace("flying geese unit", "flying geese") == name


def test_every_shape_has_a_noun_in_every_language() -> None:
    for shape in SHAPES.values():
        for language in LANGUAGES:
            assert written(part_called(shape.title), messages(language))


def test_a_part_has_its_article_and_its_number() -> None:
    hourglass, half, row, beam = (
        PartName("hourglass"),
        PartName("half"),
        PartName("row", number="2"),
        part_called("beam"),
    )
    names = PartNames(messages(), {part.notation: part for part in (hourglass, half, row, beam)})
    assert names.one("hourglass", "a") == "an hourglass"
    assert names.many("half", 2) == "halves"
    assert names.one("row 2", "the") == "row 2"
    assert the(names.one("beam"), messages()) == "the beam"
    assert an("A", messages()) == "an A"


def test_a_name_can_be_had_again_in_a_case_and_a_letter_stays_as_it_is() -> None:
    name = name_of_part(PartName("goose", fabrics=("Foam",)), messages(), article="the")
    assert name_in_case(name, "dative", messages()) == "the goose of Foam"
    assert name_in_case("A", "dative", messages()) == "A"


def test_names_alike_in_letters_that_are_declined_in_other_ways_are_told_apart() -> None:
    corner = name_of_part(PartName("corner"), messages())
    assert corner != name_of_part(PartName("", own="corner"), messages())
    assert corner == "corner"
    assert Name("A") == Name("A")
