"""The steps of a printed sheet: titles and texts out of its PDF, as poppler finds them.

What a word is for is told by its type, as an eye tells it: a step's number is large and in colour, its title large and
dark, how many are made in bold, the size in gray, the text plain, a measure in bold behind its box (which is drawn, and
no letter). Labels in pictures are smaller than all of them.
"""

from __future__ import annotations

import re
import subprocess
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from tests.outside.reader.sentences import Step
from tests.outside.reader.words import plain

HEADING = "Steps"
XHTML = "{http://www.w3.org/1999/xhtml}"
DARK, GRAY = "#1c1c1b", "#5c5b57"


@dataclass(frozen=True, slots=True)
class Run:
    """Words of one line in one type."""

    text: str
    size: int
    colour: str
    bold: bool


@dataclass(slots=True)
class _Found:
    number: int
    name: list[str] = field(default_factory=list)
    made: list[str] = field(default_factory=list)
    size: list[str] = field(default_factory=list)
    text: list[str] = field(default_factory=list)
    in_measure: bool = False

    def end_measure(self) -> None:
        """A measure stands on a line of its own; where words follow it in running text, a stop sets it apart."""
        if self.in_measure:
            self.text[-1] += "."
        self.in_measure = False

    def step(self) -> Step:
        parts = [plain(" ".join(part)) for part in (self.name, self.made, self.size) if part]
        return Step(self.number, " · ".join(parts), plain(" ".join(self.text)))


def runs_of(pdf: Path) -> Iterator[Run]:
    """All words of a PDF in the order in which they were written, with their type.

    pdftohtml knows the type of each line, and loses some letters that are drawn as one; pdftotext has all letters, and
    where each word stands.
    """
    lines = ET.fromstring(_told("pdftohtml", "-xml", "-i", "-stdout", str(pdf)))  # noqa: S314
    words = ET.fromstring(_told("pdftotext", "-bbox", str(pdf), "-"))  # noqa: S314
    fonts = {font.get("id"): font for page in lines for font in page.findall("fontspec")}
    for page, its_words in zip(lines, words.iter(f"{XHTML}page"), strict=True):
        scale = float(page.get("width", "0")) / float(its_words.get("width", "1"))
        stand = [
            (
                float(word.get("xMin", "0")) * scale,
                _middle(word) * scale,
                float(word.get("xMax", "0")) * scale,
                word.text,
            )
            for word in its_words.iter(f"{XHTML}word")
        ]
        for line in page.findall("text"):
            top, left, width, height = (int(line.get(name, "0")) for name in ("top", "left", "width", "height"))
            inside = [
                (x, text)
                for x, y, right, text in stand
                if top <= y <= top + height and left <= (x + right) / 2 <= left + width
            ]
            font = fonts[line.get("font")]
            if inside:
                text = " ".join(str(text) for _, text in sorted(inside))
                yield Run(text, int(font.get("size", "0")), font.get("color", ""), "Bold" in font.get("family", ""))


def _told(*command: str) -> bytes:
    return subprocess.run(command, capture_output=True, check=True).stdout


def _middle(word: ET.Element) -> float:
    return (float(word.get("yMin", "0")) + float(word.get("yMax", "0"))) / 2


def printed_steps(pdf: Path) -> list[Step]:
    """The steps that a sheet prints, in their order."""
    found: list[_Found] = []
    large = text_size = 0
    inside = False
    for run in runs_of(pdf):
        if run.bold and run.text == HEADING and run.size > large:
            inside, large, text_size = True, run.size, 0
        elif inside and run.bold and run.size >= large and found:
            inside = False
        elif inside and run.bold and run.colour not in (DARK, GRAY) and re.fullmatch(r"\d+", run.text):
            found.append(_Found(int(run.text)))
            title_size = run.size
        elif inside and found:
            text_size = text_size or _text_size(run, title_size)
            _put(run, found[-1], title_size, text_size)
    return [step.step() for step in found]


def _text_size(run: Run, title_size: int) -> int:
    """The size of running text: that of the first words that are no title."""
    return run.size if run.size < title_size else 0


def _put(run: Run, step: _Found, title_size: int, text_size: int) -> None:
    if run.bold and run.size == title_size:
        is_label = re.fullmatch(r"[A-Z]+r?\d*(?: [A-Z]+r?\d*)*", run.text)
        if not (run.text.startswith(HEADING) or step.size or step.text or is_label):
            step.name.append(run.text)
    elif run.size != text_size or (run.colour == GRAY and step.text):
        return
    elif run.colour == GRAY:
        step.size.append(run.text)
    elif run.bold and run.colour != DARK:
        step.text.append(run.text)
        step.in_measure = False
    elif run.bold and not step.text:
        step.made.append(run.text)
    else:
        if not run.bold:
            step.end_measure()
        step.text.append(f"☐ {run.text}" if run.bold and not step.in_measure else run.text)
        step.in_measure = run.bold
