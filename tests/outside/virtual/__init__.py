"""A virtual sewing machine: cloth of the cut list, sewn by the steps, compared with the block.

It shares no formula with the product: cloth is cut as polygons, laid together, sewn a seam allowance from its raw
edges and opened, and shapely says what lies where. All lengths are floats in the block's unit, y downward.
"""
