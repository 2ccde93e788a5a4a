"""A page as a PNG image on white, painted with cairo."""

from __future__ import annotations

from io import BytesIO
from typing import Final

from blockdsl.export.cairo_library import load_cairo
from blockdsl.export.cairo_painter import CairoPainter
from blockdsl.export.printable import Unprintable, check_page
from blockdsl.marks.display_list import Page
from blockdsl.marks.further_letters import with_letters_drawn

_POINTS_PER_INCH: Final = 72
_LARGEST_SIDE: Final = 32_767
"""cairo's images cannot be larger."""


def write_png(page: Page, dpi: float = 150) -> bytes:
    """The page as PNG with `dpi` pixels to the inch.

    Errors: Unprintable where the page cannot be painted or the image would be empty or too large; CairoMissing.
    """
    page = with_letters_drawn(page)
    check_page(page)
    scale = dpi / _POINTS_PER_INCH
    width, height = round(page.width_pt * scale), round(page.height_pt * scale)
    if not (0 < width <= _LARGEST_SIDE and 0 < height <= _LARGEST_SIDE):
        message = f"an image of {width} × {height} pixels: a side must be 1 to {_LARGEST_SIDE}"
        raise Unprintable(message)
    cairo = load_cairo()
    surface = cairo.ImageSurface(cairo.FORMAT_RGB24, width, height)
    painter = CairoPainter(surface)
    painter.context.set_source_rgb(1, 1, 1)
    painter.context.paint()
    painter.context.scale(scale, scale)
    painter.paint(page.marks)
    written = BytesIO()
    surface.write_to_png(written)
    return written.getvalue()
