"""The makefile: what its two commands would do, and what it says when something is missing."""

import shutil
import subprocess
from pathlib import Path


def plan(project: Path, *goals: str) -> str:
    """What make would run for these goals, in order, without running any of it."""
    command = ("make", "--no-print-directory", "--dry-run", *goals)
    return subprocess.run(command, cwd=project, capture_output=True, text=True, timeout=30, check=True).stdout


def test_make_alone_says_what_can_be_made(project: Path) -> None:
    said = subprocess.run(("make",), cwd=project, capture_output=True, text=True, timeout=30, check=True).stdout

    for goal in ("book", "test", "check", "format", "bench", "clean"):
        assert f"make {goal} " in said


def test_make_test_checks_before_it_tests(project: Path) -> None:
    planned = plan(project, "test")

    assert planned.index("ruff check") < planned.index("mypy") < planned.index("lint-imports")
    assert planned.index("lint-imports") < planned.index("pytest")


def test_make_book_builds_the_demo_blocks_into_out(project: Path) -> None:
    built = [line for line in plan(project, "book").splitlines() if "blockdsl build" in line]

    assert built
    assert all("library/demo" in line and "-o out" in line for line in built)
    assert list((project / "library" / "demo").glob("*.block"))


def test_a_machine_whose_python_is_too_old_is_told_in_one_line_what_to_install(project: Path, tmp_path: Path) -> None:
    """Every python there is here refuses; the tree is a copy without an environment."""
    (tmp_path / ".ci").mkdir()
    shutil.copy(project / ".ci" / "make-venv", tmp_path / ".ci")
    old = tmp_path / "bin"
    old.mkdir()
    for name in ("python3", "python3.11", "python3.12", "python3.13", "python3.14"):
        (old / name).write_text("#!/bin/sh\nexit 1\n", encoding="utf-8")
        (old / name).chmod(0o755)
    (old / "dirname").symlink_to(shutil.which("dirname") or "/usr/bin/dirname")

    told = subprocess.run(
        ("/bin/sh", ".ci/make-venv"),
        cwd=tmp_path,
        env={"PATH": str(old)},
        capture_output=True,
        text=True,
        timeout=30,
        check=False,
    )

    assert told.returncode == 1
    assert told.stdout == ""
    assert told.stderr.startswith("blockdsl needs Python 3.11 or newer with its venv module: ")
    assert told.stderr.count("\n") == 1
    assert not (tmp_path / ".venv").exists()


def machine(folder: Path, **commands: str) -> None:
    """A folder of commands, each a line of shell, to stand for a whole machine."""
    for name, line in commands.items():
        path = folder / name.replace("_", "-")
        path.write_text(f"#!/bin/sh\n{line}\n", encoding="utf-8")
        path.chmod(0o755)


def look_for_cairo(project: Path, folder: Path) -> "subprocess.CompletedProcess[str]":
    """Run the search for the system library on such a machine."""
    return subprocess.run(
        ("/bin/sh", str(project / ".ci" / "system-libraries"), str(folder / "python")),
        cwd=folder,
        env={"PATH": str(folder)},
        capture_output=True,
        text=True,
        timeout=30,
        check=False,
    )


def test_a_machine_that_has_cairo_hears_nothing(project: Path, tmp_path: Path) -> None:
    machine(tmp_path, python="exit 0", apt_get=": > touched")

    found = look_for_cairo(project, tmp_path)

    assert (found.returncode, found.stdout + found.stderr) == (0, "")
    assert not (tmp_path / "touched").exists()


def test_a_machine_without_cairo_and_without_an_installer_is_told_so_in_one_line(project: Path, tmp_path: Path) -> None:
    machine(tmp_path, python="exit 1")

    told = look_for_cairo(project, tmp_path)

    assert told.returncode == 1
    assert "cairo" in told.stderr
    assert told.stderr.count("\n") == 1


def test_cairo_is_installed_when_that_needs_no_password(project: Path, tmp_path: Path) -> None:
    machine(
        tmp_path,
        python="[ -e installed ]",
        id="echo 0",
        apt_get='[ "$*" != "install -y -qq libcairo2" ] || : > installed',
    )

    told = look_for_cairo(project, tmp_path)

    assert told.returncode == 0, told.stderr
    assert told.stdout == "installing the system library cairo: apt-get install -y -qq libcairo2\n"


def test_when_a_password_is_needed_the_one_line_that_installs_cairo_is_printed(project: Path, tmp_path: Path) -> None:
    machine(tmp_path, python="exit 1", id="echo 1000", sudo="exit 1", dnf=": > touched")

    told = look_for_cairo(project, tmp_path)

    assert told.returncode == 1
    assert told.stderr.endswith("install it with: sudo dnf install -y -q cairo\n")
    assert told.stderr.count("\n") == 1
    assert not (tmp_path / "touched").exists()
