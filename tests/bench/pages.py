"""How well the pages of a book are used, measured from its PDF: pages, white paper, sizes of type, lengths of lines.

`python -m tests.bench.pages` builds the demo book and prints each figure beside what it was in the first version and
what is wanted. White paper is what lies between the last ink of a page and its foot, on pages painted by PDFium; sizes
of type are those that pypdf finds in the file.
"""

from __future__ import annotations

import tempfile
from collections import Counter
from pathlib import Path
from typing import Any, Final

import numpy as np
import pypdfium2
from msgspec import Struct
from pypdf import PdfReader

from blockdsl import load

ROOT: Final = Path(__file__).resolve().parents[2]
BOOK: Final = ROOT / "library" / "demo" / "book.block"
DPI: Final = 36
FOOT_PT: Final = 20.0
"""What the foot of a page takes, from the lower edge of the box that prints on Letter and A4 alike."""
BOX_PT: Final = (36.0, 756.0)
"""The upper and lower edge of that box on Letter, 254 mm in the middle of 279.4."""
FEW_LINES_PT: Final = 56.0
"""Four lines of words: a page with less on it is a remnant."""


class Measured(Struct):
    """What was measured of one book."""

    pages: int
    empty: float
    remnants: list[int]
    at_most_9pt: float
    smallest_pt: float
    longest_line: int


def measured(path: Path) -> Measured:
    """The figures of a book's PDF on Letter."""
    empty, remnants = [], []
    for number, page in enumerate(pypdfium2.PdfDocument(path)):
        left = _white_below(page)
        if number:
            empty.append(left / (BOX_PT[1] - BOX_PT[0] - FOOT_PT))
            if BOX_PT[1] - FOOT_PT - left - BOX_PT[0] < FEW_LINES_PT:
                remnants.append(number + 1)
    sizes, longest = _type(path)
    letters = sum(sizes.values())
    small = sum(count for size, count in sizes.items() if size <= 9.01)
    inner = empty[:-1]  # the last page is the test page for the printer, full by its nature
    return Measured(len(empty) + 1, sum(inner) / len(inner), remnants, small / letters, min(sizes), longest)


def _white_below(page: Any) -> float:
    """How much of a page is white between its last ink and its foot, in points."""
    grey = np.asarray(page.render(scale=DPI / 72, grayscale=True).to_numpy())
    grey = grey.reshape(grey.shape[0], grey.shape[1])
    top, foot = (round(edge * DPI / 72) for edge in (BOX_PT[0], BOX_PT[1] - FOOT_PT))
    inked = np.nonzero((grey[top:foot] < 200).any(axis=1))[0]
    return float((foot - top - (inked[-1] + 1 if len(inked) else 0)) * 72 / DPI)


def _type(path: Path) -> tuple[Counter[float], int]:
    """How many letters there are of each size, and how many the longest line has."""
    sizes: Counter[float] = Counter()
    longest = 0

    def seen(text: str, _cm: Any, matrix: list[float], _font: Any, size: float) -> None:
        nonlocal longest
        letters = len(text.strip())
        if letters:
            sizes[round(abs(size * (matrix[0] ** 2 + matrix[1] ** 2) ** 0.5), 1)] += letters
            longest = max(longest, letters)

    for page in PdfReader(path).pages:
        page.extract_text(visitor_text=seen)
    return sizes, longest


def main() -> None:
    """Build the demo book, measure it, and print the table."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "book.pdf"
        (book,) = load(BOOK).books
        book.write_pdf(path)
        found = measured(path)
    remnants = ", ".join(map(str, found.remnants)) or "none"
    rows = (
        ("pages of the demo book", "72", str(found.pages), "48 at most"),
        ("white below the last ink, mean over inner pages", "25 %", f"{found.empty:.0%}", "12 % at most"),
        ("pages with a remnant alone", "6", remnants, "none"),
        ("letters of 9 pt or less", "82 %", f"{found.at_most_9pt:.0%}", "labels alone"),
        ("smallest type, pt", "7.5", f"{found.smallest_pt:g}", "8.5 at least"),
        ("letters in the longest run of words", "146", str(found.longest_line), "75 at most in a paragraph"),
    )
    wide = [max(len(row[column]) for row in rows) for column in range(4)]
    print("  ".join(text.ljust(width) for text, width in zip(("", "first", "now", "wanted"), wide, strict=True)))
    for row in rows:
        print("  ".join(text.ljust(width) for text, width in zip(row, wide, strict=True)))


if __name__ == "__main__":
    main()
