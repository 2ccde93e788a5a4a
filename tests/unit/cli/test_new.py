"""`new`: a folder that works at once."""

import os
import subprocess
from pathlib import Path

import pytest

from tests.unit.cli.pinwheel import Run


@pytest.fixture
def started(tmp_path: Path, run: Run) -> Path:
    """A folder just started; its name has a space in it."""
    folder = tmp_path / "my blocks"
    assert run("new", str(folder)).status == 0
    return folder


def make(folder: Path, command: str, *goals: str) -> "subprocess.CompletedProcess[str]":
    """Run make as the README says, with blockdsl on the path."""
    path = os.pathsep.join((str(Path(command).parent), os.environ["PATH"]))
    environment = {**os.environ, "PATH": path}
    return subprocess.run(
        ("make", *goals), cwd=folder, env=environment, capture_output=True, text=True, timeout=60, check=False
    )


def test_the_folder_holds_a_palette_three_blocks_a_makefile_and_what_to_do_with_them(started: Path) -> None:
    assert sorted(path.name for path in started.iterdir()) == [
        ".gitignore",
        "Makefile",
        "README.txt",
        "espalier.block",
        "orchard-gate.block",
        "palette.block",
        "windfall.block",
    ]


def test_its_blocks_have_no_problem_and_are_in_their_usual_form(started: Path, run: Run) -> None:
    files = [str(path) for path in started.glob("*.block")]

    checked, laid_out = run("check", *files), run("format", "--check", *files)

    assert (checked.status, checked.told) == (0, "")
    assert (laid_out.status, laid_out.out) == (0, "")


def test_its_readme_names_every_file_and_every_goal(started: Path) -> None:
    words = (started / "README.txt").read_text(encoding="utf-8")

    assert [path.name for path in started.glob("*.block") if path.name not in words] == []
    assert [goal for goal in ("check", "format", "clean") if f"make {goal} " not in words] == []


def test_make_builds_every_block_and_then_has_nothing_more_to_do(started: Path, blockdsl_command: str) -> None:
    first, second = make(started, blockdsl_command), make(started, blockdsl_command)

    assert (first.returncode, first.stderr) == (0, "")
    assert (second.returncode, second.stdout, second.stderr) == (0, "", "")
    for block in ("windfall", "espalier", "orchard-gate"):
        assert (started / "out" / f"{block}.sheet.pdf").stat().st_size > 0


def test_make_tells_a_slip_once_and_leaves_what_was_built(started: Path, blockdsl_command: str) -> None:
    make(started, blockdsl_command)
    before = (started / "out" / "windfall.sheet.pdf").read_bytes()
    block = started / "windfall.block"
    block.write_text(block.read_text(encoding="utf-8").replace("row branch ", "row brunch "), encoding="utf-8")
    os.utime(started / "out" / "windfall.d", (1, 1))

    told = make(started, blockdsl_command)

    assert told.returncode == 2
    assert told.stderr.count("error[name-unknown]") == 1
    assert "No rule" not in told.stderr
    assert (started / "out" / "windfall.sheet.pdf").read_bytes() == before


def test_make_clean_leaves_what_the_quilter_wrote(started: Path, blockdsl_command: str) -> None:
    before = {path.name for path in started.iterdir()}
    make(started, blockdsl_command)

    assert make(started, blockdsl_command, "clean").returncode == 0
    assert {path.name for path in started.iterdir()} == before


def test_a_folder_that_is_not_empty_is_refused_and_left_alone(tmp_path: Path, run: Run) -> None:
    (tmp_path / "mine.txt").write_text("mine", encoding="utf-8")

    ended = run("new", str(tmp_path))

    assert ended.status == 1
    assert ended.told == f"blockdsl: {tmp_path} is there already and not empty; name a new folder\n"
    assert [path.name for path in tmp_path.iterdir()] == ["mine.txt"]


def test_an_empty_folder_is_taken(tmp_path: Path, run: Run) -> None:
    assert run("new", str(tmp_path)).status == 0
    assert (tmp_path / "README.txt").exists()


def test_make_finds_the_blockdsl_that_made_the_folder_and_says_how_to_set_another(started: Path) -> None:
    plain = {"PATH": "/usr/bin:/bin"}
    made = subprocess.run(("make",), cwd=started, env=plain, capture_output=True, text=True, timeout=60, check=False)
    lost = subprocess.run(
        ("make", "BLOCKDSL=/nowhere/blockdsl"), cwd=started, env=plain, capture_output=True, text=True, check=False
    )

    assert (made.returncode, made.stderr) == (0, "")
    assert lost.returncode == 2
    assert "there is no blockdsl at /nowhere/blockdsl: say where it is, make BLOCKDSL=/path/to/blockdsl" in lost.stderr


def test_files_with_spaces_in_their_names_are_built_and_built_again_when_they_change(
    started: Path, blockdsl_command: str
) -> None:
    (started / "windfall.block").rename(started / "my windfall.block")

    first, second = make(started, blockdsl_command), make(started, blockdsl_command)
    os.utime(started / "out" / "my windfall.d", (1, 1))
    third, fourth = make(started, blockdsl_command), make(started, blockdsl_command)

    assert (first.returncode, first.stderr, second.stdout) == (0, "", "")
    assert (started / "out" / "windfall.sheet.pdf").exists()
    assert third.stdout.count("files written to out") == 1
    assert fourth.stdout == ""
