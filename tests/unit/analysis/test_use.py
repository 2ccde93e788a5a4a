"""`use`: what comes in from other files, and what stands over what."""

import os
from pathlib import Path

import pytest

from blockdsl.analysis import FileReader, TextReader, analyse
from blockdsl.diagnostics import Problems, Source
from blockdsl.model import Fabric
from tests.unit.model.blocks import read

THEIRS = 'fabric fog "Theirs" #ffffff\n'
MINE = 'fabric fog "Mine" #000000\n'
BLOCK = 'block "B"\n  size 6 in\n  row fog\n'


def label_of_fog(text: str, files: dict[str, str]) -> str:
    facts, problems = read(text, files)
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    return facts.blocks[0].fabrics[0].label


def codes(text: str, files: dict[str, str] | None = None) -> list[str]:
    return [problem.code for problem in read(text, files)[1]]


def test_a_fabric_comes_in_from_another_file() -> None:
    assert label_of_fog('use "cloth.block"\n' + BLOCK, {"cloth.block": THEIRS}) == "Theirs"


@pytest.mark.parametrize("text", ['use "cloth.block"\n' + MINE, MINE + 'use "cloth.block"\n'])
def test_a_files_own_fabric_stands_over_one_brought_in_wherever_the_use_line_is(text: str) -> None:
    assert label_of_fog(text + BLOCK, {"cloth.block": THEIRS}) == "Mine"


def test_a_files_own_unit_stands_over_one_brought_in() -> None:
    text = 'use "units.block"\nfabric fog "Fog" #ffffff\nfabric slate "Slate" #202020\n'
    files = {"units.block": "unit one\n  row fog slate\n"}
    facts, problems = read(text + 'unit one\n  row slate fog\nblock "B"\n  size 6 in\n  row one\n', files)
    assert [problem.code for problem in problems] == ["unit-does-not-fit"]
    facts, problems = read(text + 'unit one = half slate fog\nblock "B"\n  size 6 in\n  row one\n', files)
    assert problems == []
    assert facts.blocks[0].placed[0].fabric == "slate"


def test_what_a_used_file_uses_comes_in_too() -> None:
    files = {"units.block": 'use "cloth.block"\nunit one\n  row fog fog\n  row fog fog\n', "cloth.block": THEIRS}
    assert codes('use "units.block"\nblock "B"\n  size 6 in\n  row one\n', files) == []


def test_a_file_that_comes_in_by_two_ways_comes_in_once() -> None:
    files = {
        "one.block": 'use "cloth.block"\nunit one = rails fog fog\n',
        "two.block": 'use "cloth.block"\nunit two = bars fog fog\n',
        "cloth.block": THEIRS,
    }
    text = 'use "one.block"\nuse "two.block"\nblock "B"\n  size 6 in\n  row one two\n  row two one\n'
    facts, problems = read(text, files)
    assert problems == []
    assert facts.sources == ("mine.block", "one.block", "cloth.block", "two.block")


def test_blocks_of_a_used_file_are_not_made_again() -> None:
    facts, _ = read('use "other.block"\n' + BLOCK, {"other.block": THEIRS + 'block "Other"\n  size 3 in\n  row fog\n'})
    assert [block.name for block in facts.blocks] == ["B"]


def test_a_name_declared_twice_in_one_file_is_one_mistake_that_shows_both_places() -> None:
    problems = read(MINE + MINE + BLOCK)[1]
    assert [problem.code for problem in problems] == ["name-twice"]
    assert problems[0].span.line == 2
    assert [span.line for span, _ in problems[0].related] == [1]


def test_a_fabric_and_a_unit_may_not_share_a_name() -> None:
    assert codes(MINE + "unit fog = rails fog fog\n" + BLOCK) == ["name-twice"]


def test_two_blocks_of_one_name_are_told_apart_or_refused() -> None:
    assert codes(MINE + BLOCK + BLOCK) == ["name-twice"]


def test_files_that_use_each_other_are_a_ring() -> None:
    files = {"one.block": 'use "two.block"\n', "two.block": 'use "one.block"\n' + THEIRS}
    assert codes('use "one.block"\n' + BLOCK, files) == ["use-cycle"]


def test_a_file_that_uses_itself_is_a_ring() -> None:
    assert codes('use "mine.block"\n' + MINE + BLOCK, {"mine.block": ""}) == ["use-cycle"]


def test_a_missing_file_is_one_mistake_whatever_it_would_have_declared() -> None:
    lines = [
        'use "gone.block"',
        'block "Rows"\n  size 6 in\n  row sky sea/sand (half dune reed)',
        'block "Free"\n  size 6 in\n  grid 1 x 1\n  patch sky at 0,0 1,0 1,1 0,1\n  colourway "Night" sky=sea',
    ]
    assert codes("\n".join(lines)) == ["use-missing"]


def test_a_fabric_that_could_not_be_read_is_not_missed_again() -> None:
    # the broken line names `fogg`; `fog` is near it, and yet `fogg` is no slip for `fog`
    text = 'fabric fogg "Fog"\nfabric fog "Other" #ffffff\nblock "B"\n  size 6 x 3 in\n  row fogg fog\n'
    assert codes(text) == ["fabric-colour-missing"]


def test_an_unknown_library_is_answered_with_those_that_there_are() -> None:
    problems = read('use library "no-such"\n' + MINE + BLOCK)[1]
    assert [problem.code for problem in problems] == ["library-unknown"]
    assert problems[0].help


# --- files on the disk ---------------------------------------------------------------------------


def from_disk(folder: Path, text: str, project: Path) -> tuple[list[str], list[Fabric]]:
    problems = Problems()
    source = Source(str(folder / "mine.block"), text)
    program = analyse(source, FileReader(project), problems)
    return [problem.code for problem in problems], [fabric for block in program.blocks for fabric in block.fabrics]


def test_paths_start_from_the_folder_of_the_file_that_says_them(tmp_path: Path) -> None:
    (tmp_path / "cloth").mkdir()
    (tmp_path / "cloth" / "all.block").write_text('use "greys.block"\n')
    (tmp_path / "cloth" / "greys.block").write_text(THEIRS)
    codes_found, fabrics = from_disk(tmp_path, 'use "cloth/all.block"\n' + BLOCK, tmp_path)
    assert codes_found == []
    assert [fabric.label for fabric in fabrics] == ["Theirs"]


@pytest.mark.parametrize("path", ["../outside.block", "deep/../../outside.block"])
def test_a_path_may_not_leave_the_project(tmp_path: Path, path: str) -> None:
    project = tmp_path / "project"
    project.mkdir()
    (tmp_path / "outside.block").write_text(THEIRS)
    assert from_disk(project, f'use "{path}"\n' + BLOCK, project)[0] == ["use-leaves-project"]


def test_an_absolute_path_leaves_the_project(tmp_path: Path) -> None:
    (tmp_path / "cloth.block").write_text(THEIRS)
    assert from_disk(tmp_path, f'use "{tmp_path}/cloth.block"\n' + BLOCK, tmp_path)[0] == ["use-leaves-project"]


def test_a_link_that_leads_out_of_the_project_leaves_it(tmp_path: Path) -> None:
    project = tmp_path / "project"
    project.mkdir()
    (tmp_path / "outside.block").write_text(THEIRS)
    (project / "inside.block").symlink_to(tmp_path / "outside.block")
    assert from_disk(project, 'use "inside.block"\n' + BLOCK, project)[0] == ["use-leaves-project"]


def test_a_missing_file_is_answered_with_its_neighbours(tmp_path: Path) -> None:
    (tmp_path / "greys.block").write_text(THEIRS)
    problems = Problems()
    analyse(Source(str(tmp_path / "mine.block"), 'use "grays.block"\n' + BLOCK), FileReader(tmp_path), problems)
    found = list(problems)
    assert [problem.code for problem in found] == ["use-missing"]
    assert "greys.block" in (found[0].help or "")


@pytest.mark.parametrize(
    ("content", "code"), [(b"# \xff\xfe\n", "file-unreadable"), (b"# " + b"x" * (1 << 20), "file-too-large")]
)
def test_a_used_file_that_is_no_block_file_is_refused(tmp_path: Path, content: bytes, code: str) -> None:
    (tmp_path / "bad.block").write_bytes(content)
    assert from_disk(tmp_path, 'use "bad.block"\n' + BLOCK, tmp_path)[0] == [code]


def test_a_folder_is_no_block_file(tmp_path: Path) -> None:
    (tmp_path / "cloth.block").mkdir()
    assert from_disk(tmp_path, 'use "cloth.block"\n' + BLOCK, tmp_path)[0] in (["use-missing"], ["file-unreadable"])


def test_a_byte_order_mark_is_no_slip(tmp_path: Path) -> None:
    (tmp_path / "cloth.block").write_bytes(b"\xef\xbb\xbf" + THEIRS.encode())
    assert from_disk(tmp_path, 'use "cloth.block"\n' + BLOCK, tmp_path)[0] == []


def test_a_slip_in_a_used_file_is_told_at_its_own_place() -> None:
    problems = Problems()
    analyse(
        Source("mine.block", 'use "cloth.block"\n' + MINE + BLOCK), TextReader({"cloth.block": "fabrik x\n"}), problems
    )
    assert [(problem.span.source.name, problem.span.line) for problem in problems] == [("cloth.block", 1)]


def test_folders_and_pipes_are_no_files_and_nothing_is_waited_for(tmp_path: Path) -> None:
    (tmp_path / "folder.block").mkdir()
    os.mkfifo(tmp_path / "pipe.block")
    reader, problems = FileReader(tmp_path), Problems()
    main = Source(str(tmp_path / "main.block"), 'use "folder.block"\nuse "pipe.block"\n')
    analyse(main, reader, problems)
    assert [(problem.code, problem.message) for problem in problems] == [
        ("file-unreadable", "the file cannot be read: it is a folder"),
        ("file-unreadable", "the file cannot be read: it is no plain file"),
    ]
