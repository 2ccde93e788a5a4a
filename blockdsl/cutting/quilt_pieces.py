"""What to cut for the plain cloth of a quilt: sashes, posts, setting triangles, plain squares, strips and borders.

Triangles at the edge of the quilt keep their outer edges on the straight grain: the long edge of a side triangle, so
that it is a quarter of a square, and the short edges of a corner triangle, so that it is half of one.

Borders and the strips between whole rows or columns are cut longer than they will be, and trimmed to what the top
measures through its middle.
"""

from __future__ import annotations

from collections.abc import Hashable
from math import ceil
from typing import Annotated, Final, get_args

from msgspec import field

from blockdsl.cutting.cutlist import TRIANGLES
from blockdsl.cutting.quilt_cloth import cloth_width
from blockdsl.cutting.sizes import (
    Extent,
    rectangle_for,
    round_up,
    square_for_half_square_triangle,
    square_for_quarter_square_triangle,
    with_allowance,
)
from blockdsl.cutting.ways import Piece, Subcut
from blockdsl.geometry import Exact, Polygon, floor_to
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import bounding_box, translate
from blockdsl.geometry.recognise import recognise
from blockdsl.model.fabric import RulerUnit
from blockdsl.model.quilt import InRow, PieceRole, PlacedCloth, QuiltDesign
from blockdsl.record import Count, Name, Record, Rest, says

_ORDER: Final[tuple[PieceRole, ...]] = get_args(PieceRole)

TO_SPARE: Final[dict[RulerUnit, Fraction]] = {"in": Fraction(2), "cm": Fraction(5)}
"""How much longer a strip is cut that is trimmed to what the top measures: 2 in or 5 cm. Common practice, no source."""

MEASURED: Final[frozenset[PieceRole]] = frozenset({"border", "sash strip", "strip"})
"""What is trimmed to the length that the top, the rows or the columns measure."""

STRIPS: Final[frozenset[PieceRole]] = MEASURED | {"sash"}
"""What is joined from strips across the cloth where it is longer than the cloth is wide."""


class PlainCloth(Record, frozen=True, kw_only=True):
    """Plain cloth of one role, fabric and size: sashes, setting triangles, borders and so on."""

    role: Annotated[
        PieceRole,
        says(
            "A sash lies between two blocks, a sash strip between whole rows or columns; an edge post is half a post, "
            "at the edge of a quilt on point."
        ),
    ]
    fabric: Name
    shape: Annotated[Name, says("Its finished shape: `square`, `rectangle`, `quarter-square triangle` …")]
    finished: Extent
    piece: Piece
    cut: Annotated[
        tuple[Fraction, Fraction],
        says("On the ruler, the shorter side first; of a print that stands upright across the cloth first."),
    ]
    exact: Annotated[Extent, says("Before rounding up.")]
    count: Annotated[Count, says("How many are needed.")]
    pieces: Annotated[Count, says("How many are cut; of squares that are sub-cut each gives two or four.")]
    subcut: Subcut
    spare: Rest
    lengthwise: Annotated[bool, says("Whether it is cut along the length of the cloth.")]
    ring: Annotated[Rest, says("The border or round that it belongs to, 0 for none.")] = field(name="round")
    joined: Annotated[
        bool, says("Whether it is longer than its fabric is wide, and so is joined from strips unless cut lengthwise.")
    ]
    to_spare: Annotated[
        Fraction,
        says(
            "How much longer it is cut than it will be, to be trimmed to what is measured; of a mitred border what is "
            "left beyond the tips of its ends."
        ),
    ]


class PlainPiece(PlainCloth, frozen=True, kw_only=True):
    """The same with the places of its `members` in the quilt's list of cloth, and whether it may not be turned."""

    upright: bool
    members: tuple[int, ...]


def plain_pieces(quilt: QuiltDesign) -> tuple[PlainPiece, ...]:
    """All plain cloth, by role from the inside out, then by fabric and size, large before small."""
    directional = {fabric.name for fabric in quilt.fabrics if fabric.directional}
    looks: dict[tuple[Hashable, ...], list[int]] = {}
    for place, cloth in enumerate(quilt.cloth):
        look = (cloth.role, cloth.fabric, cloth.lengthwise, cloth.ring, _look(cloth.outline))
        looks.setdefault(look, []).append(place)
    groups: dict[tuple[Hashable, ...], list[int]] = {}
    for members in looks.values():
        alike = _alike(quilt.cloth[members[0]], quilt, directional)
        groups.setdefault(alike, []).extend(members)
    found = [_piece(quilt, tuple(sorted(members)), directional) for members in groups.values()]
    fabrics = {fabric.name: place for place, fabric in enumerate(quilt.fabrics)}
    return tuple(
        sorted(
            found,
            key=lambda each: (
                _ORDER.index(each.role),
                each.ring,
                fabrics[each.fabric],
                -each.cut[0] * each.cut[1],
                each.cut,
            ),
        )
    )


def _look(outline: Polygon) -> Polygon:
    left, top, _, _ = bounding_box(outline)
    return translate(outline, -left, -top)


def _alike(cloth: PlacedCloth, quilt: QuiltDesign, directional: set[str]) -> tuple[Hashable, ...]:
    """The same for cloth that is cut alike: turned is the same, but for a print with an up and a down."""
    upright = cloth.fabric in directional
    shape = recognise(cloth.outline)
    size = _exact(cloth, quilt.seam, upright=upright)
    return cloth.role, cloth.fabric, cloth.lengthwise, cloth.ring, shape.kind, *size[0], size[1]


def _exact(cloth: PlacedCloth, allowance: Fraction, *, upright: bool) -> tuple[Extent, Subcut]:
    """The cloth for one piece before rounding up, and how it is sub-cut.

    Shape:  the square that cut twice holds a side triangle (or the half of a post) four times, the square that cut once
            holds a corner triangle twice; the box of a mitred border, its slanted ends within; else the piece itself.
    """
    match cloth.role:
        case "side triangle" | "edge post":
            side = square_for_quarter_square_triangle(cloth.outline, allowance)
            return (side, side), "twice"
        case "corner triangle":
            side = square_for_half_square_triangle(cloth.outline, allowance)
            return (side, side), "once"
    if _has_square_ends(recognise(cloth.outline).kind):
        extent = rectangle_for(cloth.outline, allowance)
        if upright:
            left, top, right, bottom = bounding_box(cloth.outline)
            wide = right - left >= bottom - top
            shorter, longer = sorted(extent)
            return ((longer, shorter) if wide else (shorter, longer)), "none"
    else:
        left, top, right, bottom = bounding_box(with_allowance(cloth.outline, allowance))
        extent = (right - left, bottom - top)
    shorter, longer = sorted(extent)
    return (extent if upright else (shorter, longer)), "none"


def _piece(quilt: QuiltDesign, members: tuple[int, ...], directional: set[str]) -> PlainPiece:
    cloth = quilt.cloth[members[0]]
    upright = cloth.fabric in directional
    exact, subcut = _exact(cloth, quilt.seam, upright=upright)
    to_spare = TO_SPARE[quilt.unit] if cloth.role in MEASURED else Fraction(0)
    cut = round_up(_to_trim(quilt, members[0], exact, to_spare) if to_spare else exact, quilt.measure)
    shape = recognise(cloth.outline)
    if to_spare and not _has_square_ends(shape.kind):
        to_spare = floor_to(max(have - need for have, need in zip(cut, exact, strict=True)), quilt.measure)
    count, each = len(members), TRIANGLES.get(subcut, 1)
    pieces = ceil(count / each)
    usable = cloth_width(quilt, cloth.fabric)
    lengthwise = cloth.lengthwise and not lies_across(upright=upright, cut=cut)
    too_long = not lengthwise and cloth.role in STRIPS and max(cut) > usable >= min(cut)
    return PlainPiece(
        role=cloth.role,
        fabric=cloth.fabric,
        shape=shape.kind,
        finished=shape.finished,
        piece="square" if cut[0] == cut[1] else "rectangle",
        cut=cut,
        exact=exact,
        count=count,
        pieces=pieces,
        subcut=subcut,
        spare=pieces * each - count,
        lengthwise=lengthwise,
        ring=cloth.ring,
        upright=upright and subcut == "none",
        # A print that runs up the quilt is cut along the cloth where the piece runs up, and needs no joins there.
        joined=too_long and not (upright and cut[1] > cut[0]),
        to_spare=to_spare,
        members=members,
    )


def lies_across(*, upright: bool, cut: tuple[Fraction, Fraction]) -> bool:
    """Whether a strip of a print that stands upright runs from side to side: no length of the cloth holds it so."""
    return upright and cut[0] > cut[1]


def _to_trim(quilt: QuiltDesign, place: int, exact: Extent, to_spare: Fraction) -> Extent:
    """The strip as it is cut, to be trimmed to what is measured.

    Exact:  the length and `to_spare`; of a mitred border the outer edge with two allowances and `to_spare`, and no less
            than half of that beyond the tips, which lie 2√2 allowances farther apart than the outer corners.
    """
    cloth, allowance = quilt.cloth[place], 2 * quilt.seam
    along = 1 if exact[0] == _strip_width(quilt, place) + allowance else 0
    wanted = exact[along] + to_spare
    if not _has_square_ends(recognise(cloth.outline).kind):
        left, top, right, bottom = bounding_box(cloth.outline)
        wanted = max(max(right - left, bottom - top) + allowance + to_spare, exact[along] + to_spare / 2)
    return (exact[0], wanted) if along else (wanted, exact[1])


def _has_square_ends(kind: str) -> bool:
    """Whether a piece has square ends; a mitred border has not."""
    return kind in ("square", "rectangle")


def _strip_width(quilt: QuiltDesign, place: int) -> Exact:
    """Finished width of a border, or of a strip between rows or columns; it may be more than its length."""
    ring = quilt.cloth[place].ring
    if ring:
        return next(each.width for each in quilt.rings if each.number == ring)
    return next(row.breadth for row in quilt.rows if InRow(cloth=place) in row.members)
