"""Borders and rounds read: their widths, what they are pieced from, and whether they come out even."""

from __future__ import annotations

from collections.abc import Sequence
from math import gcd, lcm
from typing import Final

from blockdsl.analysis.quilt.pieces import Designs
from blockdsl.analysis.quilt.rings import Pieces, RingPlan, units_along
from blockdsl.analysis.quilt.settings import SettingWords
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.symmetry import from_turns
from blockdsl.model import BlockDesign
from blockdsl.model.lengths import about, write_length
from blockdsl.model.quilt import Corners
from blockdsl.syntax import ast

_MOST_TRIED: Final = 200
"""How many ways of dividing a side are looked through for the nearest width."""


def plan_rings(
    lines: Sequence[ast.QuiltLine],
    middle: tuple[Exact, Exact],
    main: BlockDesign,
    words: SettingWords,
    designs: Designs,
) -> list[RingPlan] | None:
    """All borders and rounds in order, inside out; None when one cannot be, which is reported."""
    rings: list[RingPlan] = []
    inner = middle
    for line in lines:
        if not isinstance(line, ast.Band):
            continue
        ring = _ring(line, main, words, designs)
        before = rings[-1] if rings else None
        if ring is None or not _fits(ring, line, (inner, before), words):
            return None
        rings.append(ring)
        inner = inner[0] + 2 * ring.width, inner[1] + 2 * ring.width
    return rings


def _ring(line: ast.Band, main: BlockDesign, words: SettingWords, designs: Designs) -> RingPlan | None:
    corners, corner = _corners(line, words)
    asked = None if line.width is None else words.length(line.width, f"width of the {line.word}")
    if corners is None or (line.width is not None and asked is None):
        return None
    pieces, fabric = None, ""
    if line.pieced:
        pieces = _pieces(line, main, designs)
        if pieces is None:
            return None
    elif (found := words.fabric(line.what if isinstance(line.what, ast.Word) else None)) is not None:
        fabric = found
    else:
        return None
    return RingPlan(
        word=line.word,
        width=asked if asked is not None else _height(pieces),
        fabric=fabric,
        pieces=pieces,
        corners=corners,
        corner=corner,
        sides_first=not line.top_first,
        lengthwise=line.along_length,
        span=line.span,
    )


def _height(pieces: Pieces | None) -> Fraction:
    """The width of a ring of blocks: their height."""
    assert pieces is not None  # noqa: S101  only rings of blocks come without a width
    return pieces.design.height


def _corners(line: ast.Band, words: SettingWords) -> tuple[Corners | None, str]:
    """How the corners are sewn and the fabric of their squares; None when it cannot be."""
    if line.corner is not None and line.joint is not None:
        what = f"corner squares are sewn in, and so the corners cannot be {line.joint} as well"
        words.problems.report("border-corners", line.span, what=what, help=f"leave `{line.joint}` or `corners` out")
        return None, ""
    if line.pieced and line.joint == "mitred":
        what = "a pieced border cannot be mitred: its units would be cut through"
        advice = f"give it corner squares: `corners {next(iter(words.names.fabrics), 'fog')}`"
        words.problems.report("border-corners", line.span, what=what, help=advice)
        return None, ""
    if line.corner is not None:
        fabric = words.fabric(line.corner)
        return (None, "") if fabric is None else ("squares", fabric)
    return line.joint or "butted", ""


def _pieces(line: ast.Band, main: BlockDesign, designs: Designs) -> Pieces | None:
    symmetry = from_turns("".join(line.turns))
    if isinstance(line.what, ast.Text):
        design = designs.block(line.what, None) if line.width is None else designs.block_so_high(line.what, line.width)
        return None if design is None else Pieces(design, symmetry, "block" if line.width is None else "border unit")
    assert line.width is not None  # noqa: S101  only rings of blocks come without a width
    unit = designs.unit(line.what, line.width, swapped=symmetry.swaps_sides, like=main)
    return None if unit is None else Pieces(unit, symmetry, "border unit")


# --- whether it fits -------------------------------------------------------------------------------


def _fits(
    ring: RingPlan, line: ast.Band, within: tuple[tuple[Exact, Exact], RingPlan | None], words: SettingWords
) -> bool:
    """Whether it fits round what is `within`: a top of that size, and the ring that was sewn to it last."""
    inner, before = within
    unit, measure = words.unit, Fraction(1, 8) if words.unit == "in" else Fraction(1, 10)
    least = min(inner)
    if ring.width > least:
        side = about(least, unit, measure)
        help_text = (
            f"it is sewn round a top that measures {side} {unit} on its shorter side: make it narrower than that"
        )
        width = f"{write_length(ring.width, unit)} {unit}"
        words.problems.report("border-too-wide", line.span, word=ring.word, width=width, help=help_text)
        return False
    if ring.pieces is None:
        return True
    if ring.pieces.design.unit != unit:
        words.problems.report("units-mixed", line.span, help="the blocks of a quilt are all in one unit")
        return False
    counts = units_along(ring, inner)
    if all(isinstance(count, Fraction) and count.denominator == 1 for count in counts):
        return True
    sides = [inner[0], inner[1]]
    length = write_length(ring.pieces.length, unit)
    shown = " and ".join(dict.fromkeys(f"{about(side, unit, measure)} {unit}" for side in sides))
    words.problems.report(
        "border-does-not-divide",
        line.span,
        word=ring.word,
        length=f"{length} {unit}",
        sides=shown,
        help=_what_would_fit(ring, inner, before, words),
    )
    return False


def _what_would_fit(ring: RingPlan, inner: tuple[Exact, Exact], before: RingPlan | None, words: SettingWords) -> str:
    """The nearest widths at which the units come out even, or a plain border that makes them."""
    across, down = inner
    if not isinstance(across, Fraction) or not isinstance(down, Fraction):
        return "what is set on point measures no whole number of units; use a plain border here"
    assert ring.pieces is not None  # noqa: S101  asked of pieced rings alone
    advice: list[str] = []
    widths = _even_widths(ring, (across, down))
    if widths and ring.pieces.role == "border unit":
        said = " or ".join(f"{write_length(width, words.unit)} {words.unit}" for width in widths)
        advice.append(f"the units fit with corner squares (`corners …`) at a width of {said}")
    above, beside = (Fraction(count * ring.pieces.length) for count in units_along(ring, inner))  # type: ignore[arg-type]  # both rational
    spacer = _spacer(ring.pieces.length, (above, beside))
    if spacer is not None:
        advice.append(_make_room(spacer, ring, before, words))
    elif not advice:
        apart = f"{write_length(abs(above - beside), words.unit)} {words.unit}"
        return (
            f"what units fill on the two sides differs by {apart}, which is no whole number of units: change that with "
            "another `set` line, size of block or sash, or use a plain border"
        )
    return "; or ".join(advice)


def _make_room(spacer: Fraction, ring: RingPlan, before: RingPlan | None, words: SettingWords) -> str:
    """How a plain border makes room for whole units: a new one, or the one that is there at another width."""
    assert ring.pieces is not None  # noqa: S101  asked of pieced rings alone
    if before is None or before.pieces is not None:
        width = write_length(spacer, words.unit)
        return f"a plain `{ring.word} {width} {words.unit} …` inside it makes the units fit"
    wider = before.width + spacer
    widths = [width for width in (wider - ring.pieces.length / 2, wider) if width > 0]
    said = " or ".join(f"{write_length(width, words.unit)} {words.unit}" for width in widths)
    return f"make the plain {before.word} inside it {said} wide, so that the units fit"


def _even_widths(ring: RingPlan, inner: tuple[Fraction, Fraction]) -> list[Fraction]:
    """The nearest widths below and above at which units divide both sides: their length goes into the greatest step.

    One of less than half the width, or more than twice, would be another border.
    """
    assert ring.pieces is not None  # noqa: S101  asked of pieced rings alone
    bottom = lcm(inner[0].denominator, inner[1].denominator)
    step = Fraction(gcd(int(inner[0] * bottom), int(inner[1] * bottom)), bottom)
    ratio = ring.width / ring.pieces.length
    widths = [step / count * ratio for count in range(1, _MOST_TRIED)]
    on_ruler = [width for width in widths if width.denominator in (1, 2, 4, 8, 5, 10) and width <= min(inner)]
    below = [width for width in on_ruler if ring.width / 2 <= width < ring.width]
    above = [width for width in on_ruler if ring.width <= width <= 2 * ring.width]
    return [*below[:1], *above[-1:]]


def _spacer(length: Fraction, inner: tuple[Fraction, Fraction]) -> Fraction | None:
    """The narrowest plain border after which both sides are whole numbers of units; None when none is."""
    rests = {(-side) % length for side in inner}
    if len(rests) != 1:
        return None
    rest = rests.pop()
    return (rest or length) / 2
