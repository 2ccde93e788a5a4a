"""Letters of the maker's own font as outlines: they are drawn, so that no painter needs a second font."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from functools import lru_cache
from math import cos, radians, sin
from typing import Final

from blockdsl.fonts.further import FurtherFont, shaper_of
from blockdsl.marks.display_list import Contour, Figure, Link, Mark, Page, Path, Stamp, TextMark
from blockdsl.marks.typeset import UNITS_PER_EM, GlyphRun, font_beside, shape

_STEPS: Final = 6
"""Straight pieces for each curve of a letter: at the size of running text nobody sees them."""


def with_letters_drawn(page: Page) -> Page:
    """The page with every letter that is not in our font drawn as it is in the maker's; the same page without one."""
    font = font_beside()
    return page if font is None else replace(page, marks=tuple(_drawn(mark, font) for mark in page.marks))


def _drawn(mark: Mark, font: FurtherFont) -> Mark:
    match mark:
        case TextMark():
            parts = _parts(mark, font)
            return mark if parts is None else Figure(mark.text, parts)
        case Figure():
            return Figure(mark.alternative, tuple(_inside(mark.marks, font)))
        case Stamp():
            inner = (_parts(each, font) or (each,) if isinstance(each, TextMark) else (each,) for each in mark.marks)
            return replace(mark, marks=tuple(part for parts in inner for part in parts))
        case Link():
            return replace(mark, marks=tuple(_drawn(inner, font) for inner in mark.marks))
        case _:
            return mark


def _inside(marks: Iterable[Mark], font: FurtherFont) -> Iterator[Mark]:
    """The marks of a figure, which says in words of its own what is seen."""
    for mark in marks:
        parts = _parts(mark, font) if isinstance(mark, TextMark) else None
        yield from (_drawn(mark, font),) if parts is None else parts


def _parts(mark: TextMark, font: FurtherFont) -> tuple[Path | TextMark, ...] | None:
    """The text in parts, those of the maker's font as outlines; None where our own font has all its letters."""
    runs = shape(mark.text, mark.weight)
    if not any(run.further for run in runs):
        return None
    scale = mark.size_pt / UNITS_PER_EM
    parts: list[Path | TextMark] = []
    for run in runs:
        x, y = _placed(mark, run.start * scale, 0.0)
        if run.further:
            parts.append(Path(tuple(_rings(mark, run, font, scale)), fill=mark.colour))
        else:
            parts.append(replace(mark, x_pt=x, y_pt=y, text=run.text))
    return tuple(parts)


def _placed(mark: TextMark, x: float, y: float) -> tuple[float, float]:
    """A place along the line of the text, which may be turned; y is upward from the baseline."""
    turn = radians(mark.turn_degrees)
    return mark.x_pt + x * cos(turn) + y * sin(turn), mark.y_pt + x * sin(turn) - y * cos(turn)


def _rings(mark: TextMark, run: GlyphRun, font: FurtherFont, scale: float) -> Iterator[Contour]:
    for glyph in run.glyphs:
        for ring in _outline(font, glyph.number):
            yield tuple(_placed(mark, (glyph.x + x) * scale, (glyph.y + y) * scale) for x, y in ring)


@lru_cache(maxsize=2048)
def _outline(font: FurtherFont, glyph: int) -> tuple[Contour, ...]:
    """The closed lines of a glyph, in 1/1000 em, y upward."""
    pen = _Pen()
    shaper_of(font).draw_glyph_with_pen(glyph, pen)
    return tuple(tuple(ring) for ring in pen.rings if len(ring) > 2)


class _Pen:
    """Gathers the lines that HarfBuzz draws, curves as short straight pieces."""

    def __init__(self) -> None:
        self.rings: list[list[tuple[float, float]]] = []

    def moveTo(self, point: tuple[float, float]) -> None:  # noqa: N802 - HarfBuzz calls it so
        self.rings.append([point])

    def lineTo(self, point: tuple[float, float]) -> None:  # noqa: N802
        self.rings[-1].append(point)

    def qCurveTo(self, control: tuple[float, float], end: tuple[float, float]) -> None:  # noqa: N802
        start = self.rings[-1][-1]
        for step in range(1, _STEPS + 1):
            t = step / _STEPS
            weights = ((1 - t) ** 2, 2 * t * (1 - t), t**2)
            self.rings[-1].append(_mean(weights, (start, control, end)))

    def curveTo(  # noqa: N802
        self, first: tuple[float, float], second: tuple[float, float], end: tuple[float, float]
    ) -> None:
        start = self.rings[-1][-1]
        for step in range(1, _STEPS + 1):
            t = step / _STEPS
            weights = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t**2 * (1 - t), t**3)
            self.rings[-1].append(_mean(weights, (start, first, second, end)))

    def closePath(self) -> None:  # noqa: N802
        """Rings are closed anyway."""

    def endPath(self) -> None:  # noqa: N802
        """Likewise."""


def _mean(weights: tuple[float, ...], points: tuple[tuple[float, float], ...]) -> tuple[float, float]:
    return (
        sum(weight * x for weight, (x, _) in zip(weights, points, strict=True)),
        sum(weight * y for weight, (_, y) in zip(weights, points, strict=True)),
    )
