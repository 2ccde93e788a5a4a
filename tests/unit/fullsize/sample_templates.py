"""Template facts made by hand: small ones, one for tiles, a mirrored pair, one too small for its words."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.facts.blockfacts import BlockFacts, CoverFacts, FabricFacts, RulerUnit, TemplateFacts
from blockdsl.geometry import Exact, Point, Polygon, Surd, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.offset import offset_outward

QUARTER = Fraction(1, 4)
HALF = Fraction(1, 2)
ROOT_TWO: Fraction | Surd = square_root(Fraction(2))
Corner = tuple[int | Fraction | Surd, int | Fraction | Surd]


def outline(*corners: Corner) -> Polygon:
    """A polygon from its corners."""
    return tuple(Point(_exact(x), _exact(y)) for x, y in corners)


def _exact(x: int | Fraction | Surd) -> Exact:
    return Fraction(x) if isinstance(x, int) else x


def template(
    label: str,
    shape: str,
    finished: Corner,
    sewing: Polygon,
    grain: Corner = (0, 1),
    uses: Sequence[tuple[str, int]] = (("fog", 4),),
    mirror_of: str | None = None,
) -> TemplateFacts:
    """One template; its cutting outline is the sewing outline with a quarter inch around it."""
    return TemplateFacts(
        label,
        shape,
        (_exact(finished[0]), _exact(finished[1])),
        sewing,
        offset_outward(sewing, QUARTER),
        (_exact(grain[0]), _exact(grain[1])),
        dict(uses),
        mirror_of,
    )


def square(label: str, side: int | Fraction) -> TemplateFacts:
    """A square of that finished side."""
    return template(label, "square", (side, side), outline((0, 0), (side, 0), (side, side), (0, side)))


def half_square(label: str, leg: int | Fraction) -> TemplateFacts:
    """A half-square triangle of that finished leg, its right angle at the lower left."""
    uses = (("lantern", 4), ("slate", 2))
    return template(label, "half-square triangle", (leg, leg), outline((0, 0), (leg, leg), (0, leg)), uses=uses)


def parallelogram(label: str, mirror_of: str | None = None) -> TemplateFacts:
    """A 45° parallelogram of 4 × 2 in, leaning right, or left when it is the mirror image."""
    corners = ((2, 0), (6, 0), (4, 2), (0, 2)) if mirror_of is None else ((0, 0), (4, 0), (6, 2), (2, 2))
    grain = (1, 0)
    return template(label, "parallelogram", (6, 2), outline(*corners), grain, (("slate", 8),), mirror_of)


def small_templates() -> tuple[TemplateFacts, ...]:
    """Those that fit one page: A to F and a mirror image."""
    return (
        square("A", 3),
        half_square("B", 3),
        template(
            "C",
            "quarter-square triangle",
            (6, 3),
            outline((3, 0), (6, 3), (0, 3)),
            grain=(1, 0),
            uses=(("fog", 4), ("lantern", 12)),
        ),
        template(
            "D",
            "square",
            (ROOT_TWO * 2, ROOT_TWO * 2),
            outline((2, 0), (4, 2), (2, 4), (0, 2)),
            grain=(1, 1),
            uses=(("slate", 1),),
        ),
        parallelogram("E"),
        parallelogram("Er", mirror_of="E"),
        square("F", HALF),
        template(
            "G",
            "rectangle",
            (HALF, 6),
            outline((0, 0), (6, 0), (6, HALF), (0, HALF)),
            (1, 0),
        ),
    )


def large_triangle() -> TemplateFacts:
    """A 20 in half-square triangle, which needs tiles."""
    return half_square("H", 20)


FABRICS = (
    FabricFacts("fog", "Harbour fog", "#dfe3e0", "light", 1),
    FabricFacts("lantern", "Lantern", "#e0a030", "medium", 2),
    FabricFacts("slate", "Wet slate", "#3a4750", "dark", 3),
)


def block_of(
    templates: Sequence[TemplateFacts], name: str = "Harbour Light", unit: RulerUnit = "in", seam: Fraction = QUARTER
) -> BlockFacts:
    """A block with these templates and nothing else that a template page reads."""
    twelve = Fraction(12)
    return BlockFacts(
        name=name,
        unit=unit,
        seam=seam,
        measure=Fraction(1, 8) if unit == "in" else Fraction(1, 10),
        finished=(twelve, twelve),
        unfinished=(twelve + 2 * seam, twelve + 2 * seam),
        columns=(Fraction(3),) * 4,
        heights=(Fraction(3),) * 4,
        grid=(4, 4),
        cell=(Fraction(3), Fraction(3)),
        cover=CoverFacts(Fraction(144), 0, 0),
        fabrics=FABRICS,
        placed=(),
        patches=(),
        cutting=(),
        units=(),
        templates=tuple(templates),
        colourways=(),
        area_by_fabric=(),
        notes=(),
    )


def sample_block() -> BlockFacts:
    """The block that most tests print."""
    return block_of((*small_templates(), large_triangle()))
