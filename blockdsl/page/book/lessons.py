"""The ways of making that a book's blocks use: a list of them, then the lesson of each."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from blockdsl.document.content import Definition, DefinitionList, TextRun, plain, quiet
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.facts.techniquefacts import TechniqueFacts
from blockdsl.facts.techniques import sewn_in_block, sewn_in_quilt, techniques_for
from blockdsl.marks.theme import (
    PaperSize,
)
from blockdsl.page.book.parts import Bodies, BookPart, PageCache
from blockdsl.page.flow import PageNumbers
from blockdsl.page.lesson import technique_bodies
from blockdsl.page.parts import pages_of, title_flowable
from blockdsl.wording.lessons import technique_about, technique_title
from blockdsl.wording.messages import Messages, words_of


def technique_parts(book: BookFacts, paper: PaperSize, keeper: PageCache) -> list[BookPart]:
    """The list of the techniques, and a part for the lesson of each; nothing when there is none."""
    words = words_of(book)
    blocks = [*(block.sizes[0] for block in book.blocks), *book.of_quilts]
    quilts = tuple(book.quilts)
    lessons = techniques_for(_teaching(blocks), quilts)
    entries = [
        (
            BookPart(f"technique-{number}", technique_title(lesson), 1, partial(_lesson, lesson, paper, keeper)),
            lesson,
            _users(lesson, blocks, quilts, words),
        )
        for number, lesson in enumerate(lessons, start=1)
    ]
    if not entries:
        return []
    return [
        BookPart("techniques", words("book-techniques"), 0, partial(_list, entries, words, paper)),
        *(part for part, _, _ in entries),
    ]


def _teaching(blocks: Sequence[BlockFacts]) -> list[BlockFacts]:
    """The blocks that bring in a way of making some kind of unit which none before them uses."""
    seen: set[tuple[str, str]] = set()
    teaching = []
    for facts in blocks:
        ways = _ways(facts)
        if not ways <= seen:
            teaching.append(facts)
        seen |= ways
    return teaching


def _ways(facts: BlockFacts) -> set[tuple[str, str]]:
    """Each method with what it makes; patches that are cut by themselves make nothing else."""
    seams = {(method, "") for method in sewn_in_block(facts)}
    return {(unit.method, unit.shape) for unit in facts.units} | {(cut.method, "") for cut in facts.cutting} | seams


def _users(lesson: TechniqueFacts, blocks: Sequence[BlockFacts], quilts: Sequence[QuiltFacts], words: Messages) -> str:
    """Which blocks and quilts use a method, in words; empty where none does."""
    names = [facts.name for facts in blocks if any(method == lesson.method for method, _ in _ways(facts))]
    names += [quilt.name for quilt in quilts if lesson.method in sewn_in_quilt(quilt)]
    return words("book-used-by", blocks=", ".join(dict.fromkeys(names))) if names else ""


def _lesson(lesson: TechniqueFacts, paper: PaperSize, keeper: PageCache, pages: PageNumbers) -> Bodies:
    del pages
    return keeper.pages(("lesson", lesson), paper, lambda: technique_bodies(lesson, paper, cautioned=True))


def _list(
    entries: Sequence[tuple[BookPart, TechniqueFacts, str]], words: Messages, paper: PaperSize, pages: PageNumbers
) -> Bodies:
    """Each technique's name, what it is good for, the blocks that use it, its page."""
    lines = tuple(
        Definition(
            part.title,
            (plain(technique_about(lesson)), *((quiet(users),) if users else ())),
            (TextRun(part.title, target=part.anchor),),
        )
        for part, lesson, users in entries
    )
    return pages_of(title_flowable(words("book-techniques")), (DefinitionList(lines, "terms"),), words, paper, pages)
