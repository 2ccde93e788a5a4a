"""Text measured and broken with the bundled font, the same on every machine.

HarfBuzz shapes every run with kerning. A line's base direction is left to right; names in Hebrew or Arabic run
the other way inside it, by the resolution of weak and neutral letters in Unicode's annex 9 without its explicit marks.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from functools import cache, lru_cache
from itertools import groupby
from typing import Any, Final

import uharfbuzz
from msgspec import Struct

from blockdsl.fonts import font_bytes, has_letter
from blockdsl.fonts.further import FurtherFont, letters_of, shaper_of
from blockdsl.geometry.fraction_text import SUBSCRIPTS, SUPERSCRIPTS
from blockdsl.marks.display_list import Weight
from blockdsl.marks.theme import ACCENT

UNITS_PER_EM: Final = 1000
ASCENT: Final = 0.935
"""Of the font, in em; so are the others."""
DESCENT: Final = 0.265
LINE_HEIGHT: Final = 1.2
CAP_HEIGHT: Final = 0.689

_LATIN: Final = re.compile(
    "[\x20-\x7e\xa1-\xa9\xab-\xb4\xb6-\xb9\xbb-\u017f\u2010-\u2027\u2030-\u205e\u2070\u2074-\u207e\u2080-\u208e"
    "\u2190-\u2193\u2212\u2248\u2264\u2265]*"
)
"""A text of Latin letters, figures and signs alone: it runs one way, and is of one script."""


class Glyph(Struct, frozen=True):
    """One glyph of the font; x and y (upward) from the start of its line, all in 1/1000 em.

    `cluster` is the place in its run's text of the first letter that it stands for.
    """

    number: int
    x: int
    y: int
    advance: int
    cluster: int


class GlyphRun(Struct, frozen=True):
    """Letters of one direction and script: `text` as it is read, `glyphs` as they stand from left to right.

    `start` is where the run begins in its line, in 1/1000 em. Glyphs of a `further` run are of the maker's font.
    """

    text: str
    right_to_left: bool
    glyphs: tuple[Glyph, ...]
    start: int = 0
    further: bool = False


_FURTHER: ContextVar[FurtherFont | None] = ContextVar("further_font", default=None)
_OUTLINED: ContextVar[bool] = ContextVar("outline_words", default=False)
_ACCENT: ContextVar[str] = ContextVar("accent", default="")


@contextmanager
def printing_with(font: FurtherFont | None, *, outline_words: bool = True, accent: str = "") -> Iterator[None]:
    """Take letters that our font lacks from this one, for all that is measured and painted meanwhile.

    With `outline_words` the words of SVG drawings are outlines, for programs that ignore the font in the file. `accent`
    is the maker's own colour, in place of ours.
    """
    before, words_before = _FURTHER.set(font), _OUTLINED.set(outline_words)
    accent_before = _ACCENT.set(accent)
    try:
        yield
    finally:
        _FURTHER.reset(before)
        _OUTLINED.reset(words_before)
        _ACCENT.reset(accent_before)


def are_words_outlined() -> bool:
    """Whether the words of SVG drawings are to be outlines."""
    return _OUTLINED.get()


def painted(colour: str) -> str:
    """The colour that is painted for one of a mark: the maker's own accent for the accent."""
    return (_ACCENT.get() or ACCENT.lower()) if colour == ACCENT else colour


def font_beside() -> FurtherFont | None:
    """The font that letters are taken from which ours lacks."""
    return _FURTHER.get()


@cache
def _font(weight: Weight) -> Any:
    return uharfbuzz.Font(uharfbuzz.Face(font_bytes(weight)))


def font_of(weight: Weight, *, further: bool) -> Any:
    """HarfBuzz's font that the glyphs of a run are of, 1000 units to the em; the maker's own where it is `further`."""
    beside = font_beside()
    return shaper_of(beside) if further and beside is not None else _font(weight)


def shape(text: str, weight: Weight = "regular") -> tuple[GlyphRun, ...]:
    """The runs of one line from left to right, with their glyphs in place.

    Units:  1/1000 em. Letters that the font lacks, and the maker's own font too, become glyph 0, an empty box.
    """
    return _shaped(text, weight, None if text.isascii() else _FURTHER.get())


@lru_cache(maxsize=16384)
def _shaped(text: str, weight: Weight, beside: FurtherFont | None) -> tuple[GlyphRun, ...]:
    x, runs = 0, []
    for part, right_to_left in _visual_runs(text):
        pieces = [(part, False)] if beside is None else _by_font(part, beside)
        for piece, further in reversed(pieces) if right_to_left else pieces:
            start, font = x, shaper_of(beside) if further and beside is not None else _font(weight)
            glyphs, x = _shape_run(piece, weight, font, right_to_left, x)
            runs.append(GlyphRun(piece, right_to_left, glyphs, start, further))
    return tuple(runs)


def _by_font(text: str, beside: FurtherFont) -> list[tuple[str, bool]]:
    """The text in parts, each with whether it is to be taken from the maker's own font."""

    def is_further(letter: str) -> bool:
        return not has_letter(letter) and ord(letter) in letters_of(beside)

    return [("".join(letters), further) for further, letters in groupby(text, key=is_further)]


def _shape_run(text: str, weight: Weight, font: Any, right_to_left: bool, x: int) -> tuple[tuple[Glyph, ...], int]:
    buffer = uharfbuzz.Buffer()
    buffer.add_str(text)
    buffer.direction = "rtl" if right_to_left else "ltr"
    buffer.language = "en"  # otherwise the machine's own language would choose the letter forms
    buffer.guess_segment_properties()
    # No joined fi and fl: readers would take them out of the page as one letter, and a search for "finished" fail.
    uharfbuzz.shape(font, buffer, {"liga": False})
    swap = {} if text.isascii() or font is not _font(weight) else fraction_figures(weight)
    glyphs = []
    for info, place in zip(buffer.glyph_infos, buffer.glyph_positions, strict=True):
        number = swap.get(info.codepoint, info.codepoint)
        glyphs.append(Glyph(number, x + place.x_offset, place.y_offset, place.x_advance, info.cluster))
        x += place.x_advance
    return tuple(glyphs), x


@cache
def fraction_figures(weight: Weight) -> dict[int, int]:
    """For the glyph of each superscript or subscript figure the font's glyph for it above or below a fraction's line.

    They have the same widths, but stand as high as the figures around them; the plain subscripts hang below the line.
    `tests/fonts/make_core.py` makes the same change in the subsets, so that drawings and PDF look alike.
    """
    font = _font(weight)
    glyphs: dict[int, int] = {}
    for scripts, feature in ((SUPERSCRIPTS, "numr"), (SUBSCRIPTS, "dnom")):
        for figure, script in scripts.items():
            buffer = uharfbuzz.Buffer()
            buffer.add_str(chr(figure))
            buffer.guess_segment_properties()
            uharfbuzz.shape(font, buffer, {feature: True})
            glyphs[font.get_nominal_glyph(ord(script))] = buffer.glyph_infos[0].codepoint
    return glyphs


def _visual_runs(text: str) -> list[tuple[str, bool]]:
    """The parts of a line from left to right, each of one direction and one script."""
    if text.isascii():
        return [(text, False)] if text else []
    runs: list[tuple[str, bool]] = []
    for backward, group in groupby(_levels(text), key=lambda pair: pair[1] > 0):
        by_level = groupby(group, key=lambda pair: pair[1])
        inner = [("".join(letter for letter, _ in part), level == 1) for level, part in by_level]
        for part, right_to_left in reversed(inner) if backward else inner:
            scripts = _script_runs(part)
            runs.extend((piece, right_to_left) for piece in (reversed(scripts) if right_to_left else scripts))
    return runs


def _levels(text: str) -> list[tuple[str, int]]:
    """Each letter with its level: 0 left to right, 1 right to left, 2 figures within right to left."""
    kinds = _resolved_kinds(text)
    levels: list[int] = [{"L": 0, "R": 1, "N": 2}.get(kind, -1) for kind in kinds]
    start = 0
    while start < len(levels):
        if levels[start] >= 0:
            start += 1
            continue
        end = start
        while end < len(levels) and levels[end] < 0:
            end += 1
        before = levels[start - 1] if start else 0
        after = levels[end] if end < len(levels) else 0
        levels[start:end] = [1 if before > 0 and after > 0 else 0] * (end - start)
        start = end
    return list(zip(text, levels, strict=True))


def _resolved_kinds(text: str) -> list[str]:
    """L, R, N (figures of a right-to-left stretch) or a space for neutral, one for each letter."""
    raw = [unicodedata.bidirectional(letter) for letter in text]
    kinds: list[str] = []
    strong = "L"
    for place, kind in enumerate(raw):
        following = raw[place + 1] if place + 1 < len(raw) else ""
        if kind in {"L", "R", "AL"}:
            strong = "L" if kind == "L" else "R"
            kinds.append(strong)
        elif kind == "NSM":
            kinds.append(kinds[-1] if kinds else " ")
        elif kind == "AN" or (kind == "EN" and strong == "R"):
            kinds.append("N")
        elif kind == "EN":
            kinds.append("L")
        elif kind in {"ES", "CS", "ET"} and kinds and kinds[-1] == "N" and (kind == "ET" or following in {"EN", "AN"}):
            kinds.append("N")  # a point, a slash or a sign that belongs to its figure
        else:
            kinds.append(" ")
    return kinds


def _script_runs(text: str) -> list[str]:
    """The text cut where its script changes; spaces, signs and figures stay with what goes before."""
    parts: list[str] = []
    script = ""
    for letter in text:
        own = _script(letter)
        if parts and (not own or not script or own == script):
            parts[-1] += letter
        else:
            parts.append(letter)
        script = own or script
    return parts


@lru_cache(maxsize=4096)
def _script(letter: str) -> str:
    """A word for the script of a letter, empty for signs and marks. Python knows scripts only by its letters' names."""
    if unicodedata.category(letter) not in {"Lu", "Ll", "Lt", "Lo"}:
        return ""
    return unicodedata.name(letter, " ").split()[0]


def measure(text: str, size_pt: float, weight: Weight = "regular") -> float:
    """Width of one line in points at the given size."""
    return _advance(text, weight, None if text.isascii() else _FURTHER.get()) * size_pt / UNITS_PER_EM


@lru_cache(maxsize=65536)
def _advance(text: str, weight: Weight, beside: FurtherFont | None) -> int:
    # No letter of the font comes nearer to a space or further from it, so a line is as long as its words and spaces:
    # they are measured once, and not with every line that grows word by word.
    if " " in text and beside is None and len(text) > 1 and _LATIN.fullmatch(text):
        words = text.split(" ")
        return sum([_advance(word, weight, None) for word in words]) + (len(words) - 1) * _advance(" ", weight, None)
    return sum(glyph.advance for run in _shaped(text, weight, beside) for glyph in run.glyphs)


def line_height(size_pt: float) -> float:
    """Distance in points from one baseline to the next."""
    return LINE_HEIGHT * size_pt


def cap_height(size_pt: float) -> float:
    """Height in points of capitals and figures above the baseline."""
    return CAP_HEIGHT * size_pt


def words_of(text: str) -> list[str]:
    """What lies between spaces at which a line may end: not no-break spaces, at which `split` alone would part it."""
    return re.findall(r"[^ \t\n]+", text)


def wrap(text: str, size_pt: float, weight: Weight, width_pt: float) -> list[str]:
    """Lines no wider than `width_pt`, broken at spaces, and inside a word only where it is too long by itself.

    A line break in the text is kept. Of a width too small for a single letter, one letter stands on each line.
    """
    lines: list[str] = []
    for paragraph in text.splitlines() or [""]:
        line = ""
        for word in words_of(paragraph):
            longer = f"{line} {word}" if line else word
            if measure(longer, size_pt, weight) <= width_pt:
                line = longer
                continue
            if line:
                lines.append(line)
            *whole, line = _broken(word, size_pt, weight, width_pt)
            lines.extend(whole)
        lines.append(line)
    return lines


def _broken(word: str, size_pt: float, weight: Weight, width_pt: float) -> list[str]:
    parts = [""]
    for letter in word:
        mark = bool(unicodedata.combining(letter))  # an accent never leaves its letter
        if mark or not parts[-1] or measure(parts[-1] + letter, size_pt, weight) <= width_pt:
            parts[-1] += letter
        else:
            parts.append(letter)
    return parts


def ellipsis(text: str, size_pt: float, weight: Weight, width_pt: float) -> str:
    """The text itself where it fits, otherwise as much of its beginning as fits with "…" behind it."""
    if measure(text, size_pt, weight) <= width_pt:
        return text
    low, high = 0, len(text)
    while low < high:
        middle = (low + high + 1) // 2
        if measure(_cut(text, middle), size_pt, weight) <= width_pt:
            low = middle
        else:
            high = middle - 1
    return _cut(text, low)


def _cut(text: str, length: int) -> str:
    while length and length < len(text) and unicodedata.combining(text[length]):
        length -= 1
    return text[:length].rstrip() + "…"
