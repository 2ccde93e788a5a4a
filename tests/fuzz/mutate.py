"""Spoiling a block file the way hands, editors and malice do."""

from __future__ import annotations

import random
import re
from collections.abc import Callable, Sequence

Mutation = Callable[[random.Random, str, Sequence[str]], str]

_WORD = re.compile(r"\S+")
_NUMBER = re.compile(r"\d+(?:\.\d+|/\d+)?")
_NUMBERS = (
    *("0", "-1", "1/0", "0/1", "-0", "1", "2", "32", "33", "200", "201", "1000", "9" * 29, "9" * 31, "9" * 400),
    *("1e9", "0.0000001", "1/3", "1/7", "1 1/2", "22/7", "1/99999999999", "10000", "394", "r2", "2-r2", "٣", "½"),
)
_SCRAPS = (
    *("\x00", "\ufeff", "\r", "\r\n", "\t", "\u00a0", "\u202e", "\u2066", "\u200b", "\u2028", "\x1b[31m", "\ud800"),
    *(
        "é",
        "e\u0301",
        "שָׁלוֹם",
        "مرحبا",
        "布",
        "🧵",
        "x" * 300,
        "(" * 40,
        ")" * 40,
        "((",
        ")",
        '"',
        "“",
        "#",
        "# ",
        "#12345",
    ),
    *(
        "/",
        "\\",
        "-",
        "|",
        ">",
        "<",
        "~",
        "~>~<",
        ">" * 100,
        "=",
        ",",
        "0,0",
        "r2,r3",
        "<script>",
        "&amp;",
        "{0}",
        "%s",
    ),
)
_LINES = (
    *(
        'use "fuzz.block"',
        'use "../../../etc/passwd"',
        'use library "basics"',
        'use library "stars"',
        'use "."',
        'use ""',
    ),
    *(
        "row -",
        "row |",
        "row - -",
        "row self",
        "unit self",
        "unit self = self",
        "grid 4 x 4",
        "grid 0 x 4",
        "grid 9999999 x 2",
    ),
    *(
        "patch shore at 0,0 4,4 4,0 0,4",
        "patch ink at 0,0 0,0 0,0",
        "size 0 in",
        "size 12 in",
        "size 9999999 in",
        "size 3 cm",
    ),
    *(
        "columns 1 0 1",
        "columns 1/3 1/7 22/7",
        "heights 1",
        "seam 0 in",
        "seam 11 in",
        "measure 5 in",
        "trim 3 in",
        "trim 0 in",
    ),
    *("make half as foundation", "make half as two at a time", "make geese as four at a time", "make x as y"),
    *(
        'colourway "x" a=b',
        'note ""',
        'source ""',
        "family star",
        'quilt "x"',
        'set straight 3 x 4 of "x"',
        'set on point 2 x 2 of "Strips"',
        "border 3 in pieced step",
        "round 1/7 in shore mitred",
        "sash 11 in kelp posts rust outer",
        "turn ~ on every second",
        "blocks 1/3 in",
        "alternate shore",
        "fill shore",
        'row "x"> "x" shore',
        'book "x"',
        'cutter "x" half 3 in',
        'cutter "y" rectangle 0 x 3 in',
        'cutter "x" beam 3 x 2 cm',
        "expect cut shore 1 squares 1",
        "block",
    ),
    *(
        'block ""',
        'block "<a href=http://x>"',
        'block "../../x"',
        'block "CON"',
        'block "\u202eכל"',
        'fabric q "=1+1" #000000',
    ),
)


def _bytes(rng: random.Random, text: str, _seeds: Sequence[str]) -> str:
    data = bytearray(text.encode("utf-8", "surrogatepass"))
    for _ in range(rng.randint(1, 6)):
        place = rng.randrange(len(data) + 1)
        action = rng.randrange(3)
        if action == 0:
            data[place:place] = bytes([rng.randrange(256)])
        elif action == 1:
            del data[place : place + rng.randint(1, 8)]
        elif place < len(data):
            data[place] ^= 1 << rng.randrange(8)
    return data.decode("utf-8", "replace" if rng.random() < 0.8 else "surrogateescape")


def _word(rng: random.Random, text: str, _seeds: Sequence[str]) -> str:
    """Drop, double, swap or replace a word."""
    words = list(_WORD.finditer(text))
    if not words:
        return text
    here, other = rng.choice(words), rng.choice(words)
    new = rng.choice(("", f"{here.group()} {here.group()}", other.group(), here.group() + other.group()))
    return text[: here.start()] + new + text[here.end() :]


def _scrap(rng: random.Random, text: str, _seeds: Sequence[str]) -> str:
    place = rng.randrange(len(text) + 1)
    return text[:place] + rng.choice(_SCRAPS) + text[place:]


def _number(rng: random.Random, text: str, _seeds: Sequence[str]) -> str:
    numbers = list(_NUMBER.finditer(text))
    if not numbers:
        return text
    here = rng.choice(numbers)
    return text[: here.start()] + rng.choice(_NUMBERS) + text[here.end() :]


def _line(rng: random.Random, text: str, _seeds: Sequence[str]) -> str:
    """Drop, double, swap or add a line."""
    lines = text.split("\n")
    here, other = rng.randrange(len(lines)), rng.randrange(len(lines))
    match rng.randrange(5):
        case 0:
            del lines[here]
        case 1:
            lines.insert(other, lines[here])
        case 2:
            lines[here], lines[other] = lines[other], lines[here]
        case 3:
            lines.insert(here, rng.choice(_LINES))
        case _:
            lines[here] = lines[here][: rng.randint(0, 40)]
    return "\n".join(lines)


def _splice(rng: random.Random, text: str, seeds: Sequence[str]) -> str:
    """The beginning of one file and the end of another."""
    other = rng.choice(seeds)
    return text[: rng.randrange(len(text) + 1)] + other[rng.randrange(len(other) + 1) :]


def _nest(rng: random.Random, text: str, _seeds: Sequence[str]) -> str:
    """A tower of units, some of them wide."""
    levels, wide = rng.choice(((3, 60), (31, 2), (32, 1), (33, 1), (32, 5), (60, 2), (40, 8)))
    tower = "".join(f"unit t{n}\n" + f"  row {f't{n + 1} ' * wide}\n" * wide for n in range(levels))
    end = rng.choice((f"unit t{levels} = square shore\n", f"unit t{levels}\n  row t0\n", ""))
    return f'{text}\n{tower}{end}block "Tower"\n  size 12 in\n  row t0 t{rng.randrange(levels)}\n'


def _many(rng: random.Random, text: str, _seeds: Sequence[str]) -> str:
    """A line repeated many times, or a word of it."""
    lines = text.split("\n")
    here = rng.randrange(len(lines))
    times = rng.choice((5, 50, 250))
    if rng.random() < 0.5:
        lines[here : here + 1] = [lines[here]] * times
    else:
        words = lines[here].split()
        lines[here] = " ".join([*words, *(words[-1:] * times)])
    return "\n".join(lines)


def _ends(rng: random.Random, text: str, _seeds: Sequence[str]) -> str:
    """Line ends and byte order marks of other systems, or the file cut off."""
    match rng.randrange(4):
        case 0:
            return text.replace("\n", "\r\n")
        case 1:
            return text.replace("\n", "\r")
        case 2:
            return "\ufeff" + text
        case _:
            return text[: rng.randrange(len(text) + 1)]


# Words, numbers and lines most often: what stays near to a block file gets furthest into the house.
_MUTATIONS: tuple[Mutation, ...] = (
    *(_bytes, _scrap, _splice, _nest, _many, _ends),
    *(_word, _word, _word, _word, _number, _number, _number, _number, _line, _line, _line, _line),
)


def mutated(number: int, seeds: Sequence[str]) -> str:
    """One file with one to four things wrong with it, the same for the same number."""
    rng = random.Random(number)  # noqa: S311  not for secrets, but for the same files every time
    text = rng.choice(seeds)
    for _ in range(rng.choice((1, 1, 1, 2, 3, 4))):
        text = rng.choice(_MUTATIONS)(rng, text, seeds)
    return text
