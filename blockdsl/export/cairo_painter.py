"""The marks of a page painted on a cairo surface, which is an image."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache
from math import radians
from typing import Any

from blockdsl.export.cairo_library import font_face, load_cairo
from blockdsl.marks.display_list import Anchor, Figure, Kept, Link, Mark, Path, Stamp, TextMark
from blockdsl.marks.typeset import UNITS_PER_EM, shape


class CairoPainter:
    """Paints marks on one cairo context whose unit is the point, y downward."""

    def __init__(self, surface: Any) -> None:
        """Paint on `surface`."""
        cairo = load_cairo()
        self.context = cairo.Context(surface)
        options = cairo.FontOptions()
        options.set_hint_style(cairo.HINT_STYLE_NONE)
        options.set_hint_metrics(cairo.HINT_METRICS_OFF)
        options.set_antialias(cairo.ANTIALIAS_GRAY)
        self.context.set_font_options(options)
        self.context.set_line_join(cairo.LINE_JOIN_ROUND)
        self._butt, self._round = cairo.LINE_CAP_BUTT, cairo.LINE_CAP_ROUND
        self.context.set_fill_rule(cairo.FILL_RULE_EVEN_ODD)

    def paint(self, marks: Iterable[Mark]) -> None:
        """Paint the marks in their order; a later one lies over an earlier one. Links lead nowhere in an image."""
        for mark in marks:
            match mark:
                case Path():
                    self._path(mark)
                case TextMark():
                    self._text(mark)
                case Figure() | Link():
                    self.paint(mark.marks)
                case Stamp():
                    self._stamp(mark)
                case Anchor() | Kept():
                    pass

    def _stamp(self, stamp: Stamp) -> None:
        cairo = load_cairo()
        for place in stamp.places:
            self.context.save()
            self.context.transform(cairo.Matrix(*place))
            self.paint(stamp.marks)
            self.context.restore()

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

    def _text(self, text: TextMark) -> None:
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
        for run in shape(text.text, text.weight):
            context.show_glyphs([(glyph.number, x + glyph.x * scale, y - glyph.y * scale) for glyph in run.glyphs])
        if text.turn_degrees:
            context.restore()


@lru_cache(maxsize=1024)
def _rgb(colour: str) -> tuple[float, float, float]:
    """A colour's parts from 0 to 1."""
    red, green, blue = bytes.fromhex(colour[1:])
    return red / 255, green / 255, blue / 255
