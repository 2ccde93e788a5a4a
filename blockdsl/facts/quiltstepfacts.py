"""The steps of putting a quilt together as plain data: what each takes, what is done, what comes out.

Nothing here is said in words; the layer `wording` says it. What lies in a step is told by its place in the quilt's own
lists of kinds and pieces, so that one record stands for all that are alike.
"""

from __future__ import annotations

from typing import Annotated, Literal, TypeAlias

from msgspec import field

from blockdsl.cutting.sizes import Extent
from blockdsl.facts.block_landmark import BlockLandmark, Where
from blockdsl.geometry import Exact
from blockdsl.model.quilt import RowKind
from blockdsl.record import Count, Record, Rest, says

Makes = Literal[
    "rows", "center", "border", "backing", "layers", "quilting", "sleeve", "binding", "label"
]  # fmt: skip
"""What a step makes. `rows`: rows, columns, diagonal rows or strips of sashing that are alike."""

Way = Literal["across", "down", "along"]
"""The way in which parts are sewn one to the other: left to right, top to bottom, or end to end where no way is up."""


class QuiltPart(Record, frozen=True, omit_defaults=True):
    """One thing that goes into a row: a block of a kind, or a piece of plain cloth, by its place in the quilt's lists.

    `landmarks` say how it lies in the row as that is laid out; none where it looks the same in every way. `corner` is
    where the square corner of a triangle lies.
    """

    what: Literal["block", "cloth"]
    index: int
    colourway: str = field(name="colourway", default="")
    landmarks: tuple[BlockLandmark, ...] = ()
    corner: Where | None = None


class QuiltTake(Record, frozen=True):
    """So many of one thing for one result, however each of them lies."""

    what: Literal["block", "cloth"]
    index: int
    colourway: str = field(name="colourway")
    count: int


class QuiltGroup(Record, frozen=True):
    """Parts in order, so many times over."""

    parts: tuple[QuiltPart, ...]
    times: int


class LayAlike(Record, frozen=True, tag_field="do", tag="lay", omit_defaults=True):
    """Every block of a kind lies alike in what is made here; `as_in` is the earlier step that said the same, or 0."""

    part: QuiltPart
    as_in: int


class SewInOrder(Record, frozen=True, tag_field="do", tag="sew in order", omit_defaults=True):
    """Sew parts one to the other."""

    way: Way
    groups: tuple[QuiltGroup, ...]


class PressRows(Record, frozen=True, tag_field="do", tag="press", omit_defaults=True):
    """Press the seams within rows: open, toward the sashes or plain squares, or toward one end and the other.

    `first` are the numbers of the rows pressed toward the left or the top, `second` those toward the right or bottom.
    """

    toward: Literal["open", "sashes", "plain squares", "ends"]
    first: tuple[int, ...] = ()
    second: tuple[int, ...] = ()


class TrimStrips(Record, frozen=True, tag_field="do", tag="trim strips", omit_defaults=True):
    """Measure rows end to end and trim `count` plain strips (a piece) to that; `length` is what it should be."""

    rows: RowKind
    length: Exact
    piece: int
    count: int


class JoinRows(Record, frozen=True, tag_field="do", tag="join rows", omit_defaults=True):
    """Sew rows together, the first at the top or at the left.

    `between`: what lies between each two (and outside them, with `outer`): strips of cornerstones and sashes, plain
    strips, or nothing. `strips` are how many. `at_blocks` are for dropped columns: which cornerstones lie at the sashes
    of which columns. `shifts` say of rows on point how many blocks each begins to the left of the one before, and ends
    to the right of it: 1 or -1.
    """

    kind: RowKind
    count: int
    way: Way
    between: Literal["", "posted", "plain"]
    strips: int
    outer: bool
    nest: bool
    toward: Literal["open", "strips", "last"]
    cornerstones: tuple[tuple[tuple[int, ...], tuple[int, ...]], ...] = ()
    halfway: bool = False
    shifts: tuple[tuple[int, int], ...] = ()


class CornerTriangles(Record, frozen=True, tag_field="do", tag="corner triangles", omit_defaults=True):
    """Sew a triangle (a piece) by its long edge to each corner; `onto` is the block where that is all there is."""

    piece: int
    onto: QuiltPart | None
    open: bool


class MeasuredBorder(Record, frozen=True, tag_field="do", tag="measured border", omit_defaults=True):
    """Strips trimmed to what the top measures and sewn to two sides, then to the other two.

    `first` and `second` are the lengths with their allowances, each with the piece that is trimmed. With `corner` (a
    piece) the second strips are as long as the top without border, a square at each end.
    """

    sides_first: bool
    first: tuple[Exact, int]
    second: tuple[Exact, int]
    corner: int | None
    first_ring: bool
    open: bool


class MitredBorder(Record, frozen=True, tag_field="do", tag="mitred border", omit_defaults=True):
    """Four strips whose corners are mitred: the pieces of those at the sides and of those at top and bottom.

    `beyond` is how far a strip extends beyond the edge of the top at both ends.
    """

    sides: int
    ends: int
    beyond: Exact
    first_ring: bool
    open: bool


class PiecedBorder(Record, frozen=True, tag_field="do", tag="pieced border", omit_defaults=True):
    """Units sewn to strips: `part` lies so with the outer edge of the strip at the top; how many for each side."""

    part: QuiltPart
    sides: int
    ends: int
    sides_first: bool
    corner: int | None
    first_ring: bool
    open: bool


QuiltAction: TypeAlias = (
    LayAlike
    | SewInOrder
    | PressRows
    | TrimStrips
    | JoinRows
    | CornerTriangles
    | MeasuredBorder
    | MitredBorder
    | PiecedBorder
)


class QuiltStepFacts(Record, frozen=True, kw_only=True):
    """One step of putting the quilt together.

    Of a diagonal row with triangles the length that comes out is that of its blocks.
    """

    number: Count
    makes: Makes
    count: Annotated[Count, says("How many are made.")] = 1
    takes: Annotated[tuple[QuiltTake, ...], says("What is taken for one.")] = ()
    actions: Annotated[
        tuple[QuiltAction, ...],
        says(
            "What is done, in order. Lengths are as they are measured, with seam allowances; pieces are places in the "
            "quilt's list."
        ),
    ] = ()
    finished: Annotated[Extent | None, says("The size of what comes out; null where nothing is measured.")] = None
    unfinished: Annotated[Extent | None, says("What comes out measures, raw edge to raw edge.")] = field(
        name="measures", default=None
    )
    rows: Annotated[tuple[Rest, ...], says("The rows that it is about, by their places in the list.")] = ()
    ring: Annotated[Rest, says("The border that it is about, 0 for none.")] = field(name="round", default=0)
    of_top: Annotated[
        bool, says("Untrue for finishing, whose numbers are those of the quilt's backing, binding and so on.")
    ] = True

    @property
    def measures(self) -> Extent | None:
        """What it should measure afterwards, raw edge to raw edge."""
        return self.unfinished
