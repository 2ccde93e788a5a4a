"""How seams are pressed: whose choice holds for a block, wherever it is printed."""

from __future__ import annotations

import pytest

from blockdsl.facts import FileFacts
from tests.unit.model.blocks import CLOTH, read

OF_CLOTH = ("fabric-unused", "brought-in-twice")
FOUR = "  size 6 in\n  row fog slate\n  row slate fog\n"
SHORE = {"shore.block": f'{CLOTH}\nblock "Shore"\n{FOUR}'}
OWN = f'use "shore.block"\n{CLOTH}\nblock "Plain"\n{FOUR}\nblock "Own"\n{FOUR}  press toward dark\n'
QUILT = 'quilt "Top"\nset straight 2 x 2 of "Plain"\nalternate "Own"\n'
BOOK = 'book "All"\nblock "Plain"\nblock "Own"\nblock "Shore" sizes 4 in\nquilt "Top"\n'


def pressed(text: str, files: dict[str, str] | None = None) -> FileFacts:
    facts, problems = read(text, SHORE | (files or {}))
    assert [problem.code for problem in problems if problem.code not in OF_CLOTH] == []
    return facts


def in_quilt(facts: FileFacts) -> dict[str, str]:
    return {kind.name: kind.block.pressing for kind in facts.quilts[0].kinds}


def in_book(facts: FileFacts) -> dict[str, str]:
    return {block.name: block.sizes[0].pressing for block in facts.books[0].blocks}


def in_quilt_of_book(facts: FileFacts) -> dict[str, str]:
    return {kind.name: kind.block.pressing for quilt in facts.books[0].quilts for kind in quilt.kinds}


def own(facts: FileFacts) -> dict[str, str]:
    return {block.name: block.pressing for block in facts.blocks}


def test_where_nobody_says_anything_seams_are_pressed_as_they_nest() -> None:
    facts = pressed(OWN + QUILT + BOOK)
    assert own(facts) == {"Plain": "as it nests", "Own": "toward dark", "Shore": "as it nests"}
    assert facts.quilts[0].pressing == facts.books[0].pressing == "as it nests"


def test_a_maker_holds_for_all_blocks_but_one_that_says_otherwise() -> None:
    facts = pressed(OWN + QUILT + BOOK + 'maker "Me"\npress open\n')
    wanted = {"Plain": "open", "Own": "toward dark"}
    assert own(facts) == in_book(facts) == wanted | {"Shore": "open"}
    assert in_quilt(facts) == in_quilt_of_book(facts) == wanted
    assert facts.quilts[0].pressing == facts.books[0].pressing == "open"


def test_a_maker_in_a_used_file_holds_too() -> None:
    facts = pressed('use "maker.block"\n' + OWN, {"maker.block": 'maker "Me"\n  press open\n'})
    assert own(facts)["Plain"] == "open"


def test_a_quilt_holds_for_its_own_blocks_alone_and_stands_over_book_and_maker() -> None:
    text = OWN + QUILT + "press as it nests\n" + BOOK + 'press open\nmaker "Me"\npress open\n'
    facts = pressed(text)
    assert in_quilt(facts) == in_quilt_of_book(facts) == {"Plain": "as it nests", "Own": "toward dark"}
    assert own(facts)["Plain"] == in_book(facts)["Plain"] == "open"


def test_a_book_holds_for_blocks_of_other_files_and_for_a_quilt_that_says_nothing() -> None:
    facts = pressed(OWN + QUILT + BOOK + "press open\n")
    assert in_book(facts) == {"Plain": "open", "Own": "toward dark", "Shore": "open"}
    assert in_quilt_of_book(facts) == {"Plain": "open", "Own": "toward dark"}
    assert in_quilt(facts) == {"Plain": "as it nests", "Own": "toward dark"}
    assert own(facts)["Shore"] == "as it nests"


def test_a_further_size_of_a_block_is_pressed_as_the_block_is() -> None:
    facts = pressed(OWN.replace("size 6 in", "size 6 in\n  sizes 4 in", 1) + 'maker "Me"\npress open\n')
    assert [size.pressing for block in facts.blocks for size in block.sizes if block.name == "Plain"] == ["open"]


@pytest.mark.parametrize("written", ["towards dark", "toward the dark", "towards the dark"])
def test_the_dark_may_be_spelt_and_said_in_more_than_one_way(written: str) -> None:
    assert own(pressed(OWN.replace("toward dark", written)))["Own"] == "toward dark"


def test_a_second_maker_is_pointed_at_in_its_own_file_with_the_place_of_the_first() -> None:
    files = {"maker.block": 'maker "Her"\n  press open\n'} | SHORE
    _, problems = read('use "maker.block"\nmaker "Me"\n' + OWN, files)
    (found,) = [problem for problem in problems if problem.code not in OF_CLOTH]
    assert (found.code, found.span.text, found.related[0][0].text) == ("maker-twice", '"Me"', '"Her"')


def test_a_block_with_a_press_line_below_a_book_is_a_new_block() -> None:
    facts = pressed(f'{CLOTH}\nbook "All"\nblock "Plain"\npress open\nblock "Plain"\npress toward dark\n{FOUR}')
    assert own(facts) == {"Plain": "toward dark"}
    assert facts.books[0].pressing == "open"
