"""The smallest parts of a line: words, numbers, quoted text."""

from __future__ import annotations

import unicodedata
from typing import cast

from lark import Token
from msgspec import Struct

from blockdsl.diagnostics import Source, Span
from blockdsl.syntax.issue import IssueFound, LineFix, SyntaxIssue
from blockdsl.syntax.nodes import LengthLiteral, LengthUnit, Number, Text, Word
from blockdsl.syntax.numbers import MOST_DIGITS, NumberFault, read_numbers


def is_name(text: str) -> bool:
    """Whether each sign is a letter, a digit, a mark that belongs to a letter, `-` or `_`, the first one a letter.

    The grammar lets whole scripts through; the commas and full stops of those scripts are turned away here.
    """
    if text.isascii():
        return True
    kinds = [unicodedata.category(letter)[0] for letter in text]
    return kinds[0] == "L" and all(kind in "LMN" or letter in "-_" for kind, letter in zip(kinds, text, strict=True))


def normalized(text: str) -> str:
    """The name with each accented letter in its one usual form, so that names that look alike are alike."""
    return text if text.isascii() else unicodedata.normalize("NFC", text)


class LineAt(Struct, frozen=True):
    """Where a line begins in its source, to turn the grammar's positions into spans."""

    source: Source
    start: int

    def span(self, first: Token, last: Token | None = None) -> Span:
        """From the first letter of one token to the last letter of another."""
        begin, end = first.start_pos, (last or first).end_pos
        return Span(self.source, self.start + cast("int", begin), self.start + cast("int", end))

    def word(self, token: Token) -> Word:
        """A name, or a word of the trade."""
        if not is_name(token):
            raise _fault("name-needs-letter", token, "use letters, digits, `-` and `_`", name=str(token))
        return Word(self.span(token), normalized(str(token)))

    def times(self, token: Token) -> Word:
        """The `x` of `4 x 4`, however it is typed."""
        return Word(self.span(token), "x")

    def quoted(self, token: Token) -> Text:
        """Quoted text without its marks, to the letter: the name of a file, a path."""
        return Text(self.span(token), str(token)[1:-1])

    def text(self, token: Token) -> Text:
        """Quoted words that are printed, without their marks: letters in their usual form, a tab as a space."""
        words = normalized(str(token)[1:-1]).replace("\t", " ")
        if not words.strip():
            raise _fault("words-empty", token, "write what is to be printed between the quotation marks")
        return Text(self.span(token), words)

    def numbers(self, token: Token) -> tuple[Number, ...]:
        """One number, or the two of `1 3/2`, where several may stand."""
        try:
            values = read_numbers(token)
        except NumberFault as fault:
            raise number_issue(fault, token) from None
        if len(values) == 1:
            return (Number(self.span(token), values[0]),)
        start = self.start + cast("int", token.start_pos)
        whole, fraction = token.split()
        first = Number(Span(self.source, start, start + len(whole)), values[0])
        end = start + len(token)
        return first, Number(Span(self.source, end - len(fraction), end), values[1])

    def number(self, token: Token) -> Number:
        """One number."""
        found = self.numbers(token)
        if len(found) > 1:
            advice = "write a whole number and a fraction smaller than one, such as `1 1/2`"
            raise _fault("word-unexpected", token, advice, found=str(token), wanted="one number")
        return found[0]

    def length(self, number: Token, unit: Token) -> LengthLiteral:
        """A number with its unit."""
        return LengthLiteral(self.span(number, unit), self.number(number).value, cast("LengthUnit", str(unit)))


def number_issue(fault: NumberFault, token: Token) -> IssueFound:
    """What to say about a number that is not allowed."""
    advice = {
        "number-over-zero": "write a number other than 0 below the line",
        "number-too-long": f"write it with at most {MOST_DIGITS} digits",
    }[fault.code]
    return _fault(fault.code, token, advice, text=str(token))


def _fault(code: str, token: Token, advice: str, **values: object) -> IssueFound:
    return IssueFound(issue_at(code, token, advice, None, **values))


def issue_at(code: str, token: Token, advice: str | None, instead: str | None = None, **values: object) -> SyntaxIssue:
    """An issue that covers one token; `instead` is what was probably meant."""
    start, stop = cast("int", token.start_pos), cast("int", token.end_pos)
    fixes = () if instead is None else (LineFix(start, stop, instead),)
    return SyntaxIssue(code, start, stop, advice, values, fixes)
