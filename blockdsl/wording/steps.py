"""A block's steps as a maker reads them: titles, what to do part by part, measures to check."""

from __future__ import annotations

from msgspec.structs import replace

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.stepfacts import StepFacts
from blockdsl.wording.grammar import capital
from blockdsl.wording.joining import joining_parts
from blockdsl.wording.lengths import size_words
from blockdsl.wording.messages import Messages, messages
from blockdsl.wording.methods import made_by_method, method_parts, way_of
from blockdsl.wording.papers import paper_parts, section_size, without_papers
from blockdsl.wording.part_names import PartNames
from blockdsl.wording.steptext import StepText
from blockdsl.wording.stepvoice import Mentioned


def step_texts(block: BlockFacts, language: str | None = None) -> tuple[StepText, ...]:
    """The words of every step of a block, in order."""
    words = messages(language or block.language)
    taught: dict[tuple[object, ...], int] = {}
    on_papers: dict[str, int] = {}
    mentioned = Mentioned()
    return tuple(_text(step, block, words, taught, on_papers, mentioned) for step in block.steps)


def _text(
    step: StepFacts,
    block: BlockFacts,
    words: Messages,
    taught: dict[tuple[object, ...], int],
    on_papers: dict[str, int],
    mentioned: Mentioned,
) -> StepText:
    as_in = 0
    if step.sections:
        parts = paper_parts(step, block, words, on_papers)
    elif step.lesson:
        first = taught.setdefault(way_of(step), step.number)
        as_in = first if first != step.number else 0
        parts = method_parts(step, block, words, as_in)
    else:
        parts = joining_parts(step, block, words, mentioned)
    if papers := without_papers(step, block, words):
        parts = (*parts[:-1], replace(parts[-1], sentences=(*parts[-1].sentences, papers)))
    name = PartNames(words, step.names).many(step.makes, step.count)
    made = made_by_method(step, words)
    size = words("step-size", size=size_words(step.size, block.unit, words))
    if step.sections and not step.finished:
        size = words("step-size", size=section_size(step, block, words))
    notes = tuple(remark.text for remark in step.remarks if remark.is_note)
    return StepText(step.number, capital(name), made, size, parts, as_in, notes)
