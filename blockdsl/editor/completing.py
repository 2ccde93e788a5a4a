"""What can come next where one types: words of the language, names, shapes, files; and the words of a shape.

What the grammar would take next says which kinds of things are offered. The things themselves come from where they are
known: the table of line kinds, the shapes, the methods, the papers, and what the file declares.
"""

from __future__ import annotations

import os
import re
from collections.abc import Iterable, Iterator
from itertools import islice
from pathlib import Path
from typing import Final, Literal, get_args

from msgspec import Struct

from blockdsl.analysis.scope import VALUES
from blockdsl.diagnostics import Source
from blockdsl.editor.mentions import NAMING
from blockdsl.editor.nodes import declaration_of
from blockdsl.editor.project import Project, Reading, files_below
from blockdsl.model.book import SHEETS
from blockdsl.model.cutter import CUTTER_SHAPES
from blockdsl.model.language import LANGUAGES
from blockdsl.resources import library_names
from blockdsl.sewing.methods import METHODS
from blockdsl.shapes import SHAPES
from blockdsl.syntax import ast
from blockdsl.syntax.grammar import Grammar, expected, keyword_terminals, spellings
from blockdsl.syntax.kinds import LINE_KINDS, QUILT_KINDS, keyword_of
from blockdsl.syntax.line_kind import LineKind
from blockdsl.syntax.nodes import LengthUnit

What = Literal["line", "word", "fabric", "unit", "shape", "block", "quilt", "colourway", "choice", "file", "library"]


class Offer(Struct, frozen=True):
    """One thing that can come next: what is written, what it is, a word about it, and the letters that it replaces.

    `written` is what goes into the text where that is more than the label; in it `${1:FABRIC}` is a place to fill in.
    """

    label: str
    what: What
    detail: str
    typed: int
    written: str = ""


_MOST_OFFERED: Final = 200
"""Files that are offered; more are found by typing."""
_WORD: Final = re.compile(r"[^\s\"“”()=/\\<>~#,]*$")


class _Place(Struct, frozen=True):
    """Where one types: the line up to there, the word that is begun, the declaration around."""

    before: str
    begun: str
    around: ast.Declaration | None
    in_quilt: bool

    @property
    def grammar(self) -> Grammar:
        return "quilt" if self.in_quilt else "line"

    @property
    def keyword(self) -> str:
        return keyword_of(next(iter(self.before.split()), ""))

    @property
    def is_first_word(self) -> bool:
        return not self.before.strip()

    def offer(self, label: str, what: What, detail: str = "", written: str = "") -> Offer:
        return Offer(label, what, detail, len(self.begun), written)


def completions(project: Project, reading: Reading, source: Source, offset: int) -> list[Offer]:
    """All that can come next at a place, in the order in which it is shown."""
    line, column = source.position(offset)
    text = source.line(line)[: column - 1]
    if _is_comment(text):
        return []
    place = _place(reading, offset, text)
    if (quoted := _open_quote(text)) is not None:
        return list(_in_quotes(project, reading, place, quoted))
    if place.is_first_word:
        return [place.offer(word, "line", kind.usage) for word, kind in _lines_for(place)]
    return list(dict.fromkeys(_next_words(reading, place)))


def _place(reading: Reading, offset: int, text: str) -> _Place:
    begun = _WORD.search(text)
    word = begun.group() if begun else ""
    before = text[: len(text) - len(word)]
    around = declaration_of(reading.file, offset)
    if around is not None and around.span.line == reading.file.source.position(offset)[0]:
        in_quilt = False  # the first line of a declaration is read as any other
    else:
        in_quilt = isinstance(around, ast.QuiltDeclaration) and keyword_of(
            before.split()[0] if before.split() else ""
        ) in (QUILT_KINDS)
    return _Place(before.strip() and before.lstrip(), word, around, in_quilt)


def _is_comment(text: str) -> bool:
    unquoted = re.sub(r"\"[^\"]*\"|“[^”]*”", "", text)
    return re.search(r"#(?:\s|$)", unquoted) is not None and "fabric" not in unquoted.split("#")[0].split()[:1]


def _open_quote(text: str) -> str | None:
    """What is typed after a quotation mark that is open; None where none is."""
    whole = re.sub(r"\"[^\"]*\"|“[^”]*”", lambda found: " " * len(found.group()), text)
    place = max(whole.rfind('"'), whole.rfind("“"))
    return None if place < 0 else text[place + 1 :]


# --- lines ---------------------------------------------------------------------------------------


def _lines_for(place: _Place) -> Iterator[tuple[str, LineKind]]:
    """The lines that may stand here: those of the declaration around first, then those that begin another."""
    around = place.around
    if isinstance(around, ast.QuiltDeclaration):
        yield from QUILT_KINDS.items()
    of: dict[type, set[str]] = {
        ast.UnitDeclaration: {"grid"},
        ast.BlockDeclaration: {"grid", "block", "maker"},
        ast.BookDeclaration: {"book", "maker"},
        ast.MakerDeclaration: {"maker", "maker alone"},
    }
    homes = of.get(type(around), set())
    for word, kind in LINE_KINDS.items():
        if kind.home in homes:
            yield word, kind
    for word, kind in LINE_KINDS.items():
        if kind.home == "file" and not (isinstance(around, ast.QuiltDeclaration) and word in QUILT_KINDS):
            yield word, kind


# --- words inside a line -------------------------------------------------------------------------


def _next_words(reading: Reading, place: _Place) -> Iterator[Offer]:
    before = place.before
    wanted = expected(before.rstrip() if before[-1:].isspace() else before, place.grammar)
    if place.keyword == "row" and _is_in_shape(before):
        yield from _words_of_shape(reading, place, before[before.rfind("(") + 1 :])
        return
    if place.keyword == "unit" and "=" in before:
        yield from _words_of_shape(reading, place, before[before.rfind("=") + 1 :])
        return
    if place.keyword == "row" and place.before.rstrip().endswith(("/", "\\")):
        yield from _fabrics(reading, place)
        return
    for terminal in keyword_terminals(place.grammar):
        if terminal in wanted:
            for word in spellings(terminal):
                yield place.offer(word, "word")
    if "LENGTH_UNIT" in wanted:
        yield from (place.offer(unit, "word") for unit in get_args(LengthUnit))
    if {"NAME", "PAIR"} & wanted or place.begun:
        yield from _names(reading, place, before)


def _is_in_shape(before: str) -> bool:
    return before.rfind("(") > before.rfind(")")


def _words_of_shape(reading: Reading, place: _Place, said: str) -> Iterator[Offer]:
    """A shape, or after it what its usage writes: its own words, and fabrics."""
    words = said.split()
    if not words:
        for name, shape in SHAPES.items():
            yield place.offer(name, "shape", shape.usage, snippet(name))
        return
    known = SHAPES.get(words[0])
    if known is not None:
        own = dict.fromkeys(re.findall(r"(?<![\w-])[a-z][a-z-]*", known.usage.replace(known.name, "", 1)))
        yield from (place.offer(word, "word", known.usage) for word in own if word != "or")
        yield from _fabrics(reading, place)


def snippet(name: str) -> str:
    """How a shape is written, with a place to fill in for each word in capitals."""
    usage = SHAPES[name].usage.split(", or ")[0]
    while (shorter := re.sub(r"\s*\[[^\[\]]*\]", "", usage)) != usage:
        usage = shorter
    usage = " ".join(usage.replace("…", "").split())
    count = 0

    def filled(found: re.Match[str]) -> str:
        nonlocal count
        count += 1
        return f"${{{count}:{found.group()}}}"

    return re.sub(r"\b[A-Z][A-Z-]*\b", filled, usage)


_CHOICES: Final[dict[str, tuple[tuple[str, ...], str]]] = {
    "paper": ((*SHEETS, "roll"), "a paper"),
    "language": (tuple(LANGUAGES), "a language of the pages"),
    "cutter": (tuple(CUTTER_SHAPES), "what a cutter cuts"),
    "press": (("open", "as it nests", "toward dark"), "how seams are pressed"),
}
"""For lines whose word is one of a few what those are, from where they are defined."""


def _names(reading: Reading, place: _Place, before: str) -> Iterator[Offer]:
    """What a word without quotation marks can be in this line."""
    match place.keyword:
        case "row" if not place.in_quilt:
            yield from _fabrics(reading, place)
            yield from _units(reading, place)
        case "make" if re.search(r"\bas\b", before):
            yield from (place.offer(method, "choice", "a way of making") for method in METHODS)
        case "make":
            yield from _units(reading, place)
            yield from (place.offer(name, "shape", shape.title) for name, shape in SHAPES.items())
        case "fabric":
            yield from (place.offer(value, "choice", "how light it is") for value in VALUES)
            yield place.offer("directional", "choice", "its print has an up and a down")
        case "border" | "round" if "pieced" in before.split():
            yield from _units(reading, place)
        case "expect" if "unit" in before.split():
            yield from _units(reading, place)
        case word if word in _CHOICES:
            choices, detail = _CHOICES[word]
            yield from (place.offer(choice, "choice", detail) for choice in choices)
        case word if _names_a_fabric(word, in_quilt=place.in_quilt):
            yield from _fabrics(reading, place)


def _names_a_fabric(word: str, *, in_quilt: bool) -> bool:
    """Whether lines that begin so have a field for a fabric."""
    kind = (QUILT_KINDS if in_quilt else LINE_KINDS).get(word)
    made = kind.makes if kind else ()
    return any("fabric or unit" in NAMING.get(name, {}).values() or name in {"RowPlace", "Colourway"} for name in made)


def _fabrics(reading: Reading, place: _Place) -> Iterator[Offer]:
    for name, fabric in reading.names.fabrics.items():
        yield place.offer(name, "fabric", f"{fabric.label} {fabric.colour}")


def _units(reading: Reading, place: _Place) -> Iterator[Offer]:
    for name, unit in reading.names.units.items():
        yield place.offer(name, "unit", unit.shape.span.text if unit.shape else "a unit of rows or patches")


# --- in quotation marks --------------------------------------------------------------------------


def _in_quotes(project: Project, reading: Reading, place: _Place, typed: str) -> Iterator[Offer]:
    """Titles of blocks, quilts and colourways, or files."""

    def offers(names: Iterable[str], what: What, detail: str) -> Iterator[Offer]:
        for name in names:
            if name != typed or what == "file":
                yield Offer(name, what, detail, len(typed))

    names, keyword = reading.names, place.keyword
    in_book = isinstance(place.around, ast.BookDeclaration)
    if keyword == "use" and "library" in place.before.split('"')[0].split():
        yield from offers(library_names(), "library", "a file of the library")
    elif keyword in _FILES:
        endings, detail = _FILES[keyword]
        yield from offers(_files_beside(project, reading, endings), "file", detail)
    elif keyword == "colourway" and place.in_quilt:
        lines = (line for block in names.blocks.values() for line in block.lines)
        plans = dict.fromkeys(line.name.text for line in lines if isinstance(line, ast.Colourway))
        yield from offers(plans, "colourway", "a colourway of its blocks")
    elif keyword == "quilt" and in_book:
        yield from offers(names.quilts, "quilt", "a quilt")
    elif (keyword == "block" and in_book) or (place.in_quilt and _names_a_block(keyword)):
        yield from offers(names.blocks, "block", "a block")


_FILES: Final[dict[str, tuple[tuple[str, ...], str]]] = {
    "use": ((".block",), "a file of the project"),
    "text": ((".md",), "words in Markdown"),
    "font": ((".ttf", ".otf"), "a font"),
}
"""Lines that name a file, and how its name ends."""


def _names_a_block(keyword: str) -> bool:
    kind = QUILT_KINDS.get(keyword)
    return kind is not None and any(
        "block" in NAMING.get(made, {}).values() or made == "QuiltRow" for made in kind.makes
    )


def _files_beside(project: Project, reading: Reading, endings: tuple[str, ...]) -> list[str]:
    """Files of the project, by their paths from the folder of this one."""
    own = Path(reading.file.source.name)
    if not own.is_absolute():
        return []
    paths = islice(files_below([project.folder_of(str(own))], endings), _MOST_OFFERED)
    return [Path(os.path.relpath(path, own.parent)).as_posix() for path in paths if path != own]
