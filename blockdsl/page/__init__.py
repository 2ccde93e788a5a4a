"""Composing and laying out pages: sheets, quilts, books, lessons, galleries.

Takes:    facts.
Gives:    documents: pages of marks.
Measures: points at real size, x to the right and y downward.
Reports:  nothing; what is longer than a page runs on to the next.
Does not know: SVG, PDF, HTML.

A tour: `flow` runs flowables over pages, `headings` and `table` make them, `steps` the cards of sewing steps. Packages
hold what is printed: `sheet` a block's pattern sheet, `quilt` a quilt's, `lesson` how a method is sewn, `book` all of
them bound. `gallery`, `single` and `step_slide` are pages that stand alone. `scale_check` has the test square and the
bars, `scale_check_page` a page of them.
"""
