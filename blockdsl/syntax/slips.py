"""What to say about a line that cannot be read.

First the slips that everybody makes are recognised one by one; what is left is said in terms of what the
line wanted next. Every slip carries an example of how such a line is written.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from typing import Final

from lark.exceptions import UnexpectedCharacters, UnexpectedEOF, UnexpectedInput, UnexpectedToken

from blockdsl.diagnostics import nearest_word
from blockdsl.syntax.keywords import KEYWORDS, LINE_KINDS, QUILT_KINDS
from blockdsl.syntax.lines import RawLine, Slip
from blockdsl.syntax.trade_words import LINES

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
    "LIBRARY": "`library`",
    "AT": "`at`",
    "AS": "`as`",
    "CUT": "`cut`",
    "UNIT": "`unit`",
    "FINISHED": "`finished`",
    "COUNT": "`count`",
    "ONCE": "`once`",
    "TWICE": "`twice`",
    "SIZES": "`sizes`",
    "LONG": "`long edge`",
    "SHORT": "`short edges`",
    "EDGE": "`edge`",
    "STRAIGHT": "`straight`",
    "DROPPED": "`dropped columns`",
    "ON": "`on`",
    "POINT": "`point`",
    "STRIPPY": "`strippy`",
    "ROWS": "`rows`",
    "COLUMNS": "`columns`",
    "MEDALLION": "`medallion`",
    "OF": "`of`",
    "MARKS": "a turn: `>`, `<` or `~`",
    "ALL": "`all`",
    "EVERY": "`every second`",
    "SECOND": "`second`",
    "ODD": "`odd`",
    "EVEN": "`even`",
    "POSTS": "`posts`",
    "OUTER": "`outer`",
    "PIECED": "`pieced`",
    "BUTTED": "`butted`",
    "MITRED": "`mitred`",
    "CORNERS": "`corners`",
    "TOP": "`top first`",
    "FIRST": "`first`",
    "ALONG": "`along length`",
    "LENGTH": "`length`",
    "BIAS": "`bias`",
    "OVERAGE": "`overage`",
    "WIDTH": "`width`",
    "FROM": "`from`",
    "FAT": "`fat quarters`",
    "QUARTERS": "`quarters`",
    "USABLE": "`usable`",
    "PERCENT": "`%`",
    "BLOCKS": "`blocks`",
    "$END": "the end of the line",
}
"""What each terminal is called, in the order in which they are named."""


class _Stop:
    """Where and why the grammar stopped in one line."""

    def __init__(self, line: RawLine, error: UnexpectedInput, *, in_quilt: bool) -> None:
        self.text = line.text
        self.keyword = line.keyword
        self.in_quilt = in_quilt
        self.at, self.wanted = _stopped(line.text, error)
        self.at_end = self.at >= len(self.text)
        run = re.match(r"\S+", self.text[self.at :])
        self.found = run.group() if run else ""
        self.before = self.text[: self.at].rstrip()

    @property
    def usage(self) -> str:
        kinds = QUILT_KINDS if self.in_quilt else LINE_KINDS
        return f"it is written {kinds[self.keyword].usage}"

    def slip(self, code: str, advice: str | None = None, *, length: int | None = None, **values: object) -> Slip:
        """A slip at the place where reading stopped."""
        stop = self.at + (len(self.found) if length is None else length)
        return Slip(code, self.at, stop, advice or self.usage, values)


def _stopped(text: str, error: UnexpectedInput) -> tuple[int, frozenset[str]]:
    if isinstance(error, UnexpectedToken):
        place = len(text) if error.token.type == "$END" else error.pos_in_stream or 0
        return place, frozenset(error.accepts or error.expected)
    if isinstance(error, UnexpectedCharacters):
        return error.pos_in_stream or 0, frozenset(error.allowed or ())
    return len(text), frozenset(error.expected if isinstance(error, UnexpectedEOF) else ())


def explain(line: RawLine, error: UnexpectedInput, *, in_quilt: bool = False) -> Slip:
    """The slip in a line whose first word is good, from the place where the grammar stopped."""
    stop = _Stop(line, error, in_quilt=in_quilt)
    for recogniser in _RECOGNISERS:
        slip = recogniser(stop)
        if slip is not None:
            return slip
    return _generic(stop)


def unknown_line(line: RawLine) -> Slip:
    """The slip in a line that begins with no word that a line may begin with."""
    word = re.match(r'[^\s"“()]+|.', line.text)
    found = word.group() if word else line.text
    close = nearest_word(found.lower(), KEYWORDS)
    if found.lower() in LINES:
        advice = f"it is written {LINES[found.lower()]}"
    elif close:
        advice = f"did you mean `{close}`?"
    elif re.match(r"[\w(|-]", found):
        advice = "a row of cells begins with `row`; other lines begin with `unit`, `block`, `size` and so on"
    else:
        advice = "every line begins with a word such as `fabric`, `unit`, `block`, `row` or `size`"
    return Slip("line-unknown", 0, len(found), advice, {"word": found})


# --- the slips that everybody makes ------------------------------------------------------------


def _turn_apart(stop: _Stop) -> Slip | None:
    turns = re.match(r"[<>~]+", stop.found)
    if stop.keyword != "row" or turns is None or not stop.text[: stop.at].endswith((" ", "\t", "\xa0")):
        return None
    last = stop.before.split()[-1]
    if last in {"row", "-", "|"}:
        return None
    advice = f"write it straight after the cell: `{last}{turns.group()}`"
    return stop.slip("turn-apart", advice, length=turns.end(), turn=turns.group())


def _pair_apart(stop: _Stop) -> Slip | None:
    if stop.keyword != "row" or stop.found[:1] not in {"/", "\\"} or "PAIR" not in stop.wanted:
        return None
    slope = stop.found[0]
    advice = f"write the pair without spaces: `fog{slope}lantern`"
    return stop.slip("pair-apart", advice, length=1, slope=slope)


def _comma_between_cells(stop: _Stop) -> Slip | None:
    if stop.keyword != "row" or not stop.found.startswith(","):
        return None
    advice = "leave the comma out: between the cells of a row stand spaces alone, `row fog lantern fog`"
    return stop.slip("word-unexpected", advice, length=1, found=",", wanted="a cell")


def _decimal_comma(stop: _Stop) -> Slip | None:
    number = re.search(r"[0-9]+,[0-9]+", stop.found)
    if stop.keyword == "patch" or number is None or not {"NUMBER", "LENGTH_UNIT"} & stop.wanted:
        return None
    advice = f"write a point for the comma: `{number.group().replace(',', '.')}`"
    return stop.slip("word-unexpected", advice, found=stop.found, wanted="a number")


def _length_without_unit(stop: _Stop) -> Slip | None:
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
    return Slip("length-needs-unit", number.start(), len(stop.before), advice, {"text": number.group()})


def _fabric_without_label(stop: _Stop) -> Slip | None:
    words = stop.before.split()
    if stop.keyword != "fabric" or len(words) < 2:
        return None
    if "TEXT" in stop.wanted:
        advice = f'put what is to be printed after the name, in quotation marks: `fabric {words[1]} "Harbour fog"`'
        return stop.slip("fabric-label-missing", advice, name=words[1])
    if "COLOUR" in stop.wanted:
        advice = f"put a colour after the label: `{stop.before} #dfe3e0`"
        return stop.slip("fabric-colour-missing", advice, name=words[1])
    return None


def _not_a_name(stop: _Stop) -> Slip | None:
    name = re.match(r"[0-9_-][\w-]*[^\W\d_][\w-]*", stop.found)
    if name is None or not {"NAME", "PAIR"} & stop.wanted:
        return None
    better = name.group().lstrip("0123456789_-")
    advice = f"call it `{better}`, and put the number after the letters if you need it"
    return stop.slip("name-needs-letter", advice, length=name.end(), name=name.group())


def _empty_row(stop: _Stop) -> Slip | None:
    if stop.keyword != "row" or not stop.at_end or stop.before != "row":
        return None
    return Slip("row-empty", 0, len("row"), f"name its cells: {LINE_KINDS['row'].usage}")


def _shape_in_brackets(stop: _Stop) -> Slip | None:
    if stop.keyword == "unit" and stop.found.startswith("("):
        advice = "write the shape without brackets: `unit beam = geese lantern on fog`"
        return stop.slip("word-unexpected", advice, length=1, found="(", wanted="the name of a shape")
    if stop.keyword == "row" and stop.found.startswith("(") and "CLOSE" in stop.wanted:
        advice = "give the inner shape a name with `unit`, and use the name"
        return stop.slip("bracket-inside-bracket", advice, length=1)
    return None


_RECOGNISERS: Final[tuple[Callable[[_Stop], Slip | None], ...]] = (
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


def _generic(stop: _Stop) -> Slip:
    wanted = _in_words(stop.wanted)
    if stop.at_end:
        return Slip("line-ends-early", len(stop.text), len(stop.text), stop.usage, {"wanted": wanted})
    return stop.slip("word-unexpected", found=stop.found, wanted=wanted)


def _in_words(terminals: Iterable[str]) -> str:
    wanted = set(terminals)
    if "PAIR" in wanted:
        return "a cell"
    if "TEXT" in wanted and "LIBRARY" in wanted:
        return "a file's name in quotation marks, or `library`"
    names = [name for terminal, name in _WANTED.items() if terminal in wanted]
    if len(names) < 2:
        return names[0] if names else "something else"
    return f"{', '.join(names[:-1])} or {names[-1]}"
