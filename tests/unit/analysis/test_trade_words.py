"""Words that a quilter would try first, and the answer that names what is written."""

import pytest

from blockdsl.fixing import apply
from tests.unit.model.blocks import errors, one_error, read, written


@pytest.mark.parametrize(
    ("said", "shape"),
    [
        ("hst fog slate", "half"),
        ("half-square-triangle fog slate", "half"),
        ("half-square triangles fog slate", "half"),
        ("flying geese fog on slate", "geese"),
        ("Flying Goose fog on slate", "geese"),
        ("square in square fog on slate", "diamond"),
        ("square-in-a-square fog on slate", "diamond"),
        ("quarter-square triangle fog slate", "hourglass"),
        ("log cabin fog slate", "log"),
        ("rail fence fog slate", "rails"),
        ("nine patch fog slate", "checker"),
    ],
)
def test_a_shape_by_its_name_in_the_trade_is_answered_with_how_it_is_written(said: str, shape: str) -> None:
    problem = one_error(f"row ({said})", size="4 in")

    assert problem.code == "shape-unknown"
    assert problem.help is not None
    assert problem.help.startswith(f"it is written `{shape} ")
    assert said.lower().startswith(problem.span.text.lower())


def test_the_fix_of_a_trade_name_makes_the_block_readable() -> None:
    text = written("row (square in square fog on slate)", size="4 in")
    (problem,) = [found for found in read(text)[1] if found.severity == "error"]

    mended = apply(problem.span.source, problem.fixes[0].edits)

    assert "(diamond fog on slate)" in mended
    assert not [found for found in read(mended)[1] if found.severity == "error"]


def test_a_shape_of_the_language_is_left_alone_before_a_fabric_of_any_name() -> None:
    assert errors("row (square in)", size="4 in", above='fabric in "In" #aabbcc') == []


@pytest.mark.parametrize(("said", "sign"), [("mirror", "~"), ("flipped", "~"), ("rotated", ">"), ("left", "<")])
def test_a_turn_in_words_is_answered_with_its_sign(said: str, sign: str) -> None:
    problem = one_error(f"row fog slate {said}", size="6 x 2 in")

    assert problem.code == "name-unknown"
    assert problem.help == f"write `{sign}` right behind the cell that is meant"


@pytest.mark.parametrize(
    ("said", "code", "written_so"),
    [
        ("red", "fabric-colour-missing", "#ff0000"),
        ("Navy dark", "fabric-colour-missing", "#000080"),
        ("#d2a", "colour-not-six-digits", "#dd22aa"),
    ],
)
def test_a_colour_by_its_name_or_in_three_digits_is_answered_with_six(said: str, code: str, written_so: str) -> None:
    """CSS Color Module Level 3 (W3C), 4.3: red is #ff0000, navy #000080; 4.2.1: each of three digits is doubled."""
    text = written("row sea", above=f'fabric sea "Sea" {said}')
    problem, *_ = [found for found in read(text)[1] if found.severity == "error"]

    assert problem.code == code
    assert written_so in (problem.help or "")
    mended = apply(problem.span.source, problem.fixes[0].edits)
    assert not [found for found in read(mended)[1] if found.severity == "error"]
