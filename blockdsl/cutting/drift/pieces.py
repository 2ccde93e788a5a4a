"""How far the edges of a piece, cut on the ruler, lie outside those of its patch once it is sewn.

A piece is rounded up to the ruler and sewn a seam allowance from its raw edges, so what was rounded up stays in the
finished patch: edges move outward in parallel. Only sums across a piece matter (where it lies on the table is the
maker's choice), so the excess between two parallel edges is shared out evenly.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from blockdsl.cutting.cutlist import Cut
from blockdsl.cutting.sizes import edge_lengths, edge_lengths_with_allowance
from blockdsl.geometry import Exact, Polygon, square_root
from blockdsl.geometry.polygon import cross, dot, edges, signed_area, step

ROOT_HALF = square_root(Fraction(1, 2))
NOTHING = Fraction(0)
Offsets = tuple[Exact, ...]
"""For each side of an outline, from its first corner on, how far the real side lies outside it."""


def side_offsets(patch: Polygon, cut: Cut, seam: Fraction) -> Offsets:
    """The offsets of a patch that is cut as the list says; nothing for what is cut round a template.

    Takes:  a clockwise outline without straight corners, the line of the cut list for it, the seam allowance.
    """
    if cut.piece == "template" or (cut.strip is None and cut.piece != "octagon" and cut.cut == cut.exact):
        return (NOTHING,) * len(patch)
    if cut.strip is not None:
        return _from_strip(patch, cut, seam)
    if cut.piece == "octagon":
        return _octagon(patch, cut, seam)
    if cut.piece == "strip":
        return ((cut.cut[0] - cut.exact[0]) / 2,) * len(patch)
    return _triangle(patch, cut, seam) if len(patch) == 3 else _rectangle(patch, cut, seam)


def _rectangle(patch: Polygon, cut: Cut, seam: Fraction) -> Offsets:
    lengths = edge_lengths(patch)
    # What a side is too long lies outside the two sides square to it.
    over = [_excess(length + 2 * seam, cut) / 2 for length in lengths[:2]]
    return over[1], over[0], over[1], over[0]


def _excess(exact: Exact, cut: Cut) -> Exact:
    """How much the side of the piece that should be so long is cut longer."""
    place = 0 if exact == cut.exact[0] else 1
    return cut.cut[place] - cut.exact[place]


def _triangle(patch: Polygon, cut: Cut, seam: Fraction) -> Offsets:
    """The right corner stays where it is, and the long edge moves outward.

    Of a square cut once the legs grow, and the long edge moves by growth/√2; cut twice the long edge grows, and moves
    by half. A rectangle's diagonal moves by another measure at each end: the lesser counts, for there the seam is
    sewn.
    """
    lengths = edge_lengths(patch)
    long_edge = max(range(3), key=lambda side: lengths[side])
    if cut.piece == "square":
        grown = cut.cut[0] - cut.exact[0]
        # A star's side triangles are listed as the squares that they are cut from.
        moves: Exact = grown * ROOT_HALF if cut.subcut == "once" else grown / 2
    else:
        raw = edge_lengths_with_allowance(patch, seam)
        legs = sorted(raw[side] for side in range(3) if side != long_edge)
        grown_legs = sorted(_excess(leg, cut) * other for leg, other in (legs, legs[::-1]))
        moves = grown_legs[0] / raw[long_edge]
    return tuple(moves if side == long_edge else NOTHING for side in range(3))


def _octagon(patch: Polygon, cut: Cut, seam: Fraction) -> Offsets:
    """Its box is rounded up, and its corners are cut off at a place rounded down."""
    sides = [step(a, b) for a, b in edges(patch)]
    over = [(cut.cut[place] - cut.exact[place]) / 2 for place in (0, 1)]
    raw = edge_lengths_with_allowance(patch, seam)
    # The rim: every other side, from that whose neighbour across the corner is square to it and which the box holds.
    for start in (0, 1):
        corner = raw[1 - start] * ROOT_HALF
        across = raw[start] + 2 * corner
        along = raw[start + 2] + 2 * corner
        if sorted((across, along)) == sorted(cut.exact) and dot(sides[start], sides[(start + 2) % 8]) == 0:
            kept = cut.corner or NOTHING
            slanted = (over[0] + over[1] + corner - kept) * ROOT_HALF
            first = over[0] if along == cut.exact[0] else over[1]
            second = over[1] if along == cut.exact[0] else over[0]
            rim = (first, second, first, second)
            return tuple(rim[(side - start) // 2] if (side - start) % 2 == 0 else slanted for side in range(8))
    return (NOTHING,) * 8


# --- from strips -----------------------------------------------------------------------------------


def _from_strip(patch: Polygon, cut: Cut, seam: Fraction) -> Offsets:
    strip = cut.strip
    assert strip is not None  # noqa: S101  asked by the caller
    if strip.form == "template":
        return (NOTHING,) * len(patch)
    wide = strip.width - strip.exact[0]
    if strip.form == "turned":
        if len(patch) == 3:
            return _grown_from(patch, strip.exact[0], wide, seam)
        every = strip.exact[1] if strip.every is None else strip.every
        return _trapezoid(patch, wide, every - strip.exact[1], (strip.exact[0], seam))
    pairs = len(patch) // 2
    lengths = edge_lengths(patch)
    apart = [_apart(patch, lengths, side, side + pairs) + 2 * seam for side in range(pairs)]
    cuts: list[tuple[Exact, Exact]] = [(strip.exact[0], wide)]
    if strip.every is not None:
        cuts.append((strip.exact[1], strip.every - strip.exact[1]))
    found: list[Exact | None] = [None] * pairs
    for exact, over in cuts:
        place = next((side for side in range(pairs) if found[side] is None and apart[side] == exact), None)
        if place is not None:
            found[place] = over / 2
    if strip.across is not None:
        left = [side for side in range(pairs) if found[side] is None]
        for side in left:
            found[side] = (strip.across - apart[side]) / 2
    halves = tuple(NOTHING if over is None else over for over in found)
    return halves * 2


def _apart(patch: Polygon, lengths: Sequence[Exact], one: int, other: int) -> Exact:
    """How far the line of one side lies from a parallel one."""
    away = step(patch[one], patch[other])
    over = cross(step(patch[one], patch[(one + 1) % len(patch)]), away)
    return (over if over >= 0 else -over) / lengths[one]


def _grown_from(patch: Polygon, exact: Exact, wide: Exact, seam: Fraction) -> Offsets:
    """A triangle whose cuts keep their angles: it grows from the corner across, and its base moves outward."""
    raw = edge_lengths_with_allowance(patch, seam)
    lengths = edge_lengths(patch)
    # Areas of alike triangles go as the squares of their sides.
    double = abs_of(signed_area(patch)) * 2
    heights = [double / lengths[side] * (raw[side] / lengths[side]) for side in range(3)]
    base = next((side for side in range(3) if heights[side] == exact), 0)
    return tuple(wide if side == base else NOTHING for side in range(3))


def _trapezoid(patch: Polygon, wide: Exact, longer: Exact, measured: tuple[Exact, Fraction]) -> Offsets:
    """Its longer edge stays where it is; the shorter one moves out, and each slanted end by half of what is over."""
    exact, seam = measured
    sides = [step(a, b) for a, b in edges(patch)]
    lengths = edge_lengths(patch)
    bases = [side for side in range(4) if cross(sides[side], sides[(side + 2) % 4]) == 0]
    bases = [side for side in bases if _apart(patch, lengths, side, (side + 2) % 4) + 2 * seam == exact] or bases
    if not bases:
        return (NOTHING,) * 4
    base = max(bases, key=lambda side: lengths[side])
    found = [NOTHING, NOTHING, NOTHING, NOTHING]  # type: list[Exact]
    found[(base + 2) % 4] = wide
    for end in ((base + 1) % 4, (base + 3) % 4):
        lean = abs_of(cross(sides[base], sides[end])) / (lengths[base] * lengths[end])
        found[end] = longer / 2 * lean
    return tuple(found)


def abs_of(number: Exact) -> Exact:
    """Its size, whatever its sign."""
    return number if number >= 0 else -number
