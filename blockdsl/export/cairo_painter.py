"""The marks of a page painted on a cairo surface, which is a PDF page or an image."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache
from itertools import groupby
from math import radians
from typing import Any

from blockdsl.drawing.marks import Anchor, Figure, Link, Mark, Path, Text, Weight
from blockdsl.drawing.typeset import UNITS_PER_EM, Run, shape
from blockdsl.export.cairo_library import font_face, load_cairo


class CairoPainter:
    """Paints marks on one cairo context whose unit is the point, y downward."""

    def __init__(self, surface: Any, *, tagged: bool) -> None:
        """Paint on `surface`; when `tagged`, say of every text and figure what it is (PDF only)."""
        cairo = load_cairo()
        self.context = cairo.Context(surface)
        self._tagged = tagged
        options = cairo.FontOptions()
        options.set_hint_style(cairo.HINT_STYLE_NONE)
        options.set_hint_metrics(cairo.HINT_METRICS_OFF)
        options.set_antialias(cairo.ANTIALIAS_GRAY)
        self.context.set_font_options(options)
        self.context.set_line_join(cairo.LINE_JOIN_ROUND)
        self._butt, self._round = cairo.LINE_CAP_BUTT, cairo.LINE_CAP_ROUND
        self._even_odd = cairo.FILL_RULE_EVEN_ODD
        self.context.set_fill_rule(self._even_odd)

    def paint(self, marks: Iterable[Mark], *, within_figure: bool = False) -> None:
        """Paint the marks in their order; a later one lies over an earlier one."""
        for mark in marks:
            match mark:
                case Path():
                    self._path(mark)
                case Text():
                    self._tagged_text(mark, within_figure=within_figure)
                case Figure():
                    self._figure(mark, within_figure=within_figure)
                case Link():
                    self._link(mark, within_figure=within_figure)
                case Anchor():
                    self._anchor(mark, within_figure=within_figure)

    def _figure(self, figure: Figure, *, within_figure: bool) -> None:
        if self._tagged and not within_figure:
            self.context.tag_begin("Figure")
        self.paint(figure.marks, within_figure=True)
        if self._tagged and not within_figure:
            self.context.tag_end("Figure")

    def _link(self, link: Link, *, within_figure: bool) -> None:
        """A tag of its own for the marks and the box that can be clicked. Its texts are read as the link."""
        if not self._tagged or within_figure:
            self.paint(link.marks, within_figure=within_figure)
            return
        box = " ".join(f"{side:.2f}" for side in (link.x_pt, link.y_pt, link.width_pt, link.height_pt))
        self.context.tag_begin("Link", f"dest='{link.target}' rect=[{box}]")
        self.paint(link.marks, within_figure=True)
        self.context.tag_end("Link")

    def _anchor(self, anchor: Anchor, *, within_figure: bool) -> None:
        if self._tagged and not within_figure:
            self.context.tag_begin("cairo.dest", f"name='{anchor.name}' x={anchor.x_pt:.2f} y={anchor.y_pt:.2f}")
            self.context.tag_end("cairo.dest")

    def _path(self, path: Path) -> None:
        context = self.context
        for ring in path.rings:
            for place, (x, y) in enumerate(ring):
                if place:
                    context.line_to(x, y)
                else:
                    context.move_to(x, y)
            if path.closed and ring:
                context.close_path()
        if path.fill:
            context.set_source_rgb(*_rgb(path.fill))
            context.fill_preserve()
        if path.stroke:
            context.set_source_rgb(*_rgb(path.stroke))
            context.set_line_width(path.stroke_width_pt)
            context.set_dash(path.dash)
            context.set_line_cap(self._round if path.round_ends else self._butt)
            context.stroke_preserve()
        context.new_path()

    def _tagged_text(self, text: Text, *, within_figure: bool) -> None:
        if not text.text:
            return
        if self._tagged and not within_figure:
            self.context.tag_begin("P")
        self._text(text)
        if self._tagged and not within_figure:
            self.context.tag_end("P")

    def _text(self, text: Text) -> None:
        context = self.context
        context.set_font_face(font_face(text.weight))
        context.set_font_size(text.size_pt)
        context.set_source_rgb(*_rgb(text.colour))
        x, y = text.x_pt, text.y_pt
        if text.turn_degrees:
            context.save()
            context.translate(x, y)
            context.rotate(radians(text.turn_degrees))
            x = y = 0.0
        scale = text.size_pt / UNITS_PER_EM
        for letters, clusters, run in _runs(text.text, text.weight):
            glyphs = [(glyph.number, x + glyph.x * scale, y - glyph.y * scale) for glyph in run.glyphs]
            context.show_text_glyphs(letters, glyphs, clusters)
        if text.turn_degrees:
            context.restore()


@lru_cache(maxsize=16384)
def _runs(text: str, weight: Weight) -> tuple[tuple[bytes, tuple[tuple[int, int], ...], Run], ...]:
    return tuple((*_clusters(run), run) for run in shape(text, weight))


def _clusters(run: Run) -> tuple[bytes, tuple[tuple[int, int], ...]]:
    """The run's letters as UTF-8 from left to right, and how many bytes and glyphs belong together.

    Hebrew and Arabic are given as they are seen too: readers of PDF turn them round when they take out the text, and
    those that find the order of reading (cairo's backward clusters) turn it the wrong way.
    """
    groups = [(start, len(list(group))) for start, group in groupby(run.glyphs, key=lambda glyph: glyph.cluster)]
    starts = sorted(start for start, _ in groups)
    ends = dict(zip(starts, [*starts[1:], len(run.text)], strict=True))
    parts = [(run.text[start : ends[start]].encode("utf-8"), count) for start, count in groups]
    return b"".join(part for part, _ in parts), tuple((len(part), count) for part, count in parts)


@lru_cache(maxsize=1024)
def _rgb(colour: str) -> tuple[float, float, float]:
    """A colour's parts from 0 to 1."""
    red, green, blue = bytes.fromhex(colour[1:])
    return red / 255, green / 255, blue / 255
