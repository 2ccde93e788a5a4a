"""How many words the steps of the library take, and what they lack; a table, nothing judged.

Words are counted without the letters of sub-steps and without boxes; a number and its fraction are one word.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

from blockdsl import pipeline
from blockdsl.analysis import FileReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.facts import BlockFacts
from blockdsl.facts.stepfacts import StepFacts
from blockdsl.wording import StepText, step_texts

ROOT = Path(__file__).resolve().parents[2]
FOLDERS = ("library", "library/demo")
_LETTER = re.compile(r"\([a-z]\) |☐ ?")
_FRACTION = re.compile(r"(?<=\d) (?=\d+/\d)")
_NAMELESS = re.compile(r"\bunits? \d", re.IGNORECASE)


def blocks() -> Iterator[BlockFacts]:
    """Every block of the library and the demo once."""
    seen: set[str] = set()
    for folder in FOLDERS:
        for path in sorted((ROOT / folder).glob("*.block")):
            problems = Problems()
            source = Source(str(path), path.read_text("utf-8"))
            for block in pipeline.run(source, FileReader(ROOT), problems).facts.blocks:
                if block.name not in seen:
                    seen.add(block.name)
                    yield block


def words(text: StepText) -> int:
    """The words of a step without its title."""
    return len(_FRACTION.sub("-", _LETTER.sub("", text.text)).split())


def main() -> None:
    """Print the table, then the longest steps and all that lack something."""
    joining: list[tuple[int, str, StepText]] = []
    methods: list[int] = []
    nameless, sizeless, marked = set[str](), list[str](), list[str]()
    total = 0
    for block in blocks():
        total += 1
        for step, text in zip(block.steps, step_texts(block), strict=True):
            if step.lesson or step.sections:
                methods.append(words(text))
                continue
            joining.append((words(text), block.name, text))
            where = f"{block.name}, step {text.number}"
            if _NAMELESS.search(f"{text.name} {text.text}"):
                nameless.add(block.name)
            if not text.parts[-1].measure:
                sizeless.append(where)
            if _is_marked(step):
                marked.append(where)
    counts = [count for count, *_ in joining]
    print(f"{total} blocks")
    print(f"{len(counts):6} joining steps, {sum(counts) / len(counts):5.1f} words on average (60 at most)")
    print(f"{len(methods):6} method steps, {sum(methods) / max(len(methods), 1):5.1f} words on average")
    print(f"{sum(counts) + sum(methods):6} words in all")
    print(f"{len(nameless):6} blocks with a numbered unit (10 at most) {', '.join(sorted(nameless))}")
    print(f"{len(sizeless):6} steps without a size (none) {'; '.join(sizeless)}")
    print(f"{len(marked):6} steps in which a unit lies by a pinned mark: {'; '.join(marked)}")
    print("the longest:")
    for count, name, text in sorted(joining, key=lambda each: -each[0])[:10]:
        print(f"{count:6} {name}, step {text.number}")


def _is_marked(step: StepFacts) -> bool:
    return any("'mark'" in repr(action) for action in step.actions)


if __name__ == "__main__":
    main()
