"""Words in a PDF: the glyphs to show, what they are read as, and the subset of the font that the file carries.

A glyph keeps the number that it has in the whole font, and is read as the letter that the font has it for. So the
same words are the same bytes on every page of every file, whatever else stands there. Where that reading is not what
was written (joined Arabic letters, say), the words that are meant stand beside them in the page (ActualText).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from functools import cache, lru_cache
from hashlib import sha256
from itertools import chain, groupby, pairwise
from string import ascii_lowercase
from typing import Any, Final

import uharfbuzz
from msgspec import Struct

from blockdsl.fonts import font_bytes
from blockdsl.marks.display_list import Weight
from blockdsl.marks.typeset import ASCENT, CAP_HEIGHT, DESCENT, UNITS_PER_EM, Glyph, GlyphRun, fraction_figures, shape

WEIGHTS: Final[tuple[Weight, ...]] = ("regular", "bold")
RESOURCE: Final[dict[Weight, bytes]] = {"regular": b"/R", "bold": b"/B"}
NAMES: Final[dict[Weight, str]] = {"regular": "FiraGO-Regular", "bold": "FiraGO-SemiBold"}
STEMS: Final[dict[Weight, int]] = {"regular": 84, "bold": 124}
"""Thickness of upright strokes in 1/1000 em: what a viewer without the font would look for."""

_MOST_IN_A_MAP: Final = 100
_CHANGED_BEFORE: Final = ("f", "ff", "t", "T")
"""Before some letters the font draws these another way, or as one with them: without an entry of their own, programs
that pass over ActualText would read "gift" as anything."""

_KEPT_TABLES: Final = frozenset({"glyf", "head", "hhea", "hmtx", "loca", "maxp"})


class Shown(Struct, frozen=True):
    """The operators that show a line of text where the text matrix stands, and the glyphs that they use."""

    operators: bytes
    glyphs: frozenset[int]


@lru_cache(maxsize=16384)
def shown(text: str, weight: Weight, size_pt: float) -> Shown:
    """A line of text from its left end; kerning and the places of accents as the font wants them.

    Units:  the size only scales how far accents are raised; all else is in 1/1000 em.
    """
    parts: list[bytes] = []
    pen = 0
    used: set[int] = set()
    for run in shape(text, weight):
        for words, glyphs in _clusters(run):
            codes = [glyph.number for glyph in glyphs]
            used.update(codes)
            plain = "".join(_letters(weight).get(code, "") for code in codes) == words
            operators, pen = _placed(glyphs, weight, size_pt, pen)
            parts.append(operators if plain else b"/Span<</ActualText %s>>BDC\n%sEMC\n" % (utf16(words), operators))
    return Shown(_joined(parts), frozenset(used))


def _clusters(run: GlyphRun) -> Iterator[tuple[str, list[Glyph]]]:
    """Letters and glyphs that belong together, from left to right.

    Hebrew and Arabic are given as they are seen: readers of PDF turn them round when they take out the text.
    """
    starts = sorted({glyph.cluster for glyph in run.glyphs})
    ends = dict(pairwise([*starts, len(run.text)]))
    for start, glyphs in groupby(run.glyphs, key=lambda glyph: glyph.cluster):
        yield run.text[start : ends[start]], list(glyphs)


def _placed(glyphs: Iterable[Glyph], weight: Weight, size_pt: float, pen: int) -> tuple[bytes, int]:
    """Show the glyphs; `pen` is where the one before ended, in 1/1000 em, and where the last one ends is given back."""
    written: list[bytes] = []
    for glyph in glyphs:
        move = b"%d" % (pen - glyph.x) if glyph.x != pen else b""
        raised = b"%.3f Ts\n" % (glyph.y * size_pt / UNITS_PER_EM) if glyph.y else b""
        written.append(b"%s[%s<%04x>]TJ\n%s" % (raised, move, glyph.number, b"0 Ts\n" if raised else b""))
        pen = glyph.x + _font(weight).get_glyph_h_advance(glyph.number)
    return b"".join(written), pen


def _joined(parts: Iterable[bytes]) -> bytes:
    """Shows that follow one another become one: `[<41>]TJ [<42>]TJ` is `[<4142>]TJ`."""
    return b"".join(parts).replace(b">]TJ\n[<", b"").replace(b"]TJ\n[", b"")


def utf16(text: str) -> bytes:
    """A text as PDF writes one that any letter may stand in."""
    return b"<feff%s>" % text.encode("utf-16-be").hex().encode()


@cache
def _font(weight: Weight) -> Any:
    return uharfbuzz.Font(uharfbuzz.Face(font_bytes(weight)))


@cache
def _letters(weight: Weight) -> dict[int, str]:
    """For each glyph the letters that it is read as, the first ones where the font has it for several."""
    font = _font(weight)
    found: dict[int, str] = {}
    for code in sorted(font.face.unicodes):
        found.setdefault(font.get_nominal_glyph(code), chr(code))
    for plain, figure in fraction_figures(weight).items():
        found[figure] = found[plain]
    for pair in (first + second for first in _CHANGED_BEFORE for second in ascii_lowercase):
        for words, glyphs in chain.from_iterable(map(_clusters, shape(pair, weight))):
            if len(glyphs) == 1:
                found.setdefault(glyphs[0].number, words)
    return found


# --- what the file carries ---------------------------------------------------------------------------


def subset(weight: Weight, glyphs: frozenset[int]) -> bytes:
    """A TrueType file of these glyphs alone, under the numbers that they had."""
    wanted = uharfbuzz.SubsetInput()
    wanted.glyph_set.update(glyphs)
    flags = uharfbuzz.SubsetFlags
    wanted.flags = flags.NO_HINTING | flags.RETAIN_GIDS | flags.NOTDEF_OUTLINE | flags.NO_LAYOUT_CLOSURE
    face = _font(weight).face
    dropped = (tag for tag in face.table_tags if tag not in _KEPT_TABLES)
    wanted.drop_table_tag_set.update(int.from_bytes(tag.encode("ascii"), "big") for tag in dropped)
    data: bytes = uharfbuzz.subset(face, wanted).blob.data
    return data


def base_name(weight: Weight, glyphs: frozenset[int]) -> bytes:
    """The font's name behind six letters that stand for the subset."""
    digest = sha256(repr(sorted(glyphs)).encode()).digest()
    letters = "".join(chr(65 + part % 26) for part in digest[:6])
    return f"/{letters}+{NAMES[weight]}".encode()


def widths(weight: Weight, glyphs: frozenset[int]) -> bytes:
    """How wide each glyph is, in 1/1000 em, as PDF lists it."""
    font = _font(weight)
    return b"[%s]" % b"".join(b"%d[%d]" % (code, font.get_glyph_h_advance(code)) for code in sorted(glyphs))


def descriptor(weight: Weight) -> bytes:
    """The entries of a font descriptor that are about the whole font."""
    head = _font(weight).face.reference_table("head").data
    box = b" ".join(b"%d" % int.from_bytes(head[at : at + 2], "big", signed=True) for at in range(36, 44, 2))
    return b"/Flags 4/FontBBox[%s]/ItalicAngle 0/Ascent %d/Descent %d/CapHeight %d/StemV %d" % (
        box,
        round(ASCENT * UNITS_PER_EM),
        -round(DESCENT * UNITS_PER_EM),
        round(CAP_HEIGHT * UNITS_PER_EM),
        STEMS[weight],
    )


def reading_map(weight: Weight, glyphs: frozenset[int]) -> bytes:
    """The CMap that says which letter each glyph is read as (ISO 32000-1, 9.10.3)."""
    letters = _letters(weight)
    lines = [
        b"<%04x>%s" % (code, b"<%s>" % letters[code].encode("utf-16-be").hex().encode())
        for code in sorted(glyphs)
        if code in letters
    ]
    groups = [lines[at : at + _MOST_IN_A_MAP] for at in range(0, len(lines), _MOST_IN_A_MAP)]
    body = b"".join(b"%d beginbfchar\n%s\nendbfchar\n" % (len(group), b"\n".join(group)) for group in groups)
    return (
        b"/CIDInit/ProcSet findresource begin\n12 dict begin\nbegincmap\n"
        b"/CIDSystemInfo<</Registry(Adobe)/Ordering(UCS)/Supplement 0>>def\n"
        b"/CMapName/Adobe-Identity-UCS def\n/CMapType 2 def\n"
        b"1 begincodespacerange\n<0000><ffff>\nendcodespacerange\n" + body + b"endcmap\n"
        b"CMapName currentdict/CMap defineresource pop\nend\nend\n"
    )
