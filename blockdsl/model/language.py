"""The languages that pages can be in, and which one holds where nobody says."""

from __future__ import annotations

from typing import Final, Literal

from blockdsl.model.fabric import RulerUnit

Language = Literal["en-US", "en-GB", "de", "fr"]

LANGUAGES: Final[tuple[Language, ...]] = ("en-US", "en-GB", "de", "fr")
"""A language is in this list as soon as `blockdsl/wording` has all its messages."""


def usual_language(unit: RulerUnit) -> Language:
    """American English where sizes are in inches, British where they are in centimetres."""
    return "en-US" if unit == "in" else "en-GB"
