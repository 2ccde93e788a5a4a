"""Pictures of a quilt, to scale and in colour: whole, and its rows drawn apart.

Each kind of block is drawn once, in each of its colourways, and stamped wherever it lies, so that a quilt of two
thousand blocks takes little more than one of twenty.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from math import sqrt
from typing import Final

from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts, FabricFacts
from blockdsl.facts.quiltfacts import PlacedClothFacts, QuiltFacts, QuiltRowFacts
from blockdsl.geometry import to_float
from blockdsl.geometry.polygon import Point
from blockdsl.marks.display_list import Contour, Figure, Mark, Path, Stamp, TextMark, Transform
from blockdsl.marks.hatch import hatch_all
from blockdsl.marks.prose import TextStyle, line_centred, rectangle, width_of
from blockdsl.marks.theme import INK, WHITE, Box
from blockdsl.model.quilt import InRow, PlacedBlock, RowKind
from blockdsl.pictures.block import coloured_patches, fabrics_of, laid_on_block
from blockdsl.pictures.placing import Placing, fit
from blockdsl.pictures.prints import Tints, tints_of_blocks
from blockdsl.wording.quilt_words import describe_quilt_picture, describe_rows_picture

Shift = tuple[float, float]
_HATCHED_FROM_PT: Final = 30.0
"""A block drawn smaller has no room for hatches that can be told apart."""
_HALF_ROOT: Final = sqrt(0.5)
_ROW_NUMBER: Final = TextStyle(9.0, "bold", INK)
_APART: Final = 0.22
"""How far rows are drawn from one another, as a share of their breadth."""
_NOWHERE: Final = (0.0, 0.0)
_TOWARD: Final[dict[RowKind, Shift]] = {
    "row": (0.0, 1.0),
    "column": (1.0, 0.0),
    "strip": (1.0, 0.0),
    "diagonal row": (_HALF_ROOT, _HALF_ROOT),
}
"""The way in which each row follows the one before it; a row of sashes goes with the rows between which it lies."""


def quilt_picture(facts: QuiltFacts, box: Box, *, name: str = "quilt") -> tuple[Figure, Box]:
    """The whole quilt, as large as the box allows at its top left; and the box it fills.

    `name` tells its stamps from those of other pictures on the same page.
    """
    placing, placed = fit(facts.finished, box)
    painter = QuiltPainter(facts, placing, name)
    everything = (InRow(cloth=place) for place in range(len(facts.cloth)))
    marks: list[Mark] = [*painter.cloth((member.index, _NOWHERE) for member in everything)]
    marks += painter.blocks((place, _NOWHERE) for place in range(len(facts.placed)))
    marks.append(rectangle(placed.x_pt, placed.y_pt, placed.width_pt, placed.height_pt, stroke=INK, stroke_width_pt=1))
    return Figure(describe_quilt_picture(facts), tuple(marks)), placed


def rows_picture(facts: QuiltFacts, box: Box, *, name: str = "rows") -> tuple[Figure, Box]:
    """The middle of the quilt with its rows drawn apart, each where it will be joined; and the box it fills."""
    spread = _spread(facts)
    extent = _extent_of(facts, spread)
    scale = min(box.width_pt / (extent[2] - extent[0]), box.height_pt / (extent[3] - extent[1]))
    placing = Placing(scale, box.x_pt - extent[0] * scale, box.y_pt - extent[1] * scale)
    painter = QuiltPainter(facts, placing, name)
    shifts = {member: shift for row, shift in zip(facts.rows, spread, strict=True) for member in row.members}
    cloth = [(member.index, shift) for member, shift in shifts.items() if member.what == "cloth"]
    blocks = [(member.index, shift) for member, shift in shifts.items() if member.what == "block"]
    filled = Box(box.x_pt, box.y_pt, (extent[2] - extent[0]) * scale, (extent[3] - extent[1]) * scale)
    marks = (*painter.cloth(cloth), *painter.blocks(blocks), *_numbered(facts, spread, placing))
    return Figure(describe_rows_picture(facts), marks), filled


def _numbered(facts: QuiltFacts, spread: Sequence[Shift], placing: Placing) -> Iterator[Mark]:
    """On the first block of each row its number, as the table of rows counts them."""
    exact = QuiltPainter(facts, Placing(1.0, 0.0, 0.0), "")
    counts: Counter[str] = Counter()
    for row, (dx, dy) in zip(facts.rows, spread, strict=True):
        counts[row.kind] += 1
        first = next((member for member in row.members if member.what == "block"), None)
        if first is None:
            continue
        corners = _corners(facts, first, exact)
        x, y = (sum(corner[axis] for corner in corners) / len(corners) for axis in (0, 1))
        x, y = placing.x_pt + (x + dx) * placing.scale, placing.y_pt + (y + dy) * placing.scale
        words = str(counts[row.kind])
        half = max(width_of(words, _ROW_NUMBER) / 2 + 2.5, _ROW_NUMBER.size_pt * 0.6)
        tall = _ROW_NUMBER.size_pt * 0.6
        yield rectangle(x - half, y - tall, 2 * half, 2 * tall, fill=WHITE, stroke=INK, stroke_width_pt=0.5)
        yield from line_centred(words, x, y, _ROW_NUMBER)


class QuiltPainter:
    """Draws a quilt's blocks and cloth at one scale; `shift` moves a member further, in the quilt's measure."""

    def __init__(self, facts: QuiltFacts, placing: Placing, name: str) -> None:
        """`name` begins the names of the stamps."""
        self._facts = facts
        self._placing = placing
        self._name = name
        self._fabrics = {fabric.name: fabric for fabric in facts.fabrics_used}
        self._tints = tints_of_blocks(facts)

    def cloth(self, members: Iterable[tuple[int, Shift]]) -> list[Mark]:
        """Pieces of plain cloth, those of one fabric in one mark, with their outlines."""
        by_fabric: dict[str, list[Contour]] = {}
        for index, shift in members:
            piece = self._facts.cloth[index]
            by_fabric.setdefault(piece.fabric, []).append(self._ring(piece, shift))
        marks: list[Mark] = []
        for fabric, rings in by_fabric.items():
            seen = self._fabrics[fabric]
            marks.append(Path(tuple(rings), fill=seen.colour))
            marks += hatch_all(rings, seen.number, seen.colour)
            marks.append(Path(tuple(rings), stroke=INK, stroke_width_pt=0.4))
        return marks

    def _ring(self, piece: PlacedClothFacts, shift: Shift) -> Contour:
        dx, dy = shift[0] * self._placing.scale, shift[1] * self._placing.scale
        return tuple((x + dx, y + dy) for x, y in self._placing.ring(piece.outline))

    def blocks(self, members: Iterable[tuple[int, Shift]]) -> list[Mark]:
        """Blocks: a stamp for each kind in each of its colourways, and of scraps in each of its prints."""
        places: dict[tuple[int, str, Tints], list[Transform]] = {}
        for index, shift in members:
            block = self._facts.placed[index]
            look = (block.kind, block.colourway, self._tints.get(index, ()))
            places.setdefault(look, []).append(self.place_of(block, shift))
        return [
            Stamp(f"{self._name}-{number}", self._once(*look), tuple(found))
            for number, (look, found) in enumerate(places.items(), start=1)
        ]

    def _once(self, kind: int, colourway: str, tints: Tints) -> tuple[Path | TextMark, ...]:
        """The block at the origin, at the picture's scale."""
        block = self._facts.kinds[kind].block
        seen = self._seen(block, colourway)
        told = dict(tints)
        tinted = {name: replace(fabric, colour=told.get(fabric.name, fabric.colour)) for name, fabric in seen.items()}
        return block_marks(block, tinted, self._placing.scale)

    def _seen(self, block: BlockFacts, colourway: str) -> Mapping[str, FabricFacts]:
        """For each fabric of the block what is seen of it in the quilt, with the quilt's own numbers for hatches."""
        plan = next((plan for plan in block.colourways if plan.name == colourway), None)
        seen = fabrics_of(block, plan)
        return {name: self._fabrics.get(fabric.name, fabric) for name, fabric in seen.items()}

    def place_of(self, block: PlacedBlock, shift: Shift = _NOWHERE) -> Transform:
        """Where the block's stamp comes down: turned in its box, the box turned an eighth when it is on point."""
        width, height = self._facts.kinds[block.kind].block.finished
        turn = block.symmetry
        corner = turn.apply(Point(0 * width, 0 * width), width, height)
        scale = self._placing.scale
        along, down = to_float(corner.x) * scale, to_float(corner.y) * scale
        a, b, c, d = (float(part) for part in (turn.x_from_x, turn.y_from_x, turn.x_from_y, turn.y_from_y))
        if block.on_point:
            a, b, c, d = (_HALF_ROOT * part for part in (a - b, a + b, c - d, c + d))
            along, down = _HALF_ROOT * (along - down), _HALF_ROOT * (along + down)
        x = self._placing.x(block.x) + along + shift[0] * scale
        y = self._placing.y(block.y) + down + shift[1] * scale
        return a, b, c, d, x, y


def block_marks(block: BlockFacts, seen: Mapping[str, FabricFacts], scale: float) -> tuple[Path | TextMark, ...]:
    """A block in colour with its outlines, at the origin, `scale` points for a unit of length."""
    placing = Placing(scale, 0.0, 0.0)
    width, height = (to_float(side) * scale for side in block.finished)
    hatched = min(width, height) >= _HATCHED_FROM_PT
    marks = coloured_patches(block.placed, seen, placing, Box(0.0, 0.0, width, height), hatched=hatched)
    marks += laid_on_block(block, seen, placing, hatched=hatched)
    return tuple(mark for mark in marks if isinstance(mark, Path | TextMark))


# --- rows drawn apart --------------------------------------------------------------------------


def _spread(facts: QuiltFacts) -> list[Shift]:
    """How far each row is moved from its place: row after row a little further, across the way that it runs."""
    gap = _APART * _least_breadth(facts.rows)
    kinds = {row.kind for row in facts.rows}
    usual = next((_TOWARD[kind] for kind in ("diagonal row", "column") if kind in kinds), (0.0, 1.0))
    spread = []
    for place, row in enumerate(facts.rows):
        x, y = _TOWARD.get(row.kind, usual)
        spread.append((x * gap * place, y * gap * place))
    return spread


def _least_breadth(rows: Sequence[QuiltRowFacts]) -> float:
    """The breadth of the narrowest row of blocks."""
    of_blocks = [row for row in rows if any(member.what == "block" for member in row.members)] or list(rows)
    return min((min(map(to_float, row.finished)) for row in of_blocks), default=1.0)


def _extent_of(facts: QuiltFacts, spread: Sequence[Shift]) -> tuple[float, float, float, float]:
    """Left, top, right and bottom of all rows where they are drawn, in the quilt's measure."""
    xs: list[float] = []
    ys: list[float] = []
    exact = QuiltPainter(facts, Placing(1.0, 0.0, 0.0), "")
    for row, (dx, dy) in zip(facts.rows, spread, strict=True):
        for member in row.members:
            corners = _corners(facts, member, exact)
            xs += [x + dx for x, _ in corners]
            ys += [y + dy for _, y in corners]
    return min(xs), min(ys), max(xs), max(ys)


def _corners(facts: QuiltFacts, member: InRow, exact: QuiltPainter) -> list[tuple[float, float]]:
    if member.what == "cloth":
        return [(to_float(x), to_float(y)) for x, y in facts.cloth[member.index].outline]
    block = facts.placed[member.index]
    a, b, c, d, e, f = exact.place_of(block)
    width, height = (to_float(side) for side in facts.kinds[block.kind].block.finished)
    return [(a * x + c * y + e, b * x + d * y + f) for x in (0.0, width) for y in (0.0, height)]
