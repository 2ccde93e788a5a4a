"""All techniques: for each method its lesson, and in it a topic for each shape that the method makes.

A new topic is a function that gives its steps and an entry here; facts, pages and books learn of it from here.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from blockdsl import shapes as shape
from blockdsl.geometry.fraction import Fraction
from blockdsl.sewing.techniques import (
    applique,
    bias,
    corners,
    curves,
    eight_point,
    foundation,
    geese,
    halves,
    logs,
    miters,
    papers,
    partial,
    patches,
    peaks,
    quarters,
    set_in,
    stars,
    strips,
)
from blockdsl.sewing.techniques.measures import Measures
from blockdsl.sewing.techniques.scene import LessonStep
from blockdsl.sewing.techniques.topic import (
    GEESE,
    NONE,
    SHOWN_THIRDS,
    SHOWN_WIDE,
    THIRDS,
    TWO,
    Lesson,
    Topic,
)
from blockdsl.shapes import Shape


def _lesson(method: str, *topics: Topic) -> Lesson:
    return Lesson(method, {topic.shape: topic for topic in topics})


def _plain(example: Shape, words: str) -> Topic:
    """Patches that make no shape of the language, shown by an example of some that do."""
    return Topic(
        shape.square.SHAPE,
        "squares-and-rectangles",
        words,
        patches.squares,
        proportion=TWO,
        common=NONE,
        shown=SHOWN_WIDE,
        example=example,
    )


def _seam_lesson(
    method: str,
    key: str,
    steps: Callable[[Measures], tuple[LessonStep, ...]],
    dark: tuple[int, ...] = (1,),
    *,
    sized: bool = True,
) -> Lesson:
    """A way of sewing that is no method of the language: it is taught by itself, in two tones."""
    shown = SHOWN_THIRDS
    topic = Topic(shape.square.SHAPE, key, "a", steps, drawn=(0,), common=NONE, dark=dark, shown=shown, sized=sized)
    return Lesson(method, {topic.shape: topic})


_QUARTERS = (0, 1, 2, 3)

LESSONS: Mapping[str, Lesson] = {
    lesson.method: lesson
    for lesson in (
        _lesson(
            "cut patches",
            _plain(shape.checker.SHAPE, "1 x 2 a b"),
            Topic(
                shape.half.SHAPE,
                "half-square-triangles",
                "a b",
                halves.from_triangles,
                (("square-cut-once-2-triangles", 0),),
            ),
            Topic(
                shape.quarters.SHAPE,
                "quarter-square-unit",
                "a b c d",
                quarters.from_triangles(quarters.QUARTERS),
                (("square-cut-twice-4-triangles", 0),),
                drawn=_QUARTERS,
                dark=(1, 3),
            ),
            Topic(
                shape.hourglass.SHAPE,
                shape.hourglass.SHAPE.name,
                "a b",
                quarters.from_triangles(quarters.HOURGLASS),
                (("square-cut-twice-4-triangles", 0),),
                drawn=(0, 1, 0, 1),
            ),
            Topic(
                shape.split.SHAPE,
                "split-square",
                "a b c",
                quarters.from_triangles(quarters.SPLIT),
                (("large-square-cut-once-2", 0), ("small-square-cut-twice-4", 1)),
                drawn=(0, 1, 2),
            ),
            Topic(
                shape.geese.SHAPE,
                "flying-geese",
                "a on b",
                geese.from_triangles,
                (("goose-square-cut-twice-4", 0), ("sky-square-cut-once-2", 1)),
                TWO,
                (1, 0, 2),
                GEESE,
                shown=SHOWN_WIDE,
                dark=(0,),
            ),
            Topic(
                shape.diamond.SHAPE,
                "square-in-a-square",
                "a on b",
                patches.diamond,
                (("middle-square", 0), ("corner-square-cut-once-2", 1)),
                drawn=(1, 2, 0, 3, 4),
                dark=(0,),
            ),
            Topic(
                shape.triangle_in_square.SHAPE,
                "triangle-in-a-square",
                "a on b",
                peaks.triangle_in_square,
                drawn=(1, 0, 2),
                common=NONE,
                shown=(Fraction(4), Fraction(10)),
                dark=(0,),
            ),
            Topic(
                shape.log.SHAPE,
                "log-cabins",
                "centre a with b b c c rounds 2",
                logs.log_cabin,
                drawn=logs.DRAWN,
                common=NONE,
                shown=(Fraction(10), Fraction(25)),
                dark=(0, 2),
            ),
            Topic(
                shape.star45.SHAPE,
                "eight-point-stars",
                "points a b ground c corners d",
                eight_point.single_diamonds,
                drawn=eight_point.DRAWN,
                common=NONE,
                shown=(Fraction(12), Fraction(30)),
                dark=(1,),
            ),
            Topic(
                shape.curve.SHAPE,
                "quarter-circles-and-fans",
                "b in a",
                curves.quarter_circles,
                (("surround-square-for-its-template", 0), ("quarter-circle-square-for-its-template", 1)),
                common=THIRDS,
                shown=SHOWN_THIRDS,
            ),
        ),
        _lesson(
            "two at a time",
            Topic(
                shape.half.SHAPE,
                "half-square-triangles",
                "a b",
                halves.two_at_a_time,
                (("both-squares", 0),),
                oversized=True,
            ),
            Topic(
                shape.hourglass.SHAPE,
                shape.hourglass.SHAPE.name,
                "a b",
                quarters.two_at_a_time(quarters.HOURGLASS),
                (("both-squares", 0),),
                drawn=(0, 1, 0, 1),
                oversized=True,
            ),
            Topic(
                shape.quarters.SHAPE,
                "quarter-square-unit",
                "a b c d",
                quarters.two_at_a_time(quarters.QUARTERS),
                (("all-four-squares", 0),),
                drawn=_QUARTERS,
                oversized=True,
                dark=(1, 3),
            ),
            Topic(
                shape.split.SHAPE,
                "split-square",
                "a b c",
                quarters.two_at_a_time(quarters.SPLIT),
                (("large-2-squares", 0), ("small-1-square-of-each", 1)),
                drawn=(0, 1, 2),
                oversized=True,
            ),
        ),
        _lesson(
            "four at a time",
            Topic(
                shape.geese.SHAPE,
                "flying-geese",
                "a on b",
                geese.four_at_a_time,
                (("goose-1-large-square", 0), ("sky-4-small-squares", 1)),
                TWO,
                (1, 0, 2),
                GEESE,
                shown=SHOWN_WIDE,
                oversized=True,
                dark=(0,),
            ),
        ),
        _lesson(
            "eight at a time",
            Topic(
                shape.half.SHAPE,
                "half-square-triangles",
                "a b",
                halves.eight_at_a_time,
                (("both-squares", 0),),
                oversized=True,
            ),
        ),
        _lesson(
            "stitch and flip",
            Topic(
                shape.geese.SHAPE,
                "flying-geese",
                "a on b",
                corners.corner_by_corner,
                (("goose-1-rectangle", 0), ("sky-2-squares", 1)),
                TWO,
                (1, 0, 2),
                GEESE,
                shown=SHOWN_WIDE,
                dark=(0,),
            ),
            Topic(
                shape.snowball.SHAPE,
                "snowball-corners",
                "a with b",
                corners.corner_by_corner,
                (("base-square", 0), ("corner-squares", 1)),
                common=THIRDS,
                shown=SHOWN_THIRDS,
            ),
            Topic(
                shape.diamond.SHAPE,
                "square-in-a-square",
                "a on b",
                corners.corner_by_corner,
                (("base-square", 0), ("4-corner-squares", 1)),
                drawn=(1, 2, 0, 3, 4),
                dark=(0,),
            ),
            Topic(shape.half.SHAPE, "half-square-triangle", "a b", corners.corner_by_corner, (("both-squares", 0),)),
        ),
        _lesson(
            "strip set",
            Topic(
                shape.rails.SHAPE,
                "strips-one-above-the-other",
                "a b c",
                strips.rails,
                (("strip-width", 0),),
                drawn=tuple(range(200)),
                common=THIRDS,
                shown=SHOWN_THIRDS,
                dark=(0, 2),
            ),
            Topic(
                shape.bars.SHAPE,
                "strips-side-by-side",
                "a b c",
                strips.rails,
                (("strip-width", 0),),
                drawn=tuple(range(200)),
                common=THIRDS,
                shown=SHOWN_THIRDS,
                dark=(0, 2),
            ),
            Topic(
                shape.checker.SHAPE,
                "four-patch-and-checkerboard",
                "2 x 2 a b",
                strips.checker,
                (("strip-width", 0),),
                dark=(0,),
                shown=(Fraction(4), Fraction(10)),
            ),
            Topic(
                shape.star45.SHAPE,
                "stars-of-many-diamonds",
                "points a b c rows 3 ground d",
                stars.many_diamonds,
                drawn=stars.DRAWN,
                common=NONE,
                shown=(Fraction(16), Fraction(40)),
                dark=(0, 2),
            ),
        ),
        _lesson(
            "foundation",
            Topic(
                shape.geese.SHAPE,
                "patches-on-a-paper",
                "a on b",
                foundation.papers,
                proportion=TWO,
                drawn=(1, 0, 2),
                shown=SHOWN_WIDE,
                common=NONE,
                dark=(0,),
            ),
        ),
        _lesson(
            "over papers",
            Topic(
                shape.hexagons.SHAPE,
                "patches-over-papers",
                "a b across 2",
                papers.over_papers,
                common=NONE,
                shown=(Fraction(4), Fraction(12)),
            ),
        ),
        _seam_lesson("set-in seams", "a-square-set-into-a-corner", set_in.into_a_corner),
        _seam_lesson("partial seams", "four-strips-around-a-square", partial.round_a_square),
        _seam_lesson("mitered corners", "the-corner-of-a-border", miters.border_corner, sized=False),
        _seam_lesson("continuous bias", "a-bias-strip-from-a-square", bias.from_a_square, dark=(), sized=False),
        _lesson(
            "applique",
            Topic(
                shape.square.SHAPE,
                "a-piece-on-its-ground",
                "a",
                applique.turned_and_raw,
                drawn=(0,),
                common=NONE,
                shown=(Fraction(6), Fraction(15)),
            ),
        ),
    )
}
