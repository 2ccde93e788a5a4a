"""Make the small subsets that drawings embed, and the font files that every web site gets.

Those of drawings are `core-regular.woff2` and `core-bold.woff2` in `blockdsl/fonts`; those of sites, `regular.woff2`
and `bold.woff2` in `blockdsl/export/html`, have two habits more: fractions set as such from plain figures, and figures
of one width for tables. Run it when the font files or CORE_RANGES change:

    .venv/bin/python -m tests.fonts.make_core

and commit the four files. The licence reserves the name "Fira" for the unchanged fonts,
so the subsets go by the name "Blockdsl Core" inside.
"""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO
from pathlib import Path
from typing import Final

from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont

import blockdsl
from blockdsl.fonts import CORE_RANGES, FontWeight, font_bytes

CORE_NAME: Final = "Blockdsl Core"
BLOCKDSL: Final = Path(blockdsl.__file__).parent
SITE_FEATURES: Final = ("frac", "numr", "dnom", "tnum", "lnum")
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
    """Write the subsets of drawings and of sites."""
    weights: tuple[FontWeight, ...] = ("regular", "bold")
    for weight in weights:
        (BLOCKDSL / "fonts" / f"core-{weight}.woff2").write_bytes(core_subset(weight))
        (BLOCKDSL / "export" / "html" / f"{weight}.woff2").write_bytes(core_subset(weight, SITE_FEATURES))


if __name__ == "__main__":
    main()
