"""The blocks of the library with the texts of their steps, at the size that they have or at another."""

from __future__ import annotations

import json
from functools import lru_cache
from typing import Any
from zlib import crc32

from blockdsl.facts.document import block_document, write_json
from blockdsl.wording.steps import step_texts
from tests.kept import once_in_a_run
from tests.outside.reader.comparing import compare
from tests.outside.reader.reading import sew
from tests.outside.reader.sentences import Step
from tests.outside.reader.stock import stock_of
from tests.outside.virtual.library import FAMILIES, OWN, SIZES, tried


@lru_cache(128)
def documents(name: str, size: str = OWN) -> tuple[dict[str, Any], ...]:
    """The facts of the blocks of a file of the library, with the titles and texts of their steps."""

    def told() -> str:
        found = (write_json(block_document(each.facts, describe=step_texts)) for each in tried(name, size))
        return f"[{','.join(found)}]"

    return tuple(json.loads(once_in_a_run(told, "documents with words", name, size)))


def another_size(name: str) -> str:
    """One more size at which the blocks of a file are read; all of them are, over the files."""
    return SIZES[1 + crc32(name.encode()) % (len(SIZES) - 1)]


def steps_of(document: dict[str, Any]) -> list[Step]:
    """The steps of a block as they are told, without what its designer adds in her own words, behind ours."""
    return [Step(step["number"], step["title"], without_notes(step)) for step in document["steps"]]


def without_notes(step: dict[str, Any]) -> str:
    """The words of a step but for the designer's notes at its end."""
    text: str = step["text"]
    for remark in reversed(step["remarks"]):
        if not remark["address"] and not remark["picture"]:
            assert text.endswith(remark["text"])
            text = text.removesuffix(remark["text"]).rstrip()
    return text


def check(document: dict[str, Any]) -> None:
    """Sew a block by its words and hold it against what it should be.

    Errors: Fault or Refused.
    """
    compare(sew(steps_of(document), stock_of(document)), document)


__all__ = ["FAMILIES", "OWN", "another_size", "check", "documents", "steps_of", "without_notes"]
