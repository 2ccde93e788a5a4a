"""The same file gives the same bytes wherever and by whomever it is built."""

import os
import shutil
import subprocess
from pathlib import Path

import pytest

from tests.outputs import bytes_below

Built = dict[str, bytes]


def build(folder: Path, command: str, demo: Path, umask: int = 0o022, **environment: str) -> Built:
    """Build a copy of the demo, and give all that was written."""
    shutil.copytree(demo, folder)
    names = sorted(path.name for path in folder.glob("*.block"))
    words = ("build", *names, "-o", "out", "--depfile", "out/rules.d")
    ended = subprocess.run(
        (command, *words),
        cwd=folder,
        env={"PATH": os.environ["PATH"], **environment},
        umask=umask,
        capture_output=True,
        timeout=300,
        check=False,
    )
    assert ended.returncode == 0, ended.stderr.decode()
    out = folder / "out"
    return bytes_below(out)


@pytest.fixture(scope="module")
def built(project: Path, blockdsl_command: str, tmp_path_factory: pytest.TempPathFactory) -> tuple[Built, Built]:
    """The demo built twice, under conditions as different as they can be; building takes long."""
    folder = tmp_path_factory.mktemp("built")
    demo = project / "library" / "demo"
    home = folder / "home of nobody-at-all"
    home.mkdir()
    one = build(folder / "one", blockdsl_command, demo, LC_ALL="C", TZ="UTC", HOME="/nonexistent", PYTHONHASHSEED="1")
    other = build(
        folder / "somewhere-secret" / "zwei und drei",
        blockdsl_command,
        demo,
        umask=0o077,
        LC_ALL="tr_TR.UTF-8",
        TZ="Pacific/Kiritimati",
        HOME=str(home),
        PYTHONHASHSEED="2",
        PYTHONUTF8="0",
        FORCE_COLOR="1",
        COLUMNS="20",
    )
    return one, other


def test_folder_home_language_time_zone_and_terminal_leave_every_byte_as_it_is(built: tuple[Built, Built]) -> None:
    one, other = built
    assert {".pdf", ".svg", ".md", ".csv", ".d", ".html", ".css", ".woff2"} == {Path(name).suffix for name in one}
    assert sorted(one) == sorted(other)
    assert [name for name in one if one[name] != other[name]] == []


def test_no_output_tells_where_it_was_built_or_by_whom(built: tuple[Built, Built]) -> None:
    _, written = built
    told = [name for name, data in written.items() if b"somewhere-secret" in data or b"nobody-at-all" in data]
    assert told == []
