"""The programs that the tests open every PDF with: brought by make, or named in one line, and never in a test's way."""

import subprocess
from pathlib import Path

PROGRAMS = ("qpdf", "pdfinfo", "pdftotext", "gs")


def look_for_judges(project: Path, folder: Path) -> "subprocess.CompletedProcess[str]":
    """Run the search on a machine that has the commands of that folder and no others."""
    return subprocess.run(
        ("/bin/sh", str(project / ".ci" / "system-libraries"), "python", "judges"),
        cwd=folder,
        env={"PATH": str(folder)},
        capture_output=True,
        text=True,
        timeout=30,
        check=False,
    )


def command(folder: Path, name: str, line: str = "exit 0") -> None:
    (folder / name).write_text(f"#!/bin/sh\n{line}\n", encoding="utf-8")
    (folder / name).chmod(0o755)


def test_make_test_looks_for_the_judges_before_it_tests(project: Path) -> None:
    planned = subprocess.run(
        ("make", "--no-print-directory", "--dry-run", "test"),
        cwd=project,
        capture_output=True,
        text=True,
        timeout=30,
        check=True,
    ).stdout
    assert planned.index("system-libraries .venv/bin/python judges") < planned.index("pytest")


def test_a_machine_that_has_all_judges_hears_nothing(project: Path, tmp_path: Path) -> None:
    for name in PROGRAMS:
        command(tmp_path, name)
    found = look_for_judges(project, tmp_path)
    assert (found.returncode, found.stdout + found.stderr) == (0, "")


def test_judges_are_installed_when_that_needs_no_password(project: Path, tmp_path: Path) -> None:
    command(tmp_path, "id", "echo 0")
    made = "; ".join(f': > "{tmp_path / name}"; /bin/chmod +x "{tmp_path / name}"' for name in PROGRAMS)
    command(tmp_path, "apt-get", f'[ "$*" = "install -y -qq qpdf poppler-utils ghostscript" ] && {{ {made}; }}')
    found = look_for_judges(project, tmp_path)
    assert found.returncode == 0
    assert found.stderr == ""
    assert found.stdout.endswith("apt-get install -y -qq qpdf poppler-utils ghostscript\n")


def test_where_they_may_not_be_installed_one_line_says_how_and_the_other_tests_still_run(
    project: Path, tmp_path: Path
) -> None:
    command(tmp_path, "id", "echo 1000")
    command(tmp_path, "sudo", "exit 1")
    command(tmp_path, "apt-get")
    told = look_for_judges(project, tmp_path)
    assert told.returncode == 0
    assert told.stderr.count("\n") == 1
    assert told.stderr.endswith("install them with: sudo apt-get install -y -qq qpdf poppler-utils ghostscript\n")
