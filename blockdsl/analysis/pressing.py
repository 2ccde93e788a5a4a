"""How seams are pressed is the maker's choice, and the innermost line wins: block, quilt, book, maker."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from blockdsl.diagnostics import Problems, Span
from blockdsl.model import BlockDesign, BookDesign, PressingChoice, QuiltDesign
from blockdsl.model.book import BlockInBook, ChapterDesign, QuiltInBook, WordsInBook
from blockdsl.syntax import ast

Lines = Sequence[ast.BlockLine | ast.QuiltLine | ast.BookLine | ast.MakerLine]


def read_pressing(lines: Lines) -> PressingChoice | None:
    """What a declaration itself says, or None."""
    return next((line.how for line in lines if isinstance(line, ast.Press)), None)


def report_repeated_ways(lines: Lines, problems: Problems) -> None:
    """A maker's choice that stands twice in one declaration."""
    seen: Span | None = None
    for line in lines:
        if isinstance(line, ast.Press):
            if seen is not None:
                related = ((seen, "first set here"),)
                problems.report("setting-twice", line.span, what="press", related=related, help="keep one of the two")
            seen = seen or line.span


@dataclass(slots=True)
class Pressed:
    """The designs of one file, each with the choice that holds for it where it is printed.

    What was one design under one choice before is one design after. `maker` is what the project's maker says.
    """

    maker: PressingChoice | None
    _blocks: dict[tuple[int, PressingChoice | None], tuple[BlockDesign, BlockDesign]] = field(default_factory=dict)
    _quilts: dict[tuple[int, PressingChoice | None], tuple[QuiltDesign, QuiltDesign]] = field(default_factory=dict)

    def block(self, design: BlockDesign, around: PressingChoice | None = None) -> BlockDesign:
        """The block, where what it is printed in says `around`."""
        around = around or self.maker
        if around is None or design.pressing is not None:
            return design
        key = id(design), around
        if key not in self._blocks:
            # The design before is kept beside the other, so that no other design comes by its number.
            sizes = tuple(self.block(size, around) for size in design.sizes)
            self._blocks[key] = design, replace(design, pressing=around, sizes=sizes)
        return self._blocks[key][1]

    def quilt(self, design: QuiltDesign, around: PressingChoice | None = None) -> QuiltDesign:
        """The quilt and its blocks, those of borders too."""
        around = design.pressing or around or self.maker
        if around is None:
            return design
        key = id(design), around
        if key not in self._quilts:
            kinds = tuple(replace(kind, design=self.block(kind.design, around)) for kind in design.kinds)
            self._quilts[key] = design, replace(design, pressing=around, kinds=kinds)
        return self._quilts[key][1]

    def book(self, design: BookDesign) -> BookDesign:
        """The book with its blocks and quilts, those of other files too."""
        around = design.pressing or self.maker
        if around is None and not any(isinstance(item, QuiltInBook) for part in design.chapters for item in part.items):
            return design

        def item(found: WordsInBook | BlockInBook | QuiltInBook) -> WordsInBook | BlockInBook | QuiltInBook:
            match found:
                case BlockInBook():
                    return replace(found, sizes=tuple(self.block(size, around) for size in found.sizes))
                case QuiltInBook():
                    return replace(found, design=self.quilt(found.design, around))
                case _:
                    return found

        chapters = tuple(ChapterDesign(part.title, tuple(map(item, part.items))) for part in design.chapters)
        return replace(design, pressing=around, chapters=chapters)
