"""Sheets become bytes: one file for each format.

Takes:    pages of marks, tables of text, finished bytes.
Gives:    SVG, PDF, PNG, Markdown and CSV; files written whole or not at all.
Measures: points at real size, y downward, as given; it decides nothing.
Reports:  nothing; what no painter may paint raises Unprintable, a missing system library (for PNG) CairoMissing.
Does not know: blocks.
"""
