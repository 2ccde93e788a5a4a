"""Foundation piecing: patches sewn to a printed paper, line by line. Shown with flying geese."""

from __future__ import annotations

from fractions import Fraction

from blockdsl.geometry import Exact, Polygon
from blockdsl.sewing.techniques.cloth import (
    ZERO,
    at,
    box,
    clipped,
    cutting_pair,
    dimensions,
    outline,
    reflected,
    trimmed,
)
from blockdsl.sewing.techniques.geese import over_left
from blockdsl.sewing.techniques.measures import ROOT_TWO, Measures
from blockdsl.sewing.techniques.scene import Cloth, Item, Line, Paper, Picture, Step, Words

_SHOWN = " (The pictures show flying geese: yours has other patches, which are sewn in the same way.)"


def papers(measures: Measures) -> tuple[Step, ...]:
    """Print, lay, sew, fold back and trim, press, go on, cut to size."""
    w, h, seam = measures.width, measures.height, measures.seam
    point = at(w / 2, ZERO)
    left_seam, right_seam = (at(ZERO, h), point), (point, at(w, h))
    sheet = Paper(_grown(w, h, seam * 3))
    rim = _rim(w, h, seam)
    lines: tuple[Item, ...] = (*rim, Line("printed", *left_seam), Line("printed", *right_seam))
    numbers = (
        Words(at(w / 2, h * Fraction(5, 8)), "1"),
        Words(at(w / 8, h / 4), "2"),
        Words(at(w * Fraction(7, 8), h / 4), "3"),
    )
    first = Cloth(0, _grown(w, h, seam * 2))
    sewn = Line("sewn", at(-seam, h + seam), at(w / 2 + seam, -seam))
    roomy = _roomy_sky(w, h, seam)
    second = Cloth(1, reflected(roomy, left_seam), "wrong")
    goose = Cloth(0, clipped(first.outline, left_seam))
    sky = clipped(roomy, left_seam[::-1])
    opened = Cloth(1, sky)
    mirrored_sky = tuple(at(w - corner.x, corner.y) for corner in reversed(sky))
    other = 2 if 2 in measures.cuts else 1
    last = Cloth(other, mirrored_sky)
    pieced = (opened, Cloth(0, clipped(goose.outline, right_seam)), last)
    whole = (sheet, *pieced)
    outer = _grown(w, h, seam)
    edges = tuple(Line("cut", outer[place - 1], outer[place]) for place in range(4))
    final = trimmed(pieced, w, h, seam)
    shown = _SHOWN if measures.made else ""
    sides = () if measures.made else dimensions(*measures.unfinished, -seam, -seam)
    return (
        Step(
            "Print the papers",
            "Print a paper for each unit at actual size and measure its test bar. Cut the papers apart outside the "
            f"outer line. Set a short stitch, about 1.5 mm: the paper tears off more easily.{shown}",
            (Picture((sheet, *lines, *numbers), "A printed paper with lines and the numbers of its patches."),),
        ),
        Step(
            "Lay the first patch",
            f"Turn the paper over. Lay patch 1 on its blank side, right side up, so that it covers area 1 and at least "
            f"{measures.say_seam} more all round; hold it to the light to see. Pin it.",
            (Picture((sheet, first, *lines), "The first patch on the blank side; the printed lines shine through."),),
        ),
        Step(
            "Sew on the line",
            "Lay patch 2 on it, right sides together, its edge a seam allowance beyond the line between 1 and 2. Turn "
            "the paper over and sew on that printed line, beyond both its ends. (Here the cloth's side is shown.)",
            (Picture((sheet, first, second, sewn, *rim), "The second patch laid on and sewn along the line."),),
        ),
        Step(
            "Fold back and trim",
            f"Fold the paper back along the seam. Cut both layers of cloth {measures.say_seam} beyond it: hold the "
            "ruler down with the flat hand and roll the cutter away from yourself. Do not cut the paper.",
            _trim(measures, first, second, sewn),
        ),
        Step(
            "Open and press",
            "Fold patch 2 over the seam, right side up, and press with a dry iron. It must cover area 2 with a seam "
            "allowance all round.",
            (Picture((sheet, goose, opened, over_left(measures)), "The second patch pressed open over its area."),),
        ),
        Step(
            "Go on by number",
            "Add the other patches in the order of their numbers: lay, sew on the line, trim, press.",
            (Picture((*whole, *rim), "All patches sewn to the paper."),),
        ),
        Step(
            "Cut to size",
            f"Cut cloth and paper on the outer line, {measures.say_seam} outside the sewing line, all four sides. The "
            f"unit should measure {measures.say_made}. Tear the paper off when all its edges are sewn to others.",
            (
                Picture((*whole, *edges), "The unit to be cut along its outer line."),
                Picture((*final, *sides), "The unit." if measures.made else f"The unit, {measures.say_unfinished}."),
            ),
        ),
    )


def _grown(width: Exact, height: Exact, by: Exact) -> Polygon:
    """The finished unit with so much all round."""
    return box(width + 2 * by, height + 2 * by, -by, -by)


def _rim(width: Exact, height: Exact, seam: Exact) -> tuple[Line, ...]:
    """The outer line of the paper, where it is cut."""
    corners = _grown(width, height, seam)
    return tuple(Line("printed", corners[place - 1], corners[place]) for place in range(4))


def _roomy_sky(width: Exact, height: Exact, seam: Exact) -> Polygon:
    """A left sky cut roomy, as it lies when opened: two allowances beyond the unit, one beyond its seam."""
    by, slant = 2 * seam, seam * ROOT_TWO
    return outline((-by, -by), (width / 2 + by + slant, -by), (-by, height + by + slant))


def _trim(measures: Measures, first: Cloth, second: Cloth, sewn: Line) -> tuple[Picture, Picture]:
    """Seen from the cloth's side: the cut lies a seam allowance outside the seam, what is kept under the ruler."""
    w, h, seam, slant = measures.width, measures.height, measures.seam, measures.slant
    by = 2 * seam
    cut = Line("cut", at(-by, h - slant + by), at(w / 2 - slant + by, -by))
    beside = (at(slant / 2, slant / 2), seam)
    return cutting_pair((first, second, sewn), cut, "The allowances cut a little outside the seam", (3, -1), beside)
