"""The pieces of a block as DXF for cutting machines: one layer for the blade, one for the seam, one for marks.

Units:  millimetres, y upward as DXF has it: it is turned over here, once. Arcs are bulges of polylines, the tangent
        of a quarter of their angle (ezdxf's documentation of LWPOLYLINE), so that they stay arcs.
"""

from __future__ import annotations

from io import StringIO
from math import tan
from typing import Any, Final

from ezdxf import units
from ezdxf._options import options
from ezdxf.filemanagement import new

from blockdsl.export.recognised import DXF_MARK
from blockdsl.fullsize.cut_shapes import CutShape, Loop, Place, in_a_row

CUT: Final = "CUT"
SEW: Final = "SEW"
MARKS: Final = "MARKS"
_COLOURS: Final = {CUT: 1, SEW: 5, MARKS: 8}
"""Red, blue and grey of the format's own table."""
_LETTER_MM: Final = 6.0
_VERSION: Final = "R2000"


def write_dxf(shapes: tuple[CutShape, ...]) -> bytes:
    """All shapes side by side, the same bytes each time."""
    options.write_fixed_meta_data_for_testing = True  # no date, no random names: the same bytes each time
    document = new(_VERSION, units=units.MM)
    for layer, colour in _COLOURS.items():
        document.layers.add(layer, color=colour)
    space = document.modelspace()
    for shape, x in in_a_row(shapes):
        _outline(space, shape.cutting, x, CUT)
        _outline(space, shape.sewing, x, SEW)
        for start, end in shape.marks:
            space.add_line(_up(start, x), _up(end, x), dxfattribs={"layer": MARKS})
        letter = space.add_text(shape.letter, height=_LETTER_MM, dxfattribs={"layer": MARKS})
        letter.set_placement(_up(shape.middle, x))
    written = StringIO()
    document.write(written)
    return DXF_MARK + written.getvalue().encode("utf-8")


def _outline(space: Any, loop: Loop, x: float, layer: str) -> None:
    starts = (loop.start, *loop.corners[:-1])
    # Turned over, what went clockwise still does to the eye; a bulge is positive where the arc goes the other way.
    points = [(*_up(start, x), -tan(edge.turn / 4)) for start, edge in zip(starts, loop.edges, strict=True)]
    space.add_lwpolyline(points, format="xyb", close=True, dxfattribs={"layer": layer})


def _up(place: Place, x: float) -> Place:
    return place[0] + x, -place[1]
