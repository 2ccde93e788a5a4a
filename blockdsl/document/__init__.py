"""Pages that say what things are and not how they look: now those of a web site.

Takes:    facts.
Gives:    a site as pages of parts: headings, paragraphs, tables, pictures, cards, links.
Measures: nothing; pictures are pages of marks.
Reports:  nothing.
Does not know: HTML.

A tour: `parts` is the closed, small set of parts. `site` puts the pages in order; `block` (with `cutting_table` and
`steps`), `quilt` (with `quilt_tables`), `lesson`, `index`, `glossary` and `gallery` make one kind of page each.
`pictures` has their pictures, `reading` the maker's own words, `said` all words of a page for the glossary. Some rows
of tables and pictures come from `page`, which composes the printed sheets by itself.
"""
