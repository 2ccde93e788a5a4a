"""The worked examples: the steps as they were first written, by hand, with the blocks that they make."""

from __future__ import annotations

import json
import re
from copy import deepcopy
from functools import lru_cache
from pathlib import Path
from typing import Any

from blockdsl import pipeline
from blockdsl.analysis import FileReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts.document import block_document, write_json
from blockdsl.resources import library_folder, library_path
from blockdsl.wording.steps import step_texts
from tests.outside.reader.comparing import compare
from tests.outside.reader.library import steps_of
from tests.outside.reader.reading import sew
from tests.outside.reader.sentences import Step
from tests.outside.reader.stock import stock_of

FOLDER = Path(__file__).parent / "worked"
DEMO = {"harbour-light": "demo/harbour-light", "rip-current": "demo/rip-current"}
SQUARED = {"26": "27 1/2", "15": "17 1/2", "7 1/2": "9"}
"""Strips with room for squaring up, as the examples have them: 1 in, and 1/2 in after every third segment."""
NAMES = tuple(sorted(path.stem for path in FOLDER.glob("*.steps") if path.stem != "breakwater"))


@lru_cache
def own_document(name: str) -> dict[str, Any]:
    """The facts of a worked example's block, with the steps that the program writes for it."""
    own = name.removesuffix("-open")
    path = library_path(DEMO[own]) if own in DEMO else FOLDER / f"{own}.block"
    problems = Problems()
    text = path.read_text(encoding="utf-8") + ("  press open\n" if own != name else "")
    facts = pipeline.run(Source(str(path), text), FileReader(library_folder()), problems).facts
    assert not [problem.message for problem in problems if problem.severity == "error"]
    found: dict[str, Any] = json.loads(write_json(block_document(facts.blocks[0], describe=step_texts)))
    return found


def own_steps(name: str) -> list[Step]:
    """The steps that the program writes."""
    return steps_of(own_document(name))


def words(told: list[Step]) -> int:
    """How many words steps take, without their titles, the letters of sub-steps and boxes; a number is one word."""
    return sum(
        len(re.sub(r"(?<=\d) (?=\d+/\d)", "-", re.sub(r"\([a-z]\) |☐ ?", "", step.text)).split()) for step in told
    )


@lru_cache
def document(name: str) -> dict[str, Any]:
    """The facts of a worked example's block."""
    found = deepcopy(own_document(name))
    for line in found["cutting"]:
        line["cut"] = [SQUARED.get(side, side) if line["piece"] == "strip" else side for side in line["cut"]]
    return found


def steps(name: str) -> list[Step]:
    """The steps of a worked example."""
    found = []
    for part in (FOLDER / f"{name}.steps").read_text(encoding="utf-8").strip().split("\n\n"):
        title, text = part.split("\n", 1)
        number, title = title.split(" ", 1)
        found.append(Step(int(number), title, text))
    return found


def check(name: str) -> None:
    """Sew a worked example and hold it against its block."""
    facts = document(name)
    compare(sew(steps(name), stock_of(facts)), facts)
