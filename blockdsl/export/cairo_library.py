"""CairoSVG, which paints images, and the system library cairo that it works with."""

from __future__ import annotations

from functools import cache
from types import ModuleType
from typing import Final

_LIBRARY: Final = "install it: apt install libcairo2, or dnf install cairo, or brew install cairo"


class CairoMissing(RuntimeError):
    """PNG needs CairoSVG and the system library cairo; the message says how to get what is missing."""


@cache
def load_cairosvg() -> ModuleType:
    """The module cairosvg.

    Errors: CairoMissing when Python has no cairosvg, or the system no libcairo.
    """
    try:
        import cairosvg  # noqa: PLC0415 - it loads the library at once, and everything but PNG works without
    except ImportError as fault:
        message = "the package cairosvg is missing: install it: pip install cairosvg"
        raise CairoMissing(message) from fault
    except OSError as fault:
        message = f"the system library cairo is missing: {_LIBRARY}"
        raise CairoMissing(message) from fault
    else:
        module: ModuleType = cairosvg
        return module


def cairo_version() -> str:
    """The versions for which images are the same bytes, of CairoSVG and of the system's cairo; empty without them."""
    try:
        svg = load_cairosvg()
    except CairoMissing:
        return ""
    return f"{svg.VERSION} {svg.surface.cairo.cairo_version_string()}"
