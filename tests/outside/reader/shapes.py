"""Every shape of the language, by every method that makes it, as blocks whose words are to be read."""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any

from blockdsl.facts.document import block_document, write_json
from blockdsl.sewing.methods import FOUNDATION, OVER_PAPERS, methods_for
from blockdsl.shapes import SHAPES
from blockdsl.wording.steps import step_texts
from tests.outside.virtual.shapes import CELLS, CURVED, OBLONG, SET_IN
from tests.unit.model.blocks import block

EVERY = CELLS | SET_IN | CURVED
UNMADE = {
    *((shape, FOUNDATION) for shape in (*SET_IN, *CURVED)),
    *((shape, OVER_PAPERS) for shape in CURVED),
}
"""What cannot be: papers are sewn in straight lines, and folded along straight edges."""
UNREAD = {("star45", "strip set")}
"""Slanted segments: sewn by the virtual machine from the facts, but their words are not read back yet."""
ROWS = ("four in a row", "two by two")
"""A mirror image and a turned one among them."""


def shapes_by_methods() -> Iterator[tuple[str, str]]:
    """All shapes that are sewn, and the ways to make them that can be read. A plain square is not sewn."""
    for shape in SHAPES:
        if shape != "square":
            yield from ((shape, method) for method in methods_for(shape) if (shape, method) not in UNMADE | UNREAD)


def shape_document(shape: str, method: str, rows: str, side: str = "3 in") -> dict[str, Any]:
    """A block of four units of a shape, each so high, made by a method."""
    cell, (high, unit) = EVERY[shape], side.split()
    wide = 2 if shape in OBLONG else 1
    turn = ">>" if shape in OBLONG else ">"
    if rows == ROWS[0]:
        lines, across, down = [f"row {cell} {cell}~ {cell}>> {cell}"], 4, 1
    else:
        lines, across, down = [f"row {cell} {cell}{turn}", f"row {cell}~ {cell}"], 2, 2
    size = f"{float(high) * across * wide:g} x {float(high) * down:g} {unit}"
    facts = block(*lines, f"make {shape} as {method}", size=size)
    found: dict[str, Any] = json.loads(write_json(block_document(facts, describe=step_texts)))
    return found
