"""Make the small subsets `core-regular.woff2` and `core-bold.woff2` that drawings embed.

Run it when the font files or CORE_RANGES change, with the development packages installed (fontTools, brotli):

    .venv/bin/python -m blockdsl.fonts.make_core

and commit the two files it writes next to itself. The licence reserves the name "Fira" for the unchanged fonts,
so the subsets go by the name "Blockdsl Core" inside.
"""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO
from pathlib import Path
from typing import Final

from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont

from blockdsl.fonts import CORE_RANGES, FontWeight, font_bytes

CORE_NAME: Final = "Blockdsl Core"
FEATURES: Final = ["kern", "calt", "ccmp", "locl", "mark", "mkmk", "rlig"]


def core_subset(weight: FontWeight, more: Sequence[str] = ()) -> bytes:
    """One weight cut down to CORE_RANGES, renamed, as WOFF2; the same bytes each time for the same tool versions.

    `more` are OpenType features to keep beside FEATURES.
    """
    font = TTFont(BytesIO(font_bytes(weight)), recalcTimestamp=False)
    set_fraction_figures(font)
    options = Options()
    options.layout_features = [*FEATURES, *more]
    options.layout_scripts = ["latn", "DFLT"]
    options.notdef_outline = True
    options.hinting = False
    options.name_IDs = [0, 1, 2, 3, 4, 6, 13, 14]
    subsetter = Subsetter(options)
    subsetter.populate(unicodes=[code for first, last in CORE_RANGES for code in range(first, last + 1)])
    subsetter.subset(font)
    _rename(font, f"{CORE_NAME} {weight.title()}")
    font.flavor = "woff2"
    written = BytesIO()
    font.save(written)
    return written.getvalue()


def set_fraction_figures(font: TTFont) -> None:
    """Let superscript and subscript figures be the font's figures for fractions, as typesetting does."""
    figures = ("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
    for table in font["cmap"].tables:
        if table.isUnicode():
            for figure, above, below in zip(figures, "⁰¹²³⁴⁵⁶⁷⁸⁹", "₀₁₂₃₄₅₆₇₈₉", strict=True):
                table.cmap[ord(above)] = f"{figure}.numr"
                table.cmap[ord(below)] = f"{figure}.dnom"


def _rename(font: TTFont, name: str) -> None:
    """Put `name` in every place where the font says its own; the copyright and licence lines stay."""
    for record in font["name"].names:
        if record.nameID in {1, 3, 4}:
            record.string = name
        elif record.nameID == 6:
            record.string = name.replace(" ", "")


def main() -> None:
    """Write both subsets."""
    weights: tuple[FontWeight, ...] = ("regular", "bold")
    for weight in weights:
        Path(__file__).with_name(f"core-{weight}.woff2").write_bytes(core_subset(weight))


if __name__ == "__main__":
    main()
