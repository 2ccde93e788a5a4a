"""The schema of the facts: strict, true of every block of the library, and what the language page promises."""

import json
import re
from collections.abc import Iterator
from importlib.resources import files
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft202012Validator, ValidationError, validators

from blockdsl import pipeline
from blockdsl.analysis import FileReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.wording import facts_json
from tests.unit.model.blocks import written

ROOT = Path(__file__).resolve().parents[3]
LIBRARY = sorted((ROOT / "library").rglob("*.block"))
SCHEMA: dict[str, Any] = json.loads((files("blockdsl.facts") / "schema.json").read_text(encoding="utf-8"))
FOLLOW = Draft202012Validator.VALIDATORS["$ref"]
RIGHT: set[tuple[str, str]] = set()
"""What was found to be as a definition says: the same point or length stands hundreds of times in the facts."""


def judged_once(judge: Any, name: str, instance: object, schema: object) -> Iterator[ValidationError]:
    """What is wrong with an instance of a definition; the same text is judged by the same definition once."""
    key = (name, json.dumps(instance))
    if key not in RIGHT:
        wrong = list(FOLLOW(judge, name, instance, schema))
        if not wrong:
            RIGHT.add(key)
        yield from wrong


JUDGE = validators.extend(Draft202012Validator, {"$ref": judged_once})(SCHEMA)


def facts_of(name: str, text: str, folder: Path = ROOT) -> Any:
    problems = Problems()
    return json.loads(facts_json(pipeline.run(Source(name, text), FileReader(folder), problems).facts, problems))


def slips(document: object) -> list[str]:
    return [f"{slip.json_path}: {slip.message[:200]}" for slip in JUDGE.iter_errors(document)]


def test_the_schema_is_a_schema() -> None:
    Draft202012Validator.check_schema(SCHEMA)


def test_no_record_may_hold_more_than_the_schema_says() -> None:
    records = [SCHEMA, *SCHEMA["$defs"].values()]
    for record in records:
        if "properties" in record:
            assert record["additionalProperties"] is False


@pytest.mark.parametrize("path", LIBRARY, ids=lambda path: path.stem)
def test_the_facts_of_every_library_file_are_as_the_schema_says(path: Path) -> None:
    document = facts_of(str(path), path.read_text(encoding="utf-8"))
    assert slips(document) == []


@pytest.mark.parametrize(
    ("size", "lines"),
    [
        ("30 cm", ["row fog/slate fog", "row (hourglass fog slate) moss", "make half as two at a time"]),
        ("10 in", ["row fog slate fog", 'note "Thirds"', 'colourway "Night" fog=moss']),
        ("4 in", ["grid 2 x 2", "patch fog at 0,2 1,2-r3 2,2", "patch slate at 0,0 1,0 1,2-r3 0,2"]),
        ("4 in", ["grid 2 x 1", "patch fog at 0,0 2,0 0,1", "patch slate at 2,0 2,1 0,1"]),
        ("8 x 4 in", ["grid 2 x 2", "patch fog at 1,0 2,1 1,2 0,1", "patch slate at 0,0 1,0 0,1"]),
        ("6 in", ["row (rails fog slate moss)", "make rails as strip set", "row"]),
        ("6 in", ["row fig"]),
    ],
)
def test_facts_of_blocks_good_and_bad_are_as_the_schema_says(size: str, lines: list[str]) -> None:
    assert slips(facts_of("mine.block", written(*lines, size=size))) == []


def test_a_word_too_many_or_too_few_is_seen() -> None:
    document = facts_of("mine.block", written("row fog/slate"))
    document["blocks"][0]["patches"][0]["colour"] = "grey"
    del document["blocks"][0]["cutting"][0]["for"]
    assert len(slips(document)) == 2


@pytest.mark.parametrize(
    "length", ["3", "2 7/8", "1/2", "7.3", "-1/4", "2-r2", "1/2r3", "-1/2+3r6", "r2", "-r2", "4r5", "1+r2+r3"]
)
def test_lengths_as_the_language_writes_them_are_lengths(length: str) -> None:
    assert JUDGE.evolve(schema={"$ref": "#/$defs/length", "$defs": SCHEMA["$defs"]}).is_valid(length)


@pytest.mark.parametrize("length", ["", "-", "three", "3 in", "2 7/", "7,3", "1e3", "r", 3, 2.5, None])
def test_other_things_are_no_lengths(length: object) -> None:
    assert not JUDGE.evolve(schema={"$ref": "#/$defs/length", "$defs": SCHEMA["$defs"]}).is_valid(length)


# The names that the language page promises, in the words of its own example.
PROMISED = {
    "document": "schema file unit blocks quilts problems",
    "block": "name finished unfinished grid cover patches cutting units steps seams area_by_fabric colourings sizes",
    "patch": "label shape finished fabric count",
    "cut": "fabric label piece cut count subcut yields for",
    "unit": "name count finished unfinished method",
    "step": "number makes count joins seam text",
    "seams": "straight partial set_in",
    "quilt": "name finished blocks pieces fabrics backing binding",
    "cloth_fabric": "fabric strips need bound buy fat_quarters",
}


@pytest.mark.parametrize("record", PROMISED)
def test_the_schema_has_every_name_that_the_language_promises(record: str) -> None:
    known = SCHEMA if record == "document" else SCHEMA["$defs"][record]
    assert set(PROMISED[record].split()) <= set(known["properties"])


def test_pieces_and_subcuts_are_those_of_the_language() -> None:
    cut = SCHEMA["$defs"]["cut"]["properties"]
    from_strips = ["diamond", "parallelogram", "trapezoid", "hexagon"]
    assert cut["piece"]["enum"] == ["square", "rectangle", "strip", "triangle", *from_strips, "octagon", "template"]
    assert cut["subcut"]["enum"] == ["none", "once", "twice"]


def test_every_description_is_a_sentence() -> None:
    described = re.findall(
        r'"description": "(.*)"', (files("blockdsl.facts") / "schema.json").read_text(encoding="utf-8")
    )
    assert described
    assert all(words.endswith(".") for words in described)
