"""The pieces of a block as they are cut: each patch with its real edges."""

from __future__ import annotations

from collections.abc import Callable, Collection, Hashable, Sequence
from itertools import pairwise
from math import lcm
from typing import Final

from blockdsl.cutting.cutlist import Cut
from blockdsl.cutting.drift.pieces import Offsets, PieceShape, cut_in_floats, side_offsets
from blockdsl.cutting.drift.sides import Sewer, SewnPart, SewnSide
from blockdsl.cutting.grain import at_origin
from blockdsl.cutting.resized import FinishedSize
from blockdsl.geometry import Exact, Point, Polygon, Surd, to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import cross, dot, drop_straight_corners, edges, step
from blockdsl.model import BlockDesign, RulerUnit
from blockdsl.sewing import Making
from blockdsl.sewing.methods import CUT_PATCHES, STRIPS
from blockdsl.sewing.order import Joined, Piece, SeamLine

TOLERANCE: Final[dict[RulerUnit, Fraction]] = {"in": Fraction(1, 16), "cm": Fraction(3, 20)}
"""How far a seam may lie from its place: what pinning and pressing take in. Common practice, no source."""


class LaidPiece:
    """How something that was made lies in what takes it.

    `ways` are where a step to the right and a step down lead then.
    """

    def __init__(self, lay: Callable[[Point], Point], ways: Sequence[Point], *, is_mirrored: bool) -> None:
        """Take what lays an enlarged corner."""
        self._lay, self.ways, self.is_mirrored = lay, ways, is_mirrored
        self._corners: dict[Point, Point] = {}

    def corner(self, corner: Point) -> Point:
        """Where an enlarged corner comes to lie; worked out once for each."""
        known = self._corners.get(corner)
        if known is None:
            known = self._corners[corner] = self._lay(corner)
        return known


class DriftCloth:
    """A block's patches, to be cut by one list after another: where they lie is found once.

    Corners are whole numbers where there are no roots: the block is `scale` times as large then. `by_template` are
    letters that are cut round their templates, whatever the list says; `size` is that which the list is for, where it
    is not the block's own. `rough` is for a first look, in floats; corners are floats then, too, where there are
    roots.
    """

    def __init__(self, design: BlockDesign, making: Making, letters: Sequence[str], *, rough: bool = False) -> None:
        self._design, self._letters = design, letters
        self._size = FinishedSize.of(design)
        self.tolerance = TOLERANCE[design.unit]
        self._stars = making.from_slanted_strips
        """Patches of stars from strip sets, the only things a method makes that are not trimmed inside."""
        made = making.made_whole | making.over_papers
        self.made_as_drawn = frozenset(patch for first, stop in made for patch in range(first, stop)) - self._stars
        numbers = {number for patch in design.patches for corner in patch.outline for number in corner}
        rooted = any(isinstance(number, Surd) for number in numbers)
        self.scale = 1 if rooted else lcm(*(number.denominator for number in numbers if isinstance(number, Fraction)))
        self.sewer = Sewer(0 if rooted else self.scale, rough=rough)
        self._as_drawn = (self.sewer.nothing,) * 3
        self._rough = rough
        self._rooted = rooted
        self._known: dict[Hashable, tuple[Offsets, Sequence[Exact]] | None] = {}
        self._points: dict[Point, Point] = {}
        self._exact: dict[Point, Point] = {}
        """Of corners in floats, what they are exactly."""
        self._lines: dict[int, Sequence[Point]] = {}
        self._lying: dict[Hashable, LaidPiece] = {}
        self._corners: dict[int, Polygon] = {}
        """Of each patch, without straight corners."""
        self._forms: dict[int, Hashable] = {}
        self._shapes: dict[Hashable, PieceShape] = {}
        """Of each form, as drawn."""
        self._cuts: dict[tuple[str, str], list[Cut]] = {}
        self._of_stars: dict[tuple[str, str], list[Cut]] = {}

    def cut(self, cuts: Sequence[Cut], by_template: Collection[str] = (), size: FinishedSize | None = None) -> None:
        """Cut all pieces as the list says; what was cut before is forgotten."""
        self._size = FinishedSize.of(self._design) if size is None else size
        self.tolerance = TOLERANCE[self._size.unit]
        self._known.clear()
        self._cuts.clear()
        self._of_stars = {(cut.label, cut.fabric): [cut] for cut in cuts if self._stars and cut.method == STRIPS}
        for cut in cuts:
            if cut.method == CUT_PATCHES and not cut.unit and cut.label not in by_template:
                self._cuts.setdefault((cut.label, cut.fabric), []).append(cut)

    @property
    def is_exact(self) -> bool:
        """Whether no piece is larger than it need be, so that nothing can add up."""
        known = (*self._cuts.values(), *self._of_stars.values())
        return all(cut.cut == cut.exact and not cut.strip for cuts in known for cut in cuts)

    def is_star_from_strips(self, node: Joined) -> bool:
        """Whether it is a star, or a part of one, whose points come out of strip sets."""
        return self._stars.issuperset(node.patches)

    def point(self, point: Point) -> Point:
        """A corner of the block, enlarged."""
        if self._rooted and not self._rough:
            return point
        known = self._points.get(point)
        if known is None:
            if self._rooted:
                known = self.sewer.number_pair(point)
                self._exact[known] = point
            else:
                x, y = (number * self.scale for number in point)
                known = Point(x.numerator, y.numerator)  # type: ignore[union-attr,arg-type]
            self._points[point] = known
        return known

    def line(self, seam: SeamLine) -> Sequence[Point]:
        """The corners of a seam, enlarged."""
        known = self._lines.get(id(seam))
        if known is None:
            known = tuple([self.point(place) for place in (seam.start, *seam.turns, seam.end)])
            self._lines[id(seam)] = known
        return known

    def lying(self, place: Hashable, find: Callable[[], LaidPiece]) -> LaidPiece:
        """How something lies elsewhere: worked out once for each place."""
        known = self._lying.get(place)
        if known is None:
            known = self._lying[place] = find()
        return known

    def unscaled(self, point: Point, origin: Point) -> Point:
        """An enlarged corner as it was, measured from an origin."""
        if self._rooted:
            return step(origin, self._exact.get(point, point))
        return Point(Fraction(1, self.scale) * point.x - origin.x, Fraction(1, self.scale) * point.y - origin.y)

    def drawn(self, node: Joined) -> SewnPart:
        """What is just as it is drawn."""
        return SewnPart(self.trimmed(node), {})

    def trimmed(self, node: Joined) -> list[SewnSide]:
        """The sides of what is just as large as it is drawn."""
        outline = node.outline
        if outline is None:
            return [side for patch in node.patches for side in self._sides(patch, exact=True)]
        corners = [self.point(corner) for corner in outline]
        return [SewnSide(start, end, *self._as_drawn, node.patches[0]) for start, end in edges(tuple(corners))]

    def piece(self, part: Piece) -> SewnPart:
        """A single patch, cut as the list says."""
        return SewnPart(self._sides(part.patch, exact=part.patch in self.made_as_drawn), {})

    def _sides(self, number: int, *, exact: bool) -> list[SewnSide]:
        patch = self._design.patches[number]
        outline = self._corners.get(number)
        if outline is None:
            outline = self._corners[number] = drop_straight_corners(patch.outline)
        corners = tuple([self.point(corner) for corner in outline])
        known = None if exact or patch.curved else self._real(number, outline, corners)
        if known is None:
            return [SewnSide(start, end, *self._as_drawn, number) for start, end in edges(corners)]
        return [
            SewnSide(start, end, *off, longer, number)
            for (start, end), off, longer in zip(edges(corners), *known, strict=True)
        ]

    def _real(self, number: int, outline: Polygon, corners: Polygon) -> tuple[Offsets, Sequence[Exact]] | None:
        """How far the sides of a patch lie outside those drawn, and how much longer they are; None where they do not.

        Patches of one letter are alike up to turning, so which of their sides is the first tells them apart.
        """
        letter, fabric = self._letters[number], self._design.patches[number].fabric
        cuts = (self._of_stars if number in self._stars else self._cuts).get((letter, fabric))
        if not cuts:
            return None
        cut = cuts[0]
        if len(cuts) > 1:
            outside = any(self._is_outer(a, b) for a, b in edges(outline))
            cut = next((each for each in cuts if each.outside == outside), cut)
        form = self._form(number, corners)
        key = (letter, fabric, cut.outside, form)
        if key not in self._known:
            shape = self._shape(form, outline)
            offsets = side_offsets(shape, cut_in_floats(cut) if self._rough else cut)
            if self._rough:
                offsets = tuple([(to_float(start), to_float(end)) for start, end in offsets])  # type: ignore[misc]
            is_larger = any(map(any, offsets))
            self._known[key] = (offsets, self.sewer.lengthened(corners, offsets)) if is_larger else None
        return self._known[key]

    def _shape(self, form: Hashable, outline: Polygon) -> PieceShape:
        """A patch at the size that it is cut for."""
        shape = self._shapes.get(form)
        if shape is None:
            shape = PieceShape.of(at_origin(outline), self._design.seam)
            shape = self._shapes[form] = shape.in_floats() if self._rough else shape
        scale, seam = self._size.scale, self._size.seam
        if scale == 1 and seam == self._design.seam:
            return shape
        return shape.sized(*(to_float(each) if self._rough else each for each in (scale, seam)))  # type: ignore[arg-type]

    def _form(self, number: int, corners: Polygon) -> Hashable:
        """The same for patches that are alike when turned, side by side from the first."""
        known = self._forms.get(number)
        if known is None:
            sides = [step(start, end) for start, end in edges(corners)]
            told = [
                to_float(each) for a, b in pairwise((*sides, sides[0])) for each in (dot(a, a), dot(a, b), cross(a, b))
            ]
            known = self._forms[number] = tuple([round(each, 6) for each in told])
        return known

    def _is_outer(self, a: Point, b: Point) -> bool:
        width, height = self._design.width, self._design.height
        return (a.x == b.x and a.x in (0, width)) or (a.y == b.y and a.y in (0, height))
