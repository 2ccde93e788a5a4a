"""A block file in its usual form: the same file to the reader, easier on the eye.

Comments and words stay; indentation, blank lines, spaces and columns are set. A comment directly above a
declaration belongs to it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from types import MappingProxyType
from typing import Final, Literal

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.diagnostics import Problems, Source
from blockdsl.diagnostics.columns import display_width
from blockdsl.syntax.ast import (
    BookBlock,
    BookQuilt,
    BookText,
    Chapter,
    CutterDeclaration,
    FabricDeclaration,
    UnitDeclaration,
    Use,
)
from blockdsl.syntax.kinds import DECLARATIONS
from blockdsl.syntax.parse import assemble, is_too_large
from blockdsl.syntax.read import ReadLine, read_lines
from blockdsl.syntax.write import line_parts

_INDENT: Final = "  "

Kind = Literal["blank", "comment", "head", "line"]


class _Line(Struct, frozen=True):
    """A line to be written.

    `group` is the same for lines whose parts share columns; `short` declarations may stand without a blank line
    between them, when they are of one kind. `deep` lines belong to a chapter and are indented once more.
    """

    kind: Kind
    parts: tuple[str, ...]
    comment: str | None
    group: int = 0
    short: str = ""
    indented: bool = False
    deep: bool = False


def format_text(source: Source, renamed: Mapping[str, str] = MappingProxyType({})) -> str | None:
    """The text in its usual form; None when it has mistakes of grammar, for then its meaning is not sure.

    Words of old become those of today; `renamed` says which shapes have a new name. Formatting twice gives the same
    as once, and the ast stays the same, spans and such names apart.
    """
    if is_too_large(source):
        return None
    problems = Problems()
    lines = list(read_lines(source, problems))
    assemble(lines, problems)
    if any(problem.severity == "error" and problem.code != "word-renamed" for problem in problems):
        return None
    written = _with_blank_lines(_indented(list(_grouped(lines, _in_this_file(lines, renamed)))))
    laid_out = "".join(f"{text}\n" for text in _in_columns(written))
    # Columns set apart may take a file that is all but too large over the limit: then it stays as it is.
    return source.text if is_too_large(Source(source.name, laid_out)) else laid_out


def _in_this_file(lines: Sequence[ReadLine], renamed: Mapping[str, str]) -> Mapping[str, str]:
    """The shapes to be renamed: not those whose old name is a unit's of this file, for which `make` may stand."""
    units = {line.node.name.text for line in lines if isinstance(line.node, UnitDeclaration)}
    return {old: new for old, new in renamed.items() if old not in units}


def _grouped(lines: Iterable[ReadLine], renamed: Mapping[str, str]) -> Iterator[_Line]:
    """Each line with its kind and the group that it is aligned with."""
    declaration, fabrics, in_chapter = 0, 0, False
    for number, line in enumerate(lines, start=1):
        raw, node = line.raw, line.node
        if not raw.text:
            fabrics = 0 if raw.comment is None else fabrics
            kind: Kind = "blank" if raw.comment is None else "comment"
            yield _Line(kind, (), raw.comment, indented=raw.indented)
            continue
        if node is None:
            fabrics = 0
            yield _Line("line", (raw.text.strip(),), raw.comment)
            continue
        parts = line_parts(raw, node, renamed, in_quilt=line.in_quilt)
        if line.in_quilt or isinstance(node, BookBlock | BookQuilt) or raw.keyword not in DECLARATIONS:
            deep = in_chapter and isinstance(node, BookBlock | BookQuilt | BookText)
            in_chapter = deep or isinstance(node, Chapter)
            yield _Line("line", parts, raw.comment, group=declaration if raw.keyword == "row" else 0, deep=deep)
            continue
        in_chapter = False
        declaration = 2 * number
        fabrics = (fabrics or 2 * number + 1) if isinstance(node, FabricDeclaration) else 0
        yield _Line("head", parts, raw.comment, group=fabrics, short=_short(node))


def _short(node: object) -> str:
    """The kind of a declaration that is one line long, or nothing."""
    if isinstance(node, UnitDeclaration):
        return "unit" if node.shape else ""
    if isinstance(node, Use):
        return "use"
    if isinstance(node, CutterDeclaration):
        return "cutter"
    return "fabric" if isinstance(node, FabricDeclaration) else ""


def _indented(lines: list[_Line]) -> list[_Line]:
    """Lines inside a declaration are indented, and so are comments between them.

    A comment directly above a declaration is not; one that ends a declaration stays as the maker has it.
    """
    result: list[_Line] = []
    touches_head, before_line, deep = False, False, False
    for line in reversed(lines):
        if line.kind == "comment":
            result.append(replace(line, indented=not touches_head and (before_line or line.indented), deep=deep))
            continue
        deep = line.deep if line.kind != "blank" else deep
        touches_head = line.kind == "head"
        before_line = line.kind == "line" or (line.kind == "blank" and before_line)
        result.append(replace(line, indented=line.kind == "line"))
    result.reverse()
    is_open = False
    for place, line in enumerate(result):
        if line.kind == "head":
            is_open = not line.short
        elif line.kind == "comment" and not is_open:
            result[place] = replace(line, indented=False)
    return result


def _with_blank_lines(lines: list[_Line]) -> list[_Line]:
    """One blank line before each declaration and its comments; never two; none at the beginning or the end."""
    result: list[_Line] = []
    for place, line in enumerate(lines):
        if line.kind == "blank":
            if result and result[-1].kind != "blank":
                result.append(line)
            continue
        if result and result[-1].kind != "blank" and _wants_blank(result[-1], lines, place):
            result.append(_Line("blank", (), None))
        result.append(line)
    while result and result[-1].kind == "blank":
        result.pop()
    return result


def _wants_blank(before: _Line, lines: list[_Line], place: int) -> bool:
    """Whether a blank line must come between `before` and the line at `place`, which follows it directly."""
    if before.kind == "comment" and not before.indented:
        return False
    head = place
    while head < len(lines) and lines[head].kind == "comment" and not lines[head].indented:
        head += 1
    if head == len(lines) or lines[head].kind != "head":
        return False
    return not (before.kind == "head" and before.short and before.short == lines[head].short)


def _in_columns(lines: list[_Line]) -> Iterator[str]:
    widths: dict[int, list[int]] = {}
    for line in lines:
        if line.group:
            columns = widths.setdefault(line.group, [])
            columns.extend([0] * (len(line.parts) - len(columns)))
            for place, part in enumerate(line.parts):
                columns[place] = max(columns[place], display_width(part))
    for line in lines:
        yield _whole(line, widths.get(line.group, []))


def _whole(line: _Line, widths: list[int]) -> str:
    padded = [part + " " * (widths[n] - display_width(part)) if widths else part for n, part in enumerate(line.parts)]
    # One space after `row`, two between its cells; one in a fabric, two after its label.
    in_row = bool(padded) and padded[0] == "row"
    text = ""
    for place, part in enumerate(padded):
        wide = place > 1 if in_row else place == 3
        text += f"{'  ' if wide else ' ' if place else ''}{part}"
    text = text.rstrip()
    if line.comment is not None:
        text = f"{text}  {line.comment.rstrip()}" if text else line.comment.rstrip()
    return f"{_INDENT * (2 if line.deep else 1)}{text}" if line.indented and text else text
