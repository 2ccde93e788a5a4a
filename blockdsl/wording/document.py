"""The facts as JSON with the words of their steps: what `blockdsl facts` writes."""

from __future__ import annotations

from collections.abc import Iterable

from blockdsl.diagnostics import Diagnostic
from blockdsl.facts import FileFacts
from blockdsl.facts.document import facts_document, write_json
from blockdsl.wording.quilt import quilt_step_texts
from blockdsl.wording.steps import step_texts


def facts_json(facts: FileFacts, problems: Iterable[Diagnostic]) -> str:
    """One JSON document for a file, problems included."""
    return write_json(facts_document(facts, problems, step_texts, quilt_step_texts))
