"""How a cloth is cut, to scale: every strip across it in the order of cutting, with what is sub-cut from it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.cutting.cloth import ClothPlan, CutSheet, Panel, PlacedPiece, Strip, StripSection
from blockdsl.facts.blockfacts import RulerUnit
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry import to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.display_list import Figure, Mark, Path, moved
from blockdsl.marks.prose import TextStyle, fitted, line_centred, rectangle, width_of
from blockdsl.marks.theme import ACCENT, INK, RULE, SMALL_PT, TINT
from blockdsl.wording.grammar import in_clauses, many
from blockdsl.wording.lengths import plain_extent, plain_measure, plain_size, show_length
from blockdsl.wording.messages import Messages, words_of

LabelOf = Callable[[str], str]
"""The short name of a piece, such as its letter, by its key in the plan."""

_PICTURE_PT: Final = 300.0
_LEAST_HEIGHT_PT: Final = 9.0
_MOST_HEIGHT_PT: Final = 400.0
"""A length of cloth that is longer is drawn smaller, so that it stands on one page with its words."""
_LABEL: Final = TextStyle(SMALL_PT, "bold", ACCENT)
_SIZE: Final = TextStyle(SMALL_PT, "regular", INK)


class ClothRow(Struct, frozen=True):
    """A strip, a length or a sheet of cloth: its number in the order of cutting, its picture from (0, 0), its words."""

    number: int
    picture: Figure
    width_pt: float
    height_pt: float
    said: str
    told: tuple[str, ...]


class ClothPainter(Struct, frozen=True):
    """What the pictures of one cloth share: points for a unit of length, the unit, the colour, the pieces' names."""

    scale: float
    unit: RulerUnit
    colour: str
    label_of: LabelOf
    words: Messages

    def pt(self, length: Fraction) -> float:
        """A length on the page."""
        return to_float(length) * self.scale


def cloth_pictures(plan: ClothPlan, facts: QuiltFacts, colour: str, label_of: LabelOf) -> list[ClothRow]:
    """A row for each kind of panel and strip, numbered in the order of cutting."""
    cutter = ClothPainter(_PICTURE_PT / to_float(plan.usable_width), facts.unit, colour, label_of, words_of(facts))
    rows = [_panel(panel, number, cutter) for number, panel in enumerate(plan.panels, start=1)]
    first = len(rows) + 1
    return rows + [_strip(strip, number, cutter) for number, strip in enumerate(plan.strips, start=first)]


def sheet_pictures(
    sheets: Sequence[CutSheet], size: tuple[Fraction, Fraction], facts: QuiltFacts, colour: str, label_of: LabelOf
) -> list[ClothRow]:
    """A row for each kind of sheet, such as a fat quarter, cut alike."""
    width, length = size
    cutter = ClothPainter(
        _PICTURE_PT * 0.8 / to_float(max(width, length)), facts.unit, colour, label_of, words_of(facts)
    )
    rows = []
    for number, sheet in enumerate(sheets, start=1):
        across, down = (length, width) if sheet.along else (width, length)
        marks: list[Mark] = [_ground(across, down, cutter)]
        y = Fraction(0)
        for strip in sheet.strips:
            for _ in range(strip.times):
                marks += moved(_pieces_of(strip.sections, cutter), 0.0, cutter.pt(y))
                y += strip.height
        words = cutter.words
        pieces, extent = many(sheet.times, "pieces", words), plain_size((across, down), cutter.unit, words)
        said = words("cloth-sheets", pieces=pieces, size=extent)
        told = [_format_strip(strip, cutter) for strip in sheet.strips]
        rows.append(_row(number, tuple(marks), (cutter.pt(across), cutter.pt(down)), said, told, words))
    return rows


def _strip(strip: Strip, number: int, cutter: ClothPainter) -> ClothRow:
    marks = (_ground(strip.width, strip.height, cutter), *_pieces_of(strip.sections, cutter))
    words = cutter.words
    height, strips = plain_measure(strip.height, cutter.unit, words), many(strip.times, "strips", words)
    said = words("cloth-strips", strips=strips, height=height)
    told = _format_pieces(strip.sections, cutter, strip.times)
    return _row(number, marks, (cutter.pt(strip.width), cutter.pt(strip.height)), said, told, words)


def _panel(panel: Panel, number: int, cutter: ClothPainter) -> ClothRow:
    """A length of cloth: what is cut along it at the left, strips beside that."""
    cutter = replace(cutter, scale=min(cutter.scale, _MOST_HEIGHT_PT / to_float(panel.height)))
    strips_width = panel.strips[0].width if panel.strips else Fraction(0)
    marks: list[Mark] = [_ground(panel.width + strips_width, panel.height, cutter), *_pieces_of(panel.columns, cutter)]
    y = Fraction(0)
    told = _format_pieces(panel.columns, cutter, panel.times)
    for strip in panel.strips:
        for _ in range(strip.times):
            marks += moved(_pieces_of(strip.sections, cutter), cutter.pt(panel.width), cutter.pt(y))
            y += strip.height
        told.append(cutter.words("cloth-beside", strips=_format_strip(strip, cutter)))
    words = cutter.words
    height, lengths = plain_measure(panel.height, cutter.unit, words), many(panel.times, "lengths", words)
    said = words("cloth-lengths", lengths=lengths, height=height)
    size = (cutter.pt(panel.width + strips_width), cutter.pt(panel.height))
    return _row(number, tuple(marks), size, said, told, words)


def _row(
    number: int, marks: tuple[Mark, ...], size_pt: tuple[float, float], said: str, told: Sequence[str], words: Messages
) -> ClothRow:
    picture = Figure(words("cloth-picture", what=said, pieces=in_clauses(told, words)), marks)
    return ClothRow(number, picture, *size_pt, said, tuple(told))


def _ground(width: Fraction, height: Fraction, cutter: ClothPainter) -> Path:
    """The cloth before it is sub-cut: what no piece covers is left over."""
    return rectangle(0.0, 0.0, cutter.pt(width), cutter.pt(height), fill=TINT, stroke=RULE, stroke_width_pt=0.5)


def _pieces_of(sections: Sequence[StripSection], cutter: ClothPainter) -> list[Mark]:
    marks: list[Mark] = []
    for section in sections:
        for piece in section.pieces:
            marks += _piece(piece, cutter)
    return marks


def _piece(piece: PlacedPiece, cutter: ClothPainter) -> Iterator[Mark]:
    """A piece in the colour of its cloth, with its name on a white ground, and its size where there is room."""
    x, y, width, height = map(cutter.pt, (piece.x, piece.y, piece.width, piece.height))
    yield rectangle(x, y, width, height, fill=cutter.colour, stroke=INK, stroke_width_pt=0.4)
    label = cutter.label_of(piece.key)
    if not label or height < _LEAST_HEIGHT_PT or width < width_of(label, _LABEL) + 3:
        return
    size = _size_in(piece, cutter)
    wide = width_of(f"{label}  {size}", _SIZE) + 8
    words = f"{label} {size}" if width >= wide and height >= _LEAST_HEIGHT_PT + 2 else label
    style = _LABEL if words == label else _SIZE
    middle_x, middle_y = x + width / 2, y + height / 2
    half = width_of(words, style) / 2 + 1.5
    yield rectangle(middle_x - half, middle_y - 4.2, 2 * half, 8.4, fill="#ffffff")
    yield from line_centred(fitted(words, width, style), middle_x, middle_y, style)


def _size_in(piece: PlacedPiece, cutter: ClothPainter) -> str:
    sides = (piece.width,) if piece.width == piece.height else (piece.width, piece.height)
    return " × ".join(show_length(side, cutter.unit, cutter.words) for side in sides)


def _format_strip(strip: Strip, cutter: ClothPainter) -> str:
    words = cutter.words
    said = in_clauses(_format_pieces(strip.sections, cutter, strip.times), words)
    height, strips = plain_measure(strip.height, cutter.unit, words), many(strip.times, "strips", words)
    return words("cloth-strips-of", strips=strips, height=height, pieces=said)


def _format_pieces(sections: Sequence[StripSection], cutter: ClothPainter, times: int) -> list[str]:
    """What they give in all: `26 A, 2 7/8 × 2 7/8 in`."""
    counts: dict[tuple[str, Fraction, Fraction], int] = {}
    for section in sections:
        for piece in section.pieces:
            short, long = sorted((piece.width, piece.height))
            key = (cutter.label_of(piece.key), short, long)
            counts[key] = counts.get(key, 0) + times
    told = []
    for (label, short, long), count in counts.items():
        words = cutter.words
        size = plain_extent((short,) if short == long else (short, long), cutter.unit, words)
        size = words("length", length=size, unit=cutter.unit)
        told.append(words("cloth-piece" if label else "cloth-piece-plain", count=count, letter=label, size=size))
    return told
