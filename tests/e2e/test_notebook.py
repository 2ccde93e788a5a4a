"""A notebook that uses `import blockdsl`, really run: its pictures show, its files are there, its mistakes are told."""

from __future__ import annotations

import os
from pathlib import Path
from typing import Any, Final

import nbformat
import pytest
from nbclient import NotebookClient

NOTEBOOK: Final = Path(__file__).with_name("notebook.ipynb")
SHOWN, NUMBERS, WRITTEN, TOLD = range(4)
"""The cells with code, in order."""


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Where the notebook is run."""
    return tmp_path_factory.mktemp("notebook")


@pytest.fixture(scope="module")
def outputs(folder: Path) -> list[dict[str, Any]]:
    """What each cell with code gives, by media type."""
    notebook = nbformat.read(NOTEBOOK, as_version=4)  # type: ignore[no-untyped-call]
    nbformat.validate(notebook)
    environment = {**os.environ, "IPYTHONDIR": str(folder / "ipython"), "JUPYTER_RUNTIME_DIR": str(folder / "runtime")}
    NotebookClient(notebook, timeout=60, resources={"metadata": {"path": str(folder)}}).execute(env=environment)
    return [cell.outputs[-1].data for cell in notebook.cells if cell.cell_type == "code"]


def test_a_result_shows_itself_as_a_picture(outputs: list[dict[str, Any]]) -> None:
    picture = outputs[SHOWN]["image/svg+xml"]
    assert "<title>Pinwheel</title>" in picture
    assert "#3a4750" in picture


def test_the_numbers_are_at_hand(outputs: list[dict[str, Any]]) -> None:
    # Half-square triangles of 3 in finished from squares of 3 7/8 in: the trade's rule, finished + 7/8 in.
    assert outputs[NUMBERS]["text/plain"] == "[('2', 'square', '31/8'), ('2', 'square', '31/8')]"


def test_its_files_are_written_where_it_says(outputs: list[dict[str, Any]], folder: Path) -> None:
    assert (folder / "pinwheel.sheet.pdf").read_bytes().startswith(b"%PDF-")
    assert "Pinwheel, letters" in (folder / "pinwheel.letters.svg").read_text(encoding="utf-8")
    assert outputs[WRITTEN]["text/plain"] == "PosixPath('site/index.html')"
    assert "Pinwheel" in (folder / "site" / "index.html").read_text(encoding="utf-8")


def test_a_mistake_is_told_with_its_line_in_place_of_a_picture(outputs: list[dict[str, Any]]) -> None:
    assert "image/svg+xml" not in outputs[TOLD]
    assert "8:18: error[name-unknown]: there is no fabric `salte`" in outputs[TOLD]["text/plain"]
    assert "help: did you mean `slate`?" in outputs[TOLD]["text/plain"]
