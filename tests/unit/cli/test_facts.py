"""`facts`: the numbers as JSON."""

import json
from pathlib import Path

from jsonschema import Draft202012Validator

from tests.unit.cli.pinwheel import PINWHEEL, Run, spoil


def test_facts_are_one_json_document_on_standard_output(folder: Path, run: Run) -> None:
    """By hand: two columns in 6 in are 3 in each, four triangles of each fabric, 3 in + 7/8 in to cut."""
    ended = run("facts", "pinwheel.block")

    document = json.loads(ended.out)
    block = document["blocks"][0]
    assert (ended.status, ended.told) == (0, "")
    assert (document["schema"], document["file"], document["unit"]) == (2, "pinwheel.block", "in")
    assert (block["finished"], block["unfinished"]) == (["6", "6"], ["6 1/2", "6 1/2"])
    assert [(cut["fabric"], cut["cut"], cut["count"]) for cut in block["cutting"]] == [
        ("fog", ["3 7/8", "3 7/8"], 2),
        ("slate", ["3 7/8", "3 7/8"], 2),
    ]


def test_the_facts_of_a_file_with_errors_hold_its_problems_and_end_with_1(folder: Path, run: Run) -> None:
    spoil(folder / "pinwheel.block")

    ended = run("facts", "pinwheel.block")

    document = json.loads(ended.out)
    assert ended.status == 1
    assert document["blocks"] == []
    assert [(problem["code"], problem["line"]) for problem in document["problems"]] == [("name-unknown", 5)]
    assert "error[name-unknown]" in ended.told


def test_the_facts_of_a_file_that_is_not_there_are_json_too(folder: Path, run: Run) -> None:
    ended = run("facts", "missing.block")

    assert ended.status == 1
    assert [problem["code"] for problem in json.loads(ended.out)["problems"]] == ["file-unreadable"]


def test_the_facts_of_standard_input_name_it(folder: Path, run: Run) -> None:
    assert json.loads(run("facts", "-", typed=PINWHEEL).out)["file"] == "<stdin>"


def test_the_schema_is_printed_without_a_file_and_holds_the_document(folder: Path, run: Run) -> None:
    ended = run("facts", "--schema")

    schema = json.loads(ended.out)
    assert (ended.status, ended.told, schema["$id"]) == (0, "", "urn:blockdsl:facts:2")
    Draft202012Validator(schema).validate(json.loads(run("facts", "pinwheel.block").out))


def test_several_files_give_a_list_in_their_order(folder: Path, run: Run) -> None:
    (folder / "second.block").write_text(PINWHEEL.replace("Pinwheel", "Second"), encoding="utf-8")

    documents = json.loads(run("facts", "second.block", "pinwheel.block").out)

    assert [document["file"] for document in documents] == ["second.block", "pinwheel.block"]
