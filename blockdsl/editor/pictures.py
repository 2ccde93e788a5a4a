"""Small pictures for an editor's windows: SVG as the address of an image that holds all of it."""

from __future__ import annotations

import re
from base64 import b64encode
from collections.abc import Mapping, Sequence
from functools import cache
from typing import Final

from msgspec.structs import replace

from blockdsl.analysis import TextReader
from blockdsl.diagnostics import Problems, Source
from blockdsl.export.svg import write_svg
from blockdsl.facts import BlockFacts, QuiltFacts
from blockdsl.facts.blockfacts import Extent, FabricFacts, PlacedPatch
from blockdsl.geometry import Exact
from blockdsl.geometry.polygon import translate
from blockdsl.marks.display_list import Figure, Page
from blockdsl.marks.prose import rectangle
from blockdsl.marks.theme import Box
from blockdsl.pictures.block import coloured_patches, laid_on_block
from blockdsl.pictures.placing import fit
from blockdsl.pictures.quilt import quilt_picture
from blockdsl.pipeline import run
from blockdsl.shapes import SHAPES

_SIDE_PT: Final = 120.0
_SWATCH_PT: Final = 36.0
_EDGE_PT: Final = 2.0
_LARGEST: Final = 60_000
"""Bytes of a picture; editors take long over more."""
_EXAMPLE_COLOURS: Final = ("#3a4750", "#dfe3e0", "#e0a030", "#4f93a0", "#b93a2b", "#d9c19a")


def block_image(block: BlockFacts) -> str:
    """The block in colour."""
    return _image(block.placed, _fabrics(block), block.finished, block.name, block)


def part_image(block: BlockFacts, first: int, stop: int, at: tuple[Exact, Exact], extent: Extent, title: str) -> str:
    """Some of a block's patches, those of one unit, as they lie in it."""
    x, y = at
    patches = [
        replace(patch, outline=translate(patch.outline, -x, -y), bends=patch.curved.moved(-x, -y).bends)
        if patch.curved
        else replace(patch, outline=translate(patch.outline, -x, -y))
        for patch in block.placed[first:stop]
    ]
    return _image(patches, _fabrics(block), extent, title)


def quilt_image(quilt: QuiltFacts) -> str:
    """The quilt in colour."""
    figure, filled = quilt_picture(quilt, _box())
    return _address(figure, filled, quilt.name)


def swatch_image(colour: str, title: str) -> str:
    """A square of cloth."""
    box = Box(_EDGE_PT, _EDGE_PT, _SWATCH_PT, _SWATCH_PT)
    mark = rectangle(box.x_pt, box.y_pt, box.width_pt, box.height_pt, fill=colour)
    return _address(Figure(title, (mark,)), box, title)


@cache
def shape_image(name: str) -> str | None:
    """A shape of the language, drawn from the way it is written; None where its words say no one drawing."""
    written = example_of(name)
    fabrics = list(dict.fromkeys(re.findall(r"\bcloth-[a-z]\b", written)))
    declared = [
        f'fabric {word} "{word}" {_EXAMPLE_COLOURS[place % len(_EXAMPLE_COLOURS)]}'
        for place, word in enumerate(fabrics)
    ]
    for size in ("4 in", "4 x 2 in", "2 x 4 in", "4 x 3 in"):
        lines = [*declared, 'block "Example"', f"  size {size}", f"  row ({written})"]
        problems = Problems()
        facts = run(Source("example", "\n".join(lines)), TextReader(), problems).facts
        if facts.blocks and not problems.has_errors:
            return _image(facts.blocks[0].placed, _fabrics(facts.blocks[0]), facts.blocks[0].finished, name)
    return None


def example_of(name: str) -> str:
    """The shape as its usage writes it, without what may be left out, with a fabric for each word in capitals."""
    usage = SHAPES[name].usage.split(", or ")[0]
    while (shorter := re.sub(r"\[[^\[\]]*\]", "", usage)) != usage:
        usage = shorter
    usage = re.sub(r"[A-Z]+ x [A-Z]+", "2 x 2", usage.replace("…", ""))
    letters = iter("abcdefghijkl")
    return " ".join(re.sub(r"\b[A-Z][A-Z-]*\b", lambda _: f"cloth-{next(letters)}", usage).split())


def _fabrics(block: BlockFacts) -> Mapping[str, FabricFacts]:
    return {fabric.name: fabric for fabric in block.fabrics}


def _box() -> Box:
    return Box(_EDGE_PT, _EDGE_PT, _SIDE_PT, _SIDE_PT)


def _image(
    patches: Sequence[PlacedPatch],
    fabrics: Mapping[str, FabricFacts],
    extent: Extent,
    title: str,
    block: BlockFacts | None = None,
) -> str:
    placing, placed = fit(extent, _box())
    marks = coloured_patches(patches, fabrics, placing, placed, hatched=False)
    if block is not None:
        marks += laid_on_block(block, fabrics, placing, hatched=False)
    return _address(Figure(title, tuple(marks)), placed, title)


def _address(figure: Figure, filled: Box, title: str) -> str:
    page = Page(filled.width_pt + 2 * _EDGE_PT, filled.height_pt + 2 * _EDGE_PT, (figure,))
    drawn = write_svg(page, title=title)
    return f"data:image/svg+xml;base64,{b64encode(drawn).decode()}" if len(drawn) <= _LARGEST else ""
