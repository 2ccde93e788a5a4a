"""Every line of a text read by itself, so that one slip spoils one line only."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any, Final

from lark.exceptions import UnexpectedInput

from blockdsl.diagnostics import Problems, Source, Span
from blockdsl.syntax.ast import Damaged
from blockdsl.syntax.atoms import SlipFound, is_name, same_letters
from blockdsl.syntax.build import LineNode, build_line
from blockdsl.syntax.cells import read_row
from blockdsl.syntax.grammar import parse_line
from blockdsl.syntax.keywords import DECLARATIONS, KEYWORDS, LATER_DECLARATIONS, LATER_LINES
from blockdsl.syntax.lines import RawLine, Slip, split_lines
from blockdsl.syntax.slips import explain, unknown_line

MOST_SLIPS: Final = 100
"""After so many, the text is not a block file, and reading on would only take time."""

_LATER: Final = LATER_DECLARATIONS | LATER_LINES
_DECLARED_NAME: Final = re.compile(r"(?:fabric|unit)\s+([^\W\d_][^\s\"“#=]*)")
_ADVICE_LATER: Final = "take it out of the file for now; fabrics, units and blocks can be made"


@dataclass(frozen=True, slots=True)
class ReadLine:
    """One line and what it says; `node` is None for a blank line, a comment, and a line of a later version.

    `opens`: a line of a later version that begins a declaration.
    """

    raw: RawLine
    node: LineNode | Damaged | None
    later: bool = False
    opens: bool = False


def read_lines(source: Source, problems: Problems) -> Iterator[ReadLine]:
    """Read the lines in order; report a slip once, where it is."""
    swallowing: str | None = None
    slips = 0
    for raw in split_lines(source):
        if not raw.text and raw.slip is None:
            yield ReadLine(raw, None)
            continue
        opens = _begins_declaration(raw, swallowing)
        if opens:
            swallowing = raw.keyword if raw.keyword in LATER_DECLARATIONS else None
            later = swallowing is not None
            if later:
                _report_later(raw, problems)
        else:
            later = swallowing is not None
        if later:
            yield ReadLine(raw, None, later=True, opens=opens)
            continue
        before = len(problems)
        yield _read_line(raw, problems)
        slips += len(problems) - before
        if slips >= MOST_SLIPS:
            problems.report("too-many-slips", raw.span(), help="check that this is the file you meant")
            return


def _begins_declaration(raw: RawLine, swallowing: str | None) -> bool:
    """Whether the line ends what came before it.

    A quilt has lines of its own that begin with `fabric`, and a book some that begin with `block` or `quilt`.
    """
    word = raw.keyword
    if swallowing == "quilt" and re.match(r"fabric\s+width\s+[0-9]", raw.text):
        return False
    if swallowing == "book" and word in {"block", "quilt"} and (raw.indented or " size" in raw.text):
        return False
    return word in DECLARATIONS or word in LATER_DECLARATIONS


def _report_later(raw: RawLine, problems: Problems) -> None:
    word = raw.keyword
    problems.report("not-yet", raw.span(0, len(word)), help=_ADVICE_LATER, what=f"`{word}`")


def _read_line(raw: RawLine, problems: Problems) -> ReadLine:
    if raw.slip is not None:
        return ReadLine(raw, _damaged(raw, raw.slip, problems))
    row = read_row(raw)
    if row is not None:
        return ReadLine(raw, row)
    if raw.keyword in LATER_LINES:
        _report_later(raw, problems)
        return ReadLine(raw, Damaged(raw.span(), raw.keyword))
    if raw.keyword not in KEYWORDS:
        return ReadLine(raw, _damaged(raw, unknown_line(raw), problems))
    try:
        return ReadLine(raw, build_line(raw, parse_line(raw.text)))
    except UnexpectedInput as error:
        slip = explain(raw, error)
    except SlipFound as found:
        slip = found.slip
    return ReadLine(raw, _damaged(raw, slip, problems))


def _damaged(raw: RawLine, slip: Slip, problems: Problems) -> Damaged:
    # The values are plain words for the message; the signature of `report` has places of its own as well.
    values: dict[str, Any] = {name: _shortened(str(value), 60) for name, value in slip.values.items()}
    advice = _shortened(slip.help, 240) if slip.help else None
    problems.report(slip.code, raw.span(slip.start, slip.stop), help=advice, **values)
    named = _DECLARED_NAME.match(raw.text)
    name = same_letters(named.group(1)) if named and is_name(named.group(1)) else None
    return Damaged(raw.span(), raw.keyword, name)


def _shortened(words: str, most: int) -> str:
    """Words of the file that are repeated in a message, kept to a length that can be read."""
    return words if len(words) <= most else words[: most - 1] + "…"


def whole_first_line(source: Source) -> Span:
    """The place to point at when the whole file is meant."""
    return Span(source, 0, len(source.line(1)))
