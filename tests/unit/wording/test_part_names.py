"""The names of parts are read back from the facts and written in a language, whatever they are put together from."""

from pathlib import Path

import pytest

from blockdsl import pipeline
from blockdsl.analysis.reading import FileReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.resources import library_folder
from blockdsl.shapes import SHAPES
from blockdsl.wording import messages
from blockdsl.wording.grammar import Name, an, name_in_case, the
from blockdsl.wording.part_names import PartName, PartNames, part_name

FABRICS = frozenset(("Foam", "Wet slate", "Sand of Aran"))


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("row 2", PartName("row", number="2")),
        ("rows 1, 3, and 5", PartName("rows", number="1, 3, and 5")),
        ("half-square triangle of Foam and Wet slate", PartName("half-square-triangle", fabrics=("Foam", "Wet slate"))),
        ("square in a square of Sand of Aran", PartName("square-in-a-square", fabrics=("Sand of Aran",))),
        ("goose made two at a time", PartName("goose", way="two at a time")),
        ("reversed second corner", PartName("corner", ordinal=2, mirrored=True)),
        ("Foam pair", PartName("pair", fabric="Foam")),
        ("quarter, number 3", PartName("quarter", again=3)),
        ("beam", PartName("", own="beam")),
        ("box of Delight", PartName("", own="box of Delight")),
        ("section A", PartName("section", number="A")),
    ],
)
def test_a_name_says_what_it_is_put_together_from(name: str, said: PartName) -> None:
    assert part_name(name, FABRICS) == said


@pytest.mark.parametrize("file", ["stars", "curves", "rounds", "nine-patch", "eight-point"])
def test_every_name_of_the_library_is_written_in_american_english_as_the_facts_have_it(file: str) -> None:
    path = Path(library_folder()) / f"{file}.block"
    problems = Problems()
    source = Source(path.name, path.read_text(encoding="utf-8"))
    facts = pipeline.run(source, FileReader(path.parent), problems).facts
    for block in facts.blocks:
        names = PartNames(messages(), frozenset(fabric.label for fabric in block.fabrics))
        for step in block.steps:
            assert names.one(step.makes) == step.makes


def test_every_shape_has_a_noun_in_every_language() -> None:
    for shape in SHAPES.values():
        assert part_name(shape.title, FABRICS).noun, shape.title


def test_a_part_has_its_article_and_its_number() -> None:
    names = PartNames(messages(), FABRICS)
    assert names.one("hourglass", "a") == "an hourglass"
    assert names.many("half", 2) == "halves"
    assert names.one("row 2", "the") == "row 2"
    assert the(names.one("beam"), messages()) == "the beam"
    assert an("A", messages()) == "an A"


def test_a_name_can_be_had_again_in_a_case_and_a_letter_stays_as_it_is() -> None:
    name = PartNames(messages(), FABRICS).one("goose of Foam", "the")
    assert name_in_case(name, "dative", messages()) == "the goose of Foam"
    assert name_in_case("A", "dative", messages()) == "A"


def test_names_alike_in_letters_that_are_declined_in_other_ways_are_told_apart() -> None:
    corner = PartName("corner").name(messages())
    assert corner != PartName("", own="corner").name(messages())
    assert corner == "corner"
    assert Name("A") == Name("A")
