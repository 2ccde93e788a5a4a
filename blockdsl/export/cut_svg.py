"""The pieces of a block as SVG at full size for cutting machines.

A group for the blade, one for the seam, one for marks. Arcs stay arcs.
Units: millimetres, as the size of the drawing says.
"""

from __future__ import annotations

import svgwrite
from svgwrite.container import Group
from svgwrite.etree import etree

from blockdsl.export.printable import check_text
from blockdsl.export.recognised import SVG_MARK
from blockdsl.fullsize.cut_shapes import CutShape, Loop, in_a_row

_COLOURS = {"cut": "#c00000", "sew": "#0000c0", "marks": "#707070"}
_EDGE_MM = 5.0
_LETTER_MM = 6.0
_HAIR_MM = 0.1


def write_cut_svg(shapes: tuple[CutShape, ...], title: str) -> bytes:
    """All shapes side by side.

    Errors: Unprintable for a title that cannot be written.
    """
    row = list(in_a_row(shapes))
    last, x = row[-1]
    width, height = x + last.width_mm + 2 * _EDGE_MM, max(shape.height_mm for shape in shapes) + 2 * _EDGE_MM
    size = f"{_number(width)}mm", f"{_number(height)}mm"
    drawing = svgwrite.Drawing(size=size, viewBox=f"0 0 {_number(width)} {_number(height)}", debug=False)
    drawing.set_desc(check_text(title))
    groups = {}
    for name, colour in _COLOURS.items():
        groups[name] = Group(id=name, fill="none", stroke=colour, stroke_width=_HAIR_MM, debug=False)
        drawing.add(groups[name])
    for shape, moved in row:
        at = moved + _EDGE_MM
        groups["cut"].add(drawing.path(d=_path(shape.cutting, at)))
        groups["sew"].add(drawing.path(d=_path(shape.sewing, at)))
        for (ax, ay), (bx, by) in shape.marks:
            ends = (ax + at, ay + _EDGE_MM), (bx + at, by + _EDGE_MM)
            groups["marks"].add(drawing.path(d=f"M{_places(*ends[0])}L{_places(*ends[1])}"))
        letter = drawing.text(
            check_text(shape.letter),
            insert=(_number(shape.middle[0] + at), _number(shape.middle[1] + _EDGE_MM)),
            font_size=_LETTER_MM,
            fill=_COLOURS["marks"],
            stroke="none",
        )
        groups["marks"].add(letter)
    markup = etree.tostring(drawing.get_xml(), encoding="unicode")
    return f'<?xml version="1.0" encoding="utf-8"?>\n{SVG_MARK.decode()}\n{markup}\n'.encode()


def _path(loop: Loop, x: float) -> str:
    parts = [f"M{_places(loop.start[0] + x, loop.start[1] + _EDGE_MM)}"]
    for edge in loop.edges:
        end = _places(edge.end[0] + x, edge.end[1] + _EDGE_MM)
        radius = _number(edge.radius_mm)
        # Of y downward a turn that grows is clockwise, which is the flag 1 (SVG 1.1, 8.3.8).
        parts.append(f"A{radius} {radius} 0 0 {int(edge.turn > 0)} {end}" if edge.turn else f"L{end}")
    return f"{''.join(parts)}Z"


def _places(x: float, y: float) -> str:
    return f"{_number(x)} {_number(y)}"


def _number(value: float) -> str:
    """To a ten-thousandth of a millimetre, without zeros at the end."""
    return f"{value:.4f}".rstrip("0").rstrip(".")
