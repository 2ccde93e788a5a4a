"""A quilt's cloth and finishing, worked out by hand from its blocks, borders, binding and back."""

from __future__ import annotations

import json
import pickle
from collections import Counter

import pytest

from blockdsl import pipeline
from blockdsl.analysis import TextReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts.compare_quilts import compare_quilts
from blockdsl.facts.finishingfacts import FabricClothFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry.fraction import Fraction
from blockdsl.wording import facts_json
from tests.outside.published.judge import length

BLOCK = """
block "Light"
  size 6 in
  row lantern/fog

quilt "Shore"
  set straight 4 x 5 of "Light"
"""
WHOLE = (
    "border 3 in slate butted",
    "binding 2 1/4 in slate straight",
    "backing fog overage 3 in",
    "sleeve 4 in fog",
)


def read(*lines: str, slate: str = "") -> tuple[QuiltFacts, list[str]]:
    cloth = f'fabric fog "Fog" #dfe3e0\nfabric lantern "Lantern" #e0a030\nfabric slate "Slate" #3a4750{slate}\n'
    text = cloth + BLOCK + "".join(f"  {line}\n" for line in lines)
    problems = Problems()
    facts = pipeline.run(Source("quilt.block", text), TextReader(), problems).facts
    (quilt,) = facts.quilts
    return quilt, [f"{problem.code}: {problem.message}" for problem in problems if problem.code != "fabric-unused"]


def cloth(quilt: QuiltFacts, fabric: str) -> FabricClothFacts:
    (found,) = [each for each in quilt.fabrics if each.fabric == fabric]
    return found


def bought(quilt: QuiltFacts, fabric: str) -> tuple[Fraction, str]:
    found = cloth(quilt, fabric)
    assert found.plan is not None
    assert found.buy is not None
    return found.plan.length, found.buy.words


@pytest.fixture(scope="module")
def shore() -> QuiltFacts:
    quilt, problems = read(*WHOLE)
    assert problems == []
    return quilt


def test_the_blocks_triangles_are_cut_for_the_whole_quilt_at_once(shore: QuiltFacts) -> None:
    # 20 triangles are 10 squares of 6 7/8 in, five in a strip of 40 in: 13 3/4 in; 2 in more; 18 in are half a yard
    assert bought(shore, "lantern") == (length("13 3/4"), "1/2 yd")


def test_the_sleeve_is_cut_from_its_fabric_with_all_else(shore: QuiltFacts) -> None:
    # the quilt is 30 in wide: a sleeve of 28 x 8 1/2 in; below it the ten squares, two strips of 6 7/8 in
    assert bought(shore, "fog") == (length("22 1/4"), "3/4 yd")
    assert shore.sleeve is not None
    assert shore.sleeve.plan.cut == (Fraction(28), length("8 1/2"))


def test_borders_and_binding_share_their_fabric(shore: QuiltFacts) -> None:
    # four borders of 3 1/2 x 32 1/2 in, 2 in of that to spare, each from a strip; 30 1/2 x 36 1/2 in have a raw edge of
    # 134 in: (134 + 10) / (40 - 2 1/4), so four strips of 2 1/4
    assert bought(shore, "slate") == (4 * length("3 1/2") + 4 * length("2 1/4"), "3/4 yd")
    assert shore.binding is not None
    assert (shore.binding.fabric, shore.binding.plan.strips) == ("slate", 4)


def test_a_back_of_one_width_is_as_long_as_the_quilt_and_its_overage(shore: QuiltFacts) -> None:
    # 30 1/2 x 36 1/2 in raw and 3 in on each side: 36 1/2 x 42 1/2, across cloth of 40 in; 42 1/2 in and 5 % are
    # 44.6 in, so 1 1/4 yd
    assert shore.backing is not None
    plan = shore.backing.plan
    assert (plan.widths, plan.seams, plan.buy.words) == (1, "none", "1 1/4 yd")
    assert plan.need == length("42 1/2")


def test_wadding_is_as_large_as_the_back_unless_it_is_asked_for(shore: QuiltFacts) -> None:
    assert shore.wadding is not None
    assert shore.wadding.size == (length("36 1/2"), length("42 1/2"))
    asked, _ = read(*WHOLE, "wadding overage 4 in")
    assert asked.wadding is not None
    assert asked.wadding.size == (length("38 1/2"), length("44 1/2"))


def test_a_back_of_which_nothing_more_is_said_has_4_in_on_each_side() -> None:
    # 24 × 30 in finished, 32 1/2 × 38 1/2 in with 4 in round the raw top (common practice, no source): the longer side
    # lies across cloth of 40 in.
    quilt, _ = read("backing fog")
    assert quilt.backing is not None
    assert quilt.backing.plan.need == length("32 1/2")


def test_a_quilt_that_asks_for_no_finishing_has_none() -> None:
    bare, problems = read()
    assert problems == []
    assert (bare.backing, bare.binding, bare.wadding, bare.sleeve, bare.scraps) == (None, None, None, None, ())
    assert sorted(each.fabric for each in bare.fabrics) == ["fog", "lantern"]


def test_bias_binding_takes_a_square_of_its_fabric() -> None:
    # 146 1/4 in: six rounds of 2 1/4 in are 13 1/2 in across the slant, a side of 13 1/2 x √2 + 1/2 = 19.59 in. Beside
    # it lie the four borders of 3 1/2 in, 33 5/8 in with it, so that the length of a border is enough for all.
    quilt, _ = read("border 3 in slate butted", "binding 2 1/4 in slate bias")
    assert quilt.binding is not None
    assert quilt.binding.plan.square == length("19 5/8")
    assert bought(quilt, "slate")[0] == length("32 1/2")


def test_a_width_said_for_the_quilt_holds_for_fabrics_that_say_none() -> None:
    # 42 in hold six squares of 6 7/8 in: 10 are still two strips; 28 in hold four, so three strips
    assert bought(read("fabric width 42 in usable")[0], "lantern")[0] == length("13 3/4")
    assert bought(read("fabric width 28 in usable")[0], "lantern")[0] == 3 * length("6 7/8")


def test_cloth_that_is_washed_first_is_bought_longer() -> None:
    # 10 % of 42 1/2 in: 46 3/4 in, so 1 3/8 yd (49 1/2 in)
    quilt, _ = read(*WHOLE, "shrinkage 10 %")
    assert quilt.backing is not None
    assert quilt.backing.plan.buy.words == "1 3/8 yd"


def test_each_piece_of_a_fabric_has_a_key_of_its_own() -> None:
    # The quilt is 24 in wide and 20 in of the slate can be used: a sleeve takes a whole strip and a shorter one.
    quilt, _ = read("border 1 in slate butted", "sleeve 4 in slate", slate=" width 22 in")
    keys = [piece.key for piece in cloth(quilt, "slate").pieces]
    assert keys[-2:] == ["sleeve", "sleeve, last"]
    assert len(keys) == len(set(keys))


# --- scraps --------------------------------------------------------------------------------------


def test_scraps_are_cut_from_fat_quarters_and_not_bought_by_the_length() -> None:
    quilt, problems = read("scraps lantern from 5 fat quarters")
    assert problems == []
    (scraps,) = quilt.scraps
    # four squares of 6 7/8 in from 20 1/2 x 17 1/2 in, two triangles each: eight blocks; twenty blocks, four of a print
    assert (scraps.blocks_each, scraps.uses, scraps.fat_quarters) == (8, (4,) * 5, (1,) * 5)
    # the four blocks of a print take two squares
    assert scraps.layout_blocks == 4
    assert scraps.layout is not None
    assert scraps.layout.count == 1
    (sheet,) = scraps.layout.sheets
    lying = [
        (piece.width, piece.height)
        for strip in sheet.strips
        for _ in range(strip.times)
        for section in strip.sections
        for piece in section.pieces
    ]
    assert lying == [(Fraction(55, 8), Fraction(55, 8))] * 2
    assert (scraps.clashes, scraps.corner_clashes, scraps.proved, scraps.balanced) == (0, 0, True, True)
    lantern = cloth(quilt, "lantern")
    assert (lantern.scraps, lantern.plan, lantern.buy) == (True, None, None)
    assert lantern.fat_quarters is not None
    # twenty blocks, eight from each
    assert lantern.fat_quarters.one_print_a_block == 3


def test_what_is_not_in_the_blocks_is_still_cut_by_the_length() -> None:
    # a border of 3 1/2 x 32 1/2 in four times: 14 in
    quilt, _ = read("border 3 in lantern butted", "scraps lantern from 5 fat quarters")
    assert bought(quilt, "lantern") == (Fraction(14), "1/2 yd")


@pytest.mark.parametrize(
    ("border", "squares", "need"),
    [
        # 9 x 4 units across and down in corner squares, 2 x (4 + 5) of 6 in: 18 triangles are nine squares of 6 7/8 in,
        # five in a strip of 40 in: two strips
        ('border 6 in pieced "Light" corners slate', 9, "13 3/4"),
        # units of 3 in: 2 x (8 + 10) are 36 triangles, eighteen squares of 3 7/8 in, ten in a strip: two strips
        ('border 3 in pieced "Light" corners slate', 18, "7 3/4"),
        ("border 3 in pieced sail corners slate\nunit sail = half lantern fog", 18, "7 3/4"),
    ],
)
def test_scraps_in_a_pieced_border_are_bought_by_the_length(border: str, squares: int, need: str) -> None:
    """Fat quarters are worked out for the blocks alone: what borders take of the fabric is bought besides."""
    quilt, _ = read("scraps lantern from 5 fat quarters", border)
    assert bought(quilt, "lantern")[0] == length(need)
    assert sum(
        count for line in cloth(quilt, "lantern").pieces for use, count in line.uses.items() if "Light: " not in use
    ) == (squares)


def test_fat_quarters_too_few_are_told_with_how_many_would_do() -> None:
    _, problems = read("scraps lantern from 2 fat quarters")
    assert problems == [
        "fat-quarters-too-few: the fat quarters are not enough for `lantern`: one gives 8 blocks, and there are 20"
    ]


def test_prints_that_must_clash_are_told_with_how_few_could() -> None:
    # 4 x 5 blocks have 3 x 5 + 4 x 4 = 31 pairs side by side
    _, problems = read("scraps lantern from 1 fat quarters")
    assert (
        "prints-too-few: 31 pairs of blocks side by side have the same print of `lantern` from 1 print; fewer cannot be"
    ) in problems


# --- cloth that is too narrow --------------------------------------------------------------------


def test_a_binding_wider_than_its_cloth_is_told_and_left_out() -> None:
    quilt, problems = read("binding 2 1/4 in slate straight", slate=" width 6 in")
    assert problems == [
        "piece-wider-than-fabric: a binding of 2 1/4 in is too wide for `slate`: the usable width is 4 in"
    ]
    assert quilt.binding is None


@pytest.mark.parametrize("width", ["1 in", "2 in", "2 1/2 in"])
def test_backing_and_sleeve_of_hardly_any_width_are_told_and_left_out(width: str) -> None:
    quilt, problems = read("backing slate", "sleeve 4 in slate", slate=f" width {width}")
    assert [problem.split(":")[0] for problem in problems] == ["piece-wider-than-fabric"] * 2
    assert (quilt.backing, quilt.sleeve) == (None, None)


def test_a_fabric_that_no_piece_fits_has_no_plan_and_nothing_to_buy() -> None:
    quilt, problems = read("border 3 in slate butted", slate=" width 5 in")
    assert [problem.split(":")[0] for problem in problems] == ["piece-wider-than-fabric"]
    slate = cloth(quilt, "slate")
    assert (slate.plan, slate.buy) == (None, None)
    assert slate.pieces


# --- as data -------------------------------------------------------------------------------------


def test_the_document_says_what_to_buy_as_it_is_asked_for_in_the_shop() -> None:
    problems = Problems()
    text = f'fabric fog "Fog" #dfe3e0\nfabric lantern "Lantern" #e0a030\nfabric slate "Slate" #3a4750\n{BLOCK}'
    text += "".join(f"  {line}\n" for line in WHOLE)
    facts = pipeline.run(Source("quilt.block", text), TextReader(), problems).facts
    (quilt,) = json.loads(facts_json(facts, problems))["quilts"]
    lantern = next(each for each in quilt["fabrics"] if each["fabric"] == "lantern")
    assert (lantern["need"], lantern["bound"], lantern["buy"]) == ("13 3/4", "13 3/4", "1/2 yd")
    (strip,) = lantern["strips"]
    assert (strip["cut"], strip["times"], strip["left"]) == ("6 7/8", 2, "5 5/8")
    assert quilt["backing"]["buy"] == "1 1/4 yd"
    assert quilt["binding"]["strips"] == 4
    assert quilt["wadding"]["size"] == ["36 1/2", "42 1/2"]


@pytest.mark.parametrize("border", ["border 6 in slate mitred", "border 6 in slate mitred along length"])
def test_the_plan_gives_every_piece_that_is_asked_for_once(border: str) -> None:
    quilt, problems = read("blocks 12 in", border, "binding 2 1/4 in slate straight", "sleeve 4 in slate")
    assert problems == []
    for each in quilt.fabrics:
        assert each.plan is not None
        found: Counter[str] = Counter()
        beside = [(strip, panel.times) for panel in each.plan.panels for strip in panel.strips]
        for panel in each.plan.panels:
            for column in panel.columns:
                for piece in column.pieces:
                    found[piece.key] += panel.times
        for strip, times in [*beside, *((strip, 1) for strip in each.plan.strips)]:
            for section in strip.sections:
                for piece in section.pieces:
                    found[piece.key] += strip.times * times
        asked: Counter[str] = Counter()
        chained = {key for joined in each.joined for key in joined.keys}
        for wanted in each.pieces:
            if wanted.key not in chained:
                asked[wanted.key] += wanted.count
        asked.update({joined.key: joined.strips for joined in each.joined})
        assert found == asked


def test_finishing_is_the_same_in_another_process(shore: QuiltFacts) -> None:
    again = pickle.loads(pickle.dumps(shore))  # noqa: S301  # our own bytes
    assert again.fabrics == shore.fabrics
    assert again.backing == shore.backing


def test_facts_are_told_apart_by_what_their_finishing_is_asked_to_be() -> None:
    # what is kept in the cache is found again by how the facts are written out
    same, again = read(*WHOLE)[0], read(*WHOLE)[0]
    assert repr(same) == repr(again)
    others = [
        read(*WHOLE[:2])[0],
        read(*WHOLE, "wadding overage 5 in")[0],
        read(*WHOLE, "scraps lantern from 5 fat quarters")[0],
        read(*WHOLE, slate=" width 44 in")[0],
    ]
    assert len({repr(quilt) for quilt in (same, *others)}) == 5


def test_quilts_stand_beside_each_other_in_one_table() -> None:
    small, _ = read(*WHOLE)
    large, _ = read(*WHOLE, "blocks 9 in")
    table = compare_quilts([small, large])
    assert table.fabrics == tuple(each.fabric for each in small.fabrics)
    one, other = table.rows
    assert (one.blocks, other.blocks) == (20, 20)
    # 4 x 5 blocks of 9 in and a border of 3 in: 42 x 51
    assert one.finished == (Fraction(30), Fraction(36))
    assert other.finished == (Fraction(42), Fraction(51))
    # 48 1/2 x 57 1/2 in for the back: two widths of 48 1/2 in lengthwise cover 79 in, or two of 57 1/2; the shorter
    assert (one.backing_widths, other.backing_widths) == (1, 2)
    assert other.backing is not None
    assert other.backing.need == 97
    place = table.fabrics.index("lantern")
    assert [each.words for row in table.rows if (each := row.cloth[place])] == ["1/2 yd", "1 yd"]
