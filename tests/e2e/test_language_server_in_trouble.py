"""Whatever an editor sends, the language server goes on."""

from __future__ import annotations

import subprocess
from pathlib import Path

import pytest

from tests.fuzz.messages import Server, trouble


def test_no_message_ends_or_hangs_the_server(tmp_path: Path) -> None:
    trouble(300, tmp_path)


def test_an_editor_that_goes_away_takes_the_server_with_it(tmp_path: Path) -> None:
    server = Server(tmp_path)
    server.ask("first", "initialize", {"capabilities": {}})
    assert server.close() == 0


def test_without_its_package_one_line_says_what_to_install(blockdsl_command: str, tmp_path: Path) -> None:
    (tmp_path / "sitecustomize.py").write_text(
        "import sys\n"
        "class Missing:\n"
        "    def find_spec(self, name, path=None, target=None):\n"
        "        if name.split('.')[0] == 'pygls':\n"
        "            raise ModuleNotFoundError(name, name=name.split('.')[0])\n"
        "sys.meta_path.insert(0, Missing())\n",
        encoding="utf-8",
    )
    told = subprocess.run(
        [blockdsl_command, "language-server"],
        capture_output=True,
        text=True,
        check=False,
        env={"PYTHONPATH": str(tmp_path)},
        stdin=subprocess.DEVNULL,
    )
    assert told.stderr == 'blockdsl: the language server needs pygls: pip install "blockdsl[editor]"\n'
    assert told.returncode == 1


@pytest.mark.parametrize("command", ["check", "facts"])
def test_no_other_command_waits_for_the_package(blockdsl_command: str, tmp_path: Path, command: str) -> None:
    (tmp_path / "b.block").write_text('fabric fog "Fog" #dfe3e0\nblock "B"\n  size 2 in\n  row fog\n', encoding="utf-8")
    told = subprocess.run(
        [blockdsl_command, command, "b.block"],
        capture_output=True,
        text=True,
        check=True,
        cwd=tmp_path,
        env={"PYTHONPROFILEIMPORTTIME": "1"},
    )
    assert "blockdsl.syntax" in told.stderr
    assert "pygls" not in told.stderr
    assert "lsprotocol" not in told.stderr
