"""Published quilts written in the language: their blocks, setting pieces, strips and cloth as they are printed."""

from __future__ import annotations

from collections import Counter

import pytest

from blockdsl import pipeline
from blockdsl.analysis import TextReader
from blockdsl.cutting.buying import buy
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts.finishingfacts import FabricClothFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.lengths import write_length
from tests.outside.published.judge import length
from tests.unit.model.blocks import exactly

NINE_PATCH = """
fabric dark  "Dark"    #202020
fabric light "Light"   #f4f4f4
fabric plain "Setting" #3c78b4
fabric edge  "Binding" #96a03c
fabric back  "Backing" #b43c3c

block "Nine Patch"
  size 6 in
  row dark  light dark
  row light dark  light
  row dark  light dark

quilt "Nine Patches"
  binding 2 1/4 in edge straight
  fabric width 42 in usable
"""
STARS = """
fabric tan   "Tan"     #d8c8a8
fabric star  "Stars"   #b43c3c
fabric brown "Brown"   #503828
fabric back  "Backing" #96a03c

block "Star"
  size 8 in
  columns 1 2 1
  heights 1 2 1
  row tan                      (geese tan on star)>>  tan
  row (geese tan on star)>     star                   (geese tan on star)<
  row tan                      (geese tan on star)    tan
  make geese as stitch and flip

quilt "Stars"
  set straight 2 x 2 of "Star"
  sash 2 in brown
  border 2 in brown butted
  binding 2 1/2 in brown straight
  backing back overage 3 1/4 in
  fabric width 42 in usable
"""
NOTHING = Fraction(0)


def read(*lines: str, text: str = NINE_PATCH) -> QuiltFacts:
    problems = Problems()
    text += "".join(f"  {line}\n" for line in lines)
    facts = pipeline.run(Source("nine.block", text), TextReader(), problems).facts
    assert [problem.message for problem in problems if problem.code != "fabric-unused"] == []
    (quilt,) = facts.quilts
    return quilt


def cloth(quilt: QuiltFacts, fabric: str) -> FabricClothFacts:
    (found,) = [each for each in quilt.fabrics if each.fabric == fabric]
    return found


def sizes(quilt: QuiltFacts, fabric: str) -> dict[str, int]:
    return {str(each.cut[0]): each.count for each in cloth(quilt, fabric).pieces}


@pytest.fixture(scope="module")
def straight() -> QuiltFacts:
    # Nine Patch with Setting Blocks, Karen Says Sew —
    # http://karensayssew.blogspot.com/2010/08/nine-patch-with-setting-blocks.html: 66 x 90, 11 x 15 blocks of 6 in
    return read('set straight 11 x 15 of "Nine Patch"', "alternate plain", "backing back overage 4 in")


@pytest.fixture(scope="module")
def on_point() -> QuiltFacts:
    # To the Point, Karen Says Sew — http://karensayssew.blogspot.com/2010/08/to-point.html: 68 x 85, 8 x 10 on point
    return read('set on point 8 x 10 of "Nine Patch"', "alternate plain", "fill plain")


def test_nine_patches_and_setting_blocks_are_as_many_as_published(straight: QuiltFacts) -> None:
    assert straight.finished == (Fraction(66), Fraction(90))
    assert dict(straight.blocks) == {"Nine Patch": 83}
    assert sizes(straight, "plain") == {"13/2": 82}


def test_the_setting_blocks_come_of_fourteen_strips_as_published(straight: QuiltFacts) -> None:
    # 14 @ 6 1/2 x the width of the cloth; 2 2/3 yd
    plan = cloth(straight, "plain").plan
    assert plan is not None
    assert (plan.strip_count, plan.length) == (14, Fraction(91))
    assert plan.length <= length("2 2/3") * 36


def test_the_back_is_five_and_a_half_yards_as_published_and_the_binding_a_strip_more(straight: QuiltFacts) -> None:
    # 8 strips of 42 in are published; less a join of 2 1/4 in each they are 318 in, for a raw edge of 66 1/2 and
    # 90 1/2 in twice, 314 in. With 10 in of room it takes nine.
    assert straight.binding is not None
    assert exactly((straight.binding.plan.around, straight.binding.plan.strips)) == (314, 9)
    assert straight.backing is not None
    assert buy(straight.backing.plan.need, "in", NOTHING, NOTHING).words == "5 1/2 yd"


def test_on_point_nine_patches_setting_squares_and_triangles_are_as_many_as_published(on_point: QuiltFacts) -> None:
    assert dict(on_point.blocks) == {"Nine Patch": 80}
    # 63 setting squares; 32 side triangles, four from a square of 9 3/4 in; four corners, two from 5 1/8 in
    assert sizes(on_point, "plain") == {"39/4": 8, "13/2": 63, "41/8": 2}
    assert {piece.role: piece.count for piece in on_point.pieces} == {
        "plain square": 63,
        "side triangle": 32,
        "corner triangle": 4,
    }


def test_on_point_the_quilt_is_as_large_as_published_to_the_eighth(on_point: QuiltFacts) -> None:
    # 68 x 85 with diagonals of 8 1/2 in; exactly 48 and 60 times √2
    for side, printed in zip(on_point.finished, (68, 85), strict=True):
        assert printed - Fraction(1, 4) < side < printed


def test_on_point_three_yards_are_enough_for_the_setting_and_two_thirds_for_the_binding(on_point: QuiltFacts) -> None:
    for fabric, yards in (("plain", "3"), ("edge", "2/3")):
        bought = cloth(on_point, fabric).buy
        assert bought is not None
        assert bought.length <= length(yards) * 36


# Shoofly Stars tabletop, 22 1/2 in square with its seams —
# https://www.allpeoplequilt.com/quilt-patterns/table-runners/shoofly-stars-tabletop-quilt


@pytest.fixture(scope="module")
def stars() -> QuiltFacts:
    return read(text=STARS)


def lines(quilt: QuiltFacts, fabric: str) -> Counter[str]:
    """`2 1/2 x 4 1/2`: how many pieces of each size."""
    found: Counter[str] = Counter()
    for each in cloth(quilt, fabric).pieces:
        found[" x ".join(write_length(side, "in") for side in sorted(each.cut))] += each.count
    return found


def test_a_tabletop_quilt_is_cut_as_published_piece_by_piece(stars: QuiltFacts) -> None:
    assert stars.unfinished == (length("22 1/2"), length("22 1/2"))
    # tan: 16 @ 2 1/2 x 4 1/2, 16 @ 2 1/2
    assert lines(stars, "tan") == {"2 1/2 x 4 1/2": 16, "2 1/2 x 2 1/2": 16}
    # brown: 3 @ 2 1/2 x 42 (binding), 2 @ 2 1/2 x 22 1/2, 3 @ 2 1/2 x 18 1/2, 2 @ 2 1/2 x 8 1/2; the border and the
    # strip between the rows, which are trimmed to what the top measures, are cut 2 in longer than published
    assert lines(stars, "brown") == {
        "2 1/2 x 42": 3,
        "2 1/2 x 24 1/2": 2,
        "2 1/2 x 20 1/2": 3,
        "2 1/2 x 8 1/2": 2,
    }


def test_a_tabletop_quilt_takes_no_more_cloth_than_published(stars: QuiltFacts) -> None:
    # tan 1/4 yd, brown 5/8 yd, backing 7/8 yd for batting of 29 in square: 3 1/4 in beyond 22 1/2 in on every side
    for fabric, yards in (("tan", "1/4"), ("brown", "5/8")):
        bought = cloth(stars, fabric).buy
        assert bought is not None
        assert bought.length <= length(yards) * 36
    assert stars.backing is not None
    assert stars.backing.plan.size == (Fraction(29), Fraction(29))
    assert stars.backing.plan.buy.words == "7/8 yd"
