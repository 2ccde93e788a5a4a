"""What a page is made of: lines, fills, runs of text, figures, links; fonts, measuring and shaping.

Takes:    nothing but numbers, colours and words.
Gives:    marks, a closed and small display list; words measured, shaped and broken with the bundled font.
Measures: points at real size, x to the right and y downward.
Reports:  nothing.
Does not know: facts, paper sizes of a sheet's parts, PDF, SVG.

A tour: `display_list` has the marks, and pages and documents of them. `theme` has papers, colours, sizes of type and
spacing. `typeset` measures and shapes, `further_letters` draws letters of the maker's own font. `prose` sets lines and
paragraphs, `hatch` fills outlines with lines, `clip` cuts outlines against boxes.
"""
