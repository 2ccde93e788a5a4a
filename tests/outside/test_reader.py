"""A second program reads the words of the steps and sews them: nothing else tells it where a piece goes."""

from __future__ import annotations

import pytest

from tests.outside.reader.comparing import compare
from tests.outside.reader.reading import Fault, sew
from tests.outside.reader.sentences import Step
from tests.outside.reader.stock import stock_of
from tests.outside.reader.table import Refused
from tests.outside.reader.worked_examples import NAMES, check, document, own_document, own_steps, steps, words


@pytest.mark.parametrize("name", NAMES)
def test_the_words_of_a_worked_example_sew_its_block(name: str) -> None:
    check(name)


@pytest.mark.parametrize("name", NAMES)
def test_the_words_of_the_program_sew_the_block_of_a_worked_example(name: str) -> None:
    facts = own_document(name)
    compare(sew(own_steps(name), stock_of(facts)), facts)


def test_the_program_takes_no_more_words_than_the_worked_examples() -> None:
    """Nor many more for any of them: it trims dog-ears where they are left to the maker there."""
    pairs = {name: (words(own_steps(name)), words(steps(name))) for name in NAMES}
    assert sum(ours for ours, _ in pairs.values()) <= sum(theirs for _, theirs in pairs.values())
    assert {name: pair for name, pair in pairs.items() if pair[0] > pair[1] * 1.08} == {}


SLIPS = [
    ("harbour-light", 4, "the upper left", "the upper right", "another corner"),
    ("harbour-light", 4, "left edge of the first", "right edge of the first", "another edge"),
    ("harbour-light", 4, ", nesting the seams", "", "nothing said of seams that meet"),
    ("harbour-light", 5, "toward the corners", "away from the corners", "pressed so that it does not nest"),
    ("harbour-light", 5, "at the lower left", "at the lower right", "the second corner turned"),
    ("harbour-light", 6, " Lay the hourglass with Lantern at the top and bottom.", "", "the middle may be turned"),
    ("harbour-light", 7, " Row 3 is row 1 rotated a half turn.", "", "row 3 may lie in two ways"),
    ("harbour-light", 7, " Lay row 1 with its point at the top.", "", "half a turn of what is not laid"),
    ("harbour-light", 1, "make 8", "make 6", "too few"),
    ("harbour-light", 5, "take 2 corners", "take 3 corners", "one piece left on the table"),
    ("rip-current", 1, "from lower left to upper right", "from upper left to lower right", "a line across"),
    ("rip-current", 1, "toward the upper left", "toward the lower right", "the wrong side cut off"),
    ("rip-current", 2, "Cut 4 segments", "Cut 5 segments", "more than the strips give"),
    ("rip-current", 3, " Lay the run with Tide at the top.", "", "the run may be turned"),
    (
        "double-nine",
        1,
        "2 A strips (Tide) and 1 A strip (Foam)",
        "1 A strip (Tide) and 2 A strips (Foam)",
        "the other set",
    ),
    ("swallow", 3, "upper left", "lower right", "the unit upside down"),
    ("lock-gates", 1, "right ends even", "left ends even", "begun at the other end"),
    ("lock-gates", 2, "right edge of B and A (Wet slate)", "left edge of B and A (Wet slate)", "on the other side"),
    ("compass-lamp", 1, "lower right edge", "lower left edge", "the pair in the mirror"),
    ("compass-lamp", 3, "Wet slate on Lantern", "Lantern on Wet slate", "the wrong edges"),
    ("harbour-watch", 1, "left and right edges", "left and top edges", "one lies on the other"),
    ("four-coves", 2, "Tide at the lower left", "Tide at the lower right", "the second one turned"),
    ("tern", 1, "between A1 and A3", "between A2 and A3", "a line that is not there"),
    ("tern", 5, "in the middle of its bottom edge", "in the middle of its top edge", "the row upside down"),
    ("sea-mark", 5, "☐ 9½ × 9½ in", "☐ 9 × 9 in", "a wrong measure"),
]


@pytest.mark.parametrize(("name", "number", "old", "new", "what"), SLIPS, ids=[f"{s[0]} {s[1]}: {s[4]}" for s in SLIPS])
def test_a_slip_of_wording_is_found_at_the_table(name: str, number: int, old: str, new: str, what: str) -> None:
    slipped = []
    for step in steps(name):
        if step.number == number:
            assert old in step.title + step.text
            step = Step(step.number, step.title.replace(old, new), step.text.replace(old, new))  # noqa: PLW2901
        slipped.append(step)
    facts = document(name)
    with pytest.raises((Fault, Refused)):
        compare(sew(slipped, stock_of(facts)), facts)
