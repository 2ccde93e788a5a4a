"""What a quilt takes besides its piecing, in the JSON of the facts: strips in the order in which they are cut."""

from __future__ import annotations

from typing import Annotated, TypeVar

from msgspec import Meta, convert, field

from blockdsl.cutting.fat_quarters import FatQuarterUse
from blockdsl.cutting.finishing import BackingMeasures, SleevePlan
from blockdsl.cutting.finishing_binding import BindingMeasures
from blockdsl.cutting.quilt_cloth import JoinedStrips
from blockdsl.cutting.sizes import Extent
from blockdsl.facts.finishingfacts import (
    BackingFacts,
    BindingFacts,
    ClothPieceFacts,
    FabricClothFacts,
    ScrapsFacts,
    SleeveFacts,
)
from blockdsl.geometry.fraction import Fraction
from blockdsl.record import Count, Name, Record, Rest, says

_Record = TypeVar("_Record", bound=Record)
_Any = TypeVar("_Any")

Shop = Annotated[str, Meta(description="What to ask for in the shop: eighths of a yard, or tenths of a metre.")]
Allowed = Annotated[Fraction, Meta(description="What is added for washing and squaring up.")]


class ClothLying(Record, frozen=True):
    """A piece by its key, as it lies: across the cloth, and along it."""

    key: str = field(name="piece")
    lies: Extent


class ClothSection(Record, frozen=True):
    """What one sub-cut takes off a strip: a piece, or several one above the other."""

    width: Fraction
    pieces: tuple[ClothLying, ...]


class ClothStrip(Record, frozen=True):
    """Strips that are cut alike."""

    height: Annotated[Fraction, says("Along the cloth.")] = field(name="cut")
    width: Annotated[Fraction, says("Across the cloth.")]
    times: Count
    sections: tuple[ClothSection, ...]
    left: Annotated[Fraction, says("What is over at the end.")]


class ClothLength(Record, frozen=True):
    """A length of cloth with long pieces side by side, and strips across what is left beside them."""

    height: Fraction = field(name="length")
    width: Annotated[Fraction, says("What the long pieces take together.")]
    times: Count
    columns: tuple[ClothSection, ...]
    strips: tuple[ClothStrip, ...] = field(name="beside")


class FabricCloth(Record, frozen=True):
    """The cloth of one fabric of a quilt, backing apart; binding and sleeve are in it.

    Of scraps the blocks are cut from fat quarters, each from one print, and only the rest by the length.
    """

    fabric: Name
    usable_width: Fraction
    pieces: tuple[ClothPieceFacts, ...]
    scraps: bool
    lengthwise: Annotated[
        tuple[ClothLength, ...], says("Lengths of cloth for what is cut along it, before the strips.")
    ]
    strips: Annotated[tuple[ClothStrip, ...], says("Strips across the cloth, in the order in which they are cut.")]
    joined: tuple[JoinedStrips, ...]
    need: Annotated[
        Fraction | None,
        says("The length that the plan takes; null where nothing is cut by the length, or a piece is too large."),
    ]
    bound: Annotated[Fraction | None, says("No plan of this kind is shorter.")]
    proved: Annotated[bool, says("Whether the plan is as short as that.")]
    allowed: Allowed | None
    buy: Shop | None
    fat_quarters: Annotated[
        FatQuarterUse | None,
        says("What fat quarters do; null when a piece is too large for one, or they would be far too many."),
    ]


class Backing(BackingMeasures, frozen=True):
    """The back of a quilt: so many widths of cloth, each so long."""

    fabric: Name
    allowed: Allowed
    buy: Shop


class Binding(BindingMeasures, frozen=True):
    """The binding of a quilt: strips across the cloth, or squares for bias strips."""

    fabric: Name
    allowed: Allowed
    buy: Shop


class Sleeve(SleevePlan, frozen=True):
    """A tube to hang a quilt by: its strips are joined, and cut so long and so wide."""

    fabric: Name


class Sheet(Record, frozen=True):
    """Fat quarters that are cut alike; `along`: the strips run along it."""

    times: Count
    along: bool
    strips: tuple[ClothStrip, ...]


class Scraps(Record, frozen=True):
    """One role spread over prints, a fat quarter or more of each."""

    role: Name
    prints: Count
    blocks: Annotated[tuple[Rest, ...], says("Places in the quilt's list of blocks.")]
    assignment: Annotated[tuple[Count, ...], says("The print of each of these blocks, from 1.")]
    uses: Annotated[tuple[Rest, ...], says("In how many blocks each print is.")]
    clashes: Annotated[Rest, says("Pairs of blocks side by side with the same print.")]
    corner_clashes: Annotated[Rest, says("Pairs that meet at corners alone.")]
    bound: Annotated[Rest, says("Fewer clashes cannot be.")]
    proved: bool
    balanced: Annotated[bool, says("Whether prints are used equally often, to within one block.")]
    blocks_each: Annotated[Rest, says("How many blocks one fat quarter gives.")]
    fat_quarters: Annotated[
        tuple[Rest, ...] | None, says("How many of each print; null when a block takes more than one.")
    ]
    sheets: Annotated[
        tuple[Sheet, ...] | None,
        says(
            "How one fat quarter is cut for `blocks_each` blocks, its pieces by the letters of their patches; null "
            "when it gives none."
        ),
    ] = field(name="layout")


def fabric_cloth(cloth: FabricClothFacts) -> FabricCloth:
    """How the cloth of one fabric is cut, and what to buy."""
    plan = cloth.plan
    return FabricCloth(
        fabric=cloth.fabric,
        usable_width=cloth.usable_width,
        pieces=cloth.pieces,
        scraps=cloth.scraps,
        lengthwise=_read(plan.panels, tuple[ClothLength, ...]) if plan else (),
        strips=_read(plan.strips, tuple[ClothStrip, ...]) if plan else (),
        joined=cloth.joined,
        need=plan.length if plan else None,
        bound=plan.bound if plan else None,
        proved=plan is not None and plan.proved,
        allowed=cloth.buy.allowed if cloth.buy else None,
        buy=cloth.buy.words if cloth.buy else None,
        fat_quarters=cloth.fat_quarters,
    )


def backing(facts: BackingFacts) -> Backing:
    """The back as its plan has it."""
    return _of_plan(Backing, facts.plan, fabric=facts.fabric, allowed=facts.plan.buy.allowed, buy=facts.plan.buy.words)


def binding(facts: BindingFacts) -> Binding:
    """The binding as its plan has it."""
    return _of_plan(Binding, facts.plan, fabric=facts.fabric, allowed=facts.plan.buy.allowed, buy=facts.plan.buy.words)


def sleeve(facts: SleeveFacts) -> Sleeve:
    """The sleeve as its plan has it."""
    return _of_plan(Sleeve, facts.plan, fabric=facts.fabric)


def scraps(facts: ScrapsFacts) -> Scraps:
    """The prints of one role."""
    layout = facts.layout
    sheets = _read(layout.sheets, tuple[Sheet, ...]) if layout is not None else None
    return _of_plan(Scraps, facts, sheets=sheets)


def _of_plan(kind: type[_Record], plan: object, **more: object) -> _Record:
    """What the plan has under the names of the record's fields, and the rest."""
    return kind(**{name: more[name] if name in more else getattr(plan, name) for name in kind.__struct_fields__})


def _read(found: object, kind: type[_Any]) -> _Any:
    return convert(found, kind, from_attributes=True)
