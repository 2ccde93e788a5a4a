"""What a step says: what it takes, how that lies in what it makes, which seams are sewn and pressed."""

from __future__ import annotations

from msgspec import Struct

from blockdsl.geometry import Exact, Point, Polygon
from blockdsl.geometry.arc import Bend
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import Patch
from blockdsl.sewing.order import SeamKind
from blockdsl.sewing.part_name import PartName
from blockdsl.sewing.steps.action import Action

_UP = Point(Fraction(0), Fraction(-1))


class Ingredient(Struct, frozen=True):
    """One part that a step takes, where it lies in what the step makes.

    `step` is the number of the step that made it, or None for a single patch; `name` what it is called (a patch by
    its letter), `part` the same as data, None for a patch; `fabric` a single patch's fabric. `outline` is None where
    the part's outline meets itself or has curves. `patches` are numbers of the block's patches, `picture` the same
    patches, moved, and `letters` theirs. `top` is the way in which what was its top when it was made points now.
    """

    name: str
    step: int | None
    fabric: str | None
    patches: tuple[int, ...]
    picture: tuple[Patch, ...]
    outline: Polygon | None
    letters: tuple[str, ...] = ()
    top: Point = _UP
    part: PartName | None = None


class Fan(Struct, frozen=True):
    """A place inside a seam where many seams meet, as in the middle of a star, and all are pressed the same way round.

    From the start of the seam to `place` its allowances are pressed as `toward` says, beyond it to the other part;
    `fabrics` are those of the patches at the place that the two halves are pressed toward, `across` those that they
    are pressed away from.
    """

    place: Point
    fabrics: tuple[str, str]
    across: tuple[str, str]


class ByRow(Struct, frozen=True):
    """Rows of one step, by their numbers from 1: those pressed as the seam says, and the others the other way."""

    rows: tuple[int, ...]
    others: tuple[int, ...]


class StepSeam(Struct, frozen=True):
    """One seam: its `line` from where sewing starts, through the corners at which the work is turned, to its end.

    A partial seam is sewn from `begin` (else the start of the line) to `stop`. `parts` are the two things joined, as
    numbers of the step's stages count them, and `over` leads across from the first to the second; `toward` is 0 or 1,
    the one that the allowances are pressed to, or None when the seam is pressed open; `arrow` is the direction of
    pressing (of no particular length). `meetings` is how many seams of the two sides meet in this one, and `unnested`
    how many of them lie the same way. A curved seam runs along `bend` from the start of the line to its end. `dots`
    are those of its ends where something is set in later: there it stops a seam allowance from the edge.
    With a `fan` it is pressed to its other part from there on.
    """

    line: tuple[Point, ...]
    over: Point
    kind: SeamKind
    stop: Point | None
    begin: Point | None
    parts: tuple[int, int]
    toward: int | None
    arrow: Point
    meetings: int
    unnested: int
    bend: Bend | None = None
    dots: tuple[Point, ...] = ()
    fan: Fan | None = None
    by_row: ByRow | None = None


class Stage(Struct, frozen=True):
    """Parts joined one after the other by parallel seams.

    A part below the number of ingredients is that ingredient; one beyond is an earlier stage, counted on from there.
    `closes` are stretches of partial seams, from where sewing stopped to the end, that are sewn afterwards.
    """

    parts: tuple[int, ...]
    seams: tuple[StepSeam, ...]
    closes: tuple[tuple[Point, Point], ...]


class Variant(Struct, frozen=True):
    """What a step makes, as it lies in its first place; the second variant of a step is the first one's mirror image.

    `cells` are the places that it fills in the block's grid: (column, row, columns, rows), from 1; none when it fills
    no whole cells. `outline` is None where it meets itself.
    """

    count: int
    extent: tuple[Exact, Exact]
    outline: Polygon | None
    picture: tuple[Patch, ...]
    patches: tuple[int, ...]
    ingredients: tuple[Ingredient, ...]
    stages: tuple[Stage, ...]
    cells: tuple[tuple[int, int, int, int], ...]

    @property
    def is_rectangle(self) -> bool:
        """Whether it fills its box, so that its sides can be measured."""
        return self.outline is not None and len(self.outline) == 4 and all(
            corner.x in (0, self.extent[0]) and corner.y in (0, self.extent[1]) for corner in self.outline
        )  # fmt: skip


class MakingStep(Struct, frozen=True):
    """One step: `count` of one thing; of what a method makes mirror images together.

    `unit` is the number of its unit in the making, if any. `method` is `cut patches` for what is sewn seam by seam;
    else the unit comes out of the method as a whole, and there are no ingredients, no stages and no `actions`.
    `sections` are those of foundation papers, by letter: one that is sewn to its paper, or several that are joined,
    with ingredients and stages.
    """

    number: int
    makes: PartName
    method: str
    unit: int | None
    variants: tuple[Variant, ...]
    actions: tuple[Action, ...] = ()
    sections: tuple[str, ...] = ()

    @property
    def count(self) -> int:
        """How many are made, of both hands together."""
        return sum(variant.count for variant in self.variants)

    @property
    def seam(self) -> SeamKind:
        """The hardest seam in it."""
        kinds = {seam.kind for variant in self.variants for stage in variant.stages for seam in stage.seams}
        return next((kind for kind in ("set-in", "partial", "curved") if kind in kinds), "straight")
