"""Articles, plurals and lists: what an editor would write, by the sound and the head noun of each name."""

import pytest

from blockdsl.wording import messages
from blockdsl.wording.english import an, plural
from blockdsl.wording.grammar import listed


@pytest.mark.parametrize(
    ("one", "several"),
    [("beam", "beams"), ("goose", "geese"), ("flying geese", "flying geese"), ("cross", "crosses"), ("lily", "lilies"),
     ("two-bars", "two-bars"), ("half", "halves"), ("foot", "feet"), ("half-square triangle", "half-square triangles"),
     ("square in a square", "squares in a square"), ("segment of set 1", "segments of set 1"), ("bush", "bushes"),
     ("patch", "patches"), ("key", "keys"), ("reversed wing", "reversed wings"), ("leaf", "leaves")],
)  # fmt: skip
def test_names_of_several(one: str, several: str) -> None:
    assert plural(one) == several


@pytest.mark.parametrize(
    ("name", "said"),
    [("A", "an A"), ("B", "a B"), ("F (Foam)", "an F (Foam)"), ("U", "a U"), ("Ar", "an Ar"), ("Br", "a Br"),
     ("hourglass", "an hourglass"), ("unit", "a unit"), ("half", "a half"), ("octagon", "an octagon"),
     ("8 in strip", "an 8 in strip"), ("11 in strip", "an 11 in strip"), ("18 in strip", "an 18 in strip"),
     ("3 in strip", "a 3 in strip"), ("A1", "an A1")],
)  # fmt: skip
def test_the_article_goes_by_the_sound(name: str, said: str) -> None:
    assert an(name) == said


@pytest.mark.parametrize(
    ("language", "said"), [("en-US", ["a", "a and b", "a, b, and c"]), ("en-GB", ["a", "a and b", "a, b and c"])]
)
def test_the_last_comma_of_a_list_is_american(language: str, said: list[str]) -> None:
    words = messages(language)
    assert [listed(items, words) for items in (["a"], ["a", "b"], ["a", "b", "c"])] == said
