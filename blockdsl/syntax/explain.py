"""What to say about a line that cannot be read.

First the issues that everybody makes are recognised one by one; what is left is said in terms of what the
line wanted next. Every issue carries an example of how such a line is written.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from typing import Final, get_args

from lark.exceptions import UnexpectedCharacters, UnexpectedEOF, UnexpectedInput, UnexpectedToken

from blockdsl.diagnostics import nearest_word
from blockdsl.syntax.grammar import Grammar, keyword_terminals, spellings
from blockdsl.syntax.issue import LineFix, SyntaxIssue
from blockdsl.syntax.kinds import KEYWORDS, LINE_KINDS, QUILT_KINDS
from blockdsl.syntax.lines import RawLine
from blockdsl.syntax.nodes import LengthUnit

_WANTED: Final = {
    "PAIR": "a cell",
    "PLACE": "a place such as `0,0`",
    "NAME": "a name",
    "NUMBER": "a number",
    "LENGTH_UNIT": "`in`, `cm` or `mm`",
    "TEXT": "words in quotation marks",
    "COLOUR": "a colour such as `#dfe3e0`",
    "TIMES": "`x`",
    "EQUALS": "`=`",
    "OPEN": "`(`",
    "CLOSE": "`)`",
    "MARKS": "a turn: `>`, `<` or `~`",
    "PERCENT": "`%`",
}
"""What each terminal that is no keyword is called, in the order in which they are named."""

_TOGETHER: Final = {
    "LONG": "`long edge`",
    "SHORT": "`short edges`",
    "DROPPED": "`dropped columns`",
    "EVERY": "`every second`",
    "TOP": "`top first`",
    "ALONG": "`along length`",
    "FAT": "`fat quarters`",
}
"""Keywords that are named with the word that follows them."""


class _Stop:
    """Where and why the grammar stopped in one line."""

    def __init__(self, line: RawLine, error: UnexpectedInput, grammar: Grammar) -> None:
        self.text = line.text
        self.keyword = line.keyword
        self.grammar = grammar
        self.at, self.wanted = _stopped(line.text, error)
        self.at_end = self.at >= len(self.text)
        run = re.match(r"\S+", self.text[self.at :])
        self.found = run.group() if run else ""
        self.before = self.text[: self.at].rstrip()

    @property
    def usage(self) -> str:
        kinds = QUILT_KINDS if self.grammar == "quilt" else LINE_KINDS
        return f"it is written {kinds[self.keyword].usage}"

    def issue(
        self,
        code: str,
        advice: str | None = None,
        *,
        length: int | None = None,
        fixes: tuple[LineFix, ...] = (),
        **values: object,
    ) -> SyntaxIssue:
        """An issue at the place where reading stopped."""
        stop = self.at + (len(self.found) if length is None else length)
        return SyntaxIssue(code, self.at, stop, advice or self.usage, values, fixes)

    def instead(self, text: str, *, length: int | None = None, title: str = "", sure: bool = False) -> LineFix:
        """The fix that writes other words for those found there."""
        return LineFix(self.at, self.at + (len(self.found) if length is None else length), text, title, sure)


def _stopped(text: str, error: UnexpectedInput) -> tuple[int, frozenset[str]]:
    if isinstance(error, UnexpectedToken):
        place = len(text) if error.token.type == "$END" else error.pos_in_stream or 0
        return place, frozenset(error.accepts or error.expected)
    if isinstance(error, UnexpectedCharacters):
        return error.pos_in_stream or 0, frozenset(error.allowed or ())
    return len(text), frozenset(error.expected if isinstance(error, UnexpectedEOF) else ())


def explain(line: RawLine, error: UnexpectedInput, grammar: Grammar = "line") -> SyntaxIssue:
    """The issue in a line whose first word is good, from the place where the grammar stopped."""
    stop = _Stop(line, error, grammar)
    for recogniser in _RECOGNISERS:
        issue = recogniser(stop)
        if issue is not None:
            return issue
    return _generic(stop)


def unknown_line(line: RawLine) -> SyntaxIssue:
    """The issue in a line that begins with no word that a line may begin with."""
    word = re.match(r'[^\s"“()]+|.', line.text)
    found = word.group() if word else line.text
    close = nearest_word(found.lower(), KEYWORDS)
    if found.lower() in TRADE_WORDS:
        advice = f"it is written {TRADE_WORDS[found.lower()]}"
    elif close:
        advice = f"did you mean `{close}`?"
    elif re.match(r"[\w(|-]", found):
        advice = "a row of cells begins with `row`; other lines begin with `unit`, `block`, `size` and so on"
    else:
        advice = "every line begins with a word such as `fabric`, `unit`, `block`, `row` or `size`"
    fixes = (LineFix(0, len(found), close),) if close else ()
    return SyntaxIssue("line-unknown", 0, len(found), advice, {"word": found}, fixes)


# --- the issues that everybody makes ------------------------------------------------------------


def _turn_apart(stop: _Stop) -> SyntaxIssue | None:
    turns = re.match(r"[<>~]+", stop.found)
    if stop.keyword != "row" or turns is None or not stop.text[: stop.at].endswith((" ", "\t", "\xa0")):
        return None
    last = stop.before.split()[-1]
    if last in {"row", "-", "|"}:
        return None
    advice = f"write it straight after the cell: `{last}{turns.group()}`"
    fix = LineFix(len(stop.before), stop.at, "", "Write the turn straight after its cell", sure=True)
    return stop.issue("turn-apart", advice, length=turns.end(), fixes=(fix,), turn=turns.group())


def _pair_apart(stop: _Stop) -> SyntaxIssue | None:
    if stop.keyword != "row" or stop.found[:1] not in {"/", "\\"} or "PAIR" not in stop.wanted:
        return None
    slope = stop.found[0]
    advice = f"write the pair without spaces: `fog{slope}lantern`"
    behind = stop.at + 1
    while stop.text[behind : behind + 1].isspace():
        behind += 1
    fix = LineFix(len(stop.before), behind, slope, "Write the pair without spaces", sure=True)
    return stop.issue("pair-apart", advice, length=1, fixes=(fix,), slope=slope)


def _comma_between_cells(stop: _Stop) -> SyntaxIssue | None:
    if stop.keyword != "row" or not stop.found.startswith(","):
        return None
    advice = "leave out the comma: put only spaces between cells, `row fog lantern fog`"
    fix = stop.instead(" ", length=1, title="Put a space for the comma", sure=True)
    return stop.issue("word-unexpected", advice, length=1, fixes=(fix,), found=",", wanted="a cell")


def _decimal_comma(stop: _Stop) -> SyntaxIssue | None:
    number = re.search(r"[0-9]+,[0-9]+", stop.found)
    if stop.keyword == "patch" or number is None or not {"NUMBER", "LENGTH_UNIT"} & stop.wanted:
        return None
    advice = f"write a point for the comma: `{number.group().replace(',', '.')}`"
    fix = stop.instead(stop.found.replace(",", ".", 1), sure=True)
    return stop.issue("word-unexpected", advice, fixes=(fix,), found=stop.found, wanted="a number")


def _length_without_unit(stop: _Stop) -> SyntaxIssue | None:
    if "LENGTH_UNIT" not in stop.wanted:
        return None
    number = re.search(r"[0-9][0-9./ ]*$", stop.before)
    if number is None:
        return None
    advice = f"say inches or centimetres: `{stop.before} in`"
    if re.match(r"inch|″|’’|''", stop.found):
        advice = f"write `in` for inches: `{stop.before} in`"
    elif stop.found.startswith("cent"):
        advice = f"write `cm` for centimetres: `{stop.before} cm`"
    elif stop.found.startswith("mill"):
        advice = f"write `mm` for millimetres: `{stop.before} mm`"
    elif stop.keyword == "blocks":
        number_of = stop.before.split()[-1]
        advice += f'; for {number_of} blocks the `set` line is `set straight of {number_of} "Harbour Light"`'
    end = len(stop.before)
    fixes = tuple(LineFix(end, end, f" {unit}", f"Add `{unit}`") for unit in get_args(LengthUnit))
    if (said := re.match(r"(?:inch(?:es)?|″|’’|''|cent\w*|mill\w*)", stop.found)) is not None:
        unit = {"c": "cm", "m": "mm"}.get(said.group()[0], "in")
        fixes = (LineFix(end, stop.at + said.end(), f" {unit}", f"Write `{unit}`", sure=True),)
    return SyntaxIssue("length-needs-unit", number.start(), end, advice, {"text": number.group()}, fixes)


def _fabric_without_label(stop: _Stop) -> SyntaxIssue | None:
    words = stop.before.split()
    if stop.keyword != "fabric" or len(words) < 2:
        return None
    if "TEXT" in stop.wanted:
        advice = f'put what is to be printed after the name, in quotation marks: `fabric {words[1]} "Harbour fog"`'
        label = words[1].replace("-", " ").capitalize()
        fix = LineFix(len(stop.before), len(stop.before), f' "{label}"', "Add a label")
        return stop.issue("fabric-label-missing", advice, fixes=(fix,), name=words[1])
    if "COLOUR" in stop.wanted:
        named = _named_colour(stop)
        if named is not None:
            return named
        advice = f"put a colour after the label: `{stop.before} #dfe3e0`"
        fix = LineFix(len(stop.before), len(stop.before), " #c0c0c0", "Add a colour")
        return stop.issue("fabric-colour-missing", advice, fixes=(fix,), name=words[1])
    return None


def _named_colour(stop: _Stop) -> SyntaxIssue | None:
    """A colour by its name on the web (CSS Color Module Level 3, W3C; the names are tinycss2's)."""
    from tinycss2.color3 import parse_color  # noqa: PLC0415 - for a slip alone

    word = re.match(r"[A-Za-z]+", stop.found)
    colour = parse_color(word.group()) if word else None
    if word is None or colour is None or isinstance(colour, str) or colour.alpha < 1:
        return None
    digits = "#" + "".join(f"{round(channel * 255):02x}" for channel in colour[:3])
    advice = f"`{word.group()}` is `{digits}`"
    fix = stop.instead(digits, length=word.end(), sure=True)
    name = stop.before.split()[1]
    return stop.issue("fabric-colour-missing", advice, length=word.end(), fixes=(fix,), name=name)


def _not_a_name(stop: _Stop) -> SyntaxIssue | None:
    name = re.match(r"[0-9_-][\w-]*[^\W\d_][\w-]*", stop.found)
    if name is None or not {"NAME", "PAIR"} & stop.wanted:
        return None
    better = name.group().lstrip("0123456789_-")
    advice = f"call it `{better}`, and put the number after the letters if you need it"
    fix = stop.instead(better, length=name.end())
    return stop.issue("name-needs-letter", advice, length=name.end(), fixes=(fix,), name=name.group())


def _empty_row(stop: _Stop) -> SyntaxIssue | None:
    if stop.keyword != "row" or not stop.at_end or stop.before != "row":
        return None
    return SyntaxIssue("row-empty", 0, len("row"), f"name its cells: {LINE_KINDS['row'].usage}")


def _shape_in_brackets(stop: _Stop) -> SyntaxIssue | None:
    if stop.keyword == "unit" and stop.found.startswith("("):
        advice = "write the shape without brackets: `unit beam = geese lantern on fog`"
        return stop.issue("word-unexpected", advice, length=1, found="(", wanted="the name of a shape")
    if stop.keyword == "row" and stop.found.startswith("(") and "CLOSE" in stop.wanted:
        advice = "give the inner shape a name with `unit`, and use the name"
        return stop.issue("bracket-inside-bracket", advice, length=1)
    return None


_RECOGNISERS: Final[tuple[Callable[[_Stop], SyntaxIssue | None], ...]] = (
    _turn_apart,
    _pair_apart,
    _comma_between_cells,
    _decimal_comma,
    _length_without_unit,
    _fabric_without_label,
    _not_a_name,
    _empty_row,
    _shape_in_brackets,
)


# --- the rest ----------------------------------------------------------------------------------


def _generic(stop: _Stop) -> SyntaxIssue:
    wanted = _in_words(stop.wanted, stop.grammar)
    if stop.at_end:
        return SyntaxIssue("line-ends-early", len(stop.text), len(stop.text), stop.usage, {"wanted": wanted})
    keywords = [word for each in stop.wanted & set(keyword_terminals(stop.grammar)) for word in spellings(each)]
    near = nearest_word(stop.found.lower(), keywords)
    fixes = (stop.instead(near),) if near else ()
    return stop.issue("word-unexpected", fixes=fixes, found=stop.found, wanted=wanted)


def _in_words(terminals: Iterable[str], grammar: Grammar) -> str:
    wanted = set(terminals)
    if "PAIR" in wanted:
        return "a cell"
    if "TEXT" in wanted and "LIBRARY" in wanted:
        return "a file's name in quotation marks, or `library`"
    words = {word: _TOGETHER.get(word, f"`{word.lower().replace('_', '-')}`") for word in keyword_terminals(grammar)}
    called = _WANTED | {word: name for word, name in words.items() if word not in _WANTED}
    called["$END"] = "the end of the line"
    names = [name for terminal, name in called.items() if terminal in wanted]
    if len(names) < 2:
        return names[0] if names else "something else"
    return f"{', '.join(names[:-1])} or {names[-1]}"


TRADE_WORDS: Final[dict[str, str]] = {
    "lattice": "`sash 1 1/2 in slate`",
    "sashing": "`sash 1 1/2 in slate`",
    "cornerstone": "`sash 1 1/2 in slate posts lantern`",
    "cornerstones": "`sash 1 1/2 in slate posts lantern`",
    "posts": "`sash 1 1/2 in slate posts lantern`",
    "setting": "`set straight 4 x 6 of …`, or for setting triangles `fill fog`",
    "triangles": "`fill fog`, which side and corner triangles are of",
    "on": "`set on point 4 x 6 of …`",
    "layout": "`set straight 4 x 6 of …`",
}
"""For a word that begins no line how the line is written that is meant."""
