"""What if: a file at another size, set in another way, in another colourway, in one command."""

import json
import re
from pathlib import Path
from typing import Any

import pytest

from blockdsl.resources import library_path
from tests.unit.cli.pinwheel import PINWHEEL, Run, spoil

NIGHT = f'{PINWHEEL}  colourway "Night" fog=slate slate=fog\n'

MOLE = """\
use "palette.block"
use "pinwheel.block"

quilt "Mole"
  set straight 2 x 3 of "Pinwheel"
  fill fog
"""


@pytest.fixture
def mole(folder: Path) -> Path:
    """The folder with a quilt and with a colourway too."""
    (folder / "pinwheel.block").write_text(NIGHT, encoding="utf-8")
    (folder / "mole.block").write_text(MOLE, encoding="utf-8")
    return folder


def asked(run: Run, *words: str) -> Any:
    """The facts that the command gives without a word of complaint."""
    ended = run("facts", *words)
    assert (ended.status, ended.told) == (0, "")
    return json.loads(ended.out)


def quilt_of(run: Run, *words: str) -> Any:
    return asked(run, "mole.block", *words)["quilts"][0]


def cuts(block: Any) -> list[tuple[str, str, int]]:
    return [(cut["fabric"], cut["cut"][0], cut["count"]) for cut in block["cutting"]]


def refused(run: Run, *words: str) -> str:
    ended = run("facts", *words)
    assert ended.status == 1
    return ended.told


# --- size --------------------------------------------------------------------------------------


def test_a_block_is_told_as_if_it_were_larger_and_its_file_stays_as_it_is(folder: Path, run: Run) -> None:
    """By hand: halves of 9 in are 4 1/2 in, and 7/8 in to cut two triangles of a square: 5 3/8 in."""
    before = (folder / "pinwheel.block").read_bytes()

    block = asked(run, "pinwheel.block", "--size", "9 in")["blocks"][0]

    assert (block["finished"], block["unfinished"]) == (["9", "9"], ["9 1/2", "9 1/2"])
    assert cuts(block) == [("fog", "5 3/8", 2), ("slate", "5 3/8", 2)]
    assert block["notes"] == ["What if, not as the file says: at 9 in."]
    assert (folder / "pinwheel.block").read_bytes() == before


def test_in_the_other_unit_its_usual_seam_holds(folder: Path, run: Run) -> None:
    """By hand: halves of 20 cm are 10 cm; 0.75 cm × (2 + √2) = 2.561 cm more, up to the next millimetre: 12.6."""
    block = asked(run, "pinwheel.block", "--size", "200mm")["blocks"][0]
    assert (block["unit"], block["seam"], block["unfinished"]) == ("cm", "0.75", ["21.5", "21.5"])
    assert cuts(block) == [("fog", "12.6", 2), ("slate", "12.6", 2)]


def test_an_oblong_block_keeps_its_proportion(folder: Path, run: Run) -> None:
    text = 'use "palette.block"\nblock "Wide"\n  size 6 x 4 in\n  sizes 9 12 in\n  row fog slate\n'
    (folder / "wide.block").write_text(text, encoding="utf-8")
    block = asked(run, "wide.block", "--size", "9 in")["blocks"][0]
    assert block["finished"] == ["9", "6"]
    # 9 in is its own size now, and what is left of its `sizes` is 12 in
    assert block["sizes"] == [["9", "6"], ["12", "8"]]


def test_the_designers_checks_are_of_the_block_as_it_is_written(folder: Path, run: Run) -> None:
    checks = "  expect finished 6 in\n  expect cut fog 2 squares 3 7/8\n"
    (folder / "pinwheel.block").write_text(PINWHEEL + checks, encoding="utf-8")
    assert cuts(asked(run, "pinwheel.block", "--size", "9 in")["blocks"][0])[0] == ("fog", "5 3/8", 2)
    assert run("facts", "pinwheel.block").status == 0


def test_a_size_between_the_marks_of_the_ruler_is_warned_of(folder: Path, run: Run) -> None:
    ended = run("facts", "pinwheel.block", "--size", "6 1/8 in")
    assert ended.status == 0
    assert "warning[size-off-ruler]" in ended.told


# --- quilts ------------------------------------------------------------------------------------


def test_a_quilt_is_told_at_another_size_with_more_blocks_and_on_point(mole: Path, run: Run) -> None:
    """By hand: six diagonals of 9 in are 54√2 in, eight are 72√2; 6 x 8 blocks and 5 x 7 between them are 83."""
    quilt = quilt_of(run, "--size", "9 in", "--set", "6 x 8 on point")
    assert (quilt["setting"], quilt["places"]) == ("on point", [6, 8])
    assert quilt["finished"] == ["54r2", "72r2"]
    assert quilt["blocks"] == {"Pinwheel": 83}
    assert quilt["notes"] == ["What if, not as the file says: blocks of 9 in, set 6 x 8 on point."]


@pytest.mark.parametrize(
    ("words", "setting", "places", "finished"),
    [
        ("on point", "on point", [2, 3], ["12r2", "18r2"]),
        ("4 x 5", "straight", [4, 5], ["24", "30"]),
        ("Dropped Columns", "dropped columns", [2, 3], ["12", "18"]),
        ("strippy 4 by 5", "strippy", [4, 5], ["42", "30"]),  # four columns and three strips of 6 in between
    ],
)
def test_any_part_of_a_setting_may_be_left_out(
    mole: Path, run: Run, words: str, setting: str, places: list[int], finished: list[str]
) -> None:
    quilt = quilt_of(run, "--set", words)
    assert (quilt["setting"], quilt["places"], quilt["finished"]) == (setting, places, finished)


def test_a_line_that_another_setting_has_no_use_for_is_no_slip(mole: Path, run: Run) -> None:
    assert "warning[line-idle]" in run("facts", "mole.block").told
    assert run("facts", "mole.block", "--set", "straight").told == ""


def test_blocks_of_other_files_are_of_the_size_too(mole: Path, run: Run) -> None:
    document = asked(run, "mole.block", "--size", "9 in", "--set", "on point")
    assert [block["finished"] for block in document["blocks"]] == [["9", "9"]]


def test_a_medallion_is_turned_on_point_and_back(mole: Path, run: Run) -> None:
    (mole / "mole.block").write_text(MOLE.replace("set straight 2 x 3 of", "set medallion of"), encoding="utf-8")
    assert quilt_of(run, "--set", "on point")["finished"] == ["6r2", "6r2"]
    assert quilt_of(run, "--set", "straight")["finished"] == ["6", "6"]


def without_notes(document: Any) -> Any:
    for told in (*document["blocks"], *document["quilts"]):
        told["notes"] = []
    return document


def test_what_is_supposed_is_what_the_changed_file_says(mole: Path, run: Run) -> None:
    supposed = asked(run, "mole.block", "--size", "9 in", "--set", "4 x 3 on point")
    (mole / "mole.block").write_text(MOLE.replace("straight 2 x 3", "on point 4 x 3") + "  blocks 9 in\n", "utf-8")
    (mole / "pinwheel.block").write_text(NIGHT.replace("size 6 in", "size 9 in"), encoding="utf-8")
    assert without_notes(supposed) == without_notes(asked(run, "mole.block"))


@pytest.mark.parametrize("name", ["harbour-light", "pilots-star", "rip-current"])
def test_a_block_of_the_library_is_at_a_size_what_its_file_would_be(folder: Path, run: Run, name: str) -> None:
    """Its checks are of its own size, and are left out of the changed file as well."""
    text = library_path(f"demo/{name}").read_text(encoding="utf-8")
    (folder / "palette.block").write_text(library_path("demo/palette").read_text(encoding="utf-8"), encoding="utf-8")
    (folder / "it.block").write_text(text, encoding="utf-8")
    supposed = json.loads(run("facts", "it.block", "--size", "15 in").out)
    changed = re.sub(r"(?m)^  (expect|sizes) .*\n", "", re.sub(r"(?m)^  size .*", "  size 15 in", text))
    (folder / "it.block").write_text(changed, encoding="utf-8")
    written = json.loads(run("facts", "it.block").out)
    for document in (supposed, written):
        del document["problems"]
        for block in document["blocks"]:
            del block["sizes"], block["at_sizes"]
    assert without_notes(supposed) == without_notes(written)
    assert supposed["blocks"][0]["finished"] == ["15", "15"]


# --- colourways --------------------------------------------------------------------------------


def test_a_block_is_cut_in_the_fabrics_of_a_colourway(mole: Path, run: Run) -> None:
    """By hand: light and dark are exchanged; 6 in with three light patches of twelve then has nine."""
    text = NIGHT.replace("row fog\\slate  fog/slate", "row fog  slate").replace(
        "row slate/fog  slate\\fog", "row fog  fog"
    )
    (mole / "pinwheel.block").write_text(text, encoding="utf-8")
    block = asked(run, "pinwheel.block", "--colourway", "Night")["blocks"][0]
    assert cuts(block) == [("fog", "3 1/2", 1), ("slate", "3 1/2", 3)]
    assert block["area_by_fabric"] == {"fog": "9", "slate": "27"}
    assert block["colourways"] == []
    assert block["notes"] == ["What if, not as the file says: in the colourway Night."]


def test_every_block_of_a_quilt_that_has_the_colourway_is_in_it(mole: Path, run: Run) -> None:
    (mole / "mole.block").write_text(
        MOLE.replace("set straight 2 x 3 of", "set medallion of") + '  round "Pinwheel"\n', encoding="utf-8"
    )
    quilt = quilt_of(run, "--colourway", "Night", "--set", "straight")
    # the middle, and a ring of eight round it
    assert [kind["colourways"] for kind in quilt["kinds"]] == [{"Night": 9}]


def test_books_print_blocks_in_the_colourway(mole: Path, run: Run) -> None:
    (mole / "mole.block").write_text('use "pinwheel.block"\nbook "B"\n  block "Plain" sizes 6 in\n', encoding="utf-8")
    text = NIGHT.replace("Pinwheel", "Plain").replace("row fog\\slate  fog/slate", "row fog  slate")
    (mole / "pinwheel.block").write_text(text.replace("row slate/fog  slate\\fog", "row fog  fog"), encoding="utf-8")
    (item,) = asked(run, "mole.block", "--colourway", "Night")["books"][0]["chapters"][0]["items"]
    assert cuts(item["sizes"][0]) == [("fog", "3 1/2", 1), ("slate", "3 1/2", 3)]


def test_a_quilt_in_a_colourway_is_what_its_rule_would_make_it(mole: Path, run: Run) -> None:
    supposed = quilt_of(run, "--colourway", "Night", "--set", "on point")
    text = MOLE.replace("straight 2 x 3", "on point 2 x 3") + '  colourway "Night" on all\n'
    (mole / "mole.block").write_text(text, encoding="utf-8")
    written = quilt_of(run)
    del supposed["notes"], written["notes"]
    assert supposed == written


# --- what cannot be ----------------------------------------------------------------------------


def test_an_unknown_colourway_is_told_with_the_nearest(mole: Path, run: Run) -> None:
    told = refused(run, "pinwheel.block", "--colourway", "Nihgt")
    assert "pinwheel.block:3:7: error[name-unknown]: with --colourway Nihgt: there is no colourway `Nihgt`" in told
    assert "did you mean --colourway 'Night'?" in told
    assert 'there is "Night"' in refused(run, "pinwheel.block", "--colourway", "Dusk")


def test_a_setting_that_lacks_a_fabric_is_told_with_one_that_works(mole: Path, run: Run) -> None:
    (mole / "mole.block").write_text(MOLE.replace("  fill fog\n", ""), encoding="utf-8")
    told = refused(run, "mole.block", "--set", "4 x 4 on point")
    assert "mole.block:5:3: error[fill-missing]: with --set '4 x 4 on point':" in told
    assert "this works: --set '4 x 4 straight'; or change the file: add the fabric" in told
    assert run("facts", "mole.block", "--set", "4 x 4 straight").status == 0


def test_the_nearest_size_is_told_at_which_a_border_comes_out_even(mole: Path, run: Run) -> None:
    """By hand: squares of 2 in go into 2 x 8 = 16 in and 3 x 8 = 24 in, not into 2 x 8 1/2 = 17 in; so do they at 9."""
    border = "  border 2 in pieced tile\nunit tile = half fog slate\n"
    (mole / "mole.block").write_text(MOLE.replace("  fill fog\n", border).replace("2 x 3", "2 x 2"), encoding="utf-8")
    told = refused(run, "mole.block", "--size", "8 1/2 in")
    assert "with --size '8 1/2 in': units of 2 in do not fit evenly along 17 in" in told
    assert "this works: --size '8 in'" in told


def test_one_thing_supposed_is_one_message_in_however_many_lines_it_shows(mole: Path, run: Run) -> None:
    (mole / "mole.block").write_text(f"{MOLE}  border 2 in slate\n  backing fog overage 4 in\n", encoding="utf-8")
    told = refused(run, "mole.block", "--size", "20 cm")
    assert told.count("error[units-mixed]") == 1
    assert "this works: --size '8 in'" in told  # 20 cm are 7.87 in, to the nearest half 8 in


def test_a_quilt_that_is_far_too_large_is_told_with_one_that_fits(mole: Path, run: Run) -> None:
    told = refused(run, "mole.block", "--set", "80 x 90")
    # 540 in are more than 393 in, half of it are not
    assert "this works: --set '40 x 45'" in told


@pytest.mark.parametrize(
    ("lines", "setting", "advice"),
    [
        ('  row "Pinwheel" fog\n', "4 x 4", "its rows name every place"),
        ('  set medallion of "Pinwheel"\n', "4 x 4", "one block in its middle"),
        ('  set medallion of "Pinwheel"\n', "strippy", "`--set straight` turn that block"),
    ],
)
def test_rows_and_medallions_say_how_they_are_set_themselves(
    mole: Path, run: Run, lines: str, setting: str, advice: str
) -> None:
    (mole / "mole.block").write_text(MOLE.split("  set", maxsplit=1)[0] + lines, encoding="utf-8")
    told = refused(run, "mole.block", "--set", setting)
    assert "mole.block:5:3: error[setting-fixed]" in told
    assert advice in told


def test_the_files_own_mistakes_are_told_first_and_alone(mole: Path, run: Run) -> None:
    spoil(mole / "pinwheel.block")
    told = refused(run, "pinwheel.block", "--size", "9 in", "--colourway", "Dusk")
    assert "pinwheel.block:5:7: error[name-unknown]: there is no fabric `frog`" in told
    assert "1 error" in told
    assert "--size" not in told


@pytest.mark.parametrize(
    ("words", "advice"),
    [
        (("--set", "onpoint"), "did you mean 'on point'?"),
        (("--set", "6 x"), "say how many blocks across and down"),
        (("--set", "0 x 5"), "from 1 to 10,000"),
        (("--set", ""), "say how many blocks across and down"),
        (("--size", "9"), "say a finished width"),
        (("--size", "1e9 in"), "say a finished width"),
        (("--size", "1/0 in"), "say a finished width"),
        (("--colourway", " "), "say the name of a colourway"),
        (("--colouring", "Night"), "this option is now called --colourway"),
        (("--set", "straight"), "there is no quilt in these files"),
    ],
)
def test_what_is_mistyped_is_a_slip_of_the_command(folder: Path, run: Run, words: tuple[str, ...], advice: str) -> None:
    for command in (("facts",), ("build", "-o", "out")):
        ended = run(*command, "pinwheel.block", *words)
        assert (ended.status, ended.out) == (2, "")
        assert advice in ended.told
    assert not (folder / "out").exists()


# --- build -------------------------------------------------------------------------------------


def test_build_writes_what_is_supposed_and_the_cache_tells_both_apart(mole: Path, run: Run) -> None:
    def table(*words: str) -> str:
        ended = run("build", "pinwheel.block", "-o", "out", "--cache", "kept", "--only", "table", *words)
        assert (ended.status, ended.told) == (0, "")
        return (mole / "out" / "pinwheel.cutting.csv").read_text(encoding="utf-8")

    assert "3 7/8 in" in table()
    assert "5 3/8 in" in table("--size", "9 in")
    assert "3 7/8 in" in table()
    assert "5 3/8 in" in table("--size", "9 in")


def test_of_what_cannot_be_nothing_is_written(mole: Path, run: Run) -> None:
    assert run("build", "mole.block", "-o", "out", "--no-cache", "--colourway", "Dusk").status == 1
    assert not (mole / "out").exists()
