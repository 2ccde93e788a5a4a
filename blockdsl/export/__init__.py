"""From pages to bytes, one file for each format.

Takes:    documents.
Gives:    SVG and PDF as bytes.
Measures: as given.
Reports:  nothing; it decides nothing.
Does not know: blocks.
"""
