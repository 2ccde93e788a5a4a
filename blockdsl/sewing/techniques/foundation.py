"""Foundation piecing: patches sewn to a printed paper, line by line. Shown with flying geese."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from blockdsl.geometry import Exact, Point, Polygon, sign, square_root
from blockdsl.geometry.offset import offset_outward
from blockdsl.geometry.polygon import clockwise, cross, dot, edges, step
from blockdsl.sewing.message import Length
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


# --- any section -----------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class PaperArea:
    """An area of a section: its number, the role of its fabric, its seam (None for the first), and its piece laid.

    `laid` is the piece folded open over its area, clockwise, with what reaches beyond on all sides.
    """

    number: str
    role: int
    outline: Polygon
    seam: tuple[Point, Point] | None
    laid: Polygon


def section_lesson(areas: Sequence[PaperArea], outline: Polygon, seam: Fraction) -> tuple[Step, ...]:
    """Pictures of the work on a section, one for each part of its step.

    `outline` is what paper and fabric are cut to. Print, lay the first piece; of two areas or more also place the
    second, sew and press it; of three or more add the others; cut. Seen from the fabric's side but for the first.
    """
    rim = tuple(Line("printed", *edge) for edge in edges(outline))
    lines = tuple(Line("printed", *area.seam) for area in areas if area.seam)
    numbers = tuple(Words(_middle(area.outline), area.number) for area in areas)
    sheet = Paper(offset_outward(clockwise(outline), seam))
    first, *others = areas
    start = Cloth(first.role, first.laid)
    steps = [
        lesson_step("papers-print", _mirrored(show("paper", sheet, *rim, *lines, *numbers)), shown="own"),
        lesson_step("papers-first", show("paper-first", sheet, start, *rim, *lines, numbers[0]), seam=Length(seam)),
    ]
    if others:
        second = others[0]
        line = _right_of(second)
        folded = Cloth(second.role, reflected(second.laid, line), "wrong")
        sewn = _lengthened(line, seam)
        steps += [
            lesson_step("papers-sew", show("paper-placed", sheet, start, folded, *rim, *lines[:1]), seam=Length(seam)),
            lesson_step(
                "papers-press",
                show("paper-opened", sheet, *_sewn(areas[:2]), sewn, *rim, numbers[0], numbers[1]),
            ),
        ]
    done = _sewn(areas)
    if len(others) > 1:
        steps.append(lesson_step("papers-go-on", show("paper-all", sheet, *done, *rim, *numbers)))
    cuts = tuple(Line("cut", *edge) for edge in edges(outline))
    steps.append(
        lesson_step("papers-cut", show("paper-cut", sheet, *done, *cuts, *numbers), seam=Length(seam), size="")
    )
    return tuple(steps)


def _sewn(areas: Sequence[PaperArea]) -> list[Cloth]:
    """What is seen of the pieces so far: each on its side of its seam, those before it folded under there."""
    seen: list[Cloth] = []
    for area in areas:
        if area.seam is None:
            seen.append(Cloth(area.role, area.laid))
            continue
        line = _right_of(area)
        under = [replace(cloth, outline=clipped(cloth.outline, line[::-1])) for cloth in seen]
        seen = [cloth for cloth in under if len(cloth.outline) > 2]
        seen.append(Cloth(area.role, clipped(area.laid, line)))
    return seen


def _right_of(area: PaperArea) -> tuple[Point, Point]:
    """The seam of an area, run so that the area lies at its right hand."""
    if area.seam is None:
        raise ValueError("the first area has no seam")
    start, end = area.seam
    way = step(start, end)
    return (end, start) if any(sign(cross(way, step(start, corner))) < 0 for corner in area.outline) else area.seam


def _lengthened(line: tuple[Point, Point], by: Exact) -> Line:
    """The stitches: from before the line to beyond it."""
    start, end = line
    way = step(start, end)
    share = by / square_root(dot(way, way))
    return Line(
        "sewn",
        at(start.x - share * way.x, start.y - share * way.y),
        at(end.x + share * way.x, end.y + share * way.y),
    )


def _middle(outline: Polygon) -> Point:
    """The middle of an area by its corners."""
    return at(sum((p.x for p in outline), ZERO) / len(outline), sum((p.y for p in outline), ZERO) / len(outline))


def _mirrored(picture: Picture) -> Picture:
    """The picture as it is seen from the back."""

    def over(point: Point) -> Point:
        return at(-point.x, point.y)

    def turned(item: Item) -> Item:
        match item:
            case Paper():
                return Paper(tuple(map(over, reversed(item.outline))))
            case Line():
                return Line(item.kind, over(item.start), over(item.end))
            case Words():
                return Words(over(item.place), item.text)
        raise TypeError(f"{type(item).__name__} is not printed on a paper")

    return replace(picture, items=tuple(map(turned, picture.items)))
