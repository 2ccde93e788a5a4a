"""Problems as words on a screen, and as lines of JSON for other programs."""

from __future__ import annotations

import json
from typing import Final

from blockdsl.diagnostics.columns import display_width, shown
from blockdsl.diagnostics.problems import Diagnostic, Problems
from blockdsl.diagnostics.source import Span

LONGEST_LINE: Final = 160
"""Letters of a source line that are shown; a longer one is cut around the place that is meant."""

_RED, _YELLOW, _BLUE, _BOLD, _PLAIN = "\x1b[31m", "\x1b[33m", "\x1b[34m", "\x1b[1m", "\x1b[0m"


def render_text(diagnostic: Diagnostic, colour: bool) -> str:
    """A problem for people: where and what, the line with carets under the place, related places, help.

    Shape:  several lines, the last without its end.
    Units:  columns are code points from 1; the carets stand under the display columns of the span.
    """
    tint = _RED if diagnostic.severity == "error" else _YELLOW
    span = diagnostic.span
    kind = _paint(f"{diagnostic.severity}[{diagnostic.code}]", _BOLD + tint, colour)
    lines = [f"{_place(span)}: {kind}: {_paint(shown(diagnostic.message), _BOLD, colour)}"]
    gutter = _gutter_width(diagnostic)
    if span.source.text:  # of a file that cannot be read there is no line to show
        lines += _excerpt(span, gutter, tint if colour else "")
    for related, words in diagnostic.related:
        lines.append(f"{' ' * gutter} = {_place(related)}: {shown(words)}")
        lines += _excerpt(related, gutter, _BLUE if colour else "", mark="-")
    if diagnostic.help:
        lines.append(f"{' ' * gutter} {_paint('help:', _BOLD, colour)} {shown(diagnostic.help)}")
    return "\n".join(lines)


def render_short(diagnostic: Diagnostic, *, colour: bool) -> str:
    """A problem as one line, as programs look for it: `FILE:LINE:COLUMN: error[code]: what is wrong`."""
    tint = _RED if diagnostic.severity == "error" else _YELLOW
    kind = _paint(f"{diagnostic.severity}[{diagnostic.code}]", _BOLD + tint, colour)
    return f"{_place(diagnostic.span)}: {kind}: {shown(diagnostic.message)}"


def render_json(diagnostic: Diagnostic) -> str:
    """A problem as one JSON object on one line.

    Shape:  code, severity, message, file, line, column, end_line, end_column, help (or null), related (a list of
            message, file, line, column, end_line, end_column), fixes (a list of title, sure, edits; an edit is a place
            and the text to put there).
    Units:  lines and columns are code points from 1; the end is the place after the last letter.
    """
    fields: dict[str, object] = {
        "code": diagnostic.code,
        "severity": diagnostic.severity,
        "message": diagnostic.message,
        **_place_fields(diagnostic.span),
        "help": diagnostic.help,
        "related": [{"message": words, **_place_fields(span)} for span, words in diagnostic.related],
        "fixes": [
            {
                "title": fix.title,
                "sure": fix.sure,
                "edits": [{**_place_fields(edit.span), "text": edit.text} for edit in fix.edits],
            }
            for fix in diagnostic.fixes
        ],
    }
    text = json.dumps(fields, ensure_ascii=False)
    # Half a character cannot be written as UTF-8, but JSON can name it.
    return text if text.isprintable() else json.dumps(fields)


def summary(problems: Problems) -> str:
    """How many problems there are: `2 errors, 1 warning`, or `no problems`."""
    found = list(problems)
    errors = sum(problem.severity == "error" for problem in found)
    counts = [_count(errors, "error"), _count(len(found) - errors, "warning")]
    return ", ".join(count for count in counts if count) or "no problems"


def _count(number: int, word: str) -> str:
    if not number:
        return ""
    return f"{number} {word}" if number == 1 else f"{number} {word}s"


def _place(span: Span) -> str:
    return f"{shown(span.source.name)}:{span.line}:{span.column}"


def _place_fields(span: Span) -> dict[str, object]:
    end_line, end_column = span.source.position(span.stop)
    return {
        "file": span.source.name,
        "line": span.line,
        "column": span.column,
        "end_line": end_line,
        "end_column": end_column,
    }


def _paint(text: str, style: str, colour: bool) -> str:
    return f"{style}{text}{_PLAIN}" if colour else text


def _gutter_width(diagnostic: Diagnostic) -> int:
    numbers = [diagnostic.span.line, *(span.line for span, _ in diagnostic.related)]
    return len(str(max(numbers)))


def _excerpt(span: Span, gutter: int, tint: str, mark: str = "^") -> list[str]:
    """The line that the span begins in, and marks under the span as far as it lies in that line."""
    line, column = span.source.position(span.start)
    text = span.source.line(line)
    first = min(column - 1, len(text))
    last = min(max(first, first + span.stop - span.start), len(text))
    before, inside, after = _cut(text, first, last)
    lead = display_width(shown(before))
    marks = mark * max(1, display_width(shown(inside)))
    if tint:
        marks = f"{tint}{marks}{_PLAIN}"
    bar = f"{' ' * gutter} |"
    return [f"{line:>{gutter}} | {shown(before)}{shown(inside)}{shown(after)}", f"{bar} {' ' * lead}{marks}"]


def _cut(text: str, first: int, last: int) -> tuple[str, str, str]:
    """The line before, in and after the span, cut at both ends when it is long."""
    before, inside, after = text[:first], text[first:last], text[last:]
    if len(text) <= LONGEST_LINE:
        return before, inside, after
    if len(inside) > LONGEST_LINE // 2:
        inside, after = inside[: LONGEST_LINE // 2] + "…", ""
    room = LONGEST_LINE - len(inside)
    left = min(len(before), max(room // 2, room - len(after)))
    right = room - left
    before = before if left == len(before) else "…" + before[len(before) - left :]
    after = after if right >= len(after) else after[:right] + "…"
    return before, inside, after
