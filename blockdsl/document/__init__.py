"""Sheets, quilts, lessons and sites composed once, as content that says what things are and not how they look.

Takes:    facts.
Gives:    content: headings, paragraphs, tables, pictures that draw themselves, steps, boxes to tick, references.
Measures: nothing; pictures say how much room they want.
Reports:  nothing.
Does not know: pages, HTML.

A tour: `content` is the closed, small set of elements. `block` has a block's sections in order, made by `cutting`,
`units` and `steps`; `quilt` those of a quilt, made by `materials`, `quilt_cuts` and `assembly`; `lesson` a technique.
`front` is what to read before the first cut, `glossary` the words of the trade, `gallery` a contact sheet,
`possibilities` what one block can become, `reading` the maker's own words. `pictures` are pictures as content. `site`
puts the pages of a site in order, with its `index`; `said` finds the words that a page says.
"""
