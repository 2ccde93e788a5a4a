"""Where seams meet in a joint: whether they nest, and whether the words say so."""

from __future__ import annotations

from tests.outside.reader.cloth import HAIR, Cloth, End, Stretch, cross, dot, near, unit
from tests.outside.reader.table import Refused

NEST = r"(?P<nest>, nesting(?: the seams| all seams)?|, matching(?: the seams| all seams)?)?"


BY_HAND = "by hand"
"""Over papers folds lie on folds, and nothing nests."""
CURVED = 0.1
"""How far the first short line of an arc may lie from the arc's own direction."""


def crossings(on: Cloth, base: Cloth, stretches: list[Stretch]) -> list[bool]:
    """At each place in a joint where seams lie on each other when it is closed: whether their allowances are opposite.

    Seams lie on each other when one is the mirror image of the other in the joint. Where some cross it squarely, the
    slanted ones beside them are not held to anything.
    """
    along = unit(stretches[0].b - stretches[0].a)
    found: list[bool] = []
    for mine, theirs in meetings(on, base, stretches):
        pairs = [(p, q) for p in mine for q in theirs if _lie_on_each_other(p, q, along)]
        upright = [(p, q) for p, q in pairs if abs(dot(p.into, along)) < (CURVED if p.curved else HAIR)]
        found.extend(_leans(p, along) * _leans(q, along) < 0 for p, q in upright or pairs)
    return found


def _butting(on: Cloth, base: Cloth, stretches: list[Stretch]) -> list[bool]:
    along = unit(stretches[0].b - stretches[0].a)
    return [
        _leans(p, along) * _leans(q, along) < -HAIR
        for mine, theirs in meetings(on, base, stretches)
        for p in mine
        for q in theirs
    ]


def _lie_on_each_other(p: End, q: End, along: complex) -> bool:
    mirrored = along * (q.into / along).conjugate()
    return abs(p.into - mirrored) < (CURVED if p.curved or q.curved else HAIR)


def _leans(end: End, along: complex) -> float:
    """Above zero where the allowance lies the way the joint runs."""
    return end.lies * dot(1j * end.into, along)


def meetings(on: Cloth, base: Cloth, stretches: list[Stretch]) -> list[tuple[list[End], list[End]]]:
    inner: list[complex] = []
    for end in on.ends:
        if not any(near(end.at, at) for at in inner) and _is_inside(end.at, stretches):
            inner.append(end.at)
    found = []
    for at in inner:
        mine = [end for end in on.ends if near(end.at, at)]
        theirs = [end for end in base.ends if near(end.at, at)]
        if mine and theirs:
            found.append((mine, theirs))
    return found


def _is_inside(point: complex, stretches: list[Stretch]) -> bool:
    """Whether a point lies in a joint, not at either end of it."""
    on = any(
        abs(cross(unit(s.b - s.a), point - s.a)) < HAIR
        and -HAIR < dot(unit(s.b - s.a), point - s.a) < abs(s.b - s.a) + HAIR
        for s in stretches
    )
    touching = sum(near(point, end) for s in stretches for end in (s.a, s.b))
    return on and touching != 1


def check_nest(on: Cloth, base: Cloth, stretches: list[Stretch], nest: str | None) -> None:
    """`Nesting` must nest at every crossing; where seams meet and it is not said, or nothing meets and it is, is wrong.

    Errors: Refused.
    """
    meet = crossings(on, base, stretches)
    if nest == BY_HAND:
        return
    if nest and nest.endswith(" where any"):
        if nest.startswith("nest") and not all(meet):
            raise Refused(f"{meet.count(False)} of {len(meet)} crossings do not nest")
        return
    if nest == "nest" and not meet:
        # Seams that meet at different slants do not lie on each other, but their allowances may still butt.
        meet = [lean for lean in _butting(on, base, stretches) if lean]
    if nest == "nest" and not meet:
        raise Refused("nothing is there to nest")
    if nest == "nest" and not all(meet):
        raise Refused(f"{meet.count(False)} of {len(meet)} crossings do not nest")
    if nest == "match" and meet and all(meet):
        raise Refused("all seams nest here, and are only matched")
    if nest == "match" and not meetings(on, base, stretches):
        raise Refused("no seams meet that could be matched")
    if nest is None and meet:
        raise Refused(f"seams meet at {len(meet)} places, and neither nesting nor matching is said")


def nesting(said: str | None) -> str | None:
    return None if not said else "nest" if "nest" in said else "match"
