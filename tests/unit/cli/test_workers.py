"""Work shared among processes: in order, and nothing is lost when one piece fails."""

import os
from pathlib import Path

import pytest

from blockdsl.cli.workers import processors, run_all
from tests.outputs import in_folder
from tests.unit.cli.pinwheel import PINWHEEL, Run
from tests.unit.cli.work import doubled, fatal_elsewhere, where


@pytest.mark.parametrize("processes", [1, 2])
def test_results_come_in_the_order_of_the_work(processes: int) -> None:
    assert list(run_all(doubled, [5, 1, 9, 2, 8, 7], processes, 2)) == [10, 2, 18, 4, 16, 14]


@pytest.mark.parametrize("processes", [1, 2])
def test_a_piece_that_fails_gives_its_fault_and_the_others_their_results(processes: int) -> None:
    before, fault, after = run_all(doubled, [2, 3, 4], processes, 2)

    assert (before, after) == (4, 8)
    assert isinstance(fault, ValueError)
    assert str(fault) == "three is too hard"


def test_when_the_other_processes_die_the_work_is_done_here() -> None:
    assert list(run_all(fatal_elsewhere, [1, 2, 3], 2, 2)) == [1, 2, 3]


def test_little_work_is_not_worth_other_processes() -> None:
    assert set(run_all(where, [1, 2, 3], 2, 4)) == {os.getpid()}
    assert os.getpid() not in set(run_all(where, [1, 2, 3, 4], 2, 4))


def test_there_is_at_least_one_processor() -> None:
    assert 1 <= processors() <= (os.cpu_count() or 1)


def many_blocks() -> str:
    blocks = (PINWHEEL.split("\n\n")[1].replace("Pinwheel", f"Pinwheel {number}") for number in range(12))
    return "\n".join((PINWHEEL.split("\n\n")[0], *blocks))


def test_many_blocks_are_the_same_by_one_process_and_by_two(folder: Path, run: Run) -> None:
    (folder / "many.block").write_text(many_blocks(), encoding="utf-8")

    ended = [
        run("build", "many.block", "-o", f"with-{jobs}", "--no-cache", "--only", "table,sheet", "--jobs", jobs)
        for jobs in ("1", "2")
    ]

    one, two = ({path.name: path.read_bytes() for path in in_folder(folder / name)} for name in ("with-1", "with-2"))
    assert [end.status for end in ended] == [0, 0]
    assert len(one) == 60
    assert one == two


def test_a_fault_of_ours_at_one_block_loses_no_other_file_and_no_message(
    folder: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The first file's drawing fails, the second has a warning, the third an error."""
    (folder / "warned.block").write_text(
        PINWHEEL.replace("size 6 in", "size 6 1/7 in").replace("Pinwheel", "Warned"), encoding="utf-8"
    )
    (folder / "wrong.block").write_text(PINWHEEL.replace("Pinwheel", "Wrong").replace("slate/fog", "x/fog"), "utf-8")
    from blockdsl.page import sheet  # noqa: PLC0415 - to be spoiled

    drawn = sheet.block_sheet

    def spoiled(block: object, **more: object) -> object:
        if getattr(block, "name", "") == "Pinwheel":
            raise ZeroDivisionError("nothing at all")
        return drawn(block, **more)  # type: ignore[arg-type]

    monkeypatch.setattr(sheet, "block_sheet", spoiled)

    ended = run("build", "pinwheel.block", "warned.block", "wrong.block", "-o", "out", "--only", "sheet", "--no-cache")

    assert ended.status == 3
    assert "warned.block:4:7: warning" in ended.told or "warning[size-off-ruler]" in ended.told
    assert "error[name-unknown]" in ended.told
    assert "a fault of ours while working on pinwheel.block" in ended.told
    assert [path.name for path in in_folder(folder / "out")] == ["warned.sheet.pdf"]


@pytest.mark.parametrize("number", ["0", "-1", "many", "257"])
def test_a_number_of_processes_that_makes_no_sense_is_refused(folder: Path, run: Run, number: str) -> None:
    ended = run("build", "pinwheel.block", "-o", "out", f"--jobs={number}")

    assert ended.status == 2
    assert "from 1 to 256" in ended.told
