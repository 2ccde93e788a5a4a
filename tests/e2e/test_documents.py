"""The README and the developers' guide say what is so."""

import json
import re
import subprocess
from pathlib import Path

import pytest


@pytest.fixture(scope="module")
def readme(project: Path) -> str:
    """The README's text."""
    return (project / "README.md").read_text(encoding="utf-8")


@pytest.fixture
def first_block(readme: str, tmp_path: Path) -> Path:
    """The first block, saved under the name that the README gives it."""
    name = re.search(r"Save this as `([^`]+)`", readme)
    text = re.search(r"```block\n(.*?)```", readme, re.DOTALL)
    assert name
    assert text
    path = tmp_path / name[1]
    path.write_text(text[1], encoding="utf-8")
    return path


def run(command: str, *arguments: str, cwd: Path) -> "subprocess.CompletedProcess[str]":
    """Run blockdsl as the README does."""
    return subprocess.run((command, *arguments), cwd=cwd, capture_output=True, text=True, timeout=60, check=False)


@pytest.mark.parametrize("page", ["README.md", "DEVELOPERS.md"])
def test_every_link_and_picture_leads_to_something_that_is_there(project: Path, page: str) -> None:
    links = re.findall(r"\]\(([^)#]+)[^)]*\)", (project / page).read_text(encoding="utf-8"))
    near = [link for link in links if "://" not in link]

    assert near
    assert [link for link in near if not (project / link).exists()] == []


def test_the_first_block_of_the_readme_has_no_problem(first_block: Path, blockdsl_command: str) -> None:
    checked = run(blockdsl_command, "check", first_block.name, cwd=first_block.parent)

    assert (checked.returncode, checked.stdout + checked.stderr) == (0, "")


def test_the_cutting_table_of_the_readme_is_what_the_first_block_needs(
    first_block: Path, blockdsl_command: str, readme: str
) -> None:
    """By hand: 6 in over two columns is 3 in, and 3 + 7/8 is the published rule for half-square triangles."""
    facts = json.loads(run(blockdsl_command, "facts", first_block.name, cwd=first_block.parent).stdout)
    given = re.findall(r"^\| (\w+) \| (\w+) \| ([\d /]+) x ([\d /]+) \| (\d+) \| (\w+) \|$", readme, re.MULTILINE)

    told = [
        (line["fabric"], line["piece"], *line["cut"], str(line["count"]), line["subcut"])
        for line in facts["blocks"][0]["cutting"]
    ]
    assert given == told
    assert facts["blocks"][0]["unfinished"] == ["6 1/2", "6 1/2"]


def test_build_writes_the_sheets_of_the_first_block(first_block: Path, blockdsl_command: str) -> None:
    built = run(blockdsl_command, "build", first_block.name, "-o", "out", cwd=first_block.parent)

    written = [path for path in (first_block.parent / "out").rglob("*") if path.is_file()]
    assert built.returncode == 0, built.stderr
    assert {".pdf", ".svg"} <= {path.suffix for path in written}
    assert all(path.stat().st_size > 0 for path in written)


def test_every_command_of_the_readme_is_one_that_blockdsl_has(
    readme: str, blockdsl_command: str, tmp_path: Path
) -> None:
    told = run(blockdsl_command, "--help", cwd=tmp_path)
    named = re.findall(r"^\| `blockdsl (\S+) ", readme, re.MULTILINE)

    assert told.returncode == 0
    assert named
    assert [command for command in named if command not in told.stdout] == []
