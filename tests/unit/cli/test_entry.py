"""Exit statuses, help, and what is said when blockdsl itself fails."""

import errno
import io
import os
import subprocess
import sys
from pathlib import Path

import pytest

import blockdsl
from blockdsl import pipeline
from blockdsl.cli.arguments import parser
from blockdsl.cli.saying import write_out
from blockdsl.cli.status import CannotGoOn
from blockdsl.export.cairo_library import CairoMissing
from tests.unit.cli.pinwheel import Run

COMMANDS = ("check", "build", "facts", "format", "new", "explain", "terms", "dump", "completion", "man")


def break_analysis(monkeypatch: pytest.MonkeyPatch, fault: Exception) -> None:
    def broken(*_: object) -> None:
        raise fault

    monkeypatch.setattr(pipeline, "analyse", broken)


@pytest.mark.parametrize("words", [(), ("chek", "a.block"), ("check",), ("build", "a.block"), ("check", "--loud", "a")])
def test_a_mistyped_command_ends_with_2_and_says_how_it_is_used(run: Run, words: tuple[str, ...]) -> None:
    ended = run(*words)

    assert ended.status == 2
    assert ended.told.startswith("usage: blockdsl")


def test_help_names_every_command_and_ends_with_0(run: Run) -> None:
    ended = run("--help")

    assert ended.status == 0
    assert [command for command in COMMANDS if f"    {command} " not in ended.out] == []


@pytest.mark.parametrize("command", COMMANDS)
def test_every_command_has_its_own_help(run: Run, command: str) -> None:
    ended = run(command, "--help")

    assert ended.status == 0
    assert ended.out.startswith(f"usage: blockdsl {command} ")


def test_version_is_the_packages(run: Run) -> None:
    assert run("--version").out == f"blockdsl {blockdsl.__version__}\n"


def test_a_fault_of_ours_ends_with_3_one_plain_line_and_the_file_it_happened_in(
    folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("BLOCKDSL_DEBUG", raising=False)
    break_analysis(monkeypatch, ZeroDivisionError("nothing\nat all"))

    ended = run("check", "pinwheel.block")

    assert ended.status == 3
    assert ended.told.count("\n") == 1
    assert ended.told.startswith(
        "blockdsl: a fault of ours while working on pinwheel.block (ZeroDivisionError: nothing at all); please report"
    )


def test_the_traceback_of_a_fault_of_ours_is_shown_to_those_who_ask(
    folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("BLOCKDSL_DEBUG", "1")
    break_analysis(monkeypatch, ZeroDivisionError("nothing"))

    assert "Traceback" in run("check", "pinwheel.block").told


def test_a_machine_without_cairo_is_told_what_to_install_and_what_works_without(
    folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    break_analysis(monkeypatch, CairoMissing("the system library cairo is missing: install it"))

    ended = run("build", "pinwheel.block", "-o", "out")

    assert ended.status == 1
    assert ended.told == (
        "blockdsl: the system library cairo is missing: install it; only the pictures of steps as PNG need it\n"
    )


def loaded(command: str, *words: str, folder: Path) -> set[str]:
    """The top-level packages that a command loads."""
    environment = {**os.environ, "PYTHONPROFILEIMPORTTIME": "1"}
    ended = subprocess.run((command, *words), cwd=folder, env=environment, capture_output=True, text=True, check=True)
    modules = (line.rpartition("|")[2].strip() for line in ended.stderr.splitlines() if line.startswith("import time:"))
    return {module.partition(".")[0] for module in modules}


def test_check_loads_neither_cairo_nor_anything_else_that_draws(folder: Path, blockdsl_command: str) -> None:
    drawing = {"cairocffi", "cairosvg", "svgwrite", "pypdf", "uharfbuzz", "rich"}

    packages = loaded(blockdsl_command, "check", "pinwheel.block", folder=folder)

    assert "lark" in packages
    assert packages & drawing == set()


def test_help_loads_not_even_the_grammar(folder: Path, blockdsl_command: str) -> None:
    packages = loaded(blockdsl_command, "--help", folder=folder)

    assert "blockdsl" in packages
    assert "lark" not in packages


def test_no_colour_reaches_a_file_or_a_terminal_that_does_not_want_it(
    folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    from blockdsl.cli.problem_printer import wants_colour  # noqa: PLC0415 - beside the class that stands for a terminal

    class Terminal(os.PathLike[str]):
        def isatty(self) -> bool:
            return True

        def __fspath__(self) -> str:
            return ""

    monkeypatch.delenv("NO_COLOR", raising=False)
    monkeypatch.setenv("TERM", "xterm")
    assert wants_colour(Terminal())  # type: ignore[arg-type]
    monkeypatch.setenv("NO_COLOR", "1")
    assert not wants_colour(Terminal())  # type: ignore[arg-type]
    assert "\x1b" not in run("check", "missing.block").told


def test_a_reader_who_has_gone_is_no_fault(folder: Path, blockdsl_command: str) -> None:
    line = f"'{blockdsl_command}' facts pinwheel.block | true"
    ended = subprocess.run(("bash", "-c", f"set -o pipefail; {line}"), cwd=folder, capture_output=True, check=False)

    assert (ended.returncode, ended.stderr) == (0, b"")


@pytest.mark.parametrize("closed", [">&-", "2>&-", "<&-", ">&- 2>&- <&-"])
def test_streams_that_are_closed_are_no_fault(folder: Path, blockdsl_command: str, closed: str) -> None:
    line = f"'{blockdsl_command}' facts pinwheel.block - {closed}"

    assert subprocess.run(("bash", "-c", line), cwd=folder, capture_output=True, input=b"", check=False).returncode == 0


class _FullDisk(io.RawIOBase):
    """A disk with no room left."""

    def writable(self) -> bool:
        return True

    def write(self, _: object) -> int:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))


def test_an_output_that_is_full_is_told_in_plain_words(monkeypatch: pytest.MonkeyPatch) -> None:
    class Stdout:
        buffer = _FullDisk()

        def flush(self) -> None:
            """Nothing waits."""

    monkeypatch.setattr(sys, "stdout", Stdout())

    with pytest.raises(CannotGoOn, match="standard output cannot be written: no space left on device"):
        write_out("facts")


def test_bash_completes_commands_options_and_choices(run: Run) -> None:
    script = run("completion", "bash").out

    def completed(*words: str) -> list[str]:
        typed = " ".join(f"'{word}'" for word in words)
        asked = f"{script}\nCOMP_WORDS=({typed}); COMP_CWORD={len(words) - 1}\n_shtab_blockdsl\n"
        asked += 'printf "%s\\n" "${COMPREPLY[@]}"'
        return subprocess.run(["bash"], input=asked, capture_output=True, text=True, check=True).stdout.split()

    assert completed("blockdsl", "comp") == ["compare", "completion"]
    assert completed("blockdsl", "build", "--lang") == ["--language"]
    assert completed("blockdsl", "build", "--language", "en") == ["en-US", "en-GB"]


def test_the_manual_page_names_every_command_and_option_and_is_the_same_every_day(run: Run) -> None:
    page = run("man").out
    whole = parser()

    assert page.startswith('.TH BLOCKDSL "1" "" ')
    assert ".SH NAME\nblockdsl \\- patchwork blocks" in page
    for word in whole.options_of_all():
        assert word in ("-h", "--help") or word.replace("-", "\\-") in page
    for command in COMMANDS:
        assert f"\\fBblockdsl\\fR \\fI\\,{command.replace('-', chr(92) + '-')}\\/\\fR" in page
