"""`build --paper`, `--margin` and `--check-print`: what pages are printed on."""

from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.unit.cli.pinwheel import Run


def test_a_roll_is_as_wide_as_it_was_said_to_be(folder: Path, run: Run) -> None:
    run("build", "pinwheel.block", "-o", "out", "--only", "templates", "--all-templates", "--paper", "roll 36 in")
    page = PdfReader(folder / "out" / "pinwheel.templates.pdf").pages[0]
    assert float(page.mediabox.width) == pytest.approx(36 * 72)


def test_a_wider_margin_leaves_less_of_the_roll_for_templates(folder: Path, run: Run) -> None:
    heights = []
    for margin in ("5 mm", "2 cm"):
        run(
            "build",
            "pinwheel.block",
            "-o",
            "out",
            "--only",
            "templates",
            "--all-templates",
            "--paper",
            "roll 24 in",
            "--margin",
            margin,
        )
        heights.append(float(PdfReader(folder / "out" / "pinwheel.templates.pdf").pages[0].mediabox.height))
    # 15 mm more at the head and at the foot make the cut page 30 mm longer.
    assert heights[1] - heights[0] == pytest.approx(30 * 72 / 25.4, abs=0.5)


@pytest.mark.parametrize("margin", ["wide", "12", "-1 mm", "60 mm", "1/0 in"])
def test_a_margin_that_is_no_length_is_wrong_usage(margin: str, folder: Path, run: Run) -> None:
    assert run("build", "pinwheel.block", "-o", "out", f"--margin={margin}").status == 2
    assert not (folder / "out").exists()


def test_the_check_of_the_print_is_written_when_it_is_asked_for(folder: Path, run: Run) -> None:
    run("build", "pinwheel.block", "-o", "out", "--only", "table")
    assert not (folder / "out" / "check-print.pdf").exists()
    ended = run("build", "pinwheel.block", "-o", "out", "--only", "table", "--check-print")
    assert ended.status == 0
    assert "actual size" in PdfReader(folder / "out" / "check-print.pdf").pages[0].extract_text()
    assert run("build", "pinwheel.block", "-o", "out", "--check-print", "--language", "de").status == 0
    assert "Originalgröße" in PdfReader(folder / "out" / "check-print.pdf").pages[0].extract_text()
