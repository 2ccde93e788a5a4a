"""The maker's words: headings at the side, emphasis bold, lists, fractions, nothing lost."""

from __future__ import annotations

from itertools import pairwise

import pytest

from blockdsl.document.reading import prose_of, read_text
from blockdsl.facts import WordsFacts
from blockdsl.marks.display_list import TextMark
from blockdsl.marks.typeset import measure
from blockdsl.page.flow import Flowable, stacked
from blockdsl.page.prose import READING_PT, SIDE_PT, prose_flowables

LONG = "Sew the strips together along their long edges, each seam from the other end than the last. " * 4


def on_paper(markdown: str) -> list[Flowable]:
    return prose_flowables(read_text(markdown).parts, {})


def set_in_type(markdown: str) -> list[TextMark]:
    _, marks = stacked(on_paper(markdown))
    return [mark for mark in marks if isinstance(mark, TextMark)]


def words(markdown: str) -> list[str]:
    return [text.text for text in set_in_type(markdown)]


def test_a_first_heading_is_the_title_and_is_not_said_again() -> None:
    found = read_text("# Welcome *aboard*\n\nOne.")
    assert found.title == "Welcome aboard"
    assert words("# Welcome aboard\n\nOne.") == ["One."]


def test_a_heading_stands_at_the_side_level_with_the_first_line_below_it() -> None:
    heading, first, *_ = set_in_type(f"## About\n\n{LONG}")
    assert (heading.text, heading.x_pt, heading.weight) == ("About", 0.0, "bold")
    assert first.x_pt == SIDE_PT
    assert first.y_pt == heading.y_pt


def test_emphasis_of_both_kinds_is_bold_and_the_words_around_it_are_not() -> None:
    texts = set_in_type("Cut **two** squares, *not* three.")
    assert [(text.text, text.weight) for text in texts] == [
        ("Cut ", "regular"),
        ("two ", "bold"),
        ("squares, ", "regular"),
        ("not ", "bold"),
        ("three.", "regular"),
    ]


def test_a_point_right_behind_bold_words_stays_with_them() -> None:
    assert "".join(words("It is **wide**, and **deep**.")) == "It is wide, and deep."


def test_fractions_are_set_and_stay_with_their_number_and_unit() -> None:
    assert words("Cut 2 7/8 in squares.") == ["Cut 2 ⁷⁄₈ in squares."]


def test_lines_are_no_wider_than_the_column_and_no_word_is_lost() -> None:
    texts = set_in_type(LONG)
    assert len(texts) > 4
    assert all(measure(text.text, text.size_pt, text.weight) <= READING_PT for text in texts)
    assert " ".join(text.text for text in texts).split() == LONG.split()
    assert all(one.y_pt < other.y_pt for one, other in pairwise(texts))


def test_lists_have_their_marks_and_numbers_go_on_from_where_they_begin() -> None:
    assert words("- one\n- two\n\n3. three\n4. four") == ["•", "one", "•", "two", "3.", "three", "4.", "four"]


def test_a_list_in_a_list_is_indented_once_more() -> None:
    texts = {text.text: text.x_pt for text in set_in_type("- one\n  - two\n")}
    assert SIDE_PT < texts["one"] < texts["two"]


def test_html_is_printed_as_it_is_written() -> None:
    assert "".join(words("A <b>bold</b> word")) == "A <b>bold</b> word"


def test_a_link_tells_where_it_leads_and_a_picture_its_words() -> None:
    assert "".join(words("See [the tables](https://example.org/t).")) == "See the tables (https://example.org/t)."
    assert "".join(words("![a lamp](lamp.png)")) == "a lamp"


def test_a_line_break_that_is_wanted_is_kept() -> None:
    assert words("one  \ntwo") == ["one", "two"]


@pytest.mark.parametrize(
    "markdown", ["", "\n\n", "# Only a title", "## Only a heading", "---", "> quoted", "```\ncode\n```"]
)
def test_whatever_is_written_can_be_set(markdown: str) -> None:
    height, marks = stacked(on_paper(markdown))
    assert height >= 0
    assert all(isinstance(mark, TextMark) and mark.text for mark in marks) or markdown == "---"


def test_a_title_within_a_part_becomes_a_heading_there() -> None:
    _, marks = stacked(prose_flowables(prose_of(WordsFacts("a.md", "# Afterwards\n\nSet four together.")).parts, {}))
    assert [mark.text for mark in marks if isinstance(mark, TextMark)] == ["Afterwards", "Set four together."]


def test_a_word_longer_than_the_column_is_broken() -> None:
    word = "lighthousekeeper" * 12
    texts = set_in_type(f"A {word} end")
    assert all(measure(text.text, text.size_pt, text.weight) <= READING_PT for text in texts)
    assert "".join(text.text for text in texts).replace(" ", "") == f"A{word}end"
