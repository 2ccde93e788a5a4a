"""The wheel, in an environment that has never seen the source tree."""

import os
import subprocess
import sys
import sysconfig
import zipfile
from pathlib import Path

import pytest

WHERE = """
import blockdsl, blockdsl.resources as r
print(blockdsl.__file__)
print(len(r.library_names()))
print(r.library_path(r.library_names()[0]))
print(len(r.grammar_text("line")))
print(r.font_path("FiraGO-Regular.ttf").stat().st_size)
"""

BLOCK = """\
fabric fog   "Harbour fog" #dfe3e0
fabric slate "Wet slate"   #3a4750

block "Four squares"
  size 6 in
  row fog   slate
  row slate fog
"""


def run(*command: str | Path, cwd: Path) -> "subprocess.CompletedProcess[str]":
    """Run a command that hears nothing of the source tree."""
    unheard = {"PYTHONPATH", "PYTHONHOME", "VIRTUAL_ENV"}
    environment = {name: value for name, value in os.environ.items() if name not in unheard}
    return subprocess.run(command, cwd=cwd, env=environment, capture_output=True, text=True, timeout=60, check=False)


@pytest.fixture(scope="module")
def wheel(project: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The wheel, built from the tree as it is."""
    folder = tmp_path_factory.mktemp("wheel")
    pip = (sys.executable, "-m", "pip", "--disable-pip-version-check")
    built = run(
        *pip, "wheel", "-q", "--no-deps", "--no-index", "--no-build-isolation", "-w", folder, project, cwd=folder
    )
    assert built.returncode == 0, built.stderr
    return next(folder.glob("blockdsl-*.whl"))


@pytest.fixture(scope="module")
def clean_bin(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The commands of an environment that holds the wheel; what it depends on is borrowed, so nothing is fetched."""
    folder = tmp_path_factory.mktemp("clean")
    bin_folder = folder / "venv" / "bin"
    run(sys.executable, "-m", "venv", "--without-pip", "venv", cwd=folder)
    pip = (sys.executable, "-m", "pip", "--disable-pip-version-check", "--python", bin_folder / "python")
    installed = run(*pip, "install", "-q", "--no-deps", "--no-index", wheel, cwd=folder)
    assert installed.returncode == 0, installed.stderr
    # A folder named in a .pth file is searched, but the .pth files inside it are not read: the
    # source tree, which is installed by one of those, stays out of sight.
    site = next((folder / "venv").glob("lib/python*/site-packages"))
    (site / "borrowed.pth").write_text(sysconfig.get_path("purelib") + "\n", encoding="utf-8")
    return bin_folder


def test_the_wheel_holds_the_library_the_grammar_the_fonts_and_both_licences(wheel: Path, project: Path) -> None:
    names = zipfile.ZipFile(wheel).namelist()
    library = [path.relative_to(project / "library") for path in (project / "library").rglob("*.block")]

    assert library
    assert {f"blockdsl/_data/library/{path.as_posix()}" for path in library} <= set(names)
    assert "blockdsl/_data/grammars/line.lark" in names
    assert "blockdsl/_data/spec/20-cookbook.md" in names
    assert "blockdsl/_data/spec/problems/name-unknown.md" in names
    assert "blockdsl/fonts/FiraGO-Regular.ttf" in names
    assert any(name.endswith("licenses/LICENSE") for name in names)
    assert any(name.endswith("OFL.txt") for name in names)


def test_the_installed_command_finds_its_library_and_its_grammar_in_the_wheel(
    clean_bin: Path, project: Path, tmp_path: Path
) -> None:
    found = run(clean_bin / "python", "-c", WHERE, cwd=tmp_path)

    assert found.returncode == 0, found.stderr
    module, names, first, grammar, font = found.stdout.splitlines()
    assert Path(module).is_relative_to(clean_bin.parent)
    assert not Path(module).is_relative_to(project)
    assert int(names) > 0
    assert Path(first).is_relative_to(Path(module).parent)
    assert int(grammar) > 0
    assert int(font) > 100_000


def test_a_block_of_ones_own_is_checked_from_any_folder(clean_bin: Path, tmp_path: Path) -> None:
    (tmp_path / "four squares.block").write_text(BLOCK, encoding="utf-8")

    checked = run(clean_bin / "blockdsl", "check", "four squares.block", cwd=tmp_path)

    assert (checked.returncode, checked.stdout + checked.stderr) == (0, "")


def test_every_block_of_the_library_is_checked_with_the_installed_command(
    clean_bin: Path, project: Path, tmp_path: Path
) -> None:
    files = sorted((project / "library").rglob("*.block"))

    checked = run(clean_bin / "blockdsl", "check", *files, cwd=tmp_path)

    assert files
    assert checked.returncode == 0, checked.stderr


def test_a_slip_in_a_block_ends_the_installed_command_with_1_and_names_the_line(
    clean_bin: Path, tmp_path: Path
) -> None:
    (tmp_path / "slip.block").write_text(BLOCK.replace("row slate fog", "row slate frog"), encoding="utf-8")

    checked = run(clean_bin / "blockdsl", "check", "slip.block", cwd=tmp_path)

    assert checked.returncode == 1
    assert checked.stdout == ""
    assert checked.stderr.startswith("slip.block:7:13: error[name-unknown]:")


def test_a_new_folder_is_started_and_built_with_the_installed_command(clean_bin: Path, tmp_path: Path) -> None:
    started = run(clean_bin / "blockdsl", "new", "mine", cwd=tmp_path)
    built = run("make", "-C", "mine", f"BLOCKDSL={clean_bin / 'blockdsl'}", cwd=tmp_path)

    assert started.returncode == 0, started.stderr
    assert built.returncode == 0, built.stderr
    assert (tmp_path / "mine" / "out" / "windfall.sheet.pdf").exists()
