"""The tops of quilts sewn by the words of their steps: every block and every strip lies where the quilt has it."""

from __future__ import annotations

import json
from functools import lru_cache
from typing import Any

import pytest
from msgspec import structs
from msgspec.structs import replace

from blockdsl import pipeline
from blockdsl.analysis import FileReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.resources import library_folder, library_path
from blockdsl.wording import facts_json
from blockdsl.wording.quilt_words import format_strips_of_ring
from tests.outside.reader.topcompare import check_top
from tests.outside.reader.words import Refused

BLOCKS = """
use library "demo/palette"
use library "demo/harbour-light"
block "Plain Sea"
  size 12 in
  row tide
block "Two Tone"
  size 12 in
  row tide foam
  row foam foam
unit beam = geese lantern on fog
"""
TOPS = {
    "blocks edge to edge": 'set straight 3 x 4 of "Harbour Light"',
    "every other block plain": 'set straight 3 x 3 of "Harbour Light"\n  alternate "Plain Sea"',
    "blocks turned in every second row": 'set straight 2 x 2 of "Two Tone"\n  turn > on even rows',
    "sashing": 'set straight 3 x 3 of "Harbour Light"\n  sash 2 in slate',
    "sashing with cornerstones": 'set straight 3 x 3 of "Harbour Light"\n  sash 2 in slate posts lantern',
    "sashing all round": 'set straight 2 x 3 of "Harbour Light"\n  sash 2 in slate posts lantern outer',
    "a border": 'set straight 3 x 3 of "Harbour Light"\n  border 3 in slate butted',
    "two borders": 'set straight 3 x 3 of "Harbour Light"\n  border 1 in lantern\n  border 4 in slate',
    "a border, top and bottom first": 'set straight 3 x 3 of "Harbour Light"\n  border 3 in slate butted top first',
    "a border with corner squares": 'set straight 3 x 3 of "Harbour Light"\n  border 3 in slate corners lantern',
    "an oblong with corner squares": 'set straight 2 x 3 of "Harbour Light"\n  border 3 in slate corners lantern',
    "a mitered border": 'set straight 3 x 3 of "Harbour Light"\n  border 3 in slate mitred',
    "an oblong with a mitered border": 'set straight 2 x 3 of "Harbour Light"\n  border 3 in slate mitred',
    "dropped columns with half blocks": 'set dropped columns 3 x 3 of "Harbour Light"\n  fill fog',
    "dropped columns, sashing and two borders": 'set dropped columns 4 x 6 of "Harbour Light"\n  fill fog\n'
    "  sash 1 1/2 in slate posts lantern\n  border 2 in lantern butted\n  border 5 in slate mitred",
    "columns with plain strips": 'set strippy 3 x 4 of "Harbour Light"\n  sash 4 in slate',
    "a pieced border": 'set straight 2 x 3 of "Harbour Light"\n  border 3 in pieced beam corners slate',
    "a pieced border of turned units": 'set straight 2 x 2 of "Harbour Light"\n'
    "  border 3 in pieced beam> corners slate",
    "a border of blocks": 'set straight 2 x 2 of "Harbour Light"\n  border 12 in pieced "Two Tone" corners slate',
    "blocks on point": 'set on point 2 x 3 of "Harbour Light"\n  fill fog',
    "blocks on point beside plain squares": 'set on point 3 x 3 of "Harbour Light"\n'
    '  alternate "Plain Sea"\n  fill fog',
    "blocks on point with a border": 'set on point 2 x 2 of "Two Tone"\n  fill fog\n  border 3 in slate',
    "a medallion on point": 'set medallion on point of "Harbour Light"\n  fill fog\n  border 3 in slate',
    "a medallion with rounds of blocks": 'set medallion of "Harbour Light"\n'
    '  round 12 in pieced "Two Tone" corners fog\n  round 3 in slate',
    "a medallion with a round of blocks to its corners": 'set medallion of "Harbour Light"\n  round "Two Tone"',
    "a medallion": 'set medallion of "Harbour Light"\n  border 3 in slate\n  border 2 in fog mitred',
}


@lru_cache
def document(text: str) -> dict[str, Any]:
    problems = Problems()
    facts = pipeline.run(Source("top.block", text), FileReader(library_folder()), problems).facts
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    # The plans for cloth take the longest, and the words of a top do not need them.
    plain = replace(facts, quilts=tuple(structs.replace(quilt, finishing=None) for quilt in facts.quilts))
    found: dict[str, Any] = json.loads(facts_json(plain, problems))
    return found


def top(name: str) -> dict[str, Any]:
    return document(f'{BLOCKS}quilt "Top"\n  {TOPS[name]}\n')


@pytest.mark.parametrize("name", TOPS)
def test_the_words_of_a_top_sew_it(name: str) -> None:
    found = top(name)
    check_top(found, found["quilts"][0])


def test_the_words_of_the_demo_quilt_sew_its_top() -> None:
    """Two blocks by turns, a plain border, one pieced of beams, a mitered one."""
    path = library_path("demo/breakwater")
    problems = Problems()
    facts = pipeline.run(Source(str(path), path.read_text(encoding="utf-8")), FileReader(library_folder()), problems)
    (quilt,) = facts.facts.quilts
    top_alone = replace(quilt, finishing=None, steps=tuple(step for step in quilt.steps if step.of_top))
    found: dict[str, Any] = json.loads(facts_json(replace(facts.facts, quilts=(top_alone,)), problems))
    check_top(found, found["quilts"][0])


def test_the_sides_of_a_square_border_of_an_upright_print_are_told_from_its_top_and_bottom() -> None:
    """Corner squares: all four strips are 36 in and 2 in to spare, but the print runs up those of the sides alone."""
    lines = 'set straight 3 x 3 of "Harbour Light"\n  border 3 in wave corners lantern'
    text = f'fabric wave "Wave" #336699 directional\n{BLOCKS}quilt "Top"\n  {lines}\n'
    facts = pipeline.run(Source("top.block", text), FileReader(library_folder()), Problems()).facts.quilts[0]
    told = format_strips_of_ring(facts, facts.rings[0])
    assert "2 strips 3 1/2 × 38 1/2 in for the sides, 2 strips 3 1/2 × 38 1/2 in for the top and bottom" in told


SLIPS = [
    ("blocks edge to edge", "take 3 blocks", "take 4 blocks", "a block too many"),
    ("blocks edge to edge", "above and below", "left and right of", "blocks that lie otherwise"),
    ("sashing with cornerstones", "from left to right", "from right to left", "the wrong way"),
    ("two borders", "Trim 2 strips (Lantern)", "Trim 2 strips (Wet slate)", "the other border's strips"),
    ("a border with corner squares", "to the left edge and a strip to the right", ("to the top edge and a strip to the "
     "bottom"), "corner squares beside the wrong strips"),
    ("an oblong with a mitered border", ("Pin the long strips to the left and right edges and the short strips to the "
     "top and bottom edges"), ("Pin the long strips to the top and bottom edges and the short strips to the left and "
     "right edges"), "long strips on short edges"),
    ("dropped columns with half blocks", "a half block, a block", "a block, a half block", "half a block in between"),
    ("blocks on point", "extends one block beyond", "ends one block short of", "a row that begins elsewhere"),
    ("blocks on point", "(square corner at the lower right)", "(square corner at the upper right)", "a turned one"),
    ("a medallion on point", "at the upper left. Sew", "at the upper right. Sew", "the block turned the other way"),
    ("a border of blocks", "with Foam at the right and bottom", "with Foam at the left and bottom", "its units turned"),
    ("a pieced border", "6 in each of 2 strips for the", "4 in each of 2 strips for the", "too few"),
    ("a medallion", "top to bottom, about 12 1/2 in", "top to bottom, about 12 in", "a wrong measure"),
]  # fmt: skip


@pytest.mark.parametrize(("name", "old", "new", "what"), SLIPS, ids=[f"{slip[0]}: {slip[3]}" for slip in SLIPS])
def test_a_slip_of_wording_in_a_top_is_found(name: str, old: str, new: str, what: str) -> None:
    found = top(name)
    quilt = found["quilts"][0]
    steps = [step | {"text": step["text"].replace(old, new)} for step in quilt["steps"]]
    assert steps != quilt["steps"]
    with pytest.raises(Refused):
        check_top(found, quilt | {"steps": steps})
