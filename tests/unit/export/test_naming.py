"""File names made from what the quilter calls things."""

import pytest

from blockdsl.export.naming import Taken, slug


@pytest.mark.parametrize(
    ("words", "name"),
    [
        ("Harbour Light", "harbour-light"),
        ("Bear's Paw, No. 2", "bear-s-paw-no-2"),
        ("  Étoile du matin!  ", "étoile-du-matin"),
        ("e\u0301toile", "étoile"),
        ("星のブロック", "星のブロック"),
        ("हिन्दी", "हिन्दी"),
        ("../../etc/passwd", "etc-passwd"),
        ("—", "block"),
        ("", "block"),
    ],
)
def test_letters_and_numbers_of_any_script_stay_and_all_else_becomes_a_dash(words: str, name: str) -> None:
    assert slug(words) == name


@pytest.mark.parametrize("letter", ["a", "é", "星"])
def test_a_long_name_is_cut_between_two_letters_so_that_every_system_can_hold_it(letter: str) -> None:
    name = slug(letter * 400)

    assert set(name) == {letter}
    assert 100 < len(name.encode("utf-8")) <= 120


def test_a_second_block_of_the_same_name_gets_a_number() -> None:
    taken = Taken(["letters"])

    assert [taken.take(name) for name in ("Star", "star!", "STAR", "Letters")] == [
        "star",
        "star-2",
        "star-3",
        "letters-2",
    ]
