"""What is printed at real size: templates, foundation papers, papers for folding cloth round.

Takes:    facts.
Gives:    pages of marks that must be printed at actual size, each with a test square.
Measures: points at real size; a test square of 1 in is 72 of them.
Reports:  nothing; what is larger than the paper is tiled.
Does not know: the other parts of a sheet, PDF, SVG.

A tour: `templates`, `foundation` and `papers` make the pages. `pattern` is a template in points; `template` draws it
with `template_marks` and its words, which `words_inside` sets where `room` finds space, or else `words_beside`. A
paper that is sewn to is a `foundation_pattern`, drawn by `foundation_paper` with `foundation_marks` and
`foundation_table`. `head` and `foundation_head` begin the first page. `layout` says where all goes: `packing` by
boxes, `packing_shapes` by outlines, `packing_rows` many alike, `tiling` and `tiles` over several pages.
`cut_shapes` are the templates for cutting machines.
"""
