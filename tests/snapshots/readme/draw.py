"""The picture of the README, drawn anew by the product: `make readme`.

It is the first page of the demo's Harbour Light, on white paper, so that it can be read on a dark screen too.
"""

from __future__ import annotations

from pathlib import Path

from msgspec.structs import replace

from blockdsl import pipeline
from blockdsl.analysis import FileReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.export.svg import write_svg
from blockdsl.marks import display_list as marks
from blockdsl.marks.theme import WHITE
from blockdsl.page.sheet import block_sheet
from blockdsl.resources import library_folder, library_path

PICTURE = Path(__file__).with_name("harbour-light-sheet.svg")


def picture() -> bytes:
    """The first page of the sheet as SVG."""
    path = library_path("demo/harbour-light")
    problems = Problems()
    source = Source(str(path), path.read_text(encoding="utf-8"))
    block = pipeline.run(source, FileReader(library_folder()), problems).facts.blocks[0]
    page = block_sheet(block).pages[0]
    across, down = page.width_pt, page.height_pt
    paper = marks.Path((((0, 0), (across, 0), (across, down), (0, down)),), fill=WHITE)
    return write_svg(replace(page, marks=(paper, *page.marks)), title=f"The pattern sheet of {block.name}")


if __name__ == "__main__":
    PICTURE.write_bytes(picture())
