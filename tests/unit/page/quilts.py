"""Quilts for the tests of pages: one of each setting, in inches and centimetres."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache

from msgspec.structs import replace

from blockdsl.facts import QuiltFacts
from tests.unit.model.blocks import CLOTH, read
from tests.unit.model.quilts import quilt

FINISHED = ("binding 2 1/4 in slate straight", "backing fog overage 4 in", "sleeve 4 in fog")
METRIC = """
block "Windmill"
  size 24 cm
  row fog\\slate  fog/slate
  row slate/fog  slate\\fog
quilt "Mudflats"
  set straight 5 x 6 of "Windmill"
  alternate lantern
  sash 4 cm slate
  border 8 cm lantern mitred
  binding 6 cm slate straight
  backing fog overage 10 cm
"""


@cache
def harbour_quilt() -> QuiltFacts:
    """Pinwheels on point with all that a quilt can have; it is called Harbour Light."""
    lines = (
        'set on point 3 x 4 of "Pin"',
        'alternate "Four"',
        "fill fog",
        "sash 1 in slate posts lantern",
        "border 2 in lantern corners slate",
        "border 4 in slate mitred along length",
        "border 1 in fog",
        'colourway "Night" on every second',
        'note "Every second block is of the night."',
    )
    return replace(quilt(*lines, *FINISHED), name="Harbour Light")


@cache
def scrappy() -> QuiltFacts:
    """Forty-two blocks, their slate from seven prints."""
    return quilt(
        'set straight 6 x 7 of "Pin"', "sash 1 in lantern posts slate", "scraps slate from 7 fat quarters", *FINISHED
    )


@cache
def strippy() -> QuiltFacts:
    """Columns of blocks with strips between them and outside."""
    return quilt('set strippy 4 x 9 of "Chain"', "sash 4 in lantern outer", "border 4 in slate", *FINISHED)


@cache
def medallion() -> QuiltFacts:
    """A block and rounds about it: plain, of blocks, pieced of units."""
    return quilt(
        'set medallion of "Pin"',
        "round 3 in lantern",
        'round "Four"',
        "border 3 in pieced beam corners slate",
        FINISHED[0],
    )


@cache
def dropped() -> QuiltFacts:
    """Dropped columns whose ends are half blocks, pieced."""
    return quilt('set dropped columns 4 x 5 of "Four"', "border 2 in fog butted")


@cache
def place_by_place() -> QuiltFacts:
    """Blocks by name and turn, with nothing but the top."""
    return quilt('row "Pin" "Four" "Pin">', 'row "Four" fog "Four"', 'row "Pin"< "Four" "Pin">>')


@cache
def metric() -> QuiltFacts:
    """In centimetres."""
    facts, problems = read(CLOTH + METRIC)
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    return facts.quilts[0]


ALL: dict[str, Callable[[], QuiltFacts]] = {
    "on point": harbour_quilt,
    "scraps": scrappy,
    "strippy": strippy,
    "medallion": medallion,
    "dropped": dropped,
    "place by place": place_by_place,
    "metric": metric,
}
