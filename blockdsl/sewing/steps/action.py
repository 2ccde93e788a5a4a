"""What a maker does in a step, one action after the other; words and pictures are both made from it.

Parts are numbered as in `Stage`: below the number of ingredients an ingredient, beyond it what an earlier stage of the
same step made. Top, bottom, left and right are those of the pictures. Lengths are exact and finished unless said.
"""

from __future__ import annotations

import re
from typing import Literal, TypeAlias

from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.record import Record

Position = Literal[
    "top", "upper-right", "right", "lower-right", "bottom", "lower-left", "left", "upper-left"
]  # fmt: skip
LandmarkKind = Literal[
    "edge", "corner", "middle", "point", "square-corner", "sharp-corner", "a-sharp-corner",
    "long-edge", "short-edge", "upright-edges", "level-edges", "mark",
]  # fmt: skip
Edge = Literal["", "long", "short", "longer", "middle", "shortest", "curved", "all"]
"""An edge of a triangle, a trapezoid or a curved patch, where it has more than one kind."""
Meeting = Literal["", "nest", "match"]


class Landmark(Record, frozen=True, omit_defaults=True):
    """What shows how a part lies: `fabric` along whole edges, at corners or in the middles of edges, at `places`.

    Where fabrics are alike, the `letter` of the patches there. `point` is that of a goose; `mark` a pin at
    the top, as made. Of a single patch corners and edges by their form.
    """

    kind: LandmarkKind
    places: tuple[Position, ...]
    fabric: str = ""
    letter: str = ""


def _hyphenated(name: str) -> str:
    return re.sub(r"(?<!^)(?=[A-Z])", "-", name).lower()


class Done(Record, frozen=True, tag_field="do", tag=_hyphenated, omit_defaults=True):
    """One thing that is done; what is as usual is left out of its JSON."""


class Crease(Done, frozen=True):
    """Crease the middle of an edge of `base` and of the long edges of `parts`, to be matched."""

    base: int
    parts: tuple[int, ...]


class Dot(Done, frozen=True):
    """Mark dots a seam allowance from both edges, at every corner of the patches among `parts`."""

    parts: tuple[int, ...]


class Lay(Done, frozen=True):
    """Lay parts on the table, right side up, each with its landmarks; none where it looks the same every way."""

    parts: tuple[int, ...]
    landmarks: tuple[tuple[Landmark, ...], ...] = ()
    on_point: bool = False


class Turn(Done, frozen=True):
    """`part` lies as `like` does, rotated by so many quarter turns clockwise."""

    part: int
    like: int
    quarters: int


class Sew(Done, frozen=True):
    """Sew `part` to an edge of `base`: right sides together, edges even, one seam.

    `side` is the edge of the base as it lies, `edge` that of the part. `landmarks` say how the part lies once it is
    sewn and opened. `meeting`: whether seams meet along this one. `out`: at each end of the seam how far the part
    extends beyond the base, below 0 where the base extends; nothing when both ends are even. `dots` are the ends at
    which the seam stops at a dot. `along` are the ingredients that lie along the seam in a base sewn earlier. `faces`
    are the fabrics along the edges of the part and of the base, where their seam lies askew and no side has a plain
    name. `seam` is (stage, seam).
    """

    part: int
    base: int
    side: Position
    seam: tuple[int, int]
    edge: Edge = ""
    landmarks: tuple[Landmark, ...] = ()
    meeting: Meeting = ""
    out: tuple[tuple[Position, Fraction], ...] = ()
    dots: tuple[Position, ...] = ()
    along: tuple[int, ...] = ()
    faces: tuple[str, ...] = ()


class Place(Done, frozen=True):
    """Place `part` on `base`, two patches that are mirror images in their seam, and sew one `edge`.

    `landmarks` show how the base lies; `side` is where the seam is.
    """

    part: int
    base: int
    side: Position
    seam: tuple[int, int]
    edge: Edge
    landmarks: tuple[Landmark, ...] = ()
    says_side: bool = False
    offset: bool = False
    dots: tuple[Position, ...] = ()


class Row(Done, frozen=True):
    """Sew parts one to the other, in order from left to right or from top to bottom, each with its landmarks.

    `dots` are for each seam the ends at which it stops at a dot; `zigzag` says that every seam turns at many dots.
    """

    parts: tuple[int, ...]
    way: Position
    stage: int
    landmarks: tuple[tuple[Landmark, ...], ...] = ()
    meeting: Meeting = ""
    dots: tuple[tuple[Position, ...], ...] = ()
    zigzag: bool = False


class Partial(Done, frozen=True):
    """Sew `part` to the `side` edge of `base` from the end `start` for `length` only, and leave the rest open.

    `even` is the end at which both are even.
    """

    part: int
    base: int
    side: Position
    seam: tuple[int, int]
    even: Position
    length: Exact
    rest: Position
    edge_length: Exact | None = None


class Fold(Done, frozen=True):
    """Fold the loose end of `part`, sewn by a partial seam, out of the way of the next one."""

    part: int


class Close(Done, frozen=True):
    """Sew the open rest of a partial seam of `part`, from the stop to the `end`, to the `onto` along it now."""

    part: int
    onto: tuple[int, ...]
    side: Position
    end: Position
    seam: tuple[int, int]


class SetIn(Done, frozen=True):
    """Set `part` into an inner corner at `side`, sewing each of its edges from the dot there outward."""

    part: int
    base: int
    side: Position
    seam: tuple[int, int]
    landmarks: tuple[Landmark, ...] = ()
    turns: int = 1


class Curve(Done, frozen=True):
    """Sew two parts along a curved edge: the one with the inward curve on top."""

    upper: int
    under: int
    seam: tuple[int, int]
    first: bool = False
    landmarks: tuple[Landmark, ...] = ()


class Baste(Done, frozen=True):
    """Fold the patches among the ingredients round their papers and baste them; the seams that follow are whipped."""


class Papers(Done, frozen=True):
    """What is done with papers at the end: taken out, or left in for the next step."""

    out: bool = False


class Press(Done, frozen=True):
    """Press seams, each `toward` one of its two parts, or open where that is null. `seams` are (stage, seam)."""

    seams: tuple[tuple[int, int], ...]
    toward: tuple[int | None, ...]


class Trim(Done, frozen=True):
    """Trim the dog-ears; two triangles that make a rectangle to its `sides`, unfinished, too.

    `points`: the seam comes to a seam allowance inside two opposite corners, not into them.
    """

    sides: tuple[Exact, Exact] | None = None
    points: bool = False


class Pin(Done, frozen=True):
    """Pin a mark to the top edge, or the one at `side` where none is at the top: it shows later how the result lies."""

    side: Position = "top"


class Measure(Done, frozen=True):
    """What comes out, edge to edge, unfinished.

    The sides of a rectangle; of anything else the length of one edge, or how far it is across from one long edge to
    the other, `about` so much where its ends are slanted. `along` is where that edge lies, or that it is the `long` one
    where nothing says how the result lies. `points` is how many points of patches touch its outer edges, a seam
    allowance inside them.
    """

    sides: tuple[Exact, Exact] | None = None
    along: Position | Literal["long"] | None = None
    length: Exact | None = None
    across: bool = False
    about: bool = False
    points: int = 0


Action: TypeAlias = (
    Baste
    | Papers
    | Pin
    | Crease
    | Dot
    | Lay
    | Turn
    | Sew
    | Place
    | Row
    | Partial
    | Fold
    | Close
    | SetIn
    | Curve
    | Press
    | Trim
    | Measure
)
