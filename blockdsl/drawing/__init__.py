"""From facts to pages.

Takes:    facts.
Gives:    documents: pages of marks, a closed and small display list; text measured with the bundled font.
Measures: points at real size, x to the right and y downward; exact becomes float here and nowhere else.
Reports:  what does not fit the paper.
Does not know: SVG, PDF.
"""
