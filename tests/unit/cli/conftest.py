"""A folder with a palette and a block, and the command run in it."""

import io
import sys
from pathlib import Path

import pytest

from blockdsl.cli import main
from tests.unit.cli.pinwheel import PALETTE, PINWHEEL, Ended, Run


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The current folder: `palette.block` and `pinwheel.block`, which uses it."""
    (tmp_path / "palette.block").write_text(PALETTE, encoding="utf-8")
    (tmp_path / "pinwheel.block").write_text(PINWHEEL, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    monkeypatch.delenv("SOURCE_DATE_EPOCH", raising=False)
    return tmp_path


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch) -> Run:
    """Runs the command with these words, and this on its standard input."""

    def run_with(*words: str, typed: str = "") -> Ended:
        monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(typed.encode())))
        capsys.readouterr()
        status = main(words)
        said = capsys.readouterr()
        return Ended(status, said.out, said.err)

    return run_with
