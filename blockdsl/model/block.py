"""A block as it will look when it is finished, patch by patch and unit by unit."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from blockdsl.diagnostics import Span
from blockdsl.geometry import Exact, Polygon
from blockdsl.geometry.symmetry import Symmetry
from blockdsl.model.cutter import Cutter
from blockdsl.model.fabric import Fabric, RulerUnit


@dataclass(frozen=True, slots=True)
class Patch:
    """One finished shape of one fabric, in place; clockwise as seen, in the block's unit."""

    fabric: str
    outline: Polygon


@dataclass(frozen=True, slots=True)
class Filling:
    """A shape with its words understood: which fabrics in which roles, and the numbers that go with them.

    `places` are the corners of a snowball; `numbers` what the shape needs (rows and columns, a share of the side).
    """

    shape: str
    fabrics: tuple[str, ...]
    numbers: tuple[Fraction, ...] = ()
    places: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class UnitPlace:
    """A unit in its cell. `filling` is None for a unit drawn as grid lines or free patches.

    `width` and `height` are finished and those of the unit before it was turned; its patches are
    `first` up to `stop` of the block's patches; `name` is the designer's own, or None.
    """

    name: str | None
    filling: Filling | None
    x: Exact
    y: Exact
    width: Exact
    height: Exact
    symmetry: Symmetry
    first: int
    stop: int


@dataclass(frozen=True, slots=True)
class Choice:
    """`make what as method`."""

    what: str
    method: str
    what_span: Span
    method_span: Span


@dataclass(frozen=True, slots=True)
class ColourPlan:
    """Another colour plan: fabric by fabric what takes its place."""

    name: str
    replaces: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class BlockDesign:
    """One block at its size. `columns` and `heights` are the finished measures of its grid, `cutters` the maker's.

    `family` is the kind of block that it is, `sources` where it or its name comes from, both as the designer says.
    """

    name: str
    span: Span
    unit: RulerUnit
    seam: Fraction
    measure: Fraction
    trim: Fraction
    width: Fraction
    height: Fraction
    columns: tuple[Fraction, ...]
    heights: tuple[Fraction, ...]
    cover_area: Exact
    fabrics: tuple[Fabric, ...]
    patches: tuple[Patch, ...]
    units: tuple[UnitPlace, ...]
    choices: tuple[Choice, ...]
    colourings: tuple[ColourPlan, ...]
    palette: tuple[Fabric, ...]
    notes: tuple[str, ...]
    family: str | None = None
    sources: tuple[str, ...] = ()
    cutters: tuple[Cutter, ...] = ()
    compares_methods: bool = False
    sizes: tuple[BlockDesign, ...] = ()
