"""Letters as outlines: those of the maker's own font, so that no painter needs a second one, or all of them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from functools import lru_cache
from math import ceil, cos, dist, hypot, radians, sin, sqrt
from typing import Any, Final

from msgspec.structs import replace

from blockdsl.marks.display_list import Contour, Figure, Link, Mark, Page, Path, Stamp, TextMark
from blockdsl.marks.typeset import UNITS_PER_EM, GlyphRun, font_beside, font_of, shape

_UNSEEN_PT: Final = 0.05
"""How far a curve of a letter may be from the straight pieces that it is drawn with: a fiftieth of a millimetre."""


def with_letters_drawn(page: Page) -> Page:
    """The page with every letter that is not in our font drawn as it is in the maker's; the same page without one."""
    return page if font_beside() is None else _page(page, every=False)


def with_words_drawn(page: Page) -> Page:
    """The page with every letter drawn, for programs that have no fonts of ours."""
    return _page(page, every=True)


def _page(page: Page, *, every: bool) -> Page:
    return replace(page, marks=tuple(_drawn(mark, every=every) for mark in page.marks))


def _drawn(mark: Mark, *, every: bool) -> Mark:
    match mark:
        case TextMark():
            parts = _parts(mark, every=every)
            return mark if parts is None else Figure(mark.text, parts, mark.elements)
        case Figure():
            return replace(mark, marks=tuple(_inside(mark.marks, every=every)))
        case Stamp():
            inner = (
                _parts(each, every=every) or (each,) if isinstance(each, TextMark) else (each,) for each in mark.marks
            )
            return replace(mark, marks=tuple(part for parts in inner for part in parts))
        case Link():
            return replace(mark, marks=tuple(_drawn(inner, every=every) for inner in mark.marks))
        case _:
            return mark


def _inside(marks: Iterable[Mark], *, every: bool) -> Iterator[Mark]:
    """The marks of a figure, which says in words of its own what is seen."""
    for mark in marks:
        parts = _parts(mark, every=every) if isinstance(mark, TextMark) else None
        yield from (_drawn(mark, every=every),) if parts is None else parts


def _parts(mark: TextMark, *, every: bool) -> tuple[Path | TextMark, ...] | None:
    """The text in parts, those that are drawn as outlines; None where nothing of it is."""
    runs = shape(mark.text, mark.weight)
    if not (every or any(run.further for run in runs)):
        return None
    scale = mark.size_pt / UNITS_PER_EM
    parts: list[Path | TextMark] = []
    for run in runs:
        x, y = _placed(mark, run.start * scale, 0.0)
        if every or run.further:
            font = font_of(mark.weight, further=run.further)
            parts.append(Path(tuple(_rings(mark, run, font, scale)), fill=mark.colour))
        else:
            parts.append(replace(mark, x_pt=x, y_pt=y, text=run.text))
    return tuple(parts)


def _placed(mark: TextMark, x: float, y: float) -> tuple[float, float]:
    """A place along the line of the text, which may be turned; y is upward from the baseline."""
    turn = radians(mark.turn_degrees)
    return mark.x_pt + x * cos(turn) + y * sin(turn), mark.y_pt + x * sin(turn) - y * cos(turn)


def _rings(mark: TextMark, run: GlyphRun, font: Any, scale: float) -> Iterator[Contour]:
    turn = radians(mark.turn_degrees)
    along, across = scale * cos(turn), scale * sin(turn)
    for glyph in run.glyphs:
        left, top = glyph.x, glyph.y
        from_x = mark.x_pt + left * along + top * across
        from_y = mark.y_pt + left * across - top * along
        for ring in _outline(font, glyph.number, _UNSEEN_PT / scale):
            yield tuple([(from_x + x * along + y * across, from_y + x * across - y * along) for x, y in ring])


@lru_cache(maxsize=8192)
def _outline(font: Any, glyph: int, unseen: float) -> tuple[Contour, ...]:
    """The closed lines of a glyph, in 1/1000 em, y upward; nowhere further than `unseen` from its curves."""
    pen = _Pen(unseen)
    font.draw_glyph_with_pen(glyph, pen)
    return tuple(tuple(ring) for ring in pen.rings if len(ring) > 2)


class _Pen:
    """Gathers the lines that HarfBuzz draws, curves as straight pieces."""

    def __init__(self, unseen: float) -> None:
        self.rings: list[list[tuple[float, float]]] = []
        self.unseen = unseen

    def moveTo(self, point: tuple[float, float]) -> None:  # noqa: N802 - HarfBuzz calls it so
        self.rings.append([point])

    def lineTo(self, point: tuple[float, float]) -> None:  # noqa: N802
        self.rings[-1].append(point)

    def qCurveTo(self, control: tuple[float, float], end: tuple[float, float]) -> None:  # noqa: N802
        start = self.rings[-1][-1]
        # A curve of the second degree leaves its chord by half of how far its control lies from the middle.
        bulge = dist(_mean((0.5, 0.5), (start, end)), control) / 2
        for t in self._steps(bulge):
            weights = ((1 - t) ** 2, 2 * t * (1 - t), t**2)
            self.rings[-1].append(_mean(weights, (start, control, end)))

    def curveTo(  # noqa: N802
        self, first: tuple[float, float], second: tuple[float, float], end: tuple[float, float]
    ) -> None:
        start = self.rings[-1][-1]
        # One of the third degree leaves it by no more than so much of how far its controls turn.
        turns = (_mean((1, -2, 1), (start, first, second)), _mean((1, -2, 1), (first, second, end)))
        bulge = 0.75 * max(hypot(*turn) for turn in turns)
        for t in self._steps(bulge):
            weights = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t**2 * (1 - t), t**3)
            self.rings[-1].append(_mean(weights, (start, first, second, end)))

    def _steps(self, bulge: float) -> Iterator[float]:
        """Where the pieces of a curve end; cut in n pieces, each leaves its chord by an n²th of what the whole does."""
        pieces = max(1, ceil(sqrt(bulge / self.unseen)))
        return (step / pieces for step in range(1, pieces + 1))

    def closePath(self) -> None:  # noqa: N802
        """Rings are closed anyway."""

    def endPath(self) -> None:  # noqa: N802
        """Likewise."""


def _mean(weights: tuple[float, ...], points: tuple[tuple[float, float], ...]) -> tuple[float, float]:
    return (
        sum(weight * x for weight, (x, _) in zip(weights, points, strict=True)),
        sum(weight * y for weight, (_, y) in zip(weights, points, strict=True)),
    )
