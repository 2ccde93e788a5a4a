"""One fabric of a whole quilt: lengths joined from strips, lengths cut along the cloth, and what to buy."""

from __future__ import annotations

import pytest

from blockdsl.cutting.cloth import Effort
from blockdsl.cutting.quilt_cloth import Bolt, FabricCloth, QuiltPiece, fabric_cloth, joined_strips, too_large
from blockdsl.geometry.fraction import Fraction
from tests.outside.published.judge import length

BOLT = Bolt(Fraction(40), Fraction(1, 8), Fraction(1, 4), "in")


def piece(key: str, width: str, height: str, count: int, *, lengthwise: bool = False) -> QuiltPiece:
    return QuiltPiece(key, (length(width), length(height)), count, lengthwise=lengthwise, joined=True)


def cloth(*pieces: QuiltPiece) -> FabricCloth:
    return fabric_cloth(pieces, BOLT, Effort.QUICK)


def test_four_borders_are_cut_off_strips_that_are_joined_end_to_end() -> None:
    # 2 of 62 1/2 in and 2 of 66 1/2 in are 258 in. Seven strips of 40 in less six joins of half an inch are 277 in, six
    # are 237 1/2 in. Each border from strips of its own would take eight.
    borders = [piece("sides", "5 1/2", "62 1/2", 2), piece("ends", "5 1/2", "66 1/2", 2)]
    found = joined_strips(length("5 1/2"), borders, BOLT)
    assert found.strips == 7
    assert found.keys == ("sides", "ends")
    # 258 in and six joins, less six strips of 40 in
    assert found.last == 21
    assert cloth(*borders).plan.length == 7 * length("5 1/2")


def test_a_length_that_the_joins_make_too_short_takes_another_strip() -> None:
    # two strips are 80 in, less half an inch for the join
    assert joined_strips(Fraction(2), [piece("a", "2", "79 1/2", 1)], BOLT).strips == 2
    assert joined_strips(Fraction(2), [piece("a", "2", "79 5/8", 1)], BOLT).strips == 3


def test_no_border_ends_in_a_scrap() -> None:
    """Two strips of 40 in give 79 1/2 in; of a third an eighth would do, and with its seam 5/8 in: 4 in are cut."""
    assert joined_strips(Fraction(2), [piece("a", "2", "79 5/8", 1)], BOLT).last == 4
    assert joined_strips(Fraction(2), [piece("a", "2", "83 1/2", 1)], BOLT).last == length("4 1/2")


def test_the_rest_of_the_last_strip_is_there_for_other_pieces() -> None:
    # one border of 60 in from 40 in and 20 1/2 in; beside these lie squares of 5 1/2 in: three, so nothing more is cut
    found = cloth(piece("border", "5 1/2", "60", 1), piece("squares", "5 1/2", "5 1/2", 3))
    assert found.plan.length == 11


def test_borders_cut_along_the_cloth_take_its_length_and_no_join() -> None:
    found = cloth(piece("sides", "5 1/2", "62 1/2", 2, lengthwise=True), piece("squares", "5", "5", 5))
    assert found.joined == ()
    # the five squares lie beside the borders, 29 in wide
    assert found.plan.length == length("62 1/2")


def test_what_is_bought_is_the_plan_and_something_for_washing() -> None:
    # 12 squares of 8 1/2 in: four in a strip of 40 in, so three strips, 25 1/2 in; with 2 in more they are 27 1/2 in.
    # Six eighths of a yard are 27 in, seven 31 1/2 in.
    found = cloth(piece("plain", "8 1/2", "8 1/2", 12))
    assert found.buy.need == length("25 1/2")
    assert found.buy.allowed == 2
    assert found.buy.words == "7/8 yd"


def test_a_piece_that_the_cloth_holds_in_no_way_is_found_before_it_is_planned() -> None:
    wide = piece("back", "41", "60", 1)
    assert too_large([piece("strip", "3", "70", 1), wide], BOLT.usable_width) == wide
    assert too_large([piece("strip", "3", "70", 1)], BOLT.usable_width) is None
    with pytest.raises(ValueError, match="no way to lie"):
        cloth(QuiltPiece("back", (Fraction(41), Fraction(60)), 1))
