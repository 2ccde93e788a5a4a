"""`format`: files laid out anew, and nothing else done to them."""

from pathlib import Path

import pytest

from tests.unit.cli.pinwheel import PALETTE, Run

UNTIDY = 'fabric fog "Harbour fog" #dfe3e0\n\n\n\nblock   "Plain"\nsize 6 in   # small\nrow fog\n'
TIDY = 'fabric fog "Harbour fog"  #dfe3e0\n\nblock "Plain"\n  size 6 in  # small\n  row fog\n'


@pytest.fixture
def untidy(folder: Path) -> Path:
    """A block file that is not in the usual form."""
    path = folder / "untidy.block"
    path.write_text(UNTIDY, encoding="utf-8")
    return path


def test_a_file_is_laid_out_in_its_place_with_its_permissions_kept(untidy: Path, run: Run) -> None:
    untidy.chmod(0o600)

    ended = run("format", "untidy.block")

    assert (ended.status, ended.out, ended.told) == (0, "", "")
    assert untidy.read_text(encoding="utf-8") == TIDY
    assert untidy.stat().st_mode & 0o777 == 0o600


def test_a_file_in_its_usual_form_is_not_touched(untidy: Path, run: Run) -> None:
    untidy.write_text(TIDY, encoding="utf-8")
    before = untidy.stat()

    assert run("format", "untidy.block").status == 0
    assert (untidy.stat().st_ino, untidy.stat().st_mtime_ns) == (before.st_ino, before.st_mtime_ns)


def test_a_link_stays_a_link(untidy: Path, folder: Path, run: Run) -> None:
    (folder / "link.block").symlink_to("untidy.block")

    run("format", "link.block")

    assert (folder / "link.block").is_symlink()
    assert untidy.read_text(encoding="utf-8") == TIDY


def test_check_names_the_files_that_would_change_ends_with_1_and_changes_nothing(
    untidy: Path, folder: Path, run: Run
) -> None:
    (folder / "tidy.block").write_text(TIDY, encoding="utf-8")

    ended = run("format", "--check", "tidy.block", "untidy.block")

    assert (ended.status, ended.out) == (1, "untidy.block\n")
    assert untidy.read_text(encoding="utf-8") == UNTIDY
    assert run("format", "--check", "tidy.block").status == 0


def test_standard_input_is_laid_out_on_standard_output(folder: Path, run: Run) -> None:
    ended = run("format", "-", typed=UNTIDY)

    assert (ended.status, ended.out) == (0, TIDY)


def test_a_file_with_a_slip_of_grammar_stays_as_it_is_and_the_others_are_laid_out(untidy: Path, run: Run) -> None:
    slip = untidy.with_name("slip.block")
    slip.write_text(PALETTE + "rowe fog\n", encoding="utf-8")

    ended = run("format", "slip.block", "untidy.block")

    assert ended.status == 1
    assert ended.told.startswith("slip.block:3:1: error[")
    assert slip.read_text(encoding="utf-8") == PALETTE + "rowe fog\n"
    assert untidy.read_text(encoding="utf-8") == TIDY


def test_a_write_protected_file_is_left_as_it_is(folder: Path, run: Run) -> None:
    path = folder / "palette.block"
    path.write_text('fabric   fog "Fog" #dfe3e0\n', encoding="utf-8")
    path.chmod(0o444)

    ended = run("format", "palette.block")

    assert (ended.status, ended.told) == (1, "blockdsl: palette.block is write-protected and left as it is\n")
    assert path.read_text(encoding="utf-8") == 'fabric   fog "Fog" #dfe3e0\n'
