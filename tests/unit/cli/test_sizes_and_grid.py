"""`sizes` and `grid`: what a teacher shows before the first cut."""

from pathlib import Path
from xml.etree import ElementTree as ET

from tests.unit.cli.pinwheel import Run, spoil


def test_sizes_lists_every_finished_size_with_the_square_of_the_grid(folder: Path, run: Run) -> None:
    """By hand: a pinwheel is drawn on 2 x 2 squares, so 7 in has squares of 3 1/2 in, and 7 1/2 in of 3 3/4 in."""
    ended = run("sizes", "pinwheel.block")

    assert (ended.status, ended.told) == (0, "")
    assert ended.out.startswith("Pinwheel: drawn on 2 × 2 squares: four-patch\n")
    seven = next(line for line in ended.out.splitlines() if line.split()[:3] == ["*", "7", "in"])
    assert " ".join(seven.split()[3:]) == "7 1/2 in 3 1/2 in yes A, 3 1/2 × 3 1/2 in"
    odd = next(line for line in ended.out.splitlines() if line.split()[:3] == ["7", "1/2", "in"])
    assert " ".join(odd.split()[3:]) == "8 in 3 3/4 in yes A, 3 3/4 × 3 3/4 in"
    assert any(line.split()[:2] == ["*", "60"] for line in ended.out.splitlines())


def test_grid_tells_the_square_at_the_sizes_that_are_asked_for(folder: Path, run: Run) -> None:
    """By hand: 2 x 2 squares: 6 in has squares of 3 in, 9 in of 4 1/2 in, 20 cm of 10 cm with 0.75 cm all round."""
    ended = run("grid", "pinwheel.block", "--size", "9 in", "--size", "200mm")

    lines = ended.out.splitlines()
    assert (ended.status, lines[0]) == (0, "Pinwheel: drawn on 2 × 2 squares: four-patch")
    assert " ".join(lines[3].split()) == "6 in 6 1/2 in 3 in 3 1/2 in yes"
    assert " ".join(lines[4].split()) == "9 in 9 1/2 in 4 1/2 in 5 in yes"
    assert " ".join(lines[5].split()) == "20 cm 21.5 cm 10 cm 11.5 cm yes"


def test_grid_draws_the_block_on_its_squares(folder: Path, run: Run) -> None:
    ended = run("grid", "pinwheel.block", "-o", "drawn")

    picture = ET.fromstring((folder / "drawn" / "pinwheel.squares.svg").read_bytes())  # noqa: S314 - our own drawing
    assert ended.out.endswith("1 file written to drawn\n")
    assert picture.find("{http://www.w3.org/2000/svg}title") is not None


def test_a_size_that_is_none_is_refused_as_a_slip_of_the_command(folder: Path, run: Run) -> None:
    for size in ("9", "0 in", "nine in", "20 m"):
        ended = run("grid", "pinwheel.block", "--size", size)
        assert ended.status == 2
        assert "say a finished width" in ended.told


def test_a_file_with_errors_has_no_sizes(folder: Path, run: Run) -> None:
    spoil(folder / "pinwheel.block")

    ended = run("sizes", "pinwheel.block")

    assert ended.status == 1
    assert "error[name-unknown]" in ended.told
    assert "drawn on" not in ended.out
