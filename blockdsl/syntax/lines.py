"""A text cut into lines, each with its comment taken off and its outward faults found.

What can be seen without the grammar is found here: control characters, quotation marks and brackets that
do not close, and a `#` that is neither a comment nor a colour.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator
from functools import partial
from typing import Final

from msgspec import Struct

from blockdsl.diagnostics import Source, Span
from blockdsl.syntax.issue import LineFix, SyntaxIssue
from blockdsl.syntax.kinds import keyword_of

DEEPEST: Final = 32
"""Brackets may be nested this deep, and no deeper."""


class RawLine(Struct, frozen=True):
    """One line. `text` has neither indentation nor comment; `start` is where it lies in the source.

    `word` is its first word as it is written, up to a space, and `keyword` the same in its one usual spelling.
    """

    source: Source
    start: int
    text: str
    indented: bool
    comment: str | None
    issue: SyntaxIssue | None
    word: str
    keyword: str

    def span(self, start: int = 0, stop: int | None = None) -> Span:
        """The place of `text[start:stop]` in the source."""
        return Span(self.source, self.start + start, self.start + (len(self.text) if stop is None else stop))


# Everything invisible that can be mistaken for nothing: controls, zero-width spaces, direction overrides, halves
# of characters. The joiners inside words of some scripts and inside emoji are left alone.
_CONTROL: Final = re.compile(
    "[\x00-\x08\x0b-\x1f\x7f-\x9f\u200b\u2028-\u202e\u2060-\u2069\ufeff\ufff9-\ufffb\ufffe\uffff\ud800-\udfff]"
)
_MARK: Final = re.compile(r"""(?P<text>"[^"]*"|“[^”]*”)|(?P<open>["“])|(?P<hash>\#)|(?P<bracket>[()])""")
_COLOUR: Final = re.compile(r"#[0-9A-Fa-f]{6}(?![\w-])")
_LOOKS_LIKE_COLOUR: Final = re.compile(r"#[0-9A-Za-z]+(?!\S)")


def split_lines(source: Source) -> Iterator[RawLine]:
    """All lines of the text in order, blank ones too; a byte order mark is passed over."""
    for start, whole in source.lines():
        yield source.recall(("line", start), partial(_raw_line, source, start, whole))


def _raw_line(source: Source, start: int, whole: str) -> RawLine:
    text = whole.strip()
    indent = len(whole) - len(whole.lstrip()) if text else 0
    comment: str | None = None
    issue: SyntaxIssue | None = None
    control = _CONTROL.search(whole)
    if control:
        # Strip takes some control characters for spaces, so the line is kept from its very beginning.
        text, indent = whole, 0
        issue = _control_issue(control)
    elif not text.isalnum():
        comment_at, issue = _look(text)
        if comment_at is not None:
            text, comment = text[:comment_at].rstrip(), text[comment_at:]
    word = next(iter(text.split(maxsplit=1)), "")
    return RawLine(source, start + indent, text, bool(indent), comment, issue, word, keyword_of(word))


def _control_issue(found: re.Match[str]) -> SyntaxIssue:
    letter = found.group()
    name = unicodedata.name(letter, f"U+{ord(letter):04X}").lower() if ord(letter) >= 0xA0 else f"U+{ord(letter):04X}"
    advice = "delete it, or type the line again"
    fix = LineFix(found.start(), found.end(), "", "Delete it")
    return SyntaxIssue("control-character", found.start(), found.end(), advice, {"name": name}, (fix,))


def _look(text: str) -> tuple[int | None, SyntaxIssue | None]:
    """Where the comment begins, if there is one, and the first fault that can be seen without the grammar."""
    brackets: list[int] = []
    issue: SyntaxIssue | None = None
    for mark in _MARK.finditer(text):
        place = mark.start()
        if mark["hash"]:
            found = _hash(text, place)
            if found is None:
                continue
            if isinstance(found, SyntaxIssue):
                # What follows is most likely meant as a comment.
                return place, issue or found
            return place, issue or _unclosed(text[:place].rstrip(), brackets)
        if mark["open"]:
            return None, issue or _quote_issue(text, place)
        if mark["bracket"]:
            issue = issue or _bracket(text, place, brackets)
    return None, issue or _unclosed(text, brackets)


def _hash(text: str, place: int) -> SyntaxIssue | bool | None:
    """True for a comment, None for a colour, otherwise the issue."""
    if not text[place + 1 : place + 2].strip():
        return True
    if place and _COLOUR.match(text, place):
        return None
    run = text[place:].split(maxsplit=1)[0]
    stop = place + len(run)
    wants_colour = text.startswith("fabric") and not _COLOUR.search(text[:place])
    if wants_colour and _LOOKS_LIKE_COLOUR.match(text, place):
        advice = "write it with six digits, such as `#dfe3e0`"
        fixes: tuple[LineFix, ...] = ()
        if re.fullmatch(r"#[0-9A-Fa-f]{3}", run):
            whole = "#" + "".join(digit * 2 for digit in run[1:])
            advice, fixes = f"write it with six digits: `{whole}`", (LineFix(place, stop, whole, sure=True),)
        return SyntaxIssue("colour-not-six-digits", place, stop, advice, {"text": run}, fixes)
    advice = f"put a space after the sign: `# {run[1:]}`"
    fix = LineFix(place, place + 1, "# ", "Put a space after the sign")
    return SyntaxIssue("comment-needs-space", place, stop, advice, {"text": run}, (fix,))


def _quote_issue(text: str, place: int) -> SyntaxIssue:
    inches = re.search(r"[0-9][0-9./ ]*$", text[:place])
    if inches and text[place] == '"':
        number = inches.group()
        advice = f"write `in` for inches: `{number} in`"
        fix = LineFix(inches.start(), place + 1, f"{number.strip()} in", sure=True)
        return SyntaxIssue("length-needs-unit", inches.start(), place + 1, advice, {"text": number + '"'}, (fix,))
    fix = LineFix(len(text), len(text), "”" if text[place] == "“" else '"', "Close the quotation mark at the end")
    return SyntaxIssue("quote-not-closed", place, len(text), 'end the words with a second mark: `"`', fixes=(fix,))


def _bracket(text: str, place: int, brackets: list[int]) -> SyntaxIssue | None:
    if text[place] == ")":
        if brackets:
            brackets.pop()
            return None
        advice = "put `(` before the shape, or take the `)` away"
        fix = LineFix(place, place + 1, "", "Take the `)` away")
        return SyntaxIssue("bracket-not-opened", place, place + 1, advice, fixes=(fix,))
    brackets.append(place)
    if len(brackets) > DEEPEST:
        return SyntaxIssue("nesting-too-deep", place, place + 1, "make a unit of what is inside")
    return None


def _unclosed(text: str, brackets: list[int]) -> SyntaxIssue | None:
    if not brackets:
        return None
    advice = "put `)` after the last word of the shape"
    fix = LineFix(len(text), len(text), ")" * len(brackets), "Close the bracket at the end of the line")
    return SyntaxIssue("bracket-not-closed", brackets[-1], brackets[-1] + 1, advice, fixes=(fix,))
