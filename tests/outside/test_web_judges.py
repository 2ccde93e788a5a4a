"""Web sites judged by other programs: an HTML validator, and an accessibility checker in a browser."""

from __future__ import annotations

import json
import shutil
import subprocess
from pathlib import Path
from typing import Any

import pytest

INSTALL = "the judges of web sites are missing: .ci/web-judges installs Node.js, Chromium and the packages"
SECONDS = 120

PLANTED = """<!DOCTYPE html>
<html><head><title>Faults</title></head><body><h1>One</h1><h4>Four</h4>
<p style="color:#ccc;background:#fff">pale</p><div style="width:2000px">wide</div>
<img src="elsewhere.png"></body></html>
"""

Judged = dict[str, Any]


@pytest.fixture(scope="module")
def judged(web_sites: Path, project: Path, tmp_path_factory: pytest.TempPathFactory) -> Judged:
    """What the judges say of each page of both sites, and of one page that has faults."""
    judge = project / "tests/outside/web/judge.mjs"
    assert (judge.parent / "node_modules").is_dir(), INSTALL
    assert shutil.which("node"), INSTALL
    folder = tmp_path_factory.mktemp("judged")
    shutil.copytree(web_sites, folder, dirs_exist_ok=True)
    (folder / "planted.html").write_text(PLANTED, encoding="utf-8")
    found = subprocess.run(["node", judge, folder], capture_output=True, text=True, timeout=SECONDS, check=False)
    assert found.returncode == 0, f"{found.stderr}\n{INSTALL}"
    told: Judged = json.loads(found.stdout)
    return told


@pytest.fixture(scope="module")
def ours(judged: Judged, web_sites: Path) -> Judged:
    """Without the page of faults."""
    pages = {name: told for name, told in judged.items() if name != "planted.html"}
    assert len(pages) == len(list(web_sites.glob("*/*.html")))
    return pages


def test_the_judges_find_the_faults_of_a_page_that_has_some(judged: Judged) -> None:
    told = judged["planted.html"]
    assert any("lang" in fault for fault in told["html"])
    assert any("alt" in fault for fault in told["html"])
    for screen in ("phone", "desk"):
        kinds = {fault.partition(":")[0] for fault in told["faults"][screen]}
        assert {"color-contrast", "heading-order", "image-alt", "html-has-lang"} <= kinds
        assert told["too_wide"][screen] > 0


def test_every_page_is_valid_html(ours: Judged) -> None:
    assert {name: told["html"] for name, told in ours.items() if told["html"]} == {}


def test_no_page_keeps_anybody_out_on_a_phone_or_at_a_desk(ours: Judged) -> None:
    assert {name: told["faults"] for name, told in ours.items() if any(told["faults"].values())} == {}


def test_no_page_is_wider_than_the_screen(ours: Judged) -> None:
    assert {name: told["too_wide"] for name, told in ours.items() if any(told["too_wide"].values())} == {}


def test_pages_load_their_own_style_and_fonts_and_nothing_else(ours: Judged) -> None:
    for name, told in ours.items():
        assert all(address.startswith("file:///") for address in told["asked_for"])
        endings = {address.rpartition(".")[2] for address in told["asked_for"]}
        assert {"css", "woff2"} <= endings <= {"html", "css", "woff2", "ttf"}, name


def test_every_page_is_set_in_the_sites_own_font(ours: Judged) -> None:
    for name, told in ours.items():
        assert {"FiraGO 400", "FiraGO 600"} <= set(told["fonts"]), name
