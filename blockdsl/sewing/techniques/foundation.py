"""Foundation piecing: patches sewn to a printed paper, line by line. Shown with flying geese."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.geometry import Exact, Point, Polygon, sign, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.offset import offset_outward
from blockdsl.geometry.polygon import clockwise, cross, dot, edges, step
from blockdsl.sewing.message import Argument, Length, SizeArgument
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
from blockdsl.sewing.techniques.scene import (
    Item,
    LessonStep,
    Line,
    SceneCloth,
    ScenePaper,
    ScenePicture,
    SceneWords,
    lesson_step,
    show,
)


def papers(measures: Measures) -> tuple[LessonStep, ...]:
    """Print, lay, sew, fold back and trim, press, go on, cut to size."""
    w, h, seam = measures.width, measures.height, measures.seam
    point = at(w / 2, ZERO)
    left_seam, right_seam = (at(ZERO, h), point), (point, at(w, h))
    sheet = ScenePaper(_grown(w, h, seam * 3))
    rim = _rim(w, h, seam)
    lines: tuple[Item, ...] = (*rim, Line("printed", *left_seam), Line("printed", *right_seam))
    numbers = (
        SceneWords(at(w / 2, h * Fraction(5, 8)), "A1"),
        SceneWords(at(w / 8, h / 4), "A2"),
        SceneWords(at(w * Fraction(7, 8), h / 4), "A3"),
    )
    first = SceneCloth(0, _grown(w, h, seam * 2))
    sewn = Line("sewn", at(-seam, h + seam), at(w / 2 + seam, -seam))
    roomy = _roomy_sky(w, h, seam)
    second = SceneCloth(1, reflected(roomy, left_seam), "wrong")
    goose = SceneCloth(0, clipped(first.outline, left_seam))
    sky = clipped(roomy, left_seam[::-1])
    opened = SceneCloth(1, sky)
    mirrored_sky = tuple(at(w - corner.x, corner.y) for corner in reversed(sky))
    other = 2 if 2 in measures.cuts else 1
    last = SceneCloth(other, mirrored_sky)
    pieced = (opened, SceneCloth(0, clipped(goose.outline, right_seam)), last)
    whole = (sheet, *pieced)
    outer = _grown(w, h, seam)
    edges = tuple(Line("cut", outer[place - 1], outer[place]) for place in range(4))
    final = trimmed(pieced, w, h, seam)
    over = over_left(replace(measures, open_seams=False))
    sides = () if measures.made else dimensions(*measures.unfinished, -seam, -seam)
    told: dict[str, Argument] = {"seam": measures.allowance, "first": "A1", "second": "A2"}
    return (
        lesson_step("papers-print", show("paper", sheet, *lines, *numbers)),
        lesson_step("papers-first", show("paper-first", sheet, first, *lines), **told),
        lesson_step("papers-sew", show("paper-sewn", sheet, first, second, sewn, *rim), **told),
        lesson_step("papers-trim", *_trim(measures, first, second, sewn), **told),
        lesson_step("papers-press", show("paper-opened", sheet, goose, opened, *over), **told),
        lesson_step("papers-go-on", show("paper-all", *whole, *rim)),
        lesson_step(
            "papers-cut",
            show("paper-cut", *whole, *edges),
            show("paper-done", *final, *sides),
            seam=measures.allowance,
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


def _trim(measures: Measures, first: SceneCloth, second: SceneCloth, sewn: Line) -> tuple[ScenePicture, ScenePicture]:
    """Seen from the cloth's side: the cut lies a seam allowance outside the seam, what is kept under the ruler."""
    w, h, seam, slant = measures.width, measures.height, measures.seam, measures.slant
    by = 2 * seam
    cut = Line("cut", at(-by, h - slant + by), at(w / 2 - slant + by, -by))
    beside = (at(slant / 2, slant / 2), seam)
    return cutting_pair((first, second, sewn), cut, "allowances-cut", (3, -1), beside)


_HALF = Fraction(70711, 100000)
"""The sine of 45°, near enough to choose one of eight turns by."""


# --- any section -----------------------------------------------------------------------------------


class PaperArea(Struct, frozen=True):
    """An area of a section: its number, the role of its fabric, its seam (None for the first), and its piece laid.

    `laid` is the piece folded open over its area, clockwise, with what reaches beyond on all sides.
    """

    number: str
    role: int
    outline: Polygon
    seam: tuple[Point, Point] | None
    laid: Polygon


def section_lesson(
    areas: Sequence[PaperArea], outline: Polygon, seam: Fraction, unfinished: tuple[Exact, Exact] | None
) -> tuple[LessonStep, ...]:
    """The work on a section, with its pictures; `outline` is what paper and fabric are cut to.

    Print, lay the first piece; of two areas or more also place the second, sew, trim and press it; of three or more
    add the others; cut. Seen from the fabric's side but for the first picture. `unfinished` is the size of a rectangle.
    """
    rim = tuple(Line("printed", *edge) for edge in edges(outline))
    lines = tuple(Line("printed", *area.seam) for area in areas if area.seam)
    numbers = tuple(SceneWords(_middle(area.outline), area.number) for area in areas)
    sheet = ScenePaper(offset_outward(clockwise(outline), seam))
    first, *others = areas
    start = SceneCloth(first.role, first.laid)
    told: dict[str, Argument] = {"seam": Length(seam), "first": first.number}
    steps = [
        lesson_step("papers-print", _mirrored(show("paper", sheet, *rim, *lines, *numbers))),
        lesson_step("papers-first", show("paper-first", sheet, start, *rim, *lines, numbers[0]), **told),
    ]
    if others:
        second = others[0]
        line = _right_of(second)
        folded = SceneCloth(second.role, reflected(second.laid, line), "wrong")
        sewn = _lengthened(line, seam)
        told["second"] = second.number
        opened = show("paper-opened", sheet, *_sewn(areas[:2]), sewn, *rim, numbers[0], numbers[1])
        steps += [
            lesson_step("papers-sew", show("paper-placed", sheet, start, folded, *rim, sewn), **told),
            lesson_step("papers-trim", *_trimmed_at(line, (start, folded, sewn), seam), **told),
            lesson_step("papers-press", opened, **told),
        ]
    done = _sewn(areas)
    if len(others) > 1:
        steps.append(lesson_step("papers-go-on", show("paper-all", sheet, *done, *rim, *numbers)))
    cuts = tuple(Line("cut", *edge) for edge in edges(outline))
    size: Argument = "none" if unfinished is None else SizeArgument(*unfinished)
    steps.append(
        lesson_step("papers-cut", show("paper-cut", sheet, *done, *cuts, *numbers), seam=Length(seam), size=size)
    )
    return tuple(steps)


def _trimmed_at(line: tuple[Point, Point], items: Sequence[Item], seam: Fraction) -> tuple[ScenePicture, ScenePicture]:
    """Both layers cut an allowance beyond the line, on the side of the new area; what is kept lies under the ruler."""
    way = step(*line)
    share = seam / square_root(dot(way, way))
    beyond = at(-share * way.y, share * way.x)  # to the right hand of the line, y downward
    start, end = (at(place.x + beyond.x, place.y + beyond.y) for place in line)
    kept = at(-beyond.x, -beyond.y)
    turn = min(range(8), key=lambda eighths: _turned_right(kept, eighths))
    return cutting_pair(items, Line("cut", start, end), "allowances-cut", (turn, (turn + 4) % 8), (kept, seam))


def _turned_right(place: Point, eighths: int) -> Exact:
    """How far to the right a place comes to lie by so many eighths of a turn, clockwise."""
    sines = (Fraction(0), _HALF, Fraction(1), _HALF, Fraction(0), -_HALF, Fraction(-1), -_HALF)
    return place.x * sines[(eighths + 2) % 8] - place.y * sines[eighths % 8]


def _sewn(areas: Sequence[PaperArea]) -> list[SceneCloth]:
    """What is seen of the pieces so far: each on its side of its seam, those before it folded under there."""
    seen: list[SceneCloth] = []
    for area in areas:
        if area.seam is None:
            seen.append(SceneCloth(area.role, area.laid))
            continue
        line = _right_of(area)
        under = [replace(cloth, outline=clipped(cloth.outline, line[::-1])) for cloth in seen]
        seen = [cloth for cloth in under if len(cloth.outline) > 2]
        seen.append(SceneCloth(area.role, clipped(area.laid, line)))
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


def _mirrored(picture: ScenePicture) -> ScenePicture:
    """The picture as it is seen from the back."""

    def over(point: Point) -> Point:
        return at(-point.x, point.y)

    def turned(item: Item) -> Item:
        match item:
            case ScenePaper():
                return ScenePaper(tuple(map(over, reversed(item.outline))))
            case Line():
                return Line(item.kind, over(item.start), over(item.end))
            case SceneWords():
                return SceneWords(over(item.place), item.text)
        raise TypeError(f"{type(item).__name__} is not printed on a paper")

    return replace(picture, items=tuple(map(turned, picture.items)))
