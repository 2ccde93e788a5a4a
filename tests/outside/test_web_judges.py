"""Web sites judged by other programs: an HTML validator, and an accessibility checker in a browser."""

from __future__ import annotations

import json
import re
import shutil
import subprocess
from pathlib import Path
from typing import Any

import pytest

from tests.kept import once_in_a_run

INSTALL = "the judges of web sites are missing: .ci/web-judges installs Node.js, Chromium and the packages"
SECONDS = 240

PLANTED = """<!DOCTYPE html>
<html><head><title>Faults</title></head><body><h1>One</h1><h4>Four</h4>
<p style="color:#ccc;background:#fff">pale</p><div style="width:2000px">wide</div>
<img src="elsewhere.png"> <label><input type="checkbox"> small</label></body></html>
"""

GUARDED = """<img src="https://elsewhere.example/seen.png" alt="">
<script>document.title = "changed"</script><script src="https://elsewhere.example/code.js"></script>
<iframe src="https://elsewhere.example/" title="frame"></iframe>
<link rel="stylesheet" href="https://elsewhere.example/style.css"><p style="color:red">styled</p>
"""

SMALLEST, SMALLEST_OF_CLOTH = 10.0, 6.0
MEGABYTE = 1 << 20

Judged = dict[str, Any]


@pytest.fixture(scope="module")
def judged(web_sites: Path, project: Path, tmp_path_factory: pytest.TempPathFactory) -> Judged:
    """What the judges say of each page of both sites, and of one page that has faults."""
    folder = tmp_path_factory.mktemp("judged")
    told: Judged = json.loads(once_in_a_run(lambda: _judge(web_sites, project, folder), "judges of web sites"))
    return told


def _judge(web_sites: Path, project: Path, folder: Path) -> str:
    """What they say as JSON; they take a minute, on both cores."""
    judge = project / "tests/outside/web/judge.mjs"
    assert (judge.parent / "node_modules").is_dir(), INSTALL
    assert shutil.which("node"), INSTALL
    shutil.copytree(web_sites, folder, dirs_exist_ok=True)
    (folder / "planted.html").write_text(PLANTED, encoding="utf-8")
    guarded = (folder / "a-harbour-sampler.web" / "lights.html").read_text(encoding="utf-8")
    guarded = re.sub("<title>.*</title>", "<title>Guarded</title>", guarded)
    (folder / "guarded.html").write_text(guarded.replace("</body>", f"{GUARDED}</body>"), encoding="utf-8")
    found = subprocess.run(["node", judge, folder], capture_output=True, text=True, timeout=SECONDS, check=False)
    assert found.returncode == 0, f"{found.stderr}\n{INSTALL}"
    return found.stdout


@pytest.fixture(scope="module")
def ours(judged: Judged, web_sites: Path) -> Judged:
    """Without the page of faults."""
    pages = {name: told for name, told in judged.items() if name not in {"planted.html", "guarded.html"}}
    assert len(pages) == len(list(web_sites.glob("*/*.html")))
    return pages


def test_the_judges_find_the_faults_of_a_page_that_has_some(judged: Judged) -> None:
    told = judged["planted.html"]
    assert any("lang" in fault for fault in told["html"])
    assert any("alt" in fault for fault in told["html"])
    for screen in ("phone", "desk"):
        for colours in ("light", "dark"):
            kinds = {fault.partition(":")[0] for fault in told["faults"][f"{screen}, {colours}"]}
            assert {"color-contrast", "heading-order", "image-alt", "html-has-lang"} <= kinds
        assert told["too_wide"][screen] > 0


def test_every_page_is_valid_html(ours: Judged) -> None:
    assert {name: told["html"] for name, told in ours.items() if told["html"]} == {}


def test_no_page_keeps_anybody_out_on_a_phone_or_at_a_desk(ours: Judged) -> None:
    assert {name: told["faults"] for name, told in ours.items() if any(told["faults"].values())} == {}


def test_no_page_is_wider_than_the_screen(ours: Judged) -> None:
    assert {name: told["too_wide"] for name, told in ours.items() if any(told["too_wide"].values())} == {}


def test_pages_ask_for_their_own_files_and_nothing_else(ours: Judged) -> None:
    for name, told in ours.items():
        assert all(address.startswith("file:///") for address in told["asked_for"])
        endings = {address.rpartition(".")[2] for address in told["asked_for"]}
        assert {"css", "woff2", "js"} <= endings <= {"html", "css", "woff2", "ttf", "js"}, name


def test_the_policy_of_a_page_refuses_nothing_that_it_needs(ours: Judged) -> None:
    assert {name: told["refused"] for name, told in ours.items() if told["refused"]} == {}


def test_the_policy_of_a_page_refuses_what_is_planted_in_it(judged: Judged) -> None:
    told = judged["guarded.html"]
    elsewhere = [address for address in told["asked_for"] if "elsewhere" in address]
    assert len(elsewhere) >= 3
    assert {f"{address} csp" for address in elsewhere} <= set(told["blocked"])
    assert any("Content Security Policy" in fault for fault in told["refused"])
    assert told["title"] == "Guarded"


def test_links_boxes_and_switches_are_large_enough_for_a_finger(ours: Judged, judged: Judged) -> None:
    assert {name: told["narrow"] for name, told in ours.items() if told["narrow"]} == {}
    assert judged["planted.html"]["narrow"]


def test_letters_in_pictures_can_be_read_on_a_phone(ours: Judged) -> None:
    """Strips of cloth are drawn to one scale: their letters are read when they are enlarged, 1.8 times."""
    least = {name: told["smallest"] for name, told in ours.items() if told["smallest"] is not None}
    assert min(least.values()) >= SMALLEST_OF_CLOTH
    of_blocks = {name: height for name, height in least.items() if name.endswith("harbour-light.html")}
    assert of_blocks
    assert min(of_blocks.values()) >= SMALLEST


def test_a_page_loads_at_most_a_megabyte(ours: Judged) -> None:
    assert max(told["bytes"] for told in ours.values()) <= MEGABYTE


def test_every_page_is_set_in_the_sites_own_font(ours: Judged) -> None:
    for name, told in ours.items():
        assert {"FiraGO 400", "FiraGO 600"} <= set(told["fonts"]), name
