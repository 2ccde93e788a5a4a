"""The schema of the facts: strict, true of every block of the library, and what the language page promises."""

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft202012Validator, ValidationError, validators

from blockdsl import pipeline
from blockdsl.analysis import FileReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts.schema import facts_schema
from blockdsl.wording import facts_json
from tests.unit.model.blocks import written

ROOT = Path(__file__).resolve().parents[3]
LIBRARY = sorted((ROOT / "library").rglob("*.block"))
SCHEMA: dict[str, Any] = facts_schema()
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


def objects(schema: object) -> Iterator[dict[str, Any]]:
    """Every part of a schema that says what an object has."""
    if isinstance(schema, dict):
        if "properties" in schema:
            yield schema
        for part in schema.values():
            yield from objects(part)
    elif isinstance(schema, list):
        for part in schema:
            yield from objects(part)


def test_no_record_may_hold_more_than_the_schema_says() -> None:
    found = list(objects(SCHEMA))
    assert len(found) > 80
    assert all(record["additionalProperties"] is False for record in found)


def test_what_is_always_written_is_required() -> None:
    """All but what says of itself that it is left out where it is as usual."""
    block = SCHEMA["$defs"]["BlockDocument"]
    assert set(block["required"]) == set(block["properties"])
    optional = {
        name
        for name, each in SCHEMA["$defs"].items()
        if set(each.get("required", ())) < set(each.get("properties", ()))
    }
    told = {
        name for name in optional if any("default" in part for part in SCHEMA["$defs"][name]["properties"].values())
    }
    assert optional - told == {"QuiltDocument"}


def test_the_schema_names_itself() -> None:
    assert SCHEMA["$id"] == "urn:blockdsl:facts:2"
    assert SCHEMA["properties"]["schema"] == {"enum": [2]}


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
    "BlockDocument": "name finished unfinished grid cover patches cutting units steps seams area_by_fabric "
    "colourways sizes",
    "PatchFacts": "label shape finished fabric count",
    "CutFacts": "fabric label piece cut count subcut yields for",
    "UnitDocument": "name count finished unfinished method",
    "StepDocument": "number makes count joins seam text",
    "SeamCount": "straight partial set_in",
    "QuiltDocument": "name finished blocks pieces fabrics backing binding",
    "FabricCloth": "fabric strips need bound buy fat_quarters",
}


@pytest.mark.parametrize("record", PROMISED)
def test_the_schema_has_every_name_that_the_language_promises(record: str) -> None:
    known = SCHEMA if record == "document" else SCHEMA["$defs"][record]
    assert set(PROMISED[record].split()) <= set(known["properties"])


def test_pieces_and_subcuts_are_those_of_the_language() -> None:
    cut = SCHEMA["$defs"]["CutFacts"]["properties"]
    from_strips = ["diamond", "parallelogram", "trapezoid", "hexagon"]
    pieces = ["square", "rectangle", "strip", "triangle", *from_strips, "octagon", "template"]
    assert set(cut["piece"]["enum"]) == set(pieces)
    assert set(cut["subcut"]["enum"]) == {"none", "once", "twice"}


def descriptions(schema: object) -> Iterator[str]:
    """All that a schema says in words."""
    if isinstance(schema, dict):
        if isinstance(schema.get("description"), str):
            yield schema["description"]
        schema = list(schema.values())
    for part in schema if isinstance(schema, list) else ():
        yield from descriptions(part)


def test_every_record_is_described_and_every_description_is_a_sentence() -> None:
    records = {name for name, each in SCHEMA["$defs"].items() if "properties" in each}
    assert records == {name for name in records if SCHEMA["$defs"][name].get("description")}
    found = list(descriptions(SCHEMA))
    assert len(found) > 200
    assert [words for words in found if not words.endswith((".", "…", ")"))] == []
