"""A quilt in the JSON of the facts: its sizes, its places, its cloth, all that is cut, the order of sewing.

What lies in a place is told by number: the kind of block, or the piece of plain cloth, by its place in the quilt's own
lists, so that ten thousand places are ten thousand short records.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from blockdsl.facts.blockfacts import Extent
from blockdsl.facts.json_finishing import finishing_document
from blockdsl.facts.json_quilt_steps import DescribeQuilt, steps_document
from blockdsl.facts.quiltfacts import (
    QuiltCutFacts,
    QuiltFacts,
    QuiltKindFacts,
    QuiltPieceFacts,
    QuiltRowFacts,
    RingFacts,
)
from blockdsl.geometry import Exact
from blockdsl.geometry.symmetry import ALL_EIGHT, Symmetry
from blockdsl.model.lengths import write_length
from blockdsl.model.quilt import PlacedBlock

Say = Callable[[Exact], str]
_TURNS: Final = dict(zip(ALL_EIGHT, ("", ">", ">>", "<", "~", "~>", "~>>", "~<"), strict=True))


def turns_of(symmetry: Symmetry) -> str:
    """A symmetry as the language writes it after a block."""
    return _TURNS[symmetry]


def quilt_document(quilt: QuiltFacts, describe: DescribeQuilt | None = None) -> dict[str, object]:
    """One quilt as plain lists, dictionaries and strings; without `describe` its steps have no words."""

    def say(length: Exact) -> str:
        return write_length(length, quilt.unit)

    return {
        "name": quilt.name,
        "unit": quilt.unit,
        "seam": say(quilt.seam),
        "measure": say(quilt.measure),
        "setting": quilt.setting,
        "places": [quilt.across, quilt.down],
        "finished": _extent(quilt.finished, say),
        "unfinished": _extent(quilt.unfinished, say),
        "middle": _extent(quilt.middle, say),
        "blocks": dict(quilt.blocks),
        "half_blocks": dict(quilt.half_blocks),
        "kinds": [_kind(kind, say) for kind in quilt.kinds],
        "colours": [
            {"name": f.name, "label": f.label, "colour": f.colour, "value": f.value, "number": f.number}
            for f in quilt.fabrics_used
        ],
        "pieces": [_piece(piece, say) for piece in quilt.pieces],
        "cutting": [_cut(cut, say) for cut in quilt.cutting],
        **(finishing_document(quilt.finishing.facts, say) if quilt.finishing is not None else {}),
        "rows": [_row(row, say) for row in quilt.rows],
        "rounds": [_ring(ring, say) for ring in quilt.rings],
        "steps": steps_document(quilt, say, describe),
        "placed": [_placed(place, say) for place in quilt.placed],
        "cloth": [
            {"piece": cloth.piece, "outline": [[say(corner.x), say(corner.y)] for corner in cloth.outline]}
            for cloth in quilt.cloth
        ],
        "pressing": quilt.pressing,
        "language": quilt.language,
        "notes": list(quilt.notes),
    }


def _extent(extent: Extent, say: Say) -> list[str]:
    return [say(extent[0]), say(extent[1])]


def _kind(kind: QuiltKindFacts, say: Say) -> dict[str, object]:
    return {
        "name": kind.name,
        "role": kind.role,
        "finished": _extent(kind.block.finished, say),
        "count": kind.count,
        "colourings": dict(kind.colourings),
    }


def _piece(piece: QuiltPieceFacts, say: Say) -> dict[str, object]:
    return {
        "role": piece.role,
        "fabric": piece.fabric,
        "shape": piece.shape,
        "finished": _extent(piece.finished, say),
        "piece": piece.piece,
        "cut": _extent(piece.cut, say),
        "exact": _extent(piece.exact, say),
        "count": piece.count,
        "pieces": piece.pieces,
        "subcut": piece.subcut,
        "spare": piece.spare,
        "lengthwise": piece.lengthwise,
        "round": piece.ring,
        "joined": piece.joined,
        "to_spare": say(piece.to_spare),
    }


def _cut(cut: QuiltCutFacts, say: Say) -> dict[str, object]:
    return {
        "fabric": cut.fabric,
        "piece": cut.piece,
        "cut": _extent(cut.cut, say),
        "count": cut.count,
        "subcut": cut.subcut,
        "lengthwise": cut.lengthwise,
        "may_turn": cut.may_turn,
        "joined": cut.joined,
        "for": [{"use": use, "count": count} for use, count in cut.uses],
    }


def _row(row: QuiltRowFacts, say: Say) -> dict[str, object]:
    return {
        "kind": row.kind,
        "members": [{each.what: each.index} for each in row.members],
        "finished": _extent(row.finished, say),
        "unfinished": _extent(row.unfinished, say),
    }


def _ring(ring: RingFacts, say: Say) -> dict[str, object]:
    return {
        "number": ring.number,
        "word": ring.word,
        "width": say(ring.width),
        "fabric": ring.fabric,
        "unit": ring.unit,
        "corners": ring.corners,
        "sides_first": ring.sides_first,
        "lengthwise": ring.lengthwise,
        "before": _extent(ring.before, say),
        "after": _extent(ring.after, say),
        "unfinished": _extent(ring.unfinished, say),
    }


def _placed(place: PlacedBlock, say: Say) -> dict[str, object]:
    return {
        "kind": place.kind,
        "turns": turns_of(place.symmetry),
        "at": [say(place.x), say(place.y)],
        "on_point": place.on_point,
        "colouring": place.colourway,
        "row": place.row,
        "column": place.column,
        "round": place.ring,
    }
