"""No English word is left on German and French pages: the demo book and ten sheets of the library, word by word.

What the maker wrote stays as she wrote it: her names, labels, notes and sources are taken out beforehand.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import cache
from importlib.resources import files
from pathlib import Path
from typing import Final, Literal

import pytest

from blockdsl import pipeline
from blockdsl.analysis.reading import FileReader, read_library
from blockdsl.diagnostics import Source
from blockdsl.facts import FileFacts
from blockdsl.fullsize.foundation import foundation_pages
from blockdsl.fullsize.papers import paper_pages
from blockdsl.fullsize.templates import template_pages
from blockdsl.marks.display_list import Page
from blockdsl.page.book.book import book_document
from blockdsl.page.book.parts import texts_of
from blockdsl.page.scale_check_page import check_print_page
from blockdsl.page.sheet import block_sheet
from blockdsl.resources import library_folder

WORD: Final = re.compile(r"[^\W\d_]{2,}")


def words(text: str) -> set[str]:
    return {word.lower() for word in WORD.findall(text)}


SHARED: Final = {
    "de": words(
        "also an block blocks cm diagonal finger in log cabin mm name paper parallel part patch patchwork quilt quilts"
        " radius rest segment set so toner was yd fat quarter quarters flying geese foundation piecing four nine war"
        " hand letter"
    ),
    "fr": words(
        "angle base block blocks border cabin cm cutter cutters direction face faces fat quarter quarters image images"
        " index instructions large letter log long machine machines mm notes on page pages part patchwork place plus"
        " point points quilt quilts rectangle rectangles second section sections segment segments source table"
        " techniques total triangle triangles yd"
    ),
}
"""What a language writes as English does, or borrows: `an`, `so`, `war`, `Quilt`, `page`, `angle`."""
SHEETS: Final = (
    "crosses", "curves", "eight-point", "five-patch", "one-patch", "rounds", "seven-patch", "slants", "stars", "strips",
)  # fmt: skip
"""The first block of each is printed."""

SECTIONS: Final = """
fabric fog   "Q1" #dfe3e0
fabric slate "Q2" #3a4750
block "Q3"
  size 6 in
  make quarters as foundation
  row (quarters fog slate fog slate) fog
  row fog (quarters fog slate fog slate)
"""
"""A unit of two foundation papers, which are joined."""


@cache
def english() -> set[str]:
    """The words of the American messages, without keys, arguments, choices and comments."""
    found: set[str] = set()
    for source in files("blockdsl.wording").joinpath("en-US").iterdir():
        text = re.sub(r"^#.*$", "", source.read_text(encoding="utf-8"), flags=re.MULTILINE)
        text = re.sub(r"^(-?[a-z][\w-]*|\s+\.[a-z]+) *=", "", text, flags=re.MULTILINE)
        text = re.sub(r"\{[^{}\"]*?(->|\})|^\s*\*?\[[^\]]*\]", "", text, flags=re.MULTILINE)
        found |= words(text)
    return found


class WithoutWords(FileReader):
    """Reads files with the maker's own words replaced by numbers: `"Harbour fog"` is `"Q12"`; her pages are empty."""

    def __init__(self, project: Path) -> None:
        super().__init__(project)
        self.known: dict[str, str] = {}
        self.units: set[str] = set()

    def without(self, source: Source) -> Source:
        self.units |= words(" ".join(re.findall(r"^unit ([\w-]+)", source.text, re.MULTILINE)))
        text = re.sub(
            r"^(?!use |\s*text )(.*)$",
            lambda line: re.sub(r'"([^"]*)"', lambda name: self.number(name[1]), line[0]),
            source.text,
            flags=re.MULTILINE,
        )
        return Source(source.name, text)

    def number(self, name: str) -> str:
        return f'"{self.known.setdefault(name, f"Q{len(self.known)}")}"'

    def used(self, path: str, by: str) -> Source:
        source = super().used(path, by)
        return Source(source.name, "# Q\n") if path.endswith(".md") else self.without(source)

    def library(self, name: str) -> Source:
        return self.without(read_library(name))


def read(name: str, language: Literal["de", "fr"]) -> tuple[FileFacts, set[str]]:
    """The facts of a file of the library, and the words in the names of its units."""
    path = Path(library_folder()) / f"{name}.block"
    reader = WithoutWords(path.parent)
    source = reader.without(Source(str(path), path.read_text(encoding="utf-8")))
    stages = pipeline.run(source, reader, language=language)
    assert not stages.problems.has_errors
    return stages.facts, reader.units


def words_on(pages: Iterable[Page]) -> set[str]:
    return {word for page in pages for text in texts_of(page.marks) for word in words(text)}


def left(said: set[str], language: Literal["de", "fr"], units: set[str]) -> list[str]:
    return sorted(said & english() - SHARED[language] - units)


@pytest.mark.parametrize("language", ["de", "fr"])
@pytest.mark.parametrize("name", SHEETS)
def test_no_english_word_is_left_on_a_sheet(name: str, language: Literal["de", "fr"]) -> None:
    facts, units = read(name, language)
    said = {
        word for page in block_sheet(facts.blocks[0]).pages for text in texts_of(page.marks) for word in words(text)
    }
    assert len(said) > 60
    assert left(said, language, units) == []


@pytest.mark.parametrize("language", ["de", "fr"])
def test_no_english_word_is_left_in_the_demo_book(language: Literal["de", "fr"]) -> None:
    facts, units = read("demo/book", language)
    said = {
        word for page in book_document(facts.books[0]).pages for text in texts_of(page.marks) for word in words(text)
    }
    assert len(said) > 600
    assert left(said, language, units) == []


@pytest.mark.parametrize("language", ["de", "fr"])
def test_no_english_word_is_left_on_what_is_printed_at_full_size(language: Literal["de", "fr"]) -> None:
    facts, units = read("demo/tide-table", language)
    pages = [*template_pages(facts.blocks[0], paper="a4").pages, check_print_page("a4", language)]
    for name in ("rounds", "triangles"):
        for block in read(name, language)[0].blocks:
            if block.foundations:
                pages += foundation_pages(block, paper="a4").pages
            if block.papers:
                pages += paper_pages(block, paper="a4").pages
    sections = pipeline.run(Source("<text>", SECTIONS), FileReader(Path(library_folder())), language=language).facts
    pages += foundation_pages(sections.blocks[0], paper="a4").pages
    said = words_on(pages)
    assert len(said) > 60
    assert left(said, language, units) == []
