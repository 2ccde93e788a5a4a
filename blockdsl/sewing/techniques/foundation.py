"""Foundation piecing: patches sewn to a printed paper, line by line. Shown with flying geese."""

from __future__ import annotations

from dataclasses import replace
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
from blockdsl.sewing.techniques.scene import Cloth, Item, Line, Paper, Picture, Step, Words, lesson_step, show


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
    over = over_left(replace(measures, open_seams=False))
    sides = () if measures.made else dimensions(*measures.unfinished, -seam, -seam)
    seam_told = measures.allowance
    return (
        lesson_step(
            "papers-print",
            show("paper", sheet, *lines, *numbers),
            shown="other" if measures.made else "own",
        ),
        lesson_step("papers-first", show("paper-first", sheet, first, *lines), seam=seam_told),
        lesson_step("papers-sew", show("paper-sewn", sheet, first, second, sewn, *rim), seam=seam_told),
        lesson_step("papers-trim", *_trim(measures, first, second, sewn), seam=seam_told),
        lesson_step("papers-press", show("paper-opened", sheet, goose, opened, *over)),
        lesson_step("papers-go-on", show("paper-all", *whole, *rim)),
        lesson_step(
            "papers-cut",
            show("paper-cut", *whole, *edges),
            show("paper-done", *final, *sides),
            seam=seam_told,
            size=measures.made_size,
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
    return cutting_pair((first, second, sewn), cut, "allowances-cut", (3, -1), beside)
