"""Which warnings count: on the command line, and in the settings of a project."""

import json
from pathlib import Path
from typing import Any

import pytest

from tests.unit.cli.pinwheel import PALETTE, PINWHEEL, Run

SPARE = PALETTE + 'fabric sand "Sand" #d9c7a0\n' + PINWHEEL.split("\n", 1)[1]


@pytest.fixture
def spare(folder: Path) -> Path:
    """A folder with a file that earns one warning: a fabric that it does not use."""
    (folder / "spare.block").write_text(SPARE, encoding="utf-8")
    return folder


def test_a_warning_that_is_denied_is_an_error_and_nothing_is_built(spare: Path, run: Run) -> None:
    ended = run("build", "spare.block", "-o", "out", "--deny", "fabric-unused")

    assert ended.status == 1
    assert "spare.block:3:8: error[fabric-unused]" in ended.told
    assert not list((spare / "out").glob("*.pdf"))


def test_a_warning_that_is_allowed_is_not_told(spare: Path, run: Run) -> None:
    assert run("check", "spare.block", "--allow", "fabric-unused") == run("check", "pinwheel.block")


def test_all_warnings_may_be_errors_but_those_that_are_allowed(spare: Path, run: Run) -> None:
    assert run("check", "spare.block", "--warnings-as-errors").status == 1
    assert run("check", "spare.block", "--warnings-as-errors", "--allow", "fabric-unused").status == 0


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("blockdsl.toml", '[problems]\ndeny = ["fabric-unused"]\n'),
        ("pyproject.toml", "[tool.blockdsl.problems]\nwarnings-as-errors = true\n"),
    ],
)
def test_a_project_says_which_warnings_count_and_the_command_has_the_last_word(
    spare: Path, run: Run, name: str, text: str
) -> None:
    (spare / name).write_text(text, encoding="utf-8")
    (spare / "inner").mkdir()
    (spare / "inner" / "spare.block").write_text(SPARE, encoding="utf-8")

    assert run("check", "spare.block").status == 1
    assert run("check", "inner/spare.block").status == 1
    assert run("check", "spare.block", "--allow", "fabric-unused").status == 0


def test_what_was_built_before_does_not_hide_that_a_warning_counts_now(spare: Path, run: Run) -> None:
    built = ("build", "spare.block", "-o", "out", "--only", "table", "--cache", "kept")
    assert run(*built).status == 0
    (spare / "blockdsl.toml").write_text('[problems]\ndeny = ["fabric-unused"]\n', encoding="utf-8")
    assert run(*built).status == 1
    assert run(*built, "--allow", "fabric-unused").told == ""


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("[problems\n", "blockdsl.toml: Expected ']' at the end of a table declaration (at line 1, column 10)"),
        ("\n[problems]\nforbid = []\n", "blockdsl.toml:3: there is no setting 'forbid'"),
        ('[problems]\ndeny = ["fabric-unusd"]\n', "blockdsl.toml:2: there is no problem 'fabric-unusd'; did you mean"),
        ('[problems]\nallow = ["name-unknown"]\n', "blockdsl.toml:2: 'name-unknown' is an error, and stays one"),
        ('[problems]\nallow = "fabric-unused"\n', "blockdsl.toml:2: `allow` is a list of codes"),
        ("[problems]\nwarnings-as-errors = 1\n", "blockdsl.toml:2: `warnings-as-errors` is true or false"),
        ("problems = 1\n", "blockdsl.toml: `problems` should be a table"),
    ],
)
def test_settings_that_cannot_be_read_are_told_by_file_and_line(spare: Path, run: Run, text: str, told: str) -> None:
    (spare / "blockdsl.toml").write_text(text, encoding="utf-8")

    ended = run("check", "spare.block")

    assert ended.status == 2
    assert told in ended.told
    assert str(spare) in ended.told


def test_the_short_form_is_one_line_a_problem(spare: Path, run: Run) -> None:
    ended = run("check", "spare.block", "--message-format", "short")

    assert ended.told == "spare.block:3:8: warning[fabric-unused]: the fabric `sand` is not used\n"


def test_sarif_has_each_problem_once_with_its_rule_and_place(spare: Path, run: Run) -> None:
    """OASIS SARIF 2.1.0, 3.27.5 ruleId, 3.27.10 level, 3.30.5 startLine (from memory of the standard)."""
    (spare / "odd names.block").write_text(SPARE.replace("frog", "fog"), encoding="utf-8")

    told = json.loads(run("check", "spare.block", "odd names.block", "--message-format", "sarif").told)

    (first, *_), rules = told["runs"][0]["results"], told["runs"][0]["tool"]["driver"]["rules"]
    assert told["version"] == "2.1.0"
    assert rules[first["ruleIndex"]]["id"] == first["ruleId"] == "fabric-unused"
    place = first["locations"][0]["physicalLocation"]
    assert place["artifactLocation"]["uri"] == "odd%20names.block"
    assert (place["region"]["startLine"], place["region"]["startColumn"]) == (3, 8)


SLIPS = """fabric fog "Fog" #dddddd
fabric slate "Slate" #445566

block "Lights"
  size 6 inch
  row fgo    slate
  row slate  fog
"""


def _put(text: str, edits: list[dict[str, Any]]) -> str:
    """A text with edits done, by the lines and columns that they give, from the last to the first."""
    lines = text.splitlines(keepends=True)
    starts = [sum(map(len, lines[:number])) for number in range(len(lines) + 1)]
    for edit in sorted(edits, key=lambda each: (each["line"], each["column"]), reverse=True):
        first = starts[edit["line"] - 1] + edit["column"] - 1
        last = starts[edit["end_line"] - 1] + edit["end_column"] - 1
        text = text[:first] + edit["text"] + text[last:]
    return text


def test_json_tells_other_programs_how_each_slip_is_put_right(folder: Path, run: Run) -> None:
    (folder / "slips.block").write_text(SLIPS, encoding="utf-8")
    told = [json.loads(line) for line in run("check", "slips.block", "--message-format", "json").told.splitlines()]
    assert [problem["code"] for problem in told] == ["length-needs-unit", "name-unknown"]
    sure, guess = (problem["fixes"][0] for problem in told)
    assert (sure["sure"], guess["sure"]) == (True, False)
    assert all(edit["file"] == "slips.block" for edit in (*sure["edits"], *guess["edits"]))
    (folder / "slips.block").write_text(_put(SLIPS, [*sure["edits"], *guess["edits"]]), encoding="utf-8")
    ended = run("check", "slips.block")
    assert (ended.status, ended.told) == (0, "")


def test_sarif_has_the_fixes_that_are_sure(folder: Path, run: Run) -> None:
    """OASIS SARIF 2.1.0, 3.55 fix, 3.56 artifactChange, 3.57 replacement (from memory of the standard)."""
    (folder / "slips.block").write_text(SLIPS, encoding="utf-8")
    sarif = json.loads(run("check", "slips.block", "--message-format", "sarif").told)
    by_rule = {found["ruleId"]: found for found in sarif["runs"][0]["results"]}
    assert "fixes" not in by_rule["name-unknown"]
    ((change,),) = (fix["artifactChanges"] for fix in by_rule["length-needs-unit"]["fixes"])
    assert change["artifactLocation"]["uri"] == "slips.block"
    (replacement,) = change["replacements"]
    assert replacement["insertedContent"]["text"] == " in"
    assert replacement["deletedRegion"]["startLine"] == 5


def test_quiet_tells_the_problems_alone(spare: Path, run: Run) -> None:
    ended = run("build", "spare.block", "-o", "out", "--only", "table", "-q")

    assert ended.out == ""
    assert "warning[fabric-unused]" in ended.told
    assert "1 warning" not in ended.told


def test_colour_can_be_asked_for(spare: Path, run: Run) -> None:
    assert "\x1b[" in run("check", "spare.block", "--color", "always").told
    assert "\x1b[" not in run("check", "spare.block", "--colour", "never").told
