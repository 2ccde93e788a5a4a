"""Where seams meet in a joint: whether they nest, and whether the words say so."""

from __future__ import annotations

from tests.outside.reader.cloth import HAIR, Cloth, End, Stretch, cross, dot, near, unit
from tests.outside.reader.table import Refused

NEST = r"(?P<nest>, nesting(?: the seams| all seams)?|, matching(?: the seams| all seams)?)?"


def crossings(on: Cloth, base: Cloth, stretches: list[Stretch]) -> list[bool]:
    """At each place inside a joint where straight seams of both meet: whether their allowances lie opposite."""
    along = unit(stretches[0].b - stretches[0].a)
    found: list[bool] = []
    for mine, theirs in meetings(on, base, stretches):
        straight = [(p, q) for p in mine for q in theirs if near(p.into, -q.into)]
        upright = [(p, q) for p, q in straight if abs(dot(p.into, along)) < HAIR]
        if straight:
            # Where a seam crosses squarely the slanted ones beside it are not held to anything.
            found.extend(p.lies * q.lies > 0 for p, q in upright or straight)
        else:
            sides = [(p, q) for p in mine for q in theirs]
            found.extend(p.lies * q.lies * dot(1j * p.into, along) * dot(1j * q.into, along) < -HAIR for p, q in sides)
    return found


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
    if nest == "nest" and not meet:
        raise Refused("nothing is there to nest")
    if nest == "nest" and not all(meet):
        raise Refused(f"{meet.count(False)} of {len(meet)} crossings do not nest")
    if nest == "match" and not meet:
        raise Refused("no seams meet that could be matched")
    if nest is None and meet:
        raise Refused(f"seams meet at {len(meet)} places, and neither nesting nor matching is said")


def nesting(said: str | None) -> str | None:
    return None if not said else "nest" if "nest" in said else "match"
