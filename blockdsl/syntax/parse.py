"""From a text to its declarations."""

from __future__ import annotations

from collections.abc import Iterable
from types import UnionType
from typing import Final, cast

from msgspec.structs import replace

from blockdsl.diagnostics import Problems, Source
from blockdsl.syntax.ast import (
    BlockDeclaration,
    BlockLine,
    BookBlock,
    BookDeclaration,
    BookLine,
    BookQuilt,
    CutterDeclaration,
    Declaration,
    FabricDeclaration,
    File,
    Head,
    MakerDeclaration,
    MakerLine,
    QuiltDeclaration,
    QuiltLine,
    UnitDeclaration,
    UnitLine,
    UnreadableLine,
)
from blockdsl.syntax.kinds import DECLARATIONS, LINE_KINDS, MAKER_LINES, QUILT_LINES
from blockdsl.syntax.lines import RawLine
from blockdsl.syntax.read import ReadLine, read_lines, whole_first_line

LARGEST_FILE: Final = 1 << 20
"""Bytes of a text that is still read."""


def parse(source: Source, problems: Problems) -> File:
    """The declarations of a text, in order. Any text gives a file; what cannot be read is reported.

    Units:  positions are code points of the text as given, a byte order mark counted.
    Errors: none raised; a line that cannot be read is a `UnreadableLine` in its place.
    """
    if is_too_large(source):
        problems.report(
            "file-too-large", whole_first_line(source), help="cut it into several files and join them with `use`"
        )
        return File(source, ())
    return File(source, assemble(read_lines(source, problems), problems))


def is_too_large(source: Source) -> bool:
    """Whether the text is over 1 MiB in UTF-8."""
    length = len(source.text)
    return length > LARGEST_FILE or (
        length * 4 > LARGEST_FILE and len(source.text.encode("utf-8", "surrogatepass")) > LARGEST_FILE
    )


def assemble(lines: Iterable[ReadLine], problems: Problems) -> tuple[Declaration, ...]:
    """Lines gathered under their declarations; a line in a wrong place is reported, the first of several only."""
    builder = _FileBuilder(problems)
    for line in lines:
        builder.take(line)
    builder.close()
    return tuple(builder.declarations)


_NAMES: Final[dict[type, str]] = {
    BlockDeclaration: "a block",
    UnitDeclaration: "a unit",
    FabricDeclaration: "a fabric",
    CutterDeclaration: "a cutter",
    QuiltDeclaration: "a quilt",
    BookDeclaration: "a book",
    MakerDeclaration: "a maker",
}
_IN_ITS_OWN: Final = "put it below the first line of its block or unit; a declaration lasts until the next one"
_ADVICE: Final[dict[type, str]] = {
    QuiltDeclaration: "put it below the first line of its block; `blocks 9 in` makes blocks of one size",
    BookDeclaration: "put it below the first line of its block, and name the block in the book",
    MakerDeclaration: "put it below the first line of its block or unit, not of the maker",
}
_BEGIN: Final = 'begin with `block "My block"` or `unit my-unit`, and put the `{keyword}` line below it'

_BEGIN_MAKER: Final = "put the `{keyword}` line below the first line of a block, a quilt, a book or a `maker`"

_Ways = MakerDeclaration | BookDeclaration | QuiltDeclaration | BlockDeclaration

_Line = BlockLine | QuiltLine | BookLine | MakerLine

_BEGIN_QUILT: Final = 'begin with `quilt "My quilt"`, and put the `{keyword}` line below it'


class _FileBuilder:
    """The declarations so far, and the one that is open."""

    def __init__(self, problems: Problems) -> None:
        self.declarations: list[Declaration] = []
        self._problems = problems
        self._head: Head | UnreadableLine | None = None
        self._lines: list[_Line] = []
        self._complained = False

    def take(self, line: ReadLine) -> None:
        node = line.node
        if isinstance(node, Head) or (isinstance(node, UnreadableLine) and self._begins(node)):
            self.close()
            self._head = node
        elif node is not None:
            self._take_line(line.raw, cast("_Line", node))

    def _begins(self, line: UnreadableLine) -> bool:
        """Whether a line that could not be read was to declare something; a quilt has a `fabric` line of its own."""
        of_quilt = isinstance(self._head, QuiltDeclaration) and line.keyword == "fabric" and line.name is None
        return line.keyword in DECLARATIONS and not of_quilt

    def _take_line(self, raw: RawLine, node: _Line) -> None:
        if isinstance(node, UnreadableLine) or self._belongs(raw, node):
            self._lines.append(node)
        else:
            self._lines.append(UnreadableLine(raw.span(), raw.keyword))

    def _belongs(self, raw: RawLine, node: _Line) -> bool:
        """Whether the line may stand here; the first that may not is reported."""
        head, keyword = self._head, raw.keyword
        of_book = isinstance(node, BookBlock | BookQuilt) or LINE_KINDS[keyword].home == "book"
        if isinstance(head, UnreadableLine | _home_of(keyword, of_book=of_book)):
            return True
        if isinstance(head, QuiltDeclaration) and keyword in QUILT_LINES:
            return True
        if isinstance(head, UnitDeclaration) and _is_of_a_unit(head, keyword):
            return True
        self._complain(raw, *_out_of_place(head, keyword, of_book=of_book))
        return False

    def _complain(self, raw: RawLine, place: str, advice: str) -> None:
        if self._complained:
            return
        self._complained = True
        span = raw.span(0, len(raw.word))
        if self._head is None:
            advice = advice or _BEGIN.format(keyword=raw.keyword)
            self._problems.report("line-outside-declaration", span, help=advice, keyword=raw.keyword)
        else:
            self._problems.report("line-does-not-belong", span, help=advice, keyword=raw.keyword, place=place)

    def close(self) -> None:
        """Put the open declaration with the others."""
        head, lines = self._head, tuple(self._lines)
        if isinstance(head, BlockDeclaration):
            self.declarations.append(replace(head, lines=cast("tuple[BlockLine, ...]", lines)))
        elif isinstance(head, QuiltDeclaration):
            self.declarations.append(replace(head, lines=cast("tuple[QuiltLine, ...]", lines)))
        elif isinstance(head, BookDeclaration):
            self.declarations.append(replace(head, lines=cast("tuple[BookLine, ...]", lines)))
        elif isinstance(head, MakerDeclaration):
            self.declarations.append(replace(head, lines=cast("tuple[MakerLine, ...]", lines)))
        elif isinstance(head, UnitDeclaration):
            self.declarations.append(replace(head, lines=cast("tuple[UnitLine, ...]", lines)))
        elif head is not None:
            self.declarations.append(head)
        self._head, self._lines, self._complained = None, [], False


def _home_of(keyword: str, *, of_book: bool) -> type[Head] | UnionType:
    """What a line of this kind stands in, units aside."""
    if keyword in MAKER_LINES:
        return _Ways
    if LINE_KINDS[keyword].home == "maker alone":
        return MakerDeclaration
    if of_book:
        return BookDeclaration
    return QuiltDeclaration if LINE_KINDS[keyword].home == "quilt" else BlockDeclaration


def _is_of_a_unit(unit: UnitDeclaration, keyword: str) -> bool:
    return LINE_KINDS[keyword].home == "grid" if unit.shape is None else keyword == "note"


def _out_of_place(head: Head | UnreadableLine | None, keyword: str, *, of_book: bool) -> tuple[str, str]:
    """Where a line stands that may not stand there, and what to do about it."""
    place = _NAMES.get(type(head), "a `use` line")
    if of_book:
        return _out_of_book(head, keyword)
    if LINE_KINDS[keyword].home == "quilt":
        return place, _BEGIN_QUILT.format(keyword=keyword)
    if keyword in MAKER_LINES:
        return place, _BEGIN_MAKER.format(keyword=keyword)
    if LINE_KINDS[keyword].home == "maker alone":
        return place, f'put the `{keyword}` line below `maker "Marsh Street Patterns"`'
    if isinstance(head, UnitDeclaration):
        return _in_unit(head, keyword)
    return place, "" if head is None else _ADVICE.get(type(head), _IN_ITS_OWN)


def _out_of_book(head: Head | UnreadableLine | None, keyword: str) -> tuple[str, str]:
    """Where a line of a book stands instead, and what to do about it."""
    advice = f'begin with `book "My book"`, and put the `{keyword}` line below it'
    if keyword == "block":
        advice += "; a block itself has one `size`, on a line of its own"
    return _NAMES.get(type(head), "a `use` line"), advice


def _in_unit(head: UnitDeclaration, keyword: str) -> tuple[str, str]:
    if LINE_KINDS[keyword].home == "block":
        return "a unit", "put it in the block; a unit takes the size of the cell that it fills"
    return "a unit that is one shape", f"either give `{head.name.text}` a shape after `=`, or rows below it"
