"""A few whole outputs, kept as they were when somebody last looked at them and found them right.

After a deliberate change: `.venv/bin/pytest tests/snapshots --snapshot-update`, then read the difference line by line.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from syrupy.assertion import SnapshotAssertion

from blockdsl import pipeline
from blockdsl.analysis import FileReader
from blockdsl.diagnostics import Problems, Source, render_text, summary
from blockdsl.export.tables import to_markdown
from blockdsl.facts import BlockFacts
from blockdsl.marks.display_list import Figure, Mark, TextMark
from blockdsl.page.sheet import block_sheet
from blockdsl.wording.cutting_rows import cutting_rows

DEMO = Path(__file__).parents[2] / "library" / "demo"
SIX_SLIPS = """\
fabric fog     "Harbour fog"  #dfe3e0 light
fabric lantern "Lantern"      #e0a03 medium

unit beam = goose lantern on fog

block "Harbour Light"
  size 12
  row fog  lantrn  fog
  row fog  beam
  make half as six at a time
"""


def facts_of(name: str) -> BlockFacts:
    """The facts of the first block of a demo file."""
    path = DEMO / f"{name}.block"
    problems = Problems()
    source = Source(str(path), path.read_text(encoding="utf-8"))
    facts = pipeline.run(source, FileReader(DEMO), problems).facts
    assert len(problems) == 0
    return facts.blocks[0]


def test_the_messages_about_a_file_with_six_slips(snapshot: SnapshotAssertion) -> None:
    problems = Problems()
    pipeline.run(Source("light.block", SIX_SLIPS), FileReader(DEMO), problems)
    told = "\n".join(render_text(problem, colour=False) for problem in problems)
    assert f"{told}\n{summary(problems)}" == snapshot


@pytest.mark.parametrize("name", ["harbour-light", "tide-table"])
def test_the_cutting_table(name: str, snapshot: SnapshotAssertion) -> None:
    assert to_markdown(*cutting_rows(facts_of(name))) == snapshot


def words(marks: tuple[Mark, ...]) -> list[str]:
    """All words of a page, in the order in which they are drawn, and what its pictures say in words."""
    found: list[str] = []
    for mark in marks:
        if isinstance(mark, Figure):
            found.append(f"[{mark.alternative}]")
        elif isinstance(mark, TextMark):
            found.append(mark.text)
    return found


def test_the_words_of_the_pattern_sheet_of_harbour_light(snapshot: SnapshotAssertion) -> None:
    sheet = block_sheet(facts_of("harbour-light"), paper="letter")
    assert "\n---\n".join("\n".join(words(page.marks)) for page in sheet.pages) == snapshot
