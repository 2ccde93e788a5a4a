"""Books: blocks found, laid out at each size; words and paper; what is told when something is missing."""

from __future__ import annotations

import json

import pytest

from blockdsl.diagnostics import Problems
from blockdsl.facts import BlockFacts, BookFacts
from blockdsl.geometry.fraction import Fraction as F  # noqa: N817 - they stand in tables of sizes
from blockdsl.wording import facts_json
from tests.unit.model.blocks import CLOTH, read

OF_CLOTH = ("fabric-unused", "brought-in-twice")
TWO = f"""{CLOTH}
block "Two"
  size 8 x 4 in
  seam 3/8 in
  make half as two at a time
  row fog/slate  lantern
  expect finished 8 x 4 in
"""


def book(lines: str, text: str = TWO, files: dict[str, str] | None = None) -> tuple[BookFacts, list[tuple[str, str]]]:
    """The only book of a file, with what is wrong by code and place; what is told of its cloth plays no part."""
    facts, problems = read(f'{text}\nbook "All"\n{lines}\n', files)
    told = [(problem.code, problem.span.text) for problem in problems if problem.code not in OF_CLOTH]
    return facts.books[0], told


def sizes(found: BookFacts) -> list[BlockFacts]:
    return [facts for block in found.blocks for facts in block.sizes]


def test_a_block_without_sizes_is_printed_at_its_own() -> None:
    found, told = book('block "Two"')
    assert told == []
    assert [facts.finished for facts in sizes(found)] == [(F(8), F(4))]


def test_a_size_is_the_width_and_the_height_keeps_the_proportion() -> None:
    found, told = book('block "Two" sizes 4 8 13 1/2 in')
    assert told == []
    assert [facts.finished for facts in sizes(found)] == [(4, 2), (8, 4), (F(27, 2), F(27, 4))]


def test_in_the_blocks_own_unit_its_own_seam_allowance_holds_and_in_the_other_the_usual_one() -> None:
    found, _ = book('block "Two" sizes 4 in 20 cm')
    inches, centimetres = sizes(found)
    assert (inches.seam, inches.measure) == (F(3, 8), F(1, 8))
    assert (centimetres.unit, centimetres.seam, centimetres.measure) == ("cm", F(3, 4), F(1, 10))
    assert centimetres.unfinished == (F(43, 2), F(23, 2))


def test_millimetres_are_told_in_centimetres() -> None:
    found, _ = book('block "Two" sizes 200 mm')
    assert [(facts.unit, facts.finished) for facts in sizes(found)] == [("cm", (F(20), F(10)))]


def test_pieces_are_cut_anew_for_each_size_by_the_same_method() -> None:
    """By hand, a 3/8 in seam: finished + 3/8 x (2 + root 2) = finished + 1.28 in, up to the next eighth."""
    found, _ = book('block "Two" sizes 4 8 in')
    squares = [
        [cut.cut[0] for cut in facts.cutting if cut.method == "two at a time" and cut.fabric == "fog"]
        for facts in sizes(found)
    ]
    assert squares == [[F(27, 8)], [F(43, 8)]]


def test_a_size_off_the_ruler_is_told_at_that_size_and_expectations_only_of_the_own() -> None:
    found, told = book('block "Two" sizes 8 10.1 in')
    assert told == [("size-off-ruler", "10.1 in")]
    assert len(sizes(found)) == 2


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ('block "Tow"', ("name-unknown", '"Tow"')),
        ('block "Two" sizes 4 8 4 in', ("setting-twice", "4 in")),
        ('block "Two" sizes 20 200 mm 20 cm', ("setting-twice", "20 cm")),
        ('block "Two" sizes 0 in', ("length-not-positive", "0 in")),
        ('block "Two" sizes 394 in', ("size-too-large", "394 in")),
        ('quilt "Top"\nblock "Two"', ("name-unknown", '"Top"')),
        ('paper foolscap\nblock "Two"', ("paper-unknown", "foolscap")),
        ('paper letter 6 in\nblock "Two"', ("paper-unknown", "paper letter 6 in")),
        ('paper roll 600 cm\nblock "Two"', ("paper-unknown", "600 cm")),
        ('text "gone.md"\nblock "Two"', ("use-missing", '"gone.md"')),
        ('by "Me"\nby "You"\nblock "Two"', ("setting-twice", 'by "You"')),
    ],
)
def test_what_is_wrong_with_a_line_is_told_once_where_it_is(line: str, told: tuple[str, str]) -> None:
    assert book(line)[1] == [told]


def test_two_blocks_of_one_file_at_one_size_are_each_their_own_block() -> None:
    text = f'{CLOTH}block "One"\nsize 4 in\nrow fog slate\nblock "Other"\nsize 4 in\nrow slate fog\n'
    found, told = book('block "One" sizes 8 in\nblock "Other" sizes 8 in', text)
    assert told == []
    rows = [[patch.fabric for patch in facts.placed] for facts in sizes(found)]
    assert rows == [["fog", "slate"], ["slate", "fog"]]


def test_an_unknown_block_is_told_with_the_nearest_that_there_is() -> None:
    _, problems = read(f'{TWO}\nbook "All"\nblock "Tow"\n')
    (problem,) = [problem for problem in problems if problem.code == "name-unknown"]
    assert (problem.message, problem.help) == ("there is no block `Tow`", 'did you mean "Two"?')


def test_a_book_without_blocks_is_told_so() -> None:
    assert book('chapter "One"')[1] == [("book-without-blocks", '"All"')]


def test_a_block_with_errors_is_told_of_once_and_left_out() -> None:
    found, told = book('block "Two" sizes 4 6 in', text=TWO.replace("lantern\n", "lentern\n"))
    assert told == [("name-unknown", "lentern")]
    assert sizes(found) == []


def test_words_without_a_chapter_and_in_one_stand_where_they_were_put() -> None:
    files = {"a.md": "# A\r\n\r\nOne.\r\n", "b.md": "Two."}
    found, told = book('text "a.md"\nchapter "C"\nblock "Two"\ntext "b.md"', files=files)
    assert told == []
    opening, chapter = found.chapters
    assert (opening.title, chapter.title) == ("", "C")
    assert [getattr(item, "markdown", "a block") for item in opening.items] == ["# A\n\nOne.\n"]
    assert [getattr(item, "markdown", "a block") for item in chapter.items] == ["a block", "Two."]


def test_a_sign_that_cannot_be_printed_is_told_where_it_stands_in_the_words() -> None:
    _, problems = read(f'{TWO}\nbook "All"\ntext "a.md"\nblock "Two"\n', {"a.md": "One\n\ntwo \x07 three\n"})
    (problem,) = [problem for problem in problems if problem.code == "control-character"]
    assert (problem.span.source.name, problem.span.line, problem.span.column) == ("a.md", 3, 5)


def test_two_files_may_call_different_units_alike_and_each_block_keeps_its_own() -> None:
    one = f'{CLOTH}\nunit edge = half fog slate\nblock "One"\nsize 4 in\nrow edge\n'
    other = f'{CLOTH}\nunit edge = hourglass fog slate\nblock "Other"\nsize 4 in\nrow edge\n'
    text = 'use "one.block"\nuse "other.block"\n'
    found, told = book('block "One"\nblock "Other"', text, {"one.block": one, "other.block": other})
    assert told == []
    assert [len(facts.placed) for facts in sizes(found)] == [2, 4]


def test_a_fabric_of_the_books_file_recolours_the_blocks_that_it_brings_in() -> None:
    one = f'{CLOTH}\nblock "One"\nsize 4 in\nrow fog slate\nrow slate fog\n'
    text = 'use "one.block"\nfabric fog "My fog" #ffeeee\n'
    found, told = book('block "One"', text, {"one.block": one})
    assert told == []
    assert [fabric.label for fabric in sizes(found)[0].fabrics] == ["My fog", "Wet slate"]


def test_blocks_that_a_book_brings_in_are_among_the_blocks_of_the_file_with_their_checks() -> None:
    one = f'{CLOTH}\nblock "One"\nsize 4 in\nrow fog slate\nrow slate fog\nexpect finished 5 in\n'
    facts, problems = read('use "one.block"\nbook "All"\nblock "One" sizes 6 in\n', {"one.block": one})
    assert [block.finished for block in facts.blocks] == [(F(4), F(4))]
    assert [problem.code for problem in problems] == ["expect-finished"]


def test_the_json_tells_the_sizes_of_a_block_and_what_the_book_prints() -> None:
    facts, _ = read(f'{TWO}\nbook "All"\nby "Me"\npaper a4\nchapter "C"\nblock "Two" sizes 4 8 in 20 cm\ntechniques\n')
    document = json.loads(facts_json(facts, Problems()))
    assert document["blocks"][0]["sizes"] == [["8", "4"], ["4", "2"]]
    (found,) = document["books"]
    assert (found["name"], found["author"], found["paper"], found["techniques"]) == ("All", "Me", "a4", True)
    (item,) = found["chapters"][0]["items"]
    assert item["block"] == "Two"
    assert [(size["unit"], size["finished"]) for size in item["sizes"]] == [
        ("in", ["4", "2"]),
        ("in", ["8", "4"]),
        ("cm", ["20", "10"]),
    ]
