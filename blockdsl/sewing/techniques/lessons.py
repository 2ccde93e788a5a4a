"""All techniques: for each method its lesson, and in it a topic for each shape that the method makes.

A new topic is a function that gives its steps and an entry here; facts, pages and books learn of it from here.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from blockdsl.sewing.techniques import (
    applique,
    corners,
    curves,
    foundation,
    geese,
    halves,
    papers,
    patches,
    quarters,
    stars,
    strips,
)
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


def _lesson(method: str, title: str, about: str, *topics: Topic) -> Lesson:
    return Lesson(method, title, about, {topic.shape: topic for topic in topics})


def _plain(shape: str, writes: str) -> Topic:
    return Topic(
        shape, "Squares and rectangles", writes, patches.squares, proportion=TWO, common=NONE, shown=SHOWN_WIDE
    )


_QUARTERS = (0, 1, 2, 3)

LESSONS: Mapping[str, Lesson] = {
    lesson.method: lesson
    for lesson in (
        _lesson(
            "cut patches",
            "Piecing from single patches",
            "Every patch is cut by itself, with its seam allowance, and sewn to its neighbour. It fits every design "
            "and wastes no cloth; triangles have edges that stretch, so cut and handle them gently.",
            _plain("square", "checker 1 x 2 a b"),
            Topic(
                "half",
                "Half-square triangles",
                "half a b",
                halves.from_triangles,
                (("Square, cut once → 2 triangles", 0),),
            ),
            Topic(
                "quarters",
                "Quarter-square unit",
                "quarters a b c d",
                quarters.from_triangles(quarters.QUARTERS),
                (("Square, cut twice → 4 triangles", 0),),
                drawn=_QUARTERS,
                dark=(1, 3),
            ),
            Topic(
                "hourglass",
                "Hourglass",
                "hourglass a b",
                quarters.from_triangles(quarters.HOURGLASS),
                (("Square, cut twice → 4 triangles", 0),),
                drawn=(0, 1, 0, 1),
            ),
            Topic(
                "split",
                "Split square",
                "split a b c",
                quarters.from_triangles(quarters.SPLIT),
                (("Large: square, cut once → 2", 0), ("Small: square, cut twice → 4", 1)),
                drawn=(0, 1, 2),
            ),
            Topic(
                "geese",
                "Flying geese",
                "geese a on b",
                geese.from_triangles,
                (("Goose: square, cut twice → 4", 0), ("Sky: square, cut once → 2", 1)),
                TWO,
                (1, 0, 2),
                GEESE,
                shown=SHOWN_WIDE,
                dark=(0,),
            ),
            Topic(
                "diamond",
                "Square in a square",
                "diamond a on b",
                patches.diamond,
                (("Middle square", 0), ("Corner: square, cut once → 2", 1)),
                drawn=(1, 2, 0, 3, 4),
                dark=(0,),
            ),
            Topic(
                "curve",
                "Quarter circles and fans",
                "curve b in a",
                curves.quarter_circles,
                (("Surround: square for its template", 0), ("Quarter circle: square for its template", 1)),
                common=THIRDS,
                shown=SHOWN_THIRDS,
            ),
        ),
        _lesson(
            "two at a time",
            "Two at a time",
            "Two squares are sewn together on both sides of a diagonal line and cut apart between the seams. The "
            "stretchy edges are sewn before they are cut, so they cannot stretch.",
            Topic(
                "half", "Half-square triangles", "half a b", halves.two_at_a_time, (("Both squares", 0),), roomy=True
            ),
            Topic(
                "hourglass",
                "Hourglass",
                "hourglass a b",
                quarters.two_at_a_time(quarters.HOURGLASS),
                (("Both squares", 0),),
                drawn=(0, 1, 0, 1),
                roomy=True,
            ),
            Topic(
                "quarters",
                "Quarter-square unit",
                "quarters a b c d",
                quarters.two_at_a_time(quarters.QUARTERS),
                (("All four squares", 0),),
                drawn=_QUARTERS,
                roomy=True,
                dark=(1, 3),
            ),
            Topic(
                "split",
                "Split square",
                "split a b c",
                quarters.two_at_a_time(quarters.SPLIT),
                (("Large: 2 squares", 0), ("Small: 1 square of each", 1)),
                drawn=(0, 1, 2),
                roomy=True,
            ),
        ),
        _lesson(
            "four at a time",
            "Four at a time",
            "One large square and four small ones give four flying geese without a triangle to cut and without waste.",
            Topic(
                "geese",
                "Flying geese",
                "geese a on b",
                geese.four_at_a_time,
                (("Goose: 1 large square", 0), ("Sky: 4 small squares", 1)),
                TWO,
                (1, 0, 2),
                GEESE,
                shown=SHOWN_WIDE,
                roomy=True,
                dark=(0,),
            ),
        ),
        _lesson(
            "eight at a time",
            "Eight at a time",
            "Two large squares and four seams give eight half-square triangle units, all alike.",
            Topic(
                "half", "Half-square triangles", "half a b", halves.eight_at_a_time, (("Both squares", 0),), roomy=True
            ),
        ),
        _lesson(
            "stitch and flip",
            "Stitch and flip",
            "A small square is sewn across the corner of a larger piece, trimmed and pressed over. There are no "
            "triangles to cut; the corners cut off are left over.",
            Topic(
                "geese",
                "Flying geese",
                "geese a on b",
                corners.corner_by_corner,
                (("Goose: 1 rectangle", 0), ("Sky: 2 squares", 1)),
                TWO,
                (1, 0, 2),
                GEESE,
                shown=SHOWN_WIDE,
                dark=(0,),
            ),
            Topic(
                "snowball",
                "Snowball corners",
                "snowball a with b",
                corners.corner_by_corner,
                (("Base square", 0), ("Corner squares", 1)),
                common=THIRDS,
                shown=SHOWN_THIRDS,
            ),
            Topic(
                "diamond",
                "Square in a square",
                "diamond a on b",
                corners.corner_by_corner,
                (("Base square", 0), ("4 corner squares", 1)),
                drawn=(1, 2, 0, 3, 4),
                dark=(0,),
            ),
            Topic("half", "Half-square triangle", "half a b", corners.corner_by_corner, (("Both squares", 0),)),
        ),
        _lesson(
            "strip set",
            "Strip sets",
            "Long strips are sewn side by side and cut across into segments: many seams in one, all segments alike.",
            Topic(
                "rails",
                "Strips one above the other",
                "rails a b c",
                strips.rails,
                (("Strip width", 0),),
                drawn=tuple(range(200)),
                common=THIRDS,
                shown=SHOWN_THIRDS,
                dark=(0, 2),
            ),
            Topic(
                "bars",
                "Strips side by side",
                "bars a b c",
                strips.rails,
                (("Strip width", 0),),
                drawn=tuple(range(200)),
                common=THIRDS,
                shown=SHOWN_THIRDS,
                dark=(0, 2),
            ),
            Topic(
                "checker",
                "Four-patch and checkerboard",
                "checker 2 x 2 a b",
                strips.checker,
                (("Strip width", 0),),
                dark=(0,),
                shown=(Fraction(4), Fraction(10)),
            ),
            Topic(
                "star45",
                "Stars of many diamonds",
                "star45 points a b c rows 3 ground d",
                stars.many_diamonds,
                drawn=stars.DRAWN,
                common=NONE,
                shown=(Fraction(16), Fraction(40)),
                dark=(0, 2),
            ),
        ),
        _lesson(
            "foundation",
            "Foundation piecing",
            "Patches are sewn to a printed paper along its lines, so that even narrow points come out exactly. They "
            "are cut "
            "roomy and trimmed as you go. The cloth shows the mirror image of the print.",
            Topic(
                "geese",
                "Patches on a paper",
                "geese a on b",
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
            "English paper piecing",
            "Every piece is folded round a paper of its finished size, tacked, and sewn to the next by hand, fold to "
            "fold. Set-in corners are as easy as straight seams, and all of it can be done away from the machine.",
            Topic(
                "hexagons",
                "Patches over papers",
                "hexagons a b across 2",
                papers.over_papers,
                common=NONE,
                shown=(Fraction(4), Fraction(12)),
            ),
        ),
        _lesson(
            "applique",
            "Appliqué",
            "Pieces of any outline are laid on a ground that is pieced already, and sewn down round their edges: "
            "leaves, letters, curves that no seam could join.",
            Topic(
                "square",
                "A piece on its ground",
                "square a",
                applique.turned_and_raw,
                drawn=(0,),
                common=NONE,
                shown=(Fraction(6), Fraction(15)),
            ),
        ),
    )
}
