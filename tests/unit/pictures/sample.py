"""Facts made by hand for the tests of pages: one good block, and blocks that strain the page."""

from __future__ import annotations

from msgspec.structs import replace

from blockdsl.facts.blockfacts import (
    BlockFacts,
    ColourwayFacts,
    CoverFacts,
    CutFacts,
    FabricFacts,
    PatchFacts,
    Piece,
    PlacedPatch,
    UnitFacts,
    Value,
)
from blockdsl.geometry import Point, Polygon
from blockdsl.geometry.fraction import Fraction as F  # noqa: N817 - dozens of them stand in the tables below

FOG = FabricFacts("fog", "Harbour fog", "#dfe3e0", "light", 1)
LANTERN = FabricFacts("lantern", "Lantern", "#e0a030", "medium", 2)
SLATE = FabricFacts("slate", "Wet slate", "#3a4750", "dark", 3)


def outline(*corners: tuple[int | F, int | F]) -> Polygon:
    """A polygon from plain numbers."""
    return tuple(Point(F(x), F(y)) for x, y in corners)


def _turned(patches: list[PlacedPatch], quarters: int, width: int, height: int, dx: int, dy: int) -> list[PlacedPatch]:
    """Quarter turns clockwise of a width × height box, then moved to (dx, dy)."""
    for _ in range(quarters):
        patches = [PlacedPatch(p.label, p.fabric, tuple(Point(height - y, x) for x, y in p.outline)) for p in patches]
        width, height = height, width
    return [PlacedPatch(p.label, p.fabric, tuple(Point(x + dx, y + dy) for x, y in p.outline)) for p in patches]


CORNER = [
    PlacedPatch("A", "fog", outline((0, 0), (3, 0), (3, 3), (0, 3))),
    PlacedPatch("B", "fog", outline((3, 0), (6, 0), (3, 3))),
    PlacedPatch("B", "lantern", outline((6, 0), (6, 3), (3, 3))),
    PlacedPatch("B", "fog", outline((0, 3), (3, 3), (0, 6))),
    PlacedPatch("B", "lantern", outline((3, 3), (3, 6), (0, 6))),
    PlacedPatch("A", "slate", outline((3, 3), (6, 3), (6, 6), (3, 6))),
]
BEAM = [
    PlacedPatch("B", "fog", outline((0, 0), (3, 0), (0, 3))),
    PlacedPatch("C", "lantern", outline((3, 0), (6, 3), (0, 3))),
    PlacedPatch("B", "fog", outline((3, 0), (6, 0), (6, 3))),
]


def harbour_light() -> BlockFacts:
    """A 12 in block on 4 × 4 squares of 3 in: four corners of four cells, four geese, an hourglass made as a square.

    To keep the hand work small the corners are 3 in cells here and the middle one 6 in hourglass: 12 = 3 + 6 + 3.
    """
    small = [PlacedPatch(p.label, p.fabric, tuple(Point(x / 2, y / 2) for x, y in p.outline)) for p in CORNER]
    small = [replace(p, label={"A": "D", "B": "E"}[p.label]) for p in small]
    hourglass = [
        PlacedPatch("F", "lantern", outline((0, 0), (6, 0), (3, 3))),
        PlacedPatch("F", "fog", outline((6, 0), (6, 6), (3, 3))),
        PlacedPatch("F", "lantern", outline((6, 6), (0, 6), (3, 3))),
        PlacedPatch("F", "fog", outline((0, 6), (0, 0), (3, 3))),
    ]
    placed = [
        *_turned(small, 0, 3, 3, 0, 0),
        *_turned(small, 1, 3, 3, 9, 0),
        *_turned(small, 2, 3, 3, 9, 9),
        *_turned(small, 3, 3, 3, 0, 9),
        *_turned(BEAM, 0, 6, 3, 3, 0),
        *_turned(BEAM, 1, 6, 3, 9, 3),
        *_turned(BEAM, 2, 6, 3, 3, 9),
        *_turned(BEAM, 3, 6, 3, 0, 3),
        *_turned(hourglass, 0, 6, 6, 3, 3),
    ]
    half, three = F(1, 2), F(3)
    side = F(19, 8)
    return BlockFacts(
        name="Harbour Light",
        unit="in",
        seam=F(1, 4),
        measure=F(1, 8),
        finished=(F(12), F(12)),
        unfinished=(F(25, 2), F(25, 2)),
        columns=(F(3), F(6), F(3)),
        heights=(F(3), F(6), F(3)),
        grid=(4, 4),
        cell=(three, three),
        cover=CoverFacts(F(144), 0, 0),
        fabrics=(FOG, LANTERN, SLATE),
        placed=tuple(placed),
        patches=(
            PatchFacts("D", "square", (F(3, 2), F(3, 2)), "fog", 4),
            PatchFacts("D", "square", (F(3, 2), F(3, 2)), "slate", 4),
            PatchFacts("E", "half-square triangle", (F(3, 2), F(3, 2)), "fog", 8),
            PatchFacts("E", "half-square triangle", (F(3, 2), F(3, 2)), "lantern", 8),
            PatchFacts("B", "half-square triangle", (three, three), "fog", 8),
            PatchFacts("C", "quarter-square triangle", (F(6), three), "lantern", 4),
            PatchFacts("F", "quarter-square triangle", (F(6), three), "lantern", 2),
            PatchFacts("F", "quarter-square triangle", (F(6), three), "fog", 2),
        ),
        cutting=(
            CutFacts("fog", "D", "square", (F(2), F(2)), (F(2), F(2)), 4, "none", 4, 0, "cut patches"),
            CutFacts("fog", "E", "square", (side, side), (side, side), 4, "once", 8, 0, "cut patches"),
            CutFacts("fog", "B", "square", (F(31, 8),) * 2, (F(31, 8),) * 2, 4, "once", 8, 0, "cut patches"),
            CutFacts("fog", "F", "square", (F(29, 4),) * 2, (F(29, 4),) * 2, 1, "twice", 4, 2, "cut patches"),
            CutFacts("lantern", "E", "square", (side, side), (side, side), 4, "once", 8, 0, "cut patches"),
            CutFacts(
                "lantern",
                "C",
                "square",
                (F(29, 4),) * 2,
                (F(29, 4),) * 2,
                1,
                "none",
                4,
                0,
                "four at a time",
                "beam",
                purpose="four at a time beam",
            ),
            CutFacts("lantern", "F", "square", (F(29, 4),) * 2, (F(29, 4),) * 2, 1, "twice", 4, 2, "cut patches"),
            CutFacts("slate", "D", "square", (F(2), F(2)), (F(2), F(2)), 4, "none", 4, 0, "cut patches"),
        ),
        units=(
            UnitFacts(
                "corner", "Corner", 4, (three, three), (three + half, three + half), "cut patches", 0, tuple(small)
            ),
            UnitFacts("beam", "Beam", 4, (F(6), three), (F(13, 2), F(7, 2)), "four at a time", 0, tuple(BEAM)),
            UnitFacts("hourglass", "Hourglass", 1, (F(6), F(6)), (F(13, 2),) * 2, "cut patches", 0, tuple(hourglass)),
        ),
        templates=(),
        colourways=(
            ColourwayFacts("Night", (FOG, LANTERN, SLATE), {"fog": "slate", "slate": "fog", "lantern": "lantern"}),
        ),
        area_by_fabric=(("fog", F(90)), ("lantern", F(45)), ("slate", F(9))),
        notes=("The beams point outward; the slate squares meet the centre.",),
    )


COLOURS = (
    "#f4efe3", "#d9c7a0", "#c98f4e", "#a0522d", "#7b2d26", "#d1dbdd",
    "#8fb0b8", "#3f6f7d", "#22404a", "#b7c59a", "#6f8a54", "#2f4630",
)  # fmt: skip


def many_fabrics(count: int, label: str = "Fabric with a name") -> tuple[FabricFacts, ...]:
    """So many fabrics from light to dark and back."""
    values: tuple[Value, ...] = ("light", "medium", "dark")
    return tuple(
        FabricFacts(f"f{place}", f"{label} {place}", COLOURS[(place - 1) % 12], values[place % 3], place)
        for place in range(1, count + 1)
    )


def checker(side: int, fabrics: int = 12, *, label: str = "Fabric with a name", name: str = "Checker") -> BlockFacts:
    """A block of side × side squares of half an inch, each label one fabric, with a long cutting table."""
    colours = many_fabrics(fabrics, label)
    half = F(1, 2)
    placed = []
    for row in range(side):
        for column in range(side):
            x, y = column * half, row * half
            which = (row * 5 + column * 3) % fabrics
            square = outline((x, y), (x + half, y), (x + half, y + half), (x, y + half))
            placed.append(PlacedPatch(chr(65 + which), colours[which].name, square))
    count = max(1, side * side // fabrics)
    pieces: tuple[tuple[Piece, F], ...] = (
        ("square", F(1)), ("rectangle", F(29, 8)), ("strip", F(40)), ("template", F(15, 4)),
    )  # fmt: skip
    cuts = tuple(
        CutFacts(
            fabric.name,
            chr(64 + fabric.number),
            piece,
            (F(1), size),
            (F(1), size),
            count,
            "none",
            count,
            0,
            "cut patches",
        )
        for fabric in colours
        for piece, size in pieces
    )
    whole = half * side
    return replace(
        harbour_light(),
        name=name,
        finished=(whole, whole),
        unfinished=(whole + half, whole + half),
        columns=(half,) * side,
        heights=(half,) * side,
        grid=(side, side),
        cell=(half, half),
        cover=CoverFacts(whole * whole, 0, 0),
        fabrics=colours,
        placed=tuple(placed),
        patches=(),
        cutting=cuts,
        units=(),
        colourways=(),
        area_by_fabric=(),
    )


LONG_NAME = "The Lighthouse Keeper's Daughter Waits for the Evening Boat Home"
HEBREW_NAME = "מגדלור בערפל"


def strained() -> BlockFacts:
    """Names of sixty letters and more, a name that runs from right to left, an uneven grid, a rectangular block."""
    base = harbour_light()
    fabrics = (
        replace(FOG, label="Unbleached hand-woven cotton with a fine grey thread in it"),
        replace(LANTERN, label=HEBREW_NAME),
        replace(SLATE, label="Donaudampfschifffahrtsgesellschaftskapitänsmützenblau und noch mehr davon"),
    )
    units = tuple(replace(unit, title=f"{LONG_NAME} {unit.title}") for unit in base.units) * 3
    return replace(
        base,
        name=f"{LONG_NAME} with its Reflection",
        finished=(F(12), F(12)),
        cell=None,
        columns=(F(3, 2), F(9, 2), F(9, 2), F(3, 2)),
        heights=(F(12, 5), F(36, 5), F(12, 5)),
        fabrics=fabrics,
        units=units,
        colourways=tuple(replace(base.colourways[0], name=f"{LONG_NAME} {place}") for place in range(4)),
        notes=(LONG_NAME * 5, "Short."),
    )


def in_centimetres() -> BlockFacts:
    """Harbour Light at 30 cm, with a seam of 0.75 cm, to the millimetre."""
    base = harbour_light()
    factor = F(5, 2)

    def bigger(patches: tuple[PlacedPatch, ...]) -> tuple[PlacedPatch, ...]:
        return tuple(replace(p, outline=tuple(Point(x * factor, y * factor) for x, y in p.outline)) for p in patches)

    sizes = {F(2): F(53, 10), F(19, 8): F(64, 10), F(31, 8): F(101, 10), F(29, 4): F(187, 10)}
    return replace(
        base,
        unit="cm",
        seam=F(3, 4),
        measure=F(1, 10),
        finished=(F(30), F(30)),
        unfinished=(F(63, 2), F(63, 2)),
        columns=(F(15, 2), F(15), F(15, 2)),
        heights=(F(15, 2), F(15), F(15, 2)),
        cell=(F(15, 2), F(15, 2)),
        placed=bigger(base.placed),
        cutting=tuple(replace(cut, cut=(sizes[cut.cut[0]],) * 2) for cut in base.cutting),
        units=tuple(
            replace(
                unit,
                finished=(unit.finished[0] * factor, unit.finished[1] * factor),
                unfinished=(unit.finished[0] * factor + F(3, 2), unit.finished[1] * factor + F(3, 2)),
                picture=bigger(unit.picture),
            )
            for unit in base.units
        ),
    )


def log_rounds(rounds: int = 9, fabrics: int = 12) -> BlockFacts:
    """Thin strips round a centre square, each with a letter of its own: letters that hardly fit, or do not."""
    colours = many_fabrics(fabrics)
    size = F(2 * rounds + 1)
    low, high = F(rounds), F(rounds + 1)
    placed = [PlacedPatch("A", colours[0].name, outline((low, low), (high, low), (high, high), (low, high)))]
    for place in range(rounds):
        low, high = F(rounds - place), F(rounds + 1 + place)
        rings = (
            outline((low, low - 1), (high, low - 1), (high, low), (low, low)),
            outline((high, low - 1), (high + 1, low - 1), (high + 1, high), (high, high)),
            outline((low, high), (high + 1, high), (high + 1, high + 1), (low, high + 1)),
            outline((low - 1, low - 1), (low, low - 1), (low, high + 1), (low - 1, high + 1)),
        )
        for side, ring in enumerate(rings):
            number = 1 + 4 * place + side
            label = chr(65 + number) if number < 26 else f"A{chr(65 + number - 26)}"
            placed.append(PlacedPatch(label, colours[number % fabrics].name, ring))
    return replace(
        checker(2, fabrics),
        name="Rounds",
        finished=(size / 4, size / 4),
        cell=None,
        columns=(size / 4,),
        heights=(size / 4,),
        grid=(1, 1),
        placed=tuple(replace(p, outline=tuple(Point(x / 4, y / 4) for x, y in p.outline)) for p in placed),
        cover=CoverFacts(size * size / 16, 0, 0),
    )


def slivers(pairs: int = 20) -> BlockFacts:
    """Strips a hundredth as wide as they are long, each with its own letter: none has room inside."""
    colours = many_fabrics(2)
    placed = []
    for place in range(2 * pairs):
        low, high = F(place, 10), F(place + 1, 10)
        ring = outline((0, low), (F(2 * pairs, 20), low), (F(2 * pairs, 20), high), (0, high))
        right = tuple(Point(x + F(2 * pairs, 20), y) for x, y in ring)
        placed.append(PlacedPatch(f"{chr(65 + place % 26)}{place}", "f1", ring))
        placed.append(PlacedPatch(f"{chr(65 + place % 26)}{place}", "f2", right))
    side = F(2 * pairs, 10)
    return replace(checker(2, 2), name="Slivers", finished=(side, side), fabrics=colours, placed=tuple(placed))


def oblong(width: int, height: int) -> BlockFacts:
    """Harbour Light stretched to another proportion, as a border unit would be."""
    base = harbour_light()
    across, down = F(width, 12), F(height, 12)

    def stretched(ring: Polygon) -> Polygon:
        return tuple(Point(x * across, y * down) for x, y in ring)

    return replace(
        base,
        finished=(F(width), F(height)),
        unfinished=(F(width) + F(1, 2), F(height) + F(1, 2)),
        cell=(F(width, 4), F(height, 4)),
        placed=tuple(replace(patch, outline=stretched(patch.outline)) for patch in base.placed),
    )
