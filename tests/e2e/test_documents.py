"""The README and the developers' guide say what is so: every example in them is run."""

import re
import shlex
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.outputs import in_folder
from tests.snapshots.readme.draw import PICTURE, picture

DOCUMENTS = ("README.md", "DEVELOPERS.md", "out/README.md")


@pytest.fixture(scope="module")
def readme(project: Path) -> str:
    """The README's text."""
    return (project / "README.md").read_text(encoding="utf-8")


def fences(text: str, kind: str) -> list[tuple[str, str]]:
    """The fenced blocks of a kind: what stands beside the kind, a file's name, and the text."""
    return re.findall(rf"^```{kind} ?(\S*)\n(.*?)^```$", text, re.MULTILINE | re.DOTALL)


def table_below(text: str, heading: str) -> list[list[str]]:
    """The cells of the first table whose head begins with these words, without head and rule."""
    rows = re.search(rf"^\| {re.escape(heading)}.*\n\|-.*\n((?:\|.*\n)+)", text, re.MULTILINE)
    assert rows
    return [[cell.strip() for cell in row.strip("|").split("|")] for row in rows[1].splitlines()]


def sessions(text: str) -> Iterator[tuple[list[str], str]]:
    """Each command of the console examples, in order, and what it is said to print."""
    for _, console in fences(text, "console"):
        for part in console.removeprefix("$ ").split("\n$ "):
            line, _, printed = part.partition("\n")
            yield shlex.split(line), printed if not printed or printed.endswith("\n") else f"{printed}\n"


def save(readme: str, folder: Path) -> Path:
    """Every file of the README, saved under the name that the README gives it."""
    for name, text in fences(readme, "block"):
        assert f"Save this as `{name}`" in readme
        (folder / name).write_text(text, encoding="utf-8")
    return folder


@pytest.fixture
def saved(readme: str, tmp_path: Path) -> Path:
    """A new folder with every file of the README."""
    return save(readme, tmp_path)


def run(command: str, *arguments: str, cwd: Path) -> "subprocess.CompletedProcess[str]":
    """Run blockdsl as the README does."""
    return subprocess.run((command, *arguments), cwd=cwd, capture_output=True, text=True, timeout=120, check=False)


@pytest.fixture(scope="module")
def followed(readme: str, blockdsl_command: str, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Such a folder after every command of the README, each of which printed what the README says."""
    folder = save(readme, tmp_path_factory.mktemp("followed"))
    told = [(words, printed) for words, printed in sessions(readme) if words[0] == "blockdsl"]
    found = []
    for words, _ in told:
        ended = run(blockdsl_command, *words[1:], cwd=folder)
        found.append((words, ended.stdout + ended.stderr))
    assert found == told
    return folder


@pytest.mark.parametrize("page", DOCUMENTS)
def test_every_link_and_picture_leads_to_something_that_is_there(project: Path, page: str) -> None:
    text = (project / page).read_text(encoding="utf-8")
    near = [link for link in re.findall(r"\]\(([^)#]+)[^)]*\)", text) if "://" not in link]

    assert [link for link in near if not (project / page).parent.joinpath(link).exists()] == []


@pytest.mark.parametrize("page", DOCUMENTS)
def test_every_goal_that_the_documents_name_is_one_that_make_explains(project: Path, page: str) -> None:
    text = (project / page).read_text(encoding="utf-8")
    said = subprocess.run(("make", "help"), cwd=project, capture_output=True, text=True, timeout=30, check=True).stdout
    named = set(re.findall(r"(?:`|^)make ([a-z]+)\b", text, re.MULTILINE))

    assert named
    assert sorted(goal for goal in named if f"make {goal} " not in said) == []


def test_every_folder_that_the_developers_guide_names_is_there(project: Path) -> None:
    text = (project / "DEVELOPERS.md").read_text(encoding="utf-8")
    layers = re.findall(r"^\| `([a-z]+)` \|", text, re.MULTILINE)
    paths = re.findall(r"`((?:blockdsl|tests|library|grammars|\.ci)/[\w./-]*)`", text)

    assert layers
    assert [layer for layer in layers if not (project / "blockdsl" / layer).is_dir()] == []
    assert [path for path in paths if not (project / path).exists()] == []


def test_every_layer_and_every_folder_of_tests_is_in_the_developers_guide(project: Path) -> None:
    text = (project / "DEVELOPERS.md").read_text(encoding="utf-8")
    layers = {path.parent.name for path in (project / "blockdsl").glob("*/__init__.py")}
    folders = [path for path in (project / "tests").iterdir() if path.name != "__pycache__"]
    tests = {f"tests/{path.name}" for path in folders if any(path.glob("[!_]*.*"))}
    tests |= {f"tests/{path.name}" for path in folders if any(path.glob("*/test_*.py"))}

    assert sorted(layer for layer in layers if f"`{layer}" not in text) == []
    assert sorted(folder for folder in tests if f"`{folder}" not in text) == []


@pytest.mark.parametrize("layer", ["marks", "pictures", "fullsize", "page", "document", "editor"])
def test_the_tour_of_a_layer_names_every_file_in_it_and_no_other(project: Path, layer: str) -> None:
    folder = project / "blockdsl" / layer
    tour = (folder / "__init__.py").read_text(encoding="utf-8").partition("A tour:")[2]
    files = {path.stem for path in folder.glob("*.py") if path.stem != "__init__"}
    packages = {path.parent.name for path in folder.glob("*/__init__.py")}

    assert set(re.findall(r"`(\w+)`", tour)) - {"page"} == (files | packages) - {"page"}


def test_the_picture_of_the_readme_is_what_is_drawn_now(readme: str, project: Path) -> None:
    """When the sheet has changed on purpose, `make readme` draws the picture anew: look at it."""
    assert f"({PICTURE.relative_to(project).as_posix()})" in readme
    assert PICTURE.read_bytes() == picture()


def test_the_files_of_the_readme_have_no_problem_and_are_in_their_usual_form(
    saved: Path, blockdsl_command: str
) -> None:
    names = sorted(path.name for path in saved.iterdir())

    checked = run(blockdsl_command, "check", *names, cwd=saved)
    laid_out = run(blockdsl_command, "format", "--check", *names, cwd=saved)

    assert len(names) == 4
    assert (checked.returncode, checked.stdout + checked.stderr) == (0, "")
    assert (laid_out.returncode, laid_out.stdout + laid_out.stderr) == (0, "")


def test_the_script_of_the_readme_runs_and_writes_what_it_says(readme: str, saved: Path) -> None:
    (script,) = [text for _, text in fences(readme, "python")]

    ended = subprocess.run((sys.executable, "-c", script), cwd=saved, capture_output=True, text=True, check=True)

    # 2 squares of 3 7/8 in of each fabric, as in the table above; nothing is wrong with the file.
    assert ended.stdout == "no problems\n2 square 31/8 fog\n2 square 31/8 slate\n"
    assert sorted(path.name for path in in_folder(saved / "class")) == [
        "letters.svg",
        "mole.pdf",
        "pinwheel.pdf",
        "site",
    ]


def test_the_cutting_table_of_the_readme_is_the_one_that_is_written(readme: str, followed: Path) -> None:
    """By hand: 6 in over two columns is 3 in; 3 + 7/8 is the published rule, and two squares make four units."""
    written = (followed / "out" / "pinwheel.cutting.md").read_text(encoding="utf-8")
    cells = table_below(readme, "fabric ")

    assert written in readme
    assert [row[1:5] for row in cells] == [["2", "squares", "3 7/8 in", "for 4 units"]] * 2


def test_the_files_that_the_readme_lists_are_those_that_are_written(readme: str, followed: Path) -> None:
    listed = set()
    for names, _ in table_below(readme, "file "):
        first, *others = re.findall(r"`([^`]+)`", names)
        listed |= {first} | _others(first, others)

    written = {path.name for path in (followed / "out").iterdir() if path.name.startswith("pinwheel.")}
    assert written == listed


def _others(first: str, endings: list[str]) -> set[str]:
    """The files that a row lists by their endings: those with one dot share all but the last word of the first."""
    stem, whole = first.split(".", maxsplit=1)[0], first.rsplit(".", 1)[0]
    return {f"{stem}{ending}" if ending.count(".") > 1 else f"{whole}{ending}" for ending in endings}


def test_papers_book_and_web_site_are_written_where_the_readme_says(readme: str, followed: Path) -> None:
    named = set(re.findall(r"`(out/(?:sails|from-the-shore|pinwheel|on-the-mole)\.[\w./-]+)`", readme))

    assert {Path(name).suffix for name in named} >= {".pdf", ".html", ".md", ".svg"}
    assert sorted(name for name in named if not (followed / name).is_file()) == []
    assert (followed / "out" / "check-print.pdf").is_file()


def test_the_slip_of_the_readme_is_told_as_it_says(readme: str, saved: Path, blockdsl_command: str) -> None:
    asked = r"With `(\w+)` for `(\w+)` in the last cell:\n\n```text\n(.*?)^```$"
    slip = re.search(asked, readme, re.MULTILINE | re.DOTALL)
    assert slip
    path = saved / "pinwheel.block"
    before, _, after = path.read_text(encoding="utf-8").rpartition(f"{slip[2]}\\")
    path.write_text(f"{before}{slip[1]}\\{after}", encoding="utf-8")

    told = run(blockdsl_command, "check", path.name, cwd=saved)

    assert (told.returncode, told.stderr) == (1, slip[3])


def test_the_commands_of_the_readme_are_those_that_blockdsl_has(
    readme: str, blockdsl_command: str, tmp_path: Path
) -> None:
    told = run(blockdsl_command, "--help", cwd=tmp_path)
    named = [cells[0].strip("`").split()[1] for cells in table_below(readme, "command ")]

    assert told.returncode == 0
    assert named == re.findall(r"^    ([a-z-]+)(?:  .*)?$", told.stdout, re.MULTILINE)


def test_every_option_that_the_readme_names_is_one_of_a_command(
    readme: str, blockdsl_command: str, tmp_path: Path
) -> None:
    commands = ("build", "facts", "check", "gallery")
    told = "".join(run(blockdsl_command, name, "--help", cwd=tmp_path).stdout for name in commands)
    named = set(re.findall(r"(?:`| )(--[a-z-]+)", readme)) - {"--help"}

    assert {"--only", "--paper", "--check-print", "--no-cache"} <= named
    assert sorted(option for option in named if option not in told) == []


def test_make_book_asks_for_no_system_library(project: Path) -> None:
    command = ("make", "--no-print-directory", "--dry-run", "book")
    planned = subprocess.run(command, cwd=project, capture_output=True, text=True, timeout=30, check=True).stdout

    assert "blockdsl build" in planned
    assert "system-libraries" not in planned


def test_everything_but_png_is_written_on_a_machine_without_cairo(readme: str, saved: Path) -> None:
    """The README says that only PNG needs it; here Python finds neither of the packages that load it."""
    assert "but cairo, and that only for PNG pictures" in readme
    line = (
        "import sys; sys.modules['cairocffi'] = sys.modules['cairosvg'] = None; "
        "from blockdsl.cli import main; sys.exit(main())"
    )
    words = ("build", "sails.block", "shore.block", "-o", "out", "--check-print", "--no-cache")

    ended = run(sys.executable, "-c", line, *words, cwd=saved)

    assert ended.returncode == 0, ended.stderr
    assert {path.suffix for path in in_folder(saved / "out")} == {".pdf", ".svg", ".md", ".csv", ".xlsx", ".web"}


def test_the_tutorial_can_be_followed_to_the_letter(project: Path, blockdsl_command: str, tmp_path: Path) -> None:
    """Every file is saved and every command typed in the order of the page; each prints what stands below it."""
    text = (project / "tests/spec/21-tutorial.md").read_text(encoding="utf-8")
    for kind, name, body in re.findall(r"^```(block|console) ?(\S*)\n(.*?)^```$", text, re.MULTILINE | re.DOTALL):
        if kind == "block":
            (tmp_path / name).write_text(body, encoding="utf-8")
            continue
        for words, printed in sessions(f"```console\n{body}```\n"):
            ended = run(blockdsl_command, *words[1:], cwd=tmp_path)
            told = ended.stdout + ended.stderr
            if words[1] == "explain":
                told = ""  # the page is its own; that there is one is enough
                assert ended.returncode == 0
            assert (words, told) == (words, printed)
    assert {path.name for path in (tmp_path / "out").glob("*.pdf")} == {
        "check-print.pdf",
        "lamp.sheet.pdf",
    }
