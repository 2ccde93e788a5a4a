"""Every line of a text read by itself, so that one issue spoils one line only."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from functools import partial
from typing import Any, Final

from lark.exceptions import UnexpectedInput
from msgspec import Struct
from msgspec.structs import replace

from blockdsl.diagnostics import Diagnostic, Edit, Fix, Problems, Source, Span, change_to
from blockdsl.syntax.ast import BlockDeclaration, BookBlock, BookQuilt, QuiltDeclaration, UnreadableLine
from blockdsl.syntax.atoms import is_name, normalized
from blockdsl.syntax.explain import explain, unknown_line
from blockdsl.syntax.grammar import Grammar, build_line, parse_line
from blockdsl.syntax.issue import IssueFound, LineFix, SyntaxIssue
from blockdsl.syntax.kinds import (
    BOOK_MEMBERS,
    DECLARATIONS,
    FORMER,
    KEYWORDS,
    LINE_KINDS,
    MAKER_LINES,
    QUILT_LINES,
)
from blockdsl.syntax.line_kind import Node
from blockdsl.syntax.lines import RawLine, split_lines
from blockdsl.syntax.plain_rows import read_row

MOST_ISSUES: Final = 100
"""After so many, the text is not a block file, and reading on would only take time."""

_DECLARED_NAME: Final = re.compile(r"(?:fabric|unit)\s+([^\W\d_][^\s\"“#=]*)")
_FABRIC_OF_A_QUILT: Final = re.compile(r"fabric\s+width\s+[0-9]")


class ReadLine(Struct, frozen=True):
    """One line and what it says; `node` is None for a blank line and for a comment.

    `in_quilt`: it is a line of a quilt, and read by its grammar.
    """

    raw: RawLine
    node: Node | None
    in_quilt: bool = False


def read_lines(source: Source, problems: Problems) -> Iterator[ReadLine]:
    """Read the lines in order; report a issue once, where it is."""
    raws = list(split_lines(source))
    opened: str | None = None
    issues = 0
    for place, raw in enumerate(raws):
        if not raw.text and raw.issue is None:
            yield ReadLine(raw, None)
            continue
        member = opened == "book" and raw.keyword in BOOK_MEMBERS and _names_a_member(raws, place)
        if not member and _begins_declaration(raw, opened):
            opened = raw.keyword
        read = _read_member if member else _read_in_quilt if _is_of_a_quilt(raw, opened) else _read_line
        line, found = source.recall((read, raw.start), partial(_with_problems, read, raw))
        for problem in found:
            problems.add(problem)
        issues += len(found)
        yield line
        if issues >= MOST_ISSUES:
            problems.report("too-many-mistakes", raw.span(), help="check that this is the right file")
            return


def _with_problems(
    read: Callable[[RawLine, Problems], ReadLine], raw: RawLine
) -> tuple[ReadLine, tuple[Diagnostic, ...]]:
    """One line as it is read, and what is wrong with its words."""
    found = Problems()
    return read(raw, found), tuple(found)


def _begins_declaration(raw: RawLine, opened: str | None) -> bool:
    """Whether the line ends what came before it. A quilt has a line of its own that begins with `fabric`."""
    if opened == "quilt" and _FABRIC_OF_A_QUILT.match(raw.text):
        return False
    return raw.keyword in DECLARATIONS


def _is_of_a_quilt(raw: RawLine, opened: str | None) -> bool:
    """Whether the line is one that quilts alone have, or stands in a quilt and may."""
    if opened == "quilt":
        return raw.keyword in QUILT_LINES
    return raw.keyword in LINE_KINDS and LINE_KINDS[raw.keyword].home == "quilt"


def _names_a_member(raws: Sequence[RawLine], place: int) -> bool:
    """Whether a `block` or `quilt` line below a `book` names one for the book, and begins none.

    Indentation has no meaning, so what follows decides: a block that is declared has a size and rows below it.
    """
    if re.search(r"\bsizes\b", raws[place].text):
        return True
    for raw in raws[place + 1 :]:
        word = raw.keyword
        if word in MAKER_LINES:  # a book has such lines, and so has what might be declared here
            continue
        if raws[place].keyword == "quilt" and raw.text:
            return word not in QUILT_LINES or (word == "fabric" and not _FABRIC_OF_A_QUILT.match(raw.text))
        if word in LINE_KINDS:
            return LINE_KINDS[word].home not in {"grid", "block"}
        if word in KEYWORDS:
            return True
    return True


def _read_member(raw: RawLine, problems: Problems) -> ReadLine:
    """A line of a book that names a block or a quilt; damaged, it is no lost declaration."""
    line = _read_line(raw, problems)
    if isinstance(line.node, BlockDeclaration):
        return replace(line, node=BookBlock(line.node.span, line.node.name, ()))
    if isinstance(line.node, QuiltDeclaration):
        return replace(line, node=BookQuilt(line.node.span, line.node.name))
    if isinstance(line.node, UnreadableLine):
        return replace(line, node=replace(line.node, keyword=f"{raw.keyword} of a book"))
    return line


def _read_in_quilt(raw: RawLine, problems: Problems) -> ReadLine:
    """A line of a quilt, by the quilt's own grammar."""
    return _read_line(raw, problems, "quilt")


def _read_line(raw: RawLine, problems: Problems, grammar: Grammar = "line") -> ReadLine:
    issue = raw.issue
    if issue is None and grammar == "line":
        row = read_row(raw)
        if row is not None:
            return ReadLine(raw, row)
        issue = None if raw.keyword in KEYWORDS else unknown_line(raw)
    if issue is None:
        try:
            node = build_line(raw, parse_line(raw.text, grammar), grammar)
        except UnexpectedInput as error:
            issue = explain(raw, error, grammar)
        except IssueFound as found:
            issue = found.issue
        else:
            _report_former(raw, problems)
            return ReadLine(raw, node, in_quilt=grammar == "quilt")
    return ReadLine(raw, _unreadable(raw, issue, problems))


def _report_former(raw: RawLine, problems: Problems) -> None:
    """Report the word that a line begins with, where it had another name once; the line holds all the same."""
    if now := FORMER.get(raw.word):
        fix = change_to(raw.span(0, len(raw.word)), now, sure=True)
        problems.report(
            "word-renamed", raw.span(0, len(raw.word)), word=raw.word, now=now, help=renamed_help(now), fixes=(fix,)
        )


def renamed_help(now: str) -> str:
    """How a word of old is brought up to date."""
    return f"write `{now}`; `blockdsl format` rewrites the whole file"


def _unreadable(raw: RawLine, issue: SyntaxIssue, problems: Problems) -> UnreadableLine:
    # The values are plain words for the message; the signature of `report` has places of its own as well.
    values: dict[str, Any] = {
        name: str(value) if name == "wanted" else _shortened(str(value), 60) for name, value in issue.values.items()
    }
    advice = _shortened(issue.help, 240) if issue.help else None
    fixes = tuple(_fix(raw, fix) for fix in issue.fixes)
    problems.report(issue.code, raw.span(issue.start, issue.stop), help=advice, fixes=fixes, **values)
    named = _DECLARED_NAME.match(raw.text)
    name = normalized(named.group(1)) if named and is_name(named.group(1)) else None
    return UnreadableLine(raw.span(), raw.keyword, name)


def _fix(raw: RawLine, fix: LineFix) -> Fix:
    return Fix(fix.title or f"Change to `{fix.text}`", (Edit(raw.span(fix.start, fix.stop), fix.text),), fix.sure)


def _shortened(words: str, most: int) -> str:
    """Words of the file that are repeated in a message, kept to a length that can be read."""
    return words if len(words) <= most else words[: most - 1] + "…"


def whole_first_line(source: Source) -> Span:
    """The place to point at when the whole file is meant."""
    first = source.line_starts[0]
    return Span(source, first, first + len(source.line(1)))
