"""Pages that say what things are and not how they look: now those of a web site.

Takes:    facts.
Gives:    a site as pages of parts: headings, paragraphs, tables, pictures, cards, links.
Measures: nothing; pictures are pages of marks.
Reports:  nothing.
Does not know: HTML.

A tour: `parts` is the closed, small set of parts. `site` puts the pages in order; `block`, `quilt`, `lesson`, `index`
and `glossary` make one kind of page each. It takes some words and pictures from `page`, which composes the printed
sheets by itself.
"""
