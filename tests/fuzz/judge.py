"""What must hold for any file at all: no exception, no wait, nothing half written, pictures that stand alone."""

from __future__ import annotations

import contextlib
import io
import json
import re
import signal
import time
import traceback
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from tempfile import TemporaryDirectory
from types import FrameType
from xml.etree import ElementTree as ET

from msgspec import structs

from blockdsl import pipeline
from blockdsl.analysis import TextReader
from blockdsl.cli import main
from blockdsl.diagnostics import Problems, Source, render_json, render_text
from blockdsl.export.pdf import write_pdf
from blockdsl.export.svg import write_svg
from blockdsl.facts import BlockFacts, FileFacts
from blockdsl.fullsize.templates import template_pages, templates_too_large
from blockdsl.marks.display_list import Page
from blockdsl.page.sheet import block_sheet
from blockdsl.page.single import colour_page, cutting_page, grid_page, letters_page
from blockdsl.syntax.format import format_text
from blockdsl.wording import facts_json
from tests.fuzz.seeds import companions

NAME = "fuzz.block"
SECONDS = 1.0
"""Of the processor, which does not count what else the machine does. Longer is a hang; so is that much for a page."""
SECONDS_FOR_A_PATCH = 2.0 / 40_000
"""What the checking of very large blocks may take: 40,000 patches in two seconds."""
GIVE_UP_SECONDS = 20.0
"""Of the processor too, so that a busy machine does not look like a hang."""
FEW_PATCHES = 400


@dataclass(slots=True)
class Verdict:
    """What is wrong, in words, and how long reading took of the processor's time."""

    faults: list[str] = field(default_factory=list)
    seconds: float = 0.0
    blocks: int = 0


_COMPANIONS = companions()


class TooLongError(Exception):
    """The alarm rang."""


def judge(text: str, *, draw: bool, build: bool) -> Verdict:
    """Try everything on one text; never raises."""
    verdict = Verdict()
    facts: list[FileFacts] = []
    start = time.process_time()
    _attempt(verdict, "read", lambda: facts.append(_read(text, verdict)))
    verdict.seconds = time.process_time() - start
    patches = sum(len(block.placed) for file in facts for block in file.blocks)
    if verdict.seconds > max(SECONDS, SECONDS_FOR_A_PATCH * patches):
        verdict.faults.append(f"slow: {verdict.seconds:.2f} s to read")
    _attempt(verdict, "format", lambda: _format(text, verdict))
    for file in facts:
        verdict.blocks = len(file.blocks)
        if draw:
            for block in file.blocks[:3]:
                _attempt(verdict, "draw", lambda block=block: _draw(block, verdict))  # type: ignore[misc]
    if build:
        _attempt(verdict, "build", lambda: _build(text, verdict))
    return verdict


def _attempt(verdict: Verdict, what: str, job: Callable[[], None]) -> None:
    try:
        with _alarm():
            job()
    except TooLongError:
        verdict.faults.append(f"{what}: given up after {GIVE_UP_SECONDS:.0f} s")
    except Exception as fault:  # noqa: BLE001  any exception at all is a finding
        place = traceback.extract_tb(fault.__traceback__)[-1]
        verdict.faults.append(f"{what}: {type(fault).__name__}: {fault} ({Path(place.filename).name}:{place.lineno})")


@contextlib.contextmanager
def _alarm() -> Iterator[None]:
    def ring(_number: int, _frame: FrameType | None) -> None:
        raise TooLongError

    before = signal.signal(signal.SIGPROF, ring)
    signal.setitimer(signal.ITIMER_PROF, GIVE_UP_SECONDS)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_PROF, 0)
        signal.signal(signal.SIGPROF, before)


def _read(text: str, verdict: Verdict) -> FileFacts:
    problems, source = Problems(), Source(NAME, text)
    facts = pipeline.run(source, TextReader({**_COMPANIONS, NAME: text}), problems).facts
    # The plan of a quilt's cloth takes seconds, and has judges of its own in tests/outside; so have the steps with it.
    quilts = tuple(
        structs.replace(each, finishing=None, steps=tuple(step for step in each.steps if step.of_top))
        for each in facts.quilts
    )
    json.loads(facts_json(structs.replace(facts, quilts=quilts), problems))
    for problem in problems:
        render_text(problem, colour=False)
        json.loads(render_json(problem))
    if not facts.blocks and not len(problems) and re.search(r'(?m)^[ \t]*block[ \t]+"', text):
        verdict.faults.append("silence: a block is declared, none is made, and no problem is told")
    return facts


def _format(text: str, verdict: Verdict) -> None:
    once = format_text(Source(NAME, text))
    if once is not None and format_text(Source(NAME, once)) != once:
        verdict.faults.append("format: the usual form of the usual form differs")


def _draw(block: BlockFacts, verdict: Verdict) -> None:
    start = time.process_time()
    sheet = block_sheet(block)
    pages = [*sheet.pages, colour_page(block), letters_page(block), grid_page(block), cutting_page(block)]
    documents = [sheet]
    if not templates_too_large(block):
        documents.append(template_pages(block, paper="a4"))
    pages += documents[-1].pages[:2]
    for page in pages:
        _check_svg(page, verdict)
    for document in documents:
        if not write_pdf(document).startswith(b"%PDF-"):
            verdict.faults.append("draw: not a PDF")
    seconds = time.process_time() - start
    drawn = len(pages) + sum(len(document.pages) for document in documents)
    if len(block.placed) <= FEW_PATCHES and seconds > SECONDS + 0.1 * drawn:
        verdict.faults.append(f"slow: {seconds:.2f} s to draw {len(block.placed)} patches on {drawn} pages")


def _check_svg(page: Page, verdict: Verdict) -> None:
    """Well-formed, with nothing fetched from anywhere."""
    data = write_svg(page, title="Fuzz")
    for element in ET.fromstring(data).iter():  # noqa: S314  we wrote it ourselves a moment ago
        for name, value in element.attrib.items():
            if name.rpartition("}")[2] in {"href", "src"} and not value.startswith(("#", "data:")):
                verdict.faults.append(f"svg: refers to {value[:80]}")
            if "url(" in value:
                verdict.faults.append(f"svg: {name} has {value[:80]}")
        if element.tag.endswith("style") and re.search(r"url\((?!['\"]?data:)|@import", element.text or ""):
            verdict.faults.append("svg: the style fetches something")


_RECORD = ("written.jsonl", "lock")
"""What a folder of outputs has of its own: the record of what was written, and the lock."""


def _build(text: str, verdict: Verdict) -> None:
    """The whole command in a folder that has older outputs: all new, or all as they were."""
    with TemporaryDirectory() as top:
        folder = Path(top) / "out"
        folder.mkdir()
        for name, companion in _COMPANIONS.items():
            (Path(top) / name).write_text(companion, "utf-8")
        path = Path(top) / NAME
        path.write_bytes(text.encode("utf-8", "surrogatepass"))
        _run_build(path, folder)
        before = _contents(folder)
        path.write_bytes(path.read_bytes() + b'\nblock "Last"\n  size 3 in\n  row no-such-fabric-at-all\n')
        status = _run_build(path, folder)
        if status == 0:
            verdict.faults.append("build: a file with an unknown fabric passes")
        elif _contents(folder) != before:
            verdict.faults.append("build: a build that fails changed what was there")
        left = _contents(Path(top)).keys() - {NAME, *_COMPANIONS} - {f"out/.blockdsl/{name}" for name in _RECORD}
        strange = sorted(
            name for name in left if not name.startswith("out/") or name.endswith((".part", ".tmp")) or "/." in name
        )
        if strange:
            verdict.faults.append(f"build: left behind {strange[:3]}")


def _run_build(path: Path, folder: Path) -> int:
    said, out = (io.TextIOWrapper(io.BytesIO(), "utf-8") for _ in range(2))
    with contextlib.redirect_stderr(said), contextlib.redirect_stdout(out):
        status = main(["build", str(path), "-o", str(folder)])
    if status not in (0, 1):
        said.seek(0)
        raise AssertionError(f"status {status}: {said.read()[-300:]}")
    return status


def _contents(folder: Path) -> dict[str, bytes]:
    return {
        path.relative_to(folder).as_posix(): path.read_bytes() for path in sorted(folder.rglob("*")) if path.is_file()
    }
