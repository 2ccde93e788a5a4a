"""`known`: blocks and units that the library or the maker's folders have."""

import json
from pathlib import Path

from tests.unit.cli.pinwheel import Run


def test_a_traditional_block_is_known_by_its_name_and_source_whatever_its_colours(folder: Path, run: Run) -> None:
    (folder / "mine.block").write_text(
        'use "palette.block"\n\nblock "Mine"\n  size 7 in\n  row slate\\fog slate/fog\n  row fog/slate fog\\slate\n',
        "utf-8",
    )

    ended = run("known", "mine.block")

    assert ended.status == 0
    assert ended.out.startswith("Mine (mine.block, line 3)\n")
    assert '   is Pinwheel Square (library "four-patch", line ' in ended.out


def test_two_files_of_one_block_are_found_in_folders_below_and_beside(folder: Path, run: Run) -> None:
    (folder / "old").mkdir()
    (folder / "old" / "palette.block").write_bytes((folder / "palette.block").read_bytes())
    (folder / "old" / "first.block").write_bytes((folder / "pinwheel.block").read_bytes())
    (folder / "broken.block").write_text("block\n", encoding="utf-8")

    assert "is Pinwheel (old/first.block, line 3)" in run("known", "pinwheel.block").out

    other = folder.parent / "elsewhere"
    other.mkdir()
    (other / "palette.block").write_bytes((folder / "palette.block").read_bytes())
    (other / "again.block").write_bytes((folder / "pinwheel.block").read_bytes())
    told = run("known", "pinwheel.block", "--folder", str(other)).out
    assert f"is Pinwheel ({other / 'again.block'}, line 3)" in told


def test_a_block_that_is_nearly_another_is_told_by_how_many_patches(folder: Path, run: Run) -> None:
    (folder / "mine.block").write_text(
        'use "palette.block"\nuse library "basics"\n\nblock "Mine"\n  size 7 in\n'
        "  row slate\\fog slate/fog\n  row fog/slate fog\\main\n",
        "utf-8",
    )

    found = json.loads(run("known", "mine.block", "--format", "json").out)

    assert [each["block"] for each in found] == ["Mine"]
    assert found[0]["same"] == []
    assert ("Pinwheel Square", 1) in {(each["block"], each["patches"]) for each in found[0]["near"]}


def test_units_are_looked_up_too(folder: Path, run: Run) -> None:
    (folder / "mine.block").write_text(
        'use "palette.block"\n\nunit sail\n  row slate\\fog slate/fog\n  row fog/slate fog\\slate\n\n'
        'block "Mine"\n  size 9 in\n  row sail fog fog\n  row slate fog sail\n  row fog fog slate\n',
        "utf-8",
    )

    told = run("known", "mine.block").out

    assert "   is not known\n" in told
    assert "   its unit `sail` is Pinwheel Square (library " in told


def test_a_file_with_errors_and_a_folder_that_is_not_there_are_told(folder: Path, run: Run) -> None:
    (folder / "broken.block").write_text("block\n", encoding="utf-8")

    assert run("known", "broken.block").status == 1
    assert "there is no such folder" in run("known", "pinwheel.block", "--folder", "nowhere").told
