"""The options that override what a file says, `--size`, `--set`, `--colourway`: one of each, or several to compare."""

from __future__ import annotations

import re
from argparse import SUPPRESS, ArgumentParser, ArgumentTypeError, Namespace
from itertools import product
from typing import TYPE_CHECKING, Any, Final, cast

from msgspec import Struct

from blockdsl.cli.status import USAGE, CannotGoOn
from blockdsl.geometry.fraction import Fraction, read_fraction

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from blockdsl.analysis.override import WhatIf
    from blockdsl.model import RulerUnit
    from blockdsl.pipeline import Worked
    from blockdsl.syntax.ast import Pattern

PATTERNS: Final = ("straight", "dropped columns", "on point", "strippy")
MILLIMETRES: Final = {"mm": Fraction(1), "cm": Fraction(10), "in": Fraction(254, 10)}
_MOST_WIDTH_MM: Final = 10_000
_MOST_ACROSS: Final = 10_000
_WIDTH: Final = re.compile(
    r"(?P<number>[0-9]{1,5}(?:\.[0-9]{1,6})?|(?:[0-9]{1,5} +)?[0-9]{1,5}/[0-9]{1,5}) *(?P<unit>in|cm|mm)", re.ASCII
)
_COUNTS: Final = re.compile(r"([0-9]{1,5})\s*(?:x|×|by)\s*([0-9]{1,5})(?![0-9])", re.ASCII | re.IGNORECASE)


class SettingOption(Struct, frozen=True):
    """The words of one `--set`: blocks across and down, and how they are set; None for what is not said."""

    places: tuple[int, int] | None
    pattern: str | None


def block_width(text: str) -> tuple[Fraction, RulerUnit]:
    """A finished width: `9 in`, `7 1/2 in`, `20 cm`, `200 mm`; argparse turns the error into its own message."""
    said = _WIDTH.fullmatch(text.strip())
    unit = said["unit"] if said else "in"
    try:
        width = sum(map(read_fraction, said["number"].split()), Fraction(0)) if said else Fraction(0)
    except ZeroDivisionError:
        width = Fraction(0)
    if not 0 < width * MILLIMETRES[unit] <= _MOST_WIDTH_MM:
        raise ArgumentTypeError(f"{text!r}: say a finished width up to 10 m, such as '9 in' or '20 cm'")
    return (width / 10, "cm") if unit == "mm" else (width, "in" if unit == "in" else "cm")


def setting(text: str) -> SettingOption:
    """A setting: `6 x 8 on point`, or a part of it; argparse turns the error into its own message."""
    counts = _COUNTS.search(text)
    rest = (text if counts is None else text[: counts.start()] + " " + text[counts.end() :]).lower().split()
    pattern = " ".join(rest)
    places = None if counts is None else (int(counts[1]), int(counts[2]))
    if (pattern and pattern not in PATTERNS) or not (pattern or places):
        from blockdsl.diagnostics import nearest_word

        near = nearest_word(pattern, PATTERNS)
        advice = f"did you mean '{near}'? " if near else ""
        raise ArgumentTypeError(
            f"{text!r}: {advice}say how many blocks across and down, how they are set, or both, such as "
            f"'6 x 8 on point'; settings are {', '.join(PATTERNS)}"
        )
    if places is not None and not 0 < min(places) <= max(places) <= _MOST_ACROSS:
        raise ArgumentTypeError(f"{text!r}: a quilt has from 1 to {_MOST_ACROSS:,} blocks across and down")
    return SettingOption(places, pattern or None)


def colourway(text: str) -> str:
    """The name of a colourway; argparse turns the error into its own message."""
    if not text.strip():
        raise ArgumentTypeError("say the name of a colourway, as the block gives it")
    return text.strip()


def _colouring(_name: str) -> str:
    """What the option was called once."""
    raise ArgumentTypeError("this option is now called --colourway")


def add_options(command: ArgumentParser, *, several: bool = False) -> None:
    """The three options, each of which may be given several times where things are compared."""
    told: dict[str, Any] = {"action": "append", "default": []} if several else {}
    more = "; may be given several times" if several else ""
    command.add_argument(
        "--size",
        type=block_width,
        metavar="LENGTH",
        help=f"as if blocks were finished this wide, such as '9 in' or '20 cm'{more}",
        **told,
    )
    command.add_argument(
        "--set",
        type=setting,
        metavar="SETTING",
        help=f"as if quilts were set so: blocks across and down, the setting, or both, such as '6 x 8 on point', "
        f"'strippy', '5 x 5'{more}",
        **told,
    )
    command.add_argument(
        "--colourway",
        "--colorway",
        type=colourway,
        metavar="NAME",
        help=f"as if every block that has this colourway were in it{more}",
        **told,
    )
    command.add_argument("--colouring", type=_colouring, metavar="NAME", help=SUPPRESS)


def what_if_of(arguments: Namespace) -> WhatIf | None:
    """The overrides that were given; None without any."""
    found = _what_if(arguments.size, arguments.set, arguments.colourway)
    return found if found.options else None


def what_ifs_of(arguments: Namespace) -> list[WhatIf]:
    """Every combination that is to be compared, the file as it says first."""
    asked = product(arguments.size or [None], arguments.set or [None], arguments.colourway or [None])
    found = [_what_if(None, None, None), *(_what_if(*each) for each in asked)]
    return list(dict.fromkeys(found))


def _what_if(size: tuple[Fraction, RulerUnit] | None, asked: SettingOption | None, name: str | None) -> WhatIf:
    from blockdsl.analysis.override import WhatIf

    pattern = cast("Pattern | None", asked.pattern if asked else None)
    return WhatIf(size, asked.places if asked else None, pattern, name)


def refuse_without_quilts(works: Sequence[Worked], what_ifs: Iterable[WhatIf | None]) -> None:
    """`--set` is for quilts: it was mistyped where no file has one.

    Errors: CannotGoOn.
    """
    if any(each is not None and each.sets for each in what_ifs) and not any(
        worked.has_errors or worked.facts.quilts for worked in works
    ):
        raise CannotGoOn("--set is how a quilt is set, and there is no quilt in these files", USAGE)
