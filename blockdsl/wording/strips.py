"""How pieces come out of strips and which way they are cut, in words for the cutting table."""

from __future__ import annotations

from typing import Final

from blockdsl.facts.blockfacts import CutFacts, RulerUnit
from blockdsl.geometry.fraction import Fraction
from blockdsl.wording.cutting import print_words
from blockdsl.wording.lengths import plain_extent, plain_length, plain_measure
from blockdsl.wording.messages import Messages

_SQUARE: Final = 90


def format_strips(cut: CutFacts, unit: RulerUnit | None, words: Messages) -> str:
    """The strips and how they are cut: `from 2 strips 2 1/2 in wide, cut at 45° every 2 1/2 in`.

    Fractions are plain. Without a unit no length is said, for tables that have a column of lengths for each size.
    """
    if cut.strip is None:
        return ""
    said = _strips(cut, unit, words)
    if cut.strip.form == "template":
        said = words("strips-template", strips=said)
    else:
        said = words("strips-cut", strips=said, cuts=_cuts(cut, unit, words))
    return words("strips-one-layer", strips=said) if is_handed(cut) else said


def is_handed(cut: CutFacts) -> bool:
    """Whether cloth cut in two layers face to face, or turned over, would give mirror images of the piece."""
    if cut.strip is None:
        return cut.piece == "rectangle" and cut.subcut == "once"
    if cut.strip.form == "side by side":
        return cut.piece == "parallelogram"
    return cut.strip.form == "turned" and len(set(cut.strip.angles)) > 1


def _strips(cut: CutFacts, unit: RulerUnit | None, words: Messages) -> str:
    strip = cut.strip
    if strip is None:
        return ""
    if unit is None:
        return words("strips-one-measure" if strip.strips == 1 else "strips-several-measure", strips=strip.strips)
    if strip.strips == 1:
        return words("strips-one", size=plain_extent((strip.width, strip.length), unit, words), unit=unit)
    return words("strips-several", strips=strip.strips, width=plain_length(strip.width, unit, words), unit=unit)


def _cuts(cut: CutFacts, unit: RulerUnit | None, words: Messages) -> str:
    strip = cut.strip
    if strip is None:
        return ""
    every = "" if strip.every is None else _said(strip.every, unit, words)
    if strip.form == "turned":
        return _turned(strip.angles, every, cut.count, words)
    key = "strips-at" if not every else "strips-at-every" if strip.across is None else "strips-at-points"
    across = "" if strip.across is None else _said(strip.across, unit, words)
    return words(key, angle=strip.angles[0], every=every, across=across)


def _turned(angles: tuple[int, ...], every: str, count: int, words: Messages) -> str:
    """One piece alone has its ends cut; of several each lies the other way round from the one before."""
    flat, steep = angles
    both = words("strips-angle" if flat == steep else "strips-angles", angle=flat, first=flat, second=steep)
    if count == 1 and every:
        return words("strips-end-one" if steep == _SQUARE else "strips-ends-both", angle=flat, angles=both)
    key = "strips-square-turn" if steep == _SQUARE else "strips-turn"
    return words(f"{key}-every" if every else key, angle=flat, angles=both, every=every)


def _said(length: Fraction, unit: RulerUnit | None, words: Messages) -> str:
    return words("strips-second-measure") if unit is None else plain_measure(length, unit, words)


def format_direction(cut: CutFacts, words: Messages) -> str:
    """How a piece lies and which way it is cut corner to corner; nothing where neither matters."""
    printed = _print(cut, words)
    where = words("lies-edge") if cut.outside else ""
    if not cut.slant:
        return printed or where
    lies = printed
    if not printed or cut.cut[0] != cut.cut[1]:
        lies = words("lies-short-down", how=printed or words("lies-one-layer"))
    if where:
        lies = words("lies-edge-and", lies=lies)
    opposite = cut.label.endswith("r") and not printed
    key = f"lies-{cut.slant}-opposite" if opposite else f"lies-{cut.slant}"
    return words(key, lies=lies, letter=cut.label[:-1])


def _print(cut: CutFacts, words: Messages) -> str:
    """Which way a print with an up and a down lies on the piece."""
    if cut.upright_side is None:
        return ""
    if cut.print_up is not None:
        return print_words(cut.print_up, words)
    here, other = cut.cut[cut.upright_side], cut.cut[1 - cut.upright_side]
    if here == other or cut.strip is not None:
        return words("lies-upright")
    return words("lies-print-long" if here > other else "lies-print-short")


def format_octagon(cut: CutFacts, unit: RulerUnit | None, words: Messages) -> str:
    """What an octagon is cut from, and how far from its corners these are cut off."""
    key = "then-octagon" if cut.cut[0] == cut.cut[1] else "then-octagon-oblong"
    if unit is None or cut.corner is None:
        return words(key)
    return words(f"{key}-off", off=plain_measure(cut.corner, unit, words))
