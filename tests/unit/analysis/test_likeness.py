"""Every library block is known again, whatever is done to it, and taken for no other."""

from __future__ import annotations

import random
from collections import defaultdict
from functools import cache

import pytest
from msgspec.structs import replace

from blockdsl import pipeline
from blockdsl.analysis.inputs import RememberingReader, open_input, project_folder
from blockdsl.analysis.likeness import Form, Likeness, likeness_of, units_of
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.symmetry import ALL_EIGHT
from blockdsl.model import BlockDesign
from blockdsl.resources import library_names, library_path
from tests.unit.model.blocks import read_program

ALIKE: set[frozenset[str]] = set()
"""Library blocks that are one block under two names: none."""


CORNER = Fraction(7, 3), Fraction(2)


@cache
def designs() -> tuple[BlockDesign, ...]:
    found: list[BlockDesign] = []
    for name in library_names():
        if not name.startswith("demo/"):
            path = library_path(name)
            origin = open_input(str(path))
            found += pipeline.analyse(origin.source, RememberingReader(project_folder(path)), origin.problems).blocks
    return tuple(found)


@cache
def names_by_form() -> dict[Form, list[str]]:
    found: dict[Form, list[str]] = defaultdict(list)
    for design in designs():
        found[likeness_of(design).form].append(design.name)
    return found


def changed(design: BlockDesign, chance: random.Random) -> Likeness:
    """The block turned or mirrored, in other fabrics, its patches drawn in another order, moved."""
    symmetry = chance.choice(ALL_EIGHT)
    fabrics = sorted({patch.fabric for patch in design.patches})
    others = [f"cloth {number}" for number in range(len(fabrics))]
    chance.shuffle(others)
    cloth = dict(zip(fabrics, others, strict=True))
    patches = [
        replace(
            patch.turned(symmetry, design.width, design.height).moved(*CORNER),
            fabric=cloth[patch.fabric],
        )
        for patch in design.patches
    ]
    chance.shuffle(patches)
    return Likeness(patches, CORNER, symmetry.turned_extent(design.width, design.height))


def test_no_two_blocks_of_the_library_are_one() -> None:
    twice = {frozenset(names) for names in names_by_form().values() if len(names) > 1}
    assert twice == ALIKE
    assert len(designs()) > 120


def test_every_library_block_is_known_when_it_is_turned_mirrored_and_recoloured() -> None:
    chance = random.Random(1)  # noqa: S311 - the same changes every time
    for design in designs():
        assert names_by_form()[changed(design, chance).form] == [design.name]


def test_every_library_block_is_known_at_another_size() -> None:
    for design in designs():
        for size in design.sizes[:1]:
            assert names_by_form()[likeness_of(size).form] == [design.name]


PINWHEEL = ("row fog\\slate fog/slate", "row slate/fog slate\\fog")


@pytest.mark.parametrize(
    ("lines", "size"),
    [
        (("row slate\\fog slate/fog", "row fog/slate fog\\slate"), "9 in"),
        (("row moss\\lantern moss/lantern", "row lantern/moss lantern\\moss"), "30 cm"),
        (("row slate\\fog slate/fog", "row fog/slate fog\\slate"), "5 in"),
    ],
)
def test_a_pinwheel_is_a_pinwheel_either_way_round_in_any_colours_and_size(lines: tuple[str, ...], size: str) -> None:
    assert likeness_of(read_program(*lines, size=size)).form == likeness_of(read_program(*PINWHEEL)).form


def test_four_half_squares_that_do_not_turn_are_no_pinwheel() -> None:
    broken = read_program("row fog\\slate fog/slate", "row fog/slate fog\\slate")
    assert likeness_of(broken).form != likeness_of(read_program(*PINWHEEL)).form
    # Two of its four pairs lie with light and dark exchanged: two patches each.
    assert likeness_of(broken).patches_that_differ(likeness_of(read_program(*PINWHEEL))) == 4


def test_one_patch_of_another_fabric_is_one_patch() -> None:
    odd = read_program("row fog\\slate fog/slate", "row slate/fog slate\\moss")
    assert likeness_of(odd).patches_that_differ(likeness_of(read_program(*PINWHEEL))) == 1


def test_seams_count() -> None:
    plain, cut = (read_program(f"row {cell} slate", size="12 x 6 in") for cell in ("fog", "fog/fog"))
    assert likeness_of(plain).patches_that_differ(likeness_of(cut)) is None


def test_a_round_corner_is_not_a_straight_one() -> None:
    round_, straight = read_program("row (curve fog in slate)"), read_program("row (diamond fog on slate)")
    hollow = read_program("row (curve slate in fog)")
    assert likeness_of(round_).form != likeness_of(straight).form
    assert likeness_of(round_).form == likeness_of(hollow).form


def test_units_are_known_where_they_lie_turned() -> None:
    above = "unit sail\n  row fog\\slate slate\n  row slate fog"
    design = read_program("row sail sail>", "row sail< sail>>", above=above)
    ((name, likeness),) = units_of(design)
    alone = read_program("row slate slate/fog", "row fog slate")
    assert name == "sail"
    assert likeness.form == likeness_of(alone).form
