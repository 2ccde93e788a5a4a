"""The steps of borders and rounds: trimmed to what the top measures, mitred, or pieced of units."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator, Mapping, Sequence

from blockdsl.cutting.quilt_pieces import PlainPiece
from blockdsl.facts.quiltrecord import RingFacts
from blockdsl.facts.quiltstepfacts import (
    MeasuredBorder,
    MitredBorder,
    PiecedBorder,
    QuiltAction,
    QuiltPart,
    QuiltStepFacts,
    QuiltTake,
)
from blockdsl.geometry import Exact
from blockdsl.geometry.polygon import bounding_box
from blockdsl.model.quilt import QuiltDesign

PartOf = Callable[[int], QuiltPart]
_TOP, _RIGHT = 0, 1


def ring_steps(
    quilt: QuiltDesign, rings: Sequence[RingFacts], pieces: Sequence[PlainPiece], part_of: PartOf
) -> Iterator[QuiltStepFacts]:
    """One step for each ring, from the inside out. `part_of` gives a block of the quilt as it lies."""
    piece_of = places_of(pieces)
    for ring in rings:
        used = Counter(piece for place, piece in piece_of.items() if quilt.cloth[place].ring == ring.number)
        action = _pieced(quilt, ring, piece_of, part_of) if ring.unit else _plain(quilt, ring, pieces, piece_of)
        blocks = Counter(
            (place.kind, place.colourway) for place in quilt.blocks if ring.unit and place.ring == ring.number
        )
        yield QuiltStepFacts(
            number=0,
            makes="border",
            takes=(
                *(QuiltTake("block", *kind, count) for kind, count in blocks.items()),
                *(QuiltTake("cloth", piece, "", count) for piece, count in sorted(used.items())),
            ),
            actions=(action,),
            finished=ring.after,
            unfinished=ring.unfinished,
            ring=ring.number,
        )


def places_of(pieces: Sequence[PlainPiece]) -> dict[int, int]:
    """For each cloth of the quilt, by its place, the place of its piece."""
    return {member: place for place, piece in enumerate(pieces) for member in piece.members}


def _strips(quilt: QuiltDesign, ring: RingFacts, piece_of: Mapping[int, int]) -> tuple[int, int]:
    """The pieces of the strips at the sides and at top and bottom."""
    found: dict[bool, int] = {}
    middle = quilt.width / 2
    for place, piece in piece_of.items():
        cloth = quilt.cloth[place]
        if cloth.ring == ring.number and cloth.role == "border":
            left, _, right, _ = bounding_box(cloth.outline)
            # a strip at a side lies wholly on one side of the quilt's middle
            found[right < middle or left > middle] = piece
    return found[True], found[False]


def _corner(quilt: QuiltDesign, ring: RingFacts, piece_of: Mapping[int, int]) -> int | None:
    squares = (place for place in piece_of if quilt.cloth[place].ring == ring.number)
    return next((piece_of[place] for place in squares if quilt.cloth[place].role == "border corner"), None)


def _plain(
    quilt: QuiltDesign, ring: RingFacts, pieces: Sequence[PlainPiece], piece_of: Mapping[int, int]
) -> QuiltAction:
    sides, ends = _strips(quilt, ring, piece_of)
    allowance = 2 * quilt.seam
    is_open = quilt.pressing == "open"
    first_ring = ring.number == 1
    if ring.corners == "mitred":
        beyond = (max(pieces[sides].cut) - ring.before[1] - allowance) / 2
        return MitredBorder(sides, ends, beyond, first_ring, is_open)
    width, height = ring.before
    corner = _corner(quilt, ring, piece_of)
    side, end = _lengths(ring, width, height)
    lengths: tuple[tuple[Exact, int], tuple[Exact, int]] = ((side + allowance, sides), (end + allowance, ends))
    first, second = lengths if ring.sides_first else lengths[::-1]
    return MeasuredBorder(ring.sides_first, first, second, corner, first_ring, is_open)


def _lengths(ring: RingFacts, width: Exact, height: Exact) -> tuple[Exact, Exact]:
    """Finished lengths of the strips at the sides and at top and bottom."""
    if ring.corners == "squares":
        return height, width
    return (height, ring.after[0]) if ring.sides_first else (ring.after[1], width)


def _pieced(quilt: QuiltDesign, ring: RingFacts, piece_of: Mapping[int, int], part_of: PartOf) -> PiecedBorder:
    places = [place for place, block in enumerate(quilt.blocks) if block.ring == ring.number]
    counts = Counter(quilt.blocks[place].row for place in places)
    above = next(place for place in places if quilt.blocks[place].row == _TOP)
    return PiecedBorder(
        part=part_of(above),
        sides=counts[_RIGHT],
        ends=counts[_TOP],
        sides_first=ring.sides_first,
        corner=_corner(quilt, ring, piece_of),
        first_ring=ring.number == 1,
        open=quilt.pressing == "open",
    )
