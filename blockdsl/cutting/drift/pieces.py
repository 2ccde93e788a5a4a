"""How far the edges of a piece, cut on the ruler, lie outside those of its patch once it is sewn.

A piece is rounded up to the ruler and sewn a seam allowance from its raw edges, so what was rounded up stays in the
finished patch: edges move outward in parallel. Only sums across a piece matter (where it lies on the table is the
maker's choice), so the excess between two parallel edges is shared out evenly. The diagonal of a rectangle whose sides
were rounded up to another proportion turns a little as it moves: it has an offset at each end.

All of it works in exact numbers, and in floats for a first look.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.cutting.cutlist import Cut
from blockdsl.cutting.sizes import edge_lengths, edge_lengths_with_allowance
from blockdsl.cutting.strips import StripCut
from blockdsl.geometry import Exact, Polygon, square_root, to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import Point, cross, dot, edges, step

ROOT_HALF = square_root(Fraction(1, 2))
NOTHING = Fraction(0)
SAME: Final = 1e-9
"""Two floats that differ by less are one number."""
Offsets = tuple[tuple[Exact, Exact], ...]
"""For each side of an outline, from its first corner on, how far the real side lies outside it at its two ends."""


class PieceShape(Struct, frozen=True):
    """A patch at the size that it is cut for.

    `sides` are steps along its outline, clockwise and without straight corners, `lengths` how long they are, `raw` how
    long with the seam allowance. All are exact numbers, or all floats.
    """

    corners: Polygon
    sides: tuple[Point, ...]
    lengths: tuple[Exact, ...]
    raw: tuple[Exact, ...]
    seam: Exact
    root_half: Exact = ROOT_HALF

    @classmethod
    def of(cls, patch: Polygon, seam: Fraction) -> PieceShape:
        """The shape of an outline, exactly."""
        sides = tuple(step(a, b) for a, b in edges(patch))
        return cls(patch, sides, tuple(edge_lengths(patch)), edge_lengths_with_allowance(patch, seam), seam)

    def in_floats(self) -> PieceShape:
        """The same, nearly."""
        corners, sides = (tuple(Point(*_floats(each)) for each in points) for points in (self.corners, self.sides))
        return PieceShape(
            corners, sides, _floats(self.lengths), _floats(self.raw), _float(self.seam), _float(self.root_half)
        )

    def sized(self, scale: Exact, seam: Exact) -> PieceShape:
        """The shape scaled, with another allowance; what that adds to an edge is scaled with it."""
        corners, sides = (
            tuple(Point(point.x * scale, point.y * scale) for point in points) for points in (self.corners, self.sides)
        )
        lengths = tuple(length * scale for length in self.lengths)
        more = seam / self.seam
        raw = tuple(length * scale + (raw - length) * more for length, raw in zip(self.lengths, self.raw, strict=True))
        return PieceShape(corners, sides, lengths, raw, seam, self.root_half)


def cut_in_floats(cut: Cut) -> Cut:
    """The line of a list with floats for all its sizes."""
    strip, corner = cut.strip, cut.corner
    if strip is not None:
        every, across = (None if side is None else _float(side) for side in (strip.every, strip.across))
        strip = replace(strip, width=_float(strip.width), every=every, across=across, exact=_pair(strip.exact))
    corner = None if corner is None else _float(corner)
    return replace(cut, cut=_pair(cut.cut), exact=_pair(cut.exact), corner=corner, strip=strip)


def _float(number: Exact) -> Fraction:
    return to_float(number)  # type: ignore[return-value]  # floats in place of numbers


def _pair(numbers: tuple[Exact, Exact]) -> tuple[Fraction, Fraction]:
    return _float(numbers[0]), _float(numbers[1])


def _floats(numbers: Sequence[Exact]) -> tuple[Exact, ...]:
    return tuple([_float(number) for number in numbers])


def side_offsets(shape: PieceShape, cut: Cut) -> Offsets:
    """The offsets of a patch that is cut as the list says; nothing for what is cut round a template."""
    if cut.strip is not None:
        return _parallel(_from_strip(shape, cut.strip))
    if cut.piece == "octagon":
        return _parallel(_octagon(shape, cut))
    # A hexagon or a diamond that is wider than the cloth comes from no strip: nothing is known of how it is cut.
    if cut.piece not in ("square", "rectangle", "strip") or cut.cut == cut.exact:
        return _parallel([NOTHING] * len(shape.sides))
    if cut.piece == "strip":
        return _parallel([(cut.cut[0] - cut.exact[0]) / 2] * len(shape.sides))
    if len(shape.sides) == 3:
        return _parallel(_half_square(shape, cut)) if cut.piece == "square" else _half_rectangle(shape, cut)
    return _parallel(_rectangle(shape, cut))


def _parallel(offsets: Sequence[Exact]) -> Offsets:
    return tuple((offset, offset) for offset in offsets)


def _same(one: Exact, other: Exact) -> bool:
    """Whether two measures are equal, but for what floats and roots that are no sums of roots cannot tell."""
    return one == other or abs(to_float(one) - to_float(other)) < SAME


def _none(product: Exact, one: Exact, other: Exact) -> bool:
    """Whether a product of two sides that are so long is nothing."""
    return not product or abs(to_float(product)) < SAME * to_float(one * other)


def _rectangle(shape: PieceShape, cut: Cut) -> list[Exact]:
    # What a side is too long lies outside the two sides square to it.
    over = [_excess(length + 2 * shape.seam, cut) / 2 for length in shape.lengths[:2]]
    return [over[1], over[0]] * 2


def _excess(exact: Exact, cut: Cut) -> Exact:
    """How much the side of the piece that should be so long is cut longer."""
    place = 0 if _same(exact, cut.exact[0]) else 1
    return cut.cut[place] - cut.exact[place]


def _half_square(shape: PieceShape, cut: Cut) -> list[Exact]:
    """The right corner stays where it is, and the long edge moves outward.

    Of a square cut once the legs grow, and the long edge moves by growth/√2; cut twice the long edge grows, and moves
    by half.
    """
    long_edge = max(range(3), key=lambda side: shape.lengths[side])
    grown = cut.cut[0] - cut.exact[0]
    # A star's side triangles are listed as the squares that they are cut from.
    moves = grown * shape.root_half if cut.subcut == "once" else grown / 2
    return [moves if side == long_edge else NOTHING for side in range(3)]


def _half_rectangle(shape: PieceShape, cut: Cut) -> Offsets:
    """The right corner stays where it is, and the long edge moves outward, at each end by another measure.

    With the right corner of the piece at the origin and its legs along both axes, the patch has its corners at
    (s + a, s), (s, s + b) and the piece is cut from (w, 0) to (0, h). Square to the long edge of the patch, along
    n = (b, a)/c, the cloth reaches t beyond a corner (p, q): (p + t b/c)/w + (q + t a/c)/h = 1, so
    t = c (w h - p h - q w)/(b h + a w). What it reaches beyond the allowance is the offset there.
    """
    long_edge = max(range(3), key=lambda side: shape.lengths[side])
    ahead, behind = (long_edge + 1) % 3, (long_edge + 2) % 3
    # Legs by the end of the long edge at which they lie.
    (a, b), c, s = (shape.lengths[behind], shape.lengths[ahead]), shape.lengths[long_edge], shape.seam
    w, h = (shape.raw[leg] + _excess(shape.raw[leg], cut) for leg in (behind, ahead))
    below = b * h + a * w
    start, end = (c * (w * h - p * h - q * w) / below - s for p, q in ((s + a, s), (s, s + b)))
    return tuple((start, end) if side == long_edge else (NOTHING, NOTHING) for side in range(3))


def _octagon(shape: PieceShape, cut: Cut) -> list[Exact]:
    """Its box is rounded up, and its corners are cut off at a place rounded down."""
    sides, lengths, raw = shape.sides, shape.lengths, shape.raw
    over = [(cut.cut[place] - cut.exact[place]) / 2 for place in (0, 1)]
    root_half = shape.root_half
    # The rim: every other side, from that whose neighbour across the corner is square to it and which the box holds.
    for start in (0, 1):
        corner = raw[1 - start] * root_half
        across = raw[start] + 2 * corner
        along = raw[start + 2] + 2 * corner
        held = all(_same(*pair) for pair in zip(sorted((across, along)), sorted(cut.exact), strict=True))
        one, other = start, (start + 2) % 8
        if held and _none(dot(sides[one], sides[other]), lengths[one], lengths[other]):
            kept = cut.corner or NOTHING
            slanted = (over[0] + over[1] + corner - kept) * root_half
            first = over[0] if _same(along, cut.exact[0]) else over[1]
            second = over[1] if _same(along, cut.exact[0]) else over[0]
            rim = (first, second, first, second)
            return [rim[(side - start) // 2] if (side - start) % 2 == 0 else slanted for side in range(8)]
    return [NOTHING] * 8


# --- from strips -----------------------------------------------------------------------------------


def _from_strip(shape: PieceShape, strip: StripCut) -> list[Exact]:
    count = len(shape.sides)
    if strip.form == "template":
        return [NOTHING] * count
    wide = strip.width - strip.exact[0]
    if strip.form == "turned":
        if count == 3:
            return _grown_from(shape, strip.exact[0], wide)
        every = strip.exact[1] if strip.every is None else strip.every
        return _trapezoid(shape, wide, every - strip.exact[1], strip.exact[0])
    pairs = count // 2
    apart = [_apart(shape, side, side + pairs) + 2 * shape.seam for side in range(pairs)]
    cuts: list[tuple[Exact, Exact]] = [(strip.exact[0], wide)]
    if strip.every is not None:
        cuts.append((strip.exact[1], strip.every - strip.exact[1]))
    found: list[Exact | None] = [None] * pairs
    for exact, over in cuts:
        place = next((side for side in range(pairs) if found[side] is None and _same(apart[side], exact)), None)
        if place is not None:
            found[place] = over / 2
    if strip.across is not None:
        left = [side for side in range(pairs) if found[side] is None]
        for side in left:
            found[side] = (strip.across - apart[side]) / 2
    return [NOTHING if over is None else over for over in found] * 2


def _apart(shape: PieceShape, one: int, other: int) -> Exact:
    """How far the line of one side lies from a parallel one."""
    over = cross(shape.sides[one], step(shape.corners[one], shape.corners[other]))
    return _size(over) / shape.lengths[one]


def _grown_from(shape: PieceShape, exact: Exact, wide: Exact) -> list[Exact]:
    """A triangle whose cuts keep their angles: it grows from the corner across, and its base moves outward."""
    raw, lengths = shape.raw, shape.lengths
    # Areas of alike triangles go as the squares of their sides.
    double = _size(cross(shape.sides[0], shape.sides[1]))
    heights = [double / lengths[side] * (raw[side] / lengths[side]) for side in range(3)]
    base = next((side for side in range(3) if _same(heights[side], exact)), 0)
    return [wide if side == base else NOTHING for side in range(3)]


def _trapezoid(shape: PieceShape, wide: Exact, longer: Exact, exact: Exact) -> list[Exact]:
    """Its longer edge stays where it is; the shorter one moves out, and each slanted end by half of what is over."""
    sides, lengths = shape.sides, shape.lengths
    bases = [
        side
        for side in range(4)
        if _none(cross(sides[side], sides[(side + 2) % 4]), lengths[side], lengths[(side + 2) % 4])
    ]
    bases = [side for side in bases if _same(_apart(shape, side, (side + 2) % 4) + 2 * shape.seam, exact)] or bases
    if not bases:
        return [NOTHING] * 4
    base = max(bases, key=lambda side: lengths[side])
    found = [NOTHING, NOTHING, NOTHING, NOTHING]  # type: list[Exact]
    found[(base + 2) % 4] = wide
    for end in ((base + 1) % 4, (base + 3) % 4):
        lean = _size(cross(sides[base], sides[end])) / (lengths[base] * lengths[end])
        found[end] = longer / 2 * lean
    return found


def _size(number: Exact) -> Exact:
    """Without its sign."""
    return number if number >= 0 else -number
