"""What will be made of each file: the outputs of its blocks and books, under names that no two of them share."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Final

from msgspec import Struct, field, structs

from blockdsl.cli.cache_keys import content_of
from blockdsl.cli.jobs import Job
from blockdsl.cli.outputs import KINDS
from blockdsl.export.naming import Taken, slug
from blockdsl.fonts.further import FurtherFont
from blockdsl.pipeline import Worked
from blockdsl.printing import (
    USUAL_PAPER,
    FullSize,
    Print,
    as_book,
    parts_at_full_size,
    too_large,
    with_templates_to_print,
)

if TYPE_CHECKING:
    from blockdsl.analysis.inputs import Input
    from blockdsl.diagnostics import Problems, Source, Span
    from blockdsl.facts import BlockFacts, BookFacts
    from blockdsl.facts.quiltfacts import QuiltFacts
    from blockdsl.model.language import Language

EVERYTHING: Final = frozenset(KINDS)


class Planned(Struct, frozen=True):
    """A file with what will be made of it; `blocks` and `quilts` are those that no file before it has planned.

    `declared` names, for the stem of each block's outputs, the file that declares the block.
    """

    worked: Worked
    blocks: tuple[BlockFacts, ...]
    jobs: tuple[Job, ...]
    quilts: tuple[QuiltFacts, ...] = ()
    declared: Mapping[str, str] = field(default_factory=dict)

    @property
    def origin(self) -> Input:
        """The file's text and problems."""
        return self.worked.origin

    @property
    def used(self) -> tuple[Path, ...]:
        """The paths of the files that it brings in."""
        return self.worked.used

    @property
    def language(self) -> Language | None:
        """What its pages are in: those of its book, else of its first quilt or block; None without any."""
        facts = self.worked.facts
        made: tuple[BookFacts | QuiltFacts | BlockFacts, ...] = (*facts.books, *self.quilts, *self.blocks)
        return made[0].language if made else None


class PrintOptions(Struct, frozen=True):
    """How the user asked for pages to be printed; `paper` and `language` are None where the file may say."""

    paper: str | None
    created: datetime | None
    margin_mm: float
    language: Language | None = None
    outline_words: bool = True
    all_templates: bool = False

    def on(self, usual: str, font: FurtherFont | None = None) -> Print:
        """The printing on the paper that was asked for, or else on the usual one; `font` is the maker's own."""
        paper = self.paper or usual
        return Print(paper, self.created, self.margin_mm, font, self.outline_words, self.all_templates)


def plan(works: Sequence[Worked], kinds: frozenset[str], asked: PrintOptions) -> list[Planned]:
    """The work on each file that has no errors, on the paper asked for, or else on that of the file's book.

    Books have web sites; the blocks and quilts of a file without a book have one when not everything is asked for.
    A file with errors keeps the names of its blocks and books, so that what was made of it earlier is not written over.
    """
    names = _Names()
    planned = []
    for worked in works:
        if worked.has_errors:
            names.keep(worked)
            continue
        papers = [book.paper for book in worked.facts.books]
        printed = asked.on(papers[0] if papers else USUAL_PAPER, worked.facts.font)
        blocks = []
        quilts = []
        declared: dict[str, str] = {}
        source = worked.origin.source.name
        jobs: list[Job] = []
        for span, block in zip(worked.spans, worked.facts.blocks, strict=True):
            stem = names.of_block(block)
            if stem is None:  # a book prints a block that was asked for by its own file too
                continue
            blocks.append(block)
            declared[stem] = span.source.name
            jobs.append(Job("block", block, stem, kinds, printed, source))
            jobs += _of_sizes(block.sizes, names, kinds, printed, source)
            if "templates" in kinds:
                shown = with_templates_to_print(block, printed)
                _report_too_large(shown, span, worked.origin.problems)
        for quilt in worked.facts.quilts:
            if names.is_new_quilt(quilt):
                quilts.append(quilt)
                jobs.append(Job("quilt", quilt, names.take(quilt.name), kinds, printed, source))
                jobs += _of_sizes([kind.block for kind in quilt.kinds], names, kinds, printed, source)
        for book in worked.facts.books:
            jobs += _of_book(book, names, kinds, asked.on(book.paper, worked.facts.font), source)
        declares = worked.facts.blocks or worked.facts.quilts
        if "web" in kinds and kinds != EVERYTHING and declares and not worked.facts.books:
            site = as_book(worked.facts.blocks, source, printed.paper, worked.facts.quilts)
            jobs.append(Job("site", site, names.of_site(Path(source).stem), kinds, printed, source))
        planned.append(Planned(worked, tuple(blocks), tuple(jobs), tuple(quilts), declared))
    return planned


def where_declared(source: Source, name: str) -> Span:
    """Where the file declares what the output `name` is named for; its beginning where another file does."""
    from blockdsl.diagnostics import Problems, Span
    from blockdsl.syntax.ast import BlockDeclaration, BookDeclaration, QuiltDeclaration
    from blockdsl.syntax.parse import parse

    for declaration in parse(source, Problems()).declarations:
        if isinstance(declaration, BlockDeclaration | BookDeclaration | QuiltDeclaration) and name.startswith(
            slug(declaration.name.text)
        ):
            return declaration.name.span
    return Span(source, 0, 0)


_CALLED: Final[dict[FullSize, tuple[str, str]]] = {
    "templates": ("templates", "patch"),
    "foundation": ("foundation papers", "that of"),
    "papers": ("papers", "patch"),
}


def _report_too_large(block: BlockFacts, span: Span, problems: Problems) -> None:
    for part in parts_at_full_size(block):
        if found := too_large(part, block):
            what, whose = _CALLED[part]
            problems.report("template-too-large", span, what=what, of=f"{whose} {', '.join(found)}")


def _of_sizes(
    sizes: Sequence[BlockFacts], names: _Names, kinds: frozenset[str], printed: Print, source: str
) -> Iterator[Job]:
    """What a block needs at sizes that are not its own, in books and quilts; one that has been planned is left out."""
    from blockdsl.model.lengths import write_size

    for facts in sizes:
        if names.is_new(facts, however_pressed=True):
            size = write_size(facts.finished[0], facts.finished[1], facts.unit)
            yield Job("size", facts, names.take(f"{facts.name} {size}"), kinds, printed, source)


def _of_book(book: BookFacts, names: _Names, kinds: frozenset[str], printed: Print, source: str) -> Iterator[Job]:
    """The book itself, and templates of its blocks at the sizes that are not their own."""
    for block in book.blocks:
        yield from _of_sizes(block.sizes, names, kinds, printed, source)
    stem = names.take(book.name)
    if "book" in kinds:
        yield Job("book", book, stem, kinds, printed, source)
    if "web" in kinds:
        yield Job("site", book, names.of_site(stem), kinds, printed, source)


def _pressed_alike(block: BlockFacts) -> BlockFacts:
    sizes = tuple(map(_pressed_alike, block.sizes))
    return structs.replace(block, pressing="as it nests", language="en-US", sizes=sizes)


class _Names:
    """Names that are gone, and the blocks that have one."""

    def __init__(self) -> None:
        self._taken = Taken()
        self._sites = Taken()
        self._known: dict[str, list[BlockFacts]] = {}
        self._quilts: set[str] = set()

    def take(self, words: str) -> str:
        return self._taken.take(words)

    def of_site(self, words: str) -> str:
        """A name for a web site, which may be that of a block as well."""
        return self._sites.take(words)

    def is_new(self, block: BlockFacts, *, however_pressed: bool = False) -> bool:
        """Whether this very block has no name yet; it has one from now on.

        `however_pressed`: templates and papers are the same however seams are pressed, and the words of a book in
        another language are on those of its own pages.
        """
        known = self._known.setdefault(block.name, [])
        if block in known or (however_pressed and _pressed_alike(block) in map(_pressed_alike, known)):
            return False
        known.append(block)
        return True

    def is_new_quilt(self, quilt: QuiltFacts) -> bool:
        """Whether this very quilt, with the same finishing, has not been planned; it has from now on."""
        content = content_of(quilt)
        is_new = content not in self._quilts
        self._quilts.add(content)
        return is_new

    def of_block(self, block: BlockFacts) -> str | None:
        """A name for the outputs of the block; None when the very same block has one."""
        return self.take(block.name) if self.is_new(block) else None

    def keep(self, worked: Worked) -> None:
        """Take the names of what a file with errors declares."""
        from blockdsl.diagnostics import Problems
        from blockdsl.syntax.ast import BlockDeclaration, BookDeclaration, QuiltDeclaration
        from blockdsl.syntax.parse import parse

        for declaration in parse(worked.origin.source, Problems()).declarations:
            if isinstance(declaration, BlockDeclaration | BookDeclaration | QuiltDeclaration):
                self.take(declaration.name.text)
