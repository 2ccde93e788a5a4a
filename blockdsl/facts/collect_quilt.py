"""Collecting the facts of a quilt: its kinds of blocks, its plain cloth, all that is cut, the order of sewing."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence

from blockdsl.cutting.quilt_cuts import quilt_cuts
from blockdsl.cutting.quilt_pieces import PlainCloth, PlainPiece, plain_pieces
from blockdsl.diagnostics import Problems
from blockdsl.facts.blockfacts import BlockFacts, FabricFacts
from blockdsl.facts.finishing import QuiltFinishing
from blockdsl.facts.finishing_report import report_upright_borders
from blockdsl.facts.quilt_steps import quilt_steps
from blockdsl.facts.quiltfacts import (
    PlacedClothFacts,
    QuiltFacts,
    QuiltKindFacts,
    QuiltRowFacts,
    RingFacts,
)
from blockdsl.geometry import square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import BlockDesign
from blockdsl.model.language import usual_language
from blockdsl.model.quilt import AssemblyRow, QuiltDesign, Ring

FactsOf = Callable[[BlockDesign], BlockFacts]


def collect_quilt(quilt: QuiltDesign, facts_of: FactsOf, problems: Problems) -> QuiltFacts:
    """Everything about one quilt; `facts_of` gives the facts of a block."""
    pieces = plain_pieces(quilt)
    cuts = quilt_cuts(quilt, pieces)
    report_upright_borders(quilt, problems)
    kinds = _kinds(quilt, facts_of)
    finishing = QuiltFinishing(quilt, cuts, kinds)
    finishing.report(problems)
    on_point = any(row.kind == "diagonal row" for row in quilt.rows)
    rows = tuple(_row(row, quilt.seam, on_point=on_point) for row in quilt.rows)
    rings = tuple(_ring(ring, quilt) for ring in quilt.rings)
    allowance = 2 * quilt.seam
    return QuiltFacts(
        name=quilt.name,
        unit=quilt.unit,
        seam=quilt.seam,
        measure=quilt.measure,
        setting=quilt.setting,
        across=quilt.across,
        down=quilt.down,
        finished=(quilt.width, quilt.height),
        unfinished=(quilt.width + allowance, quilt.height + allowance),
        middle=quilt.middle,
        fabrics_used=tuple(
            FabricFacts(fabric.name, fabric.label, fabric.colour, fabric.value, number)
            for number, fabric in enumerate(quilt.fabrics, start=1)
        ),
        kinds=kinds,
        placed=quilt.blocks,
        pieces=tuple(_piece(piece) for piece in pieces),
        cloth=_placed_cloth(quilt, pieces),
        rows=rows,
        rings=rings,
        cutting=cuts,
        steps=quilt_steps(quilt, kinds, pieces, rows, rings),
        notes=quilt.notes,
        usable_width=quilt.usable_width,
        shrinkage=quilt.shrinkage,
        finishing=finishing,
        pressing=quilt.pressing or "as it nests",
        language=quilt.language or usual_language(quilt.unit),
        maker=quilt.maker,
    )


def _kinds(quilt: QuiltDesign, facts_of: FactsOf) -> tuple[QuiltKindFacts, ...]:
    counts: list[Counter[str]] = [Counter() for _ in quilt.kinds]
    for place in quilt.blocks:
        counts[place.kind][place.colourway] += 1
    return tuple(
        QuiltKindFacts(facts_of(kind.design), kind.role, sum(count.values()), tuple(sorted(count.items())))
        for kind, count in zip(quilt.kinds, counts, strict=True)
    )


def _piece(piece: PlainPiece) -> PlainCloth:
    return PlainCloth(**{name: getattr(piece, name) for name in PlainCloth.__struct_fields__})


def _placed_cloth(quilt: QuiltDesign, pieces: Sequence[PlainPiece]) -> tuple[PlacedClothFacts, ...]:
    of_cloth = {member: place for place, piece in enumerate(pieces) for member in piece.members}
    return tuple(
        PlacedClothFacts(cloth.role, cloth.fabric, cloth.outline, of_cloth[place])
        for place, cloth in enumerate(quilt.cloth)
    )


def _row(row: AssemblyRow, seam: Fraction, *, on_point: bool) -> QuiltRowFacts:
    """On point a row of sashes ends on the slant, at the edge of the quilt: its allowance there is √2 times as long."""
    end = seam * square_root(Fraction(2)) if on_point and row.kind == "sash row" else seam
    extent = (row.length, row.breadth)
    return QuiltRowFacts(row.kind, row.members, extent, (extent[0] + 2 * end, extent[1] + 2 * seam))


def _ring(ring: Ring, quilt: QuiltDesign) -> RingFacts:
    allowance = 2 * quilt.seam
    return RingFacts(
        number=ring.number,
        word=ring.word,
        width=ring.width,
        fabric=ring.fabric,
        unit="" if ring.kind is None else quilt.kinds[ring.kind].name,
        corners=ring.corners,
        sides_first=ring.sides_first,
        lengthwise=ring.lengthwise,
        before=ring.inner,
        after=ring.outer,
        unfinished=(ring.outer[0] + allowance, ring.outer[1] + allowance),
    )
