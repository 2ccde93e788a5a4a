"""Make `regular.woff2` and `bold.woff2`, the font files that every web site gets.

They are the core subsets of the drawings with two habits more: fractions set as such from plain figures, and figures
of one width for tables. Run it when the fonts change, with the development packages installed:

    .venv/bin/python -m blockdsl.export.html.make_fonts

and commit the two files it writes next to itself.
"""

from __future__ import annotations

from pathlib import Path
from typing import Final

from blockdsl.fonts import FontWeight
from blockdsl.fonts.make_core import core_subset

FEATURES: Final = ("frac", "numr", "dnom", "tnum", "lnum")


def main() -> None:
    """Write both files."""
    weights: tuple[FontWeight, ...] = ("regular", "bold")
    for weight in weights:
        Path(__file__).with_name(f"{weight}.woff2").write_bytes(core_subset(weight, FEATURES))


if __name__ == "__main__":
    main()
