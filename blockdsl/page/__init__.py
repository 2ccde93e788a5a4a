"""Content laid out on pages: sheets, quilts, books, lessons, galleries.

Takes:    content.
Gives:    documents: pages of marks.
Measures: points at real size, x to the right and y downward.
Reports:  nothing; what is longer than a page runs on to the next.
Does not know: SVG, PDF, HTML.

A tour: `flow` runs flowables over pages. `parts` makes flowables of content, with `text` (words), `headings`, `table`,
`cards`, `steps`, `web_link`, `prose` (what is read), `plate` (what a page is about, large), `key` (its fabrics) and
`index`. `sheet` and `lesson` are what is printed of it; the package `book` binds them. `gallery`, `single` and
`step_slide` are pages that stand alone. `maker_row` is what a maker prints at the foot of all of them. `scale_check`
has the test square and the bars, `scale_check_page` a page of them.
"""
