"""What is printed at real size: templates, foundation papers, papers for folding cloth round.

Takes:    facts.
Gives:    pages of marks that must be printed at actual size, each with a test square.
Measures: points at real size; a test square of 1 in is 72 of them.
Reports:  nothing; what is larger than the paper is tiled.
Does not know: the other parts of a sheet, PDF, SVG.

A tour: `templates`, `foundation` and `papers` make the pages. `pattern` is a template in points; `template` draws it
with `words_inside` or `words_beside`; the `foundation_` files do so for papers that are sewn to. `layout` says where
all goes: `packing` by boxes, `packing_shapes` by outlines, `packing_rows` many alike, `tiling` and `tiles` over
several pages. `scale_check` has the test square and the bars, `scale_check_page` a page of them.
"""
