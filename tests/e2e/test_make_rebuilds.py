"""make with the rules that `build` writes: what has changed is made again, and nothing else."""

import shutil
import subprocess
import time
from pathlib import Path

import pytest

from tests.outputs import in_folder

WARM = 'fabric lantern "Lantern" #e0a030\nfabric fog "Fog" #dfe3e0\n'
COLD = 'fabric slate "Slate" #3a4750\nfabric fog "Fog" #dfe3e0\n'
BLOCK = 'use "{palette}.block"\n\nblock "{name}"\n  size 4 in\n  row fog  {fabric}\n  row {fabric}  fog\n'
BLOCKS = {"ember": ("warm", "lantern"), "spark": ("warm", "lantern"), "frost": ("cold", "slate")}


@pytest.fixture(scope="module")
def template(tmp_path_factory: pytest.TempPathFactory, blockdsl_command: str) -> Path:
    """A new quilter's folder with three blocks and two palettes, everything made."""
    made = tmp_path_factory.mktemp("template") / "quilts"
    subprocess.run((blockdsl_command, "new", str(made)), check=True, capture_output=True)
    for path in made.glob("*.block"):
        path.unlink()
    lines = (made / "Makefile").read_text(encoding="utf-8").replace("palette.block\n", "warm.block cold.block\n")
    (made / "Makefile").write_text(lines, encoding="utf-8")
    (made / "warm.block").write_text(WARM, encoding="utf-8")
    (made / "cold.block").write_text(COLD, encoding="utf-8")
    for name, (palette, fabric) in BLOCKS.items():
        text = BLOCK.format(palette=palette, name=name.title(), fabric=fabric)
        (made / f"{name}.block").write_text(text, encoding="utf-8")
    command = made / "logged"
    command.write_text(f'#!/bin/sh\necho "$2" >> log\nexec "{blockdsl_command}" "$@" --cache kept\n', encoding="utf-8")
    command.chmod(0o755)
    make(made, "-j2")
    return made


@pytest.fixture
def folder(template: Path, tmp_path: Path) -> Path:
    """A copy of it with the times of its files."""
    return Path(shutil.copytree(template, tmp_path / "quilts"))


def make(folder: Path, *words: str, status: int = 0) -> str:
    """Run make there, and give all that it said."""
    command = ("make", "BLOCKDSL=./logged", "--no-print-directory", *words)
    ended = subprocess.run(command, cwd=folder, capture_output=True, text=True, timeout=60, check=False)
    assert (ended.returncode == 0) == (status == 0), ended.stderr
    return ended.stdout + ended.stderr


def made_again(folder: Path) -> list[str]:
    """The files that make hands to the command."""
    log = folder / "log"
    log.unlink(missing_ok=True)
    make(folder)
    return sorted(log.read_text(encoding="utf-8").split()) if log.exists() else []


def outputs(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in in_folder(folder / "out") if path.name != ".rules"}


def later(path: Path) -> None:
    """Write the file anew as it is, a moment later than all that was made."""
    newest = max(made.stat().st_mtime_ns for made in in_folder(path.parent / "out"))
    while time.time_ns() <= newest + 20_000_000:
        time.sleep(0.01)
    path.write_bytes(path.read_bytes())


def test_when_all_is_made_there_is_nothing_to_do(folder: Path) -> None:
    assert made_again(folder) == []
    assert all((folder / "out" / f"{name}.sheet.pdf").exists() for name in BLOCKS)


def test_a_changed_palette_makes_the_blocks_again_that_use_it_and_no_other(folder: Path) -> None:
    later(folder / "warm.block")
    assert made_again(folder) == ["ember.block", "spark.block"]

    later(folder / "cold.block")
    assert made_again(folder) == ["frost.block"]


def test_a_changed_block_is_made_again_alone_and_once(folder: Path) -> None:
    """Its outputs stay the same bytes, yet they must be newer than what they are made from."""
    later(folder / "spark.block")

    assert made_again(folder) == ["spark.block"]
    assert made_again(folder) == []


def test_all_at_once_or_one_after_the_other_makes_the_same(folder: Path) -> None:
    at_once = outputs(folder)
    shutil.rmtree(folder / "out")

    make(folder)

    assert outputs(folder) == at_once


def test_two_makes_at_the_same_time_spoil_nothing(folder: Path) -> None:
    before = outputs(folder)
    for path in folder.glob("*.block"):
        later(path)
    command = ("make", "-j2", "BLOCKDSL=./logged")
    both = [subprocess.Popen(command, cwd=folder, stdout=subprocess.DEVNULL) for _ in range(2)]

    assert [one.wait(timeout=60) for one in both] == [0, 0]
    assert outputs(folder) == before


def test_what_fails_leaves_what_was_good_and_the_others_are_made(folder: Path) -> None:
    before = outputs(folder)
    path = folder / "ember.block"
    path.write_text(path.read_text(encoding="utf-8").replace("row fog", "row frog", 1), encoding="utf-8")
    spark = folder / "spark.block"
    spark.write_text(spark.read_text(encoding="utf-8").replace("size 4", "size 6"), encoding="utf-8")
    later(path)
    later(spark)
    said = make(folder, "-k", status=2)

    after = outputs(folder)
    assert "error[name-unknown]" in said
    assert after.keys() == before.keys()
    assert {name for name in after if after[name] != before[name]} <= {name for name in after if "spark" in name}
    assert after["spark.cutting.csv"] != before["spark.cutting.csv"]
