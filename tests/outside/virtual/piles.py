"""The piles of cloth: every line of the cut list cut up, and what is taken from each."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from math import atan2, degrees
from typing import Any

from shapely import affinity
from shapely.geometry import box

from tests.outside.virtual.angles import (
    must_be_enough,
    must_hold_templates,
    narrower,
    pieces_of_strip,
    standing_rectangle,
    without_corners,
)
from tests.outside.virtual.cloth import NEAR, Fault, Work, corner_to_corner, fitted
from tests.outside.virtual.plan import Line, Patch, Plan

PIECES = {"none": 1, "once": 2, "twice": 4}


class Piles:
    def __init__(self, plan: Plan) -> None:
        self._plan = plan
        self.left: dict[Line, int] = {}
        """Pieces left of each line: triangles of the squares that are cut up, strips, squares."""
        self.units: Counter[Line] = Counter()
        """What each line of a method gave: units, or segments."""
        self.needed: Counter[Line] = Counter()
        self._laid: dict[tuple[object, ...], Work] = {}
        for line in plan.cutting:
            if line in self.left or min(line.cut) <= 0 or line.count <= 0:
                raise Fault(f"{line} is told twice, or is nothing")
            self.left[line] = line.count * PIECES[line.subcut]

    def lines(self, purpose: str) -> list[Line]:
        return [line for line in self.left if line.purpose == purpose]

    def line_for(self, patch: Patch, purpose: str, *, is_base: bool | None = None) -> Line:
        """The line from which a patch is cut; squares and bases of one letter are told apart by their size."""
        mine = [line for line in self.lines(purpose) if (line.fabric, line.label) == (patch.fabric, patch.label)]
        if not mine:
            raise Fault(f"nothing is cut for {patch.label} ({patch.fabric}): {purpose}")
        return mine[0] if is_base is None else max(mine, key=lambda line: line.cut if is_base else (-line.cut[1], 0))

    def take(self, line: Line, count: int) -> None:
        self.left[line] -= count
        if self.left[line] < 0:
            raise Fault(f"too few are cut of {line.label} ({line.fabric}): {line.purpose}")

    def piece_for(self, patch: Patch, count: int) -> Work:
        """A piece of the pile laid over its patch, as many taken as are wanted."""
        line = self.line_for(patch, "patches")
        # Patches of one letter may be cut in several ways; by this machine's eye they are all alike.
        for each in self.lines("patches"):
            if (each.fabric, each.label) == (patch.fabric, patch.label) and each != line:
                spared = min(self.left[each], count)
                self.take(each, spared)
                count -= spared
        self.take(line, count)
        x, y = patch.shape.centroid.x, patch.shape.centroid.y
        corners = tuple((round(a - x, 6), round(b - y, 6)) for a, b in patch.shape.exterior.coords)
        key = (line, corners)
        if key not in self._laid:
            self._laid[key] = self._fit(line, replace(patch, shape=affinity.translate(patch.shape, -x, -y)))
        (face,) = self._laid[key].faces
        return Work((replace(face, shape=affinity.translate(face.shape, x, y)),))

    def _fit(self, line: Line, patch: Patch) -> Work:
        """Laid over its patch about the origin, and no larger than the ruler's measure makes it."""
        seam, measure = self._plan.seam, self._plan.measure
        if line.piece == "template":
            self._must_hold_template(line)
            piece = self._plan.templates[line.label].cutting
        else:
            if line.strip is not None:
                must_be_enough(line.strip, line.cut, line.count, self._plan.usable, measure)
            piece, *others = pieces_of(line)
            if any(fitted(other, patch.shape, seam) is None for other in others):
                raise Fault(f"not all pieces of {line.label} ({line.fabric}) are the patch")
            for smaller in shorter(line, measure):
                if fitted(pieces_of(smaller)[0], patch.shape, seam) is not None:
                    raise Fault(f"{line.label} ({line.fabric}) is cut larger than it need be: {line.cut}")
        laid = fitted(piece, patch.shape, seam)
        if laid is None:
            raise Fault(f"{line.label} ({line.fabric}) is cut too small: {line.cut}")
        return Work((Patch(line.label, line.fabric, laid),))

    def _must_hold_template(self, line: Line) -> None:
        """The template, its grain upright, fits on the cloth; one measure less and it does not."""
        template = self._plan.templates[line.label]
        upright = 90 - degrees(atan2(template.grain[1], template.grain[0]))
        left, top, right, bottom = affinity.rotate(template.cutting, upright, origin=(0, 0)).bounds
        for have, want in zip(line.cut, (right - left, bottom - top), strict=True):
            if not -NEAR < have - want < self._plan.measure - NEAR:
                raise Fault(f"the template of {line.label} takes {want:.3f}, {have} is cut for it")
        if line.strip is not None:
            if line.strip.width != line.cut[0]:
                raise Fault(f"the strip for {line.label} is not as wide as its template")
            must_hold_templates(line.strip, template.cutting, template.grain, line.count, self._plan.usable)

    def must_be_used_up(self) -> None:
        for line, left in self.left.items():
            mates = [each for each in self.lines("patches") if (each.fabric, each.label) == (line.fabric, line.label)]
            if line.purpose == "patches" and (len(mates) > 1 or line.upright):
                # Which of them a patch came from, and how its print stood, this machine does not see.
                gave, spare = line.count * PIECES[line.subcut], line.spare
                if sum(self.left[each] for each in mates) != sum(each.spare for each in mates):
                    raise Fault(f"not as many of {line.label} ({line.fabric}) are left over as is told")
            elif line.purpose == "patches" or line.purpose.startswith("foundation "):
                gave, spare = line.count * PIECES[line.subcut], left
                if left >= PIECES[line.subcut]:
                    raise Fault(f"{left} of {line.label} ({line.fabric}) are left over")
            else:
                gave, spare = self.units[line], self.units[line] - self.needed[line]
                if left:
                    raise Fault(f"{left} of {line.label} ({line.fabric}) are left over: {line.purpose}")
            if (gave, spare) != (line.yields, line.spare):
                raise Fault(f"{line} gave {gave}, {spare} of it spare")


def pieces_of(line: Line) -> list[Any]:
    """The pieces of one square or rectangle, or the first two of a strip: all others are like one of them."""
    one, other = line.cut
    if line.strip is not None:
        return pieces_of_strip(line.strip, 3 * other)[:2]
    if line.corner is not None:
        return [without_corners(line.cut, line.corner)]
    if line.subcut == "once" and line.piece == "rectangle":
        return standing_rectangle(line.cut, line.slant)
    return [box(0, 0, one, other)] if line.subcut == "none" else corner_to_corner(min(one, other), line.subcut)


def shorter(line: Line, measure: float) -> list[Line]:
    """The line one measure of the ruler smaller, each way by itself; what is cut corner to corner both ways.

    Of a rectangle that is rounded up both ways one side could be a little less, since no seam needs the tips.
    """
    one, other = line.cut
    if line.corner is not None:
        cuts = (one - measure, other), (one, other - measure)
        return [*(replace(line, cut=cut) for cut in cuts), replace(line, corner=line.corner + measure)]
    if line.strip is not None:
        return [replace(line, strip=strip) for strip in narrower(line.strip, measure)]
    if line.subcut != "none":
        return [replace(line, cut=(one - measure, other - measure))]
    return [replace(line, cut=(one - measure, other)), replace(line, cut=(one, other - measure))]
