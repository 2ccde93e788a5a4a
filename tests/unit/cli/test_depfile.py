"""`--depfile`: rules that make itself understands."""

import os
import subprocess
from pathlib import Path

import pytest

from blockdsl.cli.depfile import escape_source, escape_target, make_rules
from blockdsl.cli.status import CannotGoOn
from tests.unit.cli.pinwheel import PALETTE, PINWHEEL, Run


def make(folder: Path, text: str, *words: str) -> "subprocess.CompletedProcess[str]":
    """Run make on this makefile."""
    (folder / "Makefile").write_text(text, encoding="utf-8")
    return subprocess.run(
        ("make", "--no-builtin-rules", *words), cwd=folder, capture_output=True, text=True, timeout=30, check=False
    )


HEAD = "# Written by blockdsl: what was made, and from which files.\n"


def test_one_rule_holds_all_outputs_and_all_sources_and_each_source_an_empty_one(folder: Path, run: Run) -> None:
    run("build", "pinwheel.block", "-o", "out", "--only", "table", "--depfile", "rules.d")

    assert (folder / "rules.d").read_text(encoding="utf-8") == (
        f"{HEAD}rules.d \\\n"
        "  out/pinwheel.cutting.svg \\\n"
        "  out/pinwheel.cutting.md \\\n"
        "  out/pinwheel.cutting.csv \\\n"
        "  out/pinwheel.cutting.xlsx: pinwheel.block \\\n"
        "  palette.block\n\n"
        "pinwheel.block:\n\n"
        "palette.block:\n"
    )


def test_library_files_are_sources_by_the_path_where_they_lie(folder: Path, run: Run, project: Path) -> None:
    (folder / "mine.block").write_text(
        'use library "demo/harbour-light"\nblock "Mine"\n  size 6 in\n  row fog\n', encoding="utf-8"
    )

    run("build", "mine.block", "-o", "out", "--only", "table", "--depfile", "rules.d")

    rules = (folder / "rules.d").read_text(encoding="utf-8")
    for name in ("harbour-light", "palette"):
        assert f"\n{escape_target(project / 'library' / 'demo' / name)}.block:\n" in rules


def test_the_book_is_among_the_outputs(folder: Path, run: Run) -> None:
    run("build", "pinwheel.block", "-o", "out", "--only", "book", "--book", "all.pdf", "--depfile", "rules.d")

    assert (folder / "rules.d").read_text(encoding="utf-8").startswith(f"{HEAD}rules.d \\\n  all.pdf: pinwheel.block")


def test_the_rules_are_not_empty_even_where_nothing_is_a_file(folder: Path, run: Run) -> None:
    run("build", "-", "-o", "out", "--only", "table", "--depfile", "rules.d", typed=PALETTE)

    assert (folder / "rules.d").read_text(encoding="utf-8") == f"{HEAD}rules.d:\n"


NAMES = (
    "two words",
    "no#1",
    "cost$5",
    "${x}",
    "a:b",
    "50%",
    "a*b",
    "a?b",
    "a[b]c",
    "~home",
    "a\\b",
    "a\\ b",
    "a\\#b",
    "a|b",
    "a=b",
    "étoile",
    "a&b'c\"d,e",
)


@pytest.mark.parametrize("name", NAMES)
def test_make_finds_a_source_whatever_its_name(tmp_path: Path, name: str) -> None:
    (tmp_path / name).write_text("newer", encoding="utf-8")
    (tmp_path / "out").write_text("older", encoding="utf-8")
    os.utime(tmp_path / "out", (1, 1))
    (tmp_path / "rules.d").write_text(make_rules([Path("out")], [Path(name)]), encoding="utf-8")

    asked = make(tmp_path, "out: ; @echo made\ninclude rules.d\n")
    (tmp_path / name).unlink()
    gone = make(tmp_path, "out: ; @echo made\ninclude rules.d\n")

    assert (asked.stdout, asked.stderr) == ("made\n", "")
    assert (gone.returncode, gone.stderr) == (0, "")


@pytest.mark.parametrize("name", NAMES)
def test_make_knows_an_output_whatever_its_name(tmp_path: Path, name: str) -> None:
    (tmp_path / "source").write_text("older", encoding="utf-8")
    os.utime(tmp_path / "source", (1, 1))
    (tmp_path / name).write_text("newer", encoding="utf-8")
    (tmp_path / "rules.d").write_text(make_rules([Path(name)], [Path("source")]), encoding="utf-8")
    text = f"include rules.d\n.DEFAULT_GOAL := all\nall: {escape_source(Path(name))} ; @:\n"

    fresh = make(tmp_path, text, "--debug=verbose")

    assert fresh.returncode == 0, fresh.stderr
    assert f"Prerequisite 'source' is older than target '{name}'" in fresh.stdout.replace("'./", "'")


@pytest.mark.parametrize("name", ["a;b", "a\tb", "a\nb", "lib(member)"])
def test_a_name_that_make_cannot_know_is_refused_in_plain_words(name: str) -> None:
    with pytest.raises(CannotGoOn, match="a makefile cannot name"):
        make_rules([Path("out")], [Path(name)])


MAKEFILE = """\
all: out/pinwheel.d ; @:
out/pinwheel.d: pinwheel.block ; @{command} build $< -o out --only table --depfile $@
include $(wildcard out/*.d)
"""


def test_make_builds_again_when_a_used_file_changes_and_only_then(folder: Path, blockdsl_command: str) -> None:
    text = MAKEFILE.format(command=blockdsl_command)
    first, second = make(folder, text), make(folder, text)
    os.utime(folder / "pinwheel.block", (1, 1))
    os.utime(folder / "out" / "pinwheel.d", (2, 2))
    third = make(folder, text)

    assert first.stdout == "4 files written to out\n"
    assert (second.returncode, second.stdout) == (0, "")
    assert third.stdout == "4 files written to out\n"


def test_make_goes_on_when_a_used_file_has_been_renamed(folder: Path, blockdsl_command: str) -> None:
    text = MAKEFILE.format(command=blockdsl_command)
    make(folder, text)
    (folder / "palette.block").rename(folder / "colours.block")
    (folder / "pinwheel.block").write_text(PINWHEEL.replace("palette", "colours"), encoding="utf-8")

    again = make(folder, text)

    assert (again.returncode, again.stdout, again.stderr) == (0, "4 files written to out\n", "")


def test_rules_that_are_read_by_a_makefile_without_a_recipe_for_them_do_no_harm(
    folder: Path, run: Run, blockdsl_command: str
) -> None:
    """The rule file is among its own targets; a makefile that only includes it must not go round in a ring."""
    run("build", "pinwheel.block", "-o", "out", "--only", "table", "--depfile", "rules.d")
    os.utime(folder / "rules.d", (1, 1))
    os.utime(folder / "out" / "pinwheel.cutting.md", (1, 1))

    built = make(folder, "all: out/pinwheel.cutting.md\nout/pinwheel.cutting.md: ; @echo built\n-include rules.d\n")

    assert (built.returncode, built.stdout, built.stderr) == (0, "built\n", "")
