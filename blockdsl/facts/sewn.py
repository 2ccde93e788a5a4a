"""How a block is sewn, found when it is first asked for and remembered by the block's content."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property, lru_cache
from itertools import chain
from typing import TYPE_CHECKING

from msgspec import Struct, field
from msgspec.structs import replace

from blockdsl.cutting import Cut, cut_block
from blockdsl.cutting.drift import Drift, DriftFinder
from blockdsl.cutting.resized import FinishedSize
from blockdsl.diagnostics import Problems
from blockdsl.facts.alternatives import alternatives
from blockdsl.facts.blockrecord import Alternative, BlockRecord
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign, UnitPlace
from blockdsl.model.scale import scaled
from blockdsl.sewing import Making, plan_making
from blockdsl.sewing.order import Assembly, Joined, SeamCount, Unsewable, count_seams, find_order
from blockdsl.sewing.steps import MOST_PATCHES, build_steps

if TYPE_CHECKING:
    from blockdsl.facts.stepfacts import StepFacts

_BLOCKS_REMEMBERED = 64


class _Look(Struct, frozen=True, eq=False):
    """All of a block that decides how it is sewn and what is said of it; where it was written does not."""

    content: tuple[object, ...]
    design: BlockDesign
    making: Making
    letters: tuple[str, ...]

    def __eq__(self, other: object) -> bool:
        """By the content alone."""
        return self.content == other.content if isinstance(other, _Look) else NotImplemented

    def __hash__(self) -> int:
        """Equal for equal contents."""
        return hash(self.content)


def _plain(number: Exact) -> object:
    """The same number as something that is quicker to compare: a block has hundreds of them."""
    return (number.numerator, number.denominator) if isinstance(number, Fraction) else number


def _unit(place: UnitPlace) -> tuple[object, ...]:
    numbers = map(_plain, (place.x, place.y, place.width, place.height))
    turn = place.symmetry
    turned = (turn.x_from_x, turn.x_from_y, turn.y_from_x, turn.y_from_y)
    return (place.name, place.filling, *numbers, turned, place.first, place.stop)


def _look(design: BlockDesign, making: Making, letters: tuple[str, ...]) -> _Look:
    choices = tuple((choice.what, choice.method, choice.count) for choice in design.choices)
    sizes = (design.unit, design.seam, design.measure, design.trim, design.columns, design.heights)
    patches = tuple((patch.fabric, patch.curved, *map(_plain, chain(*patch.outline))) for patch in design.patches)
    units = tuple(map(_unit, design.units))
    return _Look((patches, units, design.fabrics, choices, sizes, design.pressing), design, making, letters)


def drift_finder(
    design: BlockDesign, making: Making, letters: Sequence[str], order: Assembly | Unsewable | None
) -> DriftFinder | None:
    """Who sews the block and finds where it drifts; None where there is no order, or a single patch."""
    return DriftFinder(design, making, letters, order) if isinstance(order, Joined) else None


def cuts_at(design: BlockDesign) -> tuple[Cut, ...]:
    """The cut list of a block at another size, with the strip sets of its stars planned for that size."""
    return cut_block(design, plan_making(design, Problems())).cuts


class Sewing:
    """The order and the steps of one block. Equal blocks share them; told apart in `repr` by what facts do not hold."""

    __slots__ = ("_design", "_found", "_letters", "_making", "_steps")

    def __init__(self, design: BlockDesign, making: Making | None, letters: tuple[str, ...]) -> None:
        """Without a making the design is planned anew when it is needed; what is wrong with it has been reported."""
        self._design, self._making, self._letters = design, making, letters
        self._found: _Found | None = None
        self._steps: tuple[StepFacts, ...] | None = None

    def __eq__(self, other: object) -> bool:
        """Blocks whose facts are equal are sewn alike."""
        return isinstance(other, Sewing)

    def __hash__(self) -> int:
        """The same of all."""
        return hash(Sewing)

    def __repr__(self) -> str:
        return f"Sewing({self._design.units}, {self._design.trim})"

    def __reduce__(self) -> tuple[object, ...]:
        # As it was before it goes to another process: neither the making nor an order found here goes with it.
        return Sewing, (self._design, None, self._letters)

    @property
    def is_told(self) -> bool:
        """Whether the block is small enough for its order to be looked for."""
        return len(self._design.patches) <= MOST_PATCHES

    @property
    def unsewable(self) -> tuple[str, ...]:
        """The letters of patches that no seam parts from one another; none when the block can be sewn."""
        order = self._sought().order
        if not isinstance(order, Unsewable):
            return ()
        return tuple(dict.fromkeys(self._letters[patch] for patch in order.patches))

    @property
    def seams(self) -> SeamCount | None:
        """How many seams of each kind there are; None when no order is known."""
        order = self._sought().order
        return None if order is None or isinstance(order, Unsewable) else count_seams(order)

    def drift(self, cuts: tuple[Cut, ...]) -> Drift | None:
        """Where the pieces of the block, cut so, do not come together; remembered for each cut list."""
        found = self._sought()
        if cuts not in found.drifts:
            finder = found.finder
            found.drifts[cuts] = None if finder is None else finder.find(cuts)
        return found.drifts[cuts]

    def drifts_with_templates(self, cuts: Sequence[Cut], letters: Sequence[str]) -> bool:
        """Whether they still do not when these letters are cut round their templates."""
        finder = self._sought().finder
        return finder is not None and finder.drifts(cuts, letters)

    def adds_up(self, size: FinishedSize) -> bool:
        """Whether rounding to the ruler adds up when the block is cut for another size, or with another ruler."""
        found = self._sought()
        if found.finder is None:
            return False
        if not found.look.making.from_slanted_strips:
            return found.finder.drifts_at(size)
        resized = replace(scaled(self._design, size.scale), unit=size.unit, seam=size.seam, measure=size.measure)
        return found.finder.drifts(cuts_at(resized), size=size)

    def steps(self, block: BlockRecord) -> tuple[StepFacts, ...]:
        """The steps, with the facts of the same block at hand; none when no order is known."""
        if self._steps is None:
            # Loaded here, with all the lessons: most commands never ask for steps.
            from blockdsl.facts.applique_step import applique_steps  # noqa: PLC0415
            from blockdsl.facts.remarks import with_remarks  # noqa: PLC0415

            pieced = self._pieced(block)
            # Blocks that are pieced alike share their order; what is laid on is each one's own.
            self._steps = with_remarks((*pieced, *applique_steps(block, pieced)), block.remarks)
        return self._steps

    def _pieced(self, block: BlockRecord) -> tuple[StepFacts, ...]:
        found = self._sought()
        if found.steps is None:
            from blockdsl.facts.steps import step_facts  # noqa: PLC0415  as above

            order, look = found.order, found.look
            made = () if order is None or isinstance(order, Unsewable) else (
                build_steps(look.design, look.making, order, look.letters)
            )  # fmt: skip
            found.steps = step_facts(made, block)
        return found.steps

    @property
    def alternatives(self) -> tuple[tuple[Alternative, ...], ...]:
        """For each unit of the making every way in which it can be made."""
        found = self._sought()
        if found.alternatives is None:
            look = found.look
            found.alternatives = tuple(alternatives(look.design, unit, look.letters) for unit in look.making.units)
        return found.alternatives

    def _sought(self) -> _Found:
        if self._found is None:
            making = plan_making(self._design, Problems()) if self._making is None else self._making
            self._found = _found(_look(self._design, making, self._letters))
        return self._found


class _Found(Struct, dict=True):
    """`steps` and `alternatives` are None until somebody asks for them."""

    look: _Look
    order: Assembly | Unsewable | None
    steps: tuple[StepFacts, ...] | None = None
    alternatives: tuple[tuple[Alternative, ...], ...] | None = None
    drifts: dict[tuple[Cut, ...], Drift | None] = field(default_factory=dict)

    @cached_property
    def finder(self) -> DriftFinder | None:
        """Who finds where rounding adds up; None when the block has no order, or a single patch."""
        return drift_finder(self.look.design, self.look.making, self.look.letters, self.order)


@lru_cache(maxsize=_BLOCKS_REMEMBERED)
def _found(look: _Look) -> _Found:
    if len(look.design.patches) > MOST_PATCHES:
        return _Found(look, None)
    return _Found(look, find_order(look.design, look.making.made_whole))
