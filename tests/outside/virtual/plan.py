"""What a maker has in hand: the cut list as it is printed, the templates, the steps, and the picture of the block."""

from __future__ import annotations

import json
import re
from collections import OrderedDict
from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from typing import Any

from blockdsl.facts import BlockFacts
from blockdsl.facts.document import block_document, write_json
from blockdsl.facts.stepfacts import StepFacts, Variant
from blockdsl.geometry import to_float
from tests.outside.virtual.curves import arc
from tests.outside.virtual.curves import shape as curved

TERM = re.compile(r"([+-]?)(?:(\d+) (?=\d))?(\d+(?:\.\d+)?(?:/\d+)?)?(?:r(\d+))?")
Spot = tuple[float, float]
PATCH_BY_PATCH = ("cut patches", "over papers")
"""Ways of making in which every piece is sewn by itself: by machine, or by hand over a paper."""
USABLE = {"in": 40.0, "cm": 100.0}
"""How much of a fabric's width can be used, where the fabric does not say how wide it is."""
SQUARED = {"in": (1.0, 0.5), "cm": (2.5, 1.5)}
"""What squaring up takes of a strip set: the first time, and each time again. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Patch:
    label: str
    fabric: str
    shape: Any


@dataclass(frozen=True, slots=True)
class Strip:
    """What the cut list tells of strips across the fabric and the cuts in them."""

    form: str
    width: float
    every: float | None
    across: float | None
    angles: tuple[int, ...]
    slant: str
    strips: int
    each: int
    length: float


@dataclass(frozen=True, slots=True)
class Line:
    """One line of the cut list."""

    fabric: str
    label: str
    piece: str
    cut: Spot
    count: int
    subcut: str
    yields: int
    spare: int
    purpose: str
    strip: Strip | None = None
    slant: str = ""
    upright: str | None = None
    corner: float | None = None
    areas: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Template:
    cutting: Any
    grain: Spot


@dataclass(frozen=True, slots=True)
class Part:
    """What a step takes, where it lies: a patch (step 0), or what an earlier step made."""

    name: str
    step: int
    fabric: str
    picture: tuple[Patch, ...]


@dataclass(frozen=True, slots=True)
class Seam:
    line: tuple[Spot, ...]
    kind: str


@dataclass(frozen=True, slots=True)
class Stage:
    parts: tuple[int, ...]
    seams: tuple[Seam, ...]


@dataclass(frozen=True, slots=True)
class Hand:
    count: int
    picture: tuple[Patch, ...]
    parts: tuple[Part, ...]
    stages: tuple[Stage, ...]


@dataclass(frozen=True, slots=True)
class Join:
    name: str
    step: int
    fabric: str
    count: int


@dataclass(frozen=True, slots=True)
class Step:
    """`unit` is the name by which the cut list calls what a method makes, `shape` its word in the language."""

    number: int
    makes: str
    count: int
    spare: int
    method: str
    joins: tuple[Join, ...]
    unfinished: Spot | None
    hands: tuple[Hand, ...]
    unit: str = ""
    shape: str = ""
    sections: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Area:
    """An area of a printed paper: letter and fabric, shape, its line, and which edge of the piece lies there."""

    number: str
    label: str
    fabric: str
    shape: Any
    line: tuple[Spot, Spot] | None
    edge: str | None


@dataclass(frozen=True, slots=True)
class Plan:
    """`trim` is what the file says after `trim`: facts do not hold it.

    `ends_even`: how she lays two parts along a straight seam, so that they stand out alike at both ends; else pieces
    with slanted seams with their own straight edges level.
    """

    seam: float
    measure: float
    finished: Spot
    unfinished: Spot
    cutting: tuple[Line, ...]
    templates: dict[str, Template]
    placed: tuple[Patch, ...]
    steps: tuple[Step, ...]
    trim: float = 0
    usable: float = 40
    papers: dict[str, tuple[Area, ...]] = field(default_factory=dict)
    squared: tuple[float, float] = SQUARED["in"]
    ends_even: bool = False


def number(text: str) -> float:
    """`2 7/8`, `7.3`, `17/4+1/4r5` as a float."""
    total, place = 0.0, 0
    while place < len(text):
        found = TERM.match(text, place)
        if found is None or found.end() == place:
            raise ValueError(f"no length: {text}")
        sign, whole, size, root = found.groups()
        top, _, bottom = (size or "1").partition("/")
        value = (float(whole) if whole else 0) + float(top) / float(bottom or 1)
        total += (-1 if sign == "-" else 1) * value * (float(root) ** 0.5 if root else 1)
        place = found.end()
    return total


_READ: OrderedDict[tuple[int, float], tuple[BlockFacts, Plan]] = OrderedDict()
_MOST_READ = 64
"""Blocks whose plans are remembered: several tests, one after the other, ask for those of the same file."""


def plan_of(facts: BlockFacts, trim: float = 0) -> Plan:
    """Read a block's facts as its maker would; the plan of the very same facts is read once."""
    key = (id(facts), trim)
    if key not in _READ:
        _READ[key] = facts, _plan_of(facts, trim)  # which keeps the facts, so that no others come to have their id
        if len(_READ) > _MOST_READ:
            _READ.popitem(last=False)
    return _READ[key][1]


def _plan_of(facts: BlockFacts, trim: float) -> Plan:
    document: dict[str, Any] = json.loads(write_json(block_document(facts)))
    placed = tuple(
        Patch(each["label"], each["fabric"], drawn(each["outline"], each.get("bends"))) for each in document["placed"]
    )
    templates = {
        each["label"]: Template(drawn(each["cutting"], each.get("cutting_bends")), _pair(each["grain"]))
        for each in document["templates"]
    }
    steps = _with_segments(
        [_step(told, step, placed, facts) for told, step in zip(document["steps"], facts.steps, strict=True)]
    )
    return Plan(
        number(document["seam"]),
        number(document["measure"]),
        _pair(document["finished"]),
        _pair(document["unfinished"]),
        tuple(_line(each) for each in document["cutting"]),
        templates,
        placed,
        steps,
        trim,
        USABLE[document["unit"]],
        {
            paper["letter"]: tuple(map(_area, paper["patches"]))
            for foundation in document["foundations"]
            for paper in foundation["papers"]
        },
        SQUARED[document["unit"]],
    )


def _area(told: dict[str, Any]) -> Area:
    line = told["seam"] and (_pair(told["seam"][0]), _pair(told["seam"][1]))
    return Area(told["number"], told["label"], told["fabric"], drawn(told["outline"], None), line, told["edge"])


def _pair(lengths: list[str]) -> Spot:
    return number(lengths[0]), number(lengths[1])


def drawn(outline: list[list[str]], bends: list[dict[str, Any] | None] | None) -> Any:
    """An outline of the facts, its curves in steps."""
    corners = [_pair(corner) for corner in outline]
    told = bends or [None] * len(corners)
    return curved(corners, [None if each is None else (_pair(each["centre"]), number(each["radius"])) for each in told])


def _line(told: dict[str, Any]) -> Line:
    size = _pair(told["cut"])
    count, subcut, yields, spare, purpose = (told[key] for key in ("count", "subcut", "yields", "spare", "for"))
    strip = _strip(told["strip"]) if told["strip"] else None
    return Line(
        told["fabric"], told["label"], told["piece"], size, count, subcut, yields, spare, purpose, strip,
        told["slant"] or "", told["upright"], number(told["corner"]) if told["corner"] else None,
        tuple(told["areas"]),
    )  # fmt: skip


def _strip(told: dict[str, Any]) -> Strip:
    every, across = (None if told[key] is None else number(told[key]) for key in ("every", "across"))
    angles, slant = tuple(told["angles"]), told["slant"] or ""
    sizes = (number(told["width"]), every, across)
    return Strip(told["form"], *sizes, angles, slant, told["strips"], told["each"], number(told["length"]))


def _step(told: dict[str, Any], step: StepFacts, placed: tuple[Patch, ...], facts: BlockFacts) -> Step:
    joins = tuple(
        Join(each.get("unit") or each["patch"], each.get("step", 0), each.get("fabric", ""), each["count"])
        for each in told["joins"]
    )
    hands = tuple(_hand(variant, placed) for variant in step.hands)
    unit, shape = _unit(step, facts)
    size = _pair(told["unfinished"]) if told["unfinished"] else None
    return Step(
        told["number"], told["makes"], told["count"], told["spare"], told["method"], joins, size, hands, unit, shape,
        tuple(told["sections"]),
    )  # fmt: skip


def _with_segments(steps: list[Step]) -> tuple[Step, ...]:
    """The steps from strip sets to a unit are one at the machine, with all pieces of cloth that they take."""
    kept: list[Step] = []
    taken: tuple[Join, ...] = ()
    for step in steps:
        cloth = tuple(join for join in step.joins if not join.step)
        if step.method == "strip set" and not step.hands:
            taken += cloth
        else:
            kept.append(replace(step, joins=taken + cloth) if taken else step)
            taken = ()
    return tuple(kept)


def _unit(step: StepFacts, facts: BlockFacts) -> tuple[str, str]:
    """The unit of the block that a step makes as a whole, known by its fabrics, its size and its method."""
    if step.method in PATCH_BY_PATCH or not step.hands:
        return "", ""
    if step.foundation is not None:
        unit = facts.units[facts.foundations[step.foundation].unit]
        return unit.name, unit.shape
    wanted = sorted(patch.fabric for patch in step.hands[0].picture)
    size = sorted(to_float(side) for side in step.hands[0].extent)
    for unit in facts.units:
        same = unit.method == step.method and sorted(to_float(side) for side in unit.finished) == size
        if same and sorted(patch.fabric for patch in unit.picture) == wanted:
            return unit.name, unit.shape
    raise ValueError(f"step {step.number} makes no unit of the list")


def _outline(patch: Any) -> Any:
    corners = [_spot(corner) for corner in patch.corners]
    bends = patch.curved.bends if patch.curved else [None] * len(corners)
    return curved(corners, [_bend(bend) for bend in bends])


def _bend(bend: Any) -> tuple[Spot, float] | None:
    return None if bend is None else (_spot(bend.centre), to_float(bend.radius))


def _spot(place: Any) -> Spot:
    return to_float(place.x), to_float(place.y)


def _line_of(seam: Any) -> tuple[Spot, ...]:
    line = tuple(_spot(place) for place in seam.line)
    bend = _bend(seam.bend)
    return line if bend is None else (*arc(line[0], line[-1], bend), line[-1])


def _hand(variant: Variant, placed: tuple[Patch, ...]) -> Hand:
    parts = tuple(
        Part(part.name, part.step or 0, part.fabric or "", _picture(part.picture, part.patches, placed))
        for part in variant.ingredients
    )
    stages = tuple(
        Stage(
            stage.parts,
            tuple(Seam(_line_of(seam), seam.kind) for seam in stage.seams),
        )
        for stage in variant.stages
    )
    return Hand(variant.count, _picture(variant.picture, variant.patches, placed), parts, stages)


def _picture(picture: Iterable[Any], patches: tuple[int, ...], placed: tuple[Patch, ...]) -> tuple[Patch, ...]:
    return tuple(
        Patch(placed[at].label, patch.fabric, _outline(patch)) for at, patch in zip(patches, picture, strict=True)
    )
