"""Laying out a file, or some of its lines, as `blockdsl format` does: the edits that lead there."""

from __future__ import annotations

from difflib import SequenceMatcher

from msgspec import Struct

from blockdsl.diagnostics import Source
from blockdsl.shapes.listed import FORMER_NAMES
from blockdsl.syntax.format import format_text


class LineEdit(Struct, frozen=True):
    """Lines `first` up to `stop` (from 0) give way to others, each with its end."""

    first: int
    stop: int
    text: str


def layout(source: Source, first: int = 0, stop: int | None = None) -> list[LineEdit]:
    """The edits of the lines `first` up to `stop`, from 0; none where the file cannot be read, or is laid out.

    A file is laid out whole: lines share columns. Of that only what lies in the range is taken.
    """
    text = source.text
    laid_out = format_text(Source(source.name, text), FORMER_NAMES)
    if laid_out is None or laid_out == text:
        return []
    before, after = text.splitlines(keepends=True), laid_out.splitlines(keepends=True)
    edits = []
    for kind, start, end, new_start, new_end in SequenceMatcher(None, before, after, autojunk=False).get_opcodes():
        if kind == "equal":
            continue
        if end - start == new_end - new_start:
            pairs = zip(range(start, end), after[new_start:new_end], strict=True)
            edits += [LineEdit(line, line + 1, new) for line, new in pairs if before[line] != new]
        else:
            edits.append(LineEdit(start, end, "".join(after[new_start:new_end])))
    return [edit for edit in edits if _in_range(edit, first, len(before) if stop is None else stop)]


def _in_range(edit: LineEdit, first: int, stop: int) -> bool:
    return first <= edit.first and edit.stop <= max(stop, first)
