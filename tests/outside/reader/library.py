"""The blocks of the library with the texts of their steps, at the size that they have or at another."""

from __future__ import annotations

import json
from functools import lru_cache
from typing import Any

from blockdsl.facts.json import block_document
from blockdsl.wording.steps import step_texts
from tests.outside.reader.comparing import compare
from tests.outside.reader.reading import sew
from tests.outside.reader.sentences import Step
from tests.outside.reader.stock import stock_of
from tests.outside.virtual.library import FAMILIES, OWN, others


@lru_cache(64)
def documents(name: str, size: str = OWN) -> tuple[dict[str, Any], ...]:
    """The facts of the blocks of a file of the library, with the titles and texts of their steps."""
    return tuple(json.loads(json.dumps(block_document(each.facts, describe=step_texts))) for each in others(name, size))


def steps_of(document: dict[str, Any]) -> list[Step]:
    return [Step(step["number"], step["title"], step["text"]) for step in document["steps"]]


def check(document: dict[str, Any]) -> None:
    """Sew a block by its words and hold it against what it should be.

    Errors: Fault or Refused.
    """
    compare(sew(steps_of(document), stock_of(document)), document)


__all__ = ["FAMILIES", "OWN", "check", "documents", "steps_of"]
