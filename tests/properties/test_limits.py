"""The limits of the language: each refused by its name, at once, with nothing written."""

from __future__ import annotations

import time
from pathlib import Path

import pytest

from blockdsl.analysis import TextReader, analyse
from blockdsl.cli import main
from blockdsl.diagnostics import Problems, Source

FABRICS = 'fabric light "Light" #f0ead8\nfabric dark "Dark" #26323a\n'

# "Under a second" is meant for a machine that is not busy, so the processor's own time is taken, with room for a
# slow one. What these hold off takes hours, or all the memory there is.
PROCESSOR_SECONDS = 3.0


def block(*lines: str, before: str = "") -> str:
    """A block of 12 in with these lines, after the fabrics."""
    return f'{FABRICS}{before}block "Large"\n  size 12 in\n' + "".join(f"  {line}\n" for line in lines)


def row(words: str, times: int) -> str:
    return "row " + f"{words} " * times


def codes(text: str, files: dict[str, str] | None = None) -> list[str]:
    """The errors that a text has."""
    problems = Problems()
    start = time.process_time()
    analyse(Source("large.block", text), TextReader(files), problems)
    assert time.process_time() - start < PROCESSOR_SECONDS
    return [problem.code for problem in problems if problem.severity == "error"]


def tower(levels: int, across: int, last: str = "  row light") -> str:
    """Units of units: each is `across` by `across` of the next."""
    rows = f"  {row('t{}', across)}\n" * across
    units = [f"unit t{level}\n" + rows.replace("{}", str(level + 1)) for level in range(levels - 1)]
    return "".join(units) + f"unit t{levels - 1}\n{last}\n"


REFUSED = {
    "a file over 1 MiB": ("file-too-large", block("row light dark") + "# words\n" * 140_000),
    "201 cells across": ("too-many-cells", block(row("light", 201))),
    "201 rows": ("too-many-cells", block(*["row light"] * 201)),
    "a squared paper of 201 by 2": ("too-many-cells", block("grid 201 x 2", "patch light at 0,0 201,0 201,2 0,2")),
    "a squared paper without end": ("too-many-cells", block(f"grid {'9' * 30} x 2", "patch light at 0,0 1,0 1,2")),
    "120,000 patches in three checkerboards": ("too-many-patches", block(row("(checker 200 x 200 light dark)", 3))),
    "120,000 triangles among squares": (
        "too-many-patches",
        block(*[row("(hourglass light dark)", 200)] * 150),
    ),
    "20 by 20 units 32 deep in one another": (
        "too-many-patches",
        block("row t0", before=tower(32, 20, "  row light dark\n  row dark light")),
    ),
    "200 by 200 units of 200 by 200 patches": (
        "too-many-patches",
        block(*[row("many", 200)] * 200, before="unit many = checker 200 x 200 light dark\n"),
    ),
    "200,000 units that each hold one other": (
        "too-many-units",
        block(*[row("t0", 100)] * 100, before=tower(20, 1)),
    ),
    "units 33 deep": ("nesting-too-deep", block("row t0", before=tower(33, 1))),
    "units 60 deep and 2 wide": ("nesting-too-deep", block("row t0", before=tower(60, 2))),
    "brackets 33 deep": ("nesting-too-deep", block("row " + "(" * 33 + "half light dark" + ")" * 33)),
    "a size over 10 m": ("size-too-large", block("row light").replace("12 in", "1000.1 cm")),
    "a size over 10 m in inches": ("size-too-large", block("row light").replace("12 in", "393 3/4 in")),
    "one side over 10 m": ("size-too-large", block("row light").replace("12 in", "12 x 400 in")),
    "columns in billionths": ("grid-too-fine", block("columns 1.0000000001 1", "row light dark")),
    "corners in billionths": ("grid-too-fine", block("grid 1 x 1", "patch light at 0,0 1,0 1,1.0000000001 0,1")),
    "100 by 101 blocks": ("too-many-blocks", block("row light", 'quilt "Q"', 'set straight 100 x 101 of "Large"')),
    "a quilt over 10 m": ("size-too-large", block("row light", 'quilt "Q"', 'set straight 33 x 1 of "Large"')),
    "numbers of 31 digits": ("number-too-long", block(f"columns 1 {'9' * 31}", "row light dark")),
}


@pytest.mark.parametrize(("code", "text"), REFUSED.values(), ids=list(REFUSED))
def test_what_is_too_large_is_refused_by_its_name(code: str, text: str) -> None:
    assert set(codes(text)) == {code}


@pytest.mark.parametrize(("code", "text"), REFUSED.values(), ids=list(REFUSED))
def test_what_is_too_large_leaves_the_output_folder_as_it_was(
    code: str, text: str, tmp_path: Path, capfd: pytest.CaptureFixture[str]
) -> None:
    path, out = tmp_path / "large.block", tmp_path / "out"
    out.mkdir()
    (out / "large.svg").write_text("from an earlier day", encoding="utf-8")
    path.write_text(text, encoding="utf-8")
    assert main(["build", str(path), "-o", str(out)]) == 1
    assert f"error[{code}]" in capfd.readouterr().err
    assert [(file.name, file.read_text("utf-8")) for file in out.iterdir()] == [("large.svg", "from an earlier day")]


ALLOWED = {
    "200 cells across": block(row("light", 200)),
    "200 rows": block(*["row light"] * 200),
    "units 32 deep": block("row t0", before=tower(32, 1)),
    "a size of 10 m": block("row light").replace("12 in", "1000 cm"),
    "a size of 393 7/10 in, a hair under 10 m": block("row light").replace("12 in", "393 7/10 in"),
    "columns in millionths": block("columns 1.000001 1", "row light dark"),
    "a file of 1 MiB": (block("row light dark") + "# ").ljust(1 << 20, "-"),
}


@pytest.mark.parametrize("text", ALLOWED.values(), ids=list(ALLOWED))
def test_what_is_just_within_the_limits_passes(text: str) -> None:
    assert codes(text) == []


def test_files_that_use_one_another_more_than_32_deep_are_refused() -> None:
    files = {f"f{number}.block": f'use "f{number + 1}.block"\n' for number in range(2000)}
    assert codes('use "f0.block"\n', files) == ["nesting-too-deep"]
    files["f31.block"] = "# the end\n"
    assert codes('use "f0.block"\n', files) == []


def test_ten_thousand_unknown_names_are_told_without_a_wait() -> None:
    rows = ["row " + " ".join(f"n{down}a{across}" for across in range(100)) for down in range(100)]
    palette = "".join(f'fabric f{number} "F" #102030\n' for number in range(1000))
    assert codes(block(*rows, before=palette)) == ["name-unknown"] * 10_000


def test_a_thousand_fabrics_side_by_side_are_compared_without_a_wait() -> None:
    rows = ["row " + " ".join(f"f{down * 40 + across}" for across in range(40)) for down in range(25)]
    palette = "".join(f'fabric f{number} "F" #{number * 16_000:06x}\n' for number in range(1000))
    assert codes(block(*rows, before=palette)) == []
