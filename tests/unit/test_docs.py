"""The documentation as a site: every page, every example drawn, every link leading somewhere."""

from __future__ import annotations

import re
from functools import cache
from posixpath import dirname, join, normpath

import pytest

from blockdsl.docs.site import documentation
from blockdsl.resources import documentation_folder
from tests.spec.pages import examples


@cache
def site() -> dict[str, str]:
    return {name: data.decode() for name, data in documentation().items() if name.endswith(".html")}


def test_every_page_of_the_reference_is_a_page_of_the_site() -> None:
    folder = documentation_folder()
    pages = {path.relative_to(folder).with_suffix(".html").as_posix() for path in folder.rglob("*.md")}
    assert set(site()) == {name.replace("README.html", "index.html") for name in pages} | {"problems/index.html"}


def test_every_link_leads_to_a_page_of_the_site() -> None:
    broken = [
        (name, link)
        for name, text in site().items()
        for link in re.findall(r'<a href="([^"#]+)', text)
        if "://" not in link and normpath(join(dirname(name), link)) not in site()
    ]
    assert broken == []


@pytest.mark.parametrize("page", ["03-rows-and-cells", "05-shapes", "15-quilts", "20-cookbook"])
def test_every_example_that_is_good_and_has_a_block_is_drawn(page: str) -> None:
    path = documentation_folder() / f"{page}.md"
    good = [
        each for each in examples(path) if not each.expected and re.search(r"^(block|quilt) ", each.text, re.MULTILINE)
    ]
    assert site()[f"{page}.html"].count('<div class="pictures">') >= len(good) > 0


def test_below_a_bad_example_stands_what_is_said_of_it() -> None:
    text = site()["problems/name-unknown.html"]
    assert '<pre class="told">' in text
    assert "error[name-unknown]" in text


def test_no_page_runs_a_script_or_loads_anything_from_elsewhere() -> None:
    for text in site().values():
        assert "<script" not in text
        assert re.findall(r'<(?:link|img|source)[^>]*(?:src|href)="[a-z]+://', text) == []
