"""The pages of the language reference, taken apart into the examples that are run."""

from __future__ import annotations

import json
import re
import shlex
from collections.abc import Iterator
from contextlib import chdir, redirect_stderr, redirect_stdout
from dataclasses import dataclass
from io import BytesIO, StringIO, TextIOWrapper
from pathlib import Path
from typing import Final

from blockdsl import pipeline
from blockdsl.analysis import FileReader
from blockdsl.analysis.override import WhatIf
from blockdsl.cli import main
from blockdsl.cli.arguments import parser
from blockdsl.cli.overrides import what_if_of
from blockdsl.diagnostics import Problems, Source
from blockdsl.fullsize.templates import templates_too_large
from blockdsl.wording import facts_json

HERE: Final = Path(__file__).parent
CLOTH: Final = (HERE / "cloth.block").read_bytes()

_FENCE: Final = re.compile(
    r"^```block *(?P<name>\S*)\n(?P<text>.*?)^```$(?:\n\n```facts\n(?P<facts>.*?)^```$)?", re.MULTILINE | re.DOTALL
)
_HEADING: Final = re.compile(r"^#+ (.*)$", re.MULTILINE)
_EXPECTED: Final = re.compile(r"# (?:error|warning): ([a-z-]+(?:, [a-z-]+)*)\s*$")
_WITH: Final = re.compile(r"^# with (--.*)$", re.MULTILINE)
_BUILT_AFTER: Final = re.compile(r"^# built after (\S+)$", re.MULTILINE)
_REPEAT: Final = re.compile(r"^(?P<line>.*?) *# (?P<count>[0-9]+) times$", re.MULTILINE)
_BYTE: Final = re.compile(rb"\xe2\x9f\xa8([0-9A-F]{2})\xe2\x9f\xa9")


@dataclass(frozen=True, slots=True)
class Example:
    """One fenced block: the heading that it stands under, its text, the files beside it by name, the numbers below it.

    Numbers stand in a `facts` fence directly below: a path into the JSON of the facts, a colon, the value.

    A comment `# error: code` or `# warning: code` ends a line that has that problem, or
    those with commas between. A comment `# with --set '4 x 4'` says that the file is looked at so. `# 300 times` at
    the end of a line stands for so many of them, and `⟨00⟩` for the byte of that value, for what a page cannot show.
    """

    heading: str
    text: str
    beside: tuple[tuple[str, str], ...]
    facts: str = ""

    @property
    def expected(self) -> list[tuple[int, str]]:
        """Lines and the codes that are promised there."""
        lines = _repeated(self.text).split("\n")
        found = [(number, _EXPECTED.search(line)) for number, line in enumerate(lines, start=1)]
        return [(number, code) for number, codes in found if codes for code in codes[1].split(", ")]

    def problems(self, folder: Path) -> list[tuple[int, str]]:
        """Lines of the example and the codes found there, run as a file in `folder` with those beside it."""
        source = self._written(folder)
        if before := _BUILT_AFTER.search(source.text):
            return _built(folder, before[1], Path(source.name).name)
        return [(problem.span.line, problem.code) for problem in check(source, folder) if problem.span.source is source]

    def _written(self, folder: Path) -> Source:
        (folder / "cloth.block").write_bytes(CLOTH)
        for name, text in self.beside:
            (folder / name).write_bytes(_as_bytes(text))
        path = folder / "example.block"
        path.write_bytes(_as_bytes(self.text))
        return Source(str(path), path.read_text(encoding="utf-8"))

    def told(self, folder: Path) -> list[tuple[str, object, object]]:
        """For each line of its facts the path, the value that is promised and the one that is told."""
        source = self._written(folder)
        problems = Problems()
        facts = pipeline.run(source, FileReader(folder), problems).facts
        document = json.loads(facts_json(facts, problems))
        pairs = [line.split(": ", maxsplit=1) for line in self.facts.splitlines()]
        return [(path, json.loads(value), _at(document, path)) for path, value in pairs]


def _built(folder: Path, first: str, then: str) -> list[tuple[int, str]]:
    """The problems of building one file after another into the same folder."""
    with chdir(folder), redirect_stdout(TextIOWrapper(BytesIO())):
        for name in (first, then):
            with redirect_stderr(StringIO()) as told:
                main(["build", name, "-o", "out", "--only", "table", "--no-cache", "--message-format", "json"])
    found = [json.loads(line) for line in told.getvalue().splitlines()]
    return [(problem["line"], problem["code"]) for problem in found]


def _at(document: object, path: str) -> object:
    """What stands at the end of a path such as `quilts.0.finished`."""
    for step in path.split("."):
        document = document[int(step)] if isinstance(document, list) else document[step]  # type: ignore[index]
    return document


def check(source: Source, folder: Path) -> Problems:
    """Everything that `blockdsl check`, and `blockdsl build` with its templates, would say of a file."""
    problems = Problems()
    stages = pipeline.run(source, FileReader(folder), problems, _supposed(source.text))
    for design, block in zip(stages.program.blocks, stages.facts.blocks, strict=True):
        if letters := templates_too_large(block):
            problems.report("template-too-large", design.span, what="templates", of=f"patch {', '.join(letters)}")
    return problems


def _supposed(text: str) -> WhatIf | None:
    """What the options that stand in a comment suppose."""
    options = _WITH.search(text)
    if options is None:
        return None
    return what_if_of(parser().parse_args(["facts", "-", *shlex.split(options[1])]))


def examples(page: Path) -> Iterator[Example]:
    """The examples of a page in order; a fence with a name is a file beside those after it."""
    text = page.read_text(encoding="utf-8")
    beside: list[tuple[str, str]] = []
    for fence in _FENCE.finditer(text):
        if fence["name"]:
            beside.append((fence["name"], fence["text"]))
        else:
            yield Example(_heading(text, fence.start()), fence["text"], tuple(beside), fence["facts"] or "")


def _heading(text: str, place: int) -> str:
    return [heading[1] for heading in _HEADING.finditer(text, 0, place)][-1]


def _repeated(text: str) -> str:
    return _REPEAT.sub(lambda found: "\n".join([found["line"]] * int(found["count"])), text)


def _as_bytes(text: str) -> bytes:
    return _BYTE.sub(lambda found: bytes([int(found[1], 16)]), _repeated(text).encode())
