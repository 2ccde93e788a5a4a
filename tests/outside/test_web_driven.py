"""A site driven in Chromium by keys alone: sizes, pictures, the search, with scripts and without."""

from __future__ import annotations

import json
import subprocess
from pathlib import Path
from typing import Any

import pytest

SIZES = ["6 in", "9 in", "12 in"]


@pytest.fixture(scope="module")
def driven(demo_site: Path, project: Path) -> dict[str, Any]:
    """What is seen on the way through the demo book."""
    driver = project / "tests/outside/web/drive.mjs"
    words = ["node", str(driver), str(demo_site), "harbour-light", "dog-ears"]
    found = subprocess.run(words, capture_output=True, text=True, timeout=120, check=False)
    assert found.returncode == 0, found.stderr
    told: dict[str, Any] = json.loads(found.stdout)
    return told


def test_one_size_is_seen_at_a_time(driven: dict[str, Any]) -> None:
    """The published formulas: half squares of 1/8 of the block are cut from squares of that and 7/8 in."""
    assert [size["chosen"] for size in driven["sizes"]] == SIZES
    assert [size["cells"][2] for size in driven["sizes"]] == ["1 5/8", "2", "2 3/8"]
    assert [size["cells"][0] for size in driven["sizes"]] == ["4 1/4", "5 3/4", "7 1/4"]
    for size, side in zip(driven["sizes"], (6, 9, 12), strict=True):
        assert size["steps"][-1].startswith(f"{side} 1/2 × {side} 1/2 in")
        assert len(size["steps"]) == len(driven["sizes"][0]["steps"])


def test_the_chosen_size_holds_and_is_the_one_printed(driven: dict[str, Any]) -> None:
    assert driven["kept"] == "12 in"
    assert driven["printed"] == ["12 in"]


def test_the_size_is_chosen_without_scripts_too(driven: dict[str, Any]) -> None:
    assert driven["unscripted"]["sizes"] == driven["sizes"]


def test_a_browser_that_cannot_choose_shows_every_size(driven: dict[str, Any]) -> None:
    each = [size["cells"] for size in driven["sizes"]]
    assert driven["unable"] == [cell for cells in zip(*each, strict=True) for cell in cells]


def test_a_picture_is_enlarged_by_the_space_bar_and_put_back_by_escape(driven: dict[str, Any]) -> None:
    before, large, after = driven["enlarged"]
    assert large > 390
    assert before == after < 390


def test_the_search_finds_pages_by_their_words_and_opens_one(driven: dict[str, Any]) -> None:
    assert driven["found"][0] == driven["opened"] == "Harbour Light"
    assert driven["status"].endswith(str(len(driven["found"])))
    assert "Lights" not in driven["found"]


def test_without_scripts_the_search_lists_every_page(driven: dict[str, Any], demo_site: Path) -> None:
    assert driven["unscripted"]["listed"] == len(list(demo_site.glob("*.html"))) - 1
    assert not driven["unscripted"]["field"]
