"""Borders and rounds in words: measured through the middle, cut to that, sewn on side by side."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from blockdsl.facts.quiltfacts import QuiltStepFacts, RingFacts
from blockdsl.geometry import Exact
from blockdsl.model.lengths import about
from blockdsl.model.quilt import QuiltDesign

_WHY = "Edges stretch and the middle does not, so a border cut to the middle lies flat."


def ring_steps(quilt: QuiltDesign, rings: Sequence[RingFacts]) -> Iterator[QuiltStepFacts]:
    """One step for each ring, from the inside out."""
    for ring in rings:
        name = _name(ring, rings)
        text = _pieced(quilt, ring) if ring.unit else _plain(quilt, ring)
        yield QuiltStepFacts(0, f"Sew on the {name}", f"{text} {_ends(quilt, ring)}", ring.unfinished, ring=ring.number)


def _name(ring: RingFacts, rings: Sequence[RingFacts]) -> str:
    same = [each for each in rings if each.word == ring.word]
    return (
        ring.word
        if len(same) == 1
        else f"{_ORDINALS.get(same.index(ring) + 1, f'{same.index(ring) + 1}th')} {ring.word}"
    )


_ORDINALS = {1: "first", 2: "second", 3: "third", 4: "fourth", 5: "fifth", 6: "sixth"}


def _said(quilt: QuiltDesign, length: Exact) -> str:
    """A finished length with its seam allowances, as it is measured."""
    return f"{about(length + 2 * quilt.seam, quilt.unit, quilt.measure)} {quilt.unit}"


def _ends(quilt: QuiltDesign, ring: RingFacts) -> str:
    across, down = (about(side, quilt.unit, quilt.measure) for side in ring.unfinished)
    return f"The top now measures {across} x {down.removeprefix('about ')} {quilt.unit}, raw edge to raw edge."


def _plain(quilt: QuiltDesign, ring: RingFacts) -> str:
    width, height = ring.before
    if ring.corners == "mitred":
        return _mitred(quilt)
    if ring.corners == "squares":
        return (
            f"Measure the top through the middle both ways, {_said(quilt, height)} down and {_said(quilt, width)} "
            f"across, and trim two strips to each length before any is sewn on. {_WHY} Sew the side strips on, pinned "
            "at the middle and the ends. Sew a corner square to both ends of the other two, press toward the strip, "
            "and sew them to top and bottom, the seams of the squares beside those of the sides. Press toward the "
            "border."
        )
    first, second = ("top to bottom", "side to side") if ring.sides_first else ("side to side", "top to bottom")
    one, other = (height, ring.after[0]) if ring.sides_first else (width, ring.after[1])
    where, then = ("the sides", "top and bottom") if ring.sides_first else ("top and bottom", "the sides")
    return (
        f"Measure the top through the middle from {first}; it should be {_said(quilt, one)}. Trim two strips to "
        f"what you measure. {_WHY} Mark middle and quarters of strip and edge, pin, and sew them to {where}. Press "
        f"toward the border. Measure through the middle from {second}, the new strips included, {_said(quilt, other)}; "
        f"trim the other two strips to that and sew them to {then} in the same way."
    )


def _mitred(quilt: QuiltDesign) -> str:
    allowance = about(quilt.seam, quilt.unit, quilt.measure)
    return (
        "Mark the middle of all four strips and of all four edges. Pin a strip to each edge, middle to middle, so that "
        f"it stands out as far at both ends, and sew from {allowance} {quilt.unit} inside one corner to {allowance} "
        f"{quilt.unit} inside the other, the ends of the seam fastened. At each corner fold the top on the diagonal, "
        "the two strips right sides together, draw a line that goes on along the fold, and sew on it from the inner "
        "corner outward. See that it lies flat before you cut off the rest a seam allowance outside the line. Press "
        "the mitre open and the long seams toward the border."
    )


def _pieced(quilt: QuiltDesign, ring: RingFacts) -> str:
    of_ring = [place for place in quilt.blocks if place.ring == ring.number]
    sides = Counter(place.row for place in of_ring)
    order = (("right", 1), ("left", 3), ("top", 0), ("bottom", 2))
    said = ", ".join(f"{sides[side]} for the {name}" for name, side in order)
    corners = "Sew a corner square to both ends of the strips for top and bottom. " if ring.corners == "squares" else ""
    first, then = ("the sides", "top and bottom") if ring.sides_first else ("top and bottom", "the sides")
    return (
        f"Sew the units ({ring.unit}) end to end as the picture shows: {said}. {corners}Compare each strip with its "
        f"edge, and take its seams in or let them out a thread's width until they agree. Sew the strips to {first}, "
        f"then to {then}, pinned at the middle and at every unit. Press away from the units."
    )
