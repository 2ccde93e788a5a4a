"""A page as a PNG image on white: its drawing, words as outlines, painted by CairoSVG."""

from __future__ import annotations

from typing import Final

from blockdsl.export.cairo_library import load_cairosvg
from blockdsl.export.printable import Unprintable
from blockdsl.export.svg import write_svg
from blockdsl.marks.display_list import Page

_POINTS_PER_INCH: Final = 72
_LARGEST_SIDE: Final = 32_767
"""cairo's images cannot be larger."""


def write_png(page: Page, dpi: float = 150) -> bytes:
    """The page as PNG with `dpi` pixels to the inch.

    Words are outlines, so that the machine's own fonts cannot get in.

    Errors: Unprintable where the page cannot be painted or the image would be empty or too large; CairoMissing.
    """
    drawing = write_svg(page, title="", draw_words=True)
    scale = dpi / _POINTS_PER_INCH
    width, height = round(page.width_pt * scale), round(page.height_pt * scale)
    if not (0 < width <= _LARGEST_SIDE and 0 < height <= _LARGEST_SIDE):
        message = f"an image of {width} × {height} pixels: a side must be 1 to {_LARGEST_SIDE}"
        raise Unprintable(message)
    image: bytes = load_cairosvg().svg2png(
        bytestring=drawing, output_width=width, output_height=height, background_color="#ffffff"
    )
    return image
