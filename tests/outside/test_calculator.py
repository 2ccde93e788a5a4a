"""The independent calculator over the demo and quilts drawn by lot; and that it finds what is short."""

from __future__ import annotations

import json
from copy import deepcopy
from typing import Any

import pytest

from blockdsl import pipeline
from blockdsl.analysis import FileReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.resources import library_folder, library_names, library_path
from blockdsl.wording import facts_json
from tests.outside.calculator.blocks import complaints_of_block
from tests.outside.calculator.cloth import complaints_of_cloth
from tests.outside.calculator.figures import bought, exact, near
from tests.outside.calculator.finishing import complaints_of_finishing
from tests.outside.quilts_at_random import EVERY_ONE, NUMBERS, quilt_text
from tests.unit.model.blocks import read

Doc = dict[str, Any]
FILES = [
    name for name in library_names() if EVERY_ONE or name in ("demo/harbour-light", "demo/book", "strips", "stars")
]


def document(text: str, name: str = "mine.block") -> Doc:
    facts, problems = read(text)
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    found: Doc = json.loads(facts_json(facts, problems))
    return found


def complaints(found: Doc) -> list[str]:
    told = [f"{block['name']}: {what}" for block in found["blocks"] for what in complaints_of_block(block)]
    for quilt in found["quilts"]:
        told += complaints_of_cloth(quilt, found["problems"])
        told += complaints_of_finishing(quilt)
    return told


@pytest.mark.parametrize("number", NUMBERS)
def test_all_of_a_quilt_can_be_cut_from_what_is_bought(number: int) -> None:
    assert complaints(document(quilt_text(number))) == []


@pytest.mark.parametrize("name", FILES)
def test_all_blocks_and_quilts_of_the_library_can_be_cut_from_what_is_bought(name: str) -> None:
    problems = Problems()
    source = Source(str(library_path(name)), library_path(name).read_text(encoding="utf-8"))
    facts = pipeline.run(source, FileReader(library_folder()), problems).facts
    assert complaints(json.loads(facts_json(facts, list(problems)))) == []


def test_numbers_are_read_as_they_are_written() -> None:
    assert [exact(text) for text in ("2 7/8", "7.3", "1/2", "12")] == [exact("23/8"), exact("73/10"), exact("0.5"), 12]
    assert near("81/2+1/2r2") == pytest.approx(40.5 + 2**0.5 / 2)
    assert near("r2") == pytest.approx(2**0.5)
    assert (bought("1 1/4 yd", "in"), bought("40 cm", "cm"), bought("1.2 m", "cm")) == (45, 40, 120)


# --- what is short is found ------------------------------------------------------------------------

QUILT = """
fabric fog   "Fog"   #dfe3e0
fabric slate "Slate" #3a4750

block "Geese"
  size 6 in
  row (geese slate on fog)
  row (geese slate on fog)
  make geese as four at a time

quilt "Short"
  set straight 4 x 4 of "Geese"
  border 3 in fog butted
  binding 2 1/2 in slate straight
  backing fog overage 1/4 in
  scraps slate from 4 fat quarters
"""


def _a_strip_less(quilt: Doc) -> None:
    quilt["binding"]["strips"] -= 1


def _a_narrower_back(quilt: Doc) -> None:
    quilt["backing"]["length"] = "24"


def _a_shorter_border(quilt: Doc) -> None:
    border = next(piece for piece in quilt["pieces"] if piece["role"] == "border")
    border["cut"] = border["exact"]


def _less_to_buy(quilt: Doc) -> None:
    quilt["fabrics"][0]["buy"] = "1/8 yd"


def _nothing_to_buy(quilt: Doc) -> None:
    quilt["fabrics"][0]["buy"] = None


def _a_piece_that_is_not_laid_out(quilt: Doc) -> None:
    quilt["fabrics"][0]["pieces"][-1]["count"] += 1


def _a_line_that_no_cloth_is_for(quilt: Doc) -> None:
    quilt["cutting"][0]["count"] += 1


def _a_print_too_little(quilt: Doc) -> None:
    quilt["scraps"][0]["blocks_each"] = 1


def _a_narrower_cloth(quilt: Doc) -> None:
    quilt["fabrics"][0]["usable_width"] = "20"


SHORT = [
    _a_strip_less,
    _a_narrower_back,
    _a_shorter_border,
    _less_to_buy,
    _nothing_to_buy,
    _a_piece_that_is_not_laid_out,
    _a_line_that_no_cloth_is_for,
    _a_print_too_little,
    _a_narrower_cloth,
]


@pytest.fixture(scope="module")
def whole() -> Doc:
    return document(QUILT)


def test_the_quilt_that_is_spoiled_next_is_whole(whole: Doc) -> None:
    assert complaints(whole) == []


@pytest.mark.parametrize("spoil", SHORT)
def test_what_is_short_is_found(spoil: Any, whole: Doc) -> None:
    spoiled = deepcopy(whole)
    spoil(spoiled["quilts"][0])
    assert complaints(spoiled) != []
