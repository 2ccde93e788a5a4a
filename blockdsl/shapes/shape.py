"""What a shape of the language is.

A new shape is one file beside this one and one line in `listed`: grammar, checks, cutting, help and the
language reference learn of it from there.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from msgspec import Struct

from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.arc import Curved
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import ShapeUse
from blockdsl.shapes.words import WordReader

Cloth = tuple[str, Polygon]
"""A fabric and the finished outline that it fills."""


class Round(Struct, frozen=True):
    """What is sewn on in one go to what there is already: which round it is, and how many patches at a time."""

    kind: str
    number: int
    added: tuple[int, ...]


class DrawnUnit(Struct, frozen=True):
    """A unit in a picture: its outlines in the order of drawing, its fabric by role, its width, the lesson's own words.

    Roles are given by the letters a, b, c … where it is written again.
    """

    outlines: Sequence[Polygon]
    fabrics: Mapping[int, str]
    width: Exact
    writes: str


class Shape(Struct, frozen=True):
    """One shape of the language.

    `usage` is how it is written, `title` its name in the trade. `proportion` is width over height, or None
    when any box will do; `proportion_of` tells it where it depends on the words. `read` gives None when the words
    do not fit. `draw` fills a box width × height (origin top left) and gives the patches in reading order, or, where
    there are `rounds` about a first patch, in the order of sewing. `count` tells about how many there will be, for
    shapes that draw as many as the box takes, and `measured` what of their patches should fall on the ruler: what it
    rounds up there adds up along a row. `parts` are the runs of patches, each by its first and the one after its last,
    that are sewn by themselves before they are joined. `former` are names that it had once, and `also_called` words of
    the trade that a beginner may write for it.

    What sewing, cutting and lessons ask of it: `middle` is the patch, in the order of drawing, from which the seams of
    the others are pressed outward; `turning` the roles that lie clockwise round its middle; `family` that of a block
    that is this shape all over; `taught_as` the shape whose lesson teaches it; `upright_in` the ways of making that
    keep a print as the unit is drawn. Of a drawn unit's outlines `counts` tells how many strips it has, or rows and
    columns, `corners` which corners have a patch of their own, and `written_as` how it is written again.
    """

    name: str
    usage: str
    title: str
    summary: str
    proportion: Fraction | None
    read: Callable[[WordReader], ShapeUse | None]
    draw: Callable[[ShapeUse, Exact, Exact], tuple[Cloth, ...]]
    proportion_of: Callable[[ShapeUse], Fraction] | None = None
    rounds: Callable[[ShapeUse], tuple[Round, ...]] | None = None
    bend: Callable[[ShapeUse, Exact, Exact], tuple[Curved | None, ...]] | None = None
    count: Callable[[ShapeUse, Exact, Exact], int] | None = None
    measured: Callable[[ShapeUse, Exact, Exact], Exact] | None = None
    parts: Callable[[ShapeUse, Exact, Exact], tuple[tuple[int, int], ...]] | None = None
    former: tuple[str, ...] = ()
    also_called: tuple[str, ...] = ()
    middle: int | None = None
    turning: tuple[int, ...] = ()
    family: str = ""
    taught_as: str = ""
    upright_in: tuple[str, ...] = ()
    counts: Callable[[Sequence[Polygon]], tuple[int, ...]] | None = None
    corners: Callable[[Sequence[Polygon]], tuple[str, ...]] | None = None
    written_as: Callable[[DrawnUnit], str] | None = None

    def wants(self, filling: ShapeUse) -> Fraction | None:
        """Width over height of these words: that of the shape, or what the words themselves come to."""
        return self.proportion_of(filling) if self.proportion_of else self.proportion
