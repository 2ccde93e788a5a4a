"""Exact plane geometry for things drawn on squared paper.

Takes:    nothing.
Gives:    exact numbers, points, polygons, the eight symmetries, offset, the proof of cover, shapes by their corners.
Measures: exact, in whatever unit the caller uses; x to the right, y downward.
Reports:  nothing.
Does not know: cloth, text.
"""

from blockdsl.geometry.number import Exact, Surd, ceil_to, floor_to, sign, square_root, to_float
from blockdsl.geometry.polygon import Point, Polygon

__all__ = ["Exact", "Point", "Polygon", "Surd", "ceil_to", "floor_to", "sign", "square_root", "to_float"]
