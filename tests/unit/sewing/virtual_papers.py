"""Papers sewn without cloth: every seam tried exactly, from the facts alone, by rules that are not the finder's own."""

from collections.abc import Sequence

from blockdsl.facts.foundationfacts import FoundationFacts, PaperFacts
from blockdsl.geometry import Exact, Point, Polygon, sign
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import area, cross, dot, edges, step

Seam = tuple[Point, Point]


def sew(foundation: FoundationFacts) -> None:
    """Sew every paper, then join the papers; at the end one piece is left, as large as the unit."""
    pieces: dict[tuple[str, ...], list[Polygon]] = {(paper.letter,): _sewn(paper) for paper in foundation.papers}
    for join in foundation.joins:
        _try_join(pieces[join.before], pieces[join.after], join.seam)
        pieces[join.before + join.after] = pieces.pop(join.before) + pieces.pop(join.after)
    (whole,) = pieces.values()
    width, height = foundation.finished
    assert _total(whole) == width * height


def _sewn(paper: PaperFacts) -> list[Polygon]:
    sewn: list[Polygon] = []
    for place, patch in enumerate(paper.patches, 1):
        assert patch.number == f"{paper.letter}{place}"
        if patch.seam is None:
            assert not sewn
        else:
            try_seam(sewn, patch.outline, patch.seam)
        sewn.append(patch.outline)
    assert _total(sewn) == area(paper.sewing)
    assert all(_side(corner, edge) >= 0 for edge in edges(paper.sewing) for outline in sewn for corner in outline)
    return sewn


def try_seam(sewn: Sequence[Polygon], added: Polygon, seam: Seam) -> None:
    """The line has all that is sewn on one side and the new patch on the other, and covers the edges of both."""
    sides = {sign(_side(corner, seam)) for outline in sewn for corner in outline} - {0}
    new = {sign(_side(corner, seam)) for corner in added} - {0}
    assert len(sides) == len(new) == 1
    assert sides != new
    whole = _along(seam[0], seam), _along(seam[1], seam)
    assert _edge_on(sewn, seam) == [tuple(sorted(whole))]
    assert _edge_on([added], seam) == [tuple(sorted(whole))]


def _try_join(one: Sequence[Polygon], other: Sequence[Polygon], seam: Seam) -> None:
    """The straight line parts the two, and both have the very same edge on it, from end to end."""
    sides = {side for side in (1, -1) if _all_on(one, seam, side) and _all_on(other, seam, -side)}
    assert len(sides) == 1
    whole = [tuple(sorted((_along(seam[0], seam), _along(seam[1], seam))))]
    assert _edge_on(one, seam) == _edge_on(other, seam) == whole


def _all_on(outlines: Sequence[Polygon], line: Seam, side: int) -> bool:
    return all(side * sign(_side(corner, line)) >= 0 for outline in outlines for corner in outline)


def _side(point: Point, line: Seam) -> Exact:
    return cross(step(*line), step(line[0], point))


def _along(point: Point, line: Seam) -> Exact:
    return dot(step(*line), step(line[0], point))


def _edge_on(outlines: Sequence[Polygon], line: Seam) -> list[tuple[Exact, Exact]]:
    """The edges that lie on the line, as stretches along it, those that meet made one."""
    stretches = sorted(
        tuple(sorted((_along(start, line), _along(end, line))))
        for outline in outlines
        for start, end in edges(outline)
        if not _side(start, line) and not _side(end, line)
    )
    joined: list[tuple[Exact, Exact]] = []
    for low, high in stretches:
        if joined and low == joined[-1][1]:
            joined[-1] = joined[-1][0], high
        else:
            joined.append((low, high))
    return joined


def _total(outlines: Sequence[Polygon]) -> Exact:
    total: Exact = Fraction(0)
    for outline in outlines:
        total = total + area(outline)
    return total
