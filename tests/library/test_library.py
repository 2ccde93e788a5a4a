"""Every block file that comes with blockdsl: clean, in its usual form, its designer's checks kept."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path

import pytest

from blockdsl import pipeline
from blockdsl.analysis import FileReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts.collect import FileFacts
from blockdsl.resources import library_folder, library_names, library_path
from blockdsl.syntax.format import format_text

PALETTES = ("basics", "demo/palette")
"""Files of fabrics and units."""
BOOKS = ("demo/book",)
"""Files that print the blocks of others."""
QUILTS = ("demo/breakwater",)
"""Files that set the blocks of others; all others hold blocks."""
FAMILIES = tuple(name for name in library_names() if name not in (*PALETTES, *BOOKS, *QUILTS))
TRADITIONAL = tuple(name for name in FAMILIES if not name.startswith("demo/"))
DEMO = tuple(name for name in FAMILIES if name.startswith("demo/"))
IN_PRINT = re.compile(r"\b(?:18\d\d|19[01]\d|192[0-8])s?\b")
"""A year of print before 1929."""
NOT_KNOWN = "No source before 1929 is known"
CITED = {
    "Webster": "M. D. Webster, Quilts: Their Story and How to Make Them, 1915",
    "Ladies": "Ladies' Art Company, ",
    "Stone": "Clara Stone, patterns of ",
    "Caulfeild": "S. F. A. Caulfeild and B. C. Saward, The Dictionary of Needlework, 1882",
}
"""One spelling for each source, by a word that stands for it."""


def _text(name: str) -> str:
    return library_path(name).read_text(encoding="utf-8")


@cache
def _facts(name: str) -> tuple[FileFacts, list[str]]:
    problems = Problems()
    # The demo's files use each other by path, as a quilter's own files do.
    source = Source(str(library_path(name)), _text(name))
    facts = pipeline.run(source, FileReader(library_folder()), problems).facts
    return facts, [f"{problem.span.line}: {problem.message}" for problem in problems]


@pytest.mark.parametrize("name", library_names())
def test_a_file_of_the_library_has_no_errors_and_no_warnings(name: str) -> None:
    # The designer's own `expect` lines are errors when they do not hold, so they are part of this promise.
    _, problems = _facts(name)
    assert problems == []


@pytest.mark.parametrize("name", library_names())
def test_a_file_of_the_library_is_in_its_usual_form(name: str) -> None:
    text = _text(name)
    assert format_text(Source(name, text)) == text


@pytest.mark.parametrize("name", FAMILIES)
def test_every_block_of_the_library_is_checked_by_its_designer(name: str) -> None:
    blocks = _text(name).split('\nblock "')[1:]
    assert blocks
    assert all("\n  expect " in block for block in blocks)


@pytest.mark.parametrize("name", FAMILIES)
def test_every_block_of_the_library_covers_its_whole_square(name: str) -> None:
    facts, _ = _facts(name)
    for block in facts.blocks:
        width, height = block.finished
        assert block.cover.area == width * height


@pytest.mark.parametrize("name", TRADITIONAL)
def test_every_traditional_block_says_its_family_and_where_it_was_published(name: str) -> None:
    facts, _ = _facts(name)
    for block in facts.blocks:
        assert block.family, f"{block.name}: add a `family` line"
        said = " ".join(block.sources)
        cited = IN_PRINT.search(said.replace(NOT_KNOWN, "").replace("the 1840s", ""))
        assert (cited is not None) != (NOT_KNOWN in said), f"{block.name}: name its source, or say that none is known"
        for word, spelled in CITED.items():
            assert said.count(word) == said.count(spelled), f"{block.name}: one spelling for each source"
        assert "that description" not in said, f"{block.name}: say whose description"


@pytest.mark.parametrize("name", QUILTS)
def test_every_quilt_of_the_library_is_checked_by_its_designer(name: str) -> None:
    facts, _ = _facts(name)
    assert facts.quilts
    assert "\n  expect finished " in _text(name)
    assert "\n  expect blocks " in _text(name)


def test_the_library_holds_more_than_a_hundred_traditional_blocks_each_named_once() -> None:
    names = [block.name for name in TRADITIONAL for block in _facts(name)[0].blocks]
    assert len(names) == len(set(names))
    assert len(names) > 100


def test_the_demo_holds_one_block_in_centimetres_and_four_in_inches() -> None:
    units = sorted(block.unit for name in DEMO for block in _facts(name)[0].blocks)
    assert units == ["cm", "in", "in", "in", "in"]


def test_every_block_of_the_demo_has_another_colourway_and_a_note() -> None:
    for name in DEMO:
        for block in _facts(name)[0].blocks:
            assert block.colourways, block.name
            assert block.notes or block.remarks, block.name


def test_a_fabric_of_the_file_itself_recolours_the_librarys_units() -> None:
    text = 'use library "basics"\nfabric main "My plum" #5b2a4a dark\nblock "Mine"\nsize 6 in\nrow pinwheel\n'
    problems = Problems()
    facts = pipeline.run(Source("mine.block", text), FileReader(Path()), problems).facts
    assert list(problems) == []
    assert {fabric.name: fabric.label for fabric in facts.blocks[0].fabrics} == {"ground": "Ground", "main": "My plum"}
