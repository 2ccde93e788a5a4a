"""The one style sheet of a site: the colours of the printed sheet, and the rules of `site.css`."""

from __future__ import annotations

from functools import cache
from importlib.resources import files
from typing import Final

from blockdsl.fonts import FAMILY
from blockdsl.marks import theme

_COLOURS: Final = {
    "ink": theme.INK,
    "quiet": theme.QUIET,
    "rule": theme.RULE,
    "tint": theme.TINT,
    "accent": theme.ACCENT,
    "paper": theme.WHITE,
}


@cache
def style_sheet() -> str:
    """The rules, the theme's colours first; the font files are named elsewhere."""
    colours = "".join(f"--{name}:{colour};" for name, colour in _COLOURS.items())
    rules = files(__package__).joinpath("site.css").read_text(encoding="utf-8")
    return f":root{{{colours}--font:{FAMILY},sans-serif}}\n{rules}"
