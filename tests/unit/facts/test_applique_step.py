"""The last step of a block with appliqué: what it takes, in which order pieces lie, what its pictures show."""

from itertools import pairwise

import pytest

from blockdsl.facts import BlockFacts
from blockdsl.facts.stepfacts import LessonStep, StepFacts
from blockdsl.sewing.techniques.scene import SceneCloth, SceneWords
from blockdsl.wording import messages
from blockdsl.wording.sentences import sentence
from tests.unit.model.blocks import block

SQUARE = 'applique slate "M0.2 0.2 H0.8 V0.8 H0.2 Z"'
RAW = 'applique lantern "M0.4 0.4 H0.6 V0.6 H0.4 Z" raw edge'
FAR = 'applique slate "M1.2 1.2 H1.8 V1.8 H1.2 Z"'


def last(*lines: str, size: str = "6 in") -> StepFacts:
    facts = block(*lines, size=size)
    return facts.steps[-1]


def parts(step: StepFacts) -> list[tuple[str, str]]:
    """Title and words of each part, as an American reads them."""
    return [
        (sentence(each.title, "in", messages()), sentence(each.text, "in", messages()))
        for each in step.lesson
        if isinstance(each, LessonStep)
    ]


def colours(step: StepFacts, picture: int) -> list[str]:
    items = step.lesson[picture].pictures[0].items
    return [step.fabrics[item.role].name for item in items if isinstance(item, SceneCloth)]


def test_a_block_without_applique_has_no_such_step() -> None:
    assert all(step.method != "applique" for step in block("row fog slate", size="6 x 3 in").steps)


def test_it_comes_after_the_ground_is_sewn_and_takes_it_with_all_pieces() -> None:
    facts = block("row fog slate", "row slate fog", SQUARE, FAR, RAW, size="6 in")
    before, step = facts.steps[-2:]
    assert before.makes == "block"
    assert step.number == before.number + 1
    taken = [(join.name, join.count, join.step, join.fabric) for join in step.joins]
    assert taken == [("block", 1, before.number, ""), ("B", 2, 0, "slate"), ("C", 1, 0, "lantern")]


def test_on_a_single_patch_it_is_the_only_step() -> None:
    facts = block("row fog", SQUARE, size="6 in")
    assert [(step.number, step.method) for step in facts.steps] == [(1, "applique")]
    assert [(join.name, join.fabric) for join in facts.steps[0].joins] == [("A", "fog"), ("B", "slate")]


def test_folded_and_raw_edges_are_told_apart_by_their_letters() -> None:
    both, raw = last("row fog", SQUARE, RAW), last("row fog", RAW)
    assert [title for title, _ in parts(both)] == [
        "Trace and cut", "Turn under", "Cut raw edges", "Lay on", "Sew down",
    ]  # fmt: skip
    assert [title for title, _ in parts(raw)] == ["Cut raw edges", "Lay on", "Sew down"]
    assert parts(both)[0][1].startswith("B: trace")
    assert "1/4 in outside" in parts(both)[0][1]
    assert parts(both)[2][1].startswith("C: ")
    assert "blind" in parts(both)[-1][1]
    assert "blind" not in parts(raw)[-1][1]


@pytest.mark.parametrize(
    ("lines", "order"), [((SQUARE, RAW), "B, C"), ((RAW, SQUARE), "B, C"), ((SQUARE, RAW, FAR), "B, C, B")]
)
def test_pieces_are_laid_in_the_order_in_which_they_are_written(lines: tuple[str, ...], order: str) -> None:
    step = last("row fog fog", "row fog fog", *lines)
    assert f"bottom piece first: {order}." in parts(step)[-2][1]


def test_the_picture_is_the_block_with_later_pieces_on_earlier_ones() -> None:
    assert colours(last("row fog", SQUARE, RAW), -1) == ["fog", "slate", "lantern"]
    assert colours(last("row fog", RAW, SQUARE), -1) == ["fog", "lantern", "slate"]


def test_letters_stand_where_no_later_piece_lies() -> None:
    items = last("row fog", SQUARE, RAW).lesson[-2].pictures[0].items
    assert [item.text for item in items if isinstance(item, SceneWords)] == ["C"]


def test_curves_of_the_ground_are_drawn_along_their_arcs() -> None:
    """A quarter circle of 4 in about the lower left corner of 6 in: a corner at every fifteen degrees of it."""
    facts = block("row (curve slate in fog)", RAW, size="6 in")
    ground = [item for item in facts.steps[-1].lesson[-1].pictures[0].items if isinstance(item, SceneCloth)][:2]
    on_arc = [{p for p in cloth.outline if p.x * p.x + (6 - p.y) * (6 - p.y) == 16} for cloth in ground]
    assert [len(found) for found in on_arc] == [7, 7]
    assert on_arc[0] == on_arc[1]


def test_blocks_that_are_pieced_alike_keep_their_own_applique() -> None:
    texts = [parts(last("row fog", line))[0][0] for line in (SQUARE, RAW, SQUARE)]
    assert texts == ["Trace and cut", "Cut raw edges", "Trace and cut"]


def test_steps_are_numbered_on_without_a_gap() -> None:
    facts: BlockFacts = block("row fog/slate fog", "row fog slate/fog", SQUARE, size="6 in")
    assert all(after.number == before.number + 1 for before, after in pairwise(facts.steps))
