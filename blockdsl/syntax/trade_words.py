"""Words that the trade has for what the language calls by another: a beginner writes the one that she knows."""

from __future__ import annotations

from typing import Final

LINES: Final[dict[str, str]] = {
    "lattice": "`sash 1 1/2 in slate`",
    "sashing": "`sash 1 1/2 in slate`",
    "cornerstone": "`sash 1 1/2 in slate posts lantern`",
    "cornerstones": "`sash 1 1/2 in slate posts lantern`",
    "posts": "`sash 1 1/2 in slate posts lantern`",
    "setting": "`set straight 4 x 6 of …`, or for setting triangles `fill fog`",
    "triangles": "`fill fog`, which side and corner triangles are of",
    "on": "`set on point 4 x 6 of …`",
    "layout": "`set straight 4 x 6 of …`",
    "color": "`fabric fog … #dfe3e0` for cloth, and `colourway` for another colour plan",
    "colour": "`fabric fog … #dfe3e0` for cloth, and `colourway` for another colour plan",
}
"""For a word that begins no line how the line is written that is meant."""
