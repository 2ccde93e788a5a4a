"""How pieces come out of strips and which way they are cut, in words for the cutting table."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.blockfacts import CutFacts, RulerUnit
from blockdsl.geometry.fraction import Fraction
from blockdsl.pictures.lengths import plain_extent, plain_length
from blockdsl.wording import messages
from blockdsl.wording.cutting import print_words

ONE_LAYER: Final = "one layer, right side up"
_SQUARE: Final = 90
_ON_LONGER: Final = " along the longer edge"
_SLANTS: Final = {"rising": "from bottom left to top right", "falling": "from top left to bottom right"}


def say_strips(cut: CutFacts, unit: RulerUnit | None) -> str:
    """The strips and how they are cut: `from 2 strips 2 1/2 in wide, cut at 45° every 2 1/2 in`.

    Fractions are plain. Without a unit no length is said, for tables that have a column of lengths for each size.
    """
    if cut.strip is None:
        return ""
    words = [_strips(cut, unit)]
    if cut.strip.form == "template":
        words.append("by template")
    else:
        words.append(_cuts(cut, unit))
    if is_handed(cut):
        words.append(ONE_LAYER)
    return ", ".join(words)


def is_handed(cut: CutFacts) -> bool:
    """Whether cloth cut in two layers face to face, or turned over, would give mirror images of the piece."""
    if cut.strip is None:
        return cut.piece == "rectangle" and cut.subcut == "once"
    if cut.strip.form == "side by side":
        return cut.piece == "parallelogram"
    return cut.strip.form == "turned" and len(set(cut.strip.angles)) > 1


def _strips(cut: CutFacts, unit: RulerUnit | None) -> str:
    strip = cut.strip
    if strip is None:
        return ""
    if unit is None:
        return f"from {'a strip' if strip.strips == 1 else f'{strip.strips} strips'} as wide as the first measure"
    if strip.strips == 1:
        return f"from a strip {plain_extent((strip.width, strip.length), unit)} {unit}"
    return f"from {strip.strips} strips {plain_length(strip.width, unit)} {unit} wide"


def _cuts(cut: CutFacts, unit: RulerUnit | None) -> str:
    strip = cut.strip
    if strip is None:
        return ""
    every = "" if strip.every is None else f" every {_said(strip.every, unit)}"
    if strip.form == "turned":
        return _turned(strip.angles, every, cut.count)
    words = f"cut at {strip.angles[0]}°{every}"
    if strip.across is None:
        return words
    return f"{words}; then cut off both sharp points, {_said(strip.across, unit)} apart"


def _turned(angles: tuple[int, ...], every: str, count: int) -> str:
    """One piece alone has its ends cut; of several each lies the other way round from the one before."""
    flat, steep = angles
    square = steep == _SQUARE
    if count == 1 and every:
        return f"one end cut at {flat}°" if square else f"both ends cut at {_both(flat, steep)}"
    if square:
        return f"cut square and at {flat}° in turn{every}{_ON_LONGER if every else ''}"
    return f"cut at {_both(flat, steep)}{every}{_ON_LONGER if every else ''}, turning the ruler each time"


def _both(flat: int, steep: int) -> str:
    return f"{flat}°" if flat == steep else f"{flat}° and {steep}°"


def _said(length: Fraction, unit: RulerUnit | None) -> str:
    return "second measure" if unit is None else f"{plain_length(length, unit)} {unit}"


def say_direction(cut: CutFacts) -> str:
    """How a piece lies and which way it is cut corner to corner; nothing where neither matters."""
    words = _print(cut)
    where = "for the edge of the block" if cut.outside else ""
    if not cut.slant:
        return words or where
    lies = words if words and cut.cut[0] == cut.cut[1] else f"short side down, {words or ONE_LAYER}"
    other = f" (the opposite way from {cut.label[:-1]})" if cut.label.endswith("r") and not words else ""
    lies = f"{where}, {lies}" if where else lies
    return f"{lies}: cut once {_SLANTS[cut.slant]}{other}"


def _print(cut: CutFacts) -> str:
    """How a print with an up and a down stands on the piece."""
    if cut.upright is None:
        return ""
    if cut.print_up is not None:
        return print_words(cut.print_up, messages())
    here, other = cut.cut[cut.upright], cut.cut[1 - cut.upright]
    if here == other or cut.strip is not None:
        return "print upright"
    return f"print up along the {'long' if here > other else 'short'} side"


def say_octagon(cut: CutFacts, unit: RulerUnit | None) -> str:
    """What an octagon is cut from, and how far from its corners these are cut off."""
    first = "square" if cut.cut[0] == cut.cut[1] else "rectangle"
    if unit is None or cut.corner is None:
        return f"{first}, then cut off all four corners at 45°"
    off = f"{plain_length(cut.corner, unit)} {unit}"
    return f"{first}, then cut off all four corners at 45°, {off} from each corner along both edges"
