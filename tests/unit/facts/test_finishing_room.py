"""Room for real hands: binding and back of the raw top, borders cut to be measured, prints that stand upright.

Every expected value is worked out by hand from the quilt in the test.
"""

from __future__ import annotations

import pytest

from blockdsl import pipeline
from blockdsl.analysis import TextReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts.finishingfacts import FabricClothFacts
from blockdsl.facts.quiltfacts import QuiltFacts
from blockdsl.geometry.fraction import Fraction
from tests.outside.published.judge import length
from tests.unit.model.blocks import exactly

HEAD = """
fabric fog     "Fog"     #dfe3e0
fabric lantern "Lantern" #e0a030
fabric ships   "Ships"   #3a4750 directional
fabric slate   "Slate"   #3a4750

"""


def read(size: str, *lines: str, head: str = HEAD, setting: str = "set straight 1 x 1") -> tuple[QuiltFacts, list[str]]:
    text = f'{head}block "Light"\n  size {size}\n  row lantern fog\n\nquilt "Shore"\n  {setting} of "Light"\n'
    text += "".join(f"  {line}\n" for line in lines)
    problems = Problems()
    facts = pipeline.run(Source("quilt.block", text), TextReader(), problems).facts
    (quilt,) = facts.quilts
    return quilt, [problem.code for problem in problems if problem.code != "fabric-unused"]


def pieces(quilt: QuiltFacts, fabric: str) -> dict[str, list[str]]:
    """For each role the cut sizes of its pieces, `2 @ 2 1/2 x 82`."""
    found: dict[str, list[str]] = {}
    for piece in quilt.pieces:
        if piece.fabric == fabric:
            width, height = piece.cut
            found.setdefault(piece.role, []).append(f"{piece.count} @ {_said(width)} x {_said(height)}")
    return found


def _said(side: Fraction) -> str:
    whole, rest = divmod(side.numerator, side.denominator)
    return f"{whole} {rest}/{side.denominator}" if rest else str(whole)


def cloth(quilt: QuiltFacts, fabric: str) -> FabricClothFacts:
    (found,) = [each for each in quilt.fabrics if each.fabric == fabric]
    return found


# --- binding ---------------------------------------------------------------------------------------


def test_a_straight_binding_reaches_round_the_raw_edge_with_ten_inches_beyond_all_joins() -> None:
    # 40 x 39 in finished is 40 1/2 x 39 1/2 in raw: 160 in of edge. Each of n strips of 42 in loses 2 1/2 in to a
    # join: four give 158 in, five 197 1/2 in.
    quilt, _ = read("40 x 39 in", "binding 2 1/2 in slate straight", "fabric width 42 in usable")
    assert quilt.binding is not None
    plan = quilt.binding.plan
    assert exactly((plan.around, plan.strips, plan.gives)) == (160, 5, length("197 1/2"))


def test_ten_inches_of_room_are_kept_beside_what_the_joins_take() -> None:
    # 37 1/2 + 37 1/2 in raw are 150 in of edge; four strips of 42 in less 2 1/2 in are 158 in, 8 in more than that
    quilt, _ = read("37 in", "binding 2 1/2 in slate straight", "fabric width 42 in usable")
    assert quilt.binding is not None
    assert exactly((quilt.binding.plan.around, quilt.binding.plan.strips)) == (150, 5)


def test_a_bias_binding_reaches_round_the_raw_edge_with_ten_inches_beyond_its_join() -> None:
    # 30 x 36 in is 30 1/2 x 36 1/2 in raw: 134 in, with 10 in and a join of 2 1/4 in 146 1/4 in. Six rounds of
    # 2 1/4 in lie in 13 1/2 in across the slant, a side of 13 1/2 x √2 + 1/2 = 19.59 in: 6 x 27.1 in are 162.6 in.
    quilt, _ = read("30 x 36 in", "binding 2 1/4 in slate bias")
    assert quilt.binding is not None
    plan = quilt.binding.plan
    assert exactly((plan.around, plan.square)) == (134, length("19 5/8"))
    assert plan.gives >= 134 + 10


def test_a_metric_binding_keeps_twenty_five_centimetres() -> None:
    # 100 x 98.5 cm finished is 101.5 x 100 cm raw: 403 cm of edge. 428 cm and 6 cm for each join: five strips of
    # 100 cm give 470 cm, four 376 cm.
    quilt, _ = read("100 x 98.5 cm", "binding 6 cm slate straight")
    assert quilt.binding is not None
    assert exactly((quilt.binding.plan.around, quilt.binding.plan.strips, quilt.binding.plan.gives)) == (403, 5, 470)


# --- backing ---------------------------------------------------------------------------------------


def test_the_back_is_larger_than_the_raw_top_by_the_overage_on_every_side() -> None:
    # 30 x 36 in is 30 1/2 x 36 1/2 in raw; 3 in on each side: 36 1/2 x 42 1/2 in
    quilt, _ = read("30 x 36 in", "backing fog overage 3 in")
    assert quilt.backing is not None
    assert quilt.backing.plan.size == (length("36 1/2"), length("42 1/2"))
    assert quilt.wadding is not None
    assert quilt.wadding.size == (length("36 1/2"), length("42 1/2"))


def test_a_small_overage_never_gives_a_back_smaller_than_the_top() -> None:
    quilt, _ = read("30 x 36 in", "backing fog overage 1/8 in")
    assert quilt.backing is not None
    assert quilt.backing.plan.size == (length("30 3/4"), length("36 3/4"))
    assert all(side > raw for side, raw in zip(quilt.backing.plan.sewn, quilt.unfinished, strict=True))


def test_the_overage_that_saves_a_width_is_beyond_the_raw_top() -> None:
    # 34 in is 34 1/2 in raw; one width of 42 in leaves 3 3/4 in on each side where 4 in are asked for
    quilt, _ = read("34 x 37 in", "backing fog", "fabric width 42 in usable")
    assert quilt.backing is not None
    assert (quilt.backing.plan.widths, quilt.backing.plan.one_fewer) == (2, length("3 3/4"))


# --- borders, cut to be measured -------------------------------------------------------------------


def test_border_strips_are_cut_two_inches_longer_than_the_top_should_measure() -> None:
    # 18 x 24 in, butted: the sides 24 1/2 in and 2 in, top and bottom 22 1/2 in (two borders of 2 in) and 2 in
    quilt, _ = read("18 x 24 in", "border 2 in slate butted")
    assert pieces(quilt, "slate") == {"border": ["2 @ 2 1/2 x 26 1/2", "2 @ 2 1/2 x 24 1/2"]}


def test_mitred_strips_are_the_outer_edge_and_two_inches_long() -> None:
    # 56 1/2 x 83 1/2 in with a border of 5 in is 66 1/2 x 93 1/2 in, 67 x 94 in raw: 69 and 96 in
    quilt, _ = read("56 1/2 x 83 1/2 in", "border 5 in slate mitred along length")
    assert pieces(quilt, "slate") == {"border": ["2 @ 5 1/2 x 96", "2 @ 5 1/2 x 69"]}


def test_what_mitred_strips_have_to_spare_lies_beyond_the_tips_of_their_ends() -> None:
    # Sewn 1/4 in inside its edges, a 45 degree end reaches 1/4 (1 + root 2) in beyond the finished corner: the long
    # strips are 93 1/2 + 1/2 + 1/2 root 2 = 94.71 in from tip to tip, and 96 in leave 1.29 in, at least 1 1/4 in.
    quilt, _ = read("56 1/2 x 83 1/2 in", "border 5 in slate mitred along length")
    assert {piece.to_spare for piece in quilt.pieces if piece.role == "border"} == {length("1 1/4")}
    # with 1 in seams 35 7/8 in for 34.83 in
    quilt, _ = read("20 in\n  seam 1 in", "border 5 in slate mitred along length")
    assert {piece.to_spare for piece in quilt.pieces if piece.role == "border"} == {length("1")}


def test_metric_borders_have_five_centimetres_to_spare() -> None:
    # 60 x 80 cm raw are 61.5 and 81.5 cm; top and bottom of 60 + 2 x 5 + 1.5 cm
    quilt, _ = read("60 x 80 cm", "border 5 cm slate butted")
    assert pieces(quilt, "slate") == {"border": ["2 @ 6 1/2 x 86 1/2", "2 @ 6 1/2 x 76 1/2"]}


def test_mitred_strips_with_a_wide_seam_still_reach_over_their_mitres() -> None:
    # A mitre takes √2 seams beyond the raw corner on both ends: with 1 in seams 2.83 in beyond 32 in, and an inch
    # more is kept. 20 + 2 x 5 in finished, 32 in raw: 35.83 in, rounded up to 35 7/8 in.
    quilt, _ = read("20 in\n  seam 1 in", "border 5 in slate mitred along length")
    assert pieces(quilt, "slate") == {"border": ["4 @ 7 x 35 7/8"]}


def test_strips_between_rows_have_two_inches_to_spare_and_sashes_between_blocks_none() -> None:
    # two by two blocks of 6 in and sashing of 1 in: one strip between the rows, 13 1/2 in, and 2 in
    quilt, _ = read("6 in", "sash 1 in slate", setting="set straight 2 x 2")
    assert pieces(quilt, "slate") == {"sash": ["2 @ 1 1/2 x 6 1/2"], "sash strip": ["1 @ 1 1/2 x 15 1/2"]}


def test_strips_of_a_strippy_quilt_have_two_inches_to_spare() -> None:
    # three blocks of 6 in down: 18 1/2 in and 2 in
    quilt, _ = read("6 in", "sash 4 in slate", setting="set strippy 2 x 3")
    assert pieces(quilt, "slate") == {"strip": ["1 @ 4 1/2 x 20 1/2"]}


def test_joined_strips_give_every_length_with_what_it_has_to_spare() -> None:
    # sides of 62 1/2 in, top and bottom of 56 1/2 in: 238 in in all. Six strips of 40 in less five joins of 1/2 in are
    # 237 1/2 in, so seven.
    quilt, _ = read("50 x 60 in", "border 2 in slate butted")
    (joined,) = cloth(quilt, "slate").joined
    assert pieces(quilt, "slate") == {"border": ["2 @ 2 1/2 x 62 1/2", "2 @ 2 1/2 x 56 1/2"]}
    assert joined.strips == 7


# --- prints that stand upright ---------------------------------------------------------------------


def test_upright_borders_along_the_length_are_bought_and_those_across_are_told() -> None:
    """The sides run up the cloth; top and bottom run across it, or their print would lie on its side."""
    quilt, problems = read("50 x 60 in", "border 3 in ships butted along length")
    ships = cloth(quilt, "ships")
    assert ships.buy is not None
    assert problems == ["directional-border"]
    lying = {piece.cut: piece.lengthwise for piece in quilt.pieces if piece.fabric == "ships"}
    # across the cloth first: sides 3 1/2 in wide and 62 1/2 in long, top and bottom 58 1/2 in wide
    assert lying == {(length("3 1/2"), length("62 1/2")): True, (length("58 1/2"), length("3 1/2")): False}
    # top and bottom are 117 in: three strips of 40 in less two joins of 1/2 in are 119 in
    assert [joined.strips for joined in ships.joined] == [3]


@pytest.mark.parametrize(
    ("lines", "width"),
    [
        # the print stands upright, so the block's own patch of 18 1/2 in lies across 12 in of cloth
        (("alternate ships",), " width 14 in"),
        (("border 14 in slate butted",), ""),
        (("border 14 in ships butted",), " width 14 in"),
        (("border 14 in ships mitred along length",), " width 14 in"),
    ],
)
def test_what_its_cloth_does_not_hold_is_told(lines: tuple[str, ...], width: str) -> None:
    narrow = HEAD.replace('"Slate"   #3a4750', '"Slate" #3a4750 width 14 in')
    head = narrow.replace("directional", f"directional{width}")
    quilt, problems = read("18 x 8 in", *lines, head=head, setting="set straight 3 x 3")
    nothing = [each.fabric for each in quilt.fabrics if each.buy is None]
    assert nothing
    assert problems.count("piece-wider-than-fabric") == len(nothing)


def test_every_fabric_that_does_not_hold_its_pieces_is_told() -> None:
    head = HEAD.replace("#e0a030", "#e0a030 width 6 in").replace("#dfe3e0", "#dfe3e0 width 6 in")
    quilt, problems = read("18 in", head=head)
    assert [each.fabric for each in quilt.fabrics if each.buy is None] == ["fog", "lantern"]
    assert problems.count("piece-wider-than-fabric") >= 2
