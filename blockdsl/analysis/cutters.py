"""The cutters that the maker says she owns."""

from __future__ import annotations

from blockdsl.diagnostics import Problems, nearest_word
from blockdsl.model.cutter import CUTTER_SHAPES, Cutter, CutterShape
from blockdsl.syntax import ast


def read_cutter(declaration: ast.CutterDeclaration, problems: Problems) -> Cutter | None:
    """The cutter, or None when its shape is unknown or its size cannot be; that is reported."""
    shape = declaration.shape.text
    if shape not in CUTTER_SHAPES:
        near = nearest_word(shape, CUTTER_SHAPES)
        known = ", ".join(f"`{each}`" for each in CUTTER_SHAPES)
        help_text = f"did you mean `{near}`?" if near else f"a cutter cuts {known}"
        problems.report("cutter-shape-unknown", declaration.shape.span, name=shape, help=help_text)
        return None
    sides = (declaration.width, declaration.height)
    for side in dict.fromkeys(sides):
        if side.value <= 0:
            problems.report("length-not-positive", side.span, what="size of a cutter")
            return None
    if sides[0] != sides[1] and shape != "rectangle":
        help_text = f'write one measure: `cutter "{declaration.label.text}" {shape} {CUTTER_SHAPES[shape]}`'
        problems.report("cutter-size", sides[0].span.to(sides[1].span), shape=shape, help=help_text)
        return None
    shorter, longer = sorted(side.value / (10 if side.unit == "mm" else 1) for side in sides)
    kind: CutterShape = "square" if shape == "rectangle" and shorter == longer else shape
    return Cutter(declaration.label.text, kind, (shorter, longer), "in" if sides[0].unit == "in" else "cm")
