"""The order in which a quilt top is put together, in words, with what to measure on the way."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from blockdsl.facts.quilt_border_steps import ring_steps
from blockdsl.facts.quiltfacts import QuiltStepFacts, RingFacts
from blockdsl.geometry import Exact
from blockdsl.model.lengths import about
from blockdsl.model.quilt import AssemblyRow, QuiltDesign


def quilt_steps(quilt: QuiltDesign, rings: Sequence[RingFacts]) -> tuple[QuiltStepFacts, ...]:
    """All steps in order, numbered from 1: the rows, their joining, then border by border."""
    words = _Words(quilt)
    finish = (replace(step, of_top=False) for step in _finish(quilt))
    steps = [*_middle(quilt, words), *ring_steps(quilt, rings), *finish]
    return tuple(replace(step, number=number) for number, step in enumerate(steps, start=1))


@dataclass(frozen=True, slots=True)
class _Words:
    quilt: QuiltDesign

    def size(self, extent: tuple[Exact, Exact]) -> str:
        """`12 1/2 x 6 1/2 in`, unfinished measures of a finished extent."""
        allowance = 2 * self.quilt.seam
        sides = [about(side + allowance, self.quilt.unit, self.quilt.measure) for side in extent]
        return f"{sides[0]} x {sides[1].removeprefix('about ')} {self.quilt.unit}"


def _plain(
    title: str, text: str, rows: Iterable[int] = (), measures: tuple[Exact, Exact] | None = None
) -> QuiltStepFacts:
    return QuiltStepFacts(0, title, text, measures, tuple(rows))


# --- the middle ------------------------------------------------------------------------------------


def _middle(quilt: QuiltDesign, words: _Words) -> Iterator[QuiltStepFacts]:
    by_kind: dict[str, list[int]] = {}
    for place, row in enumerate(quilt.rows):
        by_kind.setdefault(row.kind, []).append(place)
    yield _plain("Lay out", _laying_out(quilt))
    if quilt.setting == "on point" or "diagonal row" in by_kind:
        yield from _on_point(quilt, words, by_kind)
    elif "column" in by_kind:
        yield from _columns(quilt, words, by_kind)
    else:
        yield from _rows(quilt, words, by_kind)


def _laying_out(quilt: QuiltDesign) -> str:
    counts: Counter[str] = Counter()
    for place in quilt.blocks:
        if not place.ring:
            counts[quilt.kinds[place.kind].name] += 1
    if quilt.setting == "medallion":
        return "Sew the block in the middle and measure it. Lay all that goes round it out by the picture of the quilt."
    said = _listed([f"{count} “{name}”" for name, count in counts.items()])
    turned = any(place.symmetry != quilt.blocks[0].symmetry for place in quilt.blocks if not place.ring)
    more = " Look twice at how each one is turned." if turned else ""
    return (
        f"Sew all blocks first ({said}) and measure them: every block of one kind must have the same size. "
        f"Lay them out by the picture of the quilt, with the cloth that goes between them.{more}"
    )


def _listed(words: Sequence[str]) -> str:
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}" if words else ""


def _rows(quilt: QuiltDesign, words: _Words, by_kind: dict[str, list[int]]) -> Iterator[QuiltStepFacts]:
    rows, sash_rows = by_kind.get("row", []), by_kind.get("sash row", [])
    first = quilt.rows[rows[0]]
    sashed = any(quilt.cloth[each.index].role == "sash" for each in first.members if each.what == "cloth")
    if len(first.members) > 1:
        yield _plain(
            "Sew the rows",
            f"{_sewn(first, sashed=sashed)} in each row, from left to right. "
            f"{_nesting('row', len(rows), sashed=sashed)} "
            f"Each row measures {words.size((first.length, first.breadth))}, raw edge to raw edge.",
            rows,
            _unfinished(quilt, first),
        )
    yield from _sash_rows(quilt, words, sash_rows)
    if len(quilt.rows) > 1:
        between = ", with the sashing between them" if sash_rows else ""
        where = "toward the sashing" if sash_rows else "all one way"
        yield _plain(
            "Join the rows",
            f"Sew the rows together from the top down{between}: pin at every seam first, so that they meet. "
            f"Press the long seams {where}. The middle measures {words.size(quilt.middle)}.",
            range(len(quilt.rows)),
            _grown(quilt, quilt.middle),
        )


def _sash_rows(quilt: QuiltDesign, words: _Words, places: Sequence[int]) -> Iterator[QuiltStepFacts]:
    if not places:
        return
    first = quilt.rows[places[0]]
    if len(first.members) == 1:
        yield _plain(
            "Trim the strips between the rows",
            f"Measure the rows and trim the {len(places)} strips to their length, which should be "
            f"{about(first.length + 2 * quilt.seam, quilt.unit, quilt.measure)} {quilt.unit}. "
            "Mark the middle and the seams of the row on each strip, so that blocks above and below stand in line.",
            places,
        )
        return
    yield _plain(
        "Sew the sashing between the rows",
        f"Sew posts and sashes end to end, {_members(quilt, first)} in each of {len(places)}. "
        f"Press toward the sashes, so that these seams lie against those of the rows. "
        f"Each measures {words.size((first.length, first.breadth))}.",
        places,
        _unfinished(quilt, first),
    )


def _members(quilt: QuiltDesign, row: AssemblyRow) -> str:
    counts = Counter(quilt.cloth[each.index].role for each in row.members if each.what == "cloth")
    return _listed([f"{count} {role}{'' if count == 1 else _plural(role)}" for role, count in counts.items()])


def _plural(role: str) -> str:
    return "es" if role.endswith("sh") else "s"


def _sewn(row: AssemblyRow, *, sashed: bool) -> str:
    return "Sew blocks and sashes in turn" if sashed else f"Sew the {len(row.members)} places together"


def _nesting(what: str, count: int, *, sashed: bool) -> str:
    if sashed:
        return "Press the seams toward the sashes."
    if count == 1:
        return "Press the seams one way."
    return (
        f"Press the seams of the first {what} one way, those of the second the other way, and so on in turn: "
        "then they lie against each other where they meet."
    )


# --- columns ---------------------------------------------------------------------------------------


def _columns(quilt: QuiltDesign, words: _Words, by_kind: dict[str, list[int]]) -> Iterator[QuiltStepFacts]:
    columns, strips = by_kind["column"], by_kind.get("strip", [])
    first = quilt.rows[columns[0]]
    dropped = quilt.setting == "dropped columns" and len(columns) > 1
    sashed = any(quilt.cloth[each.index].role == "sash" for each in first.members if each.what == "cloth")
    halves = " Every second column begins and ends with a half block." if dropped else ""
    yield _plain(
        "Sew the columns",
        f"Sew each column from the top down.{halves} {_nesting('column', len(columns), sashed=sashed)} "
        f"Each column measures {words.size((first.breadth, first.length))}, raw edge to raw edge.",
        columns,
        _swapped(_unfinished(quilt, first)),
    )
    if strips:
        yield _strip_step(quilt, words, strips)
    between = ", with the strips between them" if strips else ""
    where = "toward the strips" if strips else "all one way"
    meet = "the middle of a block beside the end of its neighbours" if dropped else "every seam beside its neighbour's"
    yield _plain(
        "Join the columns",
        f"Mark the middle of each column and its quarters. Sew the columns together from left to right{between}, "
        f"pinned at the marks: {meet}. Press the long seams {where}. The middle measures {words.size(quilt.middle)}.",
        range(len(quilt.rows)),
        _grown(quilt, quilt.middle),
    )


def _strip_step(quilt: QuiltDesign, words: _Words, strips: Sequence[int]) -> QuiltStepFacts:
    first = quilt.rows[strips[0]]
    size = words.size((first.breadth, first.length))
    if len(first.members) > 1:
        text = (
            f"Sew posts and sashes end to end, {_members(quilt, first)} in each of {len(strips)}. "
            f"Press toward the sashes. Each measures {size}."
        )
        return _plain("Sew the sashing between the columns", text, strips, _swapped(_unfinished(quilt, first)))
    text = (
        f"Measure the columns and trim the {len(strips)} strips to their length. Each measures {size}. "
        "Mark on both edges where the blocks begin and end, so that the columns stand in line."
    )
    return _plain("Trim the strips between the columns", text, strips)


# --- on point --------------------------------------------------------------------------------------


def _on_point(quilt: QuiltDesign, words: _Words, by_kind: dict[str, list[int]]) -> Iterator[QuiltStepFacts]:
    rows, sash_rows = by_kind["diagonal row"], by_kind.get("sash row", [])
    sides = any(cloth.role == "side triangle" for cloth in quilt.cloth)
    posts = ", with half posts at both ends" if sash_rows else ""
    if sides or len(rows) > 1:
        yield _plain(
            "Sew the diagonal rows",
            "Sew each diagonal row from the lower left end up to the right: a side triangle, the blocks"
            f"{' with a sash on both sides of each' if sash_rows else ''}, a side triangle. Lay the square corner of "
            "the triangle to the edge of the block: its points stand out, and its long edge, which is on the straight "
            "grain, lies outward. The short edges are on the bias: pin them, and do not pull. An end that lies at a "
            "corner of the quilt has no triangle yet. "
            f"{_nesting('row', len(rows), sashed=bool(sash_rows))}",
            rows,
        )
    if sash_rows:
        yield _plain(
            "Sew the sashing between the rows",
            f"Sew the {len(sash_rows)} strips of sashes and posts{posts}; they are of different length. "
            "Press toward the sashes.",
            sash_rows,
        )
    if len(quilt.rows) > 1:
        yield _plain(
            "Join the rows",
            "Sew the rows together from one corner of the quilt to the other, pinned at every seam. "
            "Press the long seams one way.",
            range(len(quilt.rows)),
        )
    yield _plain(
        "Sew on the corners",
        "Fold each corner triangle to find the middle of its long edge, pin that to the middle of the block, and sew "
        "it on; that edge is on the bias, so do not pull it. Press toward the triangle. Square up the edges with a "
        "ruler, a seam allowance outside the points of the blocks, and no less. "
        f"The middle measures {words.size(quilt.middle)}.",
        (),
        _grown(quilt, quilt.middle),
    )


# --- the rest --------------------------------------------------------------------------------------


def _finish(quilt: QuiltDesign) -> Iterator[QuiltStepFacts]:
    if quilt.backing or quilt.wadding:
        yield _plain(
            "Layer and quilt",
            "Press the top well and look for loose threads. Lay the backing wrong side up, the wadding on it, the top "
            "right side up, all smooth; baste, and quilt from the middle outward. Then trim backing and wadding even "
            "with the top, corners square.",
        )
    if quilt.binding:
        kind = "bias " if quilt.binding.bias else ""
        yield _plain(
            "Bind",
            f"Join the {kind}strips on the slant to one length, fold it in half along its length, and sew it round the "
            "quilt with its raw edges to those of the top, a fold at each corner. Turn it to the back and sew it down.",
        )
    if quilt.sleeve:
        yield _plain(
            "Sew on the sleeve",
            "Hem the short ends of the sleeve, fold it along its length, and sew it into the top edge of the back.",
        )


def _unfinished(quilt: QuiltDesign, row: AssemblyRow) -> tuple[Exact, Exact]:
    return _grown(quilt, (row.length, row.breadth))


def _grown(quilt: QuiltDesign, extent: tuple[Exact, Exact]) -> tuple[Exact, Exact]:
    return extent[0] + 2 * quilt.seam, extent[1] + 2 * quilt.seam


def _swapped(extent: tuple[Exact, Exact]) -> tuple[Exact, Exact]:
    return extent[1], extent[0]
